// Feeds, treatments, mites, disease, stores, shed, to-dos.
#include <catch2/catch.hpp>

#include "mentor.hpp"

using namespace waxtab;

namespace {

const std::vector<MentorCase> care_cases{
    {"feed on with supers on", "Codex STAN 12-1981: no added ingredients", "2026-05-12",
     mill + "2026-05-12 mill\nh3 top 20% full, fed 2 L syrup 1:1\n", {"h3 feed-with-supers: not honey"}, {}},
    {"feed given, super wanted: the feed comes off first", "Codex STAN 12-1981; precedence of food over room", "2026-05-12",
     mill + "2026-05-05 mill\nflow heavy\nh3 top 50% full\n2026-05-12 mill\nflow heavy\nh3 top 95% full, feeder on\n",
     {"h3 feed-with-supers: over: put a super on"}, {"h3 room-runs-out"}},
    {"syrup given before supering is carried up", "correction on feeds; wvbeekeeper.blogspot.com", "2026-05-20",
     mill_bare + "2026-05-01 mill\nh3 fed 4 L syrup 1:1\n2026-05-10 mill\n+super h3 drawn9\n", {"h3 fed-super: 9 days before", "h3 fed-super: possible"}, {"h3 feed-with-supers"}},
    {"two weeks before the super: possible, and nothing is held up", "common practice, no source: a fortnight for moving stores", "2026-06-10",
     mill_bare + "2026-04-18 mill\nh3 fed 2 L syrup\n2026-05-02 mill\n+super h3 drawn9\n2026-06-10 mill\nh3 super full, super fully capped\n",
     {"h3 fed-super: possible", "h3 fed-super: 14 days before the super", "h3 take-when-ripe"}, {"h3 fed-super: certain", "h3 feed-with-supers"}},
    {"three weeks before it: silence", "as above", "2026-05-20",
     mill_bare + "2026-04-10 mill\nh3 fed 2 L syrup\n2026-05-02 mill\n+super h3 drawn9\n", {}, {"h3 fed-super", "h3 feed-with-supers"}},
    {"a feed of spring and one of autumn do not join over the summer", "common practice, no source: a portion is gone within days", "2026-09-20",
     mill + "2026-03-10 mill\nh3 fed 2 L syrup\n2026-06-20 mill\nh3 super full, super fully capped\n2026-08-01 mill\nh3 super off\n2026-09-05 mill\nh3 fed 4 L syrup\n",
     {}, {"h3 fed-super"}},
    {"fed with the super on: certain", "Codex STAN 12-1981", "2026-05-20",
     mill + "2026-05-01 mill\nh3 super 20% full, fed 2 L syrup\n", {"h3 fed-super: certain", "h3 fed-super: not to be sold as honey"}, {}},
    {"a feeder nobody noted off is asked about", "Codex STAN 12-1981; the keeper's own notes", "2026-05-20",
     mill_bare + "2026-04-18 mill\nh3 feeder on\n2026-05-02 mill\n+super h3 drawn9\n",
     {"h3 feed-with-supers: possible: its end was not noted", "h3 feed-with-supers: if it is off or empty, note that", "h3 fed-super: possible"},
     {"h3 fed-super: certain"}},
    {"syrup in early spring does not mark a super of May", "correction on feeds: only what can be carried up", "2026-05-20",
     mill_bare + "2026-03-05 mill\nh3 fed 2 L syrup 1:1\n2026-05-10 mill\n+super h3 drawn9\n", {}, {"h3 fed-super", "h3 feed-with-supers"}},
    {"honey is no feed", "National Bee Unit, Best Practice Guideline No. 7: disease, robbing", "2026-04-10",
     mill_bare + "2026-04-08 mill\nh3 fed honey 2 kg\n", {"h3 honey-fed: foul brood", "h3 honey-fed: from elsewhere"}, {}},
    {"honey fed with a super on is not the super's honey either", "Codex STAN 12-1981; National Bee Unit, Best Practice Guideline No. 7", "2026-05-12",
     mill + "2026-05-12 mill\nh3 top 20% full, fed honey 2 kg\n", {"h3 honey-fed", "h3 feed-with-supers"}, {}},
    {"sugar fed: no word of honey", "National Bee Unit, Best Practice Guideline No. 7: white sugar", "2026-04-10",
     mill_bare + "2026-04-08 mill\nh3 fed 2 kg sugar\n", {}, {"h3 honey-fed"}},
    {"a treatment with supers on: read the label", "VMD and NBU notice (amitraz); labels differ", "2026-06-10",
     mill + "2026-06-08 mill\nh3 top 50% full, amitraz strips in\n", {"h3 treatment-with-supers: label"}, {}},
    {"no super goes on and none comes off while strips are in", "VMD and NBU notice; precedence of law over room", "2026-06-10",
     mill + "2026-06-01 mill\nflow heavy\nh3 top 50% full\n2026-06-08 mill\nflow heavy\nh3 top 95% full, top 90% capped, amitraz strips in\n",
     {"h3 treatment-with-supers: over: "}, {"h3 room-runs-out", "h3 take-when-ripe"}},
    {"supers that were on stay marked", "correction on treatments: until the keeper clears them", "2026-07-10",
     mill + "2026-05-01 mill\nh3 thymol strips in\n2026-06-01 mill\nh3 thymol strips out\n2026-07-10 mill\nh3 top full, top fully capped\n",
     {"h3 treated-super: cleared it with label and law"}, {"h3 take-when-ripe"}},
    {"strips in longer than noted", "the keeper's own note", "2026-10-20",
     mill_bare + "2026-08-20 mill\nh3 amitraz strips in, 42 days\n", {"h3 strips-out: noted for 42 days"}, {}},
    {"strips with no time noted are asked about", "beekeepers' news of 24 Oct 2012: 56 days at most", "2026-10-20",
     mill_bare + "2026-08-10 mill\nh3 amitraz strips in\n", {"h3 strips-out: look up"}, {}},
    {"strips just in: silence", "the keeper's own note", "2026-08-25",
     mill_bare + "2026-08-20 mill\nh3 amitraz strips in, 42 days\n", {}, {"h3 strips-out"}},
    {"formic acid above the label's heat", "label Vm 40476/4000: 10-29.5 C on the first day", "2026-08-12",
     mill_bare + "2026-08-12 mill\n32C sunny\nh3 treated with formic acid\n", {"h3 treatment-too-warm: 29.5"}, {}},
    {"formic acid within it", "label Vm 40476/4000", "2026-08-12",
     mill_bare + "2026-08-12 mill\n24C sunny\nh3 treated with formic acid\n", {}, {"h3 treatment-too-warm"}},
    {"mites above the keeper's threshold", "3 per 100 in use at USDA-ARS and by clubs; the setting is the keeper's", "2026-08-20",
     mill_bare + "threshold mites 3%\n2026-08-20 mill\nh3 alcohol wash 12/300\n", {"h3 mites-above-threshold: your threshold"}, {}},
    {"advice on a treatment defers to label and law", "US EPA advisory (Jan 2024)", "2026-08-20",
     mill_bare + "threshold mites 3%\n2026-08-20 mill\nh3 alcohol wash 12/300\n", {"h3 treatment-care: label and your law decide"}, {}},
    {"stores not known in September", "basicbeekeeping, lesson 119: look into the brood box", "2026-09-05",
     mill_bare + "2026-09-01 mill\nh3 inspected\n", {"- winter-stores-unknown: by 2026-09-16"}, {}},
    {"hunger in the cold: no syrup", "no syrup below 13 C: texts on feeding dates", "2026-03-10",
     mill_bare + "2026-03-09 mill\n6C\nh3 light on stores\n", {"h3 hunger: fondant"}, {}},
    {"hunger in October, no temperature noted: no syrup", "norfolkbeekeepers.org.uk: fed by the end of September; no syrup below 13 C", "2026-10-12",
     mill_bare + "2026-10-10 mill\nh3 light on stores\n", {"h3 hunger: feed fondant"}, {"h3 hunger: feed syrup"}},
    {"hunger on a warm day of November may be syrup", "no syrup below 13 C: texts on feeding dates", "2026-11-02",
     mill_bare + "2026-11-01 mill\n16C\nh3 light on stores\n", {"h3 hunger: feed syrup"}, {}},
    {"hunger in July down under is winter", "no syrup below 13 C; the calendar of the southern half", "2026-07-12",
     "units kg\nseason 1 October to 31 March\nswarm season 1 September to 15 December\nhive h3 at mill: deep\n2026-07-10 mill\nh3 light on stores\n",
     {"h3 hunger: feed fondant"}, {}},
    {"light stores, and a flow since: they find it themselves", "common practice, no source", "2026-06-15",
     mill_bare + "2026-06-07 mill\nh3 light on stores\n2026-06-14 mill\nflow heavy\nh3 calm\n", {}, {"h3 hunger"}},
    {"fed since: hunger is answered", "common practice, no source", "2026-03-12",
     mill_bare + "2026-03-09 mill\nh3 light on stores\n2026-03-10 mill\nh3 fed 1 kg fondant\n", {}, {"h3 hunger"}},
    {"mites below it: silence", "as above", "2026-08-20", mill_bare + "threshold mites 3%\n2026-08-20 mill\nh3 alcohol wash 3/300\n", {},
     {"h3 mites-above-threshold"}},
    {"a drop is not compared with a wash", "different units; BEEBOOK methods", "2026-08-20",
     mill_bare + "threshold mites 3%\n2026-08-20 mill\nh3 drop 40 mites in 3 days\n", {}, {"h3 mites-above-threshold"}},
    {"recount after treatment", "common practice, no source", "2026-09-20",
     mill_bare + "2026-08-20 mill\nh3 alcohol wash 12/300, amitraz strips in, 14 days\n2026-09-05 mill\nh3 amitraz strips out\n",
     {"- mites-recount: no count noted since"}, {"h3 mites-above-threshold"}},
    {"counts are due before the winter bees", "common practice, no source", "2026-07-25",
     mill_bare + "2026-07-20 mill\nh3 inspected\n", {"- mites-count-due: winter bees"}, {}},
    {"a dead hive is shut against robbers", "common practice, no source", "2026-03-16", mill_bare + "2026-03-15 mill\nh3 dead\n", {"h3 dead-out: before its combs go anywhere"}, {"h3 hunger"}},
    {"its boxes gone: silence", "the journal itself", "2026-03-20", mill_bare + "2026-03-15 mill\nh3 dead\n2026-03-18 mill\nh3 brood box off\n", {}, {"h3 dead-out"}},
    {"a lot of treated supers says which, where and when", "Reg. (EU) 2019/6 art. 108", "2026-08-20",
     mill + "2026-07-01 mill\nh3 thymol strips in\n2026-08-10 mill\nh3 thymol strips out, super off 20 kg\n2026-08-12\nextracted 13 kg lot T from h3\n",
     {"- lot-concerns: thymol on 2026-07-01 at h3: in while its supers were on", "- lot-concerns: certain"}, {}},
    {"a lot of a super put on after a feed: possible", "common practice, no source: a fortnight for moving stores", "2026-07-20",
     mill_bare + "2026-04-20 mill\nh3 fed 2 L syrup\n2026-04-30 mill\n+super h3 drawn9\n2026-07-10 mill\nh3 super off 20 kg\n2026-07-12\nextracted 13 kg lot T from h3\n",
     {"- lot-concerns: possible", "- lot-concerns: fed shortly before its supers went on"}, {"- lot-concerns: certain"}},
    {"young notes do not tell that no count was made", "the journal itself; common practice, no source", "2026-05-20",
     mill_bare + "2026-05-05 mill\nh3 eggs seen\n", {}, {"- mites-count-due"}},
    {"nor that it is so many days ago", "the journal itself", "2026-06-10",
     mill_bare + "2026-05-05 mill\nh3 eggs seen\n", {"- mites-count-due: since the notes begin on 2026-05-05"}, {"- mites-count-due: 60 days"}},
    {"a count of mites has its range", "Poisson: 8 samples of 10 within 1.28 roots", "2026-08-20",
     mill_bare + "2026-08-20 mill\nh3 alcohol wash 12/300\n", {"h3 mites-above-threshold: 12 mites in 300 bees counted (by chance alone 2.5 to 5.5 per 100)"}, {}},
    {"a colony that was united is not asked to unite", "honey.org.au: under 6 frames", "2026-09-10",
     "units kg\nhive h3 at mill: deep\nhive h4 at mill: deep\n2026-09-04 mill\nh3 4 frames of bees\n2026-09-06 mill\nh4 united with h3\n", {}, {"h3 small-colony"}},
    {"hunger with honey above: leave it to the bees", "common practice, no source; National Bee Unit, starvation alert (Sept 2017)", "2026-06-15",
     mill + "2026-06-15 mill\nno flow\nh3 super 60% full, light on stores\n", {"h3 hunger: leave the bees what is in them"}, {}},
    {"March, and the notes have just begun", "bees-online.at (Feb 2021); the journal itself", "2026-03-10",
     mill_bare + "2026-03-08 mill\nh3 flying\n", {"- spring-hunger: no stores noted at h3"}, {"- spring-hunger: three weeks"}},
    {"drawn supers of spring are about to go on", "common practice, no source: moth is a matter of storing", "2026-05-05",
     mill_bare + "shed: 12 supers drawn\n2026-05-01 mill\nh3 eggs seen\n", {}, {"- shed-moth"}},
    {"foulbrood suspected stops everything that moves", "local law on notifiable bee diseases", "2026-06-08",
     "units kg\nhive h3 at mill: deep, excluder, super drawn9\nhive h4 at mill: deep, excluder, super drawn9\n"
     "2026-06-01 mill\nflow heavy\nh3 top 40% full\nh4 top 50% full\n2026-06-08 mill\nflow heavy\nh3 top 95% full, top 90% capped\n"
     "h4 foulbrood suspected\n",
     {"- notifiable-disease: inspector", "- notifiable-disease: over: "}, {"h3 room-runs-out", "h3 take-when-ripe"}},
    {"another yard goes on", "local law: the yard stands still, not the keeper", "2026-06-08",
     "units kg\nhive h3 at mill: deep, excluder, super drawn9\nhive h4 at home: deep, excluder\n2026-06-01 mill\nflow heavy\nh3 top 40% full\n"
     "2026-06-08 mill\nflow heavy\nh3 top 95% full\n2026-06-08 home\nh4 foulbrood suspected\n",
     {"- notifiable-disease: home", "h3 room-runs-out"}, {}},
    {"chalk brood is no standstill", "not notifiable; common practice", "2026-06-08", mill + "2026-06-08 mill\nh3 chalk brood\n", {},
     {"- notifiable-disease"}},
    {"short of winter stores in a cold climate", "honeybeesuite.com: US North 80-90 lb; feeding by mid-October", "2026-09-10",
     mill_bare + "climate cold\n2026-09-08 mill\nh3 4 frames of stores\n", {"h3 winter-stores: cold climate", "h3 winter-stores: by 2026-10-15"}, {}},
    {"the same in a mild one needs less, and ends in September", "honeybeesuite.com: US South 40 lb; Norfolk: end of September", "2026-09-10",
     mill_bare + "climate mild\n2026-09-08 mill\nh3 stores 12 kg\n", {"h3 winter-stores: mild climate", "h3 winter-stores: by 2026-09-30"}, {}},
    {"enough stores: silence", "BBKA News 216 (2013): 20 kg", "2026-09-10",
     mill_bare + "climate middle\n2026-09-08 mill\nh3 stores 26 kg\n", {}, {"h3 winter-stores"}},
    {"what was fed counts", "Curth, Hohenheim (1981): 2:1 syrup gives 1.00 kg a litre", "2026-09-20",
     mill_bare + "climate mild\n2026-09-08 mill\nh3 stores 10 kg\n2026-09-12 mill\nh3 fed 10 L syrup 2:1\n", {}, {"h3 winter-stores"}},
    {"too late for syrup", "norfolkbeekeepers.org.uk; no syrup below 13 C", "2026-11-01",
     mill_bare + "climate mild\n2026-10-25 mill\nh3 stores 8 kg\n", {"h3 winter-stores: fondant"}, {}},
    {"light stores in a June gap, supers on", "honey and feed apart: supers off first", "2026-06-15",
     mill + "2026-06-15 mill\nno flow\nh3 top empty, light on stores\n", {"h3 hunger: honey supers off first"}, {"h3 feed-with-supers"}},
    {"March: heft the hives", "bees-online.at (Feb 2021); Bienen & Natur", "2026-03-10",
     mill_bare + "2026-02-01 mill\nh3 inspected\n", {"- spring-hunger: heft"}, {}},
    {"few bees before winter", "honey.org.au: under 6 frames", "2026-09-05",
     mill_bare + "2026-09-04 mill\nh3 4 frames of bees\n", {"h3 small-colony: fewer than 6"}, {}},
    {"no excluder under a winter super", "club page on wintering", "2026-10-01",
     mill + "2026-09-28 mill\nh3 inspected\n", {"h3 excluder-winter: queen below"}, {}},
    {"a season that ends in July: the excluder stays till autumn", "club page on wintering: before winter", "2026-07-14",
     "units kg\nseason 20 March to 10 July\nhive h3 at mill: deep, excluder, super drawn9\n2026-07-12 mill\nh3 super 40% full\n", {"h3 season-over"},
     {"h3 excluder-winter", "- winter-stores-unknown"}},
    {"a ripe super after the season is taken, not asked about", "said once: G. S. Demuth; Die Honigmacher", "2026-09-05",
     mill + "2026-09-04 mill\nh3 super full, super fully capped\n", {"h3 take-when-ripe"}, {"h3 season-over"}},
    {"hefted heavy since: stores are plenty", "the later word counts", "2026-10-05",
     mill_bare + "climate mild\n2026-09-12 mill\nh3 4 frames of stores\n2026-10-03 mill\nh3 plenty of stores\n", {}, {"h3 winter-stores"}},
    {"winter bees are raised by the calendar, not by the honey season", "common practice, no source: July to September", "2026-06-06",
     "units kg\nseason 20 March to 10 July\nhive h3 at mill: deep\n2026-03-20 mill\nh3 eggs seen\n2026-06-06 mill\nh3 eggs seen\n",
     {"- mites-count-due: 60 days"}, {"- mites-count-due: winter bees"}},
    {"a hot day four weeks ago is no news", "label Vm 40476/4000", "2026-08-18",
     mill_bare + "2026-07-20 mill\n35C\nh3 thymol strips in\n2026-08-17 mill\nh3 thymol strips out\n", {}, {"h3 treatment-too-warm"}},
    {"robbers: smaller entrance", "factdirectory.com (weak)", "2026-08-20", mill_bare + "2026-08-20 mill\nh3 robbing\n", {"- reduce-entrance"}, {}},
    {"upper entrance without flow", "common practice, no source", "2026-08-20",
     mill + "2026-06-01 mill\nh3 upper entrance opened\n2026-08-20 mill\nflow over\nh3 top 50% full\n", {"h3 upper-entrance: shut"}, {}},
    {"wet supers and moth", "COLOSS BEEBOOK, wax moth, 5.8.1", "2026-08-20",
     mill_bare + "shed: 3 supers wet\n2026-08-20 mill\nh3 inspected\n", {"- shed-moth: 3 wet supers"}, {}},
    {"drawn supers and moth: how cold, how long", "COLOSS BEEBOOK, wax moth, 5.8.1: over 24 h at 0 C, 2 h at -15 C", "2026-08-20",
     mill_bare + "shed: 4 supers drawn\n2026-08-20 mill\nh3 inspected\n", {"- shed-moth: over 24 hours at 0 C, 2 hours at -15 C"}, {"- shed-frozen"}},
    {"frozen supers: silence on moth, shut them tight", "COLOSS BEEBOOK, wax moth, 5.8.1: thawing combs out of reach of moths, dry before bagging",
     "2026-08-20", mill_bare + "shed: 4 supers drawn\n2026-08-18 mill\nfroze 4 supers drawn for 3 days\n",
     {"- shed-frozen: shut the frozen supers tight"}, {"- shed-moth"}},
    {"frozen wet supers are not bagged", "COLOSS BEEBOOK, wax moth, 5.8.1: wet comb moulds; freezer until use, or on strong colonies",
     "2026-08-20", mill_bare + "shed: 3 supers wet\n2026-08-18 mill\nfroze 3 supers wet for 2 days\n", {"- shed-frozen: strong colonies"},
     {"- shed-frozen: shut the frozen", "- shed-moth"}},
    {"the ones that were not frozen", "COLOSS BEEBOOK, wax moth, 5.8.1", "2026-08-20",
     mill_bare + "shed: 4 supers drawn\n2026-08-01 mill\nfroze 3 supers drawn for 3 days\n", {"- shed-moth: 1 drawn super; 3 more frozen"},
     {"- shed-frozen"}},
    {"moth does not fly in winter", "common practice, no source: cold keeps moth away", "2026-12-10",
     mill_bare + "shed: 4 supers drawn, 2 supers wet\n2026-11-20 mill\nh3 inspected\n", {}, {"- shed-moth"}},
    {"foundation is no food for moth", "COLOSS BEEBOOK, wax moth: comb", "2026-08-20",
     mill_bare + "shed: 6 supers foundation\n2026-08-20 mill\nh3 inspected\n", {}, {"- shed-moth", "- shed-frozen"}},
    {"old honey comb that never held brood is kept", "University of Minnesota Bee Squad speaks of brood comb", "2026-05-20",
     mill + "2026-05-18 mill\nh3 super comb drawn in 2015\n", {}, {"h3 comb-age"}},
    {"a super that held brood is brood comb", "COLOSS BEEBOOK, wax moth: comb that held brood; University of Minnesota Bee Squad", "2026-05-20",
     mill + "2026-05-18 mill\nh3 brood in super, super comb drawn in 2015\n", {"h3 comb-age: the super"}, {}},
    {"jars without a best-before day", "two years are usual (UK pages); DLR Westpfalz: by moisture", "2026-08-10",
     mill + "2026-08-01 mill\nh3 top off 22kg\n2026-08-02\nextracted 14 kg lot B from h3\nfilled 20 x 454 g lot B\n", {"- best-before: note the"}, {}},
    {"jars with one: silence", "as above", "2026-08-10",
     mill + "2026-08-01 mill\nh3 top off 22kg\n2026-08-02\nextracted 14 kg lot B from h3\nfilled 20 x 454 g lot B\nbest before 2028-08-01 lot B\n", {},
     {"- best-before"}},
    {"a to-do comes back", "the journal itself", "2026-06-12", mill + "2026-06-10 mill\ntodo bring 2 supers\n", {"* to-do: bring 2 supers"}, {}},
    {"words no note can answer are settled by the next visits", "the journal itself", "2026-06-25",
     mill + "2026-06-10 mill\nh3 todo leave alone\n2026-06-24 mill\nh3 top 50% full\n", {}, {"* to-do"}},
    {"a to-do that was done does not", "the journal itself", "2026-06-13",
     mill + "2026-06-10 mill\nh3 todo requeen\n2026-06-12 mill\nh3 requeened, yellow\n", {}, {"* to-do"}},
};

}  // namespace

