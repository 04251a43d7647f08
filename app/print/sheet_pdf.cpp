// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "print/sheet_pdf.h"

#include "print/drawing.h"
#include "print/qr.h"
#include "print/sheet_figure.h"

#include <cairo.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numeric>
#include <span>
#include <utility>

namespace evenfall::print {
namespace {

using Kind = SheetBlock::Kind;

constexpr double margin = 32; ///< on each side, 11 mm: every printer can reach that
constexpr double foot_room = 20;
constexpr double brief_edge = 24; ///< at the top and at the bottom, for one more line
constexpr double gap = 8;
constexpr Colour box_grey{0.92, 0.92, 0.92};
constexpr Colour black{0, 0, 0};
/// How large pictures are, how far lines stand apart and how narrow the cells of steps may be: the
/// easiest first.
struct Ease {
    double pictures, leading;
    int title_lines = 3; ///< of a step at most; more leave room for one more step in a row
};
constexpr std::array eases{Ease{1.15, 1.2}, Ease{1.0, 1.2}, Ease{0.85, 1.2}};
constexpr std::array brief_eases{Ease{1.3, 1.2},   Ease{1.1, 1.2},   Ease{0.95, 1.2},
                                 Ease{0.86, 1.17}, Ease{0.86, 1.17, 5}, Ease{0.82, 1.12},
                                 Ease{0.82, 1.12, 5}};
constexpr double light_seconds = 6;                         ///< shown of what a light does

/// Sizes in points; everything that has words follows from the size of the text.
struct Measures {
    Measures(bool large, double leading, double pictures, bool brief)
        : text{large ? 18.0 : 14.0}, strong{text.size, Weight::bold}, heading{large ? 24.0 : 19.0,
                                                                              Weight::bold},
          title{large ? 28.0 : 23.0, Weight::bold}, phone{large ? 42.0 : 34.0, Weight::bold},
          code{large ? 26.0 : 20.0, Weight::bold}, small{large ? 16.0 : 12.0, Weight::regular,
                                                         grey_ink},
          step_figure((large ? 100 : 80) * pictures), chore_figure((large ? 66 : 54) * pictures),
          thing_figure(large ? 46 : 37), box(text.size * 0.9), lead(large ? 9 : 6) {
        for (Style* one : {&text, &strong, &heading, &title, &code, &small})
            one->leading = leading;
        phone.leading = 1.15; // digits only
        if (!brief)
            return;
        title.size = large ? 25 : 20;
        heading.size = large ? 21 : 16.5;
        phone.size = large ? 38 : 32;
        step_figure = (large ? 68 : 54) * pictures;
        lead = large ? 5 : 2.5;
    }
    Style text, strong, heading, title, phone, code, small,
        foot{12, Weight::regular, grey_ink, Align::left, 1.2};
    double step_figure, chore_figure, thing_figure; ///< sides
    double box;                                     ///< to tick
    double lead;                                    ///< between one thing and the next
};

bool in_grid(Kind kind) {
    return kind == Kind::bullet || kind == Kind::tick;
}
bool in_list(Kind kind) {
    return kind != Kind::paragraph && kind != Kind::caution;
}

/// A round place that a figure leaves free, on the page.
struct Hole {
    double x = 0, y = 0, radius = 0;
};

class SheetPages {
  public:
    SheetPages(Document& page, const Sheet& sheet, const SheetWords& words,
               const FigureStore& figures, bool large)
        : page_(page), sheet_(sheet), words_(words), figures_(figures), large_(large),
          m_(measures(eases[0])), width_(page.size().width - 2 * margin) {}

    Status draw() {
        Result<QrCode> qr = qr_code(sheet_.code);
        if (!qr)
            return qr.problems();
        qr_ = std::move(*qr);
        // The tightest make the fewest pages; the easiest that make no more are taken.
        const std::span<const Ease> all_eases =
            brief() ? std::span<const Ease>(brief_eases) : std::span<const Ease>(eases);
        const auto count = [&](const Ease& ease) {
            m_ = measures(ease);
            title_lines_ = ease.title_lines;
            spare_.clear();
            turns_.clear();
            rows_.clear();
            page_.rehearse([&] {
                counting_ = true;
                all();
                counting_ = false;
            });
            return page_number_;
        };
        const std::size_t tight = brief() ? 2 : 1;
        pages_ = count(all_eases.back());
        for (std::size_t i = 2; i <= tight; ++i)
            pages_ = std::min(pages_, count(all_eases[all_eases.size() - i]));
        for (const Ease& ease : all_eases)
            if (count(ease) <= pages_)
                break;
        all();
        return problems_.empty() ? Status(Done{}) : Status(problems_);
    }

  private:
    Document& page_;
    const Sheet& sheet_;
    const SheetWords& words_;
    const FigureStore& figures_;
    bool large_;
    Measures m_;
    int title_lines_ = 3;
    double width_;
    QrCode qr_;
    std::map<Depiction, Drawing> drawings_;
    Problems problems_;
    double air_ = 1;      ///< of the paper diary
    double grid_air_ = 0; ///< of its grid; 0 is the same
    double y_ = 0;
    int page_number_ = 1, pages_ = 0;
    /// What stays empty at the end of a page, and the places between its pieces that share it.
    struct Spare {
        double room = 0;
        double places = 0; ///< each by its share
    };
    std::map<int, Spare> spare_; ///< by page
    bool counting_ = false;      ///< the pieces themselves, not how high one of them would be
    std::vector<bool> turns_;    ///< what was decided while counting, so that it stays
    std::size_t next_turn_ = 0;
    std::vector<std::size_t> rows_; ///< how many steps each has, the same way
    std::size_t next_row_ = 0;

    bool brief() const { return sheet_.length == SheetLength::brief; }
    Measures measures(const Ease& ease) const {
        // Arabic letters need more from line to line; a brief sheet gives what they need and no more.
        const double more = page_.right_to_left() ? (brief() ? 1.17 : 1.2) : 1;
        return {large_, ease.leading * more, ease.pictures, brief()};
    }

    // ---- the page ----

    /// Arabic letters rise over and hang under a line that is as close as that of a brief sheet.
    double edge() const { return page_.right_to_left() ? brief_edge + 6.5 : brief_edge; }
    double top() const { return brief() ? edge() : margin; }
    double bottom() const {
        return page_.size().height - (brief() ? edge() + 16 : margin + foot_room);
    }
    double full() const { return bottom() - top(); }
    /// `x` is from the edge at which lines begin.
    double flip(double x, double width) const {
        return page_.right_to_left() ? page_.size().width - margin - x - width : margin + x;
    }
    std::string say(const Text& text) const { return words_.text(text); }

