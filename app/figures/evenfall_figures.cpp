// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
//
// Writes every composed figure to a folder, for people who draw and for tests.
#include "figure.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <optional>
#include <set>
#include <sstream>
#include <string_view>

namespace {

namespace fs = std::filesystem;
using namespace evenfall;

constexpr int bad_usage = 2;
constexpr int io_failed = 3;

int usage() {
    std::cerr << "evenfall-figures ASSETS_DIR OUT_DIR [--tone dark|light|night|print] "
                 "[--hand left|right] [--build slim|medium|broad] [--state outline|current|done] "
                 "[--ridges 0..4] [--dots] [--layers NAME,NAME,...] [--backdrop]\n"
                 "ASSETS_DIR is assets/figures. The layers that are named, or else all, are in the "
                 "given state (done). With --dots the marks are dots instead of ridges.\n";
    return bad_usage;
}

template <class T>
bool choose(std::string_view word, std::initializer_list<std::pair<std::string_view, T>> known,
            T& value) {
    for (const auto& [name, meaning] : known) {
        if (name == word) {
            value = meaning;
            return true;
        }
    }
    return false;
}

bool option(std::string_view key, std::string_view word, FigureRequest& request, PartState& state,
            std::optional<int>& ridges) {
    if (key == "--ridges" && word.size() == 1 && word[0] >= '0' && word[0] <= '4') {
        ridges = word[0] - '0';
        return true;
    }
    if (key == "--tone") {
        return choose(word,
                      {std::pair{std::string_view("dark"), Tone::dark},
                       {"light", Tone::light},
                       {"night", Tone::night},
                       {"print", Tone::print}},
                      request.tone);
    }
    if (key == "--hand") {
        return choose(word,
                      {std::pair{std::string_view("left"), Hand::left}, {"right", Hand::right}},
                      request.writing_hand);
    }
    if (key == "--build") {
        return choose(word,
                      {std::pair{std::string_view("slim"), Build::slim},
                       {"medium", Build::medium},
                       {"broad", Build::broad}},
                      request.build);
    }
    if (key == "--state") {
        return choose(word,
                      {std::pair{std::string_view("outline"), PartState::outline},
                       {"current", PartState::current},
                       {"done", PartState::done}},
                      state);
    }
    return false;
}

std::set<std::string> names_in(const std::string& list) {
    std::set<std::string> names;
    std::istringstream in(list);
    for (std::string name; std::getline(in, name, ',');) {
        names.insert(name);
    }
    return names;
}

std::optional<std::map<std::string, std::string>> read_folder(const fs::path& folder) {
    std::map<std::string, std::string> files;
    std::error_code error;
    for (fs::directory_iterator each(folder, error), end; !error && each != end;
         each.increment(error)) {
        if (each->path().extension() != ".svg") {
            continue;
        }
        std::ifstream in(each->path(), std::ios::binary);
        files[each->path().stem().string()] =
            std::string(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>());
        if (!in) {
            std::cerr << each->path().string() << ": cannot be read\n";
            return std::nullopt;
        }
    }
    if (error || files.empty()) {
        std::cerr << folder.string() << ": no figures found; give the folder assets/figures\n";
        return std::nullopt;
    }
    return files;
}

} // namespace

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
    if (words.size() < 2) {
        return usage();
    }
    FigureRequest request;
    PartState state = PartState::done;
    std::optional<int> ridges;
    bool dots = false;
    std::optional<std::set<std::string>> layers;
    for (std::size_t i = 2; i < words.size(); ++i) {
        if (words[i] == "--backdrop") {
            request.backdrop = true;
        } else if (words[i] == "--dots") {
            dots = true;
        } else if (words[i] == "--layers" && i + 1 < words.size()) {
            layers = names_in(words[++i]);
        } else if (i + 1 >= words.size() ||
                   !option(words[i], words[i + 1], request, state, ridges)) {
            std::cerr << "not understood: " << words[i] << "\n";
            return usage();
        } else {
            ++i;
        }
    }
    auto files = read_folder(words[0]);
    if (!files) {
        return io_failed;
    }
    const FigureStore store(std::move(*files));
    for (const std::string& problem : store.problems()) {
        std::cerr << problem << "\n";
    }
    std::error_code error;
    fs::create_directories(words[1], error);
    for (const std::string& id : store.ids()) {
        request.id = id;
        request.parts.clear();
        for (const std::string& layer : store.layers(id)) {
            if (!layers || layers->contains(layer)) {
                request.parts[layer] = state;
            }
        }
        request.counts.clear();
        request.dots.clear();
        for (const std::string& slot : store.mark_slots(id)) {
            if (ridges && slot != "strips") {
                request.counts[slot] = *ridges;
            }
            if (dots) {
                request.dots.insert(slot);
            }
        }
        const fs::path path = fs::path(words[1]) / (id + ".svg");
        std::ofstream out(path, std::ios::binary);
        out << store.compose(request);
        out.close();
        if (!out) {
            std::cerr << path.string() << ": cannot be written\n";
            return io_failed;
        }
    }
    return store.problems().empty() ? 0 : 1;
}
