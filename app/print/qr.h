// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"

#include <string>
#include <vector>

namespace evenfall::print {

/// A QR code (ISO/IEC 18004) as rows of dark and light squares, without its quiet zone.
struct QrCode {
    int size = 0;           ///< squares on each side
    std::vector<bool> dark; ///< row by row
    bool at(int x, int y) const { return dark[static_cast<std::size_t>(y * size + x)]; }
};

/// Squares left white around it: what the standard asks for.
inline constexpr int quiet_zone = 4;

/// Refused: text that has no room in a QR code.
Result<QrCode> qr_code(const std::string& text);

} // namespace evenfall::print
