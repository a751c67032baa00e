// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/time_axis.h"

#include <algorithm>
#include <cmath>

namespace core {

TimeAxis TimeAxis::even(double start_s, double spacing_s, std::size_t samples) {
  assert(spacing_s > 0);
  TimeAxis axis;
  axis.m_start_s = start_s;
  axis.m_spacing_s = spacing_s;
  axis.m_size = samples;
  return axis;
}

std::size_t TimeAxis::indexAt(double time_s) const {
  if (!m_times_s.empty()) {
    const auto at = std::lower_bound(m_times_s.begin(), m_times_s.end(), time_s);
    return static_cast<std::size_t>(at - m_times_s.begin());
  }
  if (m_size == 0 || !(time_s > m_start_s)) return 0;
  if (time_s > back()) return m_size;
  // The division may round to either side of the sample that is meant.
  auto k = static_cast<std::size_t>((time_s - m_start_s) / m_spacing_s);
  while (k > 0 && (*this)[std::min(k, m_size) - 1] >= time_s) --k;
  while (k < m_size && (*this)[k] < time_s) ++k;
  return k;
}

double TimeAxis::usualSpacing_s() const {
  if (m_times_s.empty()) return m_size > 1 ? m_spacing_s : 0;
  constexpr std::size_t looks = 4096;
  const std::size_t stride = std::max<std::size_t>(1, m_size / looks);
  std::vector<double> spacings;
  for (std::size_t k = 1; k < m_size; k += stride) {
    if (k / stride % 256 == 0) letSamplesGo();
    if (m_times_s[k] > m_times_s[k - 1]) spacings.push_back(m_times_s[k] - m_times_s[k - 1]);
  }
  if (spacings.empty()) return 0;
  const auto middle = spacings.begin() + static_cast<std::ptrdiff_t>(spacings.size() / 2);
  std::nth_element(spacings.begin(), middle, spacings.end());
  return *middle;
}

}  // namespace core
