// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "print/queue.h"

#include <sys/types.h>

#include <chrono>
#include <filesystem>
#include <functional>
#include <string>

namespace evenfall::test {

/// A real print service (CUPS's own program) with a folder and a socket of its own, whose printers write
/// what they get into that folder: "came" is the last document, "told" the words that CUPS gave with it.
/// A printer at "tray:/stuck" has a paper jam until there is a file "cleared".
class PrintServer {
  public:
    /// `folder` is there already, and its path is short enough for a socket.
    explicit PrintServer(std::filesystem::path folder);
    PrintServer(const PrintServer&) = delete;
    PrintServer& operator=(const PrintServer&) = delete;
    ~PrintServer();

    /// Starts it with what printers.conf says; false when it does not answer, and then log() says why.
    bool start(const std::string& printers);
    const print::PrintService& service() const { return service_; }
    std::string log() const;

  private:
    std::filesystem::path folder_;
    print::PrintService service_;
    pid_t running_ = -1;
};

/// Whether it becomes so in that time; asks again and again.
bool within(std::chrono::milliseconds most, const std::function<bool()>& is);

/// "front" (the default one), "still" (stopped, its paper is out), "full" (takes no jobs), "closed" (for
/// somebody else) and "stuck" (a paper jam in the middle of each job).
extern const char* const some_printers;

} // namespace evenfall::test
