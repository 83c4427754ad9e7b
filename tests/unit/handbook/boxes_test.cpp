#include "handbook/boxes.hpp"

#include <cmath>
#include <set>
#include <string>

#include <catch2/catch.hpp>

using namespace waxtab::handbook;

static const BoxKind& kind(std::string_view name) {
    const BoxKind* found = box_kind(name);
    REQUIRE(found);
    return *found;
}

TEST_CASE("every box kind is complete", "[handbook][boxes]") {
    std::set<std::string> names;
    for (const BoxKind& k : box_kinds()) {
        INFO(std::string(k.name));
        CHECK(names.insert(std::string(k.name)).second);
        CHECK(box_kind(k.name) == &k);
        CHECK(k.frames >= 8);
        CHECK(k.foundation_cm2 > 400);
        CHECK((k.depth_mm == 0 || (k.depth_mm > 130 && k.depth_mm < 330)));
        CHECK(k.tare_kg.low > 0);
        CHECK(k.tare_kg.low < k.tare_kg.typical);
        CHECK(k.tare_kg.typical < k.tare_kg.high);
        CHECK_FALSE(k.size_source.empty());
        CHECK((k.published_kg > 0) == !k.honey_source.empty());
        const Range full = full_kg(k);
        CHECK(full.low <= full.typical * 0.8501);
        CHECK(full.high >= full.typical * 1.1499);
    }
    CHECK(names.size() == 22);
}

TEST_CASE("boxes are found by other names and in capitals", "[handbook][boxes]") {
    CHECK(box_kind("Langstroth Deep") == box_kind("deep"));
    CHECK(box_kind("half Dadant") == box_kind("dadant super"));
    CHECK(box_kind("National 14x12") == box_kind("14x12"));
    CHECK(box_kind("MEDIUM")->role == BoxRole::super);
    CHECK(box_kind("deep")->role == BoxRole::brood);
    CHECK(box_kind("shoe box") == nullptr);
    CHECK(box_kind("") == nullptr);
}

// Depths 9 5/8, 6 5/8, 5 11/16 in: article at brodiehaturned.blogspot.com (2021); National 149, 225, 314 mm:
// dave-cushman.net; Dadant 155 and 295 mm: 1948 article at beesource.com.
TEST_CASE("box depths", "[handbook][boxes]") {
    CHECK(kind("deep").depth_mm == Approx(9.625 * 25.4).margin(0.5));
    CHECK(kind("medium").depth_mm == Approx(6.625 * 25.4).margin(0.5));
    CHECK(kind("shallow").depth_mm == Approx(5.6875 * 25.4).margin(0.5));
    CHECK(kind("commercial").depth_mm == Approx(10.5 * 25.4).margin(0.5));
    CHECK(kind("national super").depth_mm == 149);
    CHECK(kind("national brood").depth_mm == 225);
    CHECK(kind("14x12").depth_mm == 314);
    CHECK(kind("dadant super").depth_mm == 155);
    CHECK(kind("dadant brood").depth_mm == 295);
}

// Comb of a brood box: Langstroth 2,750 and National 2,200 sq in, both sides (beekeepingforum.co.uk list).
TEST_CASE("usable comb against the listed comb areas", "[handbook][boxes]") {
    CHECK(comb_cm2_per_side(kind("deep")) * 20 / 6.4516 == Approx(2750).epsilon(0.02));
    CHECK(comb_cm2_per_side(kind("national brood")) * 22 / 6.4516 == Approx(2200).epsilon(0.02));
    CHECK(kind("national super").foundation_cm2 == Approx(433).margin(1));
    CHECK(kind("medium").foundation_cm2 == Approx(621).margin(1));
}

// Worker cells of a brood box: bbkamodules.wordpress.com (2015), National also 50,000 and Langstroth 61,400
// (beekeepingforum.co.uk).
TEST_CASE("worker cells against the teaching lists", "[handbook][boxes]") {
    const std::pair<const char*, double> listed[] = {{"national brood", 50000}, {"national brood", 55000},
                                                     {"deep", 61000},           {"deep", 61400},
                                                     {"commercial", 70625},     {"14x12", 80300},
                                                     {"dadant brood", 85000},   {"wbc brood", 45000}};
    for (const auto& [name, cells] : listed) {
        INFO(name << ' ' << cells);
        const Range r = worker_cells(kind(name));
        CHECK(r.low <= cells);
        CHECK(cells <= r.high);
    }
}

// Full boxes: deep 60-70, medium 35-40, shallow 25-30 lb (a drum-heater maker's manual, p. 6); half Dadant about
// 15 kg (LWG Veitshoechheim); National 25-30 lb from memory, 2 lb a frame at cotswoldbees.co.uk.
TEST_CASE("honey of a full box", "[handbook][boxes]") {
    CHECK(full_kg(kind("deep")).typical == Approx(29).margin(0.5));
    CHECK(full_kg(kind("medium")).typical == Approx(17.6).margin(0.5));
    CHECK(full_kg(kind("shallow")).typical == Approx(13.6).margin(0.5));
    CHECK(full_kg(kind("national super")).typical == Approx(12.3).margin(0.5));
    CHECK(full_kg(kind("dadant super")).typical == Approx(15.2).margin(0.5));
    const std::pair<const char*, std::pair<double, double>> pounds[] = {
        {"deep", {60, 70}}, {"medium", {35, 40}}, {"shallow", {25, 30}}, {"national super", {22, 30}}};
    for (const auto& [name, lb] : pounds) {
        INFO(name);
        const Range r = full_kg(kind(name));
        CHECK(r.low <= lb.first * kg_per_lb);
        CHECK(r.high >= lb.second * kg_per_lb);
    }
}

