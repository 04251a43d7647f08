// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"
#include "base/time.h"

#include <initializer_list>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

/// Files are written with their keys in the order we chose, so that they can be compared by eye.
using Json = nlohmann::ordered_json;

/// Text in the languages of a file ("en", "es", ...), for what a clinic writes itself.
using LocalText = std::map<std::string, std::string>;

/// Strict JSON: UTF-8, no comments, no duplicate keys, nothing after the end, at most 64 deep.
/// Error (malformed): line and column, or the pointer of the duplicate key.
Result<Json> parse_json(std::string_view text);

/// Pointer of a member or element: "/a" + "b/c" -> "/a/b~1c" (RFC 6901).
std::string pointer(std::string_view at, std::string_view key);
std::string pointer(std::string_view at, size_t index);

/// Lower-case id: letters, digits, '-', '_'; starts with a letter; at most 40.
bool plain_id(std::string_view text);

/// A study code, also in file names: letters, digits, - and _, at most 32, not beginning with - or _.
bool plain_study_code(std::string_view text);

/// Reads one JSON object field by field. Every fault is added to the list with its pointer, and
/// reading goes on, so that one run names them all. A value with a fault comes back empty.
class ObjectReader {
  public:
    ObjectReader(const Json& json, std::string at, Problems& problems);

    const std::string& at() const { return at_; }
    std::string at(std::string_view key) const { return pointer(at_, key); }
    Problems& problems() { return problems_; }

    bool has(std::string_view key) const;
    /// The member, or null when absent. Marks the key as known.
    const Json* member(std::string_view key);
    /// The same; absence is a fault.
    const Json* needed(std::string_view key);

    std::optional<std::string> text(std::string_view key, bool must = true);
    /// See plain_id.
    std::optional<std::string> id(std::string_view key, bool must = true);
    std::optional<long> integer(std::string_view key, long least, long most, bool must = true);
    std::optional<bool> boolean(std::string_view key, bool must = true);
    /// One of the given words.
    std::optional<std::string> word(std::string_view key, std::initializer_list<std::string_view> allowed,
                                    bool must = true);
    /// Minutes as an exact decimal (at most seven decimals), 0 to a week.
    std::optional<Span> minutes(std::string_view key, bool must = true);
    std::optional<LocalText> local_text(std::string_view key, bool must = true);
    /// The elements of an array with their pointers; empty when absent or faulty.
    std::vector<std::pair<const Json*, std::string>> elements(std::string_view key, bool must = true);
    /// Array of distinct strings.
    std::optional<std::vector<std::string>> words(std::string_view key, bool must = true);

    void fault(std::string_view key, std::string code, std::string text, Fault fault = Fault::malformed);

    /// Refuses every key that was never asked for. Call last.
    void finish();

  private:
    const Json* json_;
    std::string at_;
    Problems& problems_;
    std::set<std::string, std::less<>> known_;
};

/// Checks "format" and reports a wrong one; true when it is as expected.
bool check_format(ObjectReader& reader, std::string_view expected);

/// Minutes as a JSON number, at most seven decimals, without the noise of binary fractions.
Json minutes_json(Span span);

} // namespace evenfall
