// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// What the front desk's lock answers. Kills, failing disks and clocks are in
// tests/crash/pin_test.cpp.
#include "base/pin.h"

#include "base/json.h"
#include "core/kit/kits.h"

#include <algorithm>
#include <fcntl.h>
#include <functional>
#include <sodium.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace evenfall {
namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;
using test::bytes_of;
using test::ScratchFolder;

constexpr PinCost cheap{8, 1}; // the least that libsodium takes

BootTime at(Span since_boot, const std::string& boot = "boot-1")
{
    return {boot, since_boot};
}

class Pin : public testing::Test {
  protected:
    ScratchFolder folder;
    const std::filesystem::path file = folder / "desk.lock";
    DeskLock lock{folder.path(), cheap};

    Status first(std::string pin = "271828") { return lock.set_first(pin); }
    PinAnswer check(std::string pin, const BootTime& now)
    {
        const Result<PinAnswer> answer = lock.check(pin, now);
        EXPECT_TRUE(answer.ok()) << test::all_told(answer.problems());
        return answer ? *answer : PinAnswer{};
    }
    PinAnswer look(const BootTime& now)
    {
        const Result<PinAnswer> answer = lock.look(now);
        EXPECT_TRUE(answer.ok()) << test::all_told(answer.problems());
        return answer ? *answer : PinAnswer{};
    }
    Json content() const { return Json::parse(bytes_of(file)); }
    void put(const std::string& bytes) const { std::ofstream(file, std::ios::binary) << bytes; }

