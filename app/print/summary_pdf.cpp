// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "print/summary_pdf.h"

#include "print/document.h"
#include "print/night_figure.h"
#include "record/summary.h"

#include <algorithm>
#include <functional>

namespace evenfall::print {
namespace {

constexpr double margin = 42; ///< left and right
constexpr double edge = 34;   ///< above and below
constexpr double gutter = 20;
constexpr double body_size = 8.5;
constexpr double dense_size = 7.6; ///< where there is much to say
constexpr double least_room = 110; ///< for what flows under the picture

const Style small{7.2, Weight::regular, grey_ink, Align::left};
const Style column_head{7.2, Weight::medium, grey_ink, Align::right};
const Style title{16, Weight::bold, ink, Align::left};
const Style heading{10.5, Weight::semibold, ink, Align::left};
const Style verdict_style{13, Weight::bold, ink, Align::left};
const Style badge_style{6.6, Weight::semibold, ink, Align::left};

/// How a table of numbers is laid out. Without a width for names, the meaning stands under them.
struct TableShape {
    double name_width = 0;
    std::vector<double> cells;
    bool first_rows_strong = false;
};

/// A piece that flows down the columns and is never broken.
struct Block {
    double height = 0;
    bool with_next = false;
    std::size_t part = 0;
    std::function<void(double x, double y)> draw;
};

class SummarySheet {
  public:
    SummarySheet(Document& page, const Summary& summary, bool dense)
        : page_(page), summary_(summary), dense_(dense), width_(page.size().width - 2 * margin),
          column_((width_ - gutter) / 2)
    {
        body_.size = strong_.size = dense ? dense_size : body_size;
    }

    /// Draws the page, or finds during a rehearsal whether all of it has room.
    bool draw()
    {
        const double foot_top = page_.size().height - edge - foot_height();
        double y = head(edge);
        y = cautions(y);
        y = numbers(y);
        y = night(y);
        room_ = foot_top - 8 - y;
        fill_blocks();
        const double height = column_height();
        if (height < 0)
            return false;
        flow(y, height);
        foot(foot_top);
        return true;
    }

    double room() const { return room_; }
    /// Heights of what flows: lost, events, answers, notes.
    const std::vector<double>& parts() const { return part_heights_; }

  private:
    Document& page_;
    const Summary& summary_;
    bool dense_; ///< smaller letters in what flows
    Style body_{body_size, Weight::regular, ink, Align::left};
    Style strong_{body_size, Weight::semibold, ink, Align::left};
    double width_, column_;
    double room_ = 0;
    std::vector<Block> blocks_;
    std::vector<double> part_heights_;

    double head(double y)
    {
        page_.tagged("H1",
                     [&] { y += page_.text(margin, y, width_, summary_.heading, title).height; });
        y += 5;
        page_.line(margin, y, margin + width_, y, 1.2, ink);
        y += 5;
        const std::vector<double> shares{0.14, 0.06, 0.13, 0.10, 0.17, 0.40};
        const auto row = [&](const char* tag, bool labels) {
            double x = margin, highest = 0;
            page_.tagged("TR", [&] {
                for (std::size_t i = 0; i < summary_.head.size(); ++i) {
                    const double share = i < shares.size() ? shares[i] : 0;
                    const Style style = labels ? Style{7.2, Weight::medium, grey_ink, Align::left}
                                               : Style{8.5, Weight::semibold, ink, Align::left};
                    page_.tagged(tag, [&] {
                        const SummaryLine& line = summary_.head[i];
                        highest =
                            std::max(highest, page_
                                                  .text(x, y, share * width_ - 6,
                                                        labels ? line.label : line.text, style)
                                                  .height);
                    });
                    x += share * width_;
                }
            });
            y += highest;
        };
        page_.tagged("Table", [&] {
            row("TH", true);
            row("TD", false);
        });
        y += 5;
        page_.line(margin, y, margin + width_, y, 0.5, hairline);
        y += 6;
        page_.tagged("P",
                     [&] { y += page_.text(margin, y, width_, summary_.notice, small).height; });
        return y + 8;
    }

    double badge_width(const std::string& word)
    {
        return page_.measure(word, 300, badge_style).width + 9;
    }

