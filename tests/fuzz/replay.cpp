// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Runs a fuzz target without libFuzzer:
//   replay_TARGET FOLDER [SECONDS [FIRST]]  the seeds and the files of FOLDER as they are, then changes
//                                           of them numbered from FIRST (default 0) for so long (10 s)
//   replay_TARGET --write FOLDER            writes the seeds there, to begin from with libFuzzer
// A change depends on its number alone: "replay_TARGET FOLDER 0 N" does number N again.
#include "fuzz/target.h"

#include <algorithm>
#include <chrono>
#include <csignal>
#include <cstring>
#include <fstream>
#include <random>
#include <unistd.h>

extern "C" void __sanitizer_set_death_callback(void (*callback)()) __attribute__((weak));

namespace {

using namespace evenfall;
namespace fs = std::filesystem;

// What is being taken, for the last words.
std::string current;
long number = -1;

void last_words()
{
    std::fprintf(stderr, "while taking %s %ld; the bytes are in ./crash-input\n", number < 0 ? "file" : "change", number);
    if (std::FILE* file = std::fopen("crash-input", "wb")) {
        std::fwrite(current.data(), 1, current.size(), file);
        std::fclose(file);
    }
}

void on_signal(int signal)
{
    last_words();
    std::signal(signal, SIG_DFL);
    std::raise(signal);
}

void take(std::string bytes)
{
    current = std::move(bytes);
    ::alarm(60); // an input that takes a minute is a fault
    fuzz::take(current);
    ::alarm(0);
}

/// One to eight changes of one file, by a generator of its own.
std::string changed(const std::vector<std::string>& from, long which)
{
    std::mt19937_64 random(static_cast<std::uint64_t>(which) * 0x9E3779B97F4A7C15u + 1);
    const auto below = [&random](std::size_t end) { return end == 0 ? 0 : static_cast<std::size_t>(random() % end); };
    std::string bytes = from[below(from.size())];
    static const std::vector<std::string> words{
        "null", "true", "-1", "0", "1e999", "9223372036854775807", "-9223372036854775809", "0.1234567", "\"\"", "{}", "[]", "[[[[",
        "\\u0000", "\\ud800", "\xff", "\xe2\x80\xae", "2026-11-01T01:30", "2026-03-08T02:30", "9999-12-31T23:59:59.999999Z",
        "0000-01-01T00:00Z", "1900-01-01T00:00:00+23:59", "2037-12-31T23:59-12:00", "\r\n", "\x14\x14", "\x15", "+1e5", std::string(1, '\0'),
        "America/New_York", "Etc/GMT+12", ",", ":", "\"", "}", "]"};
    for (std::size_t n = 1 + below(8); n > 0; --n) {
        const std::size_t at = below(bytes.size() + 1);
        const std::size_t length = std::min(bytes.size() - at, std::size_t{1} << below(8));
        const std::string& other = from[below(from.size())];
        switch (below(10)) {
        case 0:
            if (at < bytes.size())
                bytes[at] = static_cast<char>(bytes[at] ^ (1 << below(8)));
            break;
        case 1:
            if (at < bytes.size())
                bytes[at] = static_cast<char>(random());
            break;
        case 2: bytes.erase(at, length); break;
        case 3: bytes.insert(at, bytes.substr(below(bytes.size()), length)); break;
        case 4: bytes.insert(at, words[below(words.size())]); break;
        case 5: bytes.replace(at, length, words[below(words.size())]); break;
        case 6: bytes.resize(at); break;
        case 7: bytes = bytes.substr(0, at) + other.substr(std::min(below(other.size() + 1), other.size())); break;
        case 8: { // another number in place of one
            const std::size_t begin = bytes.find_first_of("0123456789", at);
            if (begin != std::string::npos) {
                const std::size_t end = std::min(bytes.find_first_not_of("0123456789", begin), bytes.size());
                bytes.replace(begin, end - begin, std::to_string(static_cast<std::int64_t>(random() >> below(64))));
            }
            break;
        }
        default: { // one digit or letter for another of its kind: often still well-formed
            const std::size_t digit = bytes.find_first_of("0123456789", at);
            if (digit != std::string::npos)
                bytes[digit] = static_cast<char>('0' + below(10));
        }
        }
        if (bytes.size() > (std::size_t{1} << 18))
            bytes.resize(std::size_t{1} << 18);
    }
    return bytes;
}

} // namespace

int main(int count, char** words)
{
    if (count < 2) {
        std::fprintf(stderr, "usage: %s FOLDER [SECONDS [FIRST]] | --write FOLDER\n", words[0]);
        return 2;
    }
    for (const int signal : {SIGABRT, SIGALRM})
        std::signal(signal, on_signal);
    // The sanitizers tell more of the others than we can.
    if (__sanitizer_set_death_callback)
        __sanitizer_set_death_callback(last_words);
    else
        for (const int signal : {SIGSEGV, SIGFPE, SIGBUS})
            std::signal(signal, on_signal);
    std::vector<std::string> files = fuzz::seeds();
    if (std::strcmp(words[1], "--write") == 0 && count == 3) {
        fs::create_directories(words[2]);
        for (std::size_t i = 0; i < files.size(); ++i)
            std::ofstream(fs::path(words[2]) / ("seed-" + std::to_string(i)), std::ios::binary) << files[i];
        return 0;
    }
    const std::size_t seeds = files.size();
    if (fs::is_directory(words[1])) {
        for (const auto& entry : fs::directory_iterator(words[1])) {
            std::ifstream in(entry.path(), std::ios::binary);
            files.emplace_back(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>());
        }
    }
    if (seeds == 0)
        return 2;
    for (const std::string& file : files)
        take(file);
    const double seconds = count > 2 ? std::atof(words[2]) : 10;
    const long first = count > 3 ? std::atol(words[3]) : 0;
    const auto begin = std::chrono::steady_clock::now();
    const auto passed = [&] { return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count(); };
    number = first;
    do {
        take(changed(files, number));
        ++number;
    } while (passed() < seconds);
    std::printf("%s: %zu seeds, %zu found files, %ld changes from %ld on, %.0f s, no finding\n",
                fs::path(words[0]).filename().c_str(), seeds, files.size() - seeds, number - first, first, passed());
    return 0;
}
