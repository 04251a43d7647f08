// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <QDBusVirtualObject>
#include <QThread>
#include <filesystem>
#include <functional>
#include <map>
#include <mutex>
#include <string>
#include <sys/types.h>
#include <vector>

namespace evenfall::test {

/// A folder that goes with the test.
class Folder {
  public:
    Folder();
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    const std::filesystem::path& path() const { return path_; }

  private:
    std::filesystem::path path_;
};

void write(const std::filesystem::path& file, const std::string& text);
std::string read(const std::filesystem::path& file);

/// A fake backlight in a fake /sys/class/backlight.
void make_backlight(const std::filesystem::path& folder, const std::string& name, long now, long most,
                    const std::string& type = "raw");

/// True as soon as the condition holds; false after 20 s.
bool within_reason(const std::function<bool()>& condition);

/// A message bus of our own, which starts no service and lets everything through.
class PrivateBus {
  public:
    explicit PrivateBus(const std::filesystem::path& folder);
    ~PrivateBus();
    PrivateBus(const PrivateBus&) = delete;
    PrivateBus& operator=(const PrivateBus&) = delete;
    const std::string& address() const { return address_; }
    void freeze(bool frozen);

  private:
    std::string address_;
    pid_t daemon_ = -1;
};

/// Fakes of the login manager and the screen saver on a bus. Each does what its manner says.
class FakeServices : public QDBusVirtualObject {
  public:
    enum class Manner { answers, refuses, silent };
    struct Manners {
        Manner brightness = Manner::answers;
        Manner saver = Manner::answers;
        std::vector<std::string> locks{"sleep:idle:handle-lid-switch", "sleep:idle", "idle"}; ///< granted
        bool locks_silent = false;
        std::string saver_path = "/org/freedesktop/ScreenSaver";
        int saver_delay_ms = 0;
    };
    FakeServices(const PrivateBus& bus, std::filesystem::path backlights, Manners manners);
    ~FakeServices() override;

    std::vector<std::string> calls() const; ///< in the order they came
    bool sleep_held() const;
    bool saver_held() const;

    QString introspect(const QString&) const override { return {}; }
    bool handleMessage(const QDBusMessage& message, const QDBusConnection& connection) override;

  private:
    const std::filesystem::path backlights_;
    const Manners manners_;
    const QString name_;
    mutable std::mutex mutex_;
    std::vector<std::string> calls_;
    std::vector<int> locks_; ///< our ends of the pipes that were handed out
    std::map<uint, QString> cookies_; ///< and who holds them
    uint last_cookie_ = 40;
    QThread thread_;
};

} // namespace evenfall::test
