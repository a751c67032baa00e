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

/// A shunt like `wanted` that none of `taken` is; two alike are two.
std::optional<std::size_t> present(const core::Setup& setup, const core::Shunt& wanted,
                                   const std::set<std::size_t>& taken) {
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) {
    const core::Shunt& shunt = setup.shunts[k];
    if (!taken.contains(k) && atSamePlace(shunt, wanted) && shunt.resistance == wanted.resistance &&
        shunt.wires == wanted.wires && shunt.contact == wanted.contact && shunt.part.id == wanted.part.id)
      return k;
  }
  return std::nullopt;
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

/// Puts shunts into a channel and remembers which resistor lies where.
class Placing {
 public:
  Placing(Channel channel, const core::Setup& before, const core::Stock& stock,
          const core::ResistorSearch& search, const core::ResistorSet& set)
      : m_channel(std::move(channel)), m_before(before), m_stock(stock), m_search(search), m_set(set) {}

  /// All resistors at one place, in their order, those that a level of that side closes.
  void placeSide(bool positive) {
    for (std::size_t resistor = 0; resistor < m_set.resistors.size(); ++resistor) {
      const bool used =
          std::any_of(m_set.levels.begin(), m_set.levels.end(), [&](const core::LevelMet& level) {
            return (level.wanted > 0) == positive &&
                   std::find(level.closed.begin(), level.closed.end(), resistor) != level.closed.end();
          });
      if (used) m_shunts[{resistor, positive}] = place(resistor, positive);
    }
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
  std::size_t place(std::size_t resistor, bool positive) {
    const core::Candidate& candidate = m_set.resistors[resistor];
    const core::ShuntPlace place = (positive ? m_search.positive : m_search.negative).value();
    const core::Shunt shunt{.name = nameOf(m_stock, candidate) + (positive ? " positive" : " negative"),
                            .resistance = candidate.value,
                            .a = place.a,
                            .b = place.b,
                            .wires = place.wires,
                            .contact = place.contact,
                            .part = {candidate.part, candidate.due, candidate.rating}};
    if (const auto there = present(m_channel.setup, shunt, m_taken)) return *m_taken.insert(*there).first;
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
  std::map<std::pair<std::size_t, bool>, std::size_t> m_shunts;
  std::set<std::size_t> m_taken;  ///< shunts that are one of the resistors
};

/// The same resistors at other places are other shunts, so nothing that was read before stays.
Channel withoutPlan(Channel channel) {
  channel = core::withSequence(std::move(channel), {});
  while (!channel.setup.shunts.empty())
    channel = core::withShuntRemoved(std::move(channel), channel.setup.shunts.size() - 1);
  return channel;
}

Channel withStepsAdded(Channel channel, const std::vector<core::Step>& steps) {
  for (const core::Step& step : steps) {
    const auto& sequence = channel.setup.sequence;
    if (!sequence.empty() && step.closed.empty() && sequence.back().closed.empty()) continue;
    channel = core::withStepInserted(std::move(channel), sequence.size(), step);
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
  placing.placeSide(true);
  placing.placeSide(false);
  const std::vector<core::Step> steps =
      core::layOut(core::usualPatterns().front(), placing.levels(), times.settle, times.hold);
  return replace ? core::withSequence(placing.channel(), steps) : withStepsAdded(placing.channel(), steps);
}

bool replacingDropsReadings(const core::Channel& channel) { return core::dropsReadings(channel, {}); }

}  // namespace ui
