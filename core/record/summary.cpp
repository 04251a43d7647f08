// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/summary.h"

#include "base/hash.h"
#include "estimate/contradictions.h"
#include "estimate/estimate.h"
#include "record/events.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <map>
#include <tuple>

namespace evenfall {
namespace {

constexpr Span::rep hundredth = 600000;    // microseconds in 0.01 min
constexpr const char* no_value = "\u2013"; // a dash: not answered, never zero
constexpr std::size_t cost_of_line_break = 60;
constexpr std::size_t whole_caution = 1000; ///< ours, and never cut; answers in it are short

std::string hundredths(Span::rep count)
{
    std::string text = std::to_string(count / 100);
    if (const auto rest = count % 100; rest != 0) {
        text += "." + std::to_string(rest / 10);
        if (rest % 10 != 0)
            text += std::to_string(rest % 10);
    }
    return text;
}

// Rounded as in evenfall.estimate/1, so that page and file say the same number.
std::string down(Span span)
{
    return hundredths(span.count() / hundredth);
}
std::string up(Span span)
{
    return hundredths((span.count() + hundredth - 1) / hundredth);
}
std::string half_up(Span span)
{
    return hundredths((span.count() + hundredth / 2) / hundredth);
}
/// As reported: every decimal that was given.
std::string as_given(Span span)
{
    return minutes_json(span).dump();
}

std::string joined(const std::vector<std::string>& words, const std::string& last)
{
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i)
        text += (i == 0 ? "" : i + 1 == words.size() ? last : ", ") + words[i];
    return text;
}

std::string times_text(long count)
{
    return std::to_string(count) + (count == 1 ? " time" : " times");
}

/// Local clock times of one night, as a person reads them.
class Clock {
  public:
    Clock(const Night& night, const std::string& evening, Instant first, Instant last)
        : night_(night), evening_(evening),
          changes_(night.offset_at(first) != night.offset_at(last))
    {}

    /// Clocks change between the first and the last time: then each time says its offset, for some
    /// come twice.
    bool changes() const { return changes_; }

    std::string time(Instant when) const { return bare(when) + mark(when); }

    std::string range(const TimeRange& range) const
    {
        if (range.exact())
            return time(range.earliest);
        const bool same = mark(range.earliest) == mark(range.latest);
        return (same ? bare(range.earliest) : time(range.earliest)) + "\u2013" + time(range.latest);
    }

  private:
    const Night& night_;
    std::string evening_;
    bool changes_;

    std::string mark(Instant when) const
    {
        return changes_ ? " " + utc_offset_text(night_.offset_at(when)) : "";
    }

    /// Seconds only where there are any; the date only where it is not this night.
    std::string bare(Instant when) const
    {
        const std::string text = format_time(when, night_.offset_at(when));
        const std::string seconds = text.substr(17, 2);
        std::string out = text.substr(11, 5) + (seconds == "00" ? "" : ":" + seconds);
        const LocalTime local{when.time_since_epoch() + night_.offset_at(when)};
        const std::string of =
            format_date(LocalTime{std::chrono::local_days(evening_of(local)).time_since_epoch()});
        return of == evening_ ? out : text.substr(0, 10) + " " + out;
    }
};

struct Sense {
    std::string_view id;
    std::string_view label;
};

// What the answers of the app are called. An id that is not here stands for itself.
constexpr std::array questions{
    Sense{"before_start", "Before the start"},
    Sense{"clinic_called", "Clinic called"},
    Sense{"compare", "Against usual night"},
    Sense{"skin", "Skin afterwards"},
};

std::string question_label(const std::string& id)
{
    for (const Sense& each : questions)
        if (each.id == id)
            return std::string(each.label);
    std::string label = id;
    std::replace(label.begin(), label.end(), '_', ' ');
    return label;
}

std::string answer_text(const Json& answer)
{
    if (answer.is_string())
        return answer.get<std::string>();
    if (answer.is_boolean())
        return answer.get<bool>() ? "yes" : "no";
    if (!answer.is_object() && !answer.is_array())
        return answer.dump();
    std::vector<std::string> parts;
    for (const auto& [key, value] : answer.items())
        parts.push_back((answer.is_object() ? key + ": " : "") +
                        (value.is_structured() ? value.dump() : answer_text(value)));
    return parts.empty() ? "none" : joined(parts, ", ");
}

bool says_yes(const Json& answer)
{
    if (answer.is_boolean())
        return answer.get<bool>();
    if (answer.is_number())
        return answer != 0;
    if (answer.is_string()) {
        const std::string word = answer.get<std::string>();
        return word != "no" && word != "none" && !word.empty();
    }
    return !answer.empty();
}

/// Number of bytes of the first code point.
std::size_t code_point(std::string_view text)
{
    std::size_t size = 1;
    while (size < text.size() && (static_cast<unsigned char>(text[size]) & 0xC0) == 0x80)
        ++size;
    return size;
}

std::size_t code_points(std::string_view text)
{
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
    }));
}

