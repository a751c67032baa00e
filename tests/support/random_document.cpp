// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/random_document.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <limits>
#include <random>
#include <string>
#include <utility>

#include "core/circuit/hookup.h"
#include "core/units/date.h"

namespace support {
namespace {

using namespace core;

class Generator {
 public:
  Generator(std::uint64_t seed, Numbers numbers) : m_random(seed), m_numbers(numbers) {}

  Document document();

 private:
  // Not the standard library's distributions: their results differ between libraries.
  std::size_t below(std::size_t bound) { return m_random() % bound; }
  bool oneIn(std::size_t chances) { return below(chances) == 0; }
  double anyFinite();
  double within(double low, double high);
  std::string text();
  std::string name(std::size_t index) { return text() + std::to_string(index); }

  std::string line();
  Lead lead();
  Leak leak();
  Gauge gauge();
  std::vector<LeadPair> pairs();
  Hookup hookup();
  Bridge bridge();
  Balance balance();
  Instrument instrument();
  Acquisition acquisition();
  PinName pinName() { return {text(), text()}; }
  Wiring wiring();
  std::optional<Date> date();
  std::string time();
  std::string fingerprint() { return std::string(64, "0123456789abcdef"[below(16)]); }
  Identity identity();
  Ambient ambient();
  std::vector<Remark> remarks();
  SignOff signOff();
  std::vector<Revision> history();
  Part part();
  Resistor resistor(std::size_t index);
  DecadeBox box(std::size_t index);
  Stock stock();
  OhmPoint ohmPoint();
  std::vector<OhmReading> ohmReadings();
  std::vector<Shunt> shunts();
  Step step(std::size_t shunts);
  Limits limits();
  Decision decision();
  Input input(std::size_t shunts);
  Uncertainty uncertainty();
  Uncertainties uncertainties(std::size_t shunts);
  Setup setup();
  std::optional<Measured> reading();
  Check check(std::size_t index, const Setup& setup);
  Channel channel(std::size_t index);

