// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "frontdesk/desk_settings.h"

#include "base/file.h"

namespace evenfall {
namespace {

constexpr const char* format_name = "evenfall.desk/1";

std::filesystem::path file_in(const std::filesystem::path& desk_folder) { return desk_folder / "desk.json"; }

} // namespace

Result<DeskSettings> load_desk_settings(const std::filesystem::path& desk_folder, const std::string& zone)
{
    DeskSettings settings;
    settings.zone = zone;
    std::error_code ignored;
    if (!std::filesystem::exists(file_in(desk_folder), ignored))
        return settings;
    const Result<std::string> text = read_file(file_in(desk_folder), 1u << 20);
    if (!text)
        return text.problems();
    const Result<Json> json = parse_json(*text);
    if (!json)
        return json.problems();
    Problems problems;
    ObjectReader top(*json, "", problems);
    check_format(top, format_name);
    if (top.has("clinic"))
        settings.clinic = read_clinic(top);
    settings.zone = top.text("zone").value_or(zone);
    settings.language = top.text("language").value_or("en");
    settings.tonight = top.text("tonight", false).value_or("");
    settings.kit = top.text("kit", false).value_or("");
    settings.visit_language = top.text("visit_language").value_or("en");
    settings.nights = top.integer("nights", 1, 14).value_or(1);
    const Result<std::chrono::minutes> bed_time = parse_time_of_day(top.text("bed_time").value_or(""));
    if (bed_time)
        settings.bed_time = *bed_time;
    else
        top.fault("bed_time", "bad_time_of_day", bed_time.problems()[0].text);
    if (const Json* options = top.needed("options")) {
        ObjectReader reader(*options, top.at("options"), problems);
        settings.options.signal_check = reader.boolean("signal_check", false).value_or(false);
        settings.options.evening_questions = reader.boolean("evening_questions", false).value_or(false);
        settings.options.mirror = reader.boolean("mirror", false).value_or(false);
        settings.options.narration = reader.boolean("narration", false).value_or(false);
        reader.finish();
    }
    top.finish();
    if (!problems.empty())
        return problems;
    return settings;
}

Status save_desk_settings(const std::filesystem::path& desk_folder, const DeskSettings& settings)
{
    Json json{{"format", format_name}};
    if (!settings.clinic.phone.empty())
        json["clinic"] = clinic_to_json(settings.clinic);
    json["zone"] = settings.zone;
    json["language"] = settings.language;
    if (!settings.tonight.empty())
        json["tonight"] = settings.tonight;
    if (!settings.kit.empty())
        json["kit"] = settings.kit;
    json["visit_language"] = settings.visit_language;
    json["nights"] = settings.nights;
    json["bed_time"] = format_time_of_day(settings.bed_time);
    json["options"] = {{"signal_check", settings.options.signal_check},
                       {"evening_questions", settings.options.evening_questions},
                       {"mirror", settings.options.mirror},
                       {"narration", settings.options.narration}};
    return write_file(file_in(desk_folder), json.dump(2) + "\n");
}

} // namespace evenfall
