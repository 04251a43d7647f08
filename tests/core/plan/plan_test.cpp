// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "plan/plan.h"

#include "core/kit/kits.h"
#include "plan/depict.h"
#include "plan/stages.h"

#include <algorithm>
#include <set>

namespace evenfall {
namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using test::demo_kit;

Plan plan_of(const Kit& kit, WritingHand hand = WritingHand::right)
{
    Result<Plan> plan = make_plan(kit, hand);
    if (!plan)
        throw std::runtime_error(test::all_told(plan.problems()));
    return std::move(plan.value());
}

/// Place of a step in the order; fails the test when there is no such step.
size_t place(const Plan& plan, const std::string& id)
{
    for (size_t i = 0; i < plan.steps.size(); ++i) {
        if (plan.steps[i].id == id)
            return i;
    }
    throw std::runtime_error("no step " + id);
}

Part& part_of(Kit& kit, const std::string& id)
{
    return *std::find_if(kit.parts.begin(), kit.parts.end(), [&](const Part& one) { return one.id == id; });
}

size_t index_of(const Kit& kit, const std::string& id)
{
    return static_cast<size_t>(kit.part(id) - kit.parts.data());
}

/// First and last step of a part in the order of the plan.
std::pair<size_t, size_t> steps_of(const Plan& plan, const std::string& part)
{
    size_t first = plan.steps.size(), last = 0;
    for (size_t i = 0; i < plan.steps.size(); ++i) {
        if (plan.steps[i].part == part) {
            first = std::min(first, i);
            last = i;
        }
    }
    EXPECT_LT(first, plan.steps.size()) << part;
    return {first, last};
}

/// The stub of the nose tube takes no plug.
std::set<std::string> texts_of(const Plan& plan)
{
    std::set<std::string> ids;
    for (const Step& step : plan.steps) {
        for (const Text* text : {&step.label, &step.title, &step.body, &step.right, &step.why, &step.caution}) {
            if (!text->id.empty())
                ids.insert(text->id);
            for (const TextArg& arg : text->args) {
                if (const auto* part = std::get_if<TextArg::Part>(&arg.value))
                    ids.insert(part->id);
            }
        }
        for (const Help& help : step.helps) {
            ids.insert(help.question.id);
            ids.insert(help.fix.id);
        }
    }
    return ids;
}

/// Every rule of order that holds for any kit.
class PlanOfDemoKit : public testing::TestWithParam<std::tuple<std::string, WritingHand>> {
  protected:
    const Kit kit = demo_kit(std::get<0>(GetParam()));
    const WritingHand hand = std::get<1>(GetParam());
    const Plan plan = plan_of(kit, hand);
};

TEST_P(PlanOfDemoKit, HasEachStepOnce)
{
    std::set<std::string> ids;
    for (const Step& step : plan.steps) {
        EXPECT_TRUE(ids.insert(step.id).second) << step.id;
        EXPECT_EQ(plan.step(step.id), &step);
        EXPECT_GT(step.seconds.count(), 0) << step.id;
        EXPECT_FALSE(step.figure.empty()) << step.id;
    }
    EXPECT_EQ(plan.step("nowhere"), nullptr);
}

TEST_P(PlanOfDemoKit, HasStepsForEveryPart)
{
    for (const Part& part : kit.parts) {
        const auto [first, last] = steps_of(plan, part.id);
        EXPECT_LE(first, last);
        EXPECT_EQ(plan.step(part.id + ".plug") != nullptr, part.plug.has_value()) << part.id;
    }
}

TEST_P(PlanOfDemoKit, DrawsEachPlugByTheWayItIsJoined)
{
    for (const Part& part : kit.parts) {
        if (!part.plug)
            continue;
        const Joint joint = part.plug->joint;
        std::string figure = joint == Joint::snap ? "snap_press" : "plug_match";
        if (part.kind == PartKind::nasal_cannula)
            figure = joint == Joint::twist ? "tube_twist" : joint == Joint::snap ? "tube_snap" : "tube_push";
        if (part.kind == PartKind::finger_probe)
            figure = "probe_plug";
        EXPECT_EQ(plan.step(part.id + ".plug")->figure, figure) << part.id;
    }
}

TEST_P(PlanOfDemoKit, DrawsWhatAPlugComesFromAndThePortsBesideItsOwn)
{
    std::set<Depiction> seen;
    for (const Part& part : kit.parts) {
        if (!part.plug || part.kind == PartKind::nasal_cannula)
            continue;
        const Depiction drawn = depict(kit, plan, *plan.step(part.id + ".plug"));
        EXPECT_EQ(drawn.counts.at("mark-port"), part.mark.count) << part.id;
        EXPECT_EQ(drawn.dots.contains("mark-port"), part.mark.shape == Mark::Shape::dots) << part.id;
        const auto has = [&](const std::string& layer) { return std::count(drawn.layers.begin(), drawn.layers.end(), layer) == 1; };
        const auto worn = std::find_if(plan.steps.begin(), plan.steps.end(), [&](const Step& one) { return one.part == part.id; });
        ASSERT_FALSE(worn->layer.empty()) << part.id;
        EXPECT_TRUE(has(worn->layer)) << part.id;
        EXPECT_TRUE(has("port_" + std::to_string(part.mark.count))) << part.id;
        long ports = 0;
        for (const Port& port : kit.ports)
            ports += port.joint == part.plug->joint && port.mark.shape == part.mark.shape && !kit.takes_tube(port) ? 1 : 0;
        EXPECT_EQ(std::count_if(drawn.layers.begin(), drawn.layers.end(), [](const std::string& one) { return one.starts_with("port_"); }), ports) << part.id;
        // What was plugged into the same row before is seen in it, and nothing that comes later.
        for (const Part& other : kit.parts) {
            if (&other == &part || !other.plug || other.plug->joint != part.plug->joint || other.mark.shape != part.mark.shape ||
                other.kind == PartKind::nasal_cannula)
                continue;
            const bool before = place(plan, other.id + ".plug") < place(plan, part.id + ".plug");
            EXPECT_EQ(has("in_" + std::to_string(other.mark.count)), before) << other.id << " when " << part.id << " goes in";
        }
        EXPECT_FALSE(has("in_" + std::to_string(part.mark.count))) << part.id;
        // No two plugs of a kit look alike.
        EXPECT_TRUE(seen.insert(drawn).second) << part.id;
    }
}

TEST_P(PlanOfDemoKit, SaysOnWhichEdgeOfTheRecorderAPortIs_WhereBothHaveSome)
{
    const auto edges = [&](Port::Edge edge) {
        return std::any_of(kit.ports.begin(), kit.ports.end(), [&](const Port& port) { return port.edge == edge && !kit.takes_tube(port); });
    };
    const bool both = edges(Port::Edge::top) && edges(Port::Edge::bottom);
    for (const Part& part : kit.parts) {
        if (!part.plug || part.kind == PartKind::nasal_cannula)
            continue;
        const Depiction drawn = depict(kit, plan, *plan.step(part.id + ".plug"));
        const auto has = [&](const std::string& layer) { return std::count(drawn.layers.begin(), drawn.layers.end(), layer) == 1; };
        const Port::Edge edge = kit.port(part.plug->port)->edge;
        EXPECT_EQ(has("edge_top"), both && edge == Port::Edge::top) << part.id;
        EXPECT_EQ(has("edge_bottom"), both && edge == Port::Edge::bottom) << part.id;
        EXPECT_EQ(has("rows_left") + has("rows_right"), both ? 1 : 0) << part.id;
        EXPECT_EQ(has("light"), edge == Port::Edge::top) << part.id;
        const auto tube = std::find_if(kit.parts.begin(), kit.parts.end(), [](const Part& one) { return one.kind == PartKind::nasal_cannula; });
        EXPECT_EQ(has("stub"), edge == Port::Edge::top) << part.id;
        EXPECT_EQ(has("tube_in"), edge == Port::Edge::top && place(plan, tube->id + ".plug") < place(plan, part.id + ".plug")) << part.id;
        for (const Part& other : kit.parts) {
            if (&other == &part || !other.plug || other.kind == PartKind::nasal_cannula || kit.port(other.plug->port)->edge == edge)
                continue;
            EXPECT_EQ(has("other_" + std::to_string(other.mark.count)), place(plan, other.id + ".plug") < place(plan, part.id + ".plug"))
                << other.id << " when " << part.id << " goes in";
        }
    }
}

TEST_P(PlanOfDemoKit, KeepsInSightWhatIsOnAndPluggedIn)
{
    for (const Step& step : plan.steps) {
        const Depiction drawn = depict(kit, plan, step);
        const auto has = [&](const std::string& layer) { return std::count(drawn.layers.begin(), drawn.layers.end(), layer) > 0; };
        for (const Step& before : plan.steps) {
            if (before.id == step.id)
                break;
            if ((step.stage == "wrap" || step.stage == "wear") && !before.layer.empty()) {
                EXPECT_TRUE(has(before.layer)) << before.id << " when " << step.id;
            }
            const Part* part = kit.part(before.part);
            if (step.id.starts_with("start.") && before.stage == "plug" && part->kind == PartKind::nasal_cannula) {
                EXPECT_TRUE(has("tube_in")) << step.id;
            }
        }
    }
}

TEST_P(PlanOfDemoKit, ShowsWhereEachPartSits_NoTwoAlike)
{
    std::set<std::vector<std::string>> seen;
    for (const Part& part : kit.parts) {
        Depiction drawn = worn(kit, plan, part);
        std::erase_if(drawn.layers, [](const std::string& layer) { return layer.starts_with("port_"); });
        ASSERT_EQ(drawn.layers.size(), 1u) << part.id;
        EXPECT_TRUE(seen.insert(drawn.layers).second) << part.id;
    }
}

TEST_P(PlanOfDemoKit, WarnsOfTheMistakesThatSpoilANight)
{
    // Facts: the airflow sensor, the finger probe and the belts spoil most nights (our own judgement).
    std::set<std::string> figures;
    for (const Step& step : plan.steps)
        for (const Mistake& mistake : step.mistakes) {
            EXPECT_EQ("mistake." + mistake.figure.substr(6), mistake.text.id) << step.id;
            figures.insert(mistake.figure);
        }
    EXPECT_EQ(figures, (std::set<std::string>{"wrong_belt_twisted", "wrong_prongs_flipped", "wrong_tube_front_neck",
                                             "wrong_probe_upside", "wrong_probe_not_in", "wrong_cable_loose"}));
}

TEST_P(PlanOfDemoKit, MarksTheWholePersonAsTheKitIsMarked)
{
    const Depiction person = person_of(kit, plan);
    for (const Part& part : kit.parts) {
        const auto worn_at = std::find_if(plan.steps.begin(), plan.steps.end(), [&](const Step& one) { return one.part == part.id && !one.layer.empty(); });
        ASSERT_NE(worn_at, plan.steps.end()) << part.id;
        const std::string slot = "mark-" + worn_at->layer;
        EXPECT_EQ(person.counts.contains(slot), !part.mark.smooth()) << part.id;
        if (!part.mark.smooth()) {
            EXPECT_EQ(person.counts.at(slot), part.mark.count) << part.id;
            EXPECT_EQ(person.dots.contains(slot), part.mark.shape == Mark::Shape::dots) << part.id;
        }
    }
}

TEST_P(PlanOfDemoKit, NeverDrawsTakingOffAsPuttingOn)
{
    for (const OffStep& off : off_steps(kit)) {
        const Depiction drawn = depict(kit, plan, off);
        for (const Step& step : plan.steps)
            EXPECT_NE(drawn.id, step.figure) << off.page << " " << step.id;
    }
}

TEST(Depict, DrawsEachStopInItsOwnWay)
{
    Kit kit = demo_kit("marram");
    std::set<std::string> figures;
    for (const StartBy by : {StartBy::last_plug, StartBy::switch_on, StartBy::set_time}) {
        kit.start.by = by;
        EXPECT_TRUE(figures.insert(depict(kit, plan_of(kit), *off_step(kit, "stop")).id).second);
    }
    kit.start.by = StartBy::last_plug;
    const Part* clip = kit.part("finger");
    ASSERT_NE(clip, nullptr);
    EXPECT_EQ(depict(kit, plan_of(kit), *off_step(kit, "stop")).counts.at("mark-port"), clip->mark.count);
}

TEST_P(PlanOfDemoKit, DrawsTheBreathSensorUnderTheTapeWhereOneIsOnTheTube)
{
    const auto is_breath = [](const Part& part) { return part.kind == PartKind::breath_sensor; };
    const bool breath = std::any_of(kit.parts.begin(), kit.parts.end(), is_breath);
    for (const Step& step : plan.steps) {
        const Depiction drawn = depict(kit, plan, step);
        if (step.figure == "cannula_tape") {
            const std::vector<std::string> wanted = breath ? std::vector<std::string>{"breath"} : std::vector<std::string>{};
            EXPECT_EQ(drawn.layers, wanted) << step.id;
        }
    }
    // A sensor that would only come after the tape is not yet to be seen.
    Plan later = plan;
    const auto placed = std::find_if(later.steps.begin(), later.steps.end(), [](const Step& one) { return one.layer == "breath"; });
    if (placed != later.steps.end()) {
        std::rotate(placed, placed + 1, later.steps.end());
        const auto tape = std::find_if(later.steps.begin(), later.steps.end(), [](const Step& one) { return one.figure == "cannula_tape"; });
        ASSERT_NE(tape, later.steps.end());
        EXPECT_TRUE(depict(kit, later, *tape).layers.empty());
    }
}

TEST_P(PlanOfDemoKit, DrawsWhatElseComesOffInTheMorning)
{
    const auto parts = [&](PartKind kind) { return std::count_if(kit.parts.begin(), kit.parts.end(), [&](const Part& part) { return part.kind == kind; }); };
    const Depiction rest = depict(kit, plan, *off_step(kit, "rest_off"));
    EXPECT_EQ(rest.id, "rest_off");
    EXPECT_EQ(std::count_if(rest.layers.begin(), rest.layers.end(), [](const std::string& layer) { return layer.starts_with("recorder_"); }), 1);
    EXPECT_EQ(std::count(rest.layers.begin(), rest.layers.end(), "belt_abdomen"), parts(PartKind::effort_belt) > 1 ? 1 : 0);
}

TEST_P(PlanOfDemoKit, DrawsAMirrorRoundThePersonAtTheCheckAlone)
{
    for (const Step& step : plan.steps) {
        const Depiction drawn = depict(kit, plan, step);
        const bool mirror = std::count(drawn.layers.begin(), drawn.layers.end(), "mirror") > 0;
        EXPECT_EQ(mirror, step.id == "check") << step.id;
    }
}

TEST_P(PlanOfDemoKit, DrawsEachLegByItself)
{
    for (const Part& part : kit.parts) {
        if (part.kind != PartKind::leg_electrodes)
            continue;
        EXPECT_EQ(plan.step(part.id + ".place")->figure, part.where == "left_leg" ? "leg_left" : "leg_right");
    }
}

TEST_P(PlanOfDemoKit, PutsWhatCarriesBeforeWhatSitsOnIt)
{
    for (const Part& part : kit.parts) {
        if (part.on.empty())
            continue;
        // A carrier with a plug need not be plugged in before something sits on it.
        const size_t last = steps_of(plan, part.on).second;
        const size_t worn = plan.steps[last].stage == "plug" ? last - 1 : last;
        for (size_t i = 0; i <= worn; ++i) {
            if (plan.steps[i].part == part.on && plan.steps[i].stage != "plug" && plan.steps[i].stage != "tape") {
                EXPECT_LT(i, steps_of(plan, part.id).first) << part.id << " on " << part.on;
            }
        }
    }
}

TEST_P(PlanOfDemoKit, TapesATubeWhenAllThatSitsOnItIsThere)
{
    for (const Part& part : kit.parts) {
        if (!part.on.empty() && plan.step(part.on + ".tape")) {
            EXPECT_LT(steps_of(plan, part.id).first, place(plan, part.on + ".tape")) << part.id << " on " << part.on;
        }
    }
}

TEST_P(PlanOfDemoKit, PutsHeartPadsOnBareSkinBeforeAnythingIsWornOverIt)
{
    for (const Part& pads : kit.parts) {
        if (pads.kind != PartKind::ecg_electrodes)
            continue;
        for (const Part& over : kit.parts) {
            if (over.kind == PartKind::effort_belt || over.kind == PartKind::recorder) {
                EXPECT_LT(place(plan, pads.id + ".place"), steps_of(plan, over.id).first) << over.id;
            }
        }
    }
}

TEST_P(PlanOfDemoKit, PutsTheRecorderOnBeforeAnyPlug)
{
    const size_t recorder = steps_of(plan, kit.recorder()->id).second;
    for (size_t i = 0; i < plan.steps.size(); ++i) {
        if (plan.steps[i].stage == "plug") {
            EXPECT_LT(recorder, i) << plan.steps[i].id;
        }
    }
}

TEST_P(PlanOfDemoKit, PlugsAPartInAfterItIsWorn)
{
    for (const Part& part : kit.parts) {
        if (part.plug) {
            EXPECT_EQ(place(plan, part.id + ".plug"), steps_of(plan, part.id).second) << part.id;
        }
    }
}

TEST_P(PlanOfDemoKit, TearsTapeBeforeItIsUsed)
{
    int used = 0;
    for (size_t i = 0; i < plan.steps.size(); ++i) {
        used += plan.steps[i].tape_strips;
        if (plan.steps[i].tape_strips > 0) {
            EXPECT_LT(place(plan, "ready.tape"), i) << plan.steps[i].id;
        }
    }
    EXPECT_GT(used, 0);
    EXPECT_EQ(plan.tape_strips, used);
}

TEST_P(PlanOfDemoKit, BaresTheNailsBeforeTheProbe)
{
    EXPECT_LT(place(plan, "ready.bare"), steps_of(plan, "finger").first);
}

TEST_P(PlanOfDemoKit, PutsTheBathroomBeforeTheKit)
{
    // Common practice, no source: the bathroom before the kit is connected.
    for (const Part& part : kit.parts)
        EXPECT_LT(place(plan, "ready.bathroom"), steps_of(plan, part.id).first) << part.id;
}

TEST_P(PlanOfDemoKit, EndsWithTheProbesPlug)
{
    // Common practice, no source: the finger probe is plugged in last.
    const size_t plug = place(plan, "finger.plug");
    for (size_t i = 0; i < plan.steps.size(); ++i) {
        if (plan.steps[i].phase == Phase::put_on) {
            EXPECT_LE(i, plug) << plan.steps[i].id;
        }
        if (plan.steps[i].phase == Phase::finish) {
            EXPECT_GT(i, plug) << plan.steps[i].id;
        }
    }
}

TEST_P(PlanOfDemoKit, NeedsOneHandOnly_FromTheProbeOn)
{
    // So also after the hand is taped.
    for (size_t i = steps_of(plan, "finger").first; i < plan.steps.size(); ++i)
        EXPECT_EQ(plan.steps[i].hands, 1) << plan.steps[i].id;
    EXPECT_EQ(plan.steps[place(plan, "finger.tape_hand")].hands, 1);
}

TEST_P(PlanOfDemoKit, GoesThroughThePhasesInOrder)
{
    EXPECT_TRUE(std::is_sorted(plan.steps.begin(), plan.steps.end(),
                               [](const Step& a, const Step& b) { return a.phase < b.phase; }));
}

TEST_P(PlanOfDemoKit, FinishesWithCheckStartAndLight)
{
    std::vector<std::string> finish;
    for (const Step& step : plan.steps) {
        if (step.phase == Phase::finish)
            finish.push_back(step.id);
    }
    std::vector<std::string> right{"check"};
    if (kit.start.by != StartBy::last_plug)
        right.push_back("start." + std::string(name_of(kit.start.by)));
    right.push_back("light");
    EXPECT_EQ(finish, right);
}

TEST_P(PlanOfDemoKit, SpeaksOfTheHandThatDoesNotWrite)
{
    // Common practice, no source: the probe goes on the hand the person does not write with.
    const std::string on = hand == WritingHand::right ? ".left." : ".right.";
    const std::string not_on = hand == WritingHand::right ? ".right." : ".left.";
    for (const char* id : {"finger.place", "finger.tape_hand", "finger.tape_arm", "finger.plug"}) {
        const Step& step = plan.steps[place(plan, id)];
        EXPECT_NE(step.title.id.find(on), std::string::npos) << step.title.id;
        EXPECT_NE(step.body.id.find(on), std::string::npos) << step.body.id;
        EXPECT_EQ(step.body.id.find(not_on), std::string::npos) << step.body.id;
        for (const Help& help : step.helps)
            EXPECT_NE(help.fix.id.find(on), std::string::npos) << help.fix.id;
    }
}

TEST_P(PlanOfDemoKit, UsesOnlyTextsThatAreListedForTranslation)
{
    const std::vector<std::string> listed = all_step_texts();
    for (const std::string& id : texts_of(plan))
        EXPECT_TRUE(std::binary_search(listed.begin(), listed.end(), id)) << id;
}

TEST_P(PlanOfDemoKit, CautionsWhereTubeTapeAndProbeCanHurt)
{
    // Tube at the neck, tape on skin, nail under the probe (sources in the texts' notes).
    for (const char* id : {"cannula.ears", "cannula.chin", "cannula.tape", "finger.place", "finger.tape_hand", "ready.tape"})
        EXPECT_FALSE(plan.steps[place(plan, id)].caution.empty()) << id;
}

INSTANTIATE_TEST_SUITE_P(AllKits, PlanOfDemoKit,
                         testing::Combine(testing::Values("marram", "tern", "heron"),
                                          testing::Values(WritingHand::right, WritingHand::left)),
                         [](const auto& one) {
                             return std::get<0>(one.param) +
                                    (std::get<1>(one.param) == WritingHand::right ? "_writes_right" : "_writes_left");
                         });

TEST(Plan, NeedsFourStripsOfFiveCentimetres_ForTheFiveSensorKit)
{
    // Common practice, no source: two for the cheeks, one for the back of the hand, one for the forearm.
    const Kit kit = demo_kit("marram");
    const Plan plan = plan_of(kit);
    EXPECT_EQ(plan.tape_strips, 4);
    EXPECT_EQ(kit.strip_length_mm, 50);
    EXPECT_EQ(plan.steps[place(plan, "cannula.tape")].tape_strips, 2);
    EXPECT_EQ(plan.steps[place(plan, "finger.tape_hand")].tape_strips, 1);
    EXPECT_EQ(plan.steps[place(plan, "finger.tape_arm")].tape_strips, 1);
    const std::vector<TextArg> told{TextArg{TextArg::Count{4}}, TextArg{TextArg::Count{5}}};
    EXPECT_EQ(plan.step("ready.tape")->title.args, told);
    EXPECT_EQ(plan.step("ready.tape")->body.args, told);
}

TEST(Plan, TakesAboutThirtyMinutes_ForTheFiveSensorKit)
{
    // Common practice, no source: start getting ready about 30 minutes before bedtime.
    const Plan plan = plan_of(demo_kit("marram"));
    EXPECT_GE(plan.length(), minutes(29));
    EXPECT_LE(plan.length(), minutes(31));
    const minutes start = start_of_step(plan, 0, minutes(22 * 60 + 5));
    EXPECT_GE(format_time_of_day(start), "21:34");
    EXPECT_LE(format_time_of_day(start), "21:36");
}

TEST(Plan, CountsItsTimesBackFromBed)
{
    const Plan plan = plan_of(demo_kit("marram"));
    seconds left = plan.length();
    for (size_t i = 0; i < plan.steps.size(); ++i) {
        EXPECT_EQ(plan.before_bed(i), left);
        // Never later than counted, and less than a minute earlier.
        const minutes start = start_of_step(plan, i, minutes(22 * 60 + 5));
        const seconds exact = seconds(minutes(22 * 60 + 5)) - left;
        EXPECT_LE(start, exact);
        EXPECT_GT(start + minutes(1), exact);
        left -= plan.steps[i].seconds;
    }
    EXPECT_EQ(left, seconds(0));
    EXPECT_EQ(plan.before_bed(plan.steps.size()), seconds(0));
}

TEST(Plan, BeginsOnTheEveningBefore_WhenBedIsJustAfterMidnight)
{
    const Plan plan = plan_of(demo_kit("marram"));
    const minutes start = start_of_step(plan, 0, minutes(10));
    EXPECT_GE(format_time_of_day(start), "23:39");
    EXPECT_LE(format_time_of_day(start), "23:41");
    EXPECT_LT(start_of_step(plan, plan.steps.size() - 1, minutes(10)), minutes(24 * 60));
}

TEST(Plan, WritesTimesOfDayWithTwoDigits)
{
    EXPECT_EQ(format_time_of_day(minutes(0)), "00:00");
    EXPECT_EQ(format_time_of_day(minutes(9 * 60 + 5)), "09:05");
    EXPECT_EQ(format_time_of_day(minutes(23 * 60 + 59)), "23:59");
}

TEST(Plan, KeepsItsRulesAndSums_WhateverTheOrderOfThePartsInTheFile)
{
    // The order may differ where nothing speaks against it; the rules and the sums may not.
    Kit kit = demo_kit("marram");
    const Plan first = plan_of(kit);
    std::reverse(kit.parts.begin(), kit.parts.end());
    const Plan turned = plan_of(kit);
    EXPECT_EQ(turned.length(), first.length());
    EXPECT_EQ(turned.tape_strips, first.tape_strips);
    EXPECT_LT(place(turned, "chest_belt.wrap"), place(turned, "chest.snap"));
    EXPECT_LT(place(turned, "waist_belt.wrap"), place(turned, "recorder.wear"));
    EXPECT_LT(place(turned, "recorder.wear"), place(turned, "chest.plug"));
    EXPECT_LT(place(turned, "cannula.prongs"), place(turned, "breath.place"));
    EXPECT_LT(place(turned, "cannula.plug"), place(turned, "finger.place"));
    EXPECT_EQ(place(turned, "finger.plug") + 1, place(turned, "check"));
}

TEST(Plan, KeepsTheOrderOfTheFile_WhereNothingSpeaksAgainstIt)
{
    const Plan plan = plan_of(demo_kit("marram"));
    EXPECT_LT(place(plan, "chest_belt.wrap"), place(plan, "waist_belt.wrap"));
    Kit kit = demo_kit("marram");
    std::swap(kit.parts[index_of(kit, "chest_belt")], kit.parts[index_of(kit, "waist_belt")]);
    const Plan swapped = plan_of(kit);
    EXPECT_LT(place(swapped, "waist_belt.wrap"), place(swapped, "chest_belt.wrap"));
}

TEST(Plan, KeepsWhatTheKitAsksFor_WhenAPartComesAfterAnother)
{
    Kit kit = demo_kit("marram");
    ASSERT_LT(place(plan_of(kit), "chest.plug"), place(plan_of(kit), "cannula.prongs"));
    part_of(kit, "chest_belt").after = {"cannula"};
    const Plan plan = plan_of(kit);
    EXPECT_LT(place(plan, "cannula.plug"), place(plan, "chest_belt.wrap"));
}

TEST(Plan, NamesTheCycleAndTheAfterInIt_WhenTwoPartsWaitForEachOther)
{
    Kit kit = demo_kit("marram");
    part_of(kit, "chest_belt").after = {"chest"};
    const Problems problems = make_plan(kit, WritingHand::right).problems();
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0].fault, Fault::refused);
    EXPECT_EQ(problems[0].code, "cycle");
    EXPECT_EQ(problems[0].at, "/parts/" + std::to_string(index_of(kit, "chest_belt")) + "/after/0");
    for (const char* word : {"chest_belt.wrap", "chest.snap", "chest sits on chest_belt", "right would be"})
        EXPECT_NE(problems[0].text.find(word), std::string::npos) << problems[0].text;
}

