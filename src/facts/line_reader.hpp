#pragma once
#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "facts/journal.hpp"
#include "facts/match.hpp"

namespace waxtab {

/// Where a line stands: the visit it belongs to and the hives its heading line named.
struct LineContext {
    Day noted{};
    std::int16_t minute = -1;
    bool year_assumed = false;
    YardId yard = no_yard;
    std::vector<HiveId> hives;         ///< of a hive line that indented lines follow
    bool all = false;                  ///< `all:`; resolved when the facts are put in order
    bool nuclei = false;               ///< `all nucs:`
    std::vector<HiveId> but;
    bool dated = false;                ///< a good heading stands above
};

/// A hive fact said of several hives at once, before it is spread.
struct RawFact {
    Fact fact;
    std::vector<HiveId> hives;         ///< empty for facts about the yard or honey
    bool all = false, rest = false, both = false;
    bool nuclei = false;               ///< all nuclei, no other hives
    std::vector<HiveId> but;
    int all_count = -1;                ///< how many `all` said they are
    bool swap = false;                 ///< hive and other change places when spread
    std::size_t reading = 0;           ///< index into Journal::readings
    /// Place in the file for the order of effect, twice the byte offset plus one; a reading noted after
    /// the box came off (`super off, 20% capped`) takes effect just before that.
    std::uint64_t effect = 0;
};

/// Reads one line of a visit (heading and set-up taken off).
class LineReader {
public:
    LineReader(Journal& journal, const Lexicon& lexicon, Matcher& matcher) : journal_(journal), lexicon_(lexicon), matcher_(matcher) {}

    /// Reads the tokens of a line, `visit` the facts above it; facts go to `out`, remarks and to-dos too; diagnostics to the journal.
    /// A line that only names hives changes `context.hives` for the indented lines below.
    void read(const std::vector<Token>& tokens, std::uint32_t file, LineContext& context, const std::vector<RawFact>& visit, std::vector<RawFact>& out);

private:
    struct Solution {
        std::vector<Candidate> candidates;
        std::vector<Span> spans;
    };
    struct Subject {
        std::vector<HiveId> hives;
        bool all = false, rest = false, both = false;
        bool nuclei = false;               ///< of `all nucs`
        std::vector<HiveId> but;
        int count = -1;                    ///< of `all 9`
        std::vector<std::string> unknown;
        bool several() const { return hives.size() > 1 || all || rest || both; }
        bool said() const { return all || rest || both || !hives.empty() || !unknown.empty(); }
    };

    /// A clause on its way to facts.
    struct Clause {
        std::vector<Item> written;     ///< as it stands in the line
        std::vector<Item> spoken;      ///< without the hives taken for the whole line
        std::vector<Item> items;       ///< what is left to read
        std::vector<Item> without;     ///< the same without the hives it is about
        std::string doubt;
        std::optional<Day> happened;
        bool since = false, two_days = false;
        Subject own, before;           ///< hives it names; hives of the line before it
    };

