// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "estimate/estimate_json.h"

namespace evenfall {
namespace {

constexpr Span::rep hundredth = 600000; // microseconds in 0.01 min

/// Hundredths as a number with at most two decimals; whole ones without a point.
Json hundredths_json(Span::rep hundredths)
{
    if (hundredths % 100 == 0)
        return hundredths / 100;
    return static_cast<double>(hundredths) / 100.0;
}

// Spans are never negative here.
Json rounded_down(Span span) { return hundredths_json(span.count() / hundredth); }
Json rounded_up(Span span) { return hundredths_json((span.count() + hundredth - 1) / hundredth); }
Json rounded(Span span) { return hundredths_json((span.count() + hundredth / 2) / hundredth); }

Json measures_json(const DiaryMeasures& diary)
{
    Json json = Json::object();
    const auto minutes = [&](const char* key, const std::optional<Span>& value) {
        if (value)
            json[key] = rounded(*value);
    };
    minutes("TIB", diary.tib);
    minutes("SOL", diary.sol);
    minutes("WASO", diary.waso);
    if (diary.awakenings)
        json["awakenings"] = *diary.awakenings;
    minutes("TST", diary.tst);
    minutes("TASAFA", diary.tasafa);
    minutes("DSE", diary.dse);
    if (diary.se_tib)
        json["SE_TIB"] = hundredths_json(*diary.se_tib);
    if (diary.se_dse)
        json["SE_DSE"] = hundredths_json(*diary.se_dse);
    return json;
}

Json bounds_json(const std::optional<Bounds>& bounds)
{
    return bounds ? evenfall::bounds_json(*bounds) : Json::object();
}

} // namespace

Json bounds_json(const Bounds& bounds)
{
    Json json = Json::object();
    json["at_least"] = rounded_down(bounds.at_least);
    json["best_guess"] = rounded(bounds.best_guess);
    json["at_most"] = rounded_up(bounds.at_most);
    return json;
}

Json estimate_to_json(const Estimate& estimate)
{
    Json json;
    json["format"] = "evenfall.estimate/1";
    json["window"] = bounds_json(estimate.window);
    json["sensors"] = Json::object();
    for (const auto& [id, bounds] : estimate.sensors)
        json["sensors"][id] = bounds_json(bounds);
    json["needed"] = bounds_json(estimate.needed);
    if (estimate.chance_enough)
        json["needed"]["chance_enough"] = *estimate.chance_enough;
    json["needed_asleep"] = bounds_json(estimate.needed_asleep);
    json["wake_missing"] = estimate.wake_missing;
    json["verdict"] = std::string(verdict_word(estimate.verdict));
    json["lost"] = Json::array();
    for (const Loss& loss : estimate.lost)
        json["lost"].push_back(Json{{"cause", loss.cause},
                                    {"minutes", rounded(loss.minutes)},
                                    {"alone", rounded(loss.alone)}});
    json["diary"] = measures_json(estimate.diary);
    return json;
}

Json problems_to_json(const Problems& problems)
{
    Json list = Json::array();
    for (const Problem& problem : problems)
        list.push_back(Json{{"code", problem.code}, {"at", problem.at}, {"text", problem.text}});
    return Json{{"problems", std::move(list)}};
}

} // namespace evenfall
