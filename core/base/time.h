// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"

#include <chrono>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace evenfall {

/// A length of time, in whole microseconds: fine enough that every decimal of a minute down to
/// 0.0000001 min and every fraction that a file carries is exact.
using Span = std::chrono::microseconds;

/// A point in time (UTC, without leap seconds, as POSIX counts).
using Instant = std::chrono::sys_time<Span>;

/// What a wall clock shows, without saying where the clock hangs. Mixing it with an Instant does
/// not compile; only a Zone turns one into the other.
using LocalTime = std::chrono::local_time<Span>;

/// The two readings of a local time, when there is not exactly one.
struct LocalReading {
    enum class Kind { unique, ambiguous, nonexistent };
    Kind kind = Kind::unique;
    /// unique: the instant, twice. ambiguous: the earlier and the later of the two.
    /// nonexistent: the instants named by the offsets before and after the jump.
    Instant first;
    Instant second;
    std::chrono::seconds first_offset{0};
    std::chrono::seconds second_offset{0};
};

/// The rules of one time zone. Passed in wherever wall time meets instants.
class Zone {
  public:
    virtual ~Zone() = default;
    virtual std::string name() const = 0; ///< IANA name
    virtual std::chrono::seconds offset_at(Instant when) const = 0; ///< east of Greenwich
    virtual LocalReading read(LocalTime local) const = 0;

    LocalTime local(Instant when) const { return LocalTime{when.time_since_epoch() + offset_at(when)}; }
};

using ZonePtr = std::shared_ptr<const Zone>;

/// A zone of the system's IANA database. Error: unknown name, or no database.
/// The packaged date library is right from 1900 up to 2037.
Result<ZonePtr> find_zone(std::string_view name);

/// A time as files carry it: an instant with the offset it was written with, or a local time that
/// still needs the file's zone.
struct WrittenTime {
    LocalTime local;
    std::optional<std::chrono::seconds> offset;
};

/// RFC 3339 date-time; the seconds, and the offset, may be left out. At most six decimals of a
/// second. Error (malformed): says what a time looks like.
Result<WrittenTime> parse_time(std::string_view text);

/// The instant that a written time names. Without an offset the zone decides; an ambiguous or
/// impossible local time is refused, naming both readings. Error (refused) also without a zone.
Result<Instant> resolve(const WrittenTime& written, const Zone* zone);

/// RFC 3339 with offset, seconds always, decimals only where they are needed.
std::string format_time(Instant when, std::chrono::seconds offset);

/// The offset alone: +01:00, -05:00, or +05:30. Whole minutes only.
std::string format_offset(std::chrono::seconds offset);

/// Calendar date of a local time, yyyy-mm-dd.
std::string format_date(LocalTime local);

/// A wall-clock time of day, "HH:MM". Error (malformed) when it is not 00:00 to 23:59.
Result<std::chrono::minutes> parse_time_of_day(std::string_view text);
/// "21:35"
std::string format_time_of_day(std::chrono::minutes time);

/// The local evening that a moment belongs to, counted from noon to noon: 02:00 on the 1st belongs
/// to the evening of the last day of the month before.
std::chrono::year_month_day evening_of(LocalTime local);

/// A time that is known to lie in [earliest, latest]; a point when both are the same.
struct TimeRange {
    Instant earliest;
    Instant latest;

    static TimeRange exactly(Instant when) { return {when, when}; }
    bool exact() const { return earliest == latest; }
    Span width() const { return latest - earliest; }
    Instant middle() const { return earliest + width() / 2; }
    bool operator==(const TimeRange&) const = default;
};

} // namespace evenfall
