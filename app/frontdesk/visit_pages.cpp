// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The front desk's visits: the list, one visit with its records, taking records out, paper diaries,
// changes, and ready for the next patient.
#include "frontdesk/front_desk.h"

#include "estimate/contradictions.h"
#include "estimate/estimate_json.h"
#include "journal/kinds.h"
#include "print/summary_pdf.h"
#include "record/folder.h"

#include <algorithm>

namespace evenfall {
namespace {

const QString none = QStringLiteral("\u2013");

DeskRow row(const QString& id, const QStringList& cells, bool marked = false)
{
    DeskRow out;
    out.id = id;
    out.cells = cells;
    out.marked = marked;
    return out;
}

QString when_text(const Words& words, const Zone& zone, const std::string& written)
{
    const Result<WrittenTime> read = parse_time(written);
    const Result<Instant> when = read ? resolve(*read, &zone) : Result<Instant>(Problem{});
    if (!when)
        return QString::fromStdString(written);
    return words.date(format_date(zone.local(*when))) + QStringLiteral(", ") + words.clock(*when);
}

/// A journal that several sessions have one after the other: what was changed so far outlives a page
/// that says that something could not be written.
class SharedJournal final : public Journal {
  public:
    explicit SharedJournal(std::shared_ptr<Journal> inner) : inner_(std::move(inner)) {}
    const std::vector<Entry>& entries() const override { return inner_->entries(); }
    Result<Entry> append(const Stamp& stamp, std::string_view kind, std::string_view subject, std::string_view value) override
    {
        return inner_->append(stamp, kind, subject, value);
    }

