// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/kiosk.h"

#include "journal/kinds.h"

namespace evenfall {
namespace {

// How long the night page stays lit: long enough to read it twice, short enough not to wake anybody.
constexpr int lit_ms = 30000;
constexpr int noted_ms = 8000;

} // namespace

void Kiosk::show_face(NightFace::Face face)
{
    face_.face = face;
    if (face != NightFace::Face::which_off)
        unnamed_off_ = 0; // left without saying which: the note stands, and the morning asks
    if (face == NightFace::Face::dark)
        dark_again_.stop(); // nothing may wake the machine while the page is dark
    else
        dark_again_.start(face == NightFace::Face::noted ? noted_ms : lit_ms);
    if (face == NightFace::Face::dark)
        fill();
}

void Kiosk::grow_dark()
{
    if (sound_.reading())
        dark_again_.start(lit_ms); // not in the middle of a sentence
    else
        show_face(NightFace::Face::dark);
}

void Kiosk::stay_lit()
{
    if (dark_again_.isActive())
        dark_again_.start(lit_ms);
}

void Kiosk::let_time_pass()
{
    if (const SignalTask* task = task_in_hand(); task && signal_left(*session_, *task)) {
        end_signal(*task, "done");
        fill();
    }
    if (skin_due_.isActive())
        ask_skin_again();
    if (dark_again_.isActive())
        grow_dark();
}

void Kiosk::noted(std::string_view kind, const std::string& subject, const QString& words)
{
    last_noted_off_.clear();
    if (!say(kind, subject))
        return;
    noted_number_ = session_->last_number();
    after_undo_ = NightFace::Face::areas;
    face_.noted = words;
    if (session_->state().night_sound)
        ring_ = QStringLiteral("noted");
    show_face(NightFace::Face::noted);
}

void Kiosk::wake()
{
    if (page() == QLatin1String("night") && face_.face == NightFace::Face::dark)
        show_face(NightFace::Face::areas);
    fill();
}

void Kiosk::noteAwake()
{
    const bool awake = session_ && session_->state().awake_now();
    noted(awake ? kinds::asleep : kinds::awake, "", words_->of(awake ? "noted.asleep" : "noted.awake"));
    fill();
}

void Kiosk::noteUp()
{
    if (session_ && session_->state().out_of_bed()) {
        if (say(kinds::back))
            show_face(NightFace::Face::still_on);
    } else {
        noted(kinds::up, "", words_->of("noted.up"));
    }
    fill();
}

void Kiosk::noteOff()
{
    const std::set<std::string> off = session_ ? session_->state().off_now() : std::set<std::string>{};
    if (off.empty()) {
        something_off();
    } else if (off.size() == 1) {
        // That one is back on: noted at once, and undone it asks which.
        noted_on(*off.begin());
        after_undo_ = NightFace::Face::which_on;
    } else {
        show_face(NightFace::Face::which_on);
    }
    fill();
}

/// Noted before it is asked which part: who falls asleep over that question has still said it.
void Kiosk::something_off()
{
    if (!say(kinds::off))
        return;
    unnamed_off_ = session_->last_number();
    show_face(NightFace::Face::which_off);
}

/// Which it was is said now, or that it was nothing: then the first note need not stand.
void Kiosk::forget_unnamed_off()
{
    if (unnamed_off_ != 0)
        say(kinds::undo, "", std::to_string(unnamed_off_));
    unnamed_off_ = 0;
}

void Kiosk::noted_on(const std::string& part)
{
    noted(kinds::on, part, words_->of("noted.on", {words_->part(*session_->kit().part(part))}) + QLatin1Char('\n') + words_->of("night.look_light"));
}

void Kiosk::askHelp()
{
    show_face(NightFace::Face::help);
    fill();
}

void Kiosk::upForDay()
{
    show_face(NightFace::Face::up_confirm);
    fill();
}

void Kiosk::upConfirmed()
{
    if (say(kinds::up_for_day) && open("morning")) {
        dark_again_.stop();
        face_ = NightFace{};
    }
    fill();
}

void Kiosk::undo()
{
    if (face_.face == NightFace::Face::noted && session_ && say(kinds::undo, "", std::to_string(noted_number_))) {
        last_noted_off_.clear();
        face_.noted = words_->of("noted.undone");
        show_face(after_undo_);
    }
    fill();
}

void Kiosk::yes()
{
    if (face_.face == NightFace::Face::still_on)
        noted(kinds::all_on, "", words_->of("noted.all_on"));
    fill();
}

void Kiosk::no()
{
    if (face_.face == NightFace::Face::still_on)
        something_off();
    else
        show_face(NightFace::Face::areas);
    fill();
}

void Kiosk::leaveFace()
{
    using Face = NightFace::Face;
    if (face_.face == Face::noted && !last_noted_off_.empty()) {
        face_.advice = "refit:" + last_noted_off_;
        last_noted_off_.clear();
        show_face(Face::advice);
    } else {
        show_face(Face::dark);
    }
    fill();
}

} // namespace evenfall
