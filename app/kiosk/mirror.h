// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <QImage>
#include <QPointer>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace evenfall {

/// What the camera shows at this moment. Holds the last frame and no other; closing forgets it.
class Mirror : public QObject {
    Q_OBJECT
    QML_ANONYMOUS

  public:
    using QObject::QObject;
    const QImage& frame() const { return frame_; }
    void show(const QImage& frame)
    {
        frame_ = frame;
        emit shown();
    }
    void forget() { show({}); }

  signals:
    void shown();

  private:
    QImage frame_;
};

/// Paints the mirror, left and right as in glass, whole and in its proportions. Painted by hand: the
/// software renderer has no video output.
class MirrorItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(evenfall::Mirror* source READ source WRITE set_source NOTIFY sourceChanged)

  public:
    explicit MirrorItem(QQuickItem* parent = nullptr) : QQuickPaintedItem(parent) {}
    Mirror* source() const { return source_; }
    void set_source(Mirror* source);
    void paint(QPainter* painter) override;

  signals:
    void sourceChanged();

  private:
    QPointer<Mirror> source_;
};

} // namespace evenfall
