// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/mirror.h"

#include <QPainter>

namespace evenfall {

void MirrorItem::set_source(Mirror* source)
{
    if (source == source_)
        return;
    if (source_)
        disconnect(source_, nullptr, this, nullptr);
    source_ = source;
    if (source_)
        connect(source_, &Mirror::shown, this, [this] { update(); });
    emit sourceChanged();
    update();
}

void MirrorItem::paint(QPainter* painter)
{
    if (!source_ || source_->frame().isNull())
        return;
    const QImage& frame = source_->frame();
    const QSizeF shown = QSizeF(frame.size()).scaled(size(), Qt::KeepAspectRatio);
    painter->setRenderHint(QPainter::SmoothPixmapTransform);
    painter->translate(width() / 2, height() / 2);
    painter->scale(-1, 1);
    painter->drawImage(QRectF(QPointF(-shown.width() / 2, -shown.height() / 2), shown), frame);
}

} // namespace evenfall
