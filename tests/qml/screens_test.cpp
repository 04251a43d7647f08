// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "seen.h"

#include <QtGui/QAccessible>
#include <QtGui/QGuiApplication>
#include <QtCore/QDir>
#include <QtQml/QQmlProperty>
#include <QtTest/QSignalSpy>
#include <QtTest/QTest>

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace stage {
namespace {

std::vector<Look> looks() {
    const QSize sizes[] = {{1280, 800}, {800, 1280}, {1024, 600}, {1920, 1080}};
    std::vector<Look> all;
    for (const QSize& size : sizes) {
        for (const double scale : {1.0, 1.5, 2.0}) {
            all.push_back({size, scale, QStringLiteral("en")});
        }
    }
    for (const char* const language : {"ar", "es", "qps"}) {
        all.push_back({sizes[0], 1.0, QLatin1String(language)});
        all.push_back({sizes[1], 1.5, QLatin1String(language)});
        all.push_back({sizes[2], 2.0, QLatin1String(language)});
        all.push_back({sizes[0], 2.0, QLatin1String(language)});
    }
    for (const char* const language : {"de", "fr"})
        all.push_back({sizes[2], 1.5, QLatin1String(language)});
    return all;
}

std::string told(const Look& look) {
    return std::to_string(look.size.width()) + "x" + std::to_string(look.size.height()) + " scale " +
           std::to_string(look.text_scale) + " " + look.language.toStdString();
}

class Screens : public testing::TestWithParam<Sample> {};

void expect_readable(const Stage& stage) {
    const QRectF window(0, 0, stage.window()->width(), stage.window()->height());
    const auto all = texts(stage);
    for (const Seen& text : all) {
        const std::string name = called(text).toStdString();
        EXPECT_FALSE(text.item->property("truncated").toBool()) << name << " is cut";
        EXPECT_LE(text.item->property("contentWidth").toDouble(), text.rect.width() + 2)
            << name << " is wider than its place";
        if (!text.scrolls) {
            EXPECT_TRUE(window.adjusted(-1, -1, 1, 1).contains(text.rect)) << name << " leaves the window";
        } else {
            EXPECT_GE(text.rect.left(), -1) << name;
            EXPECT_LE(text.rect.right(), window.right() + 1) << name;
        }
        if (text.control != nullptr) {
            const QRectF control = text.control->mapRectToScene(
                QRectF(0, 0, text.control->width(), text.control->height()));
            EXPECT_TRUE(control.adjusted(-1, -1, 1, 1).contains(text.rect)) << name << " leaves its button";
        }
    }
    // The line box is taller than the letters: a fifth of it may touch a neighbour's.
    const auto letters = [](const QRectF& box) {
        return box.adjusted(0, box.height() * 0.1, 0, -box.height() * 0.1);
    };
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (std::size_t k = i + 1; k < all.size(); ++k) {
            const QRectF both = letters(all[i].in_sight) & letters(all[k].in_sight);
            EXPECT_LE(both.width() * both.height(), 4)
                << called(all[i]).toStdString() << " lies over " << called(all[k]).toStdString();
        }
    }
}

void expect_reachable_by_hand(const Stage& stage) {
    const QRectF window(0, 0, stage.window()->width(), stage.window()->height());
    const auto all = controls(stage);
    const bool night = stage.screen()->inherits("QQuickItem") &&
                       QQmlProperty::read(stage.screen(), QStringLiteral("face")).isValid();
    for (const Seen& control : all) {
        const std::string name = called(control).toStdString();
        const QString id = control.item->objectName();
        const bool main = id == QLatin1String("main") || id == QLatin1String("second") ||
                          id == QLatin1String("close") || (night && !id.isEmpty());
        const double least = millimetres(stage, main ? 20 : 12) - 1;
        EXPECT_GE(control.rect.height(), least) << name << " is too low";
        EXPECT_GE(control.rect.width(), least) << name << " is too narrow";
        if (!control.scrolls) {
            EXPECT_TRUE(window.adjusted(-1, -1, 1, 1).contains(control.rect)) << name << " leaves the window";
        }
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (std::size_t k = i + 1; k < all.size(); ++k) {
            const QRectF both = all[i].in_sight & all[k].in_sight;
            EXPECT_LE(both.width() * both.height(), 4)
                << called(all[i]).toStdString() << " lies over " << called(all[k]).toStdString();
        }
    }
}

void expect_contrast(const Stage& stage, const Sample& sample) {
    const double least = sample.json[QStringLiteral("tone")].toString() == QLatin1String("night") ? 4.5 : 7.0;
    const QImage image = stage.window()->grabWindow();
    for (const Seen& text : texts(stage)) {
        if (text.in_sight.height() < text.rect.height() - 1) {
            continue; // partly scrolled out
        }
        const QColor ink = text.item->property("color").value<QColor>();
        // Signs that repeat a word beside them are not text: 3:1 (WCAG 1.4.11).
        const bool sign = text.item->property("text").toString().size() == 1;
        EXPECT_GE(contrast(ink, ground(image, text.in_sight)), sign ? 3.0 : least)
            << called(text).toStdString();
    }
}

TEST_P(Screens, NothingIsCutOrLiesOverAnotherAtAnySizeAndLanguage) {
    for (const Look& look : looks()) {
        SCOPED_TRACE(told(look));
        const Stage shown(GetParam(), look);
        ASSERT_NE(shown.screen(), nullptr);
        EXPECT_EQ(shown.warnings().join(QLatin1Char('\n')).toStdString(), "");
        expect_readable(shown);
        expect_reachable_by_hand(shown);
        if (look.text_scale == 1.0) {
            expect_contrast(shown, GetParam());
        }
        if (HasFailure()) {
            return; // the first look that fails says enough
        }
    }
}

TEST_P(Screens, EveryControlHasANameAndARole) {
    const Stage shown(GetParam(), {});
    ASSERT_NE(shown.screen(), nullptr);
    for (const Seen& control : controls(shown)) {
        QAccessibleInterface* interface = QAccessible::queryAccessibleInterface(control.item);
        ASSERT_NE(interface, nullptr) << called(control).toStdString();
        EXPECT_FALSE(interface->text(QAccessible::Name).isEmpty()) << called(control).toStdString();
        const std::set<QAccessible::Role> known = {QAccessible::Button, QAccessible::RadioButton,
                                                   QAccessible::CheckBox, QAccessible::EditableText};
        EXPECT_TRUE(known.contains(interface->role())) << called(control).toStdString();
    }
}

void press(const Stage& stage, Qt::Key key) {
    QTest::keyClick(stage.window(), key);
    stage.settle();
}

TEST_P(Screens, TabReachesEveryControl) {
    const Stage shown(GetParam(), {});
    ASSERT_NE(shown.screen(), nullptr);
    std::set<QQuickItem*> reached;
    for (int i = 0; i < 60; ++i) {
        press(shown, Qt::Key_Tab);
        reached.insert(shown.window()->activeFocusItem());
    }
    for (const Seen& control : controls(shown)) {
        if (control.item->isEnabled()) {
            EXPECT_TRUE(reached.contains(control.item)) << called(control).toStdString();
        }
    }
}

TEST_P(Screens, SpaceAndEnterEachActOnce) {
    const Stage shown(GetParam(), {});
    ASSERT_NE(shown.screen(), nullptr);
    const QVariant before = QQmlProperty::read(shown.screen(), QStringLiteral("shown"));
    for (const Seen& control : controls(shown)) {
        if (!control.item->isEnabled() || !control.item->inherits("QQuickAbstractButton")) {
            continue;
        }
        for (const Qt::Key key : {Qt::Key_Space, Qt::Key_Return, Qt::Key_Enter}) {
            control.item->forceActiveFocus(Qt::TabFocusReason);
            QSignalSpy clicked(control.item, SIGNAL(clicked()));
            press(shown, key);
            EXPECT_EQ(clicked.count(), 1) << called(control).toStdString() << " on key " << key;
            if (before.isValid()) {
                QQmlProperty::write(shown.screen(), QStringLiteral("shown"), before);
            }
            shown.settle();
        }
    }
}

TEST_P(Screens, ATouchOnTheMainActionReportsItOnce) {
    const Stage shown(GetParam(), {});
    ASSERT_NE(shown.screen(), nullptr);
    auto* const main = shown.screen()->findChild<QQuickItem*>(QStringLiteral("main"));
    if (main == nullptr || !main->isVisible() || !main->isEnabled()) {
        return; // no main action in this sample
    }
    QSignalSpy reported(shown.screen(), SIGNAL(main()));
    QTest::mouseClick(shown.window(), Qt::LeftButton, Qt::NoModifier,
                      main->mapToScene(QPointF(main->width() / 2, main->height() / 2)).toPoint());
    shown.settle();
    EXPECT_EQ(reported.count(), 1);
}

TEST_P(Screens, ADisabledMainActionReportsNothing) {
    Sample sample = GetParam();
    QJsonObject props = sample.json[QStringLiteral("props")].toObject();
    if (!props.contains(QStringLiteral("mainLabel"))) {
        return;
    }
    props[QStringLiteral("mainEnabled")] = false;
    sample.json[QStringLiteral("props")] = props;
    sample.json.remove(QStringLiteral("after"));
    const Stage shown(sample, {});
    ASSERT_NE(shown.screen(), nullptr);
    auto* const main = shown.screen()->findChild<QQuickItem*>(QStringLiteral("main"));
    ASSERT_NE(main, nullptr);
    QSignalSpy reported(shown.screen(), SIGNAL(main()));
    QTest::mouseClick(shown.window(), Qt::LeftButton, Qt::NoModifier,
                      main->mapToScene(QPointF(main->width() / 2, main->height() / 2)).toPoint());
    shown.settle();
    EXPECT_EQ(reported.count(), 0);
}

INSTANTIATE_TEST_SUITE_P(All, Screens, testing::ValuesIn(samples()), [](const auto& sample) {
    QString name = sample.param.name;
    return name.replace(QLatin1Char('-'), QLatin1Char('_')).toStdString();
});

// The longest step of the demo kits: its caution must be seen, not scrolled for.
TEST(Step, TheLongestStepShowsItsCautionWithoutScrolling) {
    for (const char* const language : {"en", "ar"}) {
        for (const QSize& size : {QSize(1280, 800), QSize(800, 1280)}) {
            const auto all = samples();
            const auto finger = std::find_if(all.begin(), all.end(), [](const Sample& sample) {
                return sample.name == QLatin1String("05-step-finger");
            });
            ASSERT_NE(finger, all.end());
            const QString caution = values(*finger, QLatin1String(language))[QStringLiteral("caution")].toString();
            ASSERT_FALSE(caution.isEmpty());
            const Stage shown(*finger, {size, 1.0, QLatin1String(language)});
            bool found = false;
            for (const Seen& text : texts(shown)) {
                if (text.item->property("text").toString() == caution) {
                    found = true;
                    EXPECT_EQ(text.in_sight, text.rect) << language << " " << size.width();
                }
            }
            EXPECT_TRUE(found);
        }
    }
}

TEST(Samples, EveryScreenHasOne) {
    std::set<QString> shown;
    for (const Sample& sample : samples()) {
        shown.insert(sample.json[QStringLiteral("screen")].toString());
    }
    const QDir folder(QStringLiteral(EVENFALL_SOURCE_DIR "/qml/screens"));
    const QStringList files = folder.entryList({QStringLiteral("*.qml")}, QDir::Files);
    EXPECT_GE(files.size(), 22);
    for (const QString& file : files) {
        EXPECT_TRUE(shown.contains(file.chopped(4))) << file.toStdString();
    }
}

} // namespace
} // namespace stage
