// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/json.h"
#include "base/time.h"

#include <chrono>
#include <string>
#include <variant>
#include <vector>

namespace evenfall {

struct Text;

/// A value inside a sentence. The language decides how it is written: a moment becomes a clock time
/// of that locale, a code or phone number is kept in its own direction.
struct TextArg {
    struct Moment { Instant when; bool operator==(const Moment&) const = default; };
    struct Count { long value; bool operator==(const Count&) const = default; };
    struct Code { std::string value; bool operator==(const Code&) const = default; };
    struct Part { std::string id; LocalText own; bool operator==(const Part&) const = default; };
    /// On the wall, such as 22:05; `full_hour` for the hours of an axis, where the minutes are 0.
    struct TimeOfDay { std::chrono::minutes time; bool full_hour = false; bool operator==(const TimeOfDay&) const = default; };
    struct Date { std::string iso; bool operator==(const Date&) const = default; }; ///< yyyy-mm-dd
    struct Word { std::string id; bool operator==(const Word&) const = default; }; ///< a text of its own
    std::variant<Moment, Count, Code, Part, TimeOfDay, Date, Word> value;
    bool operator==(const TextArg&) const = default;
};

/// A sentence by its id, with what goes into it. Core has no words of its own for people; a lookup
/// turns this into a language. What a clinic wrote itself wins where it has the language.
struct Text {
    std::string id;
    std::vector<TextArg> args;
    LocalText own;
    bool empty() const { return id.empty() && own.empty(); }
    bool operator==(const Text&) const = default;
};

} // namespace evenfall
