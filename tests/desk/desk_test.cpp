// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The program as a person or a script calls it: exit status, standard output, standard error.
#include "base/json.h"
#include "core/record/diaries.h"

#include <cstdio>
#include <fstream>
#include <sys/wait.h>

namespace evenfall {
namespace {

namespace fs = std::filesystem;
using test::slurp;
using test::TemporaryDirectory;

const std::string example = EVENFALL_SOURCE_DIR "/assets/schemas/examples/night.json";
const std::string data = EVENFALL_SOURCE_DIR "/tests/data/night/";

struct Ran {
    int status = -1;
    std::string out, err;
};

class Desk : public testing::Test {
  protected:
    TemporaryDirectory folder;

    Ran run(const std::string& arguments)
    {
        const std::string out = (folder.path() / "stdout").string();
        const std::string err = (folder.path() / "stderr").string();
        const int ended = std::system(
            (EVENFALL_BINARY_DIR "/bin/evenfall-desk " + arguments + " >" + out + " 2>" + err)
                .c_str());
        return {WIFEXITED(ended) ? WEXITSTATUS(ended) : -1, slurp(out), slurp(err)};
    }
    std::string file(const std::string& name, const std::string& content)
    {
        std::ofstream(folder.path() / name, std::ios::binary) << content;
        return (folder.path() / name).string();
    }
    std::string path(const std::string& name) { return (folder.path() / name).string(); }
};

TEST_F(Desk, HelpIsFineAndNothingIsBadUsage)
{
    EXPECT_EQ(run("--help").status, 0);
    EXPECT_NE(run("--help").out.find("estimate"), std::string::npos);
    EXPECT_EQ(run("").status, 2);
    EXPECT_EQ(run("dream").status, 2);
    for (const char* command : {"estimate", "record", "verify", "align", "gather", "sheet"}) {
        const Ran help = run(std::string(command) + " --help");
        EXPECT_EQ(help.status, 0);
        EXPECT_NE(help.out.find(std::string("usage: evenfall-desk ") + command), std::string::npos);
        const Ran bare = run(command);
        EXPECT_EQ(bare.status, 2);
        EXPECT_NE(bare.err.find("usage:"), std::string::npos);
        EXPECT_EQ(run(std::string(command) + " --dream " + example).status, 2);
    }
    EXPECT_EQ(run("record " + example).status, 2);
    EXPECT_EQ(run("record " + example + " --out").status, 2);
    EXPECT_EQ(run("record " + example + " --from " + example + " --out " + path("x")).status, 2);
}

TEST_F(Desk, EstimateOfTheExampleIsTheExample)
{
    const Ran ran = run("estimate " + example);
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.err, "");
    EXPECT_EQ(ran.out, slurp(EVENFALL_SOURCE_DIR "/assets/schemas/examples/estimate.json"));
}

TEST_F(Desk, UnknownVerdictIsFine)
{
    const Ran ran = run("estimate " + data + "valid/least.json");
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(Json::parse(ran.out)["verdict"], "unknown");
}

TEST_F(Desk, ExplainSpeaksEnglish)
{
    const Ran ran = run("estimate --explain " + example);
    EXPECT_EQ(ran.status, 0);
    EXPECT_NE(ran.out.find("What counts: at least 365 min, best guess 455 min, at most 545 min."),
              std::string::npos)
        << ran.out;
}

TEST_F(Desk, ProblemsComeAsJsonAndAsLines)
{
    const std::string night = data + "refused/removal_outside_night.json";
    const Ran ran = run("estimate " + night);
    EXPECT_EQ(ran.status, 1);
    const Json problems = Json::parse(ran.out)["problems"];
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0]["code"], "removal_outside_night");
    EXPECT_EQ(problems[0]["at"], "/off/0");
    EXPECT_EQ(ran.err, night + ": /off/0: " + problems[0]["text"].get<std::string>() + "\n");
}

TEST_F(Desk, StatusFollowsTheFault)
{
    EXPECT_EQ(run("estimate " + data + "malformed/unknown_key.json").status, 2);
    EXPECT_EQ(run("estimate " + file("bytes.json", "\xff\xfe{")).status, 2);
    EXPECT_EQ(run("estimate " + path("none.json")).status, 3);
    EXPECT_EQ(run("estimate " + folder.path().string()).status, 3);
    // A refused time and an unknown key: the highest wins.
    const Ran both = run(
        "estimate " +
        file("both.json", R"({"format":"evenfall.night/1","zone":"America/New_York","sensors":["f"],
        "need":{"minutes":1,"groups":[["f"]]},"lights_out":"2026-11-01T01:30","dreams":1})"));
    EXPECT_EQ(both.status, 2);
    EXPECT_EQ(Json::parse(both.out)["problems"].size(), 2u);
    EXPECT_EQ(run("estimate " + example + " >/dev/full; exit $?").status, 3);
}

