// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "journal/journal.h"

#include "core/journal/entries.h"
#include "core/kit/kits.h"

#include <csignal>
#include <functional>
#include <sqlite3.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace evenfall {
namespace {

using test::bytes_of;
using test::ScratchFolder;
using test::stamp_at;

std::unique_ptr<Journal> opened(const std::filesystem::path& file)
{
    Result<Opened> result = open_journal(file);
    if (!result)
        throw std::runtime_error(test::all_told(result.problems()));
    EXPECT_TRUE(result->set_aside.empty()) << "no fault was expected in " << file;
    return std::move(result.value().journal);
}

std::string code_of(const std::filesystem::path& file)
{
    const Result<Opened> result = open_journal(file);
    return result ? "" : result.problems()[0].code;
}

std::string note(int n) { return "note-" + std::to_string(1000 + n); }

/// Appends entries first..last (from 1), each with a word of its own that can be found in the file.
void append(Journal& journal, int first, int last)
{
    for (int n = first; n <= last; ++n) {
        const Result<Entry> entry = journal.append(stamp_at(n), "answer", note(n), "\"" + std::string(200, 'v') + "\"");
        ASSERT_TRUE(entry.ok()) << test::all_told(entry.problems());
    }
}

/// What a journal of the same story in memory holds.
std::vector<Entry> expected(int count)
{
    const std::unique_ptr<Journal> memory = make_memory_journal();
    append(*memory, 1, count);
    return memory->entries();
}

/// Runs something in a process of its own and gives its exit status; -1 when it was killed.
int in_another_process(const std::function<int()>& run)
{
    const pid_t child = ::fork();
    if (child == 0)
        ::_exit(run());
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

/// A second copy of the program. It is forked before the first opens its journal, for locks that SQLite
/// keeps in memory would be copied too, and would hide what the system's own locks do.
class OtherProcess {
  public:
    explicit OtherProcess(const std::filesystem::path& file)
    {
        if (::pipe(go_) != 0 || ::pipe(said_) != 0)
            throw std::runtime_error("no pipe");
        child_ = ::fork();
        if (child_ == 0) {
            char one = 0;
            ssize_t done = ::read(go_[0], &one, 1);
            const std::string code = code_of(file);
            done += ::write(said_[1], code.data(), code.size());
            ::_exit(done >= 0 ? 0 : 1);
        }
        ::close(said_[1]);
    }
    ~OtherProcess()
    {
        for (const int end : {go_[0], go_[1], said_[0]})
            ::close(end);
    }
    OtherProcess(const OtherProcess&) = delete;
    OtherProcess& operator=(const OtherProcess&) = delete;

    /// The code of the problem that it meets when it opens the journal now.
    std::string tries()
    {
        EXPECT_EQ(::write(go_[1], "!", 1), 1);
        int status = -1;
        ::waitpid(child_, &status, 0);
        EXPECT_EQ(status, 0);
        std::array<char, 64> code{};
        const ssize_t size = ::read(said_[0], code.data(), code.size());
        return {code.data(), static_cast<std::size_t>(std::max<ssize_t>(size, 0))};
    }

  private:
    int go_[2] = {-1, -1};
    int said_[2] = {-1, -1};
    pid_t child_ = -1;
};

/// Asks the file directly, past our own code.
std::string pragma(const std::filesystem::path& file, const std::string& sql)
{
    sqlite3* db = nullptr;
    std::string answer;
    EXPECT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
    const auto take = [](void* out, int, char** values, char**) {
        *static_cast<std::string*>(out) = values[0] ? values[0] : "";
        return 0;
    };
    EXPECT_EQ(sqlite3_exec(db, sql.c_str(), take, &answer, nullptr), SQLITE_OK) << sqlite3_errmsg(db);
    sqlite3_close(db);
    return answer;
}

/// A page of 4096 bytes of a table's tree that leads `times` times to one page (SQLite, "Database File
/// Format", 1.6: type, free block, cells, their beginning, fragments, last child; then where each cell is).
std::string page_leading_to(unsigned child, unsigned times)
{
    const auto big = [](unsigned value, int bytes) {
        std::string out;
        for (int shift = 8 * (bytes - 1); shift >= 0; shift -= 8)
            out += static_cast<char>(value >> shift & 0xff);
        return out;
    };
    constexpr unsigned size = 4096, cell = 5;
    std::string page = '\x05' + big(0, 2) + big(times, 2) + big(size - times * cell, 2) + '\0' + big(child, 4);
    for (unsigned n = 1; n <= times; ++n)
        page += big(size - n * cell, 2);
    page.resize(size - times * cell, '\0');
    for (unsigned n = 1; n <= times; ++n)
        page += big(child, 4) + '\x01';
    return page;
}

void overwrite(const std::filesystem::path& file, std::size_t at, const std::string& bytes)
{
    std::fstream stream(file, std::ios::binary | std::ios::in | std::ios::out);
    stream.seekp(static_cast<std::streamoff>(at));
    stream << bytes;
    ASSERT_TRUE(stream.good());
}

// What every journal keeps, in memory or on disk.

enum class Where { memory, disk };

class JournalContract : public testing::TestWithParam<Where> {
  protected:
    ScratchFolder folder;
    std::unique_ptr<Journal> journal = GetParam() == Where::memory ? make_memory_journal() : opened(folder / "journal.db");
};

TEST_P(JournalContract, IsEmptyAtFirst) { EXPECT_TRUE(journal->entries().empty()); }

TEST_P(JournalContract, GivesBackWhatWasAppended)
{
    const Result<Entry> entry = journal->append(stamp_at(1.25), "off", "finger", R"({"a":1})");
    ASSERT_TRUE(entry.ok());
    EXPECT_EQ(entry->number, 1);
    EXPECT_EQ(entry->stamp, stamp_at(1.25));
    EXPECT_EQ(entry->kind, "off");
    EXPECT_EQ(entry->subject, "finger");
    EXPECT_EQ(entry->value, R"({"a":1})");
    ASSERT_EQ(journal->entries().size(), 1u);
    EXPECT_EQ(journal->entries()[0], *entry);
}

TEST_P(JournalContract, NumbersWithoutAGapAndChains)
{
    append(*journal, 1, 20);
    ASSERT_EQ(journal->entries().size(), 20u);
    std::string before;
    for (size_t i = 0; i < 20; ++i) {
        const Entry& entry = journal->entries()[i];
        EXPECT_EQ(entry.number, static_cast<std::int64_t>(i) + 1);
        EXPECT_EQ(entry.hash, chain_hash(before, entry));
        before = entry.hash;
    }
    EXPECT_EQ(intact_length(journal->entries()), 20u);
    EXPECT_EQ(journal->entries(), expected(20)) << "the same story makes the same journal everywhere";
}

TEST_P(JournalContract, KeepsTextAsItIs_WhateverTheScriptAndTheBytes)
{
    const std::string value = "\"طقم \\u0000 ñ 夜 '; DROP TABLE entry; --\"" + std::string(1, '\0') + "after";
    ASSERT_TRUE(journal->append(stamp_at(1), "answer", "comment", value).ok());
    ASSERT_TRUE(journal->append(stamp_at(2), "", "", "").ok());
    EXPECT_EQ(journal->entries()[0].value, value);
    EXPECT_EQ(journal->entries()[1].kind, "");
}

TEST_P(JournalContract, TakesAnyOrderOfTimes)
{
    ASSERT_TRUE(journal->append(stamp_at(100), "a", "", "").ok());
    ASSERT_TRUE(journal->append(stamp_at(-5000, "boot-0"), "b", "", "").ok());
    EXPECT_EQ(journal->entries()[1].stamp, stamp_at(-5000, "boot-0"));
}

INSTANTIATE_TEST_SUITE_P(Both, JournalContract, testing::Values(Where::memory, Where::disk),
                         [](const auto& one) { return one.param == Where::memory ? "memory" : "disk"; });

// The chain.

TEST(JournalChain, BreaksAtTheEntryThatWasChanged)
{
    const std::vector<Entry> sound = expected(10);
    ASSERT_EQ(intact_length(sound), 10u);
    const std::vector<std::function<void(Entry&)>> changes{
        [](Entry& e) { e.number += 1; },      [](Entry& e) { e.stamp.utc += Span(1); },
        [](Entry& e) { e.stamp.offset += std::chrono::seconds(1); }, [](Entry& e) { e.stamp.zone += "x"; },
        [](Entry& e) { e.stamp.boot += "x"; }, [](Entry& e) { e.stamp.since_boot += Span(1); },
        [](Entry& e) { e.kind += "x"; },      [](Entry& e) { e.subject += "x"; },
        [](Entry& e) { e.value += "x"; },     [](Entry& e) { e.hash[0] = e.hash[0] == '0' ? '1' : '0'; },
        [](Entry& e) { std::swap(e.kind, e.subject); },
        [](Entry& e) { e.kind += e.subject[0]; e.subject.erase(0, 1); }};
    for (size_t i = 0; i < changes.size(); ++i) {
        std::vector<Entry> changed = sound;
        changes[i](changed[6]);
        EXPECT_EQ(intact_length(changed), 6u) << "change " << i;
    }
    std::vector<Entry> gap = sound;
    gap.erase(gap.begin() + 3);
    EXPECT_EQ(intact_length(gap), 3u);
    EXPECT_EQ(intact_length({}), 0u);
}

// The file.

class JournalFile : public testing::Test {
  protected:
    ScratchFolder folder;
    const std::filesystem::path file = folder / "journal.db";

    /// Writes a journal of so many entries and closes it.
    void written(int count)
    {
        const std::unique_ptr<Journal> journal = opened(file);
        append(*journal, 1, count);
    }

    /// Opens a damaged journal: it must be set aside as it was, and give back a true beginning.
    Opened recovered(std::size_t whole)
    {
        const std::string damaged = bytes_of(file);
        Result<Opened> result = open_journal(file);
        if (!result)
            throw std::runtime_error(test::all_told(result.problems()));
        EXPECT_EQ(result->set_aside, folder / "journal-damaged-1.db");
        EXPECT_EQ(bytes_of(result->set_aside), damaged) << "set aside as it was found";
        const std::vector<Entry>& kept = result->journal->entries();
        EXPECT_EQ(result->brought_back, kept.size());
        EXPECT_LT(kept.size(), whole);
        const std::vector<Entry> all = expected(static_cast<int>(whole));
        EXPECT_TRUE(std::equal(kept.begin(), kept.end(), all.begin())) << "what is kept is the beginning, unchanged";
        return std::move(result.value());
    }
};

TEST_F(JournalFile, GivesTheSameEntries_WhenOpenedAgain)
{
    written(50);
    const std::unique_ptr<Journal> again = opened(file);
    EXPECT_EQ(again->entries(), expected(50));
    append(*again, 51, 60);
    EXPECT_EQ(again->entries(), expected(60));
}

TEST_F(JournalFile, HasEveryEntry_WhenTheProgramWasKilled)
{
    const int status = in_another_process([this] {
        Result<Opened> result = open_journal(file);
        for (int n = 1; result && n <= 30; ++n) {
            if (!result->journal->append(stamp_at(n), "answer", note(n), "\"" + std::string(200, 'v') + "\""))
                return 1;
        }
        std::raise(SIGKILL);
        return 2;
    });
    ASSERT_EQ(status, -1) << "it was killed, not ended";
    EXPECT_EQ(opened(file)->entries(), expected(30));
}

TEST_F(JournalFile, IsForItsOwnerOnly)
{
    const mode_t before = ::umask(0);
    const std::unique_ptr<Journal> journal = opened(file);
    append(*journal, 1, 3);
    ::umask(before);
    int files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
        struct stat status {};
        ASSERT_EQ(::stat(entry.path().c_str(), &status), 0);
        EXPECT_EQ(status.st_mode & 0777u, 0600u) << entry.path();
        ++files;
    }
    EXPECT_EQ(files, 2) << "the journal and its log";
}

TEST_F(JournalFile, IsMarkedAsOurs)
{
    written(1);
    EXPECT_EQ(pragma(file, "PRAGMA application_id"), std::to_string(0x45564E46));
    EXPECT_EQ(pragma(file, "PRAGMA user_version"), "1");
    EXPECT_EQ(pragma(file, "PRAGMA journal_mode"), "wal");
    EXPECT_EQ(pragma(file, "PRAGMA integrity_check"), "ok");
}

TEST_F(JournalFile, RefusesASecondCopy_InAnotherProcess)
{
    OtherProcess other(file);
    const std::unique_ptr<Journal> journal = opened(file);
    append(*journal, 1, 3);
    EXPECT_EQ(other.tries(), "second_copy");
    append(*journal, 4, 6);
    EXPECT_EQ(journal->entries(), expected(6));
}

TEST_F(JournalFile, RefusesASecondCopy_InTheSameProcess)
{
    const std::unique_ptr<Journal> journal = opened(file);
    EXPECT_EQ(code_of(file), "second_copy");
    append(*journal, 1, 3);
    EXPECT_EQ(journal->entries(), expected(3));
}

TEST_F(JournalFile, StaysAlone_WhenASecondTryInTheSameProcessFailed)
{
    // A process loses its record locks on a file when it closes any descriptor of it
    // (POSIX.1-2017, close()).
    OtherProcess other(file);
    const std::unique_ptr<Journal> journal = opened(file);
    EXPECT_EQ(code_of(file), "second_copy");
    EXPECT_EQ(other.tries(), "second_copy");
}

TEST_F(JournalFile, CanBeOpenedAgain_WhenTheFirstCopyIsClosed)
{
    OtherProcess other(file);
    opened(file).reset();
    EXPECT_EQ(other.tries(), "");
    EXPECT_EQ(code_of(file), "");
}

TEST_F(JournalFile, IsLeftAlone_WhenALaterVersionWroteIt)
{
    written(5);
    for (const char* version : {"2", "10"}) {
        pragma(file, std::string("PRAGMA user_version=") + version);
        const std::string before = bytes_of(file);
        const Result<Opened> result = open_journal(file);
        ASSERT_FALSE(result.ok());
        EXPECT_EQ(result.problems()[0].code, "newer");
        EXPECT_EQ(result.problems()[0].fault, Fault::io);
        EXPECT_EQ(bytes_of(file), before);
        EXPECT_FALSE(std::filesystem::exists(folder / "journal-damaged-1.db"));
    }
}

TEST_F(JournalFile, KeepsWhatCameBefore_WhenOneEntryIsWellFormedAndWrong)
{
    written(120);
    const std::size_t at = bytes_of(file).find(note(60));
    ASSERT_NE(at, std::string::npos);
    overwrite(file, at, "NOTE");
    const Opened result = recovered(120);
    EXPECT_EQ(result.brought_back, 59u);
    EXPECT_EQ(result.lost, 61u);
}

TEST_F(JournalFile, KeepsABeginning_WhenAPageInTheMiddleIsGone)
{
    written(120);
    const std::size_t page = bytes_of(file).find(note(60)) / 4096;
    ASSERT_GT(page, 2u);
    overwrite(file, page * 4096, std::string(4096, '\xA5'));
    const Opened result = recovered(120);
    EXPECT_GT(result.brought_back, 40u);
    EXPECT_LT(result.brought_back, 60u);
}

TEST_F(JournalFile, KeepsABeginning_WhenTheFileWasCutShort)
{
    written(120);
    const std::size_t page = bytes_of(file).find(note(60)) / 4096;
    std::filesystem::resize_file(file, page * 4096);
    const Opened result = recovered(120);
    EXPECT_GT(result.brought_back, 40u);
}

TEST_F(JournalFile, CountsNoEntryTwice_WhenPagesLeadToOnePageAgainAndAgain)
{
    written(120);
    const std::string sound = bytes_of(file);
    const auto page_of = [&sound](int n) { return static_cast<unsigned>(sound.find(note(n)) / 4096 + 1); };
    const unsigned root = 2, between = page_of(120), leaf = page_of(1);
    ASSERT_GT(between, root);
    ASSERT_NE(between, leaf);
    ASSERT_EQ(sound[(root - 1) * 4096], '\x05') << "the table begins with a page that leads to others";
    overwrite(file, (root - 1) * 4096, page_leading_to(between, 300));
    overwrite(file, (between - 1) * 4096, page_leading_to(leaf, 300));
    const Opened result = recovered(120);
    EXPECT_GT(result.brought_back, 5u);
    EXPECT_EQ(result.lost, 0u) << "of 90,000 times the same page";
}

TEST_F(JournalFile, BeginsEmpty_WhenNothingCanBeRead)
{
    written(20);
    overwrite(file, 0, std::string(4096, 'x'));
    const Opened result = recovered(20);
    EXPECT_EQ(result.brought_back, 0u);
}

TEST_F(JournalFile, GoesOn_AfterItWasBroughtBack)
{
    written(120);
    overwrite(file, bytes_of(file).find(note(60)), "NOTE");
    {
        const Opened result = recovered(120);
        append(*result.journal, 60, 70);
    }
    EXPECT_EQ(opened(file)->entries(), expected(70));
    EXPECT_FALSE(std::filesystem::exists(folder / "journal.db.salvage"));
}

TEST_F(JournalFile, SetsEachDamagedOneAside_WhenItHappensTwice)
{
    std::string first;
    for (const char* name : {"journal-damaged-1.db", "journal-damaged-2.db"}) {
        written(5);
        overwrite(file, 0, std::string(200, name[16]));
        const Result<Opened> result = open_journal(file);
        ASSERT_TRUE(result.ok()) << test::all_told(result.problems());
        EXPECT_EQ(result->set_aside, folder / name);
        if (first.empty()) {
            first = bytes_of(result->set_aside);
        }
        std::filesystem::remove(file);
    }
    EXPECT_EQ(bytes_of(folder / "journal-damaged-1.db"), first);
}

TEST_F(JournalFile, IsSetAsideAsItWasFound_WithItsLog)
{
    written(120);
    {
        const std::unique_ptr<Journal> open = opened(file);
        append(*open, 121, 130); // these are in the log alone
        std::filesystem::create_directory(folder / "pulled");
        for (const char* tail : {"", "-wal"})
            std::filesystem::copy_file(file.string() + tail, (folder / "pulled/journal.db").string() + tail);
    }
    const std::filesystem::path pulled = folder / "pulled/journal.db";
    overwrite(pulled, bytes_of(pulled).find(note(60)), "NOTE");
    const std::string found = bytes_of(pulled), log = bytes_of(pulled.string() + "-wal");
    ASSERT_FALSE(log.empty());
    const Result<Opened> result = open_journal(pulled);
    ASSERT_TRUE(result.ok()) << test::all_told(result.problems());
    EXPECT_EQ(result->brought_back, 59u);
    EXPECT_EQ(bytes_of(result->set_aside), found);
    EXPECT_EQ(bytes_of(result->set_aside.string() + "-wal"), log);
}

TEST_F(JournalFile, NeverGivesBackAnUntrueEntry_WhereverTheFileIsDamaged)
{
    written(60);
    const std::string sound = bytes_of(file);
    const std::vector<Entry> all = expected(60);
    std::uint64_t state = 11;
    for (int round = 0; round < 60; ++round) {
        state = state * 6364136223846793005u + 1442695040888963407u;
        const std::filesystem::path victim = folder / ("victim-" + std::to_string(round) + ".db");
        std::string bytes = sound;
        const std::size_t at = (state >> 20) % bytes.size();
        for (std::size_t i = at; i < std::min(at + 1 + round % 40, bytes.size()); ++i)
            bytes[i] = static_cast<char>(~bytes[i]);
        std::ofstream(victim, std::ios::binary) << bytes;
        const Result<Opened> result = open_journal(victim);
        if (!result) { // its version number may be the byte that was hit
            EXPECT_EQ(result.problems()[0].code, "newer") << at;
            continue;
        }
        const std::vector<Entry>& kept = result->journal->entries();
        ASSERT_LE(kept.size(), all.size()) << at;
        EXPECT_TRUE(std::equal(kept.begin(), kept.end(), all.begin())) << at;
        if (kept.size() < all.size()) {
            EXPECT_FALSE(result->set_aside.empty()) << at;
        }
    }
}

TEST_F(JournalFile, IsBroughtBack_WhenItIsNamedWithoutAFolder)
{
    written(120);
    const std::string sound = bytes_of(file);
    overwrite(file, sound.find(note(60)), "NOTE");
    const std::string damaged = bytes_of(file);
    const test::InFolder here(folder.path());
    const Result<Opened> result = open_journal("journal.db");
    ASSERT_TRUE(result.ok()) << test::all_told(result.problems());
    EXPECT_EQ(result->set_aside, "journal-damaged-1.db");
    EXPECT_EQ(bytes_of(folder / "journal-damaged-1.db"), damaged);
    EXPECT_EQ(result->journal->entries(), expected(59));
}

TEST_F(JournalFile, IsSetAside_WhenAnotherProgramWroteIt)
{
    const std::string song = "CREATE TABLE song (name TEXT)", entry = "CREATE TABLE entry (number INTEGER)", mark = "PRAGMA application_id=77;";
    int n = 0;
    for (const auto& [sql, table] : {std::pair(song, song), std::pair(mark, std::string()), std::pair(mark + entry, entry)}) {
        const std::filesystem::path foreign = folder / (std::to_string(++n) + ".db");
        pragma(foreign, sql);
        const Result<Opened> result = open_journal(foreign);
        ASSERT_TRUE(result.ok()) << sql << test::all_told(result.problems());
        ASSERT_FALSE(result->set_aside.empty()) << sql;
        EXPECT_EQ(pragma(result->set_aside, "SELECT group_concat(sql) FROM sqlite_schema"), table) << "what it holds is there";
        EXPECT_EQ(result->brought_back, 0u) << sql;
        append(*result->journal, 1, 3);
        EXPECT_EQ(result->journal->entries(), expected(3));
    }
}

TEST_F(JournalFile, IsLeftWhereItIs_WhenNoNameIsFreeToSetItAside)
{
    written(5);
    overwrite(file, bytes_of(file).find(note(3)), "NOTE");
    const std::string damaged = bytes_of(file);
    for (int n = 1; n < 1000; ++n)
        std::ofstream(folder / ("journal-damaged-" + std::to_string(n) + ".db")) << n;
    EXPECT_EQ(code_of(file), "io");
    EXPECT_EQ(bytes_of(file), damaged);
    std::filesystem::remove(folder / "journal-damaged-500.db");
    const Result<Opened> result = open_journal(file);
    ASSERT_TRUE(result.ok()) << test::all_told(result.problems());
    EXPECT_EQ(result->set_aside, folder / "journal-damaged-500.db");
    EXPECT_EQ(bytes_of(result->set_aside), damaged);
    EXPECT_EQ(result->journal->entries(), expected(2));
}

TEST_F(JournalFile, IsLeftAsItIs_WhenNoCopyOfADamagedOneCanBeMade)
{
    written(5);
    overwrite(file, bytes_of(file).find(note(3)), "NOTE");
    const std::string damaged = bytes_of(file);
    std::filesystem::create_directories(folder / "journal.db.salvage" / "full");
    EXPECT_EQ(code_of(file), "io");
    EXPECT_EQ(bytes_of(file), damaged);
    std::filesystem::remove_all(folder / "journal.db.salvage");
    EXPECT_EQ(recovered(5).brought_back, 2u);
}

TEST_F(JournalFile, IsRefused_WhereSqliteWouldKeepItInMemory)
{
    const test::InFolder here(folder.path());
    const Problems problems = open_journal(":memory:").problems();
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0].code, "io");
    EXPECT_NE(problems[0].text.find("gave \"memory\""), std::string::npos) << problems[0].text;
}

