// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "command.h"
#include "out_folder.h"

#include "base/file.h"
#include "kit/visit.h"
#include "narration/spoken.h"
#include "words/words.h"

#include <QProcess>
#include <QStandardPaths>
#include <algorithm>
#include <atomic>
#include <cstdlib>
#include <filesystem>
#include <map>
#include <mutex>
#include <ostream>
#include <thread>

namespace evenfall::desk {
namespace {

namespace fs = std::filesystem;

const std::string usage =
    "usage: evenfall-desk voice --visit VISIT.json [--lang L] [--kits DIR] [--list] --out DIR\n"
    "       evenfall-desk voice --shipped [--lang L] [--list] --out DIR\n"
    "  What the pages of a visit's kit read aloud, for both hands and in every language: the list\n"
    "  DIR/texts.csv (language, file name, text id, text) for whoever records it, and a spoken file\n"
    "  DIR/<language>/<file name>.opus for each text, made with espeak-ng and opusenc where there is\n"
    "  none yet. --list writes the list only. A clinic puts its own recordings (.wav, .ogg, .opus) of\n"
    "  the same names into voice/<language>/ of the tablet's data folder; they go before the others.\n"
    "  A sentence that changes gets another name. --shipped: the demo visit with every shipped kit.\n";

/// A text of one language; several kits may say it.
struct Line {
    std::string language;
    SpokenUnit unit;
};

/// What espeak-ng calls the way a language is spoken, where the bare code would be another region's.
std::string voice_of(const std::string& language)
{
    if (language == "en")
        return "en-us";
    return language == "es" ? "es-419" : language;
}

Problem tool_missing(const std::string& tool, const std::string& package)
{
    return {Fault::io, "no_tool", "", "there is no " + tool + "; right would be the Debian package " + package};
}

/// Speaks one text into a file that is there whole or not at all.
Status speak(const Line& line, const fs::path& file)
{
    fs::path half = file;
    half += ".part";
    QProcess speaker, packer;
    speaker.setStandardOutputProcess(&packer);
    // Words a minute: slower than a newsreader (our own judgement).
    speaker.start(QStringLiteral("espeak-ng"), {QStringLiteral("--stdin"), QStringLiteral("--stdout"), QStringLiteral("-s"), QStringLiteral("145"),
                                                QStringLiteral("-v"), QString::fromStdString(voice_of(line.language))});
    // The same bytes each time: a fixed serial number, no name of a file or a program's time.
    packer.start(QStringLiteral("opusenc"), {QStringLiteral("--quiet"), QStringLiteral("--bitrate"), QStringLiteral("18"), QStringLiteral("--comp"), QStringLiteral("3"), QStringLiteral("--serial"), QStringLiteral("1"),
                                             QStringLiteral("-"), QString::fromStdString(half.string())});
    speaker.write(QByteArray::fromStdString(line.unit.sound + "\n"));
    speaker.closeWriteChannel();
    const bool fine = speaker.waitForFinished() && packer.waitForFinished() && speaker.exitStatus() == QProcess::NormalExit && speaker.exitCode() == 0 &&
                      packer.exitStatus() == QProcess::NormalExit && packer.exitCode() == 0;
    std::error_code error;
    if (fine)
        fs::rename(half, file, error);
    if (!fine || error) {
        const std::string said = (speaker.readAllStandardError() + packer.readAllStandardError()).simplified().toStdString();
        fs::remove(half, error);
        return Problem{Fault::io, "not_spoken", "", "\"" + line.unit.words + "\" could not be spoken in " + line.language + ": " + said};
    }
    return Done{};
}

fs::path file_of(const Line& line, const fs::path& folder) { return folder / line.language / (line.unit.key() + ".opus"); }

/// Speaks what has no file yet, on all cores. The number of files made.
Result<size_t> speak_all(const std::vector<Line>& lines, const fs::path& folder)
{
    if (QStandardPaths::findExecutable(QStringLiteral("espeak-ng")).isEmpty())
        return tool_missing("espeak-ng", "espeak-ng");
    if (QStandardPaths::findExecutable(QStringLiteral("opusenc")).isEmpty())
        return tool_missing("opusenc", "opus-tools");
    std::vector<const Line*> missing;
    for (const Line& line : lines) {
        std::error_code error;
        fs::create_directories(folder / line.language, error);
        if (error)
            return io_problem("cannot make the folder", folder / line.language, error.value());
        if (!fs::exists(file_of(line, folder)))
            missing.push_back(&line);
    }
    std::atomic<size_t> next{0};
    std::mutex guard;
    Problems problems;
    const auto work = [&] {
        for (size_t i = next++; i < missing.size(); i = next++) {
            const Status spoken = speak(*missing[i], file_of(*missing[i], folder));
            if (spoken)
                continue;
            const std::lock_guard lock(guard);
            problems.push_back(spoken.problems()[0]);
            next = missing.size(); // the rest would most likely fail the same way
        }
    };
    std::vector<std::jthread> workers;
    for (unsigned n = 0; n < std::max(1u, std::thread::hardware_concurrency()); ++n)
        workers.emplace_back(work);
    workers.clear(); // waits
    if (!problems.empty())
        return problems;
    return missing.size();
}

std::string quoted(const std::string& text)
{
    std::string out = "\"";
    for (const char c : text)
        out += c == '"' ? "\"\"" : std::string(1, c);
    return out + "\"";
}

std::string list_of(const std::vector<Line>& lines)
{
    std::string out = "language,file,text_id,text\r\n"; // RFC 4180
    for (const Line& line : lines)
        out += line.language + "," + line.unit.key() + "," + line.unit.id + "," + quoted(line.unit.words) + "\r\n";
    return out;
}

/// Adds what this visit says, for both hands.
Status collect(VisitWithKit visit, const QStringList& languages, std::map<std::string, Line>& lines)
{
    for (const WritingHand hand : {WritingHand::right, WritingHand::left}) {
        visit.visit.hand = hand;
        const Result<Plan> plan = make_plan(visit.kit, hand);
        if (!plan)
            return plan.problems();
        for (const QString& language : languages) {
            const Words words(language, visit.visit.zone);
            for (SpokenUnit& unit : Teller{visit.visit, visit.kit, words}.all(*plan)) {
                const std::string code = language.toStdString();
                const std::string name = code + "/" + unit.key();
                lines.emplace(name, Line{code, std::move(unit)});
            }
        }
    }
    return Done{};
}

} // namespace

int voice_command(std::span<const std::string> args, std::ostream& out, std::ostream& err)
{
    int status = 0;
    const std::optional<Arguments> arguments =
        begin_command(args, {"--shipped", "--list"}, {"--visit", "--lang", "--kits", "--out"}, usage, out, err, status);
    if (!arguments)
        return status;
    const std::optional<std::string> named = arguments->option("--visit"), to = arguments->option("--out"), language = arguments->option("--lang");
    if (named.has_value() == arguments->has("--shipped") || !arguments->rest.empty())
        return bad_usage("voice takes --visit and one visit file, or --shipped", usage, err);
    if (!to)
        return bad_usage("voice needs --out DIR", usage, err);
    QStringList languages = Words::languages();
    if (language) {
        if (!languages.contains(QString::fromStdString(*language)))
            return bad_usage("there is no language \"" + *language + "\"; right would be one of: " + languages.join(QStringLiteral(", ")).toStdString(), usage, err);
        languages = {QString::fromStdString(*language)};
    }
    fs::path assets = EVENFALL_ASSETS_DIR;
    if (const char* other = std::getenv("EVENFALL_ASSETS"))
        assets = other;
    std::vector<fs::path> kit_folders;
    if (const auto kits = arguments->option("--kits"))
        kit_folders.emplace_back(*kits);
    kit_folders.push_back(assets / "kits");

    const std::string file = named.value_or((assets / "visits" / "demo.json").string());
    const Result<VisitWithKit> visit = load_visit(file, kit_folders);
    if (!visit)
        return report(file, visit.problems(), err);
    std::map<std::string, Line> found;
    if (named) {
        if (const Status collected = collect(*visit, languages, found); !collected)
            return report(file, collected.problems(), err);
    } else {
        std::error_code error;
        for (const fs::directory_entry& kit_file : fs::directory_iterator(assets / "kits", error)) {
            if (kit_file.path().extension() != ".json")
                continue;
            const Result<Kit> kit = load_kit(kit_file.path());
            if (!kit)
                return report(kit_file.path().string(), kit.problems(), err);
            if (const Status collected = collect({visit->visit, *kit}, languages, found); !collected)
                return report(kit_file.path().string(), collected.problems(), err);
        }
        if (error)
            return report((assets / "kits").string(), {io_problem("cannot read the folder", assets / "kits", error.value())}, err);
    }
    std::vector<Line> lines;
    for (auto& [name, line] : found)
        lines.push_back(std::move(line));

    OutFolder folder(*to);
    if (const Status made = folder.make(); !made)
        return report(*to, made.problems(), err);
    if (!arguments->has("--list")) {
        const Result<size_t> spoken = speak_all(lines, *to);
        if (!spoken)
            return report(*to, spoken.problems(), err);
        out << *spoken << " of " << lines.size() << " texts spoken anew\n";
    }
    // The list last: where it is, all is there.
    const fs::path list = fs::path(*to) / "texts.csv";
    if (const Status written = write_file(list, list_of(lines)); !written)
        return report(list.string(), written.problems(), err);
    out << list.string() << ": " << lines.size() << " texts\n";
    return 0;
}

} // namespace evenfall::desk
