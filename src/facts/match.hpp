#pragma once
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "facts/items.hpp"
#include "readings.hpp"

namespace waxtab {

/// One way a run of items can be read. Days and hives are still to be set by the line.
struct Candidate {
    Fact fact;
    /// The fact is about the yard or the honey, not about one hive.
    bool about_yard = false, about_honey = false, about_shed = false;
    /// The reading names the hive through a slot (new hive, giver): `fact.hive` stands.
    bool hive_named = false;
    /// `swap`: the line's hive is the other one, the named one gives.
    bool swap = false;
    /// Holds only where the line spoke of a super before: `super full. Off, 21 kg`.
    bool carries_box = false;
    /// Holds only where the line spoke of queen cells: `2 sealed cells, left 1`.
    bool after_cells = false;
    /// Holds only where the line spoke of brood and of no super: `no eggs, 2 frames sealed`.
    bool after_brood = false;
    /// Holds only where the line told of honey extracted: `extracted 36 kg lot B, 18.2%`.
    bool after_cups = false;
    bool after_lot = false;
    /// Holds only where the line told of jars: `filled 60 jars, gave away 4`.
    bool after_jars = false;
    /// Holds only where the clause names a feed: `1 gal + pollen patty 1/2 lb`.
    bool beside_food = false;
    /// A number that is not whole went where only whole things are counted: no reading.
    bool in_part = false;
    std::size_t row = 0;
};

/// Tries all rows of the table of readings on runs of items, and remembers clause shapes.
class Matcher {
public:
    /// Every distinct fact that `items` can be read as, using every word. `file_text` is the text the
    /// items' byte offsets point into.
    std::vector<Candidate> read(const std::vector<Item>& items, std::string_view file_text, const ItemContext& context);

    /// The example of the row that has most in common with `items`, to show when they read as nothing;
    /// empty when none has.
    std::string_view nearest_example(const std::vector<Item>& items) const;

private:
    struct Alternative {
        std::string term;     ///< literal term, or empty for a slot
        int slot = -1;
        int counted = 0;      ///< 0 must not be counted, 1 may, 2 must
    };
    struct Element {
        std::vector<Alternative> any;
        bool optional = false, several = false, text = false;
    };
    struct Row {
        std::vector<Element> elements;
        std::vector<std::pair<std::string, std::string>> fields;
    };
    /// Which element each item went to (-1: passed over).
    using Assignment = std::vector<int>;
    struct Found {
        std::size_t row;
        Assignment assignment;
    };

    /// The rows of grammar/readings.hpp, compiled once.
    static const std::vector<Row>& compiled();
    static Row compile(const grammar::ReadingRow& row);
    static Element compile_element(std::string_view text);
    bool accepts(const Alternative& alternative, const Item& item) const;
    bool accepts(const Element& element, const Item& item) const;
    void search(const Row& row, const std::vector<Item>& items, std::size_t at, unsigned used, Assignment& so_far,
                std::vector<Assignment>& found) const;
    std::vector<Found> match(const std::vector<Item>& items) const;
    bool plausible(const Row& row, const std::vector<Item>& items) const;
    Candidate build(const Found& found, const std::vector<Item>& items, std::string_view file_text, const ItemContext& context) const;

    std::map<std::string, std::vector<Found>> shapes_;
};

/// True when two facts say the same, days and hives apart.
bool same_content(const Fact& a, const Fact& b);

}  // namespace waxtab
