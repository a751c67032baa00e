// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/run_summary_page.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>

#include "core/report/tables.h"
#include "ui/outcome/figure_grid.h"
#include "ui/outcome/report_table_model.h"
#include "ui/run/run_start_page.h"
#include "ui/run/step_words.h"
#include "ui/sheet_view.h"
#include "ui/theme.h"

namespace ui {

RunSummaryPage::RunSummaryPage(Session& session, QWidget* parent) : RunPage(parent), m_session(session) {
  m_verdict = runLabel("summaryVerdict", 2.2, true);
  m_reason = runLabel("summaryReason", 1.3);
  m_model = new ReportTableModel(this);
  m_table = withType(new SheetView, 1.0);
  m_table->setObjectName("summaryTable");
  m_table->setAccessibleName(tr("Steps of the run"));
  m_table->setModel(m_model);
  m_table->verticalHeader()->hide();
  m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_table->setAlternatingRowColors(true);
  m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  m_table->horizontalHeader()->setStretchLastSection(true);
  connect(m_table, &QTableView::activated, this,
          [this](const QModelIndex& cell) { emit stepWanted(static_cast<std::size_t>(cell.row())); });
  m_hint = runLabel("summaryHint", 1.1);
  auto* back = runButton("backToSteps", tr("B&ack to the steps"), 1.2);
  m_finish = runButton("finishRun", tr("E&nd the run safely…"), 1.2);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(back);
  buttons->addStretch();
  buttons->addWidget(m_finish);
  auto* column = new QVBoxLayout(this);
  column->addWidget(m_verdict);
  column->addWidget(m_reason);
  column->addWidget(m_table, 1);
  column->addWidget(m_hint);
  column->addLayout(buttons);
  connect(back, &QPushButton::clicked, this, [this] {
    const auto unread = firstUnread(*m_session.channel(), *m_session.check());
    emit stepWanted(unread.value_or(m_session.channel()->setup.sequence.size() - 1));
  });
  connect(m_finish, &QPushButton::clicked, this, &RunSummaryPage::stopWanted);
}

void RunSummaryPage::refresh() {
  if (!m_session.check()) return;
  const std::size_t check = *m_session.selection().check;
  const core::CheckAssessment& assessment = m_session.evaluation()->checks[check].assessment;
  const QString word = tr(std::string(core::verdictWord(assessment.verdict)).c_str());
  m_verdict->setText(
      QString("%1 %2: %3").arg(verdictSign(assessment.verdict), toQString(m_session.check()->name), word));
  setTextColour(m_verdict, colourOf(coloursFor(palette()), assessment.verdict));
  m_reason->setText(withWholeUnits(toQString(assessment.reason)));
  m_model->setTable(core::checkTable(*m_session.channel(), *m_session.evaluation(), check));
  const bool all = !firstUnread(*m_session.channel(), *m_session.check());
  m_hint->setText(
      all ? tr("\"Close check\" above the sequence keeps the set-up that this check is judged by, so "
               "that later edits never change its verdict. A shunt check says nothing about gauge "
               "factor, bond or alignment.")
          : tr("Steps without a reading are not judged: go back to them, or leave the check open."));
}

void RunSummaryPage::takeKeyboard() { m_finish->setFocus(); }

void RunSummaryPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) refresh();
}

}  // namespace ui
