// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/kiosk.h"

#include "journal/kinds.h"

#include <numeric>

namespace evenfall {

// What the kiosk reads aloud, and its tones. The night is never read by itself, and silent unless
// sound was asked for.

namespace {

const char* words_for(Sound::Silence why)
{
    switch (why) {
    case Sound::Silence::none: break;
    case Sound::Silence::no_module: return "step.no_voice";
    case Sound::Silence::no_device: return "sound.no_device";
    case Sound::Silence::no_recording: return "sound.no_recording";
    case Sound::Silence::failed: return "sound.failed";
    }
    return nullptr;
}

} // namespace

Spoken Kiosk::spoken() const
{
    if (!session_)
        return {};
    const Teller teller{session_->visit(), session_->kit(), *words_, practice() ? &session_->plan() : nullptr};
    const NightState& state = session_->state();
    switch (over_) {
    case Over::help: return teller.help(*help_step_, help_chosen_);
    case Over::call: return teller.call();
    case Over::skin: return teller.skin(true, state.skin_again == "sore");
    case Over::practice_over: return teller.practice(true);
    case Over::nothing: break;
    case Over::event:
    case Over::puzzle:
    case Over::trouble: return {};
    }
    if (state.page == "welcome")
        return practice() ? teller.practice(false) : teller.welcome();
    if (state.page == "first")
        return teller.first();
    if (state.page == "bag")
        return teller.bag();
    if (const EveningQuestion* asked = evening_question_in_hand())
        return teller.evening_question(*asked);
    if (const SignalTask* task = task_in_hand())
        return teller.signal(*task);
    if (state.page == "check")
        return teller.check();
    if (state.page == "light")
        return teller.light(state.light);
    if (const Step* step = current_step())
        return teller.step(*step);
    if (state.page == "bed")
        return teller.bed();
    if (state.page == "night" && face_.face == NightFace::Face::help)
        return teller.night_help("");
    if (state.page == "night" && face_.face == NightFace::Face::advice)
        return teller.night_help(face_.advice);
    if (const std::optional<OffStep> step = off_step(session_->kit(), state.page); step)
        return teller.taking_off(*step);
    if (state.page == "skin")
        return teller.skin(false, state.skin == "sore");
    return spoken_morning(teller);
}

Spoken Kiosk::spoken_morning(const Teller& teller) const
{
    const NightState& state = session_->state();
    if (state.paper || state.amending || which_moment_)
        return {}; // staff read for themselves; two moments have times in them
    if (state.page == "morning")
        return teller.morning();
    if (const std::string asked = question(); !asked.empty())
        return teller.question(asked);
    if (state.page == "review")
        return teller.review();
    if (state.page == "result")
        return teller.result(result_verdict(*session_));
    if (state.page == "pack")
        return teller.pack();
    if (state.page == "finished")
        return teller.finished(state.night < session_->visit().nights);
    return {};
}

std::string Kiosk::place() const
{
    std::string out = screen_.toStdString() + "/" + page().toStdString() + "/" + std::to_string(static_cast<int>(over_)) + "/" + words_->language().toStdString();
    if (over_ == Over::help)
        out += "/" + help_chosen_;
    if (page() == QLatin1String("night"))
        out += "/" + std::to_string(static_cast<int>(face_.face)) + face_.advice;
    if (session_ && (page() == QLatin1String("light") || page() == QLatin1String("skin")))
        out += "/" + session_->state().light + session_->state().skin + session_->state().skin_again;
    return out;
}

void Kiosk::hear()
{
    const bool narration = session_ && session_->visit().options.narration;
    const Spoken units = narration ? spoken() : Spoken{};
    if (const std::string now = place(); now != heard_place_) {
        heard_place_ = now;
        breath_sound_ = false;
        sound_.stop();
        closeMirror();
        const bool by_itself = session_ && session_->state().read_to_me && tone() != QLatin1String("night");
        if (by_itself && !units.empty())
            sound_.read(units, language());
        watch_start();
    }
    if (!ring_.isEmpty())
        sound_.tone(std::exchange(ring_, {}));
    fill_voice(units);
}

void Kiosk::fill_voice(const Spoken& units)
{
    voice_ = {};
    if (!session_)
        return;
    voice_.offered = session_->visit().options.narration && !units.empty();
    voice_.readToMe = session_->state().read_to_me;
    voice_.nightSound = session_->state().night_sound;
    voice_.speaking = sound_.reading();
    voice_.breathSound = breath_sound_;
    show_silence(sound_.silence(units, language()));
}

void Kiosk::show_silence(Sound::Silence why)
{
    const bool narration = session_ && session_->visit().options.narration;
    voice_.canSpeak = narration && why == Sound::Silence::none;
    if (!narration)
        voice_.reason = words_->of("sound.off_for_visit");
    else if (const char* id = words_for(why))
        voice_.reason = words_->of(id);
    step_.canSpeak = voice_.canSpeak;
    step_.speakReason = voice_.reason;
}

void Kiosk::reading_ended()
{
    // Where each page is read by itself, the breathing guide goes on from there by sound.
    stay_lit();
    if (voice_.readToMe && !step_.breathText.isEmpty() && screen_ == QLatin1String("step"))
        breath_sound_ = true;
    fill_voice(spoken());
    emit changed();
}

void Kiosk::sayAgain()
{
    breath_sound_ = false;
    stay_lit();
    const Spoken units = spoken();
    const Sound::Silence why = sound_.read(units, language());
    fill_voice(units);
    if (why != Sound::Silence::none)
        show_silence(why);
    emit changed();
}

void Kiosk::stopReading()
{
    sound_.stop();
    if (session_ && session_->state().read_to_me)
        say(kinds::read_to_me, "off");
    fill();
}

void Kiosk::chooseReading(bool each_page)
{
    if (say(kinds::read_to_me, each_page ? "on" : "off")) {
        if (!each_page)
            sound_.stop();
        else if (const Spoken units = spoken(); !units.empty())
            sound_.read(units, language());
    }
    fill();
}

void Kiosk::chooseNightSound(bool on)
{
    if (say(kinds::night_sound, on ? "on" : "off") && on)
        ring_ = QStringLiteral("noted"); // how it will sound
    fill();
}

void Kiosk::chooseBreathSound(bool on)
{
    sound_.stop();
    breath_sound_ = on;
    fill();
}

void Kiosk::breathOut()
{
    if (breath_sound_ && !sound_.reading())
        sound_.tone(QStringLiteral("noted"));
}

void Kiosk::watch_start()
{
    start_due_.stop();
    if (!session_ || practice() || page() != QLatin1String("welcome") || over_ != Over::nothing)
        return;
    const std::chrono::milliseconds left = std::chrono::duration_cast<std::chrono::milliseconds>(session_->planned_start() - session_->now());
    if (left.count() > 0 && left < std::chrono::hours(24))
        start_due_.start(left);
}

void Kiosk::ring_start()
{
    ring_ = QStringLiteral("start");
    fill();
}

} // namespace evenfall
