// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "base/time.h"

#include <gtest/gtest.h>

#include <type_traits>

namespace evenfall {
namespace {

using std::chrono::hours;
using std::chrono::microseconds;
using std::chrono::minutes;
using std::chrono::seconds;
using std::chrono::sys_days;
using std::chrono::year;

// A wall clock is no point in time: only a zone makes one of the other.
static_assert(!std::is_convertible_v<LocalTime, Instant> && !std::is_constructible_v<Instant, LocalTime>);
static_assert(!std::is_convertible_v<Instant, LocalTime> && !std::is_constructible_v<LocalTime, Instant>);

const Zone& zone(const char* name)
{
    static std::vector<ZonePtr> kept;
    const Result<ZonePtr> found = find_zone(name);
    if (!found)
        throw std::runtime_error(found.problems()[0].text);
    kept.push_back(*found);
    return *kept.back();
}

Result<Instant> instant(std::string_view text, const Zone* where = nullptr)
{
    const Result<WrittenTime> written = parse_time(text);
    return written ? resolve(*written, where) : Result<Instant>(written.problems());
}

Instant utc(int y, unsigned m, unsigned d, Span into_day = {})
{
    return Instant{sys_days{year{y} / std::chrono::month{m} / std::chrono::day{d}}} + into_day;
}

TEST(Time, ReadsRfc3339)
{
    // RFC 3339, section 5.8: the first four describe these instants in UTC.
    EXPECT_EQ(*instant("1985-04-12T23:20:50.52Z"), utc(1985, 4, 12, hours(23) + minutes(20) + seconds(50) + microseconds(520000)));
    EXPECT_EQ(*instant("1996-12-19T16:39:57-08:00"), utc(1996, 12, 20, minutes(39) + seconds(57)));
    EXPECT_EQ(*instant("1996-12-19T16:39:57-08:00"), *instant("1996-12-20T00:39:57Z"));
    EXPECT_EQ(*instant("1937-01-01T12:00:27.87+00:20"), utc(1937, 1, 1, hours(11) + minutes(40) + seconds(27) + microseconds(870000)));
}

TEST(Time, NeedsNoSeconds)
{
    EXPECT_EQ(*instant("2026-10-31T22:05-04:00"), *instant("2026-10-31T22:05:00-04:00"));
    EXPECT_EQ(*instant("2026-10-31t22:05z"), utc(2026, 10, 31, hours(22) + minutes(5)));
}

TEST(Time, KeepsMicroseconds)
{
    EXPECT_EQ(*instant("2026-10-31T22:05:00.000001Z"), utc(2026, 10, 31, hours(22) + minutes(5) + microseconds(1)));
}

TEST(Time, IsRefused_WhenItIsNotOne)
{
    for (const char* text :
         {"", "22:05", "2026-10-31", "2026-10-31 22:05Z", "2026-10-31T22", "2026-02-29T22:05Z", "2026-13-01T22:05Z", "2026-00-01T22:05Z",
          "2026-10-32T22:05Z", "2026-10-31T24:00Z", "2026-10-31T22:60Z", "2026-10-31T22:05:60Z", "2026-10-31T22:05:xxZ", "2026-10-31T22:05:", "2026-10-31T22:05:00.Z",
          "2026-10-31T22:05:00.0000001Z", "2026-10-31T22:05+4:00", "2026-10-31T22:05+0400", "2026-10-31T22:05+24:00",
          "2026-10-31T22:05+04:60", "2026-10-31T22:05Z ", " 2026-10-31T22:05Z", "2026-10-31T22:05Q", "+026-10-31T22:05Z",
          "2026-1-31T22:05Z", "2026-10-3xT22:05Z", "2026-10-31T22:05+xx:00", "2026-10-31T22:05+04.00", "2026-10-31T-2:05Z", "2026-10-31T22:05:00,5Z"}) {
        const Result<WrittenTime> written = parse_time(text);
        ASSERT_FALSE(written.ok()) << text;
        EXPECT_EQ(written.problems()[0].fault, Fault::malformed) << text;
        EXPECT_EQ(written.problems()[0].code, "bad_time") << text;
        EXPECT_NE(written.problems()[0].text.find("right would be"), std::string::npos) << text;
    }
}

TEST(Time, KnowsLeapYears)
{
    EXPECT_TRUE(parse_time("2028-02-29T00:00Z").ok());
    EXPECT_TRUE(parse_time("2000-02-29T00:00Z").ok());
    EXPECT_FALSE(parse_time("1900-02-29T00:00Z").ok());
}

TEST(Time, NeedsTheFilesZone_WithoutAnOffset)
{
    EXPECT_EQ(instant("2026-10-31T22:05").problems()[0].code, "no_zone");
    EXPECT_EQ(*instant("2026-10-31T22:05", &zone("America/New_York")), *instant("2026-10-31T22:05-04:00"));
    EXPECT_EQ(*instant("2026-11-01T22:05", &zone("America/New_York")), *instant("2026-11-01T22:05-05:00"));
}

TEST(Time, IsRefusedNamingBothReadings_WhenItHappensTwice)
{
    // IANA tz database 2025b: 1 Nov 2026 01:30 in New York is 05:30Z and 06:30Z.
    const Problems problems = instant("2026-11-01T01:30", &zone("America/New_York")).problems();
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0].fault, Fault::refused);
    EXPECT_EQ(problems[0].code, "ambiguous_time");
    for (const char* reading : {"2026-11-01T01:30:00-04:00", "2026-11-01T01:30:00-05:00"})
        EXPECT_NE(problems[0].text.find(reading), std::string::npos) << problems[0].text;
    EXPECT_EQ(*instant("2026-11-01T01:30-04:00"), utc(2026, 11, 1, hours(5) + minutes(30)));
    EXPECT_EQ(*instant("2026-11-01T01:30-05:00"), utc(2026, 11, 1, hours(6) + minutes(30)));
}

