// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "stage/observer.h"

#include <QAccessible>
#include <QHash>
#include <QJsonArray>
#include <QFontMetricsF>
#include <QMetaEnum>
#include <QTextBoundaryFinder>
#include <private/qguiapplication_p.h>
#include <qpa/qplatformaccessibility.h>
#include <qpa/qplatformintegration.h>

namespace evenfall {
namespace {

QRectF scene_rect(const QQuickItem& item) { return item.mapRectToScene(QRectF(0, 0, item.width(), item.height())); }

/// What is left of a rect after every ancestor that clips has cut it.
QRectF clipped_rect(const QQuickItem& item, QRectF rect)
{
    for (const QQuickItem* up = item.parentItem(); up; up = up->parentItem()) {
        if (up->clip())
            rect = rect.intersected(scene_rect(*up));
    }
    return rect;
}

bool shown(const QQuickItem& item)
{
    if (!item.isVisible() || item.width() <= 0 || item.height() <= 0)
        return false;
    for (const QQuickItem* up = &item; up; up = up->parentItem()) {
        if (up->opacity() <= 0.01)
            return false;
    }
    return true;
}

/// A page that scrolls hides what is further down; that is no fault of the text.
bool scrolls(const QQuickItem& item)
{
    for (const QQuickItem* up = item.parentItem(); up; up = up->parentItem()) {
        if (up->inherits("QQuickFlickable"))
            return true;
    }
    return false;
}

void each(QQuickItem* item, const std::function<void(QQuickItem&)>& visit)
{
    if (!item || !shown(*item))
        return;
    visit(*item);
    const QList<QQuickItem*> children = item->childItems();
    for (QQuickItem* child : children)
        each(child, visit);
}

/// Of the pieces between two places where a line may end.
double widest_piece(const QString& text, const QFont& font)
{
    const QFontMetricsF metrics(font);
    QTextBoundaryFinder ends(QTextBoundaryFinder::Line, text);
    double widest = 0;
    for (qsizetype from = 0, to = ends.toNextBoundary(); to > 0; from = to, to = ends.toNextBoundary())
        widest = std::max(widest, metrics.horizontalAdvance(text.sliced(from, to - from).trimmed()));
    return widest;
}

QColor commonest(const QImage& image, const QRectF& rect)
{
    const QRect area = rect.toAlignedRect().intersected(image.rect());
    QHash<QRgb, int> counts;
    for (int y = area.top(); y <= area.bottom(); ++y) {
        for (int x = area.left(); x <= area.right(); ++x)
            ++counts[image.pixel(x, y) | 0xff000000u];
    }
    QRgb best = 0xff000000u;
    int most = 0;
    for (auto one = counts.constBegin(); one != counts.constEnd(); ++one) {
        // Ties are settled by value, so that the same picture gives the same answer.
        if (one.value() > most || (one.value() == most && one.key() < best)) {
            most = one.value();
            best = one.key();
        }
    }
    return QColor::fromRgb(best);
}

QJsonArray rect_json(const QRectF& rect)
{
    const auto tenth = [](double value) { return std::round(value * 10) / 10; };
    return {tenth(rect.x()), tenth(rect.y()), tenth(rect.width()), tenth(rect.height())};
}

bool is_control(QAccessible::Role role)
{
    switch (role) {
    case QAccessible::Button:
    case QAccessible::CheckBox:
    case QAccessible::RadioButton:
    case QAccessible::EditableText:
    case QAccessible::Link:
    case QAccessible::MenuItem:
    case QAccessible::ListItem:
    case QAccessible::PageTab:
    case QAccessible::Slider:
    case QAccessible::SpinBox:
    case QAccessible::ComboBox: return true;
    default: return false;
    }
}

} // namespace

void wake_accessibility()
{
    // Under the offscreen platform nothing asks for accessibility, and Qt Quick then leaves the names
    // of its controls empty.
    if (QPlatformAccessibility* platform = QGuiApplicationPrivate::platformIntegration()->accessibility())
        platform->setActive(true);
}

QList<SeenText> seen_texts(const QQuickWindow& window, const QImage& image)
{
    QList<SeenText> texts;
    each(window.contentItem(), [&](QQuickItem& item) {
        const bool plain = item.inherits("QQuickText");
        if (!plain && !item.inherits("QQuickTextInput") && !item.inherits("QQuickTextEdit"))
            return;
        const QString text = item.property("text").toString();
        if (text.trimmed().isEmpty())
            return;
        const QRectF whole = scene_rect(item);
        const QRectF left = clipped_rect(item, whole).intersected(QRectF(image.rect()));
        if (left.width() < 1 || left.height() < 1)
            return; // scrolled out of sight
        SeenText seen;
        seen.text = text;
        seen.rect = left;
        const QFont font = item.property("font").value<QFont>();
        seen.pixel_size = font.pixelSize();
        const bool cut = left.width() < whole.width() - 1 || left.height() < whole.height() - 1;
        // Padding counts: it may be negative where a script asks for more line height than it needs.
        const double free_width = item.width() - item.property("leftPadding").toDouble() - item.property("rightPadding").toDouble();
        const double free_height = item.height() - item.property("topPadding").toDouble() - item.property("bottomPadding").toDouble();
        // Of a line from the right the blank at its end is counted, which nobody sees.
        const double unseen = text.isRightToLeft() ? QFontMetricsF(font).horizontalAdvance(QLatin1Char(' ')) : 0;
        const bool too_wide = plain && (item.property("contentWidth").toDouble() > free_width + unseen + 1 || item.property("contentHeight").toDouble() > free_height + 1);
        seen.truncated = item.property("truncated").toBool() || too_wide || (cut && !scrolls(item));
        seen.broken = plain && widest_piece(text, font) > free_width + 1;
        seen.color = item.property("color").value<QColor>();
        seen.background = commonest(image, left);
        texts << seen;
    });
    return texts;
}

QList<SeenControl> seen_controls(const QQuickWindow& window, bool out_of_sight)
{
    QList<SeenControl> controls;
    each(window.contentItem(), [&](QQuickItem& item) {
        const QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(&item);
        if (!accessible || !is_control(accessible->role()))
            return;
        const QRectF rect = clipped_rect(item, scene_rect(item));
        if (!out_of_sight && (rect.width() < 1 || rect.height() < 1))
            return;
        SeenControl seen;
        seen.name = accessible->text(QAccessible::Name);
        seen.role = role_name(accessible->role());
        seen.rect = rect;
        seen.enabled = item.isEnabled();
        seen.focusable = item.activeFocusOnTab();
        seen.item = &item;
        controls << seen;
    });
    return controls;
}

QString role_name(int role)
{
    const QMetaEnum roles = QMetaEnum::fromType<QAccessible::Role>();
    return QString::fromLatin1(roles.valueToKey(role)).toLower();
}

QJsonObject describe_screen(const QQuickWindow& window, const QImage& image)
{
    QJsonArray texts, controls;
    for (const SeenText& one : seen_texts(window, image)) {
        texts << QJsonObject{{"text", one.text}, {"rect", rect_json(one.rect)}, {"pixel_size", one.pixel_size},
                             {"truncated", one.truncated}, {"broken", one.broken}, {"color", one.color.name()}, {"background", one.background.name()},
                             {"visible", true}};
    }
    for (const SeenControl& one : seen_controls(window)) {
        controls << QJsonObject{{"name", one.name}, {"role", one.role}, {"rect", rect_json(one.rect)},
                                {"enabled", one.enabled}, {"focusable", one.focusable}};
    }
    return {{"texts", texts}, {"controls", controls}};
}

} // namespace evenfall