    /// What a call meets in a process that runs as a user who is not the superuser.
    int as_nobody(const std::function<int()>& run) const
    {
        ::chmod(folder.path().c_str(), 0755);
        const pid_t child = ::fork();
        if (child == 0)
            ::_exit(::geteuid() == 0 && ::setuid(65534) != 0 ? 99 : run());
        int status = -1;
        ::waitpid(child, &status, 0);
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
};

std::string code_of(const Problems& problems)
{
    return problems.size() == 1 ? problems[0].code : "?";
}

TEST_F(Pin, IsNotThereAtFirst)
{
    EXPECT_EQ(look(at(hours(1))).state, PinState::none);
    EXPECT_EQ(check("271828", at(hours(1))).state, PinState::none);
    EXPECT_TRUE(std::filesystem::is_empty(folder.path())) << "asking makes no file";
}

TEST_F(Pin, Opens_WhenItIsTheOneThatWasSet)
{
    ASSERT_TRUE(first().ok());
    EXPECT_EQ(look(at(hours(1))).state, PinState::ready);
    const PinAnswer wrong = check("271829", at(hours(1)));
    EXPECT_EQ(wrong.state, PinState::wrong);
    EXPECT_EQ(wrong.attempts, 1);
    EXPECT_EQ(wrong.wait, Span(0));
    const PinAnswer right = check("271828", at(hours(1)));
    EXPECT_EQ(right.state, PinState::open);
    EXPECT_EQ(right.attempts, 0);
    EXPECT_EQ(content()["attempts"], 0);
}

TEST_F(Pin, IsWholeInEveryDigit)
{
    const std::string longest(64, '7');
    ASSERT_TRUE(first(longest).ok());
    std::string other = longest;
    other.back() = '8';
    EXPECT_EQ(check(other, at(hours(1))).state, PinState::wrong);
    EXPECT_EQ(check(longest.substr(1), at(hours(1))).state, PinState::wrong);
    EXPECT_EQ(check(longest, at(hours(1))).state, PinState::open);
}

TEST_F(Pin, IsRefusedUncounted_WhenItIsNotSixToSixtyFourDigits)
{
    for (const std::string& pin :
         {std::string(), std::string("12345"), std::string(65, '1'), std::string("12345a"),
          std::string("12345 "), std::string("-12345"), std::string("12345\0", 6),
          std::string("١٢٣٤٥٦"), std::string("12345/"), std::string("12345:")}) {
        std::string given = pin;
        const Status set = lock.set_first(given);
        EXPECT_EQ(code_of(set.problems()), "pin_form") << pin;
        EXPECT_TRUE(given.empty());
    }
    ASSERT_TRUE(first().ok());
    const std::string before = bytes_of(file);
    std::string pin = "27182a";
    const Result<PinAnswer> checked = lock.check(pin, at(hours(1)));
    EXPECT_EQ(code_of(checked.problems()), "pin_form");
    EXPECT_EQ(checked.problems()[0].text.find("27182"), std::string::npos) << "no PIN in any text";
    std::string good = "271828", bad = "1";
    EXPECT_EQ(code_of(lock.change(good, bad, at(hours(1))).problems()), "pin_form");
    good = "271828";
    bad = "1";
    EXPECT_EQ(code_of(lock.change(bad, good, at(hours(1))).problems()), "pin_form");
    EXPECT_EQ(bytes_of(file), before);
}

TEST_F(Pin, IsWipedBeforeTheCallReturns_WhateverComesOfIt)
{
    const auto wiped = [](const std::string& pin, const char* where, std::size_t size) {
        return pin.empty() && std::all_of(where, where + size, [](char c) { return c == '\0'; });
    };
    const auto after = [&](std::string pin, const std::function<void(std::string&)>& call) {
        const char* where = pin.data();
        const std::size_t size = pin.size();
        call(pin);
        return wiped(pin, where, size);
    };
    const std::string pin(40, '3'), other(40, '4');
    EXPECT_TRUE(after("12x456", [&](std::string& p) { EXPECT_FALSE(lock.set_first(p).ok()); }));
    EXPECT_TRUE(after(pin, [&](std::string& p) { EXPECT_TRUE(lock.set_first(p).ok()); }));
    EXPECT_TRUE(after(pin, [&](std::string& p) { EXPECT_FALSE(lock.set_first(p).ok()); }));
    EXPECT_TRUE(after(pin, [&](std::string& p) {
        EXPECT_EQ(lock.check(p, at(hours(1)))->state, PinState::open);
    }));
    EXPECT_TRUE(after(other, [&](std::string& p) {
        EXPECT_EQ(lock.check(p, at(hours(1)))->state, PinState::wrong);
    }));
    EXPECT_TRUE(after(pin, [&](std::string& p) {
        std::string next = "161803";
        EXPECT_EQ(lock.change(p, next, at(hours(1)))->state, PinState::open);
        EXPECT_TRUE(next.empty());
    }));
    DeskLock nowhere(folder / "nowhere", cheap);
    EXPECT_TRUE(
        after(pin, [&](std::string& p) { EXPECT_FALSE(nowhere.check(p, at(hours(1))).ok()); }));
}

TEST_F(Pin, IsSetFirstOnlyOnce)
{
    ASSERT_TRUE(first().ok());
    EXPECT_EQ(code_of(first("314159").problems()), "pin_set");
    EXPECT_EQ(check("271828", at(hours(1))).state, PinState::open);
    put("not a lock");
    EXPECT_EQ(code_of(first("314159").problems()), "pin_set")
        << "a damaged one is not written over";
}

TEST_F(Pin, LiesInAFileForItsOwnerOnly_WithoutThePin)
{
    ASSERT_TRUE(first("27182818284").ok());
    struct stat status {};
    ASSERT_EQ(::stat(file.c_str(), &status), 0);
    EXPECT_EQ(status.st_mode & 0777u, 0600u);
    EXPECT_EQ(bytes_of(file).find("2718281"), std::string::npos);
    const std::string one = bytes_of(file);
    ASSERT_TRUE(lock.forget().ok());
    ASSERT_TRUE(first("27182818284").ok());
    EXPECT_NE(bytes_of(file), one) << "another salt each time";
}

TEST_F(Pin, CostsWhatIsPromised_AndIsHashedByTheStandard)
{
    // The real cost: RFC 9106, section 4, second recommended option (64 MiB, 3 passes; one lane
    // here, which is what libsodium has).
    DeskLock real(folder.path());
    std::string pin = "271828";
    ASSERT_TRUE(real.set_first(pin).ok());
    const Json argon = content()["argon2id"];
    EXPECT_EQ(argon["memory_kib"], 65536);
    EXPECT_EQ(argon["passes"], 3);
    // The same in the form that the reference implementation writes, asked of libsodium's own
    // verifier.
    const auto base64 = [](const std::string& hex) {
        std::string bytes(hex.size() / 2, '\0'), text(100, '\0');
        EXPECT_EQ(sodium_hex2bin(reinterpret_cast<unsigned char*>(bytes.data()), bytes.size(),
                                 hex.data(), hex.size(), nullptr, nullptr, nullptr),
                  0);
        sodium_bin2base64(text.data(), text.size(),
                          reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size(),
                          sodium_base64_VARIANT_ORIGINAL_NO_PADDING);
        return std::string(text.c_str());
    };
    std::string form =
        "$argon2id$v=19$m=65536,t=3,p=1$" + base64(argon["salt"]) + "$" + base64(argon["hash"]);
    form.resize(crypto_pwhash_STRBYTES);
    EXPECT_EQ(crypto_pwhash_str_verify(form.c_str(), "271828", 6), 0);
    pin = "271829";
    EXPECT_EQ(real.check(pin, at(hours(1)))->state, PinState::wrong);
    pin = "271828";
    EXPECT_EQ(real.check(pin, at(hours(1)))->state, PinState::open);
}

TEST_F(Pin, IsDamaged_WhenTheFileAsksForLessWorkOrFarTooMuch)
{
    ASSERT_TRUE(first().ok());
    for (const auto& [key, value] : {std::pair{"memory_kib", 7L},
                                     {"passes", 0L},
                                     {"memory_kib", (1L << 20) + 1},
                                     {"passes", 65L}}) {
        Json changed = content();
        changed["argon2id"][key] = value;
        const std::string sound = bytes_of(file);
        put(changed.dump());
        const PinAnswer answer = check("271828", at(hours(1)));
        EXPECT_EQ(answer.state, PinState::damaged) << key << value;
        ASSERT_EQ(answer.found.size(), 1u);
        EXPECT_EQ(answer.found[0].at, std::string("/argon2id/") + key);
        put(sound);
    }
    for (const char* key : {"salt", "hash"}) {
        const std::string sound = bytes_of(file), right = content()["argon2id"][key];
        for (const std::string& value :
             {right.substr(2), right + "00", right.substr(1) + "g", right.substr(1) + " "}) {
            Json changed = content();
            changed["argon2id"][key] = value;
            put(changed.dump());
            const PinAnswer answer = check("271828", at(hours(1)));
            ASSERT_EQ(answer.found.size(), 1u) << key;
            EXPECT_EQ(answer.found[0].code, "bad_hex");
            EXPECT_EQ(answer.found[0].text.find(value), std::string::npos);
            put(sound);
        }
    }
    // A sound file of a cheaper cost is refused by the real lock.
    EXPECT_EQ(DeskLock(folder.path()).look(at(hours(1)))->state, PinState::damaged);
}

TEST_F(Pin, IsDamagedNeverOpen_WhereverTheFileIsCutOrChanged)
{
    ASSERT_TRUE(first().ok());
    const std::string sound = bytes_of(file);
    for (std::size_t size = 0; size + 1 < sound.size(); ++size) {
        put(sound.substr(0, size));
        for (const char* pin : {"271828", "314159"}) {
            const PinAnswer answer = check(pin, at(hours(1)));
            ASSERT_EQ(answer.state, PinState::damaged) << size;
            ASSERT_FALSE(answer.found.empty());
        }
        ASSERT_EQ(look(at(hours(1))).state, PinState::damaged) << size;
    }
    long damaged = 0, wrong = 0;
    for (std::size_t i = 0; i < sound.size(); ++i) {
        for (const int flip : {0x01, 0x80, 0xff}) {
            std::string bytes = sound;
            bytes[i] = static_cast<char>(bytes[i] ^ flip);
            put(bytes);
            const PinState state = check("314159", at(hours(1))).state;
            ASSERT_TRUE(state == PinState::damaged || state == PinState::wrong ||
                        state == PinState::wait)
                << i;
            damaged += state == PinState::damaged;
            wrong += state == PinState::wrong;
        }
    }
    std::printf("desk.lock: %zu cuts, %zu bytes changed three ways (%ld damaged, %ld a wrong PIN): "
                "never open\n",
                sound.size() - 1, sound.size(), damaged, wrong);
}

TEST_F(Pin, IsDamaged_WhenSomethingElseStandsThere)
{
    std::filesystem::create_directory(file);
    EXPECT_EQ(look(at(hours(1))).state, PinState::damaged);
    EXPECT_FALSE(lock.forget().ok()) << "a folder is not ours to remove";
    std::filesystem::remove(file);
    std::filesystem::create_symlink(folder / "elsewhere", file);
    EXPECT_EQ(look(at(hours(1))).state, PinState::damaged) << "a link to nothing is not no PIN";
    std::filesystem::remove(file);
    ASSERT_EQ(::mkfifo(file.c_str(), 0600), 0);
    EXPECT_EQ(look(at(hours(1))).state, PinState::damaged);
    ASSERT_TRUE(lock.forget().ok());
    EXPECT_EQ(look(at(hours(1))).state, PinState::none);
}

TEST_F(Pin, IsAProblemNeverNone_WhenTheFolderOrTheFileCannotBeRead)
{
    DeskLock nowhere(folder / "nowhere", cheap);
    EXPECT_EQ(code_of(nowhere.look(at(hours(1))).problems()), "no_place");
    EXPECT_EQ(code_of(nowhere.forget().problems()), "no_place");
    std::string pin = "271828";
    EXPECT_EQ(code_of(nowhere.set_first(pin).problems()), "no_place");
    ASSERT_TRUE(first().ok());
    // The superuser may read anything: another user tries.
    EXPECT_EQ(as_nobody([this] {
                  ::chmod(file.c_str(), 0);
                  return code_of(lock.look(at(hours(1))).problems()) == "read_only" ? 0 : 1;
              }),
              0);
    ::chmod(file.c_str(), 0600);
    ::chmod(folder.path().c_str(), 0700);
    EXPECT_EQ(look(at(hours(1))).state, PinState::ready);
    // A folder that can be opened, in which nothing can be looked at.
    if (::geteuid() == 0) {
        ASSERT_EQ(::chown(folder.path().c_str(), 65534, 65534), 0);
    }
    EXPECT_EQ(as_nobody([this] {
                  ::chmod(folder.path().c_str(), 0400);
                  std::string given = "271828";
                  return code_of(lock.look(at(hours(1))).problems()) == "read_only" &&
                                 code_of(lock.set_first(given).problems()) == "read_only"
                             ? 0
                             : 1;
              }),
              0);
    ::chmod(folder.path().c_str(), 0700);
}

TEST_F(Pin, IsNotLookedAt_WhenTheGuessCannotBeCounted)
{
    ASSERT_TRUE(first().ok());
    const std::string before = bytes_of(file);
    if (::geteuid() == 0) {
        ASSERT_EQ(::chown(file.c_str(), 65534, 65534), 0);
    }
    EXPECT_EQ(as_nobody([this] {
                  if (::geteuid() != 65534)
                      ::chmod(folder.path().c_str(),
                              0555); // otherwise it is another user's already
                  for (const char* pin : {"314159", "271828"}) {
                      std::string given = pin;
                      const Result<PinAnswer> answer = lock.check(given, at(hours(1)));
                      if (answer || code_of(answer.problems()) != "read_only")
                          return 1;
                  }
                  return lock.look(at(hours(1)))->state == PinState::ready ? 0 : 2;
              }),
              0);
    ::chmod(folder.path().c_str(), 0700);
    EXPECT_EQ(bytes_of(file), before);
}

TEST_F(Pin, IsBusy_WhileAnotherHasTheLock)
{
    ASSERT_TRUE(first().ok());
    const int other = ::open(folder.path().c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    ASSERT_EQ(::flock(other, LOCK_EX), 0);
    std::string pin = "271828", next = "314159";
    EXPECT_EQ(code_of(lock.check(pin, at(hours(1))).problems()), "busy");
    EXPECT_EQ(code_of(lock.look(at(hours(1))).problems()), "busy");
    EXPECT_EQ(code_of(lock.forget().problems()), "busy");
    pin = "271828";
    EXPECT_EQ(code_of(lock.change(pin, next, at(hours(1))).problems()), "busy");
    pin = "271828";
    EXPECT_EQ(code_of(lock.set_first(pin).problems()), "busy");
    ::close(other);
    EXPECT_EQ(check("271828", at(hours(1))).state, PinState::open);
}

// The wait.

TEST_F(Pin, DelayGrowsToAnHour)
{
    const std::vector<Span> expected{Span(0),    Span(0),    Span(0),    seconds(30), minutes(1),
                                     minutes(2), minutes(4), minutes(8), minutes(15), minutes(30),
                                     hours(1),   hours(1),   hours(1)};
    for (std::size_t n = 0; n < expected.size(); ++n)
        EXPECT_EQ(pin_delay(static_cast<int>(n)), expected[n]) << n;
    EXPECT_EQ(pin_delay(1000000), hours(1));
    EXPECT_EQ(pin_delay(-1), Span(0));
}

TEST_F(Pin, IsNotLookedAtBeforeTheDelayIsOver)
{
    ASSERT_TRUE(first().ok());
    Span now = hours(1);
    for (int n = 1; n <= 14; ++n) {
        const PinAnswer wrong = check("314159", at(now));
        ASSERT_EQ(wrong.state, PinState::wrong) << n;
        EXPECT_EQ(wrong.attempts, n);
        EXPECT_EQ(wrong.wait, pin_delay(n));
        const std::string before = bytes_of(file);
        if (wrong.wait > Span(0)) {
            for (const Span early : {Span(0), wrong.wait / 2, wrong.wait - Span(1)}) {
                for (const PinAnswer& answer :
                     {look(at(now + early)), check("271828", at(now + early))}) {
                    EXPECT_EQ(answer.state, PinState::wait) << "even the right one";
                    EXPECT_EQ(answer.wait, wrong.wait - early);
                    EXPECT_EQ(answer.attempts, n);
                }
            }
            EXPECT_EQ(bytes_of(file), before) << "nothing is counted";
        }
        now += wrong.wait;
        EXPECT_EQ(look(at(now)).state, PinState::ready);
    }
    EXPECT_EQ(check("271828", at(now)).state, PinState::open);
    EXPECT_EQ(check("314159", at(now)).attempts, 1) << "counted from the beginning again";
}

TEST_F(Pin, DelayBeginsAgainWhole_AtTheFirstLookAfterARestart)
{
    ASSERT_TRUE(first().ok());
    for (int n = 0; n < 4; ++n)
        ASSERT_EQ(check("314159", at(hours(1) + n * seconds(30))).state, PinState::wrong);
    // The new boot may have run for as long as it likes before.
    const PinAnswer after = check("271828", at(hours(5), "boot-2"));
    EXPECT_EQ(after.state, PinState::wait);
    EXPECT_EQ(after.wait, minutes(1));
    EXPECT_EQ(look(at(hours(5) + seconds(20), "boot-2")).wait, seconds(40));
    EXPECT_EQ(look(at(seconds(5), "boot-3")).wait, minutes(1));
    EXPECT_EQ(look(at(hours(5) + seconds(59), "boot-2")).wait, minutes(1))
        << "back to a boot of before";
    EXPECT_EQ(check("271828", at(hours(5) + seconds(119), "boot-2")).state, PinState::open);
}

TEST_F(Pin, DelayBeginsAgainWhole_WhenTheTimeSinceBootGoesBack)
{
    ASSERT_TRUE(first().ok());
    for (int n = 0; n < 3; ++n)
        ASSERT_EQ(check("314159", at(hours(1))).state, PinState::wrong);
    EXPECT_EQ(look(at(minutes(59))).wait, seconds(30));
    EXPECT_EQ(look(at(Span::min())).wait, seconds(30));
    EXPECT_EQ(look(at(Span::max())).state, PinState::ready);
    EXPECT_EQ(check("314159", at(Span::max())).attempts, 4);
    EXPECT_EQ(look(at(Span(0))).wait, minutes(1));
}

TEST_F(Pin, RestartGivesNothing_WhenTheBootHasNoId)
{
    ASSERT_TRUE(first().ok());
    for (int n = 0; n < 3; ++n)
        ASSERT_EQ(check("314159", at(hours(1), "")).state, PinState::wrong);
    EXPECT_EQ(look(at(seconds(1), "")).wait, seconds(30));
    EXPECT_EQ(look(at(seconds(31), "")).state, PinState::ready);
    // An id that no file can hold as it is begins the delay at every look: slow, never open.
    EXPECT_EQ(look(at(seconds(40), "\xff")).wait, seconds(30));
    EXPECT_EQ(look(at(seconds(90), "\xff")).wait, seconds(30));
}

TEST_F(Pin, CountStopsGrowing_AtAMillion)
{
    ASSERT_TRUE(first().ok());
    Json many = content();
    many["attempts"] = 1000000;
    many["boot"] = "boot-1";
    put(many.dump());
    EXPECT_EQ(check("314159", at(hours(1))).attempts, 1000000);
    EXPECT_EQ(look(at(hours(1))).wait, hours(1));
}

// Changing and forgetting.

TEST_F(Pin, IsChanged_WhenTheOldOneIsRight)
{
    ASSERT_TRUE(first().ok());
    std::string old_pin = "314159", new_pin = "161803";
    Result<PinAnswer> answer = lock.change(old_pin, new_pin, at(hours(1)));
    ASSERT_TRUE(answer.ok());
    EXPECT_EQ(answer->state, PinState::wrong);
    EXPECT_EQ(answer->attempts, 1) << "a guess like any other";
    old_pin = "271828";
    new_pin = "161803";
    answer = lock.change(old_pin, new_pin, at(hours(1)));
    ASSERT_TRUE(answer.ok());
    EXPECT_EQ(answer->state, PinState::open);
    EXPECT_EQ(answer->attempts, 0);
    EXPECT_EQ(check("271828", at(hours(1))).state, PinState::wrong);
    EXPECT_EQ(check("161803", at(hours(1))).state, PinState::open);
}

TEST_F(Pin, IsForgotten_WithAllThatAKillLeft)
{
    EXPECT_TRUE(lock.forget().ok()) << "none there: nothing to do";
    ASSERT_TRUE(first().ok());
    std::ofstream(folder / ".desk.lock.12345.part") << bytes_of(file);
    std::ofstream(folder / ".other.part") << "x";
    std::ofstream(folder / ".desk.lock.note") << "x";
    std::ofstream(folder / "night.json") << "x";
    ASSERT_TRUE(lock.forget().ok());
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder.path()), {}), 3)
        << "only ours goes";
    EXPECT_EQ(look(at(hours(1))).state, PinState::none);
    put("damaged");
    ASSERT_TRUE(lock.forget().ok());
    EXPECT_EQ(look(at(hours(1))).state, PinState::none);
    ASSERT_TRUE(first("314159").ok());
    EXPECT_EQ(check("314159", at(hours(1))).state, PinState::open);
}

} // namespace
} // namespace evenfall
