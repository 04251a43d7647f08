// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "narration/spoken.h"

#include <QStringList>
#include <filesystem>
#include <optional>
#include <vector>

namespace evenfall {

/// Finds recordings: <folder>/<language>/<key>.<wav|ogg|opus>, in the first folder that has one. A text
/// that is the same on every visit may also be called by its text id alone, without the hash. Nothing
/// is read; only whether the files are there is asked.
class Voices {
  public:
    Voices() = default;
    /// The clinic's own folder first.
    explicit Voices(std::vector<std::filesystem::path> folders) : folders_(std::move(folders)) {}

    /// The files of these units in their order. Nothing where one is missing: a page is never read
    /// without its caution.
    std::optional<QStringList> find(const Spoken& units, const QString& language) const;

  private:
    std::optional<std::filesystem::path> find_one(const SpokenUnit& unit, const std::string& language) const;
    std::vector<std::filesystem::path> folders_;
};

} // namespace evenfall
