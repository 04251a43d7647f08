// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Appends to a journal until it is killed: journal_child FILE RUN. After each append has returned, its
// number within this run goes to standard output as four bytes. Now and then the journal is closed and
// opened again, so that a kill can hit that too. Exit status: 3 it could not be opened, 4 it was found
// damaged, 5 an append failed, 6 nobody reads any more.
#include "journal/journal.h"

#include <chrono>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <string>
#include <unistd.h>

using namespace evenfall;

namespace {

std::unique_ptr<Journal> open(const char* file)
{
    Result<Opened> opened = open_journal(file);
    if (!opened) {
        std::fprintf(stderr, "%s\n", describe(file, opened.problems()[0]).c_str());
        std::_Exit(3);
    }
    if (!opened->set_aside.empty())
        std::_Exit(4);
    return std::move(opened.value().journal);
}

} // namespace

int main(int count, char** words)
{
    if (count != 3)
        return 2;
    const std::string run = words[2];
    std::mt19937 random(static_cast<std::mt19937::result_type>(std::atol(words[2])));
    std::unique_ptr<Journal> journal = open(words[1]);
    auto left = 1 + random() % 12;
    for (std::uint32_t number = 1;; ++number) {
        Stamp stamp;
        stamp.utc = Instant(std::chrono::seconds(1793759400 + number));
        stamp.zone = "America/New_York";
        stamp.boot = run;
        stamp.since_boot = std::chrono::seconds(number);
        // Most answers are short; a long comment takes several pages of the file.
        const std::string value = "\"" + std::string(random() % 16 == 0 ? 9000 : 60, 'v') + "\"";
        const Result<Entry> entry = journal->append(stamp, "answer", run + "-" + std::to_string(number), value);
        if (!entry) {
            std::fprintf(stderr, "%s\n", describe(words[1], entry.problems()[0]).c_str());
            std::_Exit(5);
        }
        if (::write(STDOUT_FILENO, &number, sizeof number) != sizeof number)
            std::_Exit(6);
        if (--left == 0) {
            journal.reset();
            journal = open(words[1]);
            left = 1 + random() % 12;
        }
    }
}
