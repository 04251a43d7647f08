// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "journal/journal.h"

#include "base/file.h"

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <fcntl.h>
#include <functional>
#include <optional>
#include <sqlite3.h>
#include <unistd.h>

namespace evenfall {
namespace {

constexpr int application_id = 0x45564E46; // "EVNF"
constexpr int version = 1;
constexpr int roll_in_after = 1000; // pages in the log, SQLite's own default

/// What went wrong, in a word that the screens have a sentence for.
Problem problem_of(int code, const std::string& detail)
{
    const int primary = code & 0xff;
    std::string word = "io";
    if (primary == SQLITE_FULL)
        word = "disk_full";
    else if (primary == SQLITE_READONLY || primary == SQLITE_CANTOPEN || primary == SQLITE_PERM)
        word = "read_only";
    else if (primary == SQLITE_BUSY) // SQLITE_LOCKED would be a conflict of our own
        word = "second_copy";
    else if (primary == SQLITE_CORRUPT || primary == SQLITE_NOTADB)
        word = "damaged";
    else if (code == SQLITE_IOERR_FSYNC) // a folder SQLite syncs only with synchronous=EXTRA
        word = "sync";
    return {Fault::io, word, "", "journal: " + detail + " (SQLite " + std::to_string(code) + ": " + sqlite3_errstr(code) + ")"};
}

class Statement {
  public:
    Statement() = default;
    ~Statement() { sqlite3_finalize(handle_); }
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    int prepare(sqlite3* db, const char* sql) { return sqlite3_prepare_v2(db, sql, -1, &handle_, nullptr); }
    void finalize()
    {
        sqlite3_finalize(handle_);
        handle_ = nullptr;
    }
    sqlite3_stmt* get() const { return handle_; }
    int step() { return sqlite3_step(handle_); }
    std::int64_t integer(int column) const { return sqlite3_column_int64(handle_, column); }
    std::string text(int column) const
    {
        const auto* bytes = reinterpret_cast<const char*>(sqlite3_column_text(handle_, column));
        return bytes ? std::string(bytes, static_cast<size_t>(sqlite3_column_bytes(handle_, column))) : std::string();
    }
    int bind(int index, std::int64_t value) { return sqlite3_bind_int64(handle_, index, value); }
    int bind(int index, std::string_view value)
    {
        return sqlite3_bind_text(handle_, index, value.data(), static_cast<int>(value.size()), SQLITE_TRANSIENT);
    }

  private:
    sqlite3_stmt* handle_ = nullptr;
};

class Database {
  public:
    Database() = default;
    ~Database() { close(); }
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    int open(const std::filesystem::path& file)
    {
        const int code = sqlite3_open_v2(file.c_str(), &handle_, SQLITE_OPEN_READWRITE | SQLITE_OPEN_NOMUTEX, nullptr);
        if (handle_)
            sqlite3_extended_result_codes(handle_, 1);
        return code;
    }
    /// Whether closing rolls the log into the database. It must not where something has failed or is
    /// damaged: that would write again what a failed sync may have lost, and change what was found.
    void roll_in_on_close(bool on) { sqlite3_db_config(handle_, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, on ? 0 : 1, nullptr); }
    /// Writes the log again as it reads, and syncs it. After a failed sync the system takes what it holds
    /// in its cache for written: it would read it back, and no later sync would write it.
    int write_log_again()
    {
        sqlite3_file* log = nullptr;
        if (const int asked = sqlite3_file_control(handle_, "main", SQLITE_FCNTL_JOURNAL_POINTER, &log); asked != SQLITE_OK)
            return asked;
        if (!log || !log->pMethods)
            return SQLITE_OK;
        sqlite3_int64 size = 0;
        if (const int code = log->pMethods->xFileSize(log, &size); code != SQLITE_OK || size == 0)
            return code;
        std::vector<char> block(1 << 16);
        for (sqlite3_int64 at = 0; at < size;) {
            const int length = static_cast<int>(std::min<sqlite3_int64>(static_cast<sqlite3_int64>(block.size()), size - at));
            if (const int code = log->pMethods->xRead(log, block.data(), length, at); code != SQLITE_OK)
                return code;
            if (const int code = log->pMethods->xWrite(log, block.data(), length, at); code != SQLITE_OK)
                return code;
            at += length;
        }
        return log->pMethods->xSync(log, SQLITE_SYNC_NORMAL);
    }
    int roll_in() { return sqlite3_wal_checkpoint_v2(handle_, "main", SQLITE_CHECKPOINT_TRUNCATE, nullptr, nullptr); }
    void close()
    {
        sqlite3_close_v2(handle_);
        handle_ = nullptr;
    }
    sqlite3* get() const { return handle_; }
    int run(const char* sql) { return sqlite3_exec(handle_, sql, nullptr, nullptr, nullptr); }

