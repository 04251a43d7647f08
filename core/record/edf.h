// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"
#include "base/time.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

// EDF and EDF+. Clause numbers are those of the EDF+ specification (Kemp & Olivan 2003, Clin
// Neurophysiol 114:1755-61).

/// One annotation. The onset is elapsed time since the start of the file and may be negative; the
/// duration is never negative (2.2.2).
struct Annotation {
    Span onset{0};
    std::optional<Span> duration;
    std::string text; ///< UTF-8; no control characters but tab, line feed and carriage return
    bool operator==(const Annotation&) const = default;
};

struct EdfSignal {
    std::string label;
    std::string transducer;
    std::string dimension;
    double physical_min = 0, physical_max = 0;
    long digital_min = 0, digital_max = 0;
    std::string prefilter;
    long samples = 0; ///< in each data record
    bool annotations() const { return label == "EDF Annotations"; }
};

struct EdfHeader {
    std::string patient;   ///< local patient identification, the 80 bytes less trailing spaces
    std::string recording; ///< local recording identification, likewise
    LocalTime start;       ///< patient's local time, whole seconds (2.1.3)
    std::string kind;      ///< "EDF", "EDF+C" or "EDF+D"
    long header_bytes = 0;
    long records = 0; ///< -1 while a recorder is still writing
    Span record_duration{0};
    std::vector<EdfSignal> signals;
};

struct EdfFile {
    EdfHeader header;
    std::vector<Annotation> annotations; ///< in file order; time-keeping ones left out
};

/// What goes into an annotations-only EDF+ file.
struct EdfDiary {
    std::string patient_code; ///< study code; spaces become _ (2.1.3)
    std::string admin_code;   ///< of the investigation
    std::string equipment;
    /// Of a recording that this file belongs to: copied as it stands, instead of patient_code (2.3).
    std::optional<std::string> patient_field;
    LocalTime start;        ///< whole seconds; 1985 to 2084
    std::string start_text; ///< what the time of the file's start is; not empty (2.2.4)
    std::vector<Annotation> annotations;
};

/// The bytes of the file. Refused: a start outside 1985 to 2084, a text with control characters, an
/// identification that does not fit its 80 bytes, a negative duration.
Result<std::string> write_edf(const EdfDiary& diary);

/// Whether the identifications of an EDF+ file must have the form that 2.1.3 gives them. Recorders
/// often write them freely, and a file derived from such a recording copies that.
enum class Identifications { by_form, as_given };

/// Reads the header alone, of any EDF or EDF+ file. Refused, with the byte at which it is wrong.
Result<EdfHeader> read_edf_header(std::string_view bytes, Identifications identifications = Identifications::by_form);

/// Reads header and annotations. Strict: every departure from the specification is named with its
/// byte, and none is overlooked or mended.
Result<EdfFile> read_edf(std::string_view bytes, Identifications identifications = Identifications::by_form);

} // namespace evenfall
