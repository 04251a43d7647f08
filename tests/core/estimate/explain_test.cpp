// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "estimate/explain.h"

#include "base/intervals.h"
#include "core/estimate/nights.h"

#include <regex>

namespace evenfall {
namespace {

using test::min;
using test::RandomNights;

std::string all_of(const std::vector<std::string>& lines)
{
    std::string out;
    for (const std::string& line : lines)
        out += line + "\n";
    return out;
}

double minutes_in(const std::string& line, const std::string& after)
{
    std::smatch found;
    EXPECT_TRUE(std::regex_search(line, found, std::regex(after + "([0-9.]+) min"))) << line;
    return found.empty() ? 0 : std::stod(found[1]);
}

/// Every minute between the window and what counts while asleep stands in some line.
TEST(Explain, LostMinutesAddUp)
{
    RandomNights random(21);
    for (int round = 0; round < 2000; ++round) {
        const Night night = random.night(false);
        const Estimate result = estimate(night, {false, 0, 0});
        double lost = 0;
        double awake = 0;
        for (const std::string& line : explain(night, result)) {
            if (line.starts_with("Does not count: "))
                lost += minutes_in(line, "Does not count: ");
            if (line.starts_with("Awake: "))
                awake += minutes_in(line, ": (?:.*): ");
        }
        const auto in_minutes = [](Span span) { return static_cast<double>(span.count()) / 60e6; };
        ASSERT_NEAR(lost, in_minutes(result.window->best_guess - result.needed->best_guess), 0.001)
            << night_to_json(night).dump() << all_of(explain(night, result));
        ASSERT_NEAR(awake, in_minutes(result.needed->best_guess - result.needed_asleep->best_guess),
                    0.001)
            << night_to_json(night).dump() << all_of(explain(night, result));
    }
}

TEST(Explain, TellsWhatIsUncertainAndWhatWasNotAnswered)
{
    const Night night = test::night_of(
        "{'format':'evenfall.night/1','zone':'America/New_York','sensors':['finger'],"
        "'need':{'minutes':240,'groups':[['finger']]},'lights_out':'2026-10-31T22:00','lights_on':'"
        "2026-11-01T06:00',"
        "'off':[{'sensor':'finger','from':{'earliest':'2026-11-01T01:30-04:00','latest':'2026-11-"
        "01T01:30-05:00'},'to':null}]}");
    const std::string text = all_of(explain(night, estimate(night)));
    EXPECT_NE(
        text.find("finger came off between 01:30 (UTC-04:00) and 01:30 (UTC-05:00), not put back"),
        std::string::npos)
        << text;
    EXPECT_NE(text.find("Not answered: awakenings"), std::string::npos) << text;
    EXPECT_NE(text.find("The recording and the clinic decide"), std::string::npos) << text;
    EXPECT_EQ(text.find("adequate"), std::string::npos) << text;
}

TEST(Explain, SaysWhyAWindowIsUnknown)
{
    const Night night = test::night_of(
        "{'format':'evenfall.night/1','zone':'UTC','sensors':['finger'],"
        "'need':{'minutes':240,'groups':[['finger']]},'lights_out':'2026-10-31T22:00'}");
    EXPECT_NE(all_of(explain(night, estimate(night))).find("not known when the night ended"),
              std::string::npos);
}

} // namespace
} // namespace evenfall
