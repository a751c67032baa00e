// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diagnosis/cause_details.h"

#include <QEvent>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QScrollBar>
#include <QSignalBlocker>
#include <algorithm>
#include <cmath>

#include "core/report/diagnoses.h"
#include "core/report/diagnosis_section.h"
#include "ui/outcome/figure_grid.h"
#include "ui/parts.h"
#include "ui/quantity_edit.h"
#include "ui/sheet_view.h"
#include "ui/theme.h"

namespace ui {
namespace {

enum DetailRow : std::size_t { SizeRow, SettingRow, ConfirmRow, StrainRow, CorrectionRow, TellRow };

constexpr int mostRowsShown = 15;  ///< of the table, before it scrolls by itself

QString stepName(const core::Step& step, std::size_t index) {
  const QString number = QString::number(index + 1);
  return step.label.empty() ? number : number + "  " + toQString(step.label);
}

/// "Steps are off by up to 52.1 µm/m, with this cause by up to 1.3 µm/m: no more than ..."
QString fitText(const std::vector<core::Remainder>& remainders, const core::Explanation& explanation,
                const QString& unit) {
  double before = 0, after = 0;
  for (const core::Remainder& one : remainders) {
    before = std::max(before, std::abs(one.before));
    after = std::max(after, std::abs(one.after));
  }
  const QString numbers = CauseDetails::tr("Steps are off by up to %1 %3, with this cause by up to %2 %3:")
                              .arg(numberText(before, 3), numberText(after, 3), unit);
  return numbers + " " +
         (explanation.fitProbability >= core::doubtfulProbability
              ? CauseDetails::tr("no more than the uncertainties explain.")
              : CauseDetails::tr("more than the uncertainties explain."));
}

}  // namespace

CauseDetails::CauseDetails(QWidget* parent) : QScrollArea(parent) {
  setObjectName("causeDetails");
  setAccessibleName(tr("The chosen cause"));
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_title = embolden(plainLabel("causeTitle"));
  m_advice = plainLabel("causeAdvice");
  m_fit = plainLabel("causeFit");
  buildTable();
  auto* grid = new QGridLayout;
  grid->setColumnStretch(1, 1);
  grid->setHorizontalSpacing(10);
  grid->setVerticalSpacing(3);
  addRow(grid, "causeSize", tr("Size"));
  addRow(grid, "causeSettings", tr("Setting"));
  addRow(grid, "causeConfirm", tr("To confirm"));
  addRow(grid, "causeOnStrain", tr("Strain data"));
  addRow(grid, "causeCorrection", tr("Correction"));
  addRow(grid, "causeTell", tr("To tell apart"));
  auto* inside = new QWidget;
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(6, 2, 6, 2);
  column->setSpacing(5);
  column->addWidget(m_title);
  column->addLayout(grid);
  column->addWidget(m_advice);
  column->addWidget(m_fit);
  column->addWidget(m_table);
  column->addStretch(1);
  setWidget(inside);
  colour();
}

void CauseDetails::addRow(QGridLayout* grid, const char* objectName, const QString& name) {
  auto* label = new QLabel(name);
  label->setTextFormat(Qt::PlainText);
  label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  auto* value = plainLabel(objectName);
  value->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  const int row = static_cast<int>(m_rows.size());
  grid->addWidget(label, row, 0);
  grid->addWidget(value, row, 1);
  m_rows.push_back({label, value});
}

void CauseDetails::buildTable() {
  m_table = new SheetView;
  m_table->setObjectName("causeRemainders");
  m_table->setAccessibleName(tr("What the cause leaves of each step's deviation"));
  m_table->setModel(&m_model);
  m_table->setItemDelegateForColumn(RemainderModel::Picture, new RemainderDelegate(m_table));
  m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_table->setSelectionMode(QAbstractItemView::SingleSelection);
  m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  m_table->horizontalHeader()->setSectionResizeMode(RemainderModel::Picture, QHeaderView::Stretch);
  m_table->horizontalHeader()->setMinimumSectionSize(50);
  connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          [this](const QModelIndex& row) {
            if (row.isValid())
              emit stepChosen(m_model.remainders()[static_cast<std::size_t>(row.row())].step);
          });
  connect(m_table, &SheetView::refused, this, &CauseDetails::refused);
}

