// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// A second zone library (Abseil's civil time) reads the same IANA database and must say the same:
// offsets, and what a local time means that comes twice or never.
#include "base/time.h"

#include <absl/time/civil_time.h>
#include <absl/time/time.h>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>
#include <vector>

namespace evenfall {
namespace {

using std::chrono::minutes;
using std::chrono::seconds;

std::vector<std::string> zone_names()
{
    std::vector<std::string> names;
    std::ifstream table("/usr/share/zoneinfo/zone1970.tab");
    for (std::string line; std::getline(table, line);) {
        std::istringstream fields(line);
        std::string countries, place, name;
        if (line.empty() || line[0] == '#' || !(fields >> countries >> place >> name))
            continue;
        names.push_back(name);
    }
    return names;
}

Instant instant(absl::Time time) { return Instant(Span(absl::ToUnixMicros(time))); }

absl::CivilSecond civil(LocalTime local)
{
    return absl::CivilSecond(1970, 1, 1) +
           std::chrono::duration_cast<seconds>(local.time_since_epoch()).count();
}

/// What the other library says of a local time, in our words.
LocalReading reading_of(const absl::TimeZone& zone, LocalTime local)
{
    using Info = absl::TimeZone::TimeInfo;
    const Info info = zone.At(civil(local));
    const auto kind = info.kind == Info::UNIQUE     ? LocalReading::Kind::unique
                      : info.kind == Info::REPEATED ? LocalReading::Kind::ambiguous
                                                    : LocalReading::Kind::nonexistent;
    return {kind, instant(info.pre), instant(info.post), seconds(0), seconds(0)};
}

TEST(ZoneReferee, SaysTheSameOfEveryLocalTimeAroundEveryTransition_2020To2035)
{
    const std::vector<std::string> names = zone_names();
    ASSERT_GT(names.size(), 300u) << "zone1970.tab of the package tzdata";
    const absl::Time begin = absl::FromUnixSeconds(1577836800); // 2020-01-01T00:00Z
    const absl::Time end = absl::FromUnixSeconds(2082758400);   // 2036-01-01T00:00Z
    long transitions = 0, twice = 0, never = 0;
    for (const std::string& name : names) {
        absl::TimeZone other;
        ASSERT_TRUE(absl::LoadTimeZone(name, &other)) << name;
        const Result<ZonePtr> ours = find_zone(name);
        ASSERT_TRUE(ours.ok()) << name;
        absl::Time from = begin;
        absl::TimeZone::CivilTransition transition;
        while (other.NextTransition(from, &transition)) {
            const absl::Time at = other.At(transition.to).trans;
            if (at >= end)
                break;
            ASSERT_GT(at, from) << name;
            from = at;
            ++transitions;
            for (const minutes step : {minutes(-180), minutes(-1), minutes(0), minutes(1), minutes(180)}) {
                const Instant when = instant(at) + step;
                EXPECT_EQ((*ours)->offset_at(when).count(), other.At(absl::FromUnixMicros(when.time_since_epoch().count())).offset)
                    << name;
            }
            // Wall times from 3 hours before to 3 hours after both sides of the change, by 5 minutes.
            const LocalTime wall = (*ours)->local(instant(at));
            for (minutes step(-240); step <= minutes(240); step += minutes(5)) {
                const LocalReading mine = (*ours)->read(wall + step);
                const LocalReading theirs = reading_of(other, wall + step);
                ASSERT_EQ(mine.kind, theirs.kind) << name << " " << civil(wall + step);
                EXPECT_EQ(mine.first, theirs.first) << name << " " << civil(wall + step);
                if (mine.kind != LocalReading::Kind::unique) {
                    EXPECT_EQ(mine.second, theirs.second) << name << " " << civil(wall + step);
                }
                twice += mine.kind == LocalReading::Kind::ambiguous ? 1 : 0;
                never += mine.kind == LocalReading::Kind::nonexistent ? 1 : 0;
            }
        }
    }
    RecordProperty("transitions", std::to_string(transitions));
    std::cout << transitions << " transitions in " << names.size() << " zones; " << twice
              << " local times that come twice, " << never << " that never come\n";
    EXPECT_GT(transitions, 2000);
    EXPECT_GT(twice, 10000);
    EXPECT_GT(never, 10000);
}

} // namespace
} // namespace evenfall
