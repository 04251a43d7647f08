// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// summary.pdf as other people's readers see it: qpdf and poppler.
#include "app/print/diaries.h"
#include "base/hash.h"
#include "print/document.h"
#include "print/summary_pdf.h"
#include "record/summary.h"

#include <array>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <map>
#include <sys/wait.h>

namespace evenfall {
namespace {

using print::summary_pdf;

struct Ran {
    int status = -1;
    std::string out;
};

Ran run(const std::string& command)
{
    Ran ran;
    std::FILE* pipe = ::popen((command + " 2>&1").c_str(), "r");
    if (!pipe)
        return ran;
    std::array<char, 4096> buffer;
    while (const std::size_t size = std::fread(buffer.data(), 1, buffer.size(), pipe))
        ran.out.append(buffer.data(), size);
    const int status = ::pclose(pipe);
    ran.status = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return ran;
}

std::string pdf_of(const Diary& diary)
{
    const Result<std::string> pdf = summary_pdf(diary);
    for (const Problem& problem : pdf.problems())
        ADD_FAILURE() << describe("summary.pdf", problem);
    return pdf ? *pdf : "";
}

std::string without_spaces(const std::string& text)
{
    std::string out;
    for (const char one : text)
        if (one != ' ' && one != '\n' && one != '\f')
            out += one;
    return out;
}

class SummaryPdf : public testing::TestWithParam<std::string> {
  protected:
    Diary diary = test::diary_named(GetParam());
    test::TemporaryDirectory folder;
    std::string path = (folder.path() / "summary.pdf").string();
    std::string bytes;
    void SetUp() override
    {
        bytes = pdf_of(diary);
        std::ofstream(path, std::ios::binary) << bytes;
    }
    std::string tool(const std::string& command)
    {
        const Ran ran = run(command);
        EXPECT_EQ(ran.status, 0) << command << "\n" << ran.out;
        return ran.out;
    }
};

TEST_P(SummaryPdf, IsSoundTaggedAndOnePageOfA4)
{
    tool("qpdf --check " + path);
    const std::string info = tool("pdfinfo " + path);
    const Summary page = summary(diary).value();
    for (const std::string& line :
         {"Title:           " + page.title + "\n", std::string("Tagged:          yes\n"),
          std::string("Pages:           1\n"), std::string("(A4)\n"),
          "Keywords:        diary.json SHA-256 " + sha256_hex(diary_to_json(diary).value()) + "\n"})
        EXPECT_NE(info.find(line), std::string::npos) << line << info;
    EXPECT_EQ(info.find("Date"), std::string::npos) << info; // no clock has been read
    const std::string root = tool("qpdf --json=2 --json-key=qpdf " + path);
    for (const char* part :
         {"\"/Lang\": \"u:en\"", "\"/DisplayDocTitle\": true", "\"/Marked\": true"})
        EXPECT_NE(root.find(part), std::string::npos) << part;
    EXPECT_EQ(check_summary(bytes, diary_to_json(diary).value()), Problems{});
}

TEST_P(SummaryPdf, EmbedsEveryFont)
{
    const std::string fonts = tool("pdffonts " + path);
    int count = 0;
    std::istringstream lines(fonts);
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with("name") || line.starts_with("---"))
            continue;
        ++count;
        // Columns from the right: emb sub uni object ID
        std::istringstream words(line);
        std::vector<std::string> all;
        for (std::string word; words >> word;)
            all.push_back(word);
        ASSERT_GE(all.size(), 6u) << line;
        EXPECT_EQ(all[all.size() - 5], "yes") << line; // embedded
        EXPECT_EQ(all[all.size() - 3], "yes") << line; // can be read as text
    }
    EXPECT_GE(count, 4);
}

