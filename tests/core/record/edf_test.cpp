// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/edf.h"

#include "core/record/diaries.h"
#include "record/diary_edf.h"

#include <algorithm>
#include <cstring>
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

TEST(EdfReader, NamesEachFormThatIsNoNumberNoTimeAndNoList)
{
    EXPECT_EQ(faults(with(8, std::string(80, ' '))), "bad_identification@byte 8 ");
    EXPECT_EQ(faults(with(176, "21.58.60")), "bad_time@byte 176 ");
    EXPECT_EQ(faults(with(176, "21.60.00")), "bad_time@byte 176 ");
    EXPECT_EQ(faults(with(244, "-1")), "bad_number@byte 244 ");
    for (const char* number : {"+-1", "1.2.3", "1-", "--1", "+", "."})
        EXPECT_EQ(faults(with(360, std::string(number) + std::string(8 - std::strlen(number), ' '))), "bad_number@byte 360 ") << number;
    for (const char* number : {"+-1", "1.5", "1-", "++1"})
        EXPECT_EQ(faults(with(376, std::string(number) + std::string(8 - std::strlen(number), ' '))).substr(0, 20), "bad_number@byte 376 ") << number;
    EXPECT_EQ(faults(with(360, "+2")), "") << "a sign is none too many";
    EXPECT_EQ(faults(with(98, "X          ")), "bad_identification@byte 88 ") << "blanks inside";
    std::string unknown = good();
    std::string field = "Startdate X night-1 X Evenfall_diary";
    field.resize(80, ' ');
    EXPECT_EQ(faults(unknown.replace(88, 80, field)), "") << "2.1.3.4: X where the date is not known";
    EXPECT_EQ(faults(with(512, "-1")), "bad_onset@byte 512 ");
}

TEST(EdfReader, ReadsAYearOfTheLastCentury)
{
    // 2.1.3.2: 85 to 99 is 1985 to 1999, 00 to 84 is 2000 to 2084.
    EdfDiary diary;
    diary.start_text = "Diary starts";
    for (const int year : {1985, 1999, 2000, 2084}) {
        diary.start = LocalTime{std::chrono::local_days{std::chrono::year{year} / 11 / 4}};
        const Result<std::string> bytes = write_edf(diary);
        ASSERT_TRUE(bytes.ok()) << year;
        const Result<EdfHeader> header = read_edf_header(*bytes);
        ASSERT_TRUE(header.ok()) << year << describe("", header.problems()[0]);
        EXPECT_EQ(header->start, diary.start) << year;
    }
    for (const int year : {1984, 2085}) {
        diary.start = LocalTime{std::chrono::local_days{std::chrono::year{year} / 11 / 4}};
        EXPECT_EQ(write_edf(diary).problems().at(0).code, "year_outside_edf") << year;
    }
}

/// A small EDF+ file as a recorder could write it: its kind, the seconds of each data record, whether an
/// ordinary signal of one sample stands last, and what stands in each annotations signal, data record
/// after data record. Each has twenty bytes.
struct Recorder {
    std::string kind = "EDF+C";
    std::string seconds = "1";
    bool ordinary = true;
    int lists = 1;
    std::vector<std::string> data;
    std::string label = "EDF Annotations";

    std::string bytes() const
    {
        std::string out;
        const auto put = [&out](std::string text, std::size_t width, int times = 1) {
            text.resize(width, ' ');
            for (int i = 0; i < times; ++i)
                out += text;
        };
        const int signals = lists + (ordinary ? 1 : 0);
        const auto put_each = [&](const std::string& of_list, const std::string& of_ordinary, std::size_t width) {
            put(of_list, width, lists);
            if (ordinary)
                put(of_ordinary, width);
        };
        put("0", 8);
        put("SM-0417 X X X", 80);
        put("Startdate 31-OCT-2026 X X X", 80);
        put("31.10.26", 8);
        put("21.58.00", 8);
        put(std::to_string(256 + 256 * signals), 8);
        put(kind, 44);
        put(std::to_string(data.size() / static_cast<std::size_t>(lists)), 8);
        put(seconds, 8);
        put(std::to_string(signals), 4);
        put_each(label, "SpO2", 16);
        put_each("", "", 80);
        put_each("", "%", 8);
        put_each("-1", "0", 8);
        put_each("1", "100", 8);
        put_each("-32768", "0", 8);
        put_each("32767", "100", 8);
        put_each("", "", 80);
        put_each("10", "1", 8);
        put_each("", "", 32);
        for (std::size_t i = 0; i < data.size(); ++i) {
            std::string padded = data[i];
            EXPECT_LE(padded.size(), 20u);
            padded.resize(20, '\0');
            out += padded;
            if (ordinary && (i + 1) % static_cast<std::size_t>(lists) == 0)
                out += std::string("\x5f\0", 2);
        }
        return out;
    }
};

