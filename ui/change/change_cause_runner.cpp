// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/change_cause_runner.h"

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

ChangeCauseRunner::ChangeCauseRunner(QObject* parent)
    : QObject(parent), m_work(outcomeOf, mostKept, [this] {
        m_work.isRunning() ? m_time.begin()
                           : m_time.done(tr("What changed between the checks is worked out."));
        emit changed();
      }) {}

void ChangeCauseRunner::show(std::optional<Subject> subject) {
  if (subject == m_work.subject()) return;
  m_work.show(std::move(subject), waiting_ms);
  emit changed();
}

}  // namespace ui
