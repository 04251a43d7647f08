// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "command.h"
#include "out_folder.h"

#include "base/file.h"
#include "estimate/contradictions.h"
#include "print/summary_pdf.h"
#include "record/folder.h"
#include "record/summary.h"

#include <ostream>

namespace evenfall::desk {
namespace {

const std::string usage = "usage: evenfall-desk record NIGHT.json --out DIR\n"
                          "       evenfall-desk record --from diary.json --out DIR\n"
                          "  Writes the record folder <code>_night-<n>_<yyyy-mm-dd> into DIR, from "
                          "a night report or again\n"
                          "  from a record's own diary.json, and prints its path. DIR is made when "
                          "only it is missing. A\n"
                          "  record that exists already is refused.\n";

Result<Diary> diary_of(const std::string& text, bool from_diary)
{
    if (from_diary)
        return read_diary(text);
    const Result<Night> night = read_night(text);
    if (!night)
        return night.problems();
    if (Problems problems = contradictions(*night); !problems.empty())
        return problems;
    return diary_from_night(*night);
}

} // namespace

int record_command(std::span<const std::string> args, std::ostream& out, std::ostream& err)
{
    int status = 0;
    const std::optional<Arguments> arguments =
        begin_command(args, {}, {"--out", "--from"}, usage, out, err, status);
    if (!arguments)
        return status;
    const std::optional<std::string> from = arguments->option("--from");
    const std::optional<std::string> folder = arguments->option("--out");
    if (!folder)
        return bad_usage("record needs --out DIR", usage, err);
    if (arguments->rest.size() + (from ? 1 : 0) != 1)
        return bad_usage("record takes one night report, or --from and one diary.json", usage, err);
    const std::string file = from ? *from : arguments->rest[0];

    const Result<std::string> text = read_file(file);
    if (!text)
        return report(file, text.problems(), err);
    const Result<Diary> diary = diary_of(*text, from.has_value());
    if (!diary) {
        if (!from)
            print_problems(diary.problems(), out);
        return report(file, diary.problems(), err);
    }
    const Result<std::string> summary = print::summary_pdf(*diary);
    if (!summary)
        return report(file, summary.problems(), err);
    OutFolder parent(*folder);
    if (const Status made = parent.make(); !made)
        return report(*folder, made.problems(), err);
    const Result<std::filesystem::path> written = 
        write_record(*diary, *folder, {{summary_name, *summary}});
    if (!written)
        return report(*folder, written.problems(), err);
    out << written->string() << '\n';
    return 0;
}

} // namespace evenfall::desk
