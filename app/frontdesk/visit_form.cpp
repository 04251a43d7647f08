// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "frontdesk/visit_form.h"

namespace evenfall {
namespace {

const char* yes_no(bool value) { return value ? "yes" : "no"; }

} // namespace

VisitForm VisitForm::begin(const DeskSettings& settings, const std::string& return_by)
{
    VisitForm form;
    form.values = {{"code", ""},
                   {"kit", settings.kit},
                   {"kit_label", ""},
                   {"nights", std::to_string(settings.nights)},
                   {"language", settings.visit_language},
                   {"writing_hand", ""}, // asked each time: a hand taken for granted is the wrong one
                   {"bed_time", format_time_of_day(settings.bed_time)},
                   {"return_by", return_by},
                   {"signal_check", yes_no(settings.options.signal_check)},
                   {"evening_questions", yes_no(settings.options.evening_questions)},
                   {"mirror", yes_no(settings.options.mirror)},
                   {"narration", yes_no(settings.options.narration)}};
    return form;
}

Result<Visit> VisitForm::read(const DeskSettings& settings) const
{
    Problems problems;
    const auto value = [this](const char* id) { return values.contains(id) ? values.at(id) : std::string(); };
    if (settings.clinic.phone.empty())
        problems.push_back({Fault::refused, "no_phone", "/clinic/phone", "the clinic's telephone number is missing; right would be to give it first"});
    if (!clock_right)
        problems.push_back({Fault::refused, "clock_not_confirmed", "/clock", "nobody has confirmed the tablet's clock and zone"});
    for (const char* id : {"code", "kit", "kit_label", "writing_hand", "bed_time", "return_by"})
        if (value(id).empty())
            problems.push_back({Fault::malformed, "missing", pointer("", std::string_view(id)), "empty; right would be a value"});

    const std::string count = value("nights");
    const bool number = !count.empty() && count.size() <= 2 && count.find_first_not_of("0123456789") == std::string::npos;
    if (!number)
        problems.push_back({Fault::malformed, "bad_nights", "/nights", "\"" + count + "\" is no number of nights; right would be 1 to 14"});
    if (!problems.empty())
        return problems;

    const Json json{{"format", "evenfall.visit/1"},
                    {"code", value("code")},
                    {"kit", value("kit")},
                    {"kit_label", value("kit_label")},
                    {"nights", std::stol(count)},
                    {"language", value("language")},
                    {"writing_hand", value("writing_hand")},
                    {"bed_time", value("bed_time")},
                    {"zone", settings.zone},
                    {"clinic", clinic_to_json(settings.clinic)},
                    {"return_by", value("return_by")},
                    {"options",
                     {{"signal_check", value("signal_check") == "yes"},
                      {"evening_questions", value("evening_questions") == "yes"},
                      {"mirror", value("mirror") == "yes"},
                      {"narration", value("narration") == "yes"}}}};
    return read_visit(json.dump());
}

} // namespace evenfall
