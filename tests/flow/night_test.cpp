// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Whole nights on the real screens, with synthetic taps and a simulated clock.
#include "stage/rehearsal.h"
#include "stage/tour.h"

#include "record/verify.h"

#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QTemporaryDir>
#include <cmath>
#include <gtest/gtest.h>
extern "C" {
#include <edflib.h>
}

namespace {

using namespace evenfall;

VisitWithKit demo(const std::string& kit, WritingHand hand = WritingHand::right)
{
    const std::filesystem::path assets = EVENFALL_SOURCE_DIR "/assets";
    Result<VisitWithKit> visit = load_visit(assets / "visits" / "demo.json", {});
    EXPECT_TRUE(visit.ok());
    Result<Kit> other = load_kit(assets / "kits" / (kit + ".json"));
    EXPECT_TRUE(other.ok());
    visit->kit = *other;
    visit->visit.kit = kit;
    visit->visit.hand = hand;
    return *visit;
}

std::filesystem::path only_record(const QDir& folder)
{
    const QStringList found = folder.entryList({QStringLiteral("*_night-*")}, QDir::Dirs);
    return found.size() == 1 ? std::filesystem::path(folder.filePath(found[0]).toStdString()) : std::filesystem::path();
}

struct Case {
    const char* kit;
    const char* language;
    WritingHand hand;
    QSize size;
    double scale;
};

class WholeNight : public testing::TestWithParam<Case> {};

TEST_P(WholeNight, LeavesARecordThatVerifiesAndThatEdflibReads)
{
    QTemporaryDir folder;
    Player::Setting setting;
    setting.visit = demo(GetParam().kit, GetParam().hand);
    setting.language = QString::fromLatin1(GetParam().language);
    setting.size = GetParam().size;
    setting.text_scale = GetParam().scale;
    setting.pictures = QDir(folder.path());
    setting.kit_folders = {EVENFALL_SOURCE_DIR "/assets/kits"};
    setting.data = folder.path().toStdString();
    const QStringList faults = rehearse(setting);
    EXPECT_TRUE(faults.isEmpty()) << faults.join(QLatin1Char('\n')).toStdString();

    const std::filesystem::path record = only_record(QDir(folder.path()));
    ASSERT_FALSE(record.empty());
    EXPECT_EQ(verify_record(record).exit_status(), 0);

    edf_hdr_struct header{};
    ASSERT_EQ(edfopen_file_readonly((record / "diary.edf").c_str(), &header, EDFLIB_READ_ALL_ANNOTATIONS), 0) << header.filetype;
    std::vector<std::string> texts;
    for (int i = 0; i < header.annotations_in_file; ++i) {
        edf_annotation_struct annotation{};
        ASSERT_EQ(edf_get_annotation(header.handle, i, &annotation), 0);
        texts.emplace_back(annotation.annotation);
    }
    EXPECT_EQ(header.startdate_year, 2026);
    EXPECT_EQ(header.startdate_month, 10);
    EXPECT_EQ(header.startdate_day, 31);
    edfclose_file(header.handle);
    // EDF+ standard texts, from the specification's table (facts of the format, clause 2.2.4).
    for (const char* standard : {"Lights off", "Lights on"})
        EXPECT_NE(std::find(texts.begin(), texts.end(), standard), texts.end()) << standard;
    // The start is known between the switch and the light: said as a range.
    EXPECT_TRUE(std::any_of(texts.begin(), texts.end(), [](const std::string& text) { return text.ends_with("Recording starts"); }));
}

INSTANTIATE_TEST_SUITE_P(Demo, WholeNight,
                         testing::Values(Case{"marram", "en", WritingHand::right, {1280, 800}, 1.0},
                                         Case{"tern", "es", WritingHand::left, {800, 1280}, 1.0},
                                         Case{"heron", "ar", WritingHand::right, {1280, 800}, 1.0},
                                         Case{"marram", "es", WritingHand::left, {1024, 600}, 2.0}),
                         [](const auto& one) { return std::string(one.param.kit) + "_" + one.param.language; });

class Tour : public testing::TestWithParam<Case> {};

// Every shipped language once, and every size; all of them with all are a matter of an hour: see
// tests/flow/every_tour.
TEST_P(Tour, ShowsEveryScreenWithoutCutText)
{
    QTemporaryDir folder;
    Player::Setting setting;
    setting.visit = demo(GetParam().kit, GetParam().hand);
    setting.language = QString::fromLatin1(GetParam().language);
    setting.size = GetParam().size;
    setting.text_scale = GetParam().scale;
    // Taken as a screen of 10 inches: 24 px at 1280x800.
    const double least = std::floor(24.0 * std::hypot(setting.size.width(), setting.size.height()) / std::hypot(1280, 800));
    setting.pictures = QDir(folder.path());
    setting.kit_folders = {EVENFALL_SOURCE_DIR "/assets/kits"};
    const QStringList faults = make_tour(setting);
    EXPECT_TRUE(faults.isEmpty()) << faults.join(QLatin1Char('\n')).toStdString();

    QFile file(QDir(folder.path()).filePath(QStringLiteral("tour.json")));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QJsonArray screens = QJsonDocument::fromJson(file.readAll()).object()[QStringLiteral("screens")].toArray();
    EXPECT_GE(screens.size(), 85);
    for (const QJsonValue& screen : screens) {
        const std::string name = screen[QStringLiteral("name")].toString().toStdString();
        EXPECT_TRUE(QFile::exists(QDir(folder.path()).filePath(screen[QStringLiteral("image")].toString()))) << name;
        for (const QJsonValue& text : screen[QStringLiteral("texts")].toArray()) {
            // A name of a file, or a table of the desk on a narrow screen, may go on in the next line.
            EXPECT_FALSE(text[QStringLiteral("broken")].toBool() && !name.starts_with("desk-")) << name << ": " << text[QStringLiteral("text")].toString().toStdString();
            EXPECT_FALSE(text[QStringLiteral("truncated")].toBool()) << name << ": " << text[QStringLiteral("text")].toString().toStdString();
            EXPECT_GE(text[QStringLiteral("pixel_size")].toDouble(), least) << name << ": " << text[QStringLiteral("text")].toString().toStdString();
        }
        for (const QJsonValue& control : screen[QStringLiteral("controls")].toArray())
            EXPECT_FALSE(control[QStringLiteral("name")].toString().isEmpty()) << name;
    }
    // A figure for each drawing, without its caption.
    EXPECT_GE(QDir(folder.path()).entryList({QStringLiteral("figure-*.png")}).size(), 59);
}

INSTANTIATE_TEST_SUITE_P(Languages, Tour,
                         testing::Values(Case{"marram", "en", WritingHand::right, {1280, 800}, 1.0},
                                         Case{"heron", "es", WritingHand::left, {1280, 800}, 1.5},
                                         Case{"marram", "ar", WritingHand::right, {800, 1280}, 1.0},
                                         Case{"tern", "de", WritingHand::right, {1024, 600}, 1.0},
                                         Case{"marram", "fr", WritingHand::right, {1920, 1080}, 1.0}),
                         [](const auto& one) { return std::string(one.param.language); });

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication app(argc, argv);
    QFont::insertSubstitutions(QStringLiteral("Inter"), {QStringLiteral("Noto Sans Arabic"), QStringLiteral("Noto Sans")});
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
