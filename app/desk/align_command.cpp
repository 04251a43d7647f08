// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "command.h"
#include "out_folder.h"

#include "base/file.h"
#include "record/align.h"

#include <filesystem>
#include <ostream>

namespace evenfall::desk {
namespace {

const std::string usage =
    "usage: evenfall-desk align RECORD --recording R.edf --out DIR\n"
    "  Lays the diary of a record folder over the clinic's recording (EDF or EDF+), by the moment that\n"
    "  both know: the recording began. Prints the offset (recorder's clock minus ours, in seconds, with\n"
    "  its bounds), the recording's signals by sensor, and warnings, as JSON; writes R_diary.edf into\n"
    "  DIR, which plays with the recording. The record and the recording stay as they are.\n";

/// More than the header of any recording: 256 bytes, and 256 for each of at most 4096 signals.
constexpr std::size_t longest_header = 256 * 4097;

Result<Diary> read_record(const std::filesystem::path& folder)
{
    const Result<std::string> text = read_file(folder / "diary.json");
    if (!text)
        return text.problems();
    return read_diary(*text);
}

} // namespace

int align_command(std::span<const std::string> args, std::ostream& out, std::ostream& err)
{
    int status = 0;
    const std::optional<Arguments> arguments =
        begin_command(args, {}, {"--recording", "--out"}, usage, out, err, status);
    if (!arguments)
        return status;
    const std::optional<std::string> recording = arguments->option("--recording");
    const std::optional<std::string> folder = arguments->option("--out");
    if (!recording || !folder || arguments->rest.size() != 1)
        return bad_usage("align takes one record folder, --recording R.edf and --out DIR", usage, err);

    const std::filesystem::path record = arguments->rest[0];
    const Result<Diary> diary = read_record(record);
    if (!diary)
        return report((record / "diary.json").string(), diary.problems(), err);
    const Result<std::string> bytes = read_file_start(*recording, longest_header);
    if (!bytes)
        return report(*recording, bytes.problems(), err);
    const Result<EdfHeader> header = read_edf_header(*bytes, Identifications::as_given);
    if (!header)
        return report(*recording, header.problems(), err);
    const Result<Alignment> found = align(*diary, *header);
    if (!found)
        return report((record / "diary.json").string(), found.problems(), err);
    const Result<std::string> aligned = aligned_edf(*diary, *found);
    if (!aligned)
        return report(*recording, aligned.problems(), err);

    OutFolder parent(*folder);
    if (const Status made = parent.make(); !made)
        return report(*folder, made.problems(), err);
    const std::filesystem::path path = std::filesystem::path(*folder) / (std::filesystem::path(*recording).stem().string() + "_diary.edf");
    std::error_code ignored;
    if (std::filesystem::exists(std::filesystem::symlink_status(path, ignored)))
        return report(path.string(), {{Fault::refused, "exists", "", "exists already; right would be another folder, or to move the old file away"}}, err);
    if (const Status written = write_file(path, *aligned); !written)
        return report(path.string(), written.problems(), err);

    for (const Problem& warning : found->warnings)
        err << *recording << ": warning: " << warning.text << '\n';
    Json json = alignment_json(*diary, *found);
    json["written"] = path.string();
    out << json.dump(2) << '\n';
    return 0;
}

} // namespace evenfall::desk
