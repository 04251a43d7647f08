// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "plan/plan.h"

#include "plan/stages.h"

#include <algorithm>
#include <numeric>
#include <set>

namespace evenfall {
namespace {

/// "`first` comes before `second`, because ..." with the place in the kit file, where it has one.
struct Link {
    size_t first = 0;
    size_t second = 0;
    std::string because;
    std::string at;
};

/// The steps of the kit in file order, and what must come before what.
struct Draft {
    std::vector<Step> steps;
    std::vector<Link> links;

    void link(size_t first, size_t second, std::string because, std::string at = "")
    {
        if (first != second)
            links.push_back({first, second, std::move(because), std::move(at)});
    }
};

Text own_text(const Part& part, const std::string& stage, const char* slot)
{
    Text text;
    if (const auto found = part.texts.find(stage); found != part.texts.end()) {
        if (const auto one = found->second.find(slot); one != found->second.end())
            text.own = one->second;
    }
    return text;
}

Step make_step(const Stage& stage, Phase phase, const Part* part, const std::string& id)
{
    Step step;
    step.id = id;
    step.part = part ? part->id : "";
    step.stage = stage.name;
    step.phase = phase;
    step.seconds = stage.seconds;
    step.hands = stage.hands;
    step.tape_strips = stage.tape_strips;
    step.figure = stage.figure;
    step.layer = stage.layer;

    const auto text = [&](const char* slot, bool wanted) {
        Text out = part ? own_text(*part, stage.name, slot) : Text{};
        if (wanted)
            out.id = "step." + stage.texts + "." + slot;
        return out;
    };
    step.title = text("title", true);
    step.body = text("body", true);
    step.right = text("right", true);
    step.why = text("why", stage.has_why);
    step.caution = text("caution", stage.has_caution);
    // Of two parts that look alike the mark tells which is meant.
    if (part && part->mark.smooth())
        step.label = Text{"part.label", {part_name(*part)}, {}};
    else if (part)
        step.label = Text{"part.label.marked", {part_name(*part), mark_phrase(part->mark)}, {}};
    if (part && stage.name == "plug" && !part->mark.smooth()) {
        for (Text* one : {&step.title, &step.body, &step.right})
            one->args.push_back(mark_phrase(part->mark));
    }
    for (int n = 1; n <= stage.helps; ++n) {
        const std::string base = "help." + stage.texts + "." + std::to_string(n);
        step.helps.push_back({base, Text{base + ".question", {}, {}}, Text{base + ".fix", {}, {}}});
    }
    for (const std::string& name : stage.mistakes)
        step.mistakes.push_back({"wrong_" + name, Text{"mistake." + name, {}, {}}});
    return step;
}

Draft draft(const Kit& kit, WritingHand hand)
{
    Draft out;
    const int tape = std::accumulate(kit.parts.begin(), kit.parts.end(), 0,
                                     [](int sum, const Part& one) { return sum + one.tape_strips; });
    std::map<std::string, size_t> ready;
    for (const Stage& stage : ready_stages(tape)) {
        ready[stage.name] = out.steps.size();
        Step step = make_step(stage, Phase::get_ready, nullptr, "ready." + stage.name);
        if (stage.name == "tape") {
            for (Text* one : {&step.title, &step.body})
                one->args = {TextArg{TextArg::Count{tape}}, TextArg{TextArg::Count{kit.strip_length_mm / 10}}};
        }
        out.steps.push_back(std::move(step));
    }

    struct Range { size_t first, worn, last; }; // worn: last step before the plug
    std::map<std::string, Range> of_part;
    for (const Part& part : kit.parts) {
        const size_t first = out.steps.size();
        for (const Stage& stage : stages_of(part, hand))
            out.steps.push_back(make_step(stage, Phase::put_on, &part, part.id + "." + stage.name));
        const size_t last = out.steps.size() - 1;
        of_part[part.id] = {first, part.plug ? last - 1 : last, last};
        for (size_t i = first; i < last; ++i)
            out.link(i, i + 1, "one page after the other");
    }
    const size_t put_on_end = out.steps.size();
    for (const Stage& stage : finish_stages(kit)) {
        const bool start = stage.name != "check" && stage.name != "light";
        out.steps.push_back(make_step(stage, Phase::finish, nullptr, (start ? "start." : "") + stage.name));
    }

    for (size_t p = 0; p < kit.parts.size(); ++p) {
        const Part& part = kit.parts[p];
        const Range here = of_part[part.id];
        const std::string at = pointer("/parts", p);
        if (!part.on.empty()) {
            const size_t worn = of_part[part.on].worn;
            const bool taped = out.steps[worn].stage == "tape"; // holds both: it comes when both are on
            out.link(taped ? worn - 1 : worn, here.first, part.id + " sits on " + part.on, pointer(at, "on"));
            if (taped)
                out.link(here.worn, worn, "the tape comes when " + part.id + " sits on " + part.on);
        }
        if (part.plug)
            out.link(of_part[kit.recorder()->id].worn, here.last, "the recorder is worn before anything is plugged into it");
        for (size_t i = 0; i < part.after.size(); ++i)
            out.link(of_part[part.after[i]].last, here.first, "the kit says that " + part.id + " comes after " + part.after[i],
                     pointer(pointer(at, "after"), i));
        // The bathroom before the kit is connected (common practice, no source).
        out.link(ready["bathroom"], here.first, "the bathroom comes before the kit");
        for (size_t i = here.first; i <= here.last; ++i) {
            if (out.steps[i].tape_strips > 0)
                out.link(ready["tape"], i, "tape is torn before it is used");
        }
        // Whoever opens their nightwear for the heart pads must not have belts or a harness over it
        // yet (common practice, no source).
        if (part.kind == PartKind::ecg_electrodes) {
            for (const Part& over : kit.parts) {
                if (over.kind == PartKind::effort_belt || over.kind == PartKind::recorder)
                    out.link(here.worn, of_part[over.id].first, part.id + " goes on bare skin, under " + over.id);
            }
        }
        if (part.kind == PartKind::finger_probe) {
            out.link(ready["bare"], here.first, "nails are bare before the probe");
            // The probe ties one hand: whatever may take two comes before, and its plug is the last
            // (common practice, no source).
            for (size_t i = 0; i < put_on_end; ++i) {
                const bool own = i >= here.first && i <= here.last;
                if (!own && out.steps[i].hands > 1)
                    out.link(i, here.first, "both hands are free until " + part.id + " goes on");
                if (!own)
                    out.link(i, here.last, "the plug of " + part.id + " is the last");
            }
        }
    }
    for (size_t i = 0; i < put_on_end; ++i)
        out.link(i, put_on_end, "the check comes when all is on");
    for (size_t i = put_on_end; i + 1 < out.steps.size(); ++i)
        out.link(i, i + 1, "the check, then the start, then the light");
    return out;
}

/// Names every link of one cycle among the steps that could not be placed.
Problem cycle_problem(const Draft& draft, const std::vector<bool>& placed)
{
    // Every step that is left waits for another one that is left: walking back must meet itself.
    std::vector<const Link*> path;
    std::vector<size_t> seen;
    size_t at = static_cast<size_t>(std::find(placed.begin(), placed.end(), false) - placed.begin());
    while (std::find(seen.begin(), seen.end(), at) == seen.end()) {
        seen.push_back(at);
        const auto back = std::find_if(draft.links.begin(), draft.links.end(), [&](const Link& link) {
            return link.second == at && !placed[link.first];
        });
        path.push_back(&*back);
        at = back->first;
    }
    path.erase(path.begin(), path.begin() + (std::find(seen.begin(), seen.end(), at) - seen.begin()));
    std::reverse(path.begin(), path.end());

    std::string text = "these cannot all be kept: ";
    std::string where = "/parts";
    for (const Link* link : path) {
        text += draft.steps[link->first].id + " before " + draft.steps[link->second].id + " (" + link->because + "), ";
        if (!link->at.empty())
            where = link->at;
    }
    text += "and so round in a circle; right would be to take one of them out";
    return {Fault::refused, "cycle", where, text};
}

} // namespace

const Step* Plan::step(std::string_view id) const
{
    const auto found = std::find_if(steps.begin(), steps.end(), [id](const Step& one) { return one.id == id; });
    return found == steps.end() ? nullptr : &*found;
}

std::chrono::seconds Plan::length() const { return before_bed(0); }

std::chrono::seconds Plan::before_bed(size_t index) const
{
    std::chrono::seconds sum{0};
    for (size_t i = index; i < steps.size(); ++i)
        sum += steps[i].seconds;
    return sum;
}

Result<Plan> make_plan(const Kit& kit, WritingHand hand)
{
    Draft all = draft(kit, hand);
    const size_t count = all.steps.size();
    std::vector<size_t> waits_for(count, 0);
    for (const Link& link : all.links)
        ++waits_for[link.second];

    // Kahn's algorithm; the smallest index that is free goes next, so that the order of the file
    // holds wherever nothing speaks against it, and the result is always the same.
    std::set<size_t> free;
    for (size_t i = 0; i < count; ++i) {
        if (waits_for[i] == 0)
            free.insert(i);
    }
    std::vector<bool> placed(count, false);
    Plan plan;
    while (!free.empty()) {
        const size_t next = *free.begin();
        free.erase(free.begin());
        placed[next] = true;
        plan.steps.push_back(all.steps[next]);
        plan.tape_strips += all.steps[next].tape_strips;
        for (const Link& link : all.links) {
            if (link.first == next && --waits_for[link.second] == 0)
                free.insert(link.second);
        }
    }
    if (plan.steps.size() != count)
        return cycle_problem(all, placed);
    return plan;
}

std::chrono::minutes start_of_step(const Plan& plan, size_t index, std::chrono::minutes bed_time)
{
    using std::chrono::minutes;
    const minutes day{24 * 60};
    // Rounded down: better a minute early.
    const minutes start = std::chrono::floor<minutes>(std::chrono::seconds(bed_time) - plan.before_bed(index));
    return (start % day + day) % day;
}

std::string last_plug(const Kit& kit, const Plan& plan)
{
    if (kit.start.by != StartBy::last_plug)
        return "";
    const auto found = std::find_if(plan.steps.rbegin(), plan.steps.rend(), [](const Step& step) { return step.stage == "plug"; });
    return found == plan.steps.rend() ? "" : found->id;
}

bool starts_recorder(const Kit& kit, const Plan& plan, const Step& step)
{
    return step.id.starts_with("start.") || step.id == last_plug(kit, plan);
}

bool uses_tape(const Step& step) { return step.tape_strips > 0 || step.id == "ready.tape"; }

TextArg part_name(const Part& part)
{
    std::string id = "part." + std::string(facts_of(part.kind).name);
    if (facts_of(part.kind).places.size() > 1 && part.kind != PartKind::recorder)
        id += "." + part.where;
    return TextArg{TextArg::Part{id, part.name}};
}

TextArg mark_phrase(const Mark& mark)
{
    const char* shape = mark.shape == Mark::Shape::dots ? "mark.dots." : "mark.ridges.";
    return TextArg{TextArg::Word{shape + std::to_string(mark.count)}};
}

std::vector<std::string> all_step_texts()
{
    std::set<std::string> ids{"part.label", "part.label.marked"};
    for (const Mark::Shape shape : {Mark::Shape::ridges, Mark::Shape::dots})
        for (int count = 1; count <= most_in_mark; ++count)
            ids.insert(std::get<TextArg::Word>(mark_phrase({shape, count, {}}).value).id);
    const auto add = [&ids](const Stage& stage) {
        for (const char* slot : {"title", "body", "right"})
            ids.insert("step." + stage.texts + "." + slot);
        if (stage.has_why)
            ids.insert("step." + stage.texts + ".why");
        if (stage.has_caution)
            ids.insert("step." + stage.texts + ".caution");
        for (const std::string& name : stage.mistakes)
            ids.insert("mistake." + name);
        for (int n = 1; n <= stage.helps; ++n) {
            for (const char* slot : {"question", "fix"})
                ids.insert("help." + stage.texts + "." + std::to_string(n) + "." + slot);
        }
    };
    for (const Stage& stage : ready_stages(4))
        add(stage);
    Kit kit;
    for (StartBy by : {StartBy::last_plug, StartBy::switch_on, StartBy::set_time}) {
        kit.start.by = by;
        for (const Stage& stage : finish_stages(kit))
            add(stage);
    }
    for (const KindFacts& facts : all_kinds()) {
        for (std::string_view place : facts.places) {
            for (Joint joint : {Joint::push, Joint::twist, Joint::snap}) {
                for (int count : {0, 1}) {
                    Part part;
                    part.kind = facts.kind;
                    part.where = std::string(place);
                    part.tape_strips = std::max(2, facts.tape_strips);
                    part.mark.count = count;
                    part.plug = Plug{"any", joint};
                    ids.insert(std::get<TextArg::Part>(part_name(part).value).id);
                    for (WritingHand hand : {WritingHand::left, WritingHand::right}) {
                        for (const Stage& stage : stages_of(part, hand))
                            add(stage);
                    }
                }
            }
        }
    }
    return {ids.begin(), ids.end()};
}

} // namespace evenfall
