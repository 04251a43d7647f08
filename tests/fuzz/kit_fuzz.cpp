// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "fuzz/target.h"

#include "kit/kit.h"
#include "plan/plan.h"

void evenfall::fuzz::take(std::string_view bytes)
{
    const Result<Kit> kit = read_kit(bytes);
    told(kit);
    if (!kit)
        return;
    for (const WritingHand hand : {WritingHand::left, WritingHand::right}) {
        const Result<Plan> plan = make_plan(*kit, hand);
        told(plan);
        law(!plan.ok() || !plan->steps.empty(), "a plan without steps");
    }
}

std::vector<std::string> evenfall::fuzz::seeds()
{
    std::vector<std::string> out;
    add_files(out, "assets/kits");
    add_files(out, "tests/data/kit");
    return out;
}
