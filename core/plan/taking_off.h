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
    std::string page; ///< "stop", "tape_off", "unplug", "rest_off", "untwist" or "unsnap"; stands in journals
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

/// Of the plugs that are left when the recorder has stopped, the tube's apart, the one that asks most of
/// a hand: one that snaps, else one that is turned, else one that is pushed. Null: none is left.
const Part* hardest_plug(const Kit& kit);

} // namespace evenfall
