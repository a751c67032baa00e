// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/search/search_runner.h"

#include <QPromise>
#include <QtConcurrentRun>

namespace ui {
namespace {

constexpr int wholeProgress = 1000;

SearchRunner::Outcome outcomeOf(const SearchRunner::Job& job, const std::stop_token& stop,
                                const core::Progress& progress) {
  const auto candidates = core::candidatesOf(job.stock, {}, job.today, job.withOverdue);
  if (!candidates) return candidates.error();
  return core::searchResistors(job.setup, job.search, *candidates, stop, progress);
}

}  // namespace

SearchRunner::SearchRunner(QObject* parent) : QObject(parent) {
  using Watcher = QFutureWatcher<Outcome>;
  connect(&m_watcher, &Watcher::progressValueChanged, this, &SearchRunner::progressed);
  connect(&m_watcher, &Watcher::finished, this, &SearchRunner::finish);
}

/// The worker owns all it uses, so it may end after us.
SearchRunner::~SearchRunner() { m_stop.request_stop(); }

void SearchRunner::run(Job job) {
  if (m_running) return;
  m_stop = std::stop_source();
  m_running = true;
  m_time.begin();
  m_watcher.setFuture(
      QtConcurrent::run([job = std::move(job), stop = m_stop.get_token()](QPromise<Outcome>& promise) {
        promise.setProgressRange(0, wholeProgress);
        promise.addResult(outcomeOf(job, stop, [&](double share) {
          promise.setProgressValue(static_cast<int>(wholeProgress * share));
        }));
      }));
}

void SearchRunner::finish() {
  m_running = false;
  if (!m_stop.stop_requested()) m_time.done(tr("The search for resistors is done."));
  emit done(std::make_shared<const Outcome>(m_watcher.result()));
}

}  // namespace ui
