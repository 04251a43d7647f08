// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The module that speaks D-Bus, with QtDBus. Loaded when it is first needed.
#include "display/night_bus.h"

#include <QDBusConnection>
#include <QDBusError>
#include <QDBusMessage>
#include <QDBusUnixFileDescriptor>
#include <array>
#include <atomic>
#include <optional>

namespace evenfall {
namespace {

// For a list such as that of systemd-inhibit(1): nothing about a patient or a study.
constexpr const char* who = "Evenfall";
constexpr const char* why = "The pages for the evening and the night are in use";

/// One bus, connected at the first call and again after it was lost.
class Bus {
  public:
    Bus(std::string what, const std::string& address, std::chrono::milliseconds patience)
        : what_(std::move(what)), address_(QString::fromStdString(address)),
          patience_(static_cast<int>(patience.count()))
    {
    }
    ~Bus() { drop(); }
    Bus(const Bus&) = delete;
    Bus& operator=(const Bus&) = delete;

    bool connected() const { return connection_ && connection_->isConnected(); }

    /// The answer, or an error message: also where there is no bus.
    QDBusMessage call(QDBusMessage message)
    {
        if (!connect())
            return QDBusMessage::createError(QDBusError::Disconnected, trouble_);
        QDBusMessage answer = connection_->call(message, QDBus::Block, patience_);
        // Whoever answers after all would hold something for us that we know nothing of; what is held
        // ends with the connection.
        if (silent(answer))
            drop();
        return answer;
    }

    /// False where it is connected and its kind cannot hand over an open file.
    bool passes_files()
    {
        return !connect() || (connection_->connectionCapabilities() &
                              QDBusConnection::UnixFileDescriptorPassing);
    }

    void drop()
    {
        if (!connection_)
            return;
        connection_.reset();
        QDBusConnection::disconnectFromBus(name_);
    }

    /// No answer, as against one that refuses.
    static bool silent(const QDBusMessage& answer)
    {
        const QDBusError::ErrorType type = QDBusError(answer).type();
        return answer.type() == QDBusMessage::ErrorMessage &&
               (type == QDBusError::NoReply || type == QDBusError::Timeout ||
                type == QDBusError::TimedOut || type == QDBusError::Disconnected);
    }

    Problem problem(const QDBusMessage& answer) const
    {
        const std::string text = answer.type() == QDBusMessage::ErrorMessage
                                     ? (answer.errorName() + QStringLiteral(": ") + answer.errorMessage())
                                           .toStdString()
                                     : "an answer of another kind than expected";
        return {Fault::io, silent(answer) ? "no_answer" : "refused", "", what_ + ": " + text};
    }

  private:
    bool connect()
    {
        if (connected())
            return true;
        drop();
        if (address_.isEmpty()) {
            trouble_ = QStringLiteral("there is no such bus here");
            return false;
        }
        // A name of its own each time: Qt gives a name that is known the old connection.
        static std::atomic<int> count{0};
        name_ = QStringLiteral("evenfall-display-%1").arg(++count);
        QDBusConnection made = QDBusConnection::connectToBus(address_, name_);
        if (!made.isConnected()) {
            trouble_ = made.lastError().message();
            QDBusConnection::disconnectFromBus(name_);
            return false;
        }
        connection_ = std::move(made);
        return true;
    }

    std::string what_;
    QString address_, name_, trouble_;
    int patience_;
    std::optional<QDBusConnection> connection_;
};

class QtNightBus final : public NightBus {
  public:
    QtNightBus(const BusAddresses& buses, std::chrono::milliseconds patience)
        : system_("system bus", buses.system, patience), session_("session bus", buses.session, patience)
    {
    }
    ~QtNightBus() override { release(); }

    Status set_brightness(const std::string& backlight, long value) override
    {
        // "auto": the session of the caller, or of its user where the caller is outside of any.
        QDBusMessage message = QDBusMessage::createMethodCall(
            QStringLiteral("org.freedesktop.login1"),
            QStringLiteral("/org/freedesktop/login1/session/auto"),
            QStringLiteral("org.freedesktop.login1.Session"), QStringLiteral("SetBrightness"));
        message << QStringLiteral("backlight") << QString::fromStdString(backlight)
                << static_cast<uint>(value);
        const QDBusMessage answer = system_.call(message);
        if (answer.type() != QDBusMessage::ReplyMessage)
            return system_.problem(answer);
        return Done{};
    }

