// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// What the clinic changed after a record was written: who, why, and each value before and after.
#include "record/amend.h"

#include "answers/morning.h"
#include "answers/questions.h"
#include "core/kit/samples.h"
#include "core/record/diaries.h"
#include "journal/journal.h"
#include "journal/kinds.h"
#include "journal/state.h"
#include "record/fhir.h"
#include "record/folder.h"
#include "record/summary.h"
#include "record/verify.h"

#include <gtest/gtest.h>

namespace evenfall {
namespace {

namespace q = questions;

class AmendTest : public ::testing::Test {
  protected:
    VisitWithKit visit_ = test::demo_visit();
    std::unique_ptr<Journal> journal_ = make_memory_journal();
    Stamp stamp_;

    void SetUp() override
    {
        stamp_.utc = *resolve(*parse_time("2026-10-31T21:30:00-04:00"), nullptr);
        stamp_.offset = std::chrono::hours(-4);
        stamp_.zone = "America/New_York";
        stamp_.boot = "boot";
        say(kinds::night, "SM-0417", R"({"night":1,"kit":"marram"})");
        stamp_.utc += std::chrono::minutes(35);
        stamp_.since_boot += std::chrono::minutes(35);
        say(kinds::lights_out);
        pass_hours(8);
        say(kinds::up_for_day);
        answer(q::asleep_after, minutes_answer(std::chrono::minutes(20)));
        answer(q::compare, word_answer("usual"));
        say(kinds::record, "SM-0417_night-1_2026-10-31");
        pass_hours(50);
    }
    void pass_hours(int hours)
    {
        stamp_.utc += std::chrono::hours(hours);
        stamp_.since_boot += std::chrono::hours(hours);
    }
    void say(std::string_view kind, std::string_view subject = "", const std::string& value = "")
    {
        ASSERT_TRUE(journal_->append(stamp_, kind, subject, value));
    }
    void answer(std::string_view question, const Json& value) { say(kinds::answer, question, value.dump()); }
    std::vector<Amendment> amendments() { return amendments_of(journal_->entries(), visit_.visit, visit_.kit, ""); }
    Diary diary()
    {
        const NightState state = replay(journal_->entries());
        Result<Diary> diary = diary_from_night(night_of(state, visit_.visit, visit_.kit));
        EXPECT_TRUE(diary);
        diary->journal = journal_->entries();
        diary->amendments = amendments();
        return *diary;
    }
};

TEST_F(AmendTest, NoneWithoutOne) { EXPECT_TRUE(amendments().empty()); }

TEST_F(AmendTest, NamesEachValueBeforeAndAfter)
{
    say(kinds::amend, "KL, technologist", R"("the patient called")");
    answer(q::asleep_after, minutes_answer(std::chrono::minutes(45)));
    answer(q::compare, word_answer("worse"));
    answer(q::slept, minutes_answer(std::chrono::minutes(400)));
    const std::vector<Amendment> all = amendments();
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].by, "KL, technologist");
    EXPECT_EQ(all[0].why, "the patient called");
    EXPECT_EQ(all[0].at, stamp_.utc);
    const std::vector<AmendedValue> expected{{"/answers/compare", "usual", "worse"}, {"/night/asleep_after_min", 20, 45}, {"/night/slept_min", nullptr, 400}};
    ASSERT_EQ(all[0].changes.size(), expected.size());
    for (size_t i = 0; i < expected.size(); ++i) {
        EXPECT_EQ(all[0].changes[i].at, expected[i].at);
        EXPECT_EQ(all[0].changes[i].before.dump(), expected[i].before.dump());
        EXPECT_EQ(all[0].changes[i].after.dump(), expected[i].after.dump());
    }
}

TEST_F(AmendTest, ASecondOneBeginsWhereTheFirstEnded)
{
    say(kinds::amend, "KL", R"("first")");
    answer(q::asleep_after, minutes_answer(std::chrono::minutes(45)));
    say(kinds::record, "SM-0417_night-1_2026-10-31_amended-1");
    say(kinds::amend, "MB", R"("second")");
    answer(q::asleep_after, skipped_answer());
    const std::vector<Amendment> all = amendments();
    ASSERT_EQ(all.size(), 2u);
    EXPECT_EQ(all[1].changes.at(0).before.dump(), "45");
    EXPECT_TRUE(all[1].changes.at(0).after.is_null());
    EXPECT_EQ(*record_name(diary()), "SM-0417_night-1_2026-10-31_amended-2");
}

