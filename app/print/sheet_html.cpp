// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "print/sheet_html.h"

#include "print/qr.h"
#include "print/sheet_figure.h"

#include <map>
#include <sstream>

namespace evenfall::print {
namespace {

using Kind = SheetBlock::Kind;

std::string escaped(const std::string& text) {
    std::string out;
    for (const char one : text) {
        switch (one) {
        case '&':
            out += "&amp;";
            break;
        case '<':
            out += "&lt;";
            break;
        case '>':
            out += "&gt;";
            break;
        case '"':
            out += "&quot;";
            break;
        case '\n':
            out += "<br>";
            break;
        default:
            out += one;
        }
    }
    return out;
}

class SheetPage {
  public:
    SheetPage(const Sheet& sheet, const SheetWords& words, const FigureStore& figures, bool large)
        : sheet_(sheet), words_(words), figures_(figures), large_(large) {}

    Result<std::string> make();

  private:
    const Sheet& sheet_;
    const SheetWords& words_;
    const FigureStore& figures_;
    bool large_;
    std::ostringstream out_;
    Problems problems_;

    std::string say(const Text& text) const { return escaped(words_.text(text)); }
    std::string code(const std::string& value) const {
        return "<bdi>" + escaped(words_.code(value)) + "</bdi>";
    }

