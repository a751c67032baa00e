// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_text.h"

#include <gtest/gtest.h>

#include <string>

using namespace core;

namespace {

std::string repeated(const std::string& part, std::size_t times) {
  std::string text;
  text.reserve(part.size() * times);
  for (std::size_t k = 0; k < times; ++k) text += part;
  return text;
}

/// "taken", or what was wrong.
std::string outcome(const std::string& text) {
  const auto value = parseJson(text);
  return value ? "taken" : value.error().what;
}

TEST(ParseJson, KeepsOrderKindsAndLines) {
  const auto root = parseJson("{\"b\": 1,\n\"a\":\n[-2,\n 2.5\n,\ntrue, null],\n\"c\":{}\n}");
  ASSERT_TRUE(root) << root.error().text();
  const auto& members = std::get<JsonValue::Object>(root->data);
  ASSERT_EQ(members.size(), 3u);
  EXPECT_EQ(members[0].key, "b");
  EXPECT_EQ(std::get<std::uint64_t>(members[0].value.data), 1u);
  EXPECT_EQ(members[0].value.line, 1u);
  EXPECT_EQ(members[1].value.line, 3u);
  const auto& list = std::get<JsonValue::Array>(members[1].value.data);
  ASSERT_EQ(list.size(), 4u);
  EXPECT_EQ(std::get<double>(list[0].data), -2);
  EXPECT_EQ(list[0].line, 3u);
  EXPECT_EQ(std::get<double>(list[1].data), 2.5);
  EXPECT_EQ(list[1].line, 4u) << "a number at the end of its line belongs to that line";
  EXPECT_EQ(std::get<bool>(list[2].data), true);
  EXPECT_EQ(list[2].line, 6u);
  EXPECT_EQ(list[3].data.index(), 0u);
  EXPECT_EQ(members[2].value.line, 7u);
}

TEST(ParseJson, CountsDepthWhileReading) {
  // The document itself is the first of 64 levels.
  EXPECT_EQ(outcome("{\"a\": " + repeated("[", 63) + repeated("]", 63) + "}"), "taken");
  EXPECT_NE(outcome("{\"a\": " + repeated("[", 64) + repeated("]", 64) + "}").find("64 levels"),
            std::string::npos);
  EXPECT_NE(outcome("{\"a\": " + repeated("[", 10'000'000)).find("64 levels"), std::string::npos);
  EXPECT_NE(outcome(repeated("{\"a\":", 1'000'000)).find("64 levels"), std::string::npos);
}

TEST(ParseJson, LimitsWhatAFileMayHold) {
  constexpr std::size_t megabyte = 1024 * 1024;
  EXPECT_EQ(outcome("{\"a\": \"" + std::string(megabyte, 'x') + "\"}"), "taken");
  EXPECT_NE(outcome("{\"a\": \"" + std::string(megabyte + 1, 'x') + "\"}").find("1 MB"), std::string::npos);
  EXPECT_EQ(outcome("{\"a\": [" + repeated("1,", 999'999) + "1]}"), "taken");
  EXPECT_NE(outcome("{\"a\": [" + repeated("1,", 1'000'000) + "1]}").find("1000000 numbers"),
            std::string::npos);
  EXPECT_NE(outcome("{\"a\": [" + repeated("[],", 4'000'000) + "1]}").find("4000000 values"),
            std::string::npos);
  EXPECT_NE(outcome("{" + std::string(64 * megabyte, ' ') + "}").find("64 MB"), std::string::npos);
  std::string members = "{\"k\": 0";
  for (int k = 0; k < 100; ++k) members += ", \"k" + std::to_string(k) + "\": 0";
  EXPECT_NE(outcome(members + "}").find("too many keys"), std::string::npos);
}

TEST(ParseJson, RefusesAMemberNamedTwiceEvenWhenSpelledOtherwise) {
  EXPECT_NE(outcome("{\"ohm\": 1, \"\\u006fhm\": 2}").find("“ohm” stands here twice"), std::string::npos);
  EXPECT_EQ(outcome("{\"ohm\": {\"ohm\": 1}}"), "taken");
}

TEST(ParseJson, ReadsNumbersAsTheNearestDouble) {
  const auto number = [](const std::string& text) {
    const auto root = parseJson("{\"a\": " + text + "}");
    if (!root) return -1.0;
    const auto& data = std::get<JsonValue::Object>(root->data)[0].value.data;
    const auto* whole = std::get_if<std::uint64_t>(&data);
    return whole ? static_cast<double>(*whole) : std::get<double>(data);
  };
  EXPECT_EQ(number("0.1"), 0.1);
  EXPECT_EQ(number("9007199254740993"), 9007199254740992.0);  // 2^53 + 1 lies between two doubles: even
  EXPECT_EQ(number("123456789012345678901234567890"), 123456789012345678901234567890.0);
  EXPECT_EQ(number("4.9e-324"), 4.9e-324);
  EXPECT_EQ(number("0e-999"), 0);
  EXPECT_EQ(number("0.000"), 0);
  for (const char* text :
       {"1e400", "1e-400", "-1e999", "01", "+1", "1.", ".5", "Infinity", "nan", "0x10", "1_0"})
    EXPECT_EQ(number(text), -1.0) << text;
}

}  // namespace
