// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "command.h"

#include "estimate/estimate_json.h"

#include <algorithm>
#include <ostream>

namespace evenfall::desk {
namespace {

bool contains(const std::vector<std::string>& list, const std::string& one)
{
    return std::find(list.begin(), list.end(), one) != list.end();
}

Problem usage_problem(std::string text)
{
    return {Fault::malformed, "bad_usage", "", std::move(text)};
}

} // namespace

bool Arguments::has(const std::string& flag) const { return contains(flags, flag); }

std::optional<std::string> Arguments::option(const std::string& name) const
{
    for (const auto& [key, value] : options)
        if (key == name)
            return value;
    return std::nullopt;
}

Result<Arguments> take_apart(std::span<const std::string> args,
                             const std::vector<std::string>& flags,
                             const std::vector<std::string>& options)
{
    Arguments out;
    bool only_rest = false;
    for (std::size_t i = 0; i < args.size(); ++i) {
        const std::string& arg = args[i];
        if (only_rest || arg.size() < 2 || arg[0] != '-') {
            out.rest.push_back(arg);
        } else if (arg == "--") {
            only_rest = true;
        } else if (contains(flags, arg)) {
            out.flags.push_back(arg);
        } else if (!contains(options, arg)) {
            return usage_problem("unknown option " + arg);
        } else if (out.option(arg)) {
            return usage_problem(arg + " is given twice");
        } else if (i + 1 == args.size() || args[i + 1].empty()) {
            return usage_problem(arg + " needs a value");
        } else {
            out.options.emplace_back(arg, args[++i]);
        }
    }
    return out;
}

std::optional<Arguments> begin_command(std::span<const std::string> args,
                                       std::vector<std::string> flags,
                                       const std::vector<std::string>& options,
                                       const std::string& usage, std::ostream& out,
                                       std::ostream& err, int& status)
{
    flags.push_back("--help");
    Result<Arguments> arguments = take_apart(args, flags, options);
    if (!arguments) {
        status = bad_usage(arguments.problems()[0].text, usage, err);
        return std::nullopt;
    }
    if (arguments->has("--help")) {
        out << usage;
        status = 0;
        return std::nullopt;
    }
    return std::move(*arguments);
}

int report(const std::string& file, const Problems& problems, std::ostream& err)
{
    for (const Problem& problem : problems)
        err << describe(file, problem) << '\n';
    return exit_status(problems);
}

void print_problems(const Problems& problems, std::ostream& out)
{
    // A message may quote bytes of the file that are not UTF-8.
    out << problems_to_json(problems).dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
}

int bad_usage(const std::string& wrong, const std::string& usage, std::ostream& err)
{
    err << "evenfall-desk: " << wrong << '\n' << usage;
    return static_cast<int>(Fault::malformed);
}

} // namespace evenfall::desk
