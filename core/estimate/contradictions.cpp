// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "estimate/contradictions.h"

#include "base/intervals.h"
#include "base/json.h"
#include "estimate/worlds.h"

#include <algorithm>
#include <array>
#include <unordered_set>

namespace evenfall {
namespace {

constexpr Span longest_night = std::chrono::hours(24);

/// One of the night's own times, with its name for staff.
struct NamedTime {
    const char* at;
    const char* name;
    const std::optional<TimeRange>* range;
};

/// The same list for all checks: first those that can begin a night, then those that can end one.
struct NightTimes {
    explicit NightTimes(const Night& night)
        : begins{{{"/recording/from", "the start of the recording", &night.recording_from},
                  {"/into_bed", "into bed", &night.into_bed},
                  {"/lights_out", "lights out", &night.lights_out}}},
          ends{{{"/recording/to", "the end of the recording", &night.recording_to},
                {"/final_waking", "the final waking", &night.final_waking},
                {"/lights_on", "lights on", &night.lights_on},
                {"/out_of_bed", "out of bed", &night.out_of_bed}}}
    {
    }
    std::array<NamedTime, 3> begins;
    std::array<NamedTime, 4> ends;
};

std::string minutes_text(Span span) { return minutes_json(span).dump() + " min"; }

class Finder {
  public:
    explicit Finder(const Night& night) : night_(night), times_(night) {}

    std::vector<Contradiction> find()
    {
        unknown_sensors();
        orders();
        outside();
        parts_of_sleep();
        over_24_hours();
        return std::move(found_);
    }

  private:
    const Night& night_;
    NightTimes times_;
    std::vector<Contradiction> found_;

    void add(std::string code, std::string at, std::string text, std::string first,
             std::string second)
    {
        found_.push_back({{Fault::refused, std::move(code), std::move(at), std::move(text)},
                          std::move(first),
                          std::move(second)});
    }

    std::string clock(const TimeRange& range) const
    {
        const auto text = [&](Instant when) { return format_time(when, night_.offset_at(when)); };
        return range.exact() ? text(range.earliest)
                             : text(range.earliest) + " to " + text(range.latest);
    }

    void unknown_sensors()
    {
        const std::unordered_set<std::string_view> known(night_.sensors.begin(),
                                                         night_.sensors.end());
        std::string list;
        for (const std::string& id : night_.sensors)
            list += (list.empty() ? "" : ", ") + id;
        const auto check = [&](const std::string& id, const std::string& at) {
            if (!known.contains(id))
                add("unknown_sensor", at,
                    "\"" + id + "\" is not a sensor of this night; right would be one of: " + list,
                    at, "");
        };
        for (std::size_t g = 0; g < night_.need.groups.size(); ++g)
            for (std::size_t i = 0; i < night_.need.groups[g].size(); ++i)
                check(night_.need.groups[g][i], pointer(pointer("/need/groups", g), i));
        for (std::size_t i = 0; i < night_.off.size(); ++i)
            check(night_.off[i].sensor, pointer("/off", i) + "/sensor");
    }

    /// Where `later` is surely before `earlier`.
    void order(const std::optional<TimeRange>& earlier, const std::optional<TimeRange>& later,
               const std::string& code, const std::string& at, const std::string& first,
               const std::string& second, const std::string& names)
    {
        if (!earlier || !later || later->latest >= earlier->earliest)
            return;
        add(code, at,
            names + ": " + clock(*later) + " is before " + clock(*earlier) +
                "; right would be the other way round, or another day for one of them",
            first, second);
    }

