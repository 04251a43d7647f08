// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "plan/taking_off.h"

#include "core/kit/kits.h"
#include "plan/depict.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace evenfall {
namespace {

using test::demo_kit;
using ::testing::ElementsAre;

Depiction drawn(const Kit& kit, std::string_view page)
{
    return depict(kit, make_plan(kit, WritingHand::right).value(), *off_step(kit, page));
}

std::vector<std::string> pages_of(const Kit& kit)
{
    std::vector<std::string> pages;
    for (const OffStep& step : off_steps(kit))
        pages.push_back(step.page);
    return pages;
}

Part* find(Kit& kit, PartKind kind)
{
    const auto found = std::find_if(kit.parts.begin(), kit.parts.end(), [kind](const Part& part) { return part.kind == kind; });
    return found == kit.parts.end() ? nullptr : &*found;
}

TEST(TakingOff, HasThePagesThatTheKitNeeds)
{
    EXPECT_THAT(pages_of(demo_kit("marram")), ElementsAre("stop", "tape_off", "unplug", "rest_off", "unsnap"));
    EXPECT_THAT(pages_of(demo_kit("heron")), ElementsAre("stop", "tape_off", "unplug_snap", "unplug", "rest_off", "untwist"));
    // Its only other plug was pulled to stop it.
    EXPECT_THAT(pages_of(demo_kit("tern")), ElementsAre("stop", "tape_off", "rest_off", "untwist"));
}

TEST(TakingOff, SaysOfEachKindOfPlugHowItLetsGo)
{
    Kit kit = demo_kit("heron"); // plugs that snap, and plugs that are pushed
    EXPECT_EQ(off_step(kit, "unplug_snap")->body.id, "off.unplug.snap.body");
    EXPECT_EQ(off_step(kit, "unplug")->body.id, "off.unplug.push.body");
    EXPECT_NE(off_step(kit, "unplug")->title, off_step(kit, "unplug_snap")->title);
    kit = demo_kit("marram");
    EXPECT_EQ(off_step(kit, "unplug")->body.id, "off.unplug.push.body");
    find(kit, PartKind::effort_sensor)->plug->joint = Joint::twist;
    EXPECT_EQ(off_step(kit, "unplug")->body.id, "off.unplug.twist.body");
}

TEST(TakingOff, DrawsTheOtherPlugsOfTheRowComingOutToo)
{
    const Kit kit = demo_kit("heron");
    const Depiction row_of = drawn(kit, "unplug_snap");
    const Part* part = plug_of(kit, "unplug_snap");
    ASSERT_NE(part, nullptr);
    EXPECT_EQ(row_of.counts.at("mark-port"), part->mark.count);
    const auto out = std::count_if(row_of.layers.begin(), row_of.layers.end(), [](const std::string& layer) { return layer.starts_with("out_"); });
    const auto row = std::count_if(kit.parts.begin(), kit.parts.end(), [](const Part& one) { return one.plug && one.plug->joint == Joint::snap; });
    EXPECT_EQ(out, row - 1);
    // The tube of heron is turned off on a page of its own, that of marram is pulled like a plug.
    const auto tube = [](const Kit& of) {
        const Depiction all = drawn(of, "unplug");
        return std::count(all.layers.begin(), all.layers.end(), "tube_out");
    };
    EXPECT_EQ(tube(kit), 0);
    EXPECT_EQ(tube(demo_kit("marram")), 1);
}

TEST(TakingOff, TubeThatWasPushedIsAPlugLikeTheOthers)
{
    Kit kit = demo_kit("tern");
    find(kit, PartKind::nasal_cannula)->plug->joint = Joint::push;
    EXPECT_THAT(pages_of(kit), ElementsAre("stop", "tape_off", "unplug", "rest_off"));
}

TEST(TakingOff, PageThatIsNotOneOfItsStepsHasNone)
{
    const Kit kit = demo_kit("tern");
    EXPECT_FALSE(off_step(kit, "unsnap"));
    EXPECT_FALSE(off_step(kit, "skin"));
    EXPECT_TRUE(off_step(kit, "untwist"));
}

} // namespace
} // namespace evenfall
