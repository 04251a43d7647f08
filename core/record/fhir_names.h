// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/json.h"

#include <string>
#include <string_view>

namespace evenfall::fhir {

// The fixed parts of diary.fhir.json: names, codes and questions. Change one only together with its
// version: they are in files of nights gone by.

inline constexpr std::string_view code_system_url =
    "https://evenfall.example/fhir/CodeSystem/night-diary";
inline constexpr std::string_view questionnaire_url =
    "https://evenfall.example/fhir/Questionnaire/night-diary";
inline constexpr std::string_view questionnaire_version = "1";
inline constexpr std::string_view study_code_system =
    "https://evenfall.example/fhir/NamingSystem/study-code";
inline constexpr std::string_view diary_value_system =
    "https://evenfall.example/fhir/NamingSystem/diary-value";

/// The CodeSystem resource with all codes of our own.
Json code_system();

/// What a code of ours means. Only codes of code_system().
std::string_view definition(std::string_view code);

/// {"system", "code", "display"} of a code of ours.
Json coding(std::string_view code);

/// The Questionnaire resource.
Json questionnaire();

} // namespace evenfall::fhir
