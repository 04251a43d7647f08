// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Whole nights by seed, from the first tap to diary.json, on a clock of their own, with faults mixed in:
// appends that fail, clocks that jump, the machine started again, taps given twice and taken back,
// answers that are skipped, uncertain, changed or impossible.
#include "crash/share.h"

#include "answers/morning.h"
#include "answers/questions.h"
#include "base/hash.h"
#include "core/kit/kits.h"
#include "estimate/contradictions.h"
#include "estimate/estimate.h"
#include "journal/journal.h"
#include "journal/kinds.h"
#include "journal/state.h"
#include "plan/plan.h"
#include "record/diary.h"

#include <chrono>
#include <cstdio>
#include <random>

namespace evenfall {
namespace {

using namespace std::chrono_literals;
using Clock = std::chrono::steady_clock;

/// What happened, over many nights.
struct Tally {
    long nights = 0, entries = 0, failed_appends = 0, jumps = 0, starts = 0, undone = 0;
    long judged = 0, contradicting = 0, unknown = 0, refused = 0;
    std::string hash;
};

class Simulation {
  public:
    Simulation(std::uint64_t seed, const VisitWithKit& demo, const std::vector<Kit>& kits, const std::vector<Plan>& plans, Tally& tally)
        : random_(seed), visit_(demo.visit), tally_(tally)
    {
        const std::size_t which = pick(kits.size());
        kit_ = &kits[which];
        plan_ = &plans[which];
        // Any evening of ten years: clocks change in some of the nights.
        now_ = Instant{std::chrono::sys_days{std::chrono::year{2024} / 1 / 1}} + std::chrono::days(pick(3650)) +
               Span(std::chrono::minutes(23 * 60 + pick(300)));
    }

    void run()
    {
        say(kinds::night, visit_.code, R"({"night":)" + std::to_string(1 + pick(3)) + R"(,"kit":")" + kit_->id + R"("})");
        if (chance(30))
            say(kinds::language, "es");
        say(kinds::first, chance(20) ? "some" : "none");
        for (const Step& step : plan_->steps) {
            pass(20s, 3min);
            say(kinds::page, step.id);
            if (chance(95))
                say(kinds::step, step.id);
            if (chance(5))
                say(kinds::trouble, step.id);
        }
        if (chance(92))
            say(kinds::light, kit_->lights[pick(kit_->lights.size())].id);
        pass(1min, 30min);
        lights_out_ = now_;
        if (chance(95))
            say(kinds::lights_out);
        const std::vector<std::string> sensors = kit_->sensors();
        for (std::size_t n = pick(14); n > 0; --n) {
            pass(1min, 90min);
            const std::string part = sensors[pick(sensors.size())];
            static const std::vector<std::string_view> said{kinds::awake, kinds::asleep, kinds::up,  kinds::back,
                                                            kinds::off,   kinds::on,     kinds::all_on, kinds::help};
            const std::string_view kind = said[pick(said.size())];
            say(kind, kind == kinds::off || kind == kinds::on ? part : "");
            if (chance(8))
                take_back();
        }
        pass(10min, 5h);
        if (chance(92))
            say(kinds::up_for_day);
        up_ = now_;
        for (const std::string_view question : questions::all) {
            pass(5s, 1min);
            if (!chance(60))
                continue;
            const Json value = answer(question);
            if (chance(30))
                say(kinds::draft, question, value.dump());
            say(kinds::answer, question, value.dump());
        }
        if (chance(85))
            say(kinds::stopped);
        say(kinds::skin, chance(10) ? "sore" : "fine");
        judge();
    }

  private:
    std::mt19937_64 random_;
    Visit visit_;
    const Kit* kit_ = nullptr;
    const Plan* plan_ = nullptr;
    Tally& tally_;
    std::unique_ptr<Journal> journal_ = make_memory_journal();
    Instant now_, lights_out_, up_;
    Span wrong_{0};       // of the wall clock
    Span since_boot_{1h};
    int boot_ = 1;

    std::size_t pick(std::size_t end) { return static_cast<std::size_t>(random_() % end); }
    bool chance(std::size_t percent) { return pick(100) < percent; }
    Span between(Span least, Span most)
    {
        return Span(std::chrono::seconds(1)) * static_cast<long>(pick(static_cast<std::size_t>((most - least) / 1s) + 1)) + least;
    }

