// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QString>
#include <chrono>

namespace ui {

/// Times one piece of work, and when it ends after long and nobody looks at the program tells so through the
/// desktop and marks the window in the task bar, unless the user wants no such notices. What was cancelled is
/// not told: do not call `done`.
class LongWork {
 public:
  /// Shorter work is over before anybody turns to something else.
  static constexpr std::chrono::milliseconds usuallyLong{5000};

  /// Begins now.
  LongWork() { begin(); }
  void begin() { m_clock.start(); }
  /// `sentence` says what is done, and how it ended where it ended badly.
  void done(const QString& sentence) const;

  /// For tests: from how long on work is worth telling of.
  static void setLong(std::chrono::milliseconds least);

 private:
  QElapsedTimer m_clock;
};

}  // namespace ui