    /// First column of the first row; nothing on an error, whose code is left in `code`.
    std::optional<std::string> ask(const char* sql, int& code)
    {
        Statement statement;
        code = statement.prepare(handle_, sql);
        if (code != SQLITE_OK)
            return std::nullopt;
        code = statement.step();
        if (code != SQLITE_ROW)
            return std::nullopt;
        std::string answer = statement.text(0);
        if (code = sqlite3_errcode(handle_); code == SQLITE_NOMEM)
            return std::nullopt; // the text reads as empty then
        // What the statement does is done, or fails, only after its last row: the answer "wal" comes
        // before the file is made one.
        while ((code = statement.step()) == SQLITE_ROW) {
        }
        if (code != SQLITE_DONE)
            return std::nullopt;
        code = SQLITE_OK;
        return answer;
    }

  private:
    sqlite3* handle_ = nullptr;
};

/// Gives `take` each row in order, as it lies. Returns SQLITE_DONE when the end was reached.
int read_rows(Database& db, const std::function<void(Entry&&)>& take)
{
    Statement statement;
    int code = statement.prepare(db.get(), "SELECT number, utc_us, offset_s, zone, boot, since_boot_us, kind, subject, value, hash "
                                           "FROM entry ORDER BY number");
    if (code != SQLITE_OK)
        return code;
    std::optional<std::int64_t> last;
    while ((code = statement.step()) == SQLITE_ROW) {
        Entry entry;
        entry.number = statement.integer(0);
        // SQLite walks damaged pages as they point: to the same page again and again, without an end.
        if (last && entry.number <= *last)
            return SQLITE_CORRUPT;
        last = entry.number;
        entry.stamp.utc = Instant(Span(statement.integer(1)));
        entry.stamp.offset = std::chrono::seconds(statement.integer(2));
        entry.stamp.zone = statement.text(3);
        entry.stamp.boot = statement.text(4);
        entry.stamp.since_boot = Span(statement.integer(5));
        entry.kind = statement.text(6);
        entry.subject = statement.text(7);
        entry.value = statement.text(8);
        entry.hash = statement.text(9);
        // Without memory a text reads as empty: that is no damage.
        if (sqlite3_errcode(db.get()) == SQLITE_NOMEM)
            return SQLITE_NOMEM;
        take(std::move(entry));
    }
    return code;
}

class SqliteJournal final : public Journal {
  public:
    const std::vector<Entry>& entries() const override { return entries_; }

    Result<Entry> append(const Stamp& stamp, std::string_view kind, std::string_view subject,
                         std::string_view value) override
    {
        if (broken_)
            return *broken_;
        Entry entry{static_cast<std::int64_t>(entries_.size()) + 1, stamp, std::string(kind),
                    std::string(subject), std::string(value), ""};
        entry.hash = chain_hash(entries_.empty() ? "" : entries_.back().hash, entry);
        const int code = insert(entry);
        if (code != SQLITE_DONE) {
            give_up(problem_of(code, "an entry could not be made durable"));
            return *broken_;
        }
        entries_.push_back(entry);
        if (log_pages_ >= roll_in_after) {
            log_pages_ = 0;
            // The entry is durable in the log whatever happens here; it is the next one that cannot be.
            if (const int rolled = db_.roll_in(); rolled != SQLITE_OK)
                give_up(problem_of(rolled, "the log could not be rolled in"));
        }
        return entry;
    }

