// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "sound/ear.h"

#include <QFile>
#include <QThread>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <numeric>

namespace {

constexpr int rate = 16000;

} // namespace

void wait_for(int milliseconds)
{
    wait_for(milliseconds, [] { return false; });
}

Ear::Ear()
{
    const QString socket = folder_.filePath(QStringLiteral("socket"));
    qputenv("XDG_RUNTIME_DIR", folder_.path().toLocal8Bit());
    qputenv("HOME", folder_.path().toLocal8Bit());
    server_.setProcessChannelMode(QProcess::MergedChannels);
    server_.start(QStringLiteral("pulseaudio"),
                  {QStringLiteral("-n"), QStringLiteral("--daemonize=no"), QStringLiteral("--use-pid-file=no"), QStringLiteral("--exit-idle-time=-1"),
                   QStringLiteral("--disable-shm=yes"), QStringLiteral("-L"), QStringLiteral("module-native-protocol-unix auth-anonymous=1 socket=%1").arg(socket),
                   QStringLiteral("-L"), QStringLiteral("module-null-sink sink_name=ear")});
    if (!server_.waitForStarted()) {
        trouble_ = QStringLiteral("pulseaudio does not start (Debian package pulseaudio): ") + server_.errorString();
        return;
    }
    for (int tries = 0; tries < 100 && !QFile::exists(socket); ++tries)
        QThread::msleep(100);
    if (!QFile::exists(socket))
        trouble_ = QStringLiteral("pulseaudio opens no socket: ") + QString::fromLocal8Bit(server_.readAll());
    qputenv("PULSE_SERVER", QByteArray("unix:") + socket.toLocal8Bit());
}

Ear::~Ear()
{
    for (QProcess* process : {&recorder_, &server_}) {
        process->terminate();
        if (!process->waitForFinished(3000))
            process->kill();
        process->waitForFinished(3000);
    }
}

void Ear::begin()
{
    recorder_.start(QStringLiteral("parec"), {QStringLiteral("-d"), QStringLiteral("ear.monitor"), QStringLiteral("--format=s16le"), QStringLiteral("--rate=%1").arg(rate),
                                              QStringLiteral("--channels=1"), QStringLiteral("--latency-msec=50"), QStringLiteral("--raw")});
    if (!recorder_.waitForStarted())
        trouble_ = QStringLiteral("parec does not start (Debian package pulseaudio-utils): ") + recorder_.errorString();
    // The first bytes say that it hears; they are thrown away, so that time begins with what follows.
    if (!wait_for(10000, [this] { return recorder_.bytesAvailable() > 0; }))
        trouble_ = QStringLiteral("parec hears nothing: ") + QString::fromLocal8Bit(recorder_.readAllStandardError());
    recorder_.readAllStandardOutput();
    bytes_.clear();
    loudness_.clear();
}

bool Ear::hear_out(int milliseconds)
{
    const auto after = [this] { return static_cast<double>(loudness_.size()) * window - before() - sounding(); };
    return wait_for(milliseconds, [this] { take(); return sounding() > 0; }) &&
           wait_for(milliseconds, [this, after] { take(); return after() > 1; });
}

void Ear::end()
{
    wait_for(400);
    recorder_.terminate();
    recorder_.waitForFinished(5000);
    take();
}

/// What the recorder has given so far, as loudness.
void Ear::take()
{
    bytes_ += recorder_.readAllStandardOutput();
    constexpr auto step = static_cast<qsizetype>(rate * window * sizeof(std::int16_t));
    while (bytes_.size() >= step) {
        std::array<std::int16_t, step / sizeof(std::int16_t)> samples;
        std::memcpy(samples.data(), bytes_.constData(), step);
        bytes_.remove(0, step);
        const double sum = std::accumulate(samples.begin(), samples.end(), 0.0, [](double so_far, double one) { return so_far + one * one; });
        loudness_.push_back(std::sqrt(sum / samples.size()) / 32768);
    }
}

double Ear::before() const
{
    size_t at = 0;
    while (at < loudness_.size() && loudness_[at] <= floor)
        ++at;
    return static_cast<double>(at) * window;
}

double Ear::sounding() const
{
    size_t last = loudness_.size();
    while (last > 0 && loudness_[last - 1] <= floor)
        --last;
    return last == 0 ? 0 : static_cast<double>(last) * window - before();
}

bool Ear::silent(double from, double to) const
{
    for (size_t at = 0; at < loudness_.size(); ++at) {
        const double when = static_cast<double>(at) * window;
        if (when >= from && when < to && loudness_[at] > floor)
            return false;
    }
    return to <= static_cast<double>(loudness_.size()) * window; // unheard is not silent
}
