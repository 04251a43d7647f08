// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// What the kiosk has of the bus before it needs it: where the buses are, and the way to the module.
#include "display/night_bus.h"

#include <cstdlib>
#include <dlfcn.h>
#include <filesystem>

namespace evenfall {
namespace {

std::string set_in(const char* variable)
{
    const char* value = std::getenv(variable); // NOLINT: nobody sets variables once threads run
    return value ? value : "";
}

std::string socket_address(const std::filesystem::path& socket)
{
    std::error_code error;
    return std::filesystem::is_socket(socket, error) ? "unix:path=" + socket.string() : "";
}

Result<const NightBusModule*> load()
{
    std::error_code error;
    const std::filesystem::path program = std::filesystem::read_symlink("/proc/self/exe", error);
    const std::string file =
        (program.parent_path().parent_path() / "lib" / "libevenfall_display.so").string();
    // Never closed: its libraries keep what they have for as long as the program runs.
    void* library = ::dlopen(file.c_str(), RTLD_NOW | RTLD_LOCAL);
    const void* symbol = library ? ::dlsym(library, night_bus_symbol) : nullptr;
    if (symbol)
        return static_cast<const NightBusModule*>(symbol);
    const char* why = ::dlerror();
    return Problem{Fault::io, "display_not_loaded", "",
                   "what speaks to the system's buses could not be loaded: " +
                       std::string(why ? why : file) +
                       "; right would be that it and its packages are installed"};
}

} // namespace

BusAddresses buses_of_this_system()
{
    BusAddresses found{set_in("DBUS_SYSTEM_BUS_ADDRESS"), set_in("DBUS_SESSION_BUS_ADDRESS")};
    if (found.system.empty())
        found.system = socket_address("/run/dbus/system_bus_socket");
    // Without this the library would start a session bus of its own, which nobody listens on.
    if (const std::string runtime = set_in("XDG_RUNTIME_DIR"); found.session.empty() && !runtime.empty())
        found.session = socket_address(std::filesystem::path(runtime) / "bus");
    return found;
}

Result<const NightBusModule*> load_night_bus()
{
    static const Result<const NightBusModule*> loaded = load();
    return loaded;
}

} // namespace evenfall
