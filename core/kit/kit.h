// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/json.h"
#include "base/result.h"
#include "kit/kinds.h"

#include <chrono>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

/// As many as a thumb counts in the dark (our own judgement).
constexpr int most_in_mark = 4;

/// The shape by which a plug and its port are matched: raised ridges or round dots that a thumb can
/// count in the dark (1 to 4), or nothing at all (0, smooth), and a word. Colour may be named in the
/// word; it is never the only mark.
struct Mark {
    enum class Shape { ridges, dots };
    Shape shape = Shape::ridges; ///< ridges also where it is smooth
    int count = 0;
    LocalText word;
    bool smooth() const { return count == 0; }
    /// Whether a thumb could take one for the other.
    bool feels_like(const Mark& other) const { return shape == other.shape && count == other.count; }
    bool operator==(const Mark&) const = default;
};

/// How a plug and a port join.
enum class Joint { push, twist, snap };

struct Plug {
    std::string port; ///< id of a port of the recorder
    Joint joint = Joint::push;
};

struct Port {
    std::string id;
    Mark mark;
    Joint joint = Joint::push;
    /// On which edge of the recorder, as it is worn.
    enum class Edge { top, bottom } edge = Edge::top;
    bool spare = false; ///< stays empty in this kit
};

struct Part {
    std::string id; ///< also the sensor's id in night reports
    PartKind kind = PartKind::effort_belt;
    std::string where;           ///< one of the kind's places
    std::string on;              ///< id of the part that carries it, or empty
    Mark mark;
    std::optional<Plug> plug;
    int tape_strips = 0;
    std::chrono::seconds seconds{0};  ///< nominal time to put on, without the plug
    std::vector<std::string> after;   ///< ids of parts that must be on before
    LocalText name;                   ///< empty: the kind's own name
    /// The clinic's own words: slot ("title", "body", "right", "why", "caution") of a step -> text.
    std::map<std::string, std::map<std::string, LocalText>> texts;
};

/// What sets the recorder going.
enum class StartBy { last_plug, switch_on, set_time };

struct Start {
    StartBy by = StartBy::switch_on;
    std::chrono::seconds to_light{60};          ///< from the start to the recording light
    std::optional<std::chrono::minutes> at;     ///< set_time only: local time of day
};

/// One thing that the recorder's light can do. At most 3 flashes a second (look of the pages: nobody
/// with photosensitive epilepsy may be harmed).
struct Light {
    enum class Meaning { recording, not_recording, battery, fault };
    enum class Then { go_on, check_plugs, start_again, call_clinic };
    std::string id;
    Meaning meaning = Meaning::recording;
    Then then = Then::go_on;
    std::string colour; ///< white, green, amber, red, blue, off
    int blinks = 0;     ///< per round; 0 is steady (or dark when the colour is "off")
    std::chrono::milliseconds on{0}, off{0}, pause{0};
};

struct PackedItem {
    std::string part;  ///< id of a part, or empty
    std::string item;  ///< one of the known loose items ("tape_roll", "pouch", "charger", "return_box"), or empty
    LocalText name;    ///< for anything else
    int count = 1;
    bool comes_back = true;
};

struct Caution {
    std::string at; ///< a part's id, or "tape", "neck", "bed", "hand", "night"
    LocalText text;
};

struct Signal {
    std::string id; ///< "flow", "oximetry", "effort", ...
    std::vector<std::string> sensors; ///< any one of them is enough
};

/// What the patient takes home (file format evenfall.kit/1).
struct Kit {
    std::string id;
    LocalText name;
    int strip_length_mm = 50; ///< common practice, no source: about 5 cm
    std::vector<Part> parts;
    std::vector<Port> ports; ///< of the recorder
    Start start;
    std::vector<Light> lights;
    std::vector<PackedItem> packing;
    std::vector<Caution> cautions;
    std::vector<Signal> signal_groups;

    const Part* part(std::string_view part_id) const;
    const Part* recorder() const;
    const Port* port(std::string_view port_id) const;
    const Signal* signal(std::string_view signal_id) const;
    /// Whether the end of the nose tube goes there: a stub that no plug fits.
    bool takes_tube(const Port& port) const;
    /// Ids of the parts that make up signals, in the order of the file.
    std::vector<std::string> sensors() const;
};

/// Reads a kit file. All faults, each with its pointer: the form (malformed) and what cannot be put
/// on or joined (refused): a plug without its port, a port that no plug fits, marks that differ, a
/// part that sits on nothing, no recorder or two, no recording light, a light that flashes too fast.
/// Whether an order exists is the plan's business.
Result<Kit> read_kit(std::string_view json_text);

/// The same from a file.
Result<Kit> load_kit(const std::filesystem::path& file);

std::string_view name_of(Joint joint);
std::string_view name_of(StartBy by);
std::string_view name_of(Light::Meaning meaning);
std::string_view name_of(Light::Then then);

} // namespace evenfall
