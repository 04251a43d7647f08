// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"

#include <cstdint>
#include <string_view>
#include <vector>

namespace evenfall::print {

/// A page as it will be on paper, row by row from the top, four bytes a pixel: red, green, blue and
/// 255, as QImage::Format_RGBA8888 has them.
struct PagePicture {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> rgba;
    bool operator==(const PagePicture&) const = default;
};

inline constexpr int widest_preview = 4000; ///< pixels

/// How many pages a finished PDF has. Refused: `not_pdf`, it cannot be read or is locked.
Result<int> page_count(std::string_view pdf);

/// Draws one page, from 0, `width` pixels wide (1 to widest_preview) and as high as its paper asks.
/// Refused: `not_pdf`; `no_page`, there is no such page; `bad_width`. Io: `page_not_drawn`.
Result<PagePicture> page_picture(std::string_view pdf, int page, int width);

} // namespace evenfall::print
