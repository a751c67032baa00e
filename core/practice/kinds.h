// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/practice/dice.h"

// One question of each kind, without kind and difficulty. Each is none when what was drawn makes no clear
// question: then draw again. Internal to core/practice.

namespace core {

/// Outputs below this are not asked about: 40 µm/m of a quarter bridge at a gauge factor of 2.
inline constexpr Output clearOutput{20e-6};
/// Outputs below this are none: rounding.
inline constexpr Output noOutput{1e-12};
/// By how much two readings must differ, sign aside, to be asked which is larger.
inline constexpr double clearDifference = 0.1;

std::optional<Question> signQuestion(Dice& dice, Difficulty difficulty);
std::optional<Question> armQuestion(Dice& dice, Difficulty difficulty);
std::optional<Question> largerShuntQuestion(Dice& dice, Difficulty difficulty);
std::optional<Question> readingQuestion(Dice& dice, Difficulty difficulty);
std::optional<Question> plantedFaultQuestion(Dice& dice, Difficulty difficulty);

}  // namespace core
