// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "core/estimate/nights.h"
#include "estimate/estimate.h"

#include <cstdio>
#include <map>

namespace evenfall {
namespace {

using test::min;
using test::night_of;

Span length_of(const std::string& zone, const std::string& from, const std::string& to)
{
    const Night night = night_of("{'format':'evenfall.night/1','zone':'" + zone +
                                 "','sensors':['finger'],"
                                 "'need':{'minutes':240,'groups':[['finger']]},'lights_out':'" +
                                 from + "','lights_on':'" + to + "'}");
    return estimate(night).needed->best_guess;
}

TEST(ClockChanges, NightsHaveTheirRealLength)
{
    // IANA tz database 2025b; zdump shows each transition. 23:00 to 07:00:
    EXPECT_EQ(length_of("America/New_York", "2026-10-31T23:00", "2026-11-01T07:00"), min(9 * 60));
    EXPECT_EQ(length_of("America/New_York", "2026-03-07T23:00", "2026-03-08T07:00"), min(7 * 60));
    EXPECT_EQ(length_of("Europe/Berlin", "2026-10-24T23:00", "2026-10-25T07:00"), min(9 * 60));
    EXPECT_EQ(length_of("Europe/Berlin", "2026-03-28T23:00", "2026-03-29T07:00"), min(7 * 60));
    EXPECT_EQ(length_of("Australia/Lord_Howe", "2026-04-04T23:00", "2026-04-05T07:00"),
              min(8.5 * 60));
    EXPECT_EQ(length_of("Australia/Lord_Howe", "2026-10-03T23:00", "2026-10-04T07:00"),
              min(7.5 * 60));
    EXPECT_EQ(length_of("Pacific/Apia", "2011-12-29T23:00", "2011-12-31T07:00"),
              min(8 * 60)); // no 30 Dec
    EXPECT_EQ(length_of("Asia/Kolkata", "2026-10-31T23:00", "2026-11-01T07:00"), min(8 * 60));
    EXPECT_EQ(length_of("America/Phoenix", "2026-10-31T23:00", "2026-11-01T07:00"), min(8 * 60));
}

std::string output_of(const std::string& command)
{
    std::string out;
    FILE* pipe = popen(command.c_str(), "r");
    char block[65536];
    while (pipe) {
        const std::size_t got = fread(block, 1, sizeof block, pipe);
        if (got == 0)
            break;
        out.append(block, got);
    }
    EXPECT_EQ(pipe ? pclose(pipe) : -1, 0) << command;
    return out;
}

/// "America/New_York  Sun Mar  8 06:59:59 2026 UT = Sun Mar  8 01:59:59 2026 EST isdst=0
/// gmtoff=-18000"
TEST(ClockChanges, OffsetsAreThoseOfZdumpAroundEveryTransition)
{
    const std::string text = output_of("zdump -v -c 2020,2036 $(grep -v '^#' "
                                       "/usr/share/zoneinfo/zone1970.tab | cut -f3 | sort -u)");
    std::istringstream lines(text);
    std::string line;
    std::map<std::string, ZonePtr> zones;
    int checked = 0;
    while (std::getline(lines, line)) {
        char zone[64], month[8];
        int day, hour, minute, second, year;
        long offset;
        if (std::sscanf(line.c_str(),
                        "%63s %*s %7s %d %d:%d:%d %d UT = %*s %*s %*d %*d:%*d:%*d %*d %*s "
                        "isdst=%*d gmtoff=%ld",
                        zone, month, &day, &hour, &minute, &second, &year, &offset) != 8)
            continue;
        if (year < 2020 || year > 2035)
            continue; // zdump also tells the ends of its own range
        static const std::string names = "JanFebMarAprMayJunJulAugSepOctNovDec";
        const auto number = static_cast<unsigned>(names.find(month) / 3 + 1);
        const Instant when =
            Instant{std::chrono::sys_days{std::chrono::year{year} / std::chrono::month{number} /
                                          std::chrono::day{static_cast<unsigned>(day)}}} +
            std::chrono::hours(hour) + std::chrono::minutes(minute) + std::chrono::seconds(second);
        ZonePtr& found = zones[zone];
        if (!found) {
            const Result<ZonePtr> looked_up = find_zone(zone);
            ASSERT_TRUE(looked_up.ok()) << zone;
            found = *looked_up;
        }
        ASSERT_EQ(found->offset_at(when).count(), offset) << line;
        // Read back from the wall, the instant is among the readings.
        const LocalReading reading = found->read(found->local(when));
        ASSERT_TRUE(reading.first == when || reading.second == when) << line;
        ASSERT_NE(reading.kind, LocalReading::Kind::nonexistent) << line;
        ++checked;
    }
    EXPECT_GT(checked, 3000);
    std::printf("%d moments around transitions, %zu zones\n", checked, zones.size());
}

} // namespace
} // namespace evenfall
