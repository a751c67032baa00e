// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/cause_section.h"

#include <QEvent>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "core/report/diagnosis_section.h"
#include "ui/change/section_parts.h"
#include "ui/diagnosis/diagnosis_outcome.h"
#include "ui/outcome/figure_grid.h"
#include "ui/parts.h"
#include "ui/quantity_edit.h"
#include "ui/sheet_view.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"

namespace ui {
namespace {

enum DetailRow : std::size_t { SizeRow, MeasureRow, StrainRow, TellRow, StartRow, EndRow, ErrorRow };

constexpr int mostCauses = 6;

/// What to do with data, by one end; says so where there is nothing to do.
QString correctionText(const core::Setup& setup, const core::Correction& correction) {
  const QString formula = toQString(core::correctionFormula(setup, correction));
  return formula.isEmpty() ? CauseSection::tr("factor 1, offset 0: as read") : formula;
}

QString errorText(const core::DataBetween& data, const QString& unit) {
  const QString share = numberText(100 * std::abs(data.greatestShare), 2);
  const QString offset = numberText(std::abs(data.greatestOffset), 2);
  return CauseSection::tr("%1 % of the strain, and %2 %3 besides").arg(share, offset, unit);
}

}  // namespace

CauseSection::CauseSection(QWidget* parent) : QWidget(parent) {
  setObjectName("changeCause");
  setAccessibleName(tr("What changed physically"));
  m_sentence = plainLabel("changeCauseSentence");
  m_caution = plainLabel("changeCauseCaution");
  m_table = sectionTable("changeCauses", tr("Possible causes, the likeliest first"), &m_model);
  sortByHeader(*m_table);
  m_table->setWordWrap(true);
  m_table->horizontalHeader()->setStretchLastSection(false);
  m_table->horizontalHeader()->setSectionResizeMode(CauseModel::Cause, QHeaderView::Stretch);
  m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  m_table->setColumnHidden(CauseModel::Akaike, true);
  m_table->setColumnHidden(CauseModel::Bayesian, true);
  m_details = details();
  m_body = new QBoxLayout(QBoxLayout::TopToBottom);
  m_body->addWidget(m_table, 1, Qt::AlignTop);
  m_body->addWidget(m_details, 1, Qt::AlignTop);
  m_data = dataBetween();
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(sectionTitle("changeCauseTitle", tr("What changed physically")));
  column->addWidget(m_sentence);
  column->addWidget(m_caution);
  column->addLayout(m_body);
  column->addWidget(m_data);
  connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          &CauseSection::showExplanation);
  colour();
}

QWidget* CauseSection::details() {
  auto* inside = new QWidget;
  auto* grid = new QGridLayout(inside);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setColumnStretch(1, 1);
  grid->setHorizontalSpacing(10);
  grid->setVerticalSpacing(3);
  addRow(grid, "changeCauseSize", tr("Size"));
  addRow(grid, "changeCauseMeasure", tr("Measure"));
  addRow(grid, "changeCauseOnStrain", tr("Strain data"));
  addRow(grid, "changeCauseTell", tr("To tell apart"));
  return inside;
}

QWidget* CauseSection::dataBetween() {
  auto* inside = new QWidget;
  inside->setObjectName("dataBetween");
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(0, 4, 0, 0);
  column->setSpacing(4);
  column->addWidget(sectionTitle("dataBetweenTitle", tr("Data taken in between")));
  m_dataSentence = plainLabel("dataBetweenSentence");
  column->addWidget(m_dataSentence);
  auto* grid = new QGridLayout;
  grid->setColumnStretch(1, 1);
  grid->setHorizontalSpacing(10);
  grid->setVerticalSpacing(3);
  addRow(grid, "dataAtStart", tr("At the start"));
  addRow(grid, "dataAtEnd", tr("At the end"));
  addRow(grid, "dataGreatestError", tr("Greatest error"));
  column->addLayout(grid);
  return inside;
}

