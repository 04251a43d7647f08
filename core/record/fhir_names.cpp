// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/fhir_names.h"

#include <array>

namespace evenfall::fhir {
namespace {

struct Concept {
    std::string_view code;
    std::string_view display;
    std::string_view definition;
};

// Measures by Carney et al. 2012 (Sleep 35:287-302) and Reed & Sacco 2016 (J Clin Sleep Med
// 12:263-6); the words are ours. See estimate/diary_measures.h and estimate/estimate.h.
constexpr std::array concepts{
    Concept{"tib", "Time in bed (TIB)",
            "Out of bed - into bed, in minutes. A time given as a range counts at its middle."},
    Concept{"sol", "Sleep onset latency (SOL)",
            "The reported time to fall asleep after lights out, in minutes."},
    Concept{"waso", "Wake after sleep onset (WASO)",
            "Reported time awake between first falling asleep and the final waking, in minutes. A "
            "time given as a range counts at its middle."},
    Concept{"awakenings", "Awakenings",
            "Number of reported awakenings, with and without times. The final waking is not one."},
    Concept{"tst", "Total sleep time (TST), from the diary",
            "(Final waking - lights out) - SOL - WASO, in minutes, from the person's answers; no "
            "signal was looked at. A time given as a range counts at its middle."},
    Concept{"tasafa", "Time attempting to sleep after final awakening (TASAFA)",
            "As reported, in minutes. Asked, not computed."},
    Concept{"dse", "Duration of the sleep episode (DSE)", "SOL + TST + WASO + TASAFA, in minutes."},
    Concept{"se_tib", "Sleep efficiency, TST / TIB",
            "Total sleep time divided by time in bed, in percent."},
    Concept{"se_dse", "Sleep efficiency, TST / DSE",
            "Total sleep time divided by the duration of the sleep episode, in percent."},
    Concept{"window", "Window of the night",
            "Minutes from the later of the start of the recording and lights out to the earlier of "
            "the end of the recording and lights on; whichever of the two is given."},
    Concept{"sensor_on", "Sensor on",
            "Minutes of the window in which one sensor was on, by the diary. Whether it recorded, "
            "only the recording shows."},
    Concept{"usable", "Time with the needed sensors on",
            "Minutes of the window in which every needed group of sensors was on, by the diary. "
            "The recording and the clinic decide what can be used."},
    Concept{"usable_asleep", "Time with the needed sensors on, less reported wake",
            "The same less the time before falling asleep, after the final waking, and the "
            "awakenings, as reported. A wake answer that is missing takes nothing away."},
    Concept{"verdict", "Set against the need, by the diary",
            "The minutes with the needed sensors on against the minutes that the clinic needs."},
    Concept{"lost", "Time lost", "Time lost between lights out and lights on to one cause."},
    Concept{"at_least", "At least",
            "Minimum over all times that the answers allow, in minutes, rounded down."},
    Concept{"best_guess", "Best guess",
            "With every uncertain time at the middle of its range, in minutes."},
    Concept{"at_most", "At most",
            "Maximum over all times that the answers allow, in minutes, rounded up."},
    Concept{"need", "Need", "The minutes that the clinic needs."},
    Concept{"chance_enough", "Chance that the need is reached",
            "Share, 0 to 1, of the times that the answers allow in which the need is reached, each "
            "uncertain time uniform over its range."},
    Concept{"sensor", "Sensor", "Id of a sensor in the kit of this night."},
    Concept{"wake_missing", "Missing wake answer",
            "An answer about wake that is missing, and so took nothing away."},
    Concept{"cause", "Cause",
            "Id of a sensor; or late_start, the recording began after lights out; or early_end, it "
            "ended before lights on."},
    Concept{"lost_minutes", "Minutes lost",
            "Best guess of the cause's time between lights out and lights on, in minutes."},
    Concept{"lost_alone", "Minutes lost to this cause alone",
            "What the best guess of the time with the needed sensors on would gain if only this "
            "cause were gone, in minutes."},
    Concept{"enough", "Reaches the need in any case", "At least reaches the need."},
    Concept{"short", "Does not reach the need in any case", "At most does not reach the need."},
    Concept{"borderline", "May reach the need", "At least does not reach the need, at most does."},
    Concept{"unknown", "Cannot be said", "The window has no beginning or no end."},
};

const Concept& concept_of(std::string_view code)
{
    for (const Concept& each : concepts)
        if (each.code == code)
            return each;
    static constexpr Concept none{}; // its empty texts do not pass check_fhir
    return none;
}

/// A question, or a group of them.
Json question(const std::string& link, const std::string& type, const std::string& text)
{
    return Json{{"linkId", link}, {"text", text}, {"type", type}};
}

Json group(const std::string& link, const std::string& text, std::vector<Json> items,
           bool repeats = false)
{
    Json json = question(link, "group", text);
    if (repeats)
        json["repeats"] = true;
    json["item"] = std::move(items);
    return json;
}

/// A time that may be uncertain: at, or earliest and latest.
Json time_group(const std::string& link, const std::string& text)
{
    return group(link, text,
                 {question(link + ".at", "dateTime", text + ", exact"),
                  question(link + ".earliest", "dateTime", text + ", not before"),
                  question(link + ".latest", "dateTime", text + ", not after")});
}

} // namespace

Json code_system()
{
    Json json{{"resourceType", "CodeSystem"},
              {"url", code_system_url},
              {"version", "1"},
              {"name", "NightDiaryCodes"},
              {"title", "Codes of a night diary that no standard code was found for"},
              {"status", "active"},
              {"caseSensitive", true},
              {"content", "complete"},
              {"count", concepts.size()},
              {"concept", Json::array()}};
    for (const Concept& each : concepts)
        json["concept"].push_back(
            Json{{"code", each.code}, {"display", each.display}, {"definition", each.definition}});
    return json;
}

std::string_view definition(std::string_view code)
{
    return concept_of(code).definition;
}

Json coding(std::string_view code)
{
    return Json{{"system", code_system_url}, {"code", code}, {"display", concept_of(code).display}};
}

Json questionnaire()
{
    Json json{{"resourceType", "Questionnaire"},
              {"url", questionnaire_url},
              {"version", questionnaire_version},
              {"name", "NightDiary"},
              {"title", "Diary of one night of a home sleep study"},
              {"status", "active"},
              {"subjectType", Json::array({"Patient"})},
              {"item", Json::array()}};
    Json derived = question("derived", "string",
                            "Answers below that were worked out from notes, and not given: their "
                            "element ids");
    derived["repeats"] = true;
    json["item"] = Json::array({
        std::move(derived),
        group("kit", "Kit",
              {question("kit.id", "string", "Kit"),
               question("kit.label", "string", "What is written on its bag")}),
        group("recording", "Recording",
              {time_group("recording.from", "Recording started"),
               time_group("recording.to", "Recording ended")}),
        time_group("into_bed", "Into bed"),
        time_group("lights_out", "Lights out"),
        question("asleep_after", "quantity", "Minutes to fall asleep after lights out"),
        group("awake", "Awakenings between falling asleep and the final waking",
              {question("awake.timed", "boolean", "Are there awakenings with a time?"),
               group("awake.awakening", "One awakening with its time",
                     {time_group("awake.awakening.from", "Awake"),
                      time_group("awake.awakening.to", "Asleep again"),
                      question("awake.awakening.minutes", "quantity", "Minutes awake")},
                     true),
               group("awake.untimed", "Awakenings without a time",
                     {question("awake.untimed.times", "integer", "How often"),
                      question("awake.untimed.minutes", "quantity",
                               "Minutes awake, all of them together")})}),
        group("off", "A sensor that was not in place",
              {question("off.sensor", "string", "Which sensor"),
               question("off.from_start", "boolean", "Off from the start"),
               time_group("off.from", "Came off"), time_group("off.to", "Put back on"),
               question("off.not_put_back", "boolean", "Not put back on")},
              true),
        time_group("final_waking", "Final waking"),
        question("tried_to_sleep_after_waking", "quantity",
                 "Minutes of trying to sleep after the final waking"),
        time_group("lights_on", "Lights on"),
        time_group("out_of_bed", "Out of bed"),
        question("slept", "quantity", "Minutes slept, in the person's own view"),
        group("answer", "Another question of the evening or the morning",
              {question("answer.question", "string", "Id of the question"),
               question("answer.boolean", "boolean", "Answer, yes or no"),
               question("answer.integer", "integer", "Answer, a whole number"),
               question("answer.decimal", "decimal", "Answer, a number"),
               question("answer.text", "text", "Answer, a text"),
               question("answer.json", "text", "Answer of several values, as JSON")},
              true),
        group("event", "Something else that happened",
              {question("event.kind", "string", "What"), time_group("event.when", "When"),
               question("event.minutes", "quantity", "Minutes it lasted"),
               question("event.subject", "string", "With what"),
               question("event.comment", "text", "Comment")},
              true),
        group("note", "A note in the person's own words",
              {time_group("note.when", "When"), question("note.text", "text", "Note")}, true),
        group("signal_check", "A look at the kit before the night",
              {question("signal_check.at", "dateTime", "When"),
               question("signal_check.kind", "string", "What was looked at"),
               question("signal_check.subject", "string", "Of what"),
               question("signal_check.text", "text", "What was seen")},
              true),
    });
    return json;
}

} // namespace evenfall::fhir
