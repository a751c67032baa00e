// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "core/diagnose/fault.h"
#include "core/line/whitening.h"

namespace core {

/// Readings weighed by their covariance, with an offset that is free.
class FreeOffset {
 public:
  explicit FreeOffset(Whitening whitening);

  /// `values` whitened and with the offset taken out; `offset` (may be null) is how much that was.
  std::vector<double> reduced(std::vector<double> values, double* offset) const;
  double logDeterminant() const { return m_whitening.logDeterminant(); }

 private:
  Whitening m_whitening;
  std::vector<double> m_ones;  ///< the offset's column, whitened
  double m_onesSquared = 0;
};

struct Refit;
struct DiagnosisGround;

/// What is different when the readings of one check are held against those of another instead of against
/// what is expected.
struct BetweenChecks {
  /// Covariance of the difference if `fault` were there in one of both checks and the readings `changes`.
  std::function<std::optional<std::vector<double>>(const Fault& fault, const std::vector<double>& changes)>
      covariance;
  /// -2 ln of how likely a fault makes what else was observed (the zero), less the same of no fault.
  std::function<double(const Refit& refit)> evidence;
  const DiagnosisGround* plan = nullptr;  ///< a check alone: what a further step would belong to
};

/// What a check is held against: everything that the hypotheses share.
struct DiagnosisGround {
  const Setup& setup;
  const SetupPrediction& prediction;
  const Check& check;
  CheckPoints points;
  FreeOffset healthy;  ///< by the covariance of the points
  /// Last digit that stands in for an uncertainty that readings lack, in their unit; none when all have one.
  std::optional<double> digit = {};
  const BetweenChecks* between = nullptr;  ///< when it is the difference of two checks
};
/// Fails with fewer than three points, without a step that closes a shunt, and when the covariance is missing
/// or not positive definite.
Result<DiagnosisGround> diagnosisGround(const Setup& setup, const SetupPrediction& prediction,
                                        const Budget& budget, const Check& check);

/// Covariance of measured less expected if `fault` were there and the readings `changes`: uncertainties that
/// are a share of a reading grow with it, a shunt elsewhere brings the errors of that place, a reading that
/// has stopped has none but its own. None when it stays as it is, or cannot be had.
std::optional<std::vector<double>> covarianceUnder(const DiagnosisGround& ground, const Fault& fault,
                                                   const std::vector<double>& changes);

/// A fault refitted to readings with a free offset.
struct Refit {
  Fault fault;                     ///< with its size as fitted
  std::optional<double> standard;  ///< of the size, when that is free and does something
  double chiSquare = 0;
  double logDeterminant = 0;    ///< of the covariance under the fault over that of the healthy channel
  std::size_t parameters = 1;   ///< the offset, and the size when it is free
  double offset = 0;            ///< readings' unit
  std::vector<double> changes;  ///< at each point, offset included
};

/// The best size of `start`'s kind for `measured` (changes at the points of `ground`): Gauss-Newton with
/// halved steps, from that size and from a few others, weighed by the covariance that the fault would give.
/// Of two sizes that do the same, another nominal resistance is taken first, then the one nearer to none.
/// None when the fault cannot be predicted.
std::optional<Refit> refit(const DiagnosisGround& ground, const Fault& start,
                           const std::vector<double>& measured);
/// The healthy channel: the offset alone.
Refit refitHealthy(const DiagnosisGround& ground, const std::vector<double>& measured);

}  // namespace core
