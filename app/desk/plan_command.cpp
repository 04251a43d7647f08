// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "command.h"

#include "kit/visit.h"
#include "plan/plan.h"
#include "words/words.h"

#include <cstdlib>
#include <filesystem>
#include <iomanip>
#include <ostream>

namespace evenfall::desk {
namespace {

const std::string usage = "usage: evenfall-desk plan VISIT.json [--json] [--kits DIR]\n"
                          "  The steps of the evening with their start times, counted back from bed time; the strips of\n"
                          "  tape; the parts. The kit is <kit>.json beside the visit, in ../kits, or in DIR.\n";

const char* phase_name(Phase phase)
{
    return phase == Phase::get_ready ? "get_ready" : phase == Phase::put_on ? "put_on" : "finish";
}

Json plan_json(const VisitWithKit& all, const Plan& plan)
{
    Json steps = Json::array();
    for (size_t i = 0; i < plan.steps.size(); ++i) {
        const Step& step = plan.steps[i];
        Json one{{"id", step.id}};
        if (!step.part.empty())
            one["part"] = step.part;
        one["stage"] = step.stage;
        one["phase"] = phase_name(step.phase);
        one["start"] = format_time_of_day(start_of_step(plan, i, all.visit.bed_time));
        one["seconds"] = step.seconds.count();
        one["hands"] = step.hands;
        one["tape_strips"] = step.tape_strips;
        one["figure"] = step.figure;
        steps.push_back(std::move(one));
    }
    Json parts = Json::array();
    for (const Part& part : all.kit.parts)
        parts.push_back(Json{{"id", part.id}, {"kind", facts_of(part.kind).name}, {"where", part.where}, {"tape_strips", part.tape_strips}});
    return Json{{"format", "evenfall.plan/1"},
                {"visit", all.visit.code},
                {"kit", all.kit.id},
                {"start", format_time_of_day(start_of_step(plan, 0, all.visit.bed_time))},
                {"bed_time", format_time_of_day(all.visit.bed_time)},
                {"seconds", plan.length().count()},
                {"tape", {{"strips", plan.tape_strips}, {"strip_length_mm", all.kit.strip_length_mm}}},
                {"parts", std::move(parts)},
                {"steps", std::move(steps)}};
}

void plan_text(const VisitWithKit& all, const Plan& plan, std::ostream& out)
{
    const Words words(QStringLiteral("en"), all.visit.zone);
    out << "Study code " << all.visit.code << ", kit " << all.kit.id << " (" << all.visit.kit_label << ")\n"
        << "In bed at " << format_time_of_day(all.visit.bed_time) << "; start at "
        << format_time_of_day(start_of_step(plan, 0, all.visit.bed_time)) << " (" << (plan.length().count() + 30) / 60 << " minutes)\n"
        << "Tape: " << plan.tape_strips << " strips of " << all.kit.strip_length_mm / 10.0 << " cm\n\nParts:\n";
    for (const Part& part : all.kit.parts)
        out << "  " << words.part(part).toStdString() << " (" << part.id << ")\n";
    out << "\nSteps:\n";
    for (size_t i = 0; i < plan.steps.size(); ++i) {
        const Step& step = plan.steps[i];
        // Isolating marks are for screens that run both ways; a terminal shows them as noise.
        QString title = words(step.title);
        title.remove(QChar(0x2066)).remove(QChar(0x2069));
        out << "  " << format_time_of_day(start_of_step(plan, i, all.visit.bed_time)) << "  " << std::left << std::setw(22) << step.id << title.toStdString() << '\n';
    }
}

} // namespace

int plan_command(std::span<const std::string> args, std::ostream& out, std::ostream& err)
{
    int status = 0;
    const std::optional<Arguments> arguments =
        begin_command(args, {"--json"}, {"--kits"}, usage, out, err, status);
    if (!arguments)
        return status;
    if (arguments->rest.size() != 1)
        return bad_usage("plan takes exactly one visit file", usage, err);
    const std::string& file = arguments->rest[0];
    std::vector<std::filesystem::path> folders;
    if (const auto named = arguments->option("--kits"))
        folders.emplace_back(*named);
    if (const char* assets = std::getenv("EVENFALL_ASSETS"))
        folders.emplace_back(std::filesystem::path(assets) / "kits");
    folders.emplace_back(EVENFALL_ASSETS_DIR "/kits");
    const Result<VisitWithKit> visit = load_visit(file, folders);
    if (!visit)
        return report(file, visit.problems(), err);
    const Result<Plan> plan = make_plan(visit->kit, visit->visit.hand);
    if (!plan)
        return report(file, plan.problems(), err);
    if (arguments->has("--json"))
        out << plan_json(*visit, *plan).dump(2) << '\n';
    else
        plan_text(*visit, *plan, out);
    return 0;
}

} // namespace evenfall::desk
