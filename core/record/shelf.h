// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"
#include "kit/visit.h"
#include "record/diary.h"
#include "record/verify.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

/// A record on the shelf.
struct ShelfRecord {
    std::string name; ///< of its folder
    std::filesystem::path folder;
    Verification found;           ///< with the diary, where it could be read
    bool taken_out = false;       ///< a copy was written elsewhere, and verified there
    std::string taken_out_at;     ///< RFC 3339; empty when not
};

/// One visit on the shelf and how far it is.
struct ShelfVisit {
    enum class Stand { prepared, under_way, recorded };
    Visit visit;
    Stand stand = Stand::prepared;
    long night = 0; ///< the last that was begun; 0 for none
    bool night_has_record = false;
    std::vector<ShelfRecord> records; ///< in the order of their names
    std::string skin_again;  ///< "sore" or "fine": the second look at the skin, after the record; may be empty
    Problems journal_problems;        ///< why the journal could not be read; its state is then not known
};

/// The data folder of a tablet, one folder for each visit so that a visit can go without a trace:
///   visits/<study code>/visit.json, journal.db and what SQLite puts beside it, records/, taken_out.json
///   kits/       kit files of the clinic's own
///   desk/       what belongs to the clinic: PIN, settings, and the list of what was wiped
/// Folders 0700, files 0600. Nothing outside visits/ ever holds a study code or an answer.
class Shelf {
  public:
    explicit Shelf(std::filesystem::path data) : data_(std::move(data)) {}

    /// Makes the folders, and ends a wipe that was cut short. Io: what failed.
    Status prepare() const;

    std::filesystem::path desk() const { return data_ / "desk"; }
    std::filesystem::path own_kits() const { return data_ / "kits"; }
    std::filesystem::path folder(std::string_view code) const { return data_ / "visits" / code; }
    std::filesystem::path visit_file(std::string_view code) const { return folder(code) / "visit.json"; }
    std::filesystem::path journal(std::string_view code) const { return folder(code) / "journal.db"; }
    std::filesystem::path records(std::string_view code) const { return folder(code) / "records"; }

    /// Study codes of the visits that are here, in order. Io: what failed.
    Result<std::vector<std::string>> codes() const;

    /// Puts a new visit here. Refused: there is one of that code.
    Status add(const Visit& visit) const;
    /// Puts a visit here, or replaces what its file says; its journal and records stay.
    Status put(const Visit& visit) const;

    /// Reads a visit, looks into its journal (which nobody may have open) and verifies its records.
    Result<ShelfVisit> look(const std::string& code, const SummaryMaker& maker = {}) const;

    /// Copies a record to `to` (a stick), reads it back and verifies it there, and notes when. Refused:
    /// the record does not verify, here or there; another record of that name is there. Io: what failed.
    Status take_out(const std::string& code, const std::string& record, const std::filesystem::path& to,
                    const std::string& when) const;

    /// Why this visit cannot go without somebody's saying so: no_record (a night was begun and has
    /// none), bad_record, not_taken_out, journal_unread, nothing_done. Empty: all is safe elsewhere.
    static std::vector<std::string> reasons_against(const ShelfVisit& visit);

    /// Ready for the next patient: removes the visit with its journals, set-aside ones among them, and
    /// its records. A `reason` is needed where reasons_against names any; it is kept in desk/wiped.json
    /// with `when` and those names, and must not hold the study code. Refused: reason missing or with
    /// the code in it. Io: what failed; what is left goes at the next prepare().
    Status wipe(const ShelfVisit& visit, const std::string& reason, const std::string& when) const;

  private:
    std::filesystem::path data_;
};

} // namespace evenfall
