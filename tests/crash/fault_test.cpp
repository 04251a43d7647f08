// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Every call to the disk, and every allocation, of a short night fails once: once alone, and once
// with all that follow. An entry is then either acknowledged, and is there afterwards, or a problem
// is told.
#include "crash/disk.h"
#include "crash/share.h"

#include "core/journal/entries.h"
#include "core/kit/kits.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <sqlite3.h>
#include <sys/mount.h>

namespace evenfall {
namespace {

using test::Disk;
using test::ScratchFolder;
using Clock = std::chrono::steady_clock;

double seconds_since(Clock::time_point begin)
{
    return std::chrono::duration<double>(Clock::now() - begin).count();
}

/// gtest would print every byte of both.
bool same(const std::vector<Entry>& one, const std::vector<Entry>& other)
{
    return one == other;
}

/// A night of 20 entries in two sittings. Whatever fails is answered as the program answers it: by
/// closing the journal and opening it again; `mend` is called before that.
struct Night {
    std::filesystem::path file;
    std::function<void()> mend;
    std::function<long()> syncs_tried_again;
    long problems_told = 0;

    void tells_a_problem(const Problems& problems)
    {
        ++problems_told;
        ASSERT_EQ(problems.size(), 1u);
        const std::set<std::string> words{"disk_full", "read_only", "sync", "io"};
        EXPECT_TRUE(words.contains(problems[0].code))
            << problems[0].code << ": " << problems[0].text;
        EXPECT_EQ(problems[0].fault, Fault::io);
        EXPECT_FALSE(problems[0].text.empty());
    }

    std::unique_ptr<Journal> open()
    {
        for (int tries = 0; tries < 3; ++tries) {
            Result<Opened> result = open_journal(file);
            if (result) {
                EXPECT_TRUE(result->set_aside.empty()) << "a fault of the moment is no damage";
                return std::move(result.value().journal);
            }
            tells_a_problem(result.problems());
            mend();
        }
        ADD_FAILURE() << "cannot be opened although all is well again";
        return nullptr;
    }