TEST_P(SummaryPdf, HasHeadingsInOrderAndTellsThePicture)
{
    const std::string tree = tool("pdfinfo -struct-text " + path);
    const Summary page = summary(diary).value();
    std::vector<std::string> headings{page.heading};
    if (!page.cautions.lines.empty())
        headings.push_back(page.cautions.title);
    headings.push_back(page.contradictions.lines.empty() ? page.time.title
                                                         : page.contradictions.title);
    headings.insert(headings.end(),
                    {page.measures.title, page.lost.title, page.picture_title, page.events.title});
    if (!page.answers.lines.empty())
        headings.push_back(page.answers.title);
    if (!page.notes.lines.empty())
        headings.push_back(page.notes.title);
    std::vector<std::string> found;
    std::istringstream lines(tree);
    for (std::string line, last; std::getline(lines, line); last = line)
        if (last.find("H1 (block)") != std::string::npos ||
            last.find("H2 (block)") != std::string::npos)
            found.push_back(line.substr(line.find('"') + 1));
    ASSERT_EQ(found.size(), headings.size()) << tree;
    for (std::size_t i = 0; i < found.size(); ++i)
        EXPECT_TRUE(found[i].starts_with(headings[i])) << found[i] << " is not " << headings[i];
    EXPECT_EQ(tree.find("Figure") != std::string::npos, page.picture.has_value());
    const std::string objects = tool("qpdf --json=2 --json-key=qpdf " + path);
    EXPECT_EQ(objects.find("\"/Alt\": \"u:The night from ") != std::string::npos,
              page.picture.has_value());
    // What is heard goes on to the end of a paragraph of several lines.
    EXPECT_NE(tree.find("\"" + page.foot + "\""), std::string::npos) << tree;
}

TEST_P(SummaryPdf, ShowsWhatStandsInItOrCountsIt)
{
    const std::string text = tool("pdftotext -layout " + path + " -");
    const std::string dense = without_spaces(text);
    const Summary page = summary(diary).value();
    for (const SummaryTable* table : {&page.measures})
        for (const SummaryRow& row : table->rows)
            for (const std::string& cell : row.cells)
                EXPECT_NE(text.find(cell), std::string::npos) << row.name << " " << cell;
    // Lines of numbers stand side by side.
    for (const SummaryRow& row : page.time.rows) {
        if (GetParam() == "endless" && row.name.starts_with("sensor"))
            continue;
        std::string line = row.name;
        for (const std::string& cell : row.cells)
            line += cell;
        EXPECT_NE(dense.find(without_spaces(line)), std::string::npos) << line;
    }
    EXPECT_NE(text.find(page.verdict), std::string::npos);
    EXPECT_NE(text.find(page.diary_sha256), std::string::npos);
}

/// What a screen reader meets under each heading: list items or rows of tables (without their head)
/// that are there, and those that are only counted ("12 more lines stand in diary.json.").
std::map<std::string, std::size_t> met_or_counted(const std::string& tree)
{
    std::map<std::string, std::size_t> out;
    std::string heading, last;
    std::istringstream lines(tree);
    for (std::string line; std::getline(lines, line); last = line) {
        const std::string text =
            line.find('"') == std::string::npos ? "" : line.substr(line.find('"') + 1);
        if (last.find("H2 (block)") != std::string::npos)
            heading = text;
        const std::string tag = line.substr(std::min(line.size(), line.find_first_not_of(' ')));
        if (tag.starts_with("LBody") || tag == "TR")
            ++out[heading];
        if (tag.starts_with("Table"))
            --out[heading]; // its head
        if (text.find(" more line stands in") != std::string::npos ||
            text.find(" more lines stand in") != std::string::npos)
            out[heading] += std::stoul(text);
    }
    return out;
}

TEST_P(SummaryPdf, LeavesNothingOutUncounted)
{
    const std::map<std::string, std::size_t> found =
        met_or_counted(tool("pdfinfo -struct-text " + path));
    const Summary page = summary(diary).value();
    const auto expect = [&](const std::string& title, std::size_t count) {
        if (count == 0)
            return;
        for (const auto& [heading, met] : found)
            if (heading.starts_with(title + " ") || heading.starts_with(title + "\"")) {
                EXPECT_EQ(met, count) << heading;
                return;
            }
        ADD_FAILURE() << "nothing under " << title;
    };
    for (const SummaryList* list :
         {&page.cautions, &page.contradictions, &page.events, &page.answers, &page.notes})
        expect(list->title, list->lines.size());
    for (const SummaryTable* table : {&page.time, &page.measures, &page.lost})
        expect(table->title, table->rows.size());
}

TEST_P(SummaryPdf, IsTheSameByteForByteTwice)
{
    EXPECT_EQ(bytes, pdf_of(diary));
    // Nor does what was drawn before in the same program change it.
    pdf_of(test::scripts_diary());
    EXPECT_EQ(bytes, pdf_of(diary));
}

