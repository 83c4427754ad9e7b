#include "handbook/boxes.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace waxtab::handbook {
namespace {

constexpr double cm2_per_sq_in = 6.4516;
constexpr double sheet(double width_in, double height_in) { return width_in * height_in * cm2_per_sq_in; }
constexpr double pounds(double lb) { return lb * kg_per_lb; }

// Middle of the extractable honey of a full ten-frame box: 60-70, 35-40 and 25-30 lb.
constexpr double deep_kg = pounds(65), medium_kg = pounds(37.5), shallow_kg = pounds(27.5);
// An eight-frame box is put at 64 lb full where the ten-frame one is 80.
constexpr double eight_frame = 64.0 / 80.0;

constexpr std::string_view us_size =
    "box depths: article reprinted at brodiehaturned.blogspot.com (2021); sheets: beekeepingforum.co.uk";
constexpr std::string_view us_medium_size =
    "box depths: article reprinted at brodiehaturned.blogspot.com (2021); sheet from memory";
constexpr std::string_view us_honey = "a drum-heater maker's manual, p. 6 (60-70, 35-40, 25-30 lb)";
constexpr std::string_view eight_honey =
    "as the ten-frame box, times 64/80 (gross weights at brodiehaturned.blogspot.com)";
constexpr std::string_view uk_size = "dave-cushman.net; sheets: beekeepingforum.co.uk";
constexpr std::string_view uk_super_honey =
    "2 lb a frame (cotswoldbees.co.uk) and 25-30 lb a box (from memory), averaged";
constexpr std::string_view uk_brood_honey = "just over 2 kg or 5 lb a frame, BBKA News 216 (2013)";
constexpr std::string_view de_honey = "Bienen & Natur: about 2 kg a comb, Zander slightly more, Dadant brood 3 kg";
constexpr std::string_view dadant_size =
    "boxes and frames: Brother Adam's hive, 1948 article quoted at beesource.com; sheet: frame less bars";
constexpr std::string_view same_comb = "takes the National's comb (bbkamodules.wordpress.com, 2015); depth not known";

constexpr double national_shallow = sheet(13.4375, 5), national_deep = sheet(13.4375, 8);
constexpr auto brood = BoxRole::brood;
constexpr auto super = BoxRole::super;

constexpr std::array kinds{
    // name, role, frames, depth mm, sheet cm2, published kg, tare kg, sources
    BoxKind{"deep", brood, 10, 244, sheet(16.75, 8.625), deep_kg, {7.0, 9.0, 11.3}, us_size, us_honey},
    BoxKind{"medium", super, 10, 168, sheet(16.75, 5.75), medium_kg, {4.8, 6.5, 8.5}, us_medium_size, us_honey},
    BoxKind{"shallow", super, 10, 144, sheet(16.75, 4.875), shallow_kg, {3.9, 5.5, 7.5}, us_size, us_honey},
    BoxKind{"jumbo", brood, 10, 295, sheet(16.75, 10.75), 0, {8.0, 10.5, 13.0},
            "sheet: beekeepingforum.co.uk; depth from memory", ""},
    BoxKind{"8-frame deep", brood, 8, 244, sheet(16.75, 8.625), deep_kg * eight_frame, {5.6, 7.5, 9.5},
            us_size, eight_honey},
    BoxKind{"8-frame medium", super, 8, 168, sheet(16.75, 5.75), medium_kg * eight_frame, {4.0, 5.5, 8.5},
            us_medium_size, eight_honey},
    BoxKind{"8-frame shallow", super, 8, 144, sheet(16.75, 4.875), shallow_kg * eight_frame, {3.2, 4.5, 6.5},
            us_size, eight_honey},
    BoxKind{"ideal", super, 10, 133, sheet(16.75, 4.375), 0, {3.7, 5.0, 7.0}, from_memory, ""},
    BoxKind{"wsp", super, 10, 192, sheet(16.75, 6.75), 0, {5.5, 7.2, 9.5}, from_memory, ""},
    BoxKind{"national super", super, 11, 149, national_shallow, pounds((11 * 2.0 + 27.5) / 2), {4.0, 5.5, 7.5},
            uk_size, uk_super_honey},
    BoxKind{"national brood", brood, 11, 225, national_deep, 11 * 2.2, {6.0, 8.0, 10.5}, uk_size, uk_brood_honey},
    BoxKind{"14x12", brood, 11, 314, sheet(13.4375, 11.5), 0, {8.0, 10.5, 13.5}, uk_size, ""},
    BoxKind{"commercial", brood, 11, 267, national_deep * 70625 / 55000, 0, {7.5, 9.5, 12.0},
            "depth: beekeepingforum.co.uk; comb by the ratio of worker cells, bbkamodules.wordpress.com (2015)", ""},
    BoxKind{"smith super", super, 11, 0, national_shallow, pounds((11 * 2.0 + 27.5) / 2), {4.0, 5.5, 7.5},
            same_comb, uk_super_honey},
    BoxKind{"smith brood", brood, 11, 0, national_deep, 11 * 2.2, {6.0, 8.0, 10.5}, same_comb, uk_brood_honey},
    BoxKind{"wbc super", super, 10, 0, national_shallow, pounds((11 * 2.0 + 27.5) / 2) * 10 / 11, {3.2, 4.5, 6.5},
            same_comb, uk_super_honey},
    BoxKind{"wbc brood", brood, 10, 0, national_deep, 10 * 2.2, {5.0, 6.5, 9.0}, same_comb, uk_brood_honey},
    BoxKind{"dadant super", super, 10, 155, 43.0 * 12.0, 15.0, {3.9, 5.0, 8.0},
            dadant_size, "about 1.5 kg a comb, LWG Veitshoechheim"},
    BoxKind{"dadant brood", brood, 11, 295, 43.0 * 26.0, 11 * 3.0, {8.0, 11.0, 14.0}, dadant_size, de_honey},
    BoxKind{"zander", brood, 10, 230, 40.0 * 19.5, 20.5, {6.0, 8.0, 10.5},
            "frame 420 x 220 mm: Schwaebisch Hall beekeepers (lvwi.de); sheet: frame less bars; the rest from memory",
            de_honey},
    BoxKind{"dnm", brood, 11, 0, 35.0 * 19.8, 22.0, {6.0, 8.0, 10.5},
            "frame 370 x 223 mm: Schwaebisch Hall beekeepers (lvwi.de); sheet: frame less bars; the rest from memory",
            de_honey},
    BoxKind{"dnm 1.5", brood, 11, 0, 1.5 * 35.0 * 19.8, 0, {8.0, 10.5, 13.5},
            "half as much again as DNM: beeventure.de; frame count from memory", ""},
};

using Name = std::pair<std::string_view, std::string_view>;
constexpr std::array other_names{
    Name{"langstroth deep", "deep"},           Name{"full depth", "deep"},
    Name{"langstroth medium", "medium"},       Name{"illinois", "medium"},
    Name{"langstroth shallow", "shallow"},     Name{"langstroth jumbo", "jumbo"},
    Name{"national shallow", "national super"}, Name{"national deep", "national brood"},
    Name{"national 14x12", "14x12"},           Name{"commercial brood", "commercial"},
    Name{"half dadant", "dadant super"},       Name{"dadant half", "dadant super"},
    Name{"deutsch normal", "dnm"},             Name{"deutsch-normal", "dnm"},
};

constexpr char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

bool same(std::string_view a, std::string_view b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char x, char y) { return lower(x) == lower(y); });
}

