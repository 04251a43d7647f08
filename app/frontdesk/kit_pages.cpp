// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The front desk's kits, each checked and shown as the walk-through it makes; and the languages with
// how far each has been reviewed.
#include "frontdesk/front_desk.h"

#include "base/file.h"
#include "kiosk/figure_provider.h"
#include "plan/plan.h"

#include <algorithm>
#include <set>

namespace evenfall {
namespace {

namespace fs = std::filesystem;

struct KitFile {
    fs::path path;
    bool on_stick = false;
};

/// Kit files of the tablet, then those on sticks: files that are no kits at all are left out there.
std::vector<KitFile> kit_files(const std::vector<fs::path>& folders, const std::vector<Stick>& sticks)
{
    std::vector<KitFile> out;
    std::set<std::string> taken;
    const auto add = [&](const fs::path& folder, bool on_stick) {
        std::vector<fs::path> found;
        std::error_code error;
        for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error))
            if (at->path().extension() == ".json")
                found.push_back(at->path());
        std::sort(found.begin(), found.end());
        for (const fs::path& path : found) {
            if (on_stick) {
                const Result<std::string> text = read_file(path, 1u << 20);
                if (!text || text->find("evenfall.kit/") == std::string::npos)
                    continue;
            } else if (!taken.insert(path.filename().string()).second) {
                continue; // the clinic's own wins
            }
            out.push_back({path, on_stick});
        }
    };
    for (const fs::path& folder : folders)
        add(folder, false);
    for (const Stick& stick : sticks)
        add(stick.root, true);
    return out;
}

struct CheckedKit {
    std::optional<Kit> kit;
    std::optional<Plan> plan;
    Problems problems;
};

CheckedKit check(const fs::path& file)
{
    CheckedKit out;
    Result<Kit> kit = load_kit(file);
    if (!kit) {
        out.problems = kit.problems();
        return out;
    }
    out.kit = std::move(*kit);
    Result<Plan> plan = make_plan(*out.kit, WritingHand::right);
    if (plan)
        out.plan = std::move(*plan);
    else
        out.problems = plan.problems();
    return out;
}

} // namespace

void FrontDesk::fill_kits(PageWriter& page)
{
    page.text(words_->of("desk.kits.body"));
    QVariantList rows;
    for (const KitFile& file : kit_files(kit_folders(), settings_.sticks())) {
        const CheckedKit found = check(file.path);
        DeskRow row;
        row.id = QString::fromStdString(file.path.string());
        row.marked = !found.problems.empty();
        row.cells = {QString::fromStdString(file.path.stem().string()),
                     found.kit ? words_->number(static_cast<long>(found.kit->parts.size())) : QStringLiteral("\u2013"),
                     found.problems.empty() ? words_->of("desk.kits.fine") : words_->of("desk.kits.faults", {words_->number(static_cast<long>(found.problems.size()))}),
                     words_->of(file.on_stick ? "desk.kits.on_stick" : "desk.kits.on_tablet")};
        rows << QVariant::fromValue(row);
    }
    page.table(QStringLiteral("kits"), {words_->of("desk.col.kit"), words_->of("desk.col.parts"), words_->of("desk.col.check"), words_->of("desk.col.where")}, rows);
}

void FrontDesk::act_kits(const QString&) {}

void FrontDesk::fill_kit(PageWriter& page)
{
    const CheckedKit found = check(kit_file_);
    page_.title = words_->of("desk.kit.title", {QString::fromStdString(kit_file_.stem().string())});
    for (const Problem& problem : found.problems)
        page.caution(QString::fromStdString(describe(kit_file_.filename().string(), problem)));
    QList<DeskOption> actions{desk_option("back", words_->of("common.back"))};
    if (found.problems.empty() && kit_file_.parent_path() != shelf_.own_kits() &&
        std::find(settings_.kit_folders.begin(), settings_.kit_folders.end(), kit_file_.parent_path()) == settings_.kit_folders.end())
        actions.prepend(desk_main("take", words_->of("desk.kit.take")));
    page.actions(actions);
    if (!found.plan)
        return;
    page.text(words_->of("desk.kit.line", {words_->number(static_cast<long>(found.plan->steps.size())), words_->number((found.plan->length().count() + 30) / 60), words_->number(found.plan->tape_strips)}));
    QVariantList rows;
    for (const Step& step : found.plan->steps) {
        DeskRow row;
        const Depiction drawing = depict(*found.kit, *found.plan, step);
        row.figure = QString::fromStdString(drawing.id) + QLatin1Char('?') + figure_query(drawing);
        row.cells = {(*words_)(step.title), (*words_)(step.body)};
        rows << QVariant::fromValue(row);
    }
    page.table(QStringLiteral("steps"), {words_->of("desk.col.step"), words_->of("desk.col.what")}, rows);
}

void FrontDesk::act_kit(const QString& action)
{
    if (action == QLatin1String("take")) {
        const Result<std::string> text = read_file(kit_file_, 1u << 20);
        if (!text)
            return say_fault(text.problems());
        if (Status written = write_file(shelf_.own_kits() / kit_file_.filename(), *text); !written)
            return say_fault(written.problems());
        show(Place::kits);
        return say(words_->of("desk.kit.taken"));
    }
    show(Place::kits);
}

void FrontDesk::fill_languages(PageWriter& page)
{
    page.text(words_->of("desk.languages.body"));
    QVariantList rows, options;
    for (const QString& language : Words::languages()) {
        DeskRow row;
        const bool source = language == QLatin1String("en");
        row.cells = {Words::own_name(language), language, words_->of(source ? "desk.languages.source" : "desk.languages.unreviewed")};
        row.marked = !source;
        rows << QVariant::fromValue(row);
        options << QVariant::fromValue(desk_option(language, Words::own_name(language)));
    }
    page.table(QStringLiteral("languages"), {words_->of("desk.field.language"), words_->of("desk.col.code_of_language"), words_->of("desk.col.review")}, rows);
    if (typed("desk_language").isEmpty())
        type(QStringLiteral("desk_language"), QString::fromStdString(desk_.language));
    page.choice(QStringLiteral("desk_language"), words_->of("desk.languages.desk"), typed("desk_language"), options);
    page.actions({desk_main("use", words_->of("desk.languages.use"))});
}

void FrontDesk::act_languages(const QString&)
{
    desk_.language = typed_text("desk_language");
    if (!save_settings())
        return;
    take_words();
    show(Place::languages);
}

} // namespace evenfall
