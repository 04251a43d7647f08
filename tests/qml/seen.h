// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "stage.h"

#include <QtGui/QColor>
#include <QtGui/QImage>

/// What a person would see and reach on a stage: texts and controls, taken from the live item tree.
namespace stage {

struct Seen {
    QQuickItem* item = nullptr;
    QRectF rect;               ///< whole, in window pixels
    QRectF in_sight;           ///< the part no ancestor clips away; empty when scrolled out
    bool scrolls = false;      ///< lies in a Flickable
    QQuickItem* control = nullptr; ///< the button it belongs to, or null
};

/// Items of QML type Text that are visible (their own and every ancestor's `visible`) and not empty.
std::vector<Seen> texts(const Stage& stage);
/// Buttons, tiles and text fields that are visible.
std::vector<Seen> controls(const Stage& stage);
/// The first item, visible or not, that has a property of this name; null when there is none.
QQuickItem* item_with(const Stage& stage, const char* property);
/// "objectName or text" for messages.
QString called(const Seen& seen);

/// The colour that covers most of a rect.
QColor ground(const QImage& image, const QRectF& rect);
/// WCAG 2.1 relative luminance (0..1) and contrast ratio (1..21).
double luminance(const QColor& colour);
double contrast(const QColor& one, const QColor& other);
/// Pixels of so many millimetres, the window being 10 inches in diagonal.
double millimetres(const Stage& stage, double mm);

} // namespace stage
