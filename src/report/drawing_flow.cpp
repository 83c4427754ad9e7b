#include <algorithm>
#include <map>

#include <fmt/format.h>

#include "report/page_parts.hpp"
#include "report/phrases.hpp"
#include "text/utf8.hpp"

namespace waxtab {

namespace {

constexpr double flow_top = 18, flow_bottom = 60, heat_top = 76, heat_bottom = 116, plants_top = 134, plant_row = 22;
constexpr double axis_left = 46, letter = 8;   // a wide letter of a name

int height_of(std::string_view flow) {
    if (flow == "heavy" || flow == "good") return 3;
    if (flow == "on" || flow == "medium") return 2;
    return flow == "light" || flow == "starting" || flow == "ending" ? 1 : 0;
}

/// One plant's notes of bloom.
struct Plant {
    std::string name;
    std::vector<std::pair<Day, std::string_view>> notes;
};

/// What was noted of a yard this season.
class YardChart {
public:
    YardChart(Page& page, YardId yard) : page_(page), axis_(season_axis(page.in)) {
        axis_.left = axis_left;
        for (const FactId id : page.in.history.yard_facts[static_cast<std::size_t>(yard)]) {
            const Fact& fact = page.in.journal.facts[id];
            if (fact.happened < axis_.from || fact.happened > page.in.history.on) continue;
            by_day_[fact.happened].push_back(id);
            if (fact.kind == Kind::flow) flows_.push_back({fact.happened, height_of(fact.detail)});
            if (fact.kind == Kind::temperature) heat_.push_back({fact.happened, static_cast<double>(fact.value.amount) / 1000.0});
            if (fact.kind == Kind::bloom) note(fact);
        }
    }

    std::string figure(std::string_view name) {
        if (by_day_.empty()) return "<p>Nothing noted of flow, bloom or weather this season.</p>\n";
        const double end = plants_top + plant_row * static_cast<double>(plants_.size());
        return fmt::format("<figure><svg class=\"chart\" viewBox=\"0 0 340 {}\" role=\"img\" aria-label=\"flow, temperature and bloom "
                           "at {}; as words in the table below\">{}{}{}{}</svg>\n</figure>\n{}", xy(end + 18), html(name),
                           month_marks(axis_, flow_top - 4, end, page_.in.history.on), flow(), heat(), blooms(), table());
    }

private:
    void note(const Fact& fact) {
        auto at = std::find_if(plants_.begin(), plants_.end(), [&](const Plant& p) { return p.name == fact.text; });
        if (at == plants_.end() && fact.detail == "end") return;
        if (at == plants_.end()) at = plants_.insert(plants_.end(), {fact.text, {}});
        at->notes.push_back({fact.happened, fact.detail});
    }

    /// From each note to the next, two weeks at most: later it tells nothing.
    std::string flow() const {
        std::string d;
        for (std::size_t i = 0; i < flows_.size(); ++i) {
            const Day usual = flows_[i].first + date::days{14};
            const Day to = std::min(i + 1 < flows_.size() ? flows_[i + 1].first : page_.in.history.on, usual);
            const double y = flow_bottom - (flow_bottom - flow_top) * flows_[i].second / 3.0;
            const Day until = std::max(to, flows_[i].first + date::days{1});
            d += fmt::format("M{} {}V{}H{}V{}", xy(axis_.x(flows_[i].first)), xy(flow_bottom), xy(y), xy(axis_.x(until)), xy(flow_bottom));
        }
        std::string rules;
        constexpr std::string_view names[] = {"none", "light", "flow", "heavy"};
        for (int i = 0; i <= 3; ++i) {
            const double y = flow_bottom - (flow_bottom - flow_top) * i / 3.0;
            rules += fmt::format("<path class=\"hair\" d=\"M{} {}H334\"/><text x=\"{}\" y=\"{}\" text-anchor=\"end\">{}</text>",
                                 xy(axis_left), xy(y), xy(axis_left - 4), xy(y + 4), names[i]);
        }
        return rules + fmt::format("<path d=\"{}\" class=\"line\" style=\"fill:url(#stream)\"/>", d);
    }

