// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "frontdesk/desk_settings.h"

#include <map>
#include <string>

namespace evenfall {

/// The form of a new visit, as it is typed: everything is text until it is read as one. No Qt.
struct VisitForm {
    /// Fields by their ids: code, kit, kit_label, nights, language, writing_hand, bed_time, return_by;
    /// signal_check, evening_questions, mirror and narration are "yes" or "no".
    std::map<std::string, std::string> values;
    bool clock_right = false; ///< somebody has looked at the tablet's clock and zone

    /// What is the same as last time is filled in. `return_by`: yyyy-mm-dd.
    static VisitForm begin(const DeskSettings& settings, const std::string& return_by);

    /// The visit. Refused or malformed: every field that is wrong, its id in `at` as a pointer such as
    /// "/code"; "/clock" while the clock was not confirmed; "/clinic/phone" without the clinic's number.
    Result<Visit> read(const DeskSettings& settings) const;
};

} // namespace evenfall
