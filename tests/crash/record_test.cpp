// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// A record is there whole or not at all: each call to the system on its way fails, is the last before a
// kill, or is where the power goes. The linker puts the functions below in front of the system's own
// (--wrap), for everything that core calls.
#include "crash/share.h"

#include "core/kit/kits.h"
#include "core/record/diaries.h"
#include "record/folder.h"
#include "record/verify.h"

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdarg>
#include <cstdio>
#include <fcntl.h>
#include <map>
#include <random>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace {

enum class Call { open, write, fsync, rename, mkdir };

/// One call that changed something, for the power cuts.
struct Op {
    Call call;
    std::string path, other;
    std::string bytes;
};

struct {
    bool on = false;
    // The nth call fails, alone or with all that follow, ...
    long calls = 0, nth = 0;
    int error = EIO;
    bool sticking = false, cut_short = false, failed = false;
    // ... or the process is killed in its place.
    bool kills = false;
    std::vector<Op> ops;
    std::map<int, std::string> paths; ///< of open files
} system_calls;

/// True when this call is to fail; kills the process instead where that is asked for.
bool fails()
{
    auto& s = system_calls;
    if (!s.on)
        return false;
    ++s.calls;
    if (s.nth == 0 || s.calls < s.nth || (s.calls > s.nth && !s.sticking))
        return false;
    if (s.kills)
        ::raise(SIGKILL);
    s.failed = true;
    errno = s.error;
    return true;
}

void note(Op op)
{
    if (system_calls.on)
        system_calls.ops.push_back(std::move(op));
}

} // namespace

extern "C" {
int __real_open(const char* path, int flags, ...);
ssize_t __real_write(int fd, const void* bytes, size_t size);
int __real_fsync(int fd);
int __real_rename(const char* from, const char* to);
int __real_renameat2(int from_folder, const char* from, int to_folder, const char* to, unsigned flags);
int __real_mkdir(const char* path, mode_t mode);

int __wrap_open(const char* path, int flags, ...)
{
    va_list more;
    va_start(more, flags);
    const mode_t mode = flags & O_CREAT ? va_arg(more, mode_t) : 0;
    va_end(more);
    // Reading is not what this is about, but the folder is opened to be synced.
    if (system_calls.on && (flags & (O_CREAT | O_DIRECTORY)) && fails())
        return -1;
    const int fd = __real_open(path, flags, mode);
    if (fd >= 0 && system_calls.on) {
        system_calls.paths[fd] = path;
        if (flags & O_CREAT)
            note({Call::open, path, {}, {}});
    }
    return fd;
}

ssize_t __wrap_write(int fd, const void* bytes, size_t size)
{
    if (fails()) {
        if (system_calls.cut_short && size > 1)
            return __real_write(fd, bytes, size / 2); // as write(2) may: the rest is for the next call
        return -1;
    }
    const ssize_t done = __real_write(fd, bytes, size);
    if (done > 0)
        note({Call::write, system_calls.paths[fd], {}, std::string(static_cast<const char*>(bytes), static_cast<size_t>(done))});
    return done;
}

int __wrap_fsync(int fd)
{
    if (fails())
        return -1;
    note({Call::fsync, system_calls.paths[fd], {}, {}});
    return 0; // the ops say what is durable
}

int __wrap_rename(const char* from, const char* to)
{
    if (fails())
        return -1;
    note({Call::rename, from, to, {}});
    return __real_rename(from, to);
}

int __wrap_renameat2(int from_folder, const char* from, int to_folder, const char* to, unsigned flags)
{
    if (fails())
        return -1;
    const int code = __real_renameat2(from_folder, from, to_folder, to, flags);
    if (code == 0)
        note({Call::rename, from, to, {}});
    return code;
}

int __wrap_mkdir(const char* path, mode_t mode)
{
    if (fails())
        return -1;
    note({Call::mkdir, path, {}, {}});
    return __real_mkdir(path, mode);
}
}