    void foot() {
        const double y = bottom() + (brief() ? 3 : 5);
        page_.line(margin, y, margin + width_, y, 0.6, hairline);
        const Style style = m_.foot;
        const double third = width_ / 3;
        page_.text(flip(0, third), y + 2, third, words_.code(sheet_.code), style);
        Style other = style;
        other.align = Align::centre;
        page_.text(flip(third, third), y + 2, third, words_.code(sheet_.clinic.phone), other);
        other.align = Align::right;
        page_.text(flip(2 * third, third), y + 2, third,
                   words_.number(page_number_) + " / " + words_.number(pages_), other);
    }
    void turn() {
        if (counting_)
            spare_[page_number_].room = bottom() - y_;
        foot();
        page_.next_page();
        ++page_number_;
        y_ = top();
    }

    double height(const std::function<void()>& body) {
        const double y = y_;
        const int number = page_number_;
        const bool counting = std::exchange(counting_, false);
        y_ = top();
        page_.rehearse(body);
        counting_ = counting;
        const double high = y_ - top() + (page_number_ - number) * full();
        y_ = y;
        page_number_ = number;
        return high;
    }
    bool fits(double high) const { return y_ + high <= bottom() + 0.01; }

    /// Draws it where it is whole, and has `more` after it on the page; what is higher than a page is
    /// left to `flowing`.
    void keep(const std::function<void()>& body, const std::function<void()>& flowing = {},
              double more = 0) {
        const double high = height(body);
        if (high > full() && flowing)
            return flowing();
        turn_unless(fits(high + (high + more > full() ? 0 : more)));
        body();
    }
    /// The page is turned for what does not fit on it, and not where it is still empty.
    void turn_unless(bool fitting) {
        bool turning = !fitting && y_ > top();
        if (counting_)
            turns_.push_back(turning);
        else if (!page_.rehearsing())
            turning = turns_[next_turn_++];
        if (turning)
            turn();
    }
    /// A place between two pieces. What has to stay empty on the page is shared out among them, as
    /// long as pieces that belong together do not fall apart.
    void breathe(double share = 1) {
        if (y_ <= top())
            return;
        Spare& spare = spare_[page_number_];
        if (counting_)
            spare.places += share;
        else if (!page_.rehearsing() && spare.places > 0)
            y_ += share * std::min(m_.lead * 1.5, 0.99 * spare.room / spare.places);
    }

    // ---- words ----

    Extent put(double x, double y, double width, const std::string& text, const Style& style) {
        return page_.text(flip(x, width), y, width, text, style);
    }
    /// A paragraph at y_; moves y_ on.
    void line(double x, double width, const std::string& text, const Style& style,
              const char* tag = "P") {
        page_.tagged(tag, [&] { y_ += put(x, y_, width, text, style).height; });
    }
    /// A paragraph of any length: goes over to the next page line by line.
    void flow(double x, double width, std::string text, const Style& style) {
        while (!text.empty()) {
            std::vector<std::size_t> ends; // of its words
            for (std::size_t at = text.find(' ', 1); at != std::string::npos;
                 at = text.find(' ', at + 1))
                ends.push_back(at);
            ends.push_back(text.size());
            const auto too_much =
                std::partition_point(ends.begin(), ends.end(), [&](std::size_t end) {
                    return fits(page_.measure(text.substr(0, end), width, style).height);
                });
            if (too_much == ends.begin() && y_ > top()) {
                turn();
                if (counting_)
                    spare_[page_number_ - 1].room = 0; // its lines stay where they are
                continue;
            }
            const std::size_t end = too_much == ends.begin() ? ends.front() : *(too_much - 1);
            line(x, width, text.substr(0, end), style);
            text.erase(0, std::min(text.size(), end + 1));
        }
    }
    /// The style, smaller where the text would not fit into one line.
    Style fitted(const std::string& text, double width, Style style) const {
        while (style.size > m_.text.size && page_.measure(text, 10000, style).width > width)
            style.size -= 1;
        return style;
    }

    // ---- shapes ----

    void figure(double x, double y, double side, const Depiction& which,
                const std::string& alternative, Hole hole = {}) {
        auto found = drawings_.find(which);
        if (found == drawings_.end()) {
            const Result<std::string> svg = sheet_figure(figures_, which, sheet_.hand);
            if (!svg)
                return fail(svg.problems());
            Result<Drawing> drawing = Drawing::read(*svg);
            if (!drawing)
                return fail(drawing.problems());
            found = drawings_.emplace(which, std::move(*drawing)).first;
        }
        page_.figure(alternative, [&] {
            if (page_.rehearsing())
                return;
            cairo_t* cr = page_.cairo();
            cairo_save(cr);
            if (hole.radius > 0) {
                cairo_set_fill_rule(cr, CAIRO_FILL_RULE_EVEN_ODD);
                cairo_rectangle(cr, flip(x, side) - side, y - side, 3 * side, 3 * side);
                cairo_new_sub_path(cr);
                cairo_arc(cr, hole.x, hole.y, hole.radius, 0, 6.2832);
                cairo_clip(cr);
            }
            const Status drawn = found->second.draw(cr, flip(x, side), y, side, side);
            cairo_restore(cr);
            if (!drawn)
                fail(drawn.problems());
        });
    }
    void fail(const Problems& problems) {
        if (problems_.empty())
            problems_ = problems;
    }

    void tick_box(double x, double y) {
        page_.round_box(flip(x, m_.box) + 0.6, y + 0.6, m_.box - 1.2, m_.box - 1.2, 2, 1.2, black);
    }
    /// On the first line of a text of the usual size that begins at `y`.
    double box_top(double y) { return y + (page_.measure("X", 100, m_.text).height - m_.box) / 2; }

    void dot(double x, double y, double radius) {
        const double side = 2 * radius;
        page_.round_fill(flip(x, side), y, side, side, radius, black);
    }
    void check_sign(double x, double y, double side) {
        if (page_.rehearsing())
            return;
        cairo_t* cr = page_.cairo();
        const double left = flip(x, side);
        cairo_save(cr);
        cairo_set_source_rgb(cr, 0, 0, 0);
        cairo_set_line_width(cr, side * 0.17);
        cairo_set_line_join(cr, CAIRO_LINE_JOIN_ROUND);
        cairo_set_line_cap(cr, CAIRO_LINE_CAP_ROUND);
        cairo_move_to(cr, left + side * 0.1, y + side * 0.55);
        cairo_line_to(cr, left + side * 0.4, y + side * 0.85);
        cairo_line_to(cr, left + side * 0.92, y + side * 0.15);
        cairo_stroke(cr);
        cairo_restore(cr);
    }
    void warning_sign(double x, double y, double side) {
        if (page_.rehearsing())
            return;
        cairo_t* cr = page_.cairo();
        const double left = flip(x, side);
        cairo_save(cr);
        cairo_set_source_rgb(cr, 0, 0, 0);
        cairo_set_line_join(cr, CAIRO_LINE_JOIN_ROUND);
        cairo_set_line_width(cr, side * 0.12);
        cairo_move_to(cr, left + side / 2, y + side * 0.06);
        cairo_line_to(cr, left + side * 0.96, y + side * 0.9);
        cairo_line_to(cr, left + side * 0.04, y + side * 0.9);
        cairo_close_path(cr);
        cairo_fill_preserve(cr);
        cairo_stroke(cr);
        cairo_set_source_rgb(cr, 1, 1, 1);
        cairo_set_line_cap(cr, CAIRO_LINE_CAP_ROUND);
        cairo_move_to(cr, left + side / 2, y + side * 0.34);
        cairo_line_to(cr, left + side / 2, y + side * 0.58);
        cairo_stroke(cr);
        cairo_arc(cr, left + side / 2, y + side * 0.76, side * 0.07, 0, 6.2832);
        cairo_fill(cr);
        cairo_restore(cr);
    }

