// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <QProcess>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>
#include <vector>

/// A sound server of one's own that plays into nothing, and an ear at its monitor.
class Ear {
  public:
    Ear();
    ~Ear();
    /// Why it does not work; empty when it does.
    const QString& trouble() const { return trouble_; }

    void begin();
    /// Waits until something is heard, and then until it has been silent for a second; false when nothing
    /// is heard within so many milliseconds. How soon a sound begins depends on what else the machine does.
    bool hear_out(int milliseconds);
    /// What was heard since begin(), and what is still on its way.
    void end();

    /// Loudness of each 50 ms, as a part of full scale (root mean square).
    const std::vector<double>& loudness() const { return loudness_; }
    /// Seconds from the first to the last moment over the floor.
    double sounding() const;
    /// Seconds before the first moment over the floor; all of it when there is none.
    double before() const;
    /// Is it silent from `from` to `to` seconds after begin()?
    bool silent(double from, double to) const;

    /// Well below a soft voice, well above the silence of a null device, which is exactly 0.
    static constexpr double floor = 0.003;
    static constexpr double window = 0.05;

  private:
    void take();

    QTemporaryDir folder_;
    QByteArray bytes_;
    QProcess server_, recorder_;
    QString trouble_;
    std::vector<double> loudness_;
};

/// Lets events be handled for so long, or until `done` says so.
template <class Done>
bool wait_for(int milliseconds, Done done);
void wait_for(int milliseconds);

#include <QCoreApplication>
#include <QElapsedTimer>

template <class Done>
bool wait_for(int milliseconds, Done done)
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < milliseconds) {
        if (done())
            return true;
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
    return done();
}
