// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "media/media.h"
#include "narration/voices.h"

#include <QString>
#include <QStringList>
#include <filesystem>
#include <functional>
#include <memory>

namespace evenfall {

/// Gives the module for sound and camera, or null where it cannot be opened. Called when the first
/// sound or picture is wanted, and not again once it gave one.
using OpenMedia = std::function<Media*()>;

/// Opens the module from this file. It stays loaded for as long as the program runs.
OpenMedia media_from(std::filesystem::path file);

/// The sound of the kiosk. Without a device, a module or a recording it is silent and says why.
class Sound {
  public:
    struct Places {
        OpenMedia media;                           ///< none: never a sound
        std::vector<std::filesystem::path> voices; ///< folders of recordings, the clinic's own first
        std::filesystem::path tones;               ///< folder of noted.wav and start.wav
    };
    /// Why there is no voice.
    enum class Silence { none, no_module, no_device, no_recording, failed };

    explicit Sound(Places places) : places_(std::move(places)), voices_(places_.voices) {}

    /// What is known without loading anything: none may still turn out otherwise when it is to sound.
    Silence silence(const Spoken& units, const QString& language) const;
    /// Reads these aloud. The reason when it does not.
    Silence read(const Spoken& units, const QString& language);
    /// One of our own tones by its name: "noted", "start". Silence where it cannot be played.
    void tone(const QString& name);
    void stop();
    bool reading() const { return reading_; }
    /// Called when a reading is over by itself.
    std::function<void()> ended;
    /// The module, opened if need be; null where there is none.
    Media* media();

  private:
    Speaker* speaker();

    Places places_;
    Voices voices_;
    Media* media_ = nullptr;
    bool no_module_ = false;
    bool failed_ = false;
    bool reading_ = false;
    std::unique_ptr<Speaker> speaker_;
};

} // namespace evenfall