TEST(Plan, NamesThatAfter_WhenItWouldTakeTwoHandsAfterTheProbe)
{
    Kit kit = demo_kit("marram");
    part_of(kit, "cannula").after = {"breath", "finger"};
    part_of(kit, "breath").on.clear();
    const Problems problems = make_plan(kit, WritingHand::right).problems();
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0].code, "cycle");
    EXPECT_EQ(problems[0].at, "/parts/" + std::to_string(index_of(kit, "cannula")) + "/after/1");
}

TEST(Plan, LeavesTheOthersOut_WhenTheyOnlyHangOnTheCycle)
{
    Kit kit = demo_kit("marram");
    part_of(kit, "chest_belt").after = {"chest"};
    const std::string text = make_plan(kit, WritingHand::right).problems()[0].text;
    EXPECT_EQ(text.find("finger"), std::string::npos) << text;
    EXPECT_EQ(text.find("light"), std::string::npos) << text;
}

TEST(Plan, AsksForNoTape_WhenNoPartIsTaped)
{
    Kit kit = demo_kit("marram");
    for (Part& part : kit.parts)
        part.tape_strips = 0;
    const Plan plan = plan_of(kit);
    EXPECT_EQ(plan.tape_strips, 0);
    EXPECT_EQ(plan.step("ready.tape"), nullptr);
    EXPECT_EQ(plan.step("cannula.tape"), nullptr);
    EXPECT_EQ(plan.step("finger.tape_hand"), nullptr);
}

