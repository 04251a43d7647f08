// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "stage.h"

#include "figure_for_tests.h"

#include <QtCore/QDir>
#include <QtCore/QEventLoop>
#include <QtCore/QFile>
#include <QtCore/QJsonArray>
#include <QtCore/QJsonDocument>
#include <QtCore/QLoggingCategory>
#include <QtCore/QTimer>
#include <QtCore/QTranslator>
#include <QtGui/QFont>
#include <QtGui/QGuiApplication>
#include <QtGui/private/qguiapplication_p.h>
#include <QtGui/qpa/qplatformaccessibility.h>
#include <QtGui/qpa/qplatformintegration.h>
#include <QtQml/QQmlComponent>
#include <QtQml/QQmlProperty>

#include <stdexcept>

namespace stage {
namespace {

QStringList& heard() {
    static QStringList list;
    return list;
}

void listen(QtMsgType type, const QMessageLogContext&, const QString& text) {
    if (type == QtDebugMsg || type == QtInfoMsg) {
        return;
    }
    heard().append(text);
    fprintf(stderr, "%s\n", qPrintable(text));
}

void speak(const QString& language) {
    static std::unique_ptr<QTranslator> translator;
    static QString current;
    if (language == current) {
        return;
    }
    auto next = std::make_unique<QTranslator>();
    const QString file = QStringLiteral("evenfall_") + language;
    if (!next->load(file, QStringLiteral(":/i18n")) &&
        !next->load(file, QStringLiteral(EVENFALL_BINARY_DIR "/i18n"))) {
        throw std::runtime_error("no translation for " + language.toStdString());
    }
    if (translator) {
        QCoreApplication::removeTranslator(translator.get());
    }
    translator = std::move(next);
    QCoreApplication::installTranslator(translator.get());
    current = language;
}

// The root of the app does the same: sizes into Theme, mirroring from the top.
const char* const host = R"(
import QtQuick
import Evenfall.Ui
Window {
    id: root
    property url source
    property var values
    property real textScale
    property string tone
    property bool motion
    property bool rightToLeft
    readonly property Item screen: loader.item
    color: Theme.ground
    Item {
        anchors.fill: parent
        LayoutMirroring.enabled: root.rightToLeft
        LayoutMirroring.childrenInherit: true
        Loader { id: loader; anchors.fill: parent; focus: true }
    }
    function start() {
        Theme.windowWidth = width;
        Theme.windowHeight = height;
        Theme.textScale = textScale;
        Theme.tone = tone;
        Theme.motion = motion;
        loader.setSource(source, values);
    }
}
)";

} // namespace

std::vector<Sample> samples() {
    const QDir folder(QStringLiteral(EVENFALL_SOURCE_DIR "/tests/qml/samples"));
    std::vector<Sample> all;
    for (const QString& name : folder.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly)) {
            throw std::runtime_error("cannot read " + name.toStdString());
        }
        QJsonParseError error;
        const auto doc = QJsonDocument::fromJson(file.readAll(), &error);
        if (!doc.isObject()) {
            throw std::runtime_error(name.toStdString() + ": " + error.errorString().toStdString());
        }
        all.push_back({name.chopped(5), doc.object()});
    }
    return all;
}

QVariantMap values(const Sample& sample, const QString& language) {
    QJsonObject props = sample.json[QStringLiteral("props")].toObject();
    const QJsonObject words = sample.json[language].toObject();
    for (auto it = words.begin(); it != words.end(); ++it) {
        props[it.key()] = it.value();
    }
    return props.toVariantMap();
}

void prepare() {
    qInstallMessageHandler(listen);
    QGuiApplicationPrivate::platformIntegration()->accessibility()->setActive(true);
    QFont::insertSubstitutions(QStringLiteral("Inter"),
                               {QStringLiteral("Noto Sans Arabic"), QStringLiteral("Noto Sans")});
}

Stage::Stage(const Sample& sample, const Look& look) {
    heard().clear();
    speak(look.language);
    engine_.addImportPath(QStringLiteral("qrc:/"));
    engine_.addImageProvider(QStringLiteral("figure"), new FigureForTests);
    QQmlComponent component(&engine_);
    component.setData(host, QUrl(QStringLiteral("qrc:/host.qml")));
    const QString screen = sample.json[QStringLiteral("screen")].toString();
    root_.reset(component.createWithInitialProperties(
        {{QStringLiteral("width"), look.size.width()},
         {QStringLiteral("height"), look.size.height()},
         {QStringLiteral("source"), QUrl(QStringLiteral("qrc:/Evenfall/Ui/screens/%1.qml").arg(screen))},
         {QStringLiteral("values"), values(sample, look.language)},
         {QStringLiteral("textScale"), look.text_scale},
         {QStringLiteral("tone"), sample.json[QStringLiteral("tone")].toString(QStringLiteral("evening"))},
         {QStringLiteral("motion"), sample.json[QStringLiteral("motion")].toBool(false)},
         {QStringLiteral("rightToLeft"), look.right_to_left()}}));
    window_ = qobject_cast<QQuickWindow*>(root_.get());
    if (window_ == nullptr) {
        heard().append(component.errorString());
        return;
    }
    QMetaObject::invokeMethod(window_, "start");
    window_->show();
    window_->requestActivate();
    settle();
    screen_ = qvariant_cast<QQuickItem*>(window_->property("screen"));
    const QVariantMap after = sample.json[QStringLiteral("after")].toObject().toVariantMap();
    for (auto it = after.begin(); screen_ != nullptr && it != after.end(); ++it) {
        QQmlProperty::write(screen_, it.key(), it.value());
    }
    settle();
    window_->grabWindow(); // a frame: rows and columns find their places
    settle();
}

Stage::~Stage() {
    if (window_ != nullptr) {
        window_->hide();
    }
}

QStringList Stage::warnings() const { return heard(); }

void Stage::settle() const {
    for (int i = 0; i < 3; ++i) {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
    }
}

} // namespace stage