    void run()
    {
        std::vector<Entry> acknowledged;
        std::unique_ptr<Journal> journal = open();
        for (int n = 1; journal && n <= 20; ++n) {
            if (n == 13) {
                journal.reset();
                journal = open();
                if (!journal)
                    return;
                EXPECT_TRUE(same(journal->entries(), acknowledged));
            }
            const std::string value = "\"" + std::string(n == 5 ? 9000 : 100, 'v') + "\"";
            const Result<Entry> entry =
                journal->append(test::stamp_at(n), "answer", std::to_string(n), value);
            if (entry) {
                acknowledged.push_back(*entry);
                EXPECT_TRUE(same(journal->entries(), acknowledged));
                continue;
            }
            tells_a_problem(entry.problems());
            EXPECT_TRUE(same(journal->entries(), acknowledged)) << "nothing was added";
            const Result<Entry> again = journal->append(test::stamp_at(n), "answer", "again", "");
            EXPECT_EQ(again.problems(), entry.problems()) << "this connection is given up";
            journal.reset();
            EXPECT_EQ(syncs_tried_again(), 0) << "a failed sync was tried again";
            mend();
            journal = open();
            if (!journal)
                return;
            // What was not acknowledged may be there all the same: whole, and only that one.
            std::vector<Entry> found = journal->entries();
            ASSERT_GE(found.size(), acknowledged.size());
            ASSERT_LE(found.size(), acknowledged.size() + 1);
            if (found.size() > acknowledged.size()) {
                EXPECT_EQ(found.back().subject, std::to_string(n));
                EXPECT_EQ(found.back().value, value);
                acknowledged.push_back(found.back());
            }
            EXPECT_TRUE(same(found, acknowledged));
        }
        journal.reset();
        EXPECT_EQ(syncs_tried_again(), 0) << "a failed sync was tried again";
        mend();
        journal = open();
        if (!journal)
            return;
        EXPECT_TRUE(same(journal->entries(), acknowledged));
        EXPECT_GE(acknowledged.size(), 12u);
        EXPECT_EQ(intact_length(acknowledged), acknowledged.size());
    }
};

struct Kind {
    const char* name;
    Disk::Call call;
    Disk::Error error;
};

class DiskFault : public testing::TestWithParam<Kind> {};

TEST_P(DiskFault, IsToldOrDoesNoHarm_WhereverItComes)
{
    const auto begin = Clock::now();
    const long step = test::times(5) == 5 ? 1 : 5;
    long places = 0, told = 0;
    for (const bool sticking : {false, true}) {
        for (long nth = 1;; nth += step) {
            SCOPED_TRACE(std::string(GetParam().name) + ", call " + std::to_string(nth) +
                         (sticking ? " and after" : " alone"));
            Disk disk;
            disk.leave_out_syncs(true);
            ScratchFolder folder;
            disk.fail(GetParam().call, nth, GetParam().error, sticking);
            bool failed = false;
            Night night{folder / "journal.db",
                        [&] {
                            failed = failed || disk.failed();
                            disk.mend();
                        },
                        [&] { return disk.syncs_tried_again(); }};
            night.run();
            if (HasFailure())
                return;
            told += night.problems_told;
            if (!failed && !disk.failed())
                break;
            ++places;
        }
    }
    EXPECT_GT(places, 0);
    EXPECT_GT(told, 0);
    std::printf("%s: %ld faults, %ld problems told, nothing lost; %.1f s\n", GetParam().name,
                places, told, seconds_since(begin));
}

INSTANTIATE_TEST_SUITE_P(
    Each, DiskFault,
    testing::Values(Kind{"EIO_on_open", Disk::Call::open, Disk::Error::input_output},
                    Kind{"ENOSPC_on_open", Disk::Call::open, Disk::Error::full},
                    Kind{"EIO_on_read", Disk::Call::read, Disk::Error::input_output},
                    Kind{"EIO_on_write", Disk::Call::write, Disk::Error::input_output},
                    Kind{"ENOSPC_on_write", Disk::Call::write, Disk::Error::full},
                    Kind{"short_write", Disk::Call::write, Disk::Error::cut_short},
                    Kind{"EIO_on_sync", Disk::Call::sync, Disk::Error::input_output},
                    Kind{"EIO_on_truncate", Disk::Call::truncate, Disk::Error::input_output},
                    Kind{"EIO_on_remove", Disk::Call::remove, Disk::Error::input_output}),
    [](const auto& one) { return std::string(one.param.name); });

TEST(DamagedJournal, IsBroughtBack_WhicheverCallFailsMeanwhile)
{
    const auto begin = Clock::now();
    long faults = 0, told = 0;
    for (const Disk::Call call : {Disk::Call::open, Disk::Call::read, Disk::Call::write,
                                  Disk::Call::sync, Disk::Call::truncate, Disk::Call::remove}) {
        for (const bool sticking : {false, true}) {
            for (long nth = 1;; ++nth) {
                SCOPED_TRACE("call " + std::to_string(nth) + " of sort " +
                             std::to_string(static_cast<int>(call)) +
                             (sticking ? " and after" : ""));
                Disk disk;
                disk.leave_out_syncs(true);
                ScratchFolder folder;
                const std::filesystem::path file = folder / "journal.db";
                std::vector<Entry> said;
                {
                    const Result<Opened> opened = open_journal(file);
                    ASSERT_TRUE(opened.ok());
                    for (int n = 1; n <= 40; ++n)
                        said.push_back(*opened->journal->append(test::stamp_at(n), "answer",
                                                                "tap-" + std::to_string(100 + n),
                                                                std::string(200, 'v')));
                }
                std::string bytes = test::bytes_of(file);
                bytes.replace(bytes.find("tap-130"), 3, "TAP");
                std::ofstream(file, std::ios::binary) << bytes;
                said.resize(29);

                disk.fail(call, nth, Disk::Error::input_output, sticking);
                bool set_aside = false;
                {
                    const Result<Opened> first = open_journal(file);
                    if (first) {
                        set_aside = !first->set_aside.empty();
                        ASSERT_TRUE(same(first->journal->entries(), said));
                    } else {
                        ++told;
                    }
                }
                const bool failed = disk.failed();
                disk.mend();
                const Result<Opened> then = open_journal(file);
                ASSERT_TRUE(then.ok()) << test::all_told(then.problems());
                ASSERT_TRUE(same(then->journal->entries(), said))
                    << then->journal->entries().size() << " entries";
                set_aside = set_aside || std::filesystem::exists(folder / "journal-damaged-1.db");
                EXPECT_TRUE(set_aside);
                ASSERT_EQ(test::bytes_of(folder / "journal-damaged-1.db"), bytes)
                    << "as it was found";
                if (!failed)
                    break;
                ++faults;
            }
        }
    }
    EXPECT_GT(told, 20);
    std::printf("a damaged journal: %ld faults while it is brought back, %ld told, all that was "
                "readable is there; %.1f s\n",
                faults, told, seconds_since(begin));
}

// The disk is full before the program starts.

/// A journal of ten entries as a kill leaves it, all of them still in the log.
std::vector<Entry> left_by_a_kill(const std::filesystem::path& file)
{
    std::vector<Entry> said;
    ScratchFolder elsewhere;
    const Result<Opened> opened = open_journal(elsewhere / "journal.db");
    for (int n = 1; n <= 10; ++n)
        said.push_back(*opened->journal->append(test::stamp_at(n), "answer", std::to_string(n),
                                                std::string(600, 'v')));
    std::filesystem::copy_file(elsewhere / "journal.db", file);
    std::filesystem::copy_file(elsewhere / "journal.db-wal", file.string() + "-wal");
    return said;
}

TEST(FullDisk, IsToldAtTheStart_AndNothingIsLostOnceThereIsRoom)
{
    Disk disk;
    disk.leave_out_syncs(true);
    for (const bool with_journal : {false, true}) {
        SCOPED_TRACE(with_journal);
        ScratchFolder folder;
        const std::filesystem::path file = folder / "journal.db";
        std::vector<Entry> said;
        if (with_journal)
            said = left_by_a_kill(file);
        disk.fail(Disk::Call::write, 1, Disk::Error::full, true);
        for (int tries = 0; tries < 3; ++tries) {
            const Result<Opened> opened = open_journal(file);
            ASSERT_FALSE(opened.ok());
            EXPECT_EQ(opened.problems()[0].code, "disk_full");
        }
        disk.mend();
        const Result<Opened> opened = open_journal(file);
        ASSERT_TRUE(opened.ok()) << test::all_told(opened.problems());
        EXPECT_TRUE(opened->set_aside.empty());
        EXPECT_TRUE(same(opened->journal->entries(), said));
    }
}

TEST(FullDisk, IsToldAtTheStart_OnARealOne)
{
    ScratchFolder place;
    if (::mount("none", place.path().c_str(), "tmpfs", 0, "size=256k") != 0)
        GTEST_SKIP() << "a small disk can be mounted by the superuser alone; the layer below "
                        "SQLite stands for it";
    const std::filesystem::path file = place / "journal.db", filler = place / "filler";
    long told = 0, opened = 0;
    {
        const std::vector<Entry> said = left_by_a_kill(file);
        for (std::uintmax_t free = 0; free <= 128; free += 4) { // KiB that are left
            std::ofstream(filler) << std::string(1 << 20, 'x'); // as far as it goes
            std::filesystem::resize_file(
                filler,
                std::filesystem::file_size(filler) -
                    std::min<std::uintmax_t>(free * 1024, std::filesystem::file_size(filler)));
            const Result<Opened> result = open_journal(file);
            if (result) {
                ++opened;
                EXPECT_TRUE(result->set_aside.empty());
                EXPECT_TRUE(same(result->journal->entries(), said));
            } else {
                ++told;
                EXPECT_EQ(result.problems()[0].code, "disk_full") << result.problems()[0].text;
            }
        }
        std::filesystem::remove(filler);
        const Result<Opened> result = open_journal(file);
        EXPECT_TRUE(result.ok());
        EXPECT_TRUE(result && same(result->journal->entries(), said));
    }
    ::umount(place.path().c_str());
    EXPECT_GT(opened, 0);
    std::printf("a full disk at the start: %ld times told, %ld times opened whole\n", told, opened);
}

// No memory: SQLite's own allocator with a count in front.

long allocations = 0, failing = 0, refused = 0;
bool failing_sticks = false;
sqlite3_mem_methods usual;

bool refuses()
{
    ++allocations;
    const bool now =
        failing != 0 && (allocations == failing || (failing_sticks && allocations > failing));
    refused += now;
    return now;
}
void* counted_malloc(int size)
{
    return refuses() ? nullptr : usual.xMalloc(size);
}
void* counted_realloc(void* old, int size)
{
    return refuses() ? nullptr : usual.xRealloc(old, size);
}

TEST(NoMemory, IsToldOrDoesNoHarm_AtEachAllocation)
{
    sqlite3_shutdown();
    ASSERT_EQ(sqlite3_config(SQLITE_CONFIG_GETMALLOC, &usual), SQLITE_OK);
    sqlite3_mem_methods counted = usual;
    counted.xMalloc = counted_malloc;
    counted.xRealloc = counted_realloc;
    ASSERT_EQ(sqlite3_config(SQLITE_CONFIG_MALLOC, &counted), SQLITE_OK);
    ASSERT_EQ(sqlite3_initialize(), SQLITE_OK);
    const auto begin = Clock::now();
    long places = 0, told = 0;
    const long step = test::times(20) == 20 ? 1 : 20;
    {
        Disk disk;
        disk.leave_out_syncs(true);
        for (const bool sticking : {false, true}) {
            for (long nth = 1;; nth += step) {
                SCOPED_TRACE("allocation " + std::to_string(nth) +
                             (sticking ? " and after" : " alone"));
                ScratchFolder folder;
                allocations = refused = 0;
                failing = nth;
                failing_sticks = sticking;
                Night night{folder / "journal.db", [] { failing = 0; }, [] { return 0L; }};
                night.run();
                failing = 0;
                if (HasFailure())
                    break;
                told += night.problems_told;
                if (refused == 0)
                    break;
                ++places;
            }
        }
    }
    sqlite3_shutdown();
    sqlite3_config(SQLITE_CONFIG_MALLOC, &usual);
    sqlite3_initialize();
    EXPECT_GT(places, 500 / step);
    EXPECT_GT(told, 100 / step);
    std::printf("no memory: %ld faults, %ld problems told, nothing lost; %.1f s\n", places, told,
                seconds_since(begin));
}

} // namespace
} // namespace evenfall
