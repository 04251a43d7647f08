// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "crash/disk.h"

#include <algorithm>
#include <cstring>
#include <sqlite3.h>
#include <stdexcept>
#include <sys/stat.h>

namespace evenfall::test {
namespace {

Disk* disk = nullptr;
sqlite3_vfs* below = nullptr;

struct File {
    sqlite3_file base; // SQLite knows this one
    sqlite3_file* real;
    int inode;         // 0: a temporary file without a name
    bool names_unsynced;
};

File* of(sqlite3_file* file) { return reinterpret_cast<File*>(file); }
const sqlite3_io_methods* methods(sqlite3_file* file) { return of(file)->real->pMethods; }

int close(sqlite3_file* file) { return methods(file)->xClose(of(file)->real); }

int read(sqlite3_file* file, void* to, int size, sqlite3_int64 offset)
{
    if (disk->fails(Disk::Call::read))
        return SQLITE_IOERR_READ;
    return methods(file)->xRead(of(file)->real, to, size, offset);
}

int write(sqlite3_file* file, const void* from, int size, sqlite3_int64 offset)
{
    const bool fails = disk->fails(Disk::Call::write);
    const int done = !fails ? size : disk->error() == Disk::Error::cut_short ? size / 2 : 0;
    if (done > 0) {
        const int code = methods(file)->xWrite(of(file)->real, from, done, offset);
        if (code != SQLITE_OK)
            return code;
        disk->add({Disk::Op::Kind::write, of(file)->inode, offset,
                   std::string(static_cast<const char*>(from), static_cast<std::size_t>(done)), {}});
    }
    if (!fails)
        return SQLITE_OK;
    return disk->error() == Disk::Error::full ? SQLITE_FULL : SQLITE_IOERR_WRITE;
}

int truncate(sqlite3_file* file, sqlite3_int64 size)
{
    if (disk->fails(Disk::Call::truncate))
        return SQLITE_IOERR_TRUNCATE;
    disk->add({Disk::Op::Kind::truncate, of(file)->inode, size, {}, {}});
    if (size == 0)
        disk->emptied(of(file)->inode);
    return methods(file)->xTruncate(of(file)->real, size);
}

int sync(sqlite3_file* file, int flags)
{
    // SQLite's unix VFS syncs the folder together with the first sync of a log or rollback journal that
    // it has opened to create it (os_unix.c, UNIXFILE_DIRSYNC).
    if (!disk->sync_begins(of(file)->inode, of(file)->names_unsynced))
        return SQLITE_IOERR_FSYNC;
    of(file)->names_unsynced = false;
    return disk->no_syncs() ? SQLITE_OK : methods(file)->xSync(of(file)->real, flags);
}

int file_size(sqlite3_file* file, sqlite3_int64* size)
{
    if (disk->fails(Disk::Call::size))
        return SQLITE_IOERR_FSTAT;
    return methods(file)->xFileSize(of(file)->real, size);
}
int lock(sqlite3_file* file, int level)
{
    if (disk->fails(Disk::Call::lock))
        return SQLITE_PERM; // SQLite's unix VFS makes it of EPERM
    return methods(file)->xLock(of(file)->real, level);
}
int unlock(sqlite3_file* file, int level) { return methods(file)->xUnlock(of(file)->real, level); }
int check_lock(sqlite3_file* file, int* out) { return methods(file)->xCheckReservedLock(of(file)->real, out); }
int control(sqlite3_file* file, int op, void* word)
{
    return methods(file)->xFileControl(of(file)->real, op, word);
}
int sector_size(sqlite3_file* file) { return methods(file)->xSectorSize(of(file)->real); }
int characteristics(sqlite3_file* file) { return methods(file)->xDeviceCharacteristics(of(file)->real); }

/// Version 1: no shared memory and no memory mapping, past which this layer could not see.
const sqlite3_io_methods ours{1,        close,      read,    write,       truncate,        sync,
                              file_size, lock,      unlock,  check_lock,  control,         sector_size,
                              characteristics, nullptr, nullptr, nullptr, nullptr, nullptr, nullptr};

int open(sqlite3_vfs*, sqlite3_filename name, sqlite3_file* file, int flags, int* out_flags)
{
    File& made = *of(file);
    made.base.pMethods = nullptr;
    if (disk->fails(Disk::Call::open))
        return disk->error() == Disk::Error::full ? SQLITE_FULL : SQLITE_CANTOPEN;
    made.real = reinterpret_cast<sqlite3_file*>(&made + 1);
    struct stat there {};
    const bool is_new = name && ::lstat(name, &there) != 0;
    if (const int code = below->xOpen(below, name, made.real, flags, out_flags); code != SQLITE_OK) {
        if (made.real->pMethods)
            made.real->pMethods->xClose(made.real);
        return code;
    }
    made.base.pMethods = &ours;
    made.inode = name ? disk->inode_of(name, is_new) : 0;
    made.names_unsynced = (flags & SQLITE_OPEN_CREATE) && (flags & (SQLITE_OPEN_WAL | SQLITE_OPEN_MAIN_JOURNAL));
    if (flags & SQLITE_OPEN_MAIN_DB)
        disk->opened_database();
    return SQLITE_OK;
}

int remove(sqlite3_vfs*, const char* name, int sync_folder)
{
    if (disk->fails(Disk::Call::remove))
        return SQLITE_IOERR_DELETE;
    const int code = below->xDelete(below, name, disk->no_syncs() ? 0 : sync_folder);
    if (code == SQLITE_OK)
        disk->removed(name, sync_folder != 0);
    return code;
}

sqlite3_vfs layer;

} // namespace

Disk::Disk()
{
    if (disk)
        throw std::logic_error("one disk at a time");
    disk = this;
    below = sqlite3_vfs_find("unix");
    layer = *below; // all that is not named here goes straight to the one below
    layer.iVersion = 2;
    layer.szOsFile = static_cast<int>(sizeof(File)) + below->szOsFile;
    layer.zName = "evenfall-test";
    layer.pNext = nullptr;
    layer.xOpen = open;
    layer.xDelete = remove;
    if (sqlite3_vfs_register(&layer, 1) != SQLITE_OK)
        throw std::runtime_error("the layer cannot be registered");
}

Disk::~Disk()
{
    sqlite3_vfs_unregister(&layer);
    sqlite3_vfs_register(below, 1);
    disk = nullptr;
}

void Disk::fail(Call call, long nth, Error error, bool sticking)
{
    call_ = call;
    nth_ = nth;
    error_ = error;
    sticking_ = sticking;
    calls_ = 0;
    failed_ = false;
    tried_again_ = 0;
}

void Disk::add(Op op)
{
    if (recording_ && (op.inode != 0 || op.kind == Op::Kind::mark || op.kind == Op::Kind::sync_names ||
                       op.kind == Op::Kind::remove))
        ops_.push_back(std::move(op));
}

bool Disk::fails(Call call)
{
    if (call != call_)
        return false;
    ++calls_;
    if (nth_ == 0 || calls_ < nth_ || (calls_ > nth_ && !sticking_))
        return false;
    failed_ = true;
    return true;
}

int Disk::inode_of(const std::string& path, bool made)
{
    const std::string name = std::filesystem::path(path).filename().string();
    const auto found = names_.find(name);
    if (found != names_.end() && !made)
        return found->second;
    names_[name] = ++inodes_;
    add({Op::Kind::create, inodes_, 0, {}, name});
    return inodes_;
}

void Disk::removed(const std::string& path, bool synced)
{
    const std::string name = std::filesystem::path(path).filename().string();
    names_.erase(name);
    add({Op::Kind::remove, 0, 0, {}, name});
    if (synced)
        add({Op::Kind::sync_names, 0, 0, {}, {}});
}

bool Disk::sync_begins(int inode, bool names_too)
{
    if (failed_syncs_.contains(inode))
        ++tried_again_;
    if (fails(Call::sync)) {
        failed_syncs_.insert(inode);
        add({Op::Kind::drop, inode, 0, {}, {}});
        return false;
    }
    add({Op::Kind::sync, inode, 0, {}, {}});
    if (names_too)
        add({Op::Kind::sync_names, 0, 0, {}, {}});
    return true;
}

namespace {

void put(std::string& file, std::size_t offset, std::string_view bytes)
{
    if (file.size() < offset + bytes.size())
        file.resize(offset + bytes.size());
    std::copy(bytes.begin(), bytes.end(), file.begin() + static_cast<std::ptrdiff_t>(offset));
}

void name_op(std::map<std::string, int>& names, const Disk::Op& op)
{
    if (op.kind == Disk::Op::Kind::create)
        names[op.name] = op.inode;
    else
        names.erase(op.name);
}

bool of_name(const Disk::Op& op) { return op.kind == Disk::Op::Kind::create || op.kind == Disk::Op::Kind::remove; }

} // namespace

void PowerCuts::settle(const Op& op)
{
    if (op.kind == Op::Kind::mark) {
        acknowledged_ = op.offset;
        return;
    }
    if (op.kind == Op::Kind::drop) {
        // The system marks the pages clean although they never reached the disk.
        std::erase_if(pending_, [&](const Op& one) { return one.inode == op.inode && one.kind == Op::Kind::write; });
        return;
    }
    if (op.kind != Op::Kind::sync && op.kind != Op::Kind::sync_names) {
        pending_.push_back(op);
        return;
    }
    const bool names = op.kind == Op::Kind::sync_names;
    std::erase_if(pending_, [&](const Op& one) {
        if (of_name(one) != names || (!names && one.inode != op.inode))
            return false;
        if (names)
            name_op(names_, one);
        else if (one.kind == Op::Kind::truncate)
            content_[one.inode].resize(static_cast<std::size_t>(one.offset));
        else
            put(content_[one.inode], static_cast<std::size_t>(one.offset), one.bytes);
        return true;
    });
}

PowerCuts::Cut PowerCuts::cut(std::size_t from, std::size_t to, int survival, long point)
{
    // Even survivals at the sync itself, where most is at stake; odd ones somewhere on the way to it.
    const std::size_t at = survival % 2 == 0 || to == from ? to : from + random_() % (to - from + 1);
    PowerCuts here(*this);
    for (std::size_t i = from; i < at; ++i)
        here.settle(ops_[i]);

    const auto names_kept = static_cast<std::size_t>(std::count_if(here.pending_.begin(), here.pending_.end(), of_name));
    std::size_t names_left = survival == 0 ? names_kept : survival == 1 ? 0 : random_() % (names_kept + 1);
    for (const Op& op : here.pending_) {
        if (of_name(op)) {
            if (names_left > 0) {
                name_op(here.names_, op);
                --names_left;
            }
            continue;
        }
        // 0: all survives; 1: nothing; 2, 3: each write all or nothing; else by sectors.
        if (survival == 1 || (survival > 1 && random_() % 3 == 0))
            continue;
        std::string& file = here.content_[op.inode];
        if (op.kind == Op::Kind::truncate) {
            file.resize(static_cast<std::size_t>(op.offset));
            continue;
        }
        constexpr std::size_t sector = 512;
        const bool whole = survival < 4 || random_() % 2 == 0;
        for (std::size_t i = 0; i < op.bytes.size();) {
            const std::size_t begin = static_cast<std::size_t>(op.offset) + i;
            const std::size_t size = std::min(sector - begin % sector, op.bytes.size() - i);
            if (whole || random_() % 2 == 0)
                put(file, begin, std::string_view(op.bytes).substr(i, size));
            i += size;
        }
    }
    Cut cut{point, here.acknowledged_, {}};
    for (const auto& [name, inode] : here.names_)
        cut.files[name] = here.content_[inode];
    return cut;
}

} // namespace evenfall::test
