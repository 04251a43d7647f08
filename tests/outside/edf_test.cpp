// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// diary.edf as EDFlib reads it, and byte vectors of others.
#include "core/record/diaries.h"
#include "record/diary_edf.h"
#include "record/edf.h"

#include <cstdio>
#include <edflib.h>
#include <fstream>

namespace evenfall {
namespace {

using test::diary_of;
using test::min;
using test::RandomNights;
using test::TemporaryDirectory;

/// EDFlib's view of some bytes must be ours: start, and each annotation in order.
void expect_same_as_edflib(const std::string& bytes)
{
    const Result<EdfFile> ours = read_edf(bytes);
    ASSERT_TRUE(ours.ok()) << describe("edf", ours.problems()[0]);
    TemporaryDirectory folder;
    const std::string path = (folder.path() / "diary.edf").string();
    std::ofstream(path, std::ios::binary) << bytes;
    edf_hdr_struct header{};
    ASSERT_EQ(edfopen_file_readonly(path.c_str(), &header, EDFLIB_READ_ALL_ANNOTATIONS), 0)
        << "EDFlib says " << header.filetype;
    EXPECT_EQ(header.filetype, EDFLIB_FILETYPE_EDFPLUS);
    EXPECT_EQ(header.edfsignals, 0);
    const LocalTime day_start = std::chrono::floor<std::chrono::days>(ours->header.start);
    const std::chrono::year_month_day day(
        std::chrono::floor<std::chrono::days>(ours->header.start));
    EXPECT_EQ(header.startdate_year, static_cast<int>(day.year()));
    EXPECT_EQ(header.startdate_month, static_cast<int>(static_cast<unsigned>(day.month())));
    EXPECT_EQ(header.startdate_day, static_cast<int>(static_cast<unsigned>(day.day())));
    EXPECT_EQ(std::chrono::hours(header.starttime_hour) +
                  std::chrono::minutes(header.starttime_minute) +
                  std::chrono::seconds(header.starttime_second),
              ours->header.start - day_start);
    EXPECT_EQ(header.starttime_subsecond, 0);
    EXPECT_EQ(ours->header.patient, std::string(header.patientcode) + " X X X");
    ASSERT_EQ(header.annotations_in_file, static_cast<long long>(ours->annotations.size()));
    for (int i = 0; i < static_cast<int>(header.annotations_in_file); ++i) {
        edf_annotation_struct theirs{};
        ASSERT_EQ(edf_get_annotation(header.handle, i, &theirs), 0);
        const Annotation& own = ours->annotations[static_cast<std::size_t>(i)];
        EXPECT_EQ(theirs.onset, own.onset.count() * 10) << own.text; // units of 100 ns
        EXPECT_EQ(theirs.duration_l, own.duration ? own.duration->count() * 10 : -10000000LL)
            << own.text;
        EXPECT_EQ(std::string(theirs.annotation), own.text);
    }
    edfclose_file(header.handle);
}

std::string edf_of(const Diary& diary)
{
    const Result<std::string> bytes = diary_edf(diary);
    for (const Problem& problem : bytes.problems())
        ADD_FAILURE() << describe("diary.edf", problem);
    return bytes ? *bytes : "";
}

TEST(EdfLib, ReadsTheFullDiaryAsWeDo)
{
    const std::string bytes = edf_of(test::full_diary());
    expect_same_as_edflib(bytes);
    const Result<EdfFile> file = read_edf(bytes);
    const auto has = [&](const std::string& text, Span onset, std::optional<Span> duration) {
        return std::count(file->annotations.begin(), file->annotations.end(),
                          Annotation{onset, duration, text}) == 1;
    };
    // Onsets are elapsed time: the clocks went back in this night, lights on at 06:30 is 9 h 32 min
    // after 21:58.
    EXPECT_TRUE(has("Recording starts", min(0), std::nullopt));
    EXPECT_TRUE(has("Into bed", min(-8), std::nullopt));
    EXPECT_TRUE(has("Time uncertain: Lights off", min(2), min(10)));
    EXPECT_TRUE(has("Lights on", min(572), std::nullopt));
    EXPECT_TRUE(has("Recording ends", min(587), std::nullopt));
    EXPECT_TRUE(has("Awake as reported", min(322), min(25)));
    EXPECT_TRUE(has("the cat: \xe7\x8c\xab", min(207), min(30)));
}

TEST(EdfLib, ReadsRandomNightsAsWeDo)
{
    RandomNights random(61);
    for (int round = 0; round < 1500; ++round) {
        Night night = random.night(true);
        night.of = NightOf{"SM-" + std::to_string(round), 1};
        const Diary diary = diary_of(night);
        expect_same_as_edflib(edf_of(diary));
        if (HasFailure())
            FAIL() << night_to_json(night).dump();
    }
}

Night one_time(const std::string& lights_out, const std::string& zone = "Europe/Berlin")
{
    return test::night_of(
        "{'format':'evenfall.night/1','visit':{'code':'SM-1','night':1},'zone':'" + zone +
        "','sensors':['f'],"
        "'need':{'minutes':1,'groups':[['f']]},'lights_out':'" +
        lights_out + "'}");
}

TEST(EdfLib, ReadsTheEdgesOfTheCalendar)
{
    // EDF+ 2.1.3.2: yy 85-99 is 1985-1999, 00-84 is 2000-2084
    for (const char* when : {"1985-01-01T00:00:00", "1999-12-31T23:59:59", "2000-01-01T00:00:00",
                             "2036-12-31T23:30:00"})
        expect_same_as_edflib(edf_of(diary_of(one_time(when))));
    // The packaged time zones end in 2037: a fixed offset reaches the other edge.
    expect_same_as_edflib(edf_of(diary_of(one_time("2084-12-31T23:59:59+01:00", "UTC"))));
    for (const char* when : {"1984-12-31T23:59:59", "2085-01-01T00:00:00Z"}) {
        const Result<std::string> bytes = diary_edf(diary_of(one_time(when, "UTC")));
        ASSERT_FALSE(bytes.ok()) << when;
        EXPECT_EQ(bytes.problems()[0].code, "year_outside_edf");
    }
}

TEST(EdfLib, ReadsTextsOfAnyLength)
{
    // EDFlib itself cuts at 512 bytes; more than that is checked by our own reader, into the second
    // data record.
    Diary diary = diary_of(one_time("2026-11-04T22:00"));
    diary.notes.push_back(
        {std::string(512, 'x'), TimeRange::exactly(diary.night.lights_out->middle())});
    expect_same_as_edflib(edf_of(diary));
    for (int i = 0; i < 3; ++i)
        diary.notes.push_back({std::string(50000, static_cast<char>('a' + i)),
                               TimeRange::exactly(diary.night.lights_out->middle() + min(i))});
    const std::string bytes = edf_of(diary);
    const Result<EdfFile> file = read_edf(bytes);
    ASSERT_TRUE(file.ok()) << describe("", file.problems()[0]);
    EXPECT_EQ(file->header.records, 3);
    EXPECT_EQ(std::count_if(file->annotations.begin(), file->annotations.end(),
                            [](const Annotation& one) { return one.text.size() == 50000; }),
              3);
}

/// An annotations-only file whose only data record is `record`.
std::string file_with(std::string record)
{
    EdfDiary empty;
    empty.patient_code = "SM-1";
    empty.start = LocalTime{std::chrono::local_days{std::chrono::year{2026} / 11 / 4}};
    empty.start_text = "Diary starts";
    std::string bytes = write_edf(empty).value().substr(0, 512);
    record.resize(record.size() + record.size() % 2, '\0');
    std::string samples = std::to_string(record.size() / 2);
    samples.resize(8, ' ');
    bytes.replace(256 + 216, 8, samples);
    return bytes + record;
}

TEST(EdfVectors, TwoTextsInOneList)
{
    // Tests of the Python package edfio: "+180 14 Lights off 14 Close door 14 00" is 28 bytes
    const std::string list("+180\x14Lights off\x14"
                           "Close door\x14\0",
                           28);
    const std::string bytes = file_with(std::string("+0\x14\x14"
                                                    "Diary starts\x14\0",
                                                    18) +
                                        list);
    const Result<EdfFile> file = read_edf(bytes);
    ASSERT_TRUE(file.ok()) << describe("", file.problems()[0]);
    ASSERT_EQ(file->annotations.size(), 3u);
    EXPECT_EQ(file->annotations[1], (Annotation{min(3), std::nullopt, "Lights off"}));
    EXPECT_EQ(file->annotations[2], (Annotation{min(3), std::nullopt, "Close door"}));
    expect_same_as_edflib(bytes);
}

TEST(EdfVectors, OurOwnListHasTheSameForm)
{
    // EDF+ 2.2.2: onset, 0x15, duration, 0x14, text, 0x14, 0x00
    EdfDiary diary;
    diary.patient_code = "SM 1";
    diary.start = LocalTime{std::chrono::local_days{std::chrono::year{2026} / 3 / 2}} +
                  std::chrono::hours(23);
    diary.start_text = "Diary starts";
    diary.annotations = {{min(3), std::nullopt, "Lights off"},
                         {-std::chrono::milliseconds(1500), Span(250000), "x"}};
    const std::string bytes = write_edf(diary).value();
    EXPECT_NE(bytes.find(std::string("+180\x14Lights off\x14\0", 17)), std::string::npos);
    EXPECT_NE(bytes.find(std::string("-1.5\x15"
                                     "0.25\x14x\x14\0",
                                     13)),
              std::string::npos);
    // 2.1.3: inner spaces become _; English month in capitals; leading zero
    EXPECT_EQ(bytes.substr(8, 10), "SM_1 X X X");
    EXPECT_EQ(bytes.substr(88, 26), "Startdate 02-MAR-2026 X X ");
    EXPECT_EQ(bytes.substr(168, 16), "02.03.2623.00.00");
    EXPECT_EQ(bytes.substr(192, 5), "EDF+C");
    // 2.1.2: record duration 0 without ordinary signals
    EXPECT_EQ(bytes.substr(244, 8), "0       ");
}

} // namespace
} // namespace evenfall
