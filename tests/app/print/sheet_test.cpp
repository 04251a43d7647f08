// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The take-home sheet as other people's readers see it: qpdf, poppler, zbar and xmllint.
#include "app/print/words_of_pdf.h"
#include "core/record/diaries.h"
#include "print/sheet_figure.h"
#include "print/sheet_html.h"
#include "print/sheet_pdf.h"
#include "sheet/sheet.h"
#include "words/sheet_words.h"
#include "words/words.h"

#include <gtest/gtest.h>

#include <array>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <QCoreApplication>
#include <regex>
#include <sys/wait.h>

namespace evenfall {
namespace {

namespace fs = std::filesystem;
using print::Paper;
using print::SheetForm;

const fs::path assets = EVENFALL_SOURCE_DIR "/assets";
constexpr std::array kits{"tern", "marram", "heron"};

/// Translations hang on it.
QCoreApplication& application() {
    static int count = 1;
    static std::string name = "print_tests";
    static std::array<char*, 2> arguments{name.data(), nullptr};
    static QCoreApplication one(count, arguments.data());
    return one;
}

std::string tool(const std::string& command) {
    std::string out;
    std::FILE* pipe = ::popen((command + " 2>&1").c_str(), "r");
    if (!pipe)
        return out;
    std::array<char, 4096> buffer;
    while (const std::size_t size = std::fread(buffer.data(), 1, buffer.size(), pipe))
        out.append(buffer.data(), size);
    const int status = ::pclose(pipe);
    EXPECT_EQ(WIFEXITED(status) ? WEXITSTATUS(status) : -1, 0) << command << "\n" << out;
    return out;
}

/// What the reader finds; it also complains that there is no desktop to tell about it.
std::string square_in(const std::string& picture) {
    return tool("(zbarimg -q --raw " + picture + " 2>/dev/null || true)");
}

VisitWithKit visit_of(const std::string& kit, WritingHand hand = WritingHand::right) {
    VisitWithKit all = load_visit(assets / "visits/demo.json", {assets / "kits"}).value();
    all.kit = load_kit(assets / "kits" / (kit + ".json")).value();
    all.visit.kit = kit;
    all.visit.hand = hand;
    return all;
}

Sheet sheet_of(const VisitWithKit& all, SheetLength length) {
    return make_sheet(all.visit, all.kit, make_plan(all.kit, all.visit.hand).value(), length)
        .value();
}

const FigureStore& figures() {
    static const FigureStore store = [] {
        std::map<std::string, std::string> files;
        for (const auto& entry : fs::directory_iterator(assets / "figures"))
            if (entry.path().extension() == ".svg")
                files[entry.path().stem().string()] = test::slurp(entry.path().string());
        return FigureStore(std::move(files));
    }();
    return store;
}

/// All that the sheet says, in the order of the model, without spaces: what a reader must find.
class Said {
  public:
    /// In HTML the table names each column at its beginning, so that the end of the last has no
    /// name.
    Said(const Sheet& sheet, const SheetWords& words, bool html = false)
        : words_(words), html_(html) {
        add(sheet.title);
        add(sheet.clinic.name);
        add(sheet.call);
        add(words.code(sheet.clinic.phone));
        add(print::hours_of(sheet, words));
        add(words.text(sheet.outside_hours) + ":");
        add(words.code(sheet.clinic.phone_outside_hours));
        add(sheet.code_title);
        add(words.code(sheet.code));
        add(sheet.kit_label);
        add(sheet.emergency);
        for (const SheetSection& section : sheet.sections)
            add(section);
        for (const SheetDiary& diary : sheet.diaries)
            add(sheet, diary);
    }
    std::string text() const { return test::letters(text_); }

  private:
    const SheetWords& words_;
    bool html_;
    std::string text_;

