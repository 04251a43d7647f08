// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "app/print/diaries.h"
#include "base/hash.h"
#include "estimate/contradictions.h"
#include "record/folder.h"
#include "record/summary.h"
#include "record/verify.h"

#include <fstream>

namespace evenfall {
namespace {

using test::example_night;
using test::full_diary;
using test::min;

Summary page_of(const Diary& diary)
{
    const Result<Summary> page = summary(diary);
    for (const Problem& problem : page.problems())
        ADD_FAILURE() << describe("summary", problem);
    return page ? *page : Summary{};
}

const SummaryRow& row(const SummaryTable& table, const std::string& name)
{
    for (const SummaryRow& each : table.rows)
        if (each.name == name)
            return each;
    ADD_FAILURE() << "no row " << name;
    static const SummaryRow none{"", "", {"", "", ""}, {}};
    return none;
}

std::vector<std::string> texts(const SummaryList& list)
{
    std::vector<std::string> out;
    for (const SummaryLine& line : list.lines)
        out.push_back(line.label + " | " + line.text);
    return out;
}

/// As the file writes it; a dash where the file has nothing.
std::string number(const Json& parent, const char* key)
{
    return parent.contains(key) ? parent[key].dump() : "\u2013";
}

void expect_the_numbers_of_the_file(const Diary& diary)
{
    const Summary page = page_of(diary);
    const Json file = Json::parse(diary_to_json(diary).value())["estimate"];
    const auto bounds = [&](const std::string& name, const Json& json) {
        const std::vector<std::string> right{number(json, "at_least"), number(json, "best_guess"),
                                             number(json, "at_most")};
        for (std::size_t i = 0; i < 3; ++i)
            EXPECT_EQ(Json::parse(right[i] == "\u2013" ? "null" : right[i]),
                      Json::parse(row(page.time, name).cells[i] == "\u2013"
                                      ? "null"
                                      : row(page.time, name).cells[i]))
                << name;
    };
    bounds("Window", file["window"]);
    bounds("All needed on", file["needed"]);
    bounds("The same, asleep", file["needed_asleep"]);
    for (const std::string& id : diary.night.sensors)
        bounds(id, file["sensors"][id]);
    ASSERT_EQ(page.time.rows.size(), 3 + diary.night.sensors.size());

    const std::vector<std::pair<const char*, const char*>> measures{
        {"TIB", "TIB"},        {"SOL", "SOL"},       {"WASO", "WASO"}, {"Awakenings", "awakenings"},
        {"TST", "TST"},        {"TASAFA", "TASAFA"}, {"DSE", "DSE"},   {"SE (TIB)", "SE_TIB"},
        {"SE (DSE)", "SE_DSE"}};
    for (const auto& [name, key] : measures) {
        const std::string cell = row(page.measures, name).cells[0];
        const bool there = file["diary"].contains(key);
        EXPECT_EQ(there ? std::stod(cell) : -1, there ? file["diary"][key].get<double>() : -1)
            << name;
        EXPECT_EQ(cell == "\u2013", !there) << name;
        EXPECT_EQ(cell.ends_with(" %"), file["diary"].contains(key) && name[1] == 'E') << name;
    }
    ASSERT_EQ(page.lost.rows.size(), file["lost"].size());
    for (std::size_t i = 0; i < page.lost.rows.size(); ++i) {
        EXPECT_EQ(std::stod(page.lost.rows[i].cells[0]), file["lost"][i]["minutes"].get<double>());
        EXPECT_EQ(std::stod(page.lost.rows[i].cells[1]), file["lost"][i]["alone"].get<double>());
    }
    const bool has_chance = file["needed"].contains("chance_enough");
    std::string said;
    for (const std::string& reason : page.verdict_reasons)
        if (reason.starts_with("Chance that it is enough: "))
            said = reason.substr(26);
    ASSERT_EQ(said.empty(), !has_chance);
    if (has_chance) {
        EXPECT_NEAR(std::stod(said), file["needed"]["chance_enough"].get<double>() * 100, 5e-4);
    }
}

TEST(Summary, EveryNumberIsTheFilesNumber)
{
    expect_the_numbers_of_the_file(full_diary());
    expect_the_numbers_of_the_file(test::bare_diary());
    expect_the_numbers_of_the_file(test::open_diary());
    expect_the_numbers_of_the_file(test::spring_diary());
    expect_the_numbers_of_the_file(test::long_diary());
    test::RandomNights random(7);
    int checked = 0;
    for (int round = 0; round < 80; ++round) {
        Night night = random.night(true);
        night.of = NightOf{"SM-1", 1};
        if (!contradictions(night).empty())
            continue;
        ++checked;
        expect_the_numbers_of_the_file(test::diary_of(night));
        if (HasFailure())
            return;
    }
    EXPECT_GE(checked, 40);
}

TEST(Summary, SaysWhoseNightItIs)
{
    const Summary page = page_of(full_diary());
    EXPECT_EQ(page.title, "Night summary SM-0417, night 1, 2026-10-31");
    std::string head;
    for (const SummaryLine& line : page.head)
        head += line.label + "=" + line.text + ";";
    EXPECT_EQ(head, "Study code=SM-0417;Night=1;Evening of=2026-10-31;Kit=heron;Label=Bag 12;"
                    "Zone=America/New_York (UTC-4, later UTC-5);");
    EXPECT_EQ(page.diary_sha256, sha256_hex(diary_to_json(full_diary()).value()));
}

TEST(Summary, VerdictIsInWordsThatPromiseNothing)
{
    Diary diary = full_diary();
    EXPECT_EQ(page_of(diary).verdict, "Enough, from the notes");
    diary.night.need.minutes = min(455);
    EXPECT_EQ(page_of(diary).verdict, "Borderline, from the notes");
    diary.night.need.minutes = min(600);
    EXPECT_EQ(page_of(diary).verdict, "Too short, from the notes");
    EXPECT_EQ(page_of(test::open_diary()).verdict, "Not known, from the notes");
    // facts: it never says these
    for (const auto& [name, each] : test::all_diaries()) {
        const Summary page = page_of(each);
        std::string all = page.notice + page.verdict + page.foot + page.picture_text;
        for (const std::string& reason : page.verdict_reasons)
            all += reason;
        for (const SummaryList* list : {&page.cautions, &page.events, &page.contradictions})
            for (const std::string& text : texts(*list))
                all += text;
        for (const char* word : {"adequate", "valid", "normal", "diagnos"})
            EXPECT_EQ(all.find(word), std::string::npos) << name << ": " << word;
    }
}

TEST(Summary, EventsHaveTheirTimesRangesAndOrigins)
{
    const Summary page = page_of(full_diary());
    const std::vector<std::string> found = texts(page.events);
    EXPECT_EQ(
        found,
        (std::vector<std::string>{
            "21:45 UTC-4 | Signal check: light recorder; steady", "21:50 UTC-4 | Into bed",
            "21:58 UTC-4 | Recording starts", "22:00\u201322:10 UTC-4 | Lights off",
            "22:20\u201322:30 UTC-4 | Fell asleep as reported",
            "22:20 UTC-4\u201306:25 UTC-5 | Awake 2 times, when is not known, 10 min together",
            "23:05 UTC-4 | Sensors still on",
            "00:30 UTC-4\u201302:20 UTC-5 | Came off some time in between: finger, on again 02:45 UTC-5",
            "01:25\u201301:55 UTC-4 | Bathroom, 7.5 min; the cat: \u732b",
            "02:20 UTC-5 | Woke, asleep again 02:45 UTC-5",
            "03:45\u201304:15 UTC-5 | Woke some time in between, awake for 12.5 min",
            "05:10 UTC-5 | Off: cannula, not put back",
            "06:10\u201306:25 UTC-5 | Final waking as reported", "06:30 UTC-5 | Lights on",
            "06:40 UTC-5 | Out of bed", "06:45 UTC-5 | Recording ends"}));
    for (const SummaryLine& line : page.events.lines)
        EXPECT_EQ(line.origin == Origin::derived,
                  line.text.starts_with("Fell asleep") || line.text.starts_with("Came off"))
            << line.text;
    EXPECT_EQ(texts(page.answers),
              (std::vector<std::string>{"caffeine | cups: 2, last: 15:30", "nap | no"}));
    EXPECT_EQ(page.notes.lines[0].label, "23:45 UTC-4");
    EXPECT_EQ(page.notes.lines[1].label, "no time");
}

TEST(Summary, TimesHaveNoOffsetWhereClocksDoNotChange)
{
    EXPECT_EQ(texts(page_of(test::bare_diary()).events),
              (std::vector<std::string>{"23:10 | Recording starts", "02:40 | Recording ends"}));
    EXPECT_EQ(utc_offset_text(std::chrono::minutes(330)), "UTC+5:30");
    EXPECT_EQ(utc_offset_text(std::chrono::minutes(-210)), "UTC-3:30");
    EXPECT_EQ(utc_offset_text(std::chrono::minutes(0)), "UTC+0");
    EXPECT_EQ(utc_offset_text(std::chrono::minutes(600)), "UTC+10");
}

TEST(Summary, CautionsStandWhereAnAnswerCallsForThem)
{
    EXPECT_TRUE(page_of(full_diary()).cautions.lines.empty());
    Diary diary = full_diary();
    diary.answers = {{"before_start", "one or more", Origin::reported},
                     {"skin", "sore", Origin::reported},
                     {"oxygen", true, Origin::reported}};
    std::vector<std::string> found = texts(page_of(diary).cautions);
    ASSERT_EQ(found.size(), 3u);
    EXPECT_TRUE(found[0].starts_with("Before the start | "));
    EXPECT_NE(found[0].find("No call to the clinic is noted"), std::string::npos);
    EXPECT_TRUE(found[1].starts_with("Skin | answered \u201csore\u201d"));
    EXPECT_TRUE(found[2].starts_with("Oxygen | answered \u201cyes\u201d"));
    diary.answers.push_back({"clinic_called", true, Origin::reported});
    EXPECT_NE(texts(page_of(diary).cautions)[0].find("The clinic was called"), std::string::npos);
    diary.answers = {{"before_start", "none", Origin::reported},
                     {"skin", "fine", Origin::reported},
                     {"oxygen", false, Origin::reported}};
    EXPECT_TRUE(page_of(diary).cautions.lines.empty());
    diary.night.need.minutes = min(600); // too short: Zeidler et al. 2015, J Clin Sleep Med 11:1313
    EXPECT_EQ(
        texts(page_of(diary).cautions),
        (std::vector<std::string>{"Short night | too little recording is not a negative result."}));
}

TEST(Summary, ContradictionsStandInsteadOfNumbers)
{
    const Diary diary = test::contradictory_diary();
    const Summary page = page_of(diary);
    const Json file = Json::parse(diary_to_json(diary).value());
    ASSERT_EQ(page.contradictions.lines.size(), file["problems"].size());
    for (std::size_t i = 0; i < file["problems"].size(); ++i) {
        EXPECT_EQ(page.contradictions.lines[i].text, file["problems"][i]["text"]);
        EXPECT_EQ(page.contradictions.lines[i].label, file["problems"][i]["at"]);
    }
    EXPECT_EQ(page.verdict, "");
    EXPECT_TRUE(page.time.rows.empty());
    EXPECT_TRUE(page.measures.rows.empty());
    EXPECT_TRUE(page.lost.rows.empty());
    ASSERT_TRUE(page.picture);
    EXPECT_FALSE(page.picture->window_from);
    EXPECT_NE(page.picture->lanes.back().id, "sleep");
}

TEST(Summary, PictureIsToldInWords)
{
    const std::string text = page_of(full_diary()).picture_text;
    for (const char* part :
         {"The night from 21:50 UTC-4 to 06:45 UTC-5", "chest: on throughout.",
          "finger: perhaps off 00:30 UTC-4 to 02:20 UTC-5, off 02:20 UTC-5 to 02:45 UTC-5.",
          "cannula: off 05:10 UTC-5 to 06:45 UTC-5.", "Clocks go back 60 min: UTC-4 to UTC-5.",
          "Awake 2 times without a clock time, 10 min together"})
        EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << text;
    EXPECT_NE(page_of(test::bare_diary()).picture_text.find("sleep: not answered."),
              std::string::npos);
    EXPECT_FALSE(page_of(test::open_diary()).picture);
}

TEST(Summary, LongNightIsCutAndTheRestCounted)
{
    const Summary whole = page_of(test::long_diary());
    SummaryLimits limits;
    limits.events = 10;
    limits.answers = 2;
    limits.notes = 2;
    limits.note_length = 100;
    limits.lost = 1;
    limits.sensors = 2;
    limits.cautions = 1;
    const Summary page = cut(whole, limits);
    const auto counted = [](const SummaryList& full, const SummaryList& shown, std::size_t most) {
        EXPECT_EQ(shown.lines.size(), most);
        EXPECT_EQ(shown.lines.size() + shown.left_out, full.lines.size());
    };
    counted(whole.events, page.events, 10);
    counted(whole.answers, page.answers, 2);
    counted(whole.notes, page.notes, 2);
    counted(whole.cautions, page.cautions, 1);
    EXPECT_EQ(whole.events.lines.size(), 29u); // 14 removals, 7 awakenings, 8 times
    EXPECT_EQ(page.lost.left_out, whole.lost.rows.size() - 1);
    EXPECT_EQ(page.time.rows.size(), 5u);
    EXPECT_EQ(page.time.left_out, 3u);
    EXPECT_EQ(page.picture->lanes.size(), 3u);
    EXPECT_EQ(page.picture->lanes.back().id, "sleep");
    EXPECT_EQ(page.picture_notes.back(), "3 more sensors stand in diary.json.");
    const std::string& note = page.notes.lines[0].text;
    EXPECT_EQ(note, whole.notes.lines[0].text.substr(0, 100) + " \u2026 (1820 more characters in "
                                                               "diary.json)");
    EXPECT_EQ(whole.notes.lines[0].text.size(), 1920u);
    EXPECT_EQ(more_in_diary(0), "");
    EXPECT_EQ(more_in_diary(1), "1 more line stands in diary.json.");
    EXPECT_EQ(more_in_diary(19), "19 more lines stand in diary.json.");
}

TEST(Summary, CutsBetweenLettersAndCountsLineBreaks)
{
    Diary diary = full_diary();
    diary.notes = {{"\u732b\u732b\u732b\u732b", std::nullopt}, {"a\nb\nc", std::nullopt}};
    SummaryLimits limits;
    limits.note_length = 3;
    EXPECT_EQ(cut(page_of(diary), limits).notes.lines[0].text,
              "\u732b\u732b\u732b \u2026 (1 more character in diary.json)");
    limits.note_length = 62; // one break and two letters
    EXPECT_EQ(cut(page_of(diary), limits).notes.lines[1].text,
              "a\nb \u2026 (2 more characters in diary.json)");
    limits.note_length = 1000;
    EXPECT_EQ(cut(page_of(diary), limits).notes.lines[1].text, "a\nb\nc");
}

TEST(Summary, RefusesWhatTheDiaryRefuses)
{
    Diary diary = full_diary();
    diary.notes[0].text = "\xff";
    EXPECT_EQ(summary(diary).problems(), diary_to_json(diary).problems());
}

class VerifySummary : public testing::Test {
  protected:
    test::TemporaryDirectory parent;
    const Diary diary = full_diary();
    /// The form of a PDF as far as verify looks at it.
    std::string pdf(const std::string& body = "", const std::string& producer = "(one)")
    {
        return "%PDF-1.5\n" + body + "<< /Keywords (" +
               summary_key_words(sha256_hex(diary_to_json(diary).value())) + ") /Producer " +
               producer + " /Title (x) >>\n%%EOF\n";
    }
    std::string found(const std::optional<std::string>& bytes, const SummaryMaker& maker)
    {
        std::vector<RecordFile> more;
        if (bytes)
            more.push_back({summary_name, *bytes});
        const auto path = write_record(diary, parent.path(), more);
        EXPECT_TRUE(path.ok());
        std::string out;
        for (const RecordProblem& each : verify_record(*path, maker).problems)
            out += each.file + ":" + each.problem.code + "@" + each.problem.at + " ";
        std::filesystem::remove_all(*path);
        return out;
    }
    SummaryMaker makes(const std::string& bytes)
    {
        return [bytes](const Diary&) -> Result<std::string> { return bytes; };
    }
};

TEST_F(VerifySummary, NeedsItsFormItsEndAndTheSumOfTheDiary)
{
    EXPECT_EQ(found(pdf(), {}), "");
    EXPECT_EQ(found("x" + pdf(), {}), "summary.pdf:not_pdf@byte 0 ");
    EXPECT_EQ(found(pdf().substr(0, pdf().size() - 4), {}), "summary.pdf:cut_off@end ");
    std::string other = pdf();
    const std::size_t at = other.find("SHA-256 ") + 8;
    other[at] = other[at] == '0' ? '1' : '0';
    EXPECT_EQ(found(other, {}), "summary.pdf:not_from_diary@Keywords ");
    EXPECT_EQ(found("", {}), "summary.pdf:not_pdf@byte 0 summary.pdf:cut_off@end "
                             "summary.pdf:not_from_diary@Keywords ");
}

TEST_F(VerifySummary, WithAMakerMustBeThereAndTheSame)
{
    EXPECT_EQ(found(std::nullopt, {}), "");
    EXPECT_EQ(found(std::nullopt, makes(pdf())), "summary.pdf:missing_file@ ");
    EXPECT_EQ(found(pdf(), makes(pdf())), "");
    EXPECT_EQ(found(pdf("changed"), makes(pdf())), "summary.pdf:not_from_diary@ ");
    // Made by other versions: no fault.
    EXPECT_EQ(found(pdf("older", "(two)"), makes(pdf())), "");
    EXPECT_EQ(found(pdf(),
                    [](const Diary&) -> Result<std::string> {
                        return Problem{Fault::io, "no_fonts", "", "no fonts"};
                    }),
              "summary.pdf:no_fonts@ ");
}

} // namespace
} // namespace evenfall
