// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wiring/ohm_diagnosis.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "core/circuit/hookup_words.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/wiring/ohm_fit.h"
#include "core/wiring/ohm_network.h"

namespace core {
namespace {

using PartKind = OhmPart::Kind;

constexpr double infinite = std::numeric_limits<double>::infinity();

/// What might be wrong, before it is held against the readings.
struct Suspect {
  OhmFaultKind kind = OhmFaultKind::None;
  std::string text;
  OhmChange change;
};

/// A reading with its place in the network.
struct Held {
  std::size_t state = 0;  ///< index in Diagnosis::m_states
  NodeIndex from = 0, to = 0;
  double ohm = 0;  ///< infinite: beyond the range
};

std::string partName(const OhmModel& model, const OhmPart& part) {
  switch (part.kind) {
    case PartKind::Arm:
      return say("arm {1}", {std::to_string(part.index + 1)});
    case PartKind::Lead:
      return say("lead {1}", {leadWord(static_cast<LeadRole>(part.index))});
    case PartKind::Resistor:
      return model.resistors()[part.index];
    case PartKind::Input:
      return say("the instrument's input");
    case PartKind::Shunt:
      return model.setup().shunts[part.index].name;
    case PartKind::Other:
      break;
  }
  return {};
}

std::vector<OhmPart> resistances(const OhmModel& model) {
  std::vector<OhmPart> parts;
  for (const std::size_t arm : {0, 1, 2, 3}) parts.push_back({PartKind::Arm, arm});
  for (const LeadRole role : model.leads()) parts.push_back({PartKind::Lead, static_cast<std::size_t>(role)});
  for (std::size_t k = 0; k < model.resistors().size(); ++k) parts.push_back({PartKind::Resistor, k});
  std::erase_if(parts, [&](const OhmPart& part) { return !model.has(part); });
  return parts;
}

/// The instrument's terminals and their names; that of the return lead is a node of its arm.
std::vector<std::pair<Node, std::string>> terminalsOf(const Bridge& bridge) {
  std::vector<std::pair<Node, std::string>> terminals;
  for (const Node node : allNodes())
    if (node < Node::Arm1Begin && hasNode(bridge, node)) terminals.emplace_back(node, nodeName(node));
  for (const Wire& wire : wiresOf(bridge))
    if (wire.role == LeadRole::Return) terminals.emplace_back(wire.from, leadWord(wire.role));
  return terminals;
}

void addOpensAndShorts(const OhmModel& model, std::vector<Suspect>& suspects) {
  std::vector<OhmPart> parts = resistances(model);
  if (model.setup().instrument.inputResistance && model.has({PartKind::Input, 0}))
    parts.push_back({PartKind::Input, 0});
  for (const OhmPart& part : parts)
    suspects.push_back(
        {OhmFaultKind::Open, say("{1} is open", {partName(model, part)}), PartValue{part, infinite}});
  for (std::size_t k = 0; k < model.setup().shunts.size(); ++k)
    suspects.push_back({OhmFaultKind::Open, say("{1} never closes", {model.setup().shunts[k].name}),
                        PartValue{{PartKind::Shunt, k}, infinite}});
  for (const OhmPart& part : parts)
    suspects.push_back(
        {OhmFaultKind::Short, say("{1} is shorted", {partName(model, part)}), PartValue{part, 0}});
  for (std::size_t k = 0; k < model.setup().shunts.size(); ++k)
    suspects.push_back({OhmFaultKind::Short,
                        say("{1} is closed all the time", {model.setup().shunts[k].name}),
                        PartValue{{PartKind::Shunt, k}, 0}});
  const auto terminals = terminalsOf(model.setup().bridge);
  for (std::size_t i = 0; i < terminals.size(); ++i)
    for (std::size_t j = i + 1; j < terminals.size(); ++j)
      suspects.push_back(
          {OhmFaultKind::Short,
           say("{1} and {2} are shorted at the terminals", {terminals[i].second, terminals[j].second}),
           TerminalsShorted{terminals[i].first, terminals[j].first}});
}

/// Exchanges are tried among so many resistors and shunts, for their pairs grow with the square.
constexpr std::size_t mostExchanged = 40;

void addSwaps(const OhmModel& model, std::vector<Suspect>& suspects) {
  const auto add = [&](std::string text, OhmChange change) {
    suspects.push_back({OhmFaultKind::SwappedWires, std::move(text), change});
  };
  const auto leads = model.leads();
  for (std::size_t i = 0; i < leads.size(); ++i)
    for (std::size_t j = i + 1; j < leads.size(); ++j)
      add(say("leads {1} and {2} are swapped at the instrument", {leadWord(leads[i]), leadWord(leads[j])}),
          LeadsSwapped{leads[i], leads[j]});
  const auto& shunts = model.setup().shunts;
  for (std::size_t k = 0; k < shunts.size(); ++k)
    for (std::size_t i = 0; i < shunts[k].jumpers.size(); ++i)
      for (std::size_t j = i + 1; j < shunts[k].jumpers.size(); ++j)
        add(say("jumpers {1} and {2} of {3} are swapped",
                {std::to_string(i + 1), std::to_string(j + 1), shunts[k].name}),
            JumpersSwapped{k, i, j});
  const auto& resistors = model.resistors();
  for (std::size_t i = 0; i < std::min(mostExchanged, resistors.size()); ++i)
    for (std::size_t j = i + 1; j < std::min(mostExchanged, resistors.size()); ++j)
      add(say("{1} and {2} are fitted in each other's place", {resistors[i], resistors[j]}),
          ResistorsSwapped{i, j});
  for (std::size_t i = 0; i < std::min(mostExchanged, shunts.size()); ++i)
    for (std::size_t j = i + 1; j < std::min(mostExchanged, shunts.size()); ++j)
      add(say("{1} and {2} go to each other's place", {shunts[i].name, shunts[j].name}), PlacesSwapped{i, j});
}

/// A suspect held against the readings.
struct Verdicted {
  OhmFault fault;
  std::vector<double> expected;   ///< of each reading, ohm
  std::vector<double> tolerance;  ///< of each reading, ohm
};

bool isSame(double a, double b, double share) {
  return a == b || (std::isfinite(a) && std::isfinite(b) && std::abs(a - b) <= share);
}

/// Whether two suspects would show the same at every reading: apart by rounding alone, or where numbers were
/// fitted by less than any ohmmeter tells.
bool isAlike(const Verdicted& a, const Verdicted& b) {
  if (a.fault.unknowns != b.fault.unknowns) return false;
  const double share = a.fault.unknowns == 0 ? 1e-9 : 1e-3;
  for (std::size_t k = 0; k < a.expected.size(); ++k)
    if (!isSame(a.expected[k], b.expected[k], share * (a.tolerance[k] + b.tolerance[k]))) return false;
  return true;
}

/// A tolerance is about two standard deviations. With hardly more readings than numbers fitted the penalty
/// would be infinite; half a reading to spare is the least it counts with.
double score(const OhmFault& fault, std::size_t readings) {
  const auto n = static_cast<double>(readings), p = static_cast<double>(fault.unknowns);
  return 4 * n * fault.misfit + 2 * p + 2 * p * (p + 1) / std::max(n - p - 1, 0.5);
}

class Diagnosis {
 public:
  Diagnosis(OhmModel model, std::span<const OhmReading> readings) : m_model(std::move(model)) {
    for (const OhmReading& reading : readings) {
      const auto from = m_model.nodeOf(reading.from), to = m_model.nodeOf(reading.to);
      if (!from || !to || from == to || !m_model.hasState(reading.state)) continue;
      if (reading.ohm && !(reading.ohm->base() >= 0)) continue;
      auto state = std::find(m_states.begin(), m_states.end(), reading.state);
      if (state == m_states.end()) state = m_states.insert(state, reading.state);
      m_readings.push_back({static_cast<std::size_t>(state - m_states.begin()), *from, *to,
                            reading.ohm ? reading.ohm->base() : infinite});
    }
  }

