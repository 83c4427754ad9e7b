#pragma once
#include <optional>
#include <span>
#include <string_view>

#include "handbook/range.hpp"

namespace waxtab::handbook {

/// What a box of this kind is for when the keeper does not say.
enum class BoxRole { brood, super };

/// What the frames of a box hold, as far as it changes how much honey goes in.
enum class CombType { drawn, foundation, cut_comb, sections };

/// A box kind and its figures. A keeper's own figures always outrank these.
struct BoxKind {
    std::string_view name;              ///< `medium`, `national super`
    BoxRole role = BoxRole::super;
    int frames = 10;                    ///< full complement
    double depth_mm = 0;                ///< outside depth of the box; 0 when no source is known
    double foundation_cm2 = 0;          ///< one sheet, one side
    double published_kg = 0;            ///< honey in the full box by published figures; 0 when there are none
    Range tare_kg;                      ///< box with frames and empty drawn comb
    std::string_view size_source;       ///< of depth and foundation
    std::string_view honey_source;      ///< of published_kg
};

/// Share of a sheet of foundation that becomes usable comb. Worked out from two lists of cell counts and
/// sheet sizes (beekeepingforum.co.uk): 0.93 for the National, 0.95 for the Langstroth.
inline constexpr double usable_share = 0.94;

/// Grams of honey per cm2 of one comb face, full and capped. 1.65: Apiculture moderne, p. 56 (330 g per dm2,
/// both faces); 1.75: wiki.bienenzeitung.de (350 g); 1.61 and 1.64 from full Langstroth and British deep
/// frames: BBKA News 216 (2013). The middle value is the one used.
inline constexpr Range honey_g_per_cm2{1.45, 1.60, 1.75};

/// Grams per cm2 taken for kinds without a published full-box figure: over the kinds that have one, full_kg
/// lies on average 5 % under the area at 1.60. Own arithmetic.
inline constexpr double unpublished_g_per_cm2 = 1.52;

/// More honey in the box for every frame left out and the rest spaced evenly. Geometry of a 14 3/4 in box with
/// 3/8 in gaps: +3.5 % with nine frames, +7 % with eight. Source: hebertshoneybees.com (argument), own arithmetic.
inline constexpr double gain_per_frame_left_out = 0.035;

/// Worker cells per cm2 of one comb face. 3.46 and 3.52 worked out from lists of cells and comb area
/// (beekeepingforum.co.uk), 4 as rounded by Dorchester and Weymouth BKA.
inline constexpr Range worker_cells_per_cm2{3.45, 3.52, 4.0};

/// Every kind known here, Langstroth first.
std::span<const BoxKind> box_kinds();

/// The kind with this name or one of its other names (`langstroth deep`, `half dadant`), capitals ignored;
/// null when there is none.
const BoxKind* box_kind(std::string_view name);

/// Usable comb on one side of one frame, cm2. Source: usable_share times the sheet.
double comb_cm2_per_side(const BoxKind& kind);

/// Kilograms of honey when every frame of the full complement is full and capped. The typical value is two
/// parts published_kg and one part comb area at 1.60 g per cm2, or 1.52 g per cm2 where nothing is published.
/// The bounds are +-15 % where the two agree within 15 %, +-20 % where they do not, +-25 % where nothing is
/// published: full-frame figures in print lie a factor 1.5 apart.
Range full_kg(const BoxKind& kind);

/// Kilograms of honey in a full box with so many frames. Fewer frames, spaced evenly, hold a little more, down
/// to eight frames (seven in an eight-frame box) and at most three left out; below that proportionally less.
/// Foundation holds the same once drawn; cut comb 0.95 and sections 0.90 of it (from memory: 28 one-pound
/// sections in a shallow) and nothing for wide spacing. Nothing for fewer than one frame or more than one above
/// the full complement. Sources: full_kg, gain_per_frame_left_out.
std::optional<Range> capacity(const BoxKind& kind, int frames, CombType comb = CombType::drawn);

/// Kilograms of honey in one full frame of a box with so many frames: capacity / frames; nothing as there.
std::optional<Range> frame_kg(const BoxKind& kind, int frames);

/// Worker cells on both sides of all frames. Source: worker_cells_per_cm2.
Range worker_cells(const BoxKind& kind);

/// A queen excluder, kg. Source: field-study data, Zenodo 4953762 (Portugal): 0.8 to 1.0.
inline constexpr Range excluder_kg{0.8, 0.8, 1.0};

/// What boxes of one kind weigh empty varies with maker and timber by a factor of up to three
/// (bienenjournal.de, on the Liebefeld method), so every tare here is a stand-in for the keeper's own number.
/// Sources: half-Dadant super about 5 kg, LWG Veitshoechheim; super and ten frames 4.9, eight-frame super with
/// drawn comb 7.35 (6.5-8.5), brood box with foundation 10 (10-11.3): Zenodo 4953762. Others: scaled by depth
/// from those, from memory.
inline constexpr std::string_view tare_source =
    "LWG Veitshoechheim; field-study data, Zenodo 4953762; other kinds scaled from these, from memory";

}  // namespace waxtab::handbook
