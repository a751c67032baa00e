// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QEventLoop>
#include <QFutureWatcher>
#include <QPromise>
#include <QtConcurrentRun>
#include <functional>

#include "core/units/progress.h"

namespace ui {

/// Does `work`, which takes a core::Progress, on another thread and returns what it came to. Until then the
/// events of this thread go on, and `progress` is told on it. Needs a QApplication; the work must take care
/// of being stopped itself.
template <class Work>
auto doneAside(Work work, const std::function<void(double)>& progress) {
  using Value = std::invoke_result_t<Work, const core::Progress&>;
  constexpr int whole = 1000;
  QFutureWatcher<Value> watcher;
  QEventLoop loop;
  QObject::connect(&watcher, &QFutureWatcher<Value>::finished, &loop, &QEventLoop::quit);
  if (progress)
    QObject::connect(&watcher, &QFutureWatcher<Value>::progressValueChanged, &loop,
                     [&](int value) { progress(double(value) / whole); });
  watcher.setFuture(QtConcurrent::run([&work](QPromise<Value>& promise) {
    promise.setProgressRange(0, whole);
    promise.addResult(work([&promise](double share) { promise.setProgressValue(int(whole * share)); }));
  }));
  loop.exec();
  watcher.waitForFinished();  // the loop ends early when the program does
  return watcher.result();
}

}  // namespace ui
