// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "core/estimate/nights.h"
#include "record/diary.h"

#include <cstdlib>
#include <filesystem>

namespace evenfall::test {

/// A folder of its own for one test, gone afterwards.
class TemporaryDirectory {
  public:
    TemporaryDirectory()
    {
        std::string name =
            (std::filesystem::temp_directory_path() / "evenfall-test-XXXXXX").string();
        path_ = ::mkdtemp(name.data());
    }
    ~TemporaryDirectory()
    {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    TemporaryDirectory(const TemporaryDirectory&) = delete;
    TemporaryDirectory& operator=(const TemporaryDirectory&) = delete;
    const std::filesystem::path& path() const { return path_; }

  private:
    std::filesystem::path path_;
};

inline Diary diary_of(const Night& night)
{
    Result<Diary> diary = diary_from_night(night);
    for (const Problem& problem : diary.problems())
        ADD_FAILURE() << describe("diary", problem);
    return diary ? *diary : Diary{};
}

inline Night example_night()
{
    const Result<Night> night =
        read_night(slurp(EVENFALL_SOURCE_DIR "/assets/schemas/examples/night.json"));
    EXPECT_TRUE(night.ok());
    return night ? *night : Night{};
}

/// The example night with everything that a diary can hold besides. Invented.
inline Diary full_diary()
{
    Diary diary = diary_of(example_night());
    const Instant lights_out = diary.night.lights_out->middle();
    diary.kit = KitOfNight{"heron", "Bag 12"};
    diary.origins["/off/0/from"] = Origin::derived;
    diary.events.push_back({TimeRange::exactly(lights_out + min(60)), std::nullopt, "still_on", "",
                            "", Origin::reported});
    diary.events.push_back({{lights_out + min(200), lights_out + min(230)},
                            min(7.5),
                            "bathroom",
                            "",
                            "the cat: \xe7\x8c\xab",
                            Origin::reported});
    diary.answers.push_back({"caffeine", Json{{"cups", 2}, {"last", "15:30"}}, Origin::reported});
    diary.answers.push_back({"nap", false, Origin::reported});
    diary.notes.push_back({"\xd8\xb6\xd9\x88\xd8\xb6\xd8\xa7\xd8\xa1 in the street\nfor a while",
                           TimeRange::exactly(lights_out + min(100))});
    diary.notes.push_back({"slept at my sister's", std::nullopt});
    diary.signal_checks.push_back({lights_out - min(20), "light", "recorder", "steady"});
    Entry entry;
    entry.number = 1;
    entry.stamp = {lights_out - min(30), std::chrono::seconds(-14400), "America/New_York", "b1",
                   min(5)};
    entry.kind = "tapped";
    entry.value = "{\"x\": 1}";
    entry.hash = "00";
    diary.journal.push_back(entry);
    return diary;
}

} // namespace evenfall::test