/// Bytes of lists, with < for byte 20, ~ for byte 21 and 0-bytes as |.
std::string lists(std::string text)
{
    std::replace(text.begin(), text.end(), '<', '\x14');
    std::replace(text.begin(), text.end(), '~', '\x15');
    std::replace(text.begin(), text.end(), '|', '\0');
    return text;
}

TEST(EdfReader, ReadsTheListsOfARecordingWithSignals)
{
    Recorder recorder;
    recorder.lists = 2;
    for (const char* text : {"+0<<|+0.5~2<a<b<|", "+1<c<|", "+1<<|", "+1.25<d<|+9<e<|"})
        recorder.data.push_back(lists(text));
    const Result<EdfFile> file = read_edf(recorder.bytes());
    ASSERT_TRUE(file.ok()) << describe("", file.problems()[0]);
    EXPECT_EQ(file->header.kind, "EDF+C");
    const auto at = [](long milliseconds) { return Span(std::chrono::milliseconds(milliseconds)); };
    EXPECT_EQ(file->annotations,
              (std::vector<Annotation>{{at(500), at(2000), "a"}, {at(500), at(2000), "b"}, {at(1000), std::nullopt, "c"}, {at(1250), std::nullopt, "d"}, {at(9000), std::nullopt, "e"}}));
}

TEST(EdfReader, WantsOneRecordAfterTheOther_UnlessTheyAreSaidToHaveGaps)
{
    Recorder recorder;
    recorder.data = {lists("+0.5<<|"), lists("+1.5<<|")};
    EXPECT_EQ(faults(recorder.bytes()), "");
    recorder.data = {lists("+0.5<<|"), lists("+7.5<<|")};
    EXPECT_EQ(faults(recorder.bytes()), "bad_onset@byte 790 ");
    recorder.kind = "EDF+D";
    EXPECT_EQ(faults(recorder.bytes()), "");
    EXPECT_EQ(read_edf(recorder.bytes())->header.kind, "EDF+D");
}

TEST(EdfReader, NamesEachFaultInTheLists)
{
    const auto faults_of = [](const char* text, bool ordinary = true) {
        Recorder recorder;
        recorder.ordinary = ordinary;
        recorder.data = {lists(text)};
        std::string out;
        for (const Problem& problem : read_edf(recorder.bytes()).problems())
            out += problem.code + "@" + std::to_string(std::stoi(problem.at.substr(5)) - (ordinary ? 768 : 512)) + " ";
        return out;
    };
    EXPECT_EQ(faults_of("+0<<|"), "");
    EXPECT_EQ(faults_of("+0<<a<|"), "") << "a text may stand in the time-keeping list";
    // 2.2.2
    for (const char* text : {"+<<|", "<<|", "0<<|", "+0.<<|", "+0.x<<|", "+x<<|", "+0.0000001<<|", "+000000000000<<|", "+0~<<|", "+0~+1<<|", "+0~-1<<|", "+0~1~1<<|"})
        EXPECT_EQ(faults_of(text), "bad_onset@0 ") << text;
    EXPECT_EQ(faults_of("+0.00000000<<|"), "") << "zeros are exact however many";
    EXPECT_EQ(faults_of("+00000000000<<|"), "");
    EXPECT_EQ(faults_of("+0<<|+1<a|"), "bad_list@5 ") << "the text has no end";
    EXPECT_EQ(faults_of("+0<<|+1<aaaaaaaaaaa<"), "bad_list@5 ") << "the list has no end, and the zero byte is the next signal's";
    EXPECT_EQ(faults_of("+0<<|+1<<|"), "bad_text@5 ");
    EXPECT_EQ(faults_of("+0<<|+1<\xff<|"), "bad_text@5 ");
    // 2.2.4
    EXPECT_EQ(faults_of(""), "bad_list@0 ") << "no time-keeping list";
    EXPECT_EQ(faults_of("+0<|"), "bad_list@0 ") << "no text at all";
    EXPECT_EQ(faults_of("+0<a<|"), "bad_list@0 ") << "its first text is not empty";
    EXPECT_EQ(faults_of("+0~1<<|"), "bad_list@0 ") << "a duration";
    EXPECT_EQ(faults_of("+0<<||+1<a<|"), "bad_list@6 ") << "bytes that are not zero after the last list";
    EXPECT_EQ(faults_of("+0<<|", false), "bad_list@0 ") << "annotations alone: what does the record start with";
    EXPECT_EQ(faults_of("+0<<a<|", false), "");
    // The time of the first data record is less than a second after the start.
    EXPECT_EQ(faults_of("+0.999999<<|"), "");
    EXPECT_EQ(faults_of("+1<<|"), "bad_onset@0 ");
    EXPECT_EQ(faults_of("-0.5<<|"), "bad_onset@0 ");
}

