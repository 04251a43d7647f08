// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "fuzz/record_seed.h"

#include "record/edf.h"

void evenfall::fuzz::take(std::string_view bytes)
{
    for (const Identifications how : {Identifications::by_form, Identifications::as_given}) {
        const Result<EdfHeader> header = read_edf_header(bytes, how);
        told(header);
        const Result<EdfFile> file = read_edf(bytes, how);
        told(file);
        law(!file.ok() || header.ok(), "a file without a header");
        if (!file)
            continue;
        for (const Annotation& annotation : file->annotations)
            law(!annotation.duration || *annotation.duration >= Span(0), "a negative duration");
    }
}

std::vector<std::string> evenfall::fuzz::seeds()
{
    std::vector<std::string> out;
    for (const RecordFile& file : record_seed()) {
        if (file.name == "diary.edf")
            out.push_back(file.bytes);
    }
    EdfDiary least;
    least.patient_code = "SM-0417";
    least.start = LocalTime(std::chrono::local_days(std::chrono::year{2026} / 11 / 3).time_since_epoch());
    least.start_text = "Recording starts";
    if (Result<std::string> bytes = write_edf(least))
        out.push_back(*bytes);
    return out;
}
