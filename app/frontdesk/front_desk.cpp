// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "frontdesk/front_desk.h"

#include "base/file.h"

#include <QCoreApplication>
#include <algorithm>

namespace evenfall {
namespace {

// A desk that is left alone locks itself: long enough to fetch a kit, short enough for a waiting room.
constexpr int unattended_ms = 10 * 60 * 1000;

constexpr int follow_ms = 1000;

} // namespace

FrontDesk::FrontDesk(Kiosk& kiosk, Settings settings, std::shared_ptr<const Clock> clock, QObject* parent)
    : QObject(parent), kiosk_(kiosk), settings_(std::move(settings)), clock_(std::move(clock)), shelf_(settings_.data),
      lock_(shelf_.desk(), settings_.pin_cost)
{
    connect(&kiosk_, &Kiosk::deskWanted, this, &FrontDesk::enter);
    // Not at once: the kiosk is still in the middle of its own work.
    connect(&kiosk_, &Kiosk::sittingOver, this, &FrontDesk::sitting_over, Qt::QueuedConnection);
    unattended_.setSingleShot(true);
    unattended_.setInterval(unattended_ms);
    connect(&unattended_, &QTimer::timeout, this, &FrontDesk::lock_again);
    pin_wait_.setInterval(1000);
    connect(&pin_wait_, &QTimer::timeout, this, [this] {
        if (Result<PinAnswer> answer = lock_.look(boot_time()))
            pin_ = *answer;
        fill();
    });
    follow_.setSingleShot(true);
    follow_.setInterval(follow_ms);
    connect(&follow_, &QTimer::timeout, this, &FrontDesk::follow_job);
}

FrontDesk::~FrontDesk()
{
    for (const QPointer<QThread>& thread : {beside_, following_})
        if (thread)
            thread->wait();
}

const std::vector<FrontDesk::PlaceRow>& FrontDesk::places()
{
    using D = FrontDesk;
    static const std::vector<PlaceRow> rows{
        {Place::first_pin, "desk.first_pin.title", "", &D::fill_first_pin, &D::act_first_pin},
        {Place::pin, "desk.pin.title", "", &D::fill_pin, &D::act_pin},
        {Place::forgotten, "desk.forgotten.title", "", &D::fill_forgotten, &D::act_forgotten},
        {Place::visits, "desk.visits.title", "visits", &D::fill_visits, &D::act_visits},
        {Place::visit, "desk.visit.title", "visits", &D::fill_visit, &D::act_visit},
        {Place::form, "desk.form.title", "form", &D::fill_form, &D::act_form},
        {Place::out, "desk.out.title", "visits", &D::fill_out, &D::act_out},
        {Place::wipe, "desk.wipe.title", "visits", &D::fill_wipe, &D::act_wipe},
        {Place::amend, "desk.amend.title", "visits", &D::fill_amend, &D::act_amend},
        {Place::paper, "desk.paper.title", "visits", &D::fill_paper, &D::act_paper},
        {Place::print, "desk.print.title", "visits", &D::fill_print, &D::act_print},
        {Place::kits, "desk.kits.title", "kits", &D::fill_kits, &D::act_kits},
        {Place::kit, "desk.kit.title", "kits", &D::fill_kit, &D::act_kit},
        {Place::languages, "desk.languages.title", "languages", &D::fill_languages, &D::act_languages},
        {Place::tablet, "desk.tablet.title", "tablet", &D::fill_tablet, &D::act_tablet},
    };
    return rows;
}

const FrontDesk::PlaceRow& FrontDesk::here() const
{
    return *std::find_if(places().begin(), places().end(), [this](const PlaceRow& row) { return row.place == place_; });
}

Result<std::unique_ptr<Session>> FrontDesk::open_tonight(const Settings& settings, const std::shared_ptr<const Clock>& clock)
{
    const Shelf shelf(settings.data);
    if (Status prepared = shelf.prepare(); !prepared)
        return prepared.problems();
    const Result<DeskSettings> desk = load_desk_settings(shelf.desk(), settings.system_zone);
    // Settings that cannot be read keep nobody from their night: then no visit is known here.
    std::error_code ignored;
    if (!desk || desk->tonight.empty() || !std::filesystem::exists(shelf.visit_file(desk->tonight), ignored))
        return Problem{Fault::refused, no_visit, "", "no visit is on this tablet"};
    std::vector<std::filesystem::path> kits{shelf.own_kits()};
    kits.insert(kits.end(), settings.kit_folders.begin(), settings.kit_folders.end());
    Result<VisitWithKit> visit = load_visit(shelf.visit_file(desk->tonight), kits);
    if (!visit)
        return visit.problems();
    Result<Opened> opened = open_journal(shelf.journal(desk->tonight));
    if (!opened)
        return opened.problems();
    return Session::begin({std::move(*visit), std::move(opened->journal), shelf.records(desk->tonight)}, clock);
}

// --- Coming and going ---

void FrontDesk::enter()
{
    if (is_open())
        return;
    kiosk_.put_down();
    if (Status prepared = shelf_.prepare(); !prepared) {
        kiosk_.reopen(); // which says what is wrong with the data folder
        return;
    }
    const bool settings_read = read_settings();
    take_words();
    Result<PinAnswer> answer = lock_.look(boot_time());
    pin_ = answer ? *answer : PinAnswer{PinState::damaged, 0, Span(0), answer.problems()};
    show(pin_.state == PinState::none ? Place::first_pin : Place::pin);
    if (!settings_read)
        say(words_->of("desk.settings_damaged"), true);
    else if (!answer)
        say_fault(answer.problems());
}

void FrontDesk::leave()
{
    place_ = Place::closed;
    pin_wait_.stop();
    unattended_.stop();
    typed_.clear();
    visit_.reset();
    kiosk_.stand_up();
    kiosk_.reopen();
    emit changed();
}

void FrontDesk::lock_again()
{
    if (!is_open() || page_.section.isEmpty() || kiosk_.session())
        return; // locked, or somebody sits at the questions, which name no other visit
    if (beside_)
        return attended();
    typed_.clear();
    visit_.reset();
    if (Result<PinAnswer> answer = lock_.look(boot_time()))
        pin_ = *answer;
    show(Place::pin);
}

void FrontDesk::attended()
{
    if (is_open() && !page_.section.isEmpty())
        unattended_.start();
}

void FrontDesk::let_time_pass()
{
    if (unattended_.isActive())
        lock_again();
}

void FrontDesk::take_words()
{
    QString language = settings_.language.isEmpty() ? QString::fromStdString(desk_.language) : settings_.language;
    if (!Words::languages().contains(language))
        language = QStringLiteral("en");
    words_.reset(); // one translator at a time
    words_ = std::make_unique<Words>(language, zone());
    emit languageChanged();
}

bool FrontDesk::read_settings()
{
    Result<DeskSettings> read = load_desk_settings(shelf_.desk(), settings_.system_zone);
    desk_ = DeskSettings{};
    desk_.zone = settings_.system_zone;
    if (!read)
        return false;
    desk_ = std::move(*read);
    return true;
}

bool FrontDesk::save_settings()
{
    const Status saved = save_desk_settings(shelf_.desk(), desk_);
    if (!saved)
        say_fault(saved.problems());
    return saved.ok();
}

ZonePtr FrontDesk::zone() const
{
    if (Result<ZonePtr> found = find_zone(desk_.zone))
        return *found;
    return *find_zone("UTC");
}

BootTime FrontDesk::boot_time() const
{
    const Stamp now = clock_->now(*zone());
    return {now.boot, now.since_boot};
}

std::string FrontDesk::now_text() const
{
    const Instant now = std::chrono::floor<std::chrono::seconds>(clock_->now(*zone()).utc);
    return format_time(now, zone()->offset_at(now));
}

std::vector<std::filesystem::path> FrontDesk::kit_folders() const
{
    std::vector<std::filesystem::path> folders{shelf_.own_kits()};
    folders.insert(folders.end(), settings_.kit_folders.begin(), settings_.kit_folders.end());
    return folders;
}

void FrontDesk::wait()
{
    while (beside_) {
        beside_->wait();
        QCoreApplication::processEvents();
    }
}

// --- The page ---

void FrontDesk::show(Place place, const QString& focus)
{
    if (place != place_) {
        message_.clear();
        fault_ = false;
    }
    place_ = place;
    errors_.clear();
    page_.focus = focus;
    ++shown_;
    fill();
    emit pageShown();
}

void FrontDesk::fill()
{
    if (!is_open())
        return;
    const QString focus = page_.focus;
    page_ = DeskPage{};
    page_.focus = focus;
    page_.title = words_->of(here().title);
    page_.message = message_;
    page_.fault = fault_;
    page_.busy = beside_ != nullptr;
    page_.busyText = words_->of("desk.busy");
    page_.section = QString::fromLatin1(here().section);
    if (!page_.section.isEmpty()) {
        const std::pair<const char*, const char*> sections[] = {
            {"form", "F2"}, {"visits", "F3"}, {"kits", "F4"}, {"languages", "F5"}, {"tablet", "F6"}, {"leave", "F9"}};
        for (const auto& [id, key] : sections) {
            DeskOption option = desk_option(QStringLiteral("go.") + QLatin1String(id), words_->of(std::string("desk.section.") + id));
            option.key = QLatin1String(key);
            page_.sections << QVariant::fromValue(option);
        }
    }
    PageWriter writer(page_, errors_);
    (this->*here().fill)(writer);
    attended();
    emit changed();
}

void FrontDesk::say(const QString& message, bool fault)
{
    message_ = message;
    fault_ = fault;
    fill();
}

QString FrontDesk::problem_text(const Problem& problem) const
{
    static const std::vector<std::string> known{
        "disk_full", "read_only", "no_place", "second_copy", "bad_code", "visit_exists", "missing", "bad_phone", "bad_date",
        "bad_time_of_day", "bad_nights", "bad_hours", "unknown_zone", "no_phone", "clock_not_confirmed", "reason_missing",
        "reason_names_code", "record_exists", "pin_form", "pin_set", "no_print_service", "no_printer", "printer_stopped", "not_accepted",
        "no_print_answer", "no_job", "print_not_loaded"};
    if (std::find(known.begin(), known.end(), problem.code) != known.end())
        return words_->of("desk.problem." + problem.code);
    return QString::fromStdString((problem.at.empty() ? "" : problem.at + ": ") + problem.text);
}

void FrontDesk::say_fault(const Problems& problems)
{
    QStringList lines;
    for (const Problem& problem : problems)
        lines << problem_text(problem);
    lines.removeDuplicates();
    say(lines.join(QLatin1Char('\n')), true);
}

void FrontDesk::show_errors(const Problems& problems)
{
    errors_.clear();
    Problems elsewhere;
    QString first;
    for (const Problem& problem : problems) {
        const QString id = QString::fromStdString(problem.at.empty() ? "" : problem.at.substr(1)).section(QLatin1Char('/'), 0, 0);
        const bool field = std::any_of(page_.blocks.begin(), page_.blocks.end(), [&id](const QVariant& one) {
            return !id.isEmpty() && one.value<DeskBlock>().id == id;
        });
        if (!field) {
            elsewhere.push_back(problem);
            continue;
        }
        errors_[id] = problem_text(problem);
    }
    for (const QVariant& one : page_.blocks)
        if (const QString id = one.value<DeskBlock>().id; first.isEmpty() && errors_.contains(id))
            first = id;
    page_.focus = first;
    if (elsewhere.empty())
        say(words_->of("desk.look_at_fields"), true);
    else
        say_fault(elsewhere);
    ++shown_;
    emit pageShown();
}

QString FrontDesk::typed(const QString& field) const
{
    const auto found = typed_.find(field);
    return found == typed_.end() ? QString() : found->second;
}

// --- What is done on it ---

void FrontDesk::edit(const QString& field, const QString& text)
{
    if (beside_ || typed(field) == text)
        return;
    typed_[field] = text;
    errors_.erase(field);
    if (place_ == Place::print && (field == QLatin1String("paper") || field == QLatin1String("size") || field == QLatin1String("length")))
        return draw_sheet();
    fill();
}

void FrontDesk::act(const QString& action)
{
    if (beside_ || !is_open())
        return;
    if (!action.startsWith(QLatin1String("go."))) {
        (this->*here().act)(action);
        return;
    }
    if (page_.section.isEmpty())
        return; // locked
    visit_.reset();
    typed_.clear();
    if (action == QLatin1String("go.form")) {
        const Instant now = clock_->now(*zone()).utc;
        // A kit is due back some days after its last night; the clinic changes it where it differs.
        const LocalTime back = zone()->local(now) + std::chrono::hours(24 * (1 + desk_.nights));
        const VisitForm form = VisitForm::begin(desk_, format_date(back));
        for (const auto& [id, value] : form.values)
            typed_[QString::fromStdString(id)] = QString::fromStdString(value);
        show(Place::form, QStringLiteral("code"));
    } else if (action == QLatin1String("go.visits")) {
        show(Place::visits);
    } else if (action == QLatin1String("go.kits")) {
        show(Place::kits);
    } else if (action == QLatin1String("go.languages")) {
        show(Place::languages);
    } else if (action == QLatin1String("go.tablet")) {
        show(Place::tablet);
    } else if (action == QLatin1String("go.leave")) {
        leave();
    }
}

void FrontDesk::openRow(const QString& table, const QString& row)
{
    if (beside_ || row.isEmpty())
        return;
    if (table == QLatin1String("visits")) {
        record_.clear();
        if (take_visit(row.toStdString()))
            show(Place::visit);
    } else if (table == QLatin1String("records")) {
        record_ = row.toStdString();
        fill();
    } else if (table == QLatin1String("kits")) {
        kit_file_ = row.toStdString();
        show(Place::kit);
    }
}

} // namespace evenfall