TEST(Plan, CarriesTheClinicsOwnWords_WhenTheKitHasThem)
{
    Kit kit = demo_kit("marram");
    part_of(kit, "chest_belt").texts["wrap"]["body"] = {{"en", "Close it at the side."}};
    const Plan plan = plan_of(kit);
    EXPECT_EQ(plan.step("chest_belt.wrap")->body.own.at("en"), "Close it at the side.");
    EXPECT_FALSE(plan.step("chest_belt.wrap")->body.id.empty()) << "the built-in text stands for other languages";
    EXPECT_TRUE(plan.step("chest_belt.wrap")->title.own.empty());
    EXPECT_TRUE(plan.step("waist_belt.wrap")->body.own.empty());
}

TEST(Plan, TellsTwoPartsThatLookAlikeByTheirMarks_FromTheirFirstStepOn)
{
    const Plan plan = plan_of(demo_kit("heron"));
    EXPECT_EQ(plan.step("left_leg.place")->label.args.at(1), (TextArg{TextArg::Word{"mark.ridges.3"}}));
    EXPECT_EQ(plan.step("right_leg.place")->label.args.at(1), (TextArg{TextArg::Word{"mark.ridges.4"}}));
    EXPECT_EQ(plan.step("finger.place")->label.id, "part.label");
}