    /// What a light does, as in a dark room: white while it shines, black while not.
    void light_bar(double x, double y, double width, double high, const Light& light) {
        const double left = flip(x, width);
        const bool dark = light.colour == "off";
        page_.fill(left, y, width, high, dark || light.blinks > 0 ? black : white);
        if (!dark && light.blinks > 0) {
            const double on = static_cast<double>(light.on.count()) / 1000,
                         off = static_cast<double>(light.off.count()) / 1000;
            const double round = light.blinks * on + (light.blinks - 1) * off +
                                 static_cast<double>(light.pause.count()) / 1000;
            const double again = light.pause.count() > 0 ? round : on + off;
            for (double start = 0.15; again > 0 && start < light_seconds; start += again)
                for (int n = 0; n < light.blinks; ++n) {
                    const double from = start + n * (on + off),
                                 to = std::min(from + on, light_seconds);
                    if (from < light_seconds)
                        page_.fill(flip(x + width * from / light_seconds,
                                        width * (to - from) / light_seconds),
                                   y, width * (to - from) / light_seconds, high, white);
                }
        }
        page_.round_box(left, y, width, high, 3, 1.4, black);
    }

    void qr(double x, double y, double side) {
        page_.figure(say(sheet_.qr), [&] {
            if (page_.rehearsing())
                return;
            cairo_t* cr = page_.cairo();
            const double module = side / (qr_.size + 2 * quiet_zone);
            const double left = flip(x, side) + quiet_zone * module, top = y + quiet_zone * module;
            cairo_set_source_rgb(cr, 0, 0, 0);
            for (int row = 0; row < qr_.size; ++row)
                for (int column = 0; column < qr_.size;) {
                    int end = column;
                    while (end < qr_.size && qr_.at(end, row))
                        ++end;
                    if (end > column)
                        cairo_rectangle(cr, left + column * module, top + row * module,
                                        (end - column) * module, module);
                    column = std::max(end, column + 1);
                }
            cairo_fill(cr);
        });
    }

    // ---- pieces ----

    /// Words in a box with a sign: the first of them in bold where there are two. Before them stand
    /// the numbers of the steps that they are about.
    void caution(double x, double width, const std::vector<std::string>& words, bool first_bold,
                 const std::vector<int>& numbers = {}) {
        const double pad = brief() ? 3 : 5, sign = m_.text.size * 1.15,
                     badge = m_.text.size * 1.4;
        const std::size_t in_line = numbers.size() <= 3 ? numbers.size() : (numbers.size() + 1) / 2;
        const double before = sign + 7 + static_cast<double>(in_line) * (badge + 2) +
                              (numbers.empty() ? 0 : 5),
                     inner = width - 2 * pad - before;
        const double badges =
            numbers.empty() ? 0 : (badge + 2) * (in_line < numbers.size() ? 2 : 1) - 2;
        const double high =
            std::max(height([&] { caution_words(0, inner, words, first_bold); }), badges) + 2 * pad;
        page_.round_fill(flip(x, width), y_, width, high, 5, box_grey);
        page_.round_box(flip(x, width), y_, width, high, 5, 1.2, black);
        warning_sign(x + pad, y_ + pad, sign);
        const double top = y_;
        y_ += pad;
        for (std::size_t i = 0; i < numbers.size(); ++i)
            page_.tagged("P", [&] {
                number_badge(x + pad + sign + 7 + static_cast<double>(i % in_line) * (badge + 2),
                             top + pad + static_cast<double>(i / in_line) * (badge + 2), badge,
                             numbers[i]);
            });
        caution_words(x + pad + before, inner, words, first_bold);
        y_ = top + high;
    }
    void caution_words(double x, double width, const std::vector<std::string>& words,
                       bool first_bold) {
        bool bold = first_bold;
        for (const std::string& one : words) {
            line(x, width, one, bold ? m_.strong : m_.text);
            bold = false;
        }
    }

    void number_badge(double x, double y, double side, int number) {
        page_.round_fill(flip(x, side), y, side, side, side / 2, black);
        Style style{m_.text.size * 0.95, Weight::bold, white, Align::centre};
        const std::string text = words_.number(number);
        const Extent extent = page_.measure(text, side, style);
        put(x, y + (side - extent.height) / 2, side, text, style);
    }

    void right_line(double x, double width, const std::string& text) {
        const double sign = m_.text.size * 0.85;
        check_sign(x, y_ + (page_.measure("X", 100, m_.text).height - sign) / 2, sign);
        line(x + sign + 6, width - sign - 6, text, m_.text);
    }

    /// A step whose words stand at another.
    static bool brief(const SheetBlock& block) {
        return block.body.id == "sheet.like" && block.cautions.empty();
    }

    /// A step or a chore: its picture, with the number over its corner or a box beside it, then its
    /// words.
    void row(const SheetBlock& block, double x, double whole) {
        const bool numbered = block.kind == Kind::step;
        const double side = numbered && !brief(block) ? m_.step_figure : m_.chore_figure;
        const double badge = m_.text.size * 1.75;
        const double picture = x + (numbered ? badge + 4 : m_.box + 7);
        const double text_x = picture + (numbered && large_ ? m_.step_figure : side) + 10,
                     width = x + whole - text_x;
        page_.tagged("LI", [&] {
            const double top = y_;
            const double words_high = height([&] { words_of(block, text_x, width); });
            const double first_line = page_.measure("X", 100, m_.text).height;
            // Few words stand in the middle of their picture.
            const double down = std::max(0.0, (side - words_high) / 2);
            page_.tagged("Lbl", [&] {
                if (numbered)
                    number_badge(x, top, badge, block.number);
                else
                    tick_box(x, top + down + (first_line - m_.box) / 2);
            });
            page_.tagged("LBody", [&] {
                figure(picture, top, side, block.figure, say(block.title));
                y_ = top + down;
                words_of(block, text_x, width);
            });
            y_ = std::max(y_, top + side);
        });
        y_ += m_.lead;
    }
    void words_of(const SheetBlock& block, double x, double width) {
        line(x, width, say(block.title), block.body.empty() ? m_.text : m_.strong);
        if (!block.body.empty())
            line(x, width, say(block.body), m_.text);
        if (!block.right.empty())
            right_line(x, width, say(block.right));
        if (!block.cautions.empty()) {
            y_ += 3;
            caution(x, width, all_of(block.cautions), false);
        }
    }
    std::vector<std::string> all_of(const std::vector<Text>& texts) const {
        std::vector<std::string> out;
        for (const Text& one : texts)
            out.push_back(say(one));
        return out;
    }
    /// The same where the words are longer than a page.
    void long_row(const SheetBlock& block) {
        SheetBlock head = block;
        head.body = head.right = {};
        head.cautions.clear();
        keep([&] { one_of(head, 0, width_); });
        flow(0, width_, say(block.body), m_.text);
        flow(0, width_, say(block.right), m_.text);
        for (const Text& one : block.cautions)
            keep([&] { caution(0, width_, {say(one)}, false); },
                 [&] { flow(0, width_, say(one), m_.strong); });
        y_ += m_.lead;
    }