    Result<std::string> hold_sleep() override
    {
        if (sleep_.isValid())
            return held_;
        if (!system_.passes_files())
            return Problem{Fault::io, "refused", "", "system bus: of a kind that cannot hand over a lock"};
        // Less where more is not granted: outside of a session only "idle" is
        // (the defaults in org.freedesktop.login1.policy of systemd 252).
        constexpr std::array wanted{"sleep:idle:handle-lid-switch", "sleep:idle", "idle"};
        QDBusMessage answer;
        for (const char* what : wanted) {
            QDBusMessage message = QDBusMessage::createMethodCall(
                QStringLiteral("org.freedesktop.login1"), QStringLiteral("/org/freedesktop/login1"),
                QStringLiteral("org.freedesktop.login1.Manager"), QStringLiteral("Inhibit"));
            message << QString::fromLatin1(what) << QString::fromLatin1(who)
                    << QString::fromLatin1(why) << QStringLiteral("block");
            answer = system_.call(message);
            const QVariant first = answer.arguments().value(0);
            if (answer.type() == QDBusMessage::ReplyMessage &&
                first.userType() == qMetaTypeId<QDBusUnixFileDescriptor>()) {
                sleep_ = first.value<QDBusUnixFileDescriptor>();
                held_ = what;
                return held_;
            }
            if (Bus::silent(answer) || QDBusError(answer).type() == QDBusError::ServiceUnknown)
                break;
        }
        return system_.problem(answer);
    }

    Status hold_screen_saver() override
    {
        if (saver_held_ && session_.connected())
            return Done{};
        saver_held_ = false;
        // The second is where older desktops have it.
        QDBusMessage answer;
        for (const char* path : {"/org/freedesktop/ScreenSaver", "/ScreenSaver"}) {
            QDBusMessage message = saver_call(path, "Inhibit");
            message << QString::fromLatin1(who) << QString::fromLatin1(why);
            answer = session_.call(message);
            const QVariant first = answer.arguments().value(0);
            if (answer.type() == QDBusMessage::ReplyMessage && first.userType() == QMetaType::UInt) {
                saver_path_ = path;
                saver_cookie_ = first.toUInt();
                saver_held_ = true;
                return Done{};
            }
            const QDBusError::ErrorType type = QDBusError(answer).type();
            if (type != QDBusError::UnknownObject && type != QDBusError::UnknownMethod &&
                type != QDBusError::UnknownInterface)
                break;
        }
        return session_.problem(answer);
    }

    void release() override
    {
        sleep_ = QDBusUnixFileDescriptor(); // the lock is the open file
        if (saver_held_ && session_.connected()) {
            QDBusMessage message = saver_call(saver_path_, "UnInhibit");
            message << saver_cookie_;
            session_.call(message);
        }
        saver_held_ = false;
        // And whatever may be left ends with the connection.
        session_.drop();
    }

  private:
    static QDBusMessage saver_call(const char* path, const char* method)
    {
        QDBusMessage message = QDBusMessage::createMethodCall(
            QStringLiteral("org.freedesktop.ScreenSaver"), QString::fromLatin1(path),
            QStringLiteral("org.freedesktop.ScreenSaver"), QString::fromLatin1(method));
        message.setAutoStartService(false); // a screen saver that does not run needs no holding off
        return message;
    }

    Bus system_, session_;
    QDBusUnixFileDescriptor sleep_;
    std::string held_;
    bool saver_held_ = false;
    const char* saver_path_ = "";
    uint saver_cookie_ = 0;
};

} // namespace
} // namespace evenfall

extern "C" const evenfall::NightBusModule evenfall_night_bus_module{
    [](const evenfall::BusAddresses& buses,
       std::chrono::milliseconds patience) -> evenfall::NightBus* {
        return new evenfall::QtNightBus(buses, patience);
    },
};