    /// Reported: white on dark. Derived: dark in a dashed frame. Told apart without colour.
    void badge(double x, double baseline, const std::string& word, bool dark)
    {
        Style style = badge_style;
        const Extent extent = page_.measure(word, 300, style);
        const double width = badge_width(word), height = 10;
        const double top = baseline - 7.4;
        if (dark) {
            page_.round_fill(x, top, width, height, 3, ink);
            style.colour = white;
        } else {
            page_.round_box(x + 0.4, top + 0.4, width - 0.8, height - 0.8, 3, 0.7, ink, {1.6, 1.3});
        }
        page_.text(x + 4.5, baseline - extent.baseline, 300, word + " ", style);
    }

    void badge(double x, double baseline, Origin origin)
    {
        badge(x, baseline, std::string(origin_text(origin)), origin == Origin::reported);
    }

    /// A heading, with whose word the lines under it are. Gives back the height.
    double heading_line(double x, double y, double width, const std::string& text,
                        std::optional<Origin> usual, bool all)
    {
        Extent extent;
        page_.tagged("H2", [&] {
            extent = page_.text(x, y, width, text + " ", heading);
            if (!usual)
                return;
            std::string word(origin_text(usual));
            if (!all)
                word += " unless marked";
            badge(x + extent.width + 7, y + extent.baseline, word, *usual == Origin::reported);
        });
        return extent.height + 3;
    }

    template <class Lines>
    static bool none_of_origin(const Lines& lines, Origin origin)
    {
        return std::none_of(lines.begin(), lines.end(),
                            [&](const auto& line) { return line.origin == origin; });
    }

    double cautions(double y)
    {
        if (summary_.cautions.lines.empty())
            return y;
        const double inner = width_ - 22;
        const auto inside = [&](double top) {
            double at = top + 5;
            const double x = margin + 14;
            at += heading_line(x, at, inner, summary_.cautions.title, std::nullopt, true);
            page_.tagged("L", [&] {
                for (const SummaryLine& line : summary_.cautions.lines)
                    at += labelled(x, at, inner, 74, line, std::nullopt);
            });
            at += more(x, at, inner, summary_.cautions.left_out);
            return at + 4 - top;
        };
        double height = 0;
        page_.rehearse([&] { height = inside(y); });
        page_.round_box(margin + 0.5, y, width_ - 1, height, 3, 1, ink);
        page_.fill(margin, y, 5, height, ink);
        inside(y);
        return y + height + 8;
    }

    double more(double x, double y, double width, std::size_t left_out)
    {
        if (left_out == 0)
            return 0;
        double height = 0;
        page_.tagged("P", [&] {
            height = page_.text(x, y, width, more_in_diary(left_out), strong_).height;
        });
        return height + 2;
    }

    /// One item of a list: its label, its text, and whose word it is where that is not the usual.
    double labelled(double x, double y, double width, double label_width, const SummaryLine& line,
                    std::optional<Origin> usual)
    {
        const bool marked = line.origin && usual && line.origin != usual;
        const double mark = marked ? badge_width(std::string(origin_text(line.origin))) + 4 : 0;
        double height = 0;
        page_.tagged("LI", [&] {
            Extent label;
            page_.tagged("Lbl", [&] {
                label = page_.text(x, y, label_width - 6, line.label + " ", strong_);
            });
            page_.tagged("LBody", [&] {
                const double text_width = width - label_width - mark;
                const Extent size = page_.measure(line.text + " ", text_width, body_);
                // First lines stand on one line, whatever script they are in.
                const double drop = std::max(0.0, label.baseline - size.baseline);
                page_.text(x + label_width, y + drop, text_width, line.text + " ", body_);
                if (marked)
                    badge(x + width - mark + 4, y + label.baseline, *line.origin);
                height = std::max(label.height, size.height + drop);
            });
        });
        return height + (dense_ ? 1 : 1.6);
    }

    double table(double x, double y, double width, const SummaryTable& table,
                 const TableShape& shape)
    {
        const double top = y;
        if (table.rows.empty()) {
            page_.tagged("P",
                         [&] { y += page_.text(x, y, width, table.when_empty, body_).height; });
            return y - top + 3;
        }
        double cells = 0;
        for (const double cell : shape.cells)
            cells += cell;
        page_.tagged("Table", [&] {
            y += table_head(x, y, width, cells, table, shape);
            for (std::size_t i = 0; i < table.rows.size(); ++i) {
                page_.line(x, y, x + width, y, 0.4, hairline);
                y += table_row(x, y, width, cells, table.rows[i], shape,
                               shape.first_rows_strong && i < 3);
            }
        });
        page_.line(x, y, x + width, y, 0.4, hairline);
        y += 2;
        y += more(x, y, width, table.left_out);
        return y - top;
    }

