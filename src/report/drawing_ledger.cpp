#include <algorithm>
#include <map>

#include <fmt/format.h>

#include "report/page_parts.hpp"
#include "report/phrases.hpp"

namespace waxtab {

namespace {

constexpr double left_x = 96, lot_x = 172, lot_width = 8, right_x = 252, shortest = 28;
constexpr std::size_t most_hives = 20, most_lots = 14;

/// A place honey comes from, lies in, or went to; kilograms through it.
struct Node {
    std::string name;
    double kg = 0, y = 0, height = 0, used_left = 0, used_right = 0;
};
struct Ribbon { std::size_t from = 0, to = 0; double kg = 0; };

/// Honey from hives (or yards, where hives are many) through lots to where it went.
class LedgerPicture {
public:
    explicit LedgerPicture(Page& page) : page_(page) {
        const auto& lots = page.in.ledger.lots;
        const std::size_t first = lots.size() > most_lots ? lots.size() - most_lots : 0;
        count_hives(first);
        for (std::size_t i = first; i < lots.size(); ++i) take_in(lots[i]);
        for (const Blending& b : page.in.ledger.blendings) blend(b);
    }

    std::string figure() {
        if (lots_.empty()) return {};
        double total = 0;
        for (const Node& lot : lots_) total += lot.kg;
        scale_ = std::min(3.0, 260.0 / std::max(total, 1.0));
        const double height = std::max({place(left_), place(lots_), place(right_)});
        std::string out;
        for (const Ribbon& r : in_) out += ribbon(left_[r.from], lots_[r.to], left_x, lot_x, r.kg, "honey");
        for (const Ribbon& r : out_) out += ribbon(lots_[r.from], right_[r.to], lot_x + lot_width, right_x, r.kg, "stream");
        return fmt::format("<figure><svg class=\"chart\" viewBox=\"0 0 340 {}\" role=\"img\" aria-label=\"honey from hives through lots "
                           "to where it went; figures in the tables below\">{}{}</svg>\n<figcaption>From the hives on the left through "
                           "the lots in the middle to where it went; as broad as it weighs. Lines and ranges stand with the figures "
                           "below.</figcaption></figure>\n",
                           xy(height + 6), out, words());
    }

private:
    void count_hives(std::size_t first) {
        std::map<HiveId, bool> hives;
        for (std::size_t i = first; i < page_.in.ledger.lots.size(); ++i)
            for (const LotShare& share : page_.in.ledger.lots[i].shares) hives[share.hive] = true;
        by_yard_ = hives.size() > most_hives;
    }

    static std::size_t node(std::vector<Node>& nodes, const std::string& name) {
        for (std::size_t i = 0; i < nodes.size(); ++i)
            if (nodes[i].name == name) return i;
        nodes.push_back({name, 0, 0, 0, 0, 0});
        return nodes.size() - 1;
    }

    std::string source_name(const Lot& lot, HiveId hive) const {
        if (hive == no_hive) return lot.bought.ng > 0 ? "bought in" : lot.opening.ng > 0 ? "at the start" : "hive not said";
        if (!by_yard_) return std::string(page_.in.journal.hive_name(hive));
        const YardId yard = page_.in.history.hives[static_cast<std::size_t>(hive)].yard_on(lot.extracted);
        return yard == no_yard ? std::string("no yard") : std::string(page_.in.journal.yard_name(yard));
    }

    void add(std::vector<Ribbon>& ribbons, std::vector<Node>& ends, std::size_t lot, const std::string& end, Mass honey, bool into) {
        const double kg = honey.kilograms();
        if (kg <= 0) return;
        const std::size_t at = node(ends, end);
        ends[at].kg += kg;
        const std::size_t from = into ? at : lot, to = into ? lot : at;
        for (Ribbon& r : ribbons)
            if (r.from == from && r.to == to) return void(r.kg += kg);
        ribbons.push_back({from, to, kg});
    }

