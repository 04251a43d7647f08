// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "source.h"

#include "palette.h"

#include <algorithm>
#include <charconv>
#include <set>

namespace evenfall::figures {

namespace {

bool is_space(char c) {
    return c == ' ' || c == '\n' || c == '\t' || c == '\r';
}

bool is_name(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' ||
           c == '_';
}

bool parse_number(std::string_view text, double& value) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc() && end == text.data() + text.size();
}

class Reader {
  public:
    Reader(std::string_view text, Fault& fault) : text_(text), fault_(fault) {}

    bool document(Node& root) {
        if (text_.starts_with("<?xml")) {
            const auto end = text_.find("?>");
            if (end == std::string_view::npos) {
                return fail("the first line has no end; write ?> at its end");
            }
            advance(end + 2);
        }
        if (!blank()) {
            return false;
        }
        if (at_end() || text_[at_] != '<') {
            return fail("no drawing found; the file must hold one <svg> element");
        }
        if (!element(root)) {
            return false;
        }
        if (!blank()) {
            return false;
        }
        return at_end() || fail("something follows the end of the drawing; remove it");
    }

  private:
    bool at_end() const { return at_ >= text_.size(); }

    void advance(std::size_t to) {
        line_ +=
            static_cast<int>(std::count(text_.begin() + static_cast<std::ptrdiff_t>(at_),
                                        text_.begin() + static_cast<std::ptrdiff_t>(to), '\n'));
        at_ = to;
    }

    bool fail(std::string text) {
        fault_ = {line_, std::move(text)};
        return false;
    }

    void spaces() {
        while (!at_end() && is_space(text_[at_])) {
            advance(at_ + 1);
        }
    }

    /// White space and comments.
    bool blank() {
        for (;;) {
            spaces();
            if (!text_.substr(at_).starts_with("<!--")) {
                return true;
            }
            const auto end = text_.find("-->", at_ + 4);
            if (end == std::string_view::npos) {
                return fail("a comment has no end; write --> at its end");
            }
            advance(end + 3);
        }
    }

    std::string name() {
        const std::size_t from = at_;
        while (!at_end() && is_name(text_[at_])) {
            ++at_;
        }
        return std::string(text_.substr(from, at_ - from));
    }

    bool attribute(Node& node) {
        const std::string key = name();
        if (key.empty()) {
            return fail("<" + node.name + "> holds something that is not an attribute");
        }
        if (at_end() || text_[at_] != '=' || at_ + 1 >= text_.size() || text_[at_ + 1] != '"') {
            return fail("attribute " + key + " needs a value in double quotes: " + key +
                        "=\"...\"");
        }
        const auto end = text_.find('"', at_ + 2);
        if (end == std::string_view::npos) {
            return fail("the value of attribute " + key + " has no closing quote");
        }
        std::string value(text_.substr(at_ + 2, end - at_ - 2));
        if (value.find_first_of("<&>") != std::string::npos) {
            return fail("attribute " + key + " holds one of < & >; sources need none of them");
        }
        if (node.find(key) != nullptr) {
            return fail("attribute " + key + " stands twice in one element; keep one");
        }
        node.attributes.emplace_back(key, std::move(value));
        advance(end + 1);
        return true;
    }

    bool element(Node& node) {
        node.line = line_;
        ++at_;
        node.name = name();
        if (node.name.empty()) {
            return fail("a < is not followed by the name of an element");
        }
        for (;;) {
            spaces();
            if (at_end()) {
                return fail("<" + node.name + "> has no end");
            }
            if (text_.substr(at_).starts_with("/>")) {
                advance(at_ + 2);
                return true;
            }
            if (text_[at_] == '>') {
                advance(at_ + 1);
                return content(node);
            }
            if (!attribute(node)) {
                return false;
            }
        }
    }

