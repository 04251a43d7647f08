// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/sound.h"

#include <QPluginLoader>

namespace evenfall {

OpenMedia media_from(std::filesystem::path file)
{
    return [file = std::move(file)]() -> Media* {
        QPluginLoader loader(QString::fromStdString(file.string()));
        return qobject_cast<Media*>(loader.instance());
    };
}

Media* Sound::media()
{
    if (!media_ && !no_module_) {
        media_ = places_.media ? places_.media() : nullptr;
        no_module_ = media_ == nullptr;
    }
    return media_;
}

Speaker* Sound::speaker()
{
    if (!speaker_ && media()) {
        speaker_ = media()->make_speaker();
        speaker_->ended = [this](bool fine) {
            reading_ = false;
            failed_ = !fine;
            if (ended)
                ended();
        };
    }
    return speaker_.get();
}

Sound::Silence Sound::silence(const Spoken& units, const QString& language) const
{
    if (!places_.media || no_module_)
        return Silence::no_module;
    if (!voices_.find(units, language))
        return Silence::no_recording;
    // A device may be plugged in meanwhile: asked anew each time, once there is somebody to ask.
    if (speaker_ && !speaker_->has_device())
        return Silence::no_device;
    return failed_ ? Silence::failed : Silence::none;
}

Sound::Silence Sound::read(const Spoken& units, const QString& language)
{
    stop();
    const std::optional<QStringList> files = voices_.find(units, language);
    if (!files)
        return Silence::no_recording;
    if (!speaker())
        return Silence::no_module;
    if (!speaker()->has_device())
        return Silence::no_device;
    reading_ = true;
    speaker()->read(*files);
    return Silence::none;
}

void Sound::tone(const QString& name)
{
    std::error_code error;
    const std::filesystem::path file = places_.tones / (name.toStdString() + ".wav");
    if (!places_.tones.empty() && std::filesystem::is_regular_file(file, error) && speaker() && speaker()->has_device())
        speaker()->tone(QString::fromStdString(file.string()));
}

void Sound::stop()
{
    reading_ = false;
    failed_ = false;
    if (speaker_)
        speaker_->stop();
}

} // namespace evenfall
