// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/align.h"

#include "estimate/contradictions.h"
#include "estimate/estimate_json.h"
#include "record/diary_edf.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace evenfall {
namespace {

using std::chrono::hours;
using std::chrono::minutes;

/// What a sensor is called: in our ids, and in the labels of recordings. The EDF+ standard texts
/// ("Resp nasal", "SaO2") and what recorders write besides (common practice, no source).
struct Names {
    std::vector<std::string_view> sensor; ///< words of a sensor's id
    std::vector<std::string_view> signal; ///< words of a signal's label
};

// The first that fits a label has it: "Resp oro-nasal" is the breath sensor's, not the cannula's.
const std::array<Names, 9>& names()
{
    static const std::array<Names, 9> all{{
        {{"chest", "thorax"}, {"chest", "thorax", "thoracic", "thor", "tho", "rc"}},
        {{"abdomen", "belly", "waist"}, {"abdomen", "abdominal", "abdo", "abd", "ab"}},
        {{"breath", "thermal", "thermistor"}, {"oro", "oronasal", "therm", "thermal", "thermistor", "thermocouple"}},
        {{"cannula", "nasal"}, {"nasal", "cannula", "flow", "airflow", "pressure", "pres", "press"}},
        {{"finger", "probe", "oximeter"}, {"spo2", "sao2", "o2", "pleth", "plethysmogram", "pulse", "oximetry", "ppg"}},
        {{"ecg"}, {"ecg", "ekg"}},
        {{"position"}, {"position", "pos", "bodyposition"}},
        {{"snore"}, {"snore", "snoring", "sound", "mic", "microphone"}},
        {{"leg", "legs"}, {"leg", "legs", "tib", "tibialis"}},
    }};
    return all;
}

/// Lower-case words of letters and digits; "SpO2-Pleth" has two.
std::vector<std::string> words_of(std::string_view text)
{
    std::vector<std::string> words(1);
    for (const char c : text) {
        if (std::isalnum(static_cast<unsigned char>(c)))
            words.back() += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
        else if (!words.back().empty())
            words.emplace_back();
    }
    return words;
}

bool any_word(std::string_view text, const std::vector<std::string_view>& wanted)
{
    const std::vector<std::string> words = words_of(text);
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::find(wanted.begin(), wanted.end(), word) != wanted.end();
    });
}

const Names* names_of_signal(std::string_view label)
{
    const auto found = std::find_if(names().begin(), names().end(), [&](const Names& one) { return any_word(label, one.signal); });
    return found == names().end() ? nullptr : &*found;
}

std::string seconds_text(Span span)
{
    return Json(std::chrono::duration<double>(span).count()).dump() + " s";
}

class Aligner {
  public:
    Aligner(const Diary& diary, const EdfHeader& recording) : diary_(diary) { out_.recording = recording; }

    Result<Alignment> align()
    {
        const std::optional<TimeRange>& from = diary_.night.recording_from;
        if (!from)
            return Problem{Fault::refused, "no_start", "/night/recording/from",
                           "the diary does not say when the recording began; right would be a night in which the "
                           "person saw the recorder's light, or whose start was entered"};
        out_.our_start = *from;
        read_start();
        out_.offset = out_.recorder_start - from->middle();
        out_.offset_at_least = out_.recorder_start - from->latest;
        out_.offset_at_most = out_.recorder_start - from->earliest;
        judge_offset();
        judge_code();
        judge_end();
        match_signals();
        return std::move(out_);
    }

  private:
    const Diary& diary_;
    Alignment out_;

    void warn(std::string code, std::string text)
    {
        out_.warnings.push_back({Fault::refused, std::move(code), "", std::move(text)});
    }

    void read_start()
    {
        const LocalTime local = out_.recording.start;
        const Instant ours = out_.our_start.middle();
        if (!diary_.night.zone) { // the offset that the diary's own times were written with
            out_.recorder_start = Instant(local.time_since_epoch() - diary_.night.offset_at(ours));
            return;
        }
        const LocalReading reading = diary_.night.zone->read(local);
        out_.recorder_start = reading.first;
        if (reading.kind == LocalReading::Kind::nonexistent) {
            warn("start_never", "the recorder's start does not exist in " + diary_.night.zone->name() +
                                    ", where the clocks went forward; it was read as the time before the change");
        } else if (reading.kind == LocalReading::Kind::ambiguous) {
            const bool second = std::chrono::abs(reading.second - ours) < std::chrono::abs(reading.first - ours);
            out_.recorder_start = second ? reading.second : reading.first;
            warn("start_twice", "the recorder's start comes twice in " + diary_.night.zone->name() +
                                    ", where the clocks went back; it was read as the one nearer to the diary, " +
                                    format_time(out_.recorder_start, second ? reading.second_offset : reading.first_offset));
        }
    }

