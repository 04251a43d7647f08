// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "frontdesk/sticks.h"

#include "base/file.h"

#include <QProcess>
#include <QStorageInfo>
#include <cerrno>
#include <fcntl.h>
#include <unistd.h>

namespace evenfall {
namespace {

// A stick that is slow to write has been synced before: what is left is only to let it go.
constexpr int unmount_ms = 15000;

} // namespace

std::vector<Stick> mounted_sticks()
{
    std::vector<Stick> out;
    for (const QStorageInfo& volume : QStorageInfo::mountedVolumes()) {
        const QString root = volume.rootPath();
        const bool place = root.startsWith(QLatin1String("/media/")) || root.startsWith(QLatin1String("/run/media/")) || root.startsWith(QLatin1String("/mnt/"));
        if (place && volume.isValid() && volume.isReady() && !volume.isReadOnly())
            out.push_back({root.toStdString(), volume.device().toStdString(), volume.displayName().toStdString()});
    }
    return out;
}

Result<LetGo> let_go(const Stick& stick)
{
    const int folder = ::open(stick.root.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder < 0)
        return io_problem("cannot open", stick.root, errno);
    const int failed = ::syncfs(folder) == 0 ? 0 : errno;
    ::close(folder);
    if (failed != 0)
        return io_problem("cannot write out", stick.root, failed);
    if (stick.device.empty())
        return LetGo::synced;
    // The system's own service for it, which needs no rights of an administrator.
    QProcess unmount;
    unmount.start(QStringLiteral("udisksctl"), {QStringLiteral("unmount"), QStringLiteral("--no-user-interaction"), QStringLiteral("-b"), QString::fromStdString(stick.device)});
    const bool done = unmount.waitForFinished(unmount_ms) && unmount.exitStatus() == QProcess::NormalExit && unmount.exitCode() == 0;
    return done ? LetGo::unmounted : LetGo::synced;
}

} // namespace evenfall
