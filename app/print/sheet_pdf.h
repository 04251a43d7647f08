// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "figures/figure.h"
#include "print/document.h"
#include "sheet/sheet.h"

#include <string>

namespace evenfall::print {

/// How a sheet is printed. Clear print from 14 pt, large print from 18 pt (UKAAF G003, 2019: at
/// least 12 and better 14; at least 16 and better 18).
struct SheetForm {
    Paper paper = Paper::a4;
    bool large = false;
};

/// The take-home sheet as a tagged PDF: as many pages as its texts need, then the paper diary on a
/// page of its own for each night. Texts flow on and are never cut; a figure stays with its step.
/// In greys only. The same sheet gives the same bytes on the same versions of libraries and fonts.
/// Io: the page could not be drawn, and why.
Result<std::string> sheet_pdf(const Sheet& sheet, const SheetWords& words,
                              const FigureStore& figures, const SheetForm& form);

} // namespace evenfall::print
