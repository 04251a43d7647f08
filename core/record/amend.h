// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "journal/entry.h"
#include "kit/kit.h"
#include "kit/visit.h"
#include "record/diary.h"

#include <string>
#include <vector>

namespace evenfall {

/// What the clinic changed after a record was written, as the journal of that night tells it: one for
/// each entry of kind `amend`, with the values before it and those before the next one (or now). One
/// that changed nothing has no changes; such a diary is refused on writing. `last_plug` as for
/// replay().
std::vector<Amendment> amendments_of(const std::vector<Entry>& entries, const Visit& visit, const Kit& kit,
                                     const std::string& last_plug);

} // namespace evenfall