namespace evenfall {
namespace {

namespace fs = std::filesystem;
using test::ScratchFolder;
using Clock = std::chrono::steady_clock;

class Record : public testing::Test {
  protected:
    void SetUp() override { system_calls = {}; }
    void TearDown() override { system_calls = {}; }

    const Diary diary = test::full_diary();
    const std::string name = record_name(diary).value();
    const Clock::time_point started = Clock::now();

    double seconds() const { return std::chrono::duration<double>(Clock::now() - started).count(); }

    Result<fs::path> write(const fs::path& parent) { return write_record(diary, parent); }

    static Result<fs::path> counted(const Diary& diary, const fs::path& parent)
    {
        system_calls.on = true;
        Result<fs::path> result = write_record(diary, parent);
        system_calls.on = false;
        return result;
    }

    static bool whole(const fs::path& record)
    {
        const Verification found = verify_record(record);
        for (const RecordProblem& problem : found.problems)
            ADD_FAILURE() << problem.file << ": " << problem.problem.text;
        return found.problems.empty();
    }
};

TEST_F(Record, IsWholeOrNotThereAtAll_WhicheverCallFails)
{
    long faults = 0, told = 0;
    struct Kind { const char* name; int error; bool cut_short; };
    for (const Kind& kind : {Kind{"EIO", EIO, false}, Kind{"ENOSPC", ENOSPC, false}, Kind{"short write", EIO, true}}) {
        for (const bool sticking : {false, true}) {
            for (long nth = 1;; ++nth) {
                SCOPED_TRACE(std::string(kind.name) + " at call " + std::to_string(nth) + (sticking ? " and after" : ""));
                ScratchFolder folder;
                system_calls = {};
                system_calls.nth = nth;
                system_calls.error = kind.error;
                system_calls.cut_short = kind.cut_short;
                system_calls.sticking = sticking;
                const Result<fs::path> result = counted(diary, folder.path());
                if (!system_calls.failed)
                    break;
                ++faults;
                if (result) { // a short write alone is gone on with
                    ASSERT_TRUE(kind.cut_short);
                    ASSERT_TRUE(whole(*result));
                } else {
                    ++told;
                    EXPECT_EQ(result.problems()[0].fault, Fault::io);
                    EXPECT_FALSE(result.problems()[0].text.empty());
                    ASSERT_TRUE(fs::is_empty(folder.path())) << "something half-written is left";
                    system_calls = {};
                    const Result<fs::path> again = write(folder.path());
                    ASSERT_TRUE(again.ok()) << test::all_told(again.problems());
                }
                ASSERT_LT(nth, 1000) << "no end of writing";
            }
        }
    }
    EXPECT_GT(told, 40);
    std::printf("record: %ld faults, %ld told, nothing half-written; %.1f s\n", faults, told, seconds());
}

TEST_F(Record, IsWholeOrNotThereAtAll_WhereverTheProcessIsKilled)
{
    long kills = 0;
    for (long nth = 1;; ++nth) {
        SCOPED_TRACE("kill at call " + std::to_string(nth));
        ScratchFolder folder;
        const pid_t child = ::fork();
        if (child == 0) {
            system_calls = {};
            system_calls.nth = nth;
            system_calls.kills = true;
            (void)counted(diary, folder.path());
            ::_exit(0);
        }
        int status = 0;
        ::waitpid(child, &status, 0);
        const bool killed = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
        const fs::path record = folder / name;
        if (fs::exists(record)) {
            ASSERT_TRUE(whole(record));
            EXPECT_EQ(write(folder.path()).problems()[0].code, "record_exists");
        } else {
            ASSERT_TRUE(killed);
            // Written anew, and what the killed one left is cleared away.
            const Result<fs::path> again = write(folder.path());
            ASSERT_TRUE(again.ok()) << test::all_told(again.problems());
        }
        ASSERT_EQ(std::distance(fs::directory_iterator(folder.path()), fs::directory_iterator()), 1);
        if (!killed)
            break;
        ++kills;
    }
    EXPECT_GT(kills, 10);
    std::printf("record: killed at each of %ld calls; %.1f s\n", kills, seconds());
}

/// A folder and its files as the disk has them: contents and names are durable each on its own sync.
struct Image {
    std::map<std::string, std::string> content; ///< by path while it was written
    std::set<std::string> names;                ///< files whose name is in the folder
    bool folder = false;
    bool renamed = false;
};

TEST_F(Record, IsWholeOrNotThereAtAll_WhereverThePowerGoes)
{
    ScratchFolder folder;
    const Result<fs::path> result = counted(diary, folder.path());
    ASSERT_TRUE(result.ok());
    const std::vector<Op> ops = std::move(system_calls.ops);
    system_calls = {};
    std::mt19937_64 random(7);
    Image durable;
    std::vector<Op> pending;
    const auto apply = [](Image& image, const Op& op, bool whole, std::mt19937_64& any) {
        if (op.call == Call::mkdir)
            image.folder = true;
        else if (op.call == Call::rename)
            image.renamed = true;
        else if (op.call == Call::open)
            image.names.insert(op.path);
        else if (op.call == Call::write) {
            std::string& file = image.content[op.path];
            const std::size_t begin = file.size();
            file += op.bytes;
            for (std::size_t at = begin; !whole && at < file.size(); at += 512) {
                if (any() % 2 == 0)
                    std::fill(file.begin() + static_cast<long>(at), file.begin() + static_cast<long>(std::min(at + 512, file.size())), '\0');
            }
        }
    };
    const auto names_of = [&](const Op& op, const std::string& synced) {
        const bool in_parent = op.call == Call::mkdir || op.call == Call::rename;
        if (in_parent || op.call == Call::open)
            return fs::path(op.path).parent_path() == synced;
        return op.call == Call::write && op.path == synced;
    };
    long points = 0, cuts = 0, there = 0;
    const int survivals = test::times(32) > 1 ? 32 : 2;
    for (std::size_t i = 0; i <= ops.size(); ++i) {
        if (i < ops.size() && ops[i].call != Call::fsync) {
            pending.push_back(ops[i]);
            continue;
        }
        ++points;
        for (int n = 0; n < survivals; ++n) {
            Image image = durable;
            bool folder_lost = false; // the journal of the file system keeps one folder's changes in order
            for (const Op& op : pending) {
                const bool in_parent = op.call == Call::mkdir || op.call == Call::rename;
                bool kept = n == 0 || (n > 1 && random() % 2 == 0);
                if (in_parent) {
                    kept = kept && !folder_lost;
                    folder_lost = !kept;
                }
                if (kept)
                    apply(image, op, n == 0 || random() % 2 == 0, random);
            }
            ++cuts;
            if (!image.folder || !image.renamed)
                continue; // hidden under a temporary name, or gone
            ++there;
            ScratchFolder after;
            const fs::path record = after / name;
            fs::create_directory(record);
            for (const std::string& path : image.names)
                std::ofstream(record / fs::path(path).filename(), std::ios::binary) << image.content[path];
            ASSERT_TRUE(whole(record)) << "power cut at sync " << points << ", survival " << n;
        }
        if (i == ops.size())
            break;
        std::erase_if(pending, [&](const Op& op) {
            if (!names_of(op, ops[i].path))
                return false;
            apply(durable, op, true, random);
            return true;
        });
    }
    EXPECT_TRUE(durable.renamed) << "a record that was acknowledged is durable";
    EXPECT_GE(points, 6);
    EXPECT_GT(there, 0);
    std::printf("record: %ld sync points x %d survivals = %ld power cuts, in %ld of them the record is there: whole; %.1f s\n",
                points, survivals, cuts, there, seconds());
}

} // namespace
} // namespace evenfall