    void orders()
    {
        order(night_.recording_from, night_.recording_to, "no_order", "/recording",
              "/recording/from", "/recording/to", "the recording ends before it starts");
        order(night_.lights_out, night_.lights_on, "lights_on_before_lights_out", "/lights_on",
              "/lights_out", "/lights_on", "lights on before lights out");
        order(night_.into_bed, night_.out_of_bed, "out_of_bed_before_into_bed", "/out_of_bed",
              "/into_bed", "/out_of_bed", "out of bed before into bed");
        order(night_.lights_out, night_.final_waking, "final_waking_before_lights_out",
              "/final_waking", "/lights_out", "/final_waking",
              "the final waking before lights out");
        order(night_.final_waking, night_.out_of_bed, "out_of_bed_before_final_waking",
              "/out_of_bed", "/final_waking", "/out_of_bed", "out of bed before the final waking");
        for (std::size_t i = 0; i < night_.off.size(); ++i) {
            const std::string at = pointer("/off", i);
            order(night_.off[i].from, night_.off[i].to, "no_order", at, at + "/from", at + "/to",
                  "the sensor is back on before it came off");
        }
        if (!night_.awake)
            return;
        for (std::size_t i = 0; i < night_.awake->size(); ++i) {
            const std::string at = pointer("/awake", i);
            order((*night_.awake)[i].from, (*night_.awake)[i].to, "no_order", at, at + "/from",
                  at + "/to", "the awakening ends before it begins");
        }
    }

    /// Something from `from` to `to` that touches no moment between the first and the last of the
    /// night's own times, whichever values those have.
    void outside_night(const std::optional<TimeRange>& from, const std::optional<TimeRange>& to,
                       const std::string& code, const std::string& at, const std::string& name)
    {
        if (first_ && to && to->latest < (*first_->range)->earliest)
            add(code, at,
                name + " ends at " + clock(*to) + ", before the night begins (" + first_->name +
                    " " + clock(**first_->range) + "); right would be a time within the night",
                at, first_->at);
        else if (last_ && from && from->earliest > (*last_->range)->latest)
            add(code, at,
                name + " begins at " + clock(*from) + ", after the night ends (" + last_->name +
                    " " + clock(**last_->range) + "); right would be a time within the night",
                at, last_->at);
    }

    std::optional<NamedTime> first_, last_;

    void outside()
    {
        // Without a time that begins the night there is no telling what is before it.
        for (const NamedTime& time : times_.begins)
            if (*time.range && (!first_ || (*time.range)->earliest < (*first_->range)->earliest))
                first_ = time;
        for (const NamedTime& time : times_.ends)
            if (*time.range && (!last_ || (*time.range)->latest > (*last_->range)->latest))
                last_ = time;
        for (std::size_t i = 0; i < night_.off.size(); ++i)
            outside_night(night_.off[i].from, night_.off[i].to, "removal_outside_night",
                          pointer("/off", i), "the removal of " + night_.off[i].sensor);
        if (!night_.awake)
            return;
        for (std::size_t i = 0; i < night_.awake->size(); ++i) {
            const Awakening& awakening = (*night_.awake)[i];
            std::optional<TimeRange> to = awakening.to;
            if (!to)
                to = TimeRange{awakening.from.earliest + awakening.length.value_or(Span(0)),
                               awakening.from.latest + awakening.length.value_or(Span(0))};
            outside_night(awakening.from, to, "awakening_outside_night", pointer("/awake", i),
                          "the awakening");
        }
    }

    /// The least that the awakenings can add up to.
    Span least_wake() const
    {
        Span total{0};
        std::vector<Interval> timed;
        Interval sleep{distant_past, distant_future};
        if (night_.lights_out)
            sleep.from = night_.lights_out->latest + night_.asleep_after.value_or(Span(0));
        if (night_.final_waking)
            sleep.to = night_.final_waking->earliest;
        if (night_.awake) {
            for (const Awakening& awakening : *night_.awake) {
                if (awakening.to)
                    timed.push_back(
                        read_interval(awakening.from, awakening.to, Reading::narrowest));
                else
                    total += awakening.length.value_or(Span(0));
            }
        }
        total += IntervalSet(std::move(timed)).measure_within(sleep);
        return total + (night_.awake_untimed ? night_.awake_untimed->total : Span(0));
    }

