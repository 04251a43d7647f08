// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "record/diary.h"

#include <string>

namespace evenfall::print {

/// summary.pdf of a record: always one page of A4, tagged, in English. What has no room on it is
/// counted on it. The same diary gives the same bytes on the same versions of libraries and fonts,
/// which stand in the document's producer. Refused: as diary_to_json. Io: the page could not be
/// drawn, and why.
Result<std::string> summary_pdf(const Diary& diary);

} // namespace evenfall::print
