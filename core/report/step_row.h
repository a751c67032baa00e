// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/evaluate/evaluation.h"

namespace core {

/// One step of one check as it is printed, exported and drawn: plan, prediction, reading, verdict.
///
/// Simulated values are in `simulatedUnitText`, all readings in `readingUnitText` of the set-up that
/// the check is judged by. A value that is absent is not known; a measured one may be NaN or infinite.
struct StepRow {
  std::size_t step = 0;  ///< from 0
  std::string label;
  std::string closed;  ///< names of the closed shunts, "none" for a zero step
  Duration hold;
  Duration settle;
  Polarity polarity = Polarity::None;
  std::optional<double> simulated;
  std::optional<double> expandedStrain;  ///< U of `simulated`, scope strain (of a transducer load)
  std::optional<double> coverageStrain;  ///< k of it
  std::optional<Output> output;
  std::optional<double> expected;
  std::optional<double> expandedChain;  ///< U of `expected`, scope chain
  std::optional<double> coverageChain;  ///< k of it
  std::optional<double> reading;        ///< as shown by the instrument
  std::optional<double> uncertainty;    ///< standard uncertainty of `reading`
  std::optional<double> change;         ///< reading less the zero reference
  std::optional<double> deviation;      ///< change less expected
  std::optional<double> residual;       ///< change less the fitted line; absent where no line could be fitted
  std::optional<double> limit;          ///< greatest deviation that simple acceptance passes; of E_n its U
  std::optional<Decided> decided;  ///< by the decision rule, with its numbers; U of `deviation` among them
  Verdict verdict = Verdict::NotJudged;
  std::string reason;       ///< why the verdict, or why there is no prediction
  std::string notBudgeted;  ///< why a predicted step lacks an expanded uncertainty
};

/// The steps of check `check` (index) of `channel`, by the set-up that the check is judged by.
std::vector<StepRow> stepRows(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t check);

/// The steps as planned, without readings; `budget` is that of the same set-up and prediction.
std::vector<StepRow> plannedRows(const Setup& setup, const SetupPrediction& prediction, const Budget& budget);

}  // namespace core
