// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/practice/question.h"
#include "tests/support/setups.h"

namespace test {

/// A question of known answer, made by hand: a 175 kΩ shunt over arm 1 of a quarter bridge of 350 Ω. A shunt
/// on arm 1 drives the output negative (core/circuit/node.h); 350/(350 + 175 000) = 1/501, so the output is
/// -1/2002.
inline core::Question handMade(core::QuestionKind kind, std::size_t index) {
  core::Question question;
  question.kind = kind;
  question.setup = withShuntOnArm(equalArms(core::BridgeType::QuarterThreeWire, core::Resistance(350)),
                                  core::Resistance(175000), 1);
  question.explained = question.setup;
  question.text = "Question " + std::to_string(index + 1) + ": R1 is closed. What does the instrument show?";
  question.explanation = {"R1 lowers arm 1.", "S- rises, so that the output falls."};
  question.formula = {"v = -Ra / (4 Rs + 2 Ra)", "  = -350 / (4 x 175000 + 2 x 350) = -1/2002"};
  if (kind == core::QuestionKind::Reading) {
    question.number = core::Reading(-1e3 / 2002);
    question.unit = "mV/V";
  } else {
    question.choices = {"a positive output", "a negative output", "no change", "an overload"};
    question.right = 1;
  }
  return question;
}

/// A set of them, their kinds in turn.
inline std::vector<core::Question> handMadeSet(std::size_t count,
                                               const std::vector<core::QuestionKind>& kinds) {
  std::vector<core::Question> questions;
  for (std::size_t k = 0; k < count; ++k) questions.push_back(handMade(kinds[k % kinds.size()], k));
  return questions;
}

}  // namespace test
