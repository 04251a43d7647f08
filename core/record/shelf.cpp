// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/shelf.h"

#include "base/file.h"
#include "base/hash.h"
#include "journal/journal.h"
#include "journal/state.h"
#include "record/folder.h"

#include <algorithm>
#include <cerrno>
#include <cctype>
#include <sys/stat.h>

namespace evenfall {
namespace {

namespace fs = std::filesystem;

// A visit that is being wiped is first called this and a number: its code is gone from the folder's
// names at once, and what a power cut leaves is known for what it is.
constexpr std::string_view going = ".going-";
constexpr const char* taken_format = "evenfall.taken-out/1";
constexpr const char* wiped_format = "evenfall.wiped/1";

Status make_private_folder(const fs::path& folder)
{
    std::error_code error;
    fs::create_directories(folder, error);
    if (error)
        return io_problem("cannot make the folder", folder, error.value());
    if (::chmod(folder.c_str(), 0700) != 0)
        return io_problem("cannot close to others", folder, errno);
    return Done{};
}

Status remove_for_good(const fs::path& path)
{
    std::error_code error;
    fs::remove_all(path, error);
    if (error)
        return io_problem("cannot remove", path, error.value());
    return sync_folder(path.parent_path());
}

/// record -> {"sums": SHA-256 of its SHA256SUMS, "at": when}
Result<Json> taken_out(const fs::path& visit_folder)
{
    const fs::path file = visit_folder / "taken_out.json";
    std::error_code ignored;
    if (!fs::exists(file, ignored))
        return Json{{"format", taken_format}, {"records", Json::object()}};
    const Result<std::string> text = read_file(file, 1u << 20);
    if (!text)
        return text.problems();
    Result<Json> json = parse_json(*text);
    if (!json || !json->is_object() || !json->contains("records") || !(*json)["records"].is_object())
        // Only a convenience: a copy that is not known of is made once more.
        return Json{{"format", taken_format}, {"records", Json::object()}};
    return json;
}

std::string sums_of(const fs::path& record)
{
    const Result<std::string> sums = read_file(record / "SHA256SUMS", 1u << 20);
    return sums ? sha256_hex(*sums) : "";
}

bool holds_code(std::string text, std::string code)
{
    const auto lower = [](std::string& word) {
        for (char& c : word)
            c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    };
    lower(text);
    lower(code);
    return text.find(code) != std::string::npos;
}

void read_journal(ShelfVisit& out, const fs::path& file)
{
    std::error_code ignored;
    if (!fs::exists(file, ignored))
        return;
    Result<Opened> opened = open_journal(file);
    if (!opened) {
        out.journal_problems = opened.problems();
        return;
    }
    const NightState state = replay(opened->journal->entries());
    if (!state.begun)
        return;
    out.skin_again = state.skin_again;
    // The first page alone is no night: a tablet that was only switched on is still prepared.
    const bool touched = state.first_some.has_value() || state.lights_out || !state.items.empty() || state.paper;
    out.night = touched ? state.night : state.night - 1;
    out.night_has_record = touched ? !state.record.empty() : out.night > 0;
    if (out.night > 0)
        out.stand = out.night_has_record && out.night >= out.visit.nights ? ShelfVisit::Stand::recorded : ShelfVisit::Stand::under_way;
}

} // namespace

Status Shelf::prepare() const
{
    for (const fs::path& folder : {data_, data_ / "visits", desk(), own_kits()})
        if (Status made = make_private_folder(folder); !made)
            return made;
    std::error_code error;
    std::vector<fs::path> left;
    for (fs::directory_iterator at(data_ / "visits", error), end; !error && at != end; at.increment(error))
        if (at->path().filename().string().starts_with(going))
            left.push_back(at->path());
    if (error)
        return io_problem("cannot read the folder", data_ / "visits", error.value());
    for (const fs::path& path : left)
        if (Status removed = remove_for_good(path); !removed)
            return removed;
    return Done{};
}

Result<std::vector<std::string>> Shelf::codes() const
{
    std::vector<std::string> out;
    std::error_code error;
    for (fs::directory_iterator at(data_ / "visits", error), end; !error && at != end; at.increment(error)) {
        const std::string name = at->path().filename().string();
        std::error_code ignored;
        if (plain_study_code(name) && fs::exists(at->path() / "visit.json", ignored))
            out.push_back(name);
    }
    if (error)
        return io_problem("cannot read the folder", data_ / "visits", error.value());
    std::sort(out.begin(), out.end());
    return out;
}

Status Shelf::add(const Visit& visit) const
{
    std::error_code ignored;
    if (fs::exists(visit_file(visit.code), ignored))
        return Problem{Fault::refused, "visit_exists", "/code",
                       "there is a visit \"" + visit.code + "\" here; right would be another study code"};
    return put(visit);
}

Status Shelf::put(const Visit& visit) const
{
    for (const fs::path& folder : {folder(visit.code), records(visit.code)})
        if (Status made = make_private_folder(folder); !made)
            return made;
    if (Status written = write_file(visit_file(visit.code), visit_to_json(visit).dump(2) + "\n"); !written)
        return written;
    return sync_folder(data_ / "visits");
}

Result<ShelfVisit> Shelf::look(const std::string& code, const SummaryMaker& maker) const
{
    const Result<std::string> text = read_file(visit_file(code), 1u << 20);
    if (!text)
        return text.problems();
    Result<Visit> visit = read_visit(*text);
    if (!visit)
        return visit.problems();
    ShelfVisit out;
    out.visit = std::move(*visit);
    read_journal(out, journal(code));

    const Result<Json> taken = taken_out(folder(code));
    if (!taken)
        return taken.problems();
    std::error_code error;
    for (fs::directory_iterator at(records(code), error), end; !error && at != end; at.increment(error)) {
        const std::string name = at->path().filename().string();
        if (name.starts_with(".") || !at->is_directory())
            continue;
        ShelfRecord record{name, at->path(), verify_record(at->path(), maker), false, ""};
        const Json& known = (*taken)["records"];
        if (known.contains(name) && known[name].is_object() && known[name].value("sums", "") == sums_of(at->path())) {
            record.taken_out = true;
            record.taken_out_at = known[name].value("at", "");
        }
        out.records.push_back(std::move(record));
    }
    if (error && error.value() != ENOENT)
        return io_problem("cannot read the folder", records(code), error.value());
    std::sort(out.records.begin(), out.records.end(), [](const ShelfRecord& a, const ShelfRecord& b) { return a.name < b.name; });
    return out;
}

Status Shelf::take_out(const std::string& code, const std::string& record, const fs::path& to, const std::string& when) const
{
    const fs::path from = records(code) / record;
    const auto first_of = [](const Verification& found) -> Status {
        if (found.problems.empty())
            return Done{};
        Problem problem = found.problems[0].problem;
        problem.text = found.problems[0].file + ": " + problem.text;
        return problem;
    };
    if (Status fine = first_of(verify_record(from)); !fine)
        return fine;
    const Result<fs::path> copy = copy_record(from, to);
    if (!copy)
        return copy.problems();
    if (Status fine = first_of(verify_record(*copy)); !fine)
        return fine;
    Result<Json> taken = taken_out(folder(code));
    if (!taken)
        return taken.problems();
    (*taken)["records"][record] = Json{{"sums", sums_of(from)}, {"at", when}};
    return write_file(folder(code) / "taken_out.json", taken->dump(2) + "\n");
}

std::vector<std::string> Shelf::reasons_against(const ShelfVisit& visit)
{
    std::vector<std::string> out;
    if (!visit.journal_problems.empty())
        out.emplace_back("journal_unread");
    if (visit.night == 0 && visit.records.empty() && visit.journal_problems.empty())
        out.emplace_back("nothing_done");
    if (visit.night > 0 && !visit.night_has_record)
        out.emplace_back("no_record");
    const auto any = [&visit](auto test) { return std::any_of(visit.records.begin(), visit.records.end(), test); };
    if (any([](const ShelfRecord& one) { return !one.found.problems.empty(); }))
        out.emplace_back("bad_record");
    if (any([](const ShelfRecord& one) { return !one.taken_out; }))
        out.emplace_back("not_taken_out");
    return out;
}

Status Shelf::wipe(const ShelfVisit& visit, const std::string& reason, const std::string& when) const
{
    const std::vector<std::string> against = reasons_against(visit);
    if (!against.empty() && reason.find_first_not_of(" \t\n") == std::string::npos)
        return Problem{Fault::refused, "reason_missing", "/reason", "this visit has something that is nowhere else; right would be a reason why it may go"};
    if (holds_code(reason, visit.visit.code))
        return Problem{Fault::refused, "reason_names_code", "/reason", "the reason is kept and must not name the study code; right would be a reason without it"};

    // First the list: a wipe that nobody could account for would be worse than one noted and not done.
    const fs::path list = desk() / "wiped.json";
    Json wiped{{"format", wiped_format}, {"wiped", Json::array()}};
    std::error_code ignored;
    if (fs::exists(list, ignored)) {
        const Result<std::string> text = read_file(list);
        if (!text)
            return text.problems();
        Result<Json> json = parse_json(*text);
        if (json && json->is_object() && json->contains("wiped") && (*json)["wiped"].is_array())
            wiped = std::move(*json);
    }
    wiped["wiped"].push_back(Json{{"at", when}, {"records", visit.records.size()}, {"against", against}, {"reason", reason}});
    if (Status written = write_file(list, wiped.dump(2) + "\n"); !written)
        return written;

    fs::path away;
    for (int number = 1; away.empty() || fs::exists(away, ignored); ++number)
        away = data_ / "visits" / (std::string(going) + std::to_string(number));
    std::error_code error;
    fs::rename(folder(visit.visit.code), away, error);
    if (error)
        return io_problem("cannot remove", folder(visit.visit.code), error.value());
    if (Status synced = sync_folder(data_ / "visits"); !synced)
        return synced;
    return remove_for_good(away);
}

} // namespace evenfall
