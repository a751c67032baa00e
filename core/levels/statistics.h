// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace core {

/// The value below which the share `q` (0 to 1) of `values` lies, the nearest one that occurs; needs one
/// value at least. The order of `values` is lost.
double quantile(std::vector<double>& values, double q);

/// `values` with each inner one replaced by the median of itself and its two neighbours: single-sample
/// spikes vanish, steps stay where they are.
std::vector<double> withoutSpikes(std::span<const double> values);

/// Correlation of `values` with themselves `lag` samples later, about their mean and with one divisor for
/// all lags (the convention of NIST StRD): sum (y_t - m)(y_t+lag - m) / sum (y - m)^2. 0 when they do not
/// vary.
double autocorrelation(std::span<const double> values, std::size_t lag);

/// How many independent samples tell as much about the mean as these n correlated ones:
/// n / (1 + 2 sum (1 - k/n) r_k) over the lags k before the first r_k that is not positive. From 1 to n:
/// negative correlation earns nothing, since periodic pick-up shows it too.
/// Source: Zhang, "Calculation of the uncertainty of the mean of autocorrelated measurements", Metrologia 43
/// (2006) (from memory); where to cut the sum is common practice. On short records r_k, and with it the
/// uncertainty, comes out somewhat small.
double effectiveSampleSize(std::span<const double> values);

/// Standard uncertainty of the mean: standard deviation / sqrt(effective sample size). Long records are
/// averaged in blocks first, which leaves mean and uncertainty as they are and the work small. 0 for
/// values that do not vary; needs two values, gives 0 for one.
double uncertaintyOfMean(std::span<const double> values);

}  // namespace core
