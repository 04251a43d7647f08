// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "print/fonts.h"

#include <cairo-ft.h>
#include <cairo.h>
#include <fontconfig/fontconfig.h>
#include <ft2build.h>
#include FT_FREETYPE_H
#include <hb.h>
#include <pango/pangocairo.h>
#include <pango/pangofc-font.h>
#include <pango/pangofc-fontmap.h>
#include <qpdf/QPDF.hh>
#include <zlib.h>

namespace evenfall::print {
namespace {

constexpr const char* fonts_config = R"(<?xml version="1.0"?>
<fontconfig>
  <dir>/usr/share/fonts</dir>
  <cachedir>/var/cache/fontconfig</cachedir>
  <cachedir prefix="xdg">fontconfig</cachedir>
</fontconfig>
)";

PangoFontMap* load_fonts()
{
    FcConfig* config = FcConfigCreate();
    if (!config)
        return nullptr;
    const auto* text = reinterpret_cast<const FcChar8*>(fonts_config);
    const FcFontSet* set = nullptr;
    if (FcConfigParseAndLoadFromMemory(config, text, FcTrue) && FcConfigBuildFonts(config))
        set = FcConfigGetFonts(config, FcSetSystem);
    if (!set || set->nfont == 0) {
        FcConfigDestroy(config);
        return nullptr;
    }
    PangoFontMap* map = pango_cairo_font_map_new_for_font_type(CAIRO_FONT_TYPE_FT);
    if (map) {
        pango_fc_font_map_set_config(PANGO_FC_FONT_MAP(map), config);
        pango_cairo_font_map_set_resolution(PANGO_CAIRO_FONT_MAP(map), 72); // sizes in points
    }
    FcConfigDestroy(config); // the map keeps its own reference
    return map;
}

std::string freetype_version()
{
    FT_Library library = nullptr;
    if (FT_Init_FreeType(&library) != 0)
        return "unknown";
    FT_Int major = 0, minor = 0, patch = 0;
    FT_Library_Version(library, &major, &minor, &patch);
    FT_Done_FreeType(library);
    return std::to_string(major) + "." + std::to_string(minor) + "." + std::to_string(patch);
}

} // namespace

const char* const families = "Inter, Noto Sans, Noto Sans Arabic, Droid Sans Fallback";

PangoFontMap* system_fonts()
{
    static PangoFontMap* map = load_fonts();
    return map;
}

void add_fonts_of(PangoLayout* layout, std::set<std::string>& fonts)
{
    PangoLayoutIter* at = pango_layout_get_iter(layout);
    do {
        const PangoLayoutRun* run = pango_layout_iter_get_run_readonly(at);
        if (!run || !PANGO_IS_FC_FONT(run->item->analysis.font))
            continue;
        FcPattern* pattern = pango_fc_font_get_pattern(PANGO_FC_FONT(run->item->analysis.font));
        FcChar8* name = nullptr;
        int version = 0;
        if (FcPatternGetString(pattern, FC_FULLNAME, 0, &name) != FcResultMatch &&
            FcPatternGetString(pattern, FC_FAMILY, 0, &name) != FcResultMatch)
            continue;
        FcPatternGetInteger(pattern, FC_FONTVERSION, 0, &version);
        fonts.insert(std::string(reinterpret_cast<const char*>(name)) + " " +
                     std::to_string(version));
    } while (pango_layout_iter_next_run(at));
    pango_layout_iter_free(at);
}

std::string library_versions()
{
    return std::string("cairo ") + cairo_version_string() + ", pango " + pango_version_string() +
           ", HarfBuzz " + hb_version_string() + ", FreeType " + freetype_version() + ", qpdf " +
           QPDF::QPDFVersion() + ", zlib " + zlibVersion();
}

} // namespace evenfall::print
