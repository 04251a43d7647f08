// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "figures/figure.h"
#include "sheet/sheet.h"

#include <string>

namespace evenfall::print {

/// The take-home sheet as one HTML file that needs no other: figures and QR code inline, real
/// headings, lists and tables, alternative texts, language and direction; a style for print that
/// keeps a figure with its step. `large` as in the PDF. Io: a figure is missing.
Result<std::string> sheet_html(const Sheet& sheet, const SheetWords& words,
                               const FigureStore& figures, bool large);

} // namespace evenfall::print