TEST_CASE("the share for unpublished kinds follows from the published ones", "[handbook][boxes]") {
    double sum = 0;
    int n = 0;
    for (const BoxKind& k : box_kinds()) {
        if (k.published_kg <= 0) continue;
        sum += full_kg(k).typical / (comb_cm2_per_side(k) * 2 * k.frames / 1000);
        ++n;
    }
    CHECK(sum / n == Approx(unpublished_g_per_cm2).margin(0.03));
}

// Canadian Association of Professional Apiculturists, quoted by donnellyfarmsohio.com (2013): 4.7 and 3.9 lb a
// frame; BBKA News 216 (2013): British deep just over 2 kg, Langstroth deep about 3 kg.
TEST_CASE("honey of a full frame", "[handbook][boxes]") {
    CHECK(frame_kg(kind("deep"), 10)->typical == Approx(3.0).margin(0.2));
    CHECK(frame_kg(kind("national brood"), 11)->typical == Approx(2.2).margin(0.2));
    CHECK(frame_kg(kind("medium"), 10)->low < 4.7 * kg_per_lb);
    CHECK(frame_kg(kind("medium"), 9)->high > 4.7 * kg_per_lb);
    CHECK_FALSE(frame_kg(kind("medium"), 0));
}

// Spacing geometry, 14 3/4 in box and 3/8 in gaps: each frame left out adds a gap's width of comb.
TEST_CASE("nine frames hold a little more than ten", "[handbook][boxes]") {
    const auto share = [](const char* name, int frames) {
        return capacity(kind(name), frames)->typical / full_kg(kind(name)).typical;
    };
    const double inside = 14.75, gap = 0.375;
    for (int n = 8; n <= 10; ++n) {
        INFO(n);
        CHECK(share("medium", n) == Approx((inside - (n + 1) * gap) / (inside - 11 * gap)).margin(0.002));
    }
    CHECK(share("medium", 9) == Approx(1.035));
    CHECK(share("medium", 8) == Approx(1.07));
    CHECK(share("medium", 4) == Approx(1.07 / 2));
    CHECK(share("8-frame medium", 8) == Approx(1.0));
    CHECK(share("8-frame medium", 7) == Approx(1.035));
    CHECK(share("8-frame medium", 6) < 0.9);
    CHECK(share("national super", 9) == Approx(1.07));
    CHECK(share("national super", 12) < 1.0);
}

TEST_CASE("capacity refuses impossible frame counts", "[handbook][boxes]") {
    CHECK_FALSE(capacity(kind("medium"), 0));
    CHECK_FALSE(capacity(kind("medium"), -3));
    CHECK_FALSE(capacity(kind("medium"), 12));
    CHECK(capacity(kind("medium"), 11));
}

TEST_CASE("capacity by comb", "[handbook][boxes]") {
    const BoxKind& shallow = kind("shallow");
    const Range drawn = *capacity(shallow, 10);
    CHECK(*capacity(shallow, 10, CombType::foundation) == drawn);
    CHECK(capacity(shallow, 10, CombType::cut_comb)->typical == Approx(0.95 * drawn.typical));
    CHECK(capacity(shallow, 9, CombType::cut_comb)->typical == Approx(0.95 * 0.9 * drawn.typical));
    // 28 one-pound sections to a box, from memory.
    CHECK(capacity(shallow, 10, CombType::sections)->typical == Approx(28 * kg_per_lb).epsilon(0.05));
}

// LWG Veitshoechheim: 3.9 and 4.8 kg put on, about 5; Zenodo 4953762: 4.9 with ten frames, eight-frame super
// 6.5-8.5; gross full medium 50-60 lb against 35-40 lb of honey.
TEST_CASE("empty weights hold the weighed ones", "[handbook][boxes]") {
    const Range dadant = kind("dadant super").tare_kg;
    CHECK(dadant.low <= 3.9);
    CHECK(dadant.typical == 5.0);
    CHECK(kind("8-frame medium").tare_kg.high >= 8.5);
    const BoxKind& medium = kind("medium");
    CHECK(medium.tare_kg.low <= 4.9);
    const double gross_lb = (full_kg(medium).typical + medium.tare_kg.typical) / kg_per_lb;
    CHECK(gross_lb >= 50);
    CHECK(gross_lb <= 60);
    const BoxKind& deep = kind("deep");
    const double deep_gross_lb = (full_kg(deep).typical + deep.tare_kg.typical) / kg_per_lb;
    CHECK(deep_gross_lb >= 80);
    CHECK(deep_gross_lb <= 90);
}
