// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <pango/pango.h>
#include <set>
#include <string>

namespace evenfall::print {

/// The fonts of the machine, as packages install them. The user's own fonts and font settings are
/// left out: they would make another page of the same night. Null where there are none at all.
/// Lives as long as the program.
PangoFontMap* system_fonts();

/// Families in the order in which letters are looked for.
extern const char* const families;

/// Adds the fonts that a layout really uses, each with its version: "Inter Bold 262144".
void add_fonts_of(PangoLayout* layout, std::set<std::string>& fonts);

/// The libraries that decide the bytes of a page, each with the version that is loaded.
std::string library_versions();

} // namespace evenfall::print
