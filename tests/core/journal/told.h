// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// What a journal was told, from a file beside it.
#pragma once

#include "journal/journal.h"

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <vector>

namespace evenfall::test {

/// Without numbers and hashes, which the journal gives. Throws when the file is not as it should
/// be.
inline std::vector<Entry> told_in(const std::filesystem::path& file)
{
    std::ifstream in(file);
    std::vector<Entry> out;
    for (const nlohmann::json& one : nlohmann::json::parse(in)) {
        Entry entry;
        entry.stamp.utc = Instant(Span(one.at("utc_us").get<std::int64_t>()));
        entry.stamp.offset = std::chrono::seconds(one.at("offset_s").get<std::int64_t>());
        entry.stamp.zone = one.at("zone").get<std::string>();
        entry.stamp.boot = one.at("boot").get<std::string>();
        entry.stamp.since_boot = Span(one.at("since_boot_us").get<std::int64_t>());
        entry.kind = one.at("kind").get<std::string>();
        entry.subject = one.at("subject").get<std::string>();
        entry.value = one.at("value").get<std::string>();
        out.push_back(std::move(entry));
    }
    return out;
}

} // namespace evenfall::test
