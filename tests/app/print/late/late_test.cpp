// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The functions that load the print module when they are first called. A program of its own, which
// links none of the libraries that print.
#include "app/print/diaries.h"
#include "print/preview.h"
#include "print/queue.h"
#include "print/summary_pdf.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace evenfall {
namespace {

bool loaded(const std::string& library)
{
    std::ifstream maps("/proc/self/maps");
    for (std::string line; std::getline(maps, line);)
        if (line.find("/" + library) != std::string::npos)
            return true;
    return false;
}

// One test, for what is loaded stays: the order of its two halves counts.
TEST(PrintModule, ComesAtTheFirstCallAndNotBefore)
{
    const std::vector<std::string> libraries{
        "libevenfall_print.so", "libcairo.so",       "libpango-1.0.so", "librsvg-2.so",
        "libqpdf.so",           "libpoppler-cpp.so", "libcups.so"};
    for (const std::string& one : libraries)
        EXPECT_FALSE(loaded(one)) << one;
    const Result<std::string> pdf = print::summary_pdf(test::long_diary());
    ASSERT_TRUE(pdf) << pdf.problems()[0].text;
    for (const std::string& one : libraries)
        EXPECT_TRUE(loaded(one)) << one;
    EXPECT_EQ(print::page_count(*pdf).value(), 1);
    EXPECT_EQ(print::page_picture(*pdf, 0, 200).value().width, 200);
    const auto none = print::printers({"/nowhere/socket", std::chrono::seconds(1)});
    ASSERT_FALSE(none);
    EXPECT_EQ(none.problems()[0].code, "no_print_service");
}

/// The same program in a folder that has no module beside it.
TEST(PrintModule, WhereItIsMissingEachCallSaysSoAndItsPlace)
{
    if (!std::getenv("EVENFALL_WITHOUT_MODULE")) {
        const test::TemporaryDirectory folder;
        const std::filesystem::path alone = folder.path() / "bin" / "alone";
        std::filesystem::create_directory(folder.path() / "bin");
        std::filesystem::copy_file("/proc/self/exe", alone);
        const std::string command = "EVENFALL_WITHOUT_MODULE=1 '" + alone.string() +
                                    "' --gtest_filter=PrintModule.WhereItIsMissing*";
        EXPECT_EQ(std::system(command.c_str()), 0);
        return;
    }
    const std::string place = "lib/libevenfall_print.so";
    for (const Problems& problems :
         {print::summary_pdf(test::long_diary()).problems(), print::page_count("").problems(),
          print::printers().problems(), print::job_state("front", 1).problems()}) {
        ASSERT_EQ(problems.size(), 1u);
        EXPECT_EQ(problems[0].code, "print_not_loaded");
        EXPECT_EQ(problems[0].fault, Fault::io);
        EXPECT_NE(problems[0].text.find(place), std::string::npos) << problems[0].text;
    }
}

} // namespace
} // namespace evenfall
