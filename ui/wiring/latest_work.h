// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFutureWatcher>
#include <QtConcurrentRun>
#include <functional>

namespace ui {

/// Does work on a worker and hands on what the latest came to. The work owns all it uses; what older work
/// comes to is dropped.
template <class T>
class LatestWork {
 public:
  explicit LatestWork(std::function<void(const T&)> done) {
    QObject::connect(&m_watcher, &QFutureWatcher<T>::finished, &m_watcher, [this, done = std::move(done)] {
      if (!m_running) return;
      m_running = false;
      done(m_watcher.result());
    });
  }

  template <class Work>
  void start(Work work) {
    m_running = true;
    m_watcher.setFuture(QtConcurrent::run(std::move(work)));
  }
  void drop() { m_running = false; }
  bool isRunning() const { return m_running; }

 private:
  QFutureWatcher<T> m_watcher;
  bool m_running = false;
};

}  // namespace ui