    bool content(Node& node) {
        for (;;) {
            if (!blank()) {
                return false;
            }
            if (at_end()) {
                return fail("<" + node.name + "> of line " + std::to_string(node.line) +
                            " is never closed; write </" + node.name + ">");
            }
            if (text_[at_] != '<') {
                return fail("text inside <" + node.name + ">; figures carry no words");
            }
            if (text_.substr(at_).starts_with("</")) {
                at_ += 2;
                const std::string closed = name();
                if (closed != node.name) {
                    return fail("</" + closed + "> closes <" + node.name + "> of line " +
                                std::to_string(node.line) + "; write </" + node.name + ">");
                }
                spaces();
                if (at_end() || text_[at_] != '>') {
                    return fail("</" + closed + " lacks its >");
                }
                advance(at_ + 1);
                return true;
            }
            if (!element(node.children.emplace_back())) {
                return false;
            }
        }
    }

    std::string_view text_;
    Fault& fault_;
    std::size_t at_ = 0;
    int line_ = 1;
};

using Names = std::set<std::string, std::less<>>;

const Names paint_attributes{"fill",           "stroke",          "stroke-width",
                             "stroke-linecap", "stroke-linejoin", "stroke-dasharray",
                             "fill-opacity",   "stroke-opacity"};

const std::map<std::string, Names, std::less<>>& grammar() {
    static const std::map<std::string, Names, std::less<>> elements{
        {"svg", {"xmlns", "viewBox", "mirror"}},
        {"g",
         {"id", "transform", "layer", "when", "paint", "stretch", "shift", "breathe", "keep",
          "halo", "place", "dx", "default"}},
        {"include",
         {"shape", "slot", "transform", "paint", "stretch", "shift", "breathe", "keep", "when"}},
        {"mark", {"slot", "default", "count", "quiet", "x", "y", "size", "angle"}},
        {"repeat", {"slot", "default", "columns", "dx", "dy"}},
        {"path", {"d", "transform", "detail"}},
        {"rect", {"x", "y", "width", "height", "rx", "transform", "detail"}},
        {"circle", {"cx", "cy", "r", "transform", "detail"}},
        {"ellipse", {"cx", "cy", "rx", "ry", "transform", "detail"}},
        {"line", {"x1", "y1", "x2", "y2", "transform", "detail"}},
        {"polyline", {"points", "transform", "detail"}},
        {"polygon", {"points", "transform", "detail"}},
    };
    return elements;
}

const Names number_attributes{"stroke-width",
                              "fill-opacity",
                              "stroke-opacity",
                              "x",
                              "y",
                              "width",
                              "height",
                              "rx",
                              "ry",
                              "cx",
                              "cy",
                              "r",
                              "x1",
                              "y1",
                              "x2",
                              "y2",
                              "size",
                              "angle",
                              "dx",
                              "dy",
                              "columns",
                              "count",
                              "default",
                              "stretch",
                              "shift",
                              "breathe",
                              "keep",
                              "halo"};

const std::map<std::string, Names, std::less<>> word_attributes{
    {"mirror", {"no"}},
    {"paint", {"accent", "current", "edged", "outline"}},
    {"detail", {"yes"}},
    {"quiet", {"yes"}},
    {"stroke-linecap", {"butt", "round"}},
    {"stroke-linejoin", {"miter", "round"}},
};

const std::map<std::string, Names, std::less<>> needed_attributes{
    {"include", {"shape"}},          {"mark", {"slot", "x", "y", "size"}},
    {"repeat", {"slot", "columns"}}, {"path", {"d"}},
    {"rect", {"width", "height"}},   {"circle", {"r"}},
    {"ellipse", {"rx", "ry"}},       {"polyline", {"points"}},
    {"polygon", {"points"}},
};

void check_attribute(const Node& node, const std::string& key, const std::string& value,
                     std::vector<Fault>& faults) {
    const auto& known = grammar().find(node.name)->second;
    const bool paintable = node.name != "svg" && node.name != "mark" && node.name != "repeat" &&
                           node.name != "include";
    if (!known.contains(key) && !(paintable && paint_attributes.contains(key))) {
        faults.push_back({node.line, "<" + node.name + "> may not have attribute " + key});
        return;
    }
    if ((key == "fill" || key == "stroke") && value != "none" && !palette::find(value)) {
        faults.push_back({node.line, key + " " + value +
                                         " is not in the palette; use a colour of its first column "
                                         "or none"});
    }
    double number = 0;
    if (number_attributes.contains(key) && !parse_number(value, number)) {
        faults.push_back({node.line, key + "=\"" + value + "\" is not a number"});
    }
    const auto words = word_attributes.find(key);
    if (words != word_attributes.end() && !words->second.contains(value)) {
        std::string right;
        for (const auto& word : words->second) {
            right += (right.empty() ? "" : ", ") + word;
        }
        faults.push_back({node.line, key + "=\"" + value + "\" is not one of: " + right});
    }
}

void check_node(const Node& node, bool is_root, std::vector<Fault>& faults) {
    if (!grammar().contains(node.name) || (node.name == "svg") != is_root) {
        faults.push_back(
            {node.line, "<" + node.name +
                            "> may not stand here; figures use path rect "
                            "circle ellipse line polyline polygon g include mark repeat"});
        return;
    }
    for (const auto& [key, value] : node.attributes) {
        check_attribute(node, key, value, faults);
    }
    const auto needed = needed_attributes.find(node.name);
    if (needed != needed_attributes.end()) {
        for (const auto& key : needed->second) {
            if (!node.find(key)) {
                faults.push_back({node.line, "<" + node.name + "> needs attribute " + key});
            }
        }
    }
    const bool container = node.name == "svg" || node.name == "g" || node.name == "repeat";
    if (!container && !node.children.empty()) {
        faults.push_back({node.line, "<" + node.name + "> may not hold other elements"});
    }
    for (const Node& child : node.children) {
        check_node(child, false, faults);
    }
}

/// The including element may give the shape's slot "mark" another name.
void rename_slot(Node& node, const std::string& slot) {
    if (node.name == "mark") {
        for (auto& [key, value] : node.attributes) {
            if (key == "slot" && value == "mark") {
                value = slot;
            }
        }
    }
    for (Node& child : node.children) {
        rename_slot(child, slot);
    }
}

} // namespace

