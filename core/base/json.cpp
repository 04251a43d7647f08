// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "base/json.h"

#include <algorithm>
#include <cmath>

namespace evenfall {
namespace {

constexpr size_t depth_limit = 64;

/// Walks the document once before it is built, for what the library lets pass: the same key twice
/// in one object (it would keep one of the two silently), and depth that could exhaust the stack.
class StrictWalk final : public nlohmann::json_sax<Json> {
  public:
    Problems problems;

    bool null() override { return leaf(); }
    bool boolean(bool) override { return leaf(); }
    bool number_integer(number_integer_t) override { return leaf(); }
    bool number_unsigned(number_unsigned_t) override { return leaf(); }
    bool number_float(number_float_t, const string_t&) override { return leaf(); } // one too large never gets here
    bool string(string_t&) override { return leaf(); }
    bool binary(binary_t&) override { return leaf(); }
    bool start_object(std::size_t) override { return open(false); }
    bool start_array(std::size_t) override { return open(true); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }

    bool key(string_t& name) override
    {
        Level& level = levels_.back();
        level.name = name;
        if (!level.seen.insert(name).second)
            return fail("duplicate_key", "\"" + name + "\" stands here twice; right would be once");
        return true;
    }

    bool parse_error(std::size_t position, const std::string&, const nlohmann::detail::exception& e) override
    {
        std::string what = e.what();
        // "[json.exception.parse_error.101] parse error at line 1, column 2: ..." -> the useful end
        if (const size_t cut = what.find("parse error"); cut != std::string::npos)
            what = what.substr(cut);
        problems.push_back({Fault::malformed, "not_json", "",
                            "not JSON (byte " + std::to_string(position) + "): " + what +
                                "; right would be one JSON document in UTF-8"});
        return false;
    }

  private:
    struct Level {
        bool array = false;
        size_t index = 0;
        std::string name;
        std::set<std::string> seen;
    };
    std::vector<Level> levels_;

    std::string here() const
    {
        std::string at;
        for (const Level& level : levels_)
            at = level.array ? pointer(at, level.index) : pointer(at, level.name);
        return at;
    }
    bool fail(std::string code, std::string text)
    {
        problems.push_back({Fault::malformed, std::move(code), here(), std::move(text)});
        return false;
    }
    bool leaf()
    {
        if (!levels_.empty() && levels_.back().array)
            ++levels_.back().index;
        return true;
    }
    bool open(bool array)
    {
        if (levels_.size() >= depth_limit)
            return fail("too_deep", "nested more than 64 deep");
        levels_.push_back({array, 0, {}, {}});
        return true;
    }
    bool close()
    {
        levels_.pop_back();
        return leaf();
    }
};

} // namespace

bool plain_id(std::string_view text)
{
    if (text.empty() || text.size() > 40 || text[0] < 'a' || text[0] > 'z')
        return false;
    return std::all_of(text.begin(), text.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-' || c == '_';
    });
}

bool plain_study_code(std::string_view text)
{
    const auto letter_or_digit = [](char c) {
        return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    };
    return !text.empty() && text.size() <= 32 && letter_or_digit(text[0]) &&
           std::all_of(text.begin(), text.end(),
                       [&](char c) { return letter_or_digit(c) || c == '-' || c == '_'; });
}

Result<Json> parse_json(std::string_view text)
{
    StrictWalk walk;
    if (!Json::sax_parse(text.begin(), text.end(), &walk))
        return walk.problems;
    return Json::parse(text.begin(), text.end());
}

std::string pointer(std::string_view at, std::string_view key)
{
    std::string out(at);
    out += '/';
    for (char c : key) {
        if (c == '~')
            out += "~0";
        else if (c == '/')
            out += "~1";
        else
            out += c;
    }
    return out;
}

std::string pointer(std::string_view at, size_t index)
{
    return std::string(at) + "/" + std::to_string(index);
}

ObjectReader::ObjectReader(const Json& json, std::string at, Problems& problems)
    : json_(json.is_object() ? &json : nullptr), at_(std::move(at)), problems_(problems)
{
    if (!json_)
        problems_.push_back({Fault::malformed, "wrong_type", at_,
                             std::string("a ") + json.type_name() + "; right would be an object"});
}

