// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The estimate beside Boost.ICL doing the same union and subtraction, in one run. It prints figures
// and never fails on time: ratios count, not absolute times.
#if defined(__GNUC__) && !defined(__clang__)
// gcc 12 takes the header node of a std::set inside Boost's set for a pointer that is kept too
// long.
#pragma GCC diagnostic ignored "-Wdangling-pointer"
#endif

#include "answers/night.h"
#include "base/intervals.h"
#include "estimate/chance.h"
#include "estimate/estimate.h"

#include <benchmark/benchmark.h>
#include <boost/icl/interval_set.hpp>
#include <random>

namespace {

using namespace evenfall;
namespace icl = boost::icl;

const Instant start = Instant{std::chrono::sys_days{std::chrono::year{2026} / 11 / 4}};
constexpr Span eight_hours = std::chrono::hours(8);

/// A night of five sensors with so many removals, each within its own slot so that most stay apart.
/// With `uncertain`, both ends of every removal are ranges.
Night night_of(long removals, bool uncertain)
{
    std::mt19937_64 engine(91);
    Night night;
    night.sensors = {"chest", "abdomen", "cannula", "breath", "finger"};
    night.need.groups = {{"cannula", "breath"}, {"finger"}};
    night.lights_out = TimeRange::exactly(start);
    night.lights_on = TimeRange::exactly(start + eight_hours);
    const Span slot = eight_hours / removals;
    for (long i = 0; i < removals; ++i) {
        const auto within = [&] {
            return Span(
                static_cast<Span::rep>(engine() % static_cast<std::uint64_t>(slot.count())));
        };
        const Instant from = start + i * slot + within();
        const Instant to = from + within() / 2;
        const Span doubt = uncertain ? slot / 4 : Span(0);
        night.off.push_back({night.sensors[static_cast<std::size_t>(engine() % 5)],
                             TimeRange{from, from + doubt}, TimeRange{to + doubt, to + 2 * doubt}});
    }
    std::shuffle(night.off.begin(), night.off.end(), engine);
    if (uncertain) // so that the verdict is open, and draws are needed
        night.need.minutes = std::chrono::minutes(1);
    return night;
}

/// All of the estimate but the draws: three worlds, every sensor, losses, wake.
void estimate_whole(benchmark::State& state)
{
    const Night night = night_of(state.range(0), true);
    const EstimateOptions options{false, 0, 0};
    for (auto _ : state)
        benchmark::DoNotOptimize(estimate(night, options));
    state.SetComplexityN(state.range(0));
}

/// One world by Boost.ICL: unions for each sensor, their intersection for the group of two, the
/// union over groups, subtracted from the window.
void one_world_boost_icl(benchmark::State& state)
{
    const Night night = night_of(state.range(0), true);
    using Set = icl::interval_set<long>;
    for (auto _ : state) {
        std::map<std::string, Set> off;
        for (const Removal& removal : night.off)
            off[removal.sensor].add(
                icl::interval<long>::right_open(removal.from->middle().time_since_epoch().count(),
                                                removal.to->middle().time_since_epoch().count()));
        Set blocked = off["cannula"] & off["breath"];
        blocked += off["finger"];
        Set window;
        window.add(icl::interval<long>::right_open(
            start.time_since_epoch().count(), (start + eight_hours).time_since_epoch().count()));
        window -= blocked;
        benchmark::DoNotOptimize(icl::length(window));
    }
    state.SetComplexityN(state.range(0));
}

/// The same one world by our own sets.
void one_world_ours(benchmark::State& state)
{
    const Night night = night_of(state.range(0), true);
    for (auto _ : state) {
        std::map<std::string, std::vector<Interval>> off;
        for (const Removal& removal : night.off)
            off[removal.sensor].push_back({removal.from->middle(), removal.to->middle()});
        const IntervalSet both = intersect(IntervalSet(off["cannula"]), IntervalSet(off["breath"]));
        const IntervalSet rest = subtract(IntervalSet(Interval{start, start + eight_hours}),
                                          unite(both, IntervalSet(off["finger"])));
        benchmark::DoNotOptimize(rest.measure());
    }
    state.SetComplexityN(state.range(0));
}

void chance_20000_draws(benchmark::State& state)
{
    const Night night = night_of(state.range(0), true);
    for (auto _ : state)
        benchmark::DoNotOptimize(chance_enough(night, 20000, 20000));
}

BENCHMARK(estimate_whole)->RangeMultiplier(10)->Range(10, 1000000)->Complexity(benchmark::oNLogN);
BENCHMARK(one_world_ours)->RangeMultiplier(10)->Range(10, 1000000)->Complexity(benchmark::oNLogN);
BENCHMARK(one_world_boost_icl)
    ->RangeMultiplier(10)
    ->Range(10, 1000000)
    ->Complexity(benchmark::oNLogN);
BENCHMARK(estimate_whole)->Arg(20);
BENCHMARK(one_world_ours)->Arg(20);
BENCHMARK(one_world_boost_icl)->Arg(20);
BENCHMARK(chance_20000_draws)->Arg(20)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