const std::string* Node::find(std::string_view attribute) const {
    for (const auto& [key, value] : attributes) {
        if (key == attribute) {
            return &value;
        }
    }
    return nullptr;
}

double Node::number(std::string_view attribute, double otherwise) const {
    const std::string* text = find(attribute);
    double value = otherwise;
    if (text) {
        parse_number(*text, value);
    }
    return value;
}

bool parse(std::string_view text, Node& root, Fault& fault) {
    return Reader(text, fault).document(root);
}

std::vector<Fault> check(const Node& root) {
    std::vector<Fault> faults;
    check_node(root, true, faults);
    const std::string* box = root.find("viewBox");
    if (!box || *box != "0 0 800 800") {
        faults.push_back({root.line, "the drawing must have viewBox=\"0 0 800 800\""});
    }
    return faults;
}

bool expand(Node& node, const Shapes& shapes, int depth, Fault& fault) {
    if (depth > 24) {
        fault = {node.line, "shapes include each other without end; break the circle"};
        return false;
    }
    if (node.name == "include") {
        const std::string wanted = *node.find("shape");
        const auto shape = shapes.find(wanted);
        if (shape == shapes.end()) {
            fault = {node.line, "shape \"" + wanted +
                                    "\" is not in shapes.svg; write the part of "
                                    "its id after \"shape-\""};
            return false;
        }
        Node inner = shape->second;
        std::erase_if(inner.attributes, [](const auto& a) { return a.first == "id"; });
        if (const std::string* slot = node.find("slot")) {
            rename_slot(inner, *slot);
        }
        node.name = "g";
        std::erase_if(node.attributes,
                      [](const auto& a) { return a.first == "shape" || a.first == "slot"; });
        node.children.assign(1, std::move(inner));
    }
    return std::all_of(node.children.begin(), node.children.end(),
                       [&](Node& child) { return expand(child, shapes, depth + 1, fault); });
}

} // namespace evenfall::figures
