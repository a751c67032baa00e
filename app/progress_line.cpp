// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/progress_line.h"

#include <unistd.h>

#include <algorithm>
#include <cstdio>

#include "app/output.h"

namespace app {

ProgressLine::ProgressLine(const std::string& name)
    : m_name(harmless(name, false)), m_shown(isatty(STDERR_FILENO) == 1) {}

ProgressLine::~ProgressLine() {
  if (m_last >= 0) std::fputs("\r\x1b[K", stderr);
}

void ProgressLine::show(double share) {
  const int percent = static_cast<int>(100 * std::clamp(share, 0.0, 1.0));
  if (!m_shown || percent == m_last) return;
  m_last = percent;
  std::fprintf(stderr, "\r\x1b[K%s, %d %%", m_name.c_str(), percent);
}

}  // namespace app