std::size_t CauseSection::addRow(QGridLayout* grid, const char* objectName, const QString& name) {
  auto* label = new QLabel(name);
  label->setTextFormat(Qt::PlainText);
  label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  QLabel* value = plainLabel(objectName);
  value->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  const int row = grid->rowCount();
  grid->addWidget(label, row, 0);
  grid->addWidget(value, row, 1);
  m_rows.push_back({label, value});
  return m_rows.size() - 1;
}

void CauseSection::setRow(std::size_t row, const QString& value) {
  m_rows[row].name->setVisible(!value.isEmpty());
  m_rows[row].value->setVisible(!value.isEmpty());
  m_rows[row].value->setText(withWholeUnits(value));
  m_rows[row].value->setAccessibleName(m_rows[row].name->text() + ": " + value);
}

void CauseSection::showCause(const ShownChange& shown, std::shared_ptr<const core::ChangeCause> cause) {
  m_cause = std::move(cause);
  const bool causes = m_cause && !m_cause->diagnosis.explanations.empty();
  const QString words =
      m_cause ? toQString(core::diagnosisSentence(m_cause->diagnosis)) : tr("Looking for what changed …");
  m_sentence->setText(withWholeUnits(words));
  m_caution->setText(toQString(core::suspicionStatement()));
  m_caution->setVisible(causes);
  m_table->setVisible(causes);
  m_details->setVisible(causes);
  m_data->setVisible(m_cause && m_cause->data);
  setAccessibleDescription(words);
  if (m_cause && m_cause->data) showData(shown);
  if (!causes) return;
  {
    const QSignalBlocker quiet(m_table->selectionModel());
    m_model.show(std::make_shared<const DiagnosisOutcome>(DiagnosisOutcome{m_cause->diagnosis, {}}));
    m_table->selectRow(0);
  }
  m_table->resizeRowsToContents();
  fitToRows(m_table, mostCauses);
  showExplanation();
}

void CauseSection::showExplanation() {
  const auto row = static_cast<std::size_t>(std::max(0, m_table->currentIndex().row()));
  if (!m_cause || row >= m_cause->diagnosis.explanations.size()) return;
  const core::Diagnosis& diagnosis = m_cause->diagnosis;
  const core::Explanation& chosen = diagnosis.explanations[row];
  setRow(SizeRow, toQString(chosen.sizeText));
  setRow(MeasureRow, toQString(chosen.confirm));
  setRow(StrainRow, toQString(chosen.onStrain));
  const bool tells = diagnosis.tellingStep && row < diagnosis.tied;
  setRow(TellRow, tells ? tr("One more step: %1").arg(toQString(diagnosis.tellingStep->text)) : QString());
}

void CauseSection::showData(const ShownChange& shown) {
  const core::DataBetween& data = *m_cause->data;
  const core::Setup& setup = shown.setupBefore();
  m_dataSentence->setText(withWholeUnits(toQString(data.sentence)));
  m_dataSentence->setVisible(!data.sentence.empty());
  setRow(StartRow, correctionText(setup, data.before));
  setRow(EndRow, correctionText(setup, data.after));
  setRow(ErrorRow, errorText(data, toQString(shown.unit)));
}

void CauseSection::setWide(bool wide) {
  m_body->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

QStringList CauseSection::lines() const {
  if (!m_cause) return {};
  QStringList lines{toQString(core::diagnosisSentence(m_cause->diagnosis))};
  for (const core::Explanation& one : m_cause->diagnosis.explanations)
    lines << causeText(one).replace('\n', ": ");
  if (m_cause->data)
    for (const std::size_t row : {StartRow, EndRow, ErrorRow})
      lines << m_rows[row].name->text() + ": " + m_rows[row].value->text().remove(QChar(0x2060));
  return lines;
}

void CauseSection::colour() {
  const Colours colours = coloursFor(palette());
  for (const Row& row : m_rows) setTextColour(row.name, colours.quiet);
  setTextColour(m_caution, colours.quiet);
}

void CauseSection::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) colour();
}

}  // namespace ui
