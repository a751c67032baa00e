// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_writer.h"

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <functional>
#include <iterator>
#include <limits>
#include <sstream>
#include <string>

#include "core/document/edits.h"
#include "core/document/json_reader.h"
#include "tests/support/random_document.h"

using namespace core;
using support::Numbers;
using support::randomDocument;

namespace json_writer_test {

std::string fileText(const std::string& name) {
  std::ifstream file(std::string(SHUNTWRIGHT_TESTS_DIR) + "/data/" + name, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

Document newest() { return *readDocument(fileText("version7.bridgecal")); }

/// Same content; the documents hold their channels by pointer, so == compares identity.
bool same(const Document& a, const Document& b) {
  if (a.channels.size() != b.channels.size()) return false;
  for (std::size_t k = 0; k < a.channels.size(); ++k) {
    const Channel &x = *a.channels[k], &y = *b.channels[k];
    if (x.name != y.name || x.note != y.note || x.setup != y.setup || x.checks.size() != y.checks.size() ||
        x.ohmReadings != y.ohmReadings || x.recordingColumn != y.recordingColumn || x.group != y.group)
      return false;
    for (std::size_t c = 0; c < x.checks.size(); ++c) {
      Check p = x.checks[c], q = y.checks[c];
      if (!p.closedWith != !q.closedWith || (p.closedWith && *p.closedWith != *q.closedWith)) return false;
      p.closedWith = q.closedWith;
      if (p != q) return false;
    }
  }
  return a.title == b.title && a.site == b.site && a.article == b.article && a.person == b.person &&
         a.note == b.note && *a.stock == *b.stock && a.signOff == b.signOff && a.history == b.history;
}

std::vector<std::string> linesOf(const std::string& text) {
  std::istringstream stream(text);
  std::vector<std::string> lines;
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

/// The document with its first channel changed.
Document changed(const std::function<void(Channel&)>& change) {
  Document document = newest();
  Channel channel = *document.channels[0];
  change(channel);
  document.channels[0] = std::make_shared<const Channel>(std::move(channel));
  return document;
}

TEST(WriteDocument, WritesTheNewestVersionAsItWas) {
  const auto text = writeDocument(newest());
  ASSERT_TRUE(text) << text.error().text();
  EXPECT_EQ(*text, fileText("version7.bridgecal"));
}

TEST(WriteDocument, SavesOlderVersionsAsTheNewestWithTheSameContent) {
  for (const char* name : {"version1.bridgecal", "version2.bridgecal", "version3.bridgecal",
                           "version4.bridgecal", "version5.bridgecal", "version6.bridgecal"}) {
    const Document older = *readDocument(fileText(name));
    const auto text = writeDocument(older);
    ASSERT_TRUE(text) << text.error().text();
    EXPECT_NE(text->find("\"version\": 7,"), text->npos);
    const auto back = readDocument(*text);
    ASSERT_TRUE(back) << back.error().text();
    EXPECT_TRUE(same(older, *back)) << name;
  }
}

TEST(WriteDocument, ComesBackTheSameFromAnyDocument) {
  std::size_t channels = 0;
  for (std::uint64_t seed = 0; seed < 2000; ++seed) {
    const Document document = randomDocument(seed, seed % 2 == 0 ? Numbers::Plausible : Numbers::AnyFinite);
    channels += document.channels.size();
    const auto first = writeDocument(document);
    ASSERT_TRUE(first) << seed << ": " << first.error().text();
    const auto back = readDocument(*first);
    ASSERT_TRUE(back) << seed << ": " << back.error().text();
    ASSERT_TRUE(same(document, *back)) << seed;
    ASSERT_EQ(*writeDocument(*back), *first) << seed;
  }
  EXPECT_GT(channels, 2000u);
}

TEST(WriteDocument, ChangesOneLineForOneStep) {
  const std::vector<std::string> before = linesOf(*writeDocument(newest()));
  const Document next = changed([](Channel& c) { c.setup.sequence[1].hold = 3.0_s; });
  const std::vector<std::string> after = linesOf(*writeDocument(next));
  ASSERT_EQ(before.size(), after.size());
  std::vector<std::string> differing;
  for (std::size_t k = 0; k < before.size(); ++k)
    if (before[k] != after[k]) differing.push_back(after[k]);
  ASSERT_EQ(differing.size(), 2u);
  EXPECT_EQ(differing[0],
            "          {\"label\": \"compression\", \"closed\": [\"R1 on arm 1\"], \"hold_s\": 3, "
            "\"settle_s\": 0.75},");
  EXPECT_TRUE(differing[1].starts_with("  \"fingerprint\": ")) << differing[1];
}

TEST(WriteDocument, WritesMinusZeroAsZero) {
  const auto text = writeDocument(changed([](Channel& c) { c.setup.limits.least = Reading(-0.0); }));
  ASSERT_TRUE(text);
  EXPECT_EQ(text->find("-0,"), text->npos);
}

TEST(WriteDocument, KeepsThePlaceOfALeakWithoutAResistance) {
  const auto leaksOf = [](const Leak& leak) {
    const Document document = changed([&](Channel& c) { c.setup.bridge.leaks = {Leak{}, leak, {}, {}}; });
    return readDocument(*writeDocument(document))->channels[0]->setup.bridge.leaks;
  };
  EXPECT_EQ(leaksOf({{}, {}, 0.125})[1], (Leak{{}, {}, 0.125}));
  EXPECT_EQ(leaksOf({}), (std::array<Leak, 4>{}));
}

TEST(WriteDocument, WritesOfAHookupOnlyWhatIsNotAsTheTemplateSays) {
  const auto textOf = [](const Hookup& hookup) {
    return *writeDocument(changed([&](Channel& c) { c.setup.bridge.hookup = hookup; }));
  };
  const auto hookupLine = [](const std::string& text) {
    const std::size_t key = text.find("\"hookup\"");
    return key < text.find("\"instrument\"") ? text.substr(key, text.find('\n', key) - key) : "";
  };
  EXPECT_EQ(hookupLine(textOf({})), "");
  EXPECT_EQ(hookupLine(textOf({.excitationReversed = true})), "\"hookup\": {\"excitation_reversed\": true}");
  Hookup all{.signalReversed = true, .excitationReversed = true, .gaugesReversed = true};
  all.broken.fill(true);
  all.exchanged = {{LeadRole::SignalMinus, LeadRole::ExcitationPlus}};
  all.touching = {{LeadRole::Return, LeadRole::SensePlus}};
  EXPECT_EQ(
      hookupLine(textOf(all)),
      "\"hookup\": {\"signal_reversed\": true, \"excitation_reversed\": true, \"gauges_reversed\": true, "
      "\"broken\": [\"P+\", \"P-\", \"S+\", \"S-\", \"sense+\", \"sense-\", \"return\"], "
      "\"exchanged\": [[\"S-\", \"P+\"]], \"touching\": [[\"return\", \"sense+\"]]}");
}

TEST(WriteDocument, KeepsStatementsThatPlayNoPart) {
  const Input sense{InputKind::Lead, static_cast<std::size_t>(LeadRole::SensePlus)};
  const Document document = changed([&](Channel& c) { c.setup.uncertainties.stated[sense].amount = 0.5; });
  const auto back = readDocument(*writeDocument(document));
  ASSERT_TRUE(back) << back.error().text();
  EXPECT_EQ(back->channels[0]->setup.uncertainties.stated.at(sense).amount, 0.5);
}

TEST(WriteDocument, WritesTheLimitsOfFiguresInTheirOrderAndOnlyThoseSet) {
  const auto text = writeDocument(changed([](Channel& c) {
    c.setup.limits.merits = {{MeritKind::SpanRatio, 0.01}, {MeritKind::Nonlinearity, 0.5}};
    c.setup.limits.linearityFrom = ReferenceLine::ZeroBasedMinimax;
  }));
  ASSERT_TRUE(text) << text.error().text();
  EXPECT_NE(text->find("\"linearity_from\": \"zero_based_minimax\", "
                       "\"merits\": {\"nonlinearity\": 0.5, \"span_ratio\": 0.01}},"),
            text->npos);
}

TEST(WriteDocument, ChangesOneLineForOneStatement) {
  const std::vector<std::string> before = linesOf(*writeDocument(newest()));
  const Document next = changed([](Channel& c) {
    c.setup.uncertainties.stated[{InputKind::GaugeFactor, 0}].amount = 0.005;
  });
  const std::vector<std::string> after = linesOf(*writeDocument(next));
  ASSERT_EQ(before.size(), after.size());
  std::size_t differing = 0;
  for (std::size_t k = 0; k < before.size(); ++k) differing += before[k] != after[k];
  EXPECT_EQ(differing, 2u);  // and the fingerprint
}

TEST(WriteDocument, KeepsLeadsThatThePresentTemplateDoesNotUse) {
  const Document document = changed([](Channel& c) { c.setup.bridge.leads[4] = 0.75_ohm; });
  const auto back = readDocument(*writeDocument(document));
  ASSERT_TRUE(back) << back.error().text();
  EXPECT_EQ(back->channels[0]->setup.bridge.leads[4], Lead(0.75_ohm));
}

struct Place {
  const char* path;
  std::function<void(Channel&, double)> set;
};

const Place numbers[] = {
    {"setup.bridge.gauge.nominal_ohm",
     [](Channel& c, double x) { c.setup.bridge.gauge.nominal = Resistance(x); }},
    {"setup.bridge.gauge.factor", [](Channel& c, double x) { c.setup.bridge.gauge.factor = x; }},
    {"setup.bridge.gauge.poisson_ratio", [](Channel& c, double x) { c.setup.bridge.gauge.poissonRatio = x; }},
    {"setup.bridge.gauge.factor_coefficient_per_K",
     [](Channel& c, double x) { c.setup.bridge.gauge.factorCoefficient = x; }},
    {"setup.bridge.gauge.factor_at_degC",
     [](Channel& c, double x) { c.setup.bridge.gauge.factorAt = Temperature(x); }},
    {"setup.bridge.gauge.installed_degC",
     [](Channel& c, double x) { c.setup.bridge.gauge.installed = Temperature(x); }},
    {"setup.bridge.gauge.grid.area_m2",
     [](Channel& c, double x) { c.setup.bridge.gauge.grid.area = Area(x); }},
    {"setup.bridge.lead_warming_K", [](Channel& c, double x) { c.setup.bridge.leadWarming = Warming(x); }},
    {"setup.bridge.leaks[1].across_ohm",
     [](Channel& c, double x) { c.setup.bridge.leaks[1].across = Resistance(x); }},
    {"setup.bridge.leaks[2].to_structure_ohm",
     [](Channel& c, double x) { c.setup.bridge.leaks[2].toStructure = Resistance(x); }},
    {"setup.bridge.leaks[1].place", [](Channel& c, double x) { c.setup.bridge.leaks[1].place = x; }},
    {"setup.bridge.rating.rated_output_V_per_V",
     [](Channel& c, double x) { c.setup.bridge.rating.ratedOutput = Output(x); }},
    {"setup.bridge.rating.capacity", [](Channel& c, double x) { c.setup.bridge.rating.capacity = x; }},
    {"setup.bridge.arms_ohm[2]", [](Channel& c, double x) { c.setup.bridge.arms[2] = Resistance(x); }},
    {"setup.bridge.leads.P+.ohm", [](Channel& c, double x) { c.setup.bridge.leads[0] = Resistance(x); }},
    {"setup.bridge.leads.P-.ohm", [](Channel& c, double x) { c.setup.bridge.leads[1] = Resistance(x); }},
    {"setup.bridge.leads.P+.section_m2",
     [](Channel& c, double x) {
       c.setup.bridge.leads[0] = CopperWire{1.0_m, Area(x), {}};
     }},
    {"setup.instrument.gauge_factor", [](Channel& c, double x) { c.setup.instrument.gaugeFactor = x; }},
    {"setup.instrument.bridge_factor", [](Channel& c, double x) { c.setup.instrument.bridgeFactor = x; }},
    {"setup.instrument.units_per_mV_per_V",
     [](Channel& c, double x) { c.setup.instrument.unitsPerMillivoltPerVolt = x; }},
    {"setup.instrument.excitation_V",
     [](Channel& c, double x) { c.setup.instrument.excitation = Voltage(x); }},
    {"setup.instrument.input_resistance_ohm",
     [](Channel& c, double x) { c.setup.instrument.inputResistance = Resistance(x); }},
    {"setup.instrument.current_source.current_A",
     [](Channel& c, double x) {
       c.setup.instrument.current = {Current(x), 350.0_ohm};
     }},
    {"setup.instrument.current_source.nominal_ohm",
     [](Channel& c, double x) {
       c.setup.instrument.current = {10.0_mA, Resistance(x)};
     }},
    {"setup.instrument.balance.potentiometer_ohm",
     [](Channel& c, double x) { c.setup.instrument.balance.potentiometer = Resistance(x); }},
    {"setup.instrument.balance.limiting_ohm",
     [](Channel& c, double x) { c.setup.instrument.balance.limiting = Resistance(x); }},
    {"setup.instrument.balance.wiper", [](Channel& c, double x) { c.setup.instrument.balance.wiper = x; }},
    {"setup.shunts[1].ohm", [](Channel& c, double x) { c.setup.shunts[1].resistance = Resistance(x); }},
    {"setup.shunts[1].wires_ohm", [](Channel& c, double x) { c.setup.shunts[1].wires = Resistance(x); }},
    {"setup.shunts[1].contact_ohm", [](Channel& c, double x) { c.setup.shunts[1].contact = Resistance(x); }},
    {"setup.sequence[2].hold_s", [](Channel& c, double x) { c.setup.sequence[2].hold = Duration(x); }},
    {"setup.sequence[2].settle_s", [](Channel& c, double x) { c.setup.sequence[2].settle = Duration(x); }},
    {"setup.instrument.range_V_per_V", [](Channel& c, double x) { c.setup.instrument.range = Output(x); }},
    {"setup.acquisition.sample_rate_Hz",
     [](Channel& c, double x) { c.setup.acquisition.sampleRate = Frequency(x); }},
    {"setup.acquisition.filter.cutoff_Hz",
     [](Channel& c, double x) { c.setup.acquisition.filter.cutoff = Frequency(x); }},
    {"setup.acquisition.filter.window_s",
     [](Channel& c, double x) { c.setup.acquisition.filter.window = Duration(x); }},
    {"setup.acquisition.mains_Hz", [](Channel& c, double x) { c.setup.acquisition.mains = Frequency(x); }},
    {"setup.acquisition.settled_to", [](Channel& c, double x) { c.setup.acquisition.settledTo = x; }},
    {"setup.shunts[1].part.rating_W", [](Channel& c, double x) { c.setup.shunts[1].part.rating = Power(x); }},
    {"ohm_readings[1].ohm", [](Channel& c, double x) { c.ohmReadings[1].ohm = Resistance(x); }},
    {"setup.limits.relative", [](Channel& c, double x) { c.setup.limits.relative = x; }},
    {"setup.limits.least", [](Channel& c, double x) { c.setup.limits.least = Reading(x); }},
    {"setup.limits.zero_return", [](Channel& c, double x) { c.setup.limits.zeroReturn = x; }},
    {"setup.limits.change", [](Channel& c, double x) { c.setup.limits.change = x; }},
    {"setup.limits.zero_change", [](Channel& c, double x) { c.setup.limits.zeroChange = x; }},
    {"checks[0].ambient.air_degC", [](Channel& c, double x) { c.checks[0].ambient.air = Temperature(x); }},
    {"checks[1].ambient.humidity", [](Channel& c, double x) { c.checks[1].ambient.humidity = x; }},
    {"setup.limits.merits.hysteresis",
     [](Channel& c, double x) { c.setup.limits.merits[MeritKind::Hysteresis] = x; }},
    {"setup.decision.coverage", [](Channel& c, double x) { c.setup.decision.coverage = x; }},
    {"setup.decision.guard_factor", [](Channel& c, double x) { c.setup.decision.guardFactor = x; }},
    {"setup.decision.conformity", [](Channel& c, double x) { c.setup.decision.conformity = x; }},
    {"setup.decision.greatest_share", [](Channel& c, double x) { c.setup.decision.greatestShare = x; }},
    {"setup.uncertainties[0].amount",
     [](Channel& c, double x) {
       c.setup.uncertainties.stated[{InputKind::Arm, 0}].amount = x;
     }},
    {"setup.uncertainties[0].coverage_factor",
     [](Channel& c, double x) {
       c.setup.uncertainties.stated[{InputKind::Arm, 0}].coverageFactor = x;
     }},
    {"setup.uncertainties[0].degrees_of_freedom",
     [](Channel& c, double x) {
       c.setup.uncertainties.stated[{InputKind::Arm, 0}].degreesOfFreedom = x;
     }},
    {"setup.correlation_groups[0].coefficient",
     [](Channel& c, double x) { c.setup.uncertainties.groups["box 7"] = x; }},
    {"checks[0].readings[1].mean", [](Channel& c, double x) { c.checks[0].readings[1]->mean = Reading(x); }},
    {"checks[0].readings[0].uncertainty",
     [](Channel& c, double x) { c.checks[0].readings[0]->uncertainty = Reading(x); }},
    {"checks[0].readings[0].begin_s",
     [](Channel& c, double x) { c.checks[0].readings[0]->begin = Duration(x); }},
    {"checks[0].readings[0].end_s", [](Channel& c, double x) { c.checks[0].readings[0]->end = Duration(x); }},
    {"checks[0].closed_with.limits.relative",
     [](Channel& c, double x) {
       Setup setup = *c.checks[0].closedWith;
       setup.limits.relative = x;
       c.checks[0].closedWith = std::make_shared<const Setup>(setup);
     }},
};

TEST(WriteDocument, RefusesEachNumberThatIsNotFiniteAndNamesIt) {
  using Double = std::numeric_limits<double>;
  for (const Place& place : numbers) {
    for (const double bad : {Double::quiet_NaN(), Double::infinity(), -Double::infinity()}) {
      const auto text = writeDocument(changed([&](Channel& c) { place.set(c, bad); }));
      ASSERT_FALSE(text) << place.path;
      EXPECT_EQ(text.error().where, std::string("channels[0].") + place.path);
    }
    EXPECT_TRUE(writeDocument(changed([&](Channel& c) { place.set(c, 1.5); }))) << place.path;
  }
}

TEST(WriteDocument, RefusesTextThatIsNotUtf8AndNamesIt) {
  const std::string bad = "\xC3(";
  Document document = newest();
  document.site = bad;
  EXPECT_EQ(writeDocument(document).error().where, "site");
  const auto where = [&](const std::function<void(Channel&)>& change) {
    const auto text = writeDocument(changed(change));
    return text ? "taken" : text.error().where;
  };
  EXPECT_EQ(where([&](Channel& c) { c.name = bad; }), "channels[0].name");
  EXPECT_EQ(where([&](Channel& c) { c.setup.bridge.rating.loadUnit = bad; }),
            "channels[0].setup.bridge.rating.load_unit");
  EXPECT_EQ(where([&](Channel& c) { c.setup.sequence[0].label = bad; }),
            "channels[0].setup.sequence[0].label");
  EXPECT_EQ(where([&](Channel& c) {
              c.setup.uncertainties.stated[{InputKind::Arm, 0}].group = bad;
            }),
            "channels[0].setup.uncertainties[0].group");
  EXPECT_EQ(where([&](Channel& c) {
              c.setup.uncertainties.groups = {{bad, 1}};
            }),
            "channels[0].setup.correlation_groups[0].name");
  EXPECT_EQ(where([&](Channel& c) { c.setup.wiring.pins[1].name.pin = bad; }),
            "channels[0].setup.pins[1].pin");
  EXPECT_EQ(where([&](Channel& c) { c.setup.shunts[0].jumpers[1].to.connector = bad; }),
            "channels[0].setup.shunts[0].jumpers[1].to.connector");
  EXPECT_EQ(where([&](Channel& c) { c.setup.shunts[0].part.id = bad; }),
            "channels[0].setup.shunts[0].part.id");
  EXPECT_EQ(where([&](Channel& c) { c.checks[0].readings[1]->note = bad; }),
            "channels[0].checks[0].readings[1].note");
  EXPECT_EQ(where([&](Channel& c) { c.ohmReadings[0].state.shunt = bad; }),
            "channels[0].ohm_readings[0].shunt");
  EXPECT_EQ(where([&](Channel& c) {
              c.ohmReadings[1].from = ResistorEnd{bad, 1};
            }),
            "channels[0].ohm_readings[1].from");
  EXPECT_EQ(where([&](Channel& c) { c.checks[0].recording->path = bad; }),
            "channels[0].checks[0].recording.path");
  EXPECT_EQ(where([&](Channel& c) { c.group = bad; }), "channels[0].group");
  EXPECT_EQ(where([&](Channel& c) { c.setup.identity.serial = bad; }), "channels[0].setup.identity.serial");
  EXPECT_EQ(where([&](Channel& c) { c.setup.shunts[0].part.certificate = bad; }),
            "channels[0].setup.shunts[0].part.certificate");
  EXPECT_EQ(where([&](Channel& c) { c.checks[0].remarks[1].text = bad; }),
            "channels[0].checks[0].remarks[1].text");
  document = newest();
  document.signOff.acts[1].person = bad;
  EXPECT_EQ(writeDocument(document).error().where, "sign_off[1].person");
  document = newest();
  document.history[1].changes[0] = bad;
  EXPECT_EQ(writeDocument(document).error().where, "history[1].changes[0]");
}

TEST(WriteDocument, RefusesWhatWouldNotOpenAgain) {
  const auto refused = [](const std::function<void(Channel&)>& change) {
    return !writeDocument(changed(change));
  };
  EXPECT_TRUE(refused([](Channel& c) { c.name = "LC-1"; }));
  EXPECT_TRUE(refused([](Channel& c) { c.setup.shunts[1].name = c.setup.shunts[0].name; }));
  EXPECT_TRUE(refused([](Channel& c) { c.checks[1].name = c.checks[0].name; }));
  EXPECT_TRUE(refused([](Channel& c) { c.checks[1].readings.resize(4); }));
  EXPECT_TRUE(refused([](Channel& c) { c.checks[0].recording->sha256 = "none"; }));
  EXPECT_TRUE(refused([](Channel& c) { c.note = std::string(2'000'000, 'x'); }));
  EXPECT_TRUE(refused([](Channel& c) { c.setup.wiring.pins.resize(201); }));
  EXPECT_TRUE(refused([](Channel& c) { c.checks[0].remarks.resize(1001, c.checks[0].remarks[0]); }));
  EXPECT_TRUE(refused([](Channel& c) { c.checks[0].remarks[0].time = "yesterday"; }));
  EXPECT_TRUE(refused([](Channel& c) { c.checks[0].remarks[0].step = 1'000'000; }));
  EXPECT_FALSE(refused([](Channel& c) { c.checks[0].remarks[0].step = 40; }));  // the plan may have lost it
  EXPECT_TRUE(refused([](Channel& c) { c.ohmReadings.push_back(c.ohmReadings[0]); }));
  EXPECT_TRUE(refused([](Channel& c) { c.setup.acquisition.filter.order = 4'000'000'000; }));
  Document twice = newest();
  Stock stock = *twice.stock;
  stock.resistors.push_back(stock.resistors[0]);
  twice.stock = std::make_shared<const Stock>(stock);
  EXPECT_EQ(writeDocument(twice).error().where.substr(0, 5), "line ");
  Document reviewed = newest();
  reviewed.signOff.acts[0].fingerprint = "";
  EXPECT_FALSE(writeDocument(reviewed));
  reviewed = newest();
  reviewed.history.resize(10'001, reviewed.history[0]);
  EXPECT_FALSE(writeDocument(reviewed));
  reviewed = newest();
  reviewed.history[0].changes.resize(101);
  EXPECT_FALSE(writeDocument(reviewed));
  EXPECT_TRUE(refused([](Channel& c) { c.setup.limits.merits[MeritKind::ZeroReturn] = 0.005; }));
  EXPECT_FALSE(refused([](Channel& c) { c.setup.limits.merits[MeritKind::SpanRatio] = 2e6; }));
  const LeadPair pair{LeadRole::SignalMinus, LeadRole::ExcitationPlus}, turned{pair.b, pair.a};
  EXPECT_TRUE(refused([&](Channel& c) { c.setup.bridge.hookup.exchanged = {{pair.a, pair.a}}; }));
  EXPECT_TRUE(refused([&](Channel& c) { c.setup.bridge.hookup.exchanged.assign(101, pair); }));
  EXPECT_TRUE(refused([&](Channel& c) { c.setup.bridge.hookup.touching = {pair, turned}; }));
  EXPECT_FALSE(refused([&](Channel& c) { c.setup.bridge.hookup.exchanged = {pair, turned}; }));
  EXPECT_FALSE(refused([](Channel& c) { c.name = ""; }));
}

}  // namespace json_writer_test
