// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "answers/evening.h"
#include "kiosk/session.h"
#include "kiosk/time_draft.h"
#include "kiosk/values.h"
#include "plan/depict.h"
#include "words/words.h"

#include <QString>
#include <optional>
#include <set>
#include <string>

namespace evenfall {

// From what is known to what a screen shows. Pure functions: the same session and words give the same
// values. One group for each part of the night.

/// How figures are to be drawn.
struct Look {
    QString tone = QStringLiteral("dark"); ///< dark, light, night: of the page that shows it
    QString build = QStringLiteral("medium"); ///< slim, medium, broad
};

/// Address of a drawing for the figure provider; the kit's ridges are drawn in.
QString figure_url(const std::string& id, const Session& session, const Look& look, const std::string& part = "");
QString figure_url(const Depiction& what, const Session& session, const Look& look);
/// The whole person, with what is on by now; `current` is the step in hand, or empty.
QString person_url(const Session& session, const Look& look, const std::string& current);

/// A row to choose: its id and its words.
ItemRow choice_row(const std::string& id, const QString& text);

// Evening
WelcomeValues fill_welcome(const Session& session, const Words& words, const Look& look);
FirstValues fill_first(const Session& session, const Words& words);
ListValues fill_evening(const Session& session, const Words& words, const EveningQuestion& question);
SignalValues fill_signal(const Session& session, const Words& words, const Look& look, const SignalTask& task);
/// Of the task in hand: how long it still goes on; nothing when it does not run.
std::optional<std::chrono::seconds> signal_left(const Session& session, const SignalTask& task);
CallValues fill_call(const Session& session, const Words& words, bool may_go_on);
ListValues fill_bag(const Session& session, const Words& words, const Look& look);
StepValues fill_step(const Session& session, const Words& words, const Look& look, const Step& step);
HelpValues fill_help(const Session& session, const Words& words, const Look& look, const Step& step, const std::string& chosen);
ListValues fill_check(const Session& session, const Words& words, const Look& look);
ListValues fill_light(const Session& session, const Words& words);
/// The page that begins the practice run, or ends it (`over`).
MessageValues fill_practice(const Session& session, const Words& words, const Look& look, bool over);
/// `on_battery`: the tablet has no charger now, and is asked for one before the night.
BedValues fill_bed(const Session& session, const Words& words, bool on_battery = false);

// Night. What is open on the night page beside the state of the night.
struct NightFace {
    enum class Face { dark, areas, noted, up_confirm, which_off, which_on, still_on, help, advice };
    Face face = Face::dark;
    QString noted;       ///< what was just noted, in words
    std::string advice;  ///< which of the helps is open, or "refit:<part>"
};
NightValues fill_night(const Session& session, const Words& words, const Look& look, const NightFace& face);
/// The helps of the night by their ids: off, light, skin, unwell, stop.
const std::vector<std::string>& night_helps();

/// Redness, a blister or a tear that lasts so long after the tape came off is an adhesive injury
/// (McNichol et al. 2013, JWOCN 40:365).
inline constexpr std::chrono::minutes skin_wait{30};

// Morning. An event (an awakening, a removal) while it is being given.
struct EventDraft {
    enum class Stage { which, from, has_end, to, times, minutes }; ///< the last two: without times
    std::string question; ///< awake or off
    int index = -1;       ///< which of the list; -1 for a new one
    Stage stage = Stage::from;
    std::string sensor;
    std::optional<TimeRange> from, to;
    long times = 0, minutes = 0;
};
QString progress_text(const Words& words, std::string_view question);
TimeValues fill_time(const Session& session, const Words& words, std::string_view question, const TimeDraft& draft);
TimeValues fill_event_time(const Session& session, const Words& words, const EventDraft& event, const TimeDraft& draft);
ListValues fill_event_which(const Session& session, const Words& words, const Look& look, const EventDraft& event);
AmountValues fill_event_count(const Words& words, const EventDraft& event);
ListValues fill_event_end(const Session& session, const Words& words, const EventDraft& event);
/// Which of the two moments a doubtful wall time means: first, second, either.
ListValues fill_which_moment(const Session& session, const Words& words, const WallTime& time, const std::string& chosen);
AmountValues fill_amount(const Words& words, std::string_view question, std::optional<long> minutes);
ListValues fill_events(const Session& session, const Words& words, std::string_view question);
ListValues fill_compare(const Words& words, const std::string& chosen);
CommentValues fill_comment(const Words& words, const QString& text);
ReviewValues fill_review(const Session& session, const Words& words);
/// Two answers that speak against each other, as a question: its values, and which question changes
/// the one and the other (empty where nobody was asked: a tap of the evening).
struct Puzzle {
    std::string key; ///< for leaving it as it is
    std::string first_question, second_question;
    PuzzleValues values;
};
/// The first that was not left alone; nothing when there is none.
std::optional<Puzzle> find_puzzle(const Session& session, const Words& words, const std::set<std::string>& left_alone);
/// The verdict's word on what the patient says and noted; with answers that speak against each other it
/// is unknown, for no figure would mean anything.
std::string result_verdict(const Session& session);
ResultValues fill_result(const Session& session, const Words& words);
PictureValues fill_picture(const Session& session, const Words& words);
StepValues fill_off_step(const Session& session, const Words& words, const Look& look, const OffStep& step);
/// `again`: half an hour later.
SkinValues fill_skin(const Session& session, const Words& words, const Look& look, bool again);
ListValues fill_pack(const Session& session, const Words& words, const Look& look);
MessageValues fill_finished(const Session& session, const Words& words);
MessageValues fill_trouble(const Clinic& clinic, const Words& words, const Problem& problem);

/// What a draft starts from: the answer that stands, else a guess near where the question lies.
TimeDraft draft_for(const Session& session, std::string_view question);

} // namespace evenfall
