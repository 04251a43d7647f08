// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "print/document.h"

#include "print/finish.h"
#include "print/fonts.h"

#include <cairo-pdf.h>
#include <pango/pangocairo.h>

#include <algorithm>
#include <map>
#include <numbers>
#include <set>
#include <tuple>

namespace evenfall::print {
namespace {

constexpr double pi = std::numbers::pi;

cairo_status_t append(void* bytes, const unsigned char* data, unsigned int length)
{
    static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

void round_path(cairo_t* cairo, double x, double y, double width, double height, double radius)
{
    const double r = std::min({radius, width / 2, height / 2});
    cairo_new_sub_path(cairo);
    cairo_arc(cairo, x + width - r, y + r, r, -pi / 2, 0);
    cairo_arc(cairo, x + width - r, y + height - r, r, 0, pi / 2);
    cairo_arc(cairo, x + r, y + height - r, r, pi / 2, pi);
    cairo_arc(cairo, x + r, y + r, r, pi, 3 * pi / 2);
    cairo_close_path(cairo);
}

/// Where a line was wrapped, pango leaves its last space without a glyph. cairo then writes an
/// empty span for it, at which readers stop hearing: so the space gets its glyph back.
void give_space_back(PangoGlyphItem* run, const char* text)
{
    for (int i = 0; i < run->glyphs->num_glyphs; ++i) {
        PangoGlyphInfo& glyph = run->glyphs->glyphs[i];
        if (glyph.glyph != PANGO_GLYPH_EMPTY ||
            text[run->item->offset + run->glyphs->log_clusters[i]] != ' ')
            continue;
        PangoGlyphString* space = pango_glyph_string_new();
        pango_shape(" ", 1, &run->item->analysis, space);
        if (space->num_glyphs == 1)
            glyph.glyph = space->glyphs[0].glyph;
        pango_glyph_string_free(space);
    }
}

/// Marks of direction (U+2066 to U+2069) have done their work once the line is laid out. In the
/// text of the page each would be a word of its own, at which readers stop hearing.
bool is_mark(const char* text)
{
    return text[0] == '\xE2' && text[1] == '\x81' && text[2] >= '\xA6' && text[2] <= '\xA9';
}
constexpr int mark_length = 3;

double width_of(const PangoGlyphItem* item)
{
    return static_cast<double>(pango_glyph_string_get_width(item->glyphs)) / PANGO_SCALE;
}

/// Draws a run piece by piece, without the marks in it. Takes the item.
void show_run(cairo_t* cairo, const char* text, PangoGlyphItem* item, double x, double baseline)
{
    const bool backward = item->item->analysis.level % 2 == 1;
    while (item) {
        const char* begin = text + item->item->offset;
        int at = 0;
        while (at < item->item->length && !is_mark(begin + at))
            ++at;
        PangoGlyphItem* rest = nullptr;
        const int cut = at == 0 ? mark_length : at;
        if (cut < item->item->length) {
            PangoGlyphItem* first = pango_glyph_item_split(item, text, cut);
            rest = item;
            item = first;
        }
        const double here = backward && rest ? x + width_of(rest) : x;
        if (at > 0) {
            cairo_move_to(cairo, here, baseline);
            pango_cairo_show_glyph_item(cairo, text, item);
        }
        if (!backward)
            x += width_of(item);
        pango_glyph_item_free(item);
        item = rest;
    }
}

/// Runs come in the order of the text, not of their places: so they are heard.
void show(cairo_t* cairo, PangoLayout* layout, double x, double y)
{
    struct Run {
        PangoGlyphItem* item;
        double x, baseline;
    };
    std::vector<Run> runs;
    const char* text = pango_layout_get_text(layout);
    PangoLayoutIter* at = pango_layout_get_iter(layout);
    do {
        PangoLayoutRun* run = pango_layout_iter_get_run_readonly(at);
        if (!run)
            continue;
        PangoRectangle place;
        pango_layout_iter_get_run_extents(at, nullptr, &place);
        PangoGlyphItem* copy = pango_glyph_item_copy(run);
        give_space_back(copy, text);
        runs.push_back({copy, x + static_cast<double>(place.x) / PANGO_SCALE,
                        y + static_cast<double>(pango_layout_iter_get_baseline(at)) / PANGO_SCALE});
    } while (pango_layout_iter_next_run(at));
    pango_layout_iter_free(at);
    std::sort(runs.begin(), runs.end(), [](const Run& first, const Run& second) {
        return first.item->item->offset < second.item->item->offset;
    });
    for (const Run& run : runs)
        show_run(cairo, text, run.item, run.x, run.baseline);
}

void set_colour(cairo_t* cairo, Colour colour)
{
    cairo_set_source_rgb(cairo, colour.red, colour.green, colour.blue);
}

} // namespace

Size size_of(Paper paper)
{
    // ISO 216: 210 mm x 297 mm, in whole points as printers have it; Letter: 8.5 in x 11 in.
    return paper == Paper::a4 ? Size{595.276, 841.890} : Size{612, 792};
}

struct Document::Inside {
    Paper paper;
    DocumentInfo info;
    std::string bytes;
    cairo_surface_t* surface = nullptr;
    cairo_t* cairo = nullptr;
    PangoContext* context = nullptr;
    PangoLayout* layout = nullptr;
    int rehearsals = 0;
    std::vector<std::string> alternatives;
    std::set<std::string> fonts;
    /// A page is rehearsed many times until everything fits: the same texts, over and over.
    std::map<std::tuple<std::string, double, double, Weight, Align, double>, Extent> measured;

