// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The power goes: whatever was not synced may be there, may not be, or may be there in part.
#include "crash/disk.h"
#include "crash/share.h"

#include "core/journal/entries.h"
#include "core/kit/kits.h"

#include <chrono>
#include <cstdio>

namespace evenfall {
namespace {

using test::Disk;
using test::PowerCuts;
using test::ScratchFolder;
using Clock = std::chrono::steady_clock;

double seconds_since(Clock::time_point begin) { return std::chrono::duration<double>(Clock::now() - begin).count(); }

std::unique_ptr<Journal> opened(const std::filesystem::path& file)
{
    Result<Opened> result = open_journal(file);
    if (!result)
        throw std::runtime_error(test::all_told(result.problems()));
    EXPECT_TRUE(result->set_aside.empty());
    return std::move(result.value().journal);
}

Result<Entry> tap(Journal& journal, int number, std::size_t size)
{
    return journal.append(test::stamp_at(number), "answer", "tap-" + std::to_string(number),
                          "\"" + std::string(size, static_cast<char>('a' + number % 26)) + "\"");
}

/// Opens what a power cut left in a folder of its own and compares it with what was said in the night.
/// The folder is used again and again.
class Afterwards {
  public:
    explicit Afterwards(std::vector<Entry> said) : said_(std::move(said)) {}

    void check(const PowerCuts::Cut& cut)
    {
        for (const auto& entry : std::filesystem::directory_iterator(folder_.path()))
            std::filesystem::remove_all(entry.path());
        for (const auto& [name, bytes] : cut.files) {
            std::FILE* file = std::fopen((folder_ / name).c_str(), "wb");
            std::fwrite(bytes.data(), 1, bytes.size(), file);
            std::fclose(file);
        }
        ++cuts;
        const Result<Opened> result = open_journal(folder_ / "journal.db");
        ASSERT_TRUE(result.ok()) << "sync " << cut.sync << ": " << test::all_told(result.problems());
        ASSERT_TRUE(result->set_aside.empty()) << "sync " << cut.sync << ": taken for damaged";
        const std::vector<Entry>& found = result->journal->entries();
        ASSERT_LE(found.size(), said_.size()) << "sync " << cut.sync;
        if (found.size() < static_cast<std::size_t>(cut.acknowledged))
            lost += cut.acknowledged - static_cast<long>(found.size());
        if (!std::equal(found.begin(), found.end(), said_.begin()))
            ++wrong;
        ASSERT_EQ(lost, 0) << "sync " << cut.sync << ": " << found.size() << " of " << cut.acknowledged;
        ASSERT_EQ(wrong, 0) << "sync " << cut.sync;
        more += static_cast<long>(found.size()) - cut.acknowledged;
    }

    long cuts = 0, lost = 0, wrong = 0, more = 0;

