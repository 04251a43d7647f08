// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/kiosk.h"

#include "journal/kinds.h"

namespace evenfall {

// The practice run: the same pages over a journal in memory. The night's own session waits meanwhile on
// its first page, so whatever ends the program leads back there.

bool Kiosk::practice() const { return session_ && session_->is_practice(); }

void Kiosk::startPractice()
{
    if (!session_ || practice() || page() != QLatin1String("welcome"))
        return;
    Result<std::unique_ptr<Session>> run = session_->practice();
    if (!run) {
        said(run.problems());
    } else {
        const NightState night = session_->state();
        night_session_ = std::exchange(session_, std::move(run.value()));
        if (!night.build.empty())
            say(kinds::build, night.build);
        if (night.read_to_me)
            say(kinds::read_to_me, "on");
    }
    fill();
}

void Kiosk::endPractice()
{
    if (!practice())
        return;
    help_step_ = nullptr; // of a plan that goes
    over_ = Over::nothing;
    tick_.stop();
    session_ = std::move(night_session_);
    fill();
}

void Kiosk::openMirror()
{
    camera_ = sound_.media() ? sound_.media()->make_camera() : nullptr;
    mirror_there_ = camera_ && camera_->is_there();
    if (mirror_there_) {
        camera_->frame = [this](const QImage& frame) { mirror_.show(frame); };
        camera_->start();
    }
    fill();
}

void Kiosk::closeMirror()
{
    if (camera_)
        camera_->stop();
    camera_.reset();
    mirror_.forget();
}

} // namespace evenfall
