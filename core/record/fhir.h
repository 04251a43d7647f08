// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "record/diary.h"

#include <string>

namespace evenfall {

/// The text of diary.fhir.json, from nothing but the diary: an HL7 FHIR R4 (4.0.1) Bundle of type
/// collection. The same diary always gives the same bytes.
///
/// In this order: Patient (the study code, nothing else), CodeSystem (every code of our own, with
/// its meaning), Questionnaire (the same in every record), QuestionnaireResponse (what was
/// reported; what was skipped is absent), Observations (what follows from it, by the estimate;
/// absent where it is unknown), Provenance. A night that contradicts itself has no estimate: it has
/// no Observations, and an OperationOutcome names the contradictions.
///
/// - Trace. Every answer and every component carries, as its element id, the JSON pointer of its
///   value in diary.json; every Observation as an identifier, "<record>/diary.json#<pointer>".
///   Answers that were worked out and not given are listed by those pointers under "derived".
/// - Times. An uncertain time is two answers, "earliest" and "latest"; "at" is there only for an
///   exact one. effectivePeriod is the shortest period that surely holds what was measured: from
///   the earliest beginning to the latest end.
/// - authored and recorded are those of the last journal entry. Without a journal nobody knows when
///   the answers were given: authored is the day of the latest time in the diary, and recorded,
///   which must be an instant, that time itself.
/// - Numbers are those of diary.json, in the same form. Minutes and percent in UCUM.
/// - Names. fullUrl is urn:uuid with a UUID of version 8 (RFC 9562): the first 128 bits of the
///   SHA-256 of "evenfall.fhir/1|<study code>|<night>|<role>", with version and variant set. The
///   Patient's has no night, for it is the same in all nights of a study; CodeSystem and
///   Questionnaire are the same everywhere and have neither. Our own canonical URLs and identifier
///   systems lie under a reserved name (RFC 2606) that nobody can own: they name, they lead
///   nowhere.
///
/// Refused, with its pointer in diary.json: no dated entry; a year outside 1 to 9999; a text of
/// more than a mebibyte.
Result<std::string> diary_fhir(const Diary& diary);

} // namespace evenfall
