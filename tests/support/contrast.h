// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <algorithm>
#include <cmath>

namespace test {

/// WCAG 2.2, definition of relative luminance, with the threshold of its erratum (0.04045).
inline double luminanceOf(const QColor& colour) {
  const auto linear = [](double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

/// WCAG 2.2, definition of contrast ratio: 1 to 21, in either order.
inline double contrastOf(const QColor& a, const QColor& b) {
  const double one = luminanceOf(a), other = luminanceOf(b);
  return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05);
}

}  // namespace test