    void add(const std::string& text) { text_ += text; }
    void add(const Text& text) { text_ += words_.text(text); }
    void add(const SheetSection& section) {
        add(section.title);
        for (const SheetBlock& one : section.blocks) {
            if (one.kind == SheetBlock::Kind::step)
                add(words_.number(one.number));
            for (const int number : one.numbers)
                add(words_.number(number));
            add(one.title);
            if (one.count > 1)
                add("\u00D7" + words_.number(one.count));
            add(one.body);
            add(one.right);
            for (const Text& caution : one.cautions)
                add(caution);
        }
    }
    void add(const Sheet& sheet, const SheetDiary& diary) {
        add(diary.title);
        add(sheet.code_title);
        add(words_.code(sheet.code));
        add(diary.night);
        add(diary.evening);
        add(diary.how);
        for (std::size_t i = 0; i + (html_ ? 1 : 0) < diary.hours.size(); ++i)
            add(diary.hours[i]);
        for (const Text& one : diary.rows)
            add(one);
        for (const SheetQuestion& one : diary.questions) {
            add(one.title);
            add(one.unit);
            for (const Text& choice : one.choices)
                add(choice);
            if (one.answer == SheetQuestion::Answer::time ||
                one.answer == SheetQuestion::Answer::amount)
                add(diary.unsure);
        }
    }
};

struct Case {
    std::string kit, language;
    Paper paper;
    bool large;
    SheetLength length;
};

/// The brief sheet in all that it can be; of the full one, whose pages come from the same pieces,
/// each paper and each size once in each language.
std::vector<Case> all_cases() {
    std::vector<Case> out;
    for (const char* kit : kits)
        for (const QString& language : Words::languages())
            for (const Paper paper : {Paper::a4, Paper::letter})
                for (const bool large : {false, true}) {
                    out.push_back({kit, language.toStdString(), paper, large, SheetLength::brief});
                    if (large == (paper == Paper::letter))
                        out.push_back(
                            {kit, language.toStdString(), paper, large, SheetLength::full});
                }
    return out;
}

std::string name_of(const Case& one) {
    return one.kit + "_" + one.language + (one.paper == Paper::a4 ? "_a4" : "_letter") +
           (one.large ? "_large" : "") + (one.length == SheetLength::full ? "_full" : "");
}

/// Pages without the diary. Full: in the longest language; at 14 and 18 pt a step with its words
/// takes a tenth and a sixth of a page. Brief: one leaf in normal print; where a language needs more
/// words or a kit more steps, it goes on.
int most_pages(const Case& one) {
    if (one.length == SheetLength::full) {
        if (one.kit == "tern")
            return one.large ? 9 : 6;
        if (one.kit == "marram")
            return one.large ? 11 : 7;
        return one.large ? 14 : 9;
    }
    // Letter is 5 cm shorter on two pages; these languages need more words than it has room for.
    const bool letter = one.paper == Paper::letter;
    const auto in = [&](std::initializer_list<const char*> some) {
        return std::find(some.begin(), some.end(), one.language) != some.end();
    };
    if (one.kit == "heron") // 28 steps
        return !one.large ? 3 : in({"de", "fr"}) || (letter && in({"es"})) ? 5 : 4;
    if (one.kit == "marram")
        return one.large ? 4 : in({"fr"}) || (letter && in({"ar", "de", "es"})) ? 3 : 2;
    return !one.large ? 2 : in({"ar"}) || (!letter && in({"en", "es"})) ? 3 : 4;
}
/// One page for a night, in normal print and with few sensors.
int most_diary_pages(const Case& one) {
    return one.kit == "tern" && !one.large ? 1 : 2;
}

int headings_of(const Sheet& sheet) {
    return static_cast<int>(std::count_if(sheet.sections.begin(), sheet.sections.end(),
                                          [](const SheetSection& one) { return !one.title.empty(); }) +
                            static_cast<long>(sheet.diaries.size()));
}

class SheetPdf : public testing::TestWithParam<Case> {
  protected:
    test::TemporaryDirectory folder;
    std::string path = (folder.path() / "sheet.pdf").string();
    Sheet sheet = sheet_of(visit_of(GetParam().kit), GetParam().length);
    std::unique_ptr<Words> language;
    SheetWords words;
    std::string bytes;