  std::mt19937_64 m_random;
  Numbers m_numbers;
};

double Generator::anyFinite() {
  using Limits = std::numeric_limits<double>;
  constexpr std::array<double, 8> corners = {0,   Limits::max(), Limits::lowest(), Limits::denorm_min(),
                                             0.1, 1e22,          1e15 + 0.5,       Limits::min()};
  if (oneIn(4)) return corners[below(corners.size())];
  for (;;) {
    const auto value = std::bit_cast<double>(m_random());
    if (std::isfinite(value)) return value;
  }
}

double Generator::within(double low, double high) {
  if (m_numbers == Numbers::AnyFinite) return anyFinite();
  const double share = static_cast<double>(m_random() >> 11) * 0x1p-53;
  if (oneIn(2)) return low + (high - low) * std::round(100 * share) / 100;
  return low + (high - low) * share;
}

std::string Generator::text() {
  static const std::array<std::string, 16> pieces = {
      "TP-",      "spar cap ", "350 Ω", "µε",   "\"", "\\", "\n",        "\t", std::string(1, '\0'),
      "\x1F\x7F", "<b>&amp;",  "%2",    "=1+1", "翼", "Ä",  "\U0001F6E9"};
  std::string result;
  for (std::size_t left = below(4); left > 0; --left) result += pieces[below(pieces.size())];
  return result;
}

/// Text as it may stand in a stock: without line breaks and the like.
std::string Generator::line() {
  std::string result = text();
  std::erase_if(result, [](unsigned char c) { return c < 0x20 || c == 0x7F; });
  return result;
}

Lead Generator::lead() {
  if (oneIn(4)) return Resistance(0);
  if (oneIn(2)) return Resistance(within(0.01, 20));
  return CopperWire{Length(within(0.5, 200)), Area(within(0.05e-6, 1e-6)), Temperature(within(-40, 60))};
}

Leak Generator::leak() {
  Leak leak;
  if (oneIn(2)) return leak;
  if (oneIn(2)) leak.across = Resistance(within(1e6, 1e9));
  if (oneIn(2)) leak.toStructure = Resistance(within(1e6, 1e9));
  if (oneIn(2)) leak.place = within(0, 1);
  return leak;
}

Gauge Generator::gauge() {
  Gauge gauge;
  gauge.nominal = Resistance(within(120, 1000));
  gauge.factor = within(1.9, 2.2);
  gauge.poissonRatio = within(0.2, 0.4);
  gauge.factorCoefficient = within(-2e-4, 2e-4);
  gauge.factorAt = Temperature(within(20, 24));
  gauge.installed = Temperature(within(-40, 80));
  if (oneIn(2)) gauge.grid.area = Area(within(1e-6, 1e-4));
  gauge.grid.heatSink = static_cast<HeatSink>(below(heatSinkCount));
  gauge.grid.demand = static_cast<HeatDemand>(below(heatDemandCount));
  return gauge;
}

/// Up to three, none twice.
std::vector<LeadPair> Generator::pairs() {
  std::vector<LeadPair> pairs;
  for (std::size_t left = below(4); left > 0; --left) {
    const auto a = below(leadRoleCount), b = below(leadRoleCount);
    const LeadPair pair{static_cast<LeadRole>(a), static_cast<LeadRole>(b)};
    if (a != b && std::none_of(pairs.begin(), pairs.end(),
                               [&](const LeadPair& other) { return samePair(pair, other); }))
      pairs.push_back(pair);
  }
  return pairs;
}

Hookup Generator::hookup() {
  Hookup hookup{oneIn(4), oneIn(4), oneIn(4)};
  for (bool& broken : hookup.broken) broken = oneIn(8);
  hookup.exchanged = pairs();
  hookup.touching = pairs();
  return hookup;
}

Bridge Generator::bridge() {
  Bridge bridge;
  bridge.type = static_cast<BridgeType>(below(bridgeTypeCount));
  bridge.gauge = gauge();
  bridge.rating = {Output(within(1e-3, 3e-3)), within(1, 500), text()};
  for (Resistance& arm : bridge.arms) arm = Resistance(within(119, 1001));
  bridge.sixWire = oneIn(2);
  for (Lead& one : bridge.leads) one = lead();
  bridge.leadWarming = Warming(within(-20, 40));
  if (oneIn(2))
    for (Leak& one : bridge.leaks) one = leak();
  if (oneIn(2)) bridge.hookup = hookup();
  return bridge;
}

Balance Generator::balance() {
  return {static_cast<BalanceKind>(below(balanceKindCount)), Resistance(within(5e3, 50e3)),
          Resistance(within(50e3, 500e3)), within(0, 1)};
}

Instrument Generator::instrument() {
  Instrument instrument;
  instrument.unit = static_cast<ReadingUnit>(below(readingUnitCount));
  instrument.gaugeFactor = within(1.9, 2.2);
  instrument.bridgeFactor = within(1, 4);
  instrument.unitsPerMillivoltPerVolt = within(0.1, 100);
  instrument.scaledUnit = text();
  instrument.excitation = Voltage(within(1, 10));
  if (oneIn(2)) instrument.range = Output(within(1e-3, 100e-3));
  if (oneIn(3)) instrument.inputResistance = Resistance(within(1e6, 1e9));
  if (oneIn(3)) instrument.current = {Current(within(1e-3, 20e-3)), Resistance(within(120, 1000))};
  instrument.ratiometric = oneIn(2);
  instrument.linearisation = static_cast<Linearisation>(below(linearisationCount));
  instrument.balance = balance();
  instrument.grounding = static_cast<Grounding>(below(groundingCount));
  return instrument;
}

Acquisition Generator::acquisition() {
  Acquisition acquisition;
  if (oneIn(2)) acquisition.sampleRate = Frequency(within(1, 10e3));
  acquisition.filter = {static_cast<FilterKind>(below(filterKindCount)), static_cast<unsigned>(below(10)),
                        Frequency(within(1, 1000)), Duration(within(0.01, 1))};
  if (oneIn(3)) acquisition.mains.reset();
  if (oneIn(3)) acquisition.mains = Frequency(within(16, 400));
  acquisition.settledTo = within(1e-6, 0.1);
  return acquisition;
}

Wiring Generator::wiring() {
  Wiring wiring;
  for (std::size_t left = below(6); left > 0; --left) {
    Pin pin{pinName(), {}};
    if (oneIn(2)) pin.use = static_cast<Node>(below(nodeCount));
    if (oneIn(3)) pin.use = ResistorEnd{text(), static_cast<std::uint8_t>(1 + below(2))};
    wiring.pins.push_back(std::move(pin));
  }
  return wiring;
}

std::optional<Date> Generator::date() {
  if (oneIn(2)) return std::nullopt;
  return Date(std::chrono::year(1900 + static_cast<int>(below(8100))),
              std::chrono::month(1 + static_cast<unsigned>(below(12))),
              std::chrono::day(1 + static_cast<unsigned>(below(28))));
}

std::string Generator::time() {
  return timeText(std::chrono::sys_days(date().value_or(std::chrono::year(2031) / 5 / 4)) +
                  std::chrono::seconds(below(86'400)));
}

Identity Generator::identity() {
  if (oneIn(3)) return {};
  return {text(), text(), text(), date()};
}

Ambient Generator::ambient() {
  Ambient ambient;
  if (oneIn(2)) ambient.air = Temperature(within(-20, 40));
  if (oneIn(2)) ambient.humidity = within(0, 1);
  return ambient;
}

/// Some are pinned to steps that are not there.
std::vector<Remark> Generator::remarks() {
  std::vector<Remark> list;
  for (std::size_t left = below(4); left > 0; --left) {
    list.push_back({{}, text(), time(), text(), oneIn(2)});
    if (oneIn(2)) list.back().step = below(12);
  }
  return list;
}

SignOff Generator::signOff() {
  SignOff signOff;
  for (std::size_t left = below(4); left > 0; --left)
    signOff.acts.push_back({static_cast<Stage>(below(stageCount)), text(), time(), text(), fingerprint()});
  return signOff;
}

std::vector<Revision> Generator::history() {
  std::vector<Revision> list;
  for (std::size_t left = below(4); left > 0; --left) {
    list.push_back({time(), text(), text(), {}, below(3), fingerprint(), fingerprint()});
    for (std::size_t lines = below(3); lines > 0; --lines) list.back().changes.push_back(text());
  }
  return list;
}

Part Generator::part() {
  if (oneIn(3)) return {};
  Part part{text(), date(), {}};
  if (oneIn(2)) part.rating = Power(within(0.1, 10));
  if (oneIn(2)) part.certificate = text();
  return part;
}

/// A document with a stock that cannot be would not open, so its numbers are plausible always.
Resistor Generator::resistor(std::size_t index) {
  const Numbers numbers = std::exchange(m_numbers, Numbers::Plausible);
  Resistor resistor{"R" + line() + std::to_string(index),
                    Resistance(within(100, 1e6)),
                    within(1e-5, 0.05),
                    {},
                    {},
                    {},
                    {},
                    {}};
  if (oneIn(2))
    resistor.certificate = {resistor.nominal * within(0.999, 1.001), resistor.nominal * within(1e-6, 1e-4),
                            within(1, 3), oneIn(2) ? line() : ""};
  resistor.due = date();
  if (oneIn(2)) resistor.rating = Power(within(0.1, 10));
  resistor.fittedIn = line();
  resistor.note = line();
  m_numbers = numbers;
  return resistor;
}

DecadeBox Generator::box(std::size_t index) {
  const Numbers numbers = std::exchange(m_numbers, Numbers::Plausible);
  DecadeBox box{"box" + line() + std::to_string(index),
                {},
                Resistance(within(0, 0.1)),
                within(1e-5, 0.05),
                date(),
                {},
                line()};
  double step = 1e5;
  for (std::size_t left = 1 + below(4); left > 0; --left, step /= 10)
    box.decades.push_back({Resistance(step), static_cast<unsigned>(1 + below(10))});
  if (oneIn(2)) box.rating = Power(within(0.1, 10));
  m_numbers = numbers;
  return box;
}

Stock Generator::stock() {
  Stock stock;
  if (oneIn(3)) return stock;
  for (std::size_t k = below(4); k > 0; --k) stock.resistors.push_back(resistor(k));
  for (std::size_t k = below(3); k > 0; --k) stock.boxes.push_back(box(k));
  for (std::size_t left = below(3); left > 0; --left)
    stock.series.push_back({static_cast<ESeries>(below(eSeriesCount)),
                            Resistance(static_cast<double>(100 + below(1000))),
                            Resistance(static_cast<double>(2000 + below(1000000))), 0.01});
  return stock;
}

OhmPoint Generator::ohmPoint() {
  if (oneIn(2)) return static_cast<Node>(below(nodeCount));
  return ResistorEnd{text(), static_cast<std::uint8_t>(1 + below(2))};
}

/// Each in a state of its own, since two between the same points in one state are refused.
std::vector<OhmReading> Generator::ohmReadings() {
  std::vector<OhmReading> list;
  for (std::size_t k = below(5); k > 0; --k) {
    list.push_back({{oneIn(3) ? "" : text(), k}, ohmPoint(), ohmPoint(), {}});
    if (!oneIn(3)) list.back().ohm = Resistance(within(0, 1e6));
  }
  return list;
}

std::vector<Shunt> Generator::shunts() {
  std::vector<Shunt> list;
  for (std::size_t k = below(5); k > 0; --k) {
    list.push_back({name(k), Resistance(within(10e3, 1e6)), static_cast<Node>(below(nodeCount)),
                    static_cast<Node>(below(nodeCount)), Resistance(within(0, 2)), Resistance(within(0, 0.5)),
                    part()});
    for (std::size_t left = below(3); left > 0; --left) list.back().jumpers.push_back({pinName(), pinName()});
  }
  return list;
}

Step Generator::step(std::size_t shuntCount) {
  Step step{text(), {}, Duration(within(0.1, 10)), Duration(within(0, 2))};
  for (std::size_t k = 0; k < shuntCount; ++k)
    if (oneIn(3)) step.closed.push_back(k);
  return step;
}

Limits Generator::limits() {
  Limits limits{within(0.001, 0.05), Reading(within(0, 5)), within(0.001, 0.01), within(0.001, 0.05),
                within(0.001, 0.01)};
  for (std::size_t k = 0; k < meritKindCount; ++k) {
    const auto kind = static_cast<MeritKind>(k);
    if (kind != MeritKind::ZeroReturn && oneIn(2)) limits.merits.emplace(kind, within(0.001, 0.05));
  }
  limits.linearityFrom = static_cast<ReferenceLine>(below(referenceLineCount));
  return limits;
}

Decision Generator::decision() {
  return {static_cast<DecisionRule>(below(decisionRuleCount)), within(0.9, 0.999), within(0, 2),
          within(0.6, 0.99), within(0.1, 1)};
}

/// Of any kind that the set-up can have, whether it plays a part or not.
Input Generator::input(std::size_t shuntCount) {
  const auto kind = static_cast<InputKind>(below(inputKindCount));
  switch (kind) {
    case InputKind::Arm:
    case InputKind::LeakAcross:
    case InputKind::LeakToStructure:
      return {kind, below(4)};
    case InputKind::Lead:
      return {kind, below(leadRoleCount)};
    case InputKind::Shunt:
    case InputKind::ShuntWires:
    case InputKind::ShuntContact:
      if (shuntCount == 0) return {InputKind::Gain, 0};
      return {kind, below(shuntCount)};
    case InputKind::Rounding:
      return {kind, below(2)};
    default:
      return {kind, 0};
  }
}

Uncertainty Generator::uncertainty() {
  Uncertainty uncertainty;
  uncertainty.statement = static_cast<Statement>(below(statementCount));
  uncertainty.relative = oneIn(2);
  uncertainty.amount = uncertainty.relative ? within(0, 0.05) : within(0, 1);
  uncertainty.coverageFactor = within(1, 3);
  uncertainty.distribution = static_cast<Distribution>(below(distributionCount));
  if (oneIn(3)) uncertainty.degreesOfFreedom = within(1, 100);
  if (oneIn(2)) uncertainty.group = text();
  return uncertainty;
}

Uncertainties Generator::uncertainties(std::size_t shuntCount) {
  Uncertainties uncertainties;
  for (std::size_t left = below(8); left > 0; --left)
    uncertainties.stated.insert_or_assign(input(shuntCount), uncertainty());
  for (std::size_t left = below(3); left > 0; --left)
    uncertainties.groups.insert_or_assign(text(), within(-1, 1));
  return uncertainties;
}

Setup Generator::setup() {
  Setup setup;
  setup.bridge = bridge();
  setup.instrument = instrument();
  setup.identity = identity();
  setup.acquisition = acquisition();
  setup.wiring = wiring();
  setup.shunts = shunts();
  for (std::size_t left = below(7); left > 0; --left) setup.sequence.push_back(step(setup.shunts.size()));
  setup.limits = limits();
  setup.decision = decision();
  setup.uncertainties = uncertainties(setup.shunts.size());
  return setup;
}

std::optional<Measured> Generator::reading() {
  if (oneIn(4)) return std::nullopt;
  Measured measured{Reading(within(-2000, 2000)), {}, {}, {}};
  if (oneIn(2)) measured.uncertainty = Reading(within(0, 1));
  if (oneIn(2)) measured.begin = Duration(within(0, 100));
  if (oneIn(2)) measured.end = Duration(within(100, 200));
  if (oneIn(3)) measured.note = text();
  return measured;
}

Check Generator::check(std::size_t index, const Setup& channelSetup) {
  Check check{name(index), oneIn(2) ? "2024-05-06" : "", text(), text(), {}, {}, {}};
  if (oneIn(3))
    check.recording =
        RecordingReference{text() + ".csv", m_random(), std::string(64, "0123456789abcdef"[below(16)]),
                           text(), oneIn(2) ? "" : "separator=semicolon decimal=comma"};
  if (oneIn(2)) check.closedWith = std::make_shared<const Setup>(oneIn(2) ? channelSetup : setup());
  const std::size_t steps = (check.closedWith ? *check.closedWith : channelSetup).sequence.size();
  for (std::size_t left = oneIn(3) ? below(steps + 1) : steps; left > 0; --left)
    check.readings.push_back(reading());
  double begin_s = -5;
  for (std::size_t left = below(4); left > 0; --left) {
    begin_s += static_cast<double>(below(50));
    check.otherLevels.push_back({Reading(within(-2000, 2000)), {}, Duration(begin_s), Duration(begin_s + 1)});
  }
  check.ambient = ambient();
  check.remarks = remarks();
  return check;
}

Channel Generator::channel(std::size_t index) {
  Channel channel{name(index), text(), setup(), {}};
  for (std::size_t k = below(4); k > 0; --k) channel.checks.push_back(check(k, channel.setup));
  channel.ohmReadings = ohmReadings();
  if (oneIn(2)) channel.recordingColumn = text();
  if (oneIn(2)) channel.group = text();
  return channel;
}

Document Generator::document() {
  Document document{text(), text(), text(), text(), text(), {}};
  for (std::size_t k = below(5); k > 0; --k)
    document.channels.push_back(std::make_shared<const Channel>(channel(k)));
  document.stock = std::make_shared<const Stock>(stock());
  document.signOff = signOff();
  document.history = history();
  return document;
}

}  // namespace

Document randomDocument(std::uint64_t seed, Numbers numbers) { return Generator(seed, numbers).document(); }

}  // namespace support
