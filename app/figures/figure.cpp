// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "figure.h"

#include "palette.h"
#include "source.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <set>
#include <stdexcept>

namespace evenfall {

using figures::Fault;
using figures::Node;
using palette::Role;

namespace {

constexpr double middle_x = 400;    // every figure is 800 wide and built round its middle
constexpr double halo_reach = 9;    // units of halo on each side of a current part
constexpr double edge_reach = 5;    // units of edge on each side of a hand over skin
constexpr double outline_width = 4; // thin line of a part still to come
constexpr int most_in_mark = 4;     // kit marks are one to four ridges or dots
// Of the size of a mark: from one ridge to the next and a ridge's width; the same of dots.
constexpr double ridge_pitch = 0.5;
constexpr double ridge_width = 0.24;
constexpr double dot_pitch = 0.44;
constexpr double dot_radius = 0.175;
constexpr int most_repeats = 8;

double stretch_of(Build build) {
    switch (build) {
    case Build::slim:
        return 0.88;
    case Build::broad:
        return 1.16;
    case Build::medium:
        break;
    }
    return 1.0;
}

/// At most three decimals, no exponent, never a comma: the same on every system.
std::string format(double value) {
    const long long scaled = std::llround(value * 1000.0);
    const long long whole = std::llabs(scaled) / 1000;
    const long long rest = std::llabs(scaled) % 1000;
    std::string text = (scaled < 0 ? "-" : "") + std::to_string(whole);
    if (rest != 0) {
        char digits[8];
        std::snprintf(digits, sizeof digits, ".%03d", static_cast<int>(rest));
        text += digits;
        text.erase(text.find_last_not_of('0') + 1);
    }
    return text;
}

std::string scale_about(double x, double factor) {
    return "matrix(" + format(factor) + " 0 0 1 " + format(x * (1.0 - factor)) + " 0)";
}

/// halo and edge are passes beneath the drawing itself: wide in the halo tone, narrow in a skin
/// shade that sets a hand apart from the skin behind it.
enum class Paint { plain, accent, outline, halo, edge };

/// Presentation attributes as they come down to an element. They are written out on every shape,
/// so that no renderer has to inherit anything.
struct Style {
    std::string fill = "none";
    std::string stroke = "none";
    double stroke_width = 1;
    double reach = halo_reach; ///< of the halo that is being drawn
    std::string cap, join, dashes, fill_opacity, stroke_opacity;

    void take(const Node& node) {
        const auto set = [&](std::string_view key, std::string& value) {
            if (const std::string* given = node.find(key)) {
                value = *given;
            }
        };
        set("fill", fill);
        set("stroke", stroke);
        set("stroke-linecap", cap);
        set("stroke-linejoin", join);
        set("stroke-dasharray", dashes);
        set("fill-opacity", fill_opacity);
        set("stroke-opacity", stroke_opacity);
        stroke_width = node.number("stroke-width", stroke_width);
    }
};

class Composer {
  public:
    Composer(const FigureRequest& request, const Node& figure)
        : request_(request), figure_(figure),
          mirrored_(request.writing_hand == Hand::left && !figure.find("mirror")) {}

    std::string document() {
        out_ = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 800 800\" width=\"800\" "
               "height=\"800\">\n";
        if (request_.backdrop) {
            out_ += "<rect x=\"0\" y=\"0\" width=\"800\" height=\"800\" fill=\"" +
                    std::string(palette::colour(Role::background, request_.tone)) + "\"/>\n";
        }
        if (mirrored_) {
            out_ += "<g transform=\"matrix(-1 0 0 1 800 0)\">\n";
        }
        for (const Node& child : figure_.children) {
            emit(child, Paint::plain, Style{});
        }
        if (mirrored_) {
            out_ += "</g>\n";
        }
        out_ += "</svg>\n";
        return std::move(out_);
    }

  private:
    /// In a mirrored figure the leg on the left of the picture is the right one, and the other way
    /// round: the states follow the leg.
    PartState state_of(const std::string& layer) const {
        std::string wanted = layer;
        if (mirrored_) {
            wanted = layer == "leg_left" ? "leg_right" : layer == "leg_right" ? "leg_left" : layer;
        }
        const auto state = request_.parts.find(wanted);
        return state == request_.parts.end() ? PartState::hidden : state->second;
    }

    int count_of(const Node& node, std::string_view attribute, int most) const {
        const std::string& slot = *node.find(attribute);
        const auto wanted = request_.counts.find(slot);
        const int count = wanted == request_.counts.end()
                              ? static_cast<int>(node.number("default", 0))
                              : wanted->second;
        if (count < 0 || count > most) {
            throw std::out_of_range("figure " + request_.id + ": slot " + slot + " cannot show " +
                                    std::to_string(count) + "; 0 to " + std::to_string(most) +
                                    " would be right");
        }
        return count;
    }