    std::string heat() const {
        const auto y = [](double c) { return heat_bottom - (heat_bottom - heat_top) * std::clamp((c - 5.0) / 30.0, 0.0, 1.0); };
        std::string d, out;
        for (const auto& [day, celsius] : heat_) d += fmt::format("M{} {}l4 4m0 -4l-4 4", xy(axis_.x(day) - 2), xy(y(celsius) - 2));
        if (d.empty()) return out;
        const bool fahrenheit = page_.in.journal.settings.temperature == Unit::fahrenheit;
        for (const double c : {10.0, 20.0, 30.0})
            out += fmt::format("<path class=\"hair\" d=\"M{} {}H334\"/><text x=\"{}\" y=\"{}\" text-anchor=\"end\">{:.0f} \u00b0{}</text>",
                               xy(axis_left), xy(y(c)), xy(axis_left - 4), xy(y(c) + 4), fahrenheit ? c * 1.8 + 32 : c,
                               fahrenheit ? "F" : "C");
        return out + fmt::format("<path class=\"line\" d=\"{}\"/>", d);
    }

    std::string blooms() const {
        std::string out;
        double y = plants_top;
        for (const Plant& plant : plants_) {
            out += bloom(plant, y + 4);
            y += plant_row;
        }
        return out;
    }

    std::string bloom(const Plant& plant, double y) const {
        std::string full, thin;
        for (std::size_t i = 0; i < plant.notes.size(); ++i) {
            const auto& [day, state] = plant.notes[i];
            if (state == "end" || state == "not yet") continue;
            const bool last = i + 1 == plant.notes.size();
            const Day to = last ? std::min(page_.in.history.on, day + date::days{10})
                                : std::min(plant.notes[i + 1].first, day + date::days{21});
            std::string& d = state == "bud" || state == "ending" || state == "start" ? thin : full;
            d += fmt::format("M{} {}H{}", xy(axis_.x(day)), xy(y), xy(axis_.x(std::max(to, day + date::days{2}))));
        }
        const std::string name = shortened(plant.name, 18);
        const double x = std::min(axis_.x(plant.notes.front().first), 334.0 - letter * static_cast<double>(display_width(name)));
        return fmt::format("<text x=\"{}\" y=\"{}\" font-style=\"italic\">{}</text><path class=\"dash\" d=\"{}\"/>"
                           "<path class=\"bold\" style=\"stroke-width:3\" d=\"{}\"/>",
                           xy(x), xy(y - 4), html(name), thin, full);
    }

    std::string table() {
        std::string rows;
        for (auto day = by_day_.rbegin(); day != by_day_.rend(); ++day) {
            std::vector<std::string> words;
            for (const FactId id : day->second)
                words.push_back(bdi(words_of(page_.in.journal, page_.in.journal.facts[id], true)));
            rows += fmt::format("<tr><th scope=\"row\">{}</th><td>{}</td><td>{}</td></tr>\n", iso(day->first), fmt::join(words, ", "),
                                page_.refs(day->second));
        }
        return "<details><summary>as noted, day by day</summary><table><thead><tr><th scope=\"col\">day</th>"
               "<th scope=\"col\">noted</th><th scope=\"col\">lines</th></tr></thead><tbody>\n" + rows + "</tbody></table></details>\n";
    }

    Page& page_;
    TimeAxis axis_;
    std::map<Day, std::vector<FactId>> by_day_;
    std::vector<std::pair<Day, int>> flows_;
    std::vector<std::pair<Day, double>> heat_;
    std::vector<Plant> plants_;
};

}  // namespace

std::string flow_chart(Page& page, YardId yard) { return YardChart(page, yard).figure(page.in.journal.yard_name(yard)); }

}  // namespace waxtab