// Where it cannot be written.

TEST_F(JournalFile, SaysReadOnly_WhenTheFolderCannotBeWritten)
{
    const std::filesystem::path closed = folder / "closed";
    std::filesystem::create_directory(closed);
    ::chmod(folder.path().c_str(), 0755);
    ::chmod(closed.c_str(), 0555);
    // The superuser may write anywhere: another user tries.
    const int status = in_another_process([&] {
        if (::geteuid() == 0 && ::setuid(65534) != 0)
            return 2;
        return code_of(closed / "journal.db") == "read_only" ? 0 : 1;
    });
    EXPECT_EQ(status, 0);
    EXPECT_TRUE(std::filesystem::is_empty(closed));
}

TEST_F(JournalFile, SaysReadOnly_WhenTheJournalItselfCannotBeWritten)
{
    written(3);
    const std::string before = bytes_of(file);
    ::chmod(folder.path().c_str(), 0755);
    ::chmod(file.c_str(), 0444);
    const int status = in_another_process([&] {
        if (::geteuid() == 0 && ::setuid(65534) != 0)
            return 2;
        return code_of(file) == "read_only" ? 0 : 1;
    });
    EXPECT_EQ(status, 0);
    EXPECT_EQ(bytes_of(file), before);
}

TEST_F(JournalFile, SaysReadOnly_WhenItBelongsToAnotherUser)
{
    if (::geteuid() != 0)
        GTEST_SKIP() << "only the superuser can give a file away";
    written(3);
    const std::string before = bytes_of(file);
    // The folder is the other user's own, as after a data folder was copied by the superuser.
    ASSERT_EQ(::chown(folder.path().c_str(), 65534, 65534), 0);
    const int status = in_another_process([&] {
        if (::setuid(65534) != 0)
            return 2;
        return code_of(file) == "read_only" ? 0 : 1;
    });
    EXPECT_EQ(status, 0);
    EXPECT_EQ(bytes_of(file), before);
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder.path()), {}), 1)
        << "not set aside, although the folder would let it";
}

