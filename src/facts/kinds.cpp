#include "facts/kinds.hpp"

#include <algorithm>
#include <array>

namespace waxtab {

namespace {

/// In the order of `Kind`. An event changes hives, boxes, honey or the shed.
struct Row {
    std::string_view name;
    bool event;
};

constexpr std::array<Row, static_cast<std::size_t>(kind_count)> kind_rows = {{
    {"super-on", true}, {"super-off", true}, {"brood-box-on", true}, {"brood-box-off", true}, {"excluder-on", true}, {"excluder-off", true},
    {"escape-board-on", true}, {"escape-board-off", true}, {"upper-entrance-on", true}, {"upper-entrance-off", true}, {"feeder-on", true},
    {"feeder-off", true}, {"boxes-swapped", true}, {"brood-reversed", true}, {"super-lifted", true}, {"super-moved", true}, {"frames-moved", true},
    {"frames-off", true}, {"box-labelled", true}, {"super-count", false}, {"brood-box-count", false},
    {"hive-moved", true}, {"hive-renamed", true}, {"hive-sold", true}, {"hive-dead", true}, {"hive-ended", true}, {"hive-united", true},
    {"hive-split", true}, {"nuc-made", true}, {"swarm-hived", true}, {"hive-bought", true}, {"swarmed", true},
    {"full", false}, {"capped", false}, {"drawn", false}, {"shakes-out", false}, {"no-change", false}, {"hive-weight", false},
    {"weight-change", false}, {"box-weight", false},
    {"bees", false}, {"brood", false}, {"eggs", false}, {"larvae", false}, {"sealed-brood", false}, {"pattern", false}, {"crowding", false},
    {"strength", false}, {"temper", false}, {"stings", false}, {"stores", false}, {"pollen", false}, {"super-brood", false},
    {"queen", false}, {"queen-marked", true}, {"queen-clipped", true}, {"queen-introduced", true}, {"queen-mother", false}, {"cups", false},
    {"queen-cells", false}, {"cells-removed", true}, {"cells-left", false},
    {"feed", true}, {"feeder-state", false}, {"treatment", true}, {"treatment-on", true}, {"treatment-off", true}, {"mites", false},
    {"pest", false}, {"disease", false}, {"inspected", false},
    {"weather", false}, {"temperature", false}, {"flow", false}, {"bloom", false},
    {"opening-stock", true}, {"bought-in", true}, {"extracted", true}, {"moisture", false}, {"refractive-index", false}, {"drained", true},
    {"blended", true}, {"bulk-moved", true}, {"jars", true}, {"combs-packed", true}, {"gone-out", true}, {"come-back", true},
    {"stocktake", true}, {"wax", true}, {"best-before", false}, {"fermenting", false}, {"sections-done", false},
    {"shed", false}, {"shed-in", true}, {"shed-out", true}, {"combs-frozen", true}, {"comb-year", false},
    {"todo", false}, {"remark", false},
}};

}  // namespace

std::string_view name_of(Kind kind) { return kind_rows[static_cast<std::size_t>(kind)].name; }

std::optional<Kind> kind_named(std::string_view name) {
    const auto found = std::find_if(kind_rows.begin(), kind_rows.end(), [&](const Row& r) { return r.name == name; });
    if (found == kind_rows.end()) return {};
    return static_cast<Kind>(found - kind_rows.begin());
}

bool is_event(Kind kind) { return kind_rows[static_cast<std::size_t>(kind)].event; }

bool divides(Kind kind) { return kind == Kind::hive_split || kind == Kind::nuc_made; }

}  // namespace waxtab
