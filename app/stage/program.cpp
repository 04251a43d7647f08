// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "stage/program.h"

#include "base/file.h"
#include "frontdesk/front_desk.h"
#include "kiosk/kiosk.h"
#include "stage/player.h"
#include "stage/rehearsal.h"
#include "stage/tour.h"
#include "stage/window.h"

#include <QCommandLineParser>
#include <QDir>
#include <QFont>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QStandardPaths>
#include <QTimeZone>
#include <cstdio>
#include <filesystem>
#include <memory>

namespace evenfall {
namespace {

constexpr int bad_usage = 2;
constexpr int io_fault = 3;

void say(const QString& line) { std::fprintf(stderr, "%s\n", qPrintable(line)); }

std::filesystem::path assets()
{
    const QByteArray named = qgetenv("EVENFALL_ASSETS");
    if (!named.isEmpty())
        return std::filesystem::path(named.toStdString());
    const std::filesystem::path installed = std::filesystem::path(QCoreApplication::applicationDirPath().toStdString()) / ".." / "share" / "evenfall";
    return std::filesystem::exists(installed) ? installed : std::filesystem::path(EVENFALL_ASSETS_DIR);
}

/// Where sound comes from: the clinic's own recordings before those that came with the program.
Sound::Places sounds(const std::filesystem::path& data)
{
    const std::filesystem::path above = std::filesystem::path(QCoreApplication::applicationDirPath().toStdString()) / "..";
    Sound::Places places;
    const std::filesystem::path module = above / "lib" / "evenfall" / "libevenfall_media.so";
    if (std::filesystem::exists(module))
        places.media = media_from(module);
    places.voices = {data / "voice", above / "share" / "evenfall" / "voice", above / "voice"};
    places.tones = assets() / "sounds";
    return places;
}

/// IANA name of the zone that the system is set to; UTC where it has none that is known here.
std::string system_zone()
{
    const std::string name = QTimeZone::systemTimeZoneId().toStdString();
    return find_zone(name) ? name : "UTC";
}

struct Options {
    QString visit, data, tour, rehearse, language;
    QSize size{1280, 800};
    double text_scale = 1.0;
    bool windowed = false, quit_after_first_frame = false;
    bool no_screen() const { return !tour.isEmpty() || !rehearse.isEmpty(); }
};

std::optional<QSize> parse_size(const QString& text)
{
    const QStringList two = text.split(QLatin1Char('x'));
    bool first = false, second = false;
    if (two.size() != 2)
        return std::nullopt;
    const QSize size(two[0].toInt(&first), two[1].toInt(&second));
    const bool fine = first && second && size.width() >= 320 && size.height() >= 320 && size.width() <= 8000 && size.height() <= 8000;
    return fine ? std::optional(size) : std::nullopt;
}

/// Options, or nothing when the usage is bad (which was said).
std::optional<Options> parse_options()
{
    QCommandLineParser parser;
    parser.setApplicationDescription(QStringLiteral("Evenfall: the bedside companion for a home sleep study"));
    const QCommandLineOption visit(QStringLiteral("visit"), QStringLiteral("The visit to open (default: the one that is on this tablet)."), QStringLiteral("FILE"));
    const QCommandLineOption data(QStringLiteral("data"), QStringLiteral("Where the journal and the records are."), QStringLiteral("DIR"));
    const QCommandLineOption windowed(QStringLiteral("windowed"), QStringLiteral("In a window, not over the whole screen."));
    const QCommandLineOption quit(QStringLiteral("quit-after-first-frame"), QStringLiteral("Shows one frame and ends."));
    const QCommandLineOption tour(QStringLiteral("tour"), QStringLiteral("Writes a picture of every screen; needs no display."), QStringLiteral("DIR"));
    const QCommandLineOption rehearse(QStringLiteral("rehearse"), QStringLiteral("Plays a whole demo night; needs no display."), QStringLiteral("DIR"));
    const QCommandLineOption language(QStringLiteral("lang"), QStringLiteral("Language, two letters."), QStringLiteral("L"));
    const QCommandLineOption size(QStringLiteral("size"), QStringLiteral("Size in pixels (default 1280x800)."), QStringLiteral("WxH"));
    const QCommandLineOption scale(QStringLiteral("text-scale"), QStringLiteral("1.0 to 2.0."), QStringLiteral("S"));
    parser.addOptions({visit, data, windowed, quit, tour, rehearse, language, size, scale});
    const QCommandLineOption help = parser.addHelpOption();
    if (!parser.parse(QCoreApplication::arguments())) {
        say(QStringLiteral("evenfall: ") + parser.errorText());
        return std::nullopt;
    }
    if (parser.isSet(help))
        parser.showHelp(0);
    if (!parser.positionalArguments().isEmpty()) {
        say(QStringLiteral("evenfall: \"%1\" is not an option; see --help").arg(parser.positionalArguments().constFirst()));
        return std::nullopt;
    }
    Options options;
    options.visit = parser.value(visit);
    options.data = parser.value(data);
    options.tour = parser.value(tour);
    options.rehearse = parser.value(rehearse);
    options.language = parser.value(language);
    options.windowed = parser.isSet(windowed);
    options.quit_after_first_frame = parser.isSet(quit);
    if (!options.language.isEmpty() && !Words::languages().contains(options.language)) {
        say(QStringLiteral("evenfall: --lang %1: no such language; right would be one of: %2").arg(options.language, Words::languages().join(QStringLiteral(", "))));
        return std::nullopt;
    }
    if (parser.isSet(size)) {
        const std::optional<QSize> wanted = parse_size(parser.value(size));
        if (!wanted) {
            say(QStringLiteral("evenfall: --size %1: right would be such as 1280x800").arg(parser.value(size)));
            return std::nullopt;
        }
        options.size = *wanted;
    }
    if (parser.isSet(scale)) {
        bool fine = false;
        options.text_scale = parser.value(scale).toDouble(&fine);
        if (!fine || options.text_scale < 1.0 || options.text_scale > 2.0) {
            say(QStringLiteral("evenfall: --text-scale %1: right would be 1.0 to 2.0").arg(parser.value(scale)));
            return std::nullopt;
        }
    }
    return options;
}

/// An empty folder to write into; the exit status when there is none.
int empty_folder(const QString& name)
{
    QDir folder(name);
    if (folder.exists() && !folder.isEmpty()) {
        say(QStringLiteral("%1: /: the folder is not empty; right would be a new or an empty one").arg(name));
        return static_cast<int>(Fault::refused);
    }
    if (!folder.mkpath(QStringLiteral("."))) {
        say(QStringLiteral("%1: /: the folder cannot be made; right would be a place that can be written").arg(name));
        return io_fault;
    }
    return 0;
}

int play(const Options& options, VisitWithKit visit)
{
    const bool touring = !options.tour.isEmpty();
    const QString folder = touring ? options.tour : options.rehearse;
    if (const int status = empty_folder(folder); status != 0)
        return status;
    Player::Setting setting;
    setting.visit = std::move(visit);
    setting.language = options.language;
    setting.size = options.size;
    setting.text_scale = options.text_scale;
    setting.pictures = QDir(folder);
    setting.kit_folders = {assets() / "kits"};
    if (!touring)
        setting.data = folder.toStdString();
    const QStringList faults = touring ? make_tour(setting) : rehearse(setting);
    for (const QString& fault : faults)
        say(QStringLiteral("%1: /: %2").arg(folder, fault));
    return faults.isEmpty() ? 0 : static_cast<int>(Fault::refused);
}

/// The session of a visit file that was named: it is put on the shelf, so that the front desk has it
/// like any other. Everything that can fail does so inside, so that the kiosk says it in plain words.
Result<std::unique_ptr<Session>> open_visit(const Shelf& shelf, const VisitWithKit& visit, const std::shared_ptr<const Clock>& clock)
{
    if (Status prepared = shelf.prepare(); !prepared)
        return prepared.problems();
    if (Status put = shelf.put(visit.visit); !put)
        return put.problems();
    Result<DeskSettings> desk = load_desk_settings(shelf.desk(), visit.visit.zone->name());
    if (desk && desk->tonight != visit.visit.code) {
        desk->tonight = visit.visit.code;
        if (desk->clinic.phone.empty())
            desk->clinic = visit.visit.clinic;
        if (Status saved = save_desk_settings(shelf.desk(), *desk); !saved)
            return saved.problems();
    }
    Result<Opened> opened = open_journal(shelf.journal(visit.visit.code));
    if (!opened)
        return opened.problems();
    return Session::begin({visit, std::move(opened->journal), shelf.records(visit.visit.code)}, clock);
}

/// `visit`: the file that was named, or null for the visit that is on this tablet.
int show(const Options& options, std::unique_ptr<const VisitWithKit> visit)
{
    const QString chosen = options.data.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/evenfall") : options.data;
    const auto clock = std::make_shared<const SystemClock>();
    FrontDesk::Settings desk_settings;
    desk_settings.data = chosen.toStdString();
    desk_settings.kit_folders = {assets() / "kits"};
    desk_settings.system_zone = system_zone();
    desk_settings.documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation).toStdString();
    const Shelf shelf(desk_settings.data);
    const auto open = [&]() -> Result<std::unique_ptr<Session>> {
        return visit ? open_visit(shelf, *visit, clock) : FrontDesk::open_tonight(desk_settings, clock);
    };
    Kiosk::Settings settings;
    if (visit)
        settings.clinic = visit->visit.clinic;
    else if (const Result<DeskSettings> desk = load_desk_settings(shelf.desk(), desk_settings.system_zone))
        settings.clinic = desk->clinic;
    settings.language = options.language;
    settings.text_scale = options.text_scale;
    settings.sound = sounds(desk_settings.data);
    Kiosk kiosk(open, settings);
    FrontDesk desk(kiosk, desk_settings, clock);
    // From the first wipe on, or from another visit's being chosen, the file that was named is past.
    QObject::connect(&desk, &FrontDesk::tonightChosen, &kiosk, [&visit] { visit.reset(); });
    KioskWindow window(kiosk, options.size, &desk);
    if (!window.ok()) {
        for (const QString& warning : window.take_warnings())
            say(warning);
        return 1;
    }
    QObject::connect(&kiosk, &Kiosk::finished, qApp, &QCoreApplication::quit);
    if (options.quit_after_first_frame)
        QObject::connect(&window.window(), &QQuickWindow::frameSwapped, qApp, &QCoreApplication::quit, Qt::QueuedConnection);
    if (!options.windowed && !options.quit_after_first_frame)
        window.window().showFullScreen();
    const int status = QCoreApplication::exec();
    const QStringList warnings = window.take_warnings();
    for (const QString& warning : warnings)
        say(warning);
    return warnings.isEmpty() ? status : 1;
}

} // namespace