    double table_head(double x, double y, double width, double cells, const SummaryTable& table,
                      const TableShape& shape)
    {
        double height = 0;
        page_.tagged("TR", [&] {
            Style left = column_head;
            left.align = Align::left;
            page_.tagged("TH", [&] {
                height = page_.text(x, y, width - cells, table.names + " ", left).height;
            });
            double at = x + width - cells;
            for (std::size_t i = 0; i < table.columns.size(); ++i) {
                page_.tagged("TH", [&] {
                    page_.text(at, y, shape.cells[i], table.columns[i], column_head);
                });
                at += shape.cells[i];
            }
        });
        return height + 1.5;
    }

    double table_row(double x, double y, double width, double cells, const SummaryRow& row,
                     const TableShape& shape, bool is_strong)
    {
        const double padding = dense_ ? 0.7 : 1.0;
        const bool marked = row.origin == Origin::reported; // the tables are mostly derived
        const double mark = marked ? badge_width(std::string(origin_text(row.origin))) + 4 : 0;
        double height = 0;
        y += padding;
        page_.tagged("TR", [&] {
            Extent name;
            const double names = width - cells - 6;
            page_.tagged("TH", [&] {
                const bool beside = shape.name_width > 0;
                const double own = beside && !row.meaning.empty() ? shape.name_width - 4 : names;
                name = page_.text(x, y, own, row.name + " ", is_strong ? strong_ : body_);
                height = name.height;
                if (row.meaning.empty())
                    return;
                const double left = beside ? x + shape.name_width : x;
                const double room = beside ? x + names - left - mark : width;
                const Extent size = page_.measure(row.meaning, room, small);
                const double drop = beside ? name.baseline - size.baseline : name.height;
                page_.text(left, y + drop, room, row.meaning + " ", small);
                height = std::max(height, drop + size.height);
            });
            if (marked)
                page_.tagged(
                    "TD", [&] { badge(x + width - cells - mark, y + name.baseline, *row.origin); });
            double at = x + width - cells;
            for (std::size_t i = 0; i < row.cells.size() && i < shape.cells.size(); ++i) {
                page_.tagged("TD", [&] {
                    Style style = is_strong ? strong_ : body_;
                    style.align = Align::right;
                    height = std::max(
                        height, page_.text(at, y, shape.cells[i], row.cells[i], style).height);
                });
                at += shape.cells[i];
            }
        });
        return height + 2 * padding;
    }

    double numbers(double y)
    {
        const double left_width = width_ * 0.47 - gutter / 2;
        const double right_width = width_ - gutter - left_width;
        const double right = margin + left_width + gutter;
        const double left_height = summary_.contradictions.lines.empty()
                                       ? counts(margin, y, left_width)
                                       : contradictions(margin, y, left_width);
        double at = y;
        const bool all = none_of_origin(summary_.measures.rows, Origin::reported);
        at += heading_line(
            right, at, right_width, summary_.measures.title,
            summary_.measures.rows.empty() ? std::nullopt : std::optional(Origin::derived), all);
        at += table(right, at, right_width, summary_.measures, {54, {46}, false});
        at += 8;
        at += heading_line(
            right, at, right_width, summary_.lost.title,
            summary_.lost.rows.empty() ? std::nullopt : std::optional(Origin::derived), true);
        at += table(right, at, right_width, summary_.lost, {54, {38, 42}, false});
        return std::max(y + left_height, at) + 10;
    }

    double counts(double x, double top, double width)
    {
        double y = top;
        y += heading_line(x, y, width, summary_.time.title, Origin::derived, true);
        page_.tagged("P",
                     [&] { y += page_.text(x, y, width, summary_.verdict, verdict_style).height; });
        y += 2;
        for (const std::string& reason : summary_.verdict_reasons)
            page_.tagged("P", [&] { y += page_.text(x, y, width, reason, body_).height + 2; });
        y += 3;
        y += table(x, y, width, summary_.time, {0, {42, 46, 42}, true});
        return y - top;
    }

