// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "answers/night.h"
#include "base/json.h"
#include "journal/entry.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace evenfall {

/// Whether a person said it, or it follows from what was said.
enum class Origin { reported, derived };

/// Something that happened, at a time that may be uncertain. `length` where it is known.
/// Kinds and their texts in diary.edf are listed in record/events.h.
struct DiaryEvent {
    TimeRange at;
    std::optional<Span> length;
    std::string kind;
    std::string subject; ///< sensor id, question id, ...; may be empty
    std::string comment; ///< free text as given; may be empty
    Origin origin = Origin::reported;
    bool operator==(const DiaryEvent&) const = default;
};

/// An answer that is no time: an evening or a morning question, by its id. `answer` is any JSON
/// value except null, kept as it is.
struct DiaryAnswer {
    std::string question;
    Json answer;
    Origin origin = Origin::reported;
    bool operator==(const DiaryAnswer&) const = default;
};

/// What somebody wrote down in their own words.
struct DiaryNote {
    std::string text;
    std::optional<TimeRange> at;
    bool operator==(const DiaryNote&) const = default;
};

/// A look at the kit by a person or by the tool before the night (optional part of a visit).
struct SignalCheck {
    Instant at;
    std::string kind;
    std::string subject;
    std::string text;
    bool operator==(const SignalCheck&) const = default;
};

/// The answers were written on paper and typed in by somebody of the clinic.
struct TypedFromPaper {
    std::string by; ///< initials or a role; no name of a patient
    Instant at;     ///< when typing began
    bool operator==(const TypedFromPaper&) const = default;
};

/// One value that somebody of the clinic changed after the record was written. Absent: not there.
struct AmendedValue {
    std::string at; ///< where it stands in diary.json: "/night/lights_out", "/answers/compare", "/notes"
    Json before, after; ///< null: no such value
    bool operator==(const AmendedValue&) const = default;
};

/// Who changed a record, and why. The record as it was stays as it is: this one is beside it.
struct Amendment {
    Instant at;
    std::string by; ///< initials or a role
    std::string why;
    std::vector<AmendedValue> changes; ///< at least one
    bool operator==(const Amendment&) const = default;
};

struct KitOfNight {
    std::string id;
    std::string label; ///< what is written on the bag
    bool operator==(const KitOfNight&) const = default;
};

/// The whole truth of one night (file format evenfall.diary/1): every other file of the record can
/// be made from it again.
struct Diary {
    NightOf of; ///< the same as night.of
    std::optional<KitOfNight> kit;
    Night night;
    /// Origin of the values of `night` by their pointer in evenfall.night/1 ("/lights_out",
    /// "/off/0/from"). What is not here was reported. A pointer to no value is refused on writing.
    std::map<std::string, Origin> origins;
    std::vector<DiaryEvent> events; ///< beside those that follow from `night`
    std::vector<DiaryAnswer> answers;
    std::vector<DiaryNote> notes;
    std::vector<SignalCheck> signal_checks;
    std::vector<Entry> journal;
    std::optional<TypedFromPaper> paper;
    std::vector<Amendment> amendments; ///< in their order
};

/// Where the record begins: the middle of recording.from, else of lights out, else the first entry
/// (the earliest of the night's other times, events, notes, checks and journal entries).
struct DiaryStart {
    Instant at;                     ///< cut to a whole second, as EDF's header has no finer one
    std::chrono::seconds offset{0}; ///< local time there
    std::string basis;              ///< recording_from, lights_out, first_entry
};

/// Pointers (RFC 6901, within evenfall.night/1) of all values of a night, in the order of the file:
/// what `origins` can name.
std::vector<std::string> value_pointers(const Night& night);

/// Free text that every file of the record can carry: UTF-8 without control characters other than
/// tab, line feed and carriage return.
bool plain_text(std::string_view text);

/// A diary of nothing but the night report. Refused: no code and number of the night, no dated
/// entry. Contradictions are not refused here: a person may leave one open. See diary_to_json.
Result<Diary> diary_from_night(const Night& night);

/// Refused: no dated entry.
Result<DiaryStart> diary_start(const Diary& diary);

/// The local evening, yyyy-mm-dd, counted from noon to noon.
Result<std::string> diary_evening(const Diary& diary);

/// Name of the record's folder: <code>_night-<n>_<yyyy-mm-dd>; with _amended-<k> after k amendments.
Result<std::string> record_name(const Diary& diary);

/// How much of what is derived is worked out again on reading. `chance_enough` is by far the dearest
/// (20,000 draws): whoever reads thousands of diaries takes it as it is written.
enum class Derived { all_checked, chance_as_written };

/// Reads evenfall.diary/1, naming every fault. What is derived (evening, start, estimate) is worked
/// out again and compared; a difference is refused.
Result<Diary> read_diary(std::string_view json_text);
Result<Diary> diary_from_json(const Json& json, Derived derived = Derived::all_checked);

/// The text of diary.json: the same diary always gives the same bytes, and read_diary gives the
/// same diary back. Every value is marked reported or derived. A night without contradictions
/// carries its estimate; one with them carries the list of problems instead.
Result<std::string> diary_to_json(const Diary& diary);

} // namespace evenfall
