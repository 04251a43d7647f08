// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "sheet/sheet.h"
#include "words/words.h"

namespace evenfall {

/// The words of a sheet in the language of `words`, which must live longer. Marks that isolate what
/// has its own direction are left out where the language runs from left to right: nothing turns
/// round there, and they would be noise to who copies a number.
SheetWords sheet_words(const Words& words);

} // namespace evenfall