TEST_F(JournalFile, SaysReadOnly_WhenThereIsNoSuchFolder)
{
    EXPECT_EQ(code_of(folder / "nowhere/journal.db"), "read_only");
    std::ofstream(folder / "a_file") << "x";
    EXPECT_EQ(code_of(folder / "a_file/journal.db"), "read_only");
}

TEST_F(JournalFile, IsNotOpened_WhenItIsALinkToAnotherPlace)
{
    const std::filesystem::path link = folder / "link.db";
    written(2);
    std::filesystem::create_symlink(file, link);
    EXPECT_EQ(code_of(link), "read_only");
}

TEST_F(JournalFile, AddsNothingAndStaysClosed_WhenAWriteFails)
{
    // A limit on the size of files stands for a device that takes no more.
    const int status = in_another_process([this] {
        std::signal(SIGXFSZ, SIG_IGN);
        Result<Opened> result = open_journal(file);
        if (!result)
            return 10;
        Journal& journal = *result->journal;
        if (!journal.append(stamp_at(1), "answer", note(1), "\"" + std::string(200, 'v') + "\""))
            return 11;
        rlimit limit{};
        ::getrlimit(RLIMIT_FSIZE, &limit);
        const rlim_t usual = limit.rlim_cur;
        limit.rlim_cur = 4096;
        ::setrlimit(RLIMIT_FSIZE, &limit);
        const Result<Entry> failed = journal.append(stamp_at(2), "answer", note(2), "");
        limit.rlim_cur = usual;
        ::setrlimit(RLIMIT_FSIZE, &limit);
        if (failed || failed.problems()[0].fault != Fault::io || failed.problems()[0].code != "io")
            return 12;
        if (journal.entries().size() != 1)
            return 13;
        // There is room again, but this connection is not to be trusted any more.
        const Result<Entry> later = journal.append(stamp_at(3), "answer", note(3), "");
        if (later || later.problems() != failed.problems())
            return 14;
        return journal.entries().size() == 1 ? 0 : 15;
    });
    EXPECT_EQ(status, 0);
    EXPECT_EQ(opened(file)->entries(), expected(1));
}

} // namespace
} // namespace evenfall
