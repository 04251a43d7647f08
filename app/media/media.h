// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <QImage>
#include <QStringList>
#include <QtPlugin>
#include <functional>
#include <memory>

// What the kiosk wants of sound and camera. Plain interfaces, so that nothing of Qt Multimedia is
// loaded before it is needed: the module that has it (app/media) is opened at run time.

namespace evenfall {

/// Plays sound files. One thread owns it.
class Speaker {
  public:
    virtual ~Speaker() = default;
    /// Is there a device to play on, now?
    virtual bool has_device() const = 0;
    /// Plays these files one after the other, in place of whatever is being read.
    virtual void read(const QStringList& files) = 0;
    /// Plays one short file, over what is being read.
    virtual void tone(const QString& file) = 0;
    /// Silence at once, of both.
    virtual void stop() = 0;
    /// Called after the last file, or when one cannot be played (`fine` is false). Not after stop().
    std::function<void(bool fine)> ended;
};

/// Frames of the camera that looks at the person. Keeps none. One thread owns it.
class Camera {
  public:
    virtual ~Camera() = default;
    virtual bool is_there() const = 0;
    virtual void start() = 0;
    virtual void stop() = 0;
    std::function<void(const QImage& frame)> frame;
};

/// The module that is opened at run time.
class Media {
  public:
    virtual ~Media() = default;
    virtual std::unique_ptr<Speaker> make_speaker() = 0;
    virtual std::unique_ptr<Camera> make_camera() = 0;
};

} // namespace evenfall

#define EVENFALL_MEDIA_ID "evenfall.Media/1"
Q_DECLARE_INTERFACE(evenfall::Media, EVENFALL_MEDIA_ID)
