// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The shelf of visits: what state each is in, taking a record out, and leaving no trace of one.
#include "record/shelf.h"

#include "base/file.h"
#include "core/record/diaries.h"
#include "journal/journal.h"
#include "journal/kinds.h"
#include "record/folder.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>
#include <sys/stat.h>

namespace evenfall {
namespace {

namespace fs = std::filesystem;

constexpr const char* when = "2026-11-02T09:00:00-05:00";

class ShelfTest : public ::testing::Test {
  protected:
    void SetUp() override
    {
        shelf_ = std::make_unique<Shelf>(home_ / "data");
        stick_ = home_ / "stick";
        fs::create_directories(stick_);
        ASSERT_TRUE(shelf_->prepare());
    }
    Visit visit(const std::string& code = "SM-0417", long nights = 1)
    {
        Result<std::string> text = read_file(fs::path(EVENFALL_SOURCE_DIR) / "assets/visits/demo.json");
        Result<Visit> read = read_visit(*text);
        read->code = code;
        read->nights = nights;
        return *read;
    }
    ShelfVisit look(const std::string& code = "SM-0417")
    {
        Result<ShelfVisit> found = shelf_->look(code);
        EXPECT_TRUE(found) << (found ? "" : found.problems()[0].text);
        return found ? *found : ShelfVisit{};
    }
    void say(const std::string& code, const std::vector<std::pair<std::string_view, std::string>>& entries)
    {
        Result<Opened> opened = open_journal(shelf_->journal(code));
        ASSERT_TRUE(opened) << opened.problems()[0].text;
        Stamp stamp;
        stamp.zone = "America/New_York";
        stamp.boot = "boot";
        for (const auto& [kind, subject] : entries) {
            stamp.utc += std::chrono::minutes(1);
            stamp.since_boot += std::chrono::minutes(1);
            const std::string value = kind == kinds::night ? R"({"night":1,"kit":"marram"})" : "";
            ASSERT_TRUE(opened->journal->append(stamp, kind, subject, value));
        }
    }
    std::string record(const std::string& code = "SM-0417")
    {
        Diary diary = test::full_diary();
        diary.of.code = code;
        diary.night.of = diary.of;
        Result<fs::path> written = write_record(diary, shelf_->records(code));
        EXPECT_TRUE(written) << (written ? "" : written.problems()[0].text);
        return written ? written->filename().string() : "";
    }
    /// Every file below the data folder that holds these bytes, or has them in its name.
    std::vector<std::string> holding(const std::string& bytes)
    {
        std::vector<std::string> out;
        for (const auto& entry : fs::recursive_directory_iterator(home_ / "data")) {
            std::ifstream file(entry.path(), std::ios::binary);
            std::ostringstream text;
            if (entry.is_regular_file())
                text << file.rdbuf();
            if (entry.path().filename().string().find(bytes) != std::string::npos || text.str().find(bytes) != std::string::npos)
                out.push_back(entry.path().string());
        }
        return out;
    }

