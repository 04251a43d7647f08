// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "media/camera.h"
#include "media/speaker.h"
#include "media/media.h"

#include <QObject>

namespace evenfall {

class MediaModule final : public QObject, public Media {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID EVENFALL_MEDIA_ID)
    Q_INTERFACES(evenfall::Media)

  public:
    MediaModule()
    {
        // The other backend of Qt 6.4 ends the program where there is no sound device.
        if (qEnvironmentVariableIsEmpty("QT_MEDIA_BACKEND"))
            qputenv("QT_MEDIA_BACKEND", "gstreamer");
    }
    std::unique_ptr<Speaker> make_speaker() override { return std::make_unique<DeviceSpeaker>(); }
    std::unique_ptr<Camera> make_camera() override { return std::make_unique<DeviceCamera>(); }
};

} // namespace evenfall

#include "media.moc"
