// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "record/diary.h"
#include "record/edf.h"

#include <string>

namespace evenfall {

/// The bytes of diary.edf, from nothing but the diary. An uncertain time is an annotation whose
/// duration spans the range and whose text begins with "Time uncertain: "; the comment of an event
/// follows as a second annotation at the same time.
Result<std::string> diary_edf(const Diary& diary);

/// All events of the diary as annotations of an EDF+ file in which `zero` is the time 0. Start and
/// identifications are those of diary.edf; whoever lays the diary elsewhere changes them.
Result<EdfDiary> diary_annotations(const Diary& diary, Instant zero);

} // namespace evenfall
