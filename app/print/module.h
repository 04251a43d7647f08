// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "print/preview.h"
#include "print/queue.h"
#include "print/sheet_html.h"
#include "print/sheet_pdf.h"
#include "print/summary_pdf.h"

namespace evenfall::print {

/// What the print module (libevenfall_print.so) can do. Programs that print all the time link
/// evenfall_print and its like; the kiosk links evenfall_print_late, whose functions have the same
/// names and load the module, with cairo, pango, librsvg, qpdf, poppler and CUPS, at the first
/// call. Module and program are built together: there is no promise between versions.
struct Module {
    decltype(&print::summary_pdf) summary_pdf;
    decltype(&print::sheet_pdf) sheet_pdf;
    decltype(&print::sheet_html) sheet_html;
    decltype(&print::page_count) page_count;
    decltype(&print::page_picture) page_picture;
    decltype(&print::printers) printers;
    decltype(&print::print_pdf) print_pdf;
    decltype(&print::job_state) job_state;
};

/// The one symbol of the module that is looked for.
inline constexpr const char* module_symbol = "evenfall_print_module";

} // namespace evenfall::print

extern "C" const evenfall::print::Module evenfall_print_module;
