// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// What each fuzz target gives: one function that takes any bytes, and good files to begin from. With
// libFuzzer the function is its entry; without, replay.cpp changes the good files by itself.
#pragma once

#include "base/file.h"

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall::fuzz {

/// Must not crash, and must keep the target's laws (law() below).
void take(std::string_view bytes);

/// Files that are read without a fault, or with one fault of each sort.
std::vector<std::string> seeds();

/// A law that must hold whatever came in.
inline void law(bool holds, const char* what)
{
    if (holds)
        return;
    std::fprintf(stderr, "broken: %s\n", what);
    std::abort();
}

/// Every problem says where and what, in whole sentences for staff.
template <class R>
void told(const R& result)
{
    for (const auto& problem : result.problems())
        law(!problem.code.empty() && !problem.text.empty(), "a problem without code or text");
    law(result.ok() || !result.problems().empty(), "neither a value nor a problem");
}

/// The .json files under a folder of the sources.
inline void add_files(std::vector<std::string>& seeds, const std::string& folder)
{
    for (const auto& entry : std::filesystem::recursive_directory_iterator(EVENFALL_SOURCE_DIR "/" + folder)) {
        if (entry.path().extension() != ".json")
            continue;
        if (Result<std::string> bytes = read_file(entry.path()))
            seeds.push_back(std::move(bytes.value()));
    }
}

} // namespace evenfall::fuzz
