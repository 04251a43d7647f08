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
    sent_.reset();
    show(Place::print);
    draw_sheet();
    look_for_printers();
}

void FrontDesk::look_for_printers()
{
    const print::PrintService service = settings_.print_service;
    beside<Result<std::vector<print::Printer>>>(
        [service] { return print::printers(service); },
        [this](Result<std::vector<print::Printer>> found) {
            printer_problems_ = found.problems();
            printers_ = found ? std::move(*found) : std::vector<print::Printer>{};
            // The default one where it can be used, else the first that can.
            const print::Printer* chosen = nullptr;
            for (const print::Printer& one : printers_)
                if (one.usable() && (!chosen || one.is_default))
                    chosen = &one;
            type(QStringLiteral("printer"), chosen ? QString::fromStdString(chosen->name) : QString());
            if (place_ == Place::print)
                fill();
        });
}

QString FrontDesk::printer_name(const std::string& printer) const
{
    for (const print::Printer& one : printers_)
        if (one.name == printer && !one.description.empty())
            return words_->code(one.description);
    return words_->code(printer);
}

/// What somebody can do something about, in words; empty: nothing.
QString FrontDesk::reasons_text(const std::vector<print::PrinterReason>& reasons) const
{
    QStringList out;
    for (const print::PrinterReason& one : reasons)
        if (one.severity != print::PrinterReason::Severity::report)
            out << words_->of("desk.printer." + one.id);
    return words_->locale().createSeparatedList(out);
}

QString FrontDesk::printer_label(const print::Printer& printer) const
{
    const QString name = printer_name(printer.name), why = reasons_text(printer.reasons);
    if (printer.state == print::Printer::State::stopped)
        return words_->of("desk.printer_stopped", {name, why.isEmpty() ? words_->of("desk.printer.other") : why});
    if (!printer.accepting)
        return words_->of("desk.printer_closed", {name});
    return why.isEmpty() ? name : words_->of("desk.printer_says", {name, why});
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
    bool usable = false;
    for (const print::Printer& one : printers_) {
        DeskOption option = desk_option(QString::fromStdString(one.name), printer_label(one));
        option.enabled = one.usable();
        usable = usable || option.enabled;
        printers << QVariant::fromValue(option);
    }
    if (!printers.isEmpty())
        page.choice(QStringLiteral("printer"), words_->of("desk.print.printer"), typed("printer"), printers);
    for (const Problem& problem : printer_problems_)
        page.caution(problem_text(problem));
    QList<DeskOption> actions;
    if (usable && !sheet_.empty())
        actions << desk_main("print", words_->of("desk.print.main"));
    if (!sheet_.empty()) {
        DeskOption save = desk_option("save", words_->of("desk.print.save"));
        save.main = !usable;
        actions << save;
    }
    if (!usable)
        actions << desk_option("look", words_->of("desk.print.look"));
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
    if (action == QLatin1String("look"))
        return look_for_printers();
    if (action != QLatin1String("print")) {
        sent_.reset();
        return show(Place::visit);
    }
    const std::string printer = typed_text("printer"), pdf = sheet_;
    const print::Paper paper = typed("paper") == QLatin1String("letter") ? print::Paper::letter : print::Paper::a4;
    const print::PrintService service = settings_.print_service;
    beside<Result<long>>([=] { return print::print_pdf(pdf, printer, paper, 1, service); },
                         [this, printer](Result<long> job) {
                             if (!job) {
                                 say_fault(job.problems());
                                 return look_for_printers(); // which say now what is wrong with them
                             }
                             sent_ = SentJob{printer, *job};
                             say(words_->of("desk.print.sent", {printer_name(printer)}));
                             follow_.start();
                         });
}

/// Says how far the sheet is that was sent, for as long as its page is looked at.
void FrontDesk::follow_job()
{
    if (!sent_ || place_ != Place::print || following_)
        return;
    const print::PrintService service = settings_.print_service;
    run<Result<print::JobState>>(following_, [service, sent = *sent_] { return print::job_state(sent.printer, sent.id, service); },
                                 [this, id = sent_->id](const Result<print::JobState>& state) {
                                     if (sent_ && sent_->id == id && place_ == Place::print)
                                         job_seen(state);
                                     else
                                         follow_job(); // of another sheet, sent meanwhile
                                 });
}

void FrontDesk::job_seen(const Result<print::JobState>& state)
{
    using State = print::JobState::State;
    static constexpr std::pair<State, const char*> words[] = {
        {State::waiting, "waiting"}, {State::held, "held"},           {State::printing, "printing"}, {State::stopped, "stopped"},
        {State::printed, "printed"}, {State::cancelled, "cancelled"}, {State::aborted, "aborted"}};
    if (!state) {
        sent_.reset();
        return say_fault(state.problems());
    }
    const auto* word = std::find_if(std::begin(words), std::end(words), [&](const auto& one) { return one.first == state->state; });
    const QString name = printer_name(sent_->printer), why = reasons_text(state->reasons);
    QString told = words_->of(std::string("desk.job.") + word->second, {name});
    if (!why.isEmpty())
        told += QLatin1Char('\n') + words_->of("desk.printer_says", {name, why});
    const bool well = state->state == State::printed || (!state->over() && why.isEmpty());
    if (told != message_)
        say(told, !well);
    if (state->over())
        sent_.reset();
    else
        follow_.start();
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