    void judge_offset()
    {
        // As near to agreement as the diary's uncertainty allows.
        const Span least = std::max({Span(0), out_.offset_at_least, -out_.offset_at_most});
        if (least <= plausible_offset)
            return;
        const Span size = std::chrono::abs(out_.offset);
        const Span slack = out_.our_start.width() / 2 + plausible_offset;
        std::string hint;
        if (size + slack >= hours(24))
            hint = "; it may be the recording of another night";
        else if (const Span whole = std::chrono::round<hours>(size); whole > Span(0) && std::chrono::abs(size - whole) <= slack)
            hint = "; it is near to whole hours, so one of the clocks may be set to another zone or to summer time";
        warn("offset_implausible", "the recorder's clock and the diary's are at least " + seconds_text(least) +
                                       " apart; right would be at most " + seconds_text(plausible_offset) + hint);
    }

    void judge_code()
    {
        const std::string code = out_.recording.patient.substr(0, out_.recording.patient.find(' '));
        if (!code.empty() && code != "X" && code != diary_.of.code)
            warn("other_code", "the recording's patient field begins with \"" + code + "\", the diary's study code is \"" +
                                   diary_.of.code + "\"; right would be the recording of this person");
    }

    void judge_end()
    {
        if (out_.recording.records < 0) {
            warn("still_open", "the recorder did not close its file (-1 data records): its length is unknown");
            return;
        }
        const Span length = out_.recording.record_duration * out_.recording.records;
        const Instant end = out_.our_start.latest + length;
        for (const std::optional<TimeRange>& last : {diary_.night.recording_to, diary_.night.lights_on}) {
            if (!last || last->earliest - end <= plausible_offset)
                continue;
            warn("ends_early", "the recording lasts " + minutes_json(length).dump() + " min and ends at least " +
                                   minutes_json(last->earliest - end).dump() +
                                   " min before the diary's night does; right would be a recording of the whole night");
            return;
        }
    }

    void match_signals()
    {
        const bool sound = contradictions(diary_.night).empty();
        const Estimate found = sound ? estimate(diary_.night, {.with_chance = false}) : Estimate{};
        for (const std::string& id : diary_.night.sensors) {
            AlignedSensor sensor{id, {}, std::nullopt};
            for (const EdfSignal& signal : out_.recording.signals) {
                const Names* of = names_of_signal(signal.label);
                if (!signal.annotations() && of && any_word(id, of->sensor))
                    sensor.signals.push_back(signal.label);
            }
            for (const auto& [name, bounds] : found.sensors)
                if (name == id)
                    sensor.on = bounds;
            out_.sensors.push_back(std::move(sensor));
        }
        for (const EdfSignal& signal : out_.recording.signals) {
            const bool taken = std::any_of(out_.sensors.begin(), out_.sensors.end(), [&](const AlignedSensor& sensor) {
                return std::find(sensor.signals.begin(), sensor.signals.end(), signal.label) != sensor.signals.end();
            });
            if (!taken && !signal.annotations())
                out_.other_signals.push_back(signal.label);
        }
    }
};

} // namespace

Result<Alignment> align(const Diary& diary, const EdfHeader& recording) { return Aligner(diary, recording).align(); }

Result<std::string> aligned_edf(const Diary& diary, const Alignment& alignment)
{
    Result<EdfDiary> file = diary_annotations(diary, alignment.our_start.middle());
    if (!file)
        return file.problems();
    file->start = alignment.recording.start;
    file->patient_field = alignment.recording.patient;
    file->start_text = "Recording as the diary knows it";
    const std::string apart = "Diary laid over the recording: the recorder's clock is ahead by " + seconds_text(alignment.offset) +
                              " (" + seconds_text(alignment.offset_at_least) + " to " + seconds_text(alignment.offset_at_most) + ")";
    file->annotations.insert(file->annotations.begin(), Annotation{Span(0), std::nullopt, apart});
    return write_edf(*file);
}

Json alignment_json(const Diary& diary, const Alignment& alignment)
{
    const auto local = [&](Instant when) { return format_time(when, diary.night.offset_at(when)); };
    const auto seconds = [](Span span) {
        const auto whole = std::chrono::floor<std::chrono::seconds>(span);
        return whole == span ? Json(whole.count()) : Json(std::chrono::duration<double>(span).count());
    };
    Json json{{"format", "evenfall.alignment/1"}};
    json["visit"] = Json{{"code", diary.of.code}, {"night", diary.of.night}};
    json["recording"] = Json{{"kind", alignment.recording.kind},
                             {"patient", alignment.recording.patient},
                             {"start", local(alignment.recorder_start)}};
    if (alignment.recording.records >= 0)
        json["recording"]["minutes"] = minutes_json(alignment.recording.record_duration * alignment.recording.records);
    json["start"] = time_range_json(alignment.our_start, diary.night);
    json["offset_s"] = Json{{"at_least", seconds(alignment.offset_at_least)},
                            {"best_guess", seconds(alignment.offset)},
                            {"at_most", seconds(alignment.offset_at_most)}};
    json["sensors"] = Json::array();
    for (const AlignedSensor& sensor : alignment.sensors) {
        Json one{{"sensor", sensor.sensor}, {"signals", sensor.signals}};
        if (sensor.on)
            one["on_min"] = bounds_json(*sensor.on);
        json["sensors"].push_back(std::move(one));
    }
    json["other_signals"] = alignment.other_signals;
    json["warnings"] = Json::array();
    for (const Problem& warning : alignment.warnings)
        json["warnings"].push_back(Json{{"code", warning.code}, {"text", warning.text}});
    return json;
}

} // namespace evenfall
