// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diagnosis/diagnosis_runner.h"

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

DiagnosisRunner::DiagnosisRunner(QObject* parent)
    : QObject(parent), m_work(outcomeOf, mostKept, [this] {
        m_work.isRunning() ? m_time.begin() : m_time.done(tr("The diagnosis of the check is done."));
        emit changed();
      }) {}

void DiagnosisRunner::show(std::optional<Subject> subject, bool edited) {
  if (subject == m_work.subject()) return;
  if (!edited) m_before.reset();
  if (edited && m_work.result()) m_before = m_work.result();
  m_work.show(std::move(subject), edited ? typing_ms : walking_ms);
  if (m_work.result() || !m_work.subject()) m_before.reset();
  emit changed();
}

}  // namespace ui
