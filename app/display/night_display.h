// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"
#include "display/night_bus.h"

#include <chrono>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>

namespace evenfall {

/// What the screen itself does through the night, as far as the system lets us: the backlight goes
/// down at lights out and comes back in the morning, and neither a screen saver nor sleep comes in
/// between.
///
/// The program makes one and tells it, at start and at each change of the kiosk, what is up:
///
///     NightDisplay display({.data = data, .log = say});
///     display.follow(!kiosk.session()               ? NightDisplay::Stretch::rest
///                    : kiosk.tone() == u"night"     ? NightDisplay::Stretch::night
///                    : kiosk.tone() == u"evening"   ? NightDisplay::Stretch::evening
///                                                   : NightDisplay::Stretch::rest);
///
/// That call only leaves a note for a thread of its own and returns; nothing that hangs, is missing or
/// refuses is seen on the page, and the log has a line about it. The thread is started by the first
/// call that has something to do, waits `settle` first, so that the page is up before it works, and
/// then sleeps until the next change. QtDBus comes in with a module that is loaded there.
///
/// What the night lowered stands in a file of the data folder before it is lowered (kept_light.h), so
/// that it comes back at the first rest or evening after a kill, and so that a restart at night does
/// not take the low light for the old one. Brightness that somebody has raised meanwhile is never
/// lowered by bringing it back. Where bringing it back fails it is tried again at each follow().
///
/// Not done: the X server's own blanking, where no desktop listens on the bus (`xset s off -dpms` is
/// for whoever sets up the tablet), and raising a backlight that was off.
class NightDisplay {
  public:
    enum class Stretch {
        rest,    ///< day, front desk, no visit: the light is as it was, nothing is held off
        evening, ///< a kit is being put on: light as it was; no sleep, no screen saver
        night,   ///< least light; no sleep, no screen saver
    };
    struct Settings {
        std::filesystem::path data; ///< the data folder
        /// A line for the log, in English, from a thread of our own; each text once per run.
        std::function<void(const std::string&)> log = {};
        std::filesystem::path backlights = "/sys/class/backlight";
        BusAddresses buses = buses_of_this_system();
        std::chrono::milliseconds settle = std::chrono::seconds(1);
        /// How long a service may take to answer.
        std::chrono::milliseconds patience = std::chrono::seconds(2);
        /// After so long without a follow() in the evening nothing is held off any more: a tablet that
        /// nobody uses must not empty its battery.
        std::chrono::milliseconds evening_hold = std::chrono::minutes(30);
    };
    explicit NightDisplay(Settings settings);
    /// Brings the light back and gives everything back. Waits for that, so with a service that does
    /// not answer for as long as `patience`: end it after the window.
    ~NightDisplay();
    NightDisplay(const NightDisplay&) = delete;
    NightDisplay& operator=(const NightDisplay&) = delete;

    /// What is up now. Returns at once. Saying the same again is cheap.
    void follow(Stretch stretch);

    /// Whether there is a backlight and a way to set it, without setting it. Error (io): why not, for
    /// the log: no_backlight, or read_only where neither the bus nor the file is open to us.
    Status can_dim() const;

  private:
    class Worker;
    std::unique_ptr<Worker> worker_;
};

} // namespace evenfall
