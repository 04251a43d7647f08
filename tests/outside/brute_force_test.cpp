// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The estimate against brute force: every world on a grid of ten minutes is built and measured, one
// bit for each step, by code that shares nothing with core/estimate but the night itself.
#include "core/estimate/nights.h"
#include "estimate/estimate.h"

#include <bit>
#include <functional>
#include <map>

namespace evenfall {
namespace {

using test::RandomNights;

constexpr long steps = 64; // of the axis; the random nights end at 48
using Bits = std::uint64_t;

long grid(Instant when) { return (when - RandomNights::origin) / RandomNights::step; }

/// Steps from up to, not including, to; negative and reversed ones hold nothing.
Bits mask(long from, long to)
{
    Bits out = 0;
    for (long t = std::max(0L, from); t < std::min(to, steps); ++t)
        out |= Bits{1} << t;
    return out;
}

/// One choice of every time, in steps.
struct World {
    std::optional<long> recording_from, recording_to, lights_out, lights_on, final_waking;
    std::vector<std::pair<long, long>> off;   // as night.off
    std::vector<std::pair<long, long>> awake; // as night.awake; both ends, however it was given
};

struct Measured {
    long window = 0, needed = 0, needed_asleep = 0;
    std::map<std::string, long> sensors;
    Bits usable = 0; // what would count as asleep without wake of known length
};

Measured measure(const Night& night, const World& world)
{
    const long from = std::max(world.recording_from.value_or(-1), world.lights_out.value_or(-1));
    const long to = std::min(world.recording_to.value_or(steps), world.lights_on.value_or(steps));
    const Bits window = mask(from, to);
    std::map<std::string, Bits> on;
    for (const std::string& id : night.sensors)
        on[id] = ~Bits{0};
    for (std::size_t i = 0; i < night.off.size(); ++i)
        on[night.off[i].sensor] &= ~mask(world.off[i].first, world.off[i].second);
    Bits needed = window;
    for (const auto& group : night.need.groups) {
        Bits any = 0;
        for (const std::string& id : group)
            any |= on[id];
        needed &= any;
    }
    Bits asleep = needed;
    if (world.lights_out && night.asleep_after)
        asleep &= ~mask(0, *world.lights_out + *night.asleep_after / RandomNights::step);
    if (world.final_waking)
        asleep &= mask(0, *world.final_waking);
    Bits by_length = 0;
    for (std::size_t i = 0; i < world.awake.size(); ++i) {
        const Bits wake = mask(world.awake[i].first, world.awake[i].second);
        if ((*night.awake)[i].to)
            asleep &= ~wake;
        else
            by_length |= wake;
    }
    Measured out;
    out.window = std::popcount(window);
    out.needed = std::popcount(needed);
    out.usable = asleep;
    out.needed_asleep = std::popcount(asleep & ~by_length);
    for (const auto& [id, bits] : on)
        out.sensors[id] = std::popcount(window & bits);
    return out;
}

/// Calls `each` with every world of the night in which awakenings of known length are apart.
class Worlds {
  public:
    Worlds(const Night& night, std::function<void(const World&)> each)
        : night_(night), each_(std::move(each))
    {
    }

    void run() { recording(); }

  private:
    const Night& night_;
    std::function<void(const World&)> each_;
    World world_;

    template <class Next>
    void choose(const std::optional<TimeRange>& range, std::optional<long>& into, Next next)
    {
        if (!range) {
            into = std::nullopt;
            return next();
        }
        for (long t = grid(range->earliest); t <= grid(range->latest); ++t) {
            into = t;
            next();
        }
    }

    /// Both ends of one interval, in order; an end that is missing is beyond the axis.
    template <class Next>
    void choose_pair(const std::optional<TimeRange>& from, const std::optional<TimeRange>& to,
                     std::pair<long, long>& into, Next next)
    {
        std::optional<long> first, last;
        choose(from, first, [&] {
            choose(to, last, [&] {
                into = {first.value_or(-1), last.value_or(steps)};
                if (into.first <= into.second)
                    next();
            });
        });
    }

