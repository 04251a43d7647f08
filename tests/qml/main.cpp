// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The tests of the screens, offscreen and with the software renderer.
#include "stage.h"

#include <QtGui/QGuiApplication>

#include <gtest/gtest.h>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    testing::InitGoogleTest(&argc, argv);
    const QGuiApplication app(argc, argv);
    stage::prepare();
    return RUN_ALL_TESTS();
}
