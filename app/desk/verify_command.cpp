// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "command.h"

#include "print/summary_pdf.h"
#include "record/verify.h"

#include <algorithm>
#include <ostream>

namespace evenfall::desk {
namespace {

const std::string usage = "usage: evenfall-desk verify DIR...\n"
                          "  Checks record folders: sums, missing and extra files, formats, and "
                          "that all files tell the same\n"
                          "  night. Changes nothing. One line for each folder that is fine on "
                          "standard output, one for each\n"
                          "  problem on standard error.\n";

} // namespace

int verify_command(std::span<const std::string> args, std::ostream& out, std::ostream& err)
{
    int status = 0;
    const std::optional<Arguments> arguments =
        begin_command(args, {}, {}, usage, out, err, status);
    if (!arguments)
        return status;
    if (arguments->rest.empty())
        return bad_usage("verify needs at least one record folder", usage, err);
    for (const std::string& folder : arguments->rest) {
        const Verification found = verify_record(folder, print::summary_pdf);
        for (const RecordProblem& each : found.problems)
            err << describe(each.file.empty() ? folder : folder + "/" + each.file, each.problem)
                << '\n';
        if (found.problems.empty())
            out << folder << ": fine\n";
        status = std::max(status, found.exit_status());
    }
    return status;
}

} // namespace evenfall::desk
