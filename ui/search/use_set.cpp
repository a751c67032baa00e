// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/search/use_set.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>

#include "core/document/apply.h"
#include "core/document/edits.h"
#include "core/plan/pattern.h"
#include "core/units/notation.h"

namespace ui {
namespace {

using core::Channel;

/// What is stated about a resistor that the channel has already.
std::optional<core::Uncertainty> statedOf(const core::Setup& setup, const core::Candidate& candidate) {
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) {
    const core::Shunt& shunt = setup.shunts[k];
    if (shunt.part.id != candidate.part || shunt.resistance != candidate.value) continue;
    const auto stated = setup.uncertainties.stated.find({core::InputKind::Shunt, k});
    if (stated != setup.uncertainties.stated.end()) return stated->second;
  }
  return std::nullopt;
}

core::Uncertainty toleranceOf(const core::Candidate& candidate) {
  core::Uncertainty uncertainty;
  uncertainty.statement = core::Statement::Tolerance;
  uncertainty.amount = candidate.tolerance;
  uncertainty.relative = true;
  return uncertainty;
}

bool atSamePlace(const core::Shunt& a, const core::Shunt& b) {
  return (a.a == b.a && a.b == b.b) || (a.a == b.b && a.b == b.a);
}

bool isPart(const core::Stock& stock, const std::string& id) {
  return core::findResistor(stock, id) || core::findBox(stock, id);
}

/// The part's id when the stock holds it, else the value: "86.6k", "470 Ω", and "86.6 kΩ" where the short
/// form is what a part is called by.
std::string nameOf(const core::Stock& stock, const core::Candidate& candidate) {
  if (!candidate.part.empty() && isPart(stock, candidate.part)) return candidate.part;
  const std::string value = core::formatQuantity(candidate.value.base(), core::UnitFamily::Resistance, {}, 6);
  const std::string ohm = "Ω";
  std::string name = value;
  if (name.ends_with(ohm)) name.resize(name.size() - ohm.size());
  const auto space = name.find(' ');
  if (space == std::string::npos || space + 1 == name.size()) return value;
  name.erase(space, 1);
  return isPart(stock, name) ? value : name;
}

/// Whether a new part was given that id: "86.6k", "86.6k (2)" after "86.6k".
bool isCalledAfter(const std::string& value, const std::string& id) {
  return id == value || id.starts_with(value + " (");
}

/// Puts shunts into a channel and remembers which resistor lies where.
class Placing {
 public:
  Placing(Channel channel, const core::Setup& before, const core::Stock& stock,
          const core::ResistorSearch& search, const core::ResistorSet& set)
      : m_channel(std::move(channel)), m_before(before), m_stock(stock), m_search(search), m_set(set) {}

  /// All resistors at their places, those of the positive one first, in their order.
  void placeAll() {
    for (std::size_t resistor = 0; resistor < m_set.resistors.size(); ++resistor)
      m_ids.push_back(idOf(resistor));
    for (const bool positive : {true, false})
      for (std::size_t resistor = 0; resistor < m_set.resistors.size(); ++resistor)
        if (isUsed(resistor, positive) && !m_shunts.contains({resistor, positive}))
          m_shunts[{resistor, positive}] = place(resistor, positive);
  }

  core::PlannedLevels levels() const {
    core::PlannedLevels planned;
    std::vector<const core::LevelMet*> rising;
    for (const core::LevelMet& level : m_set.levels)
      if (!level.closed.empty()) rising.push_back(&level);
    std::stable_sort(rising.begin(), rising.end(), [](const core::LevelMet* a, const core::LevelMet* b) {
      return std::abs(a->wanted) < std::abs(b->wanted);
    });
    for (const core::LevelMet* level : rising) {
      const bool positive = level->wanted > 0;
      core::PlannedLevel step{(positive ? "+" : "") + core::formatNumber(level->wanted, 6), {}};
      for (const std::size_t resistor : level->closed)
        step.closed.push_back(m_shunts.at({resistor, positive}));
      std::sort(step.closed.begin(), step.closed.end());
      (positive ? planned.positive : planned.negative).push_back(std::move(step));
    }
    return planned;
  }

  Channel&& channel() { return std::move(m_channel); }

 private:
  /// Whether some level of that side closes it.
  bool isUsed(std::size_t resistor, bool positive) const {
    return std::any_of(m_set.levels.begin(), m_set.levels.end(), [&](const core::LevelMet& level) {
      return (level.wanted > 0) == positive &&
             std::find(level.closed.begin(), level.closed.end(), resistor) != level.closed.end();
    });
  }

  core::Shunt shuntOf(std::size_t resistor, bool positive) const {
    const core::Candidate& candidate = m_set.resistors[resistor];
    const core::ShuntPlace place = (positive ? m_search.positive : m_search.negative).value();
    return {.name = nameOf(m_stock, candidate) + (positive ? " positive" : " negative"),
            .resistance = candidate.value,
            .a = place.a,
            .b = place.b,
            .wires = place.wires,
            .contact = place.contact,
            .part = {candidate.part, candidate.due, candidate.rating}};
  }