  std::size_t readings() const { return m_readings.size(); }

  Result<std::vector<OhmFault>> ranked(std::size_t most) {
    std::vector<Suspect> suspects{{OhmFaultKind::None, say("nothing is wrong"), {}}};
    addOpensAndShorts(m_model, suspects);
    addSwaps(m_model, suspects);
    for (const Suspect& suspect : suspects)
      if (auto held = hold(suspect); !held) return held.error();
    for (const OhmPart& part : resistances(m_model))
      if (auto held = holdWrongValue(part); !held) return held.error();
    std::stable_sort(m_held.begin(), m_held.end(), [this](const Verdicted& a, const Verdicted& b) {
      if (a.fault.explains != b.fault.explains) return a.fault.explains;
      // Where nothing wrong explains every reading, nobody is sent to look for something.
      const bool aNone = a.fault.kind == OhmFaultKind::None, bNone = b.fault.kind == OhmFaultKind::None;
      if (a.fault.explains && aNone != bNone) return aNone;
      return score(a.fault, readings()) < score(b.fault, readings()) * (1 - 1e-9) - 1e-9;
    });
    std::vector<OhmFault> faults;
    for (Verdicted& held : m_held)
      if (faults.size() < most) faults.push_back(std::move(held.fault));
    return faults;
  }

