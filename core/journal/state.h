// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/json.h"
#include "journal/entry.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

/// Something noted in the night that still stands (an undone note does not).
struct NightNote {
    std::int64_t number = 0;
    std::string kind;
    std::string subject;
    Instant at;
    bool operator==(const NightNote&) const = default;
};

/// One task of the signal check: when it was begun, and ended (absent: never).
struct SignalNote {
    std::string task;
    Instant started;
    std::optional<Instant> ended;
    bool operator==(const SignalNote&) const = default;
};

/// A light of the recorder that the person saw.
struct SeenLight {
    std::string light;
    Instant at;
    bool operator==(const SeenLight&) const = default;
};

/// A night whose answers stand on paper and are typed in by somebody of the clinic.
struct PaperNight {
    std::string by;      ///< initials or a role
    std::string evening; ///< yyyy-mm-dd
    bool operator==(const PaperNight&) const = default;
};

/// Somebody of the clinic changes the answers of a night whose record is written.
struct AmendInHand {
    std::string by, why;
    Instant at;
    std::int64_t number = 0; ///< of its entry
    bool operator==(const AmendInHand&) const = default;
};

/// All that the screens need to know of the night in hand: nothing but a replay of the journal.
struct NightState {
    bool begun = false;
    Instant begun_at;
    std::string code;
    long night = 0;
    std::string page;                          ///< where the person is
    Instant page_since;
    std::string language;                      ///< chosen by the person; empty: as the visit says
    std::optional<bool> first_some;            ///< first questions: one or more is true
    bool called = false;
    std::set<std::string> items;               ///< found in the bag
    std::map<std::string, Instant> steps;      ///< done, and when last said so
    std::set<std::string> checked;             ///< sensors seen to sit right
    std::string light;                         ///< last light that was seen
    std::vector<SeenLight> lights;             ///< all of them, in order
    std::vector<SignalNote> signal_notes;          ///< of the signal check, in order
    std::string build;                         ///< of the drawn person; empty: not chosen
    bool read_to_me = false;                   ///< each page is read aloud by itself
    bool night_sound = false;                  ///< a soft tone with each note of the night
    std::optional<Instant> started_at;         ///< the step that sets the recorder going was done
    std::optional<Instant> lights_out, up_for_day, stopped;
    std::vector<NightNote> notes;              ///< of the night, in order
    std::map<std::string, Json> answers;       ///< by question; the last one stands
    std::map<std::string, Json> drafts;        ///< answers begun and not yet confirmed, by question
    std::set<std::string> packed;
    std::string skin, skin_again;
    std::optional<Instant> skin_at;            ///< when the skin was looked at first
    /// The machine was off some time in each of these while it was night: between the last that was
    /// said and the program's being opened again under another boot.
    std::vector<TimeRange> gaps;
    std::string record;                        ///< name of the record folder once written
    std::optional<PaperNight> paper;           ///< absent: a night with the tablet
    std::vector<AmendInHand> amendments;       ///< begun, in order
    bool amending = false;                     ///< the last of them has no record yet
    bool given_up = false;

    /// The answer begun for a question; null when there is none.
    const Json* draft(std::string_view question) const;

    /// Is the person noted as awake, out of bed; which parts are noted off.
    bool awake_now() const;
    bool out_of_bed() const;
    std::set<std::string> off_now() const;
};

/// The state of the last night that was begun. Entries of a kind that is not known here (a later
/// version's) are passed over. `last_plug` is the step after which a recorder that starts by its last
/// plug is running; empty otherwise.
NightState replay(const std::vector<Entry>& entries, const std::string& last_plug = "");

} // namespace evenfall
