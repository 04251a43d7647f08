// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "figures/figure.h"
#include "plan/depict.h"

#include <QQuickImageProvider>
#include <optional>

namespace evenfall {

/// The drawings built into the program.
FigureStore built_in_figures();

/// image://figure/<id>?tone=dark&build=medium&hand=right&counts=mark:2&dots=mark&done=a,b&current=c&outline=d
class FigureProvider final : public QQuickImageProvider {
  public:
    FigureProvider() : QQuickImageProvider(Image) {}
    /// An unknown figure gives an empty image, and a warning that the tests listen for.
    QImage requestImage(const QString& id, QSize* size, const QSize& requested) override;

  private:
    const FigureStore& store();
    std::optional<FigureStore> store_; ///< read with the first drawing: the first page shows none
};

/// What follows the "?" of an address for such a drawing; empty if it has no marks and no layers.
QString figure_query(const Depiction& what);

/// The request that an address stands for.
FigureRequest parse_figure_address(const QString& address);

/// Draws one figure at a size in pixels, on a clear ground.
QImage draw_figure(const FigureStore& store, const FigureRequest& request, QSize size);

} // namespace evenfall
