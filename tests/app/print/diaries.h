// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "core/record/diaries.h"

#include <utility>
#include <vector>

namespace evenfall::test {

/// Nights as different as pages can be. All invented.
inline Diary bare_diary()
{
    return diary_of(night_of(
        "{'format':'evenfall.night/1','visit':{'code':'SM-0002','night':2},'zone':'Europe/Berlin',"
        "'sensors':['chest','finger'],'need':{'minutes':240,'groups':[['chest'],['finger']]},"
        "'recording':{'from':'2026-05-04T23:10','to':'2026-05-05T02:40'}}"));
}

/// Nothing but the beginning: no end, so nothing can be said.
inline Diary open_diary()
{
    return diary_of(night_of(
        "{'format':'evenfall.night/1','visit':{'code':'SM-0003','night':1},'zone':'Europe/Berlin',"
        "'sensors':['finger'],'need':{'minutes':240,'groups':[['finger']]},"
        "'lights_out':'2026-05-04T23:10'}"));
}

inline Diary contradictory_diary()
{
    Night night = example_night();
    std::swap(night.lights_out, night.lights_on);
    night.asleep_after = min(700);
    Diary diary = diary_of(night);
    diary.kit = KitOfNight{"marram", "Bag 7"};
    diary.answers.push_back({"compare", "worse", Origin::reported});
    return diary;
}

/// Clocks go on at 02:00; borderline, with what an app asks in the morning.
inline Diary spring_diary()
{
    Diary diary = diary_of(night_of(
        "{'format':'evenfall.night/1','visit':{'code':'SM-0417','night':3},"
        "'zone':'America/New_York','sensors':['chest','abdomen','cannula','breath','finger'],"
        "'need':{'minutes':300,'groups':[['cannula','breath'],['finger']]},"
        "'recording':{'from':'2026-03-07T22:40:12','to':'2026-03-08T06:31:40'},"
        "'into_bed':'2026-03-07T22:30','lights_out':'2026-03-07T22:55:08','asleep_after_min':45,"
        "'final_waking':{'about':'2026-03-08T06:10','give_or_take_min':15},"
        "'lights_on':'2026-03-08T06:30','out_of_bed':'2026-03-08T06:40','awake':"
        "[{'from':'2026-03-08T01:30','to':'2026-03-08T03:20'}],'off':["
        "{'sensor':'finger','from':{'earliest':'2026-03-08T01:10','latest':'2026-03-08T03:15'},"
        "'to':'2026-03-08T03:20'},{'sensor':'breath','from':null,'to':null}]}"));
    diary.kit = KitOfNight{"heron", "Bag 12"};
    diary.origins["/final_waking"] = Origin::derived;
    diary.answers = {{"before_start", "one or more", Origin::reported},
                     {"compare", "usual", Origin::reported},
                     {"skin", "sore", Origin::reported}};
    diary.notes.push_back({"The finger clip slipped once.", std::nullopt});
    return diary;
}

/// Fourteen removals, many awakenings, and somebody who wrote a lot.
inline Diary long_diary()
{
    Night night = example_night();
    night.awake_untimed = std::nullopt;
    night.awake->clear();
    night.off.clear();
    const Instant at = night.lights_out->latest;
    for (int i = 0; i < 14; ++i) {
        const Instant from = at + min(30 + 28 * i);
        night.off.push_back({night.sensors[static_cast<std::size_t>(i) % night.sensors.size()],
                             TimeRange{from, from + min(i % 3 * 5)},
                             TimeRange::exactly(from + min(18))});
        if (i % 2)
            night.awake->push_back({TimeRange::exactly(from), std::nullopt, min(9.5)});
    }
    night.slept = std::nullopt;
    Diary diary = diary_of(night);
    diary.kit = KitOfNight{"heron", "Bag 12, blue zip, the one with the new strap"};
    diary.answers = {{"before_start", "one or more", Origin::reported},
                     {"clinic_called", true, Origin::reported},
                     {"caffeine", Json{{"cups", 2}, {"last", "15:30"}}, Origin::reported},
                     {"compare", "worse", Origin::reported},
                     {"skin", "sore", Origin::reported}};
    std::string story;
    for (int i = 0; i < 30; ++i)
        story += "The belt slid down again when I turned over, and I put it back. ";
    for (int i = 0; i < 6; ++i)
        diary.notes.push_back({story, TimeRange::exactly(at + min(60 * i))});
    return diary;
}

/// More of everything than any page can take: nothing may run off it.
inline Diary endless_diary()
{
    Diary diary = long_diary();
    diary.kit->label = std::string(400, 'W');
    diary.night.sensors.clear();
    diary.night.off.clear();
    diary.night.need.groups.clear();
    diary.origins.clear();
    for (int i = 0; i < 60; ++i) {
        const std::string id = "sensor_with_a_very_long_name_number_" + std::to_string(i);
        diary.night.sensors.push_back(id);
        diary.night.need.groups.push_back({id});
        diary.night.off.push_back({id, std::nullopt, *diary.night.lights_out});
        diary.answers.push_back(
            {"oxygen_" + std::to_string(i), std::string(300, 'o'), Origin::reported});
        diary.notes.push_back({std::string(5000, 'x'), std::nullopt});
        std::string lines;
        for (int line = 0; line < 200; ++line)
            lines += "a\n";
        diary.notes.push_back({lines, std::nullopt});
        diary.events.push_back({*diary.night.lights_out, std::nullopt, "bathroom",
                                std::string(200, 's'), std::string(2000, 'c'), Origin::reported});
    }
    return diary;
}

/// Free text in scripts that the page's own font does not have.
inline Diary scripts_diary()
{
    Diary diary = full_diary();
    diary.notes.push_back(
        {"\u0627\u0633\u062a\u064a\u0642\u0638\u062a \u0645\u0631\u062a\u064a\u0646 "
         "\u0628\u0633\u0628\u0628 \u0627\u0644\u0642\u0637\u0629 SM-0417 "
         "\u062b\u0645 \u0646\u0645\u062a \u062d\u062a\u0649 "
         "\u0627\u0644\u0635\u0628\u0627\u062d",
         TimeRange::exactly(diary.night.lights_out->latest + min(150))});
    diary.notes.push_back(
        {"\u534a\u591c\u8d77\u6765\u4e24\u6b21\u3002", std::nullopt}); // woke twice
    diary.notes.push_back({"\u041f\u0440\u043e\u0441\u043d\u0443\u043b\u0430\u0441\u044c "
                           "\u0432 \u0442\u0440\u0438; \u03be\u03cd\u03c0\u03bd\u03b7\u03c3\u03b1",
                           std::nullopt});
    return diary;
}

inline std::vector<std::pair<std::string, Diary>> all_diaries()
{
    return {{"full", full_diary()},       {"bare", bare_diary()},
            {"open", open_diary()},       {"contradictory", contradictory_diary()},
            {"spring", spring_diary()},   {"long", long_diary()},
            {"endless", endless_diary()}, {"scripts", scripts_diary()}};
}

inline std::vector<std::string> all_names()
{
    std::vector<std::string> names;
    for (const auto& [name, diary] : all_diaries())
        names.push_back(name);
    return names;
}

inline Diary diary_named(const std::string& wanted)
{
    for (const auto& [name, diary] : all_diaries())
        if (name == wanted)
            return diary;
    ADD_FAILURE() << "no night is called " << wanted;
    return {};
}

} // namespace evenfall::test
