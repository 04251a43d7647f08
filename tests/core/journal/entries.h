// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Stamps of an invented night, for tests of the journal and of what is read from it.
#pragma once

#include "journal/journal.h"

#include <string>
#include <string_view>

namespace evenfall::test {

/// 21:30 on 3 November 2026 in New York.
inline const Instant evening = Instant{std::chrono::sys_days{std::chrono::year{2026} / 11 / 4}} + std::chrono::minutes(150);

/// So many seconds into the evening, by a clock that runs as it should, in one boot.
inline Stamp stamp_at(double seconds, const std::string& boot = "boot-1")
{
    const Span in{static_cast<Span::rep>(seconds * 1e6)};
    return {evening + in, std::chrono::hours(-5), "America/New_York", boot, std::chrono::hours(2) + in};
}

/// A journal in memory, written like a story: minutes into the evening, kind, subject, value.
class Story {
  public:
    Story& tell(double minute, std::string_view kind, std::string_view subject = "", std::string_view value = "")
    {
        return tell(stamp_at(minute * 60), kind, subject, value);
    }
    Story& tell(const Stamp& stamp, std::string_view kind, std::string_view subject = "", std::string_view value = "")
    {
        (void)journal_->append(stamp, kind, subject, value);
        return *this;
    }
    const std::vector<Entry>& entries() const { return journal_->entries(); }

  private:
    std::unique_ptr<Journal> journal_ = make_memory_journal();
};

/// The moment so many minutes into the evening.
inline Instant minute(double n) { return evening + Span(static_cast<Span::rep>(n * 60e6)); }

} // namespace evenfall::test
