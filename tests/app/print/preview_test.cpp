// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "print/document.h"
#include "print/preview.h"

#include <gtest/gtest.h>

namespace evenfall {
namespace {

using print::Paper;

/// Two pages: one with a grey field at its top left, one with a line at its right edge.
std::string two_pages(Paper paper)
{
    print::Document page(paper, {"Two pages", "en", "", false});
    page.tagged("P", [&] { page.fill(0, 0, 100, 50, {0.5, 0.25, 0.75}); });
    page.next_page();
    page.tagged("P", [&] { page.fill(page.size().width - 10, 0, 10, 100, print::ink); });
    return page.finish().value();
}

TEST(Preview, ShowsEachPageAsItIsOnPaper)
{
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const std::string pdf = two_pages(paper);
        EXPECT_EQ(print::page_count(pdf).value(), 2);
        const print::Size size = print::size_of(paper);
        const int width = 600;
        for (int page = 0; page < 2; ++page) {
            const print::PagePicture seen = print::page_picture(pdf, page, width).value();
            EXPECT_EQ(seen.width, width);
            EXPECT_NEAR(seen.height, width * size.height / size.width, 1);
            ASSERT_EQ(seen.rgba.size(), 4u * 600u * static_cast<unsigned>(seen.height));
            const auto at = [&](double x, double y) { // in points
                const double scale = width / size.width;
                const std::size_t pixel = 4 * (static_cast<std::size_t>(y * scale) * 600 +
                                               static_cast<std::size_t>(x * scale));
                return std::vector<int>(seen.rgba.begin() + static_cast<std::ptrdiff_t>(pixel),
                                        seen.rgba.begin() + static_cast<std::ptrdiff_t>(pixel) + 4);
            };
            const std::vector<int> white{255, 255, 255, 255};
            const std::vector<int> field = at(50, 25);
            if (page == 0) { // red, green, blue as drawn
                EXPECT_NEAR(field[0], 128, 2);
                EXPECT_NEAR(field[1], 64, 2);
                EXPECT_NEAR(field[2], 191, 2);
                EXPECT_EQ(field[3], 255);
            } else {
                EXPECT_EQ(field, white);
            }
            EXPECT_EQ(at(size.width - 5, 50) == white, page == 0);
            EXPECT_EQ(at(50, 55), white);
            EXPECT_EQ(at(size.width - 5, size.height - 5), white);
        }
    }
}

TEST(Preview, WhatCannotBeShownIsSaid)
{
    const std::string pdf = two_pages(Paper::a4);
    const auto code = [](const auto& result) { return result ? "" : result.problems()[0].code; };
    for (const std::string& bad :
         {std::string(), std::string("%PDF-1.7\n"), std::string(4000, '\0'),
          std::string("<html>not a PDF</html>"), pdf.substr(0, 60)}) {
        EXPECT_EQ(code(print::page_count(bad)), "not_pdf");
        EXPECT_EQ(code(print::page_picture(bad, 0, 100)), "not_pdf");
    }
    for (const int page : {-1, 2, 1000})
        EXPECT_EQ(code(print::page_picture(pdf, page, 100)), "no_page");
    for (const int width : {0, -5, print::widest_preview + 1})
        EXPECT_EQ(code(print::page_picture(pdf, 0, width)), "bad_width");
    EXPECT_EQ(print::page_picture(pdf, 0, 1).value().width, 1);
}

} // namespace
} // namespace evenfall