void shorten(std::string& text, std::size_t most)
{
    std::size_t cost = 0;
    std::size_t end = 0;
    while (end < text.size()) {
        cost += text[end] == '\n' ? cost_of_line_break : 1;
        if (cost > most)
            break;
        end += code_point(std::string_view(text).substr(end));
    }
    if (end == text.size())
        return;
    const std::size_t more = code_points(std::string_view(text).substr(end));
    text.resize(end);
    text += " \u2026 (" + std::to_string(more) +
            (more == 1 ? " more character in diary.json)" : " more characters in diary.json)");
}

class Page {
  public:
    Page(const Diary& diary, std::string evening)
        : diary_(diary), night_(diary.night), evening_(std::move(evening)),
          events_(all_events(diary)), clock_(night_, evening_, first(), last())
    {}

    Summary make()
    {
        head();
        const std::vector<Contradiction> found = find_contradictions(night_);
        page_.contradictions.title = "Answers that contradict each other";
        for (const Contradiction& each : found)
            page_.contradictions.lines.push_back({each.problem.at, each.problem.text, {}});
        if (!found.empty())
            page_.notice = "From the notes alone. The clinic decides from the recording.";
        estimate_ = found.empty() ? std::optional(estimate(night_)) : std::nullopt;
        verdict();
        time();
        measures();
        lost();
        cautions();
        picture();
        events();
        answers();
        notes();
        page_.foot =
            "Reported: said or tapped by the person. Derived: worked out from what was reported. A "
            "dash: not answered, or not to be worked out without an answer. Nobody watched this "
            "night, and nothing here is a finding. Every value, and the log behind it, stands in "
            "diary.json.";
        return std::move(page_);
    }

  private:
    const Diary& diary_;
    const Night& night_;
    std::string evening_;
    std::vector<DiaryEvent> events_;
    Clock clock_;
    Summary page_;
    std::optional<Estimate> estimate_;

    Instant first() const { return events_.empty() ? Instant{} : events_.front().at.earliest; }
    Instant last() const
    {
        Instant last = first();
        for (const DiaryEvent& event : events_)
            last = std::max(last, event.at.latest);
        return last;
    }

    Origin origin(const std::string& at) const
    {
        const auto found = diary_.origins.find(at);
        return found == diary_.origins.end() ? Origin::reported : found->second;
    }

    void head()
    {
        const std::string night = std::to_string(diary_.of.night);
        page_.title = "Night summary " + diary_.of.code + ", night " + night + ", " + evening_;
        page_.heading = "Night summary: " + diary_.of.code + ", night " + night;
        page_.head.push_back({"Study code", diary_.of.code, {}});
        page_.head.push_back({"Night", night, {}});
        page_.head.push_back({"Evening of", evening_, {}});
        page_.head.push_back({"Kit", diary_.kit ? diary_.kit->id : "not given", {}});
        page_.head.push_back(
            {"Label",
             diary_.kit && !diary_.kit->label.empty() ? diary_.kit->label : "not given",
             {},
             true});
        std::string zone = night_.zone ? night_.zone->name() : "not given";
        if (!events_.empty())
            zone +=
                " (" + utc_offset_text(night_.offset_at(first())) +
                (clock_.changes() ? ", later " + utc_offset_text(night_.offset_at(last())) : "") +
                ")";
        page_.head.push_back({"Zone", zone, {}});
        page_.notice =
            "From the notes alone: a sensor counts while it was worn; how good its signal was is "
            "not known here. The clinic decides from the recording.";
        if (diary_.paper)
            page_.notice += " Typed in from a paper diary.";
        if (!diary_.amendments.empty())
            page_.notice += " Changed after it was written: see \"Amended\" under the answers.";
    }

