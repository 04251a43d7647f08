// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/folder.h"

#include "base/file.h"
#include "base/hash.h"
#include "record/diary_edf.h"
#include "record/fhir.h"

#include <algorithm>
#include <cerrno>
#include <csignal>
#include <cstdio>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace evenfall {
namespace {

/// Removes a temporary folder on every way out but the last.
class TemporaryFolder {
  public:
    explicit TemporaryFolder(std::filesystem::path path) : path_(std::move(path)) {}
    ~TemporaryFolder()
    {
        std::error_code ignored;
        if (!kept_)
            std::filesystem::remove_all(path_, ignored);
    }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    const std::filesystem::path& path() const { return path_; }
    void keep() { kept_ = true; }

  private:
    std::filesystem::path path_;
    bool kept_ = false;
};

constexpr std::string_view temporary_end = ".part";

/// Removes what writers of the same record left here when they were killed. A writer that still
/// runs keeps its own.
void remove_leftovers(const std::filesystem::path& parent, const std::string& name)
{
    std::error_code ignored;
    const std::string begin = "." + name + ".";
    for (const auto& entry : std::filesystem::directory_iterator(parent, ignored)) {
        const std::string found = entry.path().filename().string();
        if (!found.starts_with(begin) || !found.ends_with(temporary_end) ||
            found.size() <= begin.size() + temporary_end.size())
            continue;
        const std::string middle =
            found.substr(begin.size(), found.size() - begin.size() - temporary_end.size());
        if (middle.size() > 9 || middle.find_first_not_of("0123456789") != std::string::npos)
            continue;
        const auto process = static_cast<pid_t>(std::stol(middle));
        const bool runs = process != ::getpid() && (::kill(process, 0) == 0 || errno == EPERM);
        if (!runs)
            std::filesystem::remove_all(entry.path(), ignored);
    }
}

Problem exists_already(const std::filesystem::path& path)
{
    return {Fault::refused, "record_exists", "",
            path.string() +
                " exists already; a record is never overwritten. Right would be another "
                "folder, or to move the old record away"};
}

/// Renames without replacing. Some file systems of sticks do not know that form: there it is looked
/// for first.
Status rename_new(const std::filesystem::path& from, const std::filesystem::path& to)
{
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0)
        return Done{};
    if (errno == EEXIST)
        return exists_already(to);
    if (errno != EINVAL && errno != ENOSYS)
        return io_problem("cannot rename to", to, errno);
    struct stat there {};
    if (::lstat(to.c_str(), &there) == 0)
        return exists_already(to);
    if (::rename(from.c_str(), to.c_str()) != 0)
        return io_problem("cannot rename to", to, errno);
    return Done{};
}

bool plain_file_name(const std::string& name)
{
    return !name.empty() && name.size() <= 255 && name[0] != '.' &&
           name.find_first_of("/\\\n\r") == std::string::npos &&
           name.find('\0') == std::string::npos;
}

/// Whatever a program put into a diary: a record that its own reader would refuse is not written.
Problems not_read_back(const std::string& json)
{
    const Result<Diary> back = read_diary(json);
    Problems problems = back.problems();
    for (Problem& problem : problems)
        problem.fault = Fault::refused; // not a fault of a file: there is none yet
    if (!back)
        return problems;
    if (const Result<std::string> again = diary_to_json(*back); !again || *again != json)
        return {{Fault::refused, "not_read_back", "",
                 "this diary reads back as another one; right would be values that diary.json can "
                 "carry"}};
    return {};
}

} // namespace

Result<std::vector<RecordFile>> record_files(const Diary& diary,
                                             const std::vector<RecordFile>& more)
{
    Result<std::string> json = diary_to_json(diary);
    if (!json)
        return json.problems();
    if (Problems problems = not_read_back(*json); !problems.empty())
        return problems;
    Result<std::string> edf = diary_edf(diary);
    if (!edf)
        return edf.problems();
    Result<std::string> fhir = diary_fhir(diary);
    if (!fhir)
        return fhir.problems();
    std::vector<RecordFile> files{
        {"diary.json", *json}, {"diary.edf", *edf}, {"diary.fhir.json", *fhir}};
    for (const RecordFile& file : more) {
        const bool taken = file.name == "SHA256SUMS" ||
                           std::any_of(files.begin(), files.end(), [&](const RecordFile& other) {
                               return other.name == file.name;
                           });
        if (!plain_file_name(file.name) || taken)
            return Problem{
                Fault::refused, "bad_file_name", "",
                "\"" + file.name +
                    "\" cannot be a file of the record; right would be a plain name of its own"};
        files.push_back(file);
    }
    // The form of sha256sum: sum, two spaces, name.
    std::string sums;
    for (const RecordFile& file : files)
        sums += sha256_hex(file.bytes) + "  " + file.name + "\n";
    files.push_back({"SHA256SUMS", sums});
    return files;
}

namespace {

/// A folder of these files at `parent / name`: there whole and durable, or not at all.
Result<std::filesystem::path> place_folder(const std::filesystem::path& parent, const std::string& name,
                                           const std::vector<RecordFile>& files)
{
    const std::filesystem::path path = parent / name;
    struct stat there {};
    if (::lstat(path.c_str(), &there) == 0)
        return exists_already(path);

    remove_leftovers(parent, name);
    const std::filesystem::path hidden =
        parent / ("." + name + "." + std::to_string(::getpid()) + std::string(temporary_end));
    if (::mkdir(hidden.c_str(), 0700) != 0)
        return io_problem("cannot create", hidden, errno);
    TemporaryFolder folder(hidden);
    for (const RecordFile& file : files) {
        if (const Status written = write_new_file(folder.path() / file.name, file.bytes); !written)
            return written.problems();
    }
    if (const Status synced = sync_folder(folder.path()); !synced)
        return synced.problems();
    if (const Status renamed = rename_new(folder.path(), path); !renamed)
        return renamed.problems();
    folder.keep();
    if (const Status synced = sync_folder(parent); !synced) {
        // It may or may not survive a power cut: it must not look finished.
        std::error_code ignored;
        std::filesystem::remove_all(path, ignored);
        return synced.problems();
    }
    return path;
}

} // namespace

Result<std::filesystem::path> write_record(const Diary& diary, const std::filesystem::path& parent,
                                           const std::vector<RecordFile>& more)
{
    const Result<std::string> name = record_name(diary);
    if (!name)
        return name.problems();
    const Result<std::vector<RecordFile>> files = record_files(diary, more);
    if (!files)
        return files.problems();
    return place_folder(parent, *name, *files);
}

Result<std::filesystem::path> copy_record(const std::filesystem::path& record, const std::filesystem::path& parent)
{
    std::vector<RecordFile> files;
    std::error_code error;
    for (std::filesystem::directory_iterator at(record, error), end; !error && at != end; at.increment(error)) {
        Result<std::string> bytes = read_file(at->path());
        if (!bytes)
            return bytes.problems();
        files.push_back({at->path().filename().string(), std::move(*bytes)});
    }
    if (error)
        return io_problem("cannot read the folder", record, error.value());
    const std::filesystem::path there = parent / record.filename();
    const Result<std::string> sums = read_file(record / "SHA256SUMS"), sums_there = read_file(there / "SHA256SUMS");
    if (sums && sums_there && *sums == *sums_there)
        return there; // taken out before; whoever calls verifies it
    return place_folder(parent, record.filename().string(), files);
}

} // namespace evenfall
