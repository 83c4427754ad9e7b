#include <array>

#include <fmt/format.h>

#include "ledger/trace.hpp"
#include "report/lot_parts.hpp"
#include "report/page_parts.hpp"
#include "report/phrases.hpp"

namespace waxtab {

namespace {

/// Small letters, digits and hyphens of a name, at most forty.
std::string slug(std::string_view name) {
    std::string out;
    for (const char c : name) {
        const bool letter = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        const bool capital = c >= 'A' && c <= 'Z';
        if (letter || capital) out += capital ? static_cast<char>(c - 'A' + 'a') : c;
        else if (!out.empty() && out.back() != '-') out += '-';
        if (out.size() >= 40) break;
    }
    while (!out.empty() && out.back() == '-') out.pop_back();
    return out.empty() ? "lot" : out;
}

std::string taking_html(Page& page, const TracedTaking& traced) {
    const Taking& taking = page.in.history.takings[traced.taking];
    const bool frames = taking.box == no_box;
    const std::string what = frames ? counted(taking.frames, "frame")
                                    : box_text(page.in.journal, page.in.history.boxes[static_cast<std::size_t>(taking.box)]);
    const std::string on = frames ? std::string{} : traced.on ? ", on from " + iso(*traced.on) : std::string(", on from the start");
    const MassRange honey = honey_of(page.in.history, page.in.estimates, traced.taking);
    std::vector<FactId> facts{traced.fact};
    facts.insert(facts.end(), taking.weighings.begin(), taking.weighings.end());
    return fmt::format("<li>{}{}, off {}; {} {}{}</li>\n", bdi(what), on, iso(traced.off), mass_text(honey, page.in.style),
                       honey.weighed ? "weighed" : "estimated", page.refs(facts));
}

std::string facts_html(Page& page, std::string_view title, const std::vector<FactId>& facts) {
    std::string out;
    for (const FactId id : facts)
        out += fmt::format("<li>{} {}: {}{}</li>\n", title, iso(page.in.journal.facts[id].happened),
                           bdi(words_of(page.in.journal, page.in.journal.facts[id], false)), page.ref(id, no_hive));
    return out;
}

std::string source_html(Page& page, const TracedSource& source, const std::string& lot) {
    std::string name = source.opening                ? "there at the start"
                       : source.hive != no_hive       ? bdi(page.in.journal.hive_name(source.hive))
                       : source.bought_from.empty()   ? "bought in"
                                                      : "bought in from " + bdi(source.bought_from);
    std::string out = fmt::format("<li>{}: {}", name, mass_text(source.honey, page.in.style));
    if (const Lot* of = page.in.ledger.lot(source.lot)) out += page.refs(of->because);
    if (source.lot != lot) out += ", by way of lot " + bdi(source.lot);
    std::string items;
    for (const TracedTaking& taking : source.takings) items += taking_html(page, taking);
    items += facts_html(page, "feed", source.feeds) + facts_html(page, "possible: syrup carried up, feed", source.possible_feeds) +
             facts_html(page, "treatment", source.treatments);
    return out + (items.empty() ? std::string{} : "<ul>\n" + items + "</ul>") + "</li>\n";
}

std::string moisture_html(Page& page, const Lot& lot) {
    const auto answers = moisture_answers(lot, false);
    if (!answers || !lot.water) return {};
    const auto percent = [](std::int64_t permille) { return static_cast<double>(permille) / 10.0; };
    std::string out = fmt::format("<h2>Moisture</h2>\n<p>{:.1f}% ({:.1f}-{:.1f}), {}{}</p>\n<ul class=\"limits\">\n",
                                  percent(lot.water->value), percent(lot.water->low), percent(lot.water->high),
                                  lot.water->read ? "read" : "by what was blended", page.refs(lot.water->because));
    for (const handbook::LimitAnswer& answer : *answers)
        if (answer.limit)
            out += fmt::format("<li>{}</li>\n", html(limit_text(*lot.water, *answer.limit)));
    return out + "</ul>\n";
}

std::string recall_html(Page& page, const Trace& way, const Lot& lot) {
    std::string out;
    for (const RecallRow& row : way.recall) {
        out += fmt::format("<li>{}: {}", iso(row.going.day), bdi(going_text(row.going, page.in.ledger.lot(row.lot), page.in.style)));
        if (row.lot != lot.name) out += ", as lot " + bdi(row.lot);
        if (row.possible) out += "; may be of this lot";
        out += page.ref(row.going.fact, no_hive) + "</li>\n";
    }
    std::vector<FactId> facts = lot.because;
    for (const JarRow& jars : lot.jars) facts.insert(facts.end(), jars.because.begin(), jars.because.end());
    for (const RecallRow& row : way.recall) facts.push_back(row.going.fact);
    return "<h2>Where it went</h2>\n" + (out.empty() ? std::string("<p>Nothing has gone out.</p>\n") : "<ul>\n" + out + "</ul>\n") +
           fmt::format("<p>Left in jars {}, in bulk {}.{}</p>\n", mass_text(way.left_in_jars, page.in.style),
                       mass_text(way.left_in_bulk, page.in.style), page.refs(facts));
}

}  // namespace

std::string lot_file(const Ledger& ledger, const Lot& lot) {
    const std::string wanted = slug(lot.name);
    int before = 0;
    for (const Lot& other : ledger.lots) {
        if (&other == &lot || other.name == lot.name) break;
        before += slug(other.name) == wanted;
    }
    return before == 0 ? wanted + ".html" : fmt::format("{}_{}.html", wanted, before + 1);
}

std::string lot_page(const ReportInput& input, const Lot& lot) {
    Page page(input);
    const Trace way = trace(input.journal, input.history, input.ledger, lot.name);
    std::string body = fmt::format("<header><p class=\"sub\"><a href=\"../report.html\">the whole report</a></p><h1>Lot {}</h1>\n"
                                   "<p>{}{}; as of {}.{}</p></header>\n<main>\n",
                                   bdi(lot.name), weight_text(lot, input.style),
                                   lot.best_before.empty() ? std::string{} : "; best before " + bdi(lot.best_before), iso(input.history.on),
                                   page.refs(lot.because));
    body += "<h2>Where it came from</h2>\n<ul>\n";
    bool met = false;
    for (const TracedSource& source : way.sources) {
        body += source_html(page, source, lot.name);
        met = met || !source.feeds.empty() || !source.possible_feeds.empty() || !source.treatments.empty();
    }
    body += "</ul>\n";
    if (met)
        body += "<p class=\"care\">Feeds and treatments are listed where they met a super. Whether such honey may be sold is for the "
                "product label, local law and your vet or bee inspector to say.</p>\n";
    body += moisture_html(page, lot) + recall_html(page, way, lot);
    body += page.cited_lines() + "</main>\n";
    return page_document(fmt::format("Lot {}", lot.name), body);
}

}  // namespace waxtab