  private:
    std::vector<Entry> said_;
    ScratchFolder folder_;
};

/// Cuts the power all through a recorded night.
void cut_all_through(Disk& disk, const std::vector<Entry>& said, int survivals, const char* what, long least_syncs)
{
    const auto begin = Clock::now();
    disk.record(false);
    Afterwards after(said);
    const long points = PowerCuts(disk.ops(), 2026).each(survivals, [&](const PowerCuts::Cut& cut) {
        if (!testing::Test::HasFatalFailure())
            after.check(cut);
    });
    EXPECT_GE(points, least_syncs);
    EXPECT_EQ(after.cuts, points * survivals);
    std::printf("%s: %zu entries, %ld sync points x %d survivals = %ld power cuts: %ld acknowledged entries lost, %ld "
                "journals wrong, %ld unacknowledged entries kept; %.0f s\n",
                what, said.size(), points, survivals, after.cuts, after.lost, after.wrong, after.more, seconds_since(begin));
}

TEST(Power, LosesNoAcknowledgedEntry_AtAnySyncOfANightOf200Entries)
{
    Disk disk;
    disk.leave_out_syncs(true);
    disk.record(true);
    ScratchFolder folder;
    const int entries = test::times(200);
    std::vector<Entry> said;
    std::unique_ptr<Journal> journal;
    for (int n = 1; n <= entries; ++n) {
        if (n % 70 == 1) { // started three times
            journal.reset();
            journal = opened(folder / "journal.db");
        }
        const Result<Entry> entry = tap(*journal, n, n % 20 == 0 ? 9000 : 120);
        ASSERT_TRUE(entry.ok());
        said.push_back(*entry);
        disk.mark(n);
    }
    journal.reset();
    cut_all_through(disk, said, 32, "a night", entries);
}

TEST(Power, LosesNoAcknowledgedEntry_WhenTheLogIsRolledIntoTheDatabaseOnTheWay)
{
    Disk disk;
    disk.leave_out_syncs(true);
    disk.record(true);
    ScratchFolder folder;
    std::vector<Entry> said;
    std::unique_ptr<Journal> journal = opened(folder / "journal.db");
    // Twenty pages each: the log reaches the thousand at which it is rolled in.
    for (int n = 1; n <= 60; ++n) {
        const Result<Entry> entry = tap(*journal, n, 80000);
        ASSERT_TRUE(entry.ok());
        said.push_back(*entry);
        disk.mark(n);
    }
    journal.reset();
    cut_all_through(disk, said, test::times(8), "a night of long comments", 60);
}

TEST(Power, LosesNoAcknowledgedEntry_AfterASyncThatFailedAndDroppedWhatWasWritten)
{
    // After a failed fsync the system takes the pages for clean: they are read from its cache as if they
    // were there, and no later sync writes them. What is acknowledged later must not rest on them.
    const auto begin = Clock::now();
    long failed_at = 0, cuts = 0, problems = 0;
    const long step = test::times(7) == 7 ? 1 : 7;
    for (long nth = 1;; nth += step) {
        Disk disk;
        disk.leave_out_syncs(true);
        disk.record(true);
        ScratchFolder folder;
        disk.fail(Disk::Call::sync, nth, Disk::Error::input_output, false);
        std::vector<Entry> said;
        std::unique_ptr<Journal> journal;
        int acknowledged = 0;
        for (int n = 1; n <= 24; ++n) {
            if (n == 9 || n == 17)
                journal.reset();
            for (int tries = 0; !journal && tries < 2; ++tries) {
                Result<Opened> result = open_journal(folder / "journal.db");
                if (result) {
                    ASSERT_TRUE(result->set_aside.empty());
                    journal = std::move(result.value().journal);
                    said = journal->entries(); // with one that was cut short, where it is there
                    ASSERT_GE(said.size(), static_cast<std::size_t>(acknowledged));
                }
            }
            ASSERT_TRUE(journal) << "sync " << nth;
            const Result<Entry> entry = tap(*journal, n, 300);
            if (entry) {
                said.push_back(*entry);
                acknowledged = static_cast<int>(said.size());
                disk.mark(acknowledged);
            } else {
                ++problems;
                EXPECT_EQ(entry.problems()[0].code, "sync") << "sync " << nth;
                journal.reset();
            }
        }
        journal.reset();
        if (!disk.failed())
            break;
        ++failed_at;
        disk.mend();
        disk.record(false);
        Afterwards after(said);
        PowerCuts(disk.ops(), static_cast<std::uint64_t>(nth)).each(4, [&](const PowerCuts::Cut& cut) {
            if (!HasFatalFailure())
                after.check(cut);
        });
        if (HasFatalFailure()) {
            ADD_FAILURE() << "when sync " << nth << " failed";
            return;
        }
        cuts += after.cuts;
    }
    EXPECT_GT(failed_at, 24 / step);
    EXPECT_GT(problems, 16 / step);
    std::printf("a sync fails and drops, at each of %ld places, then the power goes %ld times: no acknowledged "
                "entry lost; %.0f s\n",
                failed_at, cuts, seconds_since(begin));
}

} // namespace
} // namespace evenfall