 private:
  /// Keeps what `suspect` would show. What would show nothing is left out, what shows the same as another
  /// stands beside it.
  Result<void> hold(const Suspect& suspect, std::optional<Resistance> fitted = {}) {
    Verdicted held{{suspect.kind, suspect.text, {}, fitted, 0, true, fitted ? std::size_t{1} : 0}, {}, {}};
    const auto networks = networksOf(suspect.change);
    for (const Held& reading : m_readings) {
      const auto value = m_model.between(networks[reading.state], reading.from, reading.to);
      if (!value) return value.error();
      const double tolerance = m_model.toleranceOf(*value);
      const double off = deviation(reading.ohm, value->ohm, tolerance);
      held.fault.misfit += off * off / static_cast<double>(m_readings.size());
      held.fault.explains = held.fault.explains && off <= 1;
      held.expected.push_back(value->ohm);
      held.tolerance.push_back(tolerance);
    }
    if (!m_held.empty() && showsNothing(held)) return {};
    for (Verdicted& other : m_held)
      if (isAlike(other, held)) {
        other.fault.alike.push_back(held.fault.text);
        return {};
      }
    m_held.push_back(std::move(held));
    return {};
  }

  bool showsNothing(const Verdicted& held) const {
    for (std::size_t k = 0; k < held.expected.size(); ++k)
      if (!isSame(held.expected[k], m_held[0].expected[k], 1e-9 * held.tolerance[k])) return false;
    return true;
  }

  std::vector<OhmNetwork> networksOf(const OhmChange& change) const {
    std::vector<OhmNetwork> networks;
    for (const WiringState& state : m_states) networks.push_back(m_model.networkIn(state, change));
    return networks;
  }

  /// In tolerances, cut off. A reading beyond the range is missed by what lacks to the range.
  double deviation(double measured, double expected, double tolerance) const {
    if (std::isinf(measured)) {
      const double range = m_model.conditions().openBeyond.base();
      return expected >= range ? 0 : std::min(greatestDeviation, (range - expected) / tolerance);
    }
    if (std::isinf(expected)) return greatestDeviation;
    return std::min(greatestDeviation, std::abs(measured - expected) / tolerance);
  }

  /// How each reading follows the resistance of `part`, from the part shorted, open and as it is.
  Result<std::vector<OhmResponse>> responses(const OhmPart& part, double probe_ohm) const {
    const double values[3] = {0, infinite, probe_ohm};
    std::vector<OhmResponse> responses(m_readings.size());
    for (const std::size_t k : {0, 1, 2}) {
      const auto networks = networksOf(PartValue{part, values[k]});
      for (std::size_t i = 0; i < m_readings.size(); ++i) {
        const Held& reading = m_readings[i];
        const auto value = m_model.between(networks[reading.state], reading.from, reading.to);
        if (!value) return value.error();
        (k == 0 ? responses[i].shorted : k == 1 ? responses[i].open : responses[i].probed) = value->ohm;
        if (k < 2) continue;
        const OhmValue measured{std::isinf(reading.ohm) ? value->ohm : reading.ohm, value->standard};
        responses[i].measured = reading.ohm;
        responses[i].tolerance = m_model.toleranceOf(measured);
        responses[i].probe = probe_ohm;
      }
    }
    return responses;
  }

