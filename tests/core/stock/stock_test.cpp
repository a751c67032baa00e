// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/stock.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <limits>
#include <tuple>

#include "core/stock/stock_text.h"
#include "tests/support/digits.h"

using namespace core;

namespace {

const Date today = *dateFromText("2026-11-25");

Resistor resistor(std::string id, double ohm) {
  return {.id = std::move(id), .nominal = Resistance(ohm), .tolerance = 1e-4};
}

Resistor certified(std::string id, double ohm, double certified_ohm, double expanded_ohm) {
  Resistor one = resistor(std::move(id), ohm);
  one.certificate = Certificate{Resistance(certified_ohm), Resistance(expanded_ohm), 2};
  return one;
}

DecadeBox box(std::string id, std::vector<Decade> decades) {
  return {.id = std::move(id), .decades = std::move(decades)};
}

std::vector<double> valuesOf(const std::vector<Candidate>& candidates) {
  std::vector<double> values;
  for (const Candidate& candidate : candidates) values.push_back(candidate.value.base());
  return values;
}

std::vector<Candidate> candidates(const Stock& stock, CandidateRange range = {}, bool withOverdue = false) {
  auto found = candidatesOf(stock, range, today, withOverdue);
  EXPECT_TRUE(found) << found.error().text();
  return found ? *std::move(found) : std::vector<Candidate>();
}

const double infinite = std::numeric_limits<double>::infinity(),
             none = std::numeric_limits<double>::quiet_NaN();

}  // namespace

TEST(Resistor, IsReckonedWithAsItsCertificateSays) {
  EXPECT_EQ(valueOf(resistor("AF-0104", 59900)), Resistance(59900));
  EXPECT_EQ(toleranceOf(resistor("AF-0104", 59900)), 1e-4);
  const Resistor one = certified("AF-0104", 59900, 59906, 0.59906);
  EXPECT_EQ(valueOf(one), Resistance(59906));
  EXPECT_DIGITS(toleranceOf(one), 1e-5, 14);  // a quotient is rounded once, in the 16th digit
}

TEST(Resistor, IsOverdueFromTheDayAfterItWasDue) {
  EXPECT_FALSE(isOverdue(std::nullopt, today)) << "not watched";
  EXPECT_FALSE(isOverdue(today, today));
  EXPECT_TRUE(isOverdue(dateFromText("2026-11-24"), today));
  EXPECT_FALSE(isOverdue(dateFromText("2027-01-01"), today));
}

TEST(CheckStock, TakesWhatCanBe) {
  Resistor drifted = certified("AF-0105", 59900, 60500, 6);
  drifted.tolerance = 0;  // the certificate alone tells
  Resistor cheap = certified("AF-0106", 1000, 1150, 1);
  cheap.tolerance = 0.2;  // of E6: 15 % off is within it
  EXPECT_TRUE(checkStock(
      {.resistors = {resistor("AF-0104", 59900), drifted, cheap, resistor("least", leastShunt.base()),
                     resistor("greatest", greatestShunt.base())},
       .boxes = {box("AF-D1", {{Resistance(10000), 10}, {Resistance(0.1), 10}})},
       .series = {{}}}));
  EXPECT_TRUE(checkStock(*noStock()));
  EXPECT_EQ(noStock(), noStock());
}

