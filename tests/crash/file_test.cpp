// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Calls that are interrupted by a signal are made again; calls that fail are told. The linker puts
// the functions below in front of the system's own (--wrap).
#include "base/file.h"
#include "core/kit/kits.h"

#include <cerrno>
#include <unistd.h>

namespace {

struct {
    bool on = false;
    long calls = 0, nth = 0;
    int error = 0;
} calls;

bool fails()
{
    if (!calls.on || ++calls.calls != calls.nth)
        return false;
    errno = calls.error;
    return true;
}

} // namespace

extern "C" {
ssize_t __real_read(int fd, void* bytes, size_t size);
ssize_t __real_write(int fd, const void* bytes, size_t size);
int __real_fsync(int fd);
ssize_t __wrap_read(int fd, void* bytes, size_t size)
{
    return fails() ? -1 : __real_read(fd, bytes, size);
}
ssize_t __wrap_write(int fd, const void* bytes, size_t size)
{
    return fails() ? -1 : __real_write(fd, bytes, size);
}
int __wrap_fsync(int fd)
{
    return fails() ? -1 : __real_fsync(fd);
}
}

namespace evenfall {
namespace {

using test::ScratchFolder;

class FileFault : public testing::Test {
  protected:
    void SetUp() override { calls = {}; }
    void TearDown() override { calls = {}; }

    ScratchFolder folder;
    const std::string content = std::string(200000, 'x');

    /// Runs it with the nth call failing; whether that call was reached.
    template <class Run>
    bool with(long nth, int error, Run run)
    {
        calls = {true, 0, nth, error};
        run();
        const bool reached = calls.calls >= nth;
        calls = {};
        return reached;
    }
};

TEST_F(FileFault, IsGoneOnWith_WhenASignalInterruptsAReadOrAWrite)
{
    EXPECT_TRUE(with(1, EINTR, [&] { EXPECT_TRUE(write_file(folder / "one", content).ok()); }));
    EXPECT_EQ(test::bytes_of(folder / "one"), content);
    for (long nth = 1; nth <= 4; ++nth)
        EXPECT_TRUE(with(nth, EINTR, [&] { EXPECT_EQ(*read_file(folder / "one"), content); }))
            << nth;
    EXPECT_TRUE(
        with(1, EINTR, [&] { EXPECT_EQ(*read_file_start(folder / "one", 10), "xxxxxxxxxx"); }));
}

TEST_F(FileFault, IsTold_WhenAReadFails)
{
    ASSERT_TRUE(write_file(folder / "one", content).ok());
    for (long nth = 1; nth <= 4; ++nth)
        EXPECT_TRUE(with(nth, EIO, [&] {
            EXPECT_EQ(read_file(folder / "one").problems()[0].code, "io");
        })) << nth;
    EXPECT_TRUE(with(
        1, EIO, [&] { EXPECT_EQ(read_file_start(folder / "one", 10).problems()[0].code, "io"); }));
}

TEST_F(FileFault, IsTold_WhenAFolderCannotBeSynced)
{
    EXPECT_TRUE(
        with(1, EIO, [&] { EXPECT_EQ(sync_folder(folder.path()).problems()[0].code, "io"); }));
}

} // namespace
} // namespace evenfall
