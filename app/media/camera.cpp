// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "media/camera.h"

#include <QCameraDevice>
#include <QMediaDevices>
#include <QVideoFrame>

namespace evenfall {
namespace {

QCameraDevice facing_the_person()
{
    for (const QCameraDevice& device : QMediaDevices::videoInputs()) {
        if (device.position() == QCameraDevice::FrontFace)
            return device;
    }
    return QMediaDevices::defaultVideoInput();
}

} // namespace

bool DeviceCamera::is_there() const { return !facing_the_person().isNull(); }

void DeviceCamera::start()
{
    const QCameraDevice device = facing_the_person();
    if (device.isNull())
        return;
    camera_ = std::make_unique<QCamera>(device);
    session_.setCamera(camera_.get());
    session_.setVideoSink(&sink_);
    QObject::connect(&sink_, &QVideoSink::videoFrameChanged, camera_.get(), [this](const QVideoFrame& shown) {
        if (const QImage image = shown.toImage(); frame && !image.isNull())
            frame(image);
    });
    camera_->start();
}

void DeviceCamera::stop()
{
    if (!camera_)
        return;
    camera_->stop();
    session_.setCamera(nullptr);
    camera_.reset();
}

} // namespace evenfall