int run_program(int& argc, char** argv)
{
    // Before Qt reads them: a tour needs no display, and pictures come out alike on every machine.
    for (int i = 1; i < argc; ++i) {
        const QByteArray argument(argv[i]);
        if (argument.startsWith("--tour") || argument.startsWith("--rehearse"))
            qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    if (qEnvironmentVariableIsEmpty("QT_QUICK_BACKEND"))
        qputenv("QT_QUICK_BACKEND", "software"); // starts in a third of the time, and needs no driver
    QGuiApplication app(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("evenfall"));
    QFont::insertSubstitutions(QStringLiteral("Inter"), {QStringLiteral("Noto Sans Arabic"), QStringLiteral("Noto Sans")});
    QGuiApplication::setFont(QFont(QStringLiteral("Inter")));

    const std::optional<Options> options = parse_options();
    if (!options)
        return bad_usage;
    // A kiosk without a file shows the visit that is on this tablet; a tour or a rehearsal the demo.
    if (options->visit.isEmpty() && !options->no_screen())
        return show(*options, nullptr);
    const std::filesystem::path file = options->visit.isEmpty() ? assets() / "visits" / "demo.json" : std::filesystem::path(options->visit.toStdString());
    Result<VisitWithKit> visit = load_visit(file, {assets() / "kits"});
    if (!visit) {
        for (const Problem& problem : visit.problems())
            say(QString::fromStdString(describe(file.string(), problem)));
        return exit_status(visit.problems());
    }
    return options->no_screen() ? play(*options, std::move(visit.value())) : show(*options, std::make_unique<const VisitWithKit>(std::move(visit.value())));
}

} // namespace evenfall
