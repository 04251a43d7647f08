// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/json.h"

#include <string_view>

namespace evenfall {

/// What the rules of HL7 FHIR R4 (4.0.1) ask of a Bundle like ours and what common checkers let
/// pass. It does not replace them: it knows no structure definitions. Every problem is `refused`
/// (`malformed` where the text is not JSON), with its JSON pointer in the file.
///
/// Codes:
/// - empty_value, null_value: an empty object, list or string; null (R4, JSON: "objects are never
///   empty", "properties are never null")
/// - not_integer: a number with a point or an exponent, or of more than 32 bits, where R4 has an
///   integer
/// - two_values: two forms of one choice of types, such as valueString beside valueInteger
/// - bad_time: a dateTime or instant whose form is wrong; one with a time needs seconds and a zone
/// - wrong_order: a Period that ends before it begins (per-1)
/// - unit_without_system: a Quantity with a code and no system (qty-3)
/// - bad_id, duplicate_id: an element id with spaces, or twice in one resource
/// - bad_url, duplicate_url: a fullUrl that is no urn:uuid, or stands twice
/// - no_target: a reference, or the response's questionnaire, that is not in this Bundle
/// - unknown_code: a code of a CodeSystem of this Bundle that is not in it, or with another display
/// - duplicate_link: a linkId that a Questionnaire has twice
/// - unknown_link: an item of the response whose linkId the Questionnaire does not have at that
///   place
/// - repeated: an item or answer that stands more than once and may not
/// - wrong_answer: an answer whose type is not that of its question, or an answer to a group
/// - no_resource: no Bundle, or an entry without a resource
Problems check_fhir(const Json& bundle);
Problems check_fhir_text(std::string_view text);

} // namespace evenfall
