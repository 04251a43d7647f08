// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "estimate/explain.h"

#include "base/intervals.h"
#include "estimate/worlds.h"

#include <algorithm>
#include <cstdio>
#include <map>
#include <set>

namespace evenfall {
namespace {

/// Minutes with at most two decimals, as in the estimate's output.
std::string minutes(Span span)
{
    const auto hundredths = (span.count() + 300000) / 600000;
    char buffer[40];
    std::snprintf(buffer, sizeof buffer, "%ld.%02ld", static_cast<long>(hundredths / 100),
                  static_cast<long>(hundredths % 100));
    std::string text = buffer;
    while (text.back() == '0')
        text.pop_back();
    if (text.back() == '.')
        text.pop_back();
    return text + " min";
}

std::string plural(long count, const std::string& one)
{
    return std::to_string(count) + " " + one + (count == 1 ? "" : "s");
}

std::string list(const std::vector<std::string>& words, const std::string& last)
{
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i)
        text += (i == 0 ? "" : i + 1 == words.size() ? last : ", ") + words[i];
    return text;
}

class Explainer {
  public:
    Explainer(const Night& night, const Estimate& estimate) : night_(night), estimate_(estimate) {}

    std::vector<std::string> lines()
    {
        say("This is worked out from what the person noted. The recording and the clinic decide.");
        if (!estimate_.window) {
            unknown_window();
        } else {
            window();
            for (const Removal& removal : night_.off)
                say(removal_line(removal));
            sensors();
            needed();
            wake();
        }
        not_answered();
        return std::move(lines_);
    }

  private:
    const Night& night_;
    const Estimate& estimate_;
    std::vector<std::string> lines_;
    Interval window_{};

    void say(std::string line) { lines_.push_back(std::move(line)); }

    std::string clock(Instant when) const
    {
        // The offset tells the two readings apart in a night in which the clocks change.
        const std::string text = format_time(when, night_.offset_at(when));
        const std::string time = text.substr(11, text.size() - 11 - 6);
        return (time.ends_with(":00") && time.size() == 8 ? time.substr(0, 5) : time) +
               (clocks_change() ? " (UTC" + text.substr(text.size() - 6) + ")" : "");
    }

    bool clocks_change() const
    {
        const auto from = window_from(night_);
        const auto to = window_to(night_);
        return from && to && night_.offset_at(from->earliest) != night_.offset_at(to->latest);
    }

    std::string clock(const TimeRange& range) const
    {
        return range.exact() ? "at " + clock(range.earliest)
                             : "between " + clock(range.earliest) + " and " + clock(range.latest);
    }

    static std::string bounds(const Bounds& bounds)
    {
        if (bounds.at_least == bounds.at_most)
            return minutes(bounds.best_guess);
        return "at least " + minutes(bounds.at_least) + ", best guess " +
               minutes(bounds.best_guess) + ", at most " + minutes(bounds.at_most);
    }

    void unknown_window()
    {
        if (!window_from(night_))
            say("It is not known when the night began: neither the start of the recording nor "
                "lights "
                "out was noted. So nothing can be said about its length.");
        if (!window_to(night_))
            say("It is not known when the night ended: neither the end of the recording nor lights "
                "on "
                "was noted. So nothing can be said about its length.");
    }

    void window()
    {
        const auto end = [&](const char* name, const std::optional<TimeRange>& range) {
            if (range)
                say(std::string(name) + " " + clock(*range) + ".");
        };
        end("Recording started", night_.recording_from);
        end("Lights out", night_.lights_out);
        end("Lights on", night_.lights_on);
        end("Recording ended", night_.recording_to);
        window_ = {*later_of(moment_of(night_.recording_from, Moment::middle),
                             moment_of(night_.lights_out, Moment::middle)),
                   *earlier_of(moment_of(night_.recording_to, Moment::middle),
                               moment_of(night_.lights_on, Moment::middle))};
        for (const Loss& loss : estimate_.lost) {
            if (loss.cause == "late_start")
                say("The recording began after lights out: " + minutes(loss.minutes) +
                    " of the night are before it.");
            if (loss.cause == "early_end")
                say("The recording ended before lights on: " + minutes(loss.minutes) +
                    " of the night are after it.");
        }
        say("The window in which anything can count: " + bounds(*estimate_.window) + ".");
    }

    std::string removal_line(const Removal& removal) const
    {
        std::string line = removal.sensor;
        line += removal.from ? " came off " + clock(*removal.from) : " was off from the start";
        line += removal.to ? ", back on " + clock(*removal.to) : ", not put back";
        const Span off = IntervalSet(read_interval(removal.from, removal.to, Reading::middle))
                             .measure_within(window_);
        return line + ": " + minutes(off) + " of the window, by best guess.";
    }

    void sensors()
    {
        for (const auto& [id, on] : estimate_.sensors)
            say(id + " was on for " + bounds(*on) + ".");
    }

    std::map<std::string, IntervalSet> off_by_sensor() const
    {
        std::map<std::string, std::vector<Interval>> any;
        for (const Removal& removal : night_.off)
            any[removal.sensor].push_back(read_interval(removal.from, removal.to, Reading::middle));
        std::map<std::string, IntervalSet> out;
        for (auto& [id, intervals] : any)
            out.emplace(id, IntervalSet(std::move(intervals)));
        return out;
    }

