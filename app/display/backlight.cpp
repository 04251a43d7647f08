// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "display/backlight.h"

#include "base/file.h"

#include <algorithm>
#include <cerrno>
#include <charconv>
#include <fcntl.h>
#include <unistd.h>

namespace evenfall {
namespace {

constexpr std::size_t attribute_limit = 4096; // sysfs gives one page at most

std::optional<std::string> attribute(const std::filesystem::path& file)
{
    Result<std::string> text = read_file_start(file, attribute_limit);
    if (!text)
        return std::nullopt;
    std::string line = std::move(text).value();
    line.resize(std::min(line.size(), line.find('\n')));
    return line;
}

std::optional<long> number(const std::filesystem::path& file)
{
    const std::optional<std::string> text = attribute(file);
    long value = 0;
    if (!text)
        return std::nullopt;
    const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), value);
    if (error != std::errc() || end != text->data() + text->size() || text->empty())
        return std::nullopt;
    return value;
}

int preference(const std::filesystem::path& device)
{
    const std::string type = attribute(device / "type").value_or("");
    return type == "firmware" ? 0 : type == "platform" ? 1 : 2;
}

} // namespace

std::optional<Backlight> backlight(const std::filesystem::path& folder, const std::string& name)
{
    // A name comes from our own file too: it must not lead out of the folder.
    if (name.empty() || name == "." || name == ".." || name.find('/') != std::string::npos)
        return std::nullopt;
    const std::optional<long> now = number(folder / name / "brightness");
    const std::optional<long> most = number(folder / name / "max_brightness");
    if (!now || !most || *most < 1 || *now < 0 || *now > *most)
        return std::nullopt;
    return Backlight{name, *now, *most};
}

std::vector<Backlight> backlights(const std::filesystem::path& folder)
{
    std::vector<Backlight> best;
    int best_preference = 3;
    std::error_code error;
    for (auto entry = std::filesystem::directory_iterator(folder, error);
         !error && entry != std::filesystem::directory_iterator(); entry.increment(error)) {
        const std::optional<Backlight> one = backlight(folder, entry->path().filename().string());
        const int its = preference(entry->path());
        if (!one || its > best_preference)
            continue;
        if (its < best_preference)
            best.clear();
        best_preference = its;
        best.push_back(*one);
    }
    std::sort(best.begin(), best.end(),
              [](const Backlight& a, const Backlight& b) { return a.name < b.name; });
    return best;
}

long least_light(long most) { return std::max(1L, most / 20 + (most % 20 != 0 ? 1 : 0)); }

bool may_write(const std::filesystem::path& folder, const std::string& name)
{
    return ::access((folder / name / "brightness").c_str(), W_OK) == 0;
}

Status write_brightness(const std::filesystem::path& folder, const std::string& name, long value)
{
    // In place: sysfs knows no rename, and the driver takes one write as one value.
    const std::filesystem::path file = folder / name / "brightness";
    const int fd = ::open(file.c_str(), O_WRONLY | O_TRUNC | O_CLOEXEC);
    if (fd < 0)
        return io_problem("cannot open", file, errno);
    const std::string text = std::to_string(value) + "\n";
    const ssize_t written = ::write(fd, text.data(), text.size());
    const int reason = written < 0 ? errno : EIO;
    ::close(fd);
    if (written != static_cast<ssize_t>(text.size()))
        return io_problem("cannot write", file, reason);
    return Done{};
}

} // namespace evenfall