    void strangers_in_the_list(std::vector<Item>& items);
    void head(std::vector<Item>& items, const std::vector<Token>& tokens);
    void sentence(std::vector<Item> items);
    bool not_at_these(const std::vector<Item>& items);
    bool denies_the_number(const std::vector<std::vector<Item>>& clauses, std::size_t at) const;
    bool goes_over_to(const std::vector<Item>& items);
    void deed_before_sentences(std::vector<std::vector<Item>>& sentences) const;
    bool corrects(const std::vector<Item>& items);
    void withdraw(const std::vector<Item>& items, std::size_t from);
    void ask_which_holds(const std::vector<Item>& items);
    bool heads_the_line(const std::vector<Item>& items);
    HiveId hive_numbered(const Item& i) const;
    bool numbers_before_commas(std::vector<Item>& items);
    void numbers_among_clauses(std::vector<std::vector<Item>>& clauses) const;
    bool bare_list(std::vector<Item>& items);
    std::vector<std::vector<Item>> shares_of_the_harvest(std::vector<Item>& items) const;
    bool hives_by_number(std::vector<Item>& items, std::size_t from) const;
    void numbers_after_topic(std::vector<Item>& items, std::size_t from) const;
    std::vector<Item> told_with_topic(const std::vector<Item>& topic, const std::vector<Item>& told);
    bool topic_of_each(std::vector<Item>& items);
    void head_of_sentence(std::vector<Item>& items);
    void each_of_the_head(const std::vector<Item>& items);
    void one_there_too(std::vector<std::vector<Item>>& clauses) const;
    bool found_as_said_before(const std::vector<Item>& items, const std::vector<Solution>& ways);
    bool minus_or_dash(const std::vector<Item>& items);
    void clause(std::vector<Item> items);
    bool no_sentence(const std::vector<Item>& items);
    void take_doubt_and_day(Clause& c) const;
    std::vector<Solution> plain_ways(Clause& c);
    std::vector<Solution> further_ways(Clause& c);
    void conclude(const Clause& c, std::vector<Solution> ways);
    void two_ways(const std::vector<Item>& items, const std::vector<Solution>& ways);
    bool gives_reason(const std::vector<Item>& items, std::size_t at) const;
    bool governed(const std::vector<std::vector<Item>>& clauses, std::size_t at, std::string& because, bool& todo) const;
    bool tells_when(const std::vector<Item>& items, const Item& i, std::string_view surface) const;
    void take_back(std::size_t from);
    bool undoes_the_last(const std::vector<Item>& items);
    void names_what_follows(const std::vector<Item>& items);
    /// Whether one of the facts told so far, of the line or of the sentence, is so.
    template <typename Says> bool told_in_line(Says says) const { return std::any_of(out_->begin() + static_cast<std::ptrdiff_t>(first_of_line_), out_->end(), says); }
    template <typename Says> bool told_in_sentence(Says says) const { return std::any_of(out_->begin() + static_cast<std::ptrdiff_t>(first_of_sentence_), out_->end(), says); }
    std::size_t last_told() const;
    std::string words_kept(const std::vector<Item>& items, Span where) const;
    void of_the_subject(RawFact& raw) const;
    void keep_words(const std::vector<Item>& items, Kind kind, Reading::Outcome outcome, std::string because);
    bool places_the_new_box(const std::vector<Item>& items);
    bool join_last(const std::vector<Item>& items, bool alone = false);
    bool several_shares(const std::vector<Item>& items);
    bool each_or_together(const Solution& solution, const std::vector<Item>& items);
    bool ask_each_or_both(const std::vector<Item>& items);
    bool impossible_share(const std::vector<Item>& items);
    bool two_meanings(const std::vector<Item>& items);
    bool unit_missing(const std::vector<Item>& items);
    std::size_t shares_in_turn(const std::vector<std::vector<Item>>& clauses, std::size_t at);
    std::size_t parts_of_a_whole(const std::vector<std::vector<Item>>& clauses, std::size_t at);
    bool plain_talk(const std::vector<Item>& items) const;
    void unread(const std::vector<Item>& items);
    std::string in_other_words(const std::vector<Item>& items) const;
    bool bare_hives(std::vector<Item>& items) const;
    std::vector<Solution> about_the_named(const std::vector<Item>& items);
    bool same_again(const std::vector<Item>& items);
    void in_doubt(const std::vector<Item>& items, const std::string& doubt);
    void doubts_join_what_they_doubt(std::vector<std::vector<Item>>& clauses) const;
    void hives_at_the_end(std::vector<std::vector<Item>>& clauses);
    void one_of_yard_and_hive(std::vector<Candidate>& found) const;
    /// What stands before a clause and beside its words, as far as readings depend on it.
    struct Told {
        bool box = false;              ///< a super was spoken of in the line
        bool box_last = false;         ///< the last fact of the line is of a super,
        bool box_in_sentence = false;  ///< and it stands in this sentence
        bool harvest = false;          ///< the last fact is of honey taken, or how full its box is
        bool boxes = false;            ///< the line told of boxes
        bool wet_box = false;          ///< a wet super came off in the line
        bool cells_last = false;       ///< the last fact is of cells or cups
        bool cups_last = false;        ///< the last fact is of cups
        bool of_the_cells = false;     ///< and the clause is of them
        bool strips_moved = false;     ///< strips went in or came out in the clause
        bool super_moved = false;      ///< a super went on or came off in the clause
        bool put_away = false;         ///< the clause speaks of the shed or the freezer
        bool have = false;             ///< the clause tells what somebody has
        bool colour = false;           ///< the clause names a colour
        bool plant = false;            ///< the clause names a plant
        bool mated = false;            ///< the clause says that she mated
        bool laying = false;           ///< the clause says that a queen lays
        bool queen_last = false;       ///< the last fact is of the queen
        bool whole_hive = false;       ///< the clause names the hive: `hive 40 kg`
        bool stands = false;           ///< `has a super on`: how it is, and no word of when it went on
        bool brood = false, food = false, cells = false, extracted = false, jars = false;
    };
    std::vector<Solution> solve(const std::vector<Item>& items);
    Told told_before(const std::vector<Item>& items) const;
    bool names_hive(const std::vector<Item>& items) const;
    bool number_unsaid(const std::vector<Item>& part) const;
    void fit_combs(std::vector<Candidate>& found, const std::vector<Item>& part, const Told& told) const;
    void fit_deeds(std::vector<Candidate>& found, const std::vector<Item>& part) const;
    void fit_weather(std::vector<Candidate>& found, const std::vector<Item>& part, const Told& told) const;
    void fit_cells(std::vector<Candidate>& found, const std::vector<Item>& part, const Told& told) const;
    void fit_boxes(std::vector<Candidate>& found, const std::vector<Item>& part, const Told& told) const;
    void fit_the_rest(std::vector<Candidate>& found, const std::vector<Item>& part, const Told& told) const;
    void fit_plurals(std::vector<Candidate>& found, const std::vector<Item>& part) const;
    void only_fitting(std::vector<Candidate>& found, const std::vector<Item>& part, const Told& told) const;
    void fitting_after(std::vector<Candidate>& found, const std::vector<Item>& part, const std::vector<Item>& before, bool linked, Told told) const;
    std::vector<Candidate> read_part(const std::vector<Item>& items, std::size_t i, std::size_t j, const std::vector<Item>& part, bool linked, const Told& told);
    static void go_on_with(const std::vector<Solution>& before, const std::vector<Candidate>& found, Span where, std::vector<Solution>& ways);
    bool torn_apart(const Solution& s, bool negated, bool added) const;
    void take(Solution solution, std::optional<Day> happened);
    struct Question {
        const char* question;
        const char* hint;
    };
    std::optional<Question> which_honey(const Candidate& c) const;
    std::optional<Question> which_colony(const Fact& fact) const;
    std::optional<Question> which_box(const Fact& fact, Span where) const;
    std::optional<Question> which_count(const Fact& fact, Span where) const;
    std::optional<Question> which_half(const Fact& fact) const;
    std::optional<Question> none_or_some(const Fact& fact, Span where) const;
    std::optional<Question> question_about(const Candidate& c, Span where) const;
    void take_one(const Candidate& c, Span where, std::optional<Day> happened);
    void keep_as_words(Span where, RawFact raw, bool flagged);
    void settle_box(Fact& fact, const Candidate& c);
    void settle_hives(RawFact& raw, const Candidate& c) const;
    void frames_of_the_nuc(RawFact& raw);
    void ask_hive(Span where);
    bool names_super(Span where) const;
    bool of_brood_boxes(const Fact& fact, Span where) const;
    void keep_asked(Span where, const char* question, const char* hint);
    void honey_from_before(Fact& fact, const Candidate& c);
    bool names_lot(const std::vector<Item>& items);
    bool parts_at_links(const Clause& c);
    bool for_each_box(const Clause& c);
    void spoke_of_others(const Clause& c);
    void both_of_them(std::vector<Item>& items) const;
    std::vector<Item> with_the_verb_of(const std::vector<Item>& left, std::vector<Item> right);
    std::optional<Solution> only_way(const std::vector<Item>& part);
    bool reads(const std::vector<Item>& part);
    bool reads_as_one(const std::vector<Item>& part);
    bool seen_by_itself(const std::vector<Item>& part);
    void deed_for_all(std::vector<std::vector<Item>>& clauses) const;
    void method_for_all(std::vector<std::vector<Item>>& clauses) const;
    std::size_t other_hive_at(const std::vector<Item>& items) const;
    bool each_of_two(const std::vector<Item>& items);
    bool each_of_two_numbers(const std::vector<Item>& items);
    void feeds_apart(std::vector<std::vector<Item>>& clauses) const;
    std::string line_before(Span here) const;
    bool swarm_told(Span here) const;
    bool doubted_before(Span here) const;
    void guessed_by_looks(std::vector<Item>& items) const;
    void some_of_so_many(std::vector<Item>& items) const;
    void without_the_doer(std::vector<Item>& items);
    static void days_said_twice(std::vector<Item>& items);
    void to_each(std::vector<Item>& items) const;
    void seen_by_me(std::vector<Item>& items) const;
    static void weight_of_each_box(std::vector<Item>& items);
    bool was_before(const std::vector<Item>& items) const;
    bool names_no_order(const std::vector<Item>& items, std::size_t at) const;
    bool one_each_follows(const std::vector<Item>& items) const;
    std::string rest_of_line(const std::vector<Item>& items) const;
    static void fed_with(std::vector<Item>& items);
    bool of_a_nuc(const std::vector<Item>& items) const;
    bool one_more_on_top(const std::vector<Item>& items) const;
    bool asked_instead(const Clause& c, const std::vector<Solution>& ways);
    bool in_the_midst(const Clause& c) const;
    bool ends_with_another(const Clause& c) const;
    bool ends_with_its_hive(const std::vector<Item>& items, std::size_t i);
    void run_on_hives(std::vector<std::vector<Item>>& clauses);
    void lists_that_are_none(std::vector<std::vector<Item>>& clauses);
    void another_hive_begins(std::vector<std::vector<Item>>& clauses) const;
    void plans_after_deeds(std::vector<std::vector<Item>>& clauses) const;
    void note_tail(const Clause& c);
    std::vector<std::vector<Item>> cut(std::vector<Item> items) const;
    void which_of_the_hive(std::vector<std::vector<Item>>& clauses) const;
    void plus_goes_on(std::vector<std::vector<Item>>& clauses) const;
    void one_weight_each(std::vector<std::vector<Item>>& clauses) const;
    bool one_value_each(const std::vector<Item>& items);
    bool one_value_for_each_listed(const std::vector<Item>& items);
    void doubts_after_facts(std::vector<std::vector<Item>>& clauses);
    void needs_after_facts(std::vector<std::vector<Item>>& clauses);
    void names_end(std::vector<std::vector<Item>>& clauses);
    void neither(std::vector<std::vector<Item>>& clauses);
    void denials_apart(std::vector<std::vector<Item>>& clauses);
    void not_needed(std::vector<std::vector<Item>>& clauses) const;
    void plants_share(std::vector<std::vector<Item>>& clauses) const;
    void feeds_go_on(std::vector<std::vector<Item>>& clauses) const;
    bool these_too(const std::vector<Item>& items);
    bool one_more_there(const std::vector<Item>& items);
    bool count_goes_on(const std::vector<Item>& items);
    void reach(RawFact& raw, std::uint32_t end);
    void each_weighed(Candidate c, const std::vector<Measure>& weights, Span where, std::optional<Day> happened);
    void numbers_beside(const std::vector<Item>& chunked);
    void keep_beside();
    Measure stay_of(const Fact& treatment, Day due) const;
    bool jars_of_two_lots() const;
    bool jars_of_another_lot(const std::vector<Item>& items);
    void stock_goes_on(std::vector<Item>& items) const;
    void sale_goes_on(std::vector<Item>& items) const;
    bool went_with_the_split(const std::vector<Item>& items);
    bool so_many_each(const std::vector<Item>& items);
    bool worked_out_again(const std::vector<Item>& items);
    bool honey_of_another(const std::vector<Item>& items);
    bool treatment_out_again(const std::vector<Item>& items);
    bool due_of_the_treatment(const std::vector<Item>& items);
    bool off_several() const;
    bool off_several_unweighed() const;
    bool weight_of_the_super_off(const std::vector<Item>& items);
    bool honey_of_these(const std::vector<Item>& items);
    std::size_t governed_to(const std::vector<std::vector<Item>>& clauses, std::size_t at, bool todo, const std::string& because);
    void more_than_a_wish(Span where, const std::string& because);
    void put_out(const std::vector<Item>& items, const std::string& because, bool todo);
    void put(RawFact raw, Reading reading);
    void put_at(RawFact raw, std::vector<HiveId> hives, Span where);
    void goes_on_at(RawFact raw, const std::vector<HiveId>& hives, Span where);
    bool told_of_one_hive() const;
    bool in_any(std::vector<Item>& items);
    std::vector<Item> exception_at_the_end(std::vector<Item>& items);
    bool number_of_one(std::vector<Item>& items);
    bool begins_with_numbers(std::vector<Item>& items);
    bool goes_over_to_numbered(const std::vector<Item>& items) const;
    void take_as_hive(Item& number) const;
    void numbers_of_hives(std::vector<Item>& items) const;
    HiveId called_by_number(const Item& i) const;
    bool may_count(const std::vector<Item>& items, std::size_t at) const;
    bool called_by_numbers(std::vector<Item>& items);
    bool hive_or_so_many(const std::vector<Item>& items) const;
    void but_not_these(std::vector<Item>& items) const;
    void but_not_numbers(std::vector<Item>& items) const;
    static bool leaves_out(const std::vector<Item>& items);
    bool others_begin(std::vector<Item>& items);
    bool take_all(std::vector<Item>& items, bool at_head);
    bool group_at_head(std::vector<Item>& items);
    void only_the_group(std::vector<Item>& items);
    bool heads_with_hives(const std::vector<Item>& items) const;
    std::size_t find_group(const std::vector<Item>& items, bool at_head) const;
    bool counts_hives(const std::vector<Item>& items) const;
    bool read_group(const std::vector<Item>& items, std::size_t at, bool counted, Subject& found, std::size_t& end) const;
    bool says_group(const Item& i) const;
    /// `hives`, `of them`, or a number of them in words.
    bool says_hives(const Item& i) const;
    Subject take_subject(std::vector<Item>& items);
    bool unknown_other(const std::vector<Item>& items);
    bool only_hives(const std::vector<Item>& items) const;
    void complain_about(const Subject& subject, const std::vector<Item>& items);
    Span span(const std::vector<Item>& items) const;
    /// The item as written, in small letters.
    std::string surface(const Item& item) const;
    /// `each`, `ea`, `apiece`: as much at every hive.
    bool says_today(const Item& item) const;
    bool says_each(const Item& item) const;
    bool boxes_of_all(std::vector<Item>::const_iterator from, std::vector<Item>::const_iterator to) const;
    /// `another`, `another one`: one more of what was just told.
    bool says_another(const Item& item) const { return item.is("another one") || surface(item) == "another"; }
    std::string_view text() const { return journal_.sources[file_].text(); }
    ItemContext item_context() const { return {&lexicon_, &journal_.settings, context_->noted, cells_said_ || (brood_said_ && box_.by == BoxChoice::By::unsaid)}; }