    void take_in(const Lot& lot) {
        const std::size_t at = node(lots_, lot.name);
        for (const LotShare& share : lot.shares) add(in_, left_, at, source_name(lot, share.hive), share.honey.value, true);
        add(in_, left_, at, "cappings", lot.drained, true);
        std::map<std::string_view, Mass> gone;
        for (const Going& going : lot.goings) {
            if (going.how == "come back") gone["sold"] -= going.honey;
            else gone[going.how] += going.honey;
        }
        for (const std::string_view how : {"sold", "given", "own use", "spoiled"})
            add(out_, right_, at, std::string(how), gone[how], false);
        add(out_, right_, at, "left in jars", lot.left_in_jars(), false);
        add(out_, right_, at, "left in bulk", lot.bulk, false);
        lots_[at].kg = std::max(lot.weight.value.kilograms() + lot.drained.kilograms(), 0.1);
    }

    void blend(const Blending& b) {
        const Lot* from = page_.in.ledger.lot(b.from);
        if (!from) return;
        for (std::size_t i = 0; i < lots_.size(); ++i)
            if (lots_[i].name == from->name) add(out_, right_, i, "blended", b.honey, false);
        const Lot* into = page_.in.ledger.lot(b.into);
        for (std::size_t i = 0; into && i < lots_.size(); ++i)
            if (lots_[i].name == into->name) add(in_, left_, i, "other lots", b.honey, true);
    }

    /// Lots have their names above them, the others beside.
    double place(std::vector<Node>& nodes) const {
        const double px_gap = &nodes == &lots_ ? 18 : 7;
        double y = 14;
        for (Node& n : nodes) {
            n.y = y;
            n.height = std::max(n.kg * scale_, 1.0);
            y += std::max(n.height, &nodes == &lots_ ? 4.0 : shortest) + px_gap;
        }
        return y;
    }

    std::string ribbon(Node& from, Node& to, double x1, double x2, double kg, std::string_view fill) const {
        const double width = std::max(kg * scale_, 0.7), a = from.y + from.used_right, b = to.y + to.used_left, m = (x1 + x2) / 2;
        from.used_right += width;
        to.used_left += width;
        return fmt::format("<path class=\"hair\" style=\"fill:url(#{})\" d=\"M{} {}C{} {} {} {} {} {}V{}C{} {} {} {} {} {}Z\"/>", fill,
                           xy(x1), xy(a), xy(m), xy(a), xy(m), xy(b), xy(x2), xy(b), xy(b + width), xy(m), xy(b + width), xy(m),
                           xy(a + width), xy(x1), xy(a + width));
    }

    static std::string word(std::string_view text, double x, std::string_view anchor, double y) {
        return fmt::format("<text x=\"{}\" y=\"{}\" text-anchor=\"{}\">{}</text>", xy(x), xy(y), anchor, html(text));
    }

    std::string weight(const Node& n) const { return text_of(Mass::from_kilograms(n.kg), page_.in.style.mass, 1); }

    /// A name with its weight below it.
    std::string beside(const Node& n, double x, std::string_view anchor) const {
        const double y = n.y + std::max(n.height / 2, 10.0);
        return word(shortened(n.name, 14), x, anchor, y - 1) + word(weight(n), x, anchor, y + 12);
    }

    std::string words() const {
        std::string out, bars;
        for (const Node& n : left_) out += beside(n, left_x - 6, "end"), bars += bar(n, left_x - 2, 2);
        for (const Node& n : right_) out += beside(n, right_x + 7, "start"), bars += bar(n, right_x, 2);
        for (const Node& n : lots_) {
            out += word(fmt::format("{}, {}", shortened(n.name, 14), weight(n)), lot_x + lot_width / 2, "middle", n.y - 3);
            bars += bar(n, lot_x, lot_width);
        }
        return bars + out;
    }

    static std::string bar(const Node& n, double x, double width) {
        return fmt::format("<rect class=\"line\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"/>", xy(x), xy(n.y), xy(width), xy(n.height));
    }

    Page& page_;
    bool by_yard_ = false;
    double scale_ = 1;
    std::vector<Node> left_, lots_, right_;
    std::vector<Ribbon> in_, out_;
};

}  // namespace

std::string ledger_drawing(Page& page) { return LedgerPicture(page).figure(); }

}  // namespace waxtab