TEST(CheckStock, RefusesResistorsThatCannotBe) {
  const auto changed = [](auto change) {
    Resistor one = certified("AF-0104", 59900, 59906, 0.6);
    change(one);
    return one;
  };
  const std::vector<std::pair<const char*, Resistor>> wrong = {
      {"0 ohm", changed([](Resistor& r) { r.nominal = Resistance(0); })},
      {"1e12 ohm", changed([](Resistor& r) { r.nominal = Resistance(1e12); })},
      {"below zero", changed([](Resistor& r) { r.nominal = Resistance(-350); })},
      {"no number", changed([](Resistor& r) { r.nominal = Resistance(none); })},
      {"infinite", changed([](Resistor& r) { r.nominal = Resistance(infinite); })},
      {"tolerance below zero", changed([](Resistor& r) { r.tolerance = -1e-4; })},
      {"tolerance above half", changed([](Resistor& r) { r.tolerance = 0.51; })},
      {"tolerance no number", changed([](Resistor& r) { r.tolerance = none; })},
      {"no tolerance at all", changed([](Resistor& r) { r.tolerance = 0, r.certificate.reset(); })},
      {"certificate in kilo-ohm", changed([](Resistor& r) { r.certificate->value = Resistance(59.906); })},
      {"certificate far", changed([](Resistor& r) { r.certificate->value = Resistance(69900); })},
      {"certificate of 0", changed([](Resistor& r) { r.certificate->value = Resistance(0); })},
      {"no U", changed([](Resistor& r) { r.certificate->expanded = Resistance(0); })},
      {"U no number", changed([](Resistor& r) { r.certificate->expanded = Resistance(none); })},
      {"U of the whole", changed([](Resistor& r) { r.certificate->expanded = Resistance(59906); })},
      {"k of 0", changed([](Resistor& r) { r.certificate->coverageFactor = 0; })},
      {"k no number", changed([](Resistor& r) { r.certificate->coverageFactor = none; })},
      {"no such day", changed([](Resistor& r) {
         r.due = Date(std::chrono::year(2026), std::chrono::month(2), std::chrono::day(30));
       })},
      {"no power", changed([](Resistor& r) { r.rating = Power(0); })},
      {"infinite power", changed([](Resistor& r) { r.rating = Power(infinite); })},
      {"space in front", changed([](Resistor& r) { r.id = " AF-0104"; })},
      {"line break", changed([](Resistor& r) { r.id = "AF\n0104"; })},
      {"long id", changed([](Resistor& r) { r.id = std::string(100, 'A'); })},
      {"break in the note", changed([](Resistor& r) { r.note = "one\ntwo"; })},
      {"novel in the note", changed([](Resistor& r) { r.note = std::string(5000, 'a'); })},
  };
  for (const auto& [why, one] : wrong) {
    const auto checked = checkResistor(one);
    ASSERT_FALSE(checked) << why;
    EXPECT_EQ(checked.error().where, one.id) << why;
    EXPECT_FALSE(checked.error().what.empty() || checked.error().mend.empty()) << why;
  }
  EXPECT_FALSE(checkResistor(resistor("", 350)));
}

TEST(CheckStock, RefusesBoxesAndRangesThatCannotBe) {
  const Decade tenK{Resistance(10000), 10}, oneK{Resistance(1000), 10};
  EXPECT_TRUE(checkBox(box("AF-D1", {tenK, oneK})));
  EXPECT_FALSE(checkBox(box("AF-D1", {}))) << "no dials";
  EXPECT_FALSE(checkBox(box("AF-D1", {oneK, tenK}))) << "rising";
  EXPECT_FALSE(checkBox(box("AF-D1", {tenK, tenK}))) << "alike";
  EXPECT_FALSE(checkBox(box("AF-D1", {{Resistance(0), 10}})));
  EXPECT_FALSE(checkBox(box("AF-D1", {{Resistance(-10), 10}})));
  EXPECT_FALSE(checkBox(box("AF-D1", {{Resistance(none), 10}})));
  EXPECT_FALSE(checkBox(box("AF-D1", {{Resistance(1.0000001), 10}}))) << "finer than a micro-ohm";
  EXPECT_FALSE(checkBox(box("AF-D1", {{Resistance(10), 0}})));
  EXPECT_FALSE(checkBox(box("AF-D1", {{Resistance(10), 1000}})));
  EXPECT_FALSE(checkBox(box("AF-D1", {{Resistance(2e9), 10}}))) << "20 GΩ";
  EXPECT_FALSE(checkBox(box("AF-D1", {{Resistance(0.001), 10}}))) << "0.01 Ω at most";
  DecadeBox wrong = box("AF-D1", {tenK});
  wrong.residual = Resistance(-0.1);
  EXPECT_FALSE(checkBox(wrong));
  wrong = box("AF-D1", {tenK});
  wrong.tolerance = 0;
  EXPECT_FALSE(checkBox(wrong));
  EXPECT_EQ(checkBox(wrong).error().where, "AF-D1");

  EXPECT_TRUE(checkSeriesRange({ESeries::E96, Resistance(1e4), Resistance(1e6), 1e-3}));
  EXPECT_FALSE(checkSeriesRange({ESeries::E96, Resistance(1e6), Resistance(1e4), 1e-3}));
  EXPECT_FALSE(checkSeriesRange({ESeries::E96, Resistance(0), Resistance(1e4), 1e-3}));
  EXPECT_FALSE(checkSeriesRange({ESeries::E96, Resistance(1e4), Resistance(1e12), 1e-3}));
  EXPECT_FALSE(checkSeriesRange({ESeries::E96, Resistance(1e4), Resistance(1e6), 0}));
  EXPECT_EQ(checkSeriesRange({ESeries::E96, Resistance(1e4), Resistance(1e6), 0}).error().where, "E96");
}

TEST(CheckStock, IdsAreGivenAndUniqueAmongResistorsAndBoxes) {
  Stock stock{.resistors = {resistor("AF-0104", 59900), resistor("AF-0104", 350)}};
  EXPECT_EQ(checkStock(stock).error().where, "AF-0104");
  stock.resistors[1].id = "AF-0105";
  EXPECT_TRUE(checkStock(stock));
  stock.boxes = {box("AF-0105", {{Resistance(1000), 10}})};
  EXPECT_EQ(checkStock(stock).error().where, "AF-0105");
  stock.boxes[0].id = "";
  EXPECT_EQ(checkStock(stock).error().where, "decade box 1");
}