    void SetUp() override {
        application();
        language = std::make_unique<Words>(QString::fromStdString(GetParam().language), nullptr);
        words = sheet_words(*language);
        static std::map<std::string, std::string> made; // many tests look at the same pages
        if (!made.contains(name_of(GetParam()))) {
            const Result<std::string> pdf = make();
            for (const Problem& problem : pdf.problems())
                ADD_FAILURE() << describe("sheet", problem);
            made[name_of(GetParam())] = pdf ? *pdf : "";
        }
        bytes = made[name_of(GetParam())];
        std::ofstream(path, std::ios::binary) << bytes;
    }
    Result<std::string> make() {
        return print::sheet_pdf(sheet, words, figures(), {GetParam().paper, GetParam().large});
    }
    int pages() {
        const std::string info = tool("pdfinfo " + path);
        std::smatch found;
        EXPECT_TRUE(std::regex_search(info, found, std::regex("Pages: +([0-9]+)"))) << info;
        return std::stoi(found[1]);
    }
};

TEST_P(SheetPdf, IsSoundTaggedTitledAndInItsLanguage) {
    tool("qpdf --check " + path);
    const std::string info = tool("pdfinfo " + path);
    EXPECT_NE(info.find("Title:           " + words.text(sheet.title) + ", SM-0417\n"),
              std::string::npos)
        << info;
    EXPECT_NE(info.find("Tagged:          yes\n"), std::string::npos) << info;
    EXPECT_NE(info.find(GetParam().paper == Paper::a4 ? "(A4)" : "(letter)"), std::string::npos)
        << info;
    const std::string root = tool("qpdf --json=2 --json-key=qpdf " + path);
    EXPECT_NE(root.find("\"/Lang\": \"u:" + GetParam().language + "\""), std::string::npos);
    EXPECT_EQ(root.find("\"/Direction\": \"/R2L\"") != std::string::npos, words.right_to_left);
}

TEST_P(SheetPdf, HasFewPagesAndASmallFile) {
    const int all = pages();
    sheet.diaries.clear(); // which begin on a page of their own
    std::ofstream(path, std::ios::binary) << make().value();
    const int leaf = pages();
    EXPECT_LE(leaf, most_pages(GetParam()));
    EXPECT_LE(all - leaf, most_diary_pages(GetParam()));
    EXPECT_LE(bytes.size(), 300'000u);
    std::printf("%s: %d pages and %d of the diary, %zu bytes\n", name_of(GetParam()).c_str(), leaf,
                all - leaf, bytes.size());
}

TEST_P(SheetPdf, CountsItsPagesRight) {
    // Pages are laid out before they are drawn, with more room between the pieces.
    if (words.right_to_left)
        return; // poppler turns its digits round; the pages come from the same code
    const int count = pages();
    for (int page = 1; page <= count; ++page) {
        const std::string number = std::to_string(page);
        const std::string text =
            tool("pdftotext -raw -f " + number + " -l " + number + " " + path + " -");
        const std::string foot = words.number(page) + " / " + words.number(count);
        EXPECT_NE(text.find(foot + "\n"), std::string::npos) << foot << "\n" << text;
    }
}

TEST_P(SheetPdf, EmbedsEveryFontAsASubset) {
    std::istringstream lines(tool("pdffonts " + path));
    int count = 0;
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with("name") || line.starts_with("---"))
            continue;
        ++count;
        std::istringstream split(line);
        std::vector<std::string> all;
        for (std::string word; split >> word;)
            all.push_back(word);
        ASSERT_GE(all.size(), 6u) << line;
        EXPECT_EQ(all[all.size() - 5], "yes") << line; // embedded
        EXPECT_EQ(all[all.size() - 4], "yes") << line; // subset
    }
    EXPECT_GT(count, 0);
}

TEST_P(SheetPdf, SaysAllOfTheModelInItsOrder) {
    EXPECT_EQ(test::letters(test::tagged_words(path)), Said(sheet, words).text());
}

TEST_P(SheetPdf, HasHeadingsListsAndFiguresWithWords) {
    const test::Structure structure = test::structure_of(path);
    EXPECT_EQ(structure.count("H1"), 1);
    EXPECT_EQ(structure.count("H2"), headings_of(sheet));
    int pictures = 1 + static_cast<int>(sheet.diaries.size()); // QR codes
    for (const SheetSection& section : sheet.sections)
        for (const SheetBlock& one : section.blocks)
            pictures += one.figure.empty() ? 0 : 1;
    EXPECT_EQ(structure.count("Figure"), pictures);
    EXPECT_EQ(static_cast<int>(structure.alternatives.size()), pictures);
    for (const std::string& one : structure.alternatives)
        EXPECT_FALSE(one.empty());
    EXPECT_GT(structure.count("L"), sheet.length == SheetLength::full ? 8 : 6);
    EXPECT_GT(structure.count("LI"), 30);
}

TEST_P(SheetPdf, HasNoWordOutsideThePage) {
    const std::string boxes = tool("pdftotext -bbox " + path + " -");
    const print::Size page = print::size_of(GetParam().paper);
    const std::regex word(
        "<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">");
    int count = 0;
    for (std::sregex_iterator at(boxes.begin(), boxes.end(), word), end; at != end; ++at, ++count) {
        EXPECT_GE(std::stod((*at)[1]), 30) << at->str();
        EXPECT_GE(std::stod((*at)[2]), 20) << at->str();
        EXPECT_LE(std::stod((*at)[3]), page.width - 30) << at->str();
        EXPECT_LE(std::stod((*at)[4]), page.height - 20) << at->str();
    }
    EXPECT_GT(count, 200);
}

TEST_P(SheetPdf, LinesBeginAtTheSideOfTheLanguage) {
    const std::string boxes = tool("pdftotext -bbox -l 1 " + path + " -");
    const std::regex box(
        "xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\"");
    struct Word {
        double left, top, right, high;
    };
    std::vector<Word> all;
    double top = 1000;
    for (std::sregex_iterator at(boxes.begin(), boxes.end(), box), end; at != end; ++at) {
        const double y = std::stod((*at)[2]);
        all.push_back({std::stod((*at)[1]), y, std::stod((*at)[3]), std::stod((*at)[4]) - y});
        top = std::min(top, y);
    }
    // The title, on the highest line; a smaller text may stand beside it.
    double high = 0, left = 1000, right = 0;
    for (const Word& one : all)
        if (one.top < top + 10)
            high = std::max(high, one.high);
    for (const Word& one : all)
        if (one.top < top + 10 && one.high > 0.85 * high) {
            left = std::min(left, one.left);
            right = std::max(right, one.right);
        }
    const double width = print::size_of(GetParam().paper).width;
    EXPECT_NEAR(words.right_to_left ? width - right : left, 32, 4);
    EXPECT_GT(words.right_to_left ? left : width - right, 100);
}

TEST_P(SheetPdf, IsGreyOnly) {
    // Every colour that is set has three equal parts, or nearly: "0.07 0.09 0.12 rg" is the ink.
    const std::string content = tool("qpdf --qdf --object-streams=disable " + path + " -");
    const std::regex colour("([0-9.]+) ([0-9.]+) ([0-9.]+) (rg|RG)\\b");
    int count = 0;
    for (std::sregex_iterator at(content.begin(), content.end(), colour), end; at != end;
         ++at, ++count) {
        const double red = std::stod((*at)[1]), green = std::stod((*at)[2]),
                     blue = std::stod((*at)[3]);
        EXPECT_LE(std::max({red, green, blue}) - std::min({red, green, blue}), 0.08) << at->str();
    }
    EXPECT_GT(count, 20);
}

TEST_P(SheetPdf, QrCodeIsReadBackFromThePrintedPages) {
    const auto square_on = [&](int page) {
        const std::string picture = (folder.path() / "page").string();
        tool("pdftoppm -r 150 -gray -png -singlefile -f " + std::to_string(page) + " -l " +
             std::to_string(page) + " " + path + " " + picture);
        return square_in(picture + ".png");
    };
    EXPECT_EQ(square_on(1), "SM-0417\n");
    // On the first page of the diary, which is the last page or, with many sensors or large letters, the one
    // before.
    const int last = pages();
    const std::string found = square_on(last);
    EXPECT_EQ(found.empty() ? square_on(last - 1) : found, "SM-0417\n");
}

TEST_P(SheetPdf, IsTheSameWhenMadeAgain) {
    EXPECT_EQ(make().value(), bytes);
}

INSTANTIATE_TEST_SUITE_P(All, SheetPdf, testing::ValuesIn(all_cases()),
                         [](const auto& one) { return name_of(one.param); });

class SheetOfOneLanguage : public testing::Test {
  protected:
    void SetUp() override { application(); }
    test::TemporaryDirectory folder;
    VisitWithKit all = visit_of("marram");

    SheetLength length = SheetLength::full;

    std::string pdf(const std::string& code = "en", SheetForm form = {}) {
        const Words words(QString::fromStdString(code), nullptr);
        const Result<std::string> made =
            print::sheet_pdf(sheet_of(all, length), sheet_words(words), figures(), form);
        for (const Problem& problem : made.problems())
            ADD_FAILURE() << describe("sheet", problem);
        return made ? *made : "";
    }
    std::string written(const std::string& bytes) {
        const std::string path = (folder.path() / "sheet.pdf").string();
        std::ofstream(path, std::ios::binary) << bytes;
        return path;
    }
};

TEST_F(SheetOfOneLanguage, LeftHandersGetTheirHandAndOtherPictures) {
    const std::string right = pdf();
    all.visit.hand = WritingHand::left;
    const std::string left = pdf();
    EXPECT_NE(right, left);
    const std::string text = tool("pdftotext -raw " + written(left) + " -");
    EXPECT_NE(text.find("Put the clip on your right index finger"), std::string::npos);
    EXPECT_EQ(text.find("left index finger"), std::string::npos);
    all.visit.hand = WritingHand::right;
    EXPECT_NE(tool("pdftotext -raw " + written(pdf()) + " -").find("left index finger"),
              std::string::npos);
}

TEST_F(SheetOfOneLanguage, LongWordsOfAClinicFlowOnAndNothingIsLost) {
    std::string much;
    for (int i = 0; i < 700; ++i)
        much += "word" + std::to_string(i) + " ";
    much += "end.";
    all.kit.cautions = {{"night", {{"en", much}}}, {all.kit.parts[0].id, {{"en", "Short."}}}};
    for (const auto& [which, large] :
         {std::pair(SheetLength::full, false), std::pair(SheetLength::full, true),
          std::pair(SheetLength::brief, false), std::pair(SheetLength::brief, true)}) {
        length = which;
        // A brief sheet has no bodies.
        all.kit.parts[0].texts["wrap"] = {
            {which == SheetLength::full ? "body" : "title", {{"en", much}}}};
        const std::string text =
            test::letters(test::tagged_words(written(pdf("en", {Paper::letter, large}))));
        const std::string wanted = test::letters(much);
        const std::size_t first = text.find(wanted);
        ASSERT_NE(first, std::string::npos);
        EXPECT_NE(text.find(wanted, first + 1), std::string::npos);
    }
}

TEST_F(SheetOfOneLanguage, LongNamesNumbersAndCodesStayOnThePage) {
    all.visit.code = "STUDY-2026-EASTERN-REGION-000417";
    all.visit.clinic.phone = "+44 (0) 20 7946 0958 / 0959";
    all.visit.clinic.name = "The Invented Institute for Sleep and Breathing of the Whole of the "
                            "Salt Marshes and the Islands before Them";
    all.visit.kit_label = "Bag 12 of the second delivery in the blue cupboard";
    for (const SheetLength which : {SheetLength::full, SheetLength::brief}) {
        length = which;
        const std::string path = written(pdf());
        const std::string boxes = tool("pdftotext -bbox " + path + " -");
        const std::regex right("xMax=\"([-0-9.]+)\"");
        for (std::sregex_iterator at(boxes.begin(), boxes.end(), right), end; at != end; ++at)
            EXPECT_LE(std::stod((*at)[1]), print::size_of(Paper::a4).width - 30);
        const std::string picture = (folder.path() / "page").string();
        tool("pdftoppm -r 150 -gray -png -singlefile -l 1 " + path + " " + picture);
        EXPECT_EQ(square_in(picture + ".png"), all.visit.code + "\n");
    }
}

TEST_F(SheetOfOneLanguage, AMissingFigureIsSaidByItsName) {
    const FigureStore none({});
    const Words words("en", nullptr);
    for (const Result<std::string>& made :
         {print::sheet_pdf(sheet_of(all, length), sheet_words(words), none, {}),
          print::sheet_html(sheet_of(all, length), sheet_words(words), none, false)}) {
        ASSERT_FALSE(made);
        EXPECT_EQ(made.problems()[0].fault, Fault::io);
        EXPECT_NE(made.problems()[0].text.find("item_belt"), std::string::npos);
    }
}

TEST_F(SheetOfOneLanguage, EveryTextOfTheSheetIsTranslated) {
    for (const QString& code : Words::languages()) {
        const Words words(code, nullptr);
        for (const std::string& id : all_sheet_texts())
            EXPECT_NE(words.of(id).toStdString(), id) << code.toStdString();
    }
}

std::vector<std::pair<std::string, SheetLength>> both_lengths() {
    std::vector<std::pair<std::string, SheetLength>> out;
    for (const char* kit : kits)
        for (const SheetLength length : {SheetLength::brief, SheetLength::full})
            out.emplace_back(kit, length);
    return out;
}

/// What each caution of facts.md 9 is about, in the words of the brief sheet.
TEST_F(SheetOfOneLanguage, BriefSheetSaysEveryCautionInWords) {
    all = visit_of("heron");
    length = SheetLength::brief;
    std::string text = tool("pdftotext -raw " + written(pdf()) + " -");
    std::replace(text.begin(), text.end(), '\n', ' ');
    for (const char* words :
         {"Nobody is watching you", "take the kit off and call 911", "tape or latex", "Pacemaker",
          "breathing machine", "Pregnant", "under 18", "caught in cords", "Do not change your treatment",
          "sore or broken skin", "itch, sore or red", "around a hand or finger", "around your neck",
          "under your chin", "Not too tight", "some slack", "Keep children and pets away",
          "hand must be warm and the nail bare", "No clip on sore skin", "Do not tear it off",
          "warm water", "30 minutes", "Do not rub or cover", "out of the bed",
          "Swollen face", "555-0142"})
        EXPECT_NE(text.find(words), std::string::npos) << words;
}

TEST_F(SheetOfOneLanguage, HtmlIsOneWellFormedFileWithLanguageHeadingsAndWords) {
    for (const QString& code : Words::languages())
        for (const auto& [kit, which] : both_lengths()) {
            const Words language(code, nullptr);
            const SheetWords words = sheet_words(language);
            const Sheet sheet = sheet_of(visit_of(kit), which);
            const std::string html = print::sheet_html(sheet, words, figures(), false).value();
            const std::string path = (folder.path() / "sheet.html").string();
            std::ofstream(path, std::ios::binary) << html;
            const std::string found = tool(std::string("/usr/bin/python3 " EVENFALL_SOURCE_DIR
                                                       "/tests/app/print/sheet_html.py ") +
                                           path);
            std::istringstream lines(found);
            std::map<std::string, std::string> said;
            for (std::string line; std::getline(lines, line);)
                said[line.substr(0, line.find(' '))] = line.substr(line.find(' ') + 1);
            EXPECT_EQ(said["lang"], code.toStdString());
            EXPECT_EQ(said["dir"], words.right_to_left ? "rtl" : "ltr");
            EXPECT_EQ(said["h1"], "1");
            EXPECT_EQ(said["h2"], std::to_string(headings_of(sheet)));
            EXPECT_EQ(said["outside"], "0");  // needs no other file
            EXPECT_EQ(said["nameless"], "0"); // pictures without words
            EXPECT_GT(std::stoi(said["pictures"]), 20);
            EXPECT_EQ(said["unclosed"], "0");
            EXPECT_EQ(test::letters(said["text"]), Said(sheet, words, true).text()) << kit;
        }
}

} // namespace
} // namespace evenfall
