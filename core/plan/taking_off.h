// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/text.h"
#include "kit/kit.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

/// One page of taking the kit off in the morning; its drawing is in depict.h.
struct OffStep {
    std::string page; ///< "stop", "tape_off", "unplug_snap", "unplug", "rest_off", "untwist" or "unsnap"; stands in journals
    Text title;
    Text body;
    Text caution{};    ///< empty: none
    bool easy = false; ///< the parts themselves show how: may be left out where room is short
};

/// How this kit comes off: first the recording is stopped; the plugs come out before the belts are opened,
/// so that none is pulled by its cable. A kit has only the pages that its parts need.
std::vector<OffStep> off_steps(const Kit& kit);
/// The one on this page; none where the page is another, or not one of this kit's.
std::optional<OffStep> off_step(const Kit& kit, std::string_view page);

/// The first part whose plug is pulled on this page ("unplug_snap": one that snapped in; "unplug": one
/// that was turned or pushed in). The tube that was turned on, and the plug that stopped the recorder,
/// are not among them. Null: none, so the kit has no such page.
const Part* plug_of(const Kit& kit, std::string_view page);

} // namespace evenfall
