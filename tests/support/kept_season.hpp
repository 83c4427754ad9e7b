#pragma once
#include <functional>
#include <string>
#include <vector>

#include "notebook.hpp"
#include "season_generator.hpp"

namespace waxtab {

/// A yard through one invented season, looked at by a keeper with an inexact eye, written into a notebook.
class KeptSeason {
public:
    /// How many supers to put on a hive at a visit: hive, day, days to the next visit as planned, mean share read of
    /// its supers (0..1) and how many are on.
    using Policy = std::function<int(KeptSeason&, int hive, Day day, double read, int on)>;

    struct Settings {
        int hives = 6, days = 150;
        std::vector<int> gaps{7, 10, 14};
        double full_kg = 16;        ///< honey the keeper's full super holds
        double kind_kg = 16;        ///< what the handbook says of its kind
        double miss = 0.1;          ///< chance that a hive is passed over at a visit
        double eye = 0.08;
        int most_supers = 8;
        bool dry = false;           ///< one flow, then a long dearth
    };

    KeptSeason(std::uint64_t seed, Settings s) : settings(s), book(s.kind_kg), nature_(seed), keeper_(seed ^ 0x5eedULL), rounds_(seed ^ 0xca1eULL) {
        yard = book.yard("yard");
        first = date::sys_days{date::year{2026} / 4 / 10};
        gains_ = s.dry ? season::dry_yard_days(nature_, s.days) : season::yard_days(nature_, s.days);
        for (int h = 0; h < s.hives; ++h) {
            colonies.emplace_back(nature_, s.full_kg);
            stored_by.emplace_back();
            ids.push_back(book.hive("h" + std::to_string(h), yard));
        }
    }

    void run(const Policy& policy) {
        for (int h = 0; h < settings.hives; ++h) add(h, first);
        int next = gap();
        for (int d = 0; d < settings.days; ++d) {
            for (season::Colony& c : colonies) c.live(nature_, gains_[static_cast<std::size_t>(d)]);
            for (std::size_t h = 0; h < colonies.size(); ++h) stored_by[h].push_back(colonies[h].stored);
            if (d + 1 != next) continue;
            visit_days.push_back(next);
            visit(first + date::days{next}, policy);
            next += gap();
        }
        book.stand_on(first + date::days{settings.days});
    }

    void add(int hive, Day day) {
        season::Super super;
        super.pull = keeper_.between(0.5, 1.5);
        super.on_day = days_between(first, day);
        super.tag = book.super_on(ids[static_cast<std::size_t>(hive)], day);
        colonies[static_cast<std::size_t>(hive)].supers.push_back(super);
        ++put_on;
    }

    Settings settings;
    Notebook book;
    YardId yard = no_yard;
    Day first{};
    std::vector<HiveId> ids;
    std::vector<season::Colony> colonies;
    /// Kilograms stored by the end of each day of the season, by hive; days of the season with a visit.
    std::vector<std::vector<double>> stored_by;
    std::vector<int> visit_days;
    int put_on = 0, visits = 0;

private:
    int gap() { return settings.gaps[static_cast<std::size_t>(rounds_.whole(0, static_cast<int>(settings.gaps.size()) - 1))]; }

    void visit(Day day, const Policy& policy) {
        ++visits;
        std::vector<double> read(colonies.size(), -1);
        for (std::size_t h = 0; h < colonies.size(); ++h) {
            if (rounds_.uniform() < settings.miss) continue;
            double sum = 0;
            for (const season::Super& s : colonies[h].supers) {
                const int percent = season::eye(keeper_, s.kg / settings.full_kg, settings.eye);
                book.full(s.tag, day, percent);
                sum += percent / 100.0;
            }
            read[h] = sum / static_cast<double>(colonies[h].supers.size());
        }
        book.stand_on(day);
        for (std::size_t h = 0; h < colonies.size(); ++h) {
            const int on = static_cast<int>(colonies[h].supers.size());
            if (read[h] < 0 || on >= settings.most_supers) continue;
            for (int more = policy(*this, static_cast<int>(h), day, read[h], on); more > 0; --more) add(static_cast<int>(h), day);
        }
    }

    /// Bees and weather, the eye, the days of visits: apart, so that seasons stay the same under every policy.
    season::Dice nature_, keeper_, rounds_;
    std::vector<double> gains_;
};

/// The usual rule of thumb: one more when the supers that are on are read so full together.
inline KeptSeason::Policy add_at(double share) {
    return [share](KeptSeason&, int, Day, double read, int) { return read >= share ? 1 : 0; };
}

}  // namespace waxtab