TEST(Stock, FindsById) {
  const Stock stock{.resistors = {resistor("AF-0104", 59900), resistor("AF-0105", 350)},
                    .boxes = {box("AF-D1", {{Resistance(1000), 10}})}};
  EXPECT_EQ(findResistor(stock, "AF-0105"), &stock.resistors[1]);
  EXPECT_EQ(findResistor(stock, "AF-D1"), nullptr);
  EXPECT_EQ(findBox(stock, "AF-D1"), &stock.boxes[0]);
  EXPECT_EQ(findBox(stock, ""), nullptr);
}

TEST(Candidates, RiseAndTheTighterOfTwoEqualComesFirst) {
  Resistor loose = resistor("AF-0200", 59900);
  loose.tolerance = 0.01;
  const auto found =
      candidates({.resistors = {resistor("AF-0300", 174650), loose, resistor("AF-0100", 59900)},
                  .series = {{ESeries::E3, Resistance(1e5), Resistance(3e5), 0.4}}});
  // E3 between 100k and 300k: 100k and 220k.
  EXPECT_EQ(valuesOf(found), (std::vector<double>{59900, 59900, 100000, 174650, 220000}));
  EXPECT_EQ(found[0].part, "AF-0100");
  EXPECT_EQ(found[1].part, "AF-0200");
  EXPECT_EQ(found[2],
            (Candidate{.value = Resistance(100000), .tolerance = 0.4, .name = "100k of E3", .once = false}));
}

TEST(Candidates, CarryWhatIsKnownOfTheResistor) {
  Resistor one = certified("AF-0104", 59900, 59906, 5.9906);
  one.due = dateFromText("2027-03-01");
  one.rating = Power(0.25);
  one.fittedIn = "Amplifier 2";
  const auto found = candidates({.resistors = {one}});
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].value, Resistance(59906));
  EXPECT_DIGITS(found[0].tolerance, 1e-4, 14);  // a quotient is rounded once, in the 16th digit
  EXPECT_EQ(found[0].part, "AF-0104");
  EXPECT_EQ(found[0].name, "AF-0104 in Amplifier 2");
  EXPECT_EQ(found[0].due, one.due);
  EXPECT_EQ(found[0].rating, one.rating);
  EXPECT_TRUE(found[0].once);
}

TEST(Candidates, OverduePartsAreLeftOutUnlessAskedFor) {
  Resistor late = resistor("AF-0104", 59900);
  late.due = dateFromText("2026-11-24");
  DecadeBox lateBox = box("AF-D1", {{Resistance(1000), 2}});
  lateBox.due = late.due;
  const Stock stock{.resistors = {late, resistor("AF-0105", 350)}, .boxes = {lateBox}};
  EXPECT_EQ(valuesOf(candidates(stock)), (std::vector<double>{350}));
  EXPECT_EQ(valuesOf(candidates(stock, {}, true)), (std::vector<double>{350, 1000, 2000, 59900}));
}

TEST(Candidates, OfABoxAreAllItsSettingsOnce) {
  // By hand: two dials of 0..10 times 10 and 1 ohm reach 1 to 110 ohm; 10 to 100 can be set in two ways.
  const auto found = candidates({.boxes = {box("AF-D1", {{Resistance(10), 10}, {Resistance(1), 10}})}});
  ASSERT_EQ(found.size(), 110u);
  for (std::size_t k = 0; k < found.size(); ++k) EXPECT_EQ(found[k].value.base(), static_cast<double>(k + 1));
  EXPECT_EQ(found[58].name, "box AF-D1 at 59 Ω");
  EXPECT_EQ(found[58].part, "AF-D1");
  EXPECT_TRUE(found[58].once);
  EXPECT_EQ(found[58].tolerance, 1e-3);
}

TEST(Candidates, OfABoxAreTheSumsOfItsDials) {
  // Against every combination of dials that are no decades, one by one.
  const DecadeBox odd = box("AF-D2", {{Resistance(700), 3}, {Resistance(300), 4}, {Resistance(0.1), 9}});
  std::vector<double> expected;
  for (int tenths = 0; tenths <= 9; ++tenths)
    for (int threes = 0; threes <= 4; ++threes)
      for (int sevens = 0; sevens <= 3; ++sevens) {
        const double sum = (7000 * sevens + 3000 * threes + tenths) / 10.0;
        if (sum >= 600 && sum <= 2100.3) expected.push_back(sum);
      }
  std::sort(expected.begin(), expected.end());
  expected.erase(std::unique(expected.begin(), expected.end()), expected.end());
  EXPECT_EQ(valuesOf(candidates({.boxes = {odd}}, {Resistance(600), Resistance(2100.3)})), expected)
      << "both sides round the same decimal once";
}

