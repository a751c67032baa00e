// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/assess/check.h"
#include "core/assess/merits.h"
#include "core/assess/verdict.h"
#include "core/budget/budget.h"
#include "core/line/line.h"
#include "core/plan/prediction.h"

namespace core {

/// One step of a check against its prediction.
struct StepAssessment {
  Verdict verdict = Verdict::NotJudged;
  std::optional<Reading> change;     ///< measured reading less the zero reference
  std::optional<Reading> deviation;  ///< `change` less the expected reading
  std::optional<Reading> limit;      ///< greatest deviation that simple acceptance passes; of E_n its U
  std::optional<Reading> standard;   ///< standard uncertainty of `deviation`
  std::optional<Decided> decided;    ///< by the decision rule, with its numbers
  std::string reason;                ///< one sentence with its numbers
};

/// What the whole chain makes of what it should show.
struct ChainGain {
  double value = 1;  ///< slope of `CheckAssessment::agreement`, measured change over expected reading
  /// Standard uncertainty. Where chi-square rejects the stated uncertainties (probability below 0.05) widened
  /// by sqrt(chi-square / degrees of freedom), as York, Evensen, Martinez and Delgado 2004 (Am. J. Phys. 72,
  /// 367), section V, allow (from memory); never narrowed.
  std::optional<double> standard;
  bool isWidened = false;
  /// False when chi-square has a probability below 0.001 and the slope by ordinary least squares differs by
  /// more than the widened uncertainty: then it hangs on the weights, and no line describes the readings.
  bool describesReadings = true;
};

/// A whole check against its prediction.
struct CheckAssessment {
  std::vector<StepAssessment> steps;
  std::optional<std::size_t>
      zeroStep;  ///< the step that was taken as zero reference, none without a zero reading
  std::optional<Reading> zeroReturn;  ///< last zero reading less the first; none with fewer than two
  Reading zeroReturnLimit;
  /// Measured change against simulated value, both in their units; with the covariance of predictions and
  /// readings (see CheckPoints) where it can be had, else by ordinary least squares: `line->fit` says which.
  /// Ordinary too where the bridge is predicted to be curved by more than the uncertainties (the chi-square
  /// of the expected readings themselves has a probability below 0.05): no straight line suits them then.
  Result<Line> line = Error{};
  /// Measured change against expected reading, fitted alike: slope 1 and intercept 0 when all is as
  /// predicted. Its chi-square tells whether the scatter is what was stated; that of `line` has the curvature
  /// in it that the bridge itself is predicted to have.
  Result<Line> agreement = Error{};
  std::optional<ChainGain> gain;  ///< of `agreement`, when there is one
  std::vector<Merit> merits;      ///< in the order of MeritKind
  Verdict verdict = Verdict::NotJudged;
  std::string reason;  ///< the verdict in words a reviewer can quote
};

/// Judges `check` by the decision rule of `setup`. The permitted deviation of a step is the larger of
/// `limits.relative` times the expected reading and `limits.least`; of a zero step after the first,
/// `limits.zeroReturn` times the greatest expected reading, never narrower than `least`.
/// The uncertainty of a deviation is that of the expected reading in the scope of the chain, with those of
/// the reading and of the zero reading where they are known.
/// The first zero step that has a reading is the zero reference. A step whose prediction or uncertainty
/// could not be worked out is not judged and does not hide the others. A check fails when one step or one
/// figure of merit with a limit fails, is not judged while one of these is not, cannot tell when one cannot,
/// and else passes; a figure without a limit changes nothing. Its reason names what decided, with as many
/// digits as the limits warrant.
/// It says something about the electrical chain only, never about gauge factor, bond or alignment.
CheckAssessment assess(const Setup& setup, const SetupPrediction& prediction, const Budget& budget,
                       const Check& check);

}  // namespace core
