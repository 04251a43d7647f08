// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/diary_edf.h"

#include "record/events.h"

namespace evenfall {

Result<EdfDiary> diary_annotations(const Diary& diary, Instant zero)
{
    EdfDiary file;
    file.patient_code = diary.of.code;
    file.admin_code = "night-" + std::to_string(diary.of.night);
    file.equipment = "Evenfall_diary";
    file.start_text = "Diary starts";
    Problems problems;
    for (const DiaryEvent& event : all_events(diary)) {
        const std::optional<std::string_view> text = event_text(event.kind);
        if (!text) {
            problems.push_back({Fault::refused, "unknown_kind", "/events",
                                "\"" + event.kind + "\" is not a kind of event"});
            continue;
        }
        // Elapsed time: a clock change in the night moves no annotation (2.2.2).
        Annotation annotation;
        annotation.onset = event.at.earliest - zero;
        annotation.text = *text;
        if (!event.subject.empty())
            annotation.text += ": " + event.subject;
        if (event.at.exact()) {
            annotation.duration = event.length;
        } else {
            annotation.duration = event.at.width();
            annotation.text = "Time uncertain: " + annotation.text;
        }
        file.annotations.push_back(annotation);
        // Where the duration is taken by the range, how long it lasted stands in words.
        if (!event.at.exact() && event.length) {
            annotation.text = "Lasted " + minutes_json(*event.length).dump() + " min";
            file.annotations.push_back(annotation);
        }
        if (!event.comment.empty()) {
            annotation.text = event.comment;
            file.annotations.push_back(annotation);
        }
    }
    if (!problems.empty())
        return problems;
    return file;
}

Result<std::string> diary_edf(const Diary& diary)
{
    const Result<DiaryStart> start = diary_start(diary);
    if (!start)
        return start.problems();
    Result<EdfDiary> file = diary_annotations(diary, start->at);
    if (!file)
        return file.problems();
    file->start = LocalTime{start->at.time_since_epoch() + start->offset};
    return write_edf(*file);
}

} // namespace evenfall
