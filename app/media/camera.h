// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "media/media.h"

#include <QCamera>
#include <QMediaCaptureSession>
#include <QVideoSink>

namespace evenfall {

/// The camera on the side of the screen, else the system's default one.
class DeviceCamera final : public Camera {
  public:
    bool is_there() const override;
    void start() override;
    void stop() override;

  private:
    std::unique_ptr<QCamera> camera_;
    QVideoSink sink_;
    QMediaCaptureSession session_;
};

} // namespace evenfall
