// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// many_records DIR COUNT: writes that many record folders of invented nights, as files only (not
// synced, without summary.pdf), for measuring what reads them.
#include "core/estimate/nights.h"
#include "record/diary.h"
#include "record/folder.h"

#include <cstdlib>
#include <fstream>
#include <iostream>

using namespace evenfall;

int main(int argc, char** argv)
{
    if (argc != 3) {
        std::cerr << "usage: many_records DIR COUNT\n";
        return 2;
    }
    const std::filesystem::path top = argv[1];
    test::RandomNights nights(417);
    for (long number = 1; number <= std::atol(argv[2]); ++number) {
        Night night = nights.night(true);
        night.of = NightOf{"MANY-" + std::to_string(number), 1 + number % 3};
        const Result<Diary> diary = diary_from_night(night);
        const Result<std::vector<RecordFile>> files = diary ? record_files(*diary) : diary.problems();
        const Result<std::string> name = diary ? record_name(*diary) : diary.problems();
        if (!files || !name) {
            std::cerr << describe("night", (files ? name.problems() : files.problems()).front()) << '\n';
            return 1;
        }
        std::filesystem::create_directories(top / *name);
        for (const RecordFile& file : *files)
            std::ofstream(top / *name / file.name, std::ios::binary) << file.bytes;
    }
    return 0;
}
