// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// How many touches a tired person needs, counted on the real screens.
#include "stage/player.h"

#include "answers/questions.h"
#include "journal/kinds.h"

#include <QTemporaryDir>
#include <cstdio>
#include <gtest/gtest.h>

namespace {

using namespace evenfall;
using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

class Touches : public testing::Test {
  protected:
    QTemporaryDir folder_;
    std::unique_ptr<Player> play_;

    void SetUp() override
    {
        Result<VisitWithKit> visit = load_visit(EVENFALL_SOURCE_DIR "/assets/visits/demo.json", {});
        ASSERT_TRUE(visit.ok());
        Player::Setting setting;
        setting.visit = *visit;
        setting.pictures = QDir(folder_.path());
        play_ = std::make_unique<Player>(setting);
        ASSERT_TRUE(play_->start()) << play_->faults().join('\n').toStdString();
        Kiosk& kiosk = play_->kiosk();
        kiosk.goOn();
        kiosk.firstNone();
        ASSERT_TRUE(kiosk.open_page("light"));
        kiosk.choose("double_blink");
        ASSERT_TRUE(kiosk.open_page("bed"));
        play_->until("22:10");
        kiosk.goOn();
        ASSERT_EQ(kiosk.page(), "night");
    }
    void TearDown() override { EXPECT_TRUE(play_->faults().isEmpty()) << play_->faults().join('\n').toStdString(); }
    const std::vector<NightNote>& notes() const { return play_->session().state().notes; }
};

TEST_F(Touches, EachEventOfTheNightIsNotedWithTwo)
{
    const std::vector<std::pair<const char*, std::string_view>> events{
        {"night.awake", kinds::awake},           {"night.back_to_sleep", kinds::asleep}, {"night.getting_up", kinds::up},
        {"night.back_in_bed", kinds::back},      {"night.came_off", kinds::off},         {"night.back_on", kinds::on}};
    for (const auto& [label, kind] : events) {
        ASSERT_EQ(play_->kiosk().night().face, "dark");
        const int before = play_->touches();
        const size_t noted = notes().size();
        play_->tap_anywhere();
        EXPECT_EQ(notes().size(), noted) << "the first touch only wakes";
        play_->tap(play_->label(label));
        EXPECT_EQ(play_->touches() - before, 2) << label;
        ASSERT_EQ(notes().size(), noted + 1) << label;
        EXPECT_EQ(notes().back().kind, kind);
        if (kind == kinds::off) // which one is said while the page is still lit
            play_->kiosk().choose("finger");
        play_->pass(minutes(10));
        play_->kiosk().let_time_pass();
    }
}

TEST_F(Touches, AMorningOfEightAnswersTakesUnderFortyAndUnderThreeMinutes)
{
    play_->until("06:40");
    play_->kiosk().upConfirmed();
    play_->expect("morning");
    // How fast somebody reads and touches: from memory, slow on purpose.
    constexpr seconds read_page{5}, touch{2};
    const Instant begin = play_->clock().instant();
    const int before = play_->touches();
    int answers = 0;
    play_->tap_main();
    for (int page = 0; play_->kiosk().screen() != QLatin1String("review") && page < 20; ++page) {
        play_->pass(read_page);
        const std::string question = play_->kiosk().page().toStdString().substr(2);
        const QString screen = play_->kiosk().screen();
        const bool wanted = question != questions::slept && question != questions::comment && question != questions::tried_after_waking;
        if (!wanted) {
            play_->tap(play_->label("question.skip"));
            continue;
        }
        if (screen == QLatin1String("amount")) {
            play_->tap_object(QStringLiteral("step15"));
            play_->tap_object(QStringLiteral("step5"));
        } else if (question == questions::final_waking) {
            play_->tap(play_->label("time.minus_ten"));
            play_->tap(play_->label("time.about"));
        } else if (screen == QLatin1String("events")) {
            const QString none = play_->kiosk().list().noneLabel;
            if (!none.isEmpty() && !play_->kiosk().list().mainEnabled)
                play_->tap(none);
        } else if (question == questions::compare) {
            play_->tap(play_->label("q.compare.usual"));
        }
        if (play_->kiosk().page().toStdString().substr(2) == question)
            play_->tap_main();
        ++answers;
    }
    play_->expect("review");
    play_->pass(read_page);
    play_->tap_main();
    play_->expect("result");
    const int touches = play_->touches() - before;
    play_->pass(touch * touches);
    const auto taken = std::chrono::duration_cast<seconds>(play_->clock().instant() - begin);
    std::printf("morning: %d answers, %d touches, %lld s at %lld s a page and %lld s a touch\n", answers, touches,
                static_cast<long long>(taken.count()), static_cast<long long>(read_page.count()), static_cast<long long>(touch.count()));
    EXPECT_GE(answers, 8);
    EXPECT_LT(touches, 40);
    EXPECT_LT(taken, minutes(3));
}

} // namespace
