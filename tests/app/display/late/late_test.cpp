// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// QtDBus comes with the display's module when the evening begins. A program of its own, which links
// no Qt.
#include "display/night_display.h"
#include "display/power.h"

#include <gtest/gtest.h>

#include <atomic>
#include <fstream>
#include <thread>

namespace evenfall {
namespace {

bool loaded(const std::string& library)
{
    std::ifstream maps("/proc/self/maps");
    for (std::string line; std::getline(maps, line);)
        if (line.find("/" + library) != std::string::npos)
            return true;
    return false;
}

// One test, for what is loaded stays: the order of its two halves counts.
TEST(DisplayModule, ComesWithTheEveningAndNotBefore)
{
    std::atomic<int> lines{0};
    NightDisplay::Settings settings;
    settings.data = "/nowhere";
    settings.backlights = "/nowhere";
    settings.buses = {"unix:path=/nowhere/bus", "unix:path=/nowhere/bus"};
    settings.settle = std::chrono::milliseconds(0);
    settings.log = [&](const std::string&) { ++lines; };
    NightDisplay display(settings);
    display.follow(NightDisplay::Stretch::rest);
    EXPECT_FALSE(display.can_dim());
    power();
    for (const char* one : {"libevenfall_display.so", "libQt6DBus.so", "libQt6Core.so"})
        EXPECT_FALSE(loaded(one)) << one;
    display.follow(NightDisplay::Stretch::evening);
    for (int tries = 0; tries < 2000 && lines < 2; ++tries)
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
    EXPECT_EQ(lines.load(), 2) << "sleep and screen saver";
    for (const char* one : {"libevenfall_display.so", "libQt6DBus.so", "libQt6Core.so"})
        EXPECT_TRUE(loaded(one)) << one;
}

} // namespace
} // namespace evenfall
