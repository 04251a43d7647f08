// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "out_folder.h"

#include "base/file.h"

#include <cerrno>
#include <sys/stat.h>
#include <unistd.h>

namespace evenfall::desk {

OutFolder::~OutFolder()
{
    if (made_)
        ::rmdir(path_.c_str()); // only an empty one goes
}

Status OutFolder::make()
{
    made_ = ::mkdir(path_.c_str(), 0700) == 0;
    if (!made_ && errno != EEXIST)
        return io_problem("cannot create", path_, errno);
    return Done{};
}

} // namespace evenfall::desk
