// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "fuzz/target.h"

#include "answers/night.h"
#include "estimate/contradictions.h"
#include "estimate/estimate.h"
#include "estimate/estimate_json.h"
#include "estimate/explain.h"

void evenfall::fuzz::take(std::string_view bytes)
{
    const Result<Night> night = read_night(bytes);
    told(night);
    if (!night)
        return;
    // Written and read again it is the same night.
    const std::string written = night_to_json(*night).dump();
    const Result<Night> again = read_night(written);
    law(again.ok(), "a night that was read cannot be read again");
    law(night_to_json(*again).dump() == written, "a night changes when it is written and read");
    const bool sound = contradictions(*night).empty();
    const Estimate told_estimate = estimate(*night, {sound, 50, 1});
    (void)explain(*night, told_estimate);
    (void)estimate_to_json(told_estimate).dump();
    if (!sound)
        return;
    for (const auto& bounds : {told_estimate.window, told_estimate.needed, told_estimate.needed_asleep}) {
        if (bounds)
            law(Span(0) <= bounds->at_least && bounds->at_least <= bounds->best_guess && bounds->best_guess <= bounds->at_most,
                "bounds out of order");
    }
}

std::vector<std::string> evenfall::fuzz::seeds()
{
    std::vector<std::string> out;
    add_files(out, "assets/schemas/examples");
    add_files(out, "tests/data/night");
    return out;
}
