// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <QtCore/QJsonObject>
#include <QtCore/QSize>
#include <QtCore/QStringList>
#include <QtQml/QQmlEngine>
#include <QtQuick/QQuickItem>
#include <QtQuick/QQuickWindow>

#include <memory>
#include <vector>

/// A stage for single screens: loads one sample (screen, tone, values) into a window, offscreen.
namespace stage {

/// tests/qml/samples/*.json, in the order of their names. `name` is the file name without ".json".
struct Sample {
    QString name;
    QJsonObject json;
};
std::vector<Sample> samples();

struct Look {
    QSize size{1280, 800};
    double text_scale = 1.0;
    QString language = QStringLiteral("en");
    bool right_to_left() const { return language == QLatin1String("ar"); }
};

/// One screen in a window. Warnings of the engine and of Qt since it was made are kept.
class Stage {
  public:
    Stage(const Sample& sample, const Look& look);
    ~Stage();
    Stage(const Stage&) = delete;
    Stage& operator=(const Stage&) = delete;

    QQuickWindow* window() const { return window_; }
    /// The screen itself; null when it could not be made (see warnings).
    QQuickItem* screen() const { return screen_; }
    QStringList warnings() const;
    /// Lets layout, loaders and queued signals settle.
    void settle() const;

  private:
    QQmlEngine engine_;
    std::unique_ptr<QObject> root_;
    QQuickWindow* window_ = nullptr;
    QQuickItem* screen_ = nullptr;
};

/// Prepares the process: offscreen, software renderer, accessibility on, fonts. Call before any
/// Stage is made.
void prepare();
/// Values of a sample, with the words of its "ar" or "es" block laid over for that language.
QVariantMap values(const Sample& sample, const QString& language);

} // namespace stage
