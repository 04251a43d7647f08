// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "figures/figure.h"
#include "sheet/sheet.h"

namespace evenfall::print {

/// A figure of the sheet as SVG in greys, for the hand that the patient writes with. Refused: the
/// store does not have it.
Result<std::string> sheet_figure(const FigureStore& figures, const Depiction& figure,
                                 WritingHand hand);

/// "Open: ..." with the clinic's hours, which are words of the language themselves.
Text hours_of(const Sheet& sheet, const SheetWords& words);

} // namespace evenfall::print
