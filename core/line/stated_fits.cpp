// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/stated_fits.h"

#include <cmath>

#include "core/line/finite_line.h"
#include "core/line/points.h"
#include "core/line/whitened_fit.h"

namespace core {
namespace {

std::vector<double> scaled(std::span<const double> values, double scale) {
  std::vector<double> column(values.begin(), values.end());
  for (double& value : column) value *= scale;
  return column;
}

/// The line of points with exact x, and y of the covariance behind `whitening` in units of `yUnit`.
Result<Line> whitenedLine(LineFit fit, std::span<const double> x, std::span<const double> y,
                          const Whitening& whitening, double yUnit, Through through) {
  const double xScale = scaleToOne(x);
  const std::vector<double> xs = scaled(x, xScale), ys = scaled(y, 1 / yUnit);
  const LineBasis basis = lineBasis(whitening, xs, through == Through::Zero);
  CentredLine line{basis.centre, 0, 0};
  std::vector<double> residuals = ys;
  // The second fit, to what the first one left over, takes out the rounding of the first.
  for (int pass = 0; pass < 2; ++pass) {
    line = corrected(basis, line, whitening.whitened(std::move(residuals)));
    residuals = residualsOf(line, xs, ys);
  }
  return finiteLine(statedLine(fit, whitening, basis, line, std::move(residuals), 1 / xScale, yUnit));
}

Error notYet() { return {"line", "this fit is not there yet", ""}; }
}  // namespace

Result<Line> fitWeightedLine(std::span<const double>, std::span<const double>, std::span<const double>,
                             Through) {
  return notYet();
}

Result<Line> fitDistanceLine(std::span<const double>, std::span<const double>, std::span<const double>,
                             std::span<const double>, std::span<const double>, Through) {
  return notYet();
}

Result<Line> fitCorrelatedLine(std::span<const double> x, std::span<const double> y,
                               std::span<const double> covariance, Through through) {
  constexpr std::string_view matrix = "the covariance of y";
  if (auto fault = faultOfLinePoints(x, y, through == Through::Zero)) return *fault;
  if (auto fault = faultOfCovariance(covariance, y.size(), matrix)) return *fault;
  double greatest = 0;
  for (std::size_t i = 0; i < y.size(); ++i)
    greatest = std::max(greatest, covariance[i * y.size() + i]);
  const double deviation = std::sqrt(greatest);
  const double scale = scaleToOne({&deviation, 1});
  const auto whitening = Whitening::ofCovariance(scaled(scaled(covariance, scale), scale), y.size(), matrix);
  if (!whitening) return whitening.error();
  return whitenedLine(LineFit::Correlated, x, y, *whitening, 1 / scale, through);
}

Result<Line> fitGeneralisedLine(std::span<const double>, std::span<const double>, std::span<const double>,
                                Through) {
  return notYet();
}

}  // namespace core
