// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Writes a picture of every sample: qml_gallery OUT_DIR [--size 1280x800] [--lang en]
// [--text-scale 1.0] [--only PART_OF_NAME]. Exits 1 when a screen warned or could not be made.
#include "stage.h"

#include <QtCore/QCommandLineParser>
#include <QtCore/QDir>
#include <QtGui/QGuiApplication>
#include <QtGui/QImage>

#include <cstdio>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication app(argc, argv);
    QCommandLineParser parser;
    parser.addHelpOption();
    parser.addPositionalArgument(QStringLiteral("OUT_DIR"), QStringLiteral("where the pictures go"));
    const QCommandLineOption size({QStringLiteral("size")}, QStringLiteral("pixels"), QStringLiteral("WxH"), QStringLiteral("1280x800"));
    const QCommandLineOption lang({QStringLiteral("lang")}, QStringLiteral("language"), QStringLiteral("L"), QStringLiteral("en"));
    const QCommandLineOption scale({QStringLiteral("text-scale")}, QStringLiteral("1.0 to 2.0"), QStringLiteral("S"), QStringLiteral("1.0"));
    const QCommandLineOption only({QStringLiteral("only")}, QStringLiteral("part of a sample's name"), QStringLiteral("NAME"));
    parser.addOptions({size, lang, scale, only});
    parser.process(app);
    if (parser.positionalArguments().size() != 1) {
        parser.showHelp(2);
    }
    const QDir out(parser.positionalArguments().constFirst());
    if (!out.mkpath(QStringLiteral("."))) {
        std::fprintf(stderr, "%s: cannot be made\n", qPrintable(out.path()));
        return 3;
    }
    const QStringList pixels = parser.value(size).split(QLatin1Char('x'));
    stage::Look look;
    look.size = QSize(pixels.value(0).toInt(), pixels.value(1).toInt());
    look.language = parser.value(lang);
    look.text_scale = parser.value(scale).toDouble();
    stage::prepare();
    bool clean = true;
    for (const auto& sample : stage::samples()) {
        if (!sample.name.contains(parser.value(only))) {
            continue;
        }
        const stage::Stage shown(sample, look);
        clean = clean && shown.warnings().isEmpty() && shown.screen() != nullptr;
        if (shown.window() != nullptr) {
            shown.window()->grabWindow().save(out.filePath(sample.name + QStringLiteral(".png")));
        }
    }
    return clean ? 0 : 1;
}
