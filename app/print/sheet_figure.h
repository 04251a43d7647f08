// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "figures/figure.h"
#include "sheet/sheet.h"

namespace evenfall::print {

/// A figure of the sheet as SVG in greys, for the hand that the patient writes with. Refused: the
/// store does not have it.
Result<std::string> sheet_figure(const FigureStore& figures, const SheetFigure& figure, WritingHand hand);

} // namespace evenfall::print
