// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/units/result.h"

namespace core {

/// Turns readings of covariance V into independent ones of unit variance: W v with W^T W = V^-1.
/// V is taken as deviations and correlations, and the correlations are factorised (Cholesky), so that units
/// and sizes of the readings do not matter: the rounding is that of a change of V in its last digit.
class Whitening {
 public:
  /// Of independent readings with these standard uncertainties, all positive.
  static Whitening ofUncertainties(std::vector<double> standard);

  /// Of readings with this covariance, row after row; only its lower triangle is looked at. Fails, naming the
  /// row of `name` counted from `firstRow`, where a variance is not positive or the row follows from those
  /// before it.
  static Result<Whitening> ofCovariance(std::span<const double> covariance, std::size_t readings,
                                        std::string_view name, std::size_t firstRow = 1);

  std::size_t readings() const { return m_standard.size(); }
  /// Standard uncertainty of a reading.
  double standard(std::size_t reading) const { return m_standard[reading]; }

  /// Natural logarithm of the determinant of V.
  double logDeterminant() const;
  /// W column.
  std::vector<double> whitened(std::vector<double> column) const;
  /// W^T column: of a whitened column V^-1 times what it was.
  std::vector<double> weighted(std::vector<double> column) const;

 private:
  std::vector<double> m_standard;
  std::vector<double> m_factor;  ///< lower triangle L of the correlations L L^T, row after row; empty: none
};

/// What keeps `covariance` from being that of `readings` readings: another size, a number that is not finite,
/// a variance that is negative, no symmetry. Rows and columns of `name` are counted from 1.
std::optional<Error> faultOfCovariance(std::span<const double> covariance, std::size_t readings,
                                       std::string_view name);

}  // namespace core
