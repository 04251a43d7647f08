// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "base/time.h"

#include <array>
#include <cstdio>
#include <cstdlib>
#include <date/tz.h>

namespace evenfall {
namespace {

using std::chrono::seconds;

Problem not_a_time(std::string_view text)
{
    return {Fault::malformed, "bad_time", "",
            "\"" + std::string(text) +
                "\" is not a time; right would be 2026-10-31T22:05:00-04:00, or "
                "2026-10-31T22:05 with the file's zone"};
}

class SystemZone final : public Zone {
  public:
    explicit SystemZone(const date::time_zone* zone) : zone_(zone) {}

    std::string name() const override { return zone_->name(); }

    seconds offset_at(Instant when) const override
    {
        return zone_->get_info(date::sys_time<Span>(when.time_since_epoch())).offset;
    }

    LocalReading read(LocalTime local) const override
    {
        const date::local_time<Span> wall(local.time_since_epoch());
        const date::local_info info = zone_->get_info(wall);
        LocalReading reading;
        reading.first_offset = info.first.offset;
        reading.second_offset = info.first.offset;
        if (info.result == date::local_info::ambiguous)
            reading.kind = LocalReading::Kind::ambiguous;
        if (info.result == date::local_info::nonexistent)
            reading.kind = LocalReading::Kind::nonexistent;
        if (reading.kind != LocalReading::Kind::unique)
            reading.second_offset = info.second.offset;
        reading.first = Instant(local.time_since_epoch() - reading.first_offset);
        reading.second = Instant(local.time_since_epoch() - reading.second_offset);
        return reading;
    }

