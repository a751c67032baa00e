// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/axis_ticks.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace ui {
namespace {

double niceStep(double rough) {
  const double power = std::pow(10, std::floor(std::log10(rough)));
  for (const double factor : {1.0, 2.0, 5.0})
    if (rough <= factor * power * (1 + 1e-9)) return factor * power;
  return 10 * power;
}

}  // namespace

QString AxisTicks::labelFormat() const {
  const double greatest = std::max(std::abs(low), std::abs(high));
  if (greatest >= 1e7 || greatest < 1e-4) return QStringLiteral("%.2e");
  const int decimals = static_cast<int>(std::clamp(-std::floor(std::log10(step) + 1e-9), 0.0, 8.0));
  return QStringLiteral("%.%1f").arg(decimals);
}

QString AxisTicks::label(double value) const {
  return QString::asprintf(labelFormat().toLatin1().constData(), value);
}

void Extent::add(double value) {
  if (!isDrawable(value)) return;
  low = empty ? value : std::min(low, value);
  high = empty ? value : std::max(high, value);
  empty = false;
}

AxisTicks niceTicks(const Extent& extent, int count, double room) {
  double low = extent.empty ? -1 : extent.low, high = extent.empty ? 1 : extent.high;
  const double size = std::max(std::abs(low), std::abs(high));
  // Values that differ by rounding only would give an axis whose labels are all alike.
  if (high - low <= 1e-9 * size || high == low) {
    const double half = size > 0 ? 0.1 * size : 1;
    low -= half, high += half;
  }
  const double free = room * (high - low);
  low -= free, high += free;
  double step = niceStep((high - low) / std::max(count, 2));
  const auto intervals = [&] { return std::ceil(high / step) - std::floor(low / step); };
  while (intervals() > std::max(count, 2)) step = niceStep(1.5 * step);
  return {std::floor(low / step) * step, std::ceil(high / step) * step, step};
}

std::vector<double> multiples(double step, double low, double high) {
  constexpr double greatestCounted = 9007199254740992;  // 2^53: beyond it a double skips whole numbers
  const double first = std::ceil(low / step), last = std::floor(high / step);
  std::vector<double> result;
  if (!(std::isfinite(step) && std::max(std::abs(first), std::abs(last)) < greatestCounted)) return result;
  for (auto k = static_cast<std::int64_t>(first); k <= static_cast<std::int64_t>(last); ++k)
    result.push_back(static_cast<double>(k) * step);
  return result;
}

bool isDrawable(double value) { return std::isfinite(value) && std::abs(value) < greatestDrawn; }

}  // namespace ui
