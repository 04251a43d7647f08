// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// A diary laid over a recording. Recordings here are headers, with no data behind them; those that
// EDFlib writes are in tests/outside. All nights are invented.
#include "core/record/diaries.h"
#include "record/align.h"

namespace evenfall {
namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;
using test::diary_of;
using test::example_night;

LocalTime wall(const char* text) { return parse_time(text)->local; }

/// The recording of the example night (21:58 by the diary, exact), by the recorder's clock.
EdfHeader recording(const char* start)
{
    EdfHeader header;
    header.patient = "SM-0417 X X X";
    header.recording = "Startdate 31-OCT-2026 X X X";
    header.start = wall(start);
    header.kind = "EDF+C";
    header.records = 10 * 3600;
    header.record_duration = seconds(1);
    for (const char* label : {"Resp chest", "Abdo Effort", "Nasal Pressure", "Resp oro-nasal", "SpO2", "Pleth", "Battery", "EDF Annotations"}) {
        EdfSignal signal;
        signal.label = label;
        header.signals.push_back(signal);
    }
    return header;
}

std::vector<std::string> codes(const Alignment& alignment)
{
    std::vector<std::string> out;
    for (const Problem& warning : alignment.warnings)
        out.push_back(warning.code);
    return out;
}

Alignment aligned(const Diary& diary, const EdfHeader& header)
{
    Result<Alignment> found = align(diary, header);
    EXPECT_TRUE(found.ok()) << (found.ok() ? "" : found.problems()[0].text);
    return found ? *found : Alignment{};
}

TEST(Align, OffsetIsTheRecordersClockMinusOurs)
{
    const Alignment ahead = aligned(diary_of(example_night()), recording("2026-10-31T21:58:37"));
    EXPECT_EQ(ahead.offset, seconds(37));
    EXPECT_EQ(ahead.offset_at_least, seconds(37));
    EXPECT_EQ(ahead.offset_at_most, seconds(37));
    EXPECT_TRUE(ahead.warnings.empty());
    const Alignment behind = aligned(diary_of(example_night()), recording("2026-10-31T21:56:30"));
    EXPECT_EQ(behind.offset, -seconds(90));
}

TEST(Align, IsAsUncertainAsTheStartThatThePersonSaw)
{
    Night night = example_night();
    night.recording_from = TimeRange{night.recording_from->earliest - minutes(2), night.recording_from->earliest};
    const Alignment found = aligned(diary_of(night), recording("2026-10-31T21:58:30"));
    EXPECT_EQ(found.offset_at_least, seconds(30));
    EXPECT_EQ(found.offset, seconds(90));
    EXPECT_EQ(found.offset_at_most, seconds(150));
}

TEST(Align, WarnsBeyondWhatIsPlausible_AndNotBefore)
{
    const Diary diary = diary_of(example_night());
    EXPECT_TRUE(aligned(diary, recording("2026-10-31T22:13:00")).warnings.empty()) << "15 min";
    EXPECT_EQ(codes(aligned(diary, recording("2026-10-31T22:13:01"))), std::vector<std::string>{"offset_implausible"});
    const Alignment hour = aligned(diary, recording("2026-10-31T22:58:20"));
    ASSERT_EQ(codes(hour), std::vector<std::string>{"offset_implausible"});
    EXPECT_NE(hour.warnings[0].text.find("summer time"), std::string::npos);
    const Alignment day = aligned(diary, recording("2026-11-02T21:58:20"));
    EXPECT_NE(day.warnings[0].text.find("another night"), std::string::npos);
    // 40 min apart, of which the person's uncertainty may explain all but 10.
    Night unsure = example_night();
    unsure.recording_from = TimeRange{unsure.recording_from->earliest - minutes(30), unsure.recording_from->earliest + minutes(30)};
    EXPECT_TRUE(aligned(diary_of(unsure), recording("2026-10-31T22:38:00")).warnings.empty());
}

TEST(Align, SaysSo_WhenTheRecordersStartComesTwiceOrNever)
{
    // IANA tz database 2025b: 1 Nov 2026 01:30 in New York is both 05:30Z and 06:30Z; 8 Mar 2026
    // 02:30 does not exist there.
    Night night = example_night();
    night.lights_out.reset();
    night.recording_from = TimeRange::exactly(*resolve(*parse_time("2026-11-01T06:29:00Z"), nullptr));
    const Alignment twice = aligned(diary_of(night), recording("2026-11-01T01:30:00"));
    EXPECT_EQ(twice.offset, seconds(60)) << "the reading nearer to the diary";
    EXPECT_EQ(codes(twice), std::vector<std::string>{"start_twice"});
    night.recording_from = TimeRange::exactly(*resolve(*parse_time("2026-03-08T03:29:00-04:00"), nullptr));
    night.recording_to.reset();
    night.lights_on.reset();
    const Alignment never = aligned(diary_of(night), recording("2026-03-08T02:30:00"));
    EXPECT_EQ(never.offset, seconds(60)) << "a recorder that did not change its clock";
    EXPECT_EQ(codes(never), std::vector<std::string>{"start_never"});
}

TEST(Align, WarnsOfAnotherCode_OfAShortRecording_AndOfOneNotClosed)
{
    const Diary diary = diary_of(example_night());
    EdfHeader other = recording("2026-10-31T21:58:00");
    other.patient = "SM-0418 F X X";
    EXPECT_EQ(codes(aligned(diary, other)), std::vector<std::string>{"other_code"});
    other.patient = "X X X X";
    EXPECT_TRUE(aligned(diary, other).warnings.empty()) << "unknown is no other";
    EdfHeader brief = recording("2026-10-31T21:58:00");
    brief.records = 5 * 3600;
    EXPECT_EQ(codes(aligned(diary, brief)), std::vector<std::string>{"ends_early"});
    EdfHeader open = recording("2026-10-31T21:58:00");
    open.records = -1;
    EXPECT_EQ(codes(aligned(diary, open)), std::vector<std::string>{"still_open"});
}

TEST(Align, IsRefused_WhenTheDiaryKnowsNoStart)
{
    Night night = example_night();
    night.recording_from.reset();
    const Result<Alignment> found = align(diary_of(night), recording("2026-10-31T21:58:00"));
    ASSERT_FALSE(found.ok());
    EXPECT_EQ(found.problems()[0].code, "no_start");
    EXPECT_EQ(found.problems()[0].fault, Fault::refused);
    EXPECT_EQ(found.problems()[0].at, "/night/recording/from");
}

TEST(Align, ListsTheSignalsOfEachSensor_WithItsReportedTimeOn)
{
    const Diary diary = diary_of(example_night());
    const Alignment found = aligned(diary, recording("2026-10-31T21:58:00"));
    std::map<std::string, std::vector<std::string>> signals;
    for (const AlignedSensor& one : found.sensors)
        signals[one.sensor] = one.signals;
    EXPECT_EQ(signals["chest"], std::vector<std::string>{"Resp chest"});
    EXPECT_EQ(signals["abdomen"], std::vector<std::string>{"Abdo Effort"});
    EXPECT_EQ(signals["cannula"], std::vector<std::string>{"Nasal Pressure"});
    EXPECT_EQ(signals["breath"], std::vector<std::string>{"Resp oro-nasal"});
    EXPECT_EQ(signals["finger"], (std::vector<std::string>{"SpO2", "Pleth"}));
    EXPECT_EQ(found.other_signals, std::vector<std::string>{"Battery"});
    const Estimate night = estimate(diary.night, {.with_chance = false});
    ASSERT_EQ(found.sensors.size(), night.sensors.size());
    for (std::size_t i = 0; i < found.sensors.size(); ++i)
        EXPECT_EQ(found.sensors[i].on, night.sensors[i].second);
}

TEST(Align, AnnotationsLieOverTheRecording_WithItsStartAndPatientField)
{
    const Diary diary = diary_of(example_night());
    EdfHeader header = recording("2026-10-31T22:00:10"); // 130 s ahead
    header.patient = "4711 (old recorder)";
    const Result<std::string> bytes = aligned_edf(diary, aligned(diary, header));
    ASSERT_TRUE(bytes.ok()) << bytes.problems()[0].text;
    EXPECT_EQ(bytes->substr(8, 80), header.patient + std::string(80 - header.patient.size(), ' ')) << "EDF+ 2.3";
    EXPECT_EQ(bytes->substr(168, 16), "31.10.2622.00.10");
    const Result<EdfFile> file = read_edf(*bytes, Identifications::as_given);
    ASSERT_TRUE(file.ok()) << file.problems()[0].text;
    EXPECT_FALSE(read_edf(*bytes).ok()) << "that patient field has not the form of 2.1.3";
    const auto onset = [&file](std::string_view text) -> std::optional<Span> {
        for (const Annotation& one : file->annotations)
            if (one.text.starts_with(text))
                return one.onset;
        return std::nullopt;
    };
    // The recording began at 21:58 by our clock; whatever the recorder's clock says, its own start is 0.
    EXPECT_EQ(onset("Recording starts"), Span(0));
    EXPECT_EQ(onset("Time uncertain: Lights off"), minutes(2));
    EXPECT_EQ(onset("Into bed"), -minutes(8));
    EXPECT_EQ(onset("Recording ends"), hours(9) + minutes(47)) << "over the clock change";
    EXPECT_EQ(onset("Diary laid over the recording"), Span(0));
}

TEST(Align, JsonSaysOffsetSignalsAndWarnings)
{
    const Diary diary = diary_of(example_night());
    const Json json = alignment_json(diary, aligned(diary, recording("2026-10-31T22:20:00.5")));
    EXPECT_EQ(json["format"], "evenfall.alignment/1");
    EXPECT_EQ(json["offset_s"]["best_guess"], 1320.5);
    EXPECT_EQ(json["start"], "2026-10-31T21:58:00-04:00");
    EXPECT_EQ(json["recording"]["start"], "2026-10-31T22:20:00.5-04:00");
    EXPECT_EQ(json["sensors"][4]["sensor"], "finger");
    EXPECT_TRUE(json["sensors"][4]["on_min"].contains("at_least"));
    EXPECT_EQ(json["warnings"][0]["code"], "offset_implausible");
}

} // namespace
} // namespace evenfall