double area_kg(const BoxKind& kind, double g_per_cm2) {
    return comb_cm2_per_side(kind) * 2 * kind.frames * g_per_cm2 / 1000;
}

/// Fewest frames at which the box, evenly spaced, still holds a full crop.
int fewest_full(const BoxKind& kind) { return std::max(kind.frames - 3, std::min(8, kind.frames - 1)); }

double frame_factor(const BoxKind& kind, int frames, bool spaced) {
    if (!spaced) return static_cast<double>(frames) / kind.frames;
    const int counted = std::max(frames, fewest_full(kind));
    const double full = 1 + gain_per_frame_left_out * (kind.frames - counted);
    return full * std::min(frames, counted) / counted;
}

}  // namespace

std::span<const BoxKind> box_kinds() { return kinds; }

const BoxKind* box_kind(std::string_view name) {
    for (const auto& [other, real] : other_names)
        if (same(name, other)) name = real;
    const auto found = std::find_if(kinds.begin(), kinds.end(), [&](const BoxKind& k) { return same(k.name, name); });
    return found == kinds.end() ? nullptr : &*found;
}

double comb_cm2_per_side(const BoxKind& kind) { return kind.foundation_cm2 * usable_share; }

Range full_kg(const BoxKind& kind) {
    const auto spread = [](double kg, double share) { return Range{kg * (1 - share), kg, kg * (1 + share)}; };
    if (kind.published_kg <= 0) return spread(area_kg(kind, unpublished_g_per_cm2), 0.25);
    const double area = area_kg(kind, honey_g_per_cm2.typical);
    const double kg = (2 * kind.published_kg + area) / 3;
    return spread(kg, std::abs(kind.published_kg / area - 1) <= 0.15 ? 0.15 : 0.20);
}

std::optional<Range> capacity(const BoxKind& kind, int frames, CombType comb) {
    if (frames < 1 || frames > kind.frames + 1) return std::nullopt;
    const bool sold_in_comb = comb == CombType::cut_comb || comb == CombType::sections;
    const double kept = comb == CombType::cut_comb ? 0.95 : comb == CombType::sections ? 0.90 : 1.0;
    return scaled(full_kg(kind), kept * frame_factor(kind, frames, !sold_in_comb));
}

std::optional<Range> frame_kg(const BoxKind& kind, int frames) {
    const auto box = capacity(kind, frames);
    if (!box) return std::nullopt;
    return scaled(*box, 1.0 / frames);
}

Range worker_cells(const BoxKind& kind) {
    return scaled(worker_cells_per_cm2, comb_cm2_per_side(kind) * 2 * kind.frames);
}

}  // namespace waxtab::handbook
