// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace evenfall {

/// What kind of fault a problem is. The numbers are the exit status of the command line; where
/// several problems come together the highest wins.
enum class Fault {
    refused = 1,   ///< in the format, but impossible, contradictory or not allowed here
    malformed = 2, ///< not JSON, an unknown or missing key, a wrong type, bad usage
    io = 3,        ///< a file could not be read or written
};

/// One thing that is wrong, where it is, and what would be right.
struct Problem {
    Fault fault = Fault::refused;
    std::string code; ///< stable word for programs, such as "unknown_key"
    std::string at;   ///< JSON pointer (RFC 6901) or empty for the whole
    std::string text; ///< plain English for staff: what is wrong and what would be right
    bool operator==(const Problem&) const = default;
};

using Problems = std::vector<Problem>;

/// Highest exit status among the problems; 0 for none.
int exit_status(const Problems& problems);

/// `file: /pointer: text`, one line, no newline at the end.
std::string describe(const std::string& file, const Problem& problem);

/// A value, or the list of everything that kept it from being one. Never both, never neither.
template <class T>
class [[nodiscard]] Result {
  public:
    Result(T value) : state_(std::move(value)) {}
    Result(Problem problem) : state_(Problems{std::move(problem)}) {}
    Result(Problems problems) : state_(std::move(problems)) {}

    bool ok() const { return std::holds_alternative<T>(state_); }
    explicit operator bool() const { return ok(); }
    /// The value. Only when ok().
    const T& value() const& { return std::get<T>(state_); }
    T& value() & { return std::get<T>(state_); }
    T&& value() && { return std::get<T>(std::move(state_)); }
    const T& operator*() const& { return value(); }
    T& operator*() & { return value(); }
    const T* operator->() const { return &value(); }
    T* operator->() { return &value(); }
    /// The problems; empty when ok().
    Problems problems() const { return ok() ? Problems{} : std::get<Problems>(state_); }

  private:
    std::variant<T, Problems> state_;
};

struct Done {}; ///< the value of something that only succeeds or fails
using Status = Result<Done>;

} // namespace evenfall