    Status open(const std::filesystem::path& file)
    {
        int code = db_.open(file);
        if (code != SQLITE_OK)
            return problem_of(code, "cannot open " + file.string());
        db_.roll_in_on_close(false); // until it is known to be sound
        // SQLite falls back to reading only, and would fail later with a less telling error.
        if (sqlite3_db_readonly(db_.get(), "main") == 1)
            return problem_of(SQLITE_READONLY, "the file cannot be written");
        // Exclusive before WAL: the index of the log then lives in memory, and WAL works without shared
        // memory too. Both are read back, for SQLite silently keeps another mode where it must.
        struct Setting { const char* sql; const char* expected; };
        for (const Setting& setting : {Setting{"PRAGMA locking_mode=EXCLUSIVE", "exclusive"}, Setting{"PRAGMA journal_mode=WAL", "wal"}}) {
            const std::optional<std::string> answer = db_.ask(setting.sql, code);
            if (!answer)
                return problem_of(code, std::string(setting.sql) + " failed");
            if (*answer != setting.expected)
                return Problem{Fault::io, "io", "", std::string("journal: ") + setting.sql + " gave \"" + *answer + "\""};
        }
        if (code = db_.run("PRAGMA synchronous=FULL"); code != SQLITE_OK)
            return problem_of(code, "PRAGMA synchronous failed");
        if (db_.ask("PRAGMA synchronous", code) != "2")
            return problem_of(code, "PRAGMA synchronous is not FULL");
        if (code = db_.run("BEGIN EXCLUSIVE; COMMIT"); code != SQLITE_OK)
            return problem_of(code, "cannot lock");
        return found_or_created();
    }

    Status load()
    {
        int code = SQLITE_OK;
        const std::optional<std::string> check = db_.ask("PRAGMA quick_check(1)", code);
        if (!check)
            return problem_of(code, "cannot be checked");
        // A page that cannot be read now may be sound: that is told as what it is.
        constexpr std::string_view unread = "error code=";
        if (const std::size_t at = check->find(unread); at != std::string::npos)
            return problem_of(std::atoi(check->c_str() + at + unread.size()), "cannot be checked");
        if (*check != "ok")
            return Problem{Fault::io, "damaged", "", "journal: " + *check};
        code = read_rows(db_, [this](Entry&& entry) { entries_.push_back(std::move(entry)); });
        if (code != SQLITE_DONE)
            return problem_of(code, "cannot be read");
        if (intact_length(entries_) != entries_.size())
            return Problem{Fault::io, "damaged", "", "journal: entry " + std::to_string(intact_length(entries_) + 1) + " does not follow from the one before"};
        // What an earlier run left in the log must be durable before anything rests on it: first in the
        // log itself, for the database is torn while the log is rolled in, and then in the database.
        if (code = db_.write_log_again(); code != SQLITE_OK)
            return problem_of(code, "the log could not be made durable");
        if (code = db_.roll_in(); code != SQLITE_OK)
            return problem_of(code, "the log could not be rolled in");
        code = insert_.prepare(db_.get(), "INSERT INTO entry VALUES (?,?,?,?,?,?,?,?,?,?)");
        if (code != SQLITE_OK)
            return problem_of(code, "cannot be written");
        // SQLite would roll the log in by itself and keep quiet about a failure.
        sqlite3_wal_hook(db_.get(), count_log_pages, &log_pages_);
        db_.roll_in_on_close(true);
        return Done{};
    }

    /// Fills a new journal with entries whose chain is known to be whole.
    Status adopt(const std::vector<Entry>& entries)
    {
        int code = db_.run("BEGIN");
        for (const Entry& entry : entries) {
            if (code == SQLITE_OK && (code = insert(entry)) == SQLITE_DONE)
                code = SQLITE_OK;
        }
        if (code == SQLITE_OK)
            code = db_.run("COMMIT");
        if (code != SQLITE_OK)
            return problem_of(code, "what was brought back could not be written");
        entries_ = entries;
        return Done{};
    }

  private:
    Database db_; // declared before its statement, so that it is closed after it
    Statement insert_;
    std::vector<Entry> entries_;
    std::optional<Problem> broken_;
    int log_pages_ = 0;

    static int count_log_pages(void* pages, sqlite3*, const char*, int in_log)
    {
        *static_cast<int*>(pages) = in_log;
        return SQLITE_OK;
    }

    /// What the connection believes of the file can no longer be trusted.
    void give_up(Problem problem)
    {
        broken_ = std::move(problem);
        insert_.finalize();
        db_.roll_in_on_close(false);
        db_.close();
    }

