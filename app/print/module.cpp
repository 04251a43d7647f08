// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "print/module.h"

namespace print = evenfall::print;

extern "C" const print::Module evenfall_print_module{
    print::summary_pdf,  print::sheet_pdf, print::sheet_html, print::page_count,
    print::page_picture, print::printers,  print::print_pdf,  print::job_state,
};
