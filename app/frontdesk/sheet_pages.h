// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <QImage>
#include <QList>
#include <QMutex>
#include <QMutexLocker>
#include <QQuickImageProvider>
#include <memory>
#include <utility>

namespace evenfall {

/// Pictures of the pages of a sheet. They are put in by the front desk and asked for by the screen's
/// picture loader, which may live in another thread.
class SheetPages {
  public:
    void put(QList<QImage> pages)
    {
        const QMutexLocker lock(&mutex_);
        pages_ = std::move(pages);
    }
    QImage page(qsizetype index) const
    {
        const QMutexLocker lock(&mutex_);
        return index >= 0 && index < pages_.size() ? pages_[index] : QImage();
    }
    qsizetype count() const
    {
        const QMutexLocker lock(&mutex_);
        return pages_.size();
    }

  private:
    mutable QMutex mutex_;
    QList<QImage> pages_;
};

/// "image://sheet/<page>-<anything>": the second part makes a new address of a new picture.
class SheetPageProvider final : public QQuickImageProvider {
  public:
    explicit SheetPageProvider(std::shared_ptr<const SheetPages> pages)
        : QQuickImageProvider(QQuickImageProvider::Image), pages_(std::move(pages))
    {}
    QImage requestImage(const QString& id, QSize* size, const QSize&) override
    {
        const QImage image = pages_->page(id.section(QLatin1Char('-'), 0, 0).toInt());
        if (size)
            *size = image.size();
        return image;
    }

  private:
    std::shared_ptr<const SheetPages> pages_;
};

} // namespace evenfall
