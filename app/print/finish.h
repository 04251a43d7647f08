// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "print/document.h"

namespace evenfall::print {

/// Adds to a PDF of cairo 1.16 what that cannot set: the language, that a reader shows the title,
/// /Alt of each figure in their order, the scope of each head of a table; takes out every date and
/// gives an id that follows from the contents alone.
Result<std::string> finish_pdf(const std::string& drawn, const DocumentInfo& info,
                               const std::string& producer,
                               const std::vector<std::string>& alternatives);

} // namespace evenfall::print
