// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"
#include "print/document.h"

#include <array>
#include <chrono>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall::print {

/// Keywords that printers give for their state (printer-state-reasons, RFC 8011, 5.4.12; "offline" is
/// CUPS's own), without their severity. Each has its words in every language (desk.printer.<keyword>).
inline constexpr std::array printer_reasons{
    "media-empty",        "media-needed",      "media-low",       "media-jam",
    "input-tray-missing", "output-area-full",  "door-open",       "cover-open",
    "interlock-open",     "toner-empty",       "toner-low",       "marker-supply-empty",
    "marker-supply-low",  "paused",            "offline",         "connecting-to-device",
    "timed-out",          "shutdown",          "spool-area-full", "other",
};

/// What a printer says about itself that someone can do something about, such as paper that is out.
struct PrinterReason {
    enum class Severity { report, warning, error };
    std::string id; ///< one of printer_reasons; "other" for a keyword that is not among them
    Severity severity = Severity::error;
    bool operator==(const PrinterReason&) const = default;
};

struct Printer {
    enum class State { idle, printing, stopped };
    std::string name;        ///< what print_pdf takes
    std::string description; ///< for people; may be empty
    std::string location;    ///< where it stands; may be empty
    bool is_default = false;
    State state = State::idle;
    bool accepting = true; ///< takes new jobs
    std::vector<PrinterReason> reasons;
    bool usable() const { return accepting && state != State::stopped; }
};

struct JobState {
    enum class State { waiting, held, printing, stopped, cancelled, aborted, printed };
    State state = State::waiting;
    /// Of the printer, while the job is not over: what it waits for.
    std::vector<PrinterReason> reasons;
    bool over() const { return state >= State::cancelled; }
};

/// The title of every job. It is seen in lists of jobs and on panels of printers, by others than
/// the person whose sheet it is: so it has neither a name nor a study code, and cannot be given
/// one.
inline constexpr const char* job_title = "Evenfall";

inline constexpr int most_copies = 99;

/// Where the machine's print service (CUPS, by IPP: RFC 8010 and 8011) is, and for how long it is
/// waited for. `server` is a host, "host:port" or the path of a socket; empty is the one that the
/// machine is set to.
struct PrintService {
    std::string server = {};
    std::chrono::milliseconds patience = std::chrono::seconds(5);
};

// Each call connects anew, asks, and is over within `patience` when the service hangs. They may be
// used from any thread, and should be from one that may wait. Problems, with a text for staff:
// - `no_print_service` (io): nothing answers there
// - `no_printer` (refused): no printer of that name, or none at all
// - `printer_stopped` (refused): it is stopped, and why (keywords); nothing was sent, so that nothing is
//   printed later when nobody stands there
// - `not_accepted` (refused): the queue takes no jobs, or refused this one, and what it said
// - `no_job` (refused): the service does not know the job (any more)
// - `bad_copies`, `not_pdf` (refused): what was to be printed
// - `no_print_answer` (io): the service stopped answering, or said something that is no answer

/// In the order of the service. No printer at all is `no_printer`, not an empty list.
Result<std::vector<Printer>> printers(const PrintService& service = {});

/// Hands a finished PDF to a printer and gives back the job's id. `paper` is what it was made for;
/// nothing is scaled, so that 14 pt stays 14 pt. 1 to most_copies copies.
Result<long> print_pdf(std::string_view pdf, const std::string& printer, Paper paper,
                       int copies = 1, const PrintService& service = {});

Result<JobState> job_state(const std::string& printer, long job, const PrintService& service = {});

} // namespace evenfall::print