    void light_row(const SheetBlock& block, double x, double whole) {
        const double bar = m_.text.size * 6, high = m_.text.size * 1.2, text_x = x + bar + 10,
                     width = whole - bar - 10;
        page_.tagged("LI", [&] {
            page_.tagged("LBody", [&] {
                const double top = y_;
                light_bar(x, top + 2, bar, high, *block.light);
                line(text_x, width, say(block.title), m_.strong);
                if (block.light->meaning == Light::Meaning::recording)
                    right_line(text_x, width, say(block.body));
                else
                    line(text_x, width, say(block.body), m_.text);
                y_ = std::max(y_, top + high + 4);
            });
        });
        y_ += m_.lead - 3;
    }

    void advice(const SheetBlock& block, double x, double width) {
        page_.tagged("LI", [&] {
            page_.tagged("LBody", [&] {
                line(x, width, say(block.title), m_.strong);
                line(x, width, say(block.body), m_.text);
            });
        });
        y_ += m_.lead - 3;
    }

    void one_of(const SheetBlock& block, double x, double width) {
        if (block.kind == Kind::light)
            light_row(block, x, width);
        else if (block.kind == Kind::advice)
            advice(block, x, width);
        else
            row(block, x, width);
    }
    /// Short ones stand two in a row.
    bool pairs(const SheetBlock& first, const SheetBlock& second) const {
        const auto is_short = [](const SheetBlock& one) {
            return one.cautions.empty() && (one.kind != Kind::step || brief(one));
        };
        return !large_ && is_short(first) && is_short(second);
    }
    void two_of(const SheetBlock& first, const SheetBlock& second) {
        const double space = 2 * gap, half = (width_ - space) / 2, top = y_;
        one_of(first, 0, half);
        const double end = y_;
        y_ = top;
        one_of(second, half + space, half);
        y_ = std::max(y_, end);
    }

    struct Cell {
        const SheetBlock* block;
        double x, width;
    };
    /// One line of short things.
    void grid_row(const std::vector<Cell>& cells) {
        const double top = y_;
        double end = top;
        for (const Cell& cell : cells) {
            y_ = top;
            grid_cell(*cell.block, cell.x, cell.width);
            end = std::max(end, y_);
        }
        y_ = end + 3;
    }
    std::string grid_text(const SheetBlock& block) const {
        return say(block.title) +
               (block.count > 1 ? " \u00D7 " + words_.number(block.count) : "");
    }
    void grid_cell(const SheetBlock& block, double x, double width) {
        const double top = y_;
        const bool tick = block.kind != Kind::bullet;
        const double sign = tick ? m_.box : 5, picture = block.figure.empty() ? 0 : m_.thing_figure;
        const double text_x = x + sign + 7 + (picture > 0 ? picture + 7 : 0),
                     text_width = x + width - text_x;
        const std::string text = grid_text(block);
        const double down =
            std::max(0.0, (picture - page_.measure(text, text_width, m_.text).height) / 2);
        page_.tagged("LI", [&] {
            page_.tagged("Lbl", [&] {
                if (tick)
                    tick_box(x, picture > 0 ? top + (picture - m_.box) / 2 : box_top(top));
                else
                    dot(x, top + page_.measure("X", 100, m_.text).height / 2 - 2.5, 2.5);
            });
            page_.tagged("LBody", [&] {
                if (picture > 0)
                    figure(x + sign + 7, top, picture, block.figure, text);
                y_ = top + down;
                line(text_x, text_width, text, m_.text);
            });
        });
        y_ = std::max(y_, top + picture);
    }

    // ---- the whole ----

    void heading() {
        if (brief())
            return brief_heading();
        line(0, width_, say(sheet_.title), m_.title, "H1");
        line(0, width_, sheet_.clinic.name, m_.text);
        y_ += 6;
        contact();
        y_ += m_.lead;
        keep([&] { caution(0, width_, {say(sheet_.emergency)}, false); });
        y_ += m_.lead;
    }

    /// The title over the numbers, the study code beside both.
    void brief_heading() {
        const double head = y_, side = m_.phone.size * 1.85;
        const std::string code = words_.code(sheet_.code);
        const double right = std::clamp(page_.measure(code, 10000, m_.code).width, side, width_ * 0.3),
                     left = width_ - right - 2 * gap;
        const std::string title = say(sheet_.title);
        line(0, left, title, fitted(title, left, m_.title), "H1");
        // The clinic beside it, or else under it.
        const double x_name = page_.measure(title, 10000, m_.title).width + 1.5 * gap;
        if (x_name + page_.measure(sheet_.clinic.name, 10000, m_.text).width < left) {
            const double down = page_.measure("X", 100, m_.title).baseline -
                                page_.measure("X", 100, m_.text).baseline;
            page_.tagged("P", [&] {
                put(x_name, head + down, left - x_name, sheet_.clinic.name, m_.text);
            });
        } else {
            line(0, left, sheet_.clinic.name, m_.text);
        }
        y_ += 4;
        const double frame = y_;
        page_.rehearse([&] { brief_contact(left); });
        page_.round_box(flip(0, left), frame, left, y_ - frame, 7, 2, black);
        y_ = frame;
        brief_contact(left);
        const double end = y_, x = left + 2 * gap;
        y_ = head;
        Style centred = m_.text, big = fitted(code, right, m_.code);
        centred.align = big.align = Align::centre;
        line(x, right, say(sheet_.code_title), centred);
        line(x, right, code, big);
        qr(x + (right - side) / 2, y_, side);
        y_ += side;
        if (!sheet_.kit_label.empty())
            line(x, right, sheet_.kit_label, centred);
        y_ = std::max(end, y_) + m_.lead;
        keep([&] { caution(0, width_, {say(sheet_.emergency)}, false); });
        y_ += m_.lead;
    }
    void brief_contact(double width) {
        const double pad = 8, inner = width - 2 * pad;
        const std::string& other = sheet_.clinic.phone_outside_hours;
        const std::string first = say(sheet_.call), second = say(sheet_.outside_hours) + ":";
        const bool beside = !other.empty() && !large_;
        const double room = beside ? (inner - gap) / 2 : inner;
        // Side by side, both numbers begin at the same height.
        const double least =
            beside ? std::max(page_.measure(first, room, m_.strong).height,
                              page_.measure(second, room, m_.strong).height)
                   : 0;
        const auto number = [&](double x, const std::string& title, const std::string& digits) {
            const double top = y_;
            line(x, room, title, m_.strong);
            y_ = std::max(y_, top + least);
            phone(x, room, digits);
        };
        y_ += pad - 2;
        const double top = y_;
        number(pad, first, sheet_.clinic.phone);
        if (beside) // the hours are heard with their number, and stand under both
            y_ = top + std::max(y_ - top, height([&] { number(0, second, other); }));
        if (!sheet_.clinic.hours.empty())
            line(pad, inner, say(hours_of(sheet_, words_)), m_.text);
        const double end = y_;
        if (beside)
            y_ = top;
        if (!other.empty())
            number(beside ? pad + room + gap : pad, second, other);
        y_ = std::max(end, y_) + pad - 2;
    }

