// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/gather.h"

#include "base/file.h"
#include "base/hash.h"
#include "record/diary.h"

#include <array>

namespace evenfall {
namespace {

constexpr std::array columns{
    GatherColumn{"record", "name of the record folder"},
    GatherColumn{"study_code", "whose night"},
    GatherColumn{"night", "its number, from 1"},
    GatherColumn{"evening", "local date of the evening, noon to noon"},
    GatherColumn{"zone", "IANA time zone; empty: times by offset only"},
    GatherColumn{"kit", "id of the kit; empty: not known"},
    GatherColumn{"kit_label", "what is written on the bag"},
    GatherColumn{"need_min", "minutes that the clinic needs"},
    GatherColumn{"verdict", "enough, short, borderline, unknown; contradictory where answers cannot all be true (then no figures)"},
    GatherColumn{"window_at_least_min", "the window of the estimate"},
    GatherColumn{"window_best_guess_min", ""},
    GatherColumn{"window_at_most_min", ""},
    GatherColumn{"needed_at_least_min", "every needed group on"},
    GatherColumn{"needed_best_guess_min", ""},
    GatherColumn{"needed_at_most_min", ""},
    GatherColumn{"chance_enough", "0 to 1"},
    GatherColumn{"asleep_at_least_min", "the same less reported wake"},
    GatherColumn{"asleep_best_guess_min", ""},
    GatherColumn{"asleep_at_most_min", ""},
    GatherColumn{"TIB_min", "diary measures; empty: an answer is missing"},
    GatherColumn{"SOL_min", ""},
    GatherColumn{"WASO_min", ""},
    GatherColumn{"awakenings", ""},
    GatherColumn{"TST_min", ""},
    GatherColumn{"TASAFA_min", ""},
    GatherColumn{"DSE_min", ""},
    GatherColumn{"SE_TIB_percent", "TST / TIB"},
    GatherColumn{"SE_DSE_percent", "TST / DSE"},
    GatherColumn{"sensors_best_guess_min", "on in the window, as sensor=minutes with a space between"},
    GatherColumn{"lost_min", "by cause, as cause=minutes with a space between"},
    GatherColumn{"problems", "codes of contradictions, with a space between"},
    GatherColumn{"notes", "how many the person wrote"},
};

constexpr const char* line_end = "\r\n"; // RFC 4180, 2.1

/// The value at a pointer as it is written in the file; empty where there is none.
std::string value_at(const Json& json, const char* pointer)
{
    const Json::json_pointer at(pointer);
    if (!json.contains(at))
        return "";
    const Json& value = json[at];
    return value.is_string() ? value.get<std::string>() : value.dump();
}

void append_word(std::string& words, const std::string& word) { words += (words.empty() ? "" : " ") + word; }

std::string sensor_minutes(const Json& json)
{
    std::string words;
    const Json::json_pointer at("/estimate/sensors");
    if (json.contains(at))
        for (const auto& [sensor, bounds] : json[at].items())
            if (bounds.contains("best_guess"))
                append_word(words, sensor + "=" + bounds["best_guess"].dump());
    return words;
}

std::string lost_minutes(const Json& json)
{
    std::string words;
    const Json::json_pointer at("/estimate/lost");
    if (json.contains(at))
        for (const Json& loss : json[at])
            append_word(words, loss["cause"].get<std::string>() + "=" + loss["minutes"].dump());
    return words;
}

std::string problem_codes(const Json& json)
{
    std::string words;
    if (json.contains("problems"))
        for (const Json& problem : json["problems"])
            append_word(words, problem["code"].get<std::string>());
    return words;
}

/// Of one file in a list as sha256sum writes it; empty where the list does not name it.
std::string listed_sum(const std::string& sums, const std::string& name)
{
    const std::string end = "  " + name + "\n";
    const std::size_t found = sums.find(end);
    const bool whole = found != std::string::npos && found >= 64 && (found == 64 || sums[found - 65] == '\n');
    return whole ? sums.substr(found - 64, 64) : "";
}

std::string line_of(const std::filesystem::path& folder, const Json& json)
{
    const bool contradictory = json.contains("problems");
    const std::array<std::string, columns.size()> fields{
        std::filesystem::weakly_canonical(folder).filename().string(),
        value_at(json, "/visit/code"),
        value_at(json, "/visit/night"),
        value_at(json, "/evening/value"),
        value_at(json, "/night/zone"),
        value_at(json, "/kit/id"),
        value_at(json, "/kit/label"),
        value_at(json, "/night/need/minutes"),
        contradictory ? "contradictory" : value_at(json, "/estimate/verdict"),
        value_at(json, "/estimate/window/at_least"),
        value_at(json, "/estimate/window/best_guess"),
        value_at(json, "/estimate/window/at_most"),
        value_at(json, "/estimate/needed/at_least"),
        value_at(json, "/estimate/needed/best_guess"),
        value_at(json, "/estimate/needed/at_most"),
        value_at(json, "/estimate/needed/chance_enough"),
        value_at(json, "/estimate/needed_asleep/at_least"),
        value_at(json, "/estimate/needed_asleep/best_guess"),
        value_at(json, "/estimate/needed_asleep/at_most"),
        value_at(json, "/estimate/diary/TIB"),
        value_at(json, "/estimate/diary/SOL"),
        value_at(json, "/estimate/diary/WASO"),
        value_at(json, "/estimate/diary/awakenings"),
        value_at(json, "/estimate/diary/TST"),
        value_at(json, "/estimate/diary/TASAFA"),
        value_at(json, "/estimate/diary/DSE"),
        value_at(json, "/estimate/diary/SE_TIB"),
        value_at(json, "/estimate/diary/SE_DSE"),
        sensor_minutes(json),
        lost_minutes(json),
        problem_codes(json),
        std::to_string(json.contains("notes") ? json["notes"].size() : 0),
    };
    std::string line;
    for (const std::string& field : fields)
        line += (line.empty() ? "" : ",") + csv_field(field);
    return line + line_end;
}

/// Names the file of the record in front of the place.
Problems in_file(const char* name, Problems problems, std::optional<Fault> fault = std::nullopt)
{
    for (Problem& problem : problems) {
        problem.at = name + problem.at;
        problem.fault = fault.value_or(problem.fault);
    }
    return problems;
}

} // namespace

std::span<const GatherColumn> gather_columns() { return columns; }

std::string csv_field(const std::string& text)
{
    if (text.find_first_of(",\"\r\n") == std::string::npos)
        return text;
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"')
            out += '"';
        out += c;
    }
    return out + '"';
}

