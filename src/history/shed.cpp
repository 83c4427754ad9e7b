#include <algorithm>

#include "history/contradictions.hpp"
#include "history/transitions.hpp"

namespace waxtab::replaying {
namespace {

using Rows = std::vector<ShedRow>;

bool is_box_row(const ShedRow& row) { return !row.box_kind.empty(); }

Role role_of(const Replay& r, const std::string& kind) {
    const BoxKind* known = r.journal.box_kind(kind);
    return known ? known->role : Role::super;
}

std::size_t row_of_boxes(const Replay& r, const std::string& kind, Comb comb) {
    const Rows& rows = r.out.shed;
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const ShedRow& row) { return row.box_kind == kind && row.comb == comb; });
    return static_cast<std::size_t>(found - rows.begin());
}

std::size_t row_of_gear(const Replay& r, std::string_view gear) {
    const Rows& rows = r.out.shed;
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const ShedRow& row) { return !is_box_row(row) && row.what == gear; });
    return static_cast<std::size_t>(found - rows.begin());
}

ShedRow& made(Replay& r, std::size_t at, ShedRow row) {
    if (at == r.out.shed.size()) {
        r.out.shed.push_back(std::move(row));
        r.shed_states.emplace_back();
    }
    return r.out.shed[at];
}

/// The row a fact about the shed speaks of; made when there was none.
std::size_t row_said(Replay& r, const Fact& f) {
    const bool gear = !f.detail.empty();
    if (gear) {
        const std::size_t at = row_of_gear(r, f.detail);
        made(r, at, {std::string(f.detail), {}, Comb::unsaid, 0, {}, 0, {}});
        return at;
    }
    const Role said = f.box.by == BoxChoice::By::unsaid ? Role::any : f.box.role;
    const Settings& settings = r.journal.settings;
    const std::string kind = !f.box_kind.empty() ? f.box_kind : said == Role::brood ? settings.brood_kind : settings.super_kind;
    const bool brood = said == Role::brood || (said == Role::any && role_of(r, kind) == Role::brood);
    const std::size_t at = row_of_boxes(r, kind, f.comb);
    made(r, at, {brood ? "brood box" : "super", kind, f.comb, 0, {}, 0, {}});
    return at;
}

void take(Replay& r, const Step& s, std::size_t at, int count) {
    ShedRow& row = r.out.shed[at];
    Replay::RowState& state = r.shed_states[at];
    if (row.count < count && state.said && !state.short_reported) {
        report_shed_short(r, s, row, count);
        state.short_reported = true;
    }
    row.count = std::max(0, row.count - count);
    row.frozen = std::min(row.frozen, row.count);   // the ones that were not frozen go first: the safer reading
    row.facts.push_back(s.id);
}

void put(Replay& r, const Step& s, std::size_t at) {
    ++r.out.shed[at].count;
    r.out.shed[at].facts.push_back(s.id);
}

/// Rows that can serve when a box of this comb is taken, the likeliest first.
std::vector<Comb> serving(Comb comb) {
    if (comb == Comb::unsaid) return {Comb::drawn, Comb::wet, Comb::unsaid, Comb::mixed};
    if (comb == Comb::drawn) return {Comb::drawn, Comb::unsaid};
    return {comb};
}

bool used_comb(Comb comb) { return comb == Comb::drawn || comb == Comb::wet || comb == Comb::unsaid; }

/// Boxes with comb a moth can live in.
bool holds_comb(const ShedRow& row) {
    return is_box_row(row) && row.count > 0 && (used_comb(row.comb) || row.comb == Comb::mixed);
}

/// The row frozen supers of this kind stand in, made when there is none.
std::size_t row_to_freeze(Replay& r, const std::string& kind, Comb comb) {
    for (const Comb c : serving(comb)) {
        const std::size_t at = row_of_boxes(r, kind, c);
        if (at != r.out.shed.size() && r.out.shed[at].count > 0) return at;
    }
    const Comb made_as = comb == Comb::unsaid ? Comb::drawn : comb;
    const std::size_t at = row_of_boxes(r, kind, made_as);
    made(r, at, {"super", kind, made_as, 0, {}, 0, {}});
    return at;
}

