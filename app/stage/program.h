// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

namespace evenfall {

/// The kiosk program with its options: a window, a tour, or a rehearsal. Returns the exit status of
/// the command line (0 fine, 1 refused, 2 bad usage, 3 a file could not be read or written).
int run_program(int& argc, char** argv);

} // namespace evenfall
