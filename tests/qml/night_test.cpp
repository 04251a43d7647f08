// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "seen.h"

#include <QtCore/QJsonArray>
#include <QtQml/QQmlProperty>
#include <QtTest/QSignalSpy>
#include <QtTest/QTest>

#include <gtest/gtest.h>

namespace stage {
namespace {

Sample sample_named(const QString& name) {
    for (const Sample& sample : samples()) {
        if (sample.name == name) {
            return sample;
        }
    }
    throw std::runtime_error("no sample " + name.toStdString());
}

const QString dark = QStringLiteral("10-night-dark");

struct Noted {
    explicit Noted(const Stage& stage)
        : wake(stage.screen(), SIGNAL(wake())), awake(stage.screen(), SIGNAL(awake())),
          up(stage.screen(), SIGNAL(up())), off(stage.screen(), SIGNAL(off())),
          help(stage.screen(), SIGNAL(help())), day(stage.screen(), SIGNAL(upForDay())) {}
    qsizetype others() const { return awake.count() + up.count() + off.count() + help.count() + day.count(); }
    QSignalSpy wake, awake, up, off, help, day;
};

TEST(Night, TheFirstTouchOnTheDarkPageOnlyWakesWhereverItIs) {
    for (const QPoint at : {QPoint(5, 5), QPoint(300, 150), QPoint(640, 400), QPoint(1200, 700)}) {
        const Stage shown(sample_named(dark), {});
        ASSERT_NE(shown.screen(), nullptr);
        const Noted noted(shown);
        QTest::mouseClick(shown.window(), Qt::LeftButton, Qt::NoModifier, at);
        shown.settle();
        EXPECT_EQ(noted.wake.count(), 1);
        EXPECT_EQ(noted.others(), 0);
    }
}

TEST(Night, TheTouchThatWakesNotesNothingWhenItIsLifted) {
    const Stage shown(sample_named(dark), {});
    ASSERT_NE(shown.screen(), nullptr);
    const Noted noted(shown);
    QTest::mousePress(shown.window(), Qt::LeftButton, Qt::NoModifier, QPoint(300, 150));
    QQmlProperty::write(shown.screen(), QStringLiteral("face"), QStringLiteral("areas"));
    shown.settle();
    QTest::mouseRelease(shown.window(), Qt::LeftButton, Qt::NoModifier, QPoint(300, 150));
    shown.settle();
    EXPECT_EQ(noted.wake.count(), 1);
    EXPECT_EQ(noted.others(), 0);
    QTest::mouseClick(shown.window(), Qt::LeftButton, Qt::NoModifier, QPoint(300, 150));
    shown.settle();
    EXPECT_EQ(noted.awake.count(), 1) << "the second touch notes";
}

TEST(Night, AnyKeyOnTheDarkPageOnlyWakes) {
    for (const Qt::Key key : {Qt::Key_Space, Qt::Key_Return, Qt::Key_Tab, Qt::Key_A, Qt::Key_VolumeUp}) {
        const Stage shown(sample_named(dark), {});
        ASSERT_NE(shown.screen(), nullptr);
        const Noted noted(shown);
        QTest::keyClick(shown.window(), key);
        shown.settle();
        EXPECT_EQ(noted.wake.count(), 1) << key;
        EXPECT_EQ(noted.others(), 0) << key;
    }
}

TEST(Night, TheDarkPageIsBlackAndDrawsNoFrames) {
    const Stage shown(sample_named(dark), {});
    ASSERT_NE(shown.screen(), nullptr);
    const QImage image = shown.window()->grabWindow();
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            ASSERT_EQ(image.pixel(x, y) & 0xffffff, 0U) << x << "," << y;
        }
    }
    QTest::qWait(200);
    QSignalSpy frames(shown.window(), SIGNAL(frameSwapped()));
    QTest::qWait(1500);
    EXPECT_EQ(frames.count(), 0);
}

