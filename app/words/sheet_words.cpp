// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "words/sheet_words.h"

namespace evenfall {

SheetWords sheet_words(const Words& words) {
    const bool keep = words.right_to_left();
    const auto plain = [keep](QString text) {
        if (!keep)
            text.remove(QChar(0x2066)).remove(QChar(0x2069));
        return text.toStdString();
    };
    return {words.language().toStdString(),
            words.right_to_left(),
            [&words, plain](const Text& text) { return plain(words(text)); },
            [&words, plain](const Clinic& clinic) { return plain(words.hours(clinic)); },
            [&words, plain](const std::string& code) { return plain(words.code(code)); },
            [&words, plain](long value) { return plain(words.number(value)); }};
}

} // namespace evenfall
