#include "report/fields.hpp"

#include <fmt/format.h>

#include "report/phrases.hpp"

namespace waxtab {

namespace {

/// The unit a dimension is given to machines in.
Unit machine_unit(Dimension dimension, Unit written, const Style& style) {
    switch (dimension) {
        case Dimension::mass: return style.mass == MassUnit::pound ? Unit::pound : Unit::kilogram;
        case Dimension::volume: return Unit::litre;
        case Dimension::share: return Unit::percent;
        case Dimension::temperature: return Unit::celsius;
        case Dimension::index: return Unit::refractive_index;
        case Dimension::duration: return Unit::day;
        case Dimension::count: return written == Unit::none ? Unit::piece : written;
        case Dimension::none: break;
    }
    return Unit::none;
}

/// The same amounts, to be printed in the machine's unit.
Measure in_machine_unit(const Measure& m, const Style& style) {
    Measure out = m;
    out.unit = machine_unit(m.dimension, m.unit, style);
    return out;
}

Number number_of(Measure m, std::int64_t amount) {
    m.amount = amount;
    return {number_text(m)};
}

/// Jars and combs are counted first and measured second.
bool counts_first(const Fact& fact) {
    const bool jars = fact.kind == Kind::jars || fact.kind == Kind::combs_packed || fact.kind == Kind::gone_out ||
                      fact.kind == Kind::come_back || fact.kind == Kind::stocktake ||
                      fact.kind == Kind::opening_stock || fact.kind == Kind::bought_in;
    return jars && fact.count >= 0;
}

std::string_view counted_thing(Kind kind) {
    switch (kind) {
        case Kind::super_on: case Kind::super_off: case Kind::super_count: case Kind::super_moved: return "supers";
        case Kind::brood_box_on: case Kind::brood_box_off: case Kind::brood_box_count: return "brood boxes";
        case Kind::frames_moved: case Kind::frames_off: return "frames";
        case Kind::jars: case Kind::gone_out: case Kind::come_back: case Kind::stocktake:
        case Kind::opening_stock: case Kind::bought_in: return "jars";
        case Kind::combs_packed: return "combs";
        case Kind::queen_cells: case Kind::cells_removed: case Kind::cells_left: return "queen cells";
        case Kind::cups: return "cups";
        case Kind::mites: return "mites";
        case Kind::stings: return "stings";
        default: return {};
    }
}

/// Collects fields under their names, leaving out nothing so that the names never change.
class FieldCollector {
public:
    explicit FieldCollector(const Style& style) : style_(style) {}
    void words(std::string_view name, std::string_view text) {
        if (text.empty()) return nothing(name);
        fields_.push_back({name, std::string(text)});
    }
    void count(std::string_view name, std::int64_t n, std::int64_t unsaid) {
        if (n == unsaid) return nothing(name);
        fields_.push_back({name, Number{fmt::format("{}", n)}});
    }
    void list(std::string_view name, std::vector<std::string> items) {
        if (items.empty()) return nothing(name);
        fields_.push_back({name, std::move(items)});
    }
    void measure(std::string_view name, std::string_view unit_name, const Measure& m) {
        if (!m.said()) return nothing(name), nothing(unit_name);
        const Measure out = in_machine_unit(m, style_);
        fields_.push_back({name, number_of(out, out.amount)});
        words(unit_name, unit_sign(out.unit));
    }
    /// The range, where the words left one.
    void range(const Measure& m) {
        if (!m.said() || m.low == m.high) return nothing("low"), nothing("high");
        const Measure out = in_machine_unit(m, style_);
        fields_.push_back({"low", number_of(out, out.low)});
        if (m.high == INT64_MAX) return nothing("high");   // at least so many
        fields_.push_back({"high", number_of(out, out.high)});
    }
    std::vector<Field> take() { return std::move(fields_); }

private:
    void nothing(std::string_view name) { fields_.push_back({name, {}}); }
    const Style& style_;
    std::vector<Field> fields_;
};

/// A box put on or taken off without a number is one, unless all are meant.
std::int32_t count_of(const Fact& fact) {
    const bool boxes = fact.kind == Kind::super_on || fact.kind == Kind::super_off || fact.kind == Kind::brood_box_on ||
                       fact.kind == Kind::brood_box_off || fact.kind == Kind::super_moved;
    const bool many = fact.box.by == BoxChoice::By::all || fact.box.by == BoxChoice::By::top_n;
    return boxes && fact.count < 0 && !many ? 1 : fact.count;
}

void main_value(FieldCollector& fields, const Fact& fact) {
    const bool by_count = counts_first(fact) || !fact.value.said();
    if (!by_count) return fields.measure("value", "unit", fact.value);
    fields.count("value", count_of(fact), -1);
    fields.words("unit", count_of(fact) == -1 ? std::string_view{} : counted_thing(fact.kind));
}

std::vector<std::string> names_of(const Journal& journal, const std::vector<HiveId>& hives) {
    std::vector<std::string> names;
    for (const HiveId id : hives) names.emplace_back(journal.hive_name(id));
    return names;
}

/// What a set-up line brought has no day.
std::string day_text(Day day) { return day == Day{} ? std::string{} : iso(day); }

std::string time_text(int minute) {
    return minute < 0 ? std::string{} : fmt::format("{:02}:{:02}", minute / 60, minute % 60);
}

void further(FieldCollector& fields, const Journal& journal, const Fact& fact) {
    const Measure& said = fact.count_range.said() ? fact.count_range : fact.value;
    fields.range(said);
    fields.words("about", said.about ? "yes" : "");
    fields.count("of", fact.value.of, 0);
    fields.count("count", count_of(fact), -1);
    if (counts_first(fact))
        fields.measure("size", "size_unit", fact.value);
    else
        fields.measure("size", "size_unit", {});
    fields.measure("second", "second_unit", fact.second);
    fields.words("other", journal.hive_name(fact.other));
    fields.list("hives", names_of(journal, fact.hives));
    fields.words("lot", fact.lot);
    fields.list("lots", fact.lots);
    fields.words("box2", words_of(fact.box2));
    fields.words("box_kind", fact.box_kind);
    fields.count("frames", fact.frames, 0);
    fields.words("comb", comb_text(fact.comb));
    fields.words("placing", placing_text(fact.placing));
    fields.words("detail", fact.detail);
    fields.words("manner", fact.manner);
    fields.words("text", fact.text);
    fields.list("assumed", assumptions(journal, fact));
}

}  // namespace

std::string_view placing_text(Placing placing) {
    switch (placing) {
        case Placing::over: return "over";
        case Placing::under: return "under";
        case Placing::between: return "between";
        case Placing::unsaid: break;
    }
    return {};
}

std::string words_of(const BoxChoice& box) {
    const std::string_view role = box.role == Role::brood ? "brood box" : "super";
    const std::string prefix = box.role == Role::brood ? "brood box " : "";
    switch (box.by) {
        case BoxChoice::By::unsaid: return {};
        case BoxChoice::By::sole: return std::string(role);
        case BoxChoice::By::top: return prefix + "top";
        case BoxChoice::By::bottom: return prefix + "bottom";
        case BoxChoice::By::middle: return prefix + "middle";
        case BoxChoice::By::number: return fmt::format("{} {}", role, box.number);
        case BoxChoice::By::label: return box.label;
        case BoxChoice::By::all: return prefix + "all";
        case BoxChoice::By::top_n: return fmt::format("{}top {}", prefix, box.number);
    }
    return {};
}

std::vector<Field> fields_of(const Journal& journal, const Fact& fact, const Style& style) {
    FieldCollector fields(style);
    fields.words("date", day_text(fact.happened));
    fields.words("noted", day_text(fact.noted));
    fields.words("time", time_text(fact.minute));
    fields.words("yard", journal.yard_name(fact.yard));
    fields.words("hive", journal.hive_name(fact.hive));
    fields.words("kind", name_of(fact.kind));
    fields.words("box", words_of(fact.box));
    main_value(fields, fact);
    fields.words("at", style.refs ? journal.sources.at(fact.span) : std::string{});
    further(fields, journal, fact);
    return fields.take();
}

}  // namespace waxtab
