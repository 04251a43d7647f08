// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <array>
#include <span>
#include <string>
#include <string_view>

namespace evenfall {

/// A question of the evening with the answers to choose from: what may make a night unusual. All can
/// be skipped; a visit file says whether they are asked at all. The wording is ours and stands in the
/// translations; naps, alcohol, caffeine and medicines are items of the consensus sleep diary's longer
/// form (Carney et al. 2012, Sleep 35:287-302; the list from memory).
struct EveningQuestion {
    std::string_view id;
    std::array<std::string_view, 3> options; ///< the last may be empty: two answers
};

inline constexpr std::array evening_questions{
    EveningQuestion{"day", {"usual", "unusual", ""}},
    EveningQuestion{"nap", {"none", "short", "long"}},
    EveningQuestion{"caffeine", {"none", "afternoon", "evening"}},
    EveningQuestion{"alcohol", {"none", "little", "more"}},
    EveningQuestion{"medicines", {"usual", "missed", "other"}},
};

/// Prefix of their pages, and of their answers in journal and record: "evening.nap".
inline constexpr std::string_view evening_prefix = "evening.";

/// What the person does while the recorder runs, before lights out, so that whoever scores the night
/// sees that every sensor answers. Signal checks before lights out are common practice in the
/// laboratory (no source); the seconds are our own judgement.
struct SignalTask {
    std::string_view id;
    int seconds;
    std::string_view text; ///< in the record, in English
};

inline constexpr std::array signal_tasks{
    SignalTask{"calm", 30, "asked to breathe calmly"},
    SignalTask{"deep", 20, "asked for deep breaths"},
    SignalTask{"hold", 10, "asked to hold the breath"},
    SignalTask{"finger", 10, "asked to move the finger in the clip"},
};

/// Prefix of their pages: "signal.hold".
inline constexpr std::string_view signal_prefix = "signal.";

constexpr const SignalTask* signal_task(std::string_view id)
{
    for (const SignalTask& task : signal_tasks)
        if (task.id == id)
            return &task;
    return nullptr;
}

constexpr const EveningQuestion* evening_question(std::string_view id)
{
    for (const EveningQuestion& question : evening_questions)
        if (question.id == id)
            return &question;
    return nullptr;
}

} // namespace evenfall