TEST_P(SummaryPdf, KeepsInsideItsMargins)
{
    const std::string boxes = tool("pdftotext -bbox " + path + " -");
    std::istringstream lines(boxes);
    int words = 0;
    for (std::string line; std::getline(lines, line);) {
        double x1, y1, x2, y2;
        if (std::sscanf(line.c_str(), " <word xMin=\"%lf\" yMin=\"%lf\" xMax=\"%lf\" yMax=\"%lf\">",
                        &x1, &y1, &x2, &y2) != 4)
            continue;
        ++words;
        EXPECT_GE(x1, 41) << line;
        EXPECT_LE(x2, 596 - 41) << line;
        EXPECT_GE(y1, 28) << line;
        EXPECT_LE(y2, 842 - 28) << line;
    }
    EXPECT_GT(words, 60);
}

TEST_P(SummaryPdf, TakesTimeAndRoom)
{
    const auto begin = std::chrono::steady_clock::now();
    pdf_of(diary);
    const auto took = std::chrono::steady_clock::now() - begin;
    std::printf("%s: %zu bytes, %lld ms\n", GetParam().c_str(), bytes.size(),
                static_cast<long long>(
                    std::chrono::duration_cast<std::chrono::milliseconds>(took).count()));
    EXPECT_LT(bytes.size(), 200u * 1024);
}

INSTANTIATE_TEST_SUITE_P(Nights, SummaryPdf, testing::ValuesIn(test::all_names()),
                         [](const auto& one) { return one.param; });

TEST(SummaryPdfScripts, KeepsFreeTextReadable)
{
    test::TemporaryDirectory folder;
    const std::string path = (folder.path() / "scripts.pdf").string();
    std::ofstream(path, std::ios::binary) << pdf_of(test::scripts_diary());
    const std::string text = run("pdftotext -enc UTF-8 " + path + " -").out;
    for (const char* part :
         {"\u534a\u591c\u8d77\u6765\u4e24\u6b21", "\u732b",
          "\u041f\u0440\u043e\u0441\u043d\u0443\u043b\u0430\u0441\u044c",
          "\u03be\u03cd\u03c0\u03bd\u03b7\u03c3\u03b1", "SM-0417", "\u0636\u0648\u0636\u0627\u0621",
          "\u0645\u0631\u062a\u064a\u0646", "in the street", "slept at my sister's"})
        EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << text;
    // Every letter had a font: none is drawn as a box with its number.
    const std::string fonts = run("pdffonts " + path).out;
    EXPECT_NE(fonts.find("NotoSansArabic"), std::string::npos) << fonts;
    EXPECT_NE(fonts.find("DroidSansFallback"), std::string::npos) << fonts;
}

TEST(SummaryPdfProblems, SaysWhyThereIsNone)
{
    Diary diary = test::full_diary();
    diary.notes[0].text = "\xff";
    EXPECT_EQ(summary_pdf(diary).problems(), diary_to_json(diary).problems());
}

TEST(PrintDocument, DrawsSeveralPagesOfBothSizes)
{
    test::TemporaryDirectory folder;
    for (const auto& [paper, size] :
         {std::pair{print::Paper::a4, "(A4)"}, std::pair{print::Paper::letter, "(letter)"}}) {
        print::Document page(paper, {"Two pages", "es", "none"});
        page.tagged("H1", [&] { page.text(50, 50, 300, "Uno", {}); });
        page.figure("Una imagen", [&] { page.fill(50, 90, 20, 20, print::ink); });
        page.next_page();
        page.tagged("P", [&] { page.text(50, 50, 300, "Dos", {}); });
        const Result<std::string> pdf = page.finish();
        ASSERT_TRUE(pdf.ok());
        const std::string path = (folder.path() / "two.pdf").string();
        std::ofstream(path, std::ios::binary) << *pdf;
        EXPECT_EQ(run("qpdf --check " + path).status, 0);
        const std::string info = run("pdfinfo " + path).out;
        EXPECT_NE(info.find("Pages:           2\n"), std::string::npos) << info;
        EXPECT_NE(info.find(size), std::string::npos) << info;
        const std::string tree = run("pdfinfo -struct-text " + path).out;
        EXPECT_LT(tree.find("Uno"), tree.find("Dos"));
    }
}

} // namespace
} // namespace evenfall
