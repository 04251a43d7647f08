// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "command.h"

#include "kit/kit.h"
#include "plan/plan.h"

#include <algorithm>
#include <ostream>

namespace evenfall::desk {
namespace {

const std::string usage = "usage: evenfall-desk kit KIT.json\n"
                          "  Checks a kit file: its form, whether parts, plugs, ports and lights fit each other, and\n"
                          "  whether its parts can be put on in an order that keeps every rule.\n";

} // namespace

int kit_command(std::span<const std::string> args, std::ostream& out, std::ostream& err)
{
    int status = 0;
    const std::optional<Arguments> arguments =
        begin_command(args, {}, {}, usage, out, err, status);
    if (!arguments)
        return status;
    if (arguments->rest.size() != 1)
        return bad_usage("kit takes exactly one kit file", usage, err);
    const std::string& file = arguments->rest[0];
    const Result<Kit> kit = load_kit(file);
    if (!kit)
        return report(file, kit.problems(), err);
    // The order is the same for both hands; one is enough to find a circle.
    const Result<Plan> plan = make_plan(*kit, WritingHand::right);
    if (!plan)
        return report(file, plan.problems(), err);
    out << file << ": fine: " << kit->id << ", " << kit->parts.size() << " parts, " << kit->sensors().size() << " sensors, "
        << plan->steps.size() << " steps, " << plan->tape_strips << " strips of tape\n";
    return 0;
}

} // namespace evenfall::desk
