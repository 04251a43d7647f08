// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/json.h"
#include "base/time.h"

#include <array>
#include <optional>
#include <string>

namespace evenfall {

/// A time as a person sets it: what a clock on the wall showed. In the hour that comes twice and in
/// the one that the clocks skip it may mean two moments; which of them is asked, never chosen.
struct WallTime {
    LocalTime shown;
    /// The moment that is meant; both ends where the person does not know which of the two. Absent
    /// until they were asked.
    std::optional<TimeRange> meant;

    static WallTime of(Instant when, const Zone& zone);
    WallTime moved(std::chrono::minutes by, const Zone& zone) const;
    /// A suggestion of ours says nothing of which moment the person means.
    void forget_doubtful(const Zone& zone);
    bool operator==(const WallTime&) const = default;
};

/// A time answer while it is being given. Every tap of it is written to the journal, so that nothing
/// on the screen is lost with the power. How sure the person is, is never chosen for them.
struct TimeDraft {
    enum class Sureness { none, exact, about, between, unsure };
    enum class Which { time, earliest, latest };
    /// Of the two moments that a doubtful wall time may mean, in their own order.
    enum class Meant { first, second, either };

    WallTime time;
    WallTime earliest, latest;      ///< for between
    std::chrono::minutes width{15}; ///< for about: give or take
    Sureness sureness = Sureness::none;
    bool touched = false; ///< changed by the person: no longer what the notes say

    /// A draft that starts from what is known.
    static TimeDraft from(const TimeRange& known, const Zone& zone);
    /// Nothing is known: a place to begin at.
    static TimeDraft guess(Instant near, const Zone& zone);

    void step(std::chrono::minutes by, Which which, const Zone& zone);
    void choose(Sureness how);
    void widen(std::chrono::minutes by); ///< 5 to 120 minutes

    /// The first of the times that the answer needs whose moment is in doubt.
    std::optional<Which> doubt() const;
    void settle(Which which, Meant meant, const Zone& zone);

    /// What the answer would be; nothing while it is not known how sure, or when not sure at all, or
    /// while there is a doubt.
    std::optional<TimeRange> range() const;

    const WallTime& of(Which which) const { return this->*member(which); }
    Json json() const;
    static std::optional<TimeDraft> parse(const Json& json);

  private:
    static WallTime TimeDraft::* member(Which which);
    void keep_order(Which moved);
};

/// The two moments of a wall time that is not unique, the earlier one first.
std::array<Instant, 2> two_moments(const LocalReading& reading);

std::string name_of(TimeDraft::Sureness sureness);
TimeDraft::Sureness sureness_named(const std::string& word);

} // namespace evenfall