  private:
    const date::time_zone* zone_;
};

/// Reads exactly `count` digits at `from`; -1 where they are not.
int digits(std::string_view text, size_t from, size_t count)
{
    if (from + count > text.size())
        return -1;
    int value = 0;
    for (size_t i = from; i < from + count; ++i) {
        if (text[i] < '0' || text[i] > '9')
            return -1;
        value = value * 10 + (text[i] - '0');
    }
    return value;
}

bool has(std::string_view text, size_t at, char c) { return at < text.size() && text[at] == c; }

std::string two(long value)
{
    std::array<char, 24> buffer{};
    std::snprintf(buffer.data(), buffer.size(), "%02ld", value);
    return buffer.data();
}

} // namespace

Result<ZonePtr> find_zone(std::string_view name)
{
    try {
        return ZonePtr(std::make_shared<SystemZone>(date::locate_zone(std::string(name))));
    } catch (const std::exception&) {
        return Problem{Fault::refused, "unknown_zone", "",
                       "\"" + std::string(name) +
                           "\" is not a time zone of the IANA database; right would be a name "
                           "such as America/New_York"};
    }
}

Result<WrittenTime> parse_time(std::string_view text)
{
    const int year = digits(text, 0, 4);
    const int month = digits(text, 5, 2);
    const int day = digits(text, 8, 2);
    const int hour = digits(text, 11, 2);
    const int minute = digits(text, 14, 2);
    const bool separators = has(text, 4, '-') && has(text, 7, '-') &&
                            (has(text, 10, 'T') || has(text, 10, 't')) && has(text, 13, ':');
    if (year < 0 || month < 0 || day < 0 || hour < 0 || minute < 0 || !separators)
        return not_a_time(text);
    const std::chrono::year_month_day date{std::chrono::year(year),
                                           std::chrono::month(static_cast<unsigned>(month)),
                                           std::chrono::day(static_cast<unsigned>(day))};
    if (!date.ok() || hour > 23 || minute > 59)
        return not_a_time(text);

    size_t at = 16;
    int second = 0;
    Span fraction{0};
    if (has(text, at, ':')) {
        second = digits(text, at + 1, 2);
        if (second < 0 || second > 59) // leap seconds do not exist in POSIX time
            return not_a_time(text);
        at += 3;
        if (has(text, at, '.')) {
            ++at;
            Span unit{100000};
            const size_t begin = at;
            for (; at < text.size() && text[at] >= '0' && text[at] <= '9'; ++at) {
                if (at - begin == 6)
                    return not_a_time(text);
                fraction += unit * (text[at] - '0');
                unit /= 10;
            }
            if (at == begin)
                return not_a_time(text);
        }
    }

    WrittenTime written;
    if (at < text.size()) {
        if (text[at] == 'Z' || text[at] == 'z') {
            written.offset = seconds(0);
            ++at;
        } else if (text[at] == '+' || text[at] == '-') {
            const int offset_hour = digits(text, at + 1, 2);
            const int offset_minute = digits(text, at + 4, 2);
            if (offset_hour < 0 || offset_hour > 23 || offset_minute < 0 || offset_minute > 59 ||
                !has(text, at + 3, ':'))
                return not_a_time(text);
            const seconds size = std::chrono::hours(offset_hour) + std::chrono::minutes(offset_minute);
            written.offset = text[at] == '+' ? size : -size;
            at += 6;
        }
    }
    if (at != text.size())
        return not_a_time(text);
    written.local = LocalTime(std::chrono::local_days(date).time_since_epoch()) +
                    std::chrono::hours(hour) + std::chrono::minutes(minute) + seconds(second) +
                    fraction;
    return written;
}

Result<Instant> resolve(const WrittenTime& written, const Zone* zone)
{
    if (written.offset)
        return Instant(written.local.time_since_epoch() - *written.offset);
    if (!zone)
        return Problem{Fault::refused, "no_zone", "",
                       "the time has no offset and the file has no zone; right would be an offset "
                       "such as -04:00, or \"zone\" in the file"};
    const LocalReading reading = zone->read(written.local);
    if (reading.kind == LocalReading::Kind::unique)
        return reading.first;
    const bool twice = reading.kind == LocalReading::Kind::ambiguous;
    return Problem{Fault::refused, twice ? "ambiguous_time" : "nonexistent_time", "",
                   std::string(twice ? "this local time happens twice in "
                                     : "this local time does not exist in ") +
                       zone->name() + "; right would be " +
                       format_time(reading.first, twice ? reading.first_offset : reading.second_offset) +
                       " or " +
                       format_time(reading.second, twice ? reading.second_offset : reading.first_offset)};
}

std::string format_offset(std::chrono::seconds offset)
{
    const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(offset).count();
    const auto size = std::abs(minutes);
    return (minutes < 0 ? "-" : "+") + two(size / 60) + ":" + two(size % 60);
}

std::string format_date(LocalTime local)
{
    const std::chrono::year_month_day date(std::chrono::floor<std::chrono::days>(local));
    std::array<char, 16> buffer{};
    std::snprintf(buffer.data(), buffer.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return buffer.data();
}

std::string format_time(Instant when, std::chrono::seconds offset)
{
    // An offset with seconds (before 1972 or so) cannot be written; the instant stays the same.
    const auto whole = std::chrono::floor<std::chrono::minutes>(offset);
    const LocalTime local(when.time_since_epoch() + whole);
    const auto day = std::chrono::floor<std::chrono::days>(local);
    const std::chrono::hh_mm_ss clock(local - day);
    std::string text = format_date(local) + "T" + two(clock.hours().count()) + ":" +
                       two(clock.minutes().count()) + ":" + two(clock.seconds().count());
    if (clock.subseconds().count() != 0) {
        std::array<char, 16> buffer{};
        std::snprintf(buffer.data(), buffer.size(), ".%06ld",
                      static_cast<long>(clock.subseconds().count()));
        std::string decimals = buffer.data();
        while (decimals.back() == '0')
            decimals.pop_back();
        text += decimals;
    }
    return text + format_offset(whole);
}

Result<std::chrono::minutes> parse_time_of_day(std::string_view text)
{
    const int hour = digits(text, 0, 2);
    const int minute = digits(text, 3, 2);
    if (text.size() != 5 || text[2] != ':' || hour < 0 || hour > 23 || minute < 0 || minute > 59)
        return Problem{Fault::malformed, "bad_time_of_day", "",
                       "\"" + std::string(text) +
                           "\" is not a time of day; right would be 00:00 to 23:59, such as 22:05"};
    return std::chrono::hours(hour) + std::chrono::minutes(minute);
}

std::chrono::year_month_day evening_of(LocalTime local)
{
    return std::chrono::year_month_day(
        std::chrono::floor<std::chrono::days>(local - std::chrono::hours(12)));
}

std::string format_time_of_day(std::chrono::minutes time)
{
    std::array<char, 32> buffer{};
    std::snprintf(buffer.data(), buffer.size(), "%02ld:%02ld", static_cast<long>(time.count() / 60),
                  static_cast<long>(time.count() % 60));
    return buffer.data();
}

} // namespace evenfall
