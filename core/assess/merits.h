// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/assess/check_points.h"
#include "core/assess/verdict.h"
#include "core/plan/limits.h"

namespace core {

/// One figure of merit of a check.
struct Merit {
  MeritKind kind = MeritKind::Nonlinearity;
  /// In the readings' unit, with the sign that its definition gives (of SpanRatio and Symmetry: difference of
  /// slopes times the expected span). Absent when the plan or the readings do not give it: `reason` says why.
  std::optional<double> value;
  std::optional<double> share;      ///< value / denominator, with sign
  std::optional<double> standard;   ///< standard uncertainty of `share`
  double denominator = 0;           ///< in the readings' unit, above zero
  std::optional<double> limit;      ///< greatest magnitude of `share`
  std::optional<std::size_t> step;  ///< where the greatest deviation is, when it is at one step
  std::string definition;  ///< line and denominator: "from the least-squares line, of the measured span"
  std::optional<Decided> decided;  ///< by the decision rule, when there is a limit
  Verdict verdict = Verdict::NotJudged;
  std::string reason;  ///< one sentence a reviewer can quote, with its numbers
};

/// All figures of merit in the order of MeritKind. Definitions are those of the header's source list:
/// nonlinearity and combined error as in ISA-37.1, hysteresis, repeatability and zero return as in OIML R
/// 60-1 (wording from memory where the test does not name it). Judged by the decision rule of `setup` where
/// it has a limit for them; the others are told, not judged.
std::vector<Merit> meritsOf(const Setup& setup, const SetupPrediction& prediction, const Budget& budget,
                            const Check& check);

}  // namespace core
