// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "answers/night.h"

#include <algorithm>
#include <utility>

namespace evenfall {
namespace {

/// Reads the values of one night; every TIME goes through the same zone.
class NightReader {
  public:
    NightReader(const Json& json, const std::string& at, Problems& problems)
        : problems_(problems), top_(json, at, problems)
    {
    }

    Night read()
    {
        check_format(top_, "evenfall.night/1");
        read_visit();
        read_zone();
        read_sensors();
        read_need();
        read_recording();
        night_.into_bed = time(top_, "into_bed");
        night_.lights_out = time(top_, "lights_out");
        night_.asleep_after = top_.minutes("asleep_after_min", false);
        night_.final_waking = time(top_, "final_waking");
        night_.lights_on = time(top_, "lights_on");
        night_.out_of_bed = time(top_, "out_of_bed");
        night_.tried_after_waking = top_.minutes("tried_to_sleep_after_waking_min", false);
        night_.slept = top_.minutes("slept_min", false);
        read_awake();
        read_untimed();
        read_off();
        top_.finish();
        return std::move(night_);
    }

  private:
    Problems& problems_;
    ObjectReader top_;
    Night night_;
    bool zone_faulty_ = false;

    std::optional<TimeRange> time(ObjectReader& reader, std::string_view key)
    {
        const Json* json = reader.member(key);
        if (!json)
            return std::nullopt;
        const size_t before = problems_.size();
        auto range = read_time_range(*json, reader.at(key), night_.zone.get(), problems_,
                                     &night_.written_offset);
        // A zone that could not be read is named once, not again at each of its times.
        if (zone_faulty_)
            problems_.erase(std::remove_if(problems_.begin() + static_cast<std::ptrdiff_t>(before),
                                           problems_.end(),
                                           [](const Problem& p) { return p.code == "no_zone"; }),
                            problems_.end());
        return range;
    }

    /// A TIME that may also be null, which means the same as absent.
    std::optional<TimeRange> time_or_null(ObjectReader& reader, std::string_view key)
    {
        const Json* json = reader.member(key);
        return json && json->is_null() ? std::nullopt : time(reader, key);
    }

    void read_visit()
    {
        const Json* json = top_.member("visit");
        if (!json)
            return;
        ObjectReader reader(*json, top_.at("visit"), problems_);
        NightOf of;
        of.code = reader.text("code").value_or("");
        if (!of.code.empty() && !plain_study_code(of.code))
            reader.fault("code", "bad_code",
                         "\"" + of.code +
                             "\" cannot be a study code; right would be letters, digits, - and _, "
                             "at most 32, such as SM-0417");
        of.night = reader.integer("night", 1, 99).value_or(1);
        reader.finish();
        night_.of = of;
    }

    void read_zone()
    {
        const bool there = top_.has("zone");
        if (const std::optional<std::string> name = top_.text("zone", false)) {
            Result<ZonePtr> zone = find_zone(*name);
            if (zone)
                night_.zone = *zone;
            else
                top_.fault("zone", "unknown_zone", zone.problems()[0].text, Fault::refused);
        }
        zone_faulty_ = there && !night_.zone;
    }

    void read_sensors()
    {
        const std::optional<std::vector<std::string>> ids = top_.words("sensors");
        if (!ids)
            return;
        if (ids->empty())
            top_.fault("sensors", "empty",
                       "no sensor; right would be at least one, such as finger");
        for (size_t i = 0; i < ids->size(); ++i)
            check_id((*ids)[i], pointer(top_.at("sensors"), i));
        night_.sensors = *ids;
    }

    void check_id(const std::string& id, const std::string& at)
    {
        if (!plain_id(id))
            problems_.push_back({Fault::malformed, "bad_id", at,
                                 "\"" + id +
                                     "\" is not an id; right would be small letters, digits, - and "
                                     "_, beginning with a letter, at most 40"});
    }

    void read_need()
    {
        const Json* json = top_.needed("need");
        if (!json)
            return;
        ObjectReader reader(*json, top_.at("need"), problems_);
        night_.need.minutes = reader.minutes("minutes").value_or(Span(0));
        const auto groups = reader.elements("groups");
        if (reader.has("groups") && json->at("groups").is_array() && groups.empty())
            reader.fault("groups", "empty",
                         "no group; right would be at least one, such as [\"finger\"]");
        for (const auto& [group, at] : groups)
            read_group(*group, at);
        reader.finish();
    }