    std::string colour(const std::string& source, Paint paint) const {
        if (source == "none") {
            return source;
        }
        Role role = palette::find(source)->role;
        if (paint == Paint::edge) {
            role = Role::skin_shade;
        }
        if (paint == Paint::halo) {
            return palette::mix(palette::colour(Role::background, request_.tone),
                                palette::colour(Role::halo, request_.tone),
                                0.25 + 0.75 * std::clamp(request_.pulse, 0.0, 1.0));
        }
        if (paint == Paint::outline) {
            role = Role::quiet;
        } else if (paint == Paint::accent) {
            role = palette::accented(role);
        }
        return std::string(palette::colour(role, request_.tone));
    }

    void emit(const Node& node, Paint paint, Style style) {
        if (node.name == "g") {
            group(node, paint, std::move(style));
        } else if (node.name == "mark") {
            mark(node, paint);
        } else if (node.name == "repeat") {
            repeat(node, paint, style);
        } else {
            style.take(node);
            shape(node, paint, std::move(style));
        }
    }

    std::string transform_of(const Node& node) const {
        std::vector<std::string> steps;
        const double stretch = stretch_of(request_.build);
        if (const std::string* keep = node.find("keep"); keep && mirrored_) {
            steps.push_back("matrix(-1 0 0 1 " + format(2 * node.number("keep", middle_x)) + " 0)");
        }
        if (node.find("stretch") && stretch != 1.0) {
            steps.push_back(scale_about(node.number("stretch", middle_x), stretch));
        }
        if (node.find("shift") && stretch != 1.0) {
            const double at = node.number("shift", middle_x);
            steps.push_back("translate(" + format((stretch - 1.0) * (at - middle_x)) + " 0)");
        }
        if (node.find("place")) {
            // The place in a row that belongs to this count; what is smooth comes last.
            const int count = count_of(node, "place", most_in_mark);
            steps.push_back("translate(" +
                            format((count == 0 ? most_in_mark : count - 1) * node.number("dx", 0)) +
                            " 0)");
        }
        if (node.find("breathe") && request_.widen != 0.0) {
            const double share = node.number("breathe", 0);
            steps.push_back(
                scale_about(middle_x, 1.0 + share * std::clamp(request_.widen, 0.0, 1.0)));
        }
        if (const std::string* own = node.find("transform")) {
            steps.push_back(*own);
        }
        std::string all;
        for (const std::string& step : steps) {
            all += (all.empty() ? "" : " ") + step;
        }
        return all;
    }

    void group(const Node& node, Paint paint, Style style) {
        if (const std::string* when = node.find("when");
            when && state_of(*when) == PartState::hidden) {
            return;
        }
        bool with_halo = false;
        bool with_edge = false;
        if (const std::string* layer = node.find("layer")) {
            switch (state_of(*layer)) {
            case PartState::hidden:
                return;
            case PartState::outline:
                paint = Paint::outline;
                break;
            case PartState::current:
                paint = Paint::accent;
                with_halo = true;
                break;
            case PartState::done:
                break;
            }
        }
        if (const std::string* own = node.find("paint"); own && paint == Paint::plain) {
            with_halo = *own == "current";
            with_edge = *own == "edged";
            paint = *own == "outline" ? Paint::outline : with_edge ? Paint::plain : Paint::accent;
        }
        if (with_halo) {
            style.reach = node.number("halo", halo_reach);
        }
        style.take(node);
        const std::string transform = transform_of(node);
        out_ += transform.empty() ? "<g>\n" : "<g transform=\"" + transform + "\">\n";
        if (with_halo) {
            children(node, Paint::halo, style);
        }
        if (with_edge) {
            children(node, Paint::edge, style);
        }
        children(node, paint, style);
        out_ += "</g>\n";
    }

    void children(const Node& node, Paint paint, const Style& style) {
        for (const Node& child : node.children) {
            emit(child, paint, style);
        }
    }

