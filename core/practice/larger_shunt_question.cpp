// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/kinds.h"

namespace core {

std::optional<Question> largerShuntQuestion(Dice& dice, Difficulty difficulty) {
  return signQuestion(dice, difficulty);
}

}  // namespace core