    Journal& journal_;
    const Lexicon& lexicon_;
    Matcher& matcher_;
    // Of the line being read:
    std::uint32_t file_ = 0;
    LineContext* context_ = nullptr;
    std::vector<RawFact>* out_ = nullptr;
    const std::vector<RawFact>* visit_ = nullptr;
    Subject subject_;
    Subject head_;                 ///< what the line began with
    BoxChoice box_;
    YardId line_yard_ = no_yard;   ///< of a line that begins with a yard: `Ferry Field: h2 dead`
    std::vector<HiveId> tail_;     ///< hives named at the end of clauses, one after the other, in a line that begins with none
    std::uint32_t queen_at_ = 0;   ///< where the sentence first speaks of the queen; past its end where it does not
    bool numbered_ = false;        ///< the line begins with `2, 4,`: hives by their bare numbers
    bool pointed_ = false;         ///< the line begins with `2.`: so are the numbers of hives written in it
    bool hives_named_ = false;     ///< the clause names its hives
    bool headed_ = false;          ///< the line begins with its hives, or stands under them
    bool complained_ = false;
    bool taken_back_ = false;      ///< the sentence before was `no`
    bool shed_headed_ = false;     ///< the line begins with `Shed.`
    std::string lot_of_line_;      ///< of a line that begins with `Lot A.`
    bool brood_said_ = false;      ///< the line spoke of brood
    bool cells_said_ = false;      ///< the line spoke of queen cells
    bool lot_unread_ = false;      ///< a clause of this sentence named a lot and was not read
    bool jars_unread_ = false;     ///< a clause of this line spoke of jars and was not read
    bool boxes_unread_ = false;    ///< a clause of this sentence spoke of supers and was not read
    bool elsewhere_ = false;       ///< a clause of this sentence named another hive by the way and was not read
    bool food_said_ = false;       ///< the line told of a feed
    HiveId nuc_frames_ = no_hive;  ///< the hive just made, whose frames are being told
    bool divided_ = false;         ///< a clause of this sentence told of a split or a nuc and was not read
    std::size_t first_of_line_ = 0, first_of_sentence_ = 0, before_clause_ = 0;
    /// The last clause of this sentence that was read, for details that follow after a comma.
    struct Last {
        std::vector<Item> items;
        std::size_t out = 0, readings = 0, diagnostics = 0;
        bool set = false;
    };
    Last last_;
    /// The boxes that came off one after the other in the line, all of them as one choice, and where that is said.
    BoxChoice off_apart_;
    std::uint32_t off_apart_at_ = 0;
    /// What the hives named after it are told of: `Queens:`.
    std::vector<Item> topic_;
    /// The clause that is taken, as written.
    std::vector<Item> as_written_;
    /// Words with a number that readings pass over, and the hives they were said of.
    std::vector<std::pair<std::vector<Item>, Subject>> beside_;
    /// `shed` of `shed: 6 supers drawn, 3 excluders`, which goes on to the end of its sentence.
    std::vector<Item> shed_;
};

}  // namespace waxtab
