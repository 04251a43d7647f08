// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "stage/program.h"

int main(int argc, char* argv[]) { return evenfall::run_program(argc, argv); }
