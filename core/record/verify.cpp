// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/verify.h"

#include "base/file.h"
#include "base/hash.h"
#include "record/diary_edf.h"
#include "record/edf.h"
#include "record/fhir.h"
#include "record/fhir_check.h"
#include "record/folder.h"
#include "record/summary.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace evenfall {
namespace {

constexpr const char* sums_name = "SHA256SUMS";
constexpr std::array always{"diary.json", "diary.edf", "diary.fhir.json"};

bool always_there(std::string_view name)
{
    return std::find(always.begin(), always.end(), name) != always.end();
}

/// Pointer of the first value, in the order of `a`, that is not the same in both.
std::optional<std::string> first_difference(const Json& a, const Json& b, const std::string& at)
{
    if (a.type() == b.type() && a.is_object()) {
        auto other = b.begin();
        for (auto each = a.begin(); each != a.end(); ++each, ++other) {
            const std::string here = pointer(at, std::string_view(each.key()));
            if (other == b.end() || !b.contains(each.key()))
                return here;
            if (other.key() != each.key()) // one is missing in `a`, or they stand in another order
                return a.contains(other.key()) ? here : pointer(at, std::string_view(other.key()));
            if (auto found = first_difference(*each, *other, here))
                return found;
        }
        return other == b.end() ? std::nullopt
                                : std::optional(pointer(at, std::string_view(other.key())));
    }
    if (a.type() == b.type() && a.is_array()) {
        for (std::size_t i = 0; i < a.size() && i < b.size(); ++i)
            if (auto found = first_difference(a[i], b[i], pointer(at, i)))
                return found;
        return a.size() == b.size() ? std::nullopt
                                    : std::optional(pointer(at, std::min(a.size(), b.size())));
    }
    return a.type() == b.type() && a == b ? std::nullopt : std::optional(at);
}

class Verifier {
  public:
    Verifier(std::filesystem::path folder, const SummaryMaker& maker)
        : folder_(std::move(folder)), maker_(maker)
    {
    }

    Verification verify()
    {
        if (!list_folder())
            return std::move(out_);
        for (const char* name : {always[0], always[1], always[2], sums_name})
            if (!names_.contains(name))
                add(name, "missing_file", "", "is missing; right would be a record with this file");
        for (const std::string& name : names_)
            read(name);
        check_sums();
        check_diary();
        check_edf();
        check_fhir_file();
        check_summary_pdf();
        return std::move(out_);
    }

  private:
    std::filesystem::path folder_;
    const SummaryMaker& maker_;
    Verification out_;
    std::set<std::string> names_;
    std::map<std::string, std::string> contents_;

    void add(const std::string& file, std::string code, std::string at, std::string text)
    {
        out_.problems.push_back(
            {file, {Fault::refused, std::move(code), std::move(at), std::move(text)}});
    }

    bool list_folder()
    {
        std::error_code error;
        std::filesystem::directory_iterator entries(folder_, error);
        for (; !error && entries != std::filesystem::directory_iterator();
             entries.increment(error)) {
            const std::string name = entries->path().filename().string();
            std::error_code ignored;
            if (entries->symlink_status(ignored).type() == std::filesystem::file_type::regular)
                names_.insert(name);
            else
                add(name, "extra_file", "",
                    "is not a plain file; right would be nothing but the record's files");
        }
        if (error)
            out_.problems.push_back(
                {"", io_problem("cannot read the folder", folder_, error.value())});
        return !error;
    }

    void read(const std::string& name)
    {
        const Result<std::string> content = read_file(folder_ / name);
        if (content) {
            contents_[name] = *content;
            return;
        }
        for (const Problem& problem : content.problems())
            out_.problems.push_back({name, problem});
    }

    const std::string* content(const std::string& name) const
    {
        const auto found = contents_.find(name);
        return found == contents_.end() ? nullptr : &found->second;
    }

    void check_sums()
    {
        const std::string* sums = content(sums_name);
        if (!sums)
            return;
        std::set<std::string> listed;
        std::size_t line_number = 0;
        for (std::size_t begin = 0; begin < sums->size();) {
            const std::size_t end = sums->find('\n', begin);
            const std::string at = "line " + std::to_string(++line_number);
            if (end == std::string::npos) {
                add(sums_name, "bad_line", at, "has no end; right would be a new line after it");
                return;
            }
            check_sum(sums->substr(begin, end - begin), at, listed);
            begin = end + 1;
        }
        for (const char* name : always)
            if (!listed.contains(name))
                add(sums_name, "not_listed", "",
                    std::string(name) + " is not listed; right would be one line for it");
        for (const std::string& name : names_)
            if (name != sums_name && !listed.contains(name))
                add(name, "extra_file", "",
                    "is not listed in SHA256SUMS; right would be nothing but the record's files");
    }

    void check_sum(const std::string& line, const std::string& at, std::set<std::string>& listed)
    {
        const bool shaped = line.size() > 66 && line.substr(64, 2) == "  " &&
                            line.find_first_not_of("0123456789abcdef") == 64;
        if (!shaped || line.find('/') != std::string::npos) {
            add(sums_name, "bad_line", at,
                "right would be 64 hexadecimal digits, two spaces and a file name");
            return;
        }
        const std::string name = line.substr(66);
        if (!listed.insert(name).second)
            add(sums_name, "listed_twice", at, name + " is listed twice; right would be once");
        const std::string* bytes = content(name);
        if (!bytes) {
            if (!names_.contains(name) && !always_there(name))
                add(name, "missing_file", "", "is listed in SHA256SUMS and missing");
        } else if (sha256_hex(*bytes) != line.substr(0, 64)) {
            add(name, "wrong_sum", "",
                "was changed after the record was written: its SHA-256 is not the one in "
                "SHA256SUMS");
        }
    }

