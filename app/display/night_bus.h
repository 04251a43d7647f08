// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"

#include <chrono>
#include <string>

namespace evenfall {

/// Where the buses are, as D-Bus addresses; empty: there is none.
struct BusAddresses {
    std::string system;
    std::string session;
    bool any() const { return !system.empty() || !session.empty(); }
};

/// Those of the environment, else the usual sockets where they are there. Starts no bus.
BusAddresses buses_of_this_system();

/// What the display asks of other programs over D-Bus. Every call may take as long as the patience it
/// was made with, and longer where the bus itself hangs: never call it from the thread that draws.
/// One thread only. Destroying it gives everything back.
class NightBus {
  public:
    virtual ~NightBus() = default;

    /// org.freedesktop.login1.Session.SetBrightness of this seat's session (login1(5)).
    /// Error (io): no bus, no service, no answer, refused.
    virtual Status set_brightness(const std::string& backlight, long value) = 0;

    /// Keeps the system from going to sleep, from calling itself idle and from acting on its lid
    /// (org.freedesktop.login1.Manager.Inhibit). Where not all of it is granted, what is; the value
    /// names it. Held until release(). Error (io): as above.
    virtual Result<std::string> hold_sleep() = 0;

    /// Keeps the desktop's screen saver away (org.freedesktop.ScreenSaver.Inhibit) until release().
    /// Error (io): as above.
    virtual Status hold_screen_saver() = 0;

    /// Gives both back, whatever was granted.
    virtual void release() = 0;
};

/// What the module (libevenfall_display.so) has; the kiosk itself links no QtDBus. Module and program
/// are built together: there is no promise between versions.
struct NightBusModule {
    /// A new one; whoever asks deletes it. Connects to nothing yet.
    NightBus* (*make)(const BusAddresses& buses, std::chrono::milliseconds patience);
};

/// The one symbol of the module that is looked for.
inline constexpr const char* night_bus_symbol = "evenfall_night_bus_module";

/// Loads the module at the first call. Error (io): it is not installed.
Result<const NightBusModule*> load_night_bus();

} // namespace evenfall

extern "C" const evenfall::NightBusModule evenfall_night_bus_module;
