// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kit/visit.h"

#include "base/file.h"

#include <algorithm>

namespace evenfall {
namespace {

constexpr std::array<std::string_view, 7> week{"mon", "tue", "wed", "thu", "fri", "sat", "sun"};

std::optional<std::string> read_phone(ObjectReader& reader, std::string_view key)
{
    std::optional<std::string> phone = reader.text(key);
    if (!phone)
        return phone;
    if (!plain_phone(*phone)) {
        reader.fault(key, "bad_phone", "\"" + *phone + "\" cannot be dialled; right would be such as 555-0142");
        return std::nullopt;
    }
    return phone;
}

std::optional<std::chrono::minutes> read_clock(ObjectReader& reader, std::string_view key)
{
    const std::optional<std::string> text = reader.text(key);
    if (!text)
        return std::nullopt;
    const Result<std::chrono::minutes> time = parse_time_of_day(*text);
    if (!time) {
        reader.fault(key, "bad_time_of_day", time.problems()[0].text);
        return std::nullopt;
    }
    return *time;
}

void read_hours(ObjectReader& clinic, Clinic& out)
{
    for (const auto& [json, at] : clinic.elements("hours")) {
        ObjectReader reader(*json, at, clinic.problems());
        OpenHours hours;
        hours.days = reader.words("days").value_or(std::vector<std::string>{});
        for (size_t i = 0; i < hours.days.size(); ++i) {
            if (std::find(week.begin(), week.end(), hours.days[i]) == week.end())
                clinic.problems().push_back({Fault::malformed, "unknown_word", pointer(pointer(at, "days"), i),
                                             "\"" + hours.days[i] + "\"; right would be mon, tue, wed, thu, fri, sat or sun"});
        }
        hours.from = read_clock(reader, "from").value_or(std::chrono::minutes(0));
        hours.to = read_clock(reader, "to").value_or(std::chrono::minutes(0));
        if (reader.has("from") && reader.has("to") && hours.from >= hours.to)
            reader.fault("to", "wrong_order", "closes before it opens; right would be later than \"from\"", Fault::refused);
        reader.finish();
        out.hours.push_back(std::move(hours));
    }
}

void read_need(ObjectReader& top, Visit& visit)
{
    // Flow and oximetry together: Kapur et al. 2017 (from memory as to "oximetry and flow").
    visit.need_signals = {"flow", "oximetry"};
    const Json* json = top.member("need");
    if (!json)
        return;
    ObjectReader reader(*json, top.at("need"), top.problems());
    visit.need = std::chrono::minutes(reader.integer("minutes", 1, 1440).value_or(240));
    if (auto ids = reader.words("signals")) {
        if (ids->empty())
            reader.fault("signals", "empty", "right would be at least one signal, such as flow");
        visit.need_signals = *ids;
    }
    reader.finish();
}

void read_ask_first(ObjectReader& top, Visit& visit)
{
    visit.ask_first.assign(first_conditions.begin(), first_conditions.end());
    const auto ids = top.words("ask_first", false);
    if (!ids)
        return;
    std::string known;
    for (const std::string_view one : first_conditions)
        known += (known.empty() ? "" : ", ") + std::string(one);
    if (ids->empty())
        top.fault("ask_first", "empty", "right would be at least one of: " + known);
    for (size_t i = 0; i < ids->size(); ++i)
        if (std::find(first_conditions.begin(), first_conditions.end(), (*ids)[i]) == first_conditions.end())
            top.problems().push_back({Fault::malformed, "unknown_word", pointer(top.at("ask_first"), i),
                                      "\"" + (*ids)[i] + "\"; right would be one of: " + known});
    visit.ask_first = *ids;
}

std::string_view trimmed(std::string_view text)
{
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ')
        text.remove_suffix(1);
    return text;
}

/// "mon-fri", "sat"
std::vector<std::string> days_of(std::string_view text)
{
    const size_t dash = text.find('-');
    const auto first = std::find(week.begin(), week.end(), text.substr(0, dash));
    const auto last = dash == std::string_view::npos ? first : std::find(week.begin(), week.end(), text.substr(dash + 1));
    if (first == week.end() || last == week.end() || last < first)
        return {};
    return std::vector<std::string>(first, std::next(last));
}

/// "mon-fri 08:00-17:00"
std::optional<OpenHours> span_of_hours(std::string_view text)
{
    const size_t space = text.find(' ');
    if (space == std::string_view::npos)
        return std::nullopt;
    const std::string_view times = trimmed(text.substr(space));
    const size_t dash = times.find('-');
    OpenHours hours;
    hours.days = days_of(text.substr(0, space));
    if (hours.days.empty() || dash == std::string_view::npos)
        return std::nullopt;
    const Result<std::chrono::minutes> from = parse_time_of_day(times.substr(0, dash)), to = parse_time_of_day(times.substr(dash + 1));
    if (!from || !to || *from >= *to)
        return std::nullopt;
    hours.from = *from;
    hours.to = *to;
    return hours;
}

std::string read_date(ObjectReader& reader, std::string_view key)
{
    const std::optional<std::string> text = reader.text(key);
    if (!text)
        return "";
    if (text->size() != 10 || !parse_time(*text + "T00:00Z").ok()) {
        reader.fault(key, "bad_date", "\"" + *text + "\" is not a date; right would be such as 2026-11-04");
        return "";
    }
    return *text;
}

} // namespace

Clinic read_clinic(ObjectReader& top)
{
    Clinic clinic;
    const Json* json = top.needed("clinic");
    if (!json)
        return clinic;
    ObjectReader reader(*json, top.at("clinic"), top.problems());
    clinic.name = reader.text("name").value_or("");
    clinic.phone = read_phone(reader, "phone").value_or("");
    read_hours(reader, clinic);
    clinic.phone_outside_hours = read_phone(reader, "phone_outside_hours").value_or("");
    clinic.emergency = read_phone(reader, "emergency").value_or("");
    reader.finish();
    return clinic;
}

Json clinic_to_json(const Clinic& clinic)
{
    Json hours = Json::array();
    for (const OpenHours& one : clinic.hours)
        hours.push_back(Json{{"days", one.days}, {"from", format_time_of_day(one.from)}, {"to", format_time_of_day(one.to)}});
    return Json{{"name", clinic.name},
                {"phone", clinic.phone},
                {"hours", std::move(hours)},
                {"phone_outside_hours", clinic.phone_outside_hours},
                {"emergency", clinic.emergency}};
}

Result<Visit> read_visit(std::string_view json_text)
{
    const Result<Json> json = parse_json(json_text);
    if (!json)
        return json.problems();
    Problems problems;
    ObjectReader top(*json, "", problems);
    Visit visit;
    check_format(top, "evenfall.visit/1");
    visit.code = top.text("code").value_or("");
    if (!visit.code.empty() && !plain_study_code(visit.code))
        top.fault("code", "bad_code",
                  "\"" + visit.code +
                      "\" cannot be a study code; right would be letters, digits, - and _, at most 32, such as SM-0417");
    visit.kit = top.id("kit").value_or("");
    visit.kit_label = top.text("kit_label").value_or("");
    visit.nights = top.integer("nights", 1, 14).value_or(1);
    visit.language = top.text("language").value_or("");
    const bool two_letters = visit.language.size() == 2 &&
                             visit.language.find_first_not_of("abcdefghijklmnopqrstuvwxyz") == std::string::npos;
    if (!visit.language.empty() && !two_letters)
        top.fault("language", "bad_language", "\"" + visit.language + "\"; right would be two letters, such as en");
    visit.hand = top.word("writing_hand", {"right", "left"}).value_or("right") == "left" ? WritingHand::left
                                                                                        : WritingHand::right;
    visit.bed_time = read_clock(top, "bed_time").value_or(std::chrono::minutes(0));
    if (auto name = top.text("zone")) {
        Result<ZonePtr> zone = find_zone(*name);
        if (zone)
            visit.zone = *zone;
        else
            top.fault("zone", "unknown_zone", zone.problems()[0].text, Fault::refused);
    }
    visit.clinic = read_clinic(top);
    read_need(top, visit);
    visit.return_by = read_date(top, "return_by");
    read_ask_first(top, visit);
    if (const Json* options = top.member("options")) {
        ObjectReader reader(*options, top.at("options"), problems);
        visit.options.signal_check = reader.boolean("signal_check", false).value_or(false);
        visit.options.evening_questions = reader.boolean("evening_questions", false).value_or(false);
        visit.options.mirror = reader.boolean("mirror", false).value_or(false);
        visit.options.narration = reader.boolean("narration", false).value_or(false);
        reader.finish();
    }
    top.finish();
    if (!problems.empty())
        return problems;
    return visit;
}

Json visit_to_json(const Visit& visit)
{
    return Json{{"format", "evenfall.visit/1"},
                {"code", visit.code},
                {"kit", visit.kit},
                {"kit_label", visit.kit_label},
                {"nights", visit.nights},
                {"language", visit.language},
                {"writing_hand", visit.hand == WritingHand::left ? "left" : "right"},
                {"bed_time", format_time_of_day(visit.bed_time)},
                {"zone", visit.zone->name()},
                {"clinic", clinic_to_json(visit.clinic)},
                {"need", {{"minutes", visit.need.count()}, {"signals", visit.need_signals}}},
                {"return_by", visit.return_by},
                {"ask_first", visit.ask_first},
                {"options",
                 {{"signal_check", visit.options.signal_check},
                  {"evening_questions", visit.options.evening_questions},
                  {"mirror", visit.options.mirror},
                  {"narration", visit.options.narration}}}};
}

bool plain_phone(std::string_view text)
{
    const auto digits = std::count_if(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
    return digits >= 2 && text.size() <= 32 && text.find_first_not_of("0123456789 +()-./") == std::string_view::npos;
}

Result<std::vector<OpenHours>> parse_hours_line(std::string_view line)
{
    std::vector<OpenHours> out;
    while (!trimmed(line).empty()) {
        const size_t comma = line.find(',');
        const std::string_view one = trimmed(line.substr(0, comma));
        std::optional<OpenHours> hours = span_of_hours(one);
        if (!hours)
            return Problem{Fault::malformed, "bad_hours", "/clinic/hours",
                           "\"" + std::string(one) + "\" cannot be read; right would be such as mon-fri 08:00-17:00, sat 09:00-12:00"};
        out.push_back(std::move(*hours));
        line = comma == std::string_view::npos ? "" : line.substr(comma + 1);
    }
    return out;
}

std::string hours_line(const std::vector<OpenHours>& hours)
{
    std::string line;
    for (const OpenHours& one : hours) {
        // Days that follow each other are a span; others are written one by one.
        for (size_t i = 0; i < one.days.size();) {
            size_t last = i;
            const auto at = [&](size_t index) { return std::find(week.begin(), week.end(), one.days[index]) - week.begin(); };
            while (last + 1 < one.days.size() && at(last + 1) == at(last) + 1)
                ++last;
            line += (line.empty() ? "" : ", ") + one.days[i] + (last > i ? "-" + one.days[last] : "") + " " + format_time_of_day(one.from) + "-" + format_time_of_day(one.to);
            i = last + 1;
        }
    }
    return line;
}

Result<VisitWithKit> load_visit(const std::filesystem::path& file,
                                const std::vector<std::filesystem::path>& kit_folders)
{
    const Result<std::string> text = read_file(file, 1u << 20);
    if (!text)
        return text.problems();
    Result<Visit> visit = read_visit(*text);
    if (!visit)
        return visit.problems();

    const std::filesystem::path home = file.parent_path(); // empty: the folder that the program is in
    std::vector<std::filesystem::path> folders{home, home / ".." / "kits"};
    folders.insert(folders.end(), kit_folders.begin(), kit_folders.end());
    for (const std::filesystem::path& folder : folders) {
        const std::filesystem::path candidate = folder / (visit->kit + ".json");
        std::error_code ignored;
        if (!std::filesystem::is_regular_file(candidate, ignored))
            continue;
        if (std::filesystem::equivalent(candidate, file, ignored))
            continue; // a visit that is named like its kit
        Result<Kit> kit = load_kit(candidate);
        if (!kit) {
            Problems problems = kit.problems();
            for (Problem& problem : problems) {
                problem.text = "in kit file " + candidate.lexically_normal().string() + " at " +
                               (problem.at.empty() ? "/" : problem.at) + ": " + problem.text;
                problem.at = "/kit";
            }
            return problems;
        }
        Problems problems;
        for (const std::string& id : visit->need_signals) {
            if (!kit->signal(id))
                problems.push_back({Fault::refused, "missing_signal", "/need/signals",
                                    "kit \"" + kit->id + "\" has no signal \"" + id +
                                        "\"; right would be one of those it lists"});
        }
        if (!problems.empty())
            return problems;
        return VisitWithKit{std::move(visit.value()), std::move(kit.value())};
    }
    return Problem{Fault::refused, "missing_kit", "/kit",
                   "there is no kit file " + visit->kit + ".json; right would be the id of a kit that is there"};
}

} // namespace evenfall