    std::string day(Instant when) const
    {
        return format_time(when, night_.offset_at(when)).substr(0, 10);
    }

    std::string groups() const
    {
        std::vector<std::string> groups;
        for (const auto& group : night_.need.groups)
            groups.push_back(joined(group, " or "));
        return joined(groups, ", and ") + (groups.size() > 1 ? ", at the same time" : "");
    }

    void verdict()
    {
        if (!estimate_)
            return;
        std::vector<std::string>& reasons = page_.verdict_reasons;
        const std::string need = half_up(night_.need.minutes) + " min";
        switch (estimate_->verdict) {
        case Verdict::enough:
            page_.verdict = "Enough, from the notes";
            reasons.push_back("Even the least, " + half_up(estimate_->needed->at_least) +
                              " min with all needed signals on, reaches the " + need +
                              " that the clinic asks for.");
            break;
        case Verdict::too_short:
            page_.verdict = "Too short, from the notes";
            reasons.push_back("Even the most, " + half_up(estimate_->needed->at_most) +
                              " min with all needed signals on, does not reach the " + need +
                              " that the clinic asks for.");
            break;
        case Verdict::borderline:
            page_.verdict = "Borderline, from the notes";
            reasons.push_back("Whether the time with all needed signals on reaches the " + need +
                              " that the clinic asks for depends on times that are not known "
                              "exactly.");
            break;
        case Verdict::unknown:
            page_.verdict = "Not known, from the notes";
            reasons.push_back(
                std::string(night_.recording_from || night_.lights_out
                                ? "It is not known when the night ended: neither the end of the "
                                  "recording nor lights on was noted."
                                : "It is not known when the night began: neither the start of the "
                                  "recording nor lights out was noted.") +
                " The need is " + need + ".");
            break;
        }
        reasons.push_back("Needed signals: " + groups() + ".");
        if (estimate_->chance_enough)
            reasons.push_back("Chance that it is enough: " + chance(*estimate_->chance_enough) +
                              (estimate_->verdict == Verdict::borderline
                                   ? ", each uncertain time being equally likely anywhere in its "
                                     "range."
                                   : "."));
        static const std::map<std::string, std::string> missing{
            {"asleep_after_min", "how long it took to fall asleep"},
            {"lights_out", "lights out"},
            {"final_waking", "final waking"},
            {"awake", "awakenings"}};
        std::vector<std::string> words;
        for (const std::string& each : estimate_->wake_missing)
            words.push_back(missing.contains(each) ? missing.at(each) : each);
        if (!words.empty())
            reasons.push_back(
                "Not answered, so nothing is taken away for it: " + joined(words, " and ") + ".");
    }

    /// In percent with at most three decimals: 20,000 draws are steps of 0.005 %.
    static std::string chance(double share)
    {
        char buffer[32];
        std::snprintf(buffer, sizeof buffer, "%.3f", share * 100);
        std::string text = buffer;
        while (text.back() == '0')
            text.pop_back();
        if (text.back() == '.')
            text.pop_back();
        return text + " %";
    }

    void time_row(const std::string& name, const std::string& meaning,
                  const std::optional<Bounds>& bounds)
    {
        std::vector<std::string> cells(3, no_value);
        if (bounds)
            cells = {down(bounds->at_least), half_up(bounds->best_guess), up(bounds->at_most)};
        page_.time.rows.push_back({name, meaning, cells, Origin::derived});
    }