    void check_diary()
    {
        const std::string* json = content("diary.json");
        if (!json)
            return;
        Result<Diary> diary = read_diary(*json);
        if (!diary) {
            for (Problem& problem : diary.problems())
                add("diary.json", problem.code, problem.at, problem.text);
            return;
        }
        out_.diary = std::move(*diary);
        if (const Result<std::string> again = diary_to_json(*out_.diary); !again || *again != *json)
            add("diary.json", "not_canonical", "",
                "is not written as this program writes it; right would be the same values, made "
                "again with record --from");
        const Result<std::string> name = record_name(*out_.diary);
        const std::string given = std::filesystem::weakly_canonical(folder_).filename().string();
        if (name && *name != given)
            add("", "wrong_name", "",
                "the folder is called " + given + "; right would be " + *name);
    }

    /// The same event has the same time in all files: diary.edf is nothing but what diary.json
    /// makes.
    void check_edf()
    {
        const std::string* bytes = content("diary.edf");
        if (!bytes)
            return;
        const Result<EdfFile> file = read_edf(*bytes);
        if (!file)
            for (const Problem& problem : file.problems())
                add("diary.edf", problem.code, problem.at, problem.text);
        if (!out_.diary)
            return;
        const Result<std::string> made = diary_edf(*out_.diary);
        if (!made || *made == *bytes)
            return;
        const Result<EdfFile> right = read_edf(*made);
        if (!file || !right || !differing_annotation(*file, *right))
            add("diary.edf", "not_from_diary", differing_byte(*made, *bytes),
                "differs from what diary.json makes; right would be the file made again with "
                "record --from");
    }

    /// Likewise: every number in diary.fhir.json is the diary's.
    void check_fhir_file()
    {
        const std::string* bytes = content("diary.fhir.json");
        if (!bytes)
            return;
        const Result<Json> file = parse_json(*bytes);
        for (const Problem& problem : file ? check_fhir(*file) : file.problems())
            add("diary.fhir.json", problem.code, problem.at, problem.text);
        if (!out_.diary)
            return;
        const Result<std::string> made = diary_fhir(*out_.diary);
        if (!made || *made == *bytes)
            return;
        const Result<Json> right = parse_json(*made);
        const auto at = file && right ? first_difference(*file, *right, "") : std::nullopt;
        if (!at) {
            add("diary.fhir.json", "not_from_diary", differing_byte(*made, *bytes),
                "differs from what diary.json makes; right would be the file made again with "
                "record --from");
            return;
        }
        const Json::json_pointer place(*at);
        const auto value = [&place](const Json& json) {
            std::string text = json.contains(place) ? json[place].dump() : "nothing";
            return text.size() > 200 ? "another value" : text;
        };
        add("diary.fhir.json", "not_from_diary", *at,
            value(*file) + "; right, by diary.json, would be " + value(*right));
    }

    static std::string differing_byte(const std::string& made, const std::string& bytes)
    {
        const auto first =
            std::mismatch(made.begin(), made.end(), bytes.begin(), bytes.end()).first;
        return "byte " + std::to_string(first - made.begin());
    }

    void check_summary_pdf()
    {
        if (maker_ && !names_.contains(summary_name))
            add(summary_name, "missing_file", "",
                "is missing; right would be a record with this file");
        const std::string* bytes = content(summary_name);
        const std::string* json = content("diary.json");
        if (!bytes || !json)
            return;
        const Problems problems = check_summary(*bytes, *json);
        for (const Problem& problem : problems)
            add(summary_name, problem.code, problem.at, problem.text);
        if (!maker_ || !out_.diary || !problems.empty())
            return;
        const Result<std::string> made = maker_(*out_.diary);
        if (!made)
            for (const Problem& problem : made.problems())
                out_.problems.push_back({summary_name, problem});
        else if (*made != *bytes && summary_producer(*made) == summary_producer(*bytes))
            add(summary_name, "not_from_diary", "",
                "differs from what diary.json makes; right would be the file made again with "
                "record --from");
    }

    bool differing_annotation(const EdfFile& file, const EdfFile& right)
    {
        const std::size_t count = std::max(file.annotations.size(), right.annotations.size());
        for (std::size_t i = 0; i < count; ++i) {
            const bool here = i < file.annotations.size();
            const bool there = i < right.annotations.size();
            if (here && there && file.annotations[i] == right.annotations[i])
                continue;
            const auto name = [](const Annotation& one) {
                return "\"" + one.text + "\" at " + std::to_string(one.onset.count()) + " us";
            };
            add("diary.edf", "not_from_diary", "annotation " + std::to_string(i + 1),
                (here ? name(file.annotations[i]) : std::string("nothing")) +
                    "; right, by diary.json, would be " +
                    (there ? name(right.annotations[i]) : std::string("nothing")));
            return true;
        }
        return false;
    }
};

} // namespace

int Verification::exit_status() const
{
    int status = 0;
    for (const RecordProblem& each : problems)
        status = std::max(status, static_cast<int>(each.problem.fault));
    return status;
}

Verification verify_record(const std::filesystem::path& folder, const SummaryMaker& maker)
{
    return Verifier(folder, maker).verify();
}

} // namespace evenfall
