// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "answers/morning.h"
#include "kiosk/session.h"
#include "words/words.h"

#include <QString>
#include <string>
#include <string_view>

namespace evenfall {

// Answers of the morning in the person's language: for the pages that ask, and for the list of answers.

/// Id of a question's text: slot is "title" or "short".
std::string question_text(std::string_view question, const char* slot);
QString sensor_name(const Session& session, const Words& words, const std::string& sensor);
QString range_text(const Words& words, const TimeRange& range);
QString awakening_text(const Words& words, const Awakening& one);
QString untimed_text(const Words& words, const UntimedAwakenings& untimed);
QString removal_text(const Session& session, const Words& words, const Removal& one);
/// Minutes, or hours and minutes where a night's sleep is meant.
QString amount_text(const Words& words, std::string_view question, long minutes);
/// An answer as it stands; says so where it was skipped.
QString answer_text(const Session& session, const Words& words, const Morning& morning, std::string_view question);

} // namespace evenfall
