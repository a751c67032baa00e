// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/step_timer.h"

#include <QElapsedTimer>
#include <algorithm>
#include <cmath>

namespace ui {
namespace {

double seconds(core::Duration duration) {
  return std::isfinite(duration.base()) ? std::max(0.0, duration.base()) : 0;
}

}  // namespace

StepTimer::StepTimer() {
  QElapsedTimer clock;
  clock.start();
  m_clock = [clock] { return clock.elapsed(); };
}

void StepTimer::prepare(core::Duration settle, core::Duration hold) {
  m_settle_s = seconds(settle);
  m_hold_s = seconds(hold);
  m_started = m_skipped = false;
}

void StepTimer::start() {
  m_begin_ms = m_clock();
  m_started = true;
  m_skipped = false;
}

double StepTimer::elapsed_s() const {
  return m_started ? 1e-3 * static_cast<double>(m_clock() - m_begin_ms) : 0;
}

StepTimer::Phase StepTimer::phase() const {
  if (m_skipped) return Phase::Over;
  if (!m_started) return Phase::Ready;
  const double elapsed = elapsed_s();
  if (elapsed < m_settle_s) return Phase::Settling;
  return elapsed < m_settle_s + m_hold_s ? Phase::Holding : Phase::Over;
}

core::Duration StepTimer::left() const {
  switch (phase()) {
    case Phase::Ready:
      return core::Duration(m_settle_s + m_hold_s);
    case Phase::Settling:
      return core::Duration(m_settle_s - elapsed_s());
    case Phase::Holding:
      return core::Duration(m_settle_s + m_hold_s - elapsed_s());
    case Phase::Over:
      break;
  }
  return core::Duration(0);
}

double StepTimer::shareDone() const {
  const Phase now = phase();
  if (now == Phase::Ready) return 0;
  if (now == Phase::Over) return 1;
  return std::clamp(elapsed_s() / (m_settle_s + m_hold_s), 0.0, 1.0);
}

}  // namespace ui
