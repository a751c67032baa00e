// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFutureWatcher>
#include <QObject>
#include <memory>
#include <stop_token>

#include "core/search/resistor_search.h"
#include "ui/notice/long_work.h"

namespace ui {

/// Searches for resistors on a worker, one search at a time. A cancelled search still comes to the best it
/// has found.
class SearchRunner : public QObject {
  Q_OBJECT

 public:
  /// All that a search needs; the worker owns a copy.
  struct Job {
    core::Setup setup;
    core::ResistorSearch search;
    core::Stock stock;
    core::Date today{};
    bool withOverdue = false;
  };
  using Outcome = core::Result<core::SearchOutcome>;

  explicit SearchRunner(QObject* parent = nullptr);
  ~SearchRunner() override;

  void run(Job job);
  void cancel() { m_stop.request_stop(); }
  bool isRunning() const { return m_running; }

 signals:
  void progressed(int perMille);
  void done(std::shared_ptr<const SearchRunner::Outcome> outcome);

 private:
  void finish();

  std::stop_source m_stop;
  QFutureWatcher<Outcome> m_watcher;
  LongWork m_time;
  bool m_running = false;
};

}  // namespace ui
