// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "kiosk/kiosk.h"

#include <gtest/gtest.h>
#include <memory>

/// The demo visit with reading aloud, over a journal in memory, with the module and the voices that were
/// built.
struct KioskThatSounds {
    explicit KioskThatSounds(const QString& language = QStringLiteral("en"), evenfall::Span before_start = std::chrono::hours(-1))
    {
        using namespace evenfall;
        const std::filesystem::path assets = EVENFALL_SOURCE_DIR "/assets", built = EVENFALL_BINARY_DIR;
        Result<VisitWithKit> visit = load_visit(assets / "visits" / "demo.json", {});
        EXPECT_TRUE(visit.ok());
        visit->visit.options.narration = true;
        clock = std::make_shared<SimulatedClock>(Instant(std::chrono::sys_days(std::chrono::year(2026) / 10 / 31) + std::chrono::hours(18)));
        const auto open = [this, visit = *visit]() -> Result<std::unique_ptr<Session>> { return Session::begin({visit, make_memory_journal(), {}}, clock); };
        {
            // When the evening should begin is the plan's business: the clock is set from it.
            const Result<std::unique_ptr<Session>> session = open();
            EXPECT_TRUE(session.ok());
            clock->reach((*session)->planned_start() - before_start);
        }
        Kiosk::Settings settings;
        settings.language = language;
        settings.sound = {media_from(built / "lib" / "evenfall" / "libevenfall_media.so"), {built / "voice"}, assets / "sounds"};
        kiosk = std::make_unique<Kiosk>(open, settings);
    }
    std::shared_ptr<evenfall::SimulatedClock> clock;
    std::unique_ptr<evenfall::Kiosk> kiosk;
};