    double contradictions(double x, double top, double width)
    {
        double y = top;
        y += heading_line(x, y, width, summary_.contradictions.title, std::nullopt, true);
        const auto paragraph = [&](const std::string& text, const Style& style) {
            page_.tagged("P", [&] { y += page_.text(x, y, width, text, style).height; });
            y += 2;
        };
        paragraph("Nothing is worked out while they stand. Ask the person.", strong_);
        page_.tagged("L", [&] {
            for (const SummaryLine& line : summary_.contradictions.lines)
                page_.tagged("LI", [&] {
                    page_.tagged("Lbl", [&] {
                        y += page_.text(x, y, width, line.label + " ", small).height;
                    });
                    page_.tagged("LBody", [&] {
                        y += page_.text(x, y, width, line.text + " ", body_).height + 4;
                    });
                });
        });
        y += more(x, y, width, summary_.contradictions.left_out);
        return y - top;
    }

    double night(double y)
    {
        y += heading_line(margin, y, width_, summary_.picture_title, std::nullopt, true) + 2;
        if (!summary_.picture) {
            page_.tagged("P", [&] {
                y += page_.text(margin, y, width_, summary_.without_picture, body_).height;
            });
            return y + 10;
        }
        page_.figure(summary_.picture_text,
                     [&] { y += draw_night(page_, margin, y, width_, *summary_.picture, dense_); });
        y += 3;
        page_.tagged("P",
                     [&] { y += draw_night_legend(page_, margin, y, width_, *summary_.picture); });
        for (const std::string& note : summary_.picture_notes)
            page_.tagged("P", [&] {
                y += page_.text(margin + 66, y + 1, width_ - 66, note, small).height + 1;
            });
        return y + 10;
    }

    void add_list(const SummaryList& list, double label_width)
    {
        const std::size_t part = part_heights_.size();
        part_heights_.push_back(0);
        if (list.lines.empty() && list.left_out == 0)
            return;
        const bool all = none_of_origin(list.lines, Origin::derived);
        const auto add = [&](std::function<double(double, double)> draw, bool with_next) {
            Block block;
            page_.rehearse([&] { block.height = draw(0, 0); });
            block.with_next = with_next;
            block.part = part;
            block.draw = [draw](double x, double y) { draw(x, y); };
            part_heights_[part] += block.height;
            blocks_.push_back(std::move(block));
        };
        add(
            [this, &list, all](double x, double y) {
                return heading_line(x, y, column_, list.title, Origin::reported, all);
            },
            true);
        for (std::size_t i = 0; i < list.lines.size(); ++i) {
            const bool first = i == 0, last = i + 1 == list.lines.size();
            add(
                [this, &list, i, label_width, first, last](double x, double y) {
                    if (first)
                        page_.begin("L");
                    double height =
                        labelled(x, y, column_, label_width, list.lines[i], Origin::reported);
                    if (last)
                        page_.end("L");
                    return height + (last && list.left_out == 0 ? 8 : 0);
                },
                last && list.left_out > 0);
        }
        if (list.left_out > 0)
            add([this, &list](double x,
                              double y) { return more(x, y, column_, list.left_out) + 8; },
                false);
    }

    void fill_blocks()
    {
        blocks_.clear();
        part_heights_.clear();
        for (const SummaryList* list : {&summary_.events, &summary_.answers, &summary_.notes}) {
            double widest = 0;
            for (const SummaryLine& line : list->lines)
                widest = std::max(widest, page_.measure(line.label, 300, strong_).width);
            add_list(*list, std::clamp(widest + 11, 50.0, 102.0));
        }
    }

    /// Puts the blocks into two columns of this height; false when they do not fit.
    bool place(double height, const std::function<void(const Block&, int, double)>& put) const
    {
        int column = 0;
        double y = 0;
        for (std::size_t i = 0; i < blocks_.size();) {
            std::size_t end = i;
            double together = 0;
            do
                together += blocks_[end].height;
            while (blocks_[end++].with_next && end < blocks_.size());
            if (y + together > height && y > 0) {
                ++column;
                y = 0;
            }
            if (column > 1 || y + together > height)
                return false;
            for (; i < end; ++i) {
                put(blocks_[i], column, y);
                y += blocks_[i].height;
            }
        }
        return true;
    }

    /// The least height at which two columns take everything, so that they end side by side.
    double column_height() const
    {
        double total = 0;
        for (const Block& block : blocks_)
            total += block.height;
        for (double height = std::min(room_, std::max(total / 2, 100.0)); height <= room_;
             height += 2)
            if (place(height, [](const Block&, int, double) {}))
                return height;
        return place(room_, [](const Block&, int, double) {}) ? room_ : -1;
    }

