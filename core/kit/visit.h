// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/json.h"
#include "base/result.h"
#include "base/time.h"
#include "kit/kit.h"

#include <array>
#include <chrono>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

enum class WritingHand { right, left };

/// When the clinic's telephone is answered, by local time.
struct OpenHours {
    std::vector<std::string> days; ///< mon, tue, wed, thu, fri, sat, sun
    std::chrono::minutes from{0}, to{0};
};

struct Clinic {
    std::string name;
    std::string phone;
    std::vector<OpenHours> hours;
    std::string phone_outside_hours;
    std::string emergency; ///< the local emergency number
};

/// What the clinic can be asked to know first, by id. A yes leads to the clinic before going on.
inline constexpr std::array<std::string_view, 8> first_conditions{
    "tape_allergy", "broken_skin", "oxygen", "implant", "under_18", "pregnant", "latex", "cords"};

/// Which optional parts of the evening are on.
struct VisitOptions {
    bool signal_check = false;
    bool evening_questions = false;
    bool mirror = false;
    bool narration = false;
};

/// One patient's loan of a kit (file format evenfall.visit/1). No name, no birth date.
struct Visit {
    std::string code;      ///< study code, also in file names: letters, digits, - and _
    std::string kit;       ///< id of a kit
    std::string kit_label; ///< what is written on the bag
    long nights = 1;
    std::string language;  ///< two letters
    WritingHand hand = WritingHand::right;
    std::chrono::minutes bed_time{0}; ///< planned lights out, local time of day
    ZonePtr zone;
    Clinic clinic;
    std::chrono::minutes need{240}; ///< Kapur et al. 2017, J Clin Sleep Med 13(3):479-504: at least 4 h
    std::vector<std::string> need_signals; ///< ids of the kit's signals; default flow and oximetry
    std::string return_by; ///< yyyy-mm-dd
    VisitOptions options;
    std::vector<std::string> ask_first; ///< of first_conditions, in the order asked; default all
};

/// Reads a visit file. All faults with their pointers; a visit without a telephone number, an unknown
/// zone, or a date that does not exist is refused.
Result<Visit> read_visit(std::string_view json_text);

/// The member "clinic" of a file: as read_visit has it, with all its faults; and back.
Clinic read_clinic(ObjectReader& top);
Json clinic_to_json(const Clinic& clinic);

/// Writes what read_visit reads back as the same visit.
Json visit_to_json(const Visit& visit);

/// A telephone number that somebody can dial: digits, spaces, + ( ) - . /, at least two digits, at
/// most 32 characters.
bool plain_phone(std::string_view text);

/// Opening hours in one line, as somebody types them: "mon-fri 08:00-17:00, sat 09:00-12:00". English
/// names of days in three letters. Malformed: what cannot be read, and what would be right. Empty: none.
Result<std::vector<OpenHours>> parse_hours_line(std::string_view line);
std::string hours_line(const std::vector<OpenHours>& hours);

/// A visit together with its kit.
struct VisitWithKit {
    Visit visit;
    Kit kit;
};

/// Loads a visit and finds its kit: `<id>.json` beside the visit, in `../kits` of it, then in each
/// of the given folders. Refused when there is no such kit, or the kit lacks a signal that is needed.
/// Problems of the kit file carry its name in their text.
Result<VisitWithKit> load_visit(const std::filesystem::path& file,
                                const std::vector<std::filesystem::path>& kit_folders);

} // namespace evenfall