    void contact() {
        const double pad = 10, side = m_.phone.size * 2.7;
        const double right = std::max(side, 130.0), left = width_ - right - 3 * pad;
        const double top = y_;
        double high = 0;
        // Once to learn how high the frame gets, then for good.
        const auto both = [&] {
            y_ = top + pad;
            line(pad, left, say(sheet_.call), m_.strong);
            phone(pad, left, sheet_.clinic.phone);
            if (!sheet_.clinic.hours.empty())
                line(pad, left, say(hours_of(sheet_, words_)), m_.text);
            if (!sheet_.clinic.phone_outside_hours.empty()) {
                y_ += 5;
                line(pad, left, say(sheet_.outside_hours) + ":", m_.strong);
                phone(pad, left, sheet_.clinic.phone_outside_hours);
            }
            double end = y_;
            y_ = top + pad;
            const double x = left + 2 * pad;
            Style centred = m_.text, code = fitted(words_.code(sheet_.code), right, m_.code);
            centred.align = code.align = Align::centre;
            line(x, right, say(sheet_.code_title), centred);
            line(x, right, words_.code(sheet_.code), code);
            qr(x + (right - side) / 2, y_, side);
            y_ += side;
            if (!sheet_.kit_label.empty())
                line(x, right, sheet_.kit_label, centred);
            high = std::max(end, y_) + pad - top;
        };
        page_.rehearse(both);
        page_.round_box(margin, top, width_, high, 7, 2, black);
        both();
        y_ = top + high;
    }
    void phone(double x, double width, const std::string& number) {
        const std::string shown = words_.code(number);
        line(x, width, shown, fitted(shown, width, m_.phone));
    }

    /// A piece of a section that is not broken, and what to do where it is higher than a page.
    struct Unit {
        std::function<void()> draw, flowing;
        const char* opens = nullptr; ///< tag begun before it
        bool closes = false;
        bool close = false; ///< to the next: an introduction, a row of small things
        bool leans = false; ///< on the one before, without which it says too little
        std::span<const SheetBlock> steps = {}; ///< of a brief sheet, placed row by row
        std::size_t columns = 0;                ///< of the rows; `draw` is the first of them
    };

    /// From the block `first` on.
    std::vector<Unit> units_of(const SheetSection& section, std::size_t first_block) {
        std::vector<Unit> out;
        const auto& blocks = section.blocks;
        for (std::size_t i = first_block; i < blocks.size();) {
            const Kind kind = blocks[i].kind;
            if (brief() && (kind == Kind::step || !blocks[i].numbers.empty())) {
                const std::size_t from = i;
                while (i < blocks.size() &&
                       (blocks[i].kind == Kind::step || !blocks[i].numbers.empty()))
                    ++i;
                add_steps(out, std::span(blocks).subspan(from, i - from));
                continue;
            }
            if (!in_list(kind)) {
                const SheetBlock* block = &blocks[i++];
                if (kind == Kind::paragraph)
                    out.push_back({[this, block] {
                                       line(0, width_, say(block->title), m_.text);
                                       y_ += 3;
                                   },
                                   [this, block] {
                                       flow(0, width_, say(block->title), m_.text);
                                       y_ += 5;
                                   },
                                   nullptr,
                                   false,
                                   true});
                else
                    out.push_back({[this, block] {
                                       caution(0, width_, words_of_caution(*block),
                                               !block->body.empty());
                                       y_ += m_.lead;
                                   },
                                   [this, block] { flow_all(words_of_caution(*block)); },
                                   nullptr,
                                   false,
                                   false,
                                   true});
                continue;
            }
            std::size_t end = i;
            while (end < blocks.size() && blocks[end].kind == kind)
                ++end;
            const std::size_t first = out.size();
            const bool table = brief() && (kind == Kind::light || kind == Kind::advice);
            const bool grid = in_grid(kind) || (brief() && !table);
            if (grid && brief())
                add_columns(out, std::span(blocks).subspan(i, end - i));
            else if (grid)
                add_grid(out, blocks, i, end);
            else if (table)
                add_table(out, blocks, i, end);
            for (std::size_t k = i; !table && !grid && k < end; ++k) {
                const SheetBlock* block = &blocks[k];
                if (k + 1 < end && pairs(*block, blocks[k + 1])) {
                    const SheetBlock* next = &blocks[++k];
                    out.push_back({[this, block, next] { two_of(*block, *next); },
                                   [this, block, next] {
                                       long_row(*block);
                                       long_row(*next);
                                   }});
                } else {
                    out.push_back({[this, block] { one_of(*block, 0, width_); },
                                   [this, block] { long_row(*block); }});
                }
            }
            out[first].opens = "L";
            out.back().closes = true;
            i = end;
        }
        return out;
    }
    // ---- pieces of a brief sheet ----

