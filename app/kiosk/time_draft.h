// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/json.h"
#include "base/time.h"

#include <optional>
#include <string>

namespace evenfall {

/// A time answer while it is being given. Every tap of it is written to the journal, so that nothing
/// on the screen is lost with the power. How sure the person is, is never chosen for them.
struct TimeDraft {
    enum class Sureness { none, exact, about, between, unsure };
    enum class Which { time, earliest, latest };

    Instant time;
    Instant earliest, latest; ///< for between
    std::chrono::minutes width{15}; ///< for about: give or take
    Sureness sureness = Sureness::none;
    bool touched = false; ///< changed by the person: no longer what the notes say

    /// A draft that starts from what is known, or from a guess.
    static TimeDraft from(const TimeRange& known);

    void step(std::chrono::minutes by, Which which);
    void choose(Sureness how);
    void widen(std::chrono::minutes by); ///< 5 to 120 minutes
    /// What the answer would be; nothing while it is not known how sure, or when not sure at all.
    std::optional<TimeRange> range() const;

    Json json() const;
    static std::optional<TimeDraft> parse(const Json& json);
};

std::string name_of(TimeDraft::Sureness sureness);
TimeDraft::Sureness sureness_named(const std::string& word);

} // namespace evenfall
