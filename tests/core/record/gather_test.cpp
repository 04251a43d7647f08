// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// One line for each record. All nights are invented.
#include "core/record/diaries.h"
#include "estimate/estimate_json.h"
#include "record/folder.h"
#include "record/gather.h"

#include <fstream>

namespace evenfall {
namespace {

using test::full_diary;
using test::slurp;
using test::TemporaryDirectory;

/// Takes a line of CSV apart, as RFC 4180 has it.
std::vector<std::string> fields_of(const std::string& line)
{
    std::vector<std::string> fields(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (quoted && line[i] == '"' && i + 1 < line.size() && line[i + 1] == '"')
            fields.back() += line[++i];
        else if (line[i] == '"')
            quoted = !quoted;
        else if (line[i] == ',' && !quoted)
            fields.emplace_back();
        else
            fields.back() += line[i];
    }
    EXPECT_TRUE(fields.back().ends_with("\r\n"));
    fields.back().resize(fields.back().size() - 2);
    return fields;
}

class Gather : public testing::Test {
  protected:
    TemporaryDirectory folder;

    std::filesystem::path write(const Diary& diary)
    {
        const Result<std::filesystem::path> path = write_record(diary, folder.path());
        EXPECT_TRUE(path.ok()) << (path.ok() ? "" : path.problems()[0].text);
        return *path;
    }
    std::map<std::string, std::string> row(const std::filesystem::path& record)
    {
        const Result<std::string> line = gather_line(record);
        EXPECT_TRUE(line.ok()) << (line.ok() ? "" : line.problems()[0].text);
        const std::vector<std::string> names = fields_of(gather_header());
        const std::vector<std::string> values = fields_of(*line);
        EXPECT_EQ(names.size(), values.size());
        std::map<std::string, std::string> out;
        for (std::size_t i = 0; i < names.size(); ++i)
            out[names[i]] = values[i];
        return out;
    }
};

TEST_F(Gather, EveryFigureIsTheEstimates)
{
    Diary diary = full_diary();
    diary.kit->label = "Bag \"12\", red";
    const std::map<std::string, std::string> found = row(write(diary));
    const Json estimate = estimate_to_json(evenfall::estimate(diary.night));
    EXPECT_EQ(found.at("record"), "SM-0417_night-1_2026-10-31");
    EXPECT_EQ(found.at("study_code"), "SM-0417");
    EXPECT_EQ(found.at("kit_label"), "Bag \"12\", red");
    EXPECT_EQ(found.at("verdict"), estimate["verdict"]);
    EXPECT_EQ(found.at("needed_at_least_min"), estimate["needed"]["at_least"].dump());
    EXPECT_EQ(found.at("needed_best_guess_min"), estimate["needed"]["best_guess"].dump());
    EXPECT_EQ(found.at("asleep_at_most_min"), estimate["needed_asleep"]["at_most"].dump());
    EXPECT_EQ(found.at("chance_enough"), estimate["needed"]["chance_enough"].dump());
    EXPECT_EQ(found.at("SE_DSE_percent"), estimate["diary"]["SE_DSE"].dump());
    EXPECT_NE(found.at("sensors_best_guess_min").find("finger=" + estimate["sensors"]["finger"]["best_guess"].dump()), std::string::npos);
    EXPECT_EQ(found.at("notes"), "2");
    EXPECT_EQ(found.at("problems"), "");
}

TEST_F(Gather, WhatIsNotKnownIsEmpty_NeverZero)
{
    Night night = test::example_night();
    night.out_of_bed.reset();
    night.lights_on.reset();
    night.recording_to.reset();
    night.tried_after_waking.reset();
    const std::map<std::string, std::string> found = row(write(test::diary_of(night)));
    EXPECT_EQ(found.at("verdict"), "unknown");
    EXPECT_EQ(found.at("needed_best_guess_min"), "");
    EXPECT_EQ(found.at("TIB_min"), "");
    EXPECT_EQ(found.at("SE_DSE_percent"), "");
    EXPECT_EQ(found.at("kit"), "");
}

TEST_F(Gather, ANightThatContradictsItselfSaysSo)
{
    Night night = test::example_night();
    std::swap(night.lights_on, night.lights_out);
    const std::map<std::string, std::string> found = row(write(test::diary_of(night)));
    EXPECT_EQ(found.at("verdict"), "contradictory");
    EXPECT_NE(found.at("problems").find("lights_on_before_lights_out"), std::string::npos);
    EXPECT_EQ(found.at("needed_best_guess_min"), "");
}

TEST_F(Gather, RefusesAChangedDiary_ANonRecord_AndAWrongFigureWithARightSum)
{
    const std::filesystem::path record = write(full_diary());
    const std::string json = slurp((record / "diary.json").string());
    std::ofstream(record / "diary.json", std::ios::binary) << json << " ";
    Result<std::string> line = gather_line(record);
    ASSERT_FALSE(line.ok());
    EXPECT_EQ(line.problems()[0].code, "wrong_sum");

    line = gather_line(folder.path());
    ASSERT_FALSE(line.ok());
    EXPECT_EQ(line.problems()[0].code, "no_record");
    EXPECT_EQ(line.problems()[0].fault, Fault::refused);

    // A figure that does not follow from the answers, though the sum fits.
    Json forged = Json::parse(json);
    forged["estimate"]["needed"]["at_least"] = 479;
    EXPECT_EQ(diary_from_json(forged, Derived::chance_as_written).problems()[0].code, "not_derived");
    forged = Json::parse(json);
    forged["estimate"]["needed"]["chance_enough"] = 2;
    EXPECT_FALSE(diary_from_json(forged, Derived::chance_as_written).ok()) << "no chance";
    forged["estimate"]["needed"]["chance_enough"] = 0.5;
    EXPECT_TRUE(diary_from_json(forged, Derived::chance_as_written).ok()) << "taken as written";
    EXPECT_FALSE(diary_from_json(forged, Derived::all_checked).ok());
}

TEST(CsvField, IsQuotedWhereItMustBe)
{
    // RFC 4180, 2.5 to 2.7
    EXPECT_EQ(csv_field("plain"), "plain");
    EXPECT_EQ(csv_field("a,b"), "\"a,b\"");
    EXPECT_EQ(csv_field("say \"no\""), "\"say \"\"no\"\"\"");
    EXPECT_EQ(csv_field("two\nlines"), "\"two\nlines\"");
}

} // namespace
} // namespace evenfall