    /// Steps stand in rows, each with its figure. A caution stands under the row in which it comes
    /// up, over all of it, or in what a short row leaves empty.
    struct StepRow {
        std::span<const SheetBlock> all; ///< in the order of the sheet
        std::size_t columns = 1, steps = 0;
    };
    double column(std::size_t columns) const {
        return (width_ - gap * static_cast<double>(columns - 1)) / static_cast<double>(columns);
    }
    /// The next `steps` steps, each with the cautions that are said before it.
    static StepRow next_row(std::span<const SheetBlock> blocks, std::size_t columns,
                            std::size_t steps) {
        StepRow row{{}, columns, 0};
        std::size_t end = 0;
        while (end < blocks.size() && row.steps < steps)
            row.steps += blocks[end++].kind == Kind::step ? 1 : 0;
        row.all = blocks.first(end);
        return row;
    }
    /// Row by row. At the end of a page a row may be short, so that less stays empty.
    void place_steps(std::span<const SheetBlock> blocks, std::size_t columns) {
        bool first = true;
        while (!blocks.empty()) {
            if (!first)
                breathe();
            first = false;
            std::size_t steps = columns;
            if (counting_) {
                while (steps > 1 && !fits(height([&] { step_row(next_row(blocks, columns, steps)); })))
                    --steps;
                if (steps == 1)
                    steps = columns;
                rows_.push_back(steps);
            } else if (!page_.rehearsing()) {
                steps = rows_[next_row_++];
            }
            const StepRow row = next_row(blocks, columns, steps);
            keep([&] { step_row(row); }, [&] { long_steps(row); });
            blocks = blocks.subspan(row.all.size());
        }
    }
    /// Are the titles whole words in few lines?
    bool titles_fit(std::span<const SheetBlock> blocks, std::size_t columns) {
        const double room = column(columns) - before_title(m_.step_figure);
        const double most = (title_lines_ + 0.5) * page_.measure("X", 100, m_.text).height;
        for (const SheetBlock& one : blocks) {
            if (one.kind != Kind::step)
                continue;
            const std::string title = say(one.title);
            if (page_.measure(title, room, m_.text).height > most)
                return false;
            for (std::size_t at = 0; at < title.size();) {
                const std::size_t end = std::min(title.find(' ', at), title.size());
                if (page_.measure(title.substr(at, end - at), 10000, m_.text).width > room)
                    return false;
                at = end + 1;
            }
        }
        return true;
    }
    void add_steps(std::vector<Unit>& out, std::span<const SheetBlock> blocks) {
        // The columns that make it lowest, if no word is broken for it.
        std::size_t best = 2;
        double lowest = 0;
        for (const std::size_t columns : {2, 3, 4}) {
            if (columns > 2 && !titles_fit(blocks, columns))
                break;
            double high = 0;
            for (std::span<const SheetBlock> rest = blocks; !rest.empty();) {
                const StepRow row = next_row(rest, columns, columns);
                high += height([&] { step_row(row); });
                rest = rest.subspan(row.all.size());
            }
            if (lowest == 0 || high < lowest) {
                lowest = high;
                best = columns;
            }
        }
        Unit unit{[this, row = next_row(blocks, best, best)] { step_row(row); }, {}};
        unit.opens = "L";
        unit.closes = true;
        unit.steps = blocks;
        unit.columns = best;
        out.push_back(std::move(unit));
    }
    void step_row(const StepRow& row) {
        double high = 0;
        for (const SheetBlock& one : row.all)
            if (one.kind == Kind::step)
                high = std::max(high, height([&] { step_cell(one, 0, column(row.columns)); }));
        const double top = y_, taken = static_cast<double>(row.steps) * (column(row.columns) + gap),
                     free = width_ - taken;
        // In what is left of a short row, if that makes it lower.
        const auto boxes = [&](double x, double width) {
            for (const SheetBlock& one : row.all)
                if (one.kind == Kind::caution)
                    step_caution(one, x, width);
        };
        const bool beside =
            row.steps < row.columns &&
            std::max(high, height([&] { boxes(taken, free); })) <
                high + height([&] { boxes(0, width_); });
        double x = 0, under = beside ? top : top + high, end = top + high;
        for (const SheetBlock& one : row.all) {
            if (one.kind == Kind::step) {
                y_ = top;
                step_cell(one, x, column(row.columns));
                x += column(row.columns) + gap;
            } else {
                y_ = under;
                step_caution(one, beside ? taken : 0, beside ? free : width_);
                under = y_;
            }
        }
        y_ = std::max(end, under);
    }
    void step_caution(const SheetBlock& block, double x, double width) {
        page_.tagged("LI", [&] {
            page_.tagged("LBody", [&] {
                std::string words = say(block.title);
                if (!block.body.empty())
                    words += " " + say(block.body);
                caution(x, width, {words}, false, block.numbers);
            });
        });
        y_ += m_.lead;
    }
    /// A figure with its number, the title beside it.
    double badge_side() const { return m_.text.size * 1.5; }
    double before_title(double figure) const { return badge_side() * 0.35 + figure + 5; }
    void step_cell(const SheetBlock& block, double x, double width) {
        const double side = m_.step_figure, badge = badge_side(), text_x = x + before_title(side),
                     text_width = x + width - text_x;
        const std::string title = say(block.title);
        const double words = page_.measure(title, text_width, m_.text).height,
                     down = std::max(0.0, (side - words) / 2), top = y_;
        page_.tagged("LI", [&] {
            page_.tagged("Lbl", [&] { number_badge(x, top, badge, block.number); });
            page_.tagged("LBody", [&] {
                // The number stands over the corner of the figure, but is heard before it.
                figure(x + badge * 0.35, top, side, block.figure, title,
                       {flip(x, badge) + badge / 2, top + badge / 2, badge / 2 + 1.5});
                y_ = top + down;
                line(text_x, text_width, title, m_.text);
            });
        });
        y_ = top + std::max(side, words) + m_.lead;
    }
    void long_steps(const StepRow& row) {
        for (const SheetBlock& one : row.all)
            keep([&] { one.kind == Kind::step ? step_cell(one, 0, width_) : step_caution(one, 0, width_); },
                 [&] { flow_all(words_of_caution(one)); });
    }
    /// What is seen or said, and beside it what to do then.
    void add_table(std::vector<Unit>& out, const std::vector<SheetBlock>& blocks, std::size_t from,
                   std::size_t to) {
        const double bar = blocks[from].light ? m_.text.size * 4.5 + gap : 0;
        // The words get as much room each as makes the table lowest.
        double best = 0, lowest = 1e9;
        for (const double share : {0.22, 0.25, 0.28, 0.31, 0.34, 0.4, 0.46}) {
            const double first = (width_ - bar) * share;
            double high = 0;
            for (std::size_t i = from; i < to; ++i)
                high += height([&] { table_row(blocks[i], bar, first); });
            if (high < lowest - 0.1) {
                lowest = high;
                best = first;
            }
        }
        for (std::size_t i = from; i < to; ++i) {
            const SheetBlock* block = &blocks[i];
            out.push_back({[this, block, bar, best] { table_row(*block, bar, best); },
                           [this, block] { flow_all(words_of_caution(*block)); }});
        }
    }
    void table_row(const SheetBlock& block, double bar, double first) {
        const double top = y_, high = m_.text.size * 1.2, x = bar + first + gap;
        page_.tagged("LI", [&] {
            page_.tagged("LBody", [&] {
                if (block.light)
                    light_bar(0, top + 1, bar - gap, high, *block.light);
                line(bar, first, say(block.title), m_.strong);
                const double end = y_;
                y_ = top;
                if (block.light && block.light->meaning == Light::Meaning::recording)
                    right_line(x, width_ - x, say(block.body));
                else
                    line(x, width_ - x, say(block.body), m_.text);
                y_ = std::max({y_, end, top + (block.light ? high + 2 : 0)});
            });
        });
        y_ += 2;
    }

