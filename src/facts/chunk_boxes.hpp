#pragma once
#include <vector>

#include "facts/items.hpp"

// The passes of `chunk` that settle which box a clause speaks of.
namespace waxtab {

/// A number that counts something.
bool is_count(const Item& item);
/// The x of `40 x 454 g`.
bool times_sign(const Item& item);

/// `second drawn super on`: the second super, of drawn comb.
void comb_after_super(std::vector<Item>& items);
/// A third super is the third one; a third of it is a share.
void thirds(std::vector<Item>& items);
/// `+2nd super`: a super, and which it will be.
void sign_and_ordinal(std::vector<Item>& items);
/// `under the 1st`, `below the capped one`: one place in the stack; not `under the second`, which may stand over another.
void beside_a_box(std::vector<Item>& items);
/// `the medium is nearly full`: the super; `a second medium on`: one more of that kind.
void kinds_as_supers(std::vector<Item>& items);
/// `last super off`: the one that is left.
void the_last_one(std::vector<Item>& items);
/// `second deep on`, where supers are of another kind: a brood box.
void deeps_as_brood(std::vector<Item>& items, std::string_view super_kind);
/// `top super`, `super 2`, `top and bottom supers`, `super "B4"`. A new super whose ordinal was said is
/// still just a super; so is a second brood box.
void boxes(std::vector<Item>& items);
/// `both full`, `the first is 80% full`: the super is not said again.
void boxes_without_noun(std::vector<Item>& items);

}  // namespace waxtab
