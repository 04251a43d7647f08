// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "stage/rehearsal.h"

#include "estimate/contradictions.h"
#include "estimate/estimate.h"
#include "print/summary_pdf.h"
#include "record/verify.h"

#include <QJsonDocument>
#include <algorithm>

namespace evenfall {
namespace {

using std::chrono::minutes;

/// The evening as somebody careful does it: every page, every part, at the plan's pace.
void evening(Player& play)
{
    play.expect("welcome");
    play.picture("welcome");
    play.tap_main();
    play.expect("first");
    play.picture("first-questions");
    play.tap(play.label("first.none"));
    play.expect("bag");
    play.picture("bag");
    play.tap_main();

    const Plan& plan = play.session().plan();
    for (const Step& step : plan.steps) {
        play.expect_true(play.session().state().page == step.id, QStringLiteral("the page is %1, not %2").arg(play.kiosk().page(), QString::fromStdString(step.id)));
        play.pass(step.seconds);
        if (step.id == "check") {
            for (const Part& part : play.session().kit().parts)
                play.tap_object(QStringLiteral("yes-") + QString::fromStdString(part.id));
        } else if (step.id == "light") {
            for (const Light& light : play.session().kit().lights) {
                if (light.meaning == Light::Meaning::recording)
                    play.tap_object(QStringLiteral("light-") + QString::fromStdString(light.id));
            }
        }
        play.picture(QString::fromStdString(step.id).replace(QLatin1Char('.'), QLatin1Char('-')));
        play.tap_main();
        if (!play.faults().isEmpty())
            return;
    }
    play.expect("bed");
    play.picture("lights-out");
    play.until("22:10");
    play.tap_main();
    play.expect("night");
}

/// Wakes the dark page, and checks that this first touch noted nothing.
void wake(Player& play)
{
    const size_t notes = play.session().state().notes.size();
    play.tap_anywhere();
    play.expect_true(play.session().state().notes.size() == notes, QStringLiteral("the first touch of the dark page noted something"));
}

void night(Player& play)
{
    const std::string sensor = play.session().kit().sensors().back();
    play.picture("night-dark");
    play.until("01:40"); // in New York this is the first of two in that night
    wake(play);
    play.picture("night-areas");
    play.tap(play.label("night.getting_up"));
    play.picture("night-noted");
    play.expect_true(play.session().state().out_of_bed(), QStringLiteral("getting up was not noted"));
    play.kiosk().let_time_pass();
    play.pass(minutes(7));
    wake(play);
    play.tap(play.label("night.back_in_bed"));
    play.picture("night-still-on");
    play.tap(play.label("night.still_on_yes"));
    play.kiosk().let_time_pass();

    play.until("04:20");
    wake(play);
    play.tap(play.label("night.came_off"));
    play.picture("night-which");
    play.tap(play.kiosk().words().part(*play.session().kit().part(sensor)));
    play.expect_true(play.session().state().off_now().contains(sensor), QStringLiteral("the part that came off was not noted"));
    play.kiosk().let_time_pass();
    play.pass(minutes(4));
    wake(play);
    play.tap(play.label("night.back_on"));
    play.expect_true(play.session().state().off_now().empty(), QStringLiteral("the part is still noted as off"));
    play.picture("night-back-on");
    play.kiosk().let_time_pass();

    // An elbow: noted, and taken back.
    play.until("05:00");
    wake(play);
    const size_t notes = play.session().state().notes.size();
    play.tap(play.label("night.awake"));
    play.tap(play.label("night.undo"));
    play.expect_true(play.session().state().notes.size() == notes, QStringLiteral("undo did not take the note back"));
    play.kiosk().let_time_pass();

    play.until("06:40");
    wake(play);
    play.tap(play.label("night.up_for_day"));
    play.picture("night-up-for-the-day");
    play.tap(play.label("night.up_confirm_yes"));
    play.expect("morning");
}

void morning(Player& play)
{
    play.picture("morning");
    play.tap_main();
    for (const char* question : {"into_bed", "lights_out"}) {
        play.expect("time");
        play.picture(QStringLiteral("question-") + question);
        play.tap_main(); // that is right
    }
    play.expect("amount");
    play.kiosk().stepAmount(15);
    play.kiosk().stepAmount(5);
    play.picture("question-asleep");
    play.tap_main();
    play.expect("events");
    play.picture("question-awake");
    play.tap_main();
    play.expect("events");
    play.picture("question-off");
    play.tap_main();
    play.expect("time");
    play.tap(play.label("time.minus_ten"));
    play.tap(play.label("time.about"));
    play.picture("question-final-waking");
    play.tap_main();
    play.expect("amount");
    play.kiosk().stepAmount(5);
    play.tap_main();
    play.expect("time");
    play.tap_main();
    play.expect("time");
    play.tap_main();
    play.expect("amount");
    play.picture("question-slept");
    play.tap(play.label("question.skip"));
    play.expect("choice");
    play.tap(play.label("q.compare.usual"));
    play.picture("question-compare");
    play.tap_main();
    play.expect("comment");
    play.type(QStringLiteral("The finger clip slipped once."));
    play.picture("question-comment");
    play.tap_main();
    play.expect("review");
    play.picture("review");
    play.tap_main();
    play.expect("result");
    play.picture("result");
    play.tap_main();
    while (play.kiosk().page() != QLatin1String("finished") && play.faults().isEmpty()) {
        const QString page = play.kiosk().page();
        if (page == QLatin1String("pack")) {
            for (const PackedItem& item : play.session().kit().packing) {
                if (item.comes_back)
                    play.kiosk().toggle(QString::number(&item - play.session().kit().packing.data()));
            }
        }
        play.picture(QString(page).replace(QLatin1Char('_'), QLatin1Char('-')));
        play.pass(minutes(2));
        play.tap_main();
        play.expect_true(play.kiosk().page() != page, QStringLiteral("the page %1 does not go on").arg(page));
    }
    play.expect("finished");
    play.picture("finished");
}

/// The record must be whole, and say what was done above.
void check_record(Player& play, const std::filesystem::path& data)
{
    const std::string name = play.session().state().record;
    play.expect_true(!name.empty(), QStringLiteral("no record was written"));
    if (name.empty())
        return;
    for (const RecordProblem& one : verify_record(data / name, print::summary_pdf).problems)
        play.faults() << QString::fromStdString(describe(name + "/" + one.file, one.problem));
    const Night night = play.session().night();
    play.expect_true(contradictions(night).empty(), QStringLiteral("the answers contradict each other"));
    const Estimate found = estimate(night, {.with_chance = false});
    play.expect_true(found.verdict == Verdict::enough, QStringLiteral("the night is not long enough, though it was"));
    play.expect_true(found.diary.awakenings == 1, QStringLiteral("not one awakening, but another number"));
}

} // namespace

QStringList rehearse(const Player::Setting& setting)
{
    Player play(setting);
    if (!play.start())
        return play.faults();
    for (const auto part : {evening, night, morning}) {
        if (play.faults().isEmpty())
            part(play);
    }
    if (play.faults().isEmpty())
        check_record(play, setting.data);
    return play.faults();
}

} // namespace evenfall
