// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kit/visit.h"

#include "base/file.h"

#include <algorithm>

namespace evenfall {
namespace {

/// A number somebody can dial: digits, spaces, + ( ) - . / and at least two digits.
std::optional<std::string> read_phone(ObjectReader& reader, std::string_view key)
{
    std::optional<std::string> phone = reader.text(key);
    if (!phone)
        return phone;
    const auto digits = std::count_if(phone->begin(), phone->end(), [](char c) { return c >= '0' && c <= '9'; });
    const bool plain = phone->find_first_not_of("0123456789 +()-./") == std::string::npos;
    if (!plain || digits < 2 || phone->size() > 32) {
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
    static const std::vector<std::string> week{"mon", "tue", "wed", "thu", "fri", "sat", "sun"};
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

void read_clinic(ObjectReader& top, Clinic& clinic)
{
    const Json* json = top.needed("clinic");
    if (!json)
        return;
    ObjectReader reader(*json, top.at("clinic"), top.problems());
    clinic.name = reader.text("name").value_or("");
    clinic.phone = read_phone(reader, "phone").value_or("");
    read_hours(reader, clinic);
    clinic.phone_outside_hours = read_phone(reader, "phone_outside_hours").value_or("");
    clinic.emergency = read_phone(reader, "emergency").value_or("");
    reader.finish();
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
    read_clinic(top, visit.clinic);
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

Result<VisitWithKit> load_visit(const std::filesystem::path& file,
                                const std::vector<std::filesystem::path>& kit_folders)
{
    const Result<std::string> text = read_file(file, 1u << 20);
    if (!text)
        return text.problems();
    Result<Visit> visit = read_visit(*text);
    if (!visit)
        return visit.problems();

    const std::filesystem::path home = file.has_parent_path() ? file.parent_path() : ".";
    std::vector<std::filesystem::path> folders{home, home / ".." / "kits"};
    folders.insert(folders.end(), kit_folders.begin(), kit_folders.end());
    for (const std::filesystem::path& folder : folders) {
        const std::filesystem::path candidate = folder / (visit->kit + ".json");
        std::error_code ignored;
        if (!std::filesystem::is_regular_file(candidate, ignored))
            continue;
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