    Status found_or_created()
    {
        int code = SQLITE_OK;
        const std::optional<std::string> id = db_.ask("PRAGMA application_id", code);
        if (!id)
            return problem_of(code, "cannot be read");
        const std::optional<std::string> tables = db_.ask("SELECT count(*) FROM sqlite_schema", code);
        if (!tables)
            return problem_of(code, "cannot be read");
        if (*id == "0" && *tables == "0") {
            const std::string create = "BEGIN EXCLUSIVE;"
                                       "PRAGMA application_id=" + std::to_string(application_id) + ";"
                                       "PRAGMA user_version=" + std::to_string(version) + ";"
                                       "CREATE TABLE entry (number INTEGER PRIMARY KEY, utc_us INTEGER NOT NULL,"
                                       " offset_s INTEGER NOT NULL, zone TEXT NOT NULL, boot TEXT NOT NULL,"
                                       " since_boot_us INTEGER NOT NULL, kind TEXT NOT NULL, subject TEXT NOT NULL,"
                                       " value TEXT NOT NULL, hash TEXT NOT NULL) STRICT;"
                                       "COMMIT";
            code = db_.run(create.c_str());
            if (code != SQLITE_OK)
                return problem_of(code, "cannot be created");
            return Done{};
        }
        if (*id != std::to_string(application_id))
            return Problem{Fault::io, "damaged", "", "journal: the file is not a journal of ours"};
        const std::optional<std::string> found = db_.ask("PRAGMA user_version", code);
        if (!found)
            return problem_of(code, "cannot be read");
        if (std::atoi(found->c_str()) > version) // SQLite gives a whole number of 32 bits
            return Problem{Fault::io, "newer", "", "journal: written by a later version (" + *found + "); right would be that version, or an empty data folder"};
        return Done{};
    }

