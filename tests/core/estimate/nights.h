// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "answers/night.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <random>
#include <sstream>
#include <string>
#include <vector>

namespace evenfall::test {

/// A night report from JSON with ' for ", so that a test reads like the file.
inline Night night_of(std::string text)
{
    std::replace(text.begin(), text.end(), '\'', '"');
    Result<Night> night = read_night(text);
    for (const Problem& problem : night.problems())
        ADD_FAILURE() << describe("night", problem);
    return night ? *night : Night{};
}

/// Minutes, as tests count.
inline Span min(double minutes)
{
    return Span(static_cast<Span::rep>(minutes * 60e6 + (minutes < 0 ? -0.5 : 0.5)));
}

inline std::string slurp(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    std::stringstream all;
    all << file.rdbuf();
    return all.str();
}

/// The files of a folder of samples, sorted; never empty without a failure.
inline std::vector<std::filesystem::path> samples(const std::string& folder)
{
    std::vector<std::filesystem::path> out;
    for (const auto& entry :
         std::filesystem::directory_iterator(EVENFALL_SOURCE_DIR "/tests/data/" + folder))
        out.push_back(entry.path());
    std::sort(out.begin(), out.end());
    EXPECT_FALSE(out.empty()) << folder;
    return out;
}

/// A random night on a grid of ten minutes. Ranges are at most `most_width` steps wide and have
/// even widths, so that middles are on the grid too.
struct RandomNights {
    explicit RandomNights(std::uint64_t seed) : engine(seed) {}
    std::mt19937_64 engine;
    static constexpr Span step = std::chrono::minutes(10);
    static inline const Instant origin =
        Instant{std::chrono::sys_days{std::chrono::year{2026} / 11 / 4}};

    long pick(long least, long most)
    {
        return least + static_cast<long>(engine() % static_cast<std::uint64_t>(most - least + 1));
    }
    bool chance(long percent) { return pick(1, 100) <= percent; }

    static Instant at(long steps) { return origin + steps * step; }

    TimeRange time(long least, long most, long percent_uncertain)
    {
        const long from = pick(least, most);
        return {at(from), at(from + (chance(percent_uncertain) ? 2 * pick(1, 2) : 0))};
    }

    /// An interval with some order; neither end has to be exact.
    std::pair<TimeRange, TimeRange> interval(long least, long most)
    {
        TimeRange from = time(least, most, 35);
        TimeRange to = time(least, most, 35);
        if (from.earliest > to.latest)
            std::swap(from, to);
        return {from, to};
    }

    Night night(bool wake_by_length)
    {
        Night night;
        night.sensors = {"a", "b", "c"};
        const std::vector<std::vector<std::string>> one{{"a"}}, two{{"a"}, {"b"}},
            either{{"a", "b"}}, mixed{{"a", "b"}, {"c"}};
        night.need.groups =
            std::vector{one, two, either, mixed}[static_cast<std::size_t>(pick(0, 3))];
        night.need.minutes = pick(0, 40) * step;
        if (chance(70)) {
            const auto [from, to] = interval(0, 44);
            night.recording_from = from;
            night.recording_to = to;
        }
        if (chance(80) || !night.recording_from)
            night.lights_out = time(0, 15, 30);
        if (chance(80) || !night.recording_to)
            night.lights_on = time(20, 44, 30);
        if (chance(60))
            night.asleep_after = pick(0, 5) * step;
        if (chance(60))
            night.final_waking = time(18, 44, 30);
        for (long n = pick(0, 3); n > 0; --n) {
            Removal removal;
            removal.sensor = night.sensors[static_cast<std::size_t>(pick(0, 2))];
            const auto [from, to] = interval(0, 44);
            if (chance(85))
                removal.from = from;
            if (chance(85))
                removal.to = to;
            night.off.push_back(removal);
        }
        if (chance(70)) {
            night.awake.emplace();
            for (long n = pick(0, 2); n > 0; --n) {
                Awakening awakening;
                if (wake_by_length && chance(50)) {
                    awakening.from = time(5, 40, 40);
                    awakening.length = pick(0, 4) * step;
                } else {
                    const auto [from, to] = interval(5, 44);
                    awakening.from = from;
                    awakening.to = to;
                }
                night.awake->push_back(awakening);
            }
        }
        if (wake_by_length && chance(50))
            night.awake_untimed = UntimedAwakenings{2, pick(0, 6) * step};
        return night;
    }
};

} // namespace evenfall::test
