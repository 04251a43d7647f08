// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Guessing at the front desk's PIN with the plug in one hand: kills, failing calls, power cuts,
// restarts and two copies gain no guess. The linker puts the functions below in front of the
// system's and of libsodium's (--wrap), so that each hash is seen when it begins.
#include "base/json.h"
#include "base/pin.h"
#include "core/kit/kits.h"
#include "crash/share.h"

#include <algorithm>
#include <atomic>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdarg>
#include <cstdio>
#include <fcntl.h>
#include <functional>
#include <random>
#include <sodium.h>
#include <sys/mman.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace {

/// What the wrapped calls do and saw.
struct {
    bool on = false;
    long calls = 0, nth = 0; ///< the nth call that changes something fails ...
    bool sticking = false;   ///< ... and all that follow
    int error = EIO;
    bool failed = false;
    int lock_error = 0;                  ///< for flock
    long hashes = 0, no_memory_from = 0; ///< the nth hash and all that follow find no memory
    std::vector<std::string> order;      ///< what was called, in order
    std::atomic<long>* begun = nullptr;  ///< hashes begun; in memory that outlives a killed process
} system_calls;

bool fails(const char* what)
{
    auto& s = system_calls;
    if (!s.on)
        return false;
    s.order.emplace_back(what);
    ++s.calls;
    if (s.nth == 0 || s.calls < s.nth || (s.calls > s.nth && !s.sticking))
        return false;
    s.failed = true;
    errno = s.error;
    return true;
}

} // namespace

extern "C" {
int __real_open(const char* path, int flags, ...);
ssize_t __real_write(int fd, const void* bytes, size_t size);
int __real_fsync(int fd);
int __real_rename(const char* from, const char* to);
int __real_flock(int fd, int operation);
int __real_crypto_pwhash(unsigned char* out, unsigned long long size, const char* pin,
                         unsigned long long pin_size, const unsigned char* salt,
                         unsigned long long passes, size_t memory, int algorithm);

int __wrap_open(const char* path, int flags, ...)
{
    mode_t mode = 0;
    if (flags & O_CREAT) {
        va_list words;
        va_start(words, flags);
        mode = va_arg(words, mode_t);
        va_end(words);
        if (fails("create"))
            return -1;
    }
    return __real_open(path, flags, mode);
}

ssize_t __wrap_write(int fd, const void* bytes, size_t size)
{
    return fails("write") ? -1 : __real_write(fd, bytes, size);
}

int __wrap_fsync(int fd)
{
    return fails("fsync") ? -1 : __real_fsync(fd);
}

int __wrap_rename(const char* from, const char* to)
{
    return fails("rename") ? -1 : __real_rename(from, to);
}

int __wrap_flock(int fd, int operation)
{
    if (system_calls.lock_error == 0)
        return __real_flock(fd, operation);
    errno = system_calls.lock_error;
    return -1;
}

int __wrap_crypto_pwhash(unsigned char* out, unsigned long long size, const char* pin,
                         unsigned long long pin_size, const unsigned char* salt,
                         unsigned long long passes, size_t memory, int algorithm)
{
    if (system_calls.begun)
        system_calls.begun->fetch_add(1);
    if (system_calls.on)
        system_calls.order.emplace_back("hash");
    ++system_calls.hashes;
    if (system_calls.no_memory_from != 0 && system_calls.hashes >= system_calls.no_memory_from)
        return -1;
    return __real_crypto_pwhash(out, size, pin, pin_size, salt, passes, memory, algorithm);
}
}

namespace evenfall {
namespace {

namespace fs = std::filesystem;
using std::chrono::hours;
using std::chrono::seconds;
using test::bytes_of;
using test::ScratchFolder;
using Clock = std::chrono::steady_clock;

constexpr PinCost cheap{8, 1};

/// A number that a child counts on and the parent reads after the child's death.
class Shared {
  public:
    Shared()
        : number_(new (::mmap(nullptr, sizeof(std::atomic<long>), PROT_READ | PROT_WRITE,
                              MAP_SHARED | MAP_ANONYMOUS, -1, 0)) std::atomic<long>(0))
    {
    }
    ~Shared() { ::munmap(number_, sizeof(std::atomic<long>)); }
    Shared(const Shared&) = delete;
    Shared& operator=(const Shared&) = delete;
    std::atomic<long>* get() const { return number_; }
    long value() const { return number_->load(); }

