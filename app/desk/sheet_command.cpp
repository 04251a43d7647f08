// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "command.h"
#include "out_folder.h"

#include "base/file.h"
#include "kit/visit.h"
#include "plan/plan.h"
#include "print/sheet_html.h"
#include "print/sheet_pdf.h"
#include "sheet/sheet.h"
#include "words/sheet_words.h"
#include "words/words.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <memory>
#include <ostream>

namespace evenfall::desk {
namespace {

namespace fs = std::filesystem;

std::string usage() {
    return "usage: evenfall-desk sheet --visit VISIT.json [--lang L] [--paper a4|letter] [--large] "
           "[--full] [--html] --out FILE\n"
           "       evenfall-desk sheet --visits DIR [--lang L] [--paper a4|letter] [--large] "
           "[--full] [--html] --out DIR\n"
           "  The take-home sheet of a visit with the paper diary, as a PDF, or with --html as one "
           "HTML file: one\n"
           "  leaf with the figure and the title of each step, or with --full every text of every "
           "step. With\n"
           "  --visits one for each visit file (*.json) of a folder, called <study code>.pdf or "
           ".html. The language\n"
           "  is the visit's unless --lang names another: " +
           Words::languages().join(QStringLiteral(", ")).toStdString() +
           ". Files of that name are replaced. --kits DIR is\n"
           "  one more place to look for kits.\n";
}

/// What holds for every sheet of one call.
struct Order {
    std::vector<fs::path> kit_folders;
    fs::path figures;
    std::optional<std::string> language;
    print::SheetForm form;
    SheetLength length = SheetLength::brief;
    bool html = false;
};

/// One folder of figures, each read once and only where a sheet shows it.
Result<FigureStore> load_figures(const fs::path& folder, const Sheet& sheet) {
    std::map<std::string, std::string> files;
    std::vector<std::string> ids = figures_of(sheet);
    ids.emplace_back("shapes");
    for (const std::string& id : ids) {
        Result<std::string> text = read_file(folder / (id + ".svg"));
        if (!text)
            return text.problems();
        files[id] = std::move(*text);
    }
    FigureStore store(std::move(files));
    if (!store.problems().empty())
        return Problem{Fault::io, "bad_figure", "", store.problems()[0]};
    return store;
}

std::string shipped() {
    return Words::languages().join(QStringLiteral(", ")).toStdString();
}

struct Made {
    std::string code, bytes;
};

Result<Made> make(const fs::path& file, const Order& order) {
    const Result<VisitWithKit> visit = load_visit(file, order.kit_folders);
    if (!visit)
        return visit.problems();
    const std::string language = order.language.value_or(visit->visit.language);
    if (!Words::languages().contains(QString::fromStdString(language)))
        return Problem{Fault::malformed, "unknown_language", "/language",
                       "there is no language \"" + language +
                           "\" here; right would be one of: " + shipped()};
    const Result<Plan> plan = make_plan(visit->kit, visit->visit.hand);
    if (!plan)
        return plan.problems();
    const Result<Sheet> sheet = make_sheet(visit->visit, visit->kit, *plan, order.length);
    if (!sheet)
        return sheet.problems();
    const Result<FigureStore> figures = load_figures(order.figures, *sheet);
    if (!figures)
        return figures.problems();
    const Words words(QString::fromStdString(language), visit->visit.zone);
    Result<std::string> bytes =
        order.html ? print::sheet_html(*sheet, sheet_words(words), *figures, order.form.large)
                   : print::sheet_pdf(*sheet, sheet_words(words), *figures, order.form);
    if (!bytes)
        return bytes.problems();
    return Made{sheet->code, std::move(*bytes)};
}

int one_sheet(const std::string& file, const std::string& to, const Order& order,
              std::ostream& err) {
    const Result<Made> made = make(file, order);
    if (!made)
        return report(file, made.problems(), err);
    if (const Status written = write_file(to, made->bytes); !written)
        return report(to, written.problems(), err);
    return 0;
}

int many_sheets(const std::string& from, const std::string& to, const Order& order,
                std::ostream& out, std::ostream& err) {
    std::vector<fs::path> files;
    std::error_code error;
    for (fs::directory_iterator at(from, error), end; !error && at != end; at.increment(error))
        if (at->path().extension() == ".json" && at->is_regular_file())
            files.push_back(at->path());
    if (error)
        return report(from, {io_problem("cannot read the folder", from, error.value())}, err);
    std::sort(files.begin(), files.end());
    if (files.empty())
        return report(from,
                      {{Fault::refused, "no_visits", "",
                        "no visit in this folder; right would be files *.json"}},
                      err);
    OutFolder folder(to);
    if (const Status made = folder.make(); !made)
        return report(to, made.problems(), err);
    int status = 0;
    std::map<std::string, fs::path> whose;
    for (const fs::path& file : files) {
        const Result<Made> made = make(file, order);
        if (!made) {
            status = std::max(status, report(file.string(), made.problems(), err));
            continue;
        }
        const auto [first, fresh] = whose.try_emplace(made->code, file);
        if (!fresh) {
            status = std::max(status, report(file.string(),
                                             {{Fault::refused, "code_twice", "/code",
                                               "\"" + made->code + "\" is also the code of " +
                                                   first->second.string() +
                                                   "; right would be a code of its own"}},
                                             err));
            continue;
        }
        const fs::path name = fs::path(to) / (made->code + (order.html ? ".html" : ".pdf"));
        if (const Status written = write_file(name, made->bytes); !written)
            return std::max(status, report(name.string(), written.problems(), err));
        out << name.string() << '\n';
    }
    return status;
}

} // namespace

int sheet_command(std::span<const std::string> args, std::ostream& out, std::ostream& err) {
    int status = 0;
    const std::optional<Arguments> arguments = begin_command(
        args, {"--large", "--full", "--html"},
        {"--visit", "--visits", "--lang", "--paper", "--out", "--kits"}, usage(), out, err, status);
    if (!arguments)
        return status;
    const std::optional<std::string> visit = arguments->option("--visit"),
                                     visits = arguments->option("--visits"),
                                     to = arguments->option("--out");
    if (visit.has_value() == visits.has_value() || !arguments->rest.empty())
        return bad_usage("sheet takes --visit and one visit file, or --visits and one folder",
                         usage(), err);
    if (!to)
        return bad_usage(visit ? "sheet needs --out FILE" : "sheet needs --out DIR", usage(), err);
    Order order;
    order.html = arguments->has("--html");
    order.form.large = arguments->has("--large");
    if (arguments->has("--full"))
        order.length = SheetLength::full;
    const std::string paper = arguments->option("--paper").value_or("a4");
    if (paper != "a4" && paper != "letter")
        return bad_usage("there is no paper \"" + paper + "\"; right would be a4 or letter",
                         usage(), err);
    order.form.paper = paper == "a4" ? print::Paper::a4 : print::Paper::letter;
    order.language = arguments->option("--lang");
    if (order.language && !Words::languages().contains(QString::fromStdString(*order.language)))
        return bad_usage("there is no language \"" + *order.language +
                             "\"; right would be one of: " + shipped(),
                         usage(), err);
    if (const auto named = arguments->option("--kits"))
        order.kit_folders.emplace_back(*named);
    fs::path assets = EVENFALL_ASSETS_DIR;
    if (const char* named = std::getenv("EVENFALL_ASSETS");
        named && fs::exists(fs::path(named) / "figures"))
        assets = named;
    if (const char* named = std::getenv("EVENFALL_ASSETS"))
        order.kit_folders.emplace_back(fs::path(named) / "kits");
    order.kit_folders.emplace_back(EVENFALL_ASSETS_DIR "/kits");
    order.figures = assets / "figures";
    return visit ? one_sheet(*visit, *to, order, err) : many_sheets(*visits, *to, order, out, err);
}

} // namespace evenfall::desk
