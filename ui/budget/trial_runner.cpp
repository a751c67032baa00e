// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/budget/trial_runner.h"

#include <QPromise>
#include <QtConcurrentRun>
#include <algorithm>

#include "core/plan/prediction.h"

namespace ui {
namespace {

constexpr std::size_t mostKept = 16;
constexpr int settle_ms = 300;
constexpr int wholeProgress = 1000;

TrialRunner::Outcome trialsOf(const TrialRunner::Subject& subject, const std::stop_token& stop,
                              const core::Progress& progress) {
  const core::SetupPrediction prediction = core::predict(subject.setup);
  const core::Budget budget = core::budgetOf(subject.setup, prediction);
  core::ChannelTrialOptions options;
  options.scope = subject.scope;
  options.seed = subject.seed;
  return core::runChannelTrials(subject.setup, prediction, budget, options, stop, progress);
}

}  // namespace

TrialRunner::TrialRunner(QObject* parent) : QObject(parent) {
  using Watcher = QFutureWatcher<Outcome>;
  connect(&m_watcher, &Watcher::progressValueChanged, this, &TrialRunner::progressed);
  connect(&m_watcher, &Watcher::finished, this, &TrialRunner::finish);
  m_later.setSingleShot(true);
  m_later.setInterval(settle_ms);
  connect(&m_later, &QTimer::timeout, this, &TrialRunner::run);
}

/// The worker owns all it uses, so it may end after us.
TrialRunner::~TrialRunner() { m_stop.request_stop(); }

void TrialRunner::show(std::optional<Subject> subject, bool edited) {
  if (subject == m_subject) return;
  const bool hadSome = m_shown || m_running || m_outdated;
  stop();
  m_subject = std::move(subject);
  m_shown = m_subject ? keptOf(*m_subject) : nullptr;
  m_outdated = edited && hadSome && !m_shown;
  m_cancelled = false;
  runLater();
  emit changed();
}

void TrialRunner::setWatched(bool watched) {
  m_watched = watched;
  runLater();
}

void TrialRunner::setLive(bool live) {
  m_live = live;
  m_cancelled = false;
  runLater();
}

/// After a pause, so that typing and dragging do not start a run at each letter.
void TrialRunner::runLater() {
  const bool wanted = m_live && m_watched && m_subject && !m_shown && !m_running && !m_cancelled;
  wanted ? m_later.start() : m_later.stop();
}

void TrialRunner::run() {
  if (!m_subject) return;
  stop();
  m_stop = std::stop_source();
  m_running = true;
  m_time.begin();
  m_cancelled = false;
  m_watcher.setFuture(
      QtConcurrent::run([subject = *m_subject, stop = m_stop.get_token()](QPromise<Outcome>& promise) {
        promise.setProgressRange(0, wholeProgress);
        promise.addResult(trialsOf(subject, stop, [&](double share) {
          promise.setProgressValue(static_cast<int>(wholeProgress * share));
        }));
      }));
  emit changed();
}

void TrialRunner::cancel() {
  if (!m_running) return;
  stop();
  m_cancelled = true;
  emit changed();
}

void TrialRunner::stop() {
  m_later.stop();
  m_stop.request_stop();
  m_running = false;
}

void TrialRunner::finish() {
  // One that was told to stop ends later; what it came to is of no use to anybody.
  if (!m_running) return;
  m_running = false;
  m_time.done(tr("The trials of the budget are done."));
  m_outdated = false;
  m_shown = std::make_shared<const Outcome>(m_watcher.result());
  std::erase_if(m_kept, [&](const Kept& kept) { return kept.subject == *m_subject; });
  m_kept.push_back({*m_subject, m_shown});
  if (m_kept.size() > mostKept) m_kept.pop_front();
  emit changed();
}

std::shared_ptr<const TrialRunner::Outcome> TrialRunner::keptOf(const Subject& subject) const {
  const auto found =
      std::find_if(m_kept.begin(), m_kept.end(), [&](const Kept& kept) { return kept.subject == subject; });
  return found == m_kept.end() ? nullptr : found->outcome;
}

}  // namespace ui
