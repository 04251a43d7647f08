// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "print/preview.h"

#include <poppler-document.h>
#include <poppler-global.h>
#include <poppler-image.h>
#include <poppler-page-renderer.h>
#include <poppler-page.h>

#include <cmath>
#include <memory>
#include <string>

namespace evenfall::print {
namespace {

using Pdf = std::unique_ptr<poppler::document>;

Result<Pdf> open(std::string_view bytes)
{
    // What poppler finds wrong comes back as a problem, not on standard error.
    poppler::set_debug_error_function([](const std::string&, void*) {}, nullptr);
    Pdf out(poppler::document::load_from_raw_data(bytes.data(), static_cast<int>(bytes.size())));
    if (!out || out->is_locked() || out->pages() < 1)
        return Problem{Fault::refused, "not_pdf", "",
                       "what was to be shown is not a PDF with pages"};
    return out;
}

} // namespace

Result<int> page_count(std::string_view pdf)
{
    const Result<Pdf> document = open(pdf);
    if (!document)
        return document.problems();
    return (*document)->pages();
}

Result<PagePicture> page_picture(std::string_view pdf, int page, int width)
{
    if (width < 1 || width > widest_preview)
        return Problem{Fault::refused, "bad_width", "",
                       "a page cannot be shown " + std::to_string(width) +
                           " pixels wide; right would be 1 to " + std::to_string(widest_preview)};
    const Result<Pdf> document = open(pdf);
    if (!document)
        return document.problems();
    const int count = (*document)->pages();
    if (page < 0 || page >= count)
        return Problem{Fault::refused, "no_page", "",
                       "there is no page " + std::to_string(page + 1) + "; right would be 1 to " +
                           std::to_string(count)};
    const Problem failed{Fault::io, "page_not_drawn", "",
                         "page " + std::to_string(page + 1) + " could not be drawn"};
    const std::unique_ptr<poppler::page> sheet((*document)->create_page(page));
    if (!sheet)
        return failed;
    const poppler::rectf paper = sheet->page_rect();
    if (!(paper.width() > 0) || !(paper.height() > 0))
        return failed;
    const double scale = width / paper.width();
    const double height = std::round(paper.height() * scale);
    if (height < 1 || height > 4.0 * widest_preview)
        return failed;

    poppler::page_renderer renderer;
    renderer.set_render_hint(poppler::page_renderer::antialiasing);
    renderer.set_render_hint(poppler::page_renderer::text_antialiasing);
    renderer.set_image_format(poppler::image::format_rgb24);
    renderer.set_paper_color(0xffffffff);
    const double dpi = 72 * scale; // a point is 1/72 inch
    const poppler::image image =
        renderer.render_page(sheet.get(), dpi, dpi, 0, 0, width, static_cast<int>(height));
    if (!image.is_valid() || image.format() != poppler::image::format_rgb24 ||
        image.width() != width || image.height() != static_cast<int>(height))
        return failed;

    PagePicture out;
    out.width = image.width();
    out.height = image.height();
    out.rgba.reserve(static_cast<std::size_t>(out.width) * static_cast<std::size_t>(out.height) *
                     4);
    for (int y = 0; y < out.height; ++y) {
        const char* row =
            image.const_data() + static_cast<std::ptrdiff_t>(y) * image.bytes_per_row();
        for (int x = 0; x < out.width; ++x) {
            for (int channel = 0; channel < 3; ++channel)
                out.rgba.push_back(static_cast<std::uint8_t>(row[3 * x + channel]));
            out.rgba.push_back(255);
        }
    }
    return out;
}

} // namespace evenfall::print