    /// Short things stand side by side, beginning at sixths of the page.
    void add_grid(std::vector<Unit>& out, const std::vector<SheetBlock>& blocks, std::size_t from,
                  std::size_t to) {
        constexpr int parts = 6;
        const bool pictures = std::any_of(
            blocks.begin() + static_cast<long>(from), blocks.begin() + static_cast<long>(to),
            [](const SheetBlock& one) { return !one.figure.empty(); });
        const double part = width_ / parts;
        std::vector<std::vector<Cell>> rows(1);
        int used = 0;
        for (std::size_t i = from; i < to; ++i) {
            const double sign = (blocks[i].kind != Kind::bullet ? m_.box : 5) + 7 + 2 * gap;
            const int wanted =
                pictures ? (large_ ? 3 : 2)
                         : static_cast<int>(std::ceil(
                               (sign + page_.measure(say(blocks[i].title), 10000, m_.text).width) /
                               part));
            const int wide = std::clamp(wanted, 2, parts);
            if (used + wide > parts) {
                rows.emplace_back();
                used = 0;
            }
            rows.back().push_back({&blocks[i], used * part, wide * part - gap});
            used += wide;
        }
        for (std::size_t i = 0; i < rows.size(); ++i)
            out.push_back({[this, cells = rows[i], last = i + 1 == rows.size()] {
                               grid_row(cells);
                               y_ += last ? 3 : 0;
                           },
                           {},
                           nullptr,
                           false,
                           i + 1 < rows.size()});
    }
    /// As many columns, each as wide as it needs, as leave each thing on one line.
    void add_columns(std::vector<Unit>& out, std::span<const SheetBlock> blocks) {
        std::vector<double> wide;
        const double sign = m_.box + 7;
        for (std::size_t columns = 5; columns >= 2; --columns) {
            wide.assign(columns, 0);
            for (std::size_t i = 0; i < blocks.size(); ++i)
                wide[i % columns] = std::max(
                    wide[i % columns],
                    sign + page_.measure(grid_text(blocks[i]), 10000, m_.text).width + 1);
            const double spare = width_ - std::accumulate(wide.begin(), wide.end(), 0.0) -
                                 gap * static_cast<double>(columns - 1);
            if (spare < 0 && columns > 2)
                continue;
            for (double& one : wide)
                one = spare < 0 ? (width_ - gap) / 2 : one + spare / static_cast<double>(columns);
            break;
        }
        for (std::size_t i = 0; i < blocks.size(); i += wide.size()) {
            std::vector<Cell> cells;
            double x = 0;
            for (std::size_t k = 0; k < wide.size() && i + k < blocks.size(); ++k) {
                cells.push_back({&blocks[i + k], x, wide[k]});
                x += wide[k] + gap;
            }
            const bool last = i + wide.size() >= blocks.size();
            out.push_back({[this, cells, last] {
                               grid_row(cells);
                               y_ += last ? 1 : -2;
                           },
                           {},
                           nullptr,
                           false,
                           !last});
        }
    }
    std::vector<std::string> words_of_caution(const SheetBlock& block) const {
        std::vector<std::string> out{say(block.title)};
        if (!block.body.empty())
            out.push_back(say(block.body));
        return out;
    }
    void flow_all(const std::vector<std::string>& words) {
        for (const std::string& one : words)
            flow(0, width_, one, m_.strong);
        y_ += m_.lead;
    }

    /// Paragraphs that a brief sheet sets beside the heading, where there is room.
    std::size_t leading(const SheetSection& section) {
        if (!brief() || section.title.empty())
            return 0;
        std::size_t count = 0;
        while (count < section.blocks.size() && section.blocks[count].kind == Kind::paragraph)
            ++count;
        const double x = beside(section);
        double high = 0;
        for (std::size_t i = 0; i < count; ++i)
            high += page_.measure(say(section.blocks[i].title), width_ - x, m_.text).height;
        return x < width_ * 0.55 && high < full() / 4 ? count : 0;
    }
    double beside(const SheetSection& section) {
        return page_.measure(say(section.title), width_, m_.heading).width + 2 * gap;
    }
    void section_title(const SheetSection& section) {
        if (section.title.empty())
            return;
        if (!brief()) {
            y_ += y_ > top() ? 3 : 0;
            line(0, width_, say(section.title), m_.heading, "H2");
            page_.line(margin, y_ + 1, margin + width_, y_ + 1, 1.4, black);
            y_ += 6;
            return;
        }
        if (y_ > top()) {
            page_.line(margin, y_ + 0.7, margin + width_, y_ + 0.7, 1.4, black);
            y_ += 3;
        }
        const double top = y_, x = beside(section);
        line(0, width_, say(section.title), m_.heading, "H2");
        const double end = y_;
        const std::size_t count = leading(section);
        if (count > 0)
            y_ = top + page_.measure("X", 100, m_.heading).baseline -
                 page_.measure("X", 100, m_.text).baseline;
        // Each on its own line, or all in one where that is lower.
        std::string all;
        double apart = 0;
        for (std::size_t i = 0; i < count; ++i) {
            all += (i > 0 ? " " : "") + say(section.blocks[i].title);
            apart += page_.measure(say(section.blocks[i].title), width_ - x, m_.text).height;
        }
        if (count > 1 && page_.measure(all, width_ - x, m_.text).height < apart - 1)
            line(x, width_ - x, all, m_.text);
        else
            for (std::size_t i = 0; i < count; ++i)
                line(x, width_ - x, say(section.blocks[i].title), m_.text);
        y_ = std::max(end, y_) + 1;
    }

    void section(const SheetSection& section) {
        const std::vector<Unit> units = units_of(section, leading(section));
        // A heading stays with what follows it, an introduction too.
        double first = height([&] { section_title(section); });
        for (std::size_t i = 0; i < std::min<std::size_t>(brief() ? 1 : 2, units.size()); ++i)
            first += height(units[i].draw);
        turn_unless(fits(first + 6) || first > full());
        breathe();
        section_title(section);
        for (std::size_t i = 0; i < units.size(); ++i) {
            const Unit& unit = units[i];
            if (unit.opens)
                page_.begin(unit.opens);
            if (i > 0)
                breathe(units[i - 1].close ? 0.3 : 1);
            else if (brief())
                breathe(0.3);
            // The last row of small things does not go over to the next page alone, nor does what to
            // do when something of a list is true.
            const Unit* next = i + 1 < units.size() ? &units[i + 1] : nullptr;
            if (!unit.steps.empty()) {
                place_steps(unit.steps, unit.columns);
                page_.end("L");
                continue;
            }
            const bool holds = next && ((unit.close && !unit.opens && next->closes) || next->leans);
            keep(unit.draw, unit.flowing, holds ? height(next->draw) : 0);
            if (unit.closes)
                page_.end("L");
        }
    }

    void all() {
        y_ = top();
        page_number_ = 1;
        heading();
        for (const SheetSection& one : sheet_.sections)
            section(one);
        for (const SheetDiary& one : sheet_.diaries) {
            turn();
            // As much room to write as the fewest pages have.
            const auto pages = [&](double air) {
                air_ = air;
                return std::ceil(height([&] { diary(one); }) / full());
            };
            constexpr std::array airs{1.5, 1.3, 1.15, 1.0, 0.9, 0.8};
            const double fewest = pages(airs.back());
            grid_air_ = fewest > 1 ? 1 : 0; // its lines stay on one page if they can
            for (const double air : airs)
                if (pages(air) <= fewest)
                    break;
            diary(one);
            grid_air_ = 0;
        }
        foot();
    }

