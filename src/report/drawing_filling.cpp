#include <algorithm>
#include <cmath>
#include <set>

#include <fmt/format.h>

#include "estimate/capacity.hpp"
#include "report/page_parts.hpp"
#include "report/phrases.hpp"

namespace waxtab {

namespace {

constexpr double chart_top = 20, chart_bottom = 132;
/// Bounds of the middle 80 % of a normal distribution, in standard deviations.
constexpr double z80 = 1.2816;

/// What stood written of a hive's supers on a day, in kilograms.
struct Written {
    Day day{};
    double kg = 0;
    std::vector<FactId> facts;
};
/// An estimate on a day, with its range.
struct Estimated {
    Day day{};
    Range kg;
};

bool stood(const Box& box, HiveId hive, Day day) {
    return std::any_of(box.stays.begin(), box.stays.end(), [&](const BoxStay& s) {
        return s.hive == hive && (!s.from || *s.from <= day) && (!s.to || *s.to >= day);
    });
}
bool stays_over(const Box& box, HiveId hive, Day day) {
    return std::any_of(box.stays.begin(), box.stays.end(), [&](const BoxStay& s) {
        return s.hive == hive && (!s.from || *s.from <= day) && (!s.to || *s.to > day);
    });
}

/// Everything one hive's chart is drawn from.
class Chart {
public:
    Chart(Page& page, const HiveHistory& hive) : page_(page), hive_(hive), axis_(season_axis(page.in)) {
        for (const Box& box : page.in.history.boxes)
            if (box.role == Role::super && met(box)) boxes_.push_back(&box);
        read_written();
        read_past();
        look_ahead();
        for (const auto& [day, kg] : room_) most_ = std::max(most_, kg);
        for (const Written& w : written_) most_ = std::max(most_, w.kg);
    }

    std::string figure() {
        if (boxes_.empty() || (written_.empty() && !page_.judged(hive_.hive))) return {};
        const std::string name = html(page_.in.journal.hive_name(hive_.hive));
        const std::string drawn = scale() + bands() + room_line() + marks() + events() + "<use href=\"#months\"/>" + now() + next_visits();
        return fmt::format("<figure><svg class=\"chart\" viewBox=\"0 0 340 168\" role=\"img\" aria-label=\"honey in the supers of {} "
                           "through the season; figures in the table below\">{}</svg>\n</figure>\n{}", name, drawn, table());
    }

private:
    Day on() const { return page_.in.history.on; }
    double y(double kg) const { return chart_bottom - (chart_bottom - chart_top) * std::clamp(kg / most_, 0.0, 1.0); }

    bool met(const Box& box) const {
        return std::any_of(box.stays.begin(), box.stays.end(), [&](const BoxStay& s) {
            return s.hive == hive_.hive && (!s.to || *s.to >= axis_.from);
        });
    }

    double capacity(const Box& box) const {
        if (const SuperEstimate* s = page_.in.estimates.super(box.id)) return s->capacity_kg.value;
        return capacity_of(page_.in.journal, box).kg * page_.in.estimates.keeper.full_factor.value;
    }

    /// Room by day: what all supers on that day hold when full.
    double room_on(Day day) const {
        double kg = 0;
        for (const Box* box : boxes_)
            if (stays_over(*box, hive_.hive, day)) kg += capacity(*box);
        return kg;
    }

    void read_written() {
        std::set<Day> days, changes{axis_.from, on()};
        for (const Box* box : boxes_) {
            for (const BoxSighting& s : box->sightings)
                if (s.what == BoxSighting::What::full && s.day >= axis_.from && stood(*box, hive_.hive, s.day)) days.insert(s.day);
            for (const BoxStay& s : box->stays)
                for (const auto& day : {s.from, s.to})
                    if (s.hive == hive_.hive && day && *day >= axis_.from) changes.insert(*day);
        }
        for (const Day day : days) written_.push_back(written_on(day));
        for (const Day day : changes) room_.push_back({day, room_on(day)});
    }

    /// Last reading of each super that stood there, an emptied one without a new reading as nothing.
    Written written_on(Day day) const {
        Written w{day, 0, {}};
        for (const Box* box : boxes_) {
            if (!stood(*box, hive_.hive, day)) continue;
            const BoxSighting* last = nullptr;
            for (const BoxSighting& s : box->sightings)
                if (s.what == BoxSighting::What::full && s.day <= day && !emptied_between(*box, s.day, day)) last = &s;
            if (!last) continue;
            w.kg += static_cast<double>(last->amount) / 1000.0 * capacity(*box);
            if (last->day == day) w.facts.push_back(last->fact);
        }
        return w;
    }

    static bool emptied_between(const Box& box, Day after, Day by) {
        return std::any_of(box.emptied.begin(), box.emptied.end(), [&](Day d) { return d > after && d <= by; });
    }

