// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "support/print_service.h"

#include <csignal>
#include <fcntl.h>
#include <fstream>
#include <sstream>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace evenfall::test {
namespace {

namespace fs = std::filesystem;
using namespace std::chrono_literals;

constexpr const char* service_program = "/usr/sbin/cupsd";

void write(const fs::path& path, const std::string& text)
{
    std::ofstream(path, std::ios::binary) << text;
}

std::string read(const fs::path& path)
{
    std::ostringstream out;
    out << std::ifstream(path, std::ios::binary).rdbuf();
    return out.str();
}

/// Where a printer sends its pages: CUPS runs it for each job. It keeps the bytes and what it was
/// told, for "stuck" only once somebody has cleared the paper.
constexpr const char* tray = R"(#!/bin/sh
[ $# -eq 0 ] && exit 0
place="@FOLDER@"
if [ "$DEVICE_URI" = tray:/stuck ]; then
    echo "STATE: +media-jam-error" >&2
    while [ ! -e "$place/cleared" ]; do sleep 0.1; done
    echo "STATE: -media-jam-error" >&2
fi
printf '%s\n' "$@" >"$place/told"
cat "${6:--}" >"$place/came.part" && mv "$place/came.part" "$place/came"
)";

} // namespace

const char* const some_printers = R"(<DefaultPrinter front>
Info Front desk
Location First floor, left
DeviceURI tray:/front
State Idle
Accepting Yes
OpPolicy default
</DefaultPrinter>
<Printer still>
DeviceURI tray:/still
State Stopped
Reason media-empty-error
Reason toner-low-warning
Reason of-our-own-report
Accepting Yes
OpPolicy default
</Printer>
<Printer full>
DeviceURI tray:/full
State Idle
Accepting No
OpPolicy default
</Printer>
<Printer closed>
DeviceURI tray:/closed
State Idle
Accepting Yes
OpPolicy default
AllowUser somebody-else
</Printer>
<Printer stuck>
DeviceURI tray:/stuck
State Idle
Accepting Yes
OpPolicy default
</Printer>
)";

PrintServer::PrintServer(fs::path folder)
    : folder_(std::move(folder)), service_{(folder_ / "socket").string(), 5s}
{
}

bool PrintServer::start(const std::string& printers)
{
    for (const char* name : {"root", "spool", "tmp", "cache", "state", "bin", "bin/backend"})
        fs::create_directory(folder_ / name);
    fs::create_symlink("/usr/lib/cups/daemon", folder_ / "bin/daemon");
    std::string script = tray;
    script.replace(script.find("@FOLDER@"), 8, folder_.string());
    write(folder_ / "bin/backend/tray", script);
    fs::permissions(folder_ / "bin/backend/tray", fs::perms::owner_all); // runs as who started it
    const std::string at = folder_.string();
    write(folder_ / "root/cups-files.conf",
          "ServerRoot " + at + "/root\nServerBin " + at + "/bin\nRequestRoot " + at +
              "/spool\nTempDir " + at + "/tmp\nCacheDir " + at + "/cache\nStateDir " + at +
              "/state\nAccessLog " + at + "/access\nErrorLog " + at + "/error\nPageLog " + at +
              "/page\nPrintcap " + at + "/printcap\nSandboxing relaxed\n");
    write(folder_ / "root/cupsd.conf",
          "Listen " + service_.server +
              "\nLogLevel info\nBrowsing No\nWebInterface No\nDefaultAuthType None\n"
              "<Location />\nOrder deny,allow\nAllow all\n</Location>\n"
              "<Policy default>\nJobPrivateAccess all\nJobPrivateValues none\n"
              "<Limit All>\nOrder deny,allow\nAllow all\n</Limit>\n</Policy>\n");
    write(folder_ / "root/printers.conf", printers);
    const std::string config = at + "/root/cupsd.conf", files = at + "/root/cups-files.conf",
                      out = at + "/service.out";
    running_ = ::fork();
    if (running_ == 0) {
        const int to = ::open(out.c_str(), O_WRONLY | O_CREAT, 0600);
        ::dup2(to, 1);
        ::dup2(to, 2);
        ::execl(service_program, service_program, "-f", "-c", config.c_str(), "-s", files.c_str(), nullptr);
        ::_exit(127);
    }
    return within(20s, [&] {
        const auto found = print::printers(service_);
        return found || found.problems()[0].code == "no_printer";
    });
}

std::string PrintServer::log() const
{
    if (!fs::exists(service_program))
        return "no /usr/sbin/cupsd: install the package cups-daemon";
    return read(folder_ / "service.out") + read(folder_ / "error");
}

PrintServer::~PrintServer()
{
    if (running_ <= 0)
        return;
    ::kill(running_, SIGTERM);
    if (!within(5s, [&] { return ::waitpid(running_, nullptr, WNOHANG) == running_; })) {
        ::kill(running_, SIGKILL);
        ::waitpid(running_, nullptr, 0);
    }
}

bool within(std::chrono::milliseconds most, const std::function<bool()>& is)
{
    const auto until = std::chrono::steady_clock::now() + most;
    while (std::chrono::steady_clock::now() < until) {
        if (is())
            return true;
        std::this_thread::sleep_for(50ms);
    }
    return is();
}

} // namespace evenfall::test