    void shape(const Node& node, Paint paint, Style style) {
        const bool beneath = paint == Paint::halo || paint == Paint::edge;
        const bool aside = paint == Paint::outline || beneath;
        if (aside && node.find("detail")) {
            return;
        }
        if (paint == Paint::outline) {
            // A stroke alone is a cable; a surface becomes its edge.
            style.stroke = style.stroke == "none" ? style.fill : style.stroke;
            style.fill = "none";
            style.stroke_width = outline_width;
            style.fill_opacity = style.stroke_opacity = style.dashes = "";
        } else if (beneath) {
            const double reach = paint == Paint::halo ? style.reach : edge_reach;
            style.stroke_width = (style.stroke == "none" ? 0.0 : style.stroke_width) + 2 * reach;
            style.stroke = style.stroke == "none" ? style.fill : style.stroke;
            style.join = "round";
            if (paint == Paint::halo) {
                style.cap = "round";
            }
            style.fill_opacity = style.stroke_opacity = style.dashes = "";
        }
        out_ += "<" + node.name;
        for (const auto& [key, value] : node.attributes) {
            const bool geometry =
                !key.starts_with("fill") && !key.starts_with("stroke") && key != "detail";
            if (geometry) {
                out_ += " " + key + "=\"" + value + "\"";
            }
        }
        attribute("fill", colour(style.fill, paint));
        if (style.fill != "none") {
            attribute("fill-opacity", style.fill_opacity);
        }
        if (style.stroke != "none") {
            attribute("stroke", colour(style.stroke, paint));
            attribute("stroke-width", format(style.stroke_width));
            attribute("stroke-linecap", style.cap);
            attribute("stroke-linejoin", style.join);
            attribute("stroke-dasharray", style.dashes);
            attribute("stroke-opacity", style.stroke_opacity);
        }
        out_ += "/>\n";
    }

    void attribute(std::string_view key, const std::string& value) {
        if (!value.empty()) {
            out_ += " " + std::string(key) + "=\"" + value + "\"";
        }
    }

    /// N short bars or dots side by side, the middle of the row at x, y. A mark with a "count" of
    /// its own takes only the shape of its slot.
    void mark(const Node& node, Paint paint) {
        const int count = node.find("count") ? static_cast<int>(node.number("count", 0))
                                             : count_of(node, "slot", most_in_mark);
        if (count == 0 || paint == Paint::outline || paint == Paint::halo || paint == Paint::edge) {
            return;
        }
        const double size = node.number("size", 20);
        const Role role = paint == Paint::accent ? Role::accent_mark
                          : node.find("quiet")   ? Role::part_shade
                                                 : Role::mark;
        const std::string fill = "\" fill=\"" +
                                 std::string(palette::colour(role, request_.tone)) + "\"/>\n";
        out_ += "<g transform=\"translate(" + format(node.number("x", 0)) + " " +
                format(node.number("y", 0)) + ") rotate(" + format(node.number("angle", 0)) +
                ")\">\n";
        const bool dots = request_.dots.contains(*node.find("slot"));
        for (int i = 0; i < count; ++i) {
            const double middle = (i - (count - 1) / 2.0) * (dots ? dot_pitch : ridge_pitch) * size;
            if (dots) {
                out_ += "<circle cx=\"" + format(middle) + "\" cy=\"0\" r=\"" +
                        format(dot_radius * size) + fill;
            } else {
                const double width = ridge_width * size;
                out_ += "<rect x=\"" + format(middle - width / 2) + "\" y=\"" +
                        format(-size / 2) + "\" width=\"" + format(width) + "\" height=\"" +
                        format(size) + "\" rx=\"" + format(width / 2) + fill;
            }
        }
        out_ += "</g>\n";
    }

    /// The children, N times in rows of `columns`; rows and columns are centred on the origin.
    void repeat(const Node& node, Paint paint, const Style& style) {
        const int count = count_of(node, "slot", most_repeats);
        const int columns = std::max(1, static_cast<int>(node.number("columns", 1)));
        const int rows = (count + columns - 1) / columns;
        for (int i = 0; i < count; ++i) {
            const int row = i / columns;
            const int in_row = std::min(columns, count - row * columns);
            const double x = (i % columns - (in_row - 1) / 2.0) * node.number("dx", 0);
            const double y = (row - (rows - 1) / 2.0) * node.number("dy", 0);
            out_ += "<g transform=\"translate(" + format(x) + " " + format(y) + ")\">\n";
            children(node, paint, style);
            out_ += "</g>\n";
        }
    }

