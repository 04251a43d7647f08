// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The least that a Qt Quick program can be: one empty window. It ends after its first frame, so that
// the kiosk's start can be measured beside it.
#include <QGuiApplication>
#include <QQuickView>
#include <QTimer>

int main(int argc, char** argv)
{
    QGuiApplication app(argc, argv);
    QQuickView view;
    view.resize(1280, 800);
    QObject::connect(&view, &QQuickWindow::frameSwapped, &app, &QGuiApplication::quit, Qt::QueuedConnection);
    view.show();
    return app.exec();
}
