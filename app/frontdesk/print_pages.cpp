// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The front desk's page for the take-home sheet: what will be printed, and where.
#include "frontdesk/front_desk.h"

#include "base/file.h"
#include "kiosk/figure_provider.h"
#include "plan/plan.h"
#include "print/preview.h"
#include "print/sheet_pdf.h"
#include "sheet/sheet.h"
#include "words/sheet_words.h"

#include <algorithm>

namespace evenfall {
namespace {

// Wide enough to read the sheet on the screen.
constexpr int preview_width = 620;

} // namespace

void FrontDesk::begin_print()
{
    typed_.clear();
    type(QStringLiteral("paper"), QStringLiteral("a4"));
    type(QStringLiteral("size"), QStringLiteral("normal"));
    type(QStringLiteral("length"), QStringLiteral("short"));
    type(QStringLiteral("sheet_page"), QStringLiteral("0"));
    printers_.clear();
    show(Place::print);
    draw_sheet();
    const print::PrintService service = settings_.print_service;
    beside<Result<std::vector<print::Printer>>>([service] { return print::printers(service); },
                                                [this](Result<std::vector<print::Printer>> found) {
                                                    printer_problems_ = found.problems();
                                                    printers_ = found ? *found : std::vector<print::Printer>{};
                                                    for (const print::Printer& one : printers_)
                                                        if (one.is_default || typed("printer").isEmpty())
                                                            type(QStringLiteral("printer"), QString::fromStdString(one.name));
                                                    if (place_ == Place::print)
                                                        fill();
                                                });
}

Result<std::string> FrontDesk::make_sheet_pdf() const
{
    const Result<SessionPlace> place = place_of(visit_->visit.code);
    if (!place)
        return place.problems();
    const Visit& visit = place->visit.visit;
    const Result<Plan> plan = make_plan(place->visit.kit, visit.hand);
    if (!plan)
        return plan.problems();
    const SheetLength length = typed("length") == QLatin1String("full") ? SheetLength::full : SheetLength::brief;
    const Result<Sheet> sheet = make_sheet(visit, place->visit.kit, *plan, length);
    if (!sheet)
        return sheet.problems();
    const Words words(QString::fromStdString(visit.language), visit.zone);
    print::SheetForm form;
    form.paper = typed("paper") == QLatin1String("letter") ? print::Paper::letter : print::Paper::a4;
    form.large = typed("size") == QLatin1String("large");
    return print::sheet_pdf(*sheet, sheet_words(words), built_in_figures(), form);
}

void FrontDesk::draw_sheet()
{
    words_.reset(); // the sheet speaks the patient's language: one translator at a time
    Result<std::string> pdf = make_sheet_pdf();
    take_words();
    sheet_.clear();
    sheet_pages_->put({});
    if (!pdf)
        return say_fault(pdf.problems());
    sheet_ = std::move(*pdf);
    const Result<int> count = print::page_count(sheet_);
    if (!count)
        return say_fault(count.problems());
    QList<QImage> pages;
    for (int i = 0; i < *count; ++i) {
        const Result<print::PagePicture> page = print::page_picture(sheet_, i, preview_width);
        if (!page)
            return say_fault(page.problems());
        pages << QImage(page->rgba.data(), page->width, page->height, page->width * 4, QImage::Format_RGBA8888).copy();
    }
    sheet_pages_->put(std::move(pages));
    type(QStringLiteral("sheet_page"), QStringLiteral("0"));
    ++shown_; // new pictures under the same numbers
    fill();
}

void FrontDesk::fill_print(PageWriter& page)
{
    QVariantList papers{QVariant::fromValue(desk_option("a4", "A4")), QVariant::fromValue(desk_option("letter", "Letter"))};
    QVariantList sizes, lengths, printers, pages;
    for (const char* size : {"normal", "large"})
        sizes << QVariant::fromValue(desk_option(QLatin1String(size), words_->of(std::string("desk.print.") + size)));
    page.choice(QStringLiteral("paper"), words_->of("desk.print.paper"), typed("paper"), papers);
    page.choice(QStringLiteral("size"), words_->of("desk.print.size"), typed("size"), sizes);
    for (const char* length : {"short", "full"})
        lengths << QVariant::fromValue(desk_option(QLatin1String(length), words_->of(std::string("desk.print.") + length)));
    page.choice(QStringLiteral("length"), words_->of("desk.print.length"), typed("length"), lengths);
    for (const print::Printer& one : printers_) {
        const QString name = QString::fromStdString(one.description.empty() ? one.name : one.description);
        DeskOption option = desk_option(QString::fromStdString(one.name), name);
        option.enabled = one.accepting && one.state != print::Printer::State::stopped;
        printers << QVariant::fromValue(option);
    }
    if (!printers.isEmpty())
        page.choice(QStringLiteral("printer"), words_->of("desk.print.printer"), typed("printer"), printers);
    for (const Problem& problem : printer_problems_)
        page.caution(problem_text(problem));
    QList<DeskOption> actions;
    if (!printers.isEmpty() && !sheet_.empty())
        actions << desk_main("print", words_->of("desk.print.main"));
    if (!sheet_.empty()) {
        DeskOption save = desk_option("save", words_->of("desk.print.save"));
        save.main = printers.isEmpty();
        actions << save;
    }
    actions << desk_option("back", words_->of("common.back"));
    page.actions(actions);
    const qsizetype count = sheet_pages_->count();
    if (count == 0)
        return;
    page.text(words_->of("desk.print.body", {words_->number(static_cast<long>(count))}));
    for (qsizetype i = 0; i < count; ++i)
        pages << QVariant::fromValue(desk_option(QString::number(i), words_->number(static_cast<long>(i + 1))));
    page.choice(QStringLiteral("sheet_page"), words_->of("desk.print.page"), typed("sheet_page"), pages);
    const QString number = typed("sheet_page");
    page_.picture = QStringLiteral("image://sheet/%1-%2").arg(number).arg(shown_);
    page_.pictureText = words_->of("desk.print.picture", {words_->number(number.toLong() + 1)});
}

void FrontDesk::act_print(const QString& action)
{
    if (action == QLatin1String("save"))
        return save_sheet();
    if (action != QLatin1String("print"))
        return show(Place::visit);
    const std::string printer = typed_text("printer"), pdf = sheet_;
    const print::Paper paper = typed("paper") == QLatin1String("letter") ? print::Paper::letter : print::Paper::a4;
    const print::PrintService service = settings_.print_service;
    beside<Result<long>>([=] { return print::print_pdf(pdf, printer, paper, 1, service); },
                         [this, printer](Result<long> job) {
                             if (!job)
                                 return say_fault(job.problems());
                             say(words_->of("desk.print.sent", {words_->code(printer)}));
                         });
}

void FrontDesk::save_sheet()
{
    const std::vector<Stick> sticks = settings_.sticks();
    const std::filesystem::path folder = sticks.empty() ? settings_.documents : sticks.front().root;
    const std::filesystem::path file = folder / (visit_->visit.code + "_sheet.pdf");
    if (Status written = write_file(file, sheet_); !written)
        return say_fault(written.problems());
    say(words_->of("desk.print.saved", {words_->code(file.string())}));
}

} // namespace evenfall