    void pass(Span least, Span most)
    {
        const Span by = between(least, most);
        now_ += by;
        since_boot_ += by;
        if (chance(1)) {
            static const std::vector<Span> jumps{3s, -3s, 1h, -1h, 24h, -26h, 2min};
            wrong_ += jumps[pick(jumps.size())];
            ++tally_.jumps;
        }
        if (wrong_ != Span(0) && chance(10))
            wrong_ = Span(0); // set right over the network
        if (chance(1)) {
            ++boot_;
            since_boot_ = between(10s, 2min);
            ++tally_.starts;
        }
    }

    void say(std::string_view kind, std::string_view subject = "", const std::string& value = "")
    {
        if (chance(1)) { // the append fails: the person sees the trouble page and taps again
            ++tally_.failed_appends;
            pass(5s, 1min);
        }
        const Instant wall = now_ + wrong_;
        const Stamp stamp{wall, visit_.zone->offset_at(wall), visit_.zone->name(), "boot-" + std::to_string(boot_), since_boot_};
        const int taps = chance(2) ? 2 : 1; // the finger trembles
        for (int n = 0; n < taps; ++n)
            ASSERT_TRUE(journal_->append(stamp, kind, subject, value).ok());
    }

    /// Says that the last note was none. The night must then be as if it had never been.
    void take_back()
    {
        const std::int64_t number = journal_->entries().back().number;
        const NightState with = replay(journal_->entries());
        std::vector<Entry> without = journal_->entries();
        without.pop_back();
        const NightState before = replay(without);
        say(kinds::undo, "", std::to_string(number));
        const NightState after = replay(journal_->entries());
        ASSERT_EQ(after.notes.size(), before.notes.size());
        ASSERT_LE(before.notes.size(), with.notes.size());
        ++tally_.undone;
    }

    TimeRange range(Instant about)
    {
        if (chance(50))
            return TimeRange::exactly(about);
        const Span give = between(0s, 45min);
        return {about - give, about + give};
    }

    Json answer(std::string_view question)
    {
        if (chance(15))
            return skipped_answer();
        const auto offset = visit_.zone->offset_at(lights_out_);
        if (questions::asks_time(question)) {
            const bool evening = question == questions::into_bed || question == questions::lights_out;
            const Span away = chance(3) ? between(0s, 20h) - 10h : between(0s, 40min) - 20min;
            return time_answer(range((evening ? lights_out_ : up_) + away), offset);
        }
        if (questions::asks_amount(question))
            return minutes_answer(std::chrono::minutes(pick(question == questions::slept ? 500 : 60)));
        if (question == questions::awake) {
            std::vector<Awakening> timed;
            for (std::size_t n = pick(4); n > 0; --n) {
                Awakening one{range(lights_out_ + between(10min, 7h)), std::nullopt, std::nullopt};
                if (chance(50))
                    one.length = Span(std::chrono::minutes(pick(50)));
                else
                    one.to = TimeRange{one.from.latest + between(0s, 40min), one.from.latest + 40min};
                timed.push_back(one);
            }
            std::optional<UntimedAwakenings> untimed;
            if (chance(30))
                untimed = UntimedAwakenings{static_cast<long>(1 + pick(4)), Span(std::chrono::minutes(pick(60)))};
            return awake_answer(timed, untimed, offset);
        }
        if (question == questions::off) {
            const std::vector<std::string> sensors = kit_->sensors();
            std::vector<Removal> removals;
            for (std::size_t n = pick(3); n > 0; --n) {
                Removal one{sensors[pick(sensors.size())], std::nullopt, std::nullopt};
                if (chance(80))
                    one.from = range(lights_out_ + between(10min, 6h));
                if (one.from && chance(70))
                    one.to = TimeRange::exactly(one.from->latest + between(0s, 3h));
                removals.push_back(one);
            }
            return off_answer(removals, offset);
        }
        return word_answer(question == questions::compare ? "usual" : "dreamt of \"the sea\" \xe2\x80\xa6");
    }

    static void ordered(const std::optional<Bounds>& bounds)
    {
        if (!bounds)
            return;
        ASSERT_LE(Span(0), bounds->at_least);
        ASSERT_LE(bounds->at_least, bounds->best_guess);
        ASSERT_LE(bounds->best_guess, bounds->at_most);
    }
    static void no_more(const std::optional<Bounds>& part, const std::optional<Bounds>& whole)
    {
        if (!part || !whole)
            return;
        ASSERT_LE(part->at_least, whole->at_least);
        ASSERT_LE(part->best_guess, whole->best_guess);
        ASSERT_LE(part->at_most, whole->at_most);
    }

