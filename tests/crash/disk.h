// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <random>
#include <set>
#include <string>
#include <vector>

namespace evenfall::test {

/// A layer between SQLite and the disk (its VFS interface), put in as the default before a journal is
/// opened. It passes everything on, and can write down what is done in order, make the nth call of a
/// sort fail, and leave out the real syncs. One at a time, one thread.
class Disk {
  public:
    enum class Call { open, read, write, sync, truncate, remove, lock, size };
    enum class Error {
        input_output, ///< EIO; nothing is done
        full,         ///< ENOSPC; nothing is done
        cut_short,    ///< half of what was to be written is, then EIO
    };

    /// One thing that was done to the disk.
    struct Op {
        enum class Kind {
            create,    ///< `name` now leads to `inode`
            remove,    ///< `name` leads nowhere
            write,     ///< `bytes` at `offset`
            truncate,  ///< to `offset` bytes
            sync,      ///< what was done to the inode before is durable
            drop,      ///< a sync of the inode failed: what was done before may never reach the disk
            sync_names,///< so are names
            mark,      ///< the test says something: `offset` entries are acknowledged
        };
        Kind kind;
        int inode = 0;
        std::int64_t offset = 0;
        std::string bytes;
        std::string name;
    };

    Disk();
    ~Disk();
    Disk(const Disk&) = delete;
    Disk& operator=(const Disk&) = delete;

    /// From here on every call of that sort is counted; number `nth` (from 1) fails, and with
    /// `sticking` all that follow. 0: none fails.
    void fail(Call call, long nth, Error error, bool sticking);
    void mend() { nth_ = 0; }
    long calls() const { return calls_; }      ///< counted since fail()
    bool failed() const { return failed_; }    ///< at least one has failed since fail()
    /// Syncs that were tried again, on the same connection, on a file of which one had failed: the
    /// second would report success although the first has lost data.
    long syncs_tried_again() const { return tried_again_; }

    void record(bool on) { recording_ = on; }
    void mark(long acknowledged) { add({Op::Kind::mark, 0, acknowledged, {}, {}}); }
    const std::vector<Op>& ops() const { return ops_; }

    /// Without real syncs tests are fast; what is durable is then only what the ops say.
    void leave_out_syncs(bool on) { no_syncs_ = on; }

    // For the layer itself.
    void add(Op op);
    bool fails(Call call);
    int inode_of(const std::string& path, bool made);
    void removed(const std::string& path, bool synced);
    void opened_database() { failed_syncs_.clear(); }
    bool sync_begins(int inode, bool names_too);
    /// A file that was emptied has nothing left that a failed sync could have lost.
    void emptied(int inode) { failed_syncs_.erase(inode); }
    Error error() const { return error_; }
    bool no_syncs() const { return no_syncs_; }

  private:
    Call call_ = Call::open;
    Error error_ = Error::input_output;
    long nth_ = 0, calls_ = 0, tried_again_ = 0;
    bool sticking_ = false, failed_ = false, recording_ = false, no_syncs_ = false;
    std::set<int> failed_syncs_; ///< of this connection
    std::map<std::string, int> names_;
    int inodes_ = 0;
    std::vector<Op> ops_;
};

/// Plays the ops again and cuts the power: at each sync (just before it is done, or at random between
/// it and the one before) there may survive, of what was not synced yet, all, nothing, or any part, by
/// sectors of 512 bytes. Names survive in order. Calls back for each with what the disk then holds.
class PowerCuts {
  public:
    struct Cut {
        long sync = 0;          ///< which sync point
        long acknowledged = 0;  ///< by then
        std::map<std::string, std::string> files; ///< by file name
    };
    PowerCuts(const std::vector<Disk::Op>& ops, std::uint64_t seed) : ops_(ops), random_(seed) {}

    /// `survivals` for each sync point and for the end. Returns how many sync points there were.
    template <class Check>
    long each(int survivals, Check check)
    {
        long points = 0;
        std::size_t last = 0;
        for (std::size_t i = 0; i <= ops_.size(); ++i) {
            if (i < ops_.size() && ops_[i].kind != Disk::Op::Kind::sync)
                continue;
            ++points;
            for (int n = 0; n < survivals; ++n)
                check(cut(last, i, n, points));
            for (; last < i; ++last)
                settle(ops_[last]);
        }
        return points;
    }

  private:
    using Op = Disk::Op;
    const std::vector<Op>& ops_;
    std::mt19937_64 random_;
    // What is surely on the disk, and what was done since.
    std::map<std::string, int> names_;
    std::map<int, std::string> content_;
    std::vector<Op> pending_;
    long acknowledged_ = 0;

    void settle(const Op& op);
    Cut cut(std::size_t from, std::size_t to, int survival, long point);
};

} // namespace evenfall::test