    void time()
    {
        page_.time.title = "Minutes that can count";
        page_.time.names = "in minutes";
        page_.time.columns = {"at least", "best guess", "at most"};
        page_.time.when_empty = "Not worked out while answers contradict each other.";
        if (!estimate_)
            return;
        time_row("Window", window_times(), estimate_->window);
        time_row("All needed on", "every needed signal at once", estimate_->needed);
        time_row("The same, asleep", "less all reported time awake", estimate_->needed_asleep);
        for (const auto& [id, bounds] : estimate_->sensors)
            time_row(id, "", bounds);
    }

    std::string window_times() const
    {
        const std::optional<NightPicture> drawn = evenfall::picture(night_);
        if (!drawn || !drawn->window_from || !drawn->window_to)
            return "";
        return clock_.range(*drawn->window_from) + " to " + clock_.range(*drawn->window_to);
    }

    void measure(const std::string& name, const std::string& meaning,
                 const std::optional<std::string>& value, Origin origin)
    {
        page_.measures.rows.push_back({name,
                                       meaning,
                                       {value.value_or(no_value)},
                                       value ? std::optional(origin) : std::nullopt});
    }

    void measures()
    {
        page_.measures.title = "Sleep diary";
        page_.measures.names = "measure; ranges count at their middles";
        page_.measures.columns = {"min"};
        page_.measures.when_empty = "Not worked out while answers contradict each other.";
        if (!estimate_)
            return;
        const DiaryMeasures& diary = estimate_->diary;
        const auto span = [](const std::optional<Span>& value) {
            return value ? std::optional(half_up(*value)) : std::nullopt;
        };
        const auto percent = [](const std::optional<long>& value) {
            return value ? std::optional(hundredths(*value) + " %") : std::nullopt;
        };
        const auto derived = Origin::derived;
        measure("TIB", "time in bed: out of bed \u2212 into bed", span(diary.tib), derived);
        measure("SOL", "sleep onset latency", span(diary.sol), origin("/asleep_after_min"));
        measure("WASO", "wake after sleep onset, up to final waking", span(diary.waso), derived);
        measure("Awakenings", "number; the final waking is not one",
                diary.awakenings ? std::optional(std::to_string(*diary.awakenings)) : std::nullopt,
                derived);
        measure("TST", "final waking \u2212 lights out \u2212 SOL \u2212 WASO", span(diary.tst),
                derived);
        measure("TASAFA", "trying to sleep after final waking", span(diary.tasafa),
                origin("/tried_to_sleep_after_waking_min"));
        measure("DSE", "SOL + TST + WASO + TASAFA", span(diary.dse), derived);
        measure("SE (TIB)", "sleep efficiency TST / TIB", percent(diary.se_tib), derived);
        measure("SE (DSE)", "sleep efficiency TST / DSE", percent(diary.se_dse), derived);
        measure("Slept", "the person\u2019s own idea of it", span(night_.slept),
                origin("/slept_min"));
    }

    void lost()
    {
        page_.lost.title = "Lost, and why";
        page_.lost.names = "off between lights out and on, best guess";
        page_.lost.columns = {"min off", "min it cost"};
        page_.lost.when_empty = !estimate_ ? "Not worked out while answers contradict each other."
                                : !estimate_->window ? "Not known: the window is not known."
                                                     : "Nothing, as far as the notes say.";
        if (!estimate_)
            return;
        for (const Loss& loss : estimate_->lost) {
            const bool start = loss.cause == "late_start";
            const bool end = loss.cause == "early_end";
            page_.lost.rows.push_back({start ? "Late start"
                                       : end ? "Early end"
                                             : loss.cause,
                                       start ? "recording began after lights out"
                                       : end ? "recording ended before lights on"
                                             : "",
                                       {half_up(loss.minutes), half_up(loss.alone)},
                                       Origin::derived});
        }
    }

    static std::string quoted(const Json& answer)
    {
        std::string text = answer_text(answer);
        shorten(text, 60);
        return "\u201c" + text + "\u201d";
    }

    void caution(std::string label, std::string text)
    {
        page_.cautions.lines.push_back({std::move(label), std::move(text), {}});
    }

