// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <algorithm>
#include <cstddef>
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

/// Of what is tried at every place (or every `step`-th): how far it is to the next one in this run.
inline std::size_t stride(std::size_t step = 1)
{
    const char* text = std::getenv("EVENFALL_SHARE");
    return step * static_cast<std::size_t>(std::max(1, text ? std::atoi(text) : 1));
}

} // namespace evenfall::test
