// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Bad files as samples: `<code>[-which].json` must give a problem with that code; the file of the same
// name that ends in `.at` holds its pointer and the exit status, one on each line.
#pragma once

#include "core/kit/kits.h"

#include <algorithm>
#include <vector>

namespace evenfall::test {

struct Sample {
    std::filesystem::path file;
    std::string code;
    std::string at;
    int status = 0;
};

inline void PrintTo(const Sample& sample, std::ostream* out) { *out << sample.file.filename(); }

inline std::vector<Sample> invalid_samples(const std::string& kind)
{
    const std::filesystem::path folder = std::filesystem::path(EVENFALL_SOURCE_DIR) / "tests/data" / kind / "invalid";
    std::vector<Sample> out;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.path().extension() != ".json")
            continue;
        const std::string stem = entry.path().stem().string();
        Sample sample{entry.path(), stem.substr(0, stem.find('-')), "", 0};
        std::ifstream expected(std::filesystem::path(entry.path()).replace_extension(".at"));
        if (!std::getline(expected, sample.at) || !(expected >> sample.status))
            throw std::runtime_error("no pointer and status beside " + entry.path().string());
        out.push_back(std::move(sample));
    }
    if (out.empty())
        throw std::runtime_error("no samples in " + folder.string());
    std::sort(out.begin(), out.end(), [](const Sample& a, const Sample& b) { return a.file < b.file; });
    return out;
}

inline std::string sample_name(const testing::TestParamInfo<Sample>& one)
{
    std::string name = one.param.file.stem().string();
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
}

/// The fault of its name, at its place, with its exit status, saying what would be right, and no other.
inline void expect_fault(const Sample& sample, const Problems& problems)
{
    ASSERT_EQ(problems.size(), 1u) << all_told(problems);
    EXPECT_EQ(problems[0].code, sample.code) << all_told(problems);
    EXPECT_EQ(problems[0].at, sample.at) << all_told(problems);
    EXPECT_EQ(exit_status(problems), sample.status) << all_told(problems);
    EXPECT_GT(problems[0].text.size(), 20u) << all_told(problems);
}

} // namespace evenfall::test
