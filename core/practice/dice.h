// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <utility>
#include <vector>

#include "core/practice/question.h"

// Internal to core/practice.

namespace core {

/// Choices for one question, the same on every machine: integers from Philox, no distribution of a library.
class Dice {
 public:
  /// `attempt` counts the draws of one question that were thrown away.
  Dice(std::uint64_t seed, std::size_t index, QuestionKind kind, Difficulty difficulty,
       std::uint32_t attempt);

  /// From 0 to count - 1, each as likely to within count / 2^32; `count` is above zero.
  std::size_t below(std::size_t count);
  /// True once in `count`.
  bool oneIn(std::size_t count) { return below(count) == 0; }

  template <class T>
  const T& of(const std::vector<T>& values) {
    return values[below(values.size())];
  }
  template <class T>
  T of(std::initializer_list<T> values) {
    return *(values.begin() + below(values.size()));
  }
  template <class T>
  void shuffle(std::vector<T>& values) {
    for (std::size_t k = values.size(); k > 1; --k) std::swap(values[k - 1], values[below(k)]);
  }

 private:
  std::array<std::uint32_t, 4> m_counter;
  std::array<std::uint32_t, 2> m_key;
};

}  // namespace core