void ObjectReader::fault(std::string_view key, std::string code, std::string text, Fault kind)
{
    problems_.push_back({kind, std::move(code), at(key), std::move(text)});
}

bool ObjectReader::has(std::string_view key) const
{
    return json_ && json_->contains(std::string(key));
}

const Json* ObjectReader::member(std::string_view key)
{
    known_.emplace(key);
    if (!json_)
        return nullptr;
    const auto found = json_->find(std::string(key));
    return found == json_->end() ? nullptr : &*found;
}

const Json* ObjectReader::needed(std::string_view key)
{
    const Json* found = member(key);
    if (!found && json_)
        fault(key, "missing_key", "\"" + std::string(key) + "\" is missing; it must be there");
    return found;
}

std::optional<std::string> ObjectReader::text(std::string_view key, bool must)
{
    const Json* found = must ? needed(key) : member(key);
    if (!found)
        return std::nullopt;
    if (!found->is_string()) {
        fault(key, "wrong_type", std::string("a ") + found->type_name() + "; right would be a string");
        return std::nullopt;
    }
    if (found->get_ref<const std::string&>().empty()) {
        fault(key, "empty", "an empty string; right would be some text, or no such key");
        return std::nullopt;
    }
    return found->get<std::string>();
}

std::optional<std::string> ObjectReader::id(std::string_view key, bool must)
{
    std::optional<std::string> found = text(key, must);
    if (found && !plain_id(*found)) {
        fault(key, "bad_id",
              "\"" + *found +
                  "\" is not an id; right would be small letters, digits, - and _, beginning with a "
                  "letter, at most 40");
        return std::nullopt;
    }
    return found;
}

std::optional<long> ObjectReader::integer(std::string_view key, long least, long most, bool must)
{
    const Json* found = must ? needed(key) : member(key);
    if (!found)
        return std::nullopt;
    const std::string right = "right would be a whole number from " + std::to_string(least) + " to " +
                              std::to_string(most);
    if (!found->is_number_integer()) {
        fault(key, "wrong_type", std::string("not a whole number (") + found->dump() + "); " + right);
        return std::nullopt;
    }
    // An unsigned value beyond the signed range would turn negative when read as signed.
    const bool huge = found->is_number_unsigned() &&
                      found->get<std::uint64_t>() > static_cast<std::uint64_t>(most < 0 ? 0 : most);
    if (huge || found->get<std::int64_t>() < least || found->get<std::int64_t>() > most) {
        fault(key, "out_of_range", found->dump() + " is out of range; " + right);
        return std::nullopt;
    }
    return static_cast<long>(found->get<std::int64_t>());
}

std::optional<bool> ObjectReader::boolean(std::string_view key, bool must)
{
    const Json* found = must ? needed(key) : member(key);
    if (!found)
        return std::nullopt;
    if (!found->is_boolean()) {
        fault(key, "wrong_type",
              std::string("a ") + found->type_name() + "; right would be true or false");
        return std::nullopt;
    }
    return found->get<bool>();
}

std::optional<std::string> ObjectReader::word(std::string_view key,
                                              std::initializer_list<std::string_view> allowed, bool must)
{
    std::optional<std::string> found = text(key, must);
    if (!found || std::find(allowed.begin(), allowed.end(), *found) != allowed.end())
        return found;
    std::string list;
    for (std::string_view one : allowed)
        list += (list.empty() ? "" : ", ") + std::string(one);
    fault(key, "unknown_word", "\"" + *found + "\" is not known; right would be one of: " + list);
    return std::nullopt;
}

