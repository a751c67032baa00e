// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/units/result.h"

namespace core {

/// What keeps x and y from being the points of any fit: different lengths, fewer than `least` points,
/// a value that is not finite (the point is named, counted from 1). Nothing when all is well.
std::optional<Error> faultOfPoints(std::span<const double> x, std::span<const double> y, std::size_t least);

/// What keeps them from being the points of a line, or of one through zero: as above; or x do not fix it.
std::optional<Error> faultOfLinePoints(std::span<const double> x, std::span<const double> y,
                                       bool throughZero);

enum class Exact : bool { No, Yes };
/// What keeps `uncertainties`, called `name`, from being those of so many `points`: another number of them,
/// or one that is negative, not finite or, unless `exact` says that it may be, zero.
std::optional<Error> faultOfUncertainties(std::span<const double> uncertainties, std::size_t points,
                                          std::string_view name, Exact exact);

/// `values` times `scale`.
std::vector<double> scaledBy(std::span<const double> values, double scale);

}  // namespace core
