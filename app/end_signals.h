// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSocketNotifier>
#include <memory>

namespace app {

/// Lets SIGTERM, SIGINT and SIGHUP end the event loop instead of the process: what is unsaved is kept for the
/// next start and locks are removed, as at every end of the program. Nothing is asked. The program then
/// returns 128 plus the signal's number, as shells have it. A second signal ends the process at once. One of
/// these at a time, as long as the event loop may run.
class EndSignals {
 public:
  EndSignals();
  ~EndSignals();
  EndSignals(const EndSignals&) = delete;
  EndSignals& operator=(const EndSignals&) = delete;

 private:
  std::unique_ptr<QSocketNotifier> m_notifier;
};

}  // namespace app
