// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Clocks that jump, drift, change their offset or begin again in 1970 while a night is noted: no length
// of time may change or become negative.
#include "crash/share.h"

#include "answers/morning.h"
#include "core/journal/entries.h"
#include "core/kit/kits.h"
#include "estimate/contradictions.h"
#include "estimate/estimate.h"
#include "journal/kinds.h"
#include "journal/timeline.h"

#include <chrono>
#include <cstdio>
#include <fstream>
#include <functional>
#include <set>

namespace evenfall {
namespace {

using namespace std::chrono_literals;
using std::chrono::days;
using Clock = std::chrono::steady_clock;

double seconds_since(Clock::time_point begin) { return std::chrono::duration<double>(Clock::now() - begin).count(); }

constexpr int taps = 200;
constexpr Span apart = 150s; // between two taps: a night of 8 h 20 min

std::int64_t true_seconds(int tap) { return std::chrono::duration_cast<std::chrono::seconds>(apart).count() * tap; }

/// What is said at each tap: lights out at 5; awake and asleep, off and on by turns; up at 195.
void say(test::Story& story, int tap, const Stamp& stamp)
{
    if (tap == 0)
        story.tell(stamp, kinds::night, "SM-0417", R"({"night":1,"kit":"marram"})");
    else if (tap == 2)
        story.tell(stamp, kinds::light, test::demo_kit("marram").lights[0].id);
    else if (tap == 5)
        story.tell(stamp, kinds::lights_out);
    else if (tap == 195)
        story.tell(stamp, kinds::up_for_day);
    else if (tap == 198)
        story.tell(stamp, kinds::stopped);
    else if (tap > 10 && tap < 190 && tap % 20 == 0)
        story.tell(stamp, kinds::awake);
    else if (tap > 10 && tap < 190 && tap % 20 == 3)
        story.tell(stamp, kinds::asleep);
    else if (tap > 10 && tap < 190 && tap % 40 == 10)
        story.tell(stamp, kinds::off, "finger");
    else if (tap > 10 && tap < 190 && tap % 40 == 16)
        story.tell(stamp, kinds::on, "finger");
    else
        story.tell(stamp, kinds::page, "page-" + std::to_string(tap));
}

/// Everything of a night that is a length of time.
struct Lengths {
    Span dark{0};
    std::vector<Span> awake, off;
    Estimate estimate;
    Problems contradictions;
    bool operator==(const Lengths& other) const
    {
        return dark == other.dark && awake == other.awake && off == other.off && estimate.window == other.estimate.window &&
               estimate.needed == other.estimate.needed && estimate.needed_asleep == other.estimate.needed_asleep &&
               estimate.diary == other.estimate.diary && contradictions == other.contradictions;
    }
};

Lengths lengths_of(const NightState& state, const Visit& visit, const Kit& kit)
{
    Lengths out;
    const Night night = night_of(state, visit, kit);
    if (night.lights_out && night.lights_on)
        out.dark = night.lights_on->earliest - night.lights_out->earliest;
    if (night.awake) {
        for (const Awakening& one : *night.awake)
            out.awake.push_back(one.to->earliest - one.from.earliest);
    }
    for (const Removal& one : night.off) {
        if (one.from && one.to)
            out.off.push_back(one.to->latest - one.from->latest);
    }
    out.contradictions = contradictions(night);
    if (out.contradictions.empty())
        out.estimate = estimate(night, {false, 0, 0});
    return out;
}

bool none_negative(const Lengths& lengths)
{
    const auto fine = [](Span one) { return one >= Span(0); };
    return fine(lengths.dark) && std::all_of(lengths.awake.begin(), lengths.awake.end(), fine) &&
           std::all_of(lengths.off.begin(), lengths.off.end(), fine);
}

/// How far the wall clock is wrong at a tap, when something happened at tap `at`.
struct Kind {
    const char* name;
    std::function<Span(int tap, int at)> wrong;
};

std::vector<Kind> kinds_of_jumps()
{
    const auto step = [](Span by) { return [by](int tap, int at) { return tap < at ? Span(0) : by; }; };
    const auto spike = [](Span by, int length) {
        return [by, length](int tap, int at) { return tap >= at && tap < at + length ? by : Span(0); };
    };
    const auto to_instant = [](Instant where) {
        return [where](int tap, int at) { return tap < at ? Span(0) : where - (test::evening + apart * at); };
    };
    return {{"3 s on", step(3s)}, {"3 s back", step(-3s)}, {"1 min on", step(1min)}, {"1 min back", step(-1min)},
            {"an hour on", step(1h)}, {"an hour back", step(-1h)}, {"five hours back", step(-5h)}, {"a day on", step(days(1))},
            {"a day back", step(-days(1))}, {"ten years on", step(days(3652))}, {"ten years back", step(-days(3652))},
            {"to 1970", to_instant(Instant{})}, {"to 2038", to_instant(Instant{std::chrono::seconds(2147483648)})},
            {"an hour on for one tap", spike(1h, 1)}, {"an hour back for ten taps", spike(-1h, 10)},
            {"slow by a hundredth", [](int tap, int at) { return tap < at ? Span(0) : -apart * (tap - at) / 100; }},
            {"fast by a hundredth", [](int tap, int at) { return tap < at ? Span(0) : apart * (tap - at) / 100; }},
            {"to and fro", [](int tap, int at) { return tap < at ? Span(0) : tap % 2 == 0 ? Span(2h) : Span(-2h); }},
            {"stands still", [](int tap, int at) { return tap < at ? Span(0) : -apart * (tap - at); }},
            {"wrong before, right from there", [](int tap, int at) { return tap < at ? Span(7h) : Span(0); }}};
}

TEST(Clocks, ChangeNoLength_WhenTheyJumpInOneOf20WaysAtOneOf200Places)
{
    const auto begin = Clock::now();
    const VisitWithKit demo = test::demo_visit();
    const Kit kit = test::demo_kit("marram");
    test::Story sound;
    for (int tap = 0; tap < taps; ++tap)
        say(sound, tap, test::stamp_at(static_cast<double>(true_seconds(tap))));
    const Lengths expected = lengths_of(replay(sound.entries()), demo.visit, kit);
    ASSERT_EQ(expected.dark, apart * 190);
    ASSERT_EQ(expected.awake.size(), 9u);
    ASSERT_GE(expected.off.size(), 4u);
    ASSERT_TRUE(expected.estimate.needed) << "the night is one that can be judged";

    long nights = 0, told = 0;
    const int step = test::times(20) == 20 ? 1 : 20;
    for (const Kind& kind : kinds_of_jumps()) {
        for (int at = 0; at < taps; at += step) {
            test::Story story;
            bool jumps = false;
            for (int tap = 0; tap < taps; ++tap) {
                Stamp stamp = test::stamp_at(static_cast<double>(true_seconds(tap)));
                stamp.utc += kind.wrong(tap, at);
                const Span moved = tap == 0 ? Span(0) : kind.wrong(tap, at) - kind.wrong(tap - 1, at);
                jumps = jumps || moved > 2s || moved < -2s;
                say(story, tap, stamp);
            }
            const Timeline timeline = timeline_of(story.entries());
            for (std::size_t i = 1; i < timeline.at.size(); ++i)
                ASSERT_EQ(timeline.at[i] - timeline.at[i - 1], apart) << kind.name << " at " << at << ", tap " << i;
            EXPECT_EQ(!timeline.jumps.empty(), jumps) << kind.name << " at " << at << ": a jump is told, and only one";
            told += jumps;
            ASSERT_TRUE(lengths_of(replay(story.entries()), demo.visit, kit) == expected) << kind.name << " at " << at;
            ++nights;
        }
    }
    std::printf("%zu kinds of jumps, %ld nights: no length changed, %ld jumps told; %.1f s\n", kinds_of_jumps().size(), nights,
                told, seconds_since(begin));
}

/// Every moment from 2020 up to 2036 at which the zone changes its offset.
std::vector<Instant> changes_of(const Zone& zone)
{
    std::vector<Instant> out;
    const Instant first{std::chrono::sys_days{std::chrono::year{2020} / 1 / 1}};
    const Instant last{std::chrono::sys_days{std::chrono::year{2036} / 1 / 1}};
    // Two changes within six hours would be missed; there are none (the closest in the database are
    // weeks apart).
    for (Instant from = first; from < last; from += 6h) {
        Instant low = from, high = from + 6h;
        if (zone.offset_at(low) == zone.offset_at(high))
            continue;
        while (high - low > 1s) {
            const Instant middle = std::chrono::floor<std::chrono::seconds>(low + (high - low) / 2);
            (zone.offset_at(middle) == zone.offset_at(from) ? low : high) = middle;
        }
        out.push_back(high);
    }
    return out;
}

TEST(Clocks, ChangeNoLength_AtAnyChangeOfOffsetOfTheTimeZoneDatabase)
{
    const auto begin = Clock::now();
    VisitWithKit demo = test::demo_visit();
    const Kit kit = test::demo_kit("marram");
    std::ifstream table("/usr/share/zoneinfo/zone1970.tab");
    std::set<std::string> names;
    for (std::string line; std::getline(table, line);) {
        if (line.empty() || line[0] == '#')
            continue;
        const std::size_t from = line.find('\t', line.find('\t') + 1) + 1;
        names.insert(line.substr(from, line.find('\t', from) - from));
    }
    ASSERT_GT(names.size(), 250u);
    long changes = 0, nights = 0, number = 0;
    for (const std::string& name : names) {
        if (test::times(20) != 20 && ++number % 20 != 0)
            continue;
        const Result<ZonePtr> zone = find_zone(name);
        ASSERT_TRUE(zone.ok()) << name;
        demo.visit.zone = *zone;
        for (const Instant change : changes_of(**zone)) {
            ++changes;
            // In the middle of the night; while awake; on the tap that says lights out.
            for (const Span before : {Span(3h), Span(2h + 10min), Span(0)}) {
                const Instant dark = change - before;
                const auto stamp = [&](Span in) {
                    return Stamp{dark + in, (*zone)->offset_at(dark + in), name, "boot-1", 10h + in};
                };
                const auto offset = [&](Span in) { return (*zone)->offset_at(dark + in); };
                test::Story story;
                story.tell(stamp(-10min), kinds::night, "SM-0417", R"({"night":1,"kit":"marram"})");
                story.tell(stamp(-9min), kinds::light, kit.lights[0].id);
                story.tell(stamp(0s), kinds::lights_out).tell(stamp(2h), kinds::awake).tell(stamp(2h + 20min), kinds::asleep);
                story.tell(stamp(4h), kinds::off, "finger").tell(stamp(4h + 30min), kinds::on, "finger");
                story.tell(stamp(7h), kinds::up_for_day).tell(stamp(7h + 5min), kinds::stopped);
                // The same again as answers of the morning: written as local time with its offset.
                const auto answer = [&](std::string_view question, Span in) {
                    story.tell(stamp(8h), kinds::answer, question,
                               time_answer(TimeRange::exactly(dark + in), offset(in)).dump());
                };
                const NightState by_taps = replay(story.entries());
                answer("lights_out", 0s);
                answer("final_waking", 7h);
                answer("lights_on", 7h);
                story.tell(stamp(8h), kinds::answer, "awake",
                           awake_answer({{TimeRange::exactly(dark + 2h), TimeRange::exactly(dark + 2h + 20min), std::nullopt}},
                                        std::nullopt, offset(2h))
                               .dump());
                const NightState by_answers = replay(story.entries());
                for (const NightState& state : {by_taps, by_answers}) {
                    const Lengths lengths = lengths_of(state, demo.visit, kit);
                    ASSERT_EQ(lengths.dark, 7h) << name;
                    ASSERT_EQ(lengths.awake, std::vector<Span>{20min}) << name;
                    ASSERT_EQ(lengths.off, std::vector<Span>{30min}) << name;
                    ASSERT_TRUE(lengths.contradictions.empty()) << name << ": " << test::all_told(lengths.contradictions);
                    ASSERT_EQ(lengths.estimate.window->best_guess, 7h) << name;
                }
                ++nights;
            }
        }
    }
    EXPECT_GT(changes, test::times(1800));
    std::printf("%ld changes of offset of %zu zones x 3 places = %ld nights, by taps and by answers: no length changed; %.1f s\n",
                changes, names.size(), nights, seconds_since(begin));
}

/// A flat battery: from tap `at` on another boot, whose clock begins in 1970.
test::Story flat_battery(int at, int corrected_at)
{
    test::Story story;
    for (int tap = 0; tap < taps; ++tap) {
        Stamp stamp = test::stamp_at(static_cast<double>(true_seconds(tap)));
        if (tap >= at) {
            stamp.boot = "boot-2";
            stamp.since_boot = 40s + apart * (tap - at);
            if (tap < corrected_at)
                stamp.utc = Instant{} + stamp.since_boot;
        }
        say(story, tap, stamp);
    }
    return story;
}

TEST(Clocks, ChangeNoLength_WhenTheyBeginIn1970AndAreSetRightLater)
{
    const VisitWithKit demo = test::demo_visit();
    const Kit kit = test::demo_kit("marram");
    const Lengths expected = lengths_of(replay(flat_battery(taps, taps).entries()), demo.visit, kit);
    long nights = 0;
    for (int at = 1; at < taps - 1; ++at) {
        ASSERT_TRUE(lengths_of(replay(flat_battery(at, taps - 1).entries()), demo.visit, kit) == expected) << at;
        ++nights;
    }
    std::printf("a flat battery, the clock set right again: %ld nights, no length changed\n", nights);
}

TEST(Clocks, JudgeNothing_WhenTheyBeginIn1970AndAreNeverSetRight)
{
    const VisitWithKit demo = test::demo_visit();
    const Kit kit = test::demo_kit("marram");
    long nights = 0, asked = 0;
    for (int at = 6; at <= 195; ++at) { // from after lights out up to getting up
        const test::Story story = flat_battery(at, taps);
        const Timeline timeline = timeline_of(story.entries());
        for (std::size_t i = 1; i < timeline.at.size(); ++i) {
            if (static_cast<int>(i) != at) {
                ASSERT_EQ(timeline.at[i] - timeline.at[i - 1], apart) << "within one boot, " << at;
            }
        }
        const Lengths lengths = lengths_of(replay(story.entries()), demo.visit, kit);
        ++nights;
        asked += !lengths.contradictions.empty();
        EXPECT_FALSE(lengths.contradictions.empty()) << "tap " << at << ": nobody is asked about impossible times";
        EXPECT_FALSE(lengths.estimate.needed) << "tap " << at;
    }
    std::printf("a flat battery, the clock never set right: %ld nights, in %ld the person is asked and nothing is judged\n", nights, asked);
}

TEST(Clocks, AreSeenToGoWrong_WhenTheTimeSinceBootIsLeftOut)
{
    // The test of the test: by the wall clock alone these nights do change.
    const std::vector<Kind> kinds_ = kinds_of_jumps();
    const VisitWithKit demo = test::demo_visit();
    const Kit kit = test::demo_kit("marram");
    test::Story story;
    for (int tap = 0; tap < taps; ++tap) {
        Stamp stamp = test::stamp_at(static_cast<double>(true_seconds(tap)));
        stamp.utc += kinds_[5].wrong(tap, 100);
        stamp.boot = "boot-" + std::to_string(tap);
        say(story, tap, stamp);
    }
    const Lengths lengths = lengths_of(replay(story.entries()), demo.visit, kit);
    EXPECT_NE(lengths.dark, apart * 190);
    EXPECT_TRUE(none_negative(lengths));
}

} // namespace
} // namespace evenfall