std::string gather_header()
{
    std::string line;
    for (const GatherColumn& column : columns)
        line += (line.empty() ? "" : ",") + std::string(column.name);
    return line + line_end;
}

Result<std::string> gather_line(const std::filesystem::path& folder)
{
    std::error_code ignored;
    for (const char* name : {"diary.json", "SHA256SUMS"})
        if (std::filesystem::symlink_status(folder / name, ignored).type() == std::filesystem::file_type::not_found)
            return Problem{Fault::refused, "no_record", "",
                           std::string("is no record: it has no ") + name + "; right would be a record folder"};
    const Result<std::string> text = read_file(folder / "diary.json");
    if (!text)
        return text.problems();
    const Result<std::string> sums = read_file(folder / "SHA256SUMS");
    if (!sums)
        return sums.problems();
    if (listed_sum(*sums, "diary.json") != sha256_hex(*text))
        return Problem{Fault::refused, "wrong_sum", "diary.json",
                       "its SHA-256 is not the one in SHA256SUMS; right would be the record as it was written"};
    // Whatever is wrong inside a record is refused, as verify has it.
    const Result<Json> json = parse_json(*text);
    if (!json)
        return in_file("diary.json", json.problems(), Fault::refused);
    const Result<Diary> diary = diary_from_json(*json, Derived::chance_as_written);
    if (!diary)
        return in_file("diary.json", diary.problems(), Fault::refused);
    return line_of(folder, *json);
}

} // namespace evenfall