    void cautions()
    {
        page_.cautions.title = "Cautions";
        bool called = false;
        for (const DiaryAnswer& answer : diary_.answers)
            called = called || (answer.question == "clinic_called" && says_yes(answer.answer));
        for (const DiaryAnswer& answer : diary_.answers) {
            if (!says_yes(answer.answer))
                continue;
            if (answer.question == "before_start")
                caution("Before the start",
                        std::string("the person said yes to at least one of: tape allergy, broken "
                                    "skin, oxygen, implant, under 18, pregnancy, latex, cords. ") +
                            (called ? "The clinic was called, they say."
                                    : "No call to the clinic is noted: ask what it was."));
            else if (answer.question == "skin" && answer.answer != "fine")
                // McNichol et al. 2013, JWOCN 40:365
                caution("Skin", "answered " + quoted(answer.answer) +
                                    " after the kit came off. Redness, blister or tear that "
                                    "lasts more than 30 minutes is an injury by adhesive: ask, and "
                                    "look.");
            else if (answer.question.find("oxygen") != std::string::npos)
                caution("Oxygen", "answered " + quoted(answer.answer) +
                                      ": the reading of the oximeter depends on it.");
        }
        if (estimate_ && estimate_->verdict == Verdict::too_short)
            // Zeidler et al. 2015, J Clin Sleep Med 11:1313-8
            caution("Short night", "too little recording is not a negative result.");
    }

    void picture()
    {
        page_.picture = evenfall::picture(night_);
        page_.picture_title =
            estimate_ ? "The night as noted" : "The night as noted, contradictions included";
        page_.without_picture = "No picture: it needs at least two times of the night.";
        if (!page_.picture)
            return;
        NightPicture& drawn = *page_.picture;
        if (!estimate_) { // sleep and window are worked out
            drawn.window_from = drawn.window_to = std::nullopt;
            drawn.lanes.pop_back();
        }
        const auto time = [&](Instant when) { return clock_.time(when); };
        std::string text =
            "The night from " + time(drawn.from) + " to " + time(drawn.to) + ", one lane each. ";
        for (const PictureLane& lane : drawn.lanes) {
            std::vector<std::string> pieces;
            for (const PictureSpan& span : lane.spans) {
                const bool soft = span.certainty == Certainty::soft;
                const bool usual = span.kind == SpanKind::on || span.kind == SpanKind::asleep;
                if (!soft && usual && lane.id != "sleep")
                    continue;
                const char* word = span.kind == SpanKind::off      ? "off"
                                   : span.kind == SpanKind::awake  ? "awake"
                                   : span.kind == SpanKind::asleep ? "asleep"
                                                                   : "on";
                pieces.push_back(std::string(soft ? "perhaps " : "") + word + " " +
                                 time(span.from) + " to " + time(span.to));
            }
            text += lane.id + ": " +
                    (!pieces.empty()      ? joined(pieces, ", ")
                     : lane.spans.empty() ? "not answered"
                                          : "on throughout") +
                    ". ";
        }
        for (const PictureTick& tick : drawn.ticks) {
            if (!tick.clock_change)
                continue;
            const auto by =
                std::chrono::duration_cast<std::chrono::minutes>(tick.offset - tick.offset_before);
            text += std::string("Clocks go " + std::string(by.count() < 0 ? "back " : "on ") +
                                std::to_string(std::abs(by.count())) +
                                " min: " + utc_offset_text(tick.offset_before) + " to " +
                                utc_offset_text(tick.offset) + ". ");
        }
        if (drawn.untimed_awakenings > 0)
            page_.picture_notes.push_back(
                "Awake " + times_text(drawn.untimed_awakenings) + " without a clock time, " +
                as_given(drawn.untimed_total) + " min together: no place in the picture.");
        for (const std::string& note : page_.picture_notes)
            text += note + " ";
        text.pop_back();
        page_.picture_text = text;
    }

    struct Placed {
        TimeRange at;
        SummaryLine line;
    };