    // ---- the paper diary ----

    void diary(const SheetDiary& diary) {
        const double side = m_.phone.size * 2.4, left = width_ - side - gap, top = y_;
        line(0, left, say(diary.title), m_.title, "H2");
        line(0, left, say(sheet_.code_title) + " " + words_.code(sheet_.code), m_.strong);
        if (!diary.night.empty())
            line(0, left, say(diary.night), m_.strong);
        y_ += 8;
        const std::string evening = say(diary.evening);
        const Extent said = page_.measure(evening, left, m_.text);
        page_.tagged("P", [&] { put(0, y_, left, evening, m_.text); });
        write_line(said.width + gap, y_ + said.height, std::max(60.0, left - said.width - 2 * gap));
        y_ += said.height;
        qr(width_ - side, top, side);
        y_ = std::max(y_, top + side) + 2;
        line(0, width_, say(diary.how), m_.text);
        y_ += 6;
        grid(diary);
        y_ += 10;
        page_.begin("L");
        for (const SheetQuestion& one : diary.questions)
            keep([&] { question(one, say(diary.unsure)); });
        page_.end("L");
    }

    void write_line(double x, double y, double width) {
        const double left = flip(x, width);
        page_.line(left, y, left + width, y, 0.9, black);
    }

    void grid(const SheetDiary& diary) {
        double label = 0;
        for (const Text& one : diary.rows)
            label = std::max(label, page_.measure(say(one), width_, m_.text).width);
        label = std::min(label + 8, width_ * 0.34);
        const int columns = static_cast<int>(diary.hours.size()) - 1;
        // Half of the last hour's name stands out over the end.
        const double last = page_.measure(say(diary.hours.back()), 200, m_.small).width / 2 + 1;
        const double cell = (width_ - label - last) / columns;
        Style centred = m_.small;
        centred.align = Align::centre;
        const auto hours = [&](bool heard) {
            double high = 0;
            for (int i = 0; i <= columns; ++i) {
                const auto name = [&] {
                    high = put(label + (i - 0.5) * cell, y_, cell,
                               say(diary.hours[static_cast<std::size_t>(i)]), centred)
                               .height;
                };
                if (heard)
                    page_.tagged("TH", name);
                else
                    name();
            }
            y_ += high + 2;
        };
        page_.tagged("Table", [&] {
            page_.tagged("TR", [&] { hours(true); });
            bool first = true;
            for (const Text& row : diary.rows) {
                const auto draw = [&] { grid_line(diary, row, label, cell, columns, first); };
                if (!fits(height(draw))) {
                    turn();
                    hours(false); // seen once more; heard once
                    first = true;
                }
                draw();
                first = false;
            }
        });
    }
    void grid_line(const SheetDiary& diary, const Text& name, double label, double cell,
                   int columns, bool first) {
        const std::string text = say(name);
        const double words = page_.measure(text, label - 6, m_.text).height;
        const double high = std::max(words + 6, m_.text.size * 1.75 * (grid_air_ > 0 ? grid_air_ : air_));
        const double wide = cell * columns;
        page_.tagged("TR", [&] {
            page_.tagged("TH", [&] { put(0, y_ + (high - words) / 2, label - 6, text, m_.text); });
            page_.tagged("TD", [&] {
                const double left = flip(label, wide);
                const int parts = columns * diary.hours_apart * 2; // half hours
                for (int i = 0; i <= parts; ++i) {
                    const bool named = i % (diary.hours_apart * 2) == 0, hour = i % 2 == 0;
                    const double x = left + wide * i / parts;
                    page_.line(x, y_, x, y_ + high, named ? 1.1 : 0.6, named ? black : hairline,
                               hour ? std::vector<double>{} : std::vector<double>{1.5, 2.5});
                }
                if (first)
                    page_.line(left, y_, left + wide, y_, 1.1, black);
                page_.line(left, y_ + high, left + wide, y_ + high, 1.1, black);
            });
        });
        y_ += high;
    }

    void question(const SheetQuestion& question, const std::string& unsure) {
        const double first = page_.measure("X", 100, m_.text).height,
                     air = m_.text.size * std::max(0.2, 0.55 + (air_ - 1) * 1.4);
        page_.tagged("LI", [&] {
            page_.tagged("LBody", [&] {
                const std::string title = say(question.title);
                if (question.answer == SheetQuestion::Answer::free) {
                    line(0, width_, title, m_.text);
                    for (int i = 0; i < 2; ++i) {
                        y_ += m_.text.size * 1.7 * air_;
                        write_line(0, y_, width_);
                    }
                } else if (question.answer == SheetQuestion::Answer::choice) {
                    line(0, width_, title, m_.text);
                    y_ += 4;
                    boxes(question.choices);
                } else {
                    const double box = m_.box + 6 + page_.measure(unsure, 300, m_.text).width;
                    const std::string unit = question.unit.empty() ? "" : say(question.unit);
                    const double unit_width =
                        unit.empty() ? 0 : page_.measure(unit, 300, m_.text).width + 6;
                    const double answer = width_ * 0.21,
                                 title_width = width_ - answer - box - 3 * gap;
                    const double top = y_;
                    line(0, title_width, title, m_.text);
                    const double x = title_width + gap;
                    write_line(x, top + first, answer - unit_width);
                    if (!unit.empty())
                        page_.tagged("P", [&] {
                            put(x + answer - unit_width + 6, top, unit_width, unit, m_.text);
                        });
                    const double box_x = width_ - box;
                    tick_box(box_x, box_top(top));
                    page_.tagged("P", [&] {
                        put(box_x + m_.box + 6, top, box - m_.box - 4, unsure, m_.text);
                    });
                }
            });
        });
        y_ += air;
    }
    void boxes(const std::vector<Text>& choices) {
        const double top = y_, each = width_ / static_cast<double>(choices.size());
        double end = top;
        for (std::size_t i = 0; i < choices.size(); ++i) {
            const double x = each * static_cast<double>(i);
            tick_box(x, box_top(top));
            y_ = top;
            line(x + m_.box + 6, each - m_.box - gap, say(choices[i]), m_.text);
            end = std::max(end, y_);
        }
        y_ = end;
    }
};

} // namespace

Result<std::string> sheet_pdf(const Sheet& sheet, const SheetWords& words,
                              const FigureStore& figures, const SheetForm& form) {
    Document page(form.paper, {words.text(sheet.title) + ", " + sheet.code, words.language,
                               sheet.code, words.right_to_left, true});
    if (const Status drawn = SheetPages(page, sheet, words, figures, form.large).draw(); !drawn)
        return drawn.problems();
    return page.finish();
}

} // namespace evenfall::print
