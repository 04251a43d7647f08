// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The functions that load the print module when they are first called. A program of its own, which
// links none of the libraries that print.
#include "app/print/diaries.h"
#include "print/preview.h"
#include "print/queue.h"
#include "print/summary_pdf.h"

#include <gtest/gtest.h>

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

} // namespace
} // namespace evenfall
