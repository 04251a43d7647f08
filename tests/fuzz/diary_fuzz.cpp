// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "fuzz/record_seed.h"

void evenfall::fuzz::take(std::string_view bytes)
{
    const Result<Json> json = parse_json(bytes);
    told(json);
    if (!json)
        return;
    // As whoever reads thousands of diaries does: all but the dearest figure is worked out again.
    const Result<Diary> diary = diary_from_json(*json, Derived::chance_as_written);
    told(diary);
    if (!diary)
        return;
    const Result<std::string> written = diary_to_json(*diary);
    told(written);
    law(written.ok(), "a diary that was read cannot be written");
    const Result<Diary> again = read_diary(*written);
    law(again.ok(), "a diary that was written cannot be read");
    law(diary_to_json(*again).value() == *written, "a diary changes when it is written and read");
}

std::vector<std::string> evenfall::fuzz::seeds()
{
    std::vector<std::string> out{diary_to_json(diary_seed()).value()};
    Diary least = diary_seed();
    least = diary_from_night(least.night).value();
    out.push_back(diary_to_json(least).value());
    add_files(out, "assets/schemas/examples");
    return out;
}
