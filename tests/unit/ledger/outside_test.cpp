// Rules and figures of others, each checked through the program with its source and how well it was seen:
// `published` (read in the source itself), `published, second hand` (a page that tells another's figure), `worked out`
// (own arithmetic from figures named), `from memory`.
#include <catch2/catch.hpp>

#include <functional>

#include "account_checked.hpp"
#include "advice/breeding.hpp"
#include "handbook/calendar.hpp"
#include "handbook/jars.hpp"
#include "handbook/moisture.hpp"
#include "ledger/records.hpp"
#include "ledger/yields.hpp"

using namespace waxtab;

namespace {

struct OutsideCheck {
    const char* what;
    const char* source;
    const char* flag;
    std::function<void()> check;
};


const std::string three = "units kg\nhive h1 at mill: deep, excluder, super drawn9 \"A\"\nhive h2 at mill: deep, excluder, super drawn9 \"B\"\n"
                          "hive h3 at mill: deep, excluder\n";
const std::string weighed_season = three + "2026-07-10 mill\nh1 super off 21.8 kg\nh2 super off 20 kg\n2026-07-12\nextracted 29.7 kg lot X from h1 h2\n"
                                    "h1 \"A\" after extracting 6.0 kg\nh2 \"B\" after extracting 6.1 kg\n";

void swarm_scores() {
    const Accounted a = account_text(three + "2026-05-10 mill\nh1 no queen cells\nh2 3 open queen cells\n2026-05-20 mill\nh3 swarmed\n", "2026-07-01");
    const std::vector<ColonyFigures> all = breeding(a.journal, a.history, a.ledger);
    REQUIRE(all.size() == 3);
    CHECK(all[0].swarm_score == 4.0);
    CHECK(all[1].swarm_score == 3.0);
    CHECK(all[2].swarm_score == 1.0);
}

void net_weights() {
    const Accounted a = account_text(weighed_season, "2026-08-01");
    REQUIRE(a.history.takings.size() == 2);
    CHECK(a.history.takings[0].net == kg(15.8));
    CHECK(a.history.takings[1].net == kg(13.9));
    CHECK(a.ledger.lots.at(0).weight.value == kg(29.7));
    CHECK(a.ledger.lots[0].shares.at(0).honey.value == kg(15.8));
}

void brood_nest_honey() {
    const Accounted a = account_text(three + "2026-08-10 mill\nh1 6 frames of stores\nh2 stores 12 kg\n", "2026-09-01");
    CHECK(a.ledger.harvests.empty());
    CHECK(a.ledger.lots.empty());
}

void yields_divided() {
    const Accounted a = account_text(weighed_season, "2026-08-01");
    const Yields y = yields(a.journal, a.history, a.ledger);
    REQUIRE(y.seasons.size() == 1);
    CHECK(y.seasons[0].harvested.size() == 2);
    CHECK(y.seasons[0].living.size() == 3);
    CHECK(y.seasons[0].per_harvested == kg(14.85));
    CHECK(y.seasons[0].per_living == kg(9.9));
}

void by_date() {
    const Accounted a = account_text(weighed_season + "2026-08-01 mill\n+super h1 drawn9 \"C\"\n2026-08-20 mill\nh1 \"C\" off 17 kg\n2026-08-21\nextracted 11 kg lot Y from h1\n",
                                     "2026-09-01");
    const Yields y = yields(a.journal, a.history, a.ledger);
    REQUIRE(y.hives.at(0).parts.size() == 2);
    CHECK(y.hives[0].parts[0].day < y.hives[0].parts[1].day);
    CHECK(y.hives[0].honey.value == y.hives[0].parts[0].honey.value + y.hives[0].parts[1].honey.value);
}

void one_step_each_way() {
    const Accounted a = account_text(weighed_season + "2026-08-02\nfilled 20 x 454 g lot X\nsold 12 x 454 g lot X to the corner shop\nbought 10 kg honey from a neighbour\n", "2026-09-01");
    const Records r = records(a.journal, a.history, a.ledger);
    bool out = false, in = false;
    for (const TradeRecord& t : r.trade) out = out || (!t.in && t.lot == "X" && t.who.find("corner shop") != std::string::npos && t.jars == 12), in = in || (t.in && t.honey == kg(10));
    CHECK(out);
    CHECK(in);
}

void medicine_fields() {
    Accounted a = account_text(three + "2026-08-10 mill\nh1 thymol strips in\n2026-09-07 mill\nh1 thymol strips out\n", "2026-10-01");
    for (Fact& f : a.journal.facts)
        if (f.kind == Kind::treatment_on) f.text = "batch 17A, from the vet, withdrawal period 0 days";
    const Records r = records(a.journal, a.history, a.ledger);
    REQUIRE(r.medicines.size() == 1);
    const MedicineRecord& m = r.medicines[0];
    CHECK(m.batch == "17A");
    CHECK(m.supplier == "the vet");
    CHECK(m.withdrawal == "0 days");
    CHECK(m.days == 28);
    CHECK(m.missing == std::vector<std::string>{"quantity"});
}

void blend_of_two() {
    const Accounted a = account_text("units kg\n2026-08-01\nopening stock 40 kg lot A\nopening stock 60 kg lot B\nmoisture 19.2% lot A\nmoisture 16.8% lot B\n"
                                     "2026-08-02\nblended lots A and B into lot C\n", "2026-09-01");
    const Lot* c = a.ledger.lot("C");
    REQUIRE(c);
    REQUIRE(c->water);
    CHECK(c->water->value == 178);
    CHECK(c->water->low <= c->water->value);
    CHECK(c->water->high >= c->water->value);
}

void pearson_square() {
    const auto milk = handbook::kg_to_reach(5.19, 40.0, 3.5, 1.5);
    REQUIRE(milk);
    CHECK(*milk == Approx(94.81).epsilon(0.001));
}

void four_answers() {
    const auto answers = handbook::limit_answers(18.7, false);
    CHECK(answers[0].met);            // EU honey law, 20 %
    CHECK(answers[1].limit->name == "US grade C");
    CHECK_FALSE(answers[2].met);      // association jar, 18 %
    CHECK_FALSE(answers[3].met);      // safe for a year, below 17.1 %
}

void lochhead() {
    CHECK(handbook::fermentation(17.0) == handbook::Fermentation::safe);
    CHECK(handbook::fermentation(18.0) == handbook::Fermentation::safe_under_1000);
    CHECK(handbook::fermentation(19.0) == handbook::Fermentation::safe_under_10);
    CHECK(handbook::fermentation(20.0) == handbook::Fermentation::safe_under_1);
    CHECK(handbook::fermentation(20.1) == handbook::Fermentation::always_in_danger);
}

const OutsideCheck outside_checks[] = {
    {"a super is weighed before and after extracting, the difference is the harvest, to 100 g", "COLOSS BEEBOOK, J. Apic. Res. 52(1), 2013, 3.3.1", "published", net_weights},
    {"honey of the brood nest does not count", "COLOSS BEEBOOK, J. Apic. Res. 52(1), 2013, 3.3.1", "published", brood_nest_honey},
    {"harvests are summed and kept by date", "COLOSS BEEBOOK, J. Apic. Res. 52(1), 2013, 3.3.1", "published", by_date},
    {"a mean leaves out colonies without a harvest unless they are counted: both are said", "USDA NASS, Honey (22 Mar 2016), notes", "published", yields_divided},
    {"swarming score, four points, 4 none, 1 swarmed; the season's lowest", "COLOSS BEEBOOK, J. Apic. Res. 52(1), 2013, 3.3.3, Table 6; the order of the numbers worked out", "published", swarm_scores},
    {"one step back, one step forward", "Reg. (EC) 178/2002 art. 18, as taught by the UK Food Standards Agency", "published", one_step_each_way},
    {"what a medicine record holds; a withdrawal period of zero is an entry", "SI 2013/2033 regs 17-19; Reg. (EU) 2019/6 art. 108", "published", medicine_fields},
    {"40 kg at 19.2 % and 60 kg at 16.8 % give 17.76 %", "mass balance", "worked out", blend_of_two},
    {"40 % cream and 1.5 % milk to 3.5 %: 5.19 and 94.81 parts", "Pearson square, gifsq.com", "published, second hand", pearson_square},
    {"four limits, four answers", "Directive 2001/110/EC; 50 FR 15861; DLR Westpfalz; A Practical Manual of Beekeeping", "published", four_answers},
    {"fermentation by water and yeasts", "Lochhead's scheme in A Practical Manual of Beekeeping, table 2", "published, second hand", lochhead},
    {"1.4900 at 20 C is 18.6 % water", "S. Bogdanov, Book of Honey, ch. 4 (2011), after Chataway", "published",
     [] { CHECK(*handbook::water_percent(1.4900, 20) == Approx(18.6)); }},
    {"a 454 g jar may be short by 3 %", "Directive 76/211/EEC, Annex I 2.4; which column is per cent: worked out", "published",
     [] { CHECK(*handbook::tolerable_negative_error(454) == Approx(13.62)); }},
    {"a 250 g jar may be short by 9 g", "Directive 76/211/EEC, Annex I 2.4", "published", [] { CHECK(*handbook::tolerable_negative_error(250) == Approx(9)); }},
    {"no lot mark where the date shows day and month", "Directive 2011/91/EU, summary", "published",
     [] { CHECK_FALSE(handbook::lot_mark_needed({.best_before_with_day = true})); CHECK(handbook::lot_mark_needed({})); }},
    {"a queen is out on day 16, 8 days after sealing", "Queensland DPI table at academickids.com; Bee Craft, 20 June 2018", "published, second hand",
     [] { CHECK(handbook::emergence(handbook::QueenStart::cell_sealed)->usual_to == 8); }},
    {"a sealed cell that is found is out in 0 to 8 days", "worked out from the table of development", "worked out",
     [] { CHECK(handbook::emergence(handbook::QueenStart::sealed_cell_found)->usual_from == 0); CHECK(handbook::emergence(handbook::QueenStart::sealed_cell_found)->usual_to == 8); }},
    {"first eggs 14 to 21 days after emergence", "Trunch Beekeepers", "published",
     [] { CHECK(handbook::first_eggs(handbook::QueenStart::virgin_emerged).usual_from == 14); CHECK(handbook::first_eggs(handbook::QueenStart::virgin_emerged).usual_to == 21); }},
    {"a test frame at about day 30 from a sealed cell", "mating within 3-4 weeks: Breconshire BKA (Sept 2025); the day itself from memory", "from memory",
     [] { CHECK(handbook::first_eggs(handbook::QueenStart::sealed_cell_found).overdue == 30); }},
    {"no honey for infants under twelve months", "CDC; American Academy of Pediatrics", "published, second hand", [] { CHECK(handbook::infant_months == 12); }},
};

}  // namespace

TEST_CASE("outside checks, each with its source and how well it was seen", "[ledger][outside]") {
    for (const OutsideCheck& c : outside_checks) {
        INFO(c.what << "\nsource: " << c.source << "\nflag: " << c.flag);
        CHECK(std::string(c.source).size() > 3);
        c.check();
    }
}
