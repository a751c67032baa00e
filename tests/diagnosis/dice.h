// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <numbers>
#include <span>

namespace diagnosis {

/// Random numbers that a seed and a number of a check fix for ever: SplitMix64 (G. Steele, D. Lea and
/// C. Flood, OOPSLA 2014, from memory), and distributions of our own, as those of the library differ from
/// one library to the next.
class Dice {
 public:
  Dice(std::uint64_t seed, std::uint64_t stream) : m_state(seed * 0x9e3779b97f4a7c15u ^ stream) {
    for (int warm = 0; warm < 4; ++warm) m_state ^= next() + stream;
  }

  /// In (0, 1).
  double uniform() { return (static_cast<double>(next() >> 11) + 0.5) * 0x1p-53; }
  double between(double low, double high) { return low + (high - low) * uniform(); }
  double logBetween(double low, double high) { return low * std::exp(std::log(high / low) * uniform()); }
  double normal() {
    const double radius = std::sqrt(-2 * std::log(uniform()));
    return radius * std::cos(2 * std::numbers::pi * uniform());
  }
  bool chance(double share) { return uniform() < share; }
  double sign() { return chance(0.5) ? 1 : -1; }
  /// One of 0 to `count` - 1.
  std::size_t below(std::size_t count) {
    return static_cast<std::size_t>(uniform() * static_cast<double>(count));
  }
  double oneOf(std::initializer_list<double> values) { return values.begin()[below(values.size())]; }
  /// An index, each as often as its weight says.
  std::size_t weighted(std::span<const double> weights) {
    double sum = 0;
    for (const double weight : weights) sum += weight;
    double left = sum * uniform();
    for (std::size_t k = 0; k + 1 < weights.size(); ++k)
      if ((left -= weights[k]) < 0) return k;
    return weights.size() - 1;
  }

 private:
  std::uint64_t next() {
    std::uint64_t z = m_state += 0x9e3779b97f4a7c15u;
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
    return z ^ (z >> 31);
  }

  std::uint64_t m_state;
};

}  // namespace diagnosis