TEST_F(AmendTest, TheRecordIsWrittenBesideTheOldOneAndVerifies)
{
    const test::TemporaryDirectory folder;
    Diary before = diary();
    ASSERT_TRUE(write_record(before, folder.path()));
    say(kinds::amend, "KL", R"("the patient called")");
    answer(q::asleep_after, minutes_answer(std::chrono::minutes(45)));
    const Result<std::filesystem::path> written = write_record(diary(), folder.path());
    ASSERT_TRUE(written) << written.problems()[0].text;
    EXPECT_EQ(written->filename(), "SM-0417_night-1_2026-10-31_amended-1");
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
        const Verification found = verify_record(entry.path());
        EXPECT_TRUE(found.problems.empty()) << entry.path() << ": " << found.problems[0].problem.text;
    }
    const Verification found = verify_record(*written);
    ASSERT_TRUE(found.diary);
    EXPECT_EQ(found.diary->amendments, diary().amendments);
    EXPECT_NE(diary_fhir(diary())->find(R"("status":"amended")"), std::string::npos);
    EXPECT_EQ(diary_fhir(before)->find(R"("status":"amended")"), std::string::npos);
}

TEST_F(AmendTest, WithoutAChangeItIsRefused)
{
    say(kinds::amend, "KL", R"("looked only")");
    const Result<std::string> json = diary_to_json(diary());
    ASSERT_FALSE(json);
    EXPECT_EQ(json.problems()[0].at, "/amendments/0/changes");
}

TEST_F(AmendTest, WithoutANameOrAReasonItIsRefused)
{
    say(kinds::amend, "", R"("")");
    answer(q::asleep_after, minutes_answer(std::chrono::minutes(45)));
    const Result<std::string> json = diary_to_json(diary());
    ASSERT_FALSE(json);
    EXPECT_EQ(json.problems()[0].at, "/amendments/0/by");
    EXPECT_EQ(json.problems()[1].at, "/amendments/0/why");
}

TEST_F(AmendTest, AForgedChangeIsRefusedOnReading)
{
    say(kinds::amend, "KL", R"("the patient called")");
    answer(q::asleep_after, minutes_answer(std::chrono::minutes(45)));
    Json json = Json::parse(*diary_to_json(diary()));
    json["amendments"][0]["changes"][0]["after"] = json["amendments"][0]["changes"][0]["before"];
    const Result<Diary> same = read_diary(json.dump());
    ASSERT_FALSE(same);
    EXPECT_EQ(same.problems()[0].code, "no_change");
    json["amendments"][0].erase("by");
    EXPECT_FALSE(read_diary(json.dump()));
}

TEST_F(AmendTest, TheSummarySaysSo)
{
    say(kinds::amend, "KL", R"("the patient called")");
    answer(q::asleep_after, minutes_answer(std::chrono::minutes(45)));
    const Result<Summary> page = summary(diary());
    ASSERT_TRUE(page);
    EXPECT_NE(page->notice.find("Changed after it was written"), std::string::npos);
    ASSERT_FALSE(page->answers.lines.empty());
    EXPECT_EQ(page->answers.lines[0].label, "Amended");
    EXPECT_NE(page->answers.lines[0].text.find("KL, 2026-11-03: the patient called (/night/asleep_after_min)"), std::string::npos) << page->answers.lines[0].text;
}

TEST(PaperNight, NothingIsKnownUntilItIsTyped)
{
    const VisitWithKit visit = test::demo_visit();
    const std::unique_ptr<Journal> journal = make_memory_journal();
    Stamp stamp;
    stamp.utc = *resolve(*parse_time("2026-11-03T09:00:00-05:00"), nullptr);
    stamp.zone = "America/New_York";
    ASSERT_TRUE(journal->append(stamp, kinds::night, "SM-0417", R"({"night":2,"kit":"marram","paper":{"by":"KL","evening":"2026-11-01"}})"));
    const NightState state = replay(journal->entries());
    ASSERT_TRUE(state.paper);
    EXPECT_EQ(state.paper->by, "KL");
    EXPECT_EQ(state.paper->evening, "2026-11-01");
    EXPECT_EQ(state.night, 2);
    const Morning morning = morning_of(state);
    EXPECT_FALSE(morning.off.value) << "nothing was noted, which is not the same as nothing came off";
    EXPECT_FALSE(morning.lights_out.value);
}

TEST(PaperNight, TheRecordSaysSo)
{
    Diary diary = test::full_diary();
    diary.paper = TypedFromPaper{"KL", diary.night.lights_out->middle() + std::chrono::hours(40)};
    const Result<std::string> json = diary_to_json(diary);
    ASSERT_TRUE(json) << json.problems()[0].text;
    EXPECT_EQ(read_diary(*json)->paper, diary.paper);
    const Result<Summary> page = summary(diary);
    ASSERT_TRUE(page);
    EXPECT_NE(page->notice.find("Typed in from a paper diary"), std::string::npos);
    EXPECT_EQ(page->answers.lines[0].label, "Typed in from paper");
    diary.paper->by = "";
    EXPECT_EQ(diary_to_json(diary).problems()[0].at, "/typed_from_paper/by");
}

} // namespace
} // namespace evenfall