    void picture(const Depiction& figure, const std::string& alternative, const char* kind) {
        const Result<std::string> svg = sheet_figure(figures_, figure, sheet_.hand);
        if (!svg) {
            if (problems_.empty())
                problems_ = svg.problems();
            return;
        }
        const std::size_t at = svg->find("<svg");
        out_ << "<svg class=\"" << kind << "\" role=\"img\" aria-label=\"" << alternative << "\""
             << svg->substr(at + 4);
    }
    void qr(const QrCode& qr) {
        const int side = qr.size + 2 * quiet_zone;
        out_ << "<svg class=\"qr\" role=\"img\" aria-label=\"" << say(sheet_.qr)
             << "\" viewBox=\"0 0 " << side << ' ' << side
             << "\" shape-rendering=\"crispEdges\"><path d=\"";
        for (int y = 0; y < qr.size; ++y)
            for (int x = 0; x < qr.size; ++x)
                if (qr.at(x, y))
                    out_ << 'M' << x + quiet_zone << ' ' << y + quiet_zone << "h1v1h-1z";
        out_ << "\"/></svg>\n";
    }
    bool brief() const { return sheet_.length == SheetLength::brief; }
    void caution(const std::vector<std::string>& words, bool first_bold) {
        out_ << "<div class=\"caution\">";
        bool bold = first_bold;
        for (const std::string& one : words) {
            out_ << (bold ? "<p><strong>" : "<p>") << one << (bold ? "</strong></p>" : "</p>");
            bold = false;
        }
        out_ << "</div>\n";
    }
    void heading(const QrCode& code_square);
    void section(const SheetSection& section);
    void block(const SheetBlock& block, bool wide = false);
    void cells(const std::vector<SheetBlock>& blocks, std::size_t& at);
    void brief_row(const SheetBlock& block);
    void light_bar(const Light& light);
    void diary(const SheetDiary& diary, const QrCode& code_square);
    void question(const SheetQuestion& question, const std::string& unsure);
};

constexpr const char* style = R"css(
* { box-sizing: border-box; }
body { font-family: Inter, "Noto Sans", "Noto Sans Arabic", Arial, sans-serif; line-height: 1.25; color: #000;
  background: #fff; max-width: 46em; margin: 0 auto; padding: 1em; }
h1 { font-size: 1.65em; margin: 0; } p { margin: .1em 0; }
h2 { font-size: 1.35em; margin: .6em 0 .3em; border-bottom: 2px solid #000; break-after: avoid; }
h3 { font-size: 1em; margin: 0; break-after: avoid; } h2 + p { break-after: avoid; }
.contact { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 1em; border: 3px solid #000; border-radius: .5em;
  padding: .7em; margin: .6em 0; break-inside: avoid; }
.phone { font-size: 2.4em; font-weight: 700; line-height: 1.15; margin: 0; }
.phone a { color: inherit; text-decoration: none; }
.match { text-align: center; } .code { font-size: 1.4em; font-weight: 700; } .qr { width: 8em; height: 8em; display: block; margin: 0 auto; }
.caution { border: 2px solid #000; border-radius: .4em; background: #ebebeb; padding: .25em .5em .25em 2.4em; margin: .25em 0;
  position: relative; break-inside: avoid; break-before: avoid; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
[dir=rtl] .caution { padding: .25em 2.4em .25em .5em; }
.caution::before { content: "!"; position: absolute; inset-inline-start: .5em; top: .3em; width: 1.4em; height: 1.4em;
  line-height: 1.4em; border-radius: 50%; text-align: center; background: #000; color: #fff; font-weight: 700;
  print-color-adjust: exact; -webkit-print-color-adjust: exact; }
ul, ol { margin: .4em 0; padding: 0; list-style: none; }
ul.plain { list-style: disc; padding-inline-start: 1.2em; columns: 2; }
ul.things { display: grid; grid-template-columns: repeat(3, 1fr); gap: .2em .6em; }
ul.pairs { display: grid; grid-template-columns: 1fr 1fr; gap: .3em 1.2em; } ul.pairs li { margin: 0; } ul.pairs .wide { grid-column: 1 / -1; }
ul.things li { display: flex; align-items: center; gap: .5em; break-inside: avoid; }
.box { display: inline-block; flex: none; width: 1em; height: 1em; border: 2px solid #000; border-radius: 2px; }
.thing { width: 2.6em; height: 2.6em; flex: none; }
li.step { display: flex; gap: .6em; align-items: flex-start; margin: .35em 0; break-inside: avoid; }
li.step > div { flex: 1; min-width: 0; }
.figure { width: 5.8em; height: 5.8em; flex: none; } .small { width: 3.9em; height: 3.9em; }
.number { flex: none; width: 1.8em; height: 1.8em; line-height: 1.8em; border-radius: 50%; text-align: center; background: #000;
  color: #fff; font-weight: 700; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
.right::before { content: "\2713\00a0"; font-weight: 700; }
.light { width: 6em; height: 1.2em; flex: none; border: 2px solid #000; border-radius: 3px; }
.diary { break-before: page; } .diary .contact { border: 0; padding: 0; margin: 0; } .diary .qr { width: 5.5em; height: 5.5em; margin: 0; }
.write { display: inline-block; border-bottom: 1px solid #000; min-width: 7em; height: 1.2em; }
.lines { border-bottom: 1px solid #000; height: 1.8em; }
table { border-collapse: collapse; width: 100%; margin: .4em 0; break-inside: avoid; table-layout: fixed; }
td { border: 1px solid #000; height: 1.7em; background: linear-gradient(90deg, transparent calc(50% - .5px), #999 50%, transparent calc(50% + .5px)); }
thead th { font-weight: 400; font-size: .85em; text-align: start; }
tbody th { font-weight: 400; text-align: start; width: 30%; padding-inline-end: .4em; }
thead td { width: 30%; border: 0; background: none; height: auto; }
li.question { display: flex; flex-wrap: wrap; justify-content: space-between; gap: .3em 1em; margin: .4em 0; break-inside: avoid; }
li.question > span:first-child { flex: 1 1 18em; }
li.question.wide > span:first-child { flex-basis: 100%; } li.question .lines { flex-basis: 100%; }
.brief { line-height: 1.16; } .brief h1 { font-size: 1.45em; } .brief h2 { font-size: 1.18em; margin: .25em 0 .1em; border-top: 2px solid #000; border-bottom: 0; }
.brief .contact { padding: .3em .6em; margin: .3em 0; } .brief .phone { font-size: 2.2em; } .brief .contact .qr { width: 5em; height: 5em; }
.brief .caution { margin: .2em 0; padding-block: .15em; } .brief ul, .brief ol { margin: .1em 0; }
.brief ul.things { grid-template-columns: repeat(auto-fill, minmax(8.4em, 1fr)); gap: 0 .5em; } .brief ul.chores { grid-template-columns: 1fr 1fr; }
.brief ol.cells { display: grid; grid-template-columns: repeat(3, 1fr); grid-auto-flow: row dense; gap: .2em .5em; }
.brief ol.cells li { margin: 0; } .brief ol.cells li.said { grid-column: 1 / -1; break-inside: avoid; break-before: avoid; }
.brief li.step { position: relative; gap: .35em; align-items: center; } .brief li.step .figure { width: 3.3em; height: 3.3em; margin-inline-start: .5em; }
.brief li.step > .number { position: absolute; top: 0; inset-inline-start: 0; width: 1.5em; height: 1.5em; line-height: 1.5em; box-shadow: 0 0 0 2px #fff; }
.brief .caution .number { display: inline-block; width: 1.4em; height: 1.4em; line-height: 1.4em; margin-inline-end: .2em; }
.brief ul.table li { display: grid; grid-template-columns: 10em 1fr; gap: .6em; break-inside: avoid; } .brief ul.table li.lit { grid-template-columns: 4.5em 12em 1fr; }
.brief ul.table .light { width: 4.5em; }
.brief ol.cells.wide { grid-template-columns: repeat(2, 1fr); }
@page { margin: 10mm; }
@media print { body { max-width: none; padding: 0; margin: 0; }
  .diary h2 { margin-top: 0; } .diary td { height: 1.5em; } li.question { margin: .22em 0; } .diary .lines { height: 1.6em; } }
@media screen and (max-width: 40em) { .brief ol.cells, .brief ul.chores { grid-template-columns: 1fr; } .brief ul.table li, .brief ul.table li.lit { grid-template-columns: 1fr; } ul.plain { columns: 1; } ul.things, ul.pairs { grid-template-columns: 1fr; } .figure { width: 5em; height: 5em; } }
)css";

Result<std::string> SheetPage::make() {
    const Result<QrCode> square = qr_code(sheet_.code);
    if (!square)
        return square.problems();
    out_ << "<!DOCTYPE html>\n<!-- SPDX-License-Identifier: Apache-2.0 -->\n<html lang=\""
         << escaped(words_.language) << "\" dir=\"" << (words_.right_to_left ? "rtl" : "ltr")
         << "\">\n<head>\n<meta charset=\"utf-8\">\n"
         << "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>"
         << say(sheet_.title) << ", " << escaped(sheet_.code) << "</title>\n<style>" << style
         << "body { font-size: " << (large_ ? 18 : 14)
         << "pt; }\n</style>\n</head>\n" << (brief() ? "<body class=\"brief\">\n" : "<body>\n")
         << "<main>\n";
    heading(*square);
    for (const SheetSection& one : sheet_.sections)
        section(one);
    for (const SheetDiary& one : sheet_.diaries)
        diary(one, *square);
    out_ << "</main>\n</body>\n</html>\n";
    if (!problems_.empty())
        return problems_;
    return out_.str();
}

void SheetPage::heading(const QrCode& square) {
    const auto phone = [this](const std::string& number) {
        std::string dial;
        for (const char one : number)
            if ((one >= '0' && one <= '9') || one == '+')
                dial += one;
        out_ << "<p class=\"phone\"><a href=\"tel:" << dial << "\">" << code(number)
             << "</a></p>\n";
    };
    out_ << "<h1>" << say(sheet_.title) << "</h1>\n<p>" << escaped(sheet_.clinic.name)
         << "</p>\n<div class=\"contact\"><div>\n<p><strong>" << say(sheet_.call)
         << "</strong></p>\n";
    phone(sheet_.clinic.phone);
    if (!sheet_.clinic.hours.empty())
        out_ << "<p>" << say(hours_of(sheet_, words_)) << "</p>\n";
    if (!sheet_.clinic.phone_outside_hours.empty()) {
        out_ << "<p><strong>" << say(sheet_.outside_hours) << ":</strong></p>\n";
        phone(sheet_.clinic.phone_outside_hours);
    }
    out_ << "</div><div class=\"match\">\n<p>" << say(sheet_.code_title)
         << "</p>\n<p class=\"code\">" << code(sheet_.code) << "</p>\n";
    qr(square);
    if (!sheet_.kit_label.empty())
        out_ << "<p>" << escaped(sheet_.kit_label) << "</p>\n";
    out_ << "</div></div>\n";
    caution({say(sheet_.emergency)}, false);
}

void SheetPage::section(const SheetSection& section) {
    out_ << "<section>\n";
    if (!section.title.empty())
        out_ << "<h2>" << say(section.title) << "</h2>\n";
    const auto& blocks = section.blocks;
    for (std::size_t i = 0; i < blocks.size();) {
        const Kind kind = blocks[i].kind;
        if (brief() && (kind == Kind::step || !blocks[i].numbers.empty())) {
            cells(blocks, i);
            continue;
        }
        if (kind == Kind::paragraph || kind == Kind::caution) {
            block(blocks[i++]);
            continue;
        }
        if (kind == Kind::step)
            out_ << "<ol start=\"" << blocks[i].number << "\">\n";
        else
            out_ << (kind == Kind::bullet ? "<ul class=\"plain\">\n"
                     : kind == Kind::tick ? "<ul class=\"things\">\n"
                     : brief() ? (kind == Kind::chore ? "<ul class=\"things chores\">\n"
                                                      : "<ul class=\"table\">\n")
                                          : "<ul class=\"pairs\">\n");
        // Two short things stand side by side; what has no other beside it gets the whole line.
        const auto is_short = [&](std::size_t at) {
            return at < blocks.size() && blocks[at].kind == kind && blocks[at].cautions.empty();
        };
        for (bool second = false; i < blocks.size() && blocks[i].kind == kind; ++i) {
            const bool first = !second && is_short(i) && is_short(i + 1);
            block(blocks[i], !first && !second);
            second = first;
        }
        out_ << (kind == Kind::step ? "</ol>\n" : "</ul>\n");
    }
    out_ << "</section>\n";
}

/// Steps of a brief sheet with the cautions among them, from `at` to the end of them.
void SheetPage::cells(const std::vector<SheetBlock>& blocks, std::size_t& at) {
    std::size_t first = at;
    while (blocks[first].kind != Kind::step)
        ++first;
    out_ << "<ol class=\"cells" << (large_ ? " wide" : "") << "\" start=\"" << blocks[first].number
         << "\">\n";
    for (; at < blocks.size() && (blocks[at].kind == Kind::step || !blocks[at].numbers.empty());
         ++at) {
        const SheetBlock& one = blocks[at];
        if (one.kind == Kind::step) {
            out_ << "<li class=\"step\" value=\"" << one.number << "\">";
            picture(one.figure, say(one.title), "figure");
            out_ << "<span class=\"number\">" << escaped(words_.number(one.number))
                 << "</span><div><p>" << say(one.title) << "</p></div></li>\n";
            continue;
        }
        std::string words;
        for (const int number : one.numbers)
            words += "<span class=\"number\">" + escaped(words_.number(number)) + "</span> ";
        words += say(one.title);
        if (!one.body.empty())
            words += " " + say(one.body);
        out_ << "<li class=\"said\">";
        caution({words}, false);
        out_ << "</li>\n";
    }
    out_ << "</ol>\n";
}

/// A chore, a light or what the person would say, with what to do then.
void SheetPage::brief_row(const SheetBlock& one) {
    if (one.kind == Kind::chore) {
        out_ << "<li><span class=\"box\"></span><span>" << say(one.title) << "</span></li>\n";
        return;
    }
    out_ << (one.light ? "<li class=\"lit\">" : "<li>");
    if (one.light)
        light_bar(*one.light);
    out_ << "<p><strong>" << say(one.title) << "</strong></p><p"
         << (one.light && one.light->meaning == Light::Meaning::recording ? " class=\"right\">" : ">")
         << say(one.body) << "</p></li>\n";
}

void SheetPage::block(const SheetBlock& one, bool wide) {
    if (brief() && (one.kind == Kind::chore || one.kind == Kind::light || one.kind == Kind::advice))
        return brief_row(one);
    const std::string title = say(one.title);
    switch (one.kind) {
    case Kind::paragraph:
        out_ << "<p>" << title << "</p>\n";
        return;
    case Kind::bullet:
        out_ << "<li>" << title << "</li>\n";
        return;
    case Kind::advice:
        out_ << (wide ? "<li class=\"wide\">" : "<li>") << "<p><strong>" << title << "</strong></p><p>" << say(one.body) << "</p></li>\n";
        return;
    case Kind::caution:
        caution(one.body.empty() ? std::vector<std::string>{title}
                                 : std::vector<std::string>{title, say(one.body)},
                !one.body.empty());
        return;
    case Kind::tick: {
        std::string name = title;
        if (one.count > 1)
            name += " \u00D7 " + escaped(words_.number(one.count));
        out_ << "<li><span class=\"box\"></span>";
        if (!one.figure.empty())
            picture(one.figure, name, "thing");
        out_ << "<span>" << name << "</span></li>\n";
        return;
    }
    case Kind::light:
        out_ << (wide ? "<li class=\"step wide\">" : "<li class=\"step\">");
        light_bar(*one.light);
        out_ << "<div><p><strong>" << title << "</strong></p><p"
             << (one.light->meaning == Light::Meaning::recording ? " class=\"right\">" : ">")
             << say(one.body) << "</p></div></li>\n";
        return;
    case Kind::chore:
    case Kind::step:
        break;
    }
    const bool numbered = one.kind == Kind::step;
    out_ << (one.kind == Kind::chore && wide ? "<li class=\"step wide\"" : "<li class=\"step\"")
         << (numbered ? " value=\"" + std::to_string(one.number) + "\">" : ">");
    picture(one.figure, title, numbered && one.body.id != "sheet.like" ? "figure" : "figure small");
    if (numbered)
        out_ << "<span class=\"number\">" << escaped(words_.number(one.number)) << "</span>";
    else
        out_ << "<span class=\"box\"></span>";
    out_ << "<div>" << (one.body.empty() ? "<p>" : "<h3>") << title
         << (one.body.empty() ? "</p>" : "</h3>");
    if (!one.body.empty())
        out_ << "<p>" << say(one.body) << "</p>";
    if (!one.right.empty())
        out_ << "<p class=\"right\">" << say(one.right) << "</p>";
    if (!one.cautions.empty()) {
        std::vector<std::string> words;
        for (const Text& text : one.cautions)
            words.push_back(say(text));
        caution(words, false);
    }
    out_ << "</div></li>\n";
}

/// As in the PDF: white while the light shines. The words beside it say the same.
void SheetPage::light_bar(const Light& light) {
    const long shown = 6000;
    out_ << "<svg class=\"light\" aria-hidden=\"true\" viewBox=\"0 0 6000 600\" "
            "preserveAspectRatio=\"none\"><path d=\"M0 0h6000v600H0z\" fill=\""
         << (light.colour == "off" || light.blinks > 0 ? "#000" : "#fff") << "\"/>";
    if (light.colour != "off" && light.blinks > 0) {
        const long on = light.on.count(), off = light.off.count();
        const long round = light.pause.count() > 0
                               ? light.blinks * on + (light.blinks - 1) * off + light.pause.count()
                               : on + off;
        for (long start = 150; round > 0 && start < shown; start += round)
            for (int n = 0; n < light.blinks; ++n)
                out_ << "<path fill=\"#fff\" d=\"M" << start + n * (on + off) << " 0h" << on
                     << "v600h-" << on << "z\"/>";
    }
    out_ << "</svg>";
}

void SheetPage::diary(const SheetDiary& diary, const QrCode& square) {
    out_ << "<section class=\"diary\">\n<h2>" << say(diary.title)
         << "</h2>\n<div class=\"contact\"><div><p><strong>" << say(sheet_.code_title) << ' '
         << code(sheet_.code) << "</strong></p>\n";
    if (!diary.night.empty())
        out_ << "<p><strong>" << say(diary.night) << "</strong></p>\n";
    out_ << "<p>" << say(diary.evening) << " <span class=\"write\"></span></p>\n</div>\n";
    qr(square);
    out_ << "</div>\n<p>" << say(diary.how) << "</p>\n<table>\n<thead><tr><td></td>";
    const std::size_t columns = diary.hours.size() - 1;
    for (std::size_t i = 0; i < columns; ++i)
        out_ << "<th scope=\"col\" colspan=\"" << diary.hours_apart << "\">" << say(diary.hours[i])
             << "</th>";
    out_ << "</tr></thead>\n<tbody>\n";
    for (const Text& row : diary.rows) {
        out_ << "<tr><th scope=\"row\">" << say(row) << "</th>";
        for (std::size_t i = 0; i < columns * static_cast<std::size_t>(diary.hours_apart); ++i)
            out_ << "<td></td>";
        out_ << "</tr>\n";
    }
    out_ << "</tbody></table>\n<ol>\n";
    for (const SheetQuestion& one : diary.questions)
        question(one, say(diary.unsure));
    out_ << "</ol>\n</section>\n";
}

void SheetPage::question(const SheetQuestion& question, const std::string& unsure) {
    using Answer = SheetQuestion::Answer;
    const bool wide = question.answer == Answer::free || question.answer == Answer::choice;
    out_ << "<li class=\"question" << (wide ? " wide" : "") << "\"><span>" << say(question.title)
         << "</span>";
    if (question.answer == Answer::free) {
        out_ << "<span class=\"lines\"></span><span class=\"lines\"></span>";
    } else if (question.answer == Answer::choice) {
        for (const Text& choice : question.choices)
            out_ << "<span><span class=\"box\"></span> " << say(choice) << "</span>";
    } else {
        out_ << "<span><span class=\"write\"></span>";
        if (!question.unit.empty())
            out_ << ' ' << say(question.unit);
        out_ << "</span><span><span class=\"box\"></span> " << unsure << "</span>";
    }
    out_ << "</li>\n";
}

} // namespace

Result<std::string> sheet_html(const Sheet& sheet, const SheetWords& words,
                               const FigureStore& figures, bool large) {
    return SheetPage(sheet, words, figures, large).make();
}

} // namespace evenfall::print
