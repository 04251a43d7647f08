// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "base/file.h"

#include "base/hash.h"
#include "core/kit/kits.h"

#include <cerrno>
#include <csignal>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace evenfall {
namespace {

using test::bytes_of;
using test::ScratchFolder;

size_t files_in(const std::filesystem::path& folder)
{
    return static_cast<size_t>(std::distance(std::filesystem::directory_iterator(folder), {}));
}

TEST(File, GivesBackWhatWasWritten)
{
    ScratchFolder folder;
    std::string content("a\0b\r\n\xff", 6);
    content.append(200000, 'x');
    ASSERT_TRUE(write_file(folder / "one", content).ok());
    const Result<std::string> read = read_file(folder / "one");
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(*read, content);
    EXPECT_EQ(files_in(folder.path()), 1u) << "no temporary file is left";
}

TEST(File, IsForItsOwnerOnly)
{
    ScratchFolder folder;
    const mode_t before = ::umask(0);
    ASSERT_TRUE(write_file(folder / "one", "x").ok());
    ASSERT_TRUE(write_new_file(folder / "two", "x").ok());
    ::umask(before);
    for (const char* name : {"one", "two"}) {
        struct stat status {};
        ASSERT_EQ(::stat((folder / name).c_str(), &status), 0);
        EXPECT_EQ(status.st_mode & 0777u, 0600u) << name;
    }
}

TEST(File, ReplacesTheOldOneWhole)
{
    ScratchFolder folder;
    ASSERT_TRUE(write_file(folder / "one", "a longer text").ok());
    ASSERT_TRUE(write_file(folder / "one", "short").ok());
    EXPECT_EQ(bytes_of(folder / "one"), "short");
}

TEST(File, IsNotReplaced_WhenItMustBeNew)
{
    ScratchFolder folder;
    ASSERT_TRUE(write_new_file(folder / "one", "first").ok());
    const Status again = write_new_file(folder / "one", "second");
    ASSERT_FALSE(again.ok());
    EXPECT_EQ(again.problems()[0].fault, Fault::io);
    EXPECT_EQ(bytes_of(folder / "one"), "first");
}

TEST(File, CannotBeRead_WhenItIsMissingAFolderOrTooLarge)
{
    ScratchFolder folder;
    for (const auto& path : {folder / "nothing", folder.path()}) {
        const Result<std::string> read = read_file(path);
        ASSERT_FALSE(read.ok()) << path;
        EXPECT_EQ(exit_status(read.problems()), 3) << path;
        EXPECT_NE(read.problems()[0].text.find(path.string()), std::string::npos) << read.problems()[0].text;
    }
    ASSERT_TRUE(write_file(folder / "ten", "0123456789").ok());
    EXPECT_TRUE(read_file(folder / "ten", 10).ok());
    EXPECT_FALSE(read_file(folder / "ten", 9).ok());
}

TEST(File, LeavesNothing_WhenItCannotBeWritten)
{
    ScratchFolder folder;
    EXPECT_FALSE(write_file(folder / "nowhere/one", "x").ok());
    std::ofstream(folder / "a_file") << "x";
    EXPECT_FALSE(write_file(folder / "a_file/one", "x").ok());
    std::filesystem::create_directory(folder / "taken");
    std::ofstream(folder / "taken/by") << "x";
    EXPECT_FALSE(write_file(folder / "taken", "x").ok()) << "a folder stands there";
    EXPECT_EQ(files_in(folder.path()), 2u);
}

TEST(File, KeepsTheOldOne_WhenTheDeviceTakesNoMore)
{
    // A limit on the size of files stands for a full device.
    ScratchFolder folder;
    ASSERT_TRUE(write_file(folder / "one", "old").ok());
    const pid_t child = ::fork();
    if (child == 0) {
        std::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{1000, 1000};
        ::setrlimit(RLIMIT_FSIZE, &limit);
        ::_exit(write_file(folder / "one", std::string(5000, 'n')).ok() ? 1 : 0);
    }
    int status = -1;
    ::waitpid(child, &status, 0);
    EXPECT_EQ(status, 0);
    EXPECT_EQ(bytes_of(folder / "one"), "old");
    EXPECT_EQ(files_in(folder.path()), 1u);
}

TEST(File, GivesItsFirstBytes)
{
    ScratchFolder folder;
    ASSERT_TRUE(write_file(folder / "ten", "0123456789").ok());
    EXPECT_EQ(*read_file_start(folder / "ten", 4), "0123");
    EXPECT_EQ(*read_file_start(folder / "ten", 40), "0123456789");
    EXPECT_EQ(read_file_start(folder / "nothing", 4).problems()[0].code, "no_place");
    EXPECT_EQ(read_file_start(folder.path(), 4).problems()[0].code, "io") << "a folder";
}

TEST(File, LiesWhereTheProgramIs_WhenItsPathNamesNoFolder)
{
    ScratchFolder folder;
    const pid_t child = ::fork();
    if (child == 0)
        ::_exit(::chdir(folder.path().c_str()) == 0 && write_file("one", "x").ok() ? 0 : 1);
    int status = -1;
    ::waitpid(child, &status, 0);
    EXPECT_EQ(status, 0);
    EXPECT_EQ(bytes_of(folder / "one"), "x");
}

TEST(IoProblem, SaysWhatCanBeDone)
{
    const auto code = [](int error) { return io_problem("cannot write", "/some/file", error).code; };
    for (const int error : {ENOSPC, EDQUOT})
        EXPECT_EQ(code(error), "disk_full");
    for (const int error : {EROFS, EACCES, EPERM})
        EXPECT_EQ(code(error), "read_only");
    for (const int error : {ENOENT, ENOTDIR, ENODEV, ENXIO})
        EXPECT_EQ(code(error), "no_place");
    EXPECT_EQ(code(EIO), "io");
}

TEST(Folder, CannotBeSynced_WhenItIsNone)
{
    ScratchFolder folder;
    EXPECT_TRUE(sync_folder(folder.path()).ok());
    EXPECT_FALSE(sync_folder(folder / "nothing").ok());
    std::ofstream(folder / "a_file") << "x";
    EXPECT_FALSE(sync_folder(folder / "a_file").ok());
}

TEST(Sha256, IsAsPublished)
{
    // FIPS 180-2 (2002), appendix B.1 and B.2; the empty message from NIST's SHAVS (from memory).
    EXPECT_EQ(sha256_hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256_hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    EXPECT_EQ(sha256_hex(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

} // namespace
} // namespace evenfall