    Estimated estimated(const Estimates& estimates) const {
        Estimated e{estimates.on, {}};
        double holds = 0;
        for (const SuperEstimate& s : estimates.supers)
            if (s.hive == hive_.hive) e.kg.value += s.kg.value, holds += s.capacity_kg.value;
        const HiveEstimate* h = estimates.hive(hive_.hive);
        e.kg.low = h ? std::clamp(holds - h->room_kg.high, 0.0, e.kg.value) : e.kg.value;
        e.kg.high = h ? std::max(holds - h->room_kg.low, e.kg.value) : e.kg.value;
        return e;
    }

    void read_past() {
        for (const Estimates& estimates : page_.in.past)
            if (estimates.on >= axis_.from && estimates.on < on()) past_.push_back(estimated(estimates));
        past_.push_back(estimated(page_.in.estimates));
    }

    void look_ahead() {
        const HiveEstimate* h = page_.in.estimates.hive(hive_.hive);
        const double holds = room_on(on());
        if (!h || holds <= 0) return;
        ahead_.push_back(past_.back());
        const auto foreseen = static_cast<int>(std::min(h->gain_mean.size(), h->shortfall_sd.size()));
        const int days = std::min(days_between(on(), axis_.to), foreseen);
        for (int d = 1; d <= days; ++d) {
            const double kg = past_.back().kg.value + h->gain_mean[static_cast<std::size_t>(d) - 1];
            const double sd = h->shortfall_sd[static_cast<std::size_t>(d) - 1] * z80;
            const auto within = [&](double v) { return std::clamp(v, 0.0, holds); };
            ahead_.push_back({on() + date::days{d}, {within(kg - sd), within(kg), within(kg + sd)}});
        }
    }

    std::string scale() const {
        const double unit = page_.in.style.mass == MassUnit::pound ? 0.45359237 : 1.0;
        const double shown = most_ / unit;
        double step = 1;
        for (const double s : {2.0, 5.0, 10.0, 20.0, 50.0, 100.0})
            if (shown / step > 5) step = s;
        std::string out, d;
        for (double v = 0; v <= shown; v += step) {
            d += fmt::format("M{} {}H{}", xy(axis_.left), xy(y(v * unit)), xy(axis_.right));
            out += fmt::format("<text x=\"26\" y=\"{}\" text-anchor=\"end\">{:.0f}</text>", xy(y(v * unit) + 4), v);
        }
        return fmt::format("<path class=\"hair\" d=\"{}\"/>{}<text x=\"2\" y=\"9\">{}</text>", d, out,
                           page_.in.style.mass == MassUnit::pound ? "lb" : "kg");
    }

    std::string band(const std::vector<Estimated>& points, std::string_view fill) const {
        if (points.size() < 2) return {};
        std::string d, back;
        for (const Estimated& e : points)
            d += fmt::format("{}{} {}", d.empty() ? "M" : "L", xy(axis_.x(e.day)), xy(y(e.kg.high)));
        for (auto e = points.rbegin(); e != points.rend(); ++e)
            back += fmt::format("L{} {}", xy(axis_.x(e->day)), xy(y(e->kg.low)));
        return fmt::format("<path class=\"hair\" d=\"{}{}Z\" style=\"fill:url(#{})\"/>", d, back, fill);
    }

    std::string run(const std::vector<Estimated>& points, std::string_view css) const {
        std::string d;
        for (const Estimated& e : points) d += fmt::format("{}{} {}", d.empty() ? "M" : "L", xy(axis_.x(e.day)), xy(y(e.kg.value)));
        return points.size() < 2 ? std::string{} : fmt::format("<path d=\"{}\" class=\"{}\"/>", d, css);
    }

    /// True when every point between the two lies so near the straight line that leaving it out cannot be seen.
    bool straight(const std::vector<Estimated>& points, std::size_t from, std::size_t to) const {
        constexpr double unseen_px = 0.25;
        for (std::size_t i = from + 1; i < to; ++i) {
            const double share = static_cast<double>(days_between(points[from].day, points[i].day)) / days_between(points[from].day, points[to].day);
            for (const auto part : {&Range::low, &Range::value, &Range::high}) {
                const double begin = y(points[from].kg.*part), end = y(points[to].kg.*part);
                if (std::abs(y(points[i].kg.*part) - begin - share * (end - begin)) > unseen_px) return false;
            }
        }
        return true;
    }

    /// The points without those that cannot be seen: a page of many hives is large enough.
    std::vector<Estimated> bends(const std::vector<Estimated>& points) const {
        std::vector<Estimated> out;
        for (std::size_t from = 0; from < points.size();) {
            out.push_back(points[from]);
            std::size_t to = from + 1;
            while (to + 1 < points.size() && straight(points, from, to + 1)) ++to;
            from = to;
        }
        return out;
    }

    std::string bands() const {
        const std::vector<Estimated> past = bends(past_), ahead = bends(ahead_);
        return band(past, "band") + run(past, "line") + band(ahead, "ahead") + run(ahead, "dash");
    }

