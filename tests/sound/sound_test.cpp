// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// What a person hears: the kiosk plays on a sound server of its own, and an ear at its monitor listens.
#include "sound/ear.h"
#include "sound/kiosk_that_sounds.h"

#include "narration/voices.h"

#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QtEndian>

namespace {

using namespace evenfall;

/// Seconds of an Ogg Opus file: the granule position of its last page less the pre-skip, at 48 kHz
/// (RFC 7845, 4 and 5.1).
double length_of(const QString& name)
{
    QFile file(name);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
    const QByteArray bytes = file.readAll();
    const qsizetype head = bytes.indexOf("OpusHead"), last = bytes.lastIndexOf("OggS");
    EXPECT_TRUE(head > 0 && last > 0) << name.toStdString();
    const auto skipped = qFromLittleEndian<quint16>(bytes.constData() + head + 10);
    const auto granule = qFromLittleEndian<quint64>(bytes.constData() + last + 6);
    return (static_cast<double>(granule) - skipped) / 48000;
}

class Heard : public testing::Test {
  protected:
    void SetUp() override { ASSERT_TRUE(ear.trouble().isEmpty()) << ear.trouble().toStdString(); }
    void listen()
    {
        ear.begin();
        ASSERT_TRUE(ear.trouble().isEmpty()) << ear.trouble().toStdString();
    }
    Ear ear;
};

std::vector<QString> shipped_languages()
{
    const QStringList all = Words::languages();
    return {all.begin(), all.end()};
}

class HeardIn : public Heard, public testing::WithParamInterface<QString> {};

TEST_P(HeardIn, AStepSoundsForAsLongAsItsRecordings)
{
    KioskThatSounds one(GetParam());
    ASSERT_TRUE(one.kiosk->open_page("ready.charger"));
    ASSERT_TRUE(one.kiosk->voice().canSpeak) << one.kiosk->voice().reason.toStdString();
    const Session& session = *one.kiosk->session();
    const Teller teller{session.visit(), session.kit(), one.kiosk->words()};
    const auto files = Voices({EVENFALL_BINARY_DIR "/voice"}).find(teller.step(*session.plan().step("ready.charger")), GetParam());
    ASSERT_TRUE(files.has_value());
    ASSERT_EQ(files->size(), 4) << "title, what to do, heading, how it is right";
    double length = 0;
    for (const QString& file : *files)
        length += length_of(file);

    listen();
    one.kiosk->sayAgain();
    ASSERT_TRUE(one.kiosk->voice().speaking) << one.kiosk->voice().reason.toStdString();
    EXPECT_TRUE(wait_for(60000, [&one] { return !one.kiosk->voice().speaking; }));
    EXPECT_TRUE(one.kiosk->voice().canSpeak) << one.kiosk->voice().reason.toStdString();
    ear.end();
    // Each recording ends with a little silence, and between two of them the next is opened.
    EXPECT_GT(ear.sounding(), length - 1.0);
    EXPECT_LT(ear.sounding(), length + 1.0 * static_cast<double>(files->size())) << "of recordings of " << length << " s";
    std::printf("%s: recordings of %.2f s, heard for %.2f s\n", GetParam().toUtf8().constData(), length, ear.sounding());
}

// The languages are those that were spoken when it was built; none may be missing.
INSTANTIATE_TEST_SUITE_P(Each, HeardIn, testing::ValuesIn(shipped_languages()),
                         [](const auto& one) { return one.param.toStdString(); });

TEST_F(Heard, IsSilent_SoonAfterThePageIsLeft)
{
    KioskThatSounds one;
    ASSERT_TRUE(one.kiosk->open_page("ready.charger"));
    listen();
    QElapsedTimer timer;
    timer.start();
    one.kiosk->sayAgain();
    wait_for(3000);
    one.kiosk->goOn();
    const double left = static_cast<double>(timer.elapsed()) / 1000;
    wait_for(2500);
    ear.end();
    EXPECT_LT(ear.before(), left) << "nothing was said at all";
    EXPECT_GT(ear.sounding(), 0.3);
    EXPECT_TRUE(ear.silent(left + 0.7, left + 2.2)) << "left after " << left << " s, heard until " << ear.before() + ear.sounding() << " s";
}

TEST_F(Heard, IsSilent_AtANoteOfTheNight_UnlessSoundWasAskedFor)
{
    KioskThatSounds one;
    ASSERT_TRUE(one.kiosk->open_page("night"));
    listen();
    one.kiosk->wake();
    one.kiosk->noteAwake();
    wait_for(1500);
    ear.end();
    EXPECT_EQ(ear.sounding(), 0);
}

TEST_F(Heard, AnswersANoteOfTheNightWithItsTone_WhenSoundWasAskedFor)
{
    KioskThatSounds one;
    ASSERT_TRUE(one.kiosk->open_page("bed"));
    one.kiosk->chooseNightSound(true);
    wait_for(2500);
    ASSERT_TRUE(one.kiosk->open_page("night"));
    listen();
    one.kiosk->wake();
    one.kiosk->noteAwake();
    EXPECT_TRUE(ear.hear_out(15000));
    ear.end();
    // noted.wav lasts 0.7 s and dies away (assets/sounds/make).
    EXPECT_GT(ear.sounding(), 0.3);
    EXPECT_LT(ear.sounding(), 1.2);
    std::printf("noted: heard for %.2f s\n", ear.sounding());
}

TEST_F(Heard, SoundsWhenItIsTimeToStart)
{
    KioskThatSounds one(QStringLiteral("en"), std::chrono::seconds(2));
    ASSERT_EQ(one.kiosk->page(), "welcome");
    listen();
    EXPECT_TRUE(ear.hear_out(20000));
    ear.end();
    // start.wav lasts 1.9 s and dies away.
    EXPECT_GT(ear.sounding(), 0.8);
    EXPECT_LT(ear.sounding(), 2.6);
    std::printf("start: heard for %.2f s\n", ear.sounding());
}

TEST_F(Heard, SaysTheEndOfEachBreathOut_WhenTheGuideIsToSound)
{
    KioskThatSounds one;
    ASSERT_TRUE(one.kiosk->open_page("chest_belt.wrap"));
    ASSERT_FALSE(one.kiosk->step().breathText.isEmpty());
    listen();
    one.kiosk->breathOut(); // not asked for
    wait_for(1500);
    one.kiosk->chooseBreathSound(true);
    one.kiosk->breathOut();
    EXPECT_TRUE(ear.hear_out(15000));
    ear.end();
    EXPECT_GT(ear.before(), 1.2);
    EXPECT_GT(ear.sounding(), 0.3);
}

TEST_F(Heard, SoundsAtEveryBreath_AsOftenAsItIsAsked)
{
    KioskThatSounds one;
    ASSERT_TRUE(one.kiosk->open_page("chest_belt.wrap"));
    one.kiosk->chooseBreathSound(true);
    for (int breath = 1; breath <= 6; ++breath) {
        listen();
        one.kiosk->breathOut();
        EXPECT_TRUE(ear.hear_out(15000)) << "breath " << breath;
        ear.end();
    }
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication app(argc, argv);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
