// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <filesystem>

namespace evenfall::test {

/// What the child does: appends to the journal until it is killed. After each append has returned, its
/// number within this run goes to `acknowledge` as four bytes. Now and then the journal is closed and
/// opened again, so that a kill can hit that too. Ends by itself only on a fault, with exit status 3 (it
/// could not be opened), 4 (it was found damaged), 5 (an append failed), 6 (nobody reads any more).
[[noreturn]] void journal_until_killed(const std::filesystem::path& file, int number_of_run, int acknowledge);

} // namespace evenfall::test
