// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "answers/night.h"

#include "core/estimate/nights.h"
#include "estimate/contradictions.h"

namespace evenfall {
namespace {

using test::night_of;
using test::samples;
using test::slurp;

/// The code that a sample stands for: its name up to the first "-".
std::string code_of(const std::filesystem::path& path)
{
    const std::string stem = path.stem().string();
    return stem.substr(0, stem.find('-'));
}

std::string told(const Problems& problems)
{
    std::string out;
    for (const Problem& problem : problems)
        out += describe("", problem) + " [" + problem.code + "]\n";
    return out;
}

TEST(NightSamples, ValidOnesReadAndWriteBackTheSame)
{
    for (const auto& path : samples("night/valid")) {
        const Result<Night> night = read_night(slurp(path));
        ASSERT_TRUE(night.ok()) << path << told(night.problems());
        EXPECT_EQ(told(contradictions(*night)), "") << path;
        const Json written = night_to_json(*night);
        const Result<Night> again = night_from_json(written, "");
        ASSERT_TRUE(again.ok()) << path << told(again.problems());
        EXPECT_EQ(night_to_json(*again), written) << path;
    }
}

TEST(NightSamples, MalformedOnesNameTheFaultOfTheirName)
{
    for (const auto& path : samples("night/malformed")) {
        const Problems problems = read_night(slurp(path)).problems();
        EXPECT_EQ(exit_status(problems), 2) << path << told(problems);
        EXPECT_EQ(problems.size(), 1u) << path << told(problems);
        EXPECT_TRUE(!problems.empty() && problems[0].code == code_of(path))
            << path << told(problems);
        EXPECT_TRUE(!problems.empty() && problems[0].text.size() > 10) << path;
    }
}

TEST(NightSamples, RefusedOnesNameTheFaultOfTheirName)
{
    for (const auto& path : samples("night/refused")) {
        const Result<Night> night = read_night(slurp(path));
        const Problems problems = night ? contradictions(*night) : night.problems();
        EXPECT_EQ(exit_status(problems), 1) << path << told(problems);
        const bool named = std::any_of(problems.begin(), problems.end(), [&](const Problem& one) {
            return one.code == code_of(path);
        });
        EXPECT_TRUE(named) << path << told(problems);
        for (const Problem& one : problems)
            EXPECT_NE(one.text.find("right would be"), std::string::npos) << path << one.text;
    }
}

TEST(Night, NamesEveryFaultWithItsPlace)
{
    const Problems problems =
        read_night(
            R"({"format": "evenfall.night/1", "zone": "America/New_York", "sensors": ["finger"],
                       "need": {"minutes": "240", "groups": [["finger"]]},
                       "lights_out": "late", "into_bed": {"about": "2026-11-04T22:00"},
                       "off": [{"sensor": "finger", "from": null, "to": 5}], "dreams": 3})")
            .problems();
    std::vector<std::string> places;
    for (const Problem& problem : problems)
        places.push_back(problem.at);
    std::sort(places.begin(), places.end());
    EXPECT_EQ(places, (std::vector<std::string>{"/dreams", "/into_bed/give_or_take_min",
                                                "/lights_out", "/need/minutes", "/off/0/to"}));
}

TEST(Night, AmbiguousTimeNamesBothReadings)
{
    const Problems problems =
        read_night(slurp(EVENFALL_SOURCE_DIR "/tests/data/night/refused/ambiguous_time.json"))
            .problems();
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0].at, "/lights_out");
    EXPECT_NE(problems[0].text.find("2026-11-01T01:30:00-04:00"), std::string::npos);
    EXPECT_NE(problems[0].text.find("2026-11-01T01:30:00-05:00"), std::string::npos);
}

TEST(Night, UnknownZoneIsNamedOnceAndNotAtEachTime)
{
    EXPECT_EQ(read_night(slurp(EVENFALL_SOURCE_DIR "/tests/data/night/refused/unknown_zone.json"))
                  .problems()
                  .size(),
              1u);
}

TEST(Night, WithoutZoneKeepsTheOffsetItWasWrittenWith)
{
    const Night night = night_of(
        "{'format':'evenfall.night/1','sensors':['f'],'need':{'minutes':1,'groups':[['f']]},"
        "'lights_out':'2026-11-04T22:05:00+05:30'}");
    EXPECT_EQ(night_to_json(night)["lights_out"], "2026-11-04T22:05:00+05:30");
}

TEST(Night, GiveOrTakeReachesToBothSides)
{
    const Night night = night_of(
        "{'format':'evenfall.night/1','sensors':['f'],'need':{'minutes':1,'groups':[['f']]},"
        "'lights_out':{'about':'2026-11-04T22:05Z','give_or_take_min':7.5}}");
    EXPECT_EQ(night.lights_out->width(), test::min(15));
    EXPECT_EQ(night.lights_out->middle(), night.lights_out->earliest + test::min(7.5));
}

} // namespace
} // namespace evenfall
