// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Every call to the disk, and every allocation, of a short night fails once: once alone, and once
// with all that follow. An entry is then either acknowledged, and is there afterwards, or a problem
// is told.
#include "crash/disk.h"
#include "crash/share.h"

#include "core/journal/entries.h"
#include "core/kit/kits.h"

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <cstdarg>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <fstream>
#include <functional>
#include <set>
#include <sqlite3.h>
#include <sys/mount.h>
#include <sys/sendfile.h>
#include <sys/syscall.h>
#include <unistd.h>

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
                    Kind{"EIO_on_remove", Disk::Call::remove, Disk::Error::input_output},
                    Kind{"EIO_on_size", Disk::Call::size, Disk::Error::input_output},
                    Kind{"EPERM_on_lock", Disk::Call::lock, Disk::Error::input_output}),
    [](const auto& one) { return std::string(one.param.name); });

/// A journal of 40 entries whose thirtieth is damaged.
class Damaged {
  public:
    Damaged()
    {
        {
            const Result<Opened> opened = open_journal(file);
            EXPECT_TRUE(opened.ok());
            for (int n = 1; opened && n <= 40; ++n)
                said.push_back(*opened->journal->append(test::stamp_at(n), "answer",
                                                        "tap-" + std::to_string(100 + n),
                                                        std::string(200, 'v')));
        }
        bytes = test::bytes_of(file);
        bytes.replace(bytes.find("tap-130"), 3, "TAP");
        std::ofstream(file, std::ios::binary) << bytes;
        said.resize(29);
    }

    /// Opens it, which something may make fail, and again after `mend`. False when the first was told
    /// a problem. All that was readable must be there, and the damaged file as it was found.
    bool is_brought_back(const std::function<void()>& mend) const
    {
        bool set_aside = false, told = false;
        {
            const Result<Opened> first = open_journal(file);
            if (first) {
                set_aside = !first->set_aside.empty();
                EXPECT_TRUE(same(first->journal->entries(), said))
                    << first->journal->entries().size() << " entries";
            } else {
                told = true;
                const std::set<std::string> words{"disk_full", "read_only", "sync", "io", "no_place"};
                EXPECT_TRUE(words.contains(first.problems()[0].code))
                    << test::all_told(first.problems());
            }
        }
        mend();
        const Result<Opened> then = open_journal(file);
        EXPECT_TRUE(then.ok()) << test::all_told(then.problems());
        EXPECT_TRUE(then && same(then->journal->entries(), said));
        const std::filesystem::path aside = folder / "journal-damaged-1.db";
        EXPECT_TRUE(set_aside || std::filesystem::exists(aside));
        EXPECT_EQ(std::hash<std::string>{}(test::bytes_of(aside)), std::hash<std::string>{}(bytes))
            << "as it was found";
        return !told;
    }

    ScratchFolder folder;
    std::filesystem::path file = folder / "journal.db";
    std::string bytes;
    std::vector<Entry> said; ///< before the damage
};

