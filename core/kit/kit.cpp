// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kit/kit.h"

#include "base/file.h"

#include <algorithm>
#include <set>

namespace evenfall {
namespace {

using std::chrono::milliseconds;

Joint joint_named(const std::string& word)
{
    return word == "twist" ? Joint::twist : word == "snap" ? Joint::snap : Joint::push;
}

Mark read_mark(ObjectReader& owner, std::string_view key)
{
    Mark mark;
    if (const Json* json = owner.member(key)) {
        ObjectReader reader(*json, owner.at(key), owner.problems());
        const bool dots = reader.has("dots");
        if (dots && reader.member("ridges"))
            reader.fault("dots", "two_shapes", "a mark has ridges or dots; right would be one of the two");
        if (dots)
            mark.shape = Mark::Shape::dots;
        mark.count = static_cast<int>((dots ? reader.integer("dots", 1, most_in_mark) : reader.integer("ridges", 0, most_in_mark)).value_or(0));
        mark.word = reader.local_text("word").value_or(LocalText{});
        reader.finish();
    }
    return mark;
}

Port read_port(const Json& json, const std::string& at, Problems& problems)
{
    ObjectReader reader(json, at, problems);
    Port port;
    port.id = reader.id("id").value_or("");
    port.joint = joint_named(reader.word("joint", {"push", "twist", "snap"}, false).value_or("push"));
    if (reader.word("edge", {"top", "bottom"}, false).value_or("top") == "bottom")
        port.edge = Port::Edge::bottom;
    port.spare = reader.boolean("spare", false).value_or(false);
    reader.needed("mark");
    port.mark = read_mark(reader, "mark");
    reader.finish();
    return port;
}

void read_texts(ObjectReader& owner, Part& part)
{
    const Json* json = owner.member("texts");
    if (!json)
        return;
    if (!json->is_object()) {
        owner.fault("texts", "wrong_type", "right would be an object of steps");
        return;
    }
    for (const auto& [stage, slots] : json->items()) {
        ObjectReader reader(slots, pointer(owner.at("texts"), stage), owner.problems());
        for (const char* slot : {"title", "body", "right", "why", "caution"}) {
            if (auto text = reader.local_text(slot, false))
                part.texts[stage][slot] = *text;
        }
        reader.finish();
    }
}

Part read_part(const Json& json, const std::string& at, Problems& problems)
{
    ObjectReader reader(json, at, problems);
    Part part;
    part.id = reader.id("id").value_or("");
    const std::optional<std::string> kind = reader.text("kind");
    const std::optional<PartKind> known = kind ? kind_named(*kind) : std::nullopt;
    if (kind && !known) {
        std::string list;
        for (const KindFacts& one : all_kinds())
            list += (list.empty() ? "" : ", ") + std::string(one.name);
        reader.fault("kind", "unknown_kind", "\"" + *kind + "\" is not known; right would be one of: " + list);
    }
    part.kind = known.value_or(PartKind::effort_belt);
    const KindFacts& facts = facts_of(part.kind);

    part.on = reader.id("on", known && facts.must_sit_on_part).value_or("");
    part.where = reader.text("where", known && facts.places.size() > 1).value_or(std::string(facts.places[0]));
    if (known && std::find(facts.places.begin(), facts.places.end(), part.where) == facts.places.end()) {
        std::string list;
        for (std::string_view place : facts.places)
            list += (list.empty() ? "" : ", ") + std::string(place);
        reader.fault("where", "unknown_place",
                     "\"" + part.where + "\" is no place for this kind; right would be: " + list);
    }
    part.mark = read_mark(reader, "mark");
    if (const Json* plug = known && facts.needs_plug ? reader.needed("plug") : reader.member("plug")) {
        ObjectReader inner(*plug, reader.at("plug"), problems);
        part.plug = Plug{inner.id("port").value_or(""),
                         joint_named(inner.word("joint", {"push", "twist", "snap"}, false).value_or("push"))};
        inner.finish();
    }
    part.tape_strips = static_cast<int>(reader.integer("tape_strips", 0, 12, false).value_or(facts.tape_strips));
    part.seconds = std::chrono::seconds(reader.integer("seconds", 5, 1800, false).value_or(facts.seconds.count()));
    part.after = reader.words("after", false).value_or(std::vector<std::string>{});
    part.name = reader.local_text("name", false).value_or(LocalText{});
    read_texts(reader, part);
    reader.finish();
    return part;
}

Light read_light(const Json& json, const std::string& at, Problems& problems)
{
    ObjectReader reader(json, at, problems);
    Light light;
    light.id = reader.id("id").value_or("");
    const std::string meaning =
        reader.word("meaning", {"recording", "not_recording", "battery", "fault"}).value_or("fault");
    light.meaning = meaning == "recording"       ? Light::Meaning::recording
                    : meaning == "not_recording" ? Light::Meaning::not_recording
                    : meaning == "battery"       ? Light::Meaning::battery
                                                 : Light::Meaning::fault;
    const std::string then =
        reader.word("then", {"go_on", "check_plugs", "start_again", "call_clinic"}).value_or("call_clinic");
    light.then = then == "go_on"         ? Light::Then::go_on
                 : then == "check_plugs" ? Light::Then::check_plugs
                 : then == "start_again" ? Light::Then::start_again
                                         : Light::Then::call_clinic;
    light.colour = reader.word("colour", {"white", "green", "amber", "red", "blue", "off"}).value_or("off");
    light.blinks = static_cast<int>(reader.integer("blinks", 0, 9, false).value_or(0));
    const bool blinking = light.blinks > 0;
    light.on = milliseconds(reader.integer("on_ms", 50, 10000, blinking).value_or(0));
    light.off = milliseconds(reader.integer("off_ms", 50, 10000, blinking).value_or(0));
    light.pause = milliseconds(reader.integer("pause_ms", 0, 60000, false).value_or(0));
    // At most 3 flashes a second (WCAG 2.3.1, from memory).
    const bool known = light.on.count() > 0 && light.off.count() > 0; // else that fault is named already
    if (blinking && known && light.on + light.off < milliseconds(334))
        reader.fault("on_ms", "flashes_too_fast",
                     "more than 3 flashes a second can harm; right would be on_ms + off_ms of 334 or more",
                     Fault::refused);
    reader.finish();
    return light;
}

PackedItem read_item(const Json& json, const std::string& at, Problems& problems)
{
    ObjectReader reader(json, at, problems);
    PackedItem item;
    item.part = reader.id("part", false).value_or("");
    item.item = reader.word("item", {"tape_roll", "pouch", "charger", "return_box", "batteries", "leaflet"}, false)
                    .value_or("");
    item.name = reader.local_text("name", false).value_or(LocalText{});
    item.count = static_cast<int>(reader.integer("count", 1, 99, false).value_or(1));
    item.comes_back = reader.boolean("comes_back", false).value_or(true);
    const int said = static_cast<int>(reader.has("part")) + static_cast<int>(reader.has("item")) +
                     static_cast<int>(reader.has("name"));
    if (json.is_object() && said != 1)
        problems.push_back({Fault::malformed, "which_item", at,
                            "right would be exactly one of \"part\", \"item\" and \"name\""});
    reader.finish();
    return item;
}

template <class T, class Id>
void refuse_twins(const std::vector<T>& all, const std::string& at, Id id_of, Problems& problems)
{
    std::set<std::string> seen;
    for (size_t i = 0; i < all.size(); ++i) {
        if (!seen.insert(id_of(all[i])).second)
            problems.push_back({Fault::refused, "duplicate_id", pointer(pointer(at, i), "id"),
                                "\"" + id_of(all[i]) + "\" is used twice; right would be an id of its own"});
    }
}

/// What the form cannot say: whether the things named fit each other. The form is right: each has its id.
class Fitting {
  public:
    Fitting(const Kit& kit, Problems& problems) : kit_(kit), problems_(problems) {}

