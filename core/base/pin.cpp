// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "base/pin.h"

#include "base/file.h"
#include "base/json.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <fcntl.h>
#include <limits>
#include <optional>
#include <sodium.h>
#include <sys/file.h>
#include <unistd.h>

namespace evenfall {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view format_name = "evenfall.desk_lock/1";
constexpr std::string_view file_name = "desk.lock";
constexpr std::size_t hash_size = 32; // bytes; RFC 9106, section 4
constexpr std::size_t salt_size = crypto_pwhash_SALTBYTES;
constexpr long most_attempts = 1000000; // it grows no further
// More than this is no file of ours, and would stop the machine.
constexpr long most_memory_kib = 1 << 20;
constexpr long most_passes = 64;

constexpr std::array<std::chrono::seconds, 8> delays{
    std::chrono::seconds(30), std::chrono::minutes(1), std::chrono::minutes(2),
    std::chrono::minutes(4),  std::chrono::minutes(8), std::chrono::minutes(15),
    std::chrono::minutes(30), std::chrono::hours(1)};
constexpr int free_attempts = 3; // the wait comes after the third

using Salt = std::array<unsigned char, salt_size>;
using Hash = std::array<unsigned char, hash_size>;

/// Wipes a PIN when its call ends, however it does.
class Wiped {
  public:
    explicit Wiped(std::string& pin) : pin_(pin) {}
    ~Wiped()
    {
        sodium_memzero(pin_.data(), pin_.size());
        pin_.clear();
    }
    Wiped(const Wiped&) = delete;
    Wiped& operator=(const Wiped&) = delete;

  private:
    std::string& pin_;
};

/// One at a time, in all processes. The lock is on the folder, for the file is replaced by each
/// write.
class Turn {
  public:
    explicit Turn(const fs::path& folder)
        : fd_(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC))
    {
        if (fd_ < 0)
            problem_ = io_problem("cannot open", folder, errno);
        else if (::flock(fd_, LOCK_EX | LOCK_NB) != 0)
            problem_ = errno == EWOULDBLOCK
                           ? Problem{Fault::io, "busy", "",
                                     "desk.lock is in use at this moment; try again"}
                           : io_problem("cannot lock", folder, errno);
    }
    ~Turn()
    {
        if (fd_ >= 0)
            ::close(fd_);
    }
    Turn(const Turn&) = delete;
    Turn& operator=(const Turn&) = delete;
    const std::optional<Problem>& problem() const { return problem_; }

  private:
    int fd_;
    std::optional<Problem> problem_;
};

/// What the file holds.
struct Lock {
    PinCost cost;
    Salt salt{};
    Hash hash{};
    long attempts = 0;
    BootTime counted; ///< when the last guess was, or when the delay began again in a new boot
};

template <std::size_t N>
std::string hex(const std::array<unsigned char, N>& bytes)
{
    std::array<char, 2 * N + 1> text{};
    sodium_bin2hex(text.data(), text.size(), bytes.data(), N);
    return text.data();
}

template <std::size_t N>
void read_hex(ObjectReader& reader, std::string_view key, std::array<unsigned char, N>& bytes)
{
    const std::optional<std::string> text = reader.text(key);
    // With no place for the end, hex2bin takes the whole text or fails.
    if (text &&
        (text->size() != 2 * N || sodium_hex2bin(bytes.data(), N, text->data(), text->size(),
                                                 nullptr, nullptr, nullptr) != 0))
        reader.fault(key, "bad_hex",
                     "right would be " + std::to_string(2 * N) + " hexadecimal digits");
}

Result<Lock> read_lock(std::string_view text, const PinCost& least)
{
    const Result<Json> json = parse_json(text);
    if (!json)
        return json.problems();
    Problems problems;
    Lock lock;
    ObjectReader top(*json, "", problems);
    check_format(top, format_name);
    if (const Json* found = top.needed("argon2id")) {
        ObjectReader argon(*found, top.at("argon2id"), problems);
        // Weaker is refused: whoever can write one number must not make guessing cheap.
        const auto memory =
            argon.integer("memory_kib", static_cast<long>(least.memory_kib), most_memory_kib);
        const auto passes = argon.integer("passes", static_cast<long>(least.passes), most_passes);
        lock.cost = {static_cast<std::uint64_t>(memory.value_or(0)),
                     static_cast<std::uint64_t>(passes.value_or(0))};
        read_hex(argon, "salt", lock.salt);
        read_hex(argon, "hash", lock.hash);
        argon.finish();
    }
    lock.attempts = top.integer("attempts", 0, most_attempts).value_or(0);
    lock.counted.boot = top.text("boot").value_or("");
    lock.counted.since_boot =
        Span(top.integer("since_boot_us", 0, std::numeric_limits<long>::max()).value_or(0));
    top.finish();
    if (!problems.empty())
        return problems;
    return lock;
}

