// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <QColor>
#include <QImage>
#include <QJsonObject>
#include <QList>
#include <QQuickItem>
#include <QQuickWindow>
#include <QRectF>
#include <QString>

namespace evenfall {

/// A piece of text as it stands on the screen.
struct SeenText {
    QString text;
    QRectF rect; ///< in image pixels
    double pixel_size = 0;
    bool truncated = false; ///< elided, or clipped by any ancestor
    bool broken = false;    ///< a word is wider than its line, so that it goes on in the next one
    QColor color, background; ///< the background is the commonest pixel within the rect
};

/// Something that can be used, as a screen reader finds it.
struct SeenControl {
    QString name;
    QString role;
    QRectF rect;
    bool enabled = true;
    bool focusable = false;
    QQuickItem* item = nullptr;
};

/// Makes Qt answer accessibility questions without a screen reader: see the note in observer.cpp.
void wake_accessibility();

/// Visible items only, taken from the live item tree and its accessibility interface.
QList<SeenText> seen_texts(const QQuickWindow& window, const QImage& image);
/// With `out_of_sight`, also what is scrolled away (its rect is then empty).
QList<SeenControl> seen_controls(const QQuickWindow& window, bool out_of_sight = false);

/// {"texts": [...], "controls": [...]} as design says for tour.json.
QJsonObject describe_screen(const QQuickWindow& window, const QImage& image);

/// Name of an accessible role in small letters: "button", "statictext", ...
QString role_name(int role);

} // namespace evenfall
