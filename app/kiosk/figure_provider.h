// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "figures/figure.h"

#include <QQuickImageProvider>

namespace evenfall {

/// The drawings built into the program.
FigureStore built_in_figures();

/// image://figure/<id>?tone=dark&build=medium&hand=right&ridges=mark:2&done=a,b&current=c&outline=d
class FigureProvider final : public QQuickImageProvider {
  public:
    FigureProvider();
    /// An unknown figure gives an empty image, and a warning that the tests listen for.
    QImage requestImage(const QString& id, QSize* size, const QSize& requested) override;
    const FigureStore& store() const { return store_; }

  private:
    FigureStore store_;
};

/// The request that an address stands for.
FigureRequest parse_figure_address(const QString& address);

/// Draws one figure at a size in pixels, on a clear ground.
QImage draw_figure(const FigureStore& store, const FigureRequest& request, QSize size);

} // namespace evenfall
