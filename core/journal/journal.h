// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"
#include "journal/entry.h"

#include <filesystem>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

/// The append-only log of everything said or tapped. Not thread-safe: one thread owns it.
class Journal {
  public:
    virtual ~Journal() = default;

    /// Everything so far, in order.
    virtual const std::vector<Entry>& entries() const = 0;

    /// Appends and returns after the entry is durable. Error (io), with code
    ///   "disk_full", "read_only", "sync", "io": nothing was added, and the journal is closed: every
    ///   later append fails the same way until it is opened again. A failed sync is never retried,
    ///   for the system may have dropped the data and report success the second time.
    virtual Result<Entry> append(const Stamp& stamp, std::string_view kind, std::string_view subject,
                                 std::string_view value) = 0;
};

/// SHA-256 that chains an entry to the one before; `before` is empty for the first.
std::string chain_hash(const std::string& before, const Entry& entry);

/// Whether the entry is the next one of an unbroken chain.
bool follows(std::span<const Entry> chain, const Entry& entry);

/// How many entries from the start form an unbroken chain.
std::size_t intact_length(const std::vector<Entry>& entries);

/// A journal in memory that behaves like the one on disk: for tests and tours, and for changing a
/// record, whose own entries it then begins with (their numbers and hashes stay).
std::unique_ptr<Journal> make_memory_journal(std::vector<Entry> begin = {});

/// What was found when a journal was opened.
struct Opened {
    std::unique_ptr<Journal> journal;
    /// Where a damaged file was moved to; empty when it was sound.
    std::filesystem::path set_aside;
    std::size_t brought_back = 0; ///< entries kept from the damaged file
    std::size_t lost = 0;         ///< rows seen in it that could not be kept; 0 may mean "unknown"
};

/// Opens or creates the journal at `file` (mode 0600) in an existing folder, alone: error "second_copy"
/// when another process has it. "newer" when a later version wrote it (it is left alone), "disk_full",
/// "read_only", "io" as above. A damaged file is moved aside, never deleted; the intact beginning of
/// its chain starts the new journal.
Result<Opened> open_journal(const std::filesystem::path& file);

} // namespace evenfall
