// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/session.h"

#include "answers/evening.h"
#include "answers/questions.h"
#include "estimate/contradictions.h"
#include "journal/kinds.h"
#include "print/summary_pdf.h"
#include "record/amend.h"
#include "record/folder.h"
#include "record/summary.h"

#include <algorithm>

namespace evenfall {
namespace {

// A person's pace is learned, but one long pause must not push bed time to the small hours.
constexpr double slowest = 2.0;
constexpr double quickest = 0.5;

} // namespace

Session::Session(SessionPlace place, Plan plan, std::shared_ptr<const Clock> clock)
    : visit_(std::move(place.visit)), plan_(std::move(plan)), pages_(plan_, visit_.kit, visit_.visit.options),
      journal_(std::move(place.journal)), records_(std::move(place.records)), clock_(std::move(clock))
{
    refresh();
}

Result<std::unique_ptr<Session>> Session::make(SessionPlace place, std::shared_ptr<const Clock> clock)
{
    Result<Plan> plan = make_plan(place.visit.kit, place.visit.visit.hand);
    if (!plan)
        return plan.problems();
    return std::unique_ptr<Session>(new Session(std::move(place), std::move(plan.value()), std::move(clock)));
}

Result<std::unique_ptr<Session>> Session::begin(SessionPlace place, std::shared_ptr<const Clock> clock)
{
    Result<std::unique_ptr<Session>> made = make(std::move(place), std::move(clock));
    if (!made)
        return made;
    Session& session = **made;
    const NightState& state = session.state_;
    // Another visit's night in the same journal is not gone on with.
    // That it was opened again is said too: a tablet that ran flat in the night shows by it.
    const bool ours = state.begun && state.code == session.visit().code;
    const bool goes_on = ours && !state.paper;
    // A night that came from paper is nothing to go on with at the bedside: the next one is.
    const long next = !ours ? 1 : state.record.empty() ? state.night : std::min(state.night + 1, session.visit().nights);
    if (Status begun = goes_on ? session.say(kinds::opened) : session.begin_night(next); !begun)
        return begun.problems();
    return made;
}

Result<std::unique_ptr<Session>> Session::begin_paper(SessionPlace place, std::shared_ptr<const Clock> clock, long night,
                                                      const std::string& by, const std::string& evening)
{
    Result<std::unique_ptr<Session>> made = make(std::move(place), std::move(clock));
    if (!made)
        return made;
    Session& session = **made;
    session.staff_ = true;
    session.pages_ = Pages::of_staff();
    const NightState& state = session.state_;
    if (state.paper && state.night == night && state.paper->evening == evening && state.record.empty()) {
        if (Status opened = session.say(kinds::opened); !opened)
            return opened.problems();
        return made;
    }
    const Json value{{"night", night}, {"kit", session.kit().id}, {"paper", {{"by", by}, {"evening", evening}}}};
    if (Status said = session.say(kinds::night, session.visit().code, value.dump()); !said)
        return said.problems();
    if (Status opened = session.open(session.pages_.all().front()); !opened)
        return opened.problems();
    return made;
}

Result<std::unique_ptr<Session>> Session::begin_amendment(SessionPlace place, std::shared_ptr<const Clock> clock,
                                                          const std::string& by, const std::string& why)
{
    Result<std::unique_ptr<Session>> made = make(std::move(place), std::move(clock));
    if (!made)
        return made;
    Session& session = **made;
    if (!session.state_.begun)
        return Problem{Fault::refused, "no_journal", "/journal", "this record has no journal; right would be one that was written by the kiosk"};
    session.staff_ = true;
    session.pages_ = Pages::of_staff();
    if (session.state_.amending) { // after a trouble: the changes so far are still there
        if (Status opened = session.say(kinds::opened); !opened)
            return opened.problems();
        return made;
    }
    if (Status said = session.say(kinds::amend, by, Json(why).dump()); !said)
        return said.problems();
    if (Status opened = session.open("review"); !opened)
        return opened.problems();
    return made;
}

Result<std::unique_ptr<Session>> Session::practice() const
{
    VisitWithKit visit = visit_;
    visit.visit.options.evening_questions = false; // they ask about the day of the night
    Result<std::unique_ptr<Session>> run = begin({std::move(visit), make_memory_journal(), {}}, clock_);
    if (run)
        (*run)->practice_ = true;
    return run;
}

void Session::refresh() { state_ = replay(journal_->entries(), last_plug()); }

std::string Session::last_plug() const { return evenfall::last_plug(kit(), plan_); }

Status Session::begin_night(long number)
{
    const Json value{{"night", number}, {"kit", kit().id}};
    if (Status said = say(kinds::night, visit().code, value.dump()); !said)
        return said;
    return open(pages_.all().front());
}

Status Session::say(std::string_view kind, std::string_view subject, std::string_view value)
{
    Result<Entry> entry = journal_->append(clock_->now(*visit().zone), kind, subject, value);
    if (!entry)
        return entry.problems();
    refresh();
    return Done{};
}

std::int64_t Session::last_number() const { return journal_->entries().empty() ? 0 : journal_->entries().back().number; }

Instant Session::planned_bed() const
{
    const Zone& zone = *visit().zone;
    std::chrono::local_days evening(evening_of(zone.local(state_.begun_at)));
    if (state_.paper) {
        if (const Result<WrittenTime> day = parse_time(state_.paper->evening + "T00:00"); day)
            evening = std::chrono::floor<std::chrono::days>(day->local);
    }
    const bool after_midnight = visit().bed_time < std::chrono::hours(12);
    const LocalTime local = LocalTime(evening.time_since_epoch()) + visit().bed_time +
                            (after_midnight ? std::chrono::hours(24) : std::chrono::hours(0));
    return zone.read(local).first; // a plan, not a measurement: either reading of a doubled hour will do
}

Instant Session::some_morning() const { return staff_ ? planned_bed() + std::chrono::hours(8) : now(); }

Instant Session::expected_bed() const
{
    std::chrono::seconds left{0}, done{0};
    std::optional<Instant> first, last;
    for (const Step& step : plan_.steps) {
        const auto found = state_.steps.find(step.id);
        if (found == state_.steps.end()) {
            left += step.seconds;
            continue;
        }
        // The first step that is done begins the count: what came before it was not at any pace.
        if (first)
            done += step.seconds;
        first = std::min(first.value_or(found->second), found->second);
        last = std::max(last.value_or(found->second), found->second);
    }
    double pace = 1.0;
    if (first && done.count() > 0)
        pace = std::clamp(std::chrono::duration<double>(*last - *first) / std::chrono::duration<double>(done), quickest, slowest);
    return now() + std::chrono::round<Span>(std::chrono::duration<double>(left) * pace);
}

Result<Diary> Session::diary() const
{
    Result<Diary> diary = diary_from_night(night());
    if (!diary)
        return diary;
    diary->kit = KitOfNight{kit().id, visit().kit_label};

    const Morning morning = this->morning();
    const auto mark = [&diary](const char* pointer, Source source, bool there) {
        // A tap is a report as well; only what was worked out from taps is derived.
        if (there && source == Source::notes)
            diary->origins[pointer] = Origin::derived;
    };
    mark("/into_bed", morning.into_bed.source, morning.into_bed.value.has_value());
    mark("/final_waking", morning.final_waking.source, morning.final_waking.value.has_value());
    mark("/lights_on", morning.lights_on.source, morning.lights_on.value.has_value());
    mark("/out_of_bed", morning.out_of_bed.source, morning.out_of_bed.value.has_value());

    if (state_.first_some)
        diary->answers.push_back({"before_start", Json(*state_.first_some ? "one or more" : "none"), Origin::reported});
    if (state_.called)
        diary->answers.push_back({"clinic_called", Json(true), Origin::reported});
    if (morning.compare.value)
        diary->answers.push_back({std::string(questions::compare), Json(*morning.compare.value), Origin::reported});
    if (!state_.skin.empty())
        diary->answers.push_back({"skin", Json(state_.skin), Origin::reported});
    if (morning.comment.value && !morning.comment.value->empty())
        diary->notes.push_back({*morning.comment.value, std::nullopt});

    for (const auto& [question, answer] : state_.answers) {
        if (question.starts_with(evening_prefix) && answer.is_object() && answer.contains("word"))
            diary->answers.push_back({question, answer["word"], Origin::reported});
    }
    for (const SignalNote& one : state_.signal_notes) {
        const SignalTask* task = signal_task(one.task);
        if (!task)
            continue;
        std::string text = std::string(task->text) + " for " + std::to_string(task->seconds) + " s";
        if (!one.ended || *one.ended - one.started < std::chrono::seconds(task->seconds))
            text += "; ended before that";
        diary->signal_checks.push_back({one.started, one.task, "", text});
    }
    for (const NightNote& note : state_.notes) {
        if (note.kind == kinds::all_on)
            diary->events.push_back({TimeRange::exactly(note.at), std::nullopt, "still_on", "", "", Origin::reported});
        if (note.kind == kinds::off && note.subject.empty())
            diary->events.push_back({TimeRange::exactly(note.at), std::nullopt, "something_off", "", "", Origin::reported});
    }

    for (const ChangedNote& one : changed_notes(state_))
        diary->events.push_back({one.at, std::nullopt, "changed_note", one.sensor.empty() ? one.question : one.question + " " + one.sensor, "", Origin::reported});

    const std::vector<Entry>& all = journal_->entries();
    const auto begin = std::find_if(all.rbegin(), all.rend(), [](const Entry& entry) { return entry.kind == kinds::night; });
    if (begin != all.rend())
        diary->journal.assign(std::prev(begin.base()), all.end());
    if (state_.paper)
        diary->paper = TypedFromPaper{state_.paper->by, state_.begun_at};
    if (state_.given_up)
        diary->answers.push_back({"night_given_up", Json(true), Origin::reported});
    if (!state_.amendments.empty())
        diary->amendments = amendments_of(diary->journal, visit(), kit(), last_plug());
    return diary;
}

bool Session::changes_nothing() const
{
    if (!state_.amending)
        return false;
    const std::vector<Amendment> all = amendments_of(journal_->entries(), visit(), kit(), last_plug());
    return all.empty() || all.back().changes.empty();
}

Status Session::write_night()
{
    const Result<Diary> diary = this->diary();
    if (!diary)
        return diary.problems();
    const Result<std::string> summary = print::summary_pdf(*diary);
    if (!summary)
        return summary.problems();
    const Result<std::filesystem::path> written = write_record(*diary, records_, {{summary_name, *summary}});
    if (!written)
        return written.problems();
    return say(kinds::record, written->filename().string());
}

} // namespace evenfall
