// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

// What the screens show: plain values, one struct for each screen, filled by the functions of fill.h.
// They carry finished sentences; nothing in them decides anything. Lists hold one of the row types.

namespace evenfall {

#define EVENFALL_VALUE(type, name) Q_PROPERTY(type name MEMBER name)

struct ItemRow {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, id)
    EVENFALL_VALUE(QString, name)
    EVENFALL_VALUE(QString, text)
    EVENFALL_VALUE(QString, figure)
    EVENFALL_VALUE(QString, expect)
    EVENFALL_VALUE(QString, count)
    EVENFALL_VALUE(bool, done)
    EVENFALL_VALUE(bool, soft)
  public:
    QString id, name, text, figure, expect;
    QString count; ///< "×2"; empty for one
    bool done = false;
    bool soft = false;
};

struct LanguageRow {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, code)
    EVENFALL_VALUE(QString, name)
  public:
    QString code, name;
};

struct LightRow {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, id)
    EVENFALL_VALUE(QString, name)
    EVENFALL_VALUE(int, blinks)
    EVENFALL_VALUE(int, onMs)
    EVENFALL_VALUE(int, offMs)
    EVENFALL_VALUE(int, pauseMs)
    EVENFALL_VALUE(bool, steady)
    EVENFALL_VALUE(QString, colorName)
    EVENFALL_VALUE(QString, color)
  public:
    QString id, name, colorName, color;
    int blinks = 0, onMs = 0, offMs = 0, pauseMs = 0;
    bool steady = false;
};

struct ReviewRow {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, id)
    EVENFALL_VALUE(QString, question)
    EVENFALL_VALUE(QString, answer)
    EVENFALL_VALUE(bool, skipped)
  public:
    QString id, question, answer;
    bool skipped = false;
};

/// Seconds since the beginning of the picture.
struct SpanRow {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(double, from)
    EVENFALL_VALUE(double, to)
    EVENFALL_VALUE(QString, kind)
    EVENFALL_VALUE(QString, soft)
  public:
    double from = 0, to = 0;
    QString kind; ///< on, off, asleep, awake
    QString soft; ///< empty: certain; "out": less and less so towards the end; "in": more and more so
};

struct LaneRow {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, name)
    EVENFALL_VALUE(QVariantList, spans)
  public:
    QString name;
    QVariantList spans;
};

struct TickRow {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(double, at)
    EVENFALL_VALUE(QString, label)
    EVENFALL_VALUE(QString, mark)
  public:
    double at = 0;
    QString label, mark;
};

struct PictureValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(double, from)
    EVENFALL_VALUE(double, to)
    EVENFALL_VALUE(QVariantList, lanes)
    EVENFALL_VALUE(QVariantList, ticks)
  public:
    double from = 0, to = 0;
    QVariantList lanes, ticks;
};

struct WelcomeValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, body)
    EVENFALL_VALUE(QString, clinicName)
    EVENFALL_VALUE(QString, codeLabel)
    EVENFALL_VALUE(QString, nightLabel)
    EVENFALL_VALUE(QVariantList, languages)
    EVENFALL_VALUE(QVariantList, builds)
    EVENFALL_VALUE(QString, build)
    EVENFALL_VALUE(QString, buildText)
    EVENFALL_VALUE(QString, mainLabel)
    EVENFALL_VALUE(QString, staffLabel)
    EVENFALL_VALUE(QString, startText)
    EVENFALL_VALUE(QString, practiceLabel)
  public:
    QString title, body, clinicName, codeLabel, nightLabel, build, buildText, mainLabel, staffLabel, startText, practiceLabel;
    QVariantList languages, builds;
};

/// Reading aloud, for the page that is up.
struct VoiceValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(bool, offered)
    EVENFALL_VALUE(bool, canSpeak)
    EVENFALL_VALUE(bool, speaking)
    EVENFALL_VALUE(bool, readToMe)
    EVENFALL_VALUE(bool, nightSound)
    EVENFALL_VALUE(bool, breathSound)
    EVENFALL_VALUE(QString, reason)
  public:
    bool offered = false;     ///< the visit has narration, and the page something to read
    bool canSpeak = false;
    bool speaking = false;
    bool readToMe = false;    ///< each page by itself
    bool nightSound = false;  ///< a soft tone with each note of the night
    bool breathSound = false; ///< the breathing guide sounds
    QString reason;           ///< why there is no sound
};

struct FirstValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, intro)
    EVENFALL_VALUE(QVariantList, conditions)
  public:
    QString title, intro;
    QVariantList conditions; ///< of QString
};

