// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/polynomial.h"

#include <algorithm>
#include <cmath>

#include "core/line/double_double_column.h"
#include "core/line/points.h"
#include "core/units/language.h"

namespace core {
namespace {

/// One orthogonal polynomial: its values at the points, its coefficients in powers of x.
struct Basis {
  Column values;
  Column powers;
  DoubleDouble norm;  ///< sum of squared values
};

/// (x - alpha) * last - beta * before: the three-term recurrence, in values and in powers alike.
Basis next(const Column& x, const Basis& last, const Basis* before, DoubleDouble alpha, DoubleDouble beta) {
  Basis basis;
  basis.values.resize(x.size());
  for (std::size_t i = 0; i < x.size(); ++i) {
    basis.values[i] = (x[i] - alpha) * last.values[i];
    if (before) basis.values[i] = basis.values[i] - beta * before->values[i];
  }
  basis.powers.resize(last.powers.size() + 1);
  for (std::size_t k = 0; k < last.powers.size(); ++k) {
    basis.powers[k + 1] += last.powers[k];
    basis.powers[k] = basis.powers[k] - alpha * last.powers[k];
  }
  for (std::size_t k = 0; before && k < before->powers.size(); ++k) {
    basis.powers[k] = basis.powers[k] - beta * before->powers[k];
  }
  basis.norm = product(basis.values, basis.values);
  return basis;
}

std::vector<Basis> orthogonalBases(const Column& x, int degree) {
  std::vector<Basis> bases{{Column(x.size(), 1.0), Column{1.0}, static_cast<double>(x.size())}};
  for (int k = 0; k < degree; ++k) {
    const Basis& last = bases.back();
    const Basis* before = k > 0 ? &bases[static_cast<std::size_t>(k) - 1] : nullptr;
    Column shifted = x;
    for (std::size_t i = 0; i < x.size(); ++i) shifted[i] = x[i] * last.values[i];
    const DoubleDouble alpha = product(shifted, last.values) / last.norm;
    const DoubleDouble beta = before ? last.norm / before->norm : DoubleDouble();
    bases.push_back(next(x, last, before, alpha, beta));
  }
  return bases;
}

std::size_t differentValues(std::span<const double> x) {
  std::vector<double> sorted(x.begin(), x.end());
  std::sort(sorted.begin(), sorted.end());
  return static_cast<std::size_t>(std::unique(sorted.begin(), sorted.end()) - sorted.begin());
}

/// Covariance of the powers of x for unit variance of y, times `variance`, back in the user's units.
std::vector<std::vector<double>> covarianceOf(const std::vector<Basis>& bases, DoubleDouble variance,
                                              double xScale, double yUnit) {
  const std::size_t n = bases.size();
  std::vector<std::vector<double>> covariance(n, std::vector<double>(n));
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j < n; ++j) {
      DoubleDouble sum;
      for (std::size_t k = std::max(i, j); k < n; ++k) {
        sum += bases[k].powers[i] * bases[k].powers[j] / bases[k].norm;
      }
      const double iUnit = yUnit * std::pow(xScale, static_cast<int>(i));
      const double jUnit = yUnit * std::pow(xScale, static_cast<int>(j));
      covariance[i][j] = (sum * variance).value() * iUnit * jUnit;
    }
  }
  return covariance;
}

/// The part of `y` along the bases as powers of x; `y` keeps the residuals.
Column projected(const std::vector<Basis>& bases, Column& y) {
  Column powers(bases.size());
  for (const Basis& basis : bases) {
    const DoubleDouble share = product(y, basis.values) / basis.norm;
    for (std::size_t i = 0; i < y.size(); ++i) y[i] = y[i] - share * basis.values[i];
    for (std::size_t k = 0; k < basis.powers.size(); ++k) powers[k] += share * basis.powers[k];
  }
  return powers;
}

void addScatter(Polynomial& polynomial, const std::vector<Basis>& bases, DoubleDouble rss, double xScale,
                double yUnit) {
  if (polynomial.degreesOfFreedom == 0) return;
  const DoubleDouble variance = rss / static_cast<double>(polynomial.degreesOfFreedom);
  polynomial.residualDeviation = std::sqrt(variance.value()) * yUnit;
  polynomial.covariance = covarianceOf(bases, variance, xScale, yUnit);
  polynomial.errors.emplace();
  for (std::size_t k = 0; k < bases.size(); ++k) {
    polynomial.errors->push_back(std::sqrt((*polynomial.covariance)[k][k]));
  }
}

std::optional<Error> faultOfDegree(std::span<const double> x, int degree) {
  if (degree < 0 || degree > greatestDegree) {
    return Error{"polynomial", say("degree {1} cannot be fitted", {std::to_string(degree)}),
                 say("Choose a degree from 0 to {1}", {std::to_string(greatestDegree)})};
  }
  const std::size_t different = differentValues(x);
  if (different > static_cast<std::size_t>(degree)) return std::nullopt;
  return Error{"points",
               say("{1} different x do not fix a polynomial of degree {2}",
                   {std::to_string(different), std::to_string(degree)}),
               say("Add points at other x or lower the degree")};
}

bool isFinite(const Polynomial& polynomial) {
  double sum = polynomial.residualSumOfSquares;
  for (const double c : polynomial.coefficients) sum += c;
  for (const double e : polynomial.errors.value_or(std::vector<double>{})) sum += e;
  return std::isfinite(sum);
}

}  // namespace

Result<Polynomial> fitPolynomial(std::span<const double> x, std::span<const double> y, int degree) {
  if (auto fault = faultOfPoints(x, y, 1)) return *fault;
  if (auto fault = faultOfDegree(x, degree)) return *fault;
  const double xScale = scaleToOne(x);
  const double yScale = scaleToOne(y);
  const double yUnit = 1 / yScale;
  const std::vector<Basis> bases = orthogonalBases(scaled(x, xScale), degree);
  Column rest = scaled(y, yScale);
  const Column powers = projected(bases, rest);

  Polynomial polynomial;
  for (std::size_t k = 0; k < powers.size(); ++k) {
    polynomial.coefficients.push_back(powers[k].value() * yUnit * std::pow(xScale, static_cast<int>(k)));
  }
  for (const DoubleDouble r : rest) polynomial.residuals.push_back(r.value() * yUnit);
  const DoubleDouble rss = product(rest, rest);
  polynomial.residualSumOfSquares = rss.value() * yUnit * yUnit;
  polynomial.degreesOfFreedom = static_cast<int>(x.size()) - degree - 1;

  Column aboutMean = scaled(y, yScale);
  projected({bases.front()}, aboutMean);
  const DoubleDouble total = product(aboutMean, aboutMean);
  if (std::any_of(y.begin(), y.end(), [&](double v) { return v != y.front(); })) {
    polynomial.rSquared = (DoubleDouble(1) - rss / total).value();
  }
  addScatter(polynomial, bases, rss, xScale, yUnit);
  if (isFinite(polynomial)) return polynomial;
  return Error{"points", say("the numbers are too large or too small to fit a polynomial to"),
               say("Choose other units")};
}

double valueAt(const Polynomial& polynomial, double x) {
  double value = 0;
  for (auto c = polynomial.coefficients.rbegin(); c != polynomial.coefficients.rend(); ++c) {
    value = std::fma(value, x, *c);
  }
  return value;
}

}  // namespace core
