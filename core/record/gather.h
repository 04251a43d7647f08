// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"

#include <filesystem>
#include <span>
#include <string>

namespace evenfall {

/// One column of the table over many records. The list is fixed: a column is never renamed or moved,
/// new ones come at the end.
struct GatherColumn {
    const char* name;
    const char* meaning; ///< unit, range, where it comes from; what an empty field means
};
std::span<const GatherColumn> gather_columns();

/// The header line (RFC 4180: commas, CRLF, quotes where they are needed).
std::string gather_header();

/// The line of one record folder, from its diary.json, whose sum in SHA256SUMS is checked. What
/// follows from the answers is worked out again and compared, but for the chance (see Derived).
/// Refused: a record that fails this. Io: a file that could not be read.
Result<std::string> gather_line(const std::filesystem::path& folder);

/// A field of a CSV line: quoted where it holds a comma, a quote or a line end, quotes doubled.
std::string csv_field(const std::string& text);

} // namespace evenfall
