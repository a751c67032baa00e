// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

// Evidence for one model among several of the same data. Smaller is better; only differences mean something,
// and only between numbers of one kind: with stated uncertainties, or with scatter taken from the residuals.
// Akaike 1974; Hurvich and Tsai 1989; Schwarz 1978 (from memory).

namespace core {

struct Information {
  double akaike = 0;    ///< AIC; of an unknown scatter with the correction for few points (AICc)
  double bayesian = 0;  ///< BIC
};

/// Stated uncertainties: AIC = chi2 + 2 p, BIC = chi2 + p ln n; the scatter is no parameter.
Information informationOfChiSquare(double chiSquare, std::size_t parameters, std::size_t points);

/// Unknown scatter, which counts as one more parameter k = p + 1: AICc = n ln(RSS/n) + n (1 + ln 2 pi) + 2 k
/// + 2 k (k + 1)/(n - k - 1), BIC = n ln(RSS/n) + n (1 + ln 2 pi) + k ln n. A scatter below `resolution` (of
/// the readings, standard deviation) counts as that: exact fits prove nothing. AICc is infinite when
/// n <= k + 1; both are -infinite when RSS and `resolution` are zero.
Information informationOfResiduals(double residualSumOfSquares, std::size_t parameters, std::size_t points,
                                   double resolution);

}  // namespace core
