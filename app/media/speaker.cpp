// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "media/speaker.h"

#include <QAudioDevice>
#include <QMediaDevices>
#include <QUrl>

namespace evenfall {
namespace {

void begin(QMediaPlayer& player, const QString& file)
{
    // A player that plays once more what it has played to its end is silent at times, on a busy machine:
    // it believes that it plays, and nothing comes out. So it forgets the file first.
    player.setSource(QUrl());
    player.setSource(QUrl::fromLocalFile(file));
    player.play();
}

} // namespace

DeviceSpeaker::DeviceSpeaker()
{
    reading_.setAudioOutput(&reading_output_);
    tone_.setAudioOutput(&tone_output_);
    // Queued: the player does not bear a new source while it tells about the old one.
    QObject::connect(&reading_, &QMediaPlayer::mediaStatusChanged, &reading_, [this](QMediaPlayer::MediaStatus status) {
        if (status == QMediaPlayer::EndOfMedia)
            next();
        else if (status == QMediaPlayer::InvalidMedia)
            end(false);
    }, Qt::QueuedConnection);
    QObject::connect(&reading_, &QMediaPlayer::errorOccurred, &reading_, [this] { end(false); }, Qt::QueuedConnection);
}

DeviceSpeaker::~DeviceSpeaker() { stop(); }

bool DeviceSpeaker::has_device() const { return !QMediaDevices::defaultAudioOutput().isNull(); }

void DeviceSpeaker::read(const QStringList& files)
{
    reading_.stop();
    left_ = files;
    busy_ = true;
    reading_output_.setDevice(QMediaDevices::defaultAudioOutput());
    next();
}

void DeviceSpeaker::next()
{
    if (!busy_ || reading_.playbackState() == QMediaPlayer::PlayingState)
        return; // of a reading that was stopped or replaced meanwhile
    if (left_.isEmpty())
        return end(true);
    begin(reading_, left_.takeFirst());
}

void DeviceSpeaker::end(bool fine)
{
    if (!busy_)
        return;
    busy_ = false;
    left_.clear();
    if (!fine)
        reading_.stop();
    if (ended)
        ended(fine);
}

void DeviceSpeaker::tone(const QString& file)
{
    tone_.stop();
    tone_output_.setDevice(QMediaDevices::defaultAudioOutput());
    begin(tone_, file);
}

void DeviceSpeaker::stop()
{
    busy_ = false;
    left_.clear();
    reading_.stop();
    tone_.stop();
}

} // namespace evenfall