TEST(DamagedJournal, IsBroughtBack_WhicheverCallFailsMeanwhile)
{
    const auto begin = Clock::now();
    long faults = 0, told = 0;
    for (const Disk::Call call : {Disk::Call::open, Disk::Call::read, Disk::Call::write, Disk::Call::sync,
                                  Disk::Call::truncate, Disk::Call::remove, Disk::Call::size}) {
        for (const bool sticking : {false, true}) {
            for (long nth = 1;; ++nth) {
                SCOPED_TRACE("call " + std::to_string(nth) + " of sort " +
                             std::to_string(static_cast<int>(call)) +
                             (sticking ? " and after" : ""));
                Disk disk;
                disk.leave_out_syncs(true);
                const Damaged journal;
                disk.fail(call, nth, Disk::Error::input_output, sticking);
                bool failed = false;
                told += !journal.is_brought_back([&] {
                    failed = disk.failed();
                    disk.mend();
                });
                if (HasFailure())
                    return;
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

// What the journal asks of the system past SQLite: by the linker's --wrap, and sendfile, by which the
// library copies a file, by its name.

enum class Asked { nothing, open, fsync, rename, sendfile };

struct SystemFault {
    Asked sort = Asked::nothing;
    int error = EIO;
    long nth = 0, calls = 0;
    bool sticking = false, failed = false;
} system_fault;

bool system_fails(Asked sort)
{
    SystemFault& f = system_fault;
    if (sort != f.sort)
        return false;
    ++f.calls;
    if (f.calls != f.nth && !(f.sticking && f.calls > f.nth))
        return false;
    f.failed = true;
    errno = f.error;
    return true;
}

} // namespace

extern "C" {
int __real_open(const char* path, int flags, ...);
int __real_fsync(int fd);
int __real_rename(const char* from, const char* to);

int __wrap_open(const char* path, int flags, ...)
{
    va_list more;
    va_start(more, flags);
    const mode_t mode = flags & O_CREAT ? va_arg(more, mode_t) : 0;
    va_end(more);
    return system_fails(Asked::open) ? -1 : __real_open(path, flags, mode);
}
int __wrap_fsync(int fd) { return system_fails(Asked::fsync) ? -1 : __real_fsync(fd); }
int __wrap_rename(const char* from, const char* to)
{
    return system_fails(Asked::rename) ? -1 : __real_rename(from, to);
}

/// One that fails has copied half by then.
ssize_t sendfile(int to, int from, off_t* offset, size_t count) noexcept
{
    const bool fails = system_fails(Asked::sendfile);
    const int error = errno;
    const ssize_t done = ::syscall(SYS_sendfile, to, from, offset, fails ? count / 2 : count);
    errno = fails ? error : errno;
    return fails ? -1 : done;
}
}

namespace {

TEST(DamagedJournal, IsBroughtBack_WhateverTheSystemRefusesMeanwhile)
{
    const auto begin = Clock::now();
    long faults = 0, told = 0;
    for (const int error : {EIO, ENOSPC}) {
        for (const Asked sort : {Asked::open, Asked::fsync, Asked::rename}) {
            for (const bool sticking : {false, true}) {
                for (long nth = 1;; ++nth) {
                    SCOPED_TRACE("call " + std::to_string(nth) + " of sort " +
                                 std::to_string(static_cast<int>(sort)) + (sticking ? " and after" : "") +
                                 ": " + std::strerror(error));
                    Disk disk;
                    disk.leave_out_syncs(true);
                    const Damaged journal;
                    system_fault = {sort, error, nth, 0, sticking, false};
                    bool failed = false;
                    told += !journal.is_brought_back([&] {
                        failed = system_fault.failed;
                        system_fault = {};
                    });
                    if (HasFailure())
                        return;
                    if (!failed)
                        break;
                    ++faults;
                }
            }
        }
    }
    EXPECT_GT(told, 20);
    std::printf("a damaged journal: %ld refusals of the system while it is brought back, %ld told, all "
                "that was readable is there; %.1f s\n",
                faults, told, seconds_since(begin));
}

TEST(DamagedJournal, IsBroughtBackOnce_WhenOneIsWaitingAndCannotBeRenamedAtFirst)
{
    const Damaged journal;
    // The second rename puts the new one in place of that which was set aside.
    system_fault = {Asked::rename, EIO, 2, 0, true, false};
    EXPECT_FALSE(open_journal(journal.file).ok());
    EXPECT_FALSE(std::filesystem::exists(journal.file));
    EXPECT_TRUE(std::filesystem::exists(journal.file.string() + ".new"));
    system_fault = {Asked::rename, EIO, 1, 0, true, false};
    const Result<Opened> again = open_journal(journal.file);
    EXPECT_TRUE(system_fault.failed);
    system_fault = {};
    ASSERT_FALSE(again.ok()) << "an empty journal would hide the one that is waiting";
    EXPECT_EQ(again.problems()[0].code, "io");
    EXPECT_FALSE(std::filesystem::exists(journal.file));
    const Result<Opened> then = open_journal(journal.file);
    ASSERT_TRUE(then.ok()) << test::all_told(then.problems());
    EXPECT_TRUE(same(then->journal->entries(), journal.said));
    EXPECT_TRUE(then->set_aside.empty());
    EXPECT_FALSE(std::filesystem::exists(journal.folder / "journal-damaged-2.db"));
}

TEST(DamagedJournal, GivesBackABeginning_WhenItCannotBeCopiedToItsEnd)
{
    const Damaged journal;
    system_fault = {Asked::sendfile, EIO, 1, 0, false, false};
    const Result<Opened> opened = open_journal(journal.file);
    EXPECT_TRUE(system_fault.failed);
    system_fault = {};
    ASSERT_TRUE(opened.ok()) << test::all_told(opened.problems());
    const std::vector<Entry>& kept = opened->journal->entries();
    EXPECT_GT(kept.size(), 3u);
    EXPECT_LT(kept.size(), journal.said.size());
    EXPECT_TRUE(std::equal(kept.begin(), kept.end(), journal.said.begin()));
    EXPECT_TRUE(test::bytes_of(opened->set_aside) == journal.bytes) << "as it was found";
}

TEST(DamagedJournal, IsLeftAsItIs_WhenThereIsNoRoomForACopy)
{
    const Damaged journal;
    system_fault = {Asked::sendfile, ENOSPC, 1, 0, false, false};
    const Result<Opened> opened = open_journal(journal.file);
    system_fault = {};
    ASSERT_FALSE(opened.ok());
    EXPECT_EQ(opened.problems()[0].code, "disk_full");
    EXPECT_TRUE(test::bytes_of(journal.file) == journal.bytes);
    EXPECT_TRUE(journal.is_brought_back([] {}));
}

TEST(NewJournal, SaysWhyItCannotBeMade)
{
    ScratchFolder folder;
    for (const auto& [error, word] : {std::pair(ENOSPC, "disk_full"), std::pair(EROFS, "read_only"), std::pair(EDQUOT, "read_only")}) {
        system_fault = {Asked::open, error, 1, 0, false, false};
        const Result<Opened> opened = open_journal(folder / "journal.db");
        system_fault = {};
        ASSERT_FALSE(opened.ok());
        EXPECT_EQ(opened.problems()[0].code, word) << std::strerror(error);
        EXPECT_FALSE(std::filesystem::exists(folder / "journal.db"));
    }
    EXPECT_TRUE(open_journal(folder / "journal.db").ok());
}

TEST(LongLog, KeepsItsEntries_WhenItCannotBeRolledIn)
{
    // One entry of five megabytes makes the log longer than the thousand pages after which it is rolled in.
    for (const Disk::Call call : {Disk::Call::write, Disk::Call::sync, Disk::Call::truncate}) {
        SCOPED_TRACE(static_cast<int>(call));
        Disk disk;
        disk.leave_out_syncs(true);
        ScratchFolder folder;
        std::vector<Entry> said;
        const auto tell = [&said](Journal& journal, std::size_t size) {
            const Result<Entry> entry = journal.append(test::stamp_at(1), "answer", "comment", std::string(size, 'v'));
            if (entry)
                said.push_back(*entry);
            return entry;
        };
        // How many such calls there are with the rolling in, which comes last.
        long calls = 0;
        {
            ScratchFolder other;
            const Result<Opened> opened = open_journal(other / "journal.db");
            ASSERT_TRUE(tell(*opened->journal, 10).ok());
            disk.fail(call, 0, Disk::Error::input_output, false);
            ASSERT_TRUE(tell(*opened->journal, 5'000'000).ok());
            calls = disk.calls();
        }
        said.clear();
        {
            const Result<Opened> opened = open_journal(folder / "journal.db");
            ASSERT_TRUE(tell(*opened->journal, 10).ok());
            disk.fail(call, calls, Disk::Error::input_output, true);
            ASSERT_TRUE(tell(*opened->journal, 5'000'000).ok()) << "it is durable in the log";
            EXPECT_TRUE(disk.failed());
            disk.mend();
            const Result<Entry> next = tell(*opened->journal, 10);
            ASSERT_FALSE(next.ok());
            EXPECT_TRUE(next.problems()[0].code == "io" || next.problems()[0].code == "sync") << next.problems()[0].code;
            EXPECT_TRUE(same(opened->journal->entries(), said));
        }
        const Result<Opened> then = open_journal(folder / "journal.db");
        ASSERT_TRUE(then.ok()) << test::all_told(then.problems());
        EXPECT_TRUE(then->set_aside.empty());
        EXPECT_TRUE(same(then->journal->entries(), said));
    }
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

/// SQLite counts its allocations, and refuses those that it is told to.
class CountedMemory {
  public:
    CountedMemory()
    {
        sqlite3_shutdown();
        EXPECT_EQ(sqlite3_config(SQLITE_CONFIG_GETMALLOC, &usual), SQLITE_OK);
        sqlite3_mem_methods counted = usual;
        counted.xMalloc = counted_malloc;
        counted.xRealloc = counted_realloc;
        EXPECT_EQ(sqlite3_config(SQLITE_CONFIG_MALLOC, &counted), SQLITE_OK);
        EXPECT_EQ(sqlite3_initialize(), SQLITE_OK);
    }
    ~CountedMemory()
    {
        failing = 0;
        sqlite3_shutdown();
        sqlite3_config(SQLITE_CONFIG_MALLOC, &usual);
        sqlite3_initialize();
    }
    CountedMemory(const CountedMemory&) = delete;
    CountedMemory& operator=(const CountedMemory&) = delete;

    static void fail(long nth, bool sticking)
    {
        allocations = refused = 0;
        failing = nth;
        failing_sticks = sticking;
    }
};

TEST(NoMemory, IsToldOrDoesNoHarm_AtEachAllocation)
{
    const auto begin = Clock::now();
    long places = 0, told = 0;
    const long step = test::times(20) == 20 ? 1 : 20;
    {
        const CountedMemory memory;
        Disk disk;
        disk.leave_out_syncs(true);
        for (const bool sticking : {false, true}) {
            for (long nth = 1;; nth += step) {
                SCOPED_TRACE("allocation " + std::to_string(nth) +
                             (sticking ? " and after" : " alone"));
                ScratchFolder folder;
                memory.fail(nth, sticking);
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
    EXPECT_GT(places, 500 / step);
    EXPECT_GT(told, 100 / step);
    std::printf("no memory: %ld faults, %ld problems told, nothing lost; %.1f s\n", places, told,
                seconds_since(begin));
}

using Step = std::function<void()>;

/// Each allocation of an opening is refused, alone and with all that follow. `opens` is told how to begin
/// and how to end the refusing; it says false when a problem was told.
void each_allocation_of(const char* what, long step, const std::function<bool(const Step& begin, const Step& end)>& opens)
{
    const auto begin = Clock::now();
    long places = 0, told = 0;
    {
        const CountedMemory memory;
        Disk disk;
        disk.leave_out_syncs(true);
        for (const bool sticking : {false, true}) {
            for (long nth = 1;; nth += step) {
                SCOPED_TRACE("allocation " + std::to_string(nth) + (sticking ? " and after" : " alone"));
                long refused_by_then = 0;
                bool ended = false;
                told += !opens([&] { memory.fail(nth, sticking); },
                               [&] {
                                   refused_by_then = refused;
                                   ended = true;
                                   failing = 0;
                               });
                failing = 0;
                if (testing::Test::HasFailure())
                    return;
                ASSERT_TRUE(ended);
                if (refused_by_then == 0)
                    break;
                ++places;
            }
        }
    }
    EXPECT_GT(places, 200 / step);
    EXPECT_GT(told, 100 / step);
    std::printf("no memory while %s is opened: %ld faults, %ld told, nothing lost; %.1f s\n", what, places, told,
                seconds_since(begin));
}

/// Opens a copy of a sound journal while allocations are refused: it is no damage.
void each_allocation_of_opening(const char* what, const std::filesystem::path& kept, const std::vector<Entry>& said)
{
    each_allocation_of(what, 1, [&](const Step& refuse, const Step& mend) {
        ScratchFolder folder;
        const std::filesystem::path file = folder / "journal.db";
        for (const char* tail : {"", "-wal"})
            if (std::filesystem::exists(kept.string() + tail))
                std::filesystem::copy_file(kept.string() + tail, file.string() + tail);
        bool told = false;
        refuse();
        {
            const Result<Opened> first = open_journal(file);
            told = !first.ok();
            EXPECT_TRUE(told || (first->set_aside.empty() && same(first->journal->entries(), said)));
            EXPECT_TRUE(!told || first.problems()[0].code == "io") << test::all_told(first.problems());
        }
        mend();
        const Result<Opened> then = open_journal(file);
        EXPECT_TRUE(then && then->set_aside.empty() && same(then->journal->entries(), said));
        return !told;
    });
}

TEST(NoMemory, IsToldOrDoesNoHarm_WhileAJournalIsOpened)
{
    ScratchFolder elsewhere;
    const std::vector<Entry> said = left_by_a_kill(elsewhere / "journal.db");
    each_allocation_of_opening("a journal", elsewhere / "journal.db", said);
}

TEST(NoMemory, IsNotTakenForDamage_WhereTextIsKeptInAnotherForm)
{
    // In a file of UTF-16 each text needs memory to be read.
    ScratchFolder elsewhere;
    const std::vector<Entry> said = left_by_a_kill(elsewhere / "first.db");
    const std::filesystem::path file = elsewhere / "journal.db";
    std::string sql = "PRAGMA encoding='UTF-16le'; PRAGMA application_id=" + std::to_string(0x45564E46) +
                      "; PRAGMA user_version=1; CREATE TABLE entry (number INTEGER PRIMARY KEY, utc_us INTEGER NOT NULL,"
                      " offset_s INTEGER NOT NULL, zone TEXT NOT NULL, boot TEXT NOT NULL, since_boot_us INTEGER NOT NULL,"
                      " kind TEXT NOT NULL, subject TEXT NOT NULL, value TEXT NOT NULL, hash TEXT NOT NULL) STRICT;";
    const auto text = [](const std::string& word) { return ",'" + word + "'"; };
    for (const Entry& one : said)
        sql += "INSERT INTO entry VALUES (" + std::to_string(one.number) + "," +
               std::to_string(one.stamp.utc.time_since_epoch().count()) + "," +
               std::to_string(one.stamp.offset.count()) + text(one.stamp.zone) + text(one.stamp.boot) + "," +
               std::to_string(one.stamp.since_boot.count()) + text(one.kind) + text(one.subject) +
               text(one.value) + text(one.hash) + ");";
    sqlite3* db = nullptr;
    ASSERT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
    EXPECT_EQ(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(db);
    sqlite3_close(db);
    each_allocation_of_opening("a journal of UTF-16", file, said);
}

TEST(NoMemory, LosesNothing_WhileADamagedJournalIsBroughtBack)
{
    each_allocation_of("a damaged journal", test::times(20) == 20 ? 3 : 20, [](const Step& refuse, const Step& mend) {
        const Damaged journal;
        refuse();
        return journal.is_brought_back(mend);
    });
}

} // namespace
} // namespace evenfall
