// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"
#include "base/text.h"
#include "kit/kit.h"
#include "kit/visit.h"

#include <chrono>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

/// The parts of an evening, in order.
enum class Phase { get_ready, put_on, finish };

/// A thing that may be wrong at a step, as a question, and what to do about it.
struct Help {
    std::string id;
    Text question;
    Text fix;
};

/// A way in which a step often goes wrong, shown as what not to do.
struct Mistake {
    std::string figure; ///< id of its drawing, with a cross in it
    Text text;          ///< "Not twisted"
};

/// One page of the guided set-up.
struct Step {
    std::string id;    ///< "<part>.<stage>", "ready.<stage>", "check", "start.<how>" or "light"
    std::string part;  ///< id of the kit's part, or empty
    std::string stage; ///< "wrap", "plug", ...
    Phase phase = Phase::get_ready;
    std::chrono::seconds seconds{0};
    int hands = 2;       ///< how many hands it takes
    int tape_strips = 0; ///< used in this step
    std::string figure;  ///< id of the drawing of this step
    std::string layer;   ///< of the whole-person figure, solid from this step on; may be empty
    Text label, title, body, right, why, caution;
    std::vector<Help> helps;
    std::vector<Mistake> mistakes;
};

/// The ordered steps that put this kit on this person.
struct Plan {
    std::vector<Step> steps;
    int tape_strips = 0;

    const Step* step(std::string_view id) const;
    std::chrono::seconds length() const;
    /// From the beginning of step `index` to being in bed.
    std::chrono::seconds before_bed(size_t index) const;
};

/// Builds the steps from the kit's parts by their kinds, in an order that keeps every "must come
/// before": heart pads on bare skin before belts and recorder, a belt before what sits on it, all that
/// sits on a tube before the tube is taped, the recorder before a plug, tape torn before it is used,
/// nails bare before the probe, all that takes two hands before the probe ties one, the probe's plug
/// last, and what the kit file adds with "after". Among what is free to go, the order of the file.
/// Error (refused): a cycle, with the pointer of an "after" in it and every link named.
Result<Plan> make_plan(const Kit& kit, WritingHand hand);

/// The step that leaves a recorder that starts by its last plug running; empty for other kits.
std::string last_plug(const Kit& kit, const Plan& plan);
/// Does this step set the recorder going?
bool starts_recorder(const Kit& kit, const Plan& plan, const Step& step);
/// Does this step use tape up: tears it, or sticks it on?
bool uses_tape(const Step& step);

/// Wall clock time of day at which step `index` begins when bed is at `bed_time`; wraps at midnight.
std::chrono::minutes start_of_step(const Plan& plan, size_t index, std::chrono::minutes bed_time);

/// What a part is called: the kit's own name for it, else the kind's at its place.
TextArg part_name(const Part& part);

/// What a mark that is not smooth feels like, as a phrase: "2 ridges".
TextArg mark_phrase(const Mark& mark);

/// Every text id that any kit can bring up, for the check that all are translated.
std::vector<std::string> all_step_texts();

} // namespace evenfall