struct CallValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, body)
    EVENFALL_VALUE(QString, phone)
    EVENFALL_VALUE(QString, hours)
    EVENFALL_VALUE(QString, afterHoursPhone)
    EVENFALL_VALUE(QString, afterHoursText)
    EVENFALL_VALUE(QString, emergencyText)
    EVENFALL_VALUE(QString, goOnLabel)
  public:
    QString title, body, phone, hours, afterHoursPhone, afterHoursText, emergencyText, goOnLabel;
};

/// Bag and packing, the check of the sensors, choices: rows to be ticked or chosen.
struct ListValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, progressText)
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, hint)
    EVENFALL_VALUE(QString, body)
    EVENFALL_VALUE(QVariantList, items)
    EVENFALL_VALUE(QString, chosen)
    EVENFALL_VALUE(QString, answer)
    EVENFALL_VALUE(QString, addLabel)
    EVENFALL_VALUE(QString, countLabel)
    EVENFALL_VALUE(QString, noneLabel)
    EVENFALL_VALUE(QString, mainLabel)
    EVENFALL_VALUE(bool, mainEnabled)
    EVENFALL_VALUE(QString, secondLabel)
  public:
    QString progressText, title, hint, body, chosen, answer, addLabel, countLabel, noneLabel, mainLabel, secondLabel;
    QVariantList items;
    bool mainEnabled = true;
};

struct StepValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, label)
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, body)
    EVENFALL_VALUE(QString, rightWhen)
    EVENFALL_VALUE(QString, caution)
    EVENFALL_VALUE(QString, why)
    EVENFALL_VALUE(QString, figure)
    EVENFALL_VALUE(QString, figureText)
    EVENFALL_VALUE(QString, personFigure)
    EVENFALL_VALUE(QVariantList, mistakes)
    EVENFALL_VALUE(QString, paceText)
    EVENFALL_VALUE(QString, mainLabel)
    EVENFALL_VALUE(bool, backVisible)
    EVENFALL_VALUE(bool, canSpeak)
    EVENFALL_VALUE(QString, speakReason)
    EVENFALL_VALUE(QString, breathText)
    EVENFALL_VALUE(bool, mirrorOffered)
    EVENFALL_VALUE(bool, mirrorThere)
    EVENFALL_VALUE(QString, mirrorText)
  public:
    bool mirrorOffered = false; ///< the visit has the mirror, and the step is on the body
    bool mirrorThere = true;    ///< there is a camera, as far as is known
    QString mirrorText;         ///< what the mirror promises, or why there is no picture
    QString breathText; ///< with the breathing guide; empty: a step without one
    QVariantList mistakes; ///< ItemRow with text and figure: what not to do
    QString label, title, body, rightWhen, caution, why, figure, figureText, personFigure, paceText, mainLabel, speakReason;
    bool backVisible = true;
    bool canSpeak = false;
};

struct HelpValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, question)
    EVENFALL_VALUE(QVariantList, options)
    EVENFALL_VALUE(QString, answer)
    EVENFALL_VALUE(QString, figure)
    EVENFALL_VALUE(QVariantList, mistakes)
    EVENFALL_VALUE(QString, phone)
    EVENFALL_VALUE(QString, hours)
  public:
    QString title, question, answer, figure, phone, hours;
    QVariantList options;
    QVariantList mistakes; ///< as in StepValues
};

struct BedValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QVariantList, lines)
    EVENFALL_VALUE(QString, caution)
    EVENFALL_VALUE(QString, mainLabel)
  public:
    QString title, caution, mainLabel;
    QVariantList lines; ///< of QString
};

struct NightValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, face)
    EVENFALL_VALUE(bool, awakeNow)
    EVENFALL_VALUE(bool, outOfBed)
    EVENFALL_VALUE(bool, somethingOff)
    EVENFALL_VALUE(QString, watchText)
    EVENFALL_VALUE(QString, notedText)
    EVENFALL_VALUE(QVariantList, items)
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, body)
    EVENFALL_VALUE(QString, figure)
    EVENFALL_VALUE(QString, figureText)
    EVENFALL_VALUE(QString, phone)
  public:
    QString face = QStringLiteral("dark");
    bool awakeNow = false, outOfBed = false, somethingOff = false;
    QString watchText, notedText, title, body, figure, figureText, phone;
    QVariantList items;
};

