// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The demo kits and visit, for tests. All of it is invented.
#pragma once

#include "base/file.h"
#include "kit/kit.h"
#include "kit/visit.h"

#include <array>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <stdexcept>
#include <string>

namespace evenfall::test {

inline constexpr std::array demo_kits{"marram", "tern", "heron"};

inline std::filesystem::path kit_path(const std::string& id)
{
    return std::filesystem::path(EVENFALL_SOURCE_DIR) / "assets" / "kits" / (id + ".json");
}

inline std::string all_told(const Problems& problems)
{
    std::string out;
    for (const Problem& problem : problems)
        out += describe("file", problem) + " [" + problem.code + "]\n";
    return out;
}

/// One of the demo kits; throws, and so fails the test, when it does not load.
inline Kit demo_kit(const std::string& id)
{
    Result<Kit> kit = load_kit(kit_path(id));
    if (!kit)
        throw std::runtime_error(all_told(kit.problems()));
    return std::move(kit.value());
}

inline VisitWithKit demo_visit()
{
    Result<VisitWithKit> visit = load_visit(std::filesystem::path(EVENFALL_SOURCE_DIR) / "assets" / "visits" / "demo.json", {});
    if (!visit)
        throw std::runtime_error(all_told(visit.problems()));
    return std::move(visit.value());
}

/// A folder of its own that is gone again with the test.
class ScratchFolder {
  public:
    ScratchFolder()
    {
        std::string name = (std::filesystem::temp_directory_path() / "evenfall-test-XXXXXX").string();
        if (!::mkdtemp(name.data()))
            throw std::runtime_error("no temporary folder");
        path_ = name;
    }
    ~ScratchFolder()
    {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    ScratchFolder(const ScratchFolder&) = delete;
    ScratchFolder& operator=(const ScratchFolder&) = delete;
    const std::filesystem::path& path() const { return path_; }
    std::filesystem::path operator/(const std::string& name) const { return path_ / name; }

  private:
    std::filesystem::path path_;
};

/// The program is in that folder for a while.
class InFolder {
  public:
    explicit InFolder(const std::filesystem::path& folder) { std::filesystem::current_path(folder); }
    ~InFolder()
    {
        std::error_code ignored;
        std::filesystem::current_path(before_, ignored);
    }
    InFolder(const InFolder&) = delete;
    InFolder& operator=(const InFolder&) = delete;

  private:
    std::filesystem::path before_ = std::filesystem::current_path();
};

inline std::string bytes_of(const std::filesystem::path& path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

} // namespace evenfall::test