TEST(Time, IsRefusedNamingBothReadings_WhenItDoesNotExist)
{
    // IANA tz database 2025b: 8 Mar 2026 02:30 does not exist in New York.
    const Problems problems = instant("2026-03-08T02:30", &zone("America/New_York")).problems();
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0].code, "nonexistent_time");
    for (const char* reading : {"2026-03-08T03:30:00-04:00", "2026-03-08T01:30:00-05:00"})
        EXPECT_NE(problems[0].text.find(reading), std::string::npos) << problems[0].text;
}

TEST(Time, IsUnique_AtTheEdgesOfAChange)
{
    const Zone& new_york = zone("America/New_York");
    // 02:00 EDT becomes 01:00 EST: 01:00 to 01:59:59.999999 happen twice, 02:00 does not.
    EXPECT_TRUE(instant("2026-11-01T00:59:59.999999", &new_york).ok());
    EXPECT_FALSE(instant("2026-11-01T01:00", &new_york).ok());
    EXPECT_FALSE(instant("2026-11-01T01:59:59.999999", &new_york).ok());
    EXPECT_EQ(*instant("2026-11-01T02:00", &new_york), utc(2026, 11, 1, hours(7)));
    EXPECT_TRUE(instant("2026-03-08T01:59:59.999999", &new_york).ok());
    EXPECT_FALSE(instant("2026-03-08T02:00", &new_york).ok());
    EXPECT_EQ(*instant("2026-03-08T03:00", &new_york), utc(2026, 3, 8, hours(7)));
}

TEST(Zone, IsRefused_WhenItIsUnknown)
{
    for (const char* name : {"", "America/Saltmarsh", "../etc/passwd", "america/new_york "}) {
        const Result<ZonePtr> found = find_zone(name);
        ASSERT_FALSE(found.ok()) << name;
        EXPECT_EQ(found.problems()[0].code, "unknown_zone") << name;
    }
}

TEST(Zone, TellsItsOffset)
{
    EXPECT_EQ(zone("America/New_York").offset_at(utc(2026, 7, 1)), -hours(4));
    EXPECT_EQ(zone("America/New_York").offset_at(utc(2026, 12, 1)), -hours(5));
    EXPECT_EQ(zone("Asia/Kolkata").offset_at(utc(2026, 7, 1)), hours(5) + minutes(30));
    EXPECT_EQ(zone("Australia/Lord_Howe").offset_at(utc(2026, 1, 1)), hours(11));
    EXPECT_EQ(zone("Australia/Lord_Howe").offset_at(utc(2026, 7, 1)), hours(10) + minutes(30));
}

TEST(Time, WritesWhatItReads)
{
    for (const char* text : {"2026-10-31T22:05:00-04:00", "2026-10-31T22:05:07.5+05:30", "2026-01-01T00:00:00.000001+00:00",
                             "1999-12-31T23:59:59+14:00", "1969-12-31T23:59:59.25-12:00"}) {
        const Result<WrittenTime> written = parse_time(text);
        ASSERT_TRUE(written.ok()) << text;
        EXPECT_EQ(format_time(*resolve(*written, nullptr), *written->offset), text);
    }
}

TEST(Time, WritesTheDateAndTheOffset)
{
    EXPECT_EQ(format_date(LocalTime{utc(2026, 3, 5, hours(23)).time_since_epoch()}), "2026-03-05");
    EXPECT_EQ(format_date(LocalTime{Span(-1)}), "1969-12-31");
    EXPECT_EQ(format_offset(seconds(0)), "+00:00");
    EXPECT_EQ(format_offset(-hours(5)), "-05:00");
    EXPECT_EQ(format_offset(hours(5) + minutes(30)), "+05:30");
    EXPECT_EQ(format_offset(-(hours(3) + minutes(30))), "-03:30");
}

TEST(TimeOfDay, IsReadFromFourDigitsOnly)
{
    EXPECT_EQ(*parse_time_of_day("00:00"), minutes(0));
    EXPECT_EQ(*parse_time_of_day("23:59"), minutes(1439));
    for (const char* text : {"", "24:00", "12:60", "9:05", "09:5", "09.05", "09:05:00", "ab:cd", "09:x5", "09:5x", "-1:00"})
        EXPECT_FALSE(parse_time_of_day(text).ok()) << text;
}

TEST(Evening, RunsFromNoonToNoon)
{
    const auto of = [](Instant when) { return evening_of(LocalTime{when.time_since_epoch()}); };
    EXPECT_EQ(of(utc(2026, 11, 1, hours(2))), year{2026} / 10 / 31);
    EXPECT_EQ(of(utc(2026, 10, 31, hours(22))), year{2026} / 10 / 31);
    EXPECT_EQ(of(utc(2026, 10, 31, hours(12))), year{2026} / 10 / 31);
    EXPECT_EQ(of(utc(2026, 10, 31, hours(12) - microseconds(1))), year{2026} / 10 / 30);
    EXPECT_EQ(of(utc(2027, 1, 1, hours(3))), year{2026} / 12 / 31);
}

TEST(TimeRange, IsAPoint_WhenItsEndsAreTheSame)
{
    EXPECT_TRUE(TimeRange::exactly(utc(2026, 1, 1)).exact());
    const TimeRange range{utc(2026, 1, 1), utc(2026, 1, 1, hours(1))};
    EXPECT_FALSE(range.exact());
    EXPECT_EQ(range.width(), hours(1));
    EXPECT_EQ(range.middle(), utc(2026, 1, 1, minutes(30)));
}

} // namespace
} // namespace evenfall