struct TimeValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, progressText)
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, hint)
    EVENFALL_VALUE(QString, timeText)
    EVENFALL_VALUE(QString, dayText)
    EVENFALL_VALUE(QString, sureness)
    EVENFALL_VALUE(QString, earliestText)
    EVENFALL_VALUE(QString, latestText)
    EVENFALL_VALUE(QString, earliestDayText)
    EVENFALL_VALUE(QString, latestDayText)
    EVENFALL_VALUE(QString, giveOrTakeText)
    EVENFALL_VALUE(QString, noteText)
    EVENFALL_VALUE(QString, mainLabel)
    EVENFALL_VALUE(bool, mainEnabled)
  public:
    QString progressText, title, hint, timeText, dayText, sureness, earliestText, latestText, earliestDayText, latestDayText, giveOrTakeText, noteText, mainLabel;
    bool mainEnabled = false;
};

struct AmountValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, progressText)
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, hint)
    EVENFALL_VALUE(QString, valueText)
    EVENFALL_VALUE(QString, unitText)
    EVENFALL_VALUE(QVariantList, steps)
    EVENFALL_VALUE(QString, mainLabel)
    EVENFALL_VALUE(bool, mainEnabled)
  public:
    QString progressText, title, hint, valueText, unitText, mainLabel;
    QVariantList steps;
    bool mainEnabled = false;
};

/// A step of an amount: its label says what it does.
struct AmountStepRow {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, label)
    EVENFALL_VALUE(int, delta)
  public:
    QString label;
    int delta = 0;
};

struct CommentValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, progressText)
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, hint)
    EVENFALL_VALUE(QString, text)
    EVENFALL_VALUE(QString, mainLabel)
  public:
    QString progressText, title, hint, text, mainLabel;
};

struct ReviewValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, body)
    EVENFALL_VALUE(QVariantList, rows)
    EVENFALL_VALUE(QString, mainLabel)
  public:
    QString title, body, mainLabel;
    QVariantList rows;
};

/// One task of the signal check.
struct SignalValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, body)
    EVENFALL_VALUE(QString, caution)
    EVENFALL_VALUE(QString, figure)
    EVENFALL_VALUE(QString, figureText)
    EVENFALL_VALUE(QString, secondsText)
    EVENFALL_VALUE(QString, unitText)
    EVENFALL_VALUE(QString, runningText)
    EVENFALL_VALUE(QString, mainLabel)
    EVENFALL_VALUE(QString, skipLabel)
    EVENFALL_VALUE(bool, mainEnabled)
  public:
    QString title, body, caution, figure, figureText, secondsText, unitText, runningText, mainLabel, skipLabel;
    bool mainEnabled = true;
};

struct PuzzleValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, body)
    EVENFALL_VALUE(QString, firstLabel)
    EVENFALL_VALUE(QString, firstValue)
    EVENFALL_VALUE(QString, secondLabel)
    EVENFALL_VALUE(QString, secondValue)
    EVENFALL_VALUE(bool, firstCanChange)
    EVENFALL_VALUE(bool, secondCanChange)
  public:
    QString title, body, firstLabel, firstValue, secondLabel, secondValue;
    bool firstCanChange = false, secondCanChange = false;
};

struct ResultValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, sentence)
    EVENFALL_VALUE(QString, rangeText)
    EVENFALL_VALUE(QString, explain)
    EVENFALL_VALUE(QString, pictureText)
    EVENFALL_VALUE(QString, clinicText)
    EVENFALL_VALUE(QString, mainLabel)
  public:
    QString sentence, rangeText, explain, pictureText, clinicText, mainLabel;
};

struct SkinValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, body)
    EVENFALL_VALUE(QString, figure)
    EVENFALL_VALUE(QString, figureText)
    EVENFALL_VALUE(QString, caution)
    EVENFALL_VALUE(QString, remainingText)
    EVENFALL_VALUE(QString, question)
    EVENFALL_VALUE(QString, laterLabel)
  public:
    QString title, body, figure, figureText, caution, remainingText, question, laterLabel;
};

struct MessageValues {
    Q_GADGET
    QML_ANONYMOUS
    EVENFALL_VALUE(QString, title)
    EVENFALL_VALUE(QString, body)
    EVENFALL_VALUE(QString, detail)
    EVENFALL_VALUE(QString, caution)
    EVENFALL_VALUE(QString, mainLabel)
    EVENFALL_VALUE(QString, staffLabel)
    EVENFALL_VALUE(QString, recordName)
    EVENFALL_VALUE(QString, returnText)
    EVENFALL_VALUE(QString, skinText)
    EVENFALL_VALUE(QString, phone)
    EVENFALL_VALUE(QString, hours)
    EVENFALL_VALUE(QString, figure)
  public:
    QString title, body, detail, caution, mainLabel, staffLabel, recordName, returnText, skinText, phone, hours, figure;
};

} // namespace evenfall

Q_DECLARE_METATYPE(evenfall::ItemRow)
Q_DECLARE_METATYPE(evenfall::PictureValues)