    void read_group(const Json& json, const std::string& at)
    {
        std::vector<std::string> ids;
        if (!json.is_array() || json.empty()) {
            problems_.push_back(
                {Fault::malformed, json.is_array() ? "empty" : "wrong_type", at,
                 "right would be a list of at least one sensor, such as "
                 "[\"cannula\", \"breath\"]: the group is on while any of them is"});
            return;
        }
        for (size_t i = 0; i < json.size(); ++i) {
            if (!json[i].is_string()) {
                problems_.push_back({Fault::malformed, "wrong_type", pointer(at, i),
                                     std::string("a ") + json[i].type_name() +
                                         "; right would be the id of a sensor"});
                continue;
            }
            ids.push_back(json[i].get<std::string>());
            check_id(ids.back(), pointer(at, i));
        }
        night_.need.groups.push_back(std::move(ids));
    }

    void read_recording()
    {
        const Json* json = top_.member("recording");
        if (!json)
            return;
        ObjectReader reader(*json, top_.at("recording"), problems_);
        night_.recording_from = time(reader, "from");
        night_.recording_to = time(reader, "to");
        reader.finish();
    }

    void read_awake()
    {
        if (!top_.has("awake")) {
            top_.member("awake");
            return;
        }
        night_.awake.emplace();
        for (const auto& [json, at] : top_.elements("awake")) {
            ObjectReader reader(*json, at, problems_);
            if (!json->is_object())
                continue;
            Awakening awakening;
            reader.needed("from");
            awakening.from = time(reader, "from").value_or(TimeRange{});
            awakening.to = time(reader, "to");
            awakening.length = reader.minutes("minutes", false);
            const bool both = reader.has("to") && reader.has("minutes");
            if (both || (!reader.has("to") && !reader.has("minutes")))
                problems_.push_back({Fault::malformed, both ? "both_given" : "missing_key", at,
                                     std::string(both ? "both \"to\" and \"minutes\""
                                                      : "neither \"to\" nor \"minutes\"") +
                                         "; right would be one of the two"});
            reader.finish();
            night_.awake->push_back(awakening);
        }
    }

    void read_untimed()
    {
        const Json* json = top_.member("awake_untimed");
        if (!json)
            return;
        ObjectReader reader(*json, top_.at("awake_untimed"), problems_);
        UntimedAwakenings untimed;
        untimed.times = reader.integer("times", 0, 1000).value_or(0);
        untimed.total = reader.minutes("minutes").value_or(Span(0));
        if (untimed.times == 0 && untimed.total > Span(0) && reader.has("times"))
            reader.fault("times", "minutes_without_awakening",
                         "no awakening, but minutes awake; right would be how often, or no minutes",
                         Fault::refused);
        reader.finish();
        night_.awake_untimed = untimed;
    }

