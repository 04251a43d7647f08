// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// A record folder of which one file holds any bytes: the first byte says which, and whether the sums
// are made to fit.
#include "fuzz/record_seed.h"

#include "base/hash.h"
#include "record/verify.h"

#include <fstream>
#include <unistd.h>

namespace evenfall::fuzz {
namespace {

namespace fs = std::filesystem;

struct Place {
    fs::path parent = fs::temp_directory_path() / ("evenfall-fuzz-" + std::to_string(::getpid()));
    fs::path folder;
    std::vector<RecordFile> files = record_seed();
    Place()
    {
        folder = parent / record_name(diary_seed()).value();
        fs::create_directories(folder);
    }
    ~Place()
    {
        std::error_code ignored;
        fs::remove_all(parent, ignored);
    }
};

Place& place()
{
    static Place one;
    return one;
}

} // namespace

void take(std::string_view bytes)
{
    if (bytes.empty())
        return;
    std::vector<RecordFile> files = place().files;
    const auto which = static_cast<unsigned char>(bytes[0]);
    bytes.remove_prefix(1);
    RecordFile& changed = files[which % files.size()];
    const bool same = changed.bytes == bytes;
    changed.bytes = bytes;
    if (which & 0x80 && changed.name != "SHA256SUMS") {
        std::string sums;
        for (const RecordFile& file : files) {
            if (file.name != "SHA256SUMS")
                sums += sha256_hex(file.bytes) + "  " + file.name + "\n";
        }
        files.back().bytes = sums;
    }
    for (const RecordFile& file : files)
        std::ofstream(place().folder / file.name, std::ios::binary | std::ios::trunc) << file.bytes;
    const Verification found = verify_record(place().folder);
    for (const RecordProblem& problem : found.problems)
        law(!problem.problem.text.empty(), "a problem without text");
    law(same == found.problems.empty() || (which & 0x80 && changed.name == "diary.json"),
        same ? "a sound record has problems" : "a changed record has none");
}

std::vector<std::string> seeds()
{
    std::vector<std::string> out;
    const std::vector<RecordFile>& files = place().files;
    for (std::size_t i = 0; i < files.size(); ++i) {
        for (const std::size_t mend : {0u, 0x80u}) {
            std::size_t which = mend;
            while (which % files.size() != i)
                ++which;
            out.push_back(static_cast<char>(which) + files[i].bytes);
        }
    }
    return out;
}

} // namespace evenfall::fuzz
