// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/whitening.h"

#include <Eigen/Core>
#include <cmath>
#include <limits>

#include "core/units/language.h"

namespace core {
namespace {

using RowOfFactor = Eigen::Map<const Eigen::VectorXd>;

std::string rowName(std::string_view name, std::size_t row) {
  return say("row {1} of {2}", {std::to_string(row), name});
}

/// `pivot` is the share of its variance that the reading of `row` has for itself, as rounded.
Error dependent(std::string_view name, std::size_t row, double pivot, double rounding) {
  if (pivot < -rounding)
    return {rowName(name, row),
            say("the matrix is no covariance: it gives a sum of readings a negative variance"),
            say("Correct the matrix; covariances may not be larger than the variances admit")};
  return {rowName(name, row), say("the matrix is singular: this row follows from those before it"),
          say("Give each reading a variance of its own, or leave one of the readings out")};
}

}  // namespace

Whitening Whitening::ofUncertainties(std::vector<double> standard) {
  Whitening whitening;
  whitening.m_standard = std::move(standard);
  return whitening;
}

Result<Whitening> Whitening::ofCovariance(std::span<const double> covariance, std::size_t readings,
                                          std::string_view name, std::size_t firstRow) {
  Whitening whitening;
  whitening.m_standard.resize(readings);
  whitening.m_factor.resize(readings * readings);
  double* const factor = whitening.m_factor.data();
  std::vector<double>& standard = whitening.m_standard;
  // What the roundings of the factorisation can leave of a pivot that is zero.
  const double rounding = 4 * static_cast<double>(readings) * std::numeric_limits<double>::epsilon();
  for (std::size_t i = 0; i < readings; ++i) {
    const double variance = covariance[i * readings + i];
    if (!(variance > 0))
      return Error{rowName(name, firstRow + i), say("its variance is not positive"),
                   say("Give it a positive variance")};
    standard[i] = std::sqrt(variance);
    double* const row = factor + i * readings;
    for (std::size_t j = 0; j < i; ++j) {
      const double correlation = covariance[i * readings + j] / standard[i] / standard[j];
      const double* const other = factor + j * readings;
      const auto before = static_cast<Eigen::Index>(j);
      row[j] = (correlation - RowOfFactor(row, before).dot(RowOfFactor(other, before))) / other[j];
    }
    const double pivot = 1 - RowOfFactor(row, static_cast<Eigen::Index>(i)).squaredNorm();
    if (!(pivot > rounding)) return dependent(name, firstRow + i, pivot, rounding);
    row[i] = std::sqrt(pivot);
  }
  return whitening;
}

double Whitening::logDeterminant() const {
  double half = 0;
  for (const double standard : m_standard) half += std::log(standard);
  for (std::size_t k = 0; k * k < m_factor.size(); ++k) half += std::log(m_factor[k * m_standard.size() + k]);
  return 2 * half;
}

std::vector<double> Whitening::whitened(std::vector<double> column) const {
  for (std::size_t i = 0; i < column.size(); ++i) {
    column[i] /= m_standard[i];
    if (m_factor.empty()) continue;
    const double* const row = m_factor.data() + i * column.size();
    const auto before = static_cast<Eigen::Index>(i);
    column[i] = (column[i] - RowOfFactor(row, before).dot(RowOfFactor(column.data(), before))) / row[i];
  }
  return column;
}

std::vector<double> Whitening::weighted(std::vector<double> column) const {
  for (std::size_t i = column.size(); i-- > 0;) {
    if (!m_factor.empty()) {
      const double* const row = m_factor.data() + i * column.size();
      column[i] /= row[i];
      for (std::size_t j = 0; j < i; ++j) column[j] -= row[j] * column[i];
    }
    column[i] /= m_standard[i];
  }
  return column;
}

std::optional<Error> faultOfCovariance(std::span<const double> covariance, std::size_t readings,
                                       std::string_view name) {
  const std::string matrix(name);
  if (covariance.size() != readings * readings)
    return Error{matrix,
                 say("it has {1} numbers, the points need {2} rows of {3}",
                     {std::to_string(covariance.size()), std::to_string(readings), std::to_string(readings)}),
                 say("Give a row and a column for every value")};
  const auto cell = [&](std::size_t i, std::size_t j) {
    return say("row {1}, column {2} of {3}", {std::to_string(i + 1), std::to_string(j + 1), matrix});
  };
  for (std::size_t i = 0; i < readings; ++i) {
    const double variance = covariance[i * readings + i];
    for (std::size_t j = 0; j < readings; ++j)
      if (!std::isfinite(covariance[i * readings + j]))
        return Error{cell(i, j), say("it is not a finite number"), say("Correct the value")};
    if (variance < 0)
      return Error{cell(i, i), say("a variance cannot be negative"), say("Correct the value")};
    for (std::size_t j = 0; j < i; ++j) {
      // Sums taken in another order differ in their last digits; that is still symmetric.
      const double allowed = 1e-9 * std::sqrt(variance) * std::sqrt(covariance[j * readings + j]);
      if (std::abs(covariance[i * readings + j] - covariance[j * readings + i]) > allowed)
        return Error{cell(i, j),
                     say("the matrix is not symmetric: row and column exchanged give another value"),
                     say("Correct one of the two values")};
    }
  }
  return std::nullopt;
}

}  // namespace core
