// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
//
// The real drawings of assets/figures through the composer. The reader in this file is a second
// one, written apart from the composer's own, so that one fault cannot hide the other.
#include "figures/figure.h"
#include "figures/palette.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <sstream>

namespace {

using namespace evenfall;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

const std::vector<std::string> wanted{
    // the figure that is the progress
    "person",
    // steps
    "belt_chest", "belt_abdomen", "belt_breath", "sensor_snap", "recorder_hip", "recorder_chest",
    "recorder_harness", "plug_match", "snap_press", "cannula_prongs", "cannula_ears",
    "cannula_chin", "cannula_tape", "tube_push", "tube_twist", "tube_snap", "breath_place",
    "probe_place", "probe_tape_hand", "probe_tape_arm", "probe_plug", "ecg_place",
    "position_place", "snore_place", "leg_left", "leg_right", "switch_slide", "set_time", "light_look", "worn",
    // before
    "bathroom", "charger", "clothes", "bare_hands", "tape_strips", "phone_away",
    "children_pets", "practice",
    // mistakes
    "wrong_belt_twisted", "wrong_prongs_flipped", "wrong_tube_front_neck", "wrong_probe_upside", "wrong_probe_not_in",
    "wrong_cable_loose",
    // night and after
    "free_cables", "switch_off", "plug_out", "stops_itself", "unplug", "unplug_snap", "tube_untwist", "rest_off", "sensor_unsnap", "tape_off_low", "skin_look", "pack_bag", "return_box",
    // parts of the kit
    "item_belt", "item_sensor", "item_recorder", "item_cannula", "item_breath", "item_probe",
    "item_ecg", "item_position", "item_snore", "item_leg", "item_tape", "item_charger"};

const std::vector<std::string> person_layers{"belt_abdomen", "belt_chest",     "breath",
                                             "cable_probe",  "cannula",        "ecg",
                                             "leg_left",     "leg_right",      "mirror",
                                             "position",     "probe",          "recorder_chest",
                                             "recorder_harness", "recorder_hip",
                                             "sensor_abdomen", "sensor_chest", "snore",
                                             "tape_cheeks",  "tape_hand"};

/// What a plug's cable may come from, by its layer of the whole person.
const std::vector<std::string> plugged{"belt_abdomen", "belt_chest",   "breath",   "ecg",
                                       "leg_left",     "leg_right",    "position", "probe",
                                       "sensor_abdomen", "sensor_chest", "snore"};

std::map<std::string, std::string> read_assets() {
    std::map<std::string, std::string> files;
    for (const auto& each :
         std::filesystem::directory_iterator(EVENFALL_SOURCE_DIR "/assets/figures")) {
        if (each.path().extension() == ".svg") {
            std::ifstream in(each.path(), std::ios::binary);
            files[each.path().stem().string()] =
                std::string(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>());
        }
    }
    return files;
}

const FigureStore& store() {
    static const FigureStore the_store(read_assets());
    return the_store;
}

FigureRequest request(const std::string& id) {
    FigureRequest r;
    r.id = id;
    return r;
}

FigureRequest person(const std::string& layer, PartState state) {
    FigureRequest r = request("person");
    r.parts[layer] = state;
    return r;
}

std::size_t count(const std::string& text, const std::string& piece) {
    std::size_t n = 0;
    for (auto at = text.find(piece); at != std::string::npos; at = text.find(piece, at + 1)) {
        ++n;
    }
    return n;
}

std::string tone_of(palette::Role role, Tone tone = Tone::dark) {
    return std::string(palette::colour(role, tone));
}

struct Tag {
    std::string name;
    std::map<std::string, std::string> attributes;
};

/// Strict scan of a composed document: every tag, or the first thing that is wrong.
std::string scan(const std::string& text, std::vector<Tag>& tags) {
    std::vector<std::string> open;
    std::size_t at = 0;
    int roots = 0;
    while (at < text.size()) {
        if (std::isspace(static_cast<unsigned char>(text[at]))) {
            ++at;
            continue;
        }
        if (text[at] != '<') {
            return "text at " + text.substr(at, 30);
        }
        const auto end = text.find('>', at);
        if (end == std::string::npos) {
            return "no > after " + text.substr(at, 30);
        }
        std::string inner = text.substr(at + 1, end - at - 1);
        at = end + 1;
        if (inner.starts_with("/")) {
            if (open.empty() || open.back() != inner.substr(1)) {
                return "unexpected </" + inner.substr(1) + ">";
            }
            open.pop_back();
            continue;
        }
        const bool empty = inner.ends_with("/");
        if (empty) {
            inner.pop_back();
        }
        Tag tag;
        const auto name_end = std::min(inner.find(' '), inner.size());
        tag.name = inner.substr(0, name_end);
        std::size_t i = name_end;
        while (i < inner.size()) {
            if (inner[i] != ' ') {
                return "no space in <" + inner + ">";
            }
            const auto equals = inner.find("=\"", i);
            const auto quote = equals == std::string::npos ? equals : inner.find('"', equals + 2);
            if (quote == std::string::npos) {
                return "bad attribute in <" + inner + ">";
            }
            const std::string key = inner.substr(i + 1, equals - i - 1);
            if (!tag.attributes.emplace(key, inner.substr(equals + 2, quote - equals - 2)).second) {
                return "attribute twice in <" + inner + ">";
            }
            i = quote + 1;
        }
        roots += open.empty() ? 1 : 0;
        if (!empty) {
            open.push_back(tag.name);
        }
        tags.push_back(std::move(tag));
    }
    if (!open.empty() || roots != 1) {
        return "not one closed root";
    }
    return "";
}

/// SVG path data with the right count of numbers for each command; empty if it is right.
std::string path_fault(const std::string& d) {
    const std::map<char, int> needs{{'M', 2}, {'L', 2}, {'H', 1}, {'V', 1}, {'C', 6},
                                    {'S', 4}, {'Q', 4}, {'T', 2}, {'A', 7}, {'Z', 0}};
    std::size_t at = 0;
    char command = 0;
    int numbers = 0;
    const auto complete = [&] {
        const int need = needs.at(command);
        return need == 0 ? numbers == 0 : numbers > 0 && numbers % need == 0;
    };
    while (at < d.size()) {
        if (d[at] == ' ' || d[at] == ',') {
            ++at;
        } else if (std::isalpha(static_cast<unsigned char>(d[at]))) {
            const char next = static_cast<char>(std::toupper(static_cast<unsigned char>(d[at])));
            if (!needs.contains(next) || (command == 0 && next != 'M') ||
                (command != 0 && !complete())) {
                return "at " + d.substr(at, 20);
            }
            command = next;
            numbers = 0;
            ++at;
        } else {
            std::size_t used = 0;
            try {
                (void)std::stod(d.substr(at), &used);
            } catch (const std::exception&) {
                return "no number at " + d.substr(at, 20);
            }
            if (command == 0) {
                return "does not begin with M";
            }
            ++numbers;
            at += used;
        }
    }
    return command != 0 && complete() ? "" : "ends early";
}

void expect_flat(const std::string& text, const std::string& what, Tone tone) {
    SCOPED_TRACE(what);
    std::vector<Tag> tags;
    ASSERT_EQ(scan(text, tags), "");
    ASSERT_GT(tags.size(), 2u);
    EXPECT_EQ(tags[0].name, "svg");
    EXPECT_EQ(tags[0].attributes["viewBox"], "0 0 800 800");
    static const std::set<std::string> elements{"svg",     "g",    "path",     "rect",   "circle",
                                                "ellipse", "line", "polyline", "polygon"};
    static const std::set<std::string> attributes{"xmlns",
                                                  "viewBox",
                                                  "width",
                                                  "height",
                                                  "transform",
                                                  "d",
                                                  "x",
                                                  "y",
                                                  "rx",
                                                  "ry",
                                                  "cx",
                                                  "cy",
                                                  "r",
                                                  "x1",
                                                  "y1",
                                                  "x2",
                                                  "y2",
                                                  "points",
                                                  "fill",
                                                  "stroke",
                                                  "stroke-width",
                                                  "stroke-linecap",
                                                  "stroke-linejoin",
                                                  "stroke-dasharray",
                                                  "fill-opacity",
                                                  "stroke-opacity"};
    for (const Tag& tag : tags) {
        EXPECT_TRUE(elements.contains(tag.name)) << tag.name;
        for (const auto& [key, value] : tag.attributes) {
            EXPECT_TRUE(attributes.contains(key)) << tag.name << " " << key;
            EXPECT_FALSE(value.empty()) << tag.name << " " << key;
            EXPECT_TRUE(tag.name != "g" || key == "transform") << "inherited or group opacity";
            if (key == "d") {
                EXPECT_EQ(path_fault(value), "") << value;
            }
            if ((key == "fill" || key == "stroke") && value != "none") {
                EXPECT_EQ(value.size(), 7u) << value;
                EXPECT_EQ(value[0], '#') << value;
                if (tone == Tone::print) {
                    EXPECT_TRUE(value.substr(1, 2) == value.substr(3, 2) &&
                                value.substr(3, 2) == value.substr(5, 2))
                        << value << " is not grey";
                }
            }
        }
        if (tag.name != "svg" && tag.name != "g") {
            EXPECT_TRUE(tag.attributes.contains("fill")) << tag.name << " would be black";
        }
    }
}

TEST(Figures, SourcesHaveNoFault) {
    EXPECT_THAT(store().problems(), IsEmpty());
}

TEST(Figures, EveryFigureOfTheListIsThereAndNoOther) {
    std::vector<std::string> sorted = wanted;
    std::sort(sorted.begin(), sorted.end());
    EXPECT_EQ(store().ids(), sorted);
    EXPECT_TRUE(store().has("person"));
    EXPECT_FALSE(store().has("shapes"));
}

TEST(Figures, AreFlatAndWellFormedInEveryToneHandAndBuild) {
    for (const std::string& id : store().ids()) {
        for (const Tone tone : {Tone::dark, Tone::light, Tone::night, Tone::print}) {
            for (const Hand hand : {Hand::left, Hand::right}) {
                for (const Build build : {Build::slim, Build::medium, Build::broad}) {
                    FigureRequest r = request(id);
                    r.tone = tone;
                    r.writing_hand = hand;
                    r.build = build;
                    r.widen = 0.5;
                    r.backdrop = true;
                    expect_flat(store().compose(r), id, tone);
                }
            }
        }
    }
}

TEST(Figures, PersonIsFlatInEveryStateOfEveryLayer) {
    for (const std::string& layer : store().layers("person")) {
        for (const PartState state :
             {PartState::hidden, PartState::outline, PartState::current, PartState::done}) {
            FigureRequest r = person(layer, state);
            r.tone = Tone::print;
            expect_flat(store().compose(r), layer, Tone::print);
        }
    }
}

TEST(Figures, EveryMistakeCarriesACrossOfItsOwn) {
    for (const std::string& id : wanted) {
        const bool crossed =
            store().compose(request(id)).find(tone_of(palette::Role::wrong_mark)) !=
            std::string::npos;
        EXPECT_EQ(crossed, id.starts_with("wrong_") || id == "light_look") << id;
    }
}

TEST(Figures, HaveOneArrowAtMost) {
    for (const auto& [name, text] : read_assets()) {
        if (name != "shapes") {
            EXPECT_LE(count(text, "shape=\"arrow"), 1u) << name;
        }
    }
}

TEST(Palette, HasOneCanonicalColourForEachRole) {
    std::set<std::string_view> seen;
    std::size_t at = 0;
    for (const auto& row : palette::table()) {
        EXPECT_TRUE(seen.insert(row.canonical).second) << row.name;
        EXPECT_EQ(static_cast<std::size_t>(row.role), at++) << row.name;
        EXPECT_EQ(palette::find(row.canonical), &row);
    }
    EXPECT_EQ(palette::find("#123456"), nullptr);
}

/// Relative luminance and contrast by WCAG 2.2 (from memory of its definition).
double luminance(std::string_view hex) {
    const auto channel = [&](std::size_t at) {
        const double v = std::stoi(std::string(hex.substr(at, 2)), nullptr, 16) / 255.0;
        return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

double contrast(std::string_view a, std::string_view b) {
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

TEST(Palette, PartsInQuestionStandOutByLightnessInEveryTone) {
    // 3:1 for graphical parts (WCAG 1.4.11, from memory). On the dim night page everything is dark
    // on purpose; there the part must still be the lightest thing beside its line.
    for (const Tone tone : {Tone::dark, Tone::light, Tone::print}) {
        EXPECT_GE(contrast(palette::colour(palette::Role::accent_mark, tone),
                           palette::colour(palette::Role::accent, tone)),
                  3.0);
        EXPECT_GE(contrast(palette::colour(palette::Role::mark, tone),
                           palette::colour(palette::Role::part, tone)),
                  7.0);
        EXPECT_GE(contrast(palette::colour(palette::Role::ink, tone),
                           palette::colour(palette::Role::background, tone)),
                  7.0);
        EXPECT_GE(contrast(palette::colour(palette::Role::wrong, tone),
                           palette::colour(palette::Role::background, tone)),
                  3.0);
    }
    EXPECT_GE(contrast(palette::colour(palette::Role::accent, Tone::night),
                       palette::colour(palette::Role::skin, Tone::night)),
              1.5);
    EXPECT_GE(contrast(palette::colour(palette::Role::accent, Tone::night),
                       palette::colour(palette::Role::background, Tone::night)),
              3.0);
}

TEST(Palette, BrownsAndClothStandOutFromTheGround)
{
    // 3:1 for graphical parts (WCAG 1.4.11, from memory) holds for what tells where one is: wood
    // (door, bag, bedpost). Cloth and hair only need to be told from the ground; the bounds are
    // our own, from looking at the drawings at 240 px.
    using palette::Role;
    EXPECT_GE(contrast(palette::colour(Role::wood, Tone::dark),
                       palette::colour(Role::background, Tone::dark)),
              3.0);
    for (const Tone tone : {Tone::dark, Tone::light, Tone::print}) {
        for (const Role role : {Role::wood, Role::wood_shade, Role::cloth, Role::hair}) {
            EXPECT_GE(
                contrast(palette::colour(role, tone), palette::colour(Role::background, tone)), 2.0)
                << palette::colour(role, tone);
        }
        EXPECT_GE(contrast(palette::colour(Role::cloth, tone), palette::colour(Role::skin, tone)),
                  1.7)
            << palette::colour(Role::cloth, tone);
    }
}

TEST(Person, HasTheLayersThatPlansName)
{
    EXPECT_EQ(store().layers("person"), person_layers);
}

TEST(Person, ShowsNoPartUnlessAsked) {
    const std::string bare = store().compose(request("person"));
    EXPECT_EQ(bare.find(tone_of(palette::Role::part) + "\""), std::string::npos);
    for (const std::string& layer : person_layers) {
        EXPECT_EQ(store().compose(person(layer, PartState::hidden)), bare) << layer;
        EXPECT_NE(store().compose(person(layer, PartState::done)), bare) << layer;
    }
}

TEST(Person, PartsToComeAreQuietLinesOnly) {
    const std::string bare = store().compose(request("person"));
    for (const std::string& layer : person_layers) {
        const std::string text = store().compose(person(layer, PartState::outline));
        EXPECT_GT(count(text, tone_of(palette::Role::quiet)), 0u) << layer;
        EXPECT_EQ(count(text, "fill=\"" + tone_of(palette::Role::quiet)), 0u) << layer;
        EXPECT_EQ(count(text, tone_of(palette::Role::part) + "\""), 0u) << layer;
        EXPECT_EQ(count(text, tone_of(palette::Role::accent) + "\""), 0u) << layer;
    }
}

TEST(Person, OutlinesLeaveOutTheDetails) {
    // Belt, buckle and nothing inside the buckle; the bare person has the rest.
    const auto shapes = [](const std::string& text) { return count(text, " fill="); };
    FigureRequest r = person("belt_chest", PartState::outline);
    r.counts["mark-belt_chest"] = 3;
    EXPECT_EQ(shapes(store().compose(r)), shapes(store().compose(request("person"))) + 2);
    r.parts["belt_chest"] = PartState::done;
    EXPECT_EQ(shapes(store().compose(r)), shapes(store().compose(request("person"))) + 3 + 3);
}

TEST(Person, ThePartInQuestionHasAccentAndHalo) {
    for (const std::string& layer : person_layers) {
        const std::string text = store().compose(person(layer, PartState::current));
        EXPECT_GT(count(text, tone_of(palette::Role::accent) + "\""), 0u) << layer;
        EXPECT_GT(count(text, tone_of(palette::Role::halo)), 0u) << layer;
        const std::string done = store().compose(person(layer, PartState::done));
        EXPECT_EQ(count(done, tone_of(palette::Role::accent) + "\""), 0u) << layer;
        EXPECT_EQ(count(done, tone_of(palette::Role::halo)), 0u) << layer;
    }
}

TEST(Person, PulseChangesTheHaloAndNothingElse) {
    FigureRequest r = person("belt_chest", PartState::current);
    std::string full = store().compose(r);
    r.pulse = 0.0;
    const std::string faint = store().compose(r);
    EXPECT_NE(full, faint);
    const std::string low =
        palette::mix(tone_of(palette::Role::background), tone_of(palette::Role::halo), 0.25);
    ASSERT_GT(count(faint, low), 0u);
    for (auto at = full.find(tone_of(palette::Role::halo)); at != std::string::npos;
         at = full.find(tone_of(palette::Role::halo))) {
        full.replace(at, 7, low);
    }
    EXPECT_EQ(full, faint);
}

TEST(Person, BuildsDifferAndMediumIsTheSourceItself) {
    FigureRequest r = request("person");
    const std::string medium = store().compose(r);
    EXPECT_EQ(count(medium, "matrix(0.88"), 0u);
    r.build = Build::slim;
    const std::string slim = store().compose(r);
    EXPECT_GT(count(slim, "matrix(0.88 0 0 1 48 0)"), 0u);
    r.build = Build::broad;
    const std::string broad = store().compose(r);
    EXPECT_GT(count(broad, "matrix(1.16 0 0 1 -64 0)"), 0u);
    // The arms move outwards with the shoulders instead of growing.
    EXPECT_GT(count(broad, "translate(-13.12 0)"), 0u);
    EXPECT_GT(count(broad, "translate(13.12 0)"), 0u);
}

/// The drawing inside the mirror of a left-hander's figure.
std::string unmirrored(const std::string& text) {
    const std::string wrap = "<g transform=\"matrix(-1 0 0 1 800 0)\">\n";
    const auto at = text.find(wrap);
    EXPECT_NE(at, std::string::npos);
    std::string inner = text.substr(0, at) + text.substr(at + wrap.size());
    const std::string end = "</g>\n</svg>\n";
    EXPECT_TRUE(inner.ends_with(end));
    return inner.substr(0, inner.size() - end.size()) + "</svg>\n";
}

TEST(Mirror, LeftHandersSeeTheWholeFigureTurnedRound) {
    for (const std::string id : {"person", "probe_place", "probe_tape_hand", "belt_chest"}) {
        FigureRequest r = request(id);
        if (id == "person") {
            r.parts = {{"probe", PartState::current}, {"belt_chest", PartState::done}};
        }
        const std::string right = store().compose(r);
        r.writing_hand = Hand::left;
        EXPECT_EQ(unmirrored(store().compose(r)), right) << id;
    }
}

TEST(Mirror, DevicesAndClockwiseTurnsStayAsTheyAre)
{
    for (const std::string id :
         {"tube_twist", "tube_push", "probe_plug", "switch_slide", "set_time", "light_look",
          "ecg_place", "plug_match", "sensor_snap", "snap_press", "tube_snap", "worn",
          "leg_left", "leg_right", "switch_off", "plug_out", "stops_itself", "skin_look"}) {
        FigureRequest r = request(id);
        const std::string right = store().compose(r);
        r.writing_hand = Hand::left;
        EXPECT_EQ(store().compose(r), right) << id;
    }
}

TEST(Mirror, TheStateFollowsTheLegAndNotTheSideOfThePicture) {
    FigureRequest left_hander = person("leg_left", PartState::done);
    left_hander.writing_hand = Hand::left;
    EXPECT_EQ(unmirrored(store().compose(left_hander)),
              store().compose(person("leg_right", PartState::done)));
    left_hander = person("leg_right", PartState::current);
    left_hander.writing_hand = Hand::left;
    EXPECT_EQ(unmirrored(store().compose(left_hander)),
              store().compose(person("leg_left", PartState::current)));
}

TEST(Mirror, EcgElectrodesKeepTheirSideOfTheBody) {
    FigureRequest r = person("ecg", PartState::done);
    const std::size_t before = count(store().compose(r), "matrix(-1 0 0 1 800 0)");
    r.writing_hand = Hand::left;
    // Twice more: the whole figure turned round, and the electrodes turned back.
    EXPECT_EQ(count(store().compose(r), "matrix(-1 0 0 1 800 0)"), before + 2);
}

/// Whether code asks for the figure: by its whole name, or by a beginning and an end put together
/// ("wrong_" and "belt_twisted").
bool is_asked_for(const std::string& id, const std::string& code) {
    const auto has = [&code](const std::string& word) { return code.find('"' + word + '"') != std::string::npos; };
    const std::size_t join = id.find('_') + 1;
    return has(id) || (join > 0 && has(id.substr(0, join)) && has(id.substr(join)));
}

TEST(Sources, NoFigureIsDrawnThatNoPageShows) {
    std::string code;
    for (const char* folder : {"/core/kit", "/core/plan", "/core/sheet", "/app/kiosk"}) {
        for (const auto& entry : std::filesystem::directory_iterator(EVENFALL_SOURCE_DIR + std::string(folder))) {
            if (entry.path().extension() == ".cpp") {
                std::ifstream in(entry.path(), std::ios::binary);
                code.append(std::istreambuf_iterator<char>(in), {});
            }
        }
    }
    for (const std::string& id : store().ids()) {
        EXPECT_TRUE(is_asked_for(id, code)) << id;
    }
    EXPECT_FALSE(is_asked_for("wrong_hat", code));
}

TEST(Marks, PlugAndPortShowAsManyRidgesAsTheKitSays) {
    for (int n = 0; n <= 4; ++n) {
        FigureRequest r = request("plug_match");
        r.counts = {{"mark-plug", 0}, {"mark-port", 0}};
        const std::size_t none = count(store().compose(r), "<rect");
        r.counts = {{"mark-plug", n}, {"mark-port", 0}};
        EXPECT_EQ(count(store().compose(r), "<rect"), none + static_cast<std::size_t>(n));
        r.counts = {{"mark-plug", n}, {"mark-port", n}};
        EXPECT_EQ(count(store().compose(r), "<rect"), none + 2 * static_cast<std::size_t>(n));
    }
}

TEST(Plugs, TheFigureNamesTheSensorThatTheCableComesFrom) {
    for (const std::string id : {"plug_match", "snap_press"}) {
        const auto of_the_ports = [](const std::string& layer) {
            const std::vector<std::string> words{"port_", "in_", "other_", "edge_", "rows_", "light", "stub", "tube_in"};
            return std::any_of(words.begin(), words.end(), [&layer](const std::string& word) { return layer.starts_with(word); });
        };
        for (const std::string& layer : store().layers(id)) {
            EXPECT_TRUE(of_the_ports(layer) || std::count(person_layers.begin(), person_layers.end(), layer) == 1) << id << " " << layer;
        }
        std::set<std::string> seen{store().compose(request(id))};
        for (const std::string& from : plugged) {
            FigureRequest r = request(id);
            r.parts[from] = PartState::done;
            EXPECT_TRUE(seen.insert(store().compose(r)).second) << id << " " << from;
        }
    }
    // The finger clip is the only one that these show.
    for (const std::string id : {"probe_plug", "plug_out"}) {
        for (const std::string& layer : store().layers(id)) {
            EXPECT_EQ(std::count(person_layers.begin(), person_layers.end(), layer), 0) << id << " " << layer;
        }
    }
}

TEST(Plugs, TheEdgeOfTheRecorderIsSeenWhereItHasTwoRows) {
    for (const std::string id : {"plug_match", "snap_press", "probe_plug"}) {
        FigureRequest r = request(id);
        r.parts["edge_top"] = PartState::done;
        const std::string none = store().compose(r);
        r.parts["rows_left"] = PartState::done;
        const std::string top = store().compose(r);
        EXPECT_NE(none, top) << id;
        r.parts["other_2"] = PartState::done; // a plug in the other row
        EXPECT_GT(count(store().compose(r), "<path"), count(top, "<path")) << id;
        r = request(id);
        r.parts["edge_bottom"] = r.parts["rows_left"] = PartState::done;
        EXPECT_NE(store().compose(r), top) << id;
    }
}

TEST(Plugs, ThoseThatAreInAreSeenOnTheWholeRecorder) {
    for (const std::string id : {"tube_push", "tube_twist", "switch_slide", "switch_off", "set_time", "stops_itself"}) {
        std::set<std::string> seen{store().compose(request(id))};
        for (const std::string layer : {"in_1", "in_2", "in_3", "in_4", "tube_in"}) {
            FigureRequest r = request(id);
            r.parts[layer] = PartState::done;
            EXPECT_TRUE(seen.insert(store().compose(r)).second) << id << " " << layer;
        }
    }
}

TEST(Plugs, ThoseThatAreInAreSeenInTheirPorts) {
    for (const std::string id : {"plug_match", "snap_press", "probe_plug", "plug_out"}) {
        std::set<std::string> seen{store().compose(request(id))};
        for (int ridges = 0; ridges <= 4; ++ridges) {
            FigureRequest r = request(id);
            r.parts["in_" + std::to_string(ridges)] = PartState::done;
            EXPECT_TRUE(seen.insert(store().compose(r)).second) << id << " " << ridges;
        }
    }
}

/// Where the port in question stands: the move of the group that holds it.
double place_of_port(const std::string& id, int ridges) {
    FigureRequest r = request(id);
    r.counts = {{"mark-plug", ridges}, {"mark-port", ridges}};
    const std::string text = store().compose(r);
    const std::string move = "<g transform=\"translate(";
    // Nothing but the first place, which is not moved, gives a move of nought.
    const auto at = text.find(move);
    return at == std::string::npos ? -1 : std::stod(text.substr(at + move.size()));
}

TEST(Plugs, ThePortWithNRidgesIsTheNthAndTheSmoothOneTheLast) {
    for (const std::string id : {"plug_match", "snap_press", "probe_plug", "plug_out"}) {
        EXPECT_EQ(place_of_port(id, 1), 0) << id;
        EXPECT_EQ(place_of_port(id, 2), 132) << id;
        EXPECT_EQ(place_of_port(id, 3), 264) << id;
        EXPECT_EQ(place_of_port(id, 4), 396) << id;
        EXPECT_EQ(place_of_port(id, 0), 528) << id;
    }
}

TEST(Plugs, OnlyThePortsOfTheKitStandInTheRow) {
    for (const std::string id : {"plug_match", "snap_press", "probe_plug", "plug_out"}) {
        FigureRequest r = request(id);
        const std::size_t alone = count(store().compose(r), "<path");
        r.parts["port_3"] = PartState::done; // its top and its ridges
        EXPECT_EQ(count(store().compose(r), "<path"), alone + 1) << id;
        EXPECT_EQ(count(store().compose(r), tone_of(palette::Role::part_shade) + "\"/>\n"), 3u) << id; // its ridges
        r.parts["port_0"] = PartState::done; // smooth: a top and no ridges
        EXPECT_EQ(count(store().compose(r), "<path"), alone + 2) << id;
    }
}

TEST(Legs, EachLegHasItsOwnFigureAndTheOtherHasNoPads) {
    const std::string left = store().compose(request("leg_left"));
    const std::string right = store().compose(request("leg_right"));
    EXPECT_NE(left, right);
    for (const std::string& one : {left, right}) {
        // Two pads, each with the halo beneath it and its stud.
        EXPECT_EQ(count(one, "r=\"40\""), 2u * 2u);
        EXPECT_EQ(count(one, "r=\"15\""), 2u);
    }
    // The pads of the right leg are those of the left, turned round.
    const auto pads = [](const std::string& text) { return text.find("r=\"40\""); };
    const std::string turned = "matrix(-1 0 0 1 800 0)";
    EXPECT_EQ(count(left.substr(0, pads(left)), turned), 1u);  // the other leg
    EXPECT_EQ(count(right.substr(0, pads(right)), turned), 2u); // this leg and its pads
}

TEST(Stopping, LooksUnlikeStarting) {
    for (const auto& [start, stop] : {std::pair{"switch_slide", "switch_off"},
                                      {"probe_plug", "plug_out"},
                                      {"set_time", "stops_itself"}}) {
        EXPECT_NE(store().compose(request(start)), store().compose(request(stop)));
    }
    // No light shines where the recorder has stopped (the sun in the window is no light of its own).
    const auto lit = [](const std::string& id) {
        return read_assets().at(id).find("shape=\"light_on\"") != std::string::npos;
    };
    EXPECT_TRUE(lit("set_time"));
    EXPECT_FALSE(lit("stops_itself"));
}

TEST(Stopping, ShowsTheMorning) {
    for (const std::string id : {"switch_off", "plug_out", "stops_itself", "rest_off", "tape_off_low", "unplug", "unplug_snap", "tube_untwist", "sensor_unsnap"}) {
        EXPECT_NE(read_assets().at(id).find("shape=\"morning\""), std::string::npos) << id;
    }
    for (const std::string id : {"switch_slide", "probe_plug", "set_time", "free_cables"}) {
        EXPECT_EQ(read_assets().at(id).find("shape=\"morning\""), std::string::npos) << id;
    }
}

TEST(Stopping, OneWindowIsOnThePageWhereverThePlugStandsAndBesideItsCircle) {
    // The groups of place "mark-port": a move, and inside it the circle or a window at its own place.
    for (int n = 0; n <= 4; ++n) {
        FigureRequest r = request("plug_out");
        r.counts = {{"mark-port", n}};
        const std::string text = store().compose(r);
        const int step = n == 0 ? 4 : n - 1;
        const double circle = 136 + 132 * step;
        std::vector<double> on_page;
        for (const auto& [first, by] : {std::pair{300.0, 200.0}, std::pair{-740.0, 300.0}}) {
            std::ostringstream move;
            move << "<g transform=\"translate(" << by * step << " 0)\">";
            std::ostringstream own;
            own << "translate(" << first << " 106)";
            EXPECT_NE(text.find(own.str()), std::string::npos) << n;
            if (step > 0) {
                EXPECT_NE(text.find(move.str()), std::string::npos) << n << " " << move.str();
            }
            const double middle = first + by * step;
            if (middle > -90 && middle < 890) {
                on_page.push_back(middle);
            }
        }
        ASSERT_EQ(on_page.size(), 1u) << n;
        EXPECT_GE(on_page[0], 90) << n;
        EXPECT_LE(on_page[0], 710) << n;
        EXPECT_GE(std::abs(on_page[0] - circle), 164) << n; // a circle of 92 and half a window
    }
}

TEST(Tape, LeavesTheBreathSensorOnTheTube) {
    EXPECT_THAT(store().layers("cannula_tape"), ElementsAre("breath"));
    FigureRequest r = request("cannula_tape");
    const std::string without = store().compose(r);
    r.parts["breath"] = PartState::done;
    EXPECT_GT(store().compose(r).size(), without.size());
    EXPECT_EQ(std::count(person_layers.begin(), person_layers.end(), "breath"), 1);
}

TEST(Rest, ComesOffAsTheKitHasIt) {
    EXPECT_THAT(store().layers("rest_off"), ElementsAre("belt_abdomen", "recorder_chest", "recorder_harness", "recorder_hip"));
    std::set<std::string> seen{store().compose(request("rest_off"))};
    for (const std::string& layer : store().layers("rest_off")) {
        FigureRequest r = request("rest_off");
        r.parts[layer] = PartState::done;
        EXPECT_TRUE(seen.insert(store().compose(r)).second) << layer;
    }
}

TEST(Marks, AreOnEveryFigureThatHasASlotForThem)
{
    EXPECT_THAT(store().mark_slots("plug_match"), ElementsAre("mark-plug", "mark-port"));
    EXPECT_THAT(store().mark_slots("snap_press"), ElementsAre("mark-plug", "mark-port"));
    for (const std::string& id : store().ids()) {
        for (const std::string& slot : store().mark_slots(id)) {
            FigureRequest r = request(id);
            for (const std::string& layer : store().layers(id)) {
                r.parts[layer] = PartState::done;
            }
            r.counts[slot] = 1;
            const std::size_t one = count(store().compose(r), "<rect");
            r.counts[slot] = 3;
            if (slot != "strips") {
                EXPECT_GT(count(store().compose(r), "<rect"), one) << id << " " << slot;
            }
        }
    }
}

TEST(Marks, AreRoundWhereTheKitHasDotsAndTheRowOfPortsToo) {
    for (int n = 1; n <= 4; ++n) {
        FigureRequest r = request("snap_press");
        r.counts = {{"mark-plug", n}, {"mark-port", n}};
        const std::size_t bars = count(store().compose(r), "<rect");
        const std::size_t round = count(store().compose(r), "<circle");
        r.dots = {"mark-plug", "mark-port"};
        EXPECT_EQ(count(store().compose(r), "<rect"), bars - 2 * static_cast<std::size_t>(n));
        EXPECT_EQ(count(store().compose(r), "<circle"), round + 2 * static_cast<std::size_t>(n));
        // The port beside it, not in question.
        const int other = n % 4 + 1;
        r.parts["port_" + std::to_string(other)] = PartState::done;
        EXPECT_EQ(count(store().compose(r), "<circle"), round + static_cast<std::size_t>(2 * n + other));
    }
}

TEST(Marks, OnAPartInQuestionContrastWithTheAccent) {
    // In print the accent is black: a mark in the tone of other parts would not be seen.
    for (const std::string id : {"belt_chest", "belt_abdomen", "sensor_snap", "recorder_chest",
                                 "recorder_hip", "recorder_harness", "probe_plug"}) {
        FigureRequest r = request(id);
        r.tone = Tone::print;
        r.counts = {{"mark", 3}, {"mark-plug", 3}};
        EXPECT_GE(count(store().compose(r), tone_of(palette::Role::accent_mark, Tone::print)), 3u)
            << id;
        if (id != "probe_plug") { // its port, not in question, has a plain mark as well
            EXPECT_EQ(count(store().compose(r), tone_of(palette::Role::mark, Tone::print)), 0u)
                << id;
        }
    }
}

TEST(Marks, OutsideOneToFourAreRefusedByName) {
    for (const int n : {-1, 5}) {
        FigureRequest r = request("plug_match");
        r.counts["mark-port"] = n;
        try {
            (void)store().compose(r);
            FAIL() << n << " ridges were drawn";
        } catch (const std::out_of_range& e) {
            EXPECT_THAT(e.what(), HasSubstr("plug_match"));
            EXPECT_THAT(e.what(), HasSubstr("mark-port"));
            EXPECT_THAT(e.what(), HasSubstr("0 to 4"));
        }
    }
}

TEST(Marks, TapeStripsAreFourUnlessTheKitSaysOtherwise) {
    // Four strips of 5 cm: two for the cheeks, one for the back of the hand, one for the forearm
    // (common practice, no source).
    FigureRequest r = request("tape_strips");
    r.counts["strips"] = 0;
    const std::size_t none = count(store().compose(r), "<path");
    EXPECT_EQ(count(store().compose(request("tape_strips")), "<path"), none + 4);
    for (int n = 1; n <= 8; ++n) {
        r.counts["strips"] = n;
        EXPECT_EQ(count(store().compose(r), "<path"), none + static_cast<std::size_t>(n));
    }
    r.counts["strips"] = 9;
    EXPECT_THROW((void)store().compose(r), std::out_of_range);
}

TEST(Breathing, ChestAndBeltsGrowWithTheBreath) {
    for (const std::string id : {"belt_breath", "belt_chest", "belt_abdomen", "person"}) {
        FigureRequest r = request(id);
        const std::string out = store().compose(r);
        r.widen = 1.0;
        const std::string in = store().compose(r);
        EXPECT_NE(in, out) << id;
        r.widen = 7.0; // more than a full breath is a full breath
        EXPECT_EQ(store().compose(r), in) << id;
    }
}

TEST(Store, UnknownFigureIsNamed) {
    try {
        (void)store().compose(request("belt_knee"));
        FAIL();
    } catch (const std::out_of_range& e) {
        EXPECT_THAT(e.what(), HasSubstr("belt_knee"));
    }
}

TEST(Store, EachFaultOfASourceIsNamedWithItsLineAndTheOthersStillWork) {
    const auto figure = [](const std::string& inner) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 800 800\">\n" + inner +
               "\n</svg>\n";
    };
    const std::string good = figure("<circle cx=\"1\" cy=\"1\" r=\"1\" fill=\"#c99b78\"/>");
    struct Case {
        std::string text;
        std::string told;
    };
    const std::vector<Case> cases{
        {figure("<text>hello</text>"), "figures carry no words"},
        {figure("<image/>"), "<image> may not stand here"},
        {figure("<use href=\"#a\"/>"), "<use> may not stand here"},
        {figure("<g opacity=\"0.5\"/>"), "attribute opacity"},
        {figure("<g style=\"fill:red\"/>"), "attribute style"},
        {figure("<circle r=\"1\" fill=\"#ff0000\"/>"), "#ff0000 is not in the palette"},
        {figure("<circle r=\"1\" fill=\"red\"/>"), "red is not in the palette"},
        {figure("<circle r=\"big\" fill=\"#c99b78\"/>"), "r=\"big\" is not a number"},
        {figure("<circle fill=\"#c99b78\"/>"), "<circle> needs attribute r"},
        {figure("<g paint=\"loud\"/>"), "paint=\"loud\" is not one of"},
        {figure("<include shape=\"nowhere\"/>"), "shape \"nowhere\" is not in shapes.svg"},
        {figure("<include shape=\"ouroboros\"/>"), "include each other without end"},
        {figure("<g when=\"belt\"/>"), "names no layer"},
        {figure("<g layer=\"a\"><g layer=\"b\"/></g>"), "inside another layer"},
        {figure("<g>"), "closes <g>"},
        {figure("<circle r=\"1\" r=\"2\"/>"), "stands twice"},
        {figure("<circle r=1/>"), "double quotes"},
        {"<svg viewBox=\"0 0 100 100\"/>", "viewBox=\"0 0 800 800\""},
        {"", "no drawing found"},
        {good + good, "something follows the end"},
        {good.substr(0, good.size() - 8), "never closed"},
    };
    const std::string shapes =
        figure("<g id=\"shape-ouroboros\"><include shape=\"ouroboros\"/></g>");
    for (const Case& each : cases) {
        SCOPED_TRACE(each.text);
        const FigureStore small({{"shapes", shapes}, {"good", good}, {"bad", each.text}});
        EXPECT_THAT(small.ids(), ElementsAre("good"));
        ASSERT_THAT(small.problems(), Not(IsEmpty()));
        EXPECT_THAT(small.problems()[0], HasSubstr("bad.svg:"));
        EXPECT_THAT(small.problems()[0], HasSubstr(each.told));
    }
    const FigureStore deep({{"bad", figure("<g>\n<path d=\"M0 0\" glow=\"1\"/></g>")}});
    ASSERT_EQ(deep.problems().size(), 1u);
    EXPECT_THAT(deep.problems()[0], HasSubstr("bad.svg:3: "));
}

} // namespace