    const FigureRequest& request_;
    const Node& figure_;
    bool mirrored_;
    std::string out_;
};

void collect(const Node& node, std::string_view attribute, std::set<std::string>& names) {
    if (const std::string* name = node.find(attribute)) {
        names.insert(*name);
    }
    for (const Node& child : node.children) {
        collect(child, attribute, names);
    }
}

/// A layer inside a layer would make its state ambiguous. One layer may have several groups: a
/// cable lies on the chest and on the arm.
bool check_layers(const Node& node, bool inside, std::set<std::string>& seen, Fault& fault) {
    const std::string* layer = node.find("layer");
    if (layer && inside) {
        fault = {node.line, "layer " + *layer + " stands inside another layer; move it out"};
        return false;
    }
    if (layer) {
        seen.insert(*layer);
    }
    return std::all_of(node.children.begin(), node.children.end(), [&](const Node& child) {
        return check_layers(child, inside || layer, seen, fault);
    });
}

} // namespace

struct FigureStore::Sources {
    std::map<std::string, Node> figures;
    std::vector<std::string> problems;

    void report(const std::string& name, const Fault& fault) {
        problems.push_back(name + ".svg:" + std::to_string(fault.line) + ": " + fault.text);
    }

    /// Reads and checks one file; faults are reported.
    bool read(const std::string& name, const std::string& text, Node& root) {
        Fault fault;
        if (!figures::parse(text, root, fault)) {
            report(name, fault);
            return false;
        }
        const std::vector<Fault> faults = figures::check(root);
        for (const Fault& each : faults) {
            report(name, each);
        }
        return faults.empty();
    }

    figures::Shapes read_shapes(const std::string& text) {
        figures::Shapes shapes;
        Node root;
        if (!read("shapes", text, root)) {
            return shapes;
        }
        constexpr std::string_view prefix = "shape-";
        for (Node& child : root.children) {
            const std::string* id = child.find("id");
            if (child.name != "g" || !id || !id->starts_with(prefix)) {
                report("shapes", {child.line, "every shape is <g id=\"shape-NAME\">"});
                continue;
            }
            const std::string name = id->substr(prefix.size());
            const int line = child.line;
            if (!shapes.emplace(name, std::move(child)).second) {
                report("shapes", {line, "shape " + name + " is there twice; rename one"});
            }
        }
        return shapes;
    }

    void add(const std::string& name, const std::string& text, const figures::Shapes& shapes) {
        Node root;
        if (!read(name, text, root)) {
            return;
        }
        Fault fault;
        if (!figures::expand(root, shapes, 0, fault)) {
            report(name, fault);
            return;
        }
        std::set<std::string> layers;
        if (!check_layers(root, false, layers, fault)) {
            report(name, fault);
            return;
        }
        std::set<std::string> conditions;
        collect(root, "when", conditions);
        for (const std::string& condition : conditions) {
            if (!layers.contains(condition)) {
                report(name, {1, "when=\"" + condition + "\" names no layer of this figure"});
                return;
            }
        }
        figures.emplace(name, std::move(root));
    }
};

FigureStore::FigureStore(std::map<std::string, std::string> files)
    : sources_(std::make_unique<Sources>()) {
    figures::Shapes shapes;
    if (const auto file = files.find("shapes"); file != files.end()) {
        shapes = sources_->read_shapes(file->second);
    }
    for (const auto& [name, text] : files) {
        if (name != "shapes") {
            sources_->add(name, text, shapes);
        }
    }
}

FigureStore::FigureStore(FigureStore&&) noexcept = default;
FigureStore& FigureStore::operator=(FigureStore&&) noexcept = default;
FigureStore::~FigureStore() = default;

std::vector<std::string> FigureStore::ids() const {
    std::vector<std::string> all;
    for (const auto& [name, figure] : sources_->figures) {
        all.push_back(name);
    }
    return all;
}

bool FigureStore::has(const std::string& id) const {
    return sources_->figures.contains(id);
}

const std::vector<std::string>& FigureStore::problems() const {
    return sources_->problems;
}

std::vector<std::string> FigureStore::layers(const std::string& id) const {
    std::set<std::string> names;
    if (const auto figure = sources_->figures.find(id); figure != sources_->figures.end()) {
        collect(figure->second, "layer", names);
    }
    return {names.begin(), names.end()};
}

std::vector<std::string> FigureStore::mark_slots(const std::string& id) const {
    std::set<std::string> names;
    if (const auto figure = sources_->figures.find(id); figure != sources_->figures.end()) {
        collect(figure->second, "slot", names);
    }
    return {names.begin(), names.end()};
}

std::string FigureStore::compose(const FigureRequest& request) const {
    const auto figure = sources_->figures.find(request.id);
    if (figure == sources_->figures.end()) {
        throw std::out_of_range("figure " + request.id +
                                ": there is no usable file of that name in assets/figures");
    }
    return Composer(request, figure->second).document();
}

std::string background_of(Tone tone) {
    return std::string(palette::colour(Role::background, tone));
}

} // namespace evenfall
