// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "media/media.h"

#include <QAudioOutput>
#include <QMediaPlayer>

namespace evenfall {

/// Plays on the system's default device.
class DeviceSpeaker final : public Speaker {
  public:
    DeviceSpeaker();
    ~DeviceSpeaker() override;
    bool has_device() const override;
    void read(const QStringList& files) override;
    void tone(const QString& file) override;
    void stop() override;

  private:
    void next();
    void end(bool fine);

    QAudioOutput reading_output_, tone_output_;
    QMediaPlayer reading_, tone_;
    QStringList left_;
    bool busy_ = false;
};

} // namespace evenfall
