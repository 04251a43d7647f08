// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "estimate/estimate.h"

#include "base/intervals.h"
#include "estimate/chance.h"
#include "estimate/worlds.h"

#include <algorithm>
#include <unordered_map>

namespace evenfall {
namespace {

/// The night with its sensors numbered, read in one world after the other.
class Reader {
  public:
    explicit Reader(const Night& night) : night_(night), removals_(night.sensors.size())
    {
        std::unordered_map<std::string_view, std::size_t> index;
        for (std::size_t i = 0; i < night.sensors.size(); ++i)
            index.emplace(night.sensors[i], i);
        for (const Removal& removal : night.off) {
            if (const auto found = index.find(removal.sensor); found != index.end())
                removals_[found->second].push_back(&removal);
        }
        for (const std::vector<std::string>& group : night.need.groups) {
            std::vector<std::size_t> numbers;
            for (const std::string& id : group) {
                if (const auto found = index.find(id); found != index.end())
                    numbers.push_back(found->second);
            }
            groups_.push_back(std::move(numbers));
        }
    }

    std::size_t sensors() const { return removals_.size(); }
    bool was_off(std::size_t sensor) const { return !removals_[sensor].empty(); }

    std::vector<IntervalSet> off(Reading reading) const
    {
        std::vector<IntervalSet> out;
        out.reserve(removals_.size());
        for (const auto& removals : removals_) {
            std::vector<Interval> any;
            any.reserve(removals.size());
            for (const Removal* removal : removals)
                any.push_back(read_interval(removal->from, removal->to, reading));
            out.emplace_back(std::move(any));
        }
        return out;
    }

    /// When some group is off, that is, when all sensors of some group are off. `forgiven`: a
    /// sensor that is taken as never off.
    IntervalSet blocked(const std::vector<IntervalSet>& off,
                        std::optional<std::size_t> forgiven = std::nullopt) const
    {
        std::vector<Interval> any;
        for (const std::vector<std::size_t>& group : groups_) {
            if (group.empty() || std::any_of(group.begin(), group.end(), [&](std::size_t sensor) {
                    return sensor == forgiven || off[sensor].empty();
                }))
                continue;
            if (group.size() == 1) {
                const auto& one = off[group[0]].intervals();
                any.insert(any.end(), one.begin(), one.end());
                continue;
            }
            IntervalSet all = off[group[0]];
            for (std::size_t i = 1; i < group.size(); ++i)
                all = intersect(all, off[group[i]]);
            any.insert(any.end(), all.intervals().begin(), all.intervals().end());
        }
        return IntervalSet(std::move(any));
    }

    IntervalSet awake_by_two_ends(Reading reading) const
    {
        std::vector<Interval> any;
        if (night_.awake) {
            for (const Awakening& awakening : *night_.awake) {
                if (awakening.to)
                    any.push_back(read_interval(awakening.from, awakening.to, reading));
            }
        }
        return IntervalSet(std::move(any));
    }

  private:
    const Night& night_;
    std::vector<std::vector<const Removal*>> removals_;
    std::vector<std::vector<std::size_t>> groups_;
};

/// What would count as asleep and recorded in one world, before wake of known length only: the part
/// of `span` that is not in `without`.
struct Usable {
    Interval span;
    IntervalSet without;