TEST(Plan, SaysWhatMarkAPlugHas)
{
    const Plan plan = plan_of(demo_kit("marram"));
    EXPECT_EQ(plan.step("abdomen.plug")->body.args, (std::vector{TextArg{TextArg::Word{"mark.ridges.2"}}}));
    EXPECT_EQ(plan_of(demo_kit("heron")).step("ecg.plug")->title.args, (std::vector{TextArg{TextArg::Word{"mark.dots.2"}}}));
    EXPECT_TRUE(plan.step("cannula.plug")->body.args.empty()) << "a smooth one has none to count";
}

TEST(Plan, KnowsTheOneStepThatSetsTheRecorderGoing)
{
    for (const char* id : {"marram", "heron", "tern"}) {
        const Kit kit = demo_kit(id);
        const Plan plan = plan_of(kit);
        std::vector<std::string> found;
        for (const Step& step : plan.steps) {
            if (starts_recorder(kit, plan, step))
                found.push_back(step.id);
        }
        ASSERT_EQ(found.size(), 1u) << id;
        const Step& step = *plan.step(found[0]);
        if (kit.start.by == StartBy::last_plug) {
            EXPECT_EQ(step.stage, "plug") << id;
            for (size_t i = place(plan, step.id) + 1; i < plan.steps.size(); ++i)
                EXPECT_NE(plan.steps[i].stage, "plug") << id;
        } else {
            EXPECT_EQ(step.phase, Phase::finish) << id;
        }
    }
}

TEST(Plan, ListsEachTextOnce_ForTranslation)
{
    const std::vector<std::string> ids = all_step_texts();
    EXPECT_TRUE(std::is_sorted(ids.begin(), ids.end()));
    EXPECT_EQ(std::adjacent_find(ids.begin(), ids.end()), ids.end());
}

} // namespace
} // namespace evenfall