    void events()
    {
        page_.events.title = "Events";
        std::vector<Placed> placed;
        const auto put = [&](const TimeRange& at, std::string text, Origin origin) {
            placed.push_back({at, {clock_.range(at), std::move(text), origin}});
        };
        for (std::size_t i = 0; i < night_.off.size(); ++i) {
            const Removal& removal = night_.off[i];
            // Off from the start has no time of its own: it stands before everything.
            const TimeRange at = removal.from.value_or(TimeRange::exactly(first()));
            const std::string back =
                removal.to ? ", on again " + clock_.range(*removal.to) : ", not put back";
            put(at, (at.exact() ? "Off: " : "Came off some time in between: ") + removal.sensor + back, origin(pointer("/off", i) + "/from"));
            if (!removal.from)
                placed.back().line.label = "from the start";
        }
        for (std::size_t i = 0; night_.awake && i < night_.awake->size(); ++i) {
            const Awakening& awakening = (*night_.awake)[i];
            put(awakening.from,
                std::string(awakening.from.exact() ? "Woke" : "Woke some time in between") +
                    (awakening.to       ? ", asleep again " + clock_.range(*awakening.to)
                           : awakening.length ? ", awake for " + as_given(*awakening.length) + " min"
                                              : std::string()),
                origin(pointer("/awake", i) + "/from"));
        }
        for (const DiaryEvent& event : events_)
            other_event(event, put);
        std::stable_sort(placed.begin(), placed.end(), [](const Placed& a, const Placed& b) {
            return std::tie(a.at.earliest, a.at.latest, a.line.text) <
                   std::tie(b.at.earliest, b.at.latest, b.line.text);
        });
        for (Placed& each : placed)
            page_.events.lines.push_back(std::move(each.line));
    }

    /// Everything that is not a removal or an awakening; notes have a part of their own.
    template <class Put>
    void other_event(const DiaryEvent& event, const Put& put)
    {
        static const std::array<std::string_view, 7> told{"sensor_off",
                                                          "sensor_off_from_start",
                                                          "sensor_on_again",
                                                          "sensor_not_put_back",
                                                          "awake",
                                                          "asleep_again",
                                                          "note"};
        const bool of_night =
            std::find(diary_.events.begin(), diary_.events.end(), event) == diary_.events.end();
        if (of_night && std::find(told.begin(), told.end(), event.kind) != told.end())
            return;
        if (of_night && event.kind == "awake_untimed") {
            put(event.at,
                "Awake " + times_text(night_.awake_untimed->times) + ", when is not known, " +
                    as_given(night_.awake_untimed->total) + " min together",
                event.origin);
            return;
        }
        std::string text(event_text(event.kind).value_or(event.kind));
        if (!event.subject.empty())
            text += ": " + event.subject;
        if (event.length)
            text += ", " + as_given(*event.length) + " min";
        if (!event.comment.empty())
            text += "; " + event.comment;
        put(event.at, std::move(text), event.origin);
    }

    void answers()
    {
        page_.answers.title = "Answers";
        if (diary_.paper)
            page_.answers.lines.push_back({"Typed in from paper", "by " + diary_.paper->by + ", " + day(diary_.paper->at), Origin::reported, true});
        for (const Amendment& one : diary_.amendments) {
            std::vector<std::string> what;
            for (const AmendedValue& value : one.changes)
                what.push_back(value.at);
            page_.answers.lines.push_back({"Amended", "by " + one.by + ", " + day(one.at) + ": " + one.why + " (" + joined(what, ", ") + ")", Origin::reported, true});
        }
        for (const DiaryAnswer& answer : diary_.answers)
            page_.answers.lines.push_back({question_label(answer.question),
                                           answer_text(answer.answer), answer.origin,
                                           answer.answer.is_string()});
    }

    void notes()
    {
        page_.notes.title = "Notes in the person\u2019s own words";
        for (const DiaryNote& note : diary_.notes)
            page_.notes.lines.push_back(
                {note.at ? clock_.range(*note.at) : "no time", note.text, Origin::reported, true});
    }
};

template <class Part>
void shorten_list(std::vector<Part>& parts, std::size_t& left_out, std::size_t most)
{
    if (parts.size() <= most)
        return;
    left_out += parts.size() - most;
    parts.resize(most);
}

