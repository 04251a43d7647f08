// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "record/diary.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace evenfall {

/// Something that is wrong with a record. The problem's place is a JSON pointer, a byte, or a line.
struct RecordProblem {
    std::string file; ///< name inside the folder; empty for the folder itself
    Problem problem;
};

/// What verify found. Fine when there are no problems.
struct Verification {
    std::vector<RecordProblem> problems;
    std::optional<Diary> diary; ///< where diary.json could be read
    int exit_status() const;
};

/// Makes summary.pdf again: core cannot draw.
using SummaryMaker = std::function<Result<std::string>(const Diary&)>;

/// Checks a record folder: the sums, that nothing is missing or extra, the formats, the folder's
/// name, and that diary.edf and diary.fhir.json are, byte for byte, what diary.json makes. Changes
/// nothing. Whatever is wrong inside a record is `refused`; what could not be read at all is `io`.
///
/// summary.pdf must carry the sum of diary.json. With a maker it must also be there, and be byte
/// for byte what the maker makes: unless it names other versions of libraries or fonts as its
/// producer, for they draw another page of the same night, which is no fault.
Verification verify_record(const std::filesystem::path& folder, const SummaryMaker& maker = {});

} // namespace evenfall
