// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <QtQuick/QQuickImageProvider>

namespace stage {

/// Pictures for the stage. `image://figure/ID?tone=dark&parts=chest:done,abdomen:current`
/// is composed by the app's own figure library where ID exists; else a plain placeholder is drawn
/// that carries the id.
class FigureForTests : public QQuickImageProvider {
  public:
    FigureForTests() : QQuickImageProvider(QQuickImageProvider::Image) {}
    QImage requestImage(const QString& id, QSize* size, const QSize& requested) override;
};

} // namespace stage
