// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/diagnose/fault.h"

namespace core {

/// What a check is held against: everything that the hypotheses share.
struct DiagnosisGround {
  const Setup& setup;
  const SetupPrediction& prediction;
  const Check& check;
  CheckPoints points;
  std::vector<double> whitening;  ///< inverse of the Cholesky factor of the covariance, lower, row after row
};
/// Fails with fewer than three points, and when the covariance is missing or not positive definite.
Result<DiagnosisGround> diagnosisGround(const Setup& setup, const SetupPrediction& prediction,
                                        const Budget& budget, const Check& check);

/// A fault refitted to readings with a free offset.
struct Refit {
  Fault fault;                     ///< with its size as fitted
  std::optional<double> standard;  ///< of the size
  double chiSquare = 0;
  std::size_t parameters = 1;   ///< the offset, and the size when it is free
  double offset = 0;            ///< readings' unit
  std::vector<double> changes;  ///< at each point, offset included
};

/// The best size of `start`'s kind for `measured` (changes at the points of `ground`): Gauss-Newton with
/// halved steps from that size and from a few others. None when the fault cannot be predicted.
std::optional<Refit> refit(const DiagnosisGround& ground, const Fault& start,
                           const std::vector<double>& measured);
/// The healthy channel: the offset alone.
Refit refitHealthy(const DiagnosisGround& ground, const std::vector<double>& measured);

}  // namespace core
