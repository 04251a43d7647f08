// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The list of what is read aloud, and the spoken files, by the command line.
#include "base/hash.h"
#include "core/record/diaries.h"

#include <gtest/gtest.h>

#include <chrono>
#include <fstream>
#include <set>
#include <sstream>
#include <sys/wait.h>

namespace evenfall {
namespace {

namespace fs = std::filesystem;
using test::slurp;
using test::TemporaryDirectory;

struct Ran {
    int status = -1;
    std::string out, err;
};

/// A line of the list: language, file, text id, text (the only one in quotes).
struct Line {
    std::string language, file, id, text;
};

class DeskVoice : public testing::Test {
  protected:
    TemporaryDirectory folder;

    std::string path(const std::string& name) { return (folder.path() / name).string(); }
    Ran run(const std::string& arguments) {
        const int ended = std::system((EVENFALL_BINARY_DIR "/bin/evenfall-desk voice " + arguments + " >" + path("stdout") + " 2>" + path("stderr")).c_str());
        return {WIFEXITED(ended) ? WEXITSTATUS(ended) : -1, slurp(path("stdout")), slurp(path("stderr"))};
    }
    std::vector<Line> list(const std::string& file) {
        std::istringstream in(slurp(file));
        std::string line;
        std::getline(in, line);
        EXPECT_EQ(line, "language,file,text_id,text\r");
        std::vector<Line> lines;
        while (std::getline(in, line)) {
            std::istringstream cells(line);
            Line one;
            std::getline(cells, one.language, ',');
            std::getline(cells, one.file, ',');
            std::getline(cells, one.id, ',');
            std::getline(cells, one.text);
            EXPECT_TRUE(one.text.starts_with('"') && one.text.ends_with("\"\r")) << line;
            one.text = one.text.substr(1, one.text.size() - 3);
            lines.push_back(one);
        }
        return lines;
    }
};

TEST_F(DeskVoice, ListsTheSameTextsInEveryLanguage_EachByTheHashOfItsWords) {
    ASSERT_EQ(run("--shipped --list --out " + path("out")).status, 0);
    std::map<std::string, std::set<std::string>> ids;
    for (const Line& line : list(path("out/texts.csv"))) {
        ids[line.language].insert(line.id);
        if (line.text.find('"') == std::string::npos) {
            EXPECT_EQ(line.file, line.id + "-" + sha256_hex(line.text).substr(0, 8));
        }
    }
    EXPECT_GE(ids.size(), 3u);
    for (const auto& [language, found] : ids) {
        EXPECT_EQ(found, ids["en"]) << language;
        EXPECT_GT(found.size(), 300u) << language;
    }
    // Both hands, each kit's number of strips, and the cautions.
    EXPECT_TRUE(ids["en"].contains("step.finger_probe.place.left.title"));
    EXPECT_TRUE(ids["en"].contains("step.finger_probe.place.right.title"));
    EXPECT_TRUE(ids["en"].contains("bed.caution"));
    EXPECT_FALSE(fs::exists(path("out/en"))) << "only the list was asked for";
}

TEST_F(DeskVoice, SpeaksAClinicsOwnWords_AndOnlyWhatHasNoFileYet) {
    // A kit of the least parts, with words of its own (invented).
    std::string kit = slurp(EVENFALL_SOURCE_DIR "/assets/kits/tern.json");
    const std::string id = "\"id\": \"tern\"";
    ASSERT_NE(kit.find(id), std::string::npos);
    kit.replace(kit.find(id), id.size(), "\"id\": \"own\"");
    std::ofstream(path("own.json")) << kit;
    std::string visit = slurp(EVENFALL_SOURCE_DIR "/assets/visits/demo.json");
    for (const auto& [from, to] : std::map<std::string, std::string>{{"\"kit\": \"marram\"", "\"kit\": \"own\""}, {"\"911\"", "\"112\""}}) {
        ASSERT_NE(visit.find(from), std::string::npos);
        visit.replace(visit.find(from), from.size(), to);
    }
    std::ofstream(path("visit.json")) << visit;
    // What was spoken at build time serves as it is: the same words have the same name.
    fs::create_directories(folder.path() / "out");
    fs::copy(EVENFALL_BINARY_DIR "/voice/es", folder.path() / "out" / "es", fs::copy_options::recursive);
    const Ran first = run("--visit " + path("visit.json") + " --kits " + folder.path().string() + " --lang es --out " + path("out"));
    ASSERT_EQ(first.status, 0) << first.err;
    int own = 0;
    for (const Line& line : list(path("out/texts.csv"))) {
        const fs::path file = folder.path() / "out" / line.language / (line.file + ".opus");
        ASSERT_TRUE(fs::exists(file)) << line.file;
        EXPECT_TRUE(slurp(file.string()).starts_with("OggS")) << line.file;
        own += !fs::exists(fs::path(EVENFALL_BINARY_DIR "/voice/es") / (line.file + ".opus"));
    }
    EXPECT_GE(own, 3) << "with the emergency number of this visit";
    EXPECT_LT(own, 12);
    EXPECT_TRUE(first.out.starts_with(std::to_string(own) + " of ")) << first.out;
    const Ran second = run("--visit " + path("visit.json") + " --kits " + folder.path().string() + " --lang es --out " + path("out"));
    EXPECT_TRUE(second.out.starts_with("0 of ")) << second.out;
}

TEST_F(DeskVoice, SaysWhatIsMissing_WhenItCannotSpeak) {
    fs::create_directory(folder.path() / "none");
    const std::string desk = EVENFALL_BINARY_DIR "/bin/evenfall-desk";
    const int ended = std::system(("PATH=" + path("none") + " " + desk + " voice --shipped --out " + path("out") + " 2>" + path("stderr")).c_str());
    EXPECT_EQ(WEXITSTATUS(ended), 3);
    EXPECT_NE(slurp(path("stderr")).find("Debian package espeak-ng"), std::string::npos);
    EXPECT_FALSE(fs::exists(path("out/texts.csv"))) << "a list says that all is there";
}

TEST_F(DeskVoice, RefusesWrongUse) {
    EXPECT_EQ(run("--out " + path("out")).status, 2);
    EXPECT_EQ(run("--shipped").status, 2);
    EXPECT_EQ(run("--shipped --lang xx --out " + path("out")).status, 2);
    EXPECT_EQ(run("--visit " + path("nowhere.json") + " --out " + path("out")).status, 3);
    EXPECT_EQ(run("--help").status, 0);
}

} // namespace
} // namespace evenfall
