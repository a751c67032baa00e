// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace app {

/// A share done on one line of a terminal at standard error, which it clears in the end; silent elsewhere.
class ProgressLine {
 public:
  /// `name` is what is being done: "TP-01: trials".
  explicit ProgressLine(const std::string& name);
  ~ProgressLine();
  ProgressLine(const ProgressLine&) = delete;
  ProgressLine& operator=(const ProgressLine&) = delete;

  void show(double share);

 private:
  std::string m_name;
  bool m_shown;
  int m_last = -1;
};

}  // namespace app