TEST(EdfReader, LetsASecondListsSignalBeEmpty)
{
    Recorder recorder;
    recorder.lists = 2;
    recorder.data = {lists("+0<<|"), ""};
    EXPECT_EQ(faults(recorder.bytes()), "");
}

TEST(EdfReader, ReadsNoFileThatARecorderIsStillWriting)
{
    Recorder recorder;
    recorder.kind = "";
    recorder.data = {lists("+0<<|")};
    std::string bytes = recorder.bytes();
    EXPECT_EQ(faults(bytes), "") << "plain EDF gives no meaning to the label";
    EXPECT_TRUE(read_edf(bytes)->annotations.empty());
    bytes.replace(236, 2, "-1");
    EXPECT_TRUE(read_edf_header(bytes).ok());
    EXPECT_EQ(faults(bytes), "bad_size@byte 768 ");
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

TEST(EdfWriter, WritesFractionsOfASecondWithoutTrailingZeros)
{
    // 2.2.2: a dot only where there is a fraction.
    EdfDiary diary;
    diary.start = LocalTime{std::chrono::local_days{std::chrono::year{2026} / 11 / 4}};
    diary.start_text = "Diary starts";
    diary.annotations = {{Span(500000), Span(1), "a"}, {Span(-1250000), std::nullopt, "b"}, {Span(3000000), Span(100000), "c"}, {Span(10000000), Span(0), "d"}};
    const Result<std::string> bytes = write_edf(diary);
    ASSERT_TRUE(bytes.ok());
    for (const char* list : {"+0.5~0.000001<a<|", "|-1.25<b<|", "+3~0.1<c<|", "+10~0<d<|"})
        EXPECT_NE(bytes->find(lists(list)), std::string::npos) << list;
    const Result<EdfFile> file = read_edf(*bytes);
    ASSERT_TRUE(file.ok()) << describe("", file.problems()[0]);
    ASSERT_EQ(file->annotations.size(), 5u);
    EXPECT_EQ(std::vector<Annotation>(file->annotations.begin() + 1, file->annotations.end()), diary.annotations);
}

TEST(EdfWriter, BeginsAnotherDataRecord_WhereOneWouldBeTooLarge)
{
    // EDF asks for data records of at most 61,440 bytes.
    EdfDiary diary;
    diary.start = LocalTime{std::chrono::local_days{std::chrono::year{2026} / 11 / 4}};
    diary.start_text = "Diary starts";
    for (long n = 0; n < 300; ++n)
        diary.annotations.push_back({std::chrono::seconds(n), std::nullopt, std::to_string(n) + std::string(400, 'x')});
    const Result<std::string> bytes = write_edf(diary);
    ASSERT_TRUE(bytes.ok());
    const Result<EdfFile> file = read_edf(*bytes);
    ASSERT_TRUE(file.ok()) << describe("", file.problems()[0]);
    ASSERT_EQ(file->header.records, 3);
    const long size = file->header.signals[0].samples * 2;
    EXPECT_LE(size, 61440);
    for (long record = 1; record < 3; ++record)
        EXPECT_EQ(bytes->substr(static_cast<std::size_t>(512 + record * size), 21), lists("+0<<Diary continues<|")) << record;
    std::vector<Annotation> own;
    for (const Annotation& one : file->annotations)
        if (!one.text.starts_with("Diary "))
            own.push_back(one);
    EXPECT_EQ(own, diary.annotations) << "none is lost, and their order stays";
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
    diary.annotations = {{Span(0), std::nullopt, ""}};
    EXPECT_EQ(write_edf(diary).problems().at(0).code, "bad_text");
    diary.annotations.clear();
    for (const char* text : {"", "a\x14", "\xff"}) {
        EdfDiary other = diary;
        other.start_text = text;
        EXPECT_EQ(write_edf(other).problems().at(0).code, "bad_text") << text;
    }
    for (const char* code : {"\xc3\xa9", "a\tb", "a\x7f"}) {
        EdfDiary other = diary;
        other.patient_code = code;
        EXPECT_EQ(write_edf(other).problems().at(0).code, "bad_identification") << code;
    }
    EXPECT_TRUE(write_edf(diary).ok());
    diary.admin_code = std::string(80, 'a');
    EXPECT_EQ(write_edf(diary).problems().at(0).code, "bad_identification");
}

} // namespace
} // namespace evenfall