  private:
    std::atomic<long>* number_;
};

class PinCrash : public testing::Test {
  protected:
    void SetUp() override
    {
        system_calls = {};
        // In memory where there is some: what a kill leaves is the same, and it is a tenth of the
        // time.
        if (::access("/dev/shm", W_OK) == 0)
            ::setenv("TMPDIR", "/dev/shm", 1);
        folder = std::make_unique<ScratchFolder>();
        std::string pin = "271828";
        ASSERT_TRUE(DeskLock(folder->path(), cheap).set_first(pin).ok());
    }
    void TearDown() override { system_calls = {}; }

    std::unique_ptr<ScratchFolder> folder;

    Result<PinAnswer> guess(const std::string& pin, const BootTime& now) const
    {
        std::string given = pin;
        return DeskLock(folder->path(), cheap).check(given, now);
    }
    long on_disk() const
    {
        const Result<Json> json = parse_json(bytes_of(*folder / "desk.lock"));
        EXPECT_TRUE(json.ok()) << "desk.lock is not whole";
        return json ? (*json)["attempts"].get<long>() : -1;
    }
    /// Writes the lock with another count.
    void put_attempts(long attempts) const
    {
        Json json = *parse_json(bytes_of(*folder / "desk.lock"));
        json["attempts"] = attempts;
        std::ofstream(*folder / "desk.lock", std::ios::binary) << json.dump();
    }
};

/// A clock that is past every delay each time it is asked.
struct Patient {
    Span now = hours(1);
    BootTime next() { return {"boot-1", now += hours(2)}; }
};

/// Somewhere in the child's first moments, or after it has begun up to three hashes more, however
/// busy the machine is.
void wait_a_little(std::uint32_t chance, const Shared& begun)
{
    if (const long more = chance % 4; more > 0) {
        const long enough = begun.value() + more;
        const auto end = Clock::now() + std::chrono::seconds(10);
        while (begun.value() < enough && Clock::now() < end)
            std::this_thread::sleep_for(std::chrono::microseconds(20));
    }
    std::this_thread::sleep_for(std::chrono::microseconds(chance / 4 % 800));
}

TEST_F(PinCrash, KillGainsNoGuess)
{
    const int kills = test::times(2000);
    const auto seed = static_cast<std::uint32_t>(Clock::now().time_since_epoch().count());
    std::mt19937 random(seed);
    const auto begin = Clock::now();
    Shared begun;
    Patient clock;
    long first_hash_never = 0;
    for (int n = 1; n <= kills; ++n) {
        const long before = begun.value();
        const pid_t child = ::fork();
        if (child == 0) {
            system_calls.begun = begun.get();
            for (;;) {
                const Result<PinAnswer> answer = guess("314159", clock.next());
                if (!answer || answer->state != PinState::wrong)
                    ::_exit(3);
            }
        }
        ASSERT_GT(child, 0);
        wait_a_little(static_cast<std::uint32_t>(random()), begun);
        ::kill(child, SIGKILL);
        int status = 0;
        ::waitpid(child, &status, 0);
        ASSERT_TRUE(WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL)
            << "kill " << n << ": the child ended by itself with " << WEXITSTATUS(status);
        const long hashes = begun.value(), counted = on_disk();
        first_hash_never += hashes == before;
        // At most one guess per kill was counted and never looked at.
        ASSERT_GE(counted, hashes)
            << "kill " << n << ", seed " << seed << ": a guess was not counted";
        ASSERT_LE(counted, hashes + n) << "kill " << n << ", seed " << seed;
        clock.now += hours(100000); // past whatever the child's clock said
    }
    const long left = std::distance(fs::directory_iterator(folder->path()), {});
    EXPECT_LE(left, 2) << "what kills left is cleared away by the next write";
    EXPECT_GT(begun.value(), kills) << "kills came too early to mean anything";
    std::printf("PIN: %d kills (%ld before a hash began), seed %u: %ld guesses hashed, %ld counted "
                "on disk, 0 "
                "uncounted; %.0f s\n",
                kills, first_hash_never, seed, begun.value(), on_disk(),
                std::chrono::duration<double>(Clock::now() - begin).count());
}

TEST_F(PinCrash, KillLeavesTheCountOrNone_WhenGuessesAreRightAndWrong)
{
    // With right ones among them the count goes back: what must hold is that the wait is never less
    // than the wrong guesses since the last right one ask for.
    const int kills = test::times(1000);
    std::mt19937 random(8);
    Shared begun, last_right;
    Patient clock;
    for (int n = 1; n <= kills; ++n) {
        const pid_t child = ::fork();
        if (child == 0) {
            system_calls.begun = begun.get();
            std::mt19937 own(static_cast<std::uint32_t>(n));
            for (;;) {
                if (own() % 4 != 0) {
                    (void)guess("314159", clock.next());
                    continue;
                }
                // The count may be 0 from before this hash's end on.
                std::string pin = "271828";
                last_right.get()->store(begun.value() + 1);
                if (DeskLock(folder->path(), cheap).check(pin, clock.next())->state !=
                    PinState::open)
                    ::_exit(3);
            }
        }
        ASSERT_GT(child, 0);
        wait_a_little(static_cast<std::uint32_t>(random()), begun);
        ::kill(child, SIGKILL);
        int status = 0;
        ::waitpid(child, &status, 0);
        ASSERT_TRUE(WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL) << "kill " << n;
        ASSERT_GE(on_disk(), begun.value() - last_right.value()) << "kill " << n;
        clock.now += hours(100000);
    }
    std::printf(
        "PIN: %d kills among right and wrong guesses, %ld hashed: the count is never short\n",
        kills, begun.value());
}

TEST_F(PinCrash, IsCountedAndSyncedBeforeTheHashBegins)
{
    system_calls.on = true;
    ASSERT_EQ(guess("314159", {"boot-1", hours(1)})->state, PinState::wrong);
    system_calls.on = false;
    EXPECT_EQ(system_calls.order,
              (std::vector<std::string>{"create", "write", "fsync", "rename", "fsync", "hash"}))
        << "the file, its name, then the hash: what a power cut leaves has the count";
    system_calls.order.clear();
    system_calls.on = true;
    ASSERT_EQ(guess("271828", {"boot-1", hours(1)})->state, PinState::open);
    system_calls.on = false;
    ASSERT_GT(system_calls.order.size(), 6u);
    EXPECT_EQ(system_calls.order[5], "hash");
    EXPECT_EQ(on_disk(), 0);
}

TEST_F(PinCrash, IsNotHashed_WhicheverCallFailsBeforeIt)
{
    long faults = 0, unhashed = 0, opened = 0;
    for (const int error : {EIO, ENOSPC, EROFS, EACCES}) {
        for (const bool sticking : {false, true}) {
            for (long nth = 1;; ++nth) {
                SCOPED_TRACE("call " + std::to_string(nth) + (sticking ? " and after" : ""));
                put_attempts(1);
                Shared begun;
                system_calls = {};
                system_calls.begun = begun.get();
                system_calls.nth = nth;
                system_calls.error = error;
                system_calls.sticking = sticking;
                system_calls.on = true;
                const Result<PinAnswer> answer = guess("271828", {"boot-1", hours(1)});
                system_calls.on = false;
                if (!system_calls.failed)
                    break;
                ++faults;
                // Five calls count the guess; those after the hash set the count back.
                if (nth <= 5) {
                    ASSERT_FALSE(answer.ok()) << "even the right one";
                    ASSERT_EQ(begun.value(), 0) << "it was looked at although it was not counted";
                    const char* code = error == EIO      ? "io"
                                       : error == ENOSPC ? "disk_full"
                                                         : "read_only";
                    ASSERT_EQ(answer.problems()[0].code, code);
                    ASSERT_EQ(answer.problems()[0].text.find("271828"), std::string::npos);
                    ++unhashed;
                } else {
                    ASSERT_TRUE(answer.ok());
                    ASSERT_EQ(answer->state, PinState::open);
                    ASSERT_EQ(answer->attempts, 2) << "it says that the count stands";
                    ++opened;
                }
                ASSERT_GE(on_disk(), 0) << "whole, old or new";
                ASSERT_LT(nth, 100);
            }
        }
    }
    EXPECT_EQ(unhashed, 40);
    EXPECT_EQ(opened, 40);
    std::printf("PIN: %ld failing calls: %ld before the hash (never begun), %ld after it\n", faults,
                unhashed, opened);
}

TEST_F(PinCrash, OldOneStays_WhicheverCallFailsWhileItIsChanged)
{
    const auto change = [this](const char* from, const char* to) {
        std::string old_pin = from, new_pin = to;
        return DeskLock(folder->path(), cheap).change(old_pin, new_pin, {"boot-1", hours(1)});
    };
    long told = 0;
    for (long nth = 1;; ++nth) {
        system_calls = {};
        system_calls.nth = nth;
        system_calls.on = true;
        const Result<PinAnswer> answer = change("271828", "161803");
        system_calls.on = false;
        if (!system_calls.failed)
            break;
        SCOPED_TRACE(nth);
        ASSERT_FALSE(answer.ok());
        ++told;
        put_attempts(0);
        // The very last call is the sync of a name that stands already: either may count then.
        const bool old_counts = guess("271828", {"boot-1", hours(1)})->state == PinState::open;
        if (!old_counts) {
            ASSERT_EQ(nth, 10);
            ASSERT_EQ(change("161803", "271828")->state, PinState::open);
        }
        put_attempts(0);
    }
    EXPECT_EQ(told, 10);
    EXPECT_EQ(guess("161803", {"boot-1", hours(1)})->state, PinState::open);
}

TEST_F(PinCrash, IsToldAsThat_WhenThereIsNoMemoryForTheHash)
{
    system_calls.no_memory_from = 1;
    const Result<PinAnswer> answer = guess("271828", {"boot-1", hours(1)});
    ASSERT_FALSE(answer.ok()) << "not: a wrong PIN";
    EXPECT_EQ(answer.problems()[0].code, "no_memory");
    EXPECT_EQ(on_disk(), 1) << "counted all the same";
    std::string pin = "271828", next = "161803";
    ScratchFolder other;
    EXPECT_EQ(DeskLock(other.path(), cheap).set_first(pin).problems()[0].code, "no_memory");
    EXPECT_TRUE(fs::is_empty(other.path()));
    pin = "271828";
    EXPECT_FALSE(DeskLock(folder->path(), cheap).change(pin, next, {"boot-1", hours(1)}).ok());
}

TEST_F(PinCrash, OldOneStays_WhenThereIsNoMemoryForTheNewOne)
{
    std::string pin = "271828", next = "161803";
    system_calls.hashes = 0;
    system_calls.no_memory_from = 2; // the old one is looked at
    const Result<PinAnswer> answer =
        DeskLock(folder->path(), cheap).change(pin, next, {"boot-1", hours(1)});
    ASSERT_FALSE(answer.ok());
    EXPECT_EQ(answer.problems()[0].code, "no_memory");
    system_calls.no_memory_from = 0;
    EXPECT_EQ(guess("271828", {"boot-1", hours(1)})->state, PinState::open);
}

TEST_F(PinCrash, IsAProblemNotBusy_WhenTheSystemHasNoLocks)
{
    system_calls.lock_error = ENOLCK;
    EXPECT_EQ(guess("271828", {"boot-1", hours(1)}).problems()[0].code, "io");
    system_calls.lock_error = 0;
    EXPECT_EQ(guess("271828", {"boot-1", hours(1)})->state, PinState::open);
}

TEST_F(PinCrash, NewDelayMustBeOnDisk_WhenTheMachineWasStartedAgain)
{
    for (int n = 0; n < 3; ++n)
        ASSERT_EQ(guess("314159", {"boot-1", hours(1)})->state, PinState::wrong);
    system_calls.on = true;
    system_calls.nth = 1;
    system_calls.sticking = true;
    system_calls.error = ENOSPC;
    const BootTime after{"boot-2", hours(9)};
    EXPECT_EQ(DeskLock(folder->path(), cheap).look(after).problems()[0].code, "disk_full");
    EXPECT_EQ(guess("271828", after).problems()[0].code, "disk_full");
    system_calls.on = false;
    EXPECT_EQ(guess("271828", after)->wait, seconds(30));
}

TEST_F(PinCrash, RestartsAndJumpsGainNoGuess)
{
    // A machine whose true running time we know, and somebody who guesses, looks, restarts and
    // jumps as luck will have it. The wall clock is no argument of the lock: nothing to jump there.
    const int events = test::times(20000);
    std::mt19937_64 random(2026);
    Shared begun;
    system_calls.begun = begun.get();
    int boot = 1;
    Span since_boot = seconds(20);
    Span ran = Span(0),
         waited_from = Span(0); // running time in all; at the last guess or first look of a boot
    bool looked = true;
    long wrong = 0, guesses = 0, hashed = 0, restarts = 0, back = 0;
    for (int i = 0; i < events; ++i) {
        switch (random() % 8) {
        case 0: // off and on again: the time without power is nobody's
            ++boot;
            ++restarts;
            since_boot = Span(static_cast<Span::rep>(random() % 90000000));
            looked = false;
            break;
        case 1: // what should not be: the clock since boot goes back
            since_boot -=
                std::min(since_boot, Span(static_cast<Span::rep>(random() % 3000000000u)));
            ++back;
            break;
        case 2:
        case 3: {
            const Span passed(
                static_cast<Span::rep>(random() % (std::uint64_t{1} << (random() % 36))));
            since_boot += passed;
            ran += passed;
            break;
        }
        default: {
            const BootTime now{"boot-" + std::to_string(boot), since_boot};
            if (!looked)
                waited_from = ran;
            looked = true;
            if (random() % 4 == 0) {
                ASSERT_TRUE(DeskLock(folder->path(), cheap).look(now).ok());
                break;
            }
            ++guesses;
            const long before = begun.value();
            const Result<PinAnswer> answer = guess("314159", now);
            ASSERT_TRUE(answer.ok());
            if (begun.value() == before) {
                ASSERT_EQ(answer->state, PinState::wait);
                break;
            }
            ++hashed;
            ASSERT_EQ(begun.value(), before + 1);
            ASSERT_GE(ran - waited_from, pin_delay(static_cast<int>(wrong)))
                << "event " << i << ": guess " << wrong + 1 << " came too early";
            ++wrong;
            waited_from = ran;
            ASSERT_EQ(on_disk(), wrong);
            if (wrong == 12) { // begin again, so that every length of delay is met often
                put_attempts(0);
                wrong = 0;
            }
        }
        }
    }
    EXPECT_GT(hashed, events / 200);
    std::printf("PIN: %d events, %ld restarts, %ld times back, %ld guesses of which %ld were "
                "looked at: none before "
                "its time\n",
                events, restarts, back, guesses, hashed);
}

TEST_F(PinCrash, TwoCopiesCountEachGuess)
{
    const long each = test::times(400);
    Shared begun;
    std::vector<pid_t> children;
    for (int copy = 0; copy < 4; ++copy) {
        const pid_t child = ::fork();
        if (child == 0) {
            system_calls.begun = begun.get();
            Patient clock;
            clock.now = hours(10 + copy);
            for (long done = 0; done < each;) {
                const Result<PinAnswer> answer = guess("314159", clock.next());
                // Another copy's clock, as this test has it, may be ahead.
                if (answer && answer->state == PinState::wrong)
                    ++done;
                else if (answer ? answer->state != PinState::wait
                                : answer.problems()[0].code != "busy")
                    ::_exit(3);
            }
            ::_exit(0);
        }
        children.push_back(child);
    }
    for (const pid_t child : children) {
        int status = -1;
        ::waitpid(child, &status, 0);
        EXPECT_EQ(status, 0);
    }
    EXPECT_EQ(begun.value(), 4 * each);
    EXPECT_EQ(on_disk(), 4 * each);
    std::printf("PIN: four copies guess at once: %ld hashed, %ld counted\n", begun.value(),
                on_disk());
}

} // namespace
} // namespace evenfall
