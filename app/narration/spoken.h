// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "answers/evening.h"
#include "kit/visit.h"
#include "plan/plan.h"
#include "plan/taking_off.h"
#include "words/words.h"

#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

/// One text of a page that is read aloud by itself: a title, what to do, a caution.
struct SpokenUnit {
    std::string id;    ///< text id, the same in all languages
    std::string words; ///< as on the page, without marks of direction; UTF-8, one line
    std::string sound; ///< what a voice says: the digits of a telephone number one by one
    /// The same on every visit: no value in it, and not a clinic's own words.
    bool fixed = true;

    /// "<text id>-<first 8 hex digits of the SHA-256 of words>": a changed sentence has another key,
    /// so that an old recording is never played for it.
    std::string key() const;
    bool operator==(const SpokenUnit&) const = default;
};

using Spoken = std::vector<SpokenUnit>;

/// What each page says, in its order. Pure functions of the visit, its kit and the language.
struct Teller {
    const Visit& visit;
    const Kit& kit;
    const Words& words;
    /// A practice run: its own cautions are said with each step.
    const Plan* practice_of = nullptr;

    Spoken practice(bool over) const;
    Spoken welcome() const;
    Spoken first() const;
    Spoken call() const;
    Spoken bag() const;
    Spoken evening_question(const EveningQuestion& question) const;
    Spoken step(const Step& step) const;
    /// `chosen`: id of the help whose fix is open; empty: what may be wrong.
    Spoken help(const Step& step, const std::string& chosen) const;
    Spoken check() const;
    /// `chosen`: id of the light that was seen, or empty.
    Spoken light(const std::string& chosen) const;
    Spoken signal(const SignalTask& task) const;
    Spoken bed() const;
    /// Of the night, only when asked for. `advice` as in NightFace: an id, or "refit:<part>"; empty: the
    /// helps to choose from.
    Spoken night_help(const std::string& advice) const;
    /// Taking the kit off.
    Spoken taking_off(const OffStep& step) const;
    /// Of the morning what is the same on every morning: no time and no answer is read.
    Spoken morning() const;
    Spoken question(std::string_view id) const; ///< as in answers/questions.h
    Spoken review() const;
    Spoken result(const std::string& verdict) const; ///< verdict_word() of the estimate
    Spoken pack() const;
    Spoken finished(bool more_nights) const;
    /// `again`: half an hour later; `sore`: the skin is not well.
    Spoken skin(bool again, bool sore) const;

    /// Every unit that any page of this visit can read aloud, each once, ordered by key.
    Spoken all(const Plan& plan) const;

  private:
    Spoken title_and_body(const std::string& base) const;
    void add(Spoken& out, const Text& text) const;
    void add(Spoken& out, std::string_view id) const { add(out, Text{std::string(id), {}, {}}); }
    void add_own(Spoken& out, const std::string& id, const LocalText& text) const;
};

/// Ids of the helps of the night.
inline constexpr std::array<std::string_view, 5> night_help_ids{"off", "light", "skin", "unwell", "stop"};

} // namespace evenfall
