// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "figure_for_tests.h"

#include <QtCore/QDir>
#include <QtCore/QFile>
#include <QtCore/QUrlQuery>
#include <QtGui/QPainter>
#include <QtSvg/QSvgRenderer>

#ifdef EVENFALL_WITH_FIGURES
#include "figures/figure.h"
#endif

namespace stage {
namespace {

#ifdef EVENFALL_WITH_FIGURES
const evenfall::FigureStore& store() {
    static const evenfall::FigureStore figures = [] {
        std::map<std::string, std::string> files;
        const QDir folder(QStringLiteral(EVENFALL_SOURCE_DIR "/assets/figures"));
        for (const QString& name : folder.entryList({QStringLiteral("*.svg")}, QDir::Files)) {
            QFile file(folder.filePath(name));
            if (file.open(QIODevice::ReadOnly)) {
                files[name.chopped(4).toStdString()] = file.readAll().toStdString();
            }
        }
        return evenfall::FigureStore(files);
    }();
    return figures;
}

QByteArray composed(const QString& id, const QUrlQuery& query) {
    if (!store().has(id.toStdString())) {
        return {};
    }
    evenfall::FigureRequest request;
    request.id = id.toStdString();
    const QString tone = query.queryItemValue(QStringLiteral("tone"));
    request.tone = tone == QLatin1String("light")   ? evenfall::Tone::light
                   : tone == QLatin1String("night") ? evenfall::Tone::night
                                                    : evenfall::Tone::dark;
    for (const QString& part :
         query.queryItemValue(QStringLiteral("parts")).split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const QStringList pair = part.split(QLatin1Char(':'));
        request.parts[pair.value(0).toStdString()] =
            pair.value(1) == QLatin1String("done")      ? evenfall::PartState::done
            : pair.value(1) == QLatin1String("current") ? evenfall::PartState::current
                                                        : evenfall::PartState::outline;
    }
    return QByteArray::fromStdString(store().compose(request));
}
#endif

} // namespace

QImage FigureForTests::requestImage(const QString& id, QSize* size, const QSize& requested) {
    const QSize wanted = requested.isValid() && !requested.isEmpty() ? requested : QSize(400, 400);
    QString name = id.section(QLatin1Char('?'), 0, 0);
    const QUrlQuery query(id.section(QLatin1Char('?'), 1));
    const int side = std::min(wanted.width(), wanted.height());
    QImage image(side, side, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
#ifdef EVENFALL_WITH_FIGURES
    const QByteArray svg = composed(name, query);
    if (!svg.isEmpty()) {
        QSvgRenderer renderer(svg);
        renderer.render(&painter, QRectF(0, 0, side, side));
        *size = image.size();
        return image;
    }
#endif
    painter.setPen(QPen(QColor(0x9a, 0x8d, 0x7c), 3, Qt::DashLine));
    painter.drawRoundedRect(image.rect().adjusted(6, 6, -6, -6), 20, 20);
    painter.drawText(image.rect(), Qt::AlignCenter | Qt::TextWordWrap, name.replace(QLatin1Char('_'), QLatin1Char(' ')));
    *size = image.size();
    return image;
}

} // namespace stage
