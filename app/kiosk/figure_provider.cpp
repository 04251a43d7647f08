// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/figure_provider.h"

#include <QDir>
#include <QFile>
#include <QPainter>
#include <QSvgRenderer>
#include <QUrlQuery>

#include <stdexcept>

namespace evenfall {

FigureStore built_in_figures()
{
    std::map<std::string, std::string> files;
    const QDir folder(QStringLiteral(":/figures"));
    for (const QString& name : folder.entryList({QStringLiteral("*.svg")})) {
        QFile file(folder.filePath(name));
        if (file.open(QIODevice::ReadOnly))
            files[name.chopped(4).toStdString()] = file.readAll().toStdString();
    }
    return FigureStore(std::move(files));
}

const FigureStore& FigureProvider::store()
{
    if (!store_)
        store_ = built_in_figures();
    return *store_;
}

QString figure_query(const Depiction& what)
{
    QStringList counts, dots, layers, query;
    for (const auto& [slot, count] : what.counts)
        counts << QStringLiteral("%1:%2").arg(QString::fromStdString(slot)).arg(count);
    for (const std::string& slot : what.dots)
        dots << QString::fromStdString(slot);
    for (const std::string& layer : what.layers)
        layers << QString::fromStdString(layer);
    for (const auto& [key, list] : {std::pair{"counts=", counts}, {"dots=", dots}, {"done=", layers}})
        if (!list.isEmpty())
            query << QLatin1String(key) + list.join(QLatin1Char(','));
    return query.join(QLatin1Char('&'));
}

FigureRequest parse_figure_address(const QString& address)
{
    const QStringList halves = address.split(QLatin1Char('?'));
    const QUrlQuery query(halves.size() > 1 ? halves[1] : QString());
    const auto value = [&query](const char* key) { return query.queryItemValue(QString::fromLatin1(key), QUrl::FullyDecoded); };

    FigureRequest request;
    request.id = halves[0].toStdString();
    const QString tone = value("tone");
    request.tone = tone == QLatin1String("light") ? Tone::light
                   : tone == QLatin1String("night") ? Tone::night
                   : tone == QLatin1String("print") ? Tone::print
                                                    : Tone::dark;
    const QString build = value("build");
    request.build = build == QLatin1String("slim") ? Build::slim : build == QLatin1String("broad") ? Build::broad : Build::medium;
    request.writing_hand = value("hand") == QLatin1String("left") ? Hand::left : Hand::right;
    const auto mark = [&](const char* key, PartState state) {
        for (const QString& layer : value(key).split(QLatin1Char(','), Qt::SkipEmptyParts))
            request.parts[layer.toStdString()] = state;
    };
    mark("outline", PartState::outline);
    mark("current", PartState::current);
    mark("done", PartState::done);
    for (const QString& slot : value("dots").split(QLatin1Char(','), Qt::SkipEmptyParts))
        request.dots.insert(slot.toStdString());
    for (const QString& pair : value("counts").split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const QStringList two = pair.split(QLatin1Char(':'));
        if (two.size() == 2)
            request.counts[two[0].toStdString()] = two[1].toInt();
    }
    return request;
}

QImage draw_figure(const FigureStore& store, const FigureRequest& request, QSize size)
{
    QImage image(size, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QSvgRenderer renderer(QByteArray::fromStdString(store.compose(request)));
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    renderer.setAspectRatioMode(Qt::KeepAspectRatio);
    renderer.render(&painter);
    return image;
}

QImage FigureProvider::requestImage(const QString& id, QSize* size, const QSize& requested)
{
    const QSize wanted(requested.width() > 0 ? requested.width() : 400, requested.height() > 0 ? requested.height() : 400);
    if (size)
        *size = wanted;
    try {
        return draw_figure(store(), parse_figure_address(id), wanted);
    } catch (const std::out_of_range& error) {
        qWarning("figure: %s", error.what());
        return {};
    }
}

} // namespace evenfall
