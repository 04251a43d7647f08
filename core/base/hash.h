// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <string>
#include <string_view>

namespace evenfall {

/// SHA-256 (FIPS 180-4) as 64 lower-case hexadecimal digits.
std::string sha256_hex(std::string_view bytes);

} // namespace evenfall
