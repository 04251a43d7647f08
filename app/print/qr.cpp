// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "print/qr.h"

#include <memory>
#include <qrencode.h>

namespace evenfall::print {

Result<QrCode> qr_code(const std::string& text) {
    // Level M: a sixth of the code may be lost to a crease or a stain.
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(
        QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_M), &QRcode_free);
    if (!code)
        return Problem{Fault::refused, "qr_code", "/code",
                       "\"" + text +
                           "\" cannot be written as a QR code; right would be a shorter code"};
    QrCode out;
    out.size = code->width;
    for (int i = 0; i < code->width * code->width; ++i)
        out.dark.push_back((code->data[i] & 1) != 0);
    return out;
}

} // namespace evenfall::print
