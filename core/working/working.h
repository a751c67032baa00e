// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/evaluate/evaluation.h"

namespace core {

/// One line of working: a formula, the same with its numbers, and what comes out.
struct WorkingLine {
  std::string what;     ///< "Resistance of arm 2 with the shunt"
  std::string formula;  ///< "R' = R Rs / (R + Rs)"
  std::string numbers;  ///< "350 Ω × 332.018 kΩ / (350 Ω + 332.018 kΩ)"
  std::string result;   ///< "349.631 Ω"
  std::string source;   ///< where the formula is from; "from memory" where that is the truth; may be empty
};

/// An exact value beside the textbook's approximation.
struct WorkingContrast {
  std::string what;         ///< "Simulated strain"
  std::string exact;        ///< "509.43 µm/m, whole network with its leads"
  std::string approximate;  ///< "509.98 µm/m"
  std::string formula;      ///< of the approximation: "R / (F (R + Rs))"
  std::string off;          ///< "+0.11 %", of the exact value
  std::string why;          ///< what the approximation leaves out, in one sentence
};

struct WorkingPart {
  std::string heading;  ///< "The step", "The reading", "The verdict"
  std::vector<WorkingLine> lines;
  std::vector<WorkingContrast> contrasts;
};

/// How the numbers of one step come about: from the closed shunts through the network to output, simulated
/// strain, expected reading, its uncertainty, and with a check to change, deviation, decision and the line.
/// `check` is an index in the channel; none: the plan alone. Fails as the step's prediction does.
Result<std::vector<WorkingPart>> workingOf(const Channel& channel, const ChannelEvaluation& evaluation,
                                           std::optional<std::size_t> check, std::size_t step);

}  // namespace core
