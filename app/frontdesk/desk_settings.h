// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"
#include "kit/visit.h"

#include <chrono>
#include <filesystem>
#include <string>

namespace evenfall {

/// What the front desk keeps for itself, and what a new visit begins with. No Qt. One file, desk.json
/// (evenfall.desk/1), in the desk's folder; but for `tonight` nothing in it belongs to a patient.
struct DeskSettings {
    Clinic clinic;              ///< without a phone number until somebody has given it
    std::string zone;           ///< IANA name
    std::string language = "en";///< of the front desk
    std::string tonight;        ///< study code of the visit that this tablet shows at the bedside; or empty
    std::string kit;            ///< of the last new visit
    std::string visit_language = "en";
    std::chrono::minutes bed_time{22 * 60};
    long nights = 1;
    VisitOptions options;
};

/// Settings from their file; those of a new tablet, with `zone`, where there is none. Malformed: what
/// is wrong in it. Io: as read_file.
Result<DeskSettings> load_desk_settings(const std::filesystem::path& desk_folder, const std::string& zone);

/// Whole or not at all. Io: as write_file.
Status save_desk_settings(const std::filesystem::path& desk_folder, const DeskSettings& settings);

} // namespace evenfall
