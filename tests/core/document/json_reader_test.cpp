// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_reader.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <string>

#include "core/document/json_writer.h"
#include "tests/support/random_document.h"

using namespace core;

namespace {

std::string fileText(const std::string& name) {
  std::ifstream file(std::string(SHUNTWRIGHT_TESTS_DIR) + "/data/" + name, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

/// The file with the first `from` after `anchor` replaced.
std::string damaged(std::string text, const std::string& anchor, const std::string& from,
                    const std::string& to) {
  const std::size_t at = text.find(from, text.find(anchor));
  EXPECT_NE(at, text.npos) << "nothing to damage: " << from;
  return text.replace(at, from.size(), to);
}

/// The number of the line on which `part` first stands.
std::size_t lineOf(const std::string& text, const std::string& part) {
  return 1 + std::count(text.begin(), text.begin() + text.find(part), '\n');
}

// Written by hand when version 1 was fixed; never change it, and never let it stop opening.
TEST(ReadDocument, OpensTheFirstVersionForever) {
  const std::string text = fileText("version1.bridgecal");
  const auto document = readDocument(text);
  ASSERT_TRUE(document) << document.error().text();
  EXPECT_EQ(document->title, "Tailplane proof load");
  EXPECT_EQ(document->site, "Alder Fen Test Hall");
  EXPECT_EQ(document->article, "Sandpiper \"S-2\" tailplane");
  EXPECT_EQ(document->note, "first line\nsecond line, 350 Ω, -1000 µm/m");
  ASSERT_EQ(document->channels.size(), 2u);

  const Channel& spar = *document->channels[0];
  EXPECT_EQ(spar.name, "TP-01");
  EXPECT_EQ(spar.note, "spar cap");
  EXPECT_EQ(spar.setup.bridge.type, BridgeType::QuarterThreeWire);
  EXPECT_EQ(spar.setup.bridge.gauge, (Gauge{350.0_ohm, 2.05, 0.3}));
  EXPECT_EQ(spar.setup.bridge.arms[0], 350.2_ohm);
  EXPECT_EQ(spar.setup.bridge.arms[1], 350.0_ohm);
  const CopperWire wire{12.5_m, Area(1.4e-7), 20.0_degC};
  EXPECT_EQ(spar.setup.bridge.leads, (Leads{1.25_ohm, 0.0_ohm, 0.0_ohm, wire, 0.0_ohm, 0.0_ohm, wire}));
  EXPECT_EQ(spar.setup.instrument,
            (Instrument{ReadingUnit::MicrometrePerMetre, 2, 1, 1, "kN", 2.5_V, Resistance(1e9)}));
  EXPECT_EQ(spar.setup.shunts,
            (std::vector<Shunt>{{"R1 on arm 1", 174.65_kohm, Node::Arm1Begin, Node::Arm1End, 0.5_ohm},
                                {"R1 on arm 2", 174.65_kohm, Node::SMinus, Node::PMinus, 0.0_ohm}}));
  EXPECT_EQ(spar.setup.sequence,
            (std::vector<Step>{{"zero", {}, 2.0_s}, {"compression", {0}, 2.5_s}, {"both", {0, 1}, 2.0_s}}));
  EXPECT_EQ(spar.setup.limits, (Limits{0.01, Reading(2), 0.005}));
}

TEST(ReadDocument, OpensTheChecksOfTheFirstVersion) {
  const auto document = readDocument(fileText("version1.bridgecal"));
  ASSERT_TRUE(document) << document.error().text();
  const Channel& spar = *document->channels[0];
  ASSERT_EQ(spar.checks.size(), 2u);
  const Check& before = spar.checks[0];
  EXPECT_EQ(before.name, "pre-test");
  EXPECT_EQ(before.date, "2024-05-06");
  EXPECT_EQ(before.person, "shift A");
  EXPECT_EQ(
      before.recording,
      (RecordingReference{"recordings/pre.csv", UINT64_MAX,
                          "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855", "TP-01"}));
  ASSERT_EQ(before.readings.size(), 3u);
  EXPECT_EQ(before.readings[0], (Measured{Reading(0.1), Reading(0.02), 0.5_s, 2.0_s}));
  EXPECT_EQ(before.readings[1], (Measured{Reading(-1019.75), {}, {}, {}}));
  EXPECT_EQ(before.readings[2], std::nullopt);
  ASSERT_TRUE(before.closedWith);
  core::Setup frozen = spar.setup;
  frozen.sequence[1].hold = 1.0_s;
  EXPECT_EQ(*before.closedWith, frozen);
  EXPECT_EQ(spar.checks[1], (Check{"post-test", "", "", "not yet run", {}, {}, {}}));

  const Channel& cell = *document->channels[1];
  EXPECT_EQ(cell.setup.bridge.type, BridgeType::Transducer);
  EXPECT_EQ(cell.setup.bridge.rating, (Rating{2.0_mV_per_V, 50, "kN"}));
  EXPECT_TRUE(cell.setup.bridge.sixWire);
  EXPECT_EQ(cell.setup.bridge.leads[static_cast<std::size_t>(LeadRole::SensePlus)], Lead(0.4_ohm));
  EXPECT_EQ(cell.setup.instrument, (Instrument{ReadingUnit::Scaled, 2, 4, 25, "kN", 5.0_V, {}}));
}

struct Damage {
  const char* anchor;
  const char* from;
  const char* to;
  const char* path;  ///< expected after the line
  const char* what;  ///< expected in the sentence
  const char* line;  ///< text on the line that must be named
};

const Damage damages[] = {
    {"TP-01", "\"note\"", "\"remark\"", "channels[0].remark", "“remark” is not known",
     "\"remark\": \"spar cap\""},
    {"", "\"site\": \"Alder Fen Test Hall\",", "", "", "“site” is missing", "{"},
    {"", "\"site\"", "\"title\"", "title", "“title” stands here twice", "\"Alder Fen Test Hall\""},
    {"", "2.05", "\"2.05\"", "channels[0].setup.bridge.gauge.factor", "a text where a number", "\"gauge\""},
    {"", "2.05", "null", "channels[0].setup.bridge.gauge.factor", "nothing (null) where a number",
     "\"gauge\""},
    {"", "2.05", "1e999", "channels[0].setup.bridge.gauge.factor", "too large", "\"gauge\""},
    {"", "2.05", "1e-999", "channels[0].setup.bridge.gauge.factor", "too small", "\"gauge\""},
    {"", "2.05", "NaN", "channels[0].setup.bridge.gauge.factor", "rules of JSON", "\"gauge\""},
    {"", "2.05", "0x2", "channels[0].setup.bridge.gauge.factor", "rules of JSON", "\"gauge\""},
    {"", "\"quarter_three_wire\"", "\"quarter\"", "channels[0].setup.bridge.type", "bridge type “quarter”",
     "\"type\""},
    {"", ", 350]", "]", "channels[0].setup.bridge.arms_ohm", "four arms", "\"arms_ohm\""},
    {"", ", 350]", ", 350, 350]", "channels[0].setup.bridge.arms_ohm", "four arms", "\"arms_ohm\""},
    {"", "[350.2, ", "[true, ", "channels[0].setup.bridge.arms_ohm[0]", "a yes or no where a number",
     "\"arms_ohm\""},
    {"", "\"P+\": {\"ohm\": 1.25},", "", "channels[0].setup.bridge.leads", "“P+” is missing", "\"leads\""},
    {"", "\"P+\": {\"ohm\": 1.25}", "\"P+\": {}", "channels[0].setup.bridge.leads.P+",
     "“length_m” is missing", "\"P+\""},
    {"", "{\"ohm\": 1.25}", "{\"ohm\": 1.25, \"length_m\": 2}", "channels[0].setup.bridge.leads.P+",
     "a resistance and a wire", "\"P+\""},
    {"", "\"P+\": {", "\"Q+\": {", "channels[0].setup.bridge.leads.Q+", "“Q+” is not known", "\"Q+\""},
    {"", "\"six_wire\": false", "\"six_wire\": 0", "channels[0].setup.bridge.six_wire",
     "a number where true or false", "\"six_wire\""},
    {"", "\"um_per_m\"", "\"furlong\"", "channels[0].setup.instrument.unit", "unit “furlong”", "\"unit\""},
    {"", "\"S-\", \"to\"", "\"S*\", \"to\"", "channels[0].setup.shunts[1].from", "place named “S*”",
     "\"S*\""},
    {"", "\"name\": \"R1 on arm 2\"", "\"name\": \"R1 on arm 1\"", "channels[0].setup.shunts[1].name",
     "another shunt has the name “R1 on arm 1”", "\"from\": \"S-\""},
    {"", "[\"R1 on arm 1\"]", "[\"R7\"]", "channels[0].setup.sequence[1].closed[0]", "no shunt named “R7”",
     "[\"R7\"]"},
    {"", "[\"R1 on arm 1\"]", "[0]", "channels[0].setup.sequence[1].closed[0]", "a number where a text",
     "\"compression\""},
    {"", "[\"R1 on arm 1\", \"R1 on arm 2\"]", "[\"R1 on arm 1\", \"R1 on arm 1\"]",
     "channels[0].setup.sequence[2].closed", "named twice", "\"both\""},
    {"", "\"hold_s\": 2}", "\"hold_s\": [2]}", "channels[0].setup.sequence[0].hold_s",
     "a list where a number", "\"zero\""},
    {"", "e3b0", "E3B0", "channels[0].checks[0].recording.sha256", "not a SHA-256", "\"sha256\""},
    {"", "18446744073709551615", "-1", "channels[0].checks[0].recording.size_bytes", "whole number",
     "\"size_bytes\""},
    {"", "18446744073709551615", "1.5", "channels[0].checks[0].recording.size_bytes", "whole number",
     "\"size_bytes\""},
    {"", "18446744073709551615", "18446744073709551616", "channels[0].checks[0].recording.size_bytes",
     "whole number", "\"size_bytes\""},
    {"", "{\"mean\": -1019.75},", "null, null,", "channels[0].checks[0].readings", "4 readings for 3 steps",
     "\"readings\""},
    {"", "\"readings\": []", "\"readings\": [null, null, null, null]", "channels[0].checks[1].readings",
     "4 readings for 3 steps", "[null, null, null, null]"},
    {"", "\"mean\": -1019.75", "\"man\": -1019.75", "channels[0].checks[0].readings[1].man",
     "“man” is not known", "\"man\""},
    {"", "\"name\": \"post-test\",", "\"name\": \"pre-test\" ,", "channels[0].checks[1].name",
     "another check has the name", "\"pre-test\" ,"},
    {"", "\"LC-1\",", "\"TP-01\" ,", "channels[1].name", "another channel has the name “TP-01”",
     "\"TP-01\" ,"},
    {"closed_with", "2.05", "\"x\"", "channels[0].checks[0].closed_with.bridge.gauge.factor", "a text where",
     "\"factor\": \"x\""},
    {"", "\"channels\": [", "\"channels\": {}, \"more\": [", "more", "“more” is not known", "\"more\""},
};

TEST(ReadDocument, NamesLineAndPathOfEachDamage) {
  const std::string good = fileText("version1.bridgecal");
  for (const Damage& d : damages) {
    const std::string text = damaged(good, d.anchor, d.from, d.to);
    const auto document = readDocument(text);
    ASSERT_FALSE(document) << d.from << " -> " << d.to;
    const Error& error = document.error();
    std::string where = "line " + std::to_string(lineOf(text, d.line));
    if (*d.path) where += std::string(", ") + d.path;
    EXPECT_EQ(error.where, where) << d.from << " -> " << d.to << ": " << error.text();
    EXPECT_NE(error.what.find(d.what), std::string::npos) << error.text();
    EXPECT_FALSE(error.mend.empty()) << error.text();
  }
}

TEST(ReadDocument, SaysThatACutFileEndsTooEarlyAndWhere) {
  const std::string text = fileText("version1.bridgecal");
  const std::size_t last = text.find_last_of('}');
  for (std::size_t length = 1; length <= last; ++length) {
    const std::string cut = text.substr(0, length);
    const auto document = readDocument(cut);
    ASSERT_FALSE(document) << length;
    ASSERT_NE(document.error().what.find("ends too early"), std::string::npos)
        << length << " " << document.error().text() << "\n"
        << cut.substr(std::max<std::size_t>(length, 30) - 30);
    const std::string visible = cut.substr(0, cut.find_last_not_of('\n') + 1);
    const auto line = 1 + std::count(visible.begin(), visible.end(), '\n');
    const std::string where = "line " + std::to_string(line);
    ASSERT_TRUE(document.error().where == where || document.error().where.starts_with(where + ","))
        << document.error().text();
  }
}

TEST(ReadDocument, RefusesWhatIsNoDocument) {
  const auto what = [](const std::string& text) {
    const auto document = readDocument(text);
    return document ? std::string("taken") : document.error().text();
  };
  EXPECT_NE(what("").find("the file: it is empty"), std::string::npos);
  EXPECT_NE(what("").find("the original or a backup"), std::string::npos);  // nothing else is ever written
  EXPECT_NE(what(" \n\t ").find("the file: it is empty"), std::string::npos);
  for (const char* text : {"\x7F"
                           "ELF\x02\x01",
                           "time;TP-01\n0;1\n", "[]", "42", "null", "\"text\"", "{}", "{\"format\": 1}",
                           "{\"format\": \"other\", \"version\": 1}", "\xEF\xBB\xBF[]"})
    EXPECT_NE(what(text).find("not a Shuntwright document"), std::string::npos) << text << ": " << what(text);
  EXPECT_NE(what(std::string("{\0}", 3)).find("rules of JSON"), std::string::npos);
  EXPECT_NE(what("{\"format\": \"shuntwright\"}").find("which version"), std::string::npos);
  EXPECT_NE(what("{\"format\": \"shuntwright\", \"version\": \"1\"}").find("which version"),
            std::string::npos);
  EXPECT_NE(what("{\"format\": \"shuntwright\", \"version\": 0}").find("which version"), std::string::npos);
  EXPECT_NE(what(fileText("version1.bridgecal") + "{}").find("text after the end"), std::string::npos);
  EXPECT_NE(what("{\"a\": \"\xFF\", \"b\": 1}").find("line 1: the text is not UTF-8"), std::string::npos);
}

TEST(ReadDocument, NamesTheVersionThatANewerFileNeeds) {
  const auto document =
      readDocument("{\"format\": \"shuntwright\", \"version\": 7, \"rooms\": {\"unknown\": []}}");
  ASSERT_FALSE(document);
  EXPECT_NE(document.error().what.find("file version 7"), std::string::npos) << document.error().text();
  EXPECT_NE(document.error().mend.find("reads file version 7"), std::string::npos);
}

TEST(ReadDocument, TakesOtherSpellingsOfTheSameJson) {
  std::string text = fileText("version1.bridgecal");
  const auto plain = readDocument(text);
  ASSERT_TRUE(plain);
  text = damaged(text, "", "174650", "1.7465E+5");
  text = damaged(text, "", "\"spar cap\"", "\"sp\\u0061r cap\"");
  std::string windows = "\xEF\xBB\xBF";
  for (const char c : text) windows += c == '\n' ? std::string("\r\n") : std::string(1, c);
  const auto other = readDocument(windows);
  ASSERT_TRUE(other) << other.error().text();
  ASSERT_EQ(other->channels.size(), plain->channels.size());
  for (std::size_t k = 0; k < plain->channels.size(); ++k) {
    const Channel& a = *plain->channels[k];
    const Channel& b = *other->channels[k];
    EXPECT_EQ(a.setup, b.setup);
    EXPECT_EQ(a.note, b.note);
  }
}

TEST(ReadDocument, OpensWhatCannotBeCalculated) {
  const std::string text = damaged(fileText("version1.bridgecal"), "", "[350.2, ", "[0, ");
  const auto document = readDocument(text);
  ASSERT_TRUE(document) << document.error().text();
  EXPECT_FALSE(checkBridge(document->channels[0]->setup.bridge, document->channels[0]->setup.instrument));
}

TEST(ReadDocument, SurvivesAnyChangedByte) {
  // Under the sanitizers this is a small fuzz run; here it must only end with a document or a reason.
  const std::string good = fileText("version1.bridgecal");
  std::size_t refused = 0;
  for (std::size_t at = 0; at < good.size(); ++at) {
    for (const char c : {'\0', '"', '}', '9', '\xC3'}) {
      std::string text = good;
      text[at] = c;
      const auto document = readDocument(text);
      if (document) continue;
      ++refused;
      ASSERT_FALSE(document.error().what.empty()) << at;
      ASSERT_FALSE(document.error().where.empty()) << at;
    }
  }
  EXPECT_GT(refused, 2 * good.size());
}

}  // namespace
