// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "palette.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdio>

namespace evenfall::palette {

const std::array<Colours, 30>& table() {
    // clang-format off
    static const std::array<Colours, 30> rows{{
        // role               name             canonical  light      night      print
        {Role::background,    "background",    "#1e1713", "#f6efe4", "#000000", "#ffffff"},
        {Role::panel,         "panel",         "#33291f", "#e8dccb", "#0d0402", "#ededed"},
        {Role::skin,          "skin",          "#c99b78", "#d8a981", "#4d2011", "#d2d2d2"},
        {Role::skin_shade,    "skin_shade",    "#a1754f", "#b07e58", "#34140a", "#9a9a9a"},
        {Role::nail,          "nail",          "#f0d8c4", "#f9e6d6", "#662f1a", "#f6f6f6"},
        {Role::hair,          "hair",          "#6b5240", "#5a4234", "#220c06", "#4a4a4a"},
        {Role::cloth,         "cloth",         "#5b5f72", "#7d8498", "#26100a", "#8e8e8e"},
        {Role::cloth_shade,   "cloth_shade",   "#464959", "#5f6577", "#1a0a06", "#6c6c6c"},
        {Role::cloth_line,    "cloth_line",    "#2f303b", "#4b5061", "#0c0403", "#545454"},
        {Role::part,          "part",          "#efe6d6", "#fffdf8", "#6b3019", "#ffffff"},
        {Role::part_shade,    "part_shade",    "#c4b69e", "#d9cebb", "#4c1f0d", "#cfcfcf"},
        {Role::part_line,     "part_line",     "#2b211a", "#3a2d22", "#120502", "#111111"},
        {Role::mark,          "mark",          "#2b211b", "#2b2119", "#080200", "#101010"},
        {Role::accent,        "accent",        "#f2b35e", "#e08313", "#b04f1f", "#161616"},
        {Role::accent_shade,  "accent_shade",  "#c2873a", "#b5640a", "#7c3411", "#484848"},
        {Role::accent_line,   "accent_line",   "#2a1a07", "#2b1600", "#140500", "#fefefe"},
        {Role::accent_mark,   "accent_mark",   "#2a1a08", "#2b1601", "#100400", "#fdfdfd"},
        {Role::tape,          "tape",          "#f8f1e5", "#fffaf0", "#70361d", "#fefefe"},
        {Role::tape_line,     "tape_line",     "#7d705f", "#7c6c58", "#2c1208", "#2c2c2c"},
        {Role::wood,          "wood",          "#94765c", "#b08b6b", "#2a1109", "#b4b4b4"},
        {Role::wood_shade,    "wood_shade",    "#6f5643", "#8f6e53", "#1c0b06", "#8a8a8a"},
        {Role::bedding,       "bedding",       "#8f867a", "#cfc4b3", "#3a180d", "#dedede"},
        {Role::bedding_shade, "bedding_shade", "#6a6258", "#ada08c", "#2a1109", "#b0b0b0"},
        {Role::ink,           "ink",           "#f3e9da", "#2b211a", "#b04f20", "#121212"},
        {Role::quiet,         "quiet",         "#9a8d7c", "#8a7c68", "#4a2010", "#5a5a5a"},
        {Role::halo,          "halo",          "#8a6534", "#f5cf98", "#4f210c", "#fcfcfc"},
        {Role::wrong,         "wrong",         "#d9643f", "#b3391b", "#8a2b10", "#0e0e0e"},
        {Role::wrong_mark,    "wrong_mark",    "#fff4e8", "#fff4e9", "#1a0500", "#fbfbfb"},
        {Role::dark,          "dark",          "#120d0a", "#2b2018", "#040100", "#202020"},
        {Role::lamp,          "lamp",          "#ffdf9c", "#ffc23d", "#d0652c", "#fafafa"},
    }};
    // clang-format on
    return rows;
}

const Colours* find(std::string_view canonical) {
    const auto& rows = table();
    const auto row = std::find_if(rows.begin(), rows.end(),
                                  [&](const Colours& c) { return c.canonical == canonical; });
    return row == rows.end() ? nullptr : &*row;
}

std::string_view colour(Role role, Tone tone) {
    const Colours& row = table()[static_cast<std::size_t>(role)];
    switch (tone) {
    case Tone::light:
        return row.light;
    case Tone::night:
        return row.night;
    case Tone::print:
        return row.print;
    case Tone::dark:
        break;
    }
    return row.canonical;
}

Role accented(Role role) {
    switch (role) {
    case Role::part:
    case Role::tape:
        return Role::accent;
    case Role::part_shade:
        return Role::accent_shade;
    case Role::part_line:
    case Role::tape_line:
    case Role::dark:
        return Role::accent_line;
    case Role::mark:
        return Role::accent_mark;
    default:
        return role;
    }
}

namespace {
int channel(std::string_view colour, std::size_t at) {
    int value = 0;
    std::from_chars(colour.data() + at, colour.data() + at + 2, value, 16);
    return value;
}
} // namespace

std::string mix(std::string_view under, std::string_view over, double share) {
    share = std::clamp(share, 0.0, 1.0);
    const auto blend = [&](std::size_t at) {
        return static_cast<int>(
            std::lround(channel(under, at) * (1.0 - share) + channel(over, at) * share));
    };
    char text[8];
    std::snprintf(text, sizeof text, "#%02x%02x%02x", blend(1) & 0xff, blend(3) & 0xff,
                  blend(5) & 0xff);
    return text;
}

} // namespace evenfall::palette
