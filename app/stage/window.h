// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "frontdesk/front_desk.h"
#include "kiosk/kiosk.h"

#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QSize>
#include <QStringList>
#include <memory>

namespace evenfall {

/// The kiosk in its window. Whatever QML says against itself is collected: a screen with a warning is
/// not shown as if it were well.
class KioskWindow {
  public:
    /// `kiosk`, and `desk` where there is one, outlive the window.
    KioskWindow(Kiosk& kiosk, QSize size, FrontDesk* desk = nullptr);
    ~KioskWindow();
    KioskWindow(const KioskWindow&) = delete;
    KioskWindow& operator=(const KioskWindow&) = delete;

    bool ok() const { return window_ != nullptr; }
    QQuickWindow& window() const { return *window_; }
    /// A property of the screen that is up, as text: the labels of its actions.
    QString screen_property(const char* name) const;
    /// Warnings of QML and of Qt Quick since the last call.
    QStringList take_warnings();
    /// Lets bindings, layouts and pictures settle.
    void settle() const;

  private:
    QStringList warnings_;
    std::unique_ptr<QQmlApplicationEngine> engine_;
    QQuickWindow* window_ = nullptr;
};

} // namespace evenfall