/// The row of a labelled box in the shed; one that never stood on a hive is a super like any. None when it stands
/// on a hive, which is reported, or waits with its honey.
std::optional<std::size_t> row_of_label(Replay& r, Step& s) {
    const BoxId id = labelled(r, no_hive, s.fact.box.label);
    if (id == no_box) return row_to_freeze(r, r.journal.settings.super_kind, s.fact.comb);
    s.boxes = {id};
    const BoxState& state = r.box_state(id);
    if (state.where == Whereabouts::on_hive) report_frozen_on_hive(r, s, id);
    if (state.where != Whereabouts::in_shed) return std::nullopt;
    return row_of_boxes(r, r.box(id).kind, state.shed_comb);
}

/// `count`: -1 for all of the row.
void freeze(Replay& r, const Step& s, std::size_t at, int count) {
    ShedRow& row = r.out.shed[at];
    if (count < 0) count = row.count;
    row.count = std::max(row.count, count);
    row.frozen = std::min(row.count, row.frozen + count);
    row.frozen_facts.push_back(s.id);
}

/// A count of drawn boxes includes those that came back by themselves since.
void absorb_returned(Replay& r, const ShedRow& said) {
    if (!is_box_row(said) || !used_comb(said.comb)) return;
    for (std::size_t i = 0; i < r.out.shed.size(); ++i) {
        ShedRow& row = r.out.shed[i];
        if (row.box_kind == said.box_kind && used_comb(row.comb) && !r.shed_states[i].said) row.count = 0;
    }
}

}  // namespace

void from_shed(Replay& r, const Step& s, const std::string& kind, Comb comb, int count) {
    std::size_t chosen = r.out.shed.size();
    for (const Comb c : serving(comb)) {
        const std::size_t at = row_of_boxes(r, kind, c);
        if (at == r.out.shed.size()) continue;
        const bool enough = r.out.shed[at].count >= count;
        if (enough || chosen == r.out.shed.size()) chosen = at;
        if (enough) break;
    }
    if (chosen != r.out.shed.size()) take(r, s, chosen, count);
}

void gear_from_shed(Replay& r, const Step& s, std::string_view gear) {
    const std::size_t at = row_of_gear(r, gear);
    if (at != r.out.shed.size()) take(r, s, at, 1);
}

void into_shed(Replay& r, const Step& s, BoxId id, Comb comb) {
    const Box& box = r.box(id);
    const std::size_t at = row_of_boxes(r, box.kind, comb);
    made(r, at, {box.role == Role::brood ? "brood box" : "super", box.kind, comb, 0, {}, 0, {}});
    put(r, s, at);
    BoxState& state = r.box_state(id);
    state.where = box.label.empty() ? Whereabouts::gone : Whereabouts::in_shed;
    state.shed_comb = comb;
}

/// Gear is counted only once the keeper has said how much there is.
void gear_into_shed(Replay& r, const Step& s, std::string_view gear) {
    const std::size_t at = row_of_gear(r, gear);
    if (at != r.out.shed.size()) put(r, s, at);
}

void shed_said(Replay& r, Step& s) {
    r.out.shed_said = true;
    if (s.fact.count < 0) return;
    const std::size_t at = row_said(r, s.fact);
    absorb_returned(r, r.out.shed[at]);
    ShedRow& row = r.out.shed[at];
    row.count = s.fact.count;
    row.frozen = std::min(row.frozen, row.count);
    row.facts.push_back(s.id);
    r.shed_states[at] = {true, false};
}

void shed_in(Replay& r, Step& s) {
    const std::size_t at = row_said(r, s.fact);
    r.out.shed[at].count += std::max(1, s.fact.count);
    r.out.shed[at].facts.push_back(s.id);
    r.shed_states[at].short_reported = false;
}

/// By its label when a box is named so, else as many as said of the rows with such comb; a count beyond what the
/// shed is known to hold tells that there were more.
void combs_frozen(Replay& r, Step& s) {
    const Fact& f = s.fact;
    if (f.box.by == BoxChoice::By::label) {
        if (const auto at = row_of_label(r, s)) freeze(r, s, *at, 1);
        return;
    }
    if (f.count < 0 && f.comb == Comb::unsaid && f.box_kind.empty()) {
        for (std::size_t at = 0; at < r.out.shed.size(); ++at)
            if (holds_comb(r.out.shed[at])) freeze(r, s, at, -1);
        return;
    }
    const std::string& kind = f.box_kind.empty() ? r.journal.settings.super_kind : f.box_kind;
    freeze(r, s, row_to_freeze(r, kind, f.comb), f.count);
}

void shed_out(Replay& r, Step& s) { take(r, s, row_said(r, s.fact), std::max(1, s.fact.count)); }

}  // namespace waxtab::replaying
