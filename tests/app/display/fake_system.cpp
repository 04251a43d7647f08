// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "app/display/fake_system.h"

#include <QDBusConnection>
#include <QDBusConnectionInterface>
#include <QDBusError>
#include <QDBusMessage>
#include <QDBusUnixFileDescriptor>
#include <algorithm>
#include <array>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <fcntl.h>
#include <fstream>
#include <poll.h>
#include <spawn.h>
#include <sstream>
#include <stdexcept>
#include <sys/socket.h>
#include <sys/un.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

extern char** environ;

namespace evenfall::test {
namespace {

bool listens(const std::string& socket)
{
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    socket.copy(address.sun_path, sizeof address.sun_path - 1);
    const int fd = ::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
    const bool fine = ::connect(fd, reinterpret_cast<sockaddr*>(&address), sizeof address) == 0;
    ::close(fd);
    return fine;
}

std::string joined(const QDBusMessage& message)
{
    std::string line = message.member().toStdString();
    for (const QVariant& argument : message.arguments())
        line += " " + argument.toString().toStdString();
    return line;
}

} // namespace

Folder::Folder()
{
    std::string name = (std::filesystem::temp_directory_path() / "display-XXXXXX").string();
    if (!::mkdtemp(name.data()))
        throw std::runtime_error("no folder for the test");
    path_ = name;
}

Folder::~Folder()
{
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

void write(const std::filesystem::path& file, const std::string& text)
{
    std::filesystem::create_directories(file.parent_path());
    std::ofstream(file) << text;
}

std::string read(const std::filesystem::path& file)
{
    std::ostringstream text;
    text << std::ifstream(file).rdbuf();
    return text.str();
}

void make_backlight(const std::filesystem::path& folder, const std::string& name, long now, long most,
                    const std::string& type)
{
    write(folder / name / "brightness", std::to_string(now) + "\n");
    write(folder / name / "max_brightness", std::to_string(most) + "\n");
    write(folder / name / "type", type + "\n");
}

bool within_reason(const std::function<bool()>& condition)
{
    const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(20);
    while (!condition()) {
        if (std::chrono::steady_clock::now() > end)
            return false;
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
    return true;
}

PrivateBus::PrivateBus(const std::filesystem::path& folder)
{
    static int count = 0;
    const std::string socket = (folder / ("bus-" + std::to_string(++count))).string();
    const std::string config = socket + ".conf";
    write(config, "<!DOCTYPE busconfig PUBLIC \"-//freedesktop//DTD D-Bus Bus Configuration 1.0//EN\" "
                  "\"http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd\">\n"
                  "<busconfig><listen>unix:path=" + socket + "</listen><auth>EXTERNAL</auth>"
                  "<policy context=\"default\"><allow send_destination=\"*\"/><allow own=\"*\"/>"
                  "</policy></busconfig>\n");
    std::string program = "dbus-daemon", nofork = "--nofork", option = "--config-file=" + config;
    std::array<char*, 4> arguments{program.data(), nofork.data(), option.data(), nullptr};
    if (::posix_spawnp(&daemon_, program.c_str(), nullptr, nullptr, arguments.data(), environ) != 0)
        throw std::runtime_error("dbus-daemon cannot be started (package dbus-daemon)");
    if (!within_reason([&] { return listens(socket); }))
        throw std::runtime_error("dbus-daemon does not listen");
    address_ = "unix:path=" + socket;
}

PrivateBus::~PrivateBus()
{
    ::kill(daemon_, SIGKILL);
    ::waitpid(daemon_, nullptr, 0);
}

void PrivateBus::freeze(bool frozen) { ::kill(daemon_, frozen ? SIGSTOP : SIGCONT); }

FakeServices::FakeServices(const PrivateBus& bus, std::filesystem::path backlights, Manners manners)
    : backlights_(std::move(backlights)), manners_(std::move(manners)),
      name_(QString::fromStdString("fake at " + bus.address()))
{
    QDBusConnection connection =
        QDBusConnection::connectToBus(QString::fromStdString(bus.address()), name_);
    // Its events are handled in a thread of its own, for the test itself only waits.
    moveToThread(&thread_);
    thread_.start();
    if (!connection.registerVirtualObject(QStringLiteral("/"), this, QDBusConnection::SubPath) ||
        !connection.registerService(QStringLiteral("org.freedesktop.login1")) ||
        !connection.registerService(QStringLiteral("org.freedesktop.ScreenSaver")))
        throw std::runtime_error(connection.lastError().message().toStdString());
}

FakeServices::~FakeServices()
{
    QDBusConnection(name_).unregisterObject(QStringLiteral("/"), QDBusConnection::UnregisterTree);
    QDBusConnection::disconnectFromBus(name_);
    thread_.quit();
    thread_.wait();
    for (const int fd : locks_)
        ::close(fd);
}

std::vector<std::string> FakeServices::calls() const
{
    const std::lock_guard lock(mutex_);
    return calls_;
}

bool FakeServices::sleep_held() const
{
    const std::lock_guard lock(mutex_);
    return std::any_of(locks_.begin(), locks_.end(), [](int fd) {
        pollfd one{fd, POLLIN, 0};
        return ::poll(&one, 1, 0) == 0; // else its other end was closed
    });
}

bool FakeServices::saver_held() const
{
    std::map<uint, QString> cookies;
    {
        const std::lock_guard lock(mutex_);
        cookies = cookies_;
    }
    // As a real one does, it forgets who has left the bus.
    return std::any_of(cookies.begin(), cookies.end(), [&](const auto& one) {
        return QDBusConnection(name_).interface()->isServiceRegistered(one.second).value();
    });
}

bool FakeServices::handleMessage(const QDBusMessage& message, const QDBusConnection& connection)
{
    const QString member = message.member();
    const QVariantList given = message.arguments();
    const std::lock_guard lock(mutex_);
    calls_.push_back(joined(message));
    const auto refuse = [&](QDBusError::ErrorType type) {
        connection.send(message.createErrorReply(type, QStringLiteral("not for you")));
        return true;
    };
    if (message.path() == QLatin1String("/org/freedesktop/login1/session/auto") &&
        message.interface() == QLatin1String("org.freedesktop.login1.Session") &&
        member == QLatin1String("SetBrightness") && message.signature() == QLatin1String("ssu")) {
        if (manners_.brightness == Manner::silent)
            return true;
        if (manners_.brightness == Manner::refuses)
            return refuse(QDBusError::AccessDenied);
        write(backlights_ / given[1].toString().toStdString() / "brightness",
              std::to_string(given[2].toUInt()) + "\n");
        connection.send(message.createReply());
        return true;
    }
    if (message.path() == QLatin1String("/org/freedesktop/login1") &&
        message.interface() == QLatin1String("org.freedesktop.login1.Manager") &&
        member == QLatin1String("Inhibit") && message.signature() == QLatin1String("ssss")) {
        if (manners_.locks_silent)
            return true;
        const std::string what = given[0].toString().toStdString();
        if (std::find(manners_.locks.begin(), manners_.locks.end(), what) == manners_.locks.end())
            return refuse(QDBusError::AccessDenied);
        std::array<int, 2> ends{};
        if (::pipe2(ends.data(), O_CLOEXEC) != 0)
            return refuse(QDBusError::LimitsExceeded);
        locks_.push_back(ends[0]);
        {
            // The descriptor that goes into the message is a copy; ours must not keep the lock.
            const QDBusUnixFileDescriptor handed(ends[1]);
            connection.send(message.createReply(QVariant::fromValue(handed)));
        }
        ::close(ends[1]);
        return true;
    }
    if (message.path().toStdString() == manners_.saver_path &&
        message.interface() == QLatin1String("org.freedesktop.ScreenSaver")) {
        if (manners_.saver == Manner::silent)
            return true;
        if (manners_.saver == Manner::refuses)
            return refuse(QDBusError::AccessDenied);
        if (member == QLatin1String("Inhibit") && message.signature() == QLatin1String("ss")) {
            std::this_thread::sleep_for(std::chrono::milliseconds(manners_.saver_delay_ms));
            cookies_[++last_cookie_] = message.service();
            connection.send(message.createReply(last_cookie_));
            return true;
        }
        if (member == QLatin1String("UnInhibit") && message.signature() == QLatin1String("u")) {
            cookies_.erase(given[0].toUInt());
            connection.send(message.createReply());
            return true;
        }
    }
    return refuse(QDBusError::UnknownObject);
}

} // namespace evenfall::test
