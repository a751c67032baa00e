// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/search/exact_set.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <limits>

#include "core/circuit/indication.h"
#include "core/units/language.h"

namespace core {
namespace {

/// What one combination of closed positions gives.
struct Given {
  bool solved = false;  ///< false: the gauges cannot simulate it
  double level = 0;     ///< in the unit of targets.h
  double reading = 0;
};

/// Resistors at the low end of their tolerance, as they are, at the high end.
enum End : std::size_t { Low, Nominal, High };

/// One place with all resistors on it.
class PlacedSet {
 public:
  static Result<PlacedSet> make(const Setup& setup, const ShuntPlace& place,
                                std::span<const Candidate> resistors, End end) {
    std::vector<ShuntBranch> branches;
    for (const Candidate& resistor : resistors) {
      const double share = end == Nominal ? 1 : end == Low ? 1 - resistor.tolerance : 1 + resistor.tolerance;
      branches.push_back(
          {resistor.name, place.a, place.b, share * resistor.value + place.wires + place.contact});
    }
    auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, branches);
    if (!circuit) return circuit.error();
    const auto zero = circuit->solveOutput();
    if (!zero) return zero.error();
    return PlacedSet(setup, *std::move(circuit), *zero, branches.size());
  }

  Result<Given> closed(std::size_t mask) {
    m_circuit.setStimulus(0);
    m_circuit.openAll();
    for (std::size_t k = 0; k < m_count; ++k)
      if ((mask >> k) & 1)
        if (auto done = m_circuit.close(k); !done) return done.error();
    const auto output = m_circuit.solveOutput();
    if (!output) return output.error();
    const auto stimulus = m_circuit.stimulusFor(*output);
    const auto shown = indicationOf(m_setup->bridge, m_setup->instrument, *output, m_zero);
    if (!stimulus || !shown) return Given{};
    return Given{true, simulatedInUnit(m_setup->bridge, *stimulus), shown->value.base()};
  }

  /// Power in resistor `k` of `resistance`, closed alone.
  Result<Power> power(std::size_t k, Resistance resistance, Resistance inSeries) {
    m_circuit.setStimulus(0);
    m_circuit.openAll();
    if (auto done = m_circuit.close(k); !done) return done.error();
    if (const auto solved = m_circuit.solveOutput(); !solved) return solved.error();
    const auto& current = m_setup->instrument.current;
    const double excitation_V = current ? current->supplied.base() / m_circuit.inputConductance()
                                        : m_setup->instrument.excitation.base();
    const double across_V = excitation_V * m_circuit.voltage(m_circuit.network().firstShunt + k);
    const double through_A = across_V / (resistance + inSeries).base();
    return Power(through_A * through_A * resistance.base());
  }

 private:
  PlacedSet(const Setup& setup, BridgeCircuit circuit, Output zero, std::size_t count)
      : m_setup(&setup), m_circuit(std::move(circuit)), m_zero(zero), m_count(count) {}

