// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "stage/tour.h"

#include "answers/questions.h"
#include "journal/kinds.h"
#include "base/file.h"
#include "kiosk/figure_provider.h"
#include "record/folder.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QJsonDocument>

namespace evenfall {
namespace {

void save_figures(const QDir& folder, WritingHand hand, QStringList& faults)
{
    const FigureStore store = built_in_figures();
    for (const std::string& problem : store.problems())
        faults << QString::fromStdString(problem);
    for (const std::string& id : store.ids()) {
        FigureRequest request;
        request.id = id;
        request.backdrop = true;
        request.writing_hand = hand == WritingHand::right ? Hand::right : Hand::left;
        // The whole person is shown as at the end of the evening.
        for (const std::string& layer : store.layers(id))
            request.parts[layer] = PartState::done;
        const QImage image = draw_figure(store, request, QSize(800, 800));
        QByteArray bytes;
        QBuffer buffer(&bytes);
        image.save(&buffer, "PNG");
        save_bytes(folder.filePath(QStringLiteral("figure-%1.png").arg(QString::fromStdString(id))), bytes, faults);
    }
}

QString file_name(const std::string& page)
{
    QString name = QString::fromStdString(page);
    return name.replace(QLatin1Char('.'), QLatin1Char('-')).replace(QLatin1Char('_'), QLatin1Char('-'));
}

/// What a practice run has of its own.
void practice(Player& play)
{
    Kiosk& kiosk = play.kiosk();
    const std::int64_t before = play.session().last_number();
    play.tap_second();
    play.picture("practice-begin");
    bool tape = false;
    for (const Step& step : play.session().plan().steps) {
        const bool starts = play.session().starts_recorder(step), first_tape = !tape && step.tape_strips > 0;
        if (!starts && !first_tape && step.id != "light")
            continue;
        tape = tape || first_tape;
        kiosk.open_page(step.id);
        play.picture(QStringLiteral("practice-") + file_name(step.id));
    }
    kiosk.goOn();
    play.picture("practice-over");
    play.tap_main();
    play.expect("welcome");
    play.expect_true(!kiosk.practice() && play.session().last_number() == before, QStringLiteral("the practice run left a trace"));
}

void evening(Player& play)
{
    const Session& session = play.session();
    play.picture("welcome");
    practice(play);
    play.tap_main();
    play.picture("first-questions");
    play.tap(play.label("first.some"));
    play.picture("call-the-clinic");
    play.tap_main();
    play.picture("bag");
    play.tap_second();
    play.expect("call");
    play.tap(play.label("common.back"));
    play.tap_main();
    bool helped = false, mirrored = false;
    while (play.kiosk().page() != QLatin1String("bed") && play.faults().isEmpty()) {
        const std::string page = play.session().state().page;
        const Step* step = session.plan().step(page);
        play.picture(file_name(page));
        if (page == "check") {
            for (const Part& part : session.kit().parts)
                play.kiosk().toggle(QString::fromStdString(part.id));
            play.picture("check-all-right");
        } else if (page == "light") {
            for (const Light& light : session.kit().lights) {
                play.kiosk().choose(QString::fromStdString(light.id));
                play.picture(QStringLiteral("light-") + file_name(light.id));
            }
            for (const Light& light : session.kit().lights) {
                if (light.meaning == Light::Meaning::recording)
                    play.kiosk().choose(QString::fromStdString(light.id));
            }
        } else if (page == "signal.calm") {
            play.kiosk().goOn();
            play.picture("signal-calm-runs");
            play.kiosk().let_time_pass();
            continue;
        } else if (page.starts_with(evening_prefix) || page.starts_with(signal_prefix)) {
            play.kiosk().skip();
            continue;
        } else if (step && play.kiosk().step().mirrorOffered && !mirrored) {
            mirrored = true;
            play.tap_object("mirror");
            play.picture("mirror-without-a-camera");
            play.tap_object("close");
        } else if (step && step->mistakes.size() > 1) {
            play.tap_object("larger");
            play.picture(file_name(page) + QStringLiteral("-larger"));
            play.tap_object("close");
        } else if (step && !step->mistakes.empty() && !helped) {
            helped = true;
            play.tap_second(); // this isn't working
            play.picture("help");
            play.kiosk().choose(QString::fromStdString(step->helps.front().id));
            play.picture("help-fix");
            play.kiosk().solved();
        }
        if (step)
            play.pass(step->seconds);
        play.kiosk().goOn();
        play.expect_true(play.session().state().page != page, QStringLiteral("the page %1 does not go on").arg(file_name(page)));
    }
    play.picture("lights-out");
    play.kiosk().goOn();
}

void night(Player& play)
{
    const QString sensor = QString::fromStdString(play.session().kit().sensors().back());
    Kiosk& kiosk = play.kiosk();
    play.until("01:05"); // in the hour that comes twice this night, whatever the kit asks of the evening
    play.picture("night-dark");
    play.tap_anywhere();
    play.picture("night-areas");
    kiosk.noteAwake();
    play.picture("night-noted-awake");
    kiosk.let_time_pass();
    kiosk.wake();
    kiosk.noteUp();
    play.picture("night-noted-up");
    kiosk.let_time_pass();
    play.pass(std::chrono::minutes(6));
    kiosk.wake();
    play.picture("night-areas-up");
    kiosk.noteUp();
    play.picture("night-still-on");
    kiosk.no();
    play.picture("night-which-off");
    kiosk.choose(sensor);
    play.picture("night-noted-off");
    kiosk.leaveFace();
    play.picture("night-refit");
    kiosk.leaveFace();
    kiosk.noteOff(); // the only one that is off: back on
    kiosk.undo();
    play.picture("night-which-on");
    play.pass(std::chrono::minutes(2));
    kiosk.choose(sensor);
    play.picture("night-noted-on");
    kiosk.let_time_pass();
    kiosk.wake();
    kiosk.noteAwake();
    kiosk.let_time_pass();
    kiosk.wake();
    kiosk.askHelp();
    play.picture("night-help");
    for (const std::string& help : night_helps()) {
        if (help == "off")
            continue;
        kiosk.askHelp();
        kiosk.choose(QString::fromStdString(help));
        play.picture(QStringLiteral("night-help-") + file_name(help));
    }
    play.until("06:40");
    kiosk.upForDay();
    play.picture("night-up-for-the-day");
    kiosk.upConfirmed();
}

void morning(Player& play)
{
    Kiosk& kiosk = play.kiosk();
    play.picture("morning");
    kiosk.goOn();
    for (const std::string_view question : questions::all) {
        const QString name = QStringLiteral("question-") + file_name(std::string(question));
        play.picture(name);
        if (question == questions::awake) {
            kiosk.countEvents();
            kiosk.stepAmount(2);
            play.picture(name + "-times");
            kiosk.goOn();
            kiosk.stepAmount(20);
            play.picture(name + "-minutes");
            kiosk.goOn();
            play.picture(name + "-counted");
        } else if (question == questions::into_bed) {
            kiosk.stepTime(-10, "time");
            play.picture(name + "-changed");
            for (const char* how : {"about", "between", "unsure", "exact"}) {
                kiosk.chooseSureness(how);
                play.picture(name + "-" + how);
            }
        } else if (questions::asks_amount(question)) {
            kiosk.stepAmount(question == questions::slept ? 435 : 15);
            play.picture(name + "-chosen");
            if (question == questions::tried_after_waking)
                kiosk.stepAmount(-15); // up at once
        } else if (question == questions::off) {
            kiosk.addEvent();
            play.picture(name + "-which");
            kiosk.choose(QString::fromStdString(play.session().kit().sensors().front()));
            kiosk.goOn();
            play.picture(name + "-from");
            kiosk.stepTime(120, "time"); // from the middle of any of these nights past the hour that comes twice
            kiosk.chooseSureness("about");
            kiosk.goOn();
            play.picture(name + "-end");
            kiosk.choose("yes");
            play.picture(name + "-to");
            kiosk.goBack();
        } else if (question == questions::compare) {
            kiosk.choose("usual");
            play.picture(name + "-chosen");
        } else if (question == questions::final_waking) {
            // In the hour that comes twice this night.
            kiosk.stepTime(-300, "time");
            kiosk.chooseSureness("exact");
            play.picture(name + "-doubtful");
            kiosk.goOn();
            play.picture(name + "-which-moment");
            kiosk.choose("second");
            play.picture(name + "-which-moment-chosen");
            kiosk.goBack();
            // A slip of the finger: awake for good before going to bed.
            kiosk.stepTime(-300, "time");
            kiosk.chooseSureness("exact");
        } else if (questions::asks_time(question)) {
            kiosk.chooseSureness("exact");
        }
        const QString before = kiosk.page();
        kiosk.goOn();
        if (kiosk.page() == before)
            kiosk.skip();
    }
    play.picture("review");
    kiosk.goOn();
    play.expect("puzzle");
    play.picture("two-answers-do-not-fit");
    kiosk.changeFirst();
    play.expect_true(kiosk.page() == QLatin1String("q.final_waking") || kiosk.page() == QLatin1String("q.lights_out"), QStringLiteral("the first answer cannot be changed"));
    kiosk.change(QString::fromUtf8("final_waking"));
    kiosk.stepTime(600, "time");
    kiosk.chooseSureness("exact");
    kiosk.goOn();
    kiosk.goOn();
    play.expect("result");
    play.picture("result");
    kiosk.goOn();
    while (kiosk.page() != QLatin1String("finished") && play.faults().isEmpty()) {
        const std::string page = play.session().state().page;
        play.picture(file_name(page == "stop" ? "recorder-off" : page));
        if (page == "skin") {
            kiosk.skinSore();
            play.picture("skin-sore");
        }
        if (page == "pack") {
            for (size_t i = 0; i < play.session().kit().packing.size(); ++i)
                kiosk.toggle(QString::number(i));
            play.picture("pack-all");
        }
        const QString before = kiosk.page();
        kiosk.goOn();
        play.expect_true(kiosk.page() != before, QStringLiteral("the page %1 does not go on").arg(before));
    }
    play.picture("finished");
    kiosk.let_time_pass();
    play.picture("skin-again");
    kiosk.skinSore();
    play.picture("skin-again-sore");
}

/// The clinic's part, with the night that was just played among its records.
void front_desk(Player& play)
{
    FrontDesk& desk = *play.desk();
    const auto act = [&desk](const char* action) {
        desk.act(QLatin1String(action));
        desk.wait();
        QCoreApplication::processEvents();
    };
    const auto type = [&desk](const char* field, const char* text) { desk.edit(QLatin1String(field), QString::fromUtf8(text)); };
    const QString code = QString::fromStdString(play.session().visit().code);
    const Visit visit = play.session().visit();
    const Shelf shelf(play.desk_data());
    const std::string record = play.session().state().record;

    play.kiosk().askDesk();
    play.picture("desk-first-pin");
    type("pin", "271828");
    type("pin_again", "271829");
    act("set");
    play.picture("desk-first-pin-differs");
    type("pin", "271828");
    type("pin_again", "271828");
    act("set");
    play.picture("desk-tablet-new");
    type("name", visit.clinic.name.c_str());
    type("phone", visit.clinic.phone.c_str());
    type("hours", hours_line(visit.clinic.hours).c_str());
    type("phone_outside_hours", visit.clinic.phone_outside_hours.c_str());
    type("emergency", visit.clinic.emergency.c_str());
    act("save");
    play.picture("desk-tablet-saved");
    act("go.visits");
    play.picture("desk-no-visits");
    act("go.form");
    play.picture("desk-form");
    act("make");
    play.picture("desk-form-errors");
    type("code", visit.code.c_str());
    type("kit", visit.kit.c_str());
    type("kit_label", visit.kit_label.c_str());
    type("writing_hand", "right");
    type("clock", "yes");
    act("make");
    play.expect_true(shelf.codes() && shelf.codes()->size() == 1, QStringLiteral("the front desk makes no visit: ") + desk.page().message);
    play.picture("desk-visit-made");
    play.expect_true(!record.empty() && copy_record(std::filesystem::path(play.pictures().filePath(QStringLiteral(".records")).toStdString()) / record, shelf.records(visit.code)).ok(),
                     QStringLiteral("the record cannot be put on the shelf"));
    act("go.visits");
    play.picture("desk-visits");
    desk.openRow("visits", code);
    play.picture("desk-visit");
    act("print");
    play.picture("desk-print");
    act("back");
    act("paper");
    play.picture("desk-paper");
    type("evening", "2026-10-31");
    type("by", "KL");
    act("begin");
    play.picture("desk-paper-question");
    play.kiosk().leaveSitting();
    QCoreApplication::processEvents();
    act("amend");
    play.picture("desk-amend");
    type("by", "KL");
    type("why", "the patient called");
    act("begin");
    play.expect("review");
    if (!play.faults().isEmpty())
        return;
    play.picture("desk-amend-review");
    play.kiosk().change("slept");
    play.kiosk().stepAmount(-15);
    play.kiosk().goOn();
    play.kiosk().goOn();
    while (play.kiosk().screen() == QLatin1String("puzzle"))
        play.kiosk().leavePuzzle();
    play.picture("desk-amend-written");
    play.kiosk().leaveSitting();
    QCoreApplication::processEvents();
    play.picture("desk-visit-amended");
    act("wipe");
    play.picture("desk-wipe-reasons");
    act("wipe");
    play.picture("desk-wipe-reason-missing");
    act("back");
    act("out");
    play.picture("desk-out");
    act("take");
    play.picture("desk-out-done");
    play.expect_true(write_file(shelf.own_kits() / "ours.json", R"({"format": "evenfall.kit/1", "id": "ours"})").ok(), QStringLiteral("no kit file can be written"));
    act("go.kits");
    play.picture("desk-kits");
    desk.openRow("kits", QString::fromStdString((shelf.own_kits() / "ours.json").string()));
    play.picture("desk-kit-faults");
    act("back");
    for (const QVariant& block : desk.page().blocks)
        if (const DeskBlock kits = block.value<DeskBlock>(); kits.id == QLatin1String("kits"))
            desk.openRow("kits", kits.rows.back().value<DeskRow>().id);
    play.picture("desk-kit");
    act("go.languages");
    play.picture("desk-languages");
    act("go.leave");
    play.kiosk().askDesk();
    play.picture("desk-pin");
    for (int guess = 0; guess < 3; ++guess) {
        type("pin", "000000");
        act("open");
    }
    play.picture("desk-pin-wait");
    act("forgotten");
    play.picture("desk-forgotten");
    act("back");
    act("leave");
}

} // namespace

QStringList make_tour(const Player::Setting& setting)
{
    Player::Setting own = setting;
    // Also what a visit file may leave out.
    own.visit.visit.options.evening_questions = true;
    own.visit.visit.options.signal_check = true;
    own.visit.visit.options.mirror = true;
    own.visit.visit.options.narration = true;
    // The tour leaves pictures, and nothing else: what it writes as a record goes to a folder that is
    // taken away again.
    const QString scratch = setting.pictures.filePath(QStringLiteral(".records"));
    QDir().mkpath(scratch);
    Player play(own);
    play.records_into(scratch.toStdString());
    if (!play.start())
        return play.faults();
    evening(play);
    night(play);
    morning(play);
    if (play.faults().isEmpty())
        front_desk(play);
    for (const char* trouble : {"disk_full", "read_only", "no_place", "second_copy", "damaged", "sync", no_visit})
        play.trouble_picture(trouble);
    QDir(scratch).removeRecursively();
    save_figures(setting.pictures, setting.visit.visit.hand, play.faults());
    const QJsonObject document{{"screens", play.screens()}};
    save_bytes(setting.pictures.filePath(QStringLiteral("tour.json")), QJsonDocument(document).toJson(), play.faults());
    return play.faults();
}

} // namespace evenfall
