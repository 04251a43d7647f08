// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "record/diary.h"

#include <filesystem>
#include <string>
#include <vector>

namespace evenfall {

/// One more file for the record, such as a summary to print. The name is a plain file name.
struct RecordFile {
    std::string name;
    std::string bytes;
};

/// diary.json, diary.edf, diary.fhir.json, then `more`, then SHA256SUMS over all of them.
/// Refused, with its pointer in diary.json: a value that read_diary would not read back.
Result<std::vector<RecordFile>> record_files(const Diary& diary,
                                             const std::vector<RecordFile>& more = {});

/// Writes the record folder into `parent`, which must exist, and returns its path. It is there
/// whole and durable, or not at all: a temporary name, every file synced, the folder synced,
/// renamed, the parent synced. Folder 0700, files 0600. Refused: the folder exists already. Io:
/// what failed.
Result<std::filesystem::path> write_record(const Diary& diary, const std::filesystem::path& parent,
                                           const std::vector<RecordFile>& more = {});

/// Copies a record folder into another one, such as a stick, and returns the copy's path: whole and
/// synced, or not at all, as write_record. A copy that is there already and has the same sums stays;
/// refused: another record of that name. Io: what failed.
Result<std::filesystem::path> copy_record(const std::filesystem::path& record, const std::filesystem::path& parent);

} // namespace evenfall
