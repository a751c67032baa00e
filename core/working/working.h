// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/evaluate/evaluation.h"

namespace core {

/// One line of working: a formula, the same with its numbers, and what comes out. All texts are plain;
/// numbers have a point, six significant digits (uncertainties two) and their unit.
struct WorkingLine {
  std::string what;         ///< "Arm 2 with the shunt"
  std::string formula;      ///< "R2′ = R2 Rs / (R2 + Rs)"; may be empty
  std::string numbers;      ///< "350 Ω × 332.018 kΩ / (350 Ω + 332.018 kΩ)"; may be empty
  std::string result;       ///< "349.631 Ω"; a sentence where the line has no formula
  std::string source = {};  ///< where the formula is from; may be empty
};

/// An exact value beside the textbook's approximation, which is worked out by its own formula.
struct WorkingContrast {
  std::string what;         ///< "Simulated strain"
  std::string by;           ///< what the approximation is called: "shunt formula for small strain"
  std::string formula;      ///< of the approximation: "ε ≈ R / (F N (R + Rs))"
  std::string numbers;      ///< "350 Ω / (2 × 1 × (350 Ω + 332.018 kΩ))"
  std::string exact;        ///< "509.43 µm/m"
  std::string approximate;  ///< "509.98 µm/m"
  std::string off;          ///< "+0.108 %", of the exact value
  std::string why;          ///< what makes the two differ, each with its part; the parts sum up to `off`
  std::string source;       ///< where the approximation is from
  double exactValue = 0;    ///< in the unit of `exact`
  double approximateValue = 0;
};

struct WorkingPart {
  std::string heading;  ///< "The step", "Simulated strain", "The reading", "Its uncertainty", "The verdict"
  std::vector<WorkingLine> lines;
  std::vector<WorkingContrast> contrasts = {};
};

/// How the numbers of one step come about: from the closed shunts through the network to output, simulated
/// strain, expected reading, its uncertainty, and with a check to change, deviation, decision and the line.
/// `check` is an index in the channel; none: the plan alone. Fails as the step's prediction does, and when
/// the set-up in question has no such step.
Result<std::vector<WorkingPart>> workingOf(const Channel& channel, const ChannelEvaluation& evaluation,
                                           std::optional<std::size_t> check, std::size_t step);

/// The same as lines of text, to be copied or printed.
std::string workingText(const std::vector<WorkingPart>& parts);

}  // namespace core
