// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "print/night_figure.h"

#include "record/summary.h"

#include <algorithm>
#include <cairo.h>
#include <cstdio>

namespace evenfall::print {
namespace {

constexpr double label_width = 66;
constexpr double thin_height = 3.5;
constexpr double axis_height = 12;
constexpr double change_height = 9;
constexpr double closest_labels = 25;

constexpr Colour on_colour{0.0, 0.447, 0.698};    // Okabe & Ito, #0072B2
constexpr Colour asleep_colour{0.22, 0.25, 0.36}; // darker, so that it differs in grey too
constexpr Colour span_colour{0.42, 0.45, 0.50};

const Style small_text{7.5, Weight::regular, ink, Align::left};
const Style small_grey{6.8, Weight::regular, grey_ink, Align::left};

Colour mixed(Colour colour, double level)
{
    const auto part = [&](double one) { return 1 - (1 - one) * level; };
    return {part(colour.red), part(colour.green), part(colour.blue)};
}

/// From one fullness to another, with strokes over it, so that it is no smudge of the printer.
void fade(Document& page, double x, double y, double width, double height, Colour colour,
          double from, double to)
{
    if (page.rehearsing() || width <= 0)
        return;
    cairo_t* cr = page.cairo();
    cairo_save(cr);
    cairo_rectangle(cr, x, y, width, height);
    cairo_clip(cr);
    cairo_pattern_t* pattern = cairo_pattern_create_linear(x, 0, x + width, 0);
    const auto stop = [&](double at, double level) {
        const Colour c = mixed(colour, level);
        cairo_pattern_add_color_stop_rgb(pattern, at, c.red, c.green, c.blue);
    };
    stop(0, from);
    stop(1, to);
    cairo_set_source(cr, pattern);
    cairo_paint(cr);
    cairo_pattern_destroy(pattern);
    // Strokes that are seen on full and on empty: dark ones, with white ones beside them.
    cairo_set_line_width(cr, 0.7);
    for (double at = x - height; at < x + width + height; at += 4) {
        cairo_set_source_rgb(cr, 1, 1, 1);
        cairo_move_to(cr, at, y + height);
        cairo_line_to(cr, at + height, y);
        cairo_stroke(cr);
        cairo_set_source_rgb(cr, colour.red, colour.green, colour.blue);
        cairo_move_to(cr, at + 1, y + height);
        cairo_line_to(cr, at + 1 + height, y);
        cairo_stroke(cr);
    }
    cairo_restore(cr);
}

class Drawing {
  public:
    Drawing(Document& page, double x, double y, double width, const NightPicture& night, bool dense)
        : page_(page), night_(night), lane_pitch_(dense ? 10.5 : 13),
          bar_height_(dense ? 7.2 : 8.5), x_(x), left_(x + label_width), right_(x + width), y_(y),
          top_(y)
    {}

    double draw()
    {
        hours();
        thin_lane("recording", night_.recording_from, night_.recording_to);
        thin_lane("lights out to on", night_.lights_out, night_.lights_on);
        for (const PictureLane& lane : night_.lanes)
            full_lane(lane);
        window();
        return axis() - top_;
    }

  private:
    Document& page_;
    const NightPicture& night_;
    double lane_pitch_, bar_height_;
    double x_, left_, right_, y_, top_;

    double at(Instant when) const
    {
        const double share = std::chrono::duration<double>(when - night_.from) /
                             std::chrono::duration<double>(night_.to - night_.from);
        return left_ + (right_ - left_) * std::clamp(share, 0.0, 1.0);
    }

    double lanes_height() const
    {
        std::size_t lanes = night_.lanes.size();
        lanes += night_.recording_from || night_.recording_to ? 1 : 0;
        lanes += night_.lights_out || night_.lights_on ? 1 : 0;
        return static_cast<double>(lanes) * lane_pitch_;
    }

    void hours()
    {
        for (const PictureTick& tick : night_.ticks)
            page_.line(at(tick.at), top_, at(tick.at), top_ + lanes_height() + 2,
                       tick.clock_change ? 1.4 : 0.4, tick.clock_change ? ink : hairline);
    }

    void label(const std::string& text)
    {
        const double height = page_.measure(text, label_width * 4, small_text).height;
        // One line; what a very long id has more goes under the picture.
        std::string shown = text;
        while (shown.size() > 3 &&
               page_.measure(shown, label_width * 4, small_text).width > label_width - 4)
            shown = shown.substr(0, shown.size() - 4) + "\u2026";
        page_.text(x_, y_ + (lane_pitch_ - height) / 2, label_width * 4, shown, small_text);
    }

    void thin_lane(const char* name, const std::optional<TimeRange>& from,
                   const std::optional<TimeRange>& to)
    {
        if (!from && !to)
            return;
        label(name);
        const double y = y_ + (lane_pitch_ - thin_height) / 2;
        if (from && to && from->latest <= to->earliest) {
            fade(page_, at(from->earliest), y, at(from->latest) - at(from->earliest), thin_height,
                 span_colour, 0, 1);
            page_.fill(at(from->latest), y, at(to->earliest) - at(from->latest), thin_height,
                       span_colour);
            fade(page_, at(to->earliest), y, at(to->latest) - at(to->earliest), thin_height,
                 span_colour, 1, 0);
        }
        for (const std::optional<TimeRange>* end : {&from, &to})
            if (*end)
                page_.fill(at((*end)->middle()) - 0.7, y - 2, 1.4, thin_height + 4, span_colour);
        y_ += lane_pitch_;
    }