    void judge()
    {
        const std::vector<Entry>& entries = journal_->entries();
        ++tally_.nights;
        tally_.entries += static_cast<long>(entries.size());
        ASSERT_EQ(intact_length(entries), entries.size());
        const NightState state = replay(entries);
        const Night night = night_of(state, visit_, *kit_);
        if (contradictions(night).empty()) {
            const EstimateOptions plain{false, 0, 0};
            const Estimate told = estimate(night, plain);
            ordered(told.window);
            ordered(told.needed);
            ordered(told.needed_asleep);
            no_more(told.needed, told.window);
            no_more(told.needed_asleep, told.needed);
            for (const auto& [sensor, bounds] : told.sensors) {
                ordered(bounds);
                no_more(bounds, told.window);
            }
            ASSERT_EQ(told.verdict == Verdict::unknown, !told.needed);
            if (told.needed) {
                ASSERT_EQ(told.verdict == Verdict::enough, told.needed->at_least >= night.need.minutes);
                ASSERT_EQ(told.verdict == Verdict::too_short, told.needed->at_most < night.need.minutes);
            }
            (told.needed ? tally_.judged : tally_.unknown)++;
            // One more removal never adds a minute.
            Night less = night;
            const TimeRange from = range(lights_out_ + between(0s, 6h));
            less.off.push_back({night.sensors[pick(night.sensors.size())], from, TimeRange::exactly(from.latest + between(0s, 2h))});
            const Estimate fewer = estimate(less, plain);
            no_more(fewer.needed, told.needed);
            no_more(fewer.window, told.window);
            // A greater need never makes a better verdict.
            Night more = night;
            more.need.minutes += 30min;
            ASSERT_TRUE(estimate(more, plain).verdict != Verdict::enough || told.verdict == Verdict::enough);
        } else {
            ++tally_.contradicting;
        }

        Result<Diary> diary = diary_from_night(night);
        if (!diary) { // no time at all is known
            ++tally_.refused;
            tally_.hash = sha256_hex(tally_.hash + diary.problems()[0].text);
            return;
        }
        diary->journal = entries;
        const Result<std::string> json = diary_to_json(*diary);
        ASSERT_TRUE(json.ok()) << test::all_told(json.problems());
        tally_.hash = sha256_hex(tally_.hash + *json);
        if (tally_.nights % 10 == 0) {
            const Result<Diary> back = read_diary(*json);
            ASSERT_TRUE(back.ok()) << test::all_told(back.problems());
            ASSERT_EQ(diary_to_json(*back).value(), *json);
        }
    }
};

Tally nights(std::uint64_t first, int count)
{
    const VisitWithKit demo = test::demo_visit();
    std::vector<Kit> kits;
    std::vector<Plan> plans;
    for (const char* id : test::demo_kits) {
        kits.push_back(test::demo_kit(id));
        plans.push_back(make_plan(kits.back(), demo.visit.hand).value());
    }
    Tally tally;
    for (int n = 0; n < count; ++n) {
        Simulation(first + static_cast<std::uint64_t>(n), demo, kits, plans, tally).run();
        if (testing::Test::HasFatalFailure()) {
            ADD_FAILURE() << "seed " << first + static_cast<std::uint64_t>(n);
            break;
        }
    }
    return tally;
}

TEST(Simulation, KeepsTheLawsInEveryNight)
{
    const auto begin = Clock::now();
    const Tally tally = nights(1, test::times(10000));
    const double seconds = std::chrono::duration<double>(Clock::now() - begin).count();
    EXPECT_GT(tally.judged, tally.nights / 4);
    EXPECT_GT(tally.contradicting, tally.nights / 50);
    EXPECT_GT(tally.unknown, 0);
    EXPECT_GT(tally.undone, tally.nights / 10);
    std::printf("%ld nights of %ld entries (%ld failed appends, %ld jumps of the clock, %ld starts, %ld taken back): %ld judged, "
                "%ld contradicting themselves, %ld unknown, %ld without any time; %.1f ms each, %.0f s; all bytes %s\n",
                tally.nights, tally.entries, tally.failed_appends, tally.jumps, tally.starts, tally.undone, tally.judged,
                tally.contradicting, tally.unknown, tally.refused, seconds * 1000 / static_cast<double>(tally.nights), seconds,
                tally.hash.substr(0, 16).c_str());
}

TEST(Simulation, GivesTheSameBytesForTheSameSeed)
{
    const int count = test::times(400);
    const std::string once = nights(70000, count).hash;
    EXPECT_EQ(nights(70000, count).hash, once);
    EXPECT_NE(nights(70001, count).hash, once) << "another seed is another night";
    std::printf("%d nights twice: the same bytes\n", count);
}

} // namespace
} // namespace evenfall
