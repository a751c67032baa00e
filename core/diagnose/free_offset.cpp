// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/refit.h"

namespace core {

FreeOffset::FreeOffset(Whitening whitening) : m_whitening(std::move(whitening)) {
  m_ones = m_whitening.whitened(std::vector<double>(m_whitening.readings(), 1.0));
  for (const double one : m_ones) m_onesSquared += one * one;
}

std::vector<double> FreeOffset::reduced(std::vector<double> values, double* offset) const {
  std::vector<double> white = m_whitening.whitened(std::move(values));
  double along = 0;
  for (std::size_t k = 0; k < white.size(); ++k) along += white[k] * m_ones[k];
  along /= m_onesSquared;
  for (std::size_t k = 0; k < white.size(); ++k) white[k] -= along * m_ones[k];
  if (offset) *offset = along;
  return white;
}

}  // namespace core
