// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// A recording that EDFlib wrote (it writes EDF+ only), and the diary laid over it, read back by EDFlib.
#include "core/record/diaries.h"
#include "record/align.h"

#include <edflib.h>
#include <fstream>

namespace evenfall {
namespace {

using test::diary_of;
using test::example_night;
using test::slurp;
using test::TemporaryDirectory;

/// Nine hours and 50 minutes by one sample a second and signal, as a recorder might write it.
void write_recording(const std::string& path)
{
    const std::vector<const char*> labels{"Resp chest", "Resp abdomen", "Resp nasal", "SaO2"};
    const int handle = edfopen_file_writeonly(path.c_str(), EDFLIB_FILETYPE_EDFPLUS, static_cast<int>(labels.size()));
    ASSERT_GE(handle, 0);
    edf_set_startdatetime(handle, 2026, 10, 31, 21, 58, 42);
    edf_set_patientcode(handle, "SM-0417");
    edf_set_equipment(handle, "an invented recorder");
    for (int signal = 0; signal < static_cast<int>(labels.size()); ++signal) {
        edf_set_label(handle, signal, labels[static_cast<std::size_t>(signal)]);
        edf_set_samplefrequency(handle, signal, 1);
        edf_set_physical_maximum(handle, signal, 100);
        edf_set_physical_minimum(handle, signal, -100);
        edf_set_digital_maximum(handle, signal, 32767);
        edf_set_digital_minimum(handle, signal, -32768);
    }
    double sample = 1;
    for (int second = 0; second < 9 * 3600 + 50 * 60; ++second)
        for (std::size_t signal = 0; signal < labels.size(); ++signal)
            ASSERT_EQ(edfwrite_physical_samples(handle, &sample), 0);
    ASSERT_EQ(edfclose_file(handle), 0);
}

TEST(AlignEdflib, RecordingAndDiaryFitEachOther)
{
    TemporaryDirectory folder;
    const std::string path = (folder.path() / "R.edf").string();
    ASSERT_NO_FATAL_FAILURE(write_recording(path));
    const Result<EdfHeader> header = read_edf_header(slurp(path), Identifications::as_given);
    ASSERT_TRUE(header.ok()) << header.problems()[0].text;
    const Diary diary = diary_of(example_night());
    const Result<Alignment> found = align(diary, *header);
    ASSERT_TRUE(found.ok()) << found.problems()[0].text;
    EXPECT_EQ(found->offset, std::chrono::seconds(42));
    EXPECT_TRUE(found->warnings.empty()) << found->warnings[0].text;
    EXPECT_EQ(found->sensors[0].signals, std::vector<std::string>{"Resp chest"});
    EXPECT_EQ(found->sensors[4].signals, std::vector<std::string>{"SaO2"});

    const Result<std::string> laid = aligned_edf(diary, *found);
    ASSERT_TRUE(laid.ok()) << laid.problems()[0].text;
    EXPECT_EQ(laid->substr(8, 80), slurp(path).substr(8, 80)) << "patient field, EDF+ 2.3";
    EXPECT_EQ(laid->substr(168, 16), slurp(path).substr(168, 16)) << "start, to the byte";
    const std::string diary_path = (folder.path() / "R_diary.edf").string();
    std::ofstream(diary_path, std::ios::binary) << *laid;
    edf_hdr_struct theirs{};
    ASSERT_EQ(edfopen_file_readonly(diary_path.c_str(), &theirs, EDFLIB_READ_ALL_ANNOTATIONS), 0) << theirs.filetype;
    bool lights_on = false;
    for (int i = 0; i < theirs.annotations_in_file; ++i) {
        edf_annotation_struct annotation{};
        ASSERT_EQ(edf_get_annotation(theirs.handle, i, &annotation), 0);
        // Lights on at 06:30 after the clocks went back: 9 h 32 min after 21:58, in units of 100 ns.
        if (std::string(annotation.annotation) == "Lights on") {
            lights_on = true;
            EXPECT_EQ(annotation.onset, (9 * 3600 + 32 * 60) * 10000000LL);
        }
    }
    EXPECT_TRUE(lights_on);
    edfclose_file(theirs.handle);
}

} // namespace
} // namespace evenfall
