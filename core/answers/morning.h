// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "answers/night.h"
#include "journal/state.h"
#include "kit/kit.h"
#include "kit/visit.h"

#include <optional>
#include <string>
#include <vector>

namespace evenfall {

/// Where a value of the night comes from.
enum class Source {
    none,   ///< nothing is known
    notes,  ///< the night's taps
    person, ///< answered, or confirmed, in the morning
};

/// What stands for one question before or after the person has answered.
template <class T>
struct Answer {
    std::optional<T> value; ///< absent: not known, or skipped
    Source source = Source::none;
    bool skipped = false;   ///< the person passed over the question: never a zero
};

/// The morning in hand: what the notes of the night say, and over that what the person answered. The
/// person's answer wins; the taps stay in the journal and travel with the record.
struct Morning {
    Answer<TimeRange> into_bed, lights_out, final_waking, lights_on, out_of_bed;
    Answer<Span> asleep_after, tried_after_waking, slept;
    Answer<std::vector<Awakening>> awake;
    Answer<UntimedAwakenings> awake_untimed;
    Answer<std::vector<Removal>> off;
    Answer<std::string> compare; ///< "better", "usual", "worse"
    Answer<std::string> comment;
    /// "up" notes without a "back": when the person got up and did not note coming back.
    std::vector<Instant> forgotten_back;
    /// "Something came off", without saying which part.
    std::vector<Instant> unnamed_off;

    /// One of the five that asks_time() names.
    const Answer<TimeRange>& time(std::string_view question) const;
    /// One of the three that asks_amount() names.
    const Answer<Span>& amount(std::string_view question) const;
};

/// The rules, in one place:
///  - lights out: its tap, exact. Into bed: the page before it was opened then, so no later.
///  - awake to asleep, and up to back, are awakenings; what overlaps is one. Without its end an
///    awakening ended some time before the next note, or before the day began.
///  - a part noticed off came off between the last time that all was known to be on (lights out, "all
///    on", the same part put back on) and the noticing; put back on: exactly then; else never.
///  - "everything is still on" after a part was noted off says that it was put back some time between.
///  - up for the day: the final waking was no later, the lights went on then, and out of bed is asked.
///  - an answer in the journal replaces what the notes say; a skipped one removes it.
Morning morning_of(const NightState& state);

/// A tap of the night that the morning's answer says otherwise: the answer counts, and the tap goes
/// into the record beside it.
struct ChangedNote {
    std::string question;
    std::string sensor; ///< of a removal; else empty
    TimeRange at;       ///< as the taps had it
    bool operator==(const ChangedNote&) const = default;
};

/// In the order of the questions. A time within the same minute is the same: a person thinks in
/// minutes, a tap carries seconds.
std::vector<ChangedNote> changed_notes(const NightState& state);

/// The night report: the morning's answers, the recorder's start and stop as noted, and what the
/// visit needs of the kit.
Night night_of(const NightState& state, const Visit& visit, const Kit& kit);

/// Values of answers in the journal. Times: a TIME of the night file. Skipped: {"skipped": true}.
Json time_answer(const TimeRange& range, std::chrono::seconds offset);
Json minutes_answer(Span span);
Json awake_answer(const std::vector<Awakening>& timed, const std::optional<UntimedAwakenings>& untimed, std::chrono::seconds offset);
Json off_answer(const std::vector<Removal>& removals, std::chrono::seconds offset);
Json word_answer(const std::string& word);
Json skipped_answer();

} // namespace evenfall
