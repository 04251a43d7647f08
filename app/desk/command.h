// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"

#include <iosfwd>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace evenfall::desk {

/// One command of the front desk's program: its arguments (without its name) in, exit status out.
using Command = int (*)(std::span<const std::string> args, std::ostream& out, std::ostream& err);

int align_command(std::span<const std::string> args, std::ostream& out, std::ostream& err);
int estimate_command(std::span<const std::string> args, std::ostream& out, std::ostream& err);
int gather_command(std::span<const std::string> args, std::ostream& out, std::ostream& err);
int kit_command(std::span<const std::string> args, std::ostream& out, std::ostream& err);
int plan_command(std::span<const std::string> args, std::ostream& out, std::ostream& err);
int record_command(std::span<const std::string> args, std::ostream& out, std::ostream& err);
int sheet_command(std::span<const std::string> args, std::ostream& out, std::ostream& err);
int verify_command(std::span<const std::string> args, std::ostream& out, std::ostream& err);
int voice_command(std::span<const std::string> args, std::ostream& out, std::ostream& err);

/// Arguments taken apart: flags ("--explain"), options with a value ("--out DIR") and the rest.
struct Arguments {
    std::vector<std::string> flags;
    std::vector<std::pair<std::string, std::string>> options;
    std::vector<std::string> rest;

    bool has(const std::string& flag) const;
    std::optional<std::string> option(const std::string& name) const;
};

/// Takes arguments apart by the names that the command knows. Error (malformed): an unknown option,
/// one given twice, or a value that is missing. After "--" everything is rest.
Result<Arguments> take_apart(std::span<const std::string> args,
                             const std::vector<std::string>& flags,
                             const std::vector<std::string>& options);

/// How every command begins: takes the arguments apart and answers --help. Nothing when the command
/// is over by that, with its exit status in `status`.
std::optional<Arguments> begin_command(std::span<const std::string> args,
                                       std::vector<std::string> flags,
                                       const std::vector<std::string>& options,
                                       const std::string& usage, std::ostream& out,
                                       std::ostream& err, int& status);

/// One line for each problem, as `FILE: /pointer: text`. Returns the exit status.
int report(const std::string& file, const Problems& problems, std::ostream& err);

/// {"problems": [...]} for programs.
void print_problems(const Problems& problems, std::ostream& out);

/// Says what is wrong with the call and how it is used. Returns 2.
int bad_usage(const std::string& wrong, const std::string& usage, std::ostream& err);

} // namespace evenfall::desk
