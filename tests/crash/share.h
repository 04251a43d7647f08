// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <algorithm>
#include <cstdlib>

namespace evenfall::test {

/// How often something is to be done in this run: the whole count, or one of EVENFALL_SHARE parts of
/// it (tests/sanitized sets 20, for instrumented code is slow). Never less than one.
inline int times(int count)
{
    const char* text = std::getenv("EVENFALL_SHARE");
    const int share = text ? std::atoi(text) : 1;
    return std::max(1, count / std::max(1, share));
}

} // namespace evenfall::test
