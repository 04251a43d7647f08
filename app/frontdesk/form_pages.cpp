// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The front desk's forms: a new visit, and the tablet with the clinic it belongs to.
#include "frontdesk/front_desk.h"

#include "base/file.h"

#include <algorithm>
#include <filesystem>

namespace evenfall {
namespace {

constexpr const char* switches[] = {"signal_check", "evening_questions", "mirror", "narration"};

/// Ids of the kits that can be used, in order: the clinic's own win over shipped ones of that name.
std::vector<std::string> kit_ids(const std::vector<std::filesystem::path>& folders)
{
    std::vector<std::string> ids;
    for (const std::filesystem::path& folder : folders) {
        std::error_code error;
        for (std::filesystem::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
            const std::string id = at->path().stem().string();
            if (at->path().extension() == ".json" && std::find(ids.begin(), ids.end(), id) == ids.end() && load_kit(at->path()))
                ids.push_back(id);
        }
    }
    std::sort(ids.begin(), ids.end());
    return ids;
}

} // namespace

void FrontDesk::fill_form(PageWriter& page)
{
    const auto field = [&](const char* id, const char* hint = nullptr) {
        page.field(QLatin1String(id), words_->of(std::string("desk.field.") + id), typed(QLatin1String(id)), hint ? words_->of(hint) : QString());
    };
    if (desk_.clinic.phone.empty())
        page.caution(words_->of("desk.problem.no_phone"));
    field("code", "desk.field.code_hint");
    QVariantList kits, languages, hands;
    for (const std::string& id : kit_ids(kit_folders()))
        kits << QVariant::fromValue(desk_option(QString::fromStdString(id), QString::fromStdString(id)));
    page.choice(QStringLiteral("kit"), words_->of("desk.field.kit"), typed("kit"), kits);
    field("kit_label", "desk.field.kit_label_hint");
    field("nights");
    for (const QString& language : Words::languages())
        languages << QVariant::fromValue(desk_option(language, Words::own_name(language)));
    page.choice(QStringLiteral("language"), words_->of("desk.field.language"), typed("language"), languages);
    for (const char* hand : {"right", "left"})
        hands << QVariant::fromValue(desk_option(QLatin1String(hand), words_->of(std::string("desk.hand.") + hand)));
    page.choice(QStringLiteral("writing_hand"), words_->of("desk.field.writing_hand"), typed("writing_hand"), hands);
    field("bed_time", "desk.field.bed_time_hint");
    field("return_by", "desk.date_hint");
    for (const char* id : switches)
        page.check(QLatin1String(id), words_->of(std::string("desk.option.") + id), typed(QLatin1String(id)) == QLatin1String("yes"));
    const Instant now = clock_->now(*zone()).utc;
    page.check(QStringLiteral("clock"),
               words_->of("desk.field.clock", {words_->clock(now), words_->date(format_date(zone()->local(now))), QString::fromStdString(desk_.zone)}),
               typed("clock") == QLatin1String("yes"));
    page.actions({desk_main("make", words_->of("desk.form.main"))});
}

void FrontDesk::act_form(const QString& action)
{
    if (action != QLatin1String("make"))
        return;
    VisitForm form;
    form.clock_right = typed("clock") == QLatin1String("yes");
    for (const auto& [id, value] : typed_)
        form.values[id.toStdString()] = value.trimmed().toStdString();
    const Result<Visit> visit = form.read(desk_);
    if (!visit)
        return show_errors(visit.problems());
    if (Status added = shelf_.add(*visit); !added)
        return show_errors(added.problems());
    // The kit must be there and have what the visit needs, else the visit is of no use.
    if (const Result<VisitWithKit> whole = load_visit(shelf_.visit_file(visit->code), kit_folders()); !whole) {
        std::error_code ignored;
        std::filesystem::remove_all(shelf_.folder(visit->code), ignored);
        return show_errors(whole.problems());
    }
    desk_.kit = visit->kit;
    desk_.visit_language = visit->language;
    desk_.nights = visit->nights;
    desk_.bed_time = visit->bed_time;
    desk_.options = visit->options;
    const bool free = desk_.tonight.empty();
    if (free)
        desk_.tonight = visit->code;
    typed_.clear();
    if (!save_settings() || !take_visit(visit->code))
        return;
    if (free)
        emit tonightChosen();
    show(Place::visit);
    say(words_->of(free ? "desk.form.made_tonight" : "desk.form.made", {words_->code(visit->code)}));
}

// --- The tablet, and whose it is ---

void FrontDesk::fill_tablet(PageWriter& page)
{
    // What is there is filled in once: from then on it is what somebody typed.
    if (!typed_.contains(QStringLiteral("phone"))) {
        type(QStringLiteral("name"), QString::fromStdString(desk_.clinic.name));
        type(QStringLiteral("phone"), QString::fromStdString(desk_.clinic.phone));
        type(QStringLiteral("hours"), QString::fromStdString(hours_line(desk_.clinic.hours)));
        type(QStringLiteral("phone_outside_hours"), QString::fromStdString(desk_.clinic.phone_outside_hours));
        type(QStringLiteral("emergency"), QString::fromStdString(desk_.clinic.emergency));
        type(QStringLiteral("zone"), QString::fromStdString(desk_.zone));
    }
    page.heading(words_->of("desk.clinic.heading"));
    for (const char* id : {"name", "phone", "hours", "phone_outside_hours", "emergency"})
        page.field(QLatin1String(id), words_->of(std::string("desk.clinic.") + id), typed(QLatin1String(id)),
                   QLatin1String(id) == QLatin1String("hours") ? words_->of("desk.clinic.hours_hint") : QString());
    const Instant now = clock_->now(*zone()).utc;
    page.field(QStringLiteral("zone"), words_->of("desk.tablet.zone"), typed("zone"),
               words_->of("desk.tablet.now", {words_->clock(now), words_->date(format_date(zone()->local(now)))}));
    page.actions({desk_main("save", words_->of("desk.tablet.save"))});
    page.heading(words_->of("desk.pin.change"));
    page.secret(QStringLiteral("old_pin"), words_->of("desk.pin.old"), typed("old_pin"));
    page.secret(QStringLiteral("pin"), words_->of("desk.pin.new"), typed("pin"), words_->of("desk.pin.hint"));
    page.secret(QStringLiteral("pin_again"), words_->of("desk.pin.again"), typed("pin_again"));
    page.actions({desk_option("change_pin", words_->of("desk.pin.change"))});
}

void FrontDesk::act_tablet(const QString& action)
{
    if (action == QLatin1String("change_pin"))
        return change_pin();
    Problems problems;
    Clinic clinic;
    clinic.name = typed_text("name");
    clinic.phone = typed_text("phone");
    clinic.phone_outside_hours = typed_text("phone_outside_hours");
    clinic.emergency = typed_text("emergency");
    for (const char* id : {"name", "phone", "phone_outside_hours", "emergency"})
        if (typed_text(QLatin1String(id)).empty())
            problems.push_back({Fault::malformed, "missing", pointer("", std::string_view(id)), ""});
        else if (QLatin1String(id) != QLatin1String("name") && !plain_phone(typed_text(QLatin1String(id))))
            problems.push_back({Fault::malformed, "bad_phone", pointer("", std::string_view(id)), ""});
    if (Result<std::vector<OpenHours>> hours = parse_hours_line(typed_text("hours")))
        clinic.hours = *hours;
    else
        problems.push_back({Fault::malformed, "bad_hours", "/hours", hours.problems()[0].text});
    if (!find_zone(typed_text("zone")))
        problems.push_back({Fault::refused, "unknown_zone", "/zone", ""});
    if (!problems.empty())
        return show_errors(problems);
    desk_.clinic = clinic;
    desk_.zone = typed_text("zone");
    if (!save_settings())
        return;
    take_words(); // times are written in the zone
    say(words_->of("desk.tablet.saved"));
}

void FrontDesk::change_pin()
{
    if (typed("pin") != typed("pin_again")) {
        errors_[QStringLiteral("pin_again")] = words_->of("desk.pin.differs");
        return say(words_->of("desk.look_at_fields"), true);
    }
    auto old_pin = std::make_shared<std::string>(typed("old_pin").toStdString());
    auto new_pin = std::make_shared<std::string>(typed("pin").toStdString());
    for (const char* id : {"old_pin", "pin", "pin_again"})
        typed_.erase(QLatin1String(id));
    const BootTime now = boot_time();
    beside<Result<PinAnswer>>([this, old_pin, new_pin, now] { return lock_.change(*old_pin, *new_pin, now); },
                              [this](Result<PinAnswer> answer) {
                                  if (!answer)
                                      return say_fault(answer.problems());
                                  const bool changed = answer->state == PinState::open;
                                  say(words_->of(changed ? "desk.pin.changed" : answer->state == PinState::wait ? "desk.pin.not_now" : "desk.pin.wrong"), !changed);
                              });
}

} // namespace evenfall