  /// A shunt like `wanted` that is none of the resistors yet; two alike are two.
  std::optional<std::size_t> present(const core::Shunt& wanted, const std::string& value) const {
    const auto& shunts = m_channel.setup.shunts;
    for (std::size_t k = 0; k < shunts.size(); ++k) {
      const core::Shunt& shunt = shunts[k];
      const bool sameResistor =
          shunt.part.id == wanted.part.id || (wanted.part.id.empty() && isCalledAfter(value, shunt.part.id));
      if (!m_taken.contains(k) && atSamePlace(shunt, wanted) && shunt.resistance == wanted.resistance &&
          shunt.wires == wanted.wires && shunt.contact == wanted.contact && sameResistor)
        return k;
    }
    return std::nullopt;
  }

  /// What the resistor is called wherever it lies, so that its shunts are known to be of one part: its id,
  /// else the name of the one that is there already, else after its value. Takes shunts that are there.
  std::string idOf(std::size_t resistor) {
    const core::Candidate& candidate = m_set.resistors[resistor];
    const std::string value = nameOf(m_stock, candidate);
    std::string id = candidate.part;
    for (const bool positive : {true, false}) {
      if (!isUsed(resistor, positive)) continue;
      core::Shunt wanted = shuntOf(resistor, positive);
      wanted.part.id = id;
      const auto there = present(wanted, value);
      if (!there) continue;
      m_shunts[{resistor, positive}] = *m_taken.insert(*there).first;
      if (id.empty()) id = core::resistorName(m_channel.setup.shunts[*there]);
    }
    return id.empty() ? newId(value) : id;
  }

  /// "86.6k", "86.6k (2)": of a part that nobody has yet, and no other resistor is called.
  std::string newId(const std::string& value) const {
    const auto isTaken = [&](const std::string& id) {
      const auto& shunts = m_channel.setup.shunts;
      return isPart(m_stock, id) || std::find(m_ids.begin(), m_ids.end(), id) != m_ids.end() ||
             std::any_of(shunts.begin(), shunts.end(),
                         [&](const core::Shunt& shunt) { return core::resistorName(shunt) == id; });
    };
    std::string id = value;
    for (int number = 2; isTaken(id); ++number) id = value + " (" + std::to_string(number) + ")";
    return id;
  }

  std::size_t place(std::size_t resistor, bool positive) {
    const core::Candidate& candidate = m_set.resistors[resistor];
    core::Shunt shunt = shuntOf(resistor, positive);
    shunt.part.id = m_ids[resistor];
    m_channel = core::withShuntAdded(std::move(m_channel), shunt);
    const std::size_t index = m_channel.setup.shunts.size() - 1;
    m_taken.insert(index);
    const core::Resistor* owned = core::findResistor(m_stock, candidate.part);
    // A fitted one may have the value of another day than the stock.
    if (owned && core::valueOf(*owned) == candidate.value) {
      m_channel = core::withResistor(std::move(m_channel), index, *owned);
    } else {
      const auto stated = statedOf(m_before, candidate);
      m_channel = core::withUncertainty(std::move(m_channel), {core::InputKind::Shunt, index},
                                        stated ? *stated : toleranceOf(candidate));
    }
    return index;
  }

  Channel m_channel;
  const core::Setup& m_before;
  const core::Stock& m_stock;
  const core::ResistorSearch& m_search;
  const core::ResistorSet& m_set;
  std::vector<std::string> m_ids;  ///< of each resistor
  std::map<std::pair<std::size_t, bool>, std::size_t> m_shunts;
  std::set<std::size_t> m_taken;  ///< shunts that are one of the resistors
};

/// The same resistors at other places are other shunts, so nothing that was read before stays.
Channel withoutPlan(Channel channel) {
  channel = core::withSequence(std::move(channel), {});
  for (std::size_t left = channel.setup.shunts.size(); left > 0; --left)
    channel = core::withShuntRemoved(std::move(channel), left - 1);
  return channel;
}

Channel withStepsAdded(Channel channel, const std::vector<core::Step>& steps) {
  for (const core::Step& step : steps) {
    const auto& sequence = channel.setup.sequence;
    if (!sequence.empty() && step.closed.empty() && sequence.back().closed.empty()) continue;
    const std::size_t end = sequence.size();
    channel = core::withStepInserted(std::move(channel), end, step);
  }
  return channel;
}

}  // namespace

core::Candidate candidateOfShunt(const core::Setup& setup, std::size_t shunt) {
  const core::Shunt& from = setup.shunts[shunt];
  core::Candidate candidate{.value = from.resistance,
                            .tolerance = 0,
                            .part = from.part.id,
                            .name = core::resistorName(from),
                            .due = from.part.due,
                            .rating = from.part.rating};
  const auto stated = setup.uncertainties.stated.find({core::InputKind::Shunt, shunt});
  if (stated != setup.uncertainties.stated.end() && stated->second.statement != core::Statement::Standard)
    candidate.tolerance =
        stated->second.relative ? stated->second.amount : stated->second.amount / from.resistance.base();
  return candidate;
}

core::Channel withSet(core::Channel channel, const core::Stock& stock, const core::ResistorSearch& search,
                      const core::ResistorSet& set, bool replace) {
  const core::Setup before = channel.setup;
  const core::StepTimes times = core::timesOf(before);
  if (replace) channel = withoutPlan(std::move(channel));
  Placing placing(std::move(channel), before, stock, search, set);
  placing.placeAll();
  const std::vector<core::Step> steps =
      core::layOut(core::usualPatterns().front(), placing.levels(), times.settle, times.hold);
  return replace ? core::withSequence(placing.channel(), steps) : withStepsAdded(placing.channel(), steps);
}

bool replacingDropsReadings(const core::Channel& channel) { return core::dropsReadings(channel, {}); }

}  // namespace ui
