// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Every field of the header of diary.edf, by its clause in the EDF+ specification (Kemp & Olivan
// 2003, Clin Neurophysiol 114:1755-61) or, where EDF+ leaves it as it was, in EDF (Kemp et al.
// 1992).
#include "core/record/diaries.h"
#include "record/diary_edf.h"

namespace evenfall {
namespace {

TEST(EdfHeaderFields, StandWhereTheSpecificationPutsThem)
{
    const Diary diary = test::full_diary();
    const std::string bytes = diary_edf(diary).value();
    ASSERT_GT(bytes.size(), 512u);
    // EDF: fields left-justified, filled with spaces, in this order
    std::size_t at = 0;
    const auto field = [&](std::size_t width, const std::string& right, const char* name) {
        std::string filled = right;
        filled.resize(width, ' ');
        EXPECT_EQ(bytes.substr(at, width), filled) << name << " at byte " << at;
        at += width;
    };
    field(8, "0", "version (EDF)");
    field(80, "SM-0417 X X X", "patient (EDF+ 2.1.3)");
    field(80, "Startdate 31-OCT-2026 night-1 X Evenfall_diary", "recording (EDF+ 2.1.3)");
    field(8, "31.10.26", "start date (EDF+ 2.1.3)");
    field(8, "21.58.00", "start time, local (EDF+ 2.1.3)");
    field(8, "512", "bytes in header: 256 + 256 for the one signal (EDF)");
    field(44, "EDF+C", "reserved (EDF+ 2.1.1)");
    field(8, "1", "number of data records (EDF+ 3.3)");
    field(8, "0", "duration of a data record (EDF+ 2.1.2)");
    field(4, "1", "number of signals (EDF)");
    field(16, "EDF Annotations", "label (EDF+ 2.2.1)");
    field(80, "", "transducer (EDF)");
    field(8, "", "dimension (EDF)");
    field(8, "-1", "physical minimum, differs from the maximum (EDF+ 2.2.1)");
    field(8, "1", "physical maximum (EDF+ 2.2.1)");
    field(8, "-32768", "digital minimum (EDF+ 2.2.1)");
    field(8, "32767", "digital maximum (EDF+ 2.2.1)");
    field(80, "", "prefiltering (EDF)");
    // EDF: two bytes for each sample; nothing stands behind the last record
    EXPECT_EQ(bytes.size() % 2, 0u);
    field(8, std::to_string((bytes.size() - 512) / 2), "samples in a data record (EDF)");
    field(32, "", "reserved (EDF)");
    EXPECT_EQ(at, 512u);
    // EDF+ 2.1.3: bytes 32 to 126 only
    for (std::size_t i = 0; i < 512; ++i)
        EXPECT_TRUE(bytes[i] >= 32 && bytes[i] <= 126) << "byte " << i;
    // EDF+ 2.2.4: the first list keeps time, with a text where there are no ordinary signals
    EXPECT_EQ(bytes.substr(512, 18), std::string("+0\x14\x14"
                                                 "Diary starts\x14\0",
                                                 18));
}

} // namespace
} // namespace evenfall
