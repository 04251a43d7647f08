// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace evenfall {

/// The whole file. Error (io): missing, unreadable, a folder, or larger than `limit` bytes.
Result<std::string> read_file(const std::filesystem::path& path, std::size_t limit = 64u << 20);

/// The first bytes of a file that may be huge: at most `count` of them, fewer where it is shorter.
/// Error (io): as read_file.
Result<std::string> read_file_start(const std::filesystem::path& path, std::size_t count);

/// Writes a file so that it is there whole or not at all: temporary name, sync, rename, sync of the
/// folder. Mode 0600. Replaces an existing file. Error (io): what failed and why; nothing is left.
Status write_file(const std::filesystem::path& path, std::string_view content);

/// Creates and syncs one new file inside a folder that is itself still temporary. Mode 0600.
Status write_new_file(const std::filesystem::path& path, std::string_view content);

/// Makes the entries of a folder durable.
Status sync_folder(const std::filesystem::path& path);

/// An io problem with the system's reason for `errno_value`. Its code: disk_full, read_only, no_place
/// (the folder or the stick is not there), else io.
Problem io_problem(const std::string& what, const std::filesystem::path& path, int errno_value);

} // namespace evenfall