    static double fullness(const PictureSpan& span)
    {
        const bool full = span.kind == SpanKind::on || span.kind == SpanKind::asleep;
        return full ? 1 : 0;
    }

    void full_lane(const PictureLane& lane)
    {
        const bool sleep = lane.id == "sleep";
        label(lane.id);
        const Colour colour = sleep ? asleep_colour : on_colour;
        const double y = y_ + (lane_pitch_ - bar_height_) / 2;
        if (lane.spans.empty())
            page_.text(left_ + 4, y_ + 2, right_ - left_, "not answered", small_grey);
        else
            page_.fill(left_, y, right_ - left_, bar_height_, white);
        for (std::size_t i = 0; i < lane.spans.size(); ++i) {
            const PictureSpan& span = lane.spans[i];
            const double from = at(span.from), width = at(span.to) - from;
            if (span.certainty == Certainty::soft) {
                const auto beside = [&](std::size_t other, bool there) {
                    return there && lane.spans[other].certainty == Certainty::solid
                               ? fullness(lane.spans[other])
                               : 0.5;
                };
                double before = beside(i - 1, i > 0);
                double after = beside(i + 1, i + 1 < lane.spans.size());
                if (before == after) // in between it may be the other way round
                    before = after = 0.5;
                fade(page_, from, y, width, bar_height_, colour, before, after);
            } else if (fullness(span) > 0) {
                page_.fill(from, y, width, bar_height_, colour);
            }
        }
        if (!lane.spans.empty())
            page_.round_box(left_, y, right_ - left_, bar_height_, 0, 0.5, grey_ink);
        y_ += lane_pitch_;
    }

    /// Where the window begins and ends: by what is known at the latest and at the earliest.
    void window()
    {
        for (const std::optional<TimeRange>* end : {&night_.window_from, &night_.window_to}) {
            if (!*end)
                continue;
            for (const Instant when : {(*end)->earliest, (*end)->latest})
                page_.line(at(when), top_ - 2, at(when), y_ + 2, 0.9, ink, {2.5, 1.8});
        }
    }

    double axis()
    {
        const double y = y_ + 3;
        double last = -1000;
        const auto centred = [&](double middle, double top, const std::string& text,
                                 const Style& style) {
            const double width = page_.measure(text, 400, style).width;
            const double from = std::clamp(middle - width / 2, left_ - 12, right_ - width + 8);
            page_.text(from, top, 400, text, style);
        };
        std::vector<double> changes;
        for (const PictureTick& tick : night_.ticks)
            if (tick.clock_change)
                changes.push_back(at(tick.at));
        bool changed = false;
        for (const PictureTick& tick : night_.ticks) {
            const double x = at(tick.at);
            const bool near_change = std::any_of(changes.begin(), changes.end(), [&](double other) {
                return std::abs(other - x) < closest_labels;
            });
            if (!tick.clock_change && (x - last < closest_labels || near_change))
                continue;
            char clock[16];
            std::snprintf(clock, sizeof clock, "%02d:%02d",
                          static_cast<int>(tick.local.count() / 60 % 24),
                          static_cast<int>(tick.local.count() % 60));
            Style style = small_grey;
            style.weight = tick.clock_change ? Weight::bold : Weight::regular;
            centred(x, y, clock, style);
            last = x;
            if (!tick.clock_change)
                continue;
            changed = true;
            const auto by =
                std::chrono::duration_cast<std::chrono::minutes>(tick.offset - tick.offset_before);
            style.colour = ink;
            centred(x, y + change_height,
                    "clocks " + std::string(by.count() < 0 ? "back " : "on ") +
                        std::to_string(std::abs(by.count())) + " min, to " +
                        utc_offset_text(tick.offset),
                    style);
        }
        return y + axis_height + (changed ? change_height : 0);
    }
};

} // namespace

double draw_night(Document& page, double x, double y, double width, const NightPicture& night,
                  bool dense)
{
    return Drawing(page, x, y, width, night, dense).draw();
}

double draw_night_legend(Document& page, double x, double y, double width,
                         const NightPicture& night)
{
    constexpr double swatch = 16, gap = 4, between = 12;
    const double first = x + label_width;
    double at = first;
    double row = y;
    const double height = page.measure("x", 100, small_grey).height;
    const auto entry = [&](const std::string& words,
                           const std::function<void(double, double)>& draw) {
        const double text = page.measure(words, 400, small_grey).width;
        if (at > first && at + swatch + gap + text > x + width) {
            at = first;
            row += height + 2;
        }
        draw(at, row + (height - 6) / 2);
        page.text(at + swatch + gap, row, 400, words + " ", small_grey);
        at += swatch + gap + text + between;
    };
    const auto bar = [&](Colour colour) {
        return
            [&page, colour](double left, double top) { page.fill(left, top, swatch, 6, colour); };
    };
    entry("on", bar(on_colour));
    if (!night.lanes.empty() && night.lanes.back().id == "sleep")
        entry("asleep, as reported", bar(asleep_colour));
    entry("perhaps off, perhaps awake", [&](double left, double top) {
        fade(page, left, top, swatch, 6, on_colour, 1, 0);
        page.round_box(left, top, swatch, 6, 0, 0.5, grey_ink);
    });
    entry("off, or awake",
          [&](double left, double top) { page.round_box(left, top, swatch, 6, 0, 0.5, grey_ink); });
    if (night.window_from || night.window_to)
        entry("window, earliest and latest", [&](double left, double top) {
            page.line(left + swatch / 2, top - 1, left + swatch / 2, top + 7, 0.9, ink, {2.5, 1.8});
        });
    return row + height - y;
}

} // namespace evenfall::print
