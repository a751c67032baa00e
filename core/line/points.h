// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "core/units/result.h"

namespace core {

/// What keeps x and y from being the points of any fit: different lengths, fewer than `least` points,
/// a value that is not finite (the point is named, counted from 1). Nothing when all is well.
std::optional<Error> faultOfPoints(std::span<const double> x, std::span<const double> y, std::size_t least);

}  // namespace core
