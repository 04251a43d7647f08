// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"
#include "base/text.h"
#include "kit/kit.h"
#include "kit/visit.h"
#include "plan/depict.h"
#include "plan/plan.h"

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace evenfall {

/// How much the sheet says. Both can be followed without a tablet, and both have every caution.
enum class SheetLength {
    brief, ///< one leaf: each step is its figure and its title, each caution is said once
    full,  ///< every text of every step
};

/// One piece of the sheet, read from first to last. What a kind does not use is empty.
struct SheetBlock {
    enum class Kind {
        paragraph, ///< title
        bullet,    ///< title
        tick,      ///< a thing of the bag: figure, title, count
        chore,     ///< something to tick off, without a number: figure, title, body
        step,      ///< number, figure, title, body, right, cautions
        advice,    ///< title is what the person would say, body what to do
        light,     ///< the light and what it does (title), what to do then (body)
        caution,   ///< title, body, numbers
    };
    Kind kind = Kind::paragraph;
    Text title, body, right;
    std::vector<Text> cautions;
    Depiction figure;
    int number = 0; ///< step only, from 1 and through the whole sheet
    int count = 1;  ///< tick only
    std::vector<int> numbers; ///< caution only: the steps it is about, where it stands among steps
    std::optional<Light> light;
};

struct SheetSection {
    Text title; ///< empty: it goes on with what is before it
    std::vector<SheetBlock> blocks;
};

/// A question of the morning with its place to write.
struct SheetQuestion {
    enum class Answer { time, amount, choice, free };
    std::string id; ///< as in answers/questions.h
    Text title;
    Answer answer = Answer::time;
    Text unit;                 ///< amount only
    std::vector<Text> choices; ///< boxes to tick
};

/// The paper diary: a grid of the night, in which lines are drawn, and the questions that the grid
/// does not answer.
struct SheetDiary {
    Text title;
    Text night;   ///< "Night 1 of 2"; empty when there is one
    Text evening; ///< stands before the date that the person writes
    Text how;
    Text unsure;             ///< a box to tick beside each time and length
    std::vector<Text> hours; ///< at the left end of each column, every `hours_apart` hours
    int hours_apart = 2;
    std::vector<Text> rows;
    std::vector<SheetQuestion> questions;
};

/// What goes home with the kit, without words: from the same plan, figures and texts as the screen.
/// What only a tablet does is left out, so that it can be followed without one.
struct Sheet {
    SheetLength length = SheetLength::brief;
    std::string code;
    std::string kit_label;
    Clinic clinic;
    WritingHand hand = WritingHand::right;
    Text title, call, hours, outside_hours, code_title, qr;
    Text emergency; ///< a caution
    std::vector<SheetSection> sections;
    std::vector<SheetDiary> diaries; ///< one for each night; the last pages
};

/// Refused: a visit without the clinic's telephone number.
Result<Sheet> make_sheet(const Visit& visit, const Kit& kit, const Plan& plan, SheetLength length);

/// The texts that say a step's caution on a brief sheet, where they stand for all steps with such a
/// caution: ids, never empty. A caution without such a text is itself on the sheet.
std::vector<std::string> brief_cautions(const std::string& caution);

/// Every text id of the sheets of all kits that is not among all_step_texts(), for the check that
/// all are translated.
std::vector<std::string> all_sheet_texts();

/// Ids of the figures on it, each once.
std::vector<std::string> figures_of(const Sheet& sheet);

/// One language: turns the texts of the sheet into words (UTF-8).
struct SheetWords {
    std::string language; ///< BCP 47, such as "en"
    bool right_to_left = false;
    std::function<std::string(const Text&)> text;
    std::function<std::string(const Clinic&)> hours;     ///< one line for each span of days
    std::function<std::string(const std::string&)> code; ///< kept in its own direction
    std::function<std::string(long)> number;
};

} // namespace evenfall
