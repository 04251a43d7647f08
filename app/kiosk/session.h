// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "answers/morning.h"
#include "answers/pages.h"
#include "journal/journal.h"
#include "journal/state.h"
#include "kiosk/clock.h"
#include "kit/visit.h"
#include "plan/plan.h"
#include "record/diary.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace evenfall {

/// Which visit, and where it lives.
struct SessionPlace {
    VisitWithKit visit;
    std::unique_ptr<Journal> journal;
    std::filesystem::path records; ///< the folder that its record folders go into
};

/// One visit in hand: its kit and plan, the journal, and what follows from it. Everything that is said
/// goes through say(); the state is a replay and nothing else. No Qt.
class Session {
  public:
    /// Goes on with the night in the journal, or begins the first one. Refused: the plan of the kit
    /// cannot be made.
    static Result<std::unique_ptr<Session>> begin(SessionPlace place, std::shared_ptr<const Clock> clock);
    /// Somebody of the clinic (`by`: initials or a role) types in the paper diary of the night that
    /// began on `evening`; one that was begun before is gone on with.
    static Result<std::unique_ptr<Session>> begin_paper(SessionPlace place, std::shared_ptr<const Clock> clock,
                                                        long night, const std::string& by, const std::string& evening);
    /// Somebody of the clinic changes a record. Its journal is that of the record, in memory: what is
    /// not written as a new record is gone, and the old one never changes. Refused: the record has no
    /// journal.
    static Result<std::unique_ptr<Session>> begin_amendment(SessionPlace place, std::shared_ptr<const Clock> clock,
                                                            const std::string& by, const std::string& why);

    const Visit& visit() const { return visit_.visit; }
    const Kit& kit() const { return visit_.kit; }
    const Plan& plan() const { return plan_; }
    const Pages& pages() const { return pages_; }
    const NightState& state() const { return state_; }
    Morning morning() const { return morning_of(state_); }
    Night night() const { return night_of(state_, visit(), kit()); }

    /// An amendment is in hand, and nothing differs from the record yet.
    bool changes_nothing() const;
    /// Somebody of the clinic answers, not the patient.
    bool staff() const { return staff_; }

    Instant now() const { return clock_->now(*visit().zone).utc; }
    std::chrono::seconds offset_at(Instant when) const { return visit().zone->offset_at(when); }

    /// Writes down one thing. Only when this succeeds may the screen move on.
    Status say(std::string_view kind, std::string_view subject = "", std::string_view value = "");
    /// Opens a page, and says so in the journal.
    Status open(std::string_view page) { return say("page", page); }
    /// Number of the last entry, for taking it back.
    std::int64_t last_number() const;

    /// Planned lights out of this night, as an instant of the evening on which it was begun, or of
    /// the evening of the paper diary.
    Instant planned_bed() const;
    /// A first guess at a time of the morning after: now, or for staff some hours after bed time.
    Instant some_morning() const;
    /// When the evening should begin for that, at the plan's pace.
    Instant planned_start() const { return planned_bed() - plan_.before_bed(0); }
    /// When the person will be in bed at their own pace: the steps left, at the plan's times stretched
    /// or shortened by how the steps so far went (between half and twice).
    Instant expected_bed() const;
    /// The step that leaves a recorder that starts by its last plug running; empty for other kits.
    std::string last_plug() const;

    /// The same visit over a journal in memory, for practice by day. Nothing of it is kept.
    Result<std::unique_ptr<Session>> practice() const;
    bool is_practice() const { return practice_; }
    /// Would this step set the recorder going?
    bool starts_recorder(const Step& step) const { return evenfall::starts_recorder(kit(), plan(), step); }

    Status begin_night(long number);
    /// The diary of the night in hand, with the whole journal of this night.
    Result<Diary> diary() const;
    /// Writes the record and notes its name. Error: as write_record, and the journal's.
    Status write_night();

  private:
    Session(SessionPlace place, Plan plan, std::shared_ptr<const Clock> clock);
    static Result<std::unique_ptr<Session>> make(SessionPlace place, std::shared_ptr<const Clock> clock);
    void refresh();

    VisitWithKit visit_;
    Plan plan_;
    Pages pages_;
    std::unique_ptr<Journal> journal_;
    std::filesystem::path records_;
    std::shared_ptr<const Clock> clock_;
    NightState state_;
    bool staff_ = false;
    bool practice_ = false;
};

} // namespace evenfall
