// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace core {

/// The value below which the share `q` (0 to 1) of `values` lies, the nearest one that occurs; needs one
/// value at least. The order of `values` is lost.
double quantile(std::vector<double>& values, double q);

/// Correlation of `values` with themselves `lag` samples later, about their mean and with one divisor for
/// all lags (the convention of NIST StRD): sum (y_t - m)(y_t+lag - m) / sum (y - m)^2. 0 when they do not
/// vary.
double autocorrelation(std::span<const double> values, std::size_t lag);

}  // namespace core
