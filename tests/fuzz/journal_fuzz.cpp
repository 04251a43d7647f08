// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// A damaged journal file, and now and then a log beside it: opened, never with an untrue entry.
#include "fuzz/target.h"

#include "crash/disk.h"
#include "journal/journal.h"
#include "journal/state.h"

#include <fstream>
#include <stdexcept>
#include <unistd.h>

namespace evenfall::fuzz {
namespace {

namespace fs = std::filesystem;

/// A folder of this process, gone at its end. Syncs are left out: nothing here is about them.
struct Place {
    fs::path folder = fs::temp_directory_path() / ("evenfall-fuzz-" + std::to_string(::getpid()));
    test::Disk disk;
    Place()
    {
        fs::create_directories(folder);
        disk.leave_out_syncs(true);
    }
    ~Place()
    {
        std::error_code ignored;
        fs::remove_all(folder, ignored);
    }
    void clear() const
    {
        for (const auto& entry : fs::directory_iterator(folder))
            fs::remove_all(entry.path());
    }
    fs::path file() const { return folder / "journal.db"; }
};

Place& place()
{
    static Place one;
    return one;
}

constexpr int entries = 12;

void fill(Journal& journal)
{
    for (int n = 1; n <= entries; ++n) {
        Stamp stamp{Instant(std::chrono::seconds(1793759400 + n)), std::chrono::hours(-5), "America/New_York", "boot-1",
                    std::chrono::seconds(n)};
        if (!journal.append(stamp, n == 1 ? "night" : "answer", "comment-" + std::to_string(n),
                            "{\"word\":\"" + std::string(static_cast<std::size_t>(n) * 20, 'w') + "\"}"))
            throw std::runtime_error("the seed cannot be written");
    }
}

const std::vector<Entry>& truth()
{
    static const std::vector<Entry> one = [] {
        const std::unique_ptr<Journal> journal = make_memory_journal();
        fill(*journal);
        return journal->entries();
    }();
    return one;
}

/// Two files in one seed: the database, and its log from `log_begins` on; four bytes say where.
std::string joined(const std::string& database, const std::string& log)
{
    std::string out;
    for (int shift = 0; shift < 32; shift += 8)
        out += static_cast<char>(database.size() >> shift & 0xff);
    return out + database + log;
}

std::string bytes_of(const fs::path& path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

} // namespace

void take(std::string_view bytes)
{
    if (bytes.size() < 4 || bytes.size() > (1u << 20))
        return;
    std::size_t log_begins = 0;
    for (std::size_t i = 4; i-- > 0;)
        log_begins = log_begins << 8 | static_cast<unsigned char>(bytes[i]);
    bytes.remove_prefix(4);
    place().clear();
    std::ofstream(place().file(), std::ios::binary) << bytes.substr(0, log_begins);
    if (log_begins < bytes.size())
        std::ofstream(place().file().string() + "-wal", std::ios::binary) << bytes.substr(log_begins);
    const Result<Opened> opened = open_journal(place().file());
    told(opened);
    if (!opened)
        return;
    const std::vector<Entry>& found = opened->journal->entries();
    law(intact_length(found) == found.size(), "a broken chain was taken for whole");
    // No damage gives another entry the right SHA-256 (journal.options keeps libFuzzer from reading it off).
    law(found.size() <= truth().size() && std::equal(found.begin(), found.end(), truth().begin()), "an untrue entry");
    law(opened->set_aside.empty() || std::filesystem::exists(opened->set_aside), "set aside and gone");
    (void)replay(found);
}

std::vector<std::string> seeds()
{
    std::vector<std::string> out;
    place().clear();
    {
        Result<Opened> opened = open_journal(place().file());
        if (!opened)
            throw std::runtime_error("the seed cannot be opened");
        fill(*opened->journal);
        out.push_back(joined(bytes_of(place().file()), bytes_of(place().file().string() + "-wal"))); // as after a kill
    }
    out.push_back(joined(bytes_of(place().file()), ""));
    (void)truth();
    return out;
}

} // namespace evenfall::fuzz
