// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// Reading of figure sources: the small part of XML that they use, and the rules they keep.
/// assets/figures/README.md describes the grammar for people who draw.
namespace evenfall::figures {

struct Node {
    std::string name;
    std::vector<std::pair<std::string, std::string>> attributes;
    std::vector<Node> children;
    int line = 0;

    /// The attribute's value, or null.
    const std::string* find(std::string_view attribute) const;
    /// The attribute as a number; `otherwise` if it is missing. check() has refused non-numbers.
    double number(std::string_view attribute, double otherwise) const;
};

struct Fault {
    int line = 0;
    std::string text;
};

/// Reads one document: elements, attributes in double quotes, comments. Text between elements,
/// entities and processing instructions other than the first line are faults.
/// @return true and the root, or false and the first fault.
bool parse(std::string_view text, Node& root, Fault& fault);

/// Everything in the tree that breaks the rules of sources: unknown elements and attributes,
/// colours outside the palette, bad numbers.
std::vector<Fault> check(const Node& root);

/// Shapes by name; the tree of a figure with every <include> replaced by the shape.
using Shapes = std::map<std::string, Node>;
bool expand(Node& node, const Shapes& shapes, int depth, Fault& fault);

} // namespace evenfall::figures