    void check()
    {
        refuse_twins(kit_.parts, "/parts", [](const Part& one) { return one.id; }, problems_);
        refuse_twins(kit_.ports, "/recorder_ports", [](const Port& one) { return one.id; }, problems_);
        refuse_twins(kit_.lights, "/lights", [](const Light& one) { return one.id; }, problems_);
        refuse_twins(kit_.signal_groups, "/signals", [](const Signal& one) { return one.id; }, problems_);
        recorder();
        for (size_t i = 0; i < kit_.parts.size(); ++i)
            part(kit_.parts[i], pointer("/parts", i));
        ports();
        lights();
        names();
    }

  private:
    const Kit& kit_;
    Problems& problems_;

    void refuse(std::string code, std::string at, std::string text)
    {
        problems_.push_back({Fault::refused, std::move(code), std::move(at), std::move(text)});
    }

    void recorder()
    {
        const auto count = std::count_if(kit_.parts.begin(), kit_.parts.end(), [](const Part& one) {
            return one.kind == PartKind::recorder;
        });
        if (count != 1)
            refuse("recorder_count", "/parts",
                   std::to_string(count) + " parts are a recorder; right would be exactly one");
    }

    void part(const Part& part, const std::string& at)
    {
        if (!part.on.empty()) {
            const Part* carrier = kit_.part(part.on);
            if (!carrier || carrier == &part)
                refuse("missing_part", pointer(at, "on"),
                       "there is no other part \"" + part.on + "\" to sit on; right would be the id of one");
            else if (part.kind == PartKind::effort_sensor && carrier->kind != PartKind::effort_belt)
                refuse("wrong_carrier", pointer(at, "on"),
                       "\"" + part.on + "\" is not an effort belt; an effort sensor sits on one");
            else if (part.kind == PartKind::effort_sensor && carrier->where != part.where)
                refuse("wrong_place", pointer(at, "where"),
                       "the belt that carries it sits at \"" + carrier->where + "\"; right would be the same");
        }
        for (size_t i = 0; i < part.after.size(); ++i) {
            if (!kit_.part(part.after[i]))
                refuse("missing_part", pointer(pointer(at, "after"), i),
                       "there is no part \"" + part.after[i] + "\"; right would be the id of one");
        }
        if (part.plug)
            plug(part, at);
    }

