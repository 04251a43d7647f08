// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "stage/window.h"

#include "kiosk/figure_provider.h"

#include <QCoreApplication>
#include <QQuickItem>
#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(Evenfall_UiPlugin)
Q_IMPORT_QML_PLUGIN(Evenfall_KioskPlugin)
Q_IMPORT_QML_PLUGIN(Evenfall_FrontDeskPlugin)
Q_IMPORT_QML_PLUGIN(Evenfall_AppPlugin)

namespace evenfall {

KioskWindow::KioskWindow(Kiosk& kiosk, QSize size, FrontDesk* desk)
{
    engine_ = std::make_unique<QQmlApplicationEngine>();
    engine_->addImportPath(QStringLiteral("qrc:/"));
    engine_->addImageProvider(QStringLiteral("figure"), new FigureProvider); // the engine owns it
    QObject::connect(engine_.get(), &QQmlEngine::warnings, engine_.get(), [this](const QList<QQmlError>& list) {
        for (const QQmlError& one : list)
            warnings_ << one.toString();
    });
    // The screens' own labels are read again when the language changes.
    QObject::connect(&kiosk, &Kiosk::languageChanged, engine_.get(), [this] { engine_->retranslate(); });
    if (desk) {
        engine_->addImageProvider(QStringLiteral("sheet"), desk->page_pictures());
        QObject::connect(desk, &FrontDesk::languageChanged, engine_.get(), [this] { engine_->retranslate(); });
    }
    engine_->setInitialProperties({{QStringLiteral("kiosk"), QVariant::fromValue(&kiosk)},
                                   {QStringLiteral("desk"), QVariant::fromValue<QObject*>(desk)},
                                   {QStringLiteral("width"), size.width()},
                                   {QStringLiteral("height"), size.height()}});
    engine_->load(QUrl(QStringLiteral("qrc:/Evenfall/App/Main.qml")));
    if (!engine_->rootObjects().isEmpty())
        window_ = qobject_cast<QQuickWindow*>(engine_->rootObjects().constFirst());
}

KioskWindow::~KioskWindow() = default;

QString KioskWindow::screen_property(const char* name) const
{
    const QQuickItem* screen = window_->property("screenItem").value<QQuickItem*>();
    return screen ? screen->property(name).toString() : QString();
}

QStringList KioskWindow::take_warnings() { return std::exchange(warnings_, {}); }

void KioskWindow::settle() const
{
    for (int i = 0; i < 4; ++i) {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
    // Positioners lay out when a frame is drawn, and without a display nothing asks for one.
    window_->grabWindow();
}

} // namespace evenfall