    /// Some scripts have fonts with lines half as high again: then an even leading reads better.
    void set_leading(const Style& style)
    {
        PangoAttrList* attributes = pango_attr_list_copy(pango_layout_get_attributes(layout));
        pango_attr_list_filter(
            attributes, [](PangoAttribute* one, void*) -> gboolean {
                return one->klass->type == PANGO_ATTR_ABSOLUTE_LINE_HEIGHT;
            },
            nullptr);
        if (style.leading > 0)
            pango_attr_list_insert(attributes,
                                   pango_attr_line_height_new_absolute(static_cast<int>(
                                       style.size * style.leading * PANGO_SCALE)));
        pango_layout_set_attributes(layout, attributes);
        pango_attr_list_unref(attributes);
    }

    Extent lay_out(std::string_view text, double width, const Style& style)
    {
        PangoFontDescription* font = pango_font_description_new();
        pango_font_description_set_family_static(font, families);
        pango_font_description_set_weight(font, static_cast<PangoWeight>(style.weight));
        pango_font_description_set_absolute_size(font, style.size * PANGO_SCALE);
        pango_layout_set_font_description(layout, font);
        pango_font_description_free(font);
        pango_layout_set_width(layout, static_cast<int>(width * PANGO_SCALE));
        // pango's left and right are those of the paper; ours are where lines begin and end.
        const bool right = (style.align == Align::right) != info.right_to_left;
        pango_layout_set_alignment(layout, style.align == Align::centre ? PANGO_ALIGN_CENTER
                                           : right                      ? PANGO_ALIGN_RIGHT
                                                                        : PANGO_ALIGN_LEFT);
        set_leading(style);
        // A space before each break: without it words run together for who hears the page.
        std::string spaced;
        for (const char one : text)
            spaced += one == '\n' ? std::string(" \n") : std::string(1, one);
        pango_layout_set_text(layout, spaced.data(), static_cast<int>(spaced.size()));
        PangoRectangle logical;
        pango_layout_get_extents(layout, nullptr, &logical);
        return {static_cast<double>(logical.height) / PANGO_SCALE,
                static_cast<double>(pango_layout_get_baseline(layout)) / PANGO_SCALE,
                static_cast<double>(logical.width) / PANGO_SCALE};
    }
};

Document::Document(Paper paper, DocumentInfo info) : inside_(std::make_unique<Inside>())
{
    Inside& in = *inside_;
    in.paper = paper;
    in.info = std::move(info);
    const Size page = size_of(paper);
    in.surface = cairo_pdf_surface_create_for_stream(append, &in.bytes, page.width, page.height);
    in.cairo = cairo_create(in.surface);

    PangoFontMap* fonts = system_fonts();
    if (!fonts)
        return; // finish() says so
    in.context = pango_font_map_create_context(fonts);
    cairo_font_options_t* options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_antialias(options, CAIRO_ANTIALIAS_GRAY);
    pango_cairo_context_set_font_options(in.context, options);
    cairo_font_options_destroy(options);
    pango_cairo_context_set_resolution(in.context, 72);
    pango_context_set_language(in.context, pango_language_from_string(in.info.language.c_str()));
    pango_context_set_round_glyph_positions(in.context, FALSE);
    if (in.info.right_to_left)
        pango_context_set_base_dir(in.context, PANGO_DIRECTION_RTL);
    in.layout = pango_layout_new(in.context);
    // Digits and Latin letters too begin at the right, with the lines around them.
    if (in.info.right_to_left)
        pango_layout_set_auto_dir(in.layout, FALSE);
    pango_layout_set_wrap(in.layout, PANGO_WRAP_WORD_CHAR);
    PangoAttrList* attributes = pango_attr_list_new();
    // Ligatures would cut the text that a screen reader gets; figures of one width align.
    pango_attr_list_insert(attributes,
                           pango_attr_font_features_new("liga=0, clig=0, calt=0, tnum=1"));
    // A hyphen that nobody wrote would change an id.
    pango_attr_list_insert(attributes, pango_attr_insert_hyphens_new(FALSE));
    pango_layout_set_attributes(in.layout, attributes);
    pango_attr_list_unref(attributes);
    cairo_tag_begin(in.cairo, "Document", nullptr);
}

Document::~Document()
{
    if (inside_->layout)
        g_object_unref(inside_->layout);
    if (inside_->context)
        g_object_unref(inside_->context);
    if (inside_->cairo)
        cairo_destroy(inside_->cairo);
    if (inside_->surface) {
        cairo_surface_finish(inside_->surface);
        cairo_surface_destroy(inside_->surface);
    }
}

Size Document::size() const
{
    return size_of(inside_->paper);
}

bool Document::right_to_left() const
{
    return inside_->info.right_to_left;
}

void Document::next_page()
{
    if (!rehearsing())
        cairo_show_page(inside_->cairo);
}

Extent Document::measure(std::string_view text, double width, const Style& style)
{
    if (!inside_->layout)
        return {};
    const auto key = std::tuple(std::string(text), width, style.size, style.weight, style.align, style.leading);
    const auto found = inside_->measured.find(key);
    if (found != inside_->measured.end())
        return found->second;
    return inside_->measured[key] = inside_->lay_out(text, width, style);
}

Extent Document::text(double x, double y, double width, std::string_view text, const Style& style)
{
    if (rehearsing() || !inside_->layout)
        return measure(text, width, style);
    const Extent extent = inside_->lay_out(text, width, style);
    set_colour(inside_->cairo, style.colour);
    show(inside_->cairo, inside_->layout, x, y);
    add_fonts_of(inside_->layout, inside_->fonts);
    return extent;
}

void Document::line(double x1, double y1, double x2, double y2, double width, Colour colour,
                    const std::vector<double>& dashes)
{
    if (rehearsing())
        return;
    cairo_t* cr = inside_->cairo;
    cairo_save(cr);
    set_colour(cr, colour);
    cairo_set_line_width(cr, width);
    cairo_set_dash(cr, dashes.data(), static_cast<int>(dashes.size()), 0);
    cairo_move_to(cr, x1, y1);
    cairo_line_to(cr, x2, y2);
    cairo_stroke(cr);
    cairo_restore(cr);
}

void Document::fill(double x, double y, double width, double height, Colour colour)
{
    if (rehearsing())
        return;
    set_colour(inside_->cairo, colour);
    cairo_rectangle(inside_->cairo, x, y, width, height);
    cairo_fill(inside_->cairo);
}

void Document::round_box(double x, double y, double width, double height, double radius,
                         double line_width, Colour colour, const std::vector<double>& dashes)
{
    if (rehearsing())
        return;
    cairo_t* cr = inside_->cairo;
    cairo_save(cr);
    set_colour(cr, colour);
    cairo_set_line_width(cr, line_width);
    cairo_set_dash(cr, dashes.data(), static_cast<int>(dashes.size()), 0);
    round_path(cr, x, y, width, height, radius);
    cairo_stroke(cr);
    cairo_restore(cr);
}

void Document::round_fill(double x, double y, double width, double height, double radius,
                          Colour colour)
{
    if (rehearsing())
        return;
    set_colour(inside_->cairo, colour);
    round_path(inside_->cairo, x, y, width, height, radius);
    cairo_fill(inside_->cairo);
}

cairo_t* Document::cairo()
{
    return inside_->cairo;
}

void Document::tagged(const char* tag, const std::function<void()>& body)
{
    begin(tag);
    body();
    end(tag);
}

void Document::begin(const char* tag)
{
    if (!rehearsing())
        cairo_tag_begin(inside_->cairo, tag, nullptr);
}

void Document::end(const char* tag)
{
    if (!rehearsing())
        cairo_tag_end(inside_->cairo, tag);
}

void Document::figure(const std::string& alternative, const std::function<void()>& body)
{
    if (!rehearsing())
        inside_->alternatives.push_back(alternative);
    tagged("Figure", body);
}

void Document::rehearse(const std::function<void()>& body)
{
    ++inside_->rehearsals;
    body();
    --inside_->rehearsals;
}

bool Document::rehearsing() const
{
    return inside_->rehearsals > 0;
}

Result<std::string> Document::finish()
{
    Inside& in = *inside_;
    if (!in.layout)
        return Problem{Fault::io, "no_fonts", "",
                       "no fonts in /usr/share/fonts; right would be the packages fonts-inter and "
                       "fonts-noto-core"};
    cairo_tag_end(in.cairo, "Document");
    cairo_show_page(in.cairo);
    cairo_status_t status = cairo_status(in.cairo);
    cairo_surface_finish(in.surface);
    if (status == CAIRO_STATUS_SUCCESS)
        status = cairo_surface_status(in.surface);
    if (status != CAIRO_STATUS_SUCCESS)
        return Problem{Fault::io, "pdf_not_made", "",
                       std::string("the page could not be drawn: ") +
                           cairo_status_to_string(status)};
    std::string producer = library_versions() + "; fonts:";
    for (const std::string& font : in.fonts)
        producer += " " + font + ",";
    producer.back() = '.';
    return finish_pdf(in.bytes, in.info, producer, in.alternatives);
}

} // namespace evenfall::print