    void read_off()
    {
        for (const auto& [json, at] : top_.elements("off", false)) {
            ObjectReader reader(*json, at, problems_);
            if (!json->is_object())
                continue;
            Removal removal;
            removal.sensor = reader.id("sensor").value_or("");
            removal.from = time_or_null(reader, "from");
            removal.to = time_or_null(reader, "to");
            reader.finish();
            night_.off.push_back(removal);
        }
    }
};

Problem time_form(const Json& json, const std::string& at)
{
    return {Fault::malformed, "bad_time", at,
            std::string("a ") + json.type_name() +
                "; right would be a time, or {\"about\": time, \"give_or_take_min\": 15}, or "
                "{\"earliest\": time, \"latest\": time}"};
}

std::optional<Instant> read_instant(const Json& json, const std::string& at, const Zone* zone,
                                    Problems& problems, std::optional<std::chrono::seconds>* offset)
{
    if (!json.is_string()) {
        problems.push_back(time_form(json, at));
        return std::nullopt;
    }
    const Result<WrittenTime> written = parse_time(json.get_ref<const std::string&>());
    const Result<Instant> instant = written ? resolve(*written, zone) : written.problems();
    if (!instant) {
        for (Problem problem : instant.problems()) {
            problem.at = at;
            problems.push_back(std::move(problem));
        }
        return std::nullopt;
    }
    if (offset && !*offset && written->offset)
        *offset = *written->offset;
    return *instant;
}

} // namespace

std::optional<TimeRange> read_time_range(const Json& json, const std::string& at, const Zone* zone,
                                         Problems& problems,
                                         std::optional<std::chrono::seconds>* offset)
{
    if (json.is_string()) {
        const std::optional<Instant> when = read_instant(json, at, zone, problems, offset);
        return when ? std::optional(TimeRange::exactly(*when)) : std::nullopt;
    }
    if (!json.is_object()) {
        problems.push_back(time_form(json, at));
        return std::nullopt;
    }
    ObjectReader reader(json, at, problems);
    const auto read_member = [&](std::string_view key) -> std::optional<Instant> {
        const Json* member = reader.needed(key);
        return member ? read_instant(*member, reader.at(key), zone, problems, offset)
                      : std::nullopt;
    };
    if (reader.has("about") || reader.has("give_or_take_min")) {
        const std::optional<Instant> about = read_member("about");
        const std::optional<Span> give_or_take = reader.minutes("give_or_take_min");
        reader.finish();
        if (!about || !give_or_take)
            return std::nullopt;
        return TimeRange{*about - *give_or_take, *about + *give_or_take};
    }
    if (!reader.has("earliest") && !reader.has("latest")) {
        problems.push_back(time_form(json, at));
        return std::nullopt;
    }
    const std::optional<Instant> earliest = read_member("earliest");
    const std::optional<Instant> latest = read_member("latest");
    reader.finish();
    if (!earliest || !latest)
        return std::nullopt;
    if (*earliest > *latest) {
        problems.push_back(
            {Fault::refused, "earliest_after_latest", at,
             "\"earliest\" is after \"latest\"; right would be the two the other way "
             "round, or the right day"});
        return std::nullopt;
    }
    return TimeRange{*earliest, *latest};
}

Result<Night> night_from_json(const Json& json, const std::string& at)
{
    Problems problems;
    if (!json.is_object())
        return Problem{Fault::malformed, "wrong_type", at,
                       std::string("a ") + json.type_name() + "; right would be an object"};
    Night night = NightReader(json, at, problems).read();
    if (!problems.empty())
        return problems;
    return night;
}

Result<Night> read_night(std::string_view json_text)
{
    const Result<Json> json = parse_json(json_text);
    if (!json)
        return json.problems();
    return night_from_json(*json, "");
}

Json time_range_json(const TimeRange& range, const Night& night)
{
    const auto text = [&](Instant when) { return format_time(when, night.offset_at(when)); };
    if (range.exact())
        return text(range.earliest);
    return Json{{"earliest", text(range.earliest)}, {"latest", text(range.latest)}};
}

Json night_to_json(const Night& night)
{
    Json json;
    const auto put_time = [&](Json& where, const char* key, const std::optional<TimeRange>& value) {
        if (value)
            where[key] = time_range_json(*value, night);
    };
    const auto put_minutes = [&](const char* key, const std::optional<Span>& value) {
        if (value)
            json[key] = minutes_json(*value);
    };
    json["format"] = "evenfall.night/1";
    if (night.of)
        json["visit"] = Json{{"code", night.of->code}, {"night", night.of->night}};
    if (night.zone)
        json["zone"] = night.zone->name();
    json["sensors"] = night.sensors;
    json["need"] =
        Json{{"minutes", minutes_json(night.need.minutes)}, {"groups", night.need.groups}};
    if (night.recording_from || night.recording_to) {
        Json recording = Json::object();
        put_time(recording, "from", night.recording_from);
        put_time(recording, "to", night.recording_to);
        json["recording"] = recording;
    }
    put_time(json, "into_bed", night.into_bed);
    put_time(json, "lights_out", night.lights_out);
    put_minutes("asleep_after_min", night.asleep_after);
    put_time(json, "final_waking", night.final_waking);
    put_time(json, "lights_on", night.lights_on);
    put_time(json, "out_of_bed", night.out_of_bed);
    put_minutes("tried_to_sleep_after_waking_min", night.tried_after_waking);
    put_minutes("slept_min", night.slept);
    if (night.awake) {
        json["awake"] = Json::array();
        for (const Awakening& awakening : *night.awake) {
            Json one;
            one["from"] = time_range_json(awakening.from, night);
            put_time(one, "to", awakening.to);
            if (awakening.length)
                one["minutes"] = minutes_json(*awakening.length);
            json["awake"].push_back(std::move(one));
        }
    }
    if (night.awake_untimed)
        json["awake_untimed"] = Json{{"times", night.awake_untimed->times},
                                     {"minutes", minutes_json(night.awake_untimed->total)}};
    if (!night.off.empty()) {
        json["off"] = Json::array();
        for (const Removal& removal : night.off) {
            Json one{{"sensor", removal.sensor}};
            one["from"] = removal.from ? time_range_json(*removal.from, night) : Json(nullptr);
            one["to"] = removal.to ? time_range_json(*removal.to, night) : Json(nullptr);
            json["off"].push_back(std::move(one));
        }
    }
    return json;
}

} // namespace evenfall