    std::string room_line() const {
        std::string d;
        for (const auto& [day, kg] : room_)
            d += d.empty() ? fmt::format("M{} {}", xy(axis_.x(day)), xy(y(kg))) : fmt::format("H{}V{}", xy(axis_.x(day)), xy(y(kg)));
        if (!room_.empty() && room_.back().second > 0) d += fmt::format("H{}", xy(axis_.right));
        return fmt::format("<path d=\"{}\" class=\"bold\"/>", d);
    }

    std::string marks() const {
        std::string d;
        for (const Written& w : written_)
            d += fmt::format("M{} {}l6 6m0 -6l-6 6", xy(axis_.x(w.day) - 3), xy(y(w.kg) - 3));
        return d.empty() ? d : fmt::format("<path d=\"{}\" class=\"bold\"/>", d);
    }

    std::string now() const {
        const Estimated& e = past_.back();
        const double x = axis_.x(e.day);
        return fmt::format("<path class=\"bold\" d=\"M{} {}h6m-3 0V{}m-3 0h6\"/>", xy(x - 3), xy(y(e.kg.high)), xy(y(e.kg.low)));
    }

    static std::string_view sign_of(Kind kind) {
        switch (kind) {
            case Kind::super_on: return "+";
            case Kind::super_off: return "\u2212";
            case Kind::swarmed: case Kind::hive_split: return "s";
            case Kind::queen_cells: return "c";
            case Kind::feed: return "f";
            case Kind::treatment: case Kind::treatment_on: case Kind::treatment_off: return "t";
            default: return {};
        }
    }

    std::string events() const {
        std::string out;
        std::set<std::pair<Day, std::string_view>> seen;
        constexpr double width = 11;
        double free_from = 0;  // events close together stand side by side
        for (const Event& event : hive_.events) {
            if (event.fact == set_up_fact || event.day < axis_.from) continue;
            const Fact& fact = page_.in.journal.facts[event.fact];
            const std::string_view sign = sign_of(fact.kind);
            if (sign.empty() || (fact.kind == Kind::queen_cells && fact.count == 0) || !seen.insert({event.day, sign}).second) continue;
            const double x = std::max(axis_.x(event.day), free_from);
            free_from = x + width;
            out += fmt::format("<text x=\"{}\" y=\"{}\" text-anchor=\"middle\">{}</text>", xy(x), xy(chart_bottom + 11), sign);
        }
        return out;
    }

    /// The next visits, on which the forecast will be held against what is found.
    std::string next_visits() const {
        if (hive_.visits.empty()) return {};
        const int interval = std::max(1, page_.in.journal.settings.visit_interval_days);
        std::string d;
        Day next = std::max(on() + date::days{1}, hive_.visits.back() + date::days{interval});
        for (int i = 0; i < 2 && next <= axis_.to; ++i, next += date::days{interval})
            d += fmt::format("M{} {}V{}", xy(axis_.x(next)), xy(chart_top), xy(chart_bottom));
        return fmt::format("<path class=\"dash\" d=\"{}\"/>", d);
    }

    std::string table() {
        std::string rows;
        for (auto w = written_.rbegin(); w != written_.rend(); ++w)
            rows += fmt::format("<tr><th scope=\"row\">{}</th><td class=\"n\">{}</td><td>{}</td></tr>\n", iso(w->day),
                                text_of(Mass::from_kilograms(w->kg), page_.in.style.mass), page_.refs(w->facts));
        const Estimated& e = past_.back();
        std::string out = "<details><summary>the figures of the chart</summary>";
        if (!rows.empty())
            out += "<table><caption>Honey in the supers; shares as written, of what the boxes hold</caption><thead><tr>"
                   "<th scope=\"col\">day</th><th scope=\"col\" class=\"n\">as written</th><th scope=\"col\">lines</th></tr></thead>"
                   "<tbody>\n" + rows + "</tbody></table>";
        out += fmt::format("<p>Now {}", kg_text(e.kg, page_.in.style));
        for (const std::size_t days : {std::size_t{7}, std::size_t{14}, std::size_t{21}})
            if (days < ahead_.size()) out += fmt::format("; {}: {}", iso(ahead_[days].day), kg_text(ahead_[days].kg, page_.in.style));
        const HiveEstimate* h = page_.in.estimates.hive(hive_.hive);
        return out + "." + (h ? page_.refs(*h) : std::string{}) + "</p></details>\n";
    }

    Page& page_;
    const HiveHistory& hive_;
    TimeAxis axis_;
    std::vector<const Box*> boxes_;
    std::vector<Written> written_;
    std::vector<Estimated> past_, ahead_;
    std::vector<std::pair<Day, double>> room_;
    double most_ = 1;
};

}  // namespace

std::string shared_months(const ReportInput& input) {
    return "<g id=\"months\">" + month_marks(season_axis(input), chart_top, chart_bottom + 14, input.history.on) + "</g>";
}

std::string filling_chart(Page& page, const HiveHistory& hive) { return Chart(page, hive).figure(); }

}  // namespace waxtab
