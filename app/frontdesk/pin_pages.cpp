// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The front desk's PIN: the first one, the one that opens, and the forgotten one.
#include "frontdesk/front_desk.h"

#include <cmath>

namespace evenfall {
namespace {

const QString pin_field = QStringLiteral("pin");
const QString again_field = QStringLiteral("pin_again");

/// Whatever was typed is not kept longer than it is needed.
std::string take_secret(QString& text)
{
    std::string out = text.toStdString();
    text.fill(QLatin1Char('0'));
    text.clear();
    return out;
}

} // namespace

void FrontDesk::fill_first_pin(PageWriter& page)
{
    page.text(words_->of("desk.first_pin.body"));
    page.secret(pin_field, words_->of("desk.pin.field"), typed(pin_field), words_->of("desk.pin.hint"));
    page.secret(again_field, words_->of("desk.pin.again"), typed(again_field));
    page.caution(words_->of("desk.pin.limits"));
    page.actions({desk_main("set", words_->of("desk.pin.set")), desk_option("leave", words_->of("desk.leave"))});
}

void FrontDesk::act_first_pin(const QString& action)
{
    if (action == QLatin1String("leave"))
        return leave();
    if (typed(pin_field) != typed(again_field)) {
        errors_[again_field] = words_->of("desk.pin.differs");
        return say(words_->of("desk.look_at_fields"), true);
    }
    typed_.erase(again_field);
    auto pin = std::make_shared<std::string>(take_secret(typed_[pin_field]));
    beside<Status>([this, pin] { return lock_.set_first(*pin); },
                   [this](Status set) {
                       if (!set)
                           return show_errors([&set] {
                               Problems problems = set.problems();
                               problems[0].at = "/pin";
                               return problems;
                           }());
                       // Nobody has said yet what clinic this is: that comes before anything else.
                       show(desk_.clinic.phone.empty() ? Place::tablet : Place::visits);
                   });
}

void FrontDesk::fill_pin(PageWriter& page)
{
    if (pin_.state == PinState::damaged) {
        page.caution(words_->of("desk.pin.damaged"));
        page.actions({desk_option("forgotten", words_->of("desk.pin.forgotten")), desk_option("leave", words_->of("desk.leave"))});
        return;
    }
    const auto seconds = static_cast<long>(std::ceil(std::chrono::duration<double>(pin_.wait).count()));
    if (seconds > 0) {
        page.caution(words_->of("desk.pin.wait", {words_->number(seconds), words_->number(pin_.attempts)}));
        if (!pin_wait_.isActive())
            pin_wait_.start();
    } else {
        pin_wait_.stop();
        page.secret(pin_field, words_->of("desk.pin.field"), typed(pin_field));
    }
    QList<DeskOption> actions;
    if (seconds <= 0)
        actions << desk_main("open", words_->of("desk.pin.open"));
    actions << desk_option("leave", words_->of("desk.leave")) << desk_option("forgotten", words_->of("desk.pin.forgotten"));
    page.actions(actions);
}

void FrontDesk::act_pin(const QString& action)
{
    if (action == QLatin1String("leave"))
        return leave();
    if (action == QLatin1String("forgotten"))
        return show(Place::forgotten);
    auto pin = std::make_shared<std::string>(take_secret(typed_[pin_field]));
    const BootTime now = boot_time();
    beside<Result<PinAnswer>>([this, pin, now] { return lock_.check(*pin, now); },
                              [this](Result<PinAnswer> answer) { pin_answered(answer); });
}

void FrontDesk::pin_answered(const Result<PinAnswer>& answer)
{
    if (!answer)
        return say_fault(answer.problems());
    pin_ = *answer;
    if (pin_.state == PinState::open)
        return show(desk_.clinic.phone.empty() ? Place::tablet : Place::visits);
    page_.focus = pin_field;
    say(pin_.state == PinState::wrong ? words_->of("desk.pin.wrong") : QString(), true);
    ++shown_;
    emit pageShown();
}

void FrontDesk::fill_forgotten(PageWriter& page)
{
    page.text(words_->of("desk.forgotten.body"));
    page.caution(words_->of("desk.forgotten.keeps"));
    page.check("sure", words_->of("desk.forgotten.sure"), typed("sure") == QLatin1String("yes"));
    page.actions({desk_option("back", words_->of("common.back")), desk_option("forget", words_->of("desk.forgotten.main"))});
}

void FrontDesk::act_forgotten(const QString& action)
{
    if (action == QLatin1String("forget")) {
        if (typed("sure") != QLatin1String("yes"))
            return say(words_->of("desk.forgotten.not_sure"), true);
        return forget_everything_of_the_desk();
    }
    typed_.clear();
    show(Place::pin);
}

void FrontDesk::forget_everything_of_the_desk()
{
    // Visits whose records are all safe elsewhere go; any other stays, for a night may be in it.
    const Result<std::vector<std::string>> codes = shelf_.codes();
    if (!codes)
        return say_fault(codes.problems());
    for (const std::string& code : *codes) {
        const Result<ShelfVisit> visit = shelf_.look(code);
        if (!visit || !Shelf::reasons_against(*visit).empty())
            continue;
        if (Status wiped = shelf_.wipe(*visit, "", now_text()); !wiped)
            return say_fault(wiped.problems());
    }
    const std::string tonight = desk_.tonight;
    std::error_code ignored;
    desk_ = DeskSettings{};
    desk_.zone = settings_.system_zone;
    // The person in whose bedroom this happens must still find their night.
    if (std::filesystem::exists(shelf_.visit_file(tonight), ignored))
        desk_.tonight = tonight;
    if (!save_settings())
        return;
    if (Status forgotten = lock_.forget(); !forgotten)
        return say_fault(forgotten.problems());
    pin_ = PinAnswer{PinState::none, 0, Span(0), {}};
    typed_.clear();
    show(Place::first_pin);
    say(words_->of("desk.forgotten.done"));
}

} // namespace evenfall
