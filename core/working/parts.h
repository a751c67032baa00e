// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/working/working.h"

// The parts of a working. Internal to core/working.

namespace core {

/// A step that could be predicted, with all that its working draws from.
struct WorkingGround {
  const Setup& setup;
  const SetupPrediction& prediction;
  const Budget& budget;
  std::size_t step = 0;
  const Prediction& predicted;  ///< of `step`
  Output zero;                  ///< with all shunts open

  bool isZeroStep() const { return setup.sequence[step].closed.empty(); }
};

/// Closed shunts, arms, potentials, output.
WorkingPart stepPart(const WorkingGround& ground);
/// The exact inverse of the network beside the textbook's formulas that hold for this bridge and its shunts.
WorkingPart simulatedPart(const WorkingGround& ground);
/// What the instrument makes of the change of output.
WorkingPart readingPart(const WorkingGround& ground);
/// The largest lines of both budgets.
WorkingPart uncertaintyPart(const WorkingGround& ground);
/// Zero reference, change, deviation, limit, decision.
WorkingPart verdictPart(const WorkingGround& ground, const Check& check, const CheckAssessment& assessment);
/// The fitted line and where this step lies from it.
WorkingPart linePart(const WorkingGround& ground, const Check& check, const CheckAssessment& assessment);

}  // namespace core
