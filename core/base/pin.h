// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"
#include "base/time.h"

#include <cstdint>
#include <filesystem>
#include <string>

namespace evenfall {

/// How dear one guess is: Argon2id (RFC 9106), version 1.3, one lane. What a file asks for may be
/// more, never less. Other values than these are for tests alone.
struct PinCost {
    std::uint64_t memory_kib = 64 * 1024; ///< kibibytes
    std::uint64_t passes = 3;
};

/// The clock that no one can set: CLOCK_BOOTTIME, which also counts while suspended, and the id of
/// the boot it belongs to. The wall clock plays no part in the lock.
struct BootTime {
    std::string boot;
    Span since_boot{0};
};

enum class PinState {
    none,    ///< no PIN was ever set: the desk asks for the first one
    ready,   ///< a PIN may be given
    wait,    ///< not yet: nothing was looked at and nothing counted
    wrong,   ///< it was counted, and is not the PIN
    open,    ///< it is the PIN
    damaged, ///< the file cannot be trusted: the desk stays locked; only forget() helps
};

struct PinAnswer {
    PinState state = PinState::damaged;
    /// Guesses begun since the last right one. After `open` 0; more when that could not be written,
    /// which opens nothing and costs at most a wait.
    int attempts = 0;
    Span wait{0};   ///< wait and wrong: how long until the next guess; 0 when it may come now
    Problems found; ///< damaged: what is wrong with the file
};

/// How long the boot clock must run after so many wrong guesses: nothing for two, then 30 s, 1, 2,
/// 4, 8, 15, 30 minutes and an hour after each further one. At an hour each, half of the PINs of
/// six digits take 57 years.
Span pin_delay(int attempts);

/// The front desk's lock: one file "desk.lock" (mode 0600) in an existing folder. It is a lock on
/// the screen and protects no file of a stolen disk. Nothing of the patient's night depends on it.
///
/// A PIN is 6 to 64 of the digits 0 to 9; another text is refused ("pin_form") and not counted.
/// Each PIN handed over is wiped and emptied before the call returns, whatever comes of it, and
/// stands in no problem's text.
///
/// A guess is counted on disk, synced, before it is hashed: a kill or a power cut gains none. When
/// it cannot be counted it is not looked at. A delay runs on the boot clock; after a restart the
/// whole of it begins again when the lock is first looked at.
///
/// Every call: error (io) as write_file has them ("disk_full", "read_only", "no_place", "io");
/// "busy" while another call, in this process or in another, has the lock; "no_memory" when the
/// hash found none (a guess is counted all the same). One guess takes some tenths of a second: not
/// for the thread that draws.
class DeskLock {
  public:
    explicit DeskLock(std::filesystem::path folder, PinCost cost = {});

    /// none, ready, wait or damaged. Begins the delay of a new boot.
    Result<PinAnswer> look(const BootTime& now);

    /// The first PIN. Error (refused) "pin_set": there is a file already, sound or not.
    Status set_first(std::string& pin);

    /// Any state but ready.
    Result<PinAnswer> check(std::string& pin, const BootTime& now);

    /// As check() of `old_pin`; when that opens, `new_pin` counts from now on. On a problem the old
    /// one does.
    Result<PinAnswer> change(std::string& old_pin, std::string& new_pin, const BootTime& now);

    /// Removes the lock, durably, whatever is in it: the desk has no PIN then. The caller warns,
    /// and decides what else goes. No error when there is none.
    Status forget();

  private:
    std::filesystem::path folder_;
    PinCost cost_;
};

} // namespace evenfall