TEST_F(Desk, EveryRefusedSampleGivesStatusOneAndEveryMalformedOneTwo)
{
    for (const auto& [kind, status] : {std::pair("refused", 1), std::pair("malformed", 2)})
        for (const auto& sample : test::samples(std::string("night/") + kind)) {
            EXPECT_EQ(run("estimate " + sample.string()).status, status) << sample;
            EXPECT_EQ(run("record " + sample.string() + " --out " + path("out")).status, status)
                << sample;
            EXPECT_FALSE(fs::exists(path("out"))) << sample; // nothing is left behind
        }
}

TEST_F(Desk, RecordIsWrittenCheckedByOthersAndMadeAgainFromItself)
{
    const Ran written = run("record " + example + " --out " + path("first"));
    EXPECT_EQ(written.status, 0) << written.err;
    const std::string record = path("first") + "/SM-0417_night-1_2026-10-31";
    EXPECT_EQ(written.out, record + "\n");
    // coreutils' own reader of the sums
    EXPECT_EQ(
        std::system(("cd '" + record + "' && sha256sum --strict --quiet -c SHA256SUMS").c_str()),
        0);
    EXPECT_EQ(run("verify " + record).status, 0);
    EXPECT_EQ(run("record --from " + record + "/diary.json --out " + path("second")).status, 0);
    EXPECT_EQ(std::system(("diff -r '" + path("first") + "' '" + path("second") + "'").c_str()), 0);
    const Ran again = run("record " + example + " --out " + path("first"));
    EXPECT_EQ(again.status, 1);
    EXPECT_NE(again.err.find("exists already"), std::string::npos);
    // The example of the schema is that very diary.
    EXPECT_EQ(slurp(record + "/diary.json"),
              slurp(EVENFALL_SOURCE_DIR "/assets/schemas/examples/diary.json"));
}

TEST_F(Desk, RecordHasItsSummary_AndVerifyMakesItAgain)
{
    ASSERT_EQ(run("record " + example + " --out " + path("first")).status, 0);
    const std::string record = path("first") + "/SM-0417_night-1_2026-10-31";
    const std::string pdf = record + "/summary.pdf";
    const std::string right = slurp(pdf);
    EXPECT_TRUE(right.starts_with("%PDF-"));
    const auto put = [&](const std::string& bytes) {
        std::ofstream(pdf, std::ios::binary) << bytes;
        // The sums are made right again, as somebody who changes a file on purpose would.
        ASSERT_EQ(std::system(("cd '" + record + "' && "
                               "sha256sum $(cut -c67- SHA256SUMS) > ../sums && "
                               "mv ../sums SHA256SUMS")
                                  .c_str()),
                  0);
    };
    put(right);
    EXPECT_EQ(run("verify " + record).status, 0);
    std::string wrong = right;
    wrong.replace(wrong.find("/Title ("), 9, "/Title (X");
    put(wrong);
    const Ran changed = run("verify " + record);
    EXPECT_EQ(changed.status, 1);
    EXPECT_NE(changed.err.find("/summary.pdf: "), std::string::npos) << changed.err;
    EXPECT_NE(changed.err.find("differs from what diary.json makes"), std::string::npos);
    // The page of another version of a library is no fault.
    wrong.replace(wrong.find("cairo 1."), 8, "cairo 0.");
    put(wrong);
    EXPECT_EQ(run("verify " + record).status, 0);
    fs::remove(pdf);
    ASSERT_EQ(std::system(("sed -i '/summary.pdf/d' '" + record + "/SHA256SUMS'").c_str()), 0);
    const Ran without = run("verify " + record);
    EXPECT_EQ(without.status, 1);
    EXPECT_NE(without.err.find("/summary.pdf: /: is missing"), std::string::npos) << without.err;
}

TEST_F(Desk, RecordIntoAMissingOrUnwritablePlaceIsStatusThree)
{
    EXPECT_EQ(run("record " + example + " --out " + path("no/such")).status, 3);
    EXPECT_EQ(run("record " + example + " --out " + file("plain", "x")).status, 3);
    EXPECT_EQ(run("record " + example + " --out /proc").status, 3);
    EXPECT_EQ(run("record --from " + path("none.json") + " --out " + path("out")).status, 3);
    EXPECT_FALSE(fs::exists(path("out")));
}

TEST_F(Desk, RecordNeedsCodeAndOneTime)
{
    const Ran ran = run("record " + data + "valid/least.json --out " + path("out"));
    EXPECT_EQ(ran.status, 1);
    EXPECT_NE(ran.err.find("/visit"), std::string::npos) << ran.err;
    EXPECT_FALSE(fs::exists(path("out")));
}

TEST_F(Desk, VerifyNamesTheWorstOfSeveralRecords)
{
    ASSERT_EQ(run("record " + example + " --out " + path("a")).status, 0);
    const std::string good = path("a") + "/SM-0417_night-1_2026-10-31";
    ASSERT_EQ(run("record " + example + " --out " + path("b")).status, 0);
    const std::string bad = path("b") + "/SM-0417_night-1_2026-10-31";
    std::ofstream(bad + "/diary.edf", std::ios::app) << "x";
    const Ran both = run("verify " + good + " " + bad);
    EXPECT_EQ(both.status, 1);
    EXPECT_NE(both.out.find(good + ": fine"), std::string::npos);
    EXPECT_NE(both.err.find(bad + "/diary.edf: "), std::string::npos);
    EXPECT_EQ(run("verify " + bad + " " + path("none")).status, 3);
    EXPECT_EQ(run("verify " + good + "/").status, 0); // as the shell completes it
}

