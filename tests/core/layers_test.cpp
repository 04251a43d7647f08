// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The shape of the sources: what may include what, and whose they are.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;

const fs::path source = EVENFALL_SOURCE_DIR;

// The stages in the order of the data: an include goes to its own folder or to one on the left.
constexpr std::array<std::string_view, 8> stages{"base", "kit", "plan", "journal", "answers", "estimate", "record", "sheet"};

size_t place(std::string_view stage) { return static_cast<size_t>(std::find(stages.begin(), stages.end(), stage) - stages.begin()); }

std::vector<fs::path> files(const std::vector<std::string>& folders, const std::set<std::string>& extensions)
{
    std::vector<fs::path> out;
    for (const std::string& folder : folders) {
        if (!fs::exists(source / folder)) {
            continue;
        }
        for (const auto& entry : fs::recursive_directory_iterator(source / folder)) {
            if (entry.is_regular_file() && extensions.contains(entry.path().extension().string())) {
                out.push_back(entry.path());
            }
        }
    }
    std::sort(out.begin(), out.end());
    return out;
}

struct Include {
    std::string name;
    bool quoted = false;
};

std::vector<Include> includes_of(std::istream& in)
{
    std::vector<Include> out;
    for (std::string line; std::getline(in, line);) {
        const size_t hash = line.find_first_not_of(" \t");
        if (hash == std::string::npos || line[hash] != '#' || line.find("include", hash) == std::string::npos) {
            continue;
        }
        const size_t open = line.find_first_of("\"<", hash);
        const size_t close = open == std::string::npos ? open : line.find_first_of("\">", open + 1);
        if (close != std::string::npos) {
            out.push_back({line.substr(open + 1, close - open - 1), line[open] == '"'});
        }
    }
    return out;
}

/// What is wrong with one include in a file of this stage; empty when it is allowed.
std::string fault(const std::string& stage, const Include& include)
{
    const std::string& name = include.name;
    // Qt's headers are <QtCore/...>, <QString> or <qglobal.h>.
    const bool qt = name.size() > 1 && (name[0] == 'Q' || name.starts_with("qglobal") || name.starts_with("qstring"));
    if (qt) {
        return "core has no Qt";
    }
    if (!include.quoted) {
        return "";
    }
    const std::string to = name.substr(0, name.find('/'));
    if (place(to) == stages.size()) {
        return "not a stage of core";
    }
    return place(to) <= place(stage) ? "" : "goes to the right";
}

TEST(Layers, RuleTellsRightFromWrong)
{
    EXPECT_EQ(fault("plan", {"kit/kit.h", true}), "");
    EXPECT_EQ(fault("plan", {"plan/stages.h", true}), "");
    EXPECT_EQ(fault("plan", {"vector", false}), "");
    EXPECT_NE(fault("plan", {"journal/journal.h", true}), "");
    EXPECT_NE(fault("base", {"kit/kit.h", true}), "");
    EXPECT_NE(fault("plan", {"kiosk/kiosk.h", true}), "");
    EXPECT_NE(fault("plan", {"../kit/kit.h", true}), "");
    EXPECT_NE(fault("plan", {"QString", false}), "");
    EXPECT_NE(fault("plan", {"QtCore/qstring.h", false}), "");
    std::istringstream text("#include \"a/b.h\"\n  # include <c>\n// none\n");
    const std::vector<Include> found = includes_of(text);
    ASSERT_EQ(found.size(), 2u);
    EXPECT_EQ(found[0].name, "a/b.h");
    EXPECT_TRUE(found[0].quoted);
    EXPECT_EQ(found[1].name, "c");
    EXPECT_FALSE(found[1].quoted);
}

TEST(Layers, IncludesGoOnlyLeftwards_AndNeverToQt)
{
    const std::vector<fs::path> all = files({"core"}, {".h", ".cpp"});
    ASSERT_GT(all.size(), 40u);
    for (const fs::path& file : all) {
        const std::string stage = file.lexically_relative(source / "core").begin()->string();
        ASSERT_LT(place(stage), stages.size()) << file << " is in no stage that is known";
        std::ifstream in(file);
        for (const Include& include : includes_of(in)) {
            const std::string wrong = fault(stage, include);
            EXPECT_TRUE(wrong.empty()) << file << " includes " << include.name << ": " << wrong;
        }
    }
}

TEST(Sources, BeginWithTheirLicence)
{
    const std::vector<fs::path> all =
        files({"core", "app", "qml", "tests"}, {".h", ".cpp", ".qml", ".py", ".sh", ".cmake"});
    ASSERT_GT(all.size(), 100u);
    for (const fs::path& file : all) {
        std::ifstream in(file);
        std::string line, head;
        for (int i = 0; i < 3 && std::getline(in, line); ++i) {
            head += line + "\n"; // a script has its interpreter first
        }
        EXPECT_NE(head.find("SPDX-License-Identifier: Apache-2.0"), std::string::npos) << file;
        EXPECT_NE(head.find("SPDX-FileCopyrightText: Evenfall contributors"), std::string::npos) << file;
    }
}

TEST(Headers, AreIncludedOnce)
{
    for (const fs::path& file : files({"core", "app"}, {".h"})) {
        std::ifstream in(file);
        std::stringstream text;
        text << in.rdbuf();
        EXPECT_NE(text.str().find("#pragma once"), std::string::npos) << file;
    }
}

} // namespace
