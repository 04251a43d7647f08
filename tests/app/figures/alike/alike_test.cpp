// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
//
// The screen draws figures with Qt SVG, the printed sheet with librsvg. Each is the other's
// referee: whatever one of them drops or draws otherwise shows up here.
#include <cairo.h>
#include <gtest/gtest.h>
#include <librsvg/rsvg.h>
#include <QImage>
#include <QPainter>
#include <QSvgRenderer>

// After Qt on purpose: the header must live with Qt's keywords.
#include "figures/figure.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace {

using namespace evenfall;

constexpr int rounding = 16; // of 255, between two ways of mixing colours
constexpr int side = 800;    // the size in which every figure is drawn

const FigureStore& store() {
    static const FigureStore the_store([] {
        std::map<std::string, std::string> files;
        for (const auto& each :
             std::filesystem::directory_iterator(EVENFALL_SOURCE_DIR "/assets/figures")) {
            if (each.path().extension() == ".svg") {
                std::ifstream in(each.path(), std::ios::binary);
                files[each.path().stem().string()] =
                    std::string(std::istreambuf_iterator<char>(in), {});
            }
        }
        return files;
    }());
    return the_store;
}

QImage by_qt(const std::string& svg) {
    QSvgRenderer renderer(QByteArray(svg.data(), static_cast<qsizetype>(svg.size())));
    EXPECT_TRUE(renderer.isValid());
    QImage image(side, side, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    QPainter painter(&image);
    renderer.render(&painter, QRectF(0, 0, side, side));
    painter.end();
    return image;
}

QImage by_librsvg(const std::string& svg) {
    GError* error = nullptr;
    RsvgHandle* handle =
        rsvg_handle_new_from_data(reinterpret_cast<const guint8*>(svg.data()), svg.size(), &error);
    EXPECT_NE(handle, nullptr) << (error ? error->message : "");
    QImage image(side, side, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    if (!handle) {
        g_clear_error(&error);
        return image;
    }
    cairo_surface_t* surface = cairo_image_surface_create_for_data(
        image.bits(), CAIRO_FORMAT_ARGB32, side, side, static_cast<int>(image.bytesPerLine()));
    cairo_t* context = cairo_create(surface);
    const RsvgRectangle view{0, 0, side, side};
    EXPECT_TRUE(rsvg_handle_render_document(handle, context, &view, &error));
    cairo_destroy(context);
    cairo_surface_finish(surface);
    cairo_surface_destroy(surface);
    g_object_unref(handle);
    return image;
}

int distance(QRgb a, QRgb b) {
    return std::max({std::abs(qRed(a) - qRed(b)), std::abs(qGreen(a) - qGreen(b)),
                     std::abs(qBlue(a) - qBlue(b))});
}

QRgb at(const QImage& image, int x, int y) {
    return reinterpret_cast<const QRgb*>(image.constScanLine(y))[x];
}

/// True if the channel of the pixel lies outside the range of its neighbourhood in the other image,
/// by more than rounding.
bool beyond(const QImage& a, const QImage& b, int x, int y, int (*channel)(QRgb)) {
    int low = 255;
    int high = 0;
    for (int dy = -1; dy <= 1; ++dy) {
        for (int dx = -1; dx <= 1; ++dx) {
            const int value = channel(at(b, x + dx, y + dy));
            low = std::min(low, value);
            high = std::max(high, value);
        }
    }
    const int value = channel(at(a, x, y));
    return value < low - rounding || value > high + rounding;
}

/// Share of pixels that no shift of an edge by one pixel explains. Two rasterizers smooth edges
/// each in its own way; surfaces, lines and colours must be the same.
double unlike_share(const QImage& a, const QImage& b) {
    int differing = 0;
    for (int y = 1; y < side - 1; ++y) {
        for (int x = 1; x < side - 1; ++x) {
            if (distance(at(a, x, y), at(b, x, y)) <= rounding) {
                continue; // alike at this very pixel
            }
            const auto both = [&](int (*channel)(QRgb)) {
                return beyond(a, b, x, y, channel) || beyond(b, a, x, y, channel);
            };
            differing += both(qRed) || both(qGreen) || both(qBlue) ? 1 : 0;
        }
    }
    return static_cast<double>(differing) / (side * side);
}

FigureRequest full(const std::string& id, Tone tone, Hand hand, PartState state) {
    FigureRequest r;
    r.id = id;
    r.tone = tone;
    r.writing_hand = hand;
    r.backdrop = true;
    for (const std::string& layer : store().layers(id)) {
        r.parts[layer] = state;
    }
    for (const std::string& slot : store().mark_slots(id)) {
        r.counts[slot] = 3;
    }
    return r;
}

TEST(Alike, QtAndLibrsvgDrawTheSameFigures) {
    for (const std::string& id : store().ids()) {
        for (const auto& [tone, hand] :
             {std::pair{Tone::dark, Hand::right}, std::pair{Tone::print, Hand::left}}) {
            const std::string svg = store().compose(full(id, tone, hand, PartState::current));
            EXPECT_LT(unlike_share(by_qt(svg), by_librsvg(svg)), 0.0005) << id;
        }
    }
}

TEST(Alike, TheComparisonSeesADroppedDetail) {
    FigureRequest r = full("plug_match", Tone::print, Hand::right, PartState::done);
    const QImage three = by_qt(store().compose(r));
    r.counts["mark-port"] = 2;
    EXPECT_GT(unlike_share(three, by_librsvg(store().compose(r))), 0.0005);
}

TEST(Alike, NoFigureIsEmpty) {
    for (const std::string& id : store().ids()) {
        const QImage image =
            by_qt(store().compose(full(id, Tone::light, Hand::right, PartState::done)));
        int ground = 0;
        for (int y = 0; y < side; ++y) {
            for (int x = 0; x < side; ++x) {
                ground += distance(at(image, x, y), at(image, 2, 2)) < 8 ? 1 : 0;
            }
        }
        EXPECT_LT(ground, side * side * 93 / 100) << id;
    }
}

TEST(Alike, ThePersonLeavesRoomForATallPanel) {
    // figure.h promises x 130..670, in every build, for all that the person may wear; the mirror of
    // the check is for a square page and is not asked for here.
    for (const Build build : {Build::slim, Build::medium, Build::broad}) {
        for (const PartState state : {PartState::outline, PartState::current, PartState::done}) {
            FigureRequest r = full("person", Tone::dark, Hand::right, state);
            r.build = build;
            r.widen = 1.0;
            ASSERT_EQ(r.parts.erase("mirror"), 1u);
            const QImage image = by_qt(store().compose(r));
            int stray = 0;
            for (int y = 0; y < side; ++y) {
                for (int x = 0; x < side; ++x) {
                    const bool outside = x < 130 || x >= 670;
                    stray += outside && distance(at(image, x, y), at(image, 0, 0)) > 8 ? 1 : 0;
                }
            }
            EXPECT_EQ(stray, 0) << static_cast<int>(build) << " " << static_cast<int>(state);
        }
    }
}

} // namespace