  const Setup* m_setup;
  BridgeCircuit m_circuit;
  Output m_zero;
  std::size_t m_count;
};

/// All combinations at one place: as they are, and at both ends of the tolerances when these are looked at.
struct Combination {
  std::size_t mask = 0;
  std::vector<Given> ends;  ///< the nominal one first
};

Result<std::vector<Combination>> combinationsAt(const Setup& setup, const ResistorSearch& search,
                                                const ShuntPlace& place,
                                                std::span<const Candidate> resistors) {
  std::vector<Combination> all;
  for (std::size_t mask = 1; mask < (std::size_t{1} << resistors.size()); ++mask)
    if (search.together || std::popcount(mask) == 1) all.push_back({mask, {}});
  for (const End end : {Nominal, Low, High}) {
    if (end != Nominal && !search.atTolerance) continue;
    auto placed = PlacedSet::make(setup, place, resistors, end);
    if (!placed) return placed.error();
    for (Combination& combination : all) {
      const auto given = placed->closed(combination.mask);
      if (!given) return given.error();
      combination.ends.push_back(*given);
    }
  }
  return all;
}

/// What one level is judged by.
struct Wanted {
  double level = 0;
  double value = 0;  ///< in what the miss is counted in
  double unit = 1;   ///< a difference of this much is a miss of 1
  bool ofReading = false;
};

double missOf(const Wanted& wanted, const Combination& combination) {
  double greatest = 0;
  // Reached is what counts, at tolerance the ends alone: the value in between lies between them.
  for (std::size_t k = combination.ends.size() > 1 ? 1 : 0; k < combination.ends.size(); ++k) {
    const Given& given = combination.ends[k];
    if (!given.solved) return std::numeric_limits<double>::infinity();
    const double value = wanted.ofReading ? given.reading : given.level;
    greatest = std::max(greatest, std::abs(value - wanted.value) / wanted.unit);
  }
  return greatest;
}

/// `reading` is what the level should read, when that is known.
LevelMet metBy(const Wanted& wanted, const std::optional<ReadingAt>& reading,
               const std::vector<Combination>& combinations) {
  LevelMet met{wanted.level, 0, std::abs(wanted.value) / wanted.unit, {}};
  std::size_t chosen = 0;
  if (reading) met.reading = ReadingMiss{std::abs(reading->reading), reading->limit};
  for (const Combination& combination : combinations) {
    const double miss = missOf(wanted, combination);
    const bool fewer = std::popcount(combination.mask) < std::popcount(chosen);
    if (!(miss < met.miss || (chosen != 0 && miss == met.miss && fewer))) continue;
    met.miss = miss;
    met.reached = combination.ends.front().level;
    if (reading) met.reading->deviation = missOf({wanted.level, reading->reading, 1, true}, combination);
    chosen = combination.mask;
  }
  for (std::size_t k = 0; chosen >> k; ++k)
    if ((chosen >> k) & 1) met.closed.push_back(k);
  return met;
}

Result<Wanted> wantedOf(const Setup& setup, const ResistorSearch& search, double level) {
  if (search.missUnit == MissUnit::OfLevel) return Wanted{level, level, std::abs(level), false};
  const auto at = readingAt(setup, level);
  if (!at) return at.error();
  return Wanted{level, at->reading, at->limit, true};
}

Result<Power> greatestPower(const Setup& setup, const ShuntPlace& place,
                            std::span<const Candidate> resistors) {
  Power greatest{0};
  auto placed = PlacedSet::make(setup, place, resistors, Nominal);
  if (!placed) return placed.error();
  for (std::size_t k = 0; k < resistors.size(); ++k) {
    const auto power = placed->power(k, resistors[k].value, place.wires + place.contact);
    if (!power) return power;
    greatest = std::max(greatest, *power);
  }
  return greatest;
}

}  // namespace

const ShuntPlace* placeFor(const ResistorSearch& search, double level) {
  const auto& place = level > 0 ? search.positive : search.negative;
  return place ? &*place : nullptr;
}

Result<ReadingAt> readingAt(const Setup& setup, double level) {
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, {});
  if (!circuit) return circuit.error();
  const auto zero = circuit->solveOutput();
  if (!zero) return zero.error();
  const Stimulus stimulus = stimulusOf(setup.bridge, level);
  for (const std::size_t arm : {0, 1, 2, 3})
    if (!(armUnder(setup.bridge, arm, stimulus).base() > 0))
      return Error{levelText(setup.bridge, level),
                   say("arm {1} would have no resistance left", {std::to_string(arm + 1)}),
                   say("Choose a smaller level")};
  circuit->setStimulus(stimulus);
  const auto output = circuit->solveOutput();
  if (!output) return output.error();
  const auto shown = indicationOf(setup.bridge, setup.instrument, *output, *zero);
  if (!shown) return shown.error();
  const double reading = shown->value.base();
  const double limit = std::max(setup.limits.relative * std::abs(reading), setup.limits.least.base());
  return ReadingAt{reading, limit};
}

Result<ResistorSet> exactSet(const Setup& setup, const ResistorSearch& search,
                             std::span<const Candidate> resistors) {
  ResistorSet set;
  set.resistors.assign(resistors.begin(), resistors.end());
  set.levels.resize(search.levels.size());
  for (const bool positive : {true, false}) {
    std::optional<std::vector<Combination>> combinations;
    for (std::size_t k = 0; k < search.levels.size(); ++k) {
      const double level = search.levels[k];
      if ((level > 0) != positive) continue;
      const ShuntPlace& place = *placeFor(search, level);
      if (!combinations) {
        auto all = combinationsAt(setup, search, place, resistors);
        if (!all) return all.error();
        combinations = *std::move(all);
        const auto power = greatestPower(setup, place, resistors);
        if (!power) return power.error();
        set.greatestPower = std::max(set.greatestPower, *power);
      }
      const auto wanted = wantedOf(setup, search, level);
      if (!wanted) return wanted.error();
      const auto reading = readingAt(setup, level);
      set.levels[k] = metBy(*wanted, reading ? std::optional(*reading) : std::nullopt, *combinations);
    }
  }
  for (const LevelMet& met : set.levels) {
    set.greatestMiss = std::max(set.greatestMiss, met.miss);
    set.meanMiss += met.miss / static_cast<double>(set.levels.size());
  }
  for (std::size_t k = search.fitted.size(); k < resistors.size(); ++k)
    if (resistors[k].part.empty()) ++set.newParts;
  return set;
}

}  // namespace core
