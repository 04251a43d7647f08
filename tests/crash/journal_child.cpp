// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "crash/journal_child.h"

#include "journal/journal.h"

#include <chrono>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <string>
#include <unistd.h>

namespace evenfall::test {
namespace {

std::unique_ptr<Journal> open(const std::filesystem::path& file)
{
    Result<Opened> opened = open_journal(file);
    if (!opened) {
        std::fprintf(stderr, "%s\n", describe(file.string(), opened.problems()[0]).c_str());
        std::_Exit(3);
    }
    if (!opened->set_aside.empty())
        std::_Exit(4);
    return std::move(opened.value().journal);
}

} // namespace

void journal_until_killed(const std::filesystem::path& file, int number_of_run, int acknowledge)
{
    const std::string run = std::to_string(number_of_run);
    std::mt19937 random(static_cast<std::mt19937::result_type>(number_of_run));
    std::unique_ptr<Journal> journal = open(file);
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
            std::fprintf(stderr, "%s\n", describe(file.string(), entry.problems()[0]).c_str());
            std::_Exit(5);
        }
        if (::write(acknowledge, &number, sizeof number) != sizeof number)
            std::_Exit(6);
        if (--left == 0) {
            journal.reset();
            journal = open(file);
            left = 1 + random() % 12;
        }
    }
}

} // namespace evenfall::test
