// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The night page left alone: nothing is drawn, next to nothing is computed, and the machine is let be.
#include "stage/window.h"

#include <QAbstractEventDispatcher>
#include <QEventLoop>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QTimer>
#include <cstdlib>
#include <gtest/gtest.h>
#include <sys/resource.h>

namespace {

using namespace evenfall;

double cpu_seconds()
{
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    const auto seconds = [](const timeval& time) { return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1e6; };
    return seconds(usage.ru_utime) + seconds(usage.ru_stime);
}

TEST(NightPage, LeftAloneForTwoMinutes_DrawsNothingAndLetsTheMachineSleep)
{
    Result<VisitWithKit> visit = load_visit(EVENFALL_SOURCE_DIR "/assets/visits/demo.json", {});
    ASSERT_TRUE(visit.ok());
    const auto clock = std::make_shared<SimulatedClock>(*resolve(*parse_time("2026-10-31T23:30:00-04:00"), nullptr));
    Kiosk kiosk([&]() { return Session::begin({*visit, make_memory_journal(), {}}, clock); }, Kiosk::Settings{});
    ASSERT_TRUE(kiosk.open_page("night"));
    KioskWindow window(kiosk, {1280, 800});
    ASSERT_TRUE(window.ok());
    kiosk.wake(); // touched once; it goes dark by itself
    window.settle();
    kiosk.let_time_pass();
    window.settle();
    ASSERT_EQ(kiosk.night().face, "dark");

    QEventLoop loop;
    QTimer::singleShot(1000, &loop, &QEventLoop::quit); // what was still on its way to the screen
    loop.exec();
    int frames = 0, wakes = 0;
    QObject::connect(&window.window(), &QQuickWindow::frameSwapped, &window.window(), [&frames] { ++frames; });
    QObject::connect(QAbstractEventDispatcher::instance(), &QAbstractEventDispatcher::awake, &window.window(), [&wakes] { ++wakes; });
    constexpr int seconds = 120;
    QTimer::singleShot(seconds * 1000, &loop, &QEventLoop::quit);
    const double before = cpu_seconds();
    loop.exec();
    const double cpu = cpu_seconds() - before;
    std::cout << seconds << " s on the dark night page: " << frames << " frames, " << cpu << " s CPU, " << wakes
              << " wake-ups (one of them ends the wait)\n";
    EXPECT_EQ(frames, 0);
    EXPECT_LE(cpu, 0.1);
    // At most one a minute, and those that begin and end the wait.
    EXPECT_LE(wakes, seconds / 60 + 2);
}

} // namespace
