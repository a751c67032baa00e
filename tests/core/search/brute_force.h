// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <bit>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include "core/search/resistor_search.h"

namespace test {

/// A set of candidates judged by `predict` alone.
struct JudgedSet {
  double greatest = 0, mean = 0;
  std::size_t newParts = 0;
  std::vector<double> ohms;  ///< of the new ones, rising
  bool allUsed = false;      ///< each new resistor is closed for some level
};

inline bool operator<(const JudgedSet& a, const JudgedSet& b) {
  const std::size_t ofA = a.ohms.size(), ofB = b.ohms.size();
  return std::tie(a.greatest, a.mean, a.newParts, ofA, a.ohms) <
         std::tie(b.greatest, b.mean, b.newParts, ofB, b.ohms);
}

/// Every set of at most as many candidates as there are free positions, one after the other, best first. It
/// shares nothing with the search but the whole-network prediction and the definition of a miss.
class BruteForce {
 public:
  BruteForce(const core::Setup& setup, const core::ResistorSearch& search,
             const std::vector<core::Candidate>& candidates)
      : m_setup(setup), m_search(search), m_candidates(candidates) {}

  std::vector<JudgedSet> run() {
    choose({}, 0);
    std::sort(m_all.begin(), m_all.end());
    return m_all;
  }

 private:
  void choose(const std::vector<std::size_t>& chosen, std::size_t from) {
    if (!chosen.empty()) {
      const JudgedSet judged = judge(chosen);
      if (judged.allUsed) m_all.push_back(judged);
    }
    if (chosen.size() + m_search.fitted.size() == m_search.positions) return;
    for (std::size_t next = from; next < m_candidates.size(); ++next) {
      std::vector<std::size_t> more = chosen;
      more.push_back(next);
      if (possible(more)) choose(more, m_candidates[next].once ? next + 1 : next);
    }
  }

  bool possible(const std::vector<std::size_t>& chosen) const {
    std::set<std::string> parts;
    const auto free = [&](const core::Candidate& c) { return c.part.empty() || parts.insert(c.part).second; };
    return std::all_of(m_search.fitted.begin(), m_search.fitted.end(), free) &&
           std::all_of(chosen.begin(), chosen.end(), [&](std::size_t k) { return free(m_candidates[k]); });
  }

  /// Simulated value or reading of every combination of `resistors` on one side.
  std::vector<double> valuesOf(std::vector<core::Candidate> resistors, bool positive, double end) const {
    const core::ShuntPlace& place = positive ? *m_search.positive : *m_search.negative;
    core::Setup plan = m_setup;
    plan.shunts.clear(), plan.sequence.clear();
    for (const core::Candidate& r : resistors)
      plan.shunts.push_back({"R" + std::to_string(plan.shunts.size()), (1 + end * r.tolerance) * r.value,
                             place.a, place.b, place.wires, place.contact});
    for (std::size_t mask = 0; mask < (std::size_t{1} << resistors.size()); ++mask) {
      core::Step step;
      for (std::size_t k = 0; k < resistors.size(); ++k)
        if ((mask >> k) & 1) step.closed.push_back(k);
      plan.sequence.push_back(step);
    }
    std::vector<double> values;
    for (const auto& step : core::predict(plan).steps) {
      EXPECT_TRUE(step);
      values.push_back(m_search.missUnit == core::MissUnit::OfLimit
                           ? step->reading.base()
                           : core::simulatedInUnit(plan.bridge, step->simulated));
    }
    return values;
  }

  /// The level itself, or the reading of a bridge strained by hand.
  double wantedOf(double level) const {
    if (m_search.missUnit == core::MissUnit::OfLevel) return level;
    auto circuit = core::BridgeCircuit::make(m_setup.bridge, m_setup.instrument, {});
    const core::Output zero = *circuit->solveOutput();
    circuit->setStimulus(core::isTransducer(m_setup.bridge) ? level / m_setup.bridge.rating.capacity
                                                            : level * 1e-6);
    return core::readingOf(m_setup.instrument, *circuit->solveOutput() - zero).base();
  }

  JudgedSet judge(const std::vector<std::size_t>& chosen) const {
    std::vector<core::Candidate> resistors = m_search.fitted;
    JudgedSet judged;
    for (const std::size_t k : chosen) {
      resistors.push_back(m_candidates[k]);
      judged.ohms.push_back(m_candidates[k].value.base());
      judged.newParts += m_candidates[k].part.empty();
    }
    std::size_t used = 0;
    for (const bool positive : {true, false}) {
      std::vector<std::vector<double>> ends;
      for (const double level : m_search.levels) {
        if ((level > 0) != positive) continue;
        if (ends.empty())
          for (const double end : m_search.atTolerance ? std::vector{-1.0, 1.0} : std::vector{0.0})
            ends.push_back(valuesOf(resistors, positive, end));
        const auto [miss, mask] = leastMiss(level, ends);
        used |= mask;
        judged.greatest = std::max(judged.greatest, miss);
        judged.mean += miss / static_cast<double>(m_search.levels.size());
      }
    }
    const std::size_t all = (std::size_t{1} << resistors.size()) - 1;
    const std::size_t fitted = (std::size_t{1} << m_search.fitted.size()) - 1;
    judged.allUsed = (used | fitted) == all;
    return judged;
  }

  std::pair<double, std::size_t> leastMiss(double level, const std::vector<std::vector<double>>& ends) const {
    const double wanted = wantedOf(level);
    const double unit =
        m_search.missUnit == core::MissUnit::OfLevel
            ? std::abs(level)
            : std::max(m_setup.limits.relative * std::abs(wanted), m_setup.limits.least.base());
    std::pair<double, std::size_t> best{std::abs(wanted) / unit, 0};
    for (std::size_t mask = 1; mask < ends.front().size(); ++mask) {
      if (!m_search.together && std::popcount(mask) > 1) continue;
      double miss = 0;
      for (const auto& values : ends) miss = std::max(miss, std::abs(values[mask] - wanted) / unit);
      if (miss < best.first) best = {miss, mask};
    }
    return best;
  }

  core::Setup m_setup;
  core::ResistorSearch m_search;
  std::vector<core::Candidate> m_candidates;
  std::vector<JudgedSet> m_all;
};

}  // namespace test
