#include "advice/words.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace waxtab {

std::string counted(int n, std::string_view noun) {
    const bool box = noun.size() > 2 && noun.substr(noun.size() - 2) == "ox";
    return fmt::format("{} {}{}", n, noun, n == 1 ? "" : box ? "es" : "s");
}

std::string decimal(double value) {
    const auto tenths = static_cast<long long>(std::llround(value * 10));
    const std::string sign = tenths < 0 ? "-" : "";
    const long long a = tenths < 0 ? -tenths : tenths;
    return a % 10 == 0 ? fmt::format("{}{}", sign, a / 10) : fmt::format("{}{}.{}", sign, a / 10, a % 10);
}

std::string permille_words(std::int64_t permille) { return decimal(static_cast<double>(permille) / 10.0) + "%"; }

std::string kg_words(const Range& kg, MassUnit unit, std::string_view of) {
    const auto number = [&](double v) { return number_text(Mass::from_kilograms(v), unit, v < 9.95 ? 1 : 0); };
    const std::string sign = fmt::format("{}{}", unit == MassUnit::pound ? "lb" : "kg", of);
    if (number(kg.low) == number(kg.high)) return fmt::format("{} {}", number(kg.value), sign);
    return fmt::format("{} to {} {}, likely {}", number(kg.low), number(kg.high), sign, number(kg.value));
}

std::string share_words(const Range& share) {
    const auto percent = [](double v) { return static_cast<int>(std::lround(v * 100)); };
    if (percent(share.low) == percent(share.high)) return fmt::format("{}%", percent(share.value));
    return fmt::format("{}% ({}-{}%)", percent(share.value), percent(share.low), percent(share.high));
}

std::string odds(double chance) {
    if (chance >= 0.95) return "19 in 20";
    if (chance <= 0.05) return "1 in 20";
    return fmt::format("{} in 10", std::clamp(static_cast<int>(std::lround(chance * 10)), 1, 9));
}

std::string hive_names(const YardView& yard, const std::vector<HiveId>& hives) {
    if (hives.size() > 3 && hives.size() == yard.hives.size()) return "all hives";
    std::vector<std::string> names;
    for (HiveId h : hives) names.emplace_back(yard.all->journal.hive_name(h));
    return listed(names);
}

std::string super_name(const HiveView& hive, const SuperView& super) {
    if (!super.box->label.empty()) return fmt::format("super \"{}\"", super.box->label);
    const int n = static_cast<int>(hive.supers.size());
    if (n == 1) return "the super";
    if (super.place == n) return "the top super";
    if (super.place == 1) return "the bottom super";
    return fmt::format("super {}", super.place);
}

std::string ago(Day day, Day on) {
    const int days = days_between(day, on);
    if (days == 0) return "today";
    if (days == 1) return fmt::format("yesterday ({})", iso(day));
    return fmt::format("{} days ago ({})", days, iso(day));
}

std::string_view comb_word(Comb comb) {
    switch (comb) {
        case Comb::unsaid: return "";
        case Comb::drawn: return "drawn";
        case Comb::foundation: return "foundation";
        case Comb::wet: return "wet";
        case Comb::strips: return "starter strips";
        case Comb::cut_comb: return "cut comb";
        case Comb::sections: return "sections";
        case Comb::mixed: return "mixed";
    }
    return "";
}

std::string box_words(std::string_view kind, Comb comb) {
    std::string out{kind};
    if (!mentions(kind, "super")) out += out.empty() ? "super" : " super";
    if (comb != Comb::unsaid) out += fmt::format(", {}", comb_word(comb));
    return out;
}

}  // namespace waxtab