    int insert(const Entry& entry)
    {
        int bound = SQLITE_OK;
        const auto bind = [&](int index, auto value) { bound = bound == SQLITE_OK ? insert_.bind(index, value) : bound; };
        bind(1, entry.number);
        bind(2, entry.stamp.utc.time_since_epoch().count());
        bind(3, entry.stamp.offset.count());
        bind(4, std::string_view(entry.stamp.zone));
        bind(5, std::string_view(entry.stamp.boot));
        bind(6, entry.stamp.since_boot.count());
        bind(7, std::string_view(entry.kind));
        bind(8, std::string_view(entry.subject));
        bind(9, std::string_view(entry.value));
        bind(10, std::string_view(entry.hash));
        if (bound != SQLITE_OK)
            return bound;
        const int code = insert_.step();
        const int extended = code == SQLITE_DONE ? code : sqlite3_extended_errcode(db_.get());
        sqlite3_reset(insert_.get());
        return extended;
    }
};

/// The longest intact beginning of a damaged journal; `seen` counts its rows that can be read. Error (io):
/// it is not the damage that keeps it from being read.
Result<std::vector<Entry>> salvage(const std::filesystem::path& file, std::size_t& seen)
{
    std::vector<Entry> entries;
    Database db;
    int code = db.open(file);
    if (code == SQLITE_OK) {
        db.run("PRAGMA locking_mode=EXCLUSIVE"); // a log is read without shared memory only so
        // Without it SQLite reads nothing of a file that is shorter than its header says.
        db.run("PRAGMA writable_schema=ON");
        code = read_rows(db, [&](Entry&& entry) { // as far as it goes
            if (++seen == entries.size() + 1 && follows(entries, entry))
                entries.push_back(std::move(entry));
        });
    }
    const int primary = code & 0xff;
    if (primary != SQLITE_DONE && primary != SQLITE_CORRUPT && primary != SQLITE_NOTADB && primary != SQLITE_ERROR)
        return problem_of(code, "a damaged one cannot be read");
    return entries;
}

/// Moves a damaged journal and its log out of the way under a name that is free.
Result<std::filesystem::path> set_aside(const std::filesystem::path& file)
{
    for (int n = 1; n < 1000; ++n) {
        std::filesystem::path target = file;
        target.replace_filename(file.stem().string() + "-damaged-" + std::to_string(n) + file.extension().string());
        std::error_code error;
        if (std::filesystem::exists(target, error))
            continue;
        for (const char* tail : {"", "-wal", "-shm", "-journal"}) {
            const std::filesystem::path from = file.string() + tail;
            if (std::filesystem::exists(from, error) && ::rename(from.c_str(), (target.string() + tail).c_str()) != 0)
                return io_problem("cannot set aside", from, errno);
        }
        if (Status synced = sync_folder(file.has_parent_path() ? file.parent_path() : "."); !synced)
            return synced.problems();
        return target;
    }
    return Problem{Fault::io, "io", "", "too many damaged journals beside " + file.string()};
}

Status create_private(const std::filesystem::path& file)
{
    // SQLite gives its log the mode of the database: making the file first makes both private. A file
    // that is there already is not opened here: closing it again would let go of the record locks that
    // this process may hold on it (POSIX.1-2017, close()), and with them of being alone.
    const int fd = ::open(file.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, 0600);
    const int reason = errno; // before anything else sets it
    if (std::error_code ignored; fd < 0 && reason == EEXIST && !std::filesystem::is_symlink(file, ignored))
        return Done{};
    if (fd < 0) {
        Problem problem = io_problem("cannot open", file, reason);
        problem.code = reason == ENOSPC ? "disk_full" : "read_only";
        return problem;
    }
    ::close(fd);
    return Done{};
}

} // namespace

namespace {

Status rename_durably(const std::filesystem::path& from, const std::filesystem::path& to)
{
    if (::rename(from.c_str(), to.c_str()) != 0)
        return io_problem("cannot rename to", to, errno);
    return sync_folder(to.has_parent_path() ? to.parent_path() : ".");
}

/// From a copy: reading may roll the log in, and the damaged file stays as it was found.
Result<std::vector<Entry>> salvage_from_copy(const std::filesystem::path& file, std::size_t& seen)
{
    std::filesystem::path copy = file;
    copy += ".salvage";
    std::error_code error, ignored;
    for (const char* tail : {"", "-wal"}) {
        if (!std::filesystem::exists(file.string() + tail, ignored))
            continue;
        std::filesystem::copy_file(file.string() + tail, copy.string() + tail, std::filesystem::copy_options::overwrite_existing, error);
        // Of a file that cannot be read to its end the beginning is copied.
        if (error && error.value() != EIO)
            break;
        error.clear();
    }
    Result<std::vector<Entry>> entries = error ? io_problem("cannot copy", file, error.value()) : salvage(copy, seen);
    for (const char* tail : {"", "-wal", "-shm", "-journal"})
        std::filesystem::remove(copy.string() + tail, ignored);
    return entries;
}

Status opened_and_loaded(SqliteJournal& journal, const std::filesystem::path& file)
{
    if (Status created = create_private(file); !created)
        return created;
    if (Status opened = journal.open(file); !opened)
        return opened;
    return journal.load();
}

/// A journal of its own with what was brought back; closed, so that it is one file.
Status write_fresh(const std::filesystem::path& file, const std::vector<Entry>& entries)
{
    std::error_code ignored;
    for (const char* tail : {"", "-wal", "-shm", "-journal"}) // of a run that did not get to its end
        std::filesystem::remove(file.string() + tail, ignored);
    {
        SqliteJournal journal;
        if (Status opened = opened_and_loaded(journal, file); !opened)
            return opened;
        if (Status adopted = journal.adopt(entries); !adopted)
            return adopted;
    }
    if (std::filesystem::exists(file.string() + "-wal", ignored))
        return Problem{Fault::io, "io", "", "journal: what was brought back could not be rolled in"};
    return Done{};
}

} // namespace

Result<Opened> open_journal(const std::filesystem::path& file)
{
    // A damaged journal is brought back in this order, so that at any moment something leads on: the new
    // one is written whole beside it, the damaged one set aside, the new one renamed.
    std::filesystem::path fresh = file;
    fresh += ".new";
    std::error_code ignored;
    if (!std::filesystem::exists(std::filesystem::symlink_status(file, ignored)) && std::filesystem::exists(fresh, ignored)) {
        if (Status renamed = rename_durably(fresh, file); !renamed)
            return renamed.problems();
    }
    Status status = Done{};
    for (int look = 1; look <= 2; ++look) { // a sound journal is not set aside for a fault of the moment
        auto journal = std::make_unique<SqliteJournal>();
        status = opened_and_loaded(*journal, file);
        if (status)
            return Opened{std::move(journal), {}, 0, 0};
        if (status.problems()[0].code != "damaged")
            return status.problems();
    }

    std::size_t seen = 0;
    const Result<std::vector<Entry>> kept = salvage_from_copy(file, seen);
    if (!kept)
        return kept.problems();
    if (Status written = write_fresh(fresh, *kept); !written)
        return written.problems();
    const Result<std::filesystem::path> aside = set_aside(file);
    if (!aside)
        return aside.problems();
    if (Status renamed = rename_durably(fresh, file); !renamed)
        return renamed.problems();
    auto journal = std::make_unique<SqliteJournal>();
    if (status = opened_and_loaded(*journal, file); !status)
        return status.problems();
    return Opened{std::move(journal), *aside, kept->size(), seen - kept->size()};
}

} // namespace evenfall
