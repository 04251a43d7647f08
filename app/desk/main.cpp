// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "command.h"

#include <QCoreApplication>
#include <array>
#include <iostream>

namespace {

using namespace evenfall::desk;

struct Entry {
    const char* name;
    Command run;
    const char* summary;
};

// A new command is one file, one declaration in command.h, and one line here.
constexpr std::array commands{
    Entry{"kit", kit_command, "checks a kit file"},
    Entry{"plan", plan_command, "the steps of the evening, with their times"},
    Entry{"estimate", estimate_command, "minutes likely usable, from a night report"},
    Entry{"record", record_command, "writes the record folder of a night"},
    Entry{"verify", verify_command, "checks record folders"},
    Entry{"align", align_command, "lays a diary over a recording"},
    Entry{"sheet", sheet_command, "the printed sheet that goes home with the kit"},
    Entry{"voice", voice_command, "what the pages read aloud: the list, and spoken files"},
    Entry{"gather", gather_command, "one line for each record, as CSV"},
};

void help(std::ostream& out)
{
    out << "usage: evenfall-desk COMMAND ...\n\ncommands (evenfall-desk COMMAND --help tells more):\n";
    for (const Entry& entry : commands)
        out << "  " << entry.name << std::string(12 - std::string(entry.name).size(), ' ')
            << entry.summary << '\n';
    out << "\nexit status: 0 fine; 1 refused; 2 bad usage or not in the format; 3 a file could not be\n"
           "read or written. It works from what people wrote down; the recording and the clinic decide.\n";
}

} // namespace

int main(int argc, char** argv)
{
    const std::vector<std::string> args(argv + std::min(argc, 1), argv + argc);
    if (args.empty() || args[0] == "--help" || args[0] == "-h") {
        help(args.empty() ? std::cerr : std::cout);
        return args.empty() ? 2 : 0;
    }
    for (const Entry& entry : commands) {
        if (args[0] != entry.name)
            continue;
        const QCoreApplication application(argc, argv); // translations hang on it
        const int status = entry.run(std::span(args).subspan(1), std::cout, std::cerr);
        std::cout.flush();
        if (!std::cout) {
            std::cerr << "evenfall-desk: cannot write to standard output\n";
            return 3;
        }
        return status;
    }
    std::cerr << "evenfall-desk: there is no command \"" << args[0] << "\"\n";
    help(std::cerr);
    return 2;
}
