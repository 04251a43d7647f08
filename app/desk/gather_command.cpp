// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "command.h"

#include "base/file.h"
#include "record/gather.h"

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <fcntl.h>
#include <ostream>
#include <unistd.h>

namespace evenfall::desk {
namespace {

std::string usage()
{
    std::string text = "usage: evenfall-desk gather DIR... --csv FILE\n"
                       "  One line for each record, as CSV (RFC 4180). DIR is a record folder, or a folder of them, which\n"
                       "  are taken in the order in which the file system lists them: sort by a column. A folder that\n"
                       "  could not be read gets a line on standard error and none in the table. FILE is replaced when it\n"
                       "  is complete. columns:\n";
    for (const GatherColumn& column : gather_columns())
        text += std::string("  ") + column.name + (*column.meaning ? std::string(": ") + column.meaning : "") + "\n";
    return text;
}

/// A bar on a terminal; nothing where standard error goes elsewhere.
class Progress {
  public:
    explicit Progress(std::size_t total) : total_(total), shown_(::isatty(STDERR_FILENO) == 1) {}
    ~Progress() { clear(); }
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    void step()
    {
        ++done_;
        if (shown_ && (done_ % 50 == 0 || done_ == total_))
            draw();
    }
    void clear() const
    {
        if (shown_)
            std::fputs("\r\033[K", stderr);
    }

  private:
    void draw() const
    {
        constexpr std::size_t width = 40;
        const std::size_t full = total_ == 0 ? width : std::min(width, done_ * width / total_);
        std::fprintf(stderr, "\r[%s%s] %zu of %zu", std::string(full, '#').c_str(), std::string(width - full, '.').c_str(), done_, total_);
        std::fflush(stderr);
    }
    std::size_t total_, done_ = 0;
    bool shown_;
};

/// The table while it grows: under a temporary name, and gone again unless it is finished.
class Table {
  public:
    explicit Table(std::filesystem::path path) : path_(std::move(path))
    {
        const std::filesystem::path folder = path_.has_parent_path() ? path_.parent_path() : ".";
        temporary_ = folder / ("." + path_.filename().string() + "." + std::to_string(::getpid()) + ".part");
    }
    ~Table()
    {
        if (file_) {
            std::fclose(file_);
            ::unlink(temporary_.c_str());
        }
    }
    Table(const Table&) = delete;
    Table& operator=(const Table&) = delete;

    Status open()
    {
        const int fd = ::open(temporary_.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
        file_ = fd < 0 ? nullptr : ::fdopen(fd, "w");
        return file_ ? Status(Done{}) : Status(io_problem("cannot create", temporary_, errno));
    }
    Status add(const std::string& line)
    {
        if (std::fwrite(line.data(), 1, line.size(), file_) != line.size())
            return io_problem("cannot write", temporary_, errno);
        return Done{};
    }
    Status finish()
    {
        if (std::fflush(file_) != 0 || ::fsync(::fileno(file_)) != 0)
            return io_problem("cannot write", temporary_, errno);
        if (::rename(temporary_.c_str(), path_.c_str()) != 0)
            return io_problem("cannot rename to", path_, errno);
        std::fclose(file_);
        file_ = nullptr;
        return sync_folder(path_.has_parent_path() ? path_.parent_path() : ".");
    }

  private:
    std::filesystem::path path_, temporary_;
    std::FILE* file_ = nullptr;
};

/// Calls `each` for every record folder in `folder`, which may be one itself. Names are not kept:
/// memory does not grow with their number.
template <class Each>
Status for_records(const std::filesystem::path& folder, Each each)
{
    std::error_code error;
    if (std::filesystem::exists(folder / "diary.json", error)) {
        each(folder);
        return Done{};
    }
    std::filesystem::directory_iterator entries(folder, error);
    for (; !error && entries != std::filesystem::directory_iterator(); entries.increment(error)) {
        std::error_code ignored;
        const std::string name = entries->path().filename().string();
        if (!name.starts_with('.') && entries->is_directory(ignored))
            each(entries->path());
    }
    if (error)
        return io_problem("cannot read the folder", folder, error.value());
    return Done{};
}

} // namespace

int gather_command(std::span<const std::string> args, std::ostream& out, std::ostream& err)
{
    int status = 0;
    const std::optional<Arguments> arguments = begin_command(args, {}, {"--csv"}, usage(), out, err, status);
    if (!arguments)
        return status;
    const std::optional<std::string> csv = arguments->option("--csv");
    if (!csv || arguments->rest.empty())
        return bad_usage("gather needs at least one folder and --csv FILE", usage(), err);

    std::size_t total = 0;
    for (const std::string& folder : arguments->rest) {
        const Status counted = for_records(folder, [&total](const std::filesystem::path&) { ++total; });
        if (!counted)
            return report(folder, counted.problems(), err);
    }
    Table table(*csv);
    Status written = table.open();
    if (written)
        written = table.add(gather_header());
    Progress progress(total);
    std::size_t lines = 0, skipped = 0;
    for (const std::string& folder : arguments->rest) {
        const Status read = for_records(folder, [&](const std::filesystem::path& record) {
            if (!written)
                return;
            const Result<std::string> line = gather_line(record);
            if (line) {
                written = table.add(*line);
                ++lines;
            } else {
                progress.clear();
                status = std::max(status, report(record.string(), line.problems(), err));
                ++skipped;
            }
            progress.step();
        });
        if (!read)
            status = std::max(status, report(folder, read.problems(), err));
    }
    if (written)
        written = table.finish();
    if (!written)
        return report(*csv, written.problems(), err);
    progress.clear();
    out << *csv << ": " << lines << (lines == 1 ? " record" : " records");
    if (skipped > 0)
        out << ", " << skipped << " skipped";
    out << '\n';
    return status;
}

} // namespace evenfall::desk
