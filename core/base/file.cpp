// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "base/file.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace evenfall {
namespace {

/// Closes what it holds. Closing is not checked here: durability comes from fsync before it.
class Descriptor {
  public:
    explicit Descriptor(int fd) : fd_(fd) {}
    ~Descriptor()
    {
        if (fd_ >= 0)
            ::close(fd_);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    int get() const { return fd_; }
    bool open() const { return fd_ >= 0; }

  private:
    int fd_;
};

/// What a person can do about it.
const char* io_code(int errno_value)
{
    switch (errno_value) {
    case ENOSPC:
    case EDQUOT: return "disk_full";
    case EROFS:
    case EACCES:
    case EPERM: return "read_only";
    case ENOENT:
    case ENOTDIR:
    case ENODEV:
    case ENXIO: return "no_place";
    default: return "io";
    }
}

} // namespace

Problem io_problem(const std::string& what, const std::filesystem::path& path, int errno_value)
{
    return {Fault::io, io_code(errno_value), "", what + " " + path.string() + ": " + std::strerror(errno_value)};
}

Result<std::string> read_file(const std::filesystem::path& path, std::size_t limit)
{
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (!file.open())
        return io_problem("cannot open", path, errno);
    std::string content;
    std::string block(1 << 16, '\0');
    for (;;) {
        const ssize_t got = ::read(file.get(), block.data(), block.size());
        if (got < 0 && errno == EINTR)
            continue;
        if (got < 0)
            return io_problem("cannot read", path, errno);
        if (got == 0)
            return content;
        content.append(block, 0, static_cast<size_t>(got));
        if (content.size() > limit)
            return io_problem("will not read", path, EFBIG);
    }
}

Result<std::string> read_file_start(const std::filesystem::path& path, std::size_t count)
{
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (!file.open())
        return io_problem("cannot open", path, errno);
    std::string content(count, '\0');
    std::size_t have = 0;
    while (have < count) {
        const ssize_t got = ::read(file.get(), content.data() + have, count - have);
        if (got < 0 && errno == EINTR)
            continue;
        if (got < 0)
            return io_problem("cannot read", path, errno);
        if (got == 0)
            break;
        have += static_cast<std::size_t>(got);
    }
    content.resize(have);
    return content;
}

Status write_new_file(const std::filesystem::path& path, std::string_view content)
{
    const Descriptor file(::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600));
    if (!file.open())
        return io_problem("cannot create", path, errno);
    while (!content.empty()) {
        const ssize_t put = ::write(file.get(), content.data(), content.size());
        if (put < 0 && errno == EINTR)
            continue;
        if (put < 0)
            return io_problem("cannot write", path, errno);
        content.remove_prefix(static_cast<size_t>(put));
    }
    if (::fsync(file.get()) != 0)
        return io_problem("cannot sync", path, errno);
    return Done{};
}

Status sync_folder(const std::filesystem::path& path)
{
    const Descriptor folder(::open(path.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (!folder.open())
        return io_problem("cannot open", path, errno);
    if (::fsync(folder.get()) != 0)
        return io_problem("cannot sync", path, errno);
    return Done{};
}

Status write_file(const std::filesystem::path& path, std::string_view content)
{
    const std::filesystem::path folder = path.has_parent_path() ? path.parent_path() : ".";
    const std::filesystem::path temporary =
        folder / ("." + path.filename().string() + "." + std::to_string(::getpid()) + ".part");
    ::unlink(temporary.c_str()); // left by a run that was killed under the same process number
    Status written = write_new_file(temporary, content);
    if (!written) {
        ::unlink(temporary.c_str());
        return written;
    }
    if (::rename(temporary.c_str(), path.c_str()) != 0) {
        const Problem problem = io_problem("cannot rename to", path, errno);
        ::unlink(temporary.c_str());
        return problem;
    }
    return sync_folder(folder);
}

} // namespace evenfall
