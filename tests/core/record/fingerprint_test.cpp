// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/fingerprint.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <string>

#include "core/document/canonical_json.h"
#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "core/record/file_standing.h"
#include "tests/support/random_document.h"

using namespace core;
using support::Numbers;
using support::randomDocument;

namespace {

std::string fileText(const std::string& name) {
  std::ifstream file(std::string(SHUNTWRIGHT_TESTS_DIR) + "/data/" + name, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

// FIPS 180-4 examples of NIST ("abc", the 448-bit message) and the NESSIE/CAVP ones of nothing and of a
// million a; each agrees with Python's hashlib.
TEST(Sha256, HashesThePublishedExamples) {
  EXPECT_EQ(sha256Hex(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  EXPECT_EQ(sha256Hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  EXPECT_EQ(sha256Hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
            "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
  EXPECT_EQ(sha256Hex(std::string(1'000'000, 'a')),
            "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

// Around the ends of a block, where padding goes into one block more or not: hashlib.sha256(b"x" * n) of
// Python 3.11.
TEST(Sha256, HashesMessagesAroundTheEndOfABlock) {
  EXPECT_EQ(sha256Hex(std::string(55, 'x')),
            "d5e285683cd4efc02d021a5c62014694958901005d6f71e89e0989fac77e4072");
  EXPECT_EQ(sha256Hex(std::string(56, 'x')),
            "04c26261370ee7541549d16dee320c723e3fd14671e66a099afe0a377c16888e");
  EXPECT_EQ(sha256Hex(std::string(63, 'x')),
            "75220b47218278e656f2013bb8f0c455a25eaf01e86c64924e9d48d89776d6f2");
  EXPECT_EQ(sha256Hex(std::string(64, 'x')),
            "7ce100971f64e7001e8fe5a51973ecdfe1ced42befe7ee8d5fd6219506b5393c");
  EXPECT_EQ(sha256Hex(std::string(65, 'x')),
            "9537c5fdf120482f7d58d25e9ed583f52c02b4e304ea814db1633ad565aed7e9");
  EXPECT_EQ(sha256Hex(std::string(119, 'x')),
            "000b48d4edf0fa7bee3c6236ecd2785baa5db4eeb8bb54341b029e0d9fa5fb0c");
}

std::string written(double number) {
  std::string text;
  appendCanonical(text, number);
  return text;
}

// RFC 8785, appendix B (from memory), the bit patterns that are numbers of a file.
TEST(CanonicalJson, WritesNumbersAsEcmaScriptDoes) {
  EXPECT_EQ(written(0.0), "0");
  EXPECT_EQ(written(-0.0), "0");
  EXPECT_EQ(written(5e-324), "5e-324");
  EXPECT_EQ(written(-5e-324), "-5e-324");
  EXPECT_EQ(written(1.7976931348623157e308), "1.7976931348623157e+308");
  EXPECT_EQ(written(9007199254740992.0), "9007199254740992");
  EXPECT_EQ(written(-9007199254740992.0), "-9007199254740992");
  EXPECT_EQ(written(295147905179352830000.0), "295147905179352830000");
  EXPECT_EQ(written(9.999999999999997e22), "9.999999999999997e+22");
  EXPECT_EQ(written(1e23), "1e+23");
  EXPECT_EQ(written(1.0000000000000001e23), "1.0000000000000001e+23");
  EXPECT_EQ(written(999999999999999700000.0), "999999999999999700000");
  EXPECT_EQ(written(999999999999999900000.0), "999999999999999900000");
  EXPECT_EQ(written(1e21), "1e+21");
  EXPECT_EQ(written(9.999999999999997e-7), "9.999999999999997e-7");
  EXPECT_EQ(written(0.000001), "0.000001");
  EXPECT_EQ(written(333333333.3333332), "333333333.3333332");
  EXPECT_EQ(written(333333333.33333325), "333333333.33333325");
  EXPECT_EQ(written(333333333.3333334), "333333333.3333334");
  EXPECT_EQ(written(-0.0000033333333333333333), "-0.0000033333333333333333");
  EXPECT_EQ(written(1424953923781206.2), "1424953923781206.2");
}

// The example of RFC 8785, section 3.2.2 (from memory), and its keys by UTF-16 units of section 3.2.3.
TEST(CanonicalJson, WritesTheExamplesOfTheStandard) {
  EXPECT_EQ(*canonicalJson("{\n  \"numbers\": [333333333.33333329, 1E30, 4.50,\n  2e-3, "
                           "0.000000000000000000000000001],\n  \"string\": "
                           "\"\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\\"\\/\",\n  \"literals\": "
                           "[null, true, false]\n}"),
            "{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
            "\"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}");
  EXPECT_EQ(
      *canonicalJson("{\"\\u20ac\": \"Euro Sign\", \"\\r\": \"Carriage Return\", \"\\ufb33\": "
                     "\"Hebrew Letter Dalet With Dagesh\", \"1\": \"One\", \"\\ud83d\\ude00\": "
                     "\"Emoji: Grinning Face\", \"\\u0080\": \"Control\", \"\\u00f6\": "
                     "\"Latin Small Letter O With Diaeresis\"}"),
      "{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\",\"ö\":\"Latin Small Letter O With "
      "Diaeresis\",\"€\":\"Euro Sign\",\"😀\":\"Emoji: Grinning Face\",\"\uFB33\":\"Hebrew Letter Dalet With "
      "Dagesh\"}");
}

TEST(CanonicalJson, IsTheSameForAllSpellings) {
  const std::string once = *canonicalJson(fileText("version7.bridgecal"));
  EXPECT_EQ(*canonicalJson(once), once);
  EXPECT_EQ(once.find('\n'), once.npos);
}

TEST(CanonicalJson, RefusesWhatIsNoJson) {
  EXPECT_FALSE(canonicalJson("{\"a\": 1"));
  EXPECT_FALSE(canonicalJson("{\"a\": 1, \"a\": 2}"));
  EXPECT_FALSE(canonicalJson(""));
}

// By resources that know nothing of this project: Python's json and hashlib, with the numbers laid out by
// hand (tests/app/verify_test.py does it for every version).
TEST(Fingerprint, IsThatOfAnIndependentReckoning) {
  const std::string text = fileText("version7.bridgecal");
  const std::string expected = "9480a80225b70ad27a2c9a56da361f7c4439799adf383c3d9f95a6dabce1997a";
  EXPECT_EQ(*fingerprintOfFile(text), expected);
  EXPECT_EQ(*fingerprintOf(*readDocument(text)), expected);
  EXPECT_EQ(shortFingerprint(expected), "9480 a802 25b7 0ad2");
}

TEST(Fingerprint, OfOlderFilesIsThatOfTheirOwnJson) {
  // tests/app/verify_test.py, fingerprint(), Python 3.11.
  const std::pair<const char*, const char*> known[] = {
      {"version1.bridgecal", "5cfa31f9ad24170ef139cae143fb0d4af81be885fa9b7bcbece53a6110a23e4d"},
      {"version2.bridgecal", "ee2bd9713c9478911756ee3a7b511a8b967da87f2266ade22fe0d4a0b84b8acf"},
      {"version3.bridgecal", "d341c07743a2b8b21e70fc6af955dbb6a4b8a9216147657d15d79337b1495a72"},
      {"version4.bridgecal", "751bfcabdaf38d33a2f5aebadba5109541be607ccc9264a7deefbe2d49cb424d"},
      {"version5.bridgecal", "a2930088c574e535b5af8f0f1929d197eed1c85f1a1302d96227ed066bda205d"},
      {"version6.bridgecal", "d5ca349c76de9e921dea978a87e964ca84b9d56544dd55ad96181a271550c2f2"}};
  for (const auto& [name, expected] : known) EXPECT_EQ(*fingerprintOfFile(fileText(name)), expected) << name;
}

TEST(Fingerprint, OfADocumentIsThatOfItsFile) {
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    const Document document = randomDocument(seed, seed % 2 == 0 ? Numbers::Plausible : Numbers::AnyFinite);
    const auto text = writeDocument(document);
    ASSERT_TRUE(text) << text.error().text();
    ASSERT_EQ(*fingerprintOf(document), *fingerprintOfFile(*text)) << seed;
    ASSERT_EQ(fileStanding(*text)->kind, FileStanding::Kind::AsSaved) << seed;
  }
}

TEST(Fingerprint, ComesFromThoseOfTheChannels) {
  const Document document = *readDocument(fileText("version7.bridgecal"));
  std::vector<std::string> channels;
  for (const auto& channel : document.channels) channels.push_back(*fingerprintOf(*channel));
  EXPECT_EQ(*fingerprintOf(document, channels), *fingerprintOf(document));
  std::swap(channels[0], channels[1]);
  EXPECT_NE(*fingerprintOf(document, channels), *fingerprintOf(document));
}

TEST(Fingerprint, LeavesOutWhatComesAfterTheFact) {
  Document document = *readDocument(fileText("version7.bridgecal"));
  const std::string before = *fingerprintOf(document);
  Channel channel = *document.channels[0];
  channel.checks[0].remarks.clear();
  document.channels[0] = std::make_shared<const Channel>(channel);
  document.signOff.acts.clear();
  document.history.clear();
  EXPECT_EQ(*fingerprintOf(document), before);
  channel.checks[0].readings[1]->mean = Reading(-1019.7500001);
  document.channels[0] = std::make_shared<const Channel>(channel);
  EXPECT_NE(*fingerprintOf(document), before);
}

TEST(FileStanding, TellsAFileThatWasAltered) {
  const std::string good = fileText("version7.bridgecal");
  EXPECT_EQ(fileStanding(good)->kind, FileStanding::Kind::AsSaved);
  std::string altered = good;
  altered.replace(altered.find("-1019.75"), 8, "-1018.75");
  ASSERT_TRUE(readDocument(altered));
  const auto standing = fileStanding(altered);
  EXPECT_EQ(standing->kind, FileStanding::Kind::Altered);
  EXPECT_EQ(standing->stated, fileStanding(good)->fingerprint);
  EXPECT_NE(sentenceOf(*standing).find("altered outside"), std::string::npos);
  // Another layout of the same is no alteration.
  std::string spaced = good;
  for (std::size_t at = 0; (at = spaced.find("\n", at)) != spaced.npos; at += 2)
    spaced.replace(at, 1, "\r\n");
  EXPECT_EQ(fileStanding(spaced)->kind, FileStanding::Kind::AsSaved);
  EXPECT_EQ(fileStanding(fileText("version6.bridgecal"))->kind, FileStanding::Kind::NotFingerprinted);
  EXPECT_FALSE(fileStanding("{"));
}

}  // namespace
