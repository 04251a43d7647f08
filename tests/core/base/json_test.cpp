// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "base/json.h"

#include <gtest/gtest.h>

#include <chrono>

namespace evenfall {
namespace {

using std::chrono::minutes;

Problem only(const Problems& problems)
{
    EXPECT_EQ(problems.size(), 1u);
    return problems.empty() ? Problem{} : problems[0];
}

TEST(Json, IsRead_WhenItIsStrict)
{
    EXPECT_EQ(*parse_json(R"( {"a": [1, -2.5e3, true, null, "\u00e9"]} )"), Json::parse(R"({"a":[1,-2500.0,true,null,"é"]})"));
}

TEST(Json, IsRefused_WhenItIsNot)
{
    for (const char* text : {"", " ", "{", "{\"a\":1,}", "[1,]", "{'a':1}", "{\"a\":1} x", "{\"a\":1}{}", "// x\n{}", "/* x */ 1",
                             "{a:1}", "NaN", "01", "+1", ".5", "\"\xff\"", "\"\xc0\xaf\"", "\"\xed\xa0\x80\"", "\"tab\there\"", "tru", "\"\\x\""}) {
        const Problem problem = only(parse_json(text).problems());
        EXPECT_EQ(problem.code, "not_json") << text;
        EXPECT_EQ(problem.fault, Fault::malformed) << text;
        EXPECT_NE(problem.text.find("byte"), std::string::npos) << problem.text;
    }
}

TEST(Json, NamesTheLine_WhenItIsNotJson)
{
    const Problem problem = only(parse_json("{\n\"a\": 1,\n\"b\" 2}").problems());
    EXPECT_NE(problem.text.find("line 3"), std::string::npos) << problem.text;
}

TEST(Json, NamesThePlace_WhenAKeyStandsTwice)
{
    EXPECT_EQ(only(parse_json(R"({"a":1,"a":1})").problems()).at, "/a");
    EXPECT_EQ(only(parse_json(R"({"x":[0,{"y":1},{"b/c":1,"b\u002fc":2}]})").problems()).at, "/x/2/b~1c");
    EXPECT_EQ(only(parse_json(R"({"x":{"k":1},"y":{"k":1},"k":[],"k":2})").problems()).at, "/k");
    EXPECT_EQ(only(parse_json(R"({"a":1,"a":1})").problems()).code, "duplicate_key");
    EXPECT_TRUE(parse_json(R"([{"a":1},{"a":1}])").ok());
}

TEST(Json, IsRefused_WhenItIsTooDeepOrTooLarge)
{
    const auto nested = [](size_t n) { return std::string(n, '[') + std::string(n, ']'); };
    EXPECT_TRUE(parse_json(nested(64)).ok());
    EXPECT_EQ(only(parse_json(nested(65)).problems()).code, "too_deep");
    EXPECT_FALSE(parse_json(std::string(1000000, '[')).ok());
    for (const char* text : {"1e999", "-1e999", "[1e309]"}) {
        const Problem problem = only(parse_json(text).problems());
        EXPECT_EQ(problem.code, "not_json") << text;
        EXPECT_NE(problem.text.find("overflow"), std::string::npos) << problem.text;
    }
}

TEST(Pointer, EscapesAsItMust)
{
    // RFC 6901, section 5: the pointers to these members of its example document.
    EXPECT_EQ(pointer("", "foo"), "/foo");
    EXPECT_EQ(pointer("/foo", size_t{0}), "/foo/0");
    EXPECT_EQ(pointer("", ""), "/");
    EXPECT_EQ(pointer("", "a/b"), "/a~1b");
    EXPECT_EQ(pointer("", "c%d"), "/c%d");
    EXPECT_EQ(pointer("", "m~n"), "/m~0n");
}

TEST(Ids, ArePlain)
{
    for (const char* id : {"a", "chest", "left_leg", "belt-2", "a234567890123456789012345678901234567890"})
        EXPECT_TRUE(plain_id(id)) << id;
    for (const char* id : {"", "Chest", "2belt", "-a", "_a", "a b", "a/b", "a.b", "é", "aé", "{a", "a{", "a2345678901234567890123456789012345678901"})
        EXPECT_FALSE(plain_id(id)) << id;
    for (const char* code : {"SM-0417", "x", "0_1", "ABCDEFGHIJABCDEFGHIJABCDEFGHIJ12"})
        EXPECT_TRUE(plain_study_code(code)) << code;
    for (const char* code : {"", "-a", "_a", "a b", "a/b", "..", "a.b", "é", "a{", "a[", "aé", "ABCDEFGHIJABCDEFGHIJABCDEFGHIJ123"})
        EXPECT_FALSE(plain_study_code(code)) << code;
}

TEST(ObjectReader, ReadsWhatIsThere)
{
    const Json json = Json::parse(R"({"t":"x","n":5,"b":true,"m":12.5,"l":{"en":"x"},"e":[7,8],"w":["a","b"]})");
    Problems problems;
    ObjectReader reader(json, "/top", problems);
    EXPECT_EQ(reader.text("t"), "x");
    EXPECT_EQ(reader.integer("n", 5, 5), 5);
    EXPECT_EQ(reader.boolean("b"), true);
    EXPECT_EQ(reader.minutes("m"), Span(12500000L * 60));
    EXPECT_EQ(reader.local_text("l"), (LocalText{{"en", "x"}}));
    ASSERT_EQ(reader.elements("e").size(), 2u);
    EXPECT_EQ(reader.elements("e")[1].second, "/top/e/1");
    EXPECT_EQ(reader.words("w"), (std::vector<std::string>{"a", "b"}));
    EXPECT_EQ(reader.text("absent", false), std::nullopt);
    reader.finish();
    EXPECT_TRUE(problems.empty());
}

TEST(ObjectReader, NamesEachFaultOnce_AndGoesOn)
{
    const Json json = Json::parse(R"({"t":5,"n":5.5,"b":1,"m":-1,"l":{"english":"x"},"e":{},"w":["a","a"],"x":0})");
    Problems problems;
    ObjectReader reader(json, "", problems);
    EXPECT_EQ(reader.text("t"), std::nullopt);
    EXPECT_EQ(reader.integer("n", 0, 9), std::nullopt);
    EXPECT_EQ(reader.boolean("b"), std::nullopt);
    EXPECT_EQ(reader.minutes("m"), std::nullopt);
    EXPECT_EQ(reader.local_text("l"), std::nullopt);
    EXPECT_TRUE(reader.elements("e").empty());
    EXPECT_EQ(reader.words("w"), std::nullopt);
    EXPECT_EQ(reader.text("gone"), std::nullopt);
    reader.finish();
    std::vector<std::pair<std::string, std::string>> found;
    for (const Problem& problem : problems)
        found.emplace_back(problem.at, problem.code);
    EXPECT_EQ(found, (std::vector<std::pair<std::string, std::string>>{
                         {"/t", "wrong_type"}, {"/n", "wrong_type"}, {"/b", "wrong_type"}, {"/m", "out_of_range"}, {"/l/english", "bad_text"},
                         {"/e", "wrong_type"}, {"/w/1", "duplicate"}, {"/gone", "missing_key"}, {"/x", "unknown_key"}}));
}

TEST(ObjectReader, NamesOnlyTheType_WhenItIsNoObject)
{
    const Json json = Json::parse("[1]");
    Problems problems;
    ObjectReader reader(json, "/p", problems);
    EXPECT_FALSE(reader.has("t"));
    EXPECT_EQ(reader.text("t"), std::nullopt);
    reader.finish();
    EXPECT_EQ(only(problems).at, "/p");
    EXPECT_EQ(problems[0].code, "wrong_type");
}

TEST(ObjectReader, RefusesWholeNumbersBeyondAnyRange)
{
    for (const char* number : {"18446744073709551615", "9223372036854775807", "-9223372036854775808", "1e3"}) {
        const Json json = Json::parse(std::string("{\"n\":") + number + "}");
        Problems problems;
        ObjectReader reader(json, "", problems);
        EXPECT_EQ(reader.integer("n", -5, 1000), std::nullopt) << number;
        EXPECT_EQ(problems.size(), 1u) << number;
    }
}

TEST(ObjectReader, RefusesWholeNumbersOutsideARangeBelowZero)
{
    for (const char* number : {"-10", "-4", "-1", "0", "5", "18446744073709551615"}) {
        const Json json = Json::parse(std::string("{\"n\":") + number + "}");
        Problems problems;
        ObjectReader reader(json, "", problems);
        EXPECT_EQ(reader.integer("n", -9, -5), std::nullopt) << number;
        EXPECT_EQ(only(problems).code, "out_of_range") << number;
    }
    Problems problems;
    const Json json = Json::parse(R"({"least":-9,"most":-5})");
    ObjectReader reader(json, "", problems);
    EXPECT_EQ(reader.integer("least", -9, -5), -9);
    EXPECT_EQ(reader.integer("most", -9, -5), -5);
    EXPECT_TRUE(problems.empty());
}

/// The problems of one member of an object, as pointers and codes.
template <class Read>
std::vector<std::pair<std::string, std::string>> faults_in(const std::string& value, Read read)
{
    const Json json = Json::parse("{\"k\":" + value + "}");
    Problems problems;
    ObjectReader reader(json, "", problems);
    EXPECT_FALSE(read(reader).has_value()) << value;
    std::vector<std::pair<std::string, std::string>> out;
    for (const Problem& problem : problems)
        out.emplace_back(problem.at, problem.code);
    return out;
}

TEST(LocalText, IsTextByTwoSmallLetters_AndNothingElse)
{
    using Found = std::vector<std::pair<std::string, std::string>>;
    const auto faults = [](const std::string& value) {
        return faults_in(value, [](ObjectReader& reader) { return reader.local_text("k"); });
    };
    for (const char* value : {"{}", "\"Chest belt\"", "[]", "null", "5"})
        EXPECT_EQ(faults(value), (Found{{"/k", "wrong_type"}})) << value;
    for (const char* language : {"", "e", "eng", "EN", "En", "eN", "e1", "1e", "{n", "e{", "ä"})
        EXPECT_EQ(faults("{\"" + std::string(language) + "\":\"Chest belt\"}"), (Found{{"/k/" + std::string(language), "bad_text"}})) << language;
    for (const char* text : {"5", "null", "\"\"", "{}"})
        EXPECT_EQ(faults("{\"en\":" + std::string(text) + "}"), (Found{{"/k/en", "bad_text"}})) << text;
}

TEST(Words, AreStringsWithSomeText)
{
    using Found = std::vector<std::pair<std::string, std::string>>;
    const auto faults = [](const std::string& value) {
        return faults_in(value, [](ObjectReader& reader) { return reader.words("k"); });
    };
    EXPECT_EQ(faults("\"a\""), (Found{{"/k", "wrong_type"}}));
    EXPECT_EQ(faults("[\"a\",5]"), (Found{{"/k/1", "wrong_type"}}));
    EXPECT_EQ(faults("[\"a\",\"\"]"), (Found{{"/k/1", "wrong_type"}}));
    EXPECT_EQ(faults("[\"a\",\"a\"]"), (Found{{"/k/1", "duplicate"}}));
}

TEST(Minutes, AreExactDecimals)
{
    const auto read = [](const std::string& number) {
        const Json json = Json::parse("{\"m\":" + number + "}");
        Problems problems;
        ObjectReader reader(json, "", problems);
        const std::optional<Span> out = reader.minutes("m");
        return std::pair(out, problems.empty() ? std::string() : problems[0].code);
    };
    EXPECT_EQ(read("0").first, Span(0));
    EXPECT_EQ(read("17.5").first, Span(minutes(17)) + std::chrono::seconds(30));
    EXPECT_EQ(read("0.1").first, Span(std::chrono::seconds(6)));
    EXPECT_EQ(read("10.3").first, Span(618000000));
    EXPECT_EQ(read("10080").first, Span(minutes(10080)));
    EXPECT_EQ(read("10080.1").second, "out_of_range");
    EXPECT_EQ(read("-0.1").second, "out_of_range");
    EXPECT_EQ(read("0.33333333").second, "too_fine");
    for (const char* text : {"0", "20", "17.5", "0.1", "10.3", "487.25"})
        EXPECT_EQ(minutes_json(*read(text).first).dump(), text);
}

TEST(Problems, GiveTheHighestExitStatus)
{
    EXPECT_EQ(exit_status({}), 0);
    EXPECT_EQ(exit_status({{Fault::refused, "", "", ""}}), 1);
    EXPECT_EQ(exit_status({{Fault::refused, "", "", ""}, {Fault::io, "", "", ""}, {Fault::malformed, "", "", ""}}), 3);
}

TEST(Problems, AreToldInOneLine)
{
    EXPECT_EQ(describe("kit.json", {Fault::malformed, "x", "/parts/0", "wrong; right would be y"}), "kit.json: /parts/0: wrong; right would be y");
}

} // namespace
} // namespace evenfall
