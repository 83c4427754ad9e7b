#include "report/records.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "ledger/price.hpp"
#include "report/phrases.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

constexpr std::string_view care =
    "Proofs of purchase, with the day and the quantity bought, are kept beside these. What must be kept, how long, and whether a treatment "
    "may be used is for the product's label, your law and your vet or inspector to say.";

std::string names_text(const Journal& journal, const std::vector<HiveId>& hives) {
    std::vector<std::string> names;
    for (const HiveId hive : hives) names.push_back(printable(journal.hive_name(hive)));
    return names.empty() ? std::string("hives not noted") : listed(names);
}

std::string missing_text(const std::vector<std::string>& missing) {
    return missing.empty() ? std::string{} : paragraph("not noted: " + listed(missing), inner_indent, "      ");
}

/// `name words` where the words are known.
void add(std::vector<std::string>& parts, std::string_view name, std::string_view words) {
    if (!words.empty() && words != not_noted) parts.push_back(fmt::format("{}{}{}", name, name.empty() ? "" : " ", printable(words)));
}

std::string days_of(const MedicineRecord& r) {
    if (!r.last) return fmt::format("{}, still in", iso(r.first));
    if (*r.last == r.first) return fmt::format("{}, given once", iso(r.first));
    return fmt::format("{} to {}, {}", iso(r.first), iso(*r.last), counted(r.days.value_or(1), "day"));
}

std::string medicine_text(const Journal& journal, const MedicineRecord& r, const std::vector<HiveId>& hives, const Style& style) {
    std::vector<std::string> parts{days_of(r), printable(r.substance)};
    add(parts, "", r.method);
    add(parts, "", r.quantity == not_noted ? r.quantity : r.quantity + (hives.size() > 1 ? " each" : ""));
    add(parts, "batch", r.batch);
    add(parts, "supplier", r.supplier);
    add(parts, "withdrawal period", r.withdrawal);
    std::string out = with_ref(fmt::format("{}", fmt::join(parts, ", ")), "  ", inner_indent, {});
    out += with_ref("hives: " + names_text(journal, hives), inner_indent, "      ", refs_text(journal, r.facts, style));
    return out + missing_text(r.missing);
}

std::string feed_text(const Journal& journal, const FeedRecord& r, const std::vector<HiveId>& hives, const Style& style) {
    std::vector<std::string> parts{iso(r.day), printable(r.what)};
    add(parts, "", r.amount == not_noted ? r.amount : r.amount + (hives.size() > 1 ? " each" : ""));
    add(parts, "from", r.origin);
    parts.push_back(names_text(journal, hives));
    return with_ref(fmt::format("{}", fmt::join(parts, ", ")), "  ", inner_indent, refs_text(journal, r.facts, style));
}

/// How many feeds lack each field: said once for all of them.
std::string feeds_missing(const std::vector<FeedRecord>& feeds) {
    std::vector<std::string> lines;
    for (const std::string_view field : {"amount", "origin"}) {
        std::size_t lacking = 0;
        for (const FeedRecord& r : feeds)
            if (std::find(r.missing.begin(), r.missing.end(), field) != r.missing.end()) ++lacking;
        if (lacking > 0) lines.push_back(fmt::format("{} in {} of {}", field, lacking, feeds.size()));
    }
    return lines.empty() ? std::string{} : paragraph("not noted: " + listed(lines), "  ", inner_indent);
}

std::string disease_text(const Journal& journal, const DiseaseRecord& r, const std::vector<HiveId>& hives, const Style& style) {
    return with_ref(fmt::format("{}, {}{}, {}", iso(r.day), printable(r.what), r.how.empty() ? "" : " " + r.how, names_text(journal, hives)),
                    "  ", inner_indent, refs_text(journal, r.facts, style));
}

std::string trade_text(const Journal& journal, const TradeRecord& r, const Style& style) {
    const std::string amount = r.jars > 0 ? fmt::format("{} x {}", r.jars, jar_text(r.size)) : mass_text(r.honey, style);
    const std::string_view way = r.in ? "in from" : r.at_place ? "out at" : "out to";
    const std::string price = price_of(journal, journal.facts[r.fact]);
    return with_ref(fmt::format("{}, {}, lot {}, {} {}{}{}", iso(r.day), amount, printable(r.lot), way, printable(r.who),
                                r.business && !r.in ? " (business)" : "", price.empty() ? "" : ", price noted: " + printable(price)),
                    "  ", inner_indent, ref_text(journal, r.fact, no_hive, style));
}

std::string book(std::string_view title, const std::string& body, std::string_view none, const Style& style) {
    return '\n' + heading(title, style) + '\n' + (body.empty() ? fmt::format("  {}\n", none) : body);
}

}  // namespace

std::vector<HiveId> listed_hives(const Selection& selection, const History& history, const std::vector<HiveId>& hives, Day day) {
    std::vector<HiveId> out;
    for (const HiveId hive : hives)
        if (lists(selection, history, hive, day)) out.push_back(hive);
    return out;
}

std::string records_text(const Journal& journal, const History& history, const Records& records, const Selection& selection,
                         const Style& style) {
    const auto hives = [&](const auto& r, Day day) { return listed_hives(selection, history, r.hives, day); };
    const bool all = selection.hives.empty() && selection.yards.empty();
    std::string medicines, feeds, diseases, trade;
    for (const MedicineRecord& r : records.medicines)
        if (const auto of = hives(r, r.first); selection.has_day(r.first) && !of.empty()) medicines += medicine_text(journal, r, of, style);
    std::vector<FeedRecord> listed_feeds;
    for (const FeedRecord& r : records.feeds) {
        const auto of = hives(r, r.day);
        if (!selection.has_day(r.day) || (!all && of.empty())) continue;
        feeds += feed_text(journal, r, of, style);
        listed_feeds.push_back(r);
    }
    feeds += feeds_missing(listed_feeds);
    for (const DiseaseRecord& r : records.diseases)
        if (const auto of = hives(r, r.day); selection.has_day(r.day) && (all || !of.empty())) diseases += disease_text(journal, r, of, style);
    for (const TradeRecord& r : records.trade)
        if (all && selection.has_day(r.day)) trade += trade_text(journal, r, style);
    std::string out = heading("Records on " + iso(history.on), style);
    out += book("Medicines", medicines, "none noted", style) + book("Feed", feeds, "none noted", style);
    out += book("Disease", diseases, "none noted", style);
    if (all) out += book("Honey bought and sold", trade, "none noted", style);
    return out + '\n' + paragraph(care, "", "");
}

}  // namespace waxtab
