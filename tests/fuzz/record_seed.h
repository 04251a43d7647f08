// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "fuzz/target.h"

#include "record/folder.h"

#include <stdexcept>

namespace evenfall::fuzz {

/// The diary of the example night with something of everything else. Invented.
inline Diary diary_seed()
{
    const Result<std::string> text = read_file(EVENFALL_SOURCE_DIR "/assets/schemas/examples/diary.json");
    Result<Diary> diary = text ? read_diary(*text) : text.problems();
    if (!diary)
        throw std::runtime_error(describe("diary.json", diary.problems()[0]));
    return std::move(diary.value());
}

inline std::vector<RecordFile> record_seed()
{
    Result<std::vector<RecordFile>> files = record_files(diary_seed());
    if (!files)
        throw std::runtime_error(describe("record", files.problems()[0]));
    return std::move(files.value());
}

} // namespace evenfall::fuzz
