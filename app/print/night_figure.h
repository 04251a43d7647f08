// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "estimate/picture.h"
#include "print/document.h"

namespace evenfall::print {

/// Draws the picture of the night and gives back its height. It reads in greyscale as well: full is
/// on or asleep, empty is off or awake, a fade with strokes is what is not known exactly.
double draw_night(Document& page, double x, double y, double width, const NightPicture& night,
                  bool dense = false);

/// The legend in words, one line. Gives back its height.
double draw_night_legend(Document& page, double x, double y, double width,
                         const NightPicture& night);

} // namespace evenfall::print
