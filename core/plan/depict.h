// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/text.h"
#include "kit/kit.h"
#include "plan/plan.h"
#include "plan/taking_off.h"

#include <compare>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace evenfall {

// How a kit's things are shown, the same on screen and paper.

/// Id of the drawing of a part by itself.
std::string item_figure(PartKind kind);
/// The same for what is packed beside the parts ("tape_roll", "charger", ...); empty: no drawing.
std::string item_figure(const std::string& item);

/// A drawing with what of the kit is to be seen in it.
struct Depiction {
    std::string id;                    ///< of the drawing
    std::map<std::string, int> counts; ///< slot -> ridges or dots of a mark, or strips of tape
    std::set<std::string> dots;        ///< the slots whose mark is dots
    std::vector<std::string> layers;   ///< of the drawing, those that are to be seen
    bool empty() const { return id.empty(); }
    auto operator<=>(const Depiction&) const = default;
};

/// The drawing of a step, with the marks of its part. A plug's drawing names the part that its cable
/// comes from, by that part's layer of the whole person, the ports that stand in a row with its own
/// (port_<count>) and the plugs that are in them by then (in_<count>). Belts and recorder show what is
/// worn by then, the recorder as a whole what is plugged into it, and the tape on the nose tube the
/// breath sensor where one is on.
Depiction depict(const Kit& kit, const Plan& plan, const Step& step);
/// The same for taking off. The recorder is never stopped by the drawing of its start; where one
/// plug is pulled, the others of its row are on their way out too; each belt
/// that the kit has is seen to open, with the recorder where it hangs.
Depiction depict(const Kit& kit, const Plan& plan, const OffStep& step);

/// Somebody who gets up at night with all on.
Depiction depict_getting_up(const Plan& plan);

/// A drawing of a part by itself or of what is done with it, with its mark; the recorder with its ports.
Depiction marked(const Kit& kit, std::string figure, const Part& part);
/// Where a part sits when it is right, for the last look at each.
Depiction worn(const Kit& kit, const Plan& plan, const Part& part);
/// The marks on the whole person, as far as its parts have been drawn with room for one: its layers
/// are left to whoever shows it.
Depiction person_of(const Kit& kit, const Plan& plan);

/// What a light of the recorder looks like: "blinks green twice, then a pause".
Text light_text(const Light& light);

} // namespace evenfall
