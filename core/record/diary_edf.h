// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "record/diary.h"

#include <string>

namespace evenfall {

/// The bytes of diary.edf, from nothing but the diary. An uncertain time is an annotation whose
/// duration spans the range and whose text ends in " (time uncertain)"; the comment of an event
/// follows as a second annotation at the same time.
Result<std::string> diary_edf(const Diary& diary);

} // namespace evenfall
