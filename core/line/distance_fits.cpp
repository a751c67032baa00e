// SPDX-License-Identifier: GPL-3.0-or-later
// Lines through points with uncertain x and y. For a given line the best true x follow in closed form, and
// what is left to minimise is z^T V^-1 z with z = y - a - b x and V its covariance. Gauss-Newton on all true
// x and the line (ISO/TS 28037:2010 clauses 7, 8 and 10) comes down to least squares of z on (1, adjusted x)
// with covariance V: eliminating the true x from the normal equations leaves just that.
#include <Eigen/Core>
#include <algorithm>
#include <cmath>

#include "core/line/finite_line.h"
#include "core/line/points.h"
#include "core/line/stated_fits.h"
#include "core/line/whitened_fit.h"
#include "core/units/language.h"

namespace core {
namespace {

using Numbers = std::vector<double>;

constexpr std::string_view fullMatrix = sayLater("the covariance of x and y");

struct ScaledPoints {
  double xScale, yScale;
  Numbers x, y;
  bool throughZero;
};

/// Uncertainties of x and y that are correlated within a point at most.
struct PairErrors {
  Numbers ux, uy;
  Numbers correlation;

  Numbers xDeviations() const { return ux; }
  Numbers yDeviations() const { return uy; }

  /// Of y - b x; the square is completed, so that nothing cancels.
  Result<Whitening> ofResiduals(double b) const {
    Numbers standard(ux.size());
    for (std::size_t i = 0; i < ux.size(); ++i)
      standard[i] = std::hypot(uy[i] - correlation[i] * b * ux[i],
                               b * ux[i] * std::sqrt((1 - correlation[i]) * (1 + correlation[i])));
    return Whitening::ofUncertainties(std::move(standard));
  }

  /// cov(x, y - b x) times `column`.
  Numbers shared(double b, const Numbers& column) const {
    Numbers product(column.size());
    for (std::size_t i = 0; i < ux.size(); ++i)
      product[i] = (correlation[i] * uy[i] - b * ux[i]) * ux[i] * column[i];
    return product;
  }
};

using Matrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

/// Any covariance of all x and y.
struct MatrixErrors {
  Matrix xx, xy, yy;

  Numbers xDeviations() const { return deviations(xx); }
  Numbers yDeviations() const { return deviations(yy); }

  Result<Whitening> ofResiduals(double b) const {
    const Matrix covariance = yy + b * b * xx - b * (xy + xy.transpose());
    return Whitening::ofCovariance({covariance.data(), static_cast<std::size_t>(covariance.size())},
                                   static_cast<std::size_t>(yy.rows()), say(fullMatrix),
                                   static_cast<std::size_t>(xx.rows()) + 1);
  }

  Numbers shared(double b, const Numbers& column) const {
    Numbers product(column.size());
    const Eigen::Map<const Eigen::VectorXd> given(column.data(), xx.rows());
    Eigen::Map<Eigen::VectorXd>(product.data(), xx.rows()) = xy * given - b * (xx * given);
    return product;
  }