    void parts_of_sleep()
    {
        const Span falling_asleep = night_.asleep_after.value_or(Span(0));
        const Span wake = least_wake();
        const Span slept = night_.slept.value_or(Span(0));
        Span after = night_.tried_after_waking.value_or(Span(0));
        const auto& rising = night_.out_of_bed ? night_.out_of_bed : night_.lights_on;
        if (night_.final_waking && night_.out_of_bed) {
            const Span room = night_.out_of_bed->latest - night_.final_waking->earliest;
            if (room >= Span(0) && after > room)
                add("sleep_longer_than_bed", "/tried_to_sleep_after_waking_min",
                    minutes_text(after) +
                        " of trying to sleep after the final waking, but at most " +
                        minutes_text(room) +
                        " from there to rising; right would be no more than that",
                    "/tried_to_sleep_after_waking_min", "/out_of_bed");
        }
        const std::string largest = night_.slept          ? "/slept_min"
                                    : night_.asleep_after ? "/asleep_after_min"
                                    : night_.awake        ? "/awake"
                                                          : "/awake_untimed";

        // Falling asleep begins at lights out, and what is awake or asleep after it ends at the
        // final waking.
        if (night_.lights_out && night_.final_waking) {
            const Span room = night_.final_waking->latest - night_.lights_out->earliest;
            if (room >= Span(0) && falling_asleep + wake > room) {
                add("sleep_longer_than_bed", night_.asleep_after ? "/asleep_after_min" : largest,
                    minutes_text(falling_asleep) + " to fall asleep and " + minutes_text(wake) +
                        " awake are longer than the " + minutes_text(room) +
                        " from lights out to the final waking; right would be no more than that",
                    night_.asleep_after ? "/asleep_after_min" : largest, "/final_waking");
                return;
            }
        }
        const auto& bed = night_.into_bed ? night_.into_bed : night_.lights_out;
        const std::string bed_at = night_.into_bed ? "/into_bed" : "/lights_out";
        if (!bed)
            return;
        // In the world that leaves most room. From the final waking on, time in bed is what it is.
        std::optional<Span> room;
        if (night_.final_waking) {
            after =
                rising ? std::max(Span(0), rising->latest - night_.final_waking->latest) : Span(0);
            room = night_.final_waking->latest - bed->earliest + after;
        } else if (rising) {
            room = rising->latest - bed->earliest;
        }
        const Span parts = falling_asleep + wake + slept + after;
        if (!room || *room < Span(0) || parts <= *room)
            return;
        add("sleep_longer_than_bed", largest,
            minutes_text(falling_asleep) + " to fall asleep, " + minutes_text(wake) + " awake, " +
                (night_.slept ? minutes_text(slept) + " asleep, " : std::string()) +
                minutes_text(after) + " after the final waking add up to " + minutes_text(parts) +
                ", but the time in bed is " + minutes_text(*room) +
                "; right would be no more than that",
            largest, bed_at);
    }

    void over_24_hours()
    {
        std::optional<NamedTime> first, last;
        const auto consider = [&](const NamedTime& time) {
            if (!*time.range)
                return;
            if (!first || (*time.range)->latest < (*first->range)->latest)
                first = time;
            if (!last || (*time.range)->earliest > (*last->range)->earliest)
                last = time;
        };
        std::for_each(times_.begins.begin(), times_.begins.end(), consider);
        std::for_each(times_.ends.begin(), times_.ends.end(), consider);
        if (!first || (*last->range)->earliest - (*first->range)->latest <= longest_night)
            return;
        add("night_over_24_h", last->at,
            std::string("from ") + first->name + " (" + clock(**first->range) + ") to " +
                last->name + " (" + clock(**last->range) +
                ") is more than 24 hours; right would be the times of one night",
            first->at, last->at);
    }
};

} // namespace

std::vector<Contradiction> find_contradictions(const Night& night) { return Finder(night).find(); }

Problems contradictions(const Night& night)
{
    Problems out;
    for (Contradiction& one : find_contradictions(night))
        out.push_back(std::move(one.problem));
    return out;
}

} // namespace evenfall
