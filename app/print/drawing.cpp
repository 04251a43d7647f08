// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "print/drawing.h"

#include <cairo.h>
#include <librsvg/rsvg.h>

#include <algorithm>

namespace evenfall::print {
namespace {

Problem problem_of(GError* error) {
    std::string text = "a figure could not be drawn: ";
    text += error ? error->message : "unknown reason";
    if (error)
        g_error_free(error);
    return {Fault::io, "figure_not_drawn", "", text};
}

} // namespace

struct Drawing::Inside {
    RsvgHandle* handle = nullptr;
    RsvgRectangle seen{}; ///< in units of the drawing
    double width = 0, height = 0;
    ~Inside() {
        if (handle)
            g_object_unref(handle);
    }
};

Drawing::Drawing(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Drawing::Drawing(Drawing&&) noexcept = default;
Drawing::~Drawing() = default;

Result<Drawing> Drawing::read(const std::string& svg) {
    auto inside = std::make_unique<Inside>();
    GError* error = nullptr;
    inside->handle =
        rsvg_handle_new_from_data(reinterpret_cast<const guint8*>(svg.data()), svg.size(), &error);
    if (!inside->handle)
        return problem_of(error);
    gboolean has_box = FALSE;
    RsvgRectangle box{};
    rsvg_handle_get_intrinsic_dimensions(inside->handle, nullptr, nullptr, nullptr, nullptr,
                                         &has_box, &box);
    if (!has_box || box.width <= 0 || box.height <= 0)
        return Problem{Fault::refused, "figure_without_size", "", "a figure has no viewBox"};
    inside->width = box.width;
    inside->height = box.height;
    if (!rsvg_handle_get_geometry_for_layer(inside->handle, nullptr, &box, &inside->seen, nullptr,
                                            &error))
        return problem_of(error);
    // What is drawn over the edge of the page is not seen.
    RsvgRectangle& seen = inside->seen;
    const double right = std::min(seen.x + seen.width, box.width),
                 bottom = std::min(seen.y + seen.height, box.height);
    seen.x = std::max(seen.x, 0.0);
    seen.y = std::max(seen.y, 0.0);
    seen.width = std::max(right - seen.x, 1.0);
    seen.height = std::max(bottom - seen.y, 1.0);
    return Drawing(std::move(inside));
}

double Drawing::aspect() const {
    return inside_->seen.width / inside_->seen.height;
}

Status Drawing::draw(cairo_t* cairo, double x, double y, double width, double height) const {
    const RsvgRectangle& seen = inside_->seen;
    const double scale = std::min(width / seen.width, height / seen.height);
    cairo_save(cairo);
    cairo_translate(cairo, x + (width - seen.width * scale) / 2,
                    y + (height - seen.height * scale) / 2);
    cairo_rectangle(cairo, 0, 0, seen.width * scale, seen.height * scale);
    cairo_clip(cairo);
    cairo_scale(cairo, scale, scale);
    cairo_translate(cairo, -seen.x, -seen.y);
    const RsvgRectangle whole{0, 0, inside_->width, inside_->height};
    GError* error = nullptr;
    const bool drawn = rsvg_handle_render_document(inside_->handle, cairo, &whole, &error) != FALSE;
    cairo_restore(cairo);
    if (!drawn)
        return problem_of(error);
    return Done{};
}

} // namespace evenfall::print
