// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <functional>

#include "core/units/quantity.h"

namespace ui {

/// The wait of one step: it settles first and is held then. Knows no event loop: whoever shows it asks how
/// far it is, so that a window that was busy or hidden shows the right time again.
class StepTimer {
 public:
  /// Milliseconds of a clock that never goes back.
  using Clock = std::function<std::int64_t()>;
  enum class Phase : std::uint8_t {
    Ready,     ///< not started
    Settling,  ///< what is shown now is not looked at
    Holding,   ///< the reading is averaged over this time
    Over,      ///< run down or skipped: the reading can be taken
  };

  StepTimer();

  void setClock(Clock clock) { m_clock = std::move(clock); }
  /// Times that are no times (negative, not finite) count as zero.
  void prepare(core::Duration settle, core::Duration hold);
  void start();
  void skip() { m_skipped = true; }

  Phase phase() const;
  bool isRunning() const { return phase() == Phase::Settling || phase() == Phase::Holding; }
  /// Of the phase that runs now; before the start of both.
  core::Duration left() const;
  /// Of settling and holding together, 0 to 1.
  double shareDone() const;

 private:
  double elapsed_s() const;

  Clock m_clock;
  double m_settle_s = 0;
  double m_hold_s = 0;
  std::int64_t m_begin_ms = 0;
  bool m_started = false;
  bool m_skipped = false;
};

}  // namespace ui
