// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// A tablet without any sound device: everything works, and the sound control says why it is silent.
#include "sound/ear.h"
#include "sound/kiosk_that_sounds.h"

#include <QGuiApplication>

namespace {

using namespace evenfall;

TEST(WithoutADevice, SaysWhy_AndTheEveningGoesOn)
{
    KioskThatSounds one(QStringLiteral("en"), std::chrono::milliseconds(200));
    Kiosk& kiosk = *one.kiosk;
    wait_for(1500); // the tone of the start has nowhere to go
    ASSERT_TRUE(kiosk.open_page("ready.charger"));
    // Found out at the tone: now it is known before anybody asks.
    EXPECT_FALSE(kiosk.voice().canSpeak);
    kiosk.sayAgain();
    EXPECT_FALSE(kiosk.voice().speaking);
    EXPECT_FALSE(kiosk.voice().canSpeak);
    EXPECT_EQ(kiosk.voice().reason, kiosk.words().of("sound.no_device"));
    EXPECT_EQ(kiosk.step().speakReason, kiosk.voice().reason);
    kiosk.goOn();
    EXPECT_EQ(kiosk.page(), "ready.clothes");
    kiosk.chooseReading(true);
    ASSERT_TRUE(kiosk.open_page("bed"));
    kiosk.chooseNightSound(true);
    kiosk.goOn();
    ASSERT_EQ(kiosk.page(), "night");
    kiosk.wake();
    kiosk.noteAwake();
    EXPECT_TRUE(kiosk.session()->state().awake_now());
    EXPECT_EQ(kiosk.night().face, "noted");
}

TEST(WithoutADevice, IsFoundOutWhenAPageIsToBeRead)
{
    KioskThatSounds one;
    ASSERT_TRUE(one.kiosk->open_page("ready.charger"));
    EXPECT_TRUE(one.kiosk->voice().canSpeak) << "nothing was loaded yet, so nothing is known";
    one.kiosk->sayAgain();
    EXPECT_FALSE(one.kiosk->voice().canSpeak);
    EXPECT_EQ(one.kiosk->voice().reason, one.kiosk->words().of("sound.no_device"));
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("PULSE_SERVER", "unix:/nonexistent/socket");
    QGuiApplication app(argc, argv);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
