// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "base/result.h"

#include <algorithm>

namespace evenfall {

int exit_status(const Problems& problems)
{
    int status = 0;
    for (const Problem& problem : problems)
        status = std::max(status, static_cast<int>(problem.fault));
    return status;
}

std::string describe(const std::string& file, const Problem& problem)
{
    // The whole document is "/" in messages: an empty place between two colons reads as a slip.
    return file + ": " + (problem.at.empty() ? "/" : problem.at) + ": " + problem.text;
}

} // namespace evenfall
