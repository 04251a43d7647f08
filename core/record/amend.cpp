// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/amend.h"

#include "answers/morning.h"
#include "answers/night.h"
#include "journal/kinds.h"
#include "journal/state.h"

#include <set>

namespace evenfall {
namespace {

/// Everything that can be changed, by its place in diary.json.
std::map<std::string, Json> values_of(const NightState& state, const Visit& visit, const Kit& kit)
{
    std::map<std::string, Json> values;
    const Json night = night_to_json(night_of(state, visit, kit));
    for (const auto& [key, value] : night.items())
        values[pointer("/night", std::string_view(key))] = value;
    const Morning morning = morning_of(state);
    if (morning.compare.value)
        values["/answers/compare"] = *morning.compare.value;
    if (morning.comment.value && !morning.comment.value->empty())
        values["/notes"] = *morning.comment.value;
    return values;
}

std::vector<AmendedValue> differences(const std::map<std::string, Json>& before, const std::map<std::string, Json>& after)
{
    std::vector<AmendedValue> out;
    std::set<std::string> places;
    for (const auto* side : {&before, &after})
        for (const auto& [at, value] : *side)
            places.insert(at);
    const auto value = [](const std::map<std::string, Json>& side, const std::string& at) {
        const auto found = side.find(at);
        return found == side.end() ? Json() : found->second;
    };
    for (const std::string& at : places) {
        AmendedValue one{at, value(before, at), value(after, at)};
        if (one.before != one.after)
            out.push_back(std::move(one));
    }
    return out;
}

} // namespace

std::vector<Amendment> amendments_of(const std::vector<Entry>& entries, const Visit& visit, const Kit& kit,
                                     const std::string& last_plug)
{
    std::vector<Amendment> out;
    std::vector<std::map<std::string, Json>> before;
    for (size_t i = 0; i < entries.size(); ++i) {
        if (entries[i].kind != kinds::amend)
            continue;
        const std::vector<Entry> until(entries.begin(), entries.begin() + static_cast<std::ptrdiff_t>(i));
        before.push_back(values_of(replay(until, last_plug), visit, kit));
    }
    const NightState now = replay(entries, last_plug);
    before.push_back(values_of(now, visit, kit));
    for (size_t i = 0; i < now.amendments.size() && i + 1 < before.size(); ++i) {
        const AmendInHand& one = now.amendments[i];
        out.push_back({one.at, one.by, one.why, differences(before[i], before[i + 1])});
    }
    return out;
}

} // namespace evenfall
