// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/dice.h"

#include <cassert>

#include "core/uncertainty/random.h"

namespace core {

Dice::Dice(std::uint64_t seed, std::size_t index, QuestionKind kind, Difficulty difficulty,
           std::uint32_t attempt)
    : m_counter{0, attempt, static_cast<std::uint32_t>(index),
                static_cast<std::uint32_t>(static_cast<std::size_t>(kind) * difficultyCount +
                                           static_cast<std::size_t>(difficulty))},
      m_key{static_cast<std::uint32_t>(seed), static_cast<std::uint32_t>(seed >> 32)} {}

std::size_t Dice::below(std::size_t count) {
  assert(count > 0 && count <= 0xffffffffU);
  const std::uint64_t word = philox(m_counter, m_key)[0];
  ++m_counter[0];
  return static_cast<std::size_t>((word * count) >> 32);
}

}  // namespace core
