// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "estimate/picture.h"
#include "record/diary.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

/// Its name in the record.
inline constexpr const char* summary_name = "summary.pdf";

/// The page for the person who scores the night, without fonts, places or colours: every text and
/// every number is already formed. In plain English for staff. Minutes have at most two decimals
/// and are rounded as in evenfall.estimate/1 (at least down, at most up, all else half up).

/// One line: a label, what stands beside it, and whether a person said it.
struct SummaryLine {
    std::string label;
    std::string text;
    std::optional<Origin> origin; ///< absent: neither, such as what the clinic set
    bool own_words = false;       ///< free text as given, in any language
    bool operator==(const SummaryLine&) const = default;
};

struct SummaryList {
    std::string title;
    std::vector<SummaryLine> lines;
    std::size_t left_out = 0; ///< lines that stand in diary.json only
};

/// A row of numbers under `columns`, after its name.
struct SummaryRow {
    std::string name;
    std::string meaning; ///< the definition or the times; may be empty
    std::vector<std::string> cells;
    std::optional<Origin> origin;
    bool operator==(const SummaryRow&) const = default;
};

struct SummaryTable {
    std::string title;
    std::string names;                ///< head of the names
    std::vector<std::string> columns; ///< as many as `cells`
    std::vector<SummaryRow> rows;
    std::string when_empty; ///< what to say instead of no rows
    std::size_t left_out = 0;
};

struct Summary {
    std::string title;             ///< of the document
    std::string heading;           ///< the first line of the page
    std::string diary_sha256;      ///< of the diary.json that the same diary makes
    std::vector<SummaryLine> head; ///< whose night, when, which kit, where
    std::string notice;            ///< what these figures are not
    std::string verdict;           ///< in a few words; empty while answers contradict each other
    std::vector<std::string> verdict_reasons;
    SummaryList contradictions;
    SummaryList cautions;
    SummaryTable time;     ///< window, needed, needed asleep, then each sensor; none: contradictory
    SummaryTable measures; ///< of the diary, with their definitions
    SummaryTable lost;
    std::optional<NightPicture> picture;
    std::string picture_title;
    std::string picture_text;               ///< what the picture shows, for those who cannot see it
    std::vector<std::string> picture_notes; ///< beside the legend: clock change, no place in it
    std::string without_picture;            ///< said where there is no picture
    SummaryList events;
    SummaryList answers;
    SummaryList notes;
    std::string foot;
};

/// The whole page, nothing left out. Refused, as diary_to_json: a diary that cannot be written.
Result<Summary> summary(const Diary& diary);

/// How much of each part there is room for. Characters are code points.
struct SummaryLimits {
    std::size_t sensors = 12;
    std::size_t lost = 8;
    std::size_t contradictions = 6;
    std::size_t cautions = 6;
    std::size_t events = 60;
    std::size_t answers = 30;
    std::size_t notes = 30;
    std::size_t note_length = 1500; ///< a line break counts as 60
    std::size_t line_length = 240;  ///< of every other line
};

/// The page cut to these limits: nothing goes without being counted. A list says how many lines
/// were left out, a text how many of its characters.
Summary cut(const Summary& whole, const SummaryLimits& limits);

/// "12 more lines stand in diary.json."; empty for none.
std::string more_in_diary(std::size_t left_out);

/// UTC-5, UTC+5:30.
std::string utc_offset_text(std::chrono::seconds offset);

/// Reported or derived, as the files say it; empty for neither.
std::string_view origin_text(const std::optional<Origin>& origin);

/// What summary.pdf carries among its key words: the diary.json it was made from.
std::string summary_key_words(std::string_view diary_sha256);

/// The line of a summary.pdf that names the libraries and fonts it was made with; empty for none.
std::string_view summary_producer(std::string_view pdf);

/// What is wrong with the bytes of a summary.pdf beside this diary.json, as far as it can be said
/// without drawing it again: its form, its end, and the sum it carries.
Problems check_summary(std::string_view pdf, std::string_view diary_json);

} // namespace evenfall
