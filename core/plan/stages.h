// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "kit/kit.h"
#include "kit/visit.h"

#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

/// How one kind of part is put on, page by page. Internal to the plan.
struct Stage {
    std::string name;    ///< last word of the step's id
    std::string texts;   ///< text ids are "step.<texts>.title", ".body", ...
    std::string figure;
    std::string layer;   ///< of the whole-person figure
    std::chrono::seconds seconds{0};
    int hands = 2;
    int tape_strips = 0;
    bool has_why = false;
    bool has_caution = false;
    int helps = 0;       ///< "help.<texts>.<n>.question" and ".fix", n from 1
    /// Drawings "wrong_<name>" and texts "mistake.<name>": what spoils a night at this step (the
    /// choice is ours, after the order of attention in which home nights fail).
    std::vector<std::string> mistakes{};
};

/// The pages for one part of this kit, in their order, its plug last. Text ids of pages that speak of
/// a hand end in ".left" or ".right": the hand that the probe goes on.
std::vector<Stage> stages_of(const Part& part, WritingHand writes_with);

/// Before anything is connected.
std::vector<Stage> ready_stages(int tape_strips);

/// After the last plug: look at every sensor, set the recorder going, see its light.
std::vector<Stage> finish_stages(const Kit& kit);

} // namespace evenfall