/// 256 bytes of header and one signal, as a recorder writes it; no data.
std::string recording_header(const std::string& patient)
{
    const auto field = [](std::string text, std::size_t width) { return text + std::string(width - text.size(), ' '); };
    return field("0", 8) + field(patient, 80) + field("Startdate 31-OCT-2026 X X X", 80) + "31.10.2621.59.00" + field("512", 8) +
           field("", 44) + field("36000", 8) + field("1", 8) + field("1", 4) + field("SpO2", 16) + field("", 80) + field("%", 8) +
           field("0", 8) + field("100", 8) + field("0", 8) + field("1000", 8) + field("", 80) + field("1", 8) + field("", 32);
}

TEST_F(Desk, AlignLaysTheDiaryOverARecording)
{
    ASSERT_EQ(run("record " + example + " --out " + path("out")).status, 0);
    const std::string record = path("out") + "/SM-0417_night-1_2026-10-31";
    const std::string recording = file("R.edf", recording_header("SM-0417 X X X"));
    const Ran ran = run("align " + record + " --recording " + recording + " --out " + path("laid"));
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.err, "");
    const Json json = Json::parse(ran.out);
    EXPECT_EQ(json["offset_s"]["best_guess"], 60);
    EXPECT_EQ(json["written"], path("laid") + "/R_diary.edf");
    EXPECT_EQ(slurp(path("laid") + "/R_diary.edf").substr(8, 13), "SM-0417 X X X");
    const Ran again = run("align " + record + " --recording " + recording + " --out " + path("laid"));
    EXPECT_EQ(again.status, 1) << "never overwritten";
    EXPECT_EQ(run("verify " + record).status, 0) << "the record stays as it is";
}

TEST_F(Desk, AlignNamesWhatIsWrong)
{
    ASSERT_EQ(run("record " + example + " --out " + path("out")).status, 0);
    const std::string record = path("out") + "/SM-0417_night-1_2026-10-31";
    const std::string late = file("late.edf", recording_header("SM-0418 X X X"));
    const Ran warned = run("align " + record + " --recording " + late + " --out " + path("laid"));
    EXPECT_EQ(warned.status, 0);
    EXPECT_NE(warned.err.find("SM-0418"), std::string::npos);
    const std::string cut = file("cut.edf", recording_header("X").substr(0, 300));
    const Ran refused = run("align " + record + " --recording " + cut + " --out " + path("none"));
    EXPECT_EQ(refused.status, 1);
    EXPECT_NE(refused.err.find("cut.edf: byte 300"), std::string::npos) << refused.err;
    EXPECT_FALSE(fs::exists(path("none"))) << "nothing half-written";
    EXPECT_EQ(run("align " + record + " --recording " + path("nowhere.edf") + " --out " + path("none")).status, 3);
    EXPECT_EQ(run("align " + path("nowhere") + " --recording " + late + " --out " + path("none")).status, 3);
    EXPECT_EQ(run("align " + record + " --out " + path("none")).status, 2);
    EXPECT_EQ(run("align " + record + " --recording " + late + " --out " + path("no/such/place")).status, 3);
}

TEST_F(Desk, GatherMakesOneLineForEachRecord_AndNamesWhatItSkipped)
{
    for (int night = 1; night <= 3; ++night) {
        Json json = Json::parse(slurp(example));
        json["visit"]["night"] = night;
        ASSERT_EQ(run("record " + file("n.json", json.dump()) + " --out " + path("out")).status, 0);
    }
    fs::create_directory(path("out") + "/holiday-pictures");
    const Ran ran = run("gather " + path("out") + " --csv " + path("all.csv"));
    EXPECT_EQ(ran.status, 1) << "a folder was skipped";
    EXPECT_NE(ran.err.find("holiday-pictures: /: is no record"), std::string::npos) << ran.err;
    const std::string csv = slurp(path("all.csv"));
    EXPECT_EQ(std::count(csv.begin(), csv.end(), '\n'), 4);
    EXPECT_NE(csv.find("SM-0417_night-2_2026-10-31,SM-0417,2,2026-10-31"), std::string::npos);
    const Ran one = run("gather " + path("out") + "/SM-0417_night-3_2026-10-31 --csv " + path("all.csv"));
    EXPECT_EQ(one.status, 0) << one.err;
    EXPECT_EQ(slurp(path("all.csv")).find("night-2"), std::string::npos) << "replaced as a whole";
    EXPECT_EQ(run("gather " + path("nowhere") + " --csv " + path("x.csv")).status, 3);
    EXPECT_FALSE(fs::exists(path("x.csv")));
    EXPECT_EQ(run("gather " + path("out") + " --csv " + path("no/such.csv")).status, 3);
    EXPECT_EQ(run("gather --csv " + path("x.csv")).status, 2);
}

} // namespace
} // namespace evenfall
