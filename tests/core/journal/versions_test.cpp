// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Journals of every version that was ever shipped are read whole; one of a later version is left as
// it is.
#include "core/journal/entries.h"
#include "core/journal/told.h"
#include "core/kit/kits.h"

#include <sqlite3.h>

namespace evenfall {
namespace {

namespace fs = std::filesystem;
using test::ScratchFolder;

const fs::path fixtures = fs::path(EVENFALL_SOURCE_DIR) / "tests/data/journal";

/// user_version, read and set past our own code.
int version_of(const fs::path& file, int set = 0)
{
    sqlite3* db = nullptr;
    int version = -1;
    EXPECT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
    if (set != 0) {
        EXPECT_EQ(sqlite3_exec(db, ("PRAGMA user_version=" + std::to_string(set)).c_str(), nullptr,
                               nullptr, nullptr),
                  SQLITE_OK);
    }
    const auto take = [](void* out, int, char** values, char**) {
        *static_cast<int*>(out) = std::atoi(values[0]);
        return 0;
    };
    EXPECT_EQ(sqlite3_exec(db, "PRAGMA user_version", take, &version, nullptr), SQLITE_OK);
    sqlite3_close(db);
    return version;
}

int present_version()
{
    ScratchFolder folder;
    EXPECT_TRUE(open_journal(folder / "journal.db").ok());
    return version_of(folder / "journal.db");
}

TEST(JournalVersions, EachHasAFixture)
{
    const int present = present_version();
    ASSERT_GE(present, 1);
    for (int version = 1; version <= present; ++version) {
        const fs::path file = fixtures / ("v" + std::to_string(version) + ".db");
        ASSERT_TRUE(fs::exists(file)) << "tests/data/journal/README.md says how it is made";
        ScratchFolder folder;
        fs::copy_file(file, folder / "journal.db"); // even reading the version may touch the file
        EXPECT_EQ(version_of(folder / "journal.db"), version);
    }
}

TEST(JournalVersions, AreReadWholeAndGoneOnWith)
{
    for (int version = 1; version <= present_version(); ++version) {
        SCOPED_TRACE(version);
        const std::string name = "v" + std::to_string(version);
        ScratchFolder folder;
        fs::copy_file(fixtures / (name + ".db"), folder / "journal.db");
        const std::vector<Entry> told = test::told_in(fixtures / (name + ".json"));
        ASSERT_GT(told.size(), 20u);
        Result<Opened> opened = open_journal(folder / "journal.db");
        ASSERT_TRUE(opened.ok()) << test::all_told(opened.problems());
        EXPECT_TRUE(opened->set_aside.empty());
        const std::vector<Entry>& entries = opened->journal->entries();
        ASSERT_EQ(entries.size(), told.size());
        EXPECT_EQ(intact_length(entries), told.size());
        for (std::size_t i = 0; i < told.size(); ++i) {
            EXPECT_EQ(entries[i].number, static_cast<std::int64_t>(i) + 1);
            EXPECT_EQ(entries[i].stamp, told[i].stamp) << i;
            EXPECT_EQ(entries[i].kind, told[i].kind) << i;
            EXPECT_EQ(entries[i].subject, told[i].subject) << i;
            EXPECT_EQ(entries[i].value, told[i].value) << i;
        }
        ASSERT_TRUE(opened->journal->append(test::stamp_at(40000), "answer", "later", "1").ok());
        opened.value().journal.reset();
        opened = open_journal(folder / "journal.db");
        ASSERT_TRUE(opened.ok());
        EXPECT_EQ(opened->journal->entries().size(), told.size() + 1);
    }
}

TEST(JournalVersions, LaterOneIsLeftAlone_WithItsLog)
{
    const int later = present_version() + 1;
    for (const int version : {later, later + 8, 1000000}) {
        ScratchFolder folder;
        const fs::path file = folder / "journal.db";
        fs::copy_file(fixtures / "v1.db", file);
        ASSERT_EQ(version_of(file, version), version);
        const std::string before = test::bytes_of(file);
        const Result<Opened> opened = open_journal(file);
        ASSERT_FALSE(opened.ok());
        EXPECT_EQ(opened.problems()[0].code, "newer");
        EXPECT_EQ(test::bytes_of(file), before);
        for (const auto& entry : fs::directory_iterator(folder.path()))
            EXPECT_TRUE(entry.path().filename() == "journal.db" || fs::file_size(entry.path()) == 0)
                << entry.path();
    }
}

} // namespace
} // namespace evenfall