TEST(Candidates, OfABoxHaveItsResidualInThem) {
  DecadeBox one = box("AF-D1", {{Resistance(1000), 3}});
  one.residual = Resistance(0.05);
  const auto found = candidates({.boxes = {one}}, {Resistance(1), Resistance(3000)});
  EXPECT_EQ(valuesOf(found), (std::vector<double>{1000.05, 2000.05})) << "3000.05 is beyond the range";
  EXPECT_EQ(found[0].name, "box AF-D1 at 1 kΩ") << "what is set";
}

TEST(Candidates, AreNeverMoreThanCanBeSearched) {
  // Seven dials of ten: settings up to 11,111,110 times 0.1 ohm.
  std::vector<Decade> dials;
  for (double step = 1e5; step > 0.05; step /= 10) dials.push_back({Resistance(step), 10});
  const Stock stock{.boxes = {box("AF-D7", dials)}};
  const auto all = candidatesOf(stock, {}, today, false);
  ASSERT_FALSE(all);
  EXPECT_EQ(all.error().where, "AF-D7");
  EXPECT_THAT(all.error().what, testing::HasSubstr("200000"));
  // From 59 kΩ to 61 kΩ in steps of 0.1 Ω, both ends included.
  EXPECT_EQ(candidates(stock, {Resistance(59000), Resistance(61000)}).size(), 20001u);
}

TEST(Candidates, RangesOfASeriesThatOverlapNameAValueOnce) {
  const SeriesRange low{ESeries::E24, Resistance(10000), Resistance(20000), 0.05};
  const SeriesRange high{ESeries::E24, Resistance(15000), Resistance(30000), 0.05};
  // E24 from 10k to 30k: 10 11 12 13 15 16 18 20 22 24 27 30.
  EXPECT_EQ(candidates({.series = {low, high}}).size(), 12u);
  EXPECT_EQ(candidates({.series = {{ESeries::E192, Resistance(1e4), Resistance(1e7), 0.005}}}).size(),
            3u * 192 + 1);
}

TEST(Candidates, ABadStockHasNone) {
  EXPECT_EQ(candidatesOf({.resistors = {resistor("AF-0104", 0)}}, {}, today, false).error().where, "AF-0104");
}

TEST(LetterCode, HasTheLetterInThePlaceOfTheMark) {
  // IEC 60062: R, k, M, G stand for the decimal mark ("4R7", "59k0", "2M21"). The same literals are read back
  // in tests/core/units/notation_test.cpp.
  const std::vector<std::tuple<double, int, std::string>> codes = {
      {59000, 3, "59k0"}, {590, 3, "590R"}, {5.9, 3, "5R90"},   {0.47, 2, "R47"},    {0.047, 2, "R047"},
      {4.7, 2, "4R7"},    {47, 2, "47R"},   {470e3, 2, "470k"}, {2.21e6, 3, "2M21"}, {1e9, 2, "1G0"},
      {1000, 3, "1k00"},  {1000, 2, "1k0"}, {100e3, 3, "100k"}, {1e10, 2, "10G"},    {999.9, 3, "1k00"}};
  for (const auto& [ohm, digits, code] : codes) EXPECT_EQ(letterCode(Resistance(ohm), digits), code);
}

TEST(ShareText, NeedsItsSign) {
  EXPECT_EQ(*shareFromText("0.01 %"), 0.0001);
  EXPECT_EQ(*shareFromText("±0,1%"), 0.001);
  EXPECT_EQ(*shareFromText(" 50 ppm "), 50e-6);
  EXPECT_EQ(*shareFromText("2.5ppm"), 2.5e-6);
  for (const char* wrong : {"", "0.01", "%", "ppm", "0.01 %%", "x %", "1 ohm", "1 % of it", "±"})
    EXPECT_FALSE(shareFromText(wrong)) << wrong;
}

TEST(DecadesText, IsPositionsTimesStep) {
  const std::vector<Decade> dials = {{Resistance(10000), 10}, {Resistance(1000), 9}, {Resistance(0.1), 11}};
  EXPECT_EQ(decadesText(dials), "10x10k 9x1k 11x0.1");
  EXPECT_EQ(*decadesFromText("10x10k 9x1k 11x0.1"), dials);
  EXPECT_EQ(*decadesFromText(" 10×10kΩ  9*1000 11xR1 "), dials);
  for (const char* wrong : {"", " ", "10", "x10", "10x", "ax10k", "10x10k,10x1k", "-1x10", "10x5V",
                            "10 x 10k", "99999999999x10", "1.5x10"})
    EXPECT_FALSE(decadesFromText(wrong)) << wrong;
}