    void recording()
    {
        std::pair<long, long> both;
        choose_pair(night_.recording_from, night_.recording_to, both, [&] {
            world_.recording_from =
                night_.recording_from ? std::optional(both.first) : std::nullopt;
            world_.recording_to = night_.recording_to ? std::optional(both.second) : std::nullopt;
            choose(night_.lights_out, world_.lights_out, [&] {
                choose(night_.lights_on, world_.lights_on, [&] {
                    choose(night_.final_waking, world_.final_waking, [&] {
                        world_.off.assign(night_.off.size(), {});
                        removals(0);
                    });
                });
            });
        });
    }

    void removals(std::size_t i)
    {
        if (i < night_.off.size())
            return choose_pair(night_.off[i].from, night_.off[i].to, world_.off[i],
                               [&] { removals(i + 1); });
        world_.awake.assign(night_.awake ? night_.awake->size() : 0, {});
        awakenings(0);
    }

    void awakenings(std::size_t i)
    {
        if (i == world_.awake.size())
            return each_(world_);
        const Awakening& awakening = (*night_.awake)[i];
        if (awakening.to)
            return choose_pair(awakening.from, awakening.to, world_.awake[i],
                               [&] { awakenings(i + 1); });
        std::optional<long> from;
        choose(awakening.from, from, [&] {
            world_.awake[i] = {*from, *from + *awakening.length / RandomNights::step};
            for (std::size_t k = 0; k < i; ++k)
                if (!(*night_.awake)[k].to && (mask(world_.awake[k].first, world_.awake[k].second) &
                                               mask(world_.awake[i].first, world_.awake[i].second)))
                    return;
            awakenings(i + 1);
        });
    }
};

double count_worlds(const Night& night)
{
    double count = 1;
    const auto times = [&](const std::optional<TimeRange>& range) {
        if (range)
            count *= static_cast<double>(grid(range->latest) - grid(range->earliest) + 1);
    };
    for (const auto& range : {night.recording_from, night.recording_to, night.lights_out,
                              night.lights_on, night.final_waking})
        times(range);
    for (const Removal& removal : night.off) {
        times(removal.from);
        times(removal.to);
    }
    if (night.awake)
        for (const Awakening& awakening : *night.awake) {
            times(awakening.from);
            times(awakening.to);
        }
    return count;
}

struct Extremes {
    long least = steps, most = -1;
    void see(long value)
    {
        least = std::min(least, value);
        most = std::max(most, value);
    }
};

Span minutes_of(long grid_steps) { return grid_steps * RandomNights::step; }

constexpr double most_worlds = 20000;

TEST(BruteForce, BoundsAreExactWhereEveryIntervalHasTwoEnds)
{
    RandomNights random(41);
    int nights = 0;
    double worlds = 0;
    while (nights < 10000) {
        const Night night = random.night(false);
        if (count_worlds(night) > most_worlds)
            continue;
        ++nights;
        worlds += count_worlds(night);
        Extremes window, needed, asleep;
        std::map<std::string, Extremes> sensors;
        Worlds(night, [&](const World& world) {
            const Measured one = measure(night, world);
            window.see(one.window);
            needed.see(one.needed);
            asleep.see(one.needed_asleep);
            for (const auto& [id, on] : one.sensors)
                sensors[id].see(on);
        }).run();
        const Estimate result = estimate(night, {false, 0, 0});
        const auto same = [&](const Bounds& bounds, const Extremes& found) {
            return bounds.at_least == minutes_of(found.least) &&
                   bounds.at_most == minutes_of(found.most);
        };
        ASSERT_TRUE(same(*result.window, window)) << night_to_json(night).dump();
        ASSERT_TRUE(same(*result.needed, needed)) << night_to_json(night).dump();
        ASSERT_TRUE(same(*result.needed_asleep, asleep)) << night_to_json(night).dump();
        for (const auto& [id, bounds] : result.sensors)
            ASSERT_TRUE(same(*bounds, sensors[id])) << id << night_to_json(night).dump();
        const Verdict right = minutes_of(needed.least) >= night.need.minutes ? Verdict::enough
                              : minutes_of(needed.most) < night.need.minutes ? Verdict::too_short
                                                                             : Verdict::borderline;
        ASSERT_EQ(result.verdict, right);
    }
    std::printf("%d nights, %.0f worlds\n", nights, worlds);
}

World middle_world(const Night& night)
{
    const auto at = [](const std::optional<TimeRange>& range) {
        return range ? std::optional(grid(range->middle())) : std::nullopt;
    };
    World world{at(night.recording_from),
                at(night.recording_to),
                at(night.lights_out),
                at(night.lights_on),
                at(night.final_waking),
                {},
                {}};
    for (const Removal& removal : night.off)
        world.off.emplace_back(at(removal.from).value_or(-1), at(removal.to).value_or(steps));
    if (night.awake)
        for (const Awakening& awakening : *night.awake)
            world.awake.emplace_back(*at(awakening.from),
                                     awakening.to ? *at(awakening.to)
                                                  : *at(awakening.from) +
                                                        *awakening.length / RandomNights::step);
    return world;
}

TEST(BruteForce, BestGuessAndLossesAreThoseOfTheMiddleWorld)
{
    RandomNights random(42);
    for (int round = 0; round < 10000; ++round) {
        const Night night = random.night(false);
        const World world = middle_world(night);
        const Measured one = measure(night, world);
        const Estimate result = estimate(night, {false, 0, 0});
        ASSERT_EQ(result.window->best_guess, minutes_of(one.window)) << night_to_json(night).dump();
        ASSERT_EQ(result.needed->best_guess, minutes_of(one.needed)) << night_to_json(night).dump();
        ASSERT_EQ(result.needed_asleep->best_guess, minutes_of(one.needed_asleep))
            << night_to_json(night).dump();
        for (const auto& [id, bounds] : result.sensors)
            ASSERT_EQ(bounds->best_guess, minutes_of(one.sensors.at(id)));

        for (const Loss& loss : result.lost) {
            World without = world;
            Night without_night = night;
            if (loss.cause == "late_start")
                without.recording_from = std::nullopt;
            else if (loss.cause == "early_end")
                without.recording_to = std::nullopt;
            else
                for (std::size_t i = 0; i < night.off.size(); ++i)
                    if (night.off[i].sensor == loss.cause)
                        without.off[i] = {0, 0};
            ASSERT_EQ(loss.alone, minutes_of(measure(without_night, without).needed - one.needed))
                << loss.cause << night_to_json(night).dump();
        }
    }
}

TEST(BruteForce, BoundsAreSoundForWakeKnownByItsLength)
{
    RandomNights random(43);
    int nights = 0;
    while (nights < 10000) {
        const Night night = random.night(true);
        if (count_worlds(night) > 2000)
            continue;
        ++nights;
        const Estimate result = estimate(night, {false, 0, 0});
        const long untimed =
            night.awake_untimed ? night.awake_untimed->total / RandomNights::step : 0;
        Worlds(night, [&](const World& world) {
            const Measured one = measure(night, world);
            // Awakenings without times lie anywhere in sleep, in any number of pieces, apart from
            // the other wakes of known length: some random such places.
            Bits sleep =
                mask(world.lights_out
                         ? *world.lights_out +
                               (night.asleep_after ? *night.asleep_after / RandomNights::step : 0)
                         : 0,
                     world.final_waking ? *world.final_waking : world.lights_on.value_or(steps));
            Bits timed = 0;
            for (std::size_t i = 0; i < world.awake.size(); ++i)
                if (!(*night.awake)[i].to)
                    timed |= mask(world.awake[i].first, world.awake[i].second);
            sleep &= ~timed;
            if (std::popcount(sleep) < untimed)
                return;
            for (int tries = 0; tries < 2; ++tries) {
                Bits wake = 0;
                Bits free = sleep;
                for (long n = 0; n < untimed; ++n) {
                    long skip = random.pick(0, std::popcount(free) - 1);
                    Bits rest = free;
                    while (skip-- > 0)
                        rest &= rest - 1;
                    const Bits one_step = rest & (~rest + 1);
                    wake |= one_step;
                    free &= ~one_step;
                }
                const Span counted = minutes_of(std::popcount(one.usable & ~timed & ~wake));
                ASSERT_LE(result.needed_asleep->at_least, counted) << night_to_json(night).dump();
                ASSERT_GE(result.needed_asleep->at_most, counted) << night_to_json(night).dump();
            }
        }).run();
        if (HasFatalFailure())
            return;
    }
}

} // namespace
} // namespace evenfall
