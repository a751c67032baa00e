// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/random_document.h"

#include <array>
#include <bit>
#include <cmath>
#include <limits>
#include <random>
#include <string>

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

  Lead lead();
  Bridge bridge();
  Instrument instrument();
  std::vector<Shunt> shunts();
  Step step(std::size_t shunts);
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

Lead Generator::lead() {
  if (oneIn(4)) return Resistance(0);
  if (oneIn(2)) return Resistance(within(0.01, 20));
  return CopperWire{Length(within(0.5, 200)), Area(within(0.05e-6, 1e-6)), Temperature(within(-40, 60))};
}

Bridge Generator::bridge() {
  Bridge bridge;
  bridge.type = static_cast<BridgeType>(below(bridgeTypeCount));
  bridge.gauge = {Resistance(within(120, 1000)), within(1.9, 2.2), within(0.2, 0.4)};
  bridge.rating = {Output(within(1e-3, 3e-3)), within(1, 500), text()};
  for (Resistance& arm : bridge.arms) arm = Resistance(within(119, 1001));
  bridge.sixWire = oneIn(2);
  for (Lead& one : bridge.leads) one = lead();
  return bridge;
}

Instrument Generator::instrument() {
  Instrument instrument;
  instrument.unit = static_cast<ReadingUnit>(below(readingUnitCount));
  instrument.gaugeFactor = within(1.9, 2.2);
  instrument.bridgeFactor = within(1, 4);
  instrument.unitsPerMillivoltPerVolt = within(0.1, 100);
  instrument.scaledUnit = text();
  instrument.excitation = Voltage(within(1, 10));
  if (oneIn(3)) instrument.inputResistance = Resistance(within(1e6, 1e9));
  return instrument;
}

std::vector<Shunt> Generator::shunts() {
  std::vector<Shunt> list;
  for (std::size_t k = below(5); k > 0; --k)
    list.push_back({name(k), Resistance(within(10e3, 1e6)), static_cast<Node>(below(nodeCount)),
                    static_cast<Node>(below(nodeCount)), Resistance(within(0, 2))});
  return list;
}

Step Generator::step(std::size_t shuntCount) {
  Step step{text(), {}, Duration(within(0.1, 10))};
  for (std::size_t k = 0; k < shuntCount; ++k)
    if (oneIn(3)) step.closed.push_back(k);
  return step;
}

Setup Generator::setup() {
  Setup setup{bridge(), instrument(), shunts(), {}, {}};
  for (std::size_t left = below(7); left > 0; --left) setup.sequence.push_back(step(setup.shunts.size()));
  setup.limits = {within(0.001, 0.05), Reading(within(0, 5)), within(0.001, 0.01)};
  return setup;
}

std::optional<Measured> Generator::reading() {
  if (oneIn(4)) return std::nullopt;
  Measured measured{Reading(within(-2000, 2000)), {}, {}, {}};
  if (oneIn(2)) measured.uncertainty = Reading(within(0, 1));
  if (oneIn(2)) measured.begin = Duration(within(0, 100));
  if (oneIn(2)) measured.end = Duration(within(100, 200));
  return measured;
}

Check Generator::check(std::size_t index, const Setup& channelSetup) {
  Check check{name(index), oneIn(2) ? "2024-05-06" : "", text(), text(), {}, {}, {}};
  if (oneIn(3))
    check.recording = RecordingReference{text() + ".csv", m_random(),
                                         std::string(64, "0123456789abcdef"[below(16)]), text()};
  if (oneIn(2)) check.closedWith = std::make_shared<const Setup>(oneIn(2) ? channelSetup : setup());
  const std::size_t steps = (check.closedWith ? *check.closedWith : channelSetup).sequence.size();
  for (std::size_t left = oneIn(3) ? below(steps + 1) : steps; left > 0; --left)
    check.readings.push_back(reading());
  return check;
}

Channel Generator::channel(std::size_t index) {
  Channel channel{name(index), text(), setup(), {}};
  for (std::size_t k = below(4); k > 0; --k) channel.checks.push_back(check(k, channel.setup));
  return channel;
}

Document Generator::document() {
  Document document{text(), text(), text(), text(), text(), {}};
  for (std::size_t k = below(5); k > 0; --k)
    document.channels.push_back(std::make_shared<const Channel>(channel(k)));
  return document;
}

}  // namespace

Document randomDocument(std::uint64_t seed, Numbers numbers) { return Generator(seed, numbers).document(); }

}  // namespace support
