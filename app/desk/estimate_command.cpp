// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "command.h"

#include "answers/night.h"
#include "base/file.h"
#include "estimate/contradictions.h"
#include "estimate/estimate.h"
#include "estimate/estimate_json.h"
#include "estimate/explain.h"

#include <ostream>

namespace evenfall::desk {
namespace {

const std::string usage =
    "usage: evenfall-desk estimate NIGHT.json [--explain]\n"
    "  The estimate of the night (format evenfall.estimate/1) on standard output; with --explain,\n"
    "  line by line in plain English instead. A night that cannot be read or contradicts itself\n"
    "  gives {\"problems\": [...]} there, and one line for each problem on standard error.\n";

} // namespace

int estimate_command(std::span<const std::string> args, std::ostream& out, std::ostream& err)
{
    int status = 0;
    const std::optional<Arguments> arguments =
        begin_command(args, {"--explain"}, {}, usage, out, err, status);
    if (!arguments)
        return status;
    if (arguments->rest.size() != 1)
        return bad_usage("estimate takes exactly one night report", usage, err);
    const std::string& file = arguments->rest[0];
    const Result<std::string> text = read_file(file);
    if (!text)
        return report(file, text.problems(), err);
    const Result<Night> night = read_night(*text);
    const Problems problems = night ? contradictions(*night) : night.problems();
    if (!problems.empty()) {
        print_problems(problems, out);
        return report(file, problems, err);
    }
    const Estimate result = estimate(*night);
    if (arguments->has("--explain")) {
        for (const std::string& line : explain(*night, result))
            out << line << '\n';
        return 0;
    }
    out << estimate_to_json(result).dump(2) << '\n';
    return 0;
}

} // namespace evenfall::desk