    /// The window less everything during which some group was off, and who was off meanwhile.
    IntervalSet counted(std::map<std::string, Span>& lost) const
    {
        const std::map<std::string, IntervalSet> off = off_by_sensor();
        std::set<Instant> edges{window_.from};
        for (const auto& [id, set] : off)
            for (const Interval& one : set.intervals())
                for (const Instant edge : {one.from, one.to})
                    if (edge > window_.from && edge < window_.to)
                        edges.insert(edge);
        std::vector<Interval> counts;
        for (auto edge = edges.begin(); !window_.empty() && edge != edges.end(); ++edge) {
            const auto next = std::next(edge);
            const Interval piece{*edge, next == edges.end() ? window_.to : *next};
            const auto is_off = [&](const std::string& id) {
                const auto found = off.find(id);
                return found != off.end() && found->second.contains(piece.from);
            };
            std::vector<std::string> causes;
            for (const auto& group : night_.need.groups) {
                if (!std::all_of(group.begin(), group.end(), is_off))
                    continue;
                for (const std::string& id : group)
                    if (std::find(causes.begin(), causes.end(), id) == causes.end())
                        causes.push_back(id);
            }
            if (causes.empty())
                counts.push_back(piece);
            else
                lost[list(causes, " and ")] += piece.length();
        }
        return IntervalSet(std::move(counts));
    }

    void needed()
    {
        std::vector<std::string> groups;
        for (const auto& group : night_.need.groups)
            groups.push_back(list(group, " or "));
        say("Needed: " + minutes(night_.need.minutes) + " with " + list(groups, ", and with ") +
            (groups.size() > 1 ? " at the same time." : "."));
        std::map<std::string, Span> lost;
        counted(lost);
        for (const auto& [causes, span] : lost)
            say("Does not count: " + minutes(span) + " with " + causes + " off.");
        say("What counts: " + bounds(*estimate_.needed) + ".");
        for (const Loss& loss : estimate_.lost)
            say(loss.cause + " alone cost " + minutes(loss.alone) + " of what is needed.");
        say(verdict());
    }

    std::string verdict() const
    {
        switch (estimate_.verdict) {
        case Verdict::enough:
            return "Verdict: enough. Even at its least it reaches what is needed.";
        case Verdict::too_short:
            return "Verdict: short. Even at its most it does not reach what is needed.";
        case Verdict::borderline:
            break;
        case Verdict::unknown:
            return "Verdict: unknown.";
        }
        std::string line = "Verdict: borderline. It depends on times that are not known exactly";
        if (estimate_.chance_enough) {
            char percent[16];
            std::snprintf(percent, sizeof percent, "%.0f", *estimate_.chance_enough * 100);
            line += std::string(
                        "; with each time equally likely anywhere in its range, it is enough in ") +
                    percent + " % of the cases";
        }
        return line + ".";
    }

    void wake()
    {
        std::map<std::string, Span> unused;
        IntervalSet rest = counted(unused);
        const auto take = [&](const IntervalSet& gone, const std::string& what) {
            const Span lost = intersect(rest, gone).measure();
            rest = subtract(rest, gone);
            say("Awake: " + what + ": " + minutes(lost) + " of what counts.");
        };
        if (night_.lights_out && night_.asleep_after)
            take(Interval{distant_past, night_.lights_out->middle() + *night_.asleep_after},
                 minutes(*night_.asleep_after) + " to fall asleep after lights out");
        if (night_.final_waking)
            take(Interval{night_.final_waking->middle(), distant_future},
                 "after the final waking " + clock(*night_.final_waking));
        std::vector<const Awakening*> by_length;
        if (night_.awake) {
            for (const Awakening& awakening : *night_.awake) {
                if (awakening.to)
                    take(Interval{awakening.from.middle(), awakening.to->middle()},
                         "woke " + clock(awakening.from) + ", asleep again " +
                             clock(*awakening.to));
                else
                    by_length.push_back(&awakening);
            }
        }
        Span left = rest.measure();
        for (const Awakening* awakening : by_length) {
            const Instant begin = awakening->from.middle();
            const Span length = awakening->length.value_or(Span(0));
            const Span lost = std::min(left, rest.measure_within({begin, begin + length}));
            left -= lost;
            say("Awake: woke " + clock(awakening->from) + " for " + minutes(length) + ": " +
                minutes(lost) + " of what counts.");
        }
        if (night_.awake_untimed && night_.awake_untimed->total > Span(0))
            say("Awake: " + plural(night_.awake_untimed->times, "time") +
                " without a clock time, " + minutes(night_.awake_untimed->total) +
                " together: " + minutes(left - estimate_.needed_asleep->best_guess) +
                " of what counts, in proportion to how much of the night counts.");
        say("What counts while asleep, by the diary: " + bounds(*estimate_.needed_asleep) + ".");
    }

    void not_answered()
    {
        static const std::map<std::string, std::string> questions{
            {"asleep_after_min", "how long it took to fall asleep"},
            {"lights_out", "when the lights went out"},
            {"final_waking", "the final waking"},
            {"awake", "awakenings"}};
        for (const std::string& missing : estimate_.wake_missing)
            say("Not answered: " + questions.at(missing) + ". Nothing is taken away for it.");
    }
};

} // namespace

std::vector<std::string> explain(const Night& night, const Estimate& estimate)
{
    return Explainer(night, estimate).lines();
}

} // namespace evenfall