void CauseDetails::setRow(std::size_t row, const QString& value) {
  m_rows[row].name->setVisible(!value.isEmpty());
  m_rows[row].value->setVisible(!value.isEmpty());
  m_rows[row].value->setText(withWholeUnits(value));
  m_rows[row].value->setAccessibleName(m_rows[row].name->text() + ": " + value);
}

void CauseDetails::show(const Contents& contents) {
  const core::Explanation& cause = contents.explanation;
  const QString unit = toQString(core::readingUnitText(contents.setup.instrument));
  m_title->setText(toQString(cause.title));
  setRow(SizeRow, toQString(cause.sizeText));
  setRow(SettingRow, toQString(cause.settings));
  setRow(ConfirmRow, toQString(cause.confirm));
  setRow(StrainRow, toQString(cause.onStrain));
  setRow(CorrectionRow, toQString(core::correctionFormula(contents.setup, cause.correction)));
  setRow(TellRow, contents.toTell);
  m_legitimate = cause.correction.legitimate;
  const QString advice = toQString(core::correctionAdvice(cause.correction));
  m_advice->setText(withWholeUnits(m_legitimate ? advice : "▲ " + advice));
  m_advice->setAccessibleName(m_legitimate ? advice : tr("Warning: %1").arg(advice));
  QStringList names;
  for (std::size_t k = 0; k < contents.setup.sequence.size(); ++k)
    names << stepName(contents.setup.sequence[k], k);
  m_model.show(core::remaindersOf(contents.points, cause.changes), names, unit);
  m_fit->setText(withWholeUnits(fitText(m_model.remainders(), cause, unit)));
  fitTable();
  colour();
}

/// As high as its rows, so that the page scrolls and not a table within it.
void CauseDetails::fitTable() {
  const int rows = std::min(m_model.rowCount(), mostRowsShown);
  const int frame = 2 * m_table->frameWidth();
  m_table->setFixedHeight(m_table->horizontalHeader()->sizeHint().height() + frame +
                          rows * m_table->verticalHeader()->defaultSectionSize());
}

void CauseDetails::followStep(std::optional<std::size_t> step) {
  const QSignalBlocker quiet(m_table->selectionModel());
  const int row = step ? m_model.rowOf(*step) : -1;
  row >= 0 ? m_table->selectRow(row) : m_table->clearSelection();
  m_table->viewport()->update();
}

QString CauseDetails::text() const {
  QStringList lines{m_title->text()};
  for (const Row& row : m_rows)
    if (!row.value->text().isEmpty()) lines << row.name->text() + ": " + row.value->text();
  lines << m_advice->text() << m_fit->text();
  QStringList heads;
  for (int column = 0; column < RemainderModel::Picture; ++column)
    heads << m_model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().replace('\n', ' ');
  lines << heads.join('\t');
  for (int row = 0; row < m_model.rowCount(); ++row) {
    QStringList cells;
    for (int column = 0; column < RemainderModel::Picture; ++column)
      cells << m_model.index(row, column).data().toString();
    lines << cells.join('\t');
  }
  return lines.join('\n').remove(QChar(0x2060));
}

void CauseDetails::colour() {
  const Colours colours = coloursFor(palette());
  for (const Row& row : m_rows) setTextColour(row.name, colours.quiet);
  setTextColour(m_advice, m_legitimate ? colours.text : colours.fail);
}

void CauseDetails::changeEvent(QEvent* event) {
  QScrollArea::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) colour();
}

}  // namespace ui