// Targets: mean linear luminance at most 1 % and mean linear blue at most 0.3 % of a white screen.
TEST(Night, EveryFaceStaysUnderTheLightOfTheNight) {
    for (const Sample& sample : samples()) {
        if (sample.json[QStringLiteral("tone")].toString() != QLatin1String("night")) {
            continue;
        }
        for (const double scale : {1.0, 2.0}) {
            const Stage shown(sample, {{1280, 800}, scale, QStringLiteral("en")});
            ASSERT_NE(shown.screen(), nullptr);
            const QImage image = shown.window()->grabWindow();
            double light = 0;
            double blue = 0;
            for (int y = 0; y < image.height(); ++y) {
                for (int x = 0; x < image.width(); ++x) {
                    const QColor colour(image.pixel(x, y));
                    light += luminance(colour);
                    blue += luminance(QColor(0, 0, colour.blue())) / 0.0722;
                }
            }
            const double pixels = double(image.width()) * image.height();
            EXPECT_LE(light / pixels, 0.01) << sample.name.toStdString() << " at " << scale;
            EXPECT_LE(blue / pixels, 0.003) << sample.name.toStdString() << " at " << scale;
            testing::Test::RecordProperty(sample.name.toStdString(), std::to_string(light / pixels));
        }
    }
}

TEST(Night, EachAreaReportsItsOwnSignal) {
    const Stage shown(sample_named(QStringLiteral("10-night-areas")), {});
    ASSERT_NE(shown.screen(), nullptr);
    const std::pair<const char*, const char*> areas[] = {{"awake", SIGNAL(awake())}, {"up", SIGNAL(up())},
        {"off", SIGNAL(off())}, {"help", SIGNAL(help())}, {"day", SIGNAL(upForDay())}};
    for (const auto& [name, signal] : areas) {
        auto* const area = shown.screen()->findChild<QQuickItem*>(QLatin1String(name));
        ASSERT_NE(area, nullptr) << name;
        QSignalSpy spy(shown.screen(), signal);
        const Noted noted(shown);
        QTest::mouseClick(shown.window(), Qt::LeftButton, Qt::NoModifier,
                          area->mapToScene(QPointF(area->width() / 2, area->height() / 2)).toPoint());
        shown.settle();
        EXPECT_EQ(spy.count(), 1) << name;
        EXPECT_EQ(noted.others(), 1) << name;
        EXPECT_EQ(noted.wake.count(), 0) << name;
    }
}

// At most three flashes a second: WCAG 2.3.1.
TEST(Light, FlashesNoMoreThanThreeTimesASecondWhateverItIsTold) {
    Sample sample = sample_named(QStringLiteral("08-light"));
    QJsonObject props = sample.json[QStringLiteral("props")].toObject();
    props[QStringLiteral("lights")] = QJsonArray{QJsonObject{{QStringLiteral("id"), QStringLiteral("x")},
        {QStringLiteral("name"), QStringLiteral("fast")}, {QStringLiteral("blinks"), 9},
        {QStringLiteral("onMs"), 30}, {QStringLiteral("offMs"), 30}, {QStringLiteral("pauseMs"), 30},
        {QStringLiteral("color"), QStringLiteral("#8fc46a")}}};
    sample.json[QStringLiteral("props")] = props;
    sample.json[QStringLiteral("motion")] = true;
    const Stage shown(sample, {});
    ASSERT_NE(shown.screen(), nullptr);
    QQuickItem* const lamp = item_with(shown, "lit");
    ASSERT_NE(lamp, nullptr);
    QSignalSpy changes(lamp, SIGNAL(litChanged()));
    QTest::qWait(3000);
    EXPECT_GE(changes.count(), 4) << "it does blink";
    EXPECT_LE(changes.count(), 2 * 3 * 3 + 1) << "on and off, three times a second, for three seconds";
}

} // namespace
} // namespace stage
