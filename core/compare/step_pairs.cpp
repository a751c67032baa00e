// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/step_pairs.h"

#include <algorithm>
#include <cmath>

namespace core {
namespace {

bool samePlace(const Shunt& a, const Shunt& b) { return a.a == b.a && a.b == b.b; }

bool actsAlike(const Shunt& a, const Shunt& b) {
  return a.resistance == b.resistance && a.wires == b.wires && a.contact == b.contact && samePlace(a, b);
}

class Pairing {
 public:
  Pairing(const Setup& before, const Setup& after) : m_before(before), m_after(after) {
    m_pairs.after.resize(before.sequence.size());
    m_taken.resize(after.sequence.size());
  }

  template <class Alike>
  bool closeAlike(std::size_t i, std::size_t j, const Alike& alike) const {
    const auto& first = m_before.sequence[i].closed;
    const auto& second = m_after.sequence[j].closed;
    return std::equal(first.begin(), first.end(), second.begin(), second.end(),
                      [&](auto a, auto b) { return alike(m_before.shunts[a], m_after.shunts[b]); });
  }

  bool isOpen(std::size_t i) const { return !m_pairs.after[i]; }
  bool isFree(std::size_t j) const { return j < m_taken.size() && !m_taken[j]; }
  void pair(std::size_t i, std::size_t j) {
    m_pairs.after[i] = j;
    m_taken[j] = true;
  }

  StepPairs finished() && {
    for (std::size_t j = 0; j < m_taken.size(); ++j)
      if (!m_taken[j]) m_pairs.onlyAfter.push_back(j);
    return std::move(m_pairs);
  }

 private:
  const Setup& m_before;
  const Setup& m_after;
  StepPairs m_pairs;
  std::vector<bool> m_taken;
};

bool nearlyEqual(const Result<Prediction>& a, const Result<Prediction>& b) {
  if (!a || !b) return false;
  const double first = a->reading.base(), second = b->reading.base();
  return std::abs(second - first) <= 0.1 * std::abs(first);
}

}  // namespace

StepPairs stepPairs(const Setup& before, const SetupPrediction& predictedBefore, const Setup& after,
                    const SetupPrediction& predictedAfter) {
  Pairing pairing(before, after);
  const std::size_t steps = before.sequence.size();
  for (std::size_t i = 0; i < steps; ++i)
    if (pairing.isFree(i) && pairing.closeAlike(i, i, actsAlike)) pairing.pair(i, i);
  for (std::size_t i = 0; i < steps; ++i)
    for (std::size_t j = 0; j < after.sequence.size() && pairing.isOpen(i); ++j)
      if (pairing.isFree(j) && pairing.closeAlike(i, j, actsAlike)) pairing.pair(i, j);
  for (std::size_t i = 0; i < steps; ++i)
    if (pairing.isOpen(i) && pairing.isFree(i) && pairing.closeAlike(i, i, samePlace) &&
        nearlyEqual(predictedBefore.steps[i], predictedAfter.steps[i]))
      pairing.pair(i, i);
  return std::move(pairing).finished();
}

}  // namespace core
