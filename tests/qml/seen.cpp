// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "seen.h"

#include <QtCore/QHash>
#include <QtQml/QQmlProperty>

#include <cmath>

namespace stage {
namespace {

bool shown(const QQuickItem* item) { return item->isVisible() && item->width() > 0 && item->height() > 0; }

Seen look_at(QQuickItem* item) {
    Seen seen;
    seen.item = item;
    seen.rect = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
    seen.in_sight = seen.rect;
    for (QQuickItem* above = item->parentItem(); above != nullptr; above = above->parentItem()) {
        if (above->inherits("QQuickFlickable")) {
            seen.scrolls = true;
        }
        if (above->clip()) {
            seen.in_sight &= above->mapRectToScene(QRectF(0, 0, above->width(), above->height()));
        }
        if (seen.control == nullptr && above->inherits("QQuickAbstractButton")) {
            seen.control = above;
        }
    }
    return seen;
}

void walk(QQuickItem* item, std::vector<Seen>& found, bool (*wanted)(QQuickItem*)) {
    if (!item->isVisible()) {
        return;
    }
    if (shown(item) && wanted(item)) {
        found.push_back(look_at(item));
    }
    for (QQuickItem* child : item->childItems()) {
        walk(child, found, wanted);
    }
}

QQuickItem* first_with(QQuickItem* item, const char* property) {
    if (item->metaObject()->indexOfProperty(property) >= 0) {
        return item;
    }
    for (QQuickItem* child : item->childItems()) {
        if (QQuickItem* found = first_with(child, property)) {
            return found;
        }
    }
    return nullptr;
}

double linear(double channel) {
    // WCAG 2.1, definition of relative luminance (from memory).
    return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

} // namespace

std::vector<Seen> texts(const Stage& stage) {
    std::vector<Seen> found;
    walk(stage.window()->contentItem(), found, [](QQuickItem* item) {
        return item->inherits("QQuickText") && !item->property("text").toString().isEmpty();
    });
    return found;
}

std::vector<Seen> controls(const Stage& stage) {
    std::vector<Seen> found;
    walk(stage.window()->contentItem(), found, [](QQuickItem* item) {
        return item->inherits("QQuickAbstractButton") || item->inherits("QQuickTextEdit");
    });
    return found;
}

QQuickItem* item_with(const Stage& stage, const char* property) {
    return first_with(stage.window()->contentItem(), property);
}

QString called(const Seen& seen) {
    const QString name = seen.item->objectName();
    const QString text = seen.item->property("text").toString();
    return name.isEmpty() ? QStringLiteral("\"%1\"").arg(text) : QStringLiteral("%1 \"%2\"").arg(name, text);
}

QColor ground(const QImage& image, const QRectF& rect) {
    QHash<QRgb, int> count;
    const QRect area = rect.toAlignedRect() & image.rect();
    for (int y = area.top(); y <= area.bottom(); ++y) {
        for (int x = area.left(); x <= area.right(); ++x) {
            ++count[image.pixel(x, y)];
        }
    }
    QRgb best = 0;
    int most = 0;
    for (auto it = count.cbegin(); it != count.cend(); ++it) {
        if (it.value() > most) {
            most = it.value();
            best = it.key();
        }
    }
    return QColor(best);
}

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

double contrast(const QColor& one, const QColor& other) {
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

double millimetres(const Stage& stage, double mm) {
    return mm * std::hypot(stage.window()->width(), stage.window()->height()) / 254.0;
}

} // namespace stage