    test::TemporaryDirectory folder_;
    fs::path home_ = folder_.path(), stick_;
    std::unique_ptr<Shelf> shelf_;
};

TEST_F(ShelfTest, FoldersAreClosedToOthers)
{
    ASSERT_TRUE(shelf_->add(visit()));
    for (const fs::path& folder : {home_ / "data", shelf_->desk(), shelf_->folder("SM-0417"), shelf_->records("SM-0417")}) {
        struct stat found {};
        ASSERT_EQ(::stat(folder.c_str(), &found), 0);
        EXPECT_EQ(found.st_mode & 0777, 0700u) << folder;
    }
    struct stat file {};
    ASSERT_EQ(::stat(shelf_->visit_file("SM-0417").c_str(), &file), 0);
    EXPECT_EQ(file.st_mode & 0777, 0600u);
}

TEST_F(ShelfTest, AVisitComesBackAsItWasPut)
{
    ASSERT_TRUE(shelf_->add(visit("SM-0418", 2)));
    ASSERT_TRUE(shelf_->add(visit("SM-0417")));
    EXPECT_EQ(*shelf_->codes(), (std::vector<std::string>{"SM-0417", "SM-0418"}));
    const ShelfVisit found = look("SM-0418");
    EXPECT_EQ(found.stand, ShelfVisit::Stand::prepared);
    EXPECT_EQ(visit_to_json(found.visit), visit_to_json(visit("SM-0418", 2)));
}

TEST_F(ShelfTest, TwoVisitsOfOneCodeAreRefused)
{
    ASSERT_TRUE(shelf_->add(visit()));
    const Status again = shelf_->add(visit());
    ASSERT_FALSE(again);
    EXPECT_EQ(again.problems()[0].code, "visit_exists");
}

TEST_F(ShelfTest, ItsStandFollowsTheJournal)
{
    ASSERT_TRUE(shelf_->add(visit()));
    say("SM-0417", {{kinds::night, "SM-0417"}, {kinds::page, "welcome"}});
    EXPECT_EQ(look().stand, ShelfVisit::Stand::prepared) << "only switched on";
    say("SM-0417", {{kinds::first, "none"}});
    EXPECT_EQ(look().stand, ShelfVisit::Stand::under_way);
    say("SM-0417", {{kinds::record, "name"}});
    EXPECT_EQ(look().stand, ShelfVisit::Stand::recorded);
}

TEST_F(ShelfTest, ARecordIsTakenOutWholeAndKnownFor)
{
    ASSERT_TRUE(shelf_->add(visit()));
    const std::string name = record();
    ASSERT_EQ(look().records.size(), 1u);
    EXPECT_FALSE(look().records[0].taken_out);
    const Status taken = shelf_->take_out("SM-0417", name, stick_, when);
    ASSERT_TRUE(taken) << taken.problems()[0].text;
    EXPECT_TRUE(verify_record(stick_ / name).problems.empty());
    EXPECT_TRUE(look().records[0].taken_out);
    EXPECT_EQ(look().records[0].taken_out_at, when);
    EXPECT_TRUE(shelf_->take_out("SM-0417", name, stick_, when)) << "once more does no harm";
}

TEST_F(ShelfTest, ARecordThatDoesNotVerifyIsNotTakenOut)
{
    ASSERT_TRUE(shelf_->add(visit()));
    const std::string name = record();
    std::ofstream(shelf_->records("SM-0417") / name / "diary.json", std::ios::app) << " ";
    EXPECT_FALSE(shelf_->take_out("SM-0417", name, stick_, when));
    EXPECT_TRUE(fs::is_empty(stick_));
    EXPECT_EQ(Shelf::reasons_against(look()), (std::vector<std::string>{"bad_record", "not_taken_out"}));
}

TEST_F(ShelfTest, AnotherRecordOfThatNameOnTheStickStays)
{
    ASSERT_TRUE(shelf_->add(visit()));
    const std::string name = record();
    fs::create_directories(stick_ / name);
    std::ofstream(stick_ / name / "SHA256SUMS") << "another";
    const Status taken = shelf_->take_out("SM-0417", name, stick_, when);
    ASSERT_FALSE(taken);
    EXPECT_EQ(taken.problems()[0].code, "record_exists");
    EXPECT_FALSE(look().records[0].taken_out);
}

TEST_F(ShelfTest, AStickThatIsNotThereIsTold)
{
    ASSERT_TRUE(shelf_->add(visit()));
    const std::string name = record();
    const Status taken = shelf_->take_out("SM-0417", name, home_ / "no stick", when);
    ASSERT_FALSE(taken);
    EXPECT_EQ(taken.problems()[0].code, "no_place");
}

TEST_F(ShelfTest, AfterTheWipeNoByteOfTheVisitIsFound)
{
    ASSERT_TRUE(shelf_->add(visit()));
    ASSERT_TRUE(shelf_->add(visit("SM-0500")));
    say("SM-0417", {{kinds::night, "SM-0417"}, {kinds::first, "none"}, {kinds::record, "name"}});
    const std::string name = record();
    // What a damaged journal leaves, and what a killed writer leaves.
    std::ofstream(shelf_->folder("SM-0417") / "journal-damaged-1.db") << "SM-0417";
    std::ofstream(shelf_->folder("SM-0417") / "journal.db.new") << "SM-0417";
    ASSERT_TRUE(shelf_->take_out("SM-0417", name, stick_, when));
    ASSERT_FALSE(holding("SM-0417").empty());
    EXPECT_TRUE(Shelf::reasons_against(look()).empty());
    const Status wiped = shelf_->wipe(look(), "", when);
    ASSERT_TRUE(wiped) << wiped.problems()[0].text;
    EXPECT_EQ(holding("SM-0417"), std::vector<std::string>{});
    EXPECT_EQ(*shelf_->codes(), std::vector<std::string>{"SM-0500"}) << "the other visit stays";
    EXPECT_EQ(holding("2026-11-02").size(), 1u) << "that something was wiped is kept";
}

TEST_F(ShelfTest, WithoutARecordAReasonIsNeeded)
{
    ASSERT_TRUE(shelf_->add(visit()));
    say("SM-0417", {{kinds::night, "SM-0417"}, {kinds::first, "none"}});
    EXPECT_EQ(Shelf::reasons_against(look()), std::vector<std::string>{"no_record"});
    for (const std::string reason : {"", " ", "\n"}) {
        const Status wiped = shelf_->wipe(look(), reason, when);
        ASSERT_FALSE(wiped);
        EXPECT_EQ(wiped.problems()[0].code, "reason_missing");
    }
    const Status named = shelf_->wipe(look(), "sm-0417 never came", when);
    ASSERT_FALSE(named);
    EXPECT_EQ(named.problems()[0].code, "reason_names_code");
    EXPECT_TRUE(shelf_->wipe(look(), "the kit came back unused", when));
    EXPECT_EQ(holding("SM-0417"), std::vector<std::string>{});
    EXPECT_EQ(holding("came back unused").size(), 1u);
}

TEST_F(ShelfTest, AVisitNeverBegunNeedsAReasonToo)
{
    ASSERT_TRUE(shelf_->add(visit()));
    EXPECT_EQ(Shelf::reasons_against(look()), std::vector<std::string>{"nothing_done"});
}

TEST_F(ShelfTest, ARecordThatWasNotTakenOutIsNotLostUnnoticed)
{
    ASSERT_TRUE(shelf_->add(visit()));
    record();
    EXPECT_EQ(Shelf::reasons_against(look()), std::vector<std::string>{"not_taken_out"});
    EXPECT_FALSE(shelf_->wipe(look(), "", when));
    EXPECT_EQ(look().records.size(), 1u);
}

TEST_F(ShelfTest, AWipeCutShortIsEndedAtTheNextStart)
{
    ASSERT_TRUE(shelf_->add(visit()));
    record();
    // As a power cut leaves it: renamed, not yet removed.
    fs::rename(shelf_->folder("SM-0417"), home_ / "data" / "visits" / ".going-1");
    ASSERT_FALSE(holding("SM-0417").empty());
    EXPECT_TRUE(shelf_->codes()->empty());
    ASSERT_TRUE(shelf_->prepare());
    EXPECT_EQ(holding("SM-0417"), std::vector<std::string>{});
}

TEST_F(ShelfTest, AJournalThatSomebodyHasOpenIsTold)
{
    ASSERT_TRUE(shelf_->add(visit()));
    say("SM-0417", {{kinds::night, "SM-0417"}, {kinds::first, "none"}});
    const Result<Opened> held = open_journal(shelf_->journal("SM-0417"));
    ASSERT_TRUE(held);
    EXPECT_EQ(Shelf::reasons_against(look()), std::vector<std::string>{"journal_unread"});
}

} // namespace
} // namespace evenfall