void cut_list(SummaryList& list, std::size_t most, std::size_t length)
{
    shorten_list(list.lines, list.left_out, most);
    for (SummaryLine& line : list.lines) {
        shorten(line.label, 90);
        shorten(line.text, length);
    }
}

} // namespace

Result<Summary> summary(const Diary& diary)
{
    const Result<std::string> json = diary_to_json(diary);
    if (!json)
        return json.problems();
    const Result<std::string> evening = diary_evening(diary);
    if (!evening)
        return evening.problems();
    Summary page = Page(diary, *evening).make();
    page.diary_sha256 = sha256_hex(*json);
    return page;
}

Summary cut(const Summary& whole, const SummaryLimits& limits)
{
    Summary page = whole;
    for (SummaryLine& line : page.head)
        shorten(line.text, 44);
    cut_list(page.contradictions, limits.contradictions, limits.line_length);
    cut_list(page.cautions, limits.cautions, whole_caution);
    cut_list(page.events, limits.events, limits.line_length);
    cut_list(page.answers, limits.answers, limits.line_length);
    cut_list(page.notes, limits.notes, limits.note_length);
    for (std::string& reason : page.verdict_reasons)
        shorten(reason, limits.line_length);
    constexpr std::size_t before_sensors = 3; // window, needed, needed asleep
    shorten_list(page.time.rows, page.time.left_out, before_sensors + limits.sensors);
    shorten_list(page.lost.rows, page.lost.left_out, limits.lost);
    if (page.picture) {
        std::vector<PictureLane>& lanes = page.picture->lanes;
        const bool sleep = !lanes.empty() && lanes.back().id == "sleep";
        const std::size_t sensors = lanes.size() - (sleep ? 1 : 0);
        if (sensors > limits.sensors) {
            const std::size_t more = sensors - limits.sensors;
            const auto from = lanes.begin() + static_cast<std::ptrdiff_t>(limits.sensors);
            lanes.erase(from, from + static_cast<std::ptrdiff_t>(more));
            page.picture_notes.push_back(
                std::to_string(more) + (more == 1 ? " more sensor stands" : " more sensors stand") +
                " in diary.json.");
        }
    }
    return page;
}

std::string utc_offset_text(std::chrono::seconds offset)
{
    const std::string text = format_offset(offset); // +05:30
    std::string out =
        "UTC" + text.substr(0, 1) + (text[1] == '0' ? "" : text.substr(1, 1)) + text.substr(2, 1);
    if (text.substr(4) != "00")
        out += text.substr(3);
    return out;
}

std::string more_in_diary(std::size_t left_out)
{
    if (left_out == 0)
        return "";
    return left_out == 1 ? "1 more line stands in diary.json."
                         : std::to_string(left_out) + " more lines stand in diary.json.";
}

std::string_view origin_text(const std::optional<Origin>& origin)
{
    return !origin ? "" : *origin == Origin::reported ? "reported" : "derived";
}

std::string summary_key_words(std::string_view diary_sha256)
{
    return "diary.json SHA-256 " + std::string(diary_sha256);
}

std::string_view summary_producer(std::string_view pdf)
{
    const std::size_t begin = pdf.find("/Producer ");
    if (begin == std::string_view::npos)
        return "";
    return pdf.substr(begin, std::min(pdf.find(" /", begin + 1), pdf.find(" >>", begin)) - begin);
}

Problems check_summary(std::string_view pdf, std::string_view diary_json)
{
    const auto problem = [](const char* code, const char* at, const char* text) {
        return Problem{Fault::refused, code, at, text};
    };
    Problems problems;
    if (!pdf.starts_with("%PDF-"))
        problems.push_back(problem("not_pdf", "byte 0", "right would be %PDF- at its beginning"));
    if (!pdf.ends_with("%%EOF\n") && !pdf.ends_with("%%EOF"))
        problems.push_back(problem("cut_off", "end", "right would be %%EOF at its end"));
    if (pdf.find(summary_key_words(sha256_hex(diary_json))) == std::string_view::npos)
        problems.push_back(problem("not_from_diary", "Keywords",
                                   "does not carry the SHA-256 of this diary.json; right would be "
                                   "the page made again with record --from"));
    return problems;
}

} // namespace evenfall