  Result<void> holdWrongValue(const OhmPart& part) {
    const double planned = m_model.plannedValue(part);
    const auto follow = responses(part, planned > 0 ? planned : 1);
    if (!follow) return follow.error();
    const auto fitted = fittedResistance(*follow, m_model.conditions().openBeyond.base());
    if (!fitted) return {};
    if (isLike(*follow, *fitted, &OhmResponse::shorted) || isLike(*follow, *fitted, &OhmResponse::open))
      return {};
    if (isWithinTolerance(*follow, *fitted, planned)) return {};
    const auto shown = [](double ohm) {
      return core::shown(formatQuantity(rounded(ohm), UnitFamily::Resistance));
    };
    return hold({OhmFaultKind::WrongResistor,
                 say("{1} is about {2} instead of {3}",
                     {partName(m_model, part), shown(*fitted),
                      core::shown(formatQuantity(planned, UnitFamily::Resistance, {}, 6))}),
                 PartValue{part, *fitted}},
                Resistance(*fitted));
  }

  /// Whether no reading tells a resistance of `x` from a short (or an open): then that is what it is.
  bool isLike(const std::vector<OhmResponse>& follow, double x, double OhmResponse::*end) const {
    const double range = m_model.conditions().openBeyond.base();
    return std::all_of(follow.begin(), follow.end(), [&](const OhmResponse& response) {
      const double fitted = response.at(x), extreme = response.*end;
      return isSame(fitted, extreme, response.tolerance) || (fitted >= range && extreme >= range);
    });
  }

  /// Whether no reading tells a resistance of `x` from the planned one: then it is not wrong.
  static bool isWithinTolerance(const std::vector<OhmResponse>& follow, double x, double planned) {
    return std::all_of(follow.begin(), follow.end(), [&](const OhmResponse& response) {
      const double fitted = response.at(x), right = response.at(planned);
      return fitted == right || std::abs(fitted - right) <= response.tolerance;  // both may be infinite
    });
  }

  /// To three significant digits: an ohmmeter tells no more.
  static double rounded(double ohm) {
    const double unit = std::pow(10, std::floor(std::log10(ohm)) - 2);
    return unit < 1 ? std::round(ohm / unit) / std::round(1 / unit) : std::round(ohm / unit) * unit;
  }

  OhmModel m_model;
  std::vector<WiringState> m_states;
  std::vector<Held> m_readings;
  std::vector<Verdicted> m_held;  ///< nothing wrong first
};

}  // namespace

std::string ohmFaultText(const OhmFault& fault) {
  constexpr std::size_t most = 3;
  std::string text = fault.text;
  for (std::size_t k = 0; k < std::min(most, fault.alike.size()); ++k)
    text = say("{1}, or {2}", {text, fault.alike[k]});
  if (fault.alike.size() > most)
    text = sayCount(fault.alike.size() - most, "{1}, or {n} other", "{1}, or one of {n} others", {text});
  return text;
}

Result<std::vector<OhmFault>> ohmFaults(const Setup& setup, std::span<const OhmReading> readings,
                                        const OhmmeterConditions& conditions, std::size_t most) {
  auto model = OhmModel::make(setup, conditions);
  if (!model) return model.error();
  Diagnosis diagnosis(*std::move(model), readings);
  if (diagnosis.readings() == 0)
    return Error{say("ohmmeter"), say("there is no reading between points that the channel has"),
                 say("Enter what the ohmmeter showed")};
  return diagnosis.ranked(most);
}

}  // namespace core