 private:
  static Numbers deviations(const Matrix& covariance) {
    Numbers deviations;
    for (Eigen::Index i = 0; i < covariance.rows(); ++i) deviations.push_back(std::sqrt(covariance(i, i)));
    return deviations;
  }
};

double squared(const Numbers& column) {
  double sum = 0;
  for (const double v : column) sum += v * v;
  return sum;
}

/// A line on the way to the best one, and what it leaves.
struct Trial {
  CentredLine line;
  Whitening whitening;
  Numbers residuals, whitened;
  double chiSquare;
};

template <class Errors>
Result<Trial> trialOf(const CentredLine& line, const ScaledPoints& points, const Errors& errors) {
  auto whitening = errors.ofResiduals(line.slope.value());
  if (!whitening) return whitening.error();
  Numbers residuals = residualsOf(line, points.x, points.y);
  Numbers whitened = whitening->whitened(residuals);
  const double chiSquare = squared(whitened);
  return Trial{line, *std::move(whitening), std::move(residuals), std::move(whitened), chiSquare};
}

template <class Errors>
Numbers adjusted(const Trial& trial, const ScaledPoints& points, const Errors& errors) {
  Numbers x = errors.shared(trial.line.slope.value(), trial.whitening.weighted(trial.whitened));
  for (std::size_t i = 0; i < x.size(); ++i) x[i] = points.x[i] - x[i];
  return x;
}

/// y on x by the uncertainties of y alone.
CentredLine directStart(const ScaledPoints& points, Numbers uy) {
  const Whitening whitening = Whitening::ofUncertainties(std::move(uy));
  return corrected(lineBasis(whitening, points.x, points.throughZero), {}, whitening.whitened(points.y));
}

/// x on y by the uncertainties of x alone, turned about: nearer than the direct start where the x scatter
/// more. None when some x are exact, or the y do not vary.
std::optional<CentredLine> turnedStart(const ScaledPoints& points, Numbers ux) {
  if (std::any_of(ux.begin(), ux.end(), [](double u) { return u == 0; })) return std::nullopt;
  const CentredLine turned = directStart({1, 1, points.y, points.x, points.throughZero}, std::move(ux));
  const DoubleDouble slope = DoubleDouble(1) / turned.slope;
  if (!std::isfinite(slope.value())) return std::nullopt;
  return CentredLine{turned.atCentre, turned.centre, slope};
}

template <class Errors>
Result<Trial> startOf(const ScaledPoints& points, const Errors& errors) {
  auto direct = trialOf(directStart(points, errors.yDeviations()), points, errors);
  if (!direct) return direct;
  const auto line = turnedStart(points, errors.xDeviations());
  if (!line) return direct;
  auto turned = trialOf(*line, points, errors);
  return turned && turned->chiSquare < direct->chiSquare ? turned : direct;
}

/// Length of the way from one line to another, in standard uncertainties.
double stepLength(const CentredLine& from, const CentredLine& to, const LineBasis& basis) {
  const double slope = (to.slope - from.slope).value() * std::sqrt(basis.rampSquare);
  const double level = (to.atCentre - from.about(to.centre).atCentre).value() * std::sqrt(basis.oneSquare);
  return std::hypot(slope, level);
}

CentredLine halfway(const CentredLine& from, const CentredLine& to) {
  const CentredLine start = from.about(to.centre);
  return {to.centre, (start.atCentre + to.atCentre) * 0.5, (start.slope + to.slope) * 0.5};
}

Error unsettled() {
  return {"points", say("the iteration does not settle: the points fix no line within their uncertainties"),
          say("Look for points or uncertainties that are wrong, or add points farther apart")};
}

template <class Errors>
Result<Line> settledLine(LineFit fit, const ScaledPoints& points, const Errors& errors) {
  constexpr int greatestSteps = 500, greatestHalvings = 40;
  auto trial = startOf(points, errors);
  for (int step = 0; trial && step < greatestSteps; ++step) {
    const LineBasis basis = lineBasis(trial->whitening, adjusted(*trial, points, errors), points.throughZero);
    CentredLine line = corrected(basis, trial->line, trial->whitened);
    const double length = stepLength(trial->line, line, basis);
    if (!std::isfinite(length)) return unsettled();
    auto next = trialOf(line, points, errors);
    // The direction is downhill; where the step is too long a part of it goes down too.
    for (int halving = 0; next && next->chiSquare > trial->chiSquare * (1 + 1e-12) && length > 1e-6;
         ++halving) {
      if (halving == greatestHalvings) return unsettled();
      line = halfway(trial->line, line);
      next = trialOf(line, points, errors);
    }
    trial = std::move(next);
    // Rounding of the whitened residuals alone makes steps of some 1e-16 of their length.
    if (!trial || length > 1e-12 * (1 + std::sqrt(trial->chiSquare))) continue;
    Numbers x = adjusted(*trial, points, errors);
    const LineBasis last = lineBasis(trial->whitening, x, points.throughZero);
    Line settled = statedLine(fit, trial->whitening, last, trial->line, std::move(trial->residuals),
                              1 / points.xScale, 1 / points.yScale);
    settled.adjustedX = scaledBy(x, 1 / points.xScale);
    return finiteLine(std::move(settled));
  }
  return trial ? unsettled() : trial.error();
}

/// Correlation of x and y within each point, or why there is none.
Result<Numbers> correlationsOf(std::span<const double> covariances, std::span<const double> ux,
                               std::span<const double> uy) {
  Numbers correlations(ux.size(), 0.0);
  if (covariances.empty()) return correlations;
  if (covariances.size() != ux.size())
    return Error{"covxy",
                 say("there are {1} of them for {2} points",
                     {std::to_string(covariances.size()), std::to_string(ux.size())}),
                 say("Give every point a covariance, or none")};
  for (std::size_t i = 0; i < ux.size(); ++i) {
    if (covariances[i] == 0) continue;
    correlations[i] = covariances[i] / ux[i] / uy[i];
    if (std::abs(correlations[i]) < 1 - 1e-12) continue;
    return Error{say("point {1}", {std::to_string(i + 1)}),
                 std::isfinite(covariances[i])
                     ? say("its covariance of x and y is not smaller than ux times uy")
                     : say("its covariance of x and y is not a finite number"),
                 say("Correct the covariance or the uncertainties")};
  }
  return correlations;
}

/// What keeps a matrix that is symmetric from being a covariance of x, some of them exact, and y.
std::optional<Error> faultOfFullCovariance(std::span<const double> covariance, std::size_t points) {
  const std::size_t size = 2 * points;
  if (auto fault = faultOfCovariance(covariance, size, say(fullMatrix))) return fault;
  Numbers checked(covariance.begin(), covariance.end());
  for (std::size_t i = 0; i < points; ++i) {
    if (covariance[i * size + i] != 0) continue;
    const auto row = covariance.subspan(i * size, size);
    if (std::any_of(row.begin(), row.end(), [](double v) { return v != 0; }))
      return Error{say("row {1} of {2}", {std::to_string(i + 1), say(fullMatrix)}),
                   say("an x without a variance cannot have covariances"),
                   say("Give it a variance, or leave its row and column zero")};
    checked[i * size + i] = 1;
  }
  const auto whitening = Whitening::ofCovariance(checked, size, say(fullMatrix));
  if (!whitening) return whitening.error();
  return std::nullopt;
}

ScaledPoints scaledPoints(std::span<const double> x, std::span<const double> y, double yScale,
                          Through through) {
  const double xScale = scaleToOne(x);
  return {xScale, yScale, scaledBy(x, xScale), scaledBy(y, yScale), through == Through::Zero};
}

}  // namespace

Result<Line> fitDistanceLine(std::span<const double> x, std::span<const double> y, std::span<const double> ux,
                             std::span<const double> uy, std::span<const double> covariances,
                             Through through) {
  if (auto fault = faultOfLinePoints(x, y, through == Through::Zero)) return *fault;
  if (auto fault = faultOfUncertainties(ux, x.size(), "ux", Exact::Yes)) return *fault;
  if (auto fault = faultOfUncertainties(uy, x.size(), "uy", Exact::No)) return *fault;
  auto correlations = correlationsOf(covariances, ux, uy);
  if (!correlations) return correlations.error();
  const ScaledPoints points = scaledPoints(x, y, scaleToOne(uy), through);
  return settledLine(
      LineFit::Distance, points,
      PairErrors{scaledBy(ux, points.xScale), scaledBy(uy, points.yScale), *std::move(correlations)});
}

Result<Line> fitGeneralisedLine(std::span<const double> x, std::span<const double> y,
                                std::span<const double> covariance, Through through) {
  if (auto fault = faultOfLinePoints(x, y, through == Through::Zero)) return *fault;
  if (auto fault = faultOfFullCovariance(covariance, x.size())) return *fault;
  const auto m = static_cast<Eigen::Index>(x.size());
  const Eigen::Map<const Matrix> all(covariance.data(), 2 * m, 2 * m);
  const double deviation = std::sqrt(all.diagonal().tail(m).maxCoeff());
  const ScaledPoints points = scaledPoints(x, y, scaleToOne({&deviation, 1}), through);
  return settledLine(LineFit::Generalised, points,
                     MatrixErrors{all.topLeftCorner(m, m) * points.xScale * points.xScale,
                                  all.topRightCorner(m, m) * points.xScale * points.yScale,
                                  all.bottomRightCorner(m, m) * points.yScale * points.yScale});
}

}  // namespace core
