// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"

#include <string>

namespace evenfall::desk {

/// A folder that a command writes into: made where it is missing, and removed again if nothing came
/// into it. Its parent must exist.
class OutFolder {
  public:
    explicit OutFolder(std::string path) : path_(std::move(path)) {}
    ~OutFolder();
    OutFolder(const OutFolder&) = delete;
    OutFolder& operator=(const OutFolder&) = delete;

    Status make();

  private:
    std::string path_;
    bool made_ = false;
};

} // namespace evenfall::desk
