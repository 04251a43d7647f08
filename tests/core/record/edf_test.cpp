// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/edf.h"

#include "core/record/diaries.h"
#include "record/diary_edf.h"

#include <random>

namespace evenfall {
namespace {

std::string good() { return diary_edf(test::full_diary()).value(); }

/// The file with some bytes put over those at a place.
std::string with(std::size_t at, const std::string& bytes)
{
    return good().replace(at, bytes.size(), bytes);
}

std::string faults(const std::string& bytes)
{
    std::string out;
    for (const Problem& problem : read_edf(bytes).problems())
        out += problem.code + "@" + problem.at + " ";
    return out;
}

TEST(EdfReader, AcceptsWhatWeWrite) { EXPECT_EQ(faults(good()), ""); }

TEST(EdfReader, NamesEachFaultAndItsByte)
{
    EXPECT_EQ(faults(""), "too_short@byte 0 ");
    EXPECT_EQ(faults(with(0, "1")), "bad_version@byte 0 ");
    EXPECT_EQ(faults(with(10, "\x01")), "bad_byte@byte 8 ");
    EXPECT_EQ(faults(with(8, "SM-0417 X X    ")), "bad_identification@byte 8 ");
    EXPECT_EQ(faults(with(98, "30-OCT-2026")), "bad_identification@byte 88 ");
    EXPECT_EQ(faults(with(168, "32.10.26")), "bad_date@byte 168 ");
    EXPECT_EQ(faults(with(168, "31-10-26")), "bad_date@byte 168 ");
    EXPECT_EQ(faults(with(176, "24.00.00")), "bad_time@byte 176 ");
    EXPECT_EQ(faults(with(184, "768 ")), "bad_number@byte 184 ");
    EXPECT_EQ(faults(with(192, "EDF+X")), "bad_kind@byte 192 ");
    EXPECT_EQ(faults(with(236, "-2")), "bad_number@byte 236 ");
    EXPECT_EQ(faults(with(244, "1e3")), "bad_number@byte 244 ");
    EXPECT_EQ(faults(with(252, "0")), "bad_number@byte 252 ");
    EXPECT_EQ(faults(with(252, "9999")), "bad_number@byte 252 ");
    EXPECT_EQ(faults(with(256, "EDF Annotation ")), "no_annotations@byte 256 ");
    EXPECT_EQ(faults(good() + "x"), "bad_size@byte 512 ");
    EXPECT_EQ(faults(with(512, "0")), "bad_onset@byte 512 ");
    EXPECT_EQ(faults(with(513, "5")), "bad_onset@byte 512 ");
    EXPECT_EQ(faults(good().substr(0, 300)), "too_short@byte 300 ");
}

TEST(EdfReader, NeverCrashesOnMutationsAndNeverReadsAnotherNight)
{
    const std::string right = good();
    const Result<EdfFile> file = read_edf(right);
    for (std::size_t i = 0; i < right.size(); ++i) {
        for (const int flip : {1, 0x20, 0x80}) {
            std::string wrong = right;
            wrong[i] = static_cast<char>(wrong[i] ^ flip);
            (void)read_edf(wrong);
        }
        EXPECT_FALSE(read_edf(right.substr(0, i)).ok()) << i;
    }
    std::mt19937_64 engine(71);
    for (int round = 0; round < 20000; ++round) {
        std::string wrong = right;
        for (std::size_t n = engine() % 6 + 1; n > 0; --n) {
            const std::size_t at = engine() % wrong.size();
            switch (engine() % 3) {
            case 0:
                wrong[at] = static_cast<char>(engine());
                break;
            case 1:
                wrong.erase(at, engine() % 8);
                break;
            default:
                wrong.insert(at, std::string(engine() % 8, static_cast<char>(engine())));
            }
        }
        (void)read_edf(wrong);
    }
}

TEST(EdfHeader, OfARecordingWithSignalsReads)
{
    // A header as a recorder could write it, made here: plain EDF, two signals.
    std::string header;
    const auto put = [&](std::string text, std::size_t width) {
        text.resize(width, ' ');
        header += text;
    };
    put("0", 8);
    put("SM-0417", 80);
    put("night 1", 80);
    put("31.10.26", 8);
    put("22.01.30", 8);
    put("768", 8);
    put("", 44);
    put("-1", 8);
    put("0.5", 8);
    put("2", 4);
    for (const char* label : {"Nasal pressure", "SpO2"})
        put(label, 16);
    for (int i = 0; i < 2; ++i)
        put("", 80);
    for (const char* unit : {"Pa", "%"})
        put(unit, 8);
    for (const char* text : {"-500", "0", "500", "100.5", "-2048", "0", "2047", "255"})
        put(text, 8);
    for (int i = 0; i < 2; ++i)
        put("", 80);
    for (const char* text : {"50", "1"})
        put(text, 8);
    for (int i = 0; i < 2; ++i)
        put("", 32);
    const Result<EdfHeader> read = read_edf_header(header);
    ASSERT_TRUE(read.ok()) << describe("", read.problems()[0]);
    EXPECT_EQ(read->kind, "EDF");
    EXPECT_EQ(read->records, -1);
    EXPECT_EQ(read->record_duration, std::chrono::milliseconds(500));
    EXPECT_EQ(read->signals[1].label, "SpO2");
    EXPECT_EQ(read->signals[1].physical_max, 100.5);
    EXPECT_EQ(read->signals[0].samples, 50);
}

TEST(EdfWriter, RefusesWhatTheFormatCannotCarry)
{
    EdfDiary diary;
    diary.patient_code = "SM-1";
    diary.start = LocalTime{std::chrono::local_days{std::chrono::year{2026} / 11 / 4}};
    diary.start_text = "Diary starts";
    diary.annotations = {{Span(0), std::nullopt,
                          "a\x14"
                          "b"}};
    EXPECT_EQ(write_edf(diary).problems().at(0).code, "bad_text");
    diary.annotations = {{Span(0), Span(-1), "a"}};
    EXPECT_EQ(write_edf(diary).problems().at(0).code, "negative_duration");
    diary.annotations.clear();
    diary.admin_code = std::string(80, 'a');
    EXPECT_EQ(write_edf(diary).problems().at(0).code, "bad_identification");
}

} // namespace
} // namespace evenfall