    void plug(const Part& part, const std::string& at)
    {
        const Port* port = kit_.port(part.plug->port);
        const std::string here = pointer(pointer(at, "plug"), "port");
        if (!port) {
            refuse("missing_port", here,
                   "the recorder has no port \"" + part.plug->port + "\"; right would be the id of one");
            return;
        }
        if (port->spare)
            refuse("spare_port", here, "port \"" + port->id + "\" is marked spare, but this plug goes there");
        if (port->joint != part.plug->joint)
            refuse("joint_differs", pointer(pointer(at, "plug"), "joint"),
                   "the plug says " + std::string(name_of(part.plug->joint)) + ", its port says " +
                       std::string(name_of(port->joint)) + "; right would be the same");
        if (!(port->mark == part.mark))
            refuse("mark_differs", pointer(at, "mark"),
                   "the mark differs from that of port \"" + port->id +
                       "\"; right would be the same, that is how they are matched");
    }

    void ports()
    {
        for (size_t i = 0; i < kit_.ports.size(); ++i) {
            const Port& port = kit_.ports[i];
            const std::string at = pointer("/recorder_ports", i);
            const auto users = std::count_if(kit_.parts.begin(), kit_.parts.end(), [&port](const Part& one) {
                return one.plug && one.plug->port == port.id;
            });
            if (users == 0 && !port.spare)
                refuse("port_without_plug", at,
                       "no plug fits port \"" + port.id + "\"; right would be a part with this port, or \"spare\": true");
            if (users > 1)
                refuse("port_taken_twice", at,
                       std::to_string(users) + " plugs go into port \"" + port.id + "\"; right would be one");
            for (size_t k = 0; k < i; ++k) {
                // The stub of the nose tube takes nothing else and no plug fits it.
                if (kit_.ports[k].mark.feels_like(port.mark) && !kit_.takes_tube(kit_.ports[k]) && !kit_.takes_tube(port))
                    refuse("same_mark", pointer(at, "mark"),
                           "ports \"" + kit_.ports[k].id + "\" and \"" + port.id +
                               "\" feel alike; right would be another number, or dots instead of ridges");
            }
        }
    }