std::optional<Span> ObjectReader::minutes(std::string_view key, bool must)
{
    const Json* found = must ? needed(key) : member(key);
    if (!found)
        return std::nullopt;
    if (!found->is_number()) {
        fault(key, "wrong_type",
              std::string("a ") + found->type_name() + "; right would be a number of minutes");
        return std::nullopt;
    }
    const double value = found->get<double>();
    if (!(value >= 0.0) || value > 7 * 24 * 60.0) {
        fault(key, "out_of_range", found->dump() + " minutes; right would be 0 to 10080");
        return std::nullopt;
    }
    // One microsecond is 1/60,000,000 min: what is left over after rounding is either the noise of
    // the binary fraction or a decimal that is too fine to be kept exactly.
    const double ticks = value * 60e6;
    const double whole = std::round(ticks);
    if (std::abs(ticks - whole) > 0.01) {
        fault(key, "too_fine",
              found->dump() + " minutes is finer than we can keep exactly; right would be at most "
                              "seven decimals, in whole microseconds");
        return std::nullopt;
    }
    return Span(static_cast<Span::rep>(whole));
}

std::optional<LocalText> ObjectReader::local_text(std::string_view key, bool must)
{
    const Json* found = must ? needed(key) : member(key);
    if (!found)
        return std::nullopt;
    if (!found->is_object() || found->empty()) {
        fault(key, "wrong_type", "right would be text by language, such as {\"en\": \"Chest belt\"}");
        return std::nullopt;
    }
    LocalText text;
    for (const auto& [language, value] : found->items()) {
        const bool code = language.size() == 2 && language[0] >= 'a' && language[0] <= 'z' &&
                          language[1] >= 'a' && language[1] <= 'z';
        if (!code || !value.is_string() || value.get_ref<const std::string&>().empty()) {
            problems_.push_back({Fault::malformed, "bad_text", pointer(at(key), language),
                                 "right would be a two-letter language with some text, such as "
                                 "\"en\": \"Chest belt\""});
            return std::nullopt;
        }
        text[language] = value.get<std::string>();
    }
    return text;
}

std::vector<std::pair<const Json*, std::string>> ObjectReader::elements(std::string_view key, bool must)
{
    std::vector<std::pair<const Json*, std::string>> out;
    const Json* found = must ? needed(key) : member(key);
    if (!found)
        return out;
    if (!found->is_array()) {
        fault(key, "wrong_type", std::string("a ") + found->type_name() + "; right would be a list");
        return out;
    }
    for (size_t i = 0; i < found->size(); ++i)
        out.emplace_back(&(*found)[i], pointer(at(key), i));
    return out;
}

std::optional<std::vector<std::string>> ObjectReader::words(std::string_view key, bool must)
{
    const Json* found = must ? needed(key) : member(key);
    if (!found)
        return std::nullopt;
    std::vector<std::string> out;
    if (!found->is_array()) {
        fault(key, "wrong_type",
              std::string("a ") + found->type_name() + "; right would be a list of strings");
        return std::nullopt;
    }
    for (size_t i = 0; i < found->size(); ++i) {
        const Json& one = (*found)[i];
        if (!one.is_string() || one.get_ref<const std::string&>().empty()) {
            problems_.push_back({Fault::malformed, "wrong_type", pointer(at(key), i),
                                 "right would be a string with some text"});
            return std::nullopt;
        }
        if (std::find(out.begin(), out.end(), one.get_ref<const std::string&>()) != out.end()) {
            problems_.push_back({Fault::malformed, "duplicate", pointer(at(key), i),
                                 one.dump() + " stands here twice; right would be once"});
            return std::nullopt;
        }
        out.push_back(one.get<std::string>());
    }
    return out;
}

void ObjectReader::finish()
{
    if (!json_)
        return;
    for (const auto& [key, value] : json_->items()) {
        if (known_.contains(key))
            continue;
        std::string list;
        for (const std::string& one : known_)
            list += (list.empty() ? "" : ", ") + one;
        fault(key, "unknown_key", "\"" + key + "\" is not a key here; right would be one of: " + list);
    }
}

bool check_format(ObjectReader& reader, std::string_view expected)
{
    const std::optional<std::string> format = reader.text("format");
    if (format && *format != expected) {
        reader.fault("format", "wrong_format",
                     "\"" + *format + "\"; right would be \"" + std::string(expected) + "\"");
        return false;
    }
    return format.has_value();
}

Json minutes_json(Span span)
{
    const auto ticks = span.count();
    if (ticks % 60000000 == 0)
        return ticks / 60000000;
    return static_cast<double>(ticks) / 60e6; // nlohmann prints the shortest text that reads back the same
}

} // namespace evenfall
