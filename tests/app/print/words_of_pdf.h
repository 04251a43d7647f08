// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <map>
#include <string>
#include <vector>

namespace evenfall::test {

/// The words of a tagged PDF in the order of its structure, as one who hears it gets them: letters
/// by each font's ToUnicode, or the /ActualText around them. What has no tag is left out. Through
/// qpdf, for poppler stops hearing at the ligatures that Arabic must have.
std::string tagged_words(const std::string& path);

struct Structure {
    std::map<std::string, int> tags;
    std::vector<std::string> alternatives; ///< of the figures
    int count(const std::string& tag) const {
        const auto found = tags.find(tag);
        return found == tags.end() ? 0 : found->second;
    }
};
Structure structure_of(const std::string& path);

/// Without spaces and without marks of direction.
std::string letters(const std::string& text);

} // namespace evenfall::test