TEST_CASE("mentor: care", "[advice][mentor]") {
    for (const MentorCase& c : care_cases) check_case(c);
}

namespace {

/// The day's advice when on `day` the comb of h3's brood box is noted as drawn in `year`.
Advised brood_comb_of(int year, const std::string& day) {
    Journal journal = read_journal({{"a.hive", mill + day + " mill\nh3 super comb drawn in " + std::to_string(year) + "\n"}}, *day_from_iso(day));
    for (Fact& f : journal.facts)
        if (f.kind == Kind::comb_year) f.box = {BoxChoice::By::sole, Role::brood, 0, {}};
    return advised(std::move(journal), day);
}

}  // namespace

// Source: University of Minnesota Bee Squad (brood comb out after 3-4 years); E. Jaycox as told at beekeep.info.
TEST_CASE("mentor: old brood comb is renewed in spring", "[advice][mentor]") {
    const Advised old = brood_comb_of(2021, "2026-04-20");
    INFO(listing(old));
    const Advice* renew = find(old, "h3", "comb-age");
    REQUIRE(renew);
    CHECK(renew->reasons.front() == "the brood box: comb drawn in 2021, 5 years old; comb that held brood is renewed after 3 to 4");
    CHECK(renew->sureness == Sureness::possible);
    CHECK_FALSE(find(brood_comb_of(2023, "2026-04-20"), "h3", "comb-age"));
    CHECK_FALSE(find(brood_comb_of(2019, "2026-09-20"), "h3", "comb-age"));   // no building before winter
}
