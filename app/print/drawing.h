// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"

#include <memory>
#include <string>

typedef struct _cairo cairo_t;

namespace evenfall::print {

/// A drawing in SVG, ready to be drawn as vectors. Its empty edges are cut off: what there is to
/// see fills the place it gets.
class Drawing {
  public:
    /// Refused: not an SVG that librsvg can read.
    static Result<Drawing> read(const std::string& svg);
    Drawing(Drawing&&) noexcept;
    ~Drawing();

    /// Width over height of what there is to see.
    double aspect() const;
    /// In the middle of a place, as large as it goes.
    Status draw(cairo_t* cairo, double x, double y, double width, double height) const;

  private:
    struct Inside;
    explicit Drawing(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

} // namespace evenfall::print