  private:
    std::shared_ptr<Journal> inner_;
};

QString minutes_text(const Json& bounds, const char* key)
{
    return bounds.is_object() && bounds.contains(key) ? QString::fromStdString(bounds[key].dump()) : none;
}

/// "240.5 / 312 / 330": at least, best guess, at most.
QString bounds_text(const Json& estimate, const char* key)
{
    if (!estimate.contains(key) || !estimate[key].is_object() || !estimate[key].contains("at_least"))
        return none;
    const Json& bounds = estimate[key];
    return minutes_text(bounds, "at_least") + QStringLiteral(" / ") + minutes_text(bounds, "best_guess") + QStringLiteral(" / ") +
           minutes_text(bounds, "at_most");
}

Json estimate_of(const ShelfRecord& record)
{
    if (!record.found.diary || !contradictions(record.found.diary->night).empty())
        return Json();
    return estimate_to_json(estimate(record.found.diary->night, {.with_chance = false}));
}

QString verdict_text(const Words& words, const ShelfRecord& record)
{
    if (!record.found.diary)
        return none;
    const Json found = estimate_of(record);
    if (found.is_null())
        return words.of("desk.verdict.contradictory");
    return words.of("desk.verdict." + found["verdict"].get<std::string>());
}

QString stand_text(const Words& words, const ShelfVisit& visit)
{
    if (!visit.journal_problems.empty())
        return words.of("desk.stand.unread");
    switch (visit.stand) {
    case ShelfVisit::Stand::prepared: return words.of("desk.stand.prepared");
    case ShelfVisit::Stand::under_way: return words.of(visit.night_has_record ? "desk.stand.between" : "desk.stand.under_way", {words.number(visit.night)});
    case ShelfVisit::Stand::recorded: break;
    }
    return words.of("desk.stand.recorded");
}

QString record_stand(const Words& words, const ShelfRecord& record)
{
    if (!record.found.problems.empty())
        return words.of("desk.record.damaged");
    return words.of(record.taken_out ? "desk.record.taken_out" : "desk.record.only_here");
}

} // namespace

bool FrontDesk::take_visit(const std::string& code)
{
    Result<ShelfVisit> found = shelf_.look(code, [](const Diary& diary) { return print::summary_pdf(diary); });
    if (!found) {
        say_fault(found.problems());
        return false;
    }
    visit_ = std::move(*found);
    return true;
}

const ShelfRecord* FrontDesk::record_in_hand() const
{
    if (!visit_ || visit_->records.empty())
        return nullptr;
    const auto found = std::find_if(visit_->records.begin(), visit_->records.end(), [this](const ShelfRecord& one) { return one.name == record_; });
    return found == visit_->records.end() ? &visit_->records.back() : &*found;
}

Result<SessionPlace> FrontDesk::place_of(const std::string& code) const
{
    Result<VisitWithKit> visit = load_visit(shelf_.visit_file(code), kit_folders());
    if (!visit)
        return visit.problems();
    return SessionPlace{std::move(*visit), nullptr, shelf_.records(code)};
}

// --- The list ---

void FrontDesk::fill_visits(PageWriter& page)
{
    QVariantList rows;
    const Result<std::vector<std::string>> codes = shelf_.codes();
    for (const std::string& code : codes ? *codes : std::vector<std::string>{}) {
        const Result<ShelfVisit> visit = shelf_.look(code);
        if (!visit) {
            rows << QVariant::fromValue(row(QString(), {words_->code(code), none, none, words_->of("desk.stand.unread"), none}, true));
            continue;
        }
        QStringList verdicts;
        for (const ShelfRecord& one : visit->records)
            verdicts << verdict_text(*words_, one);
        const bool tonight = desk_.tonight == code;
        const QString stand = stand_text(*words_, *visit);
        rows << QVariant::fromValue(row(QString::fromStdString(code),
                                        {words_->code(code), QString::fromStdString(visit->visit.kit_label), words_->number(visit->visit.nights),
                                         tonight ? words_->of("desk.stand.tonight", {stand}) : stand,
                                         verdicts.isEmpty() ? none : verdicts.join(QStringLiteral(", "))},
                                        !visit->journal_problems.empty()));
    }
    page.table(QStringLiteral("visits"),
               {words_->of("desk.col.code"), words_->of("desk.col.label"), words_->of("desk.col.nights"), words_->of("desk.col.stand"), words_->of("desk.col.notes")},
               rows, words_->of("desk.visits.none"));
    page.actions({desk_main("go.form", words_->of("desk.section.form"))});
}

void FrontDesk::act_visits(const QString&) {}

// --- One visit ---

void FrontDesk::fill_visit(PageWriter& page)
{
    const Visit& visit = visit_->visit;
    const QString code = QString::fromStdString(visit.code);
    page_.title = words_->of("desk.visit.title", {words_->code(visit.code), QString::fromStdString(visit.kit_label)});
    page.text(words_->of("desk.visit.line", {stand_text(*words_, *visit_), words_->number(visit.nights), words_->clock(visit.bed_time),
                                             Words::own_name(QString::fromStdString(visit.language)), words_->date(visit.return_by)}));
    if (visit_->skin_again == "sore")
        page.caution(words_->of("desk.visit.skin_sore"));
    QList<DeskOption> actions;
    if (desk_.tonight != visit.code)
        actions << desk_main("tonight", words_->of("desk.visit.tonight"));
    actions << desk_option("print", words_->of("desk.print.title"));
    if (!visit_->records.empty())
        actions << desk_option("out", words_->of("desk.out.title"));
    actions << desk_option("paper", words_->of("desk.paper.title"));
    if (!visit_->records.empty())
        actions << desk_option("amend", words_->of("desk.amend.title"));
    if (visit_->night > 0 && !visit_->night_has_record && visit_->journal_problems.empty())
        actions << desk_option("give_up", words_->of("desk.visit.give_up"));
    actions << desk_option("wipe", words_->of("desk.wipe.title"));
    page.actions(actions);
    fill_records(page, *visit_);
}

void FrontDesk::fill_records(PageWriter& page, const ShelfVisit& visit)
{
    page.heading(words_->of("desk.records.heading"));
    QVariantList rows;
    for (const ShelfRecord& one : visit.records) {
        QString evening = one.found.diary ? words_->date(*diary_evening(*one.found.diary)) : none;
        if (one.found.diary && !one.found.diary->amendments.empty())
            evening = words_->of("desk.record.amended", {evening, words_->number(static_cast<long>(one.found.diary->amendments.size()))});
        rows << QVariant::fromValue(row(QString::fromStdString(one.name),
                                        {one.found.diary ? words_->number(one.found.diary->of.night) : none, evening,
                                         verdict_text(*words_, one), bounds_text(estimate_of(one), "needed"), record_stand(*words_, one)},
                                        !one.found.problems.empty()));
    }
    page.table(QStringLiteral("records"),
               {words_->of("desk.col.night"), words_->of("desk.col.evening"), words_->of("desk.col.notes"), words_->of("desk.col.needed"), words_->of("desk.col.stand")},
               rows, words_->of("desk.records.none"));
    if (const ShelfRecord* record = record_in_hand())
        fill_record(page, *record);
}

void FrontDesk::fill_record(PageWriter& page, const ShelfRecord& record)
{
    for (const RecordProblem& one : record.found.problems)
        page.caution(QString::fromStdString(describe(one.file, one.problem)));
    if (!record.found.diary)
        return;
    const Json found = estimate_of(record);
    if (found.is_null()) {
        page.heading(words_->of("desk.contradictions.heading"));
        for (const Problem& problem : contradictions(record.found.diary->night))
            page.text(QString::fromStdString(problem.at + ": " + problem.text));
        return;
    }
    page.heading(words_->of("desk.sensors.heading", {words_->number(record.found.diary->of.night)}));
    QVariantList sensors, lost;
    const Result<SessionPlace> place = place_of(visit_->visit.code); // for the names of its parts
    const auto name = [this, &place](const std::string& id) {
        const Part* part = place ? place->visit.kit.part(id) : nullptr;
        return part ? words_->part(*part) : QString::fromStdString(id);
    };
    for (const auto& [id, bounds] : found["sensors"].items())
        sensors << QVariant::fromValue(row(QString(), {name(id), minutes_text(bounds, "at_least"), minutes_text(bounds, "best_guess"), minutes_text(bounds, "at_most")}));
    page.table(QStringLiteral("sensors"), {words_->of("desk.col.sensor"), words_->of("desk.col.at_least"), words_->of("desk.col.best_guess"), words_->of("desk.col.at_most")}, sensors);
    page.heading(words_->of("desk.lost.heading"));
    for (const Json& one : found["lost"]) {
        const std::string cause = one["cause"].get<std::string>();
        const bool sensor = found["sensors"].contains(cause);
        lost << QVariant::fromValue(row(QString(), {sensor ? name(cause) : words_->of("desk.lost." + cause), minutes_text(one, "minutes"), minutes_text(one, "alone")}));
    }
    page.table(QStringLiteral("lost"), {words_->of("desk.col.cause"), words_->of("desk.col.off"), words_->of("desk.col.alone")}, lost, words_->of("desk.lost.none"));
}

void FrontDesk::act_visit(const QString& action)
{
    const std::string code = visit_->visit.code;
    if (action == QLatin1String("tonight")) {
        desk_.tonight = code;
        if (save_settings())
            emit tonightChosen();
        if (!fault_)
            say(words_->of("desk.visit.on_tablet", {words_->code(code)}));
    } else if (action == QLatin1String("print")) {
        begin_print();
    } else if (action == QLatin1String("out")) {
        typed_.clear();
        show(Place::out);
    } else if (action == QLatin1String("paper")) {
        typed_.clear();
        type(QStringLiteral("night"), QString::number(visit_->night_has_record || visit_->night == 0 ? std::min(visit_->night + 1, visit_->visit.nights) : visit_->night));
        show(Place::paper);
    } else if (action == QLatin1String("amend")) {
        typed_.clear();
        show(Place::amend);
    } else if (action == QLatin1String("give_up")) {
        give_up_night();
    } else if (action == QLatin1String("wipe")) {
        typed_.clear();
        show(Place::wipe);
    }
}

void FrontDesk::give_up_night()
{
    const std::string code = visit_->visit.code;
    const auto write = [&]() -> Status {
        Result<SessionPlace> place = place_of(code);
        if (!place)
            return place.problems();
        Result<Opened> opened = open_journal(shelf_.journal(code));
        if (!opened)
            return opened.problems();
        place->journal = std::move(opened->journal);
        Result<std::unique_ptr<Session>> session = Session::begin(std::move(*place), clock_);
        if (!session)
            return session.problems();
        if (Status said = (*session)->say(kinds::given_up); !said)
            return said;
        if (Status written = (*session)->write_night(); !written)
            return written;
        return (*session)->open("finished"); // where the next night begins
    };
    if (Status written = write(); !written)
        return say_fault(written.problems());
    if (take_visit(code))
        say(words_->of("desk.visit.given_up"));
}

// --- Taking records out ---

void FrontDesk::fill_out(PageWriter& page)
{
    page.text(words_->of("desk.out.body"));
    QVariantList sticks;
    for (const Stick& one : settings_.sticks())
        sticks << QVariant::fromValue(desk_option(QString::fromStdString(one.root.string()), QString::fromStdString(one.name)));
    if (sticks.size() == 1 && typed("stick").isEmpty())
        type(QStringLiteral("stick"), sticks[0].value<DeskOption>().id);
    QList<DeskOption> actions;
    if (sticks.isEmpty()) {
        page.caution(words_->of("desk.out.no_stick"));
        actions << desk_main("again", words_->of("desk.out.again"));
    } else {
        page.choice(QStringLiteral("stick"), words_->of("desk.out.stick"), typed("stick"), sticks);
        actions << desk_main("take", words_->of("desk.out.main"));
    }
    actions << desk_option("back", words_->of("common.back"));
    page.actions(actions);
    QVariantList rows;
    for (const ShelfRecord& one : visit_->records)
        rows << QVariant::fromValue(row(QString(), {QString::fromStdString(one.name), record_stand(*words_, one), one.taken_out ? when_text(*words_, *zone(), one.taken_out_at) : none}, !one.found.problems.empty()));
    page.table(QStringLiteral("to_take"), {words_->of("desk.col.record"), words_->of("desk.col.stand"), words_->of("desk.col.when")}, rows);
}

void FrontDesk::act_out(const QString& action)
{
    if (action == QLatin1String("take"))
        take_out();
    else if (action == QLatin1String("again"))
        fill();
    else
        show(Place::visit);
}

void FrontDesk::take_out()
{
    const std::vector<Stick> all = settings_.sticks();
    const auto stick = std::find_if(all.begin(), all.end(), [this](const Stick& one) { return QString::fromStdString(one.root.string()) == typed("stick"); });
    if (stick == all.end())
        return say(words_->of("desk.out.choose"), true);
    struct Outcome {
        Problems problems;
        std::optional<LetGo> let_go;
    };
    const std::string code = visit_->visit.code, when = now_text();
    std::vector<std::string> names;
    for (const ShelfRecord& one : visit_->records)
        names.push_back(one.name);
    const Shelf shelf = shelf_;
    const Stick to = *stick;
    const auto let = settings_.let_go;
    beside<Outcome>(
        [=] {
            Outcome out;
            for (const std::string& name : names)
                if (Status taken = shelf.take_out(code, name, to.root, when); !taken)
                    for (Problem problem : taken.problems()) {
                        problem.text = name + ": " + problem.text;
                        out.problems.push_back(std::move(problem));
                    }
            Result<LetGo> gone = let(to);
            if (gone)
                out.let_go = *gone;
            else
                out.problems.insert(out.problems.end(), gone.problems().begin(), gone.problems().end());
            return out;
        },
        [this, code](Outcome out) {
            take_visit(code);
            if (!out.problems.empty())
                return say_fault(out.problems);
            say(words_->of(*out.let_go == LetGo::unmounted ? "desk.out.safe" : "desk.out.synced"));
        });
}

// --- Ready for the next patient ---

void FrontDesk::fill_wipe(PageWriter& page)
{
    page_.title = words_->of("desk.wipe.title");
    page.text(words_->of("desk.wipe.body", {words_->code(visit_->visit.code)}));
    const std::vector<std::string> against = Shelf::reasons_against(*visit_);
    if (against.empty()) {
        page.text(words_->of("desk.wipe.safe"));
    } else {
        for (const std::string& one : against)
            page.caution(words_->of("desk.wipe.against." + one));
        page.field(QStringLiteral("reason"), words_->of("desk.wipe.reason"), typed("reason"), words_->of("desk.wipe.reason_hint"));
    }
    page.actions({desk_option("wipe", words_->of("desk.wipe.main")), desk_option("back", words_->of("common.back"))});
}

void FrontDesk::act_wipe(const QString& action)
{
    if (action != QLatin1String("wipe"))
        return show(Place::visit);
    const std::string code = visit_->visit.code;
    // What the page says must still hold: somebody may have pulled the stick, or the night gone on.
    if (!take_visit(code))
        return;
    if (Status wiped = shelf_.wipe(*visit_, typed_text("reason"), now_text()); !wiped)
        return show_errors(wiped.problems());
    if (desk_.tonight == code) {
        emit tonightChosen();
        desk_.tonight.clear();
        if (!save_settings())
            return;
    }
    visit_.reset();
    typed_.clear();
    show(Place::visits);
    say(words_->of("desk.wipe.done"));
}

// --- Changes, and paper ---

void FrontDesk::fill_amend(PageWriter& page)
{
    page.text(words_->of("desk.amend.body"));
    QVariantList records;
    for (const ShelfRecord& one : visit_->records)
        if (one.found.problems.empty())
            records << QVariant::fromValue(desk_option(QString::fromStdString(one.name), QString::fromStdString(one.name)));
    if (typed("record").isEmpty() && !records.isEmpty())
        type(QStringLiteral("record"), records.back().value<DeskOption>().id);
    page.choice(QStringLiteral("record"), words_->of("desk.col.record"), typed("record"), records);
    page.field(QStringLiteral("by"), words_->of("desk.who"), typed("by"), words_->of("desk.who_hint"));
    page.field(QStringLiteral("why"), words_->of("desk.why"), typed("why"), words_->of("desk.why_hint"));
    page.actions({desk_main("begin", words_->of("desk.amend.main")), desk_option("back", words_->of("common.back"))});
}

void FrontDesk::act_amend(const QString& action)
{
    if (action != QLatin1String("begin"))
        return show(Place::visit);
    Problems problems;
    for (const char* field : {"by", "why"})
        if (typed_text(QLatin1String(field)).empty())
            problems.push_back({Fault::malformed, "missing", pointer("", std::string_view(field)), ""});
    if (!problems.empty())
        return show_errors(problems);
    const std::string name = typed_text("record");
    const auto record = std::find_if(visit_->records.begin(), visit_->records.end(), [&name](const ShelfRecord& one) { return one.name == name; });
    if (record == visit_->records.end() || !record->found.diary || !record->found.problems.empty())
        return;
    const std::string code = visit_->visit.code, by = typed_text("by"), why = typed_text("why");
    const std::shared_ptr<Journal> journal = make_memory_journal(record->found.diary->journal);
    sit([this, code, by, why, journal]() -> Result<std::unique_ptr<Session>> {
        Result<SessionPlace> place = place_of(code);
        if (!place)
            return place.problems();
        place->journal = std::make_unique<SharedJournal>(journal);
        return Session::begin_amendment(std::move(*place), clock_, by, why);
    });
}

void FrontDesk::fill_paper(PageWriter& page)
{
    page.text(words_->of("desk.paper.body"));
    page.field(QStringLiteral("night"), words_->of("desk.col.night"), typed("night"));
    page.field(QStringLiteral("evening"), words_->of("desk.paper.evening"), typed("evening"), words_->of("desk.date_hint"));
    page.field(QStringLiteral("by"), words_->of("desk.who"), typed("by"), words_->of("desk.who_hint"));
    page.actions({desk_main("begin", words_->of("desk.paper.main")), desk_option("back", words_->of("common.back"))});
}

void FrontDesk::act_paper(const QString& action)
{
    if (action != QLatin1String("begin"))
        return show(Place::visit);
    const std::string evening = typed_text("evening"), by = typed_text("by");
    bool number = false;
    const long night = typed("night").trimmed().toLong(&number);
    Problems problems;
    if (!number || night < 1 || night > visit_->visit.nights)
        problems.push_back({Fault::malformed, "bad_nights", "/night", ""});
    if (evening.size() != 10 || !parse_time(evening + "T00:00Z"))
        problems.push_back({Fault::malformed, "bad_date", "/evening", ""});
    if (by.empty())
        problems.push_back({Fault::malformed, "missing", "/by", ""});
    if (!problems.empty())
        return show_errors(problems);
    const std::string code = visit_->visit.code;
    sit([this, code, night, by, evening]() -> Result<std::unique_ptr<Session>> {
        Result<SessionPlace> place = place_of(code);
        if (!place)
            return place.problems();
        Result<Opened> opened = open_journal(shelf_.journal(code));
        if (!opened)
            return opened.problems();
        place->journal = std::move(opened->journal);
        return Session::begin_paper(std::move(*place), clock_, night, by, evening);
    });
}

void FrontDesk::sit(const OpenSession& session)
{
    if (Status sat = kiosk_.sit(session); !sat) {
        take_words(); // the kiosk's own were on top meanwhile
        say_fault(sat.problems());
    }
}

void FrontDesk::sitting_over(const QString& record)
{
    kiosk_.stand_up();
    kiosk_.put_down();
    take_words(); // the kiosk's own were on top meanwhile
    typed_.clear();
    record_ = record.toStdString();
    if (!visit_ || !take_visit(visit_->visit.code))
        return show(Place::visits);
    show(Place::visit);
    say(record.isEmpty() ? words_->of("desk.sitting.nothing") : words_->of("desk.sitting.written", {words_->code(record.toStdString())}));
}

} // namespace evenfall
