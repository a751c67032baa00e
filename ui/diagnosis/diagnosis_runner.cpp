// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diagnosis/diagnosis_runner.h"

#include <QtConcurrentRun>
#include <algorithm>

#include "core/plan/prediction.h"
#include "ui/diagnosis/diagnosis_outcome.h"

namespace ui {
namespace {

constexpr std::size_t mostKept = 64;
constexpr int typing_ms = 300;  ///< after an edit: so that not every letter starts another
constexpr int walking_ms = 30;  ///< after another check was chosen: a held arrow key passes many

DiagnosisRunner::Outcome outcomeOf(const DiagnosisRunner::Subject& subject, const std::stop_token& stop) {
  const core::SetupPrediction prediction = core::predict(subject.setup);
  const core::Budget budget = core::budgetOf(subject.setup, prediction);
  return std::make_shared<const DiagnosisOutcome>(
      DiagnosisOutcome{core::diagnose(subject.setup, prediction, budget, subject.check, stop),
                       core::checkPoints(subject.setup, prediction, budget, subject.check)});
}

}  // namespace

DiagnosisRunner::DiagnosisRunner(QObject* parent) : QObject(parent) {
  connect(&m_watcher, &QFutureWatcher<Outcome>::finished, this, &DiagnosisRunner::finish);
  m_later.setSingleShot(true);
  connect(&m_later, &QTimer::timeout, this, &DiagnosisRunner::run);
}

/// The worker owns all it uses, so it may end after us.
DiagnosisRunner::~DiagnosisRunner() { m_stop.request_stop(); }

void DiagnosisRunner::show(std::optional<Subject> subject, bool edited) {
  if (subject == m_subject) return;
  stop();
  if (!edited) m_before.reset();
  if (edited && m_shown) m_before = m_shown;
  m_subject = std::move(subject);
  m_shown = m_subject ? keptOf(*m_subject) : nullptr;
  if (m_shown || !m_subject) m_before.reset();
  m_later.setInterval(edited ? typing_ms : walking_ms);
  runLater();
  emit changed();
}

void DiagnosisRunner::setWatched(bool watched) {
  m_watched = watched;
  runLater();
}

void DiagnosisRunner::runLater() {
  const bool wanted = m_watched && m_subject && !m_shown && !m_running;
  wanted ? m_later.start() : m_later.stop();
}

void DiagnosisRunner::run() {
  if (!m_subject || m_shown) return;
  stop();
  m_stop = std::stop_source();
  m_running = true;
  m_watcher.setFuture(QtConcurrent::run(
      [subject = *m_subject, stop = m_stop.get_token()] { return outcomeOf(subject, stop); }));
  emit changed();
}

void DiagnosisRunner::stop() {
  m_later.stop();
  m_stop.request_stop();
  m_running = false;
}

void DiagnosisRunner::finish() {
  // One that was told to stop ends later; what it came to is of no use to anybody.
  if (!m_running) return;
  m_running = false;
  m_before.reset();
  m_shown = m_watcher.result();
  m_kept.push_back({*m_subject, m_shown});
  if (m_kept.size() > mostKept) m_kept.pop_front();
  emit changed();
}

DiagnosisRunner::Outcome DiagnosisRunner::keptOf(const Subject& subject) const {
  const auto found =
      std::find_if(m_kept.begin(), m_kept.end(), [&](const Kept& kept) { return kept.subject == subject; });
  return found == m_kept.end() ? nullptr : found->outcome;
}

}  // namespace ui
