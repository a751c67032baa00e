// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/stated_fits.h"

#include <algorithm>
#include <cmath>

#include "core/line/finite_line.h"
#include "core/line/points.h"
#include "core/line/whitened_fit.h"
#include "core/units/language.h"

namespace core {
namespace {

/// The line of points with exact x, and y of the covariance behind `whitening` in units of `yUnit`.
Result<Line> whitenedLine(LineFit fit, std::span<const double> x, std::span<const double> y,
                          const Whitening& whitening, double yUnit, Through through) {
  const double xScale = scaleToOne(x);
  const std::vector<double> xs = scaledBy(x, xScale), ys = scaledBy(y, 1 / yUnit);
  const LineBasis basis = lineBasis(whitening, xs, through == Through::Zero);
  CentredLine line;
  std::vector<double> residuals = ys;
  // The second fit, to what the first one left over, takes out the rounding of the first.
  for (int pass = 0; pass < 2; ++pass) {
    line = corrected(basis, line, whitening.whitened(std::move(residuals)));
    residuals = residualsOf(line, xs, ys);
  }
  return finiteLine(statedLine(fit, whitening, basis, line, std::move(residuals), 1 / xScale, yUnit));
}

}  // namespace

Result<Line> fitWeightedLine(std::span<const double> x, std::span<const double> y, std::span<const double> uy,
                             Through through) {
  if (auto fault = faultOfLinePoints(x, y, through == Through::Zero)) return *fault;
  if (auto fault = faultOfUncertainties(uy, y.size(), "uy", Exact::No)) return *fault;
  const double scale = scaleToOne(uy);
  const Whitening whitening = Whitening::ofUncertainties(scaledBy(uy, scale));
  return whitenedLine(LineFit::Weighted, x, y, whitening, 1 / scale, through);
}

Result<Line> fitCorrelatedLine(std::span<const double> x, std::span<const double> y,
                               std::span<const double> covariance, Through through) {
  const std::string matrix = say("the covariance of y");
  if (auto fault = faultOfLinePoints(x, y, through == Through::Zero)) return *fault;
  if (auto fault = faultOfCovariance(covariance, y.size(), matrix)) return *fault;
  double greatest = 0;
  for (std::size_t i = 0; i < y.size(); ++i) greatest = std::max(greatest, covariance[i * y.size() + i]);
  const double deviation = std::sqrt(greatest);
  const double scale = scaleToOne({&deviation, 1});
  const auto whitening =
      Whitening::ofCovariance(scaledBy(scaledBy(covariance, scale), scale), y.size(), matrix);
  if (!whitening) return whitening.error();
  return whitenedLine(LineFit::Correlated, x, y, *whitening, 1 / scale, through);
}

}  // namespace core
