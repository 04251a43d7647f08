// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "sheet/sheet.h"

#include "plan/depict.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <tuple>

namespace evenfall {
namespace {

using Kind = SheetBlock::Kind;
using testing::Contains;
using testing::ElementsAre;

const std::string assets = EVENFALL_SOURCE_DIR "/assets/";

/// What holds for both lengths is asked of both.
class SheetOf : public testing::TestWithParam<std::tuple<std::string, SheetLength>> {
  protected:
    VisitWithKit all = load_visit(assets + "visits/demo.json", {assets + "kits"}).value();
    SheetLength length = std::get<1>(GetParam());
    bool brief() const { return length == SheetLength::brief; }
    void SetUp() override { use(std::get<0>(GetParam())); }
    void use(const std::string& kit) {
        all.kit = load_kit(assets + "kits/" + kit + ".json").value();
        all.visit.kit = kit;
    }
    Plan plan() const { return make_plan(all.kit, all.visit.hand).value(); }
    Sheet sheet() const { return sheet(length); }
    Sheet sheet(SheetLength which) const {
        return make_sheet(all.visit, all.kit, plan(), which).value();
    }
};

std::vector<const SheetBlock*> blocks(const Sheet& sheet, Kind kind) {
    std::vector<const SheetBlock*> out;
    for (const SheetSection& section : sheet.sections)
        for (const SheetBlock& one : section.blocks)
            if (one.kind == kind)
                out.push_back(&one);
    return out;
}

TEST_P(SheetOf, StepsAreThoseOfThePlanInItsOrderAndNumberedThrough) {
    const Sheet made = sheet();
    const auto steps = blocks(made, Kind::step);
    std::size_t at = 0;
    const Plan whole = plan();
    for (const Step& step : whole.steps) {
        if (step.phase == Phase::get_ready || step.stage == "light")
            continue;
        ASSERT_LT(at, steps.size());
        const Part* part = all.kit.part(step.part);
        if (step.title.id.starts_with("step.plug.") && !part->mark.smooth())
            EXPECT_EQ(steps[at]->title, (Text{"sheet.plug", {part_name(*part), mark_phrase(part->mark)}, {}})) << step.id;
        else
            EXPECT_EQ(steps[at]->title, step.title) << step.id;
        EXPECT_EQ(steps[at]->figure.id, step.figure);
        ++at;
    }
    EXPECT_GT(steps.size(), at); // taking off goes on with the numbers
    for (std::size_t i = 0; i < steps.size(); ++i)
        EXPECT_EQ(steps[i]->number, static_cast<int>(i) + 1);
}

TEST_P(SheetOf, TakingOffIsNotDrawnAsPuttingOnOrGettingUp) {
    const Sheet made = sheet();
    std::map<std::string, Depiction> of;
    for (const SheetBlock* step : blocks(made, Kind::step))
        of[step->title.id] = step->figure;
    for (const OffStep& off : off_steps(all.kit)) {
        if (brief() && off.easy)
            EXPECT_FALSE(of.contains(off.title.id)) << off.page;
        else
            EXPECT_EQ(of.at(off.title.id), depict(all.kit, plan(), off)) << off.page;
    }
}

TEST_P(SheetOf, AClinicsOwnTitleOfAPlugStands) {
    for (Part& part : all.kit.parts)
        part.texts["plug"]["title"] = {{"en", "Plug it in here"}};
    const Sheet made = sheet();
    long own = 0;
    for (const SheetBlock* step : blocks(made, Kind::step))
        own += step->title.own.empty() ? 0 : 1;
    const auto plugs = [](const Part& part) { return part.plug.has_value(); };
    EXPECT_EQ(own, std::count_if(all.kit.parts.begin(), all.kit.parts.end(), plugs));
}

TEST_P(SheetOf, WordsThatComeAgainPointToTheStepThatHasThem) {
    const Sheet made = sheet(SheetLength::full);
    const auto steps = blocks(made, Kind::step);
    std::set<std::string> said;
    for (const SheetBlock* step : steps) {
        if (step->body.id != "sheet.like") {
            EXPECT_TRUE(said.insert(step->body.id).second) << step->body.id;
            continue;
        }
        const long to = std::get<TextArg::Count>(step->body.args.at(0).value).value;
        ASSERT_TRUE(to >= 1 && to < step->number);
        // The same thing to do, only with another number of ridges or for another part.
        EXPECT_EQ(steps[static_cast<std::size_t>(to) - 1]->title.id, step->title.id);
    }
}

TEST_P(SheetOf, EveryCautionOfThePlanStandsAtItsStep) {
    const Sheet made = sheet(SheetLength::full);
    const Plan whole = plan();
    for (const Step& step : whole.steps) {
        if (step.caution.empty())
            continue;
        bool found = false;
        for (const SheetSection& section : made.sections)
            for (const SheetBlock& one : section.blocks)
                found = found ||
                        (one.title == step.title &&
                         std::count(one.cautions.begin(), one.cautions.end(), step.caution) > 0);
        EXPECT_TRUE(found) << step.id;
    }
}

TEST_P(SheetOf, BriefSaysEachCautionOnceBeforeItsFirstStepAndNamesAll) {
    const Sheet made = sheet(SheetLength::brief);
    std::set<std::string> said;
    int reached = 0;
    for (const SheetSection& section : made.sections)
        for (const SheetBlock& one : section.blocks) {
            EXPECT_TRUE(one.cautions.empty());
            if (one.kind == Kind::step)
                reached = one.number;
            if (one.kind != Kind::caution)
                continue;
            EXPECT_TRUE(one.title.id.empty() || said.insert(one.title.id).second) << one.title.id;
            EXPECT_TRUE(std::is_sorted(one.numbers.begin(), one.numbers.end()));
            if (!one.numbers.empty()) {
                EXPECT_EQ(one.numbers[0], reached + 1) << one.title.id;
            }
        }
    // Whoever does a step with a caution, or with tape, finds its number at that caution.
    const Plan whole = plan();
    int number = 0;
    for (const Step& step : whole.steps) {
        if (step.phase == Phase::get_ready || step.stage == "light")
            continue;
        ++number;
        std::vector<std::string> wanted = brief_cautions(step.caution.id);
        if (wanted.empty() && !step.caution.empty())
            wanted = {step.caution.id};
        if (step.tape_strips > 0)
            wanted.emplace_back("sheet.brief.tape");
        for (const std::string& id : wanted) {
            bool found = false;
            for (const SheetBlock* one : blocks(made, Kind::caution))
                found = found || (one->title.id == id &&
                                  std::count(one->numbers.begin(), one->numbers.end(), number) == 1);
            EXPECT_TRUE(found) << step.id << " " << id;
        }
    }
}

TEST_P(SheetOf, EveryCautionOfTheFullSheetIsOnTheBriefOne) {
    std::set<std::string> brief_has;
    for (const SheetSection& section : sheet(SheetLength::brief).sections)
        for (const SheetBlock& one : section.blocks) {
            brief_has.insert(one.title.id);
            brief_has.insert(one.body.id);
        }
    brief_has.insert(sheet(SheetLength::brief).emergency.id);
    int count = 0;
    const auto check = [&](const Text& caution) {
        if (caution.id.empty())
            return; // of the kit: asked elsewhere
        ++count;
        std::vector<std::string> said = brief_cautions(caution.id);
        if (said.empty())
            said = {caution.id};
        for (const std::string& id : said)
            EXPECT_THAT(brief_has, Contains(id)) << caution.id;
    };
    for (const SheetSection& section : sheet(SheetLength::full).sections)
        for (const SheetBlock& one : section.blocks) {
            if (one.kind == Kind::caution) {
                check(one.title);
                check(one.body);
            }
            for (const Text& caution : one.cautions)
                check(caution);
        }
    EXPECT_GE(count, 12);
}

TEST_P(SheetOf, EveryCautionOfTheKitIsOnIt) {
    const LocalText own{{"en", "A caution of this clinic."}};
    for (const std::string& at :
         {std::string("tape"), std::string("neck"), std::string("bed"), std::string("hand"),
          std::string("night"), all.kit.parts.back().id}) {
        all.kit.cautions = {{at, own}};
        const Sheet made = sheet();
        int found = 0;
        for (const SheetSection& section : made.sections)
            for (const SheetBlock& one : section.blocks) {
                found += one.kind == Kind::caution && one.title.own == own;
                for (const Text& caution : one.cautions)
                    found += caution.own == own;
            }
        EXPECT_EQ(found, 1) << at;
    }
}

TEST_P(SheetOf, BagAndPackingAreTheKits) {
    const Sheet made = sheet();
    std::size_t back = 0;
    for (const PackedItem& item : all.kit.packing)
        back += item.comes_back;
    // All of it, then what comes back, then the sheet itself; a brief one names what does not.
    EXPECT_EQ(blocks(made, Kind::tick).size(), all.kit.packing.size() + (brief() ? 0 : back + 1));
    std::size_t stays = 0;
    for (const SheetBlock* one : blocks(made, Kind::paragraph))
        stays += one->title.id == "sheet.brief.stays";
    EXPECT_EQ(stays, brief() ? all.kit.packing.size() - back : 0);
}

TEST_P(SheetOf, LightsAreTheKitsWithRecordingFirst) {
    const Sheet made = sheet();
    const auto lights = blocks(made, Kind::light);
    ASSERT_EQ(lights.size(), all.kit.lights.size());
    EXPECT_EQ(lights[0]->light->meaning, Light::Meaning::recording);
    for (const SheetBlock* one : lights) {
        EXPECT_NE(one->body.id, "light.then.call_clinic"); // speaks of a button
        if (one->light->then == Light::Then::call_clinic) {
            EXPECT_EQ(std::get<TextArg::Code>(one->body.args.at(0).value).value,
                      all.visit.clinic.phone);
        }
    }
}

TEST_P(SheetOf, DiaryHasARowForEachSensorAndTheHoursOfTheNight) {
    const Sheet made = sheet();
    ASSERT_EQ(made.diaries.size(), 1u);
    EXPECT_EQ(made.diaries[0].rows.size(), 2 + all.kit.sensors().size());
    std::vector<long> hours;
    for (const Text& one : made.diaries[0].hours)
        hours.push_back(std::get<TextArg::TimeOfDay>(one.args.at(0).value).time.count() / 60);
    EXPECT_THAT(hours, ElementsAre(21, 23, 1, 3, 5, 7, 9)); // planned bed time 22:05
}

TEST_P(SheetOf, DiaryBeginsTheEveningBeforeForABedTimeAfterMidnight) {
    all.visit.bed_time = std::chrono::minutes(10);
    const Sheet made = sheet();
    EXPECT_EQ(std::get<TextArg::TimeOfDay>(made.diaries[0].hours[0].args.at(0).value).time,
              std::chrono::hours(23));
}

TEST_P(SheetOf, EachNightHasItsDiary) {
    all.visit.nights = 3;
    const Sheet made = sheet();
    ASSERT_EQ(made.diaries.size(), 3u);
    for (const SheetDiary& one : made.diaries)
        EXPECT_EQ(one.night.id, "welcome.night");
}

TEST_P(SheetOf, NothingSpeaksOfATablet) {
    const Sheet made = sheet();
    for (const SheetSection& section : made.sections)
        for (const SheetBlock& one : section.blocks)
            for (const char* id :
                 {"step.ready.charger.title", "bed.line.tablet", "bed.line.touch",
                  "step.light.body", "light.then.start_again", "pack.body", "kit.body"}) {
                EXPECT_NE(one.title.id, id);
                EXPECT_NE(one.body.id, id);
            }
}

TEST_P(SheetOf, NoNumberOfTheClinicIsRefused) {
    all.visit.clinic.phone.clear();
    const Result<Sheet> made = make_sheet(all.visit, all.kit, plan(), length);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.problems()[0].fault, Fault::refused);
    EXPECT_EQ(made.problems()[0].at, "/clinic/phone");
}

TEST_P(SheetOf, AllSheetTextsNamesEachTextThatNoScreenHas) {
    const std::vector<std::string> listed = all_sheet_texts();
    const Sheet made = sheet();
    for (const SheetSection& section : made.sections) {
        if (section.title.id.starts_with("sheet.")) {
            EXPECT_THAT(listed, Contains(section.title.id));
        }
        for (const SheetBlock& one : section.blocks)
            for (const Text* text : {&one.title, &one.body, &one.right})
                if (text->id.starts_with("sheet.")) {
                    EXPECT_THAT(listed, Contains(text->id));
                }
    }
}

INSTANTIATE_TEST_SUITE_P(Kits, SheetOf,
                         testing::Combine(testing::Values("marram", "tern", "heron"),
                                          testing::Values(SheetLength::brief, SheetLength::full)),
                         [](const auto& one) {
                             return std::get<0>(one.param) +
                                    (std::get<1>(one.param) == SheetLength::brief ? "_brief" : "");
                         });

} // namespace
} // namespace evenfall