    void flow(double top, double height)
    {
        if (page_.rehearsing())
            return;
        place(height, [&](const Block& block, int column, double y) {
            block.draw(margin + column * (column_ + gutter), top + y);
        });
    }

    double foot_height()
    {
        double height = 0;
        page_.rehearse([&] { height = foot(0); });
        return height;
    }

    double foot(double top)
    {
        Style tiny = small;
        tiny.size = 6.8;
        page_.line(margin, top, margin + width_, top, 0.5, hairline);
        double y = top + 5;
        page_.tagged("P", [&] { y += page_.text(margin, y, width_, summary_.foot, tiny).height; });
        page_.tagged("P", [&] {
            y += page_
                     .text(margin, y + 1, width_,
                           "Made by Evenfall from the diary.json with SHA-256 " +
                               summary_.diary_sha256,
                           tiny)
                     .height;
        });
        return y + 1 - top;
    }
};

/// Takes away from what takes most room, a little at a time. False when nothing is left to take.
bool tighten(SummaryLimits& limits, const Summary& shown, const SummarySheet& sheet)
{
    const auto less = [](std::size_t& limit, std::size_t now, std::size_t least) {
        limit = std::min(limit, now);
        if (limit <= least)
            return false;
        --limit;
        return true;
    };
    if (sheet.room() < least_room) {
        if (limits.line_length > 120) {
            limits.line_length -= 40;
            return true;
        }
        if (less(limits.contradictions, shown.contradictions.lines.size(), 2) ||
            less(limits.sensors, limits.sensors, 6) ||
            less(limits.lost, shown.lost.rows.size(), 5) ||
            less(limits.cautions, shown.cautions.lines.size(), 3))
            return true;
    }
    const std::vector<double>& heights = sheet.parts();
    const double events = heights[0], answers = heights[1], notes = heights[2];
    if (notes >= events && notes >= answers) {
        if (!shown.notes.lines.empty() && limits.note_length > 200) {
            limits.note_length -= limits.note_length / 12;
            return true;
        }
        if (less(limits.notes, shown.notes.lines.size(), 0))
            return true;
    }
    if (events >= answers && less(limits.events, shown.events.lines.size(), 0))
        return true;
    return less(limits.answers, shown.answers.lines.size(), 0) ||
           less(limits.events, shown.events.lines.size(), 0) ||
           less(limits.notes, shown.notes.lines.size(), 0) ||
           less(limits.sensors, limits.sensors, 2) || less(limits.lost, shown.lost.rows.size(), 2);
}

/// The page, first at its best, then denser, then cut until it fits; then given back what still
/// has room.
class Fitting {
  public:
    Fitting(Document& page, const Summary& whole) : page_(page), whole_(whole) {}

    /// False: it does not fit however short.
    bool draw()
    {
        if (fits(limits_))
            return finish();
        dense_ = true;
        while (!fits(limits_))
            if (!tighten(limits_, shown_, *sheet_))
                return false;
        for (std::size_t SummaryLimits::*limit :
             {&SummaryLimits::events, &SummaryLimits::answers, &SummaryLimits::notes})
            give_back(limit, 1);
        give_back(&SummaryLimits::note_length, 40);
        return finish();
    }

  private:
    Document& page_;
    const Summary& whole_;
    SummaryLimits limits_;
    bool dense_ = false;
    Summary shown_;
    std::optional<SummarySheet> sheet_;

    bool fits(const SummaryLimits& limits)
    {
        shown_ = cut(whole_, limits);
        sheet_.emplace(page_, shown_, dense_);
        bool all = false;
        page_.rehearse([&] { all = sheet_->draw(); });
        return all;
    }

    void give_back(std::size_t SummaryLimits::*limit, std::size_t step)
    {
        for (SummaryLimits more = limits_; more.*limit < SummaryLimits().*limit;) {
            more.*limit += step;
            if (!fits(more))
                return;
            limits_ = more;
        }
    }

    bool finish()
    {
        fits(limits_);
        return sheet_->draw();
    }
};

} // namespace

Result<std::string> summary_pdf(const Diary& diary)
{
    const Result<Summary> whole = summary(diary);
    if (!whole)
        return whole.problems();
    Document page(Paper::a4, {whole->title, "en", summary_key_words(whole->diary_sha256)});
    if (!Fitting(page, *whole).draw())
        return Problem{Fault::io, "no_room", "",
                       "the summary does not fit on one page, however short"};
    return page.finish();
}

} // namespace evenfall::print