    Span measure() const { return span.length() - without.measure_within(span); }
    Span measure_within(Interval where) const
    {
        const Interval both{std::max(span.from, where.from), std::min(span.to, where.to)};
        return both.length() - without.measure_within(both);
    }
};

/// Where awakenings without times can lie, at their earliest and latest or at middles.
Interval untimed_place(const Night& night, bool at_middles)
{
    const Moment first = at_middles ? Moment::middle : Moment::earliest;
    const Moment last = at_middles ? Moment::middle : Moment::latest;
    Interval place{distant_past, distant_future};
    if (night.lights_out)
        place.from = *moment_of(night.lights_out, first) + night.asleep_after.value_or(Span(0));
    else if (night.into_bed)
        place.from = *moment_of(night.into_bed, first);
    for (const auto* end : {&night.final_waking, &night.lights_on, &night.out_of_bed}) {
        if (*end) {
            place.to = *moment_of(*end, last);
            break;
        }
    }
    return place;
}

/// What wake of known length takes away from `usable` at most, at least, and by best guess. The sum
/// is not yet held between 0 and all that there is.
struct Taken {
    Span most{0}, least{0}, guess{0};
};

/// length x part / whole without overflow: microseconds of a week times those of a night exceed 64
/// bits.
Span proportion(Span length, Span part, Span whole)
{
    if (whole <= Span(0))
        return Span(0);
    const double share = static_cast<double>(part.count()) / static_cast<double>(whole.count());
    const Span taken(static_cast<Span::rep>(static_cast<double>(length.count()) * share + 0.5));
    return std::min(taken, part);
}

Span held(Span value, Span most) { return std::clamp(value, Span(0), std::max(Span(0), most)); }

void take_somewhere(Taken& taken, Interval place, Span length, const Usable& least,
                    const Usable& most)
{
    taken.most += std::min(length, least.measure_within(place));
    taken.least += std::max(Span(0), length - (place.length() - most.measure_within(place)));
}

Taken taken_by_length(const Night& night, const Usable& least, const Usable& middle,
                      const Usable& most)
{
    Taken taken;
    if (night.awake) {
        for (const Awakening& awakening : *night.awake) {
            if (awakening.to || !awakening.length)
                continue;
            const Span length = *awakening.length;
            take_somewhere(taken, {awakening.from.earliest, awakening.from.latest + length}, length,
                           least, most);
            const Instant begin = awakening.from.middle();
            taken.guess += middle.measure_within({begin, begin + length});
        }
    }
    if (night.awake_untimed && night.awake_untimed->total > Span(0)) {
        const Span length = night.awake_untimed->total;
        take_somewhere(taken, untimed_place(night, false), length, least, most);
        // Without an end of its own the place is, for a guess, no larger than what was recorded.
        Interval place = untimed_place(night, true);
        if (place.from == distant_past)
            place.from = middle.span.from;
        if (place.to == distant_future)
            place.to = middle.span.to;
        taken.guess += proportion(length, middle.measure_within(place), place.length());
    }
    return taken;
}

std::vector<std::string> missing_wake_answers(const Night& night)
{
    std::vector<std::string> missing;
    if (!night.asleep_after)
        missing.emplace_back("asleep_after_min");
    else if (!night.lights_out)
        missing.emplace_back("lights_out"); // how long it took is known, but not from when
    if (!night.final_waking)
        missing.emplace_back("final_waking");
    if (!night.awake)
        missing.emplace_back("awake");
    return missing;
}

/// The window without the time before falling asleep and after the final waking.
Interval asleep_span(const Night& night, Interval window, Moment lights_out, Moment final_waking)
{
    if (night.lights_out && night.asleep_after)
        window.from =
            std::max(window.from, *moment_of(night.lights_out, lights_out) + *night.asleep_after);
    if (night.final_waking)
        window.to = std::min(window.to, *moment_of(night.final_waking, final_waking));
    return window;
}

Verdict verdict_of(const Bounds& needed, Span need)
{
    if (needed.at_least >= need)
        return Verdict::enough;
    return needed.at_most < need ? Verdict::too_short : Verdict::borderline;
}

} // namespace

std::string_view verdict_word(Verdict verdict)
{
    switch (verdict) {
    case Verdict::enough:
        return "enough";
    case Verdict::too_short:
        return "short";
    case Verdict::borderline:
        return "borderline";
    case Verdict::unknown:
        break;
    }
    return "unknown";
}

Estimate estimate(const Night& night, const EstimateOptions& options)
{
    Estimate out;
    out.wake_missing = missing_wake_answers(night);
    out.diary = diary_measures(night);
    for (const std::string& sensor : night.sensors)
        out.sensors.emplace_back(sensor, std::nullopt);
    const std::optional<TimeRange> begin = window_from(night);
    const std::optional<TimeRange> end = window_to(night);
    if (!begin || !end)
        return out;

    // The middle of the later of two ranges is not the later of their middles.
    const Interval least_window{begin->latest, end->earliest};
    const Interval most_window{begin->earliest, end->latest};
    const Interval window{*later_of(moment_of(night.recording_from, Moment::middle),
                                    moment_of(night.lights_out, Moment::middle)),
                          *earlier_of(moment_of(night.recording_to, Moment::middle),
                                      moment_of(night.lights_on, Moment::middle))};
    out.window = Bounds{least_window.length(), window.length(), most_window.length()};

    const Reader reader(night);
    const std::vector<IntervalSet> widest = reader.off(Reading::widest);
    const std::vector<IntervalSet> middle = reader.off(Reading::middle);
    const std::vector<IntervalSet> narrowest = reader.off(Reading::narrowest);
    const auto on = [](Interval where, const IntervalSet& off) {
        return where.length() - off.measure_within(where);
    };
    for (std::size_t i = 0; i < reader.sensors(); ++i)
        out.sensors[i].second = Bounds{on(least_window, widest[i]), on(window, middle[i]),
                                       on(most_window, narrowest[i])};

    const IntervalSet most_blocked = reader.blocked(widest);
    const IntervalSet blocked = reader.blocked(middle);
    const IntervalSet least_blocked = reader.blocked(narrowest);
    out.needed =
        Bounds{on(least_window, most_blocked), on(window, blocked), on(most_window, least_blocked)};
    out.verdict = verdict_of(*out.needed, night.need.minutes);

    const Usable least{asleep_span(night, least_window, Moment::latest, Moment::earliest),
                       unite(most_blocked, reader.awake_by_two_ends(Reading::widest))};
    const Usable guess{asleep_span(night, window, Moment::middle, Moment::middle),
                       unite(blocked, reader.awake_by_two_ends(Reading::middle))};
    const Usable most{asleep_span(night, most_window, Moment::earliest, Moment::latest),
                      unite(least_blocked, reader.awake_by_two_ends(Reading::narrowest))};
    const Taken taken = taken_by_length(night, least, guess, most);
    Bounds asleep;
    asleep.at_least = least.measure() - held(taken.most, least.measure());
    // Wakes of known length that were told to overlap, although they are taken not to, take away
    // too much. The minimum is then still one, so that it is the maximum that gives way.
    asleep.at_most = std::max(asleep.at_least, most.measure() - held(taken.least, most.measure()));
    asleep.best_guess = std::clamp(guess.measure() - held(taken.guess, guess.measure()),
                                   asleep.at_least, asleep.at_most);
    out.needed_asleep = asleep;

    const Interval night_span{night.lights_out ? night.lights_out->middle() : window.from,
                              night.lights_on ? night.lights_on->middle() : window.to};
    const Span needed = out.needed->best_guess;
    for (std::size_t i = 0; i < reader.sensors(); ++i) {
        const Span off = middle[i].measure_within(night_span);
        if (off > Span(0))
            out.lost.push_back(
                {night.sensors[i], off, on(window, reader.blocked(middle, i)) - needed});
    }
    const Interval from_lights_out{night_span.from, window.to};
    const Interval to_lights_on{window.from, night_span.to};
    const Span late = Interval{night_span.from, std::min(window.from, night_span.to)}.length();
    const Span early = Interval{std::max(window.to, night_span.from), night_span.to}.length();
    if (late > Span(0))
        out.lost.push_back({"late_start", late, on(from_lights_out, blocked) - needed});
    if (early > Span(0))
        out.lost.push_back({"early_end", early, on(to_lights_on, blocked) - needed});

    if (options.with_chance) {
        // No draw can fall outside the bounds: what they decide is not left to chance.
        if (out.verdict == Verdict::borderline)
            out.chance_enough = chance_enough(night, options.draws, options.seed);
        else
            out.chance_enough = out.verdict == Verdict::enough ? 1.0 : 0.0;
    }
    return out;
}

} // namespace evenfall