    void lights()
    {
        const auto recording = std::count_if(kit_.lights.begin(), kit_.lights.end(), [](const Light& one) {
            return one.meaning == Light::Meaning::recording;
        });
        if (recording != 1)
            refuse("recording_light", "/lights",
                   std::to_string(recording) + " lights mean \"recording\"; right would be exactly one");
        for (size_t i = 0; i < kit_.lights.size(); ++i) {
            const Light& light = kit_.lights[i];
            const bool good = light.meaning == Light::Meaning::recording;
            if (good != (light.then == Light::Then::go_on))
                refuse("light_advice", pointer(pointer("/lights", i), "then"),
                       "\"go_on\" belongs to the recording light, and to no other");
        }
    }

    void names()
    {
        for (size_t i = 0; i < kit_.packing.size(); ++i) {
            if (!kit_.packing[i].part.empty() && !kit_.part(kit_.packing[i].part))
                refuse("missing_part", pointer(pointer("/packing", i), "part"),
                       "there is no part \"" + kit_.packing[i].part + "\"; right would be the id of one");
        }
        for (const Part& part : kit_.parts) {
            const bool packed = std::any_of(kit_.packing.begin(), kit_.packing.end(),
                                            [&part](const PackedItem& one) { return one.part == part.id; });
            if (!packed)
                refuse("not_packed", "/packing",
                       "part \"" + part.id + "\" is not on the packing list; right would be one line for each part");
        }
        for (size_t i = 0; i < kit_.signal_groups.size(); ++i) {
            const Signal& signal = kit_.signal_groups[i];
            for (size_t k = 0; k < signal.sensors.size(); ++k) {
                const Part* part = kit_.part(signal.sensors[k]);
                if (!part || part->kind == PartKind::recorder)
                    refuse("missing_part", pointer(pointer(pointer("/signals", i), "sensors"), k),
                           "there is no sensor \"" + signal.sensors[k] + "\"; right would be the id of a part");
            }
        }
        static const std::set<std::string> places{"tape", "neck", "bed", "hand", "night"};
        for (size_t i = 0; i < kit_.cautions.size(); ++i) {
            if (!kit_.part(kit_.cautions[i].at) && !places.contains(kit_.cautions[i].at))
                refuse("missing_part", pointer(pointer("/cautions", i), "at"),
                       "\"" + kit_.cautions[i].at +
                           "\" is no part; right would be a part's id, or tape, neck, bed, hand, night");
        }
    }
};

void read_start(ObjectReader& top, Start& start)
{
    const Json* json = top.needed("start");
    if (!json)
        return;
    ObjectReader reader(*json, top.at("start"), top.problems());
    const std::string by = reader.word("by", {"last_plug", "switch", "set_time"}).value_or("switch");
    start.by = by == "last_plug" ? StartBy::last_plug : by == "set_time" ? StartBy::set_time : StartBy::switch_on;
    // Default: the light comes about one minute after the last plug (common practice, no source).
    start.to_light = std::chrono::seconds(reader.integer("seconds_to_light", 0, 900, false).value_or(60));
    if (auto at = reader.text("at", start.by == StartBy::set_time)) {
        const Result<std::chrono::minutes> time = parse_time_of_day(*at);
        if (!time)
            reader.fault("at", "bad_time_of_day", time.problems()[0].text);
        else if (start.by != StartBy::set_time)
            reader.fault("at", "not_set_time", "only a recorder that starts at a set time has \"at\"");
        else
            start.at = *time;
    }
    reader.finish();
}

} // namespace

const Part* Kit::part(std::string_view part_id) const
{
    const auto found = std::find_if(parts.begin(), parts.end(),
                                    [part_id](const Part& one) { return one.id == part_id; });
    return found == parts.end() ? nullptr : &*found;
}

const Part* Kit::recorder() const
{
    const auto found = std::find_if(parts.begin(), parts.end(),
                                    [](const Part& one) { return one.kind == PartKind::recorder; });
    return found == parts.end() ? nullptr : &*found;
}

const Port* Kit::port(std::string_view port_id) const
{
    const auto found = std::find_if(ports.begin(), ports.end(),
                                    [port_id](const Port& one) { return one.id == port_id; });
    return found == ports.end() ? nullptr : &*found;
}

const Signal* Kit::signal(std::string_view signal_id) const
{
    const auto found = std::find_if(signal_groups.begin(), signal_groups.end(),
                                    [signal_id](const Signal& one) { return one.id == signal_id; });
    return found == signal_groups.end() ? nullptr : &*found;
}

bool Kit::takes_tube(const Port& port) const
{
    return std::any_of(parts.begin(), parts.end(), [&port](const Part& part) {
        return part.kind == PartKind::nasal_cannula && part.plug && part.plug->port == port.id;
    });
}

std::vector<std::string> Kit::sensors() const
{
    std::vector<std::string> ids;
    for (const Part& part : parts) {
        const bool used = std::any_of(signal_groups.begin(), signal_groups.end(), [&part](const Signal& signal) {
            return std::find(signal.sensors.begin(), signal.sensors.end(), part.id) != signal.sensors.end();
        });
        if (used)
            ids.push_back(part.id);
    }
    return ids;
}

std::string_view name_of(Joint joint)
{
    return joint == Joint::twist ? "twist" : joint == Joint::snap ? "snap" : "push";
}

std::string_view name_of(StartBy by)
{
    return by == StartBy::last_plug ? "last_plug" : by == StartBy::set_time ? "set_time" : "switch";
}

std::string_view name_of(Light::Meaning meaning)
{
    switch (meaning) {
    case Light::Meaning::recording: return "recording";
    case Light::Meaning::not_recording: return "not_recording";
    case Light::Meaning::battery: return "battery";
    case Light::Meaning::fault: break;
    }
    return "fault";
}

std::string_view name_of(Light::Then then)
{
    switch (then) {
    case Light::Then::go_on: return "go_on";
    case Light::Then::check_plugs: return "check_plugs";
    case Light::Then::start_again: return "start_again";
    case Light::Then::call_clinic: break;
    }
    return "call_clinic";
}

Result<Kit> read_kit(std::string_view json_text)
{
    const Result<Json> json = parse_json(json_text);
    if (!json)
        return json.problems();
    Problems problems;
    ObjectReader top(*json, "", problems);
    Kit kit;
    check_format(top, "evenfall.kit/1");
    kit.id = top.id("id").value_or("");
    kit.name = top.local_text("name").value_or(LocalText{});
    kit.strip_length_mm = static_cast<int>(top.integer("strip_length_mm", 10, 200, false).value_or(50));
    for (const auto& [one, at] : top.elements("parts"))
        kit.parts.push_back(read_part(*one, at, problems));
    for (const auto& [one, at] : top.elements("recorder_ports"))
        kit.ports.push_back(read_port(*one, at, problems));
    read_start(top, kit.start);
    for (const auto& [one, at] : top.elements("lights"))
        kit.lights.push_back(read_light(*one, at, problems));
    for (const auto& [one, at] : top.elements("packing"))
        kit.packing.push_back(read_item(*one, at, problems));
    for (const auto& [one, at] : top.elements("cautions", false)) {
        ObjectReader reader(*one, at, problems);
        kit.cautions.push_back({reader.text("at").value_or(""), reader.local_text("text").value_or(LocalText{})});
        reader.finish();
    }
    for (const auto& [one, at] : top.elements("signals")) {
        ObjectReader reader(*one, at, problems);
        const std::optional<std::vector<std::string>> sensors = reader.words("sensors");
        if (sensors && sensors->empty())
            reader.fault("sensors", "empty", "right would be at least one sensor");
        kit.signal_groups.push_back({reader.id("id").value_or(""), sensors.value_or(std::vector<std::string>{})});
        reader.finish();
    }
    top.finish();
    // Things that do not fit are only worth saying about a file that has the right form.
    if (problems.empty())
        Fitting(kit, problems).check();
    if (!problems.empty())
        return problems;
    return kit;
}

Result<Kit> load_kit(const std::filesystem::path& file)
{
    Result<std::string> text = read_file(file, 4u << 20);
    if (!text)
        return text.problems();
    return read_kit(*text);
}

} // namespace evenfall