std::string written(const Lock& lock)
{
    Json json;
    json["format"] = format_name;
    json["argon2id"] = {{"memory_kib", lock.cost.memory_kib},
                        {"passes", lock.cost.passes},
                        {"salt", hex(lock.salt)},
                        {"hash", hex(lock.hash)}};
    json["attempts"] = lock.attempts;
    json["boot"] = lock.counted.boot;
    json["since_boot_us"] = lock.counted.since_boot.count();
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

/// As the file can hold it. Without an id two boots look like one: then no guess is gained either,
/// for the time since boot is past a delay's end only when this boot has lasted at least as long.
BootTime storable(const BootTime& now)
{
    return {now.boot.empty() ? "unknown" : now.boot, std::max(now.since_boot, Span(0))};
}

std::optional<Problem> wrong_form(std::string_view pin)
{
    const bool digits =
        std::all_of(pin.begin(), pin.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (digits && pin.size() >= 6 && pin.size() <= 64)
        return std::nullopt;
    return Problem{Fault::refused, "pin_form", "", "this is no PIN; right would be 6 to 64 digits"};
}

/// Hashes into `hash`. The only way that it fails is memory (the parameters are checked before),
/// and that must not look like a wrong PIN, as it would from crypto_pwhash_str_verify().
std::optional<Problem> hash_pin(std::string_view pin, const PinCost& cost, const Salt& salt,
                                Hash& hash)
{
    // It picks the fastest code for this processor. Where it fails, for want of chance, the salt's
    // randombytes_buf() ends the process.
    static const int ready = sodium_init();
    (void)ready;
    if (crypto_pwhash(hash.data(), hash.size(), pin.data(), pin.size(), salt.data(), cost.passes,
                      cost.memory_kib * 1024, crypto_pwhash_ALG_ARGON2ID13) == 0)
        return std::nullopt;
    return Problem{Fault::io, "no_memory", "",
                   "there is not enough free memory to look at a PIN (" +
                       std::to_string(cost.memory_kib) + " KiB)"};
}

/// A lock for this PIN that nobody has guessed at.
Result<Lock> new_lock(std::string_view pin, const PinCost& cost)
{
    Lock lock;
    lock.cost = cost;
    lock.counted = storable({});
    randombytes_buf(lock.salt.data(), lock.salt.size());
    if (const auto problem = hash_pin(pin, cost, lock.salt, lock.hash))
        return *problem;
    return lock;
}

/// The file, in its folder, while this process has the turn.
class LockFile {
  public:
    explicit LockFile(const fs::path& folder)
        : turn_(folder), folder_(folder), path_(folder / file_name)
    {
    }

    const std::optional<Problem>& problem() const { return turn_.problem(); }

    /// Whether there is anything of that name, a dangling link among it.
    Result<bool> exists() const
    {
        std::error_code error;
        const fs::file_status status = fs::symlink_status(path_, error);
        if (status.type() == fs::file_type::not_found)
            return false;
        if (status.type() == fs::file_type::none)
            return io_problem("cannot look at", path_, error.value());
        return true;
    }

    Result<Lock> read(const PinCost& least) const
    {
        if (!fs::is_regular_file(fs::symlink_status(path_)))
            return Problem{Fault::malformed, "wrong_type", "",
                           path_.string() + " is not a plain file"};
        const Result<std::string> text = read_file(path_, 1 << 16);
        if (!text)
            return text.problems();
        return read_lock(*text, least);
    }

    Status write(const Lock& lock) const
    {
        clear_away();
        return write_file(path_, written(lock));
    }

    Status remove() const
    {
        clear_away();
        if (::unlink(path_.c_str()) != 0 && errno != ENOENT)
            return io_problem("cannot remove", path_, errno);
        return sync_folder(folder_);
    }

  private:
    Turn turn_;
    fs::path folder_;
    fs::path path_;

    /// What a kill left in the middle of a write: it holds the hash too.
    void clear_away() const
    {
        std::error_code ignored;
        for (fs::directory_iterator entry(folder_, ignored), end; !ignored && entry != end;
             entry.increment(ignored)) {
            const std::string name = entry->path().filename().string();
            if (name.starts_with("." + std::string(file_name) + ".") && name.ends_with(".part"))
                ::unlink(entry->path().c_str());
        }
    }
};

/// What the file says, and how long it is still to wait. Begins the delay anew in a new boot, on
/// disk.
struct Found {
    PinAnswer answer; ///< none, ready, wait or damaged
    Lock lock;
};

Result<Found> find(const LockFile& file, const PinCost& least, const BootTime& now)
{
    if (file.problem())
        return *file.problem();
    Found found;
    const Result<bool> there = file.exists();
    if (!there)
        return there.problems();
    if (!*there) {
        found.answer.state = PinState::none;
        return found;
    }
    const Result<Lock> lock = file.read(least);
    if (!lock) {
        const Problems problems = lock.problems();
        if (exit_status(problems) == static_cast<int>(Fault::io))
            return problems;
        found.answer.found = problems;
        return found;
    }
    found.lock = *lock;
    found.answer.attempts = static_cast<int>(lock->attempts);
    const Span delay = pin_delay(found.answer.attempts);
    BootTime& counted = found.lock.counted;
    if (delay > Span(0) && (counted.boot != now.boot || counted.since_boot > now.since_boot)) {
        counted = now;
        if (Status written = file.write(found.lock); !written)
            return written.problems();
    }
    found.answer.wait = delay > Span(0)
                            ? std::max(delay - (now.since_boot - counted.since_boot), Span(0))
                            : Span(0);
    found.answer.state = found.answer.wait > Span(0) ? PinState::wait : PinState::ready;
    return found;
}

/// Counts, then hashes. On `open` the file still has the count.
Result<Found> guess(const LockFile& file, const PinCost& least, std::string_view pin,
                    const BootTime& now)
{
    Result<Found> found = find(file, least, now);
    if (!found || found->answer.state != PinState::ready)
        return found;
    Lock& lock = found->lock;
    lock.attempts = std::min(lock.attempts + 1, most_attempts);
    lock.counted = now;
    if (Status counted = file.write(lock); !counted)
        return counted.problems();
    Hash hash{};
    if (const auto problem = hash_pin(pin, lock.cost, lock.salt, hash))
        return *problem;
    const bool right = sodium_memcmp(hash.data(), lock.hash.data(), hash.size()) == 0;
    found->answer.state = right ? PinState::open : PinState::wrong;
    found->answer.attempts = static_cast<int>(lock.attempts);
    found->answer.wait = right ? Span(0) : pin_delay(found->answer.attempts);
    return found;
}

} // namespace

Span pin_delay(int attempts)
{
    if (attempts < free_attempts)
        return Span(0);
    return delays[std::min(static_cast<std::size_t>(attempts - free_attempts), delays.size() - 1)];
}

DeskLock::DeskLock(fs::path folder, PinCost cost) : folder_(std::move(folder)), cost_(cost) {}

Result<PinAnswer> DeskLock::look(const BootTime& now)
{
    const Result<Found> found = find(LockFile(folder_), cost_, storable(now));
    if (!found)
        return found.problems();
    return found->answer;
}

Status DeskLock::set_first(std::string& pin)
{
    const Wiped wiped(pin);
    if (const auto problem = wrong_form(pin))
        return *problem;
    const LockFile file(folder_);
    if (file.problem())
        return *file.problem();
    const Result<bool> there = file.exists();
    if (!there)
        return there.problems();
    if (*there)
        return Problem{Fault::refused, "pin_set", "",
                       "there is a PIN already; right would be to change it"};
    const Result<Lock> lock = new_lock(pin, cost_);
    if (!lock)
        return lock.problems();
    return file.write(*lock);
}

Result<PinAnswer> DeskLock::check(std::string& pin, const BootTime& now)
{
    const Wiped wiped(pin);
    if (const auto problem = wrong_form(pin))
        return *problem;
    const LockFile file(folder_);
    Result<Found> found = guess(file, cost_, pin, storable(now));
    if (!found)
        return found.problems();
    if (found->answer.state == PinState::open) {
        found->lock.attempts = 0;
        if (file.write(found->lock))
            found->answer.attempts = 0;
    }
    return found->answer;
}

Result<PinAnswer> DeskLock::change(std::string& old_pin, std::string& new_pin, const BootTime& now)
{
    const Wiped wiped_old(old_pin), wiped_new(new_pin);
    for (const std::string* pin : {&old_pin, &new_pin}) {
        if (const auto problem = wrong_form(*pin))
            return *problem;
    }
    const LockFile file(folder_);
    Result<Found> found = guess(file, cost_, old_pin, storable(now));
    if (!found)
        return found.problems();
    if (found->answer.state == PinState::open) {
        const Result<Lock> lock = new_lock(new_pin, cost_);
        if (!lock)
            return lock.problems();
        if (Status written = file.write(*lock); !written)
            return written.problems();
        found->answer.attempts = 0;
    }
    return found->answer;
}

Status DeskLock::forget()
{
    const LockFile file(folder_);
    if (file.problem())
        return *file.problem();
    return file.remove();
}

} // namespace evenfall
