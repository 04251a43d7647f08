// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <string_view>

/// What can be said in a journal. These words are in files of nights gone by: add, never change.
namespace evenfall::kinds {

inline constexpr std::string_view night = "night";           ///< subject: study code; value: {"night", "kit"} and,
                                                                  ///< typed in from paper, "paper": {"by", "evening"}
inline constexpr std::string_view page = "page";             ///< subject: the page now open
inline constexpr std::string_view language = "language";     ///< subject: two letters
inline constexpr std::string_view first = "first";           ///< first questions; subject: none, some
inline constexpr std::string_view called = "called";         ///< the person says the clinic was called
inline constexpr std::string_view item = "item";             ///< found in the bag; subject: item
inline constexpr std::string_view item_missing = "item_missing";
inline constexpr std::string_view step = "step";             ///< subject: step, which is done
inline constexpr std::string_view trouble = "trouble";       ///< subject: help id that was tried
inline constexpr std::string_view check = "check";           ///< subject: sensor that sits right
inline constexpr std::string_view light = "light";           ///< subject: light that was seen
inline constexpr std::string_view lights_out = "lights_out";
inline constexpr std::string_view awake = "awake";
inline constexpr std::string_view asleep = "asleep";         ///< going back to sleep
inline constexpr std::string_view up = "up";                 ///< getting up in the night
inline constexpr std::string_view back = "back";             ///< back in bed
inline constexpr std::string_view off = "off";               ///< subject: part noticed off; empty: not said which
inline constexpr std::string_view on = "on";                 ///< subject: part put back on
inline constexpr std::string_view all_on = "all_on";         ///< everything was still on
inline constexpr std::string_view up_for_day = "up_for_day";
inline constexpr std::string_view help = "help";             ///< subject: advice that was opened
inline constexpr std::string_view undo = "undo";             ///< value: number of the entry taken back
inline constexpr std::string_view answer = "answer";         ///< subject: question; value: the answer
inline constexpr std::string_view draft = "draft";           ///< an answer not yet confirmed; subject: question
inline constexpr std::string_view stopped = "stopped";       ///< the recorder was switched off
inline constexpr std::string_view skin = "skin";             ///< subject: fine, sore
inline constexpr std::string_view packed = "packed";         ///< subject: item
inline constexpr std::string_view opened = "opened";         ///< the program was opened again
inline constexpr std::string_view build = "build";           ///< of the drawn person; subject: slim, medium, broad
inline constexpr std::string_view read_to_me = "read_to_me"; ///< each page is read aloud by itself; subject: on, off
inline constexpr std::string_view night_sound = "night_sound"; ///< a soft tone with each note of the night; subject: on, off
inline constexpr std::string_view not_yet = "not_yet";       ///< a tick taken back; value: item, check or packed
inline constexpr std::string_view signal = "signal";         ///< subject: task; value: started, done, skipped
inline constexpr std::string_view skin_again = "skin_again"; ///< half an hour later; subject: fine, sore
inline constexpr std::string_view amend = "amend";           ///< subject: who of the clinic; value: why (JSON text)
inline constexpr std::string_view given_up = "given_up";     ///< the night was given up before its morning
inline constexpr std::string_view record = "record";         ///< subject: name of the record folder

} // namespace evenfall::kinds
