// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/events.h"

#include "estimate/worlds.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace evenfall {
namespace {

struct KindText {
    std::string_view kind;
    std::string_view text;
};

// The first four are standard texts of EDF+, obligatory where they fit. A diary never writes sleep
// stages or apnoeas: it did not score them.
constexpr std::array texts{
    KindText{"recording_starts", "Recording starts"},
    KindText{"lights_off", "Lights off"},
    KindText{"lights_on", "Lights on"},
    KindText{"recording_ends", "Recording ends"},
    KindText{"into_bed", "Into bed"},
    KindText{"out_of_bed", "Out of bed"},
    KindText{"fell_asleep", "Fell asleep as reported"},
    KindText{"asleep_again", "Asleep again as reported"},
    KindText{"final_waking", "Final waking as reported"},
    KindText{"awake", "Awake as reported"},
    KindText{"awake_untimed", "Awakenings without times as reported"},
    KindText{"sensor_off", "Sensor off"},
    KindText{"sensor_off_from_start", "Sensor was off from the start"},
    KindText{"sensor_on_again", "Sensor on again"},
    KindText{"sensor_not_put_back", "Sensor not put back"},
    KindText{"still_on", "Sensors still on"},
    KindText{"something_off", "Part not named came off"},
    KindText{"bathroom", "Bathroom"},
    KindText{"refitted", "Sensor refitted"},
    KindText{"note", "Note"},
    KindText{"changed_note", "Noted at night and changed in the morning"},
    KindText{"signal_check", "Signal check"},
};

std::optional<Span> length_between(const TimeRange& from, const TimeRange& to)
{
    return from.exact() && to.exact() ? std::optional(to.earliest - from.earliest) : std::nullopt;
}

/// Collects the events of the night report, with the origin of the value behind each.
class NightEvents {
  public:
    NightEvents(const Diary& diary, Instant start)
        : diary_(diary), start_(TimeRange::exactly(start))
    {
    }

    std::vector<DiaryEvent> collect()
    {
        const Night& night = diary_.night;
        add("recording_starts", night.recording_from, "/recording/from");
        add("into_bed", night.into_bed, "/into_bed");
        add("lights_off", night.lights_out, "/lights_out");
        if (night.lights_out && night.asleep_after)
            events_.push_back({{night.lights_out->earliest + *night.asleep_after,
                                night.lights_out->latest + *night.asleep_after},
                               std::nullopt,
                               "fell_asleep",
                               "",
                               "",
                               Origin::derived});
        add("final_waking", night.final_waking, "/final_waking");
        add("lights_on", night.lights_on, "/lights_on");
        add("out_of_bed", night.out_of_bed, "/out_of_bed");
        add("recording_ends", night.recording_to, "/recording/to");
        for (std::size_t i = 0; i < night.off.size(); ++i)
            add_removal(night.off[i], pointer("/off", i));
        for (std::size_t i = 0; night.awake && i < night.awake->size(); ++i)
            add_awakening((*night.awake)[i], pointer("/awake", i));
        add_untimed();
        return std::move(events_);
    }

  private:
    const Diary& diary_;
    TimeRange start_;
    std::vector<DiaryEvent> events_;

    Origin origin(const std::string& at) const
    {
        const auto found = diary_.origins.find(at);
        return found == diary_.origins.end() ? Origin::reported : found->second;
    }

    void add(const std::string& kind, const std::optional<TimeRange>& when, const std::string& at)
    {
        if (when)
            events_.push_back({*when, std::nullopt, kind, "", "", origin(at)});
    }

    void add_removal(const Removal& removal, const std::string& at)
    {
        // Off from the start has no time of its own: it stands where the record begins.
        const TimeRange from = removal.from.value_or(start_);
        std::optional<Span> length;
        if (removal.to)
            length = length_between(from, *removal.to);
        if (length && *length < Span(0)) // put back before the record begins
            length = std::nullopt;
        events_.push_back({from, length, removal.from ? "sensor_off" : "sensor_off_from_start",
                           removal.sensor, "", origin(at + "/from")});
        if (removal.to)
            events_.push_back({*removal.to, std::nullopt, "sensor_on_again", removal.sensor, "",
                               origin(at + "/to")});
        else
            events_.push_back({from, std::nullopt, "sensor_not_put_back", removal.sensor, "",
                               origin(at + "/to")});
    }

    void add_awakening(const Awakening& awakening, const std::string& at)
    {
        std::optional<Span> length = awakening.length;
        if (awakening.to)
            length = length_between(awakening.from, *awakening.to);
        if (length && *length < Span(0)) // a contradiction that was left open
            length = std::nullopt;
        events_.push_back({awakening.from, length, "awake", "", "", origin(at + "/from")});
        if (awakening.to)
            events_.push_back(
                {*awakening.to, std::nullopt, "asleep_again", "", "", origin(at + "/to")});
    }

    /// Awakenings without times have a place only where falling asleep and the final waking are
    /// known.
    void add_untimed()
    {
        const Night& night = diary_.night;
        if (!night.awake_untimed || night.awake_untimed->times == 0 || !night.lights_out ||
            !night.final_waking)
            return;
        const Instant from = night.lights_out->earliest + night.asleep_after.value_or(Span(0));
        if (night.final_waking->latest < from)
            return;
        events_.push_back(
            {{from, night.final_waking->latest},
             std::nullopt,
             "awake_untimed",
             "",
             "Awakenings: " + std::to_string(night.awake_untimed->times) +
                 "; minutes together: " + minutes_json(night.awake_untimed->total).dump(),
             origin("/awake_untimed/minutes")});
    }
};

} // namespace

std::vector<DiaryEvent> all_events(const Diary& diary)
{
    const Result<DiaryStart> start = diary_start(diary);
    std::vector<DiaryEvent> events = NightEvents(diary, start ? start->at : Instant{}).collect();
    events.insert(events.end(), diary.events.begin(), diary.events.end());
    for (const DiaryNote& note : diary.notes)
        if (note.at)
            events.push_back({*note.at, std::nullopt, "note", "", note.text, Origin::reported});
    for (const SignalCheck& check : diary.signal_checks)
        events.push_back({TimeRange::exactly(check.at), std::nullopt, "signal_check",
                          check.subject.empty() ? check.kind : check.kind + " " + check.subject,
                          check.text, Origin::reported});
    // Total, so that the order in which things were told cannot change the bytes of diary.edf.
    const auto key = [](const DiaryEvent& event) {
        return std::make_tuple(event.at.earliest, event.at.latest, std::string_view(event.kind),
                               std::string_view(event.subject), event.length.value_or(Span(-1)),
                               std::string_view(event.comment));
    };
    std::stable_sort(events.begin(), events.end(),
                     [&](const DiaryEvent& a, const DiaryEvent& b) { return key(a) < key(b); });
    return events;
}

std::optional<std::string_view> event_text(std::string_view kind)
{
    for (const KindText& each : texts)
        if (each.kind == kind)
            return each.text;
    return std::nullopt;
}

} // namespace evenfall
