// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/change_cause_runner.h"

#include <QtConcurrentRun>
#include <algorithm>

namespace ui {
namespace {

constexpr std::size_t mostKept = 32;
constexpr int waiting_ms = 150;  ///< so that neither letters typed nor checks walked through each start one

ChangeCauseRunner::Outcome outcomeOf(const ChangeCauseRunner::Subject& subject, const std::stop_token& stop) {
  const core::ChannelEvaluation evaluation = core::evaluate(*subject.channel);
  return std::make_shared<const core::ChangeCause>(
      core::changeCauseOf(*subject.channel, evaluation, subject.pair.before, subject.pair.after, stop));
}

}  // namespace

ChangeCauseRunner::ChangeCauseRunner(QObject* parent) : QObject(parent) {
  connect(&m_watcher, &QFutureWatcher<Outcome>::finished, this, &ChangeCauseRunner::finish);
  m_later.setSingleShot(true);
  m_later.setInterval(waiting_ms);
  connect(&m_later, &QTimer::timeout, this, &ChangeCauseRunner::run);
}

/// The worker owns all it uses, so it may end after us.
ChangeCauseRunner::~ChangeCauseRunner() { m_stop.request_stop(); }

void ChangeCauseRunner::show(std::optional<Subject> subject) {
  if (subject == m_subject) return;
  stop();
  m_subject = std::move(subject);
  m_shown = m_subject ? keptOf(*m_subject) : nullptr;
  runLater();
  emit changed();
}

void ChangeCauseRunner::setWatched(bool watched) {
  m_watched = watched;
  runLater();
}

void ChangeCauseRunner::runLater() {
  const bool wanted = m_watched && m_subject && !m_shown && !m_running;
  wanted ? m_later.start() : m_later.stop();
}

void ChangeCauseRunner::run() {
  if (!m_subject || m_shown) return;
  stop();
  m_stop = std::stop_source();
  m_running = true;
  m_watcher.setFuture(QtConcurrent::run(
      [subject = *m_subject, stop = m_stop.get_token()] { return outcomeOf(subject, stop); }));
  emit changed();
}

void ChangeCauseRunner::stop() {
  m_later.stop();
  m_stop.request_stop();
  m_running = false;
}

void ChangeCauseRunner::finish() {
  // One that was told to stop ends later; what it came to is of no use to anybody.
  if (!m_running) return;
  m_running = false;
  m_shown = m_watcher.result();
  m_kept.push_back({*m_subject, m_shown});
  if (m_kept.size() > mostKept) m_kept.pop_front();
  emit changed();
}

ChangeCauseRunner::Outcome ChangeCauseRunner::keptOf(const Subject& subject) const {
  const auto found =
      std::find_if(m_kept.begin(), m_kept.end(), [&](const Kept& kept) { return kept.subject == subject; });
  return found == m_kept.end() ? nullptr : found->outcome;
}

}  // namespace ui
