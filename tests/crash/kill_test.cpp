// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// SIGKILL at random moments of a process that journals. The system's cache outlives the process, so
// this is not about syncs (power_test.cpp is) but about everything before them.
#include "crash/journal_child.h"
#include "crash/share.h"

#include "core/kit/kits.h"
#include "journal/journal.h"

#include <chrono>
#include <csignal>
#include <cstdio>
#include <gtest/gtest.h>
#include <random>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace evenfall {
namespace {

using test::ScratchFolder;
using Clock = std::chrono::steady_clock;
using std::chrono::microseconds;

/// What one child said before it was killed.
struct Life {
    std::uint32_t acknowledged = 0;
    bool killed = false;
    int exit = -1;
};

/// Starts a child and kills it `wait` after it began, or after its first word.
Life run_child(const std::filesystem::path& file, int number, microseconds wait, bool after_first_word)
{
    int ends[2];
    if (::pipe(ends) != 0)
        throw std::runtime_error("no pipe");
    // No program is loaded, which would take longer than all the rest. No journal is open here: locks
    // that SQLite keeps in memory would be copied.
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        test::journal_until_killed(file, number, ends[1]);
    }
    ::close(ends[1]);
    if (child < 0)
        throw std::runtime_error("no child");

    Life result;
    std::uint32_t word = 0;
    if (after_first_word && ::read(ends[0], &word, sizeof word) == sizeof word)
        result.acknowledged = word;
    std::this_thread::sleep_for(wait);
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    result.killed = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
    result.exit = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    while (::read(ends[0], &word, sizeof word) == sizeof word)
        result.acknowledged = word;
    ::close(ends[0]);
    return result;
}

/// Entries must be, run by run in order, 1, 2, ... up to what was acknowledged, or one more: the one
/// that the kill cut short may be there or not. Counts what is lost and what is there twice or wrong.
struct Count {
    long lost = 0, wrong = 0;
};

Count compare(const std::vector<Entry>& entries, const std::vector<std::pair<int, std::uint32_t>>& runs)
{
    Count count;
    std::size_t at = 0;
    for (const auto& [run, acknowledged] : runs) {
        std::uint32_t number = 0;
        while (at < entries.size() &&
               entries[at].subject == std::to_string(run) + "-" + std::to_string(number + 1)) {
            ++number;
            ++at;
        }
        if (number < acknowledged)
            count.lost += acknowledged - number;
        if (number > acknowledged + 1)
            count.wrong += number - acknowledged - 1;
    }
    count.wrong += static_cast<long>(entries.size() - at);
    return count;
}

/// Where journals lie, and how long a child takes there to its first word: kills come at up to half as long again.
struct Place {
    std::string folder;
    microseconds start_up;

    std::unique_ptr<ScratchFolder> scratch() const
    {
        ::setenv("TMPDIR", folder.c_str(), 1);
        return std::make_unique<ScratchFolder>();
    }
};

Place place(const std::string& folder)
{
    Place made{folder, microseconds(0)};
    const std::unique_ptr<ScratchFolder> scratch = made.scratch();
    const auto begin = Clock::now();
    for (int i = 0; i < 5; ++i)
        run_child(*scratch / "journal.db", i, microseconds(0), true);
    made.start_up = std::chrono::duration_cast<microseconds>((Clock::now() - begin) / 5);
    return made;
}

TEST(Kill, LosesAndDoublesNoAcknowledgedEntry)
{
    const int kills = test::times(10000);
    constexpr int batch = 50; // kills that one growing journal goes through
    const auto seed = static_cast<std::uint32_t>(Clock::now().time_since_epoch().count());
    std::mt19937 random(seed);

    const auto begin = Clock::now();
    // Most batches in memory, where a kill costs a tenth: the real disk adds only the time of syncs.
    const Place disk = place(std::getenv("TMPDIR") ? std::getenv("TMPDIR") : "/tmp");
    const Place memory = ::access("/dev/shm", W_OK) == 0 ? place("/dev/shm") : disk;
    const Place* here = &memory;

    long acknowledged = 0, before_first = 0, opened_after = 0, in_flight_kept = 0;
    Count total;
    std::vector<std::pair<int, std::uint32_t>> runs;
    auto folder = here->scratch();
    std::filesystem::path file = *folder / "journal.db";
    for (int n = 1; n <= kills; ++n) {
        const bool after_first_word = random() % 2 == 0;
        const auto longest = after_first_word ? here->start_up.count() : here->start_up.count() * 3 / 2;
        const microseconds wait(static_cast<long>(random() % static_cast<unsigned long>(longest + 1)));
        const Life run = run_child(file, n, wait, after_first_word);
        ASSERT_TRUE(run.killed) << "kill " << n << ", seed " << seed << ": the child ended by itself with "
                                << run.exit << " (3 cannot open, 4 damaged, 5 append failed)";
        runs.emplace_back(n, run.acknowledged);
        acknowledged += run.acknowledged;
        before_first += run.acknowledged == 0;
        // Otherwise the next child is the first to meet what this one left.
        if (random() % 2 == 0 || n % batch == 0 || n == kills) {
            const Result<Opened> opened = open_journal(file);
            ASSERT_TRUE(opened.ok()) << "kill " << n << ": " << test::all_told(opened.problems());
            ASSERT_TRUE(opened->set_aside.empty()) << "kill " << n << ": found damaged";
            const std::vector<Entry>& entries = opened->journal->entries();
            ASSERT_EQ(intact_length(entries), entries.size());
            const Count count = compare(entries, runs);
            total.lost += count.lost;
            total.wrong += count.wrong;
            ASSERT_EQ(count.lost, 0) << "kill " << n << ", seed " << seed;
            ASSERT_EQ(count.wrong, 0) << "kill " << n << ", seed " << seed;
            ++opened_after;
            if (n % batch == 0 || n == kills) {
                long said = 0;
                for (const auto& one : runs)
                    said += one.second;
                in_flight_kept += static_cast<long>(entries.size()) - said;
                runs.clear();
                here = n / batch % 50 == 1 ? &disk : &memory;
                folder = here->scratch();
                file = *folder / "journal.db";
            }
        }
    }
    EXPECT_GT(acknowledged, kills) << "kills came too early to mean anything";
    EXPECT_GT(opened_after, kills / 3);
    const auto seconds = std::chrono::duration<double>(Clock::now() - begin).count();
    std::printf("%d kills (%ld before the first append had returned), seed %u: %ld entries acknowledged, %ld "
                "lost, %ld doubled or wrong, %ld unacknowledged ones kept; opened and compared %ld times "
                "here, else by the next child; %.0f s\n",
                kills, before_first, seed, acknowledged, total.lost, total.wrong, in_flight_kept, opened_after, seconds);
}

} // namespace
} // namespace evenfall
