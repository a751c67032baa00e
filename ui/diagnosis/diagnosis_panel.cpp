// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diagnosis/diagnosis_panel.h"

#include <QApplication>
#include <QClipboard>
#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QSignalBlocker>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/report/diagnosis_section.h"
#include "ui/diagnosis/cause_details.h"
#include "ui/diagnosis/diagnosis_outcome.h"
#include "ui/outcome/elided_lines.h"
#include "ui/outcome/figure_grid.h"
#include "ui/parts.h"
#include "ui/sheet_view.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int wide_px = 820;    ///< table and details stand side by side
constexpr int narrow_px = 560;  ///< no room for both criteria
constexpr int low_px = 340;     ///< below this height most of the sentence gives its room to the causes
constexpr double misfitProbability = 0.001;  ///< below it what a cause leaves is hardly chance
constexpr int lowLines = 2;  ///< of the sentence; all of it is in its tool tip and in the details

QColor colourOf(const Colours& colours, core::DiagnosisResult result) {
  switch (result) {
    case core::DiagnosisResult::Healthy:
      return colours.pass;
    case core::DiagnosisResult::Found:
      return colours.fail;
    case core::DiagnosisResult::Tied:
    case core::DiagnosisResult::NothingFits:
      return colours.cannotTell;
    case core::DiagnosisResult::NotPossible:
      break;
  }
  return colours.text;
}

}  // namespace

DiagnosisPanel::DiagnosisPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("diagnosisPanel");
  setAccessibleName(tr("Diagnosis"));
  buildTable();
  m_details = new CauseDetails;
  connect(m_details, &CauseDetails::stepChosen, this,
          [this](std::size_t step) { m_session.selectStep(step); });
  connect(m_details, &CauseDetails::refused, this, &DiagnosisPanel::refused);
  m_body = new QSplitter(Qt::Vertical);
  m_body->setObjectName("diagnosisBody");
  m_body->setChildrenCollapsible(false);
  m_body->addWidget(m_table);
  m_body->addWidget(m_details);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 4);
  column->setSpacing(4);
  QLayout* second = head();
  column->addWidget(m_sentence);
  column->addLayout(second);
  column->addWidget(m_body, 1);
  column->addStretch(0);  // what there is to say without causes stands at the top
  connect(&m_session, &Session::changed, this, &DiagnosisPanel::follow);
  connect(&m_runner, &DiagnosisRunner::changed, this, &DiagnosisPanel::refresh);
  follow();
  refresh();
}

QLayout* DiagnosisPanel::head() {
  m_sentence = plainLabel("diagnosisSentence");
  m_caution = plainLabel("diagnosisCaution");
  m_caution->setText(toQString(core::suspicionStatement()));
  m_copy = toolButton("copyDiagnosis", tr("Copy as text"),
                      tr("Copies the sentence, all causes and the chosen one in full"));
  connect(m_copy, &QToolButton::clicked, this, [this] { QApplication::clipboard()->setText(text()); });
  auto* line = new QHBoxLayout;
  line->addWidget(m_caution, 1);
  line->addStretch(0);
  line->addWidget(m_copy, 0, Qt::AlignTop);
  return line;
}

void DiagnosisPanel::buildTable() {
  m_table = new SheetView;
  m_table->setObjectName("causeTable");
  m_table->setAccessibleName(tr("Possible causes, the likeliest first"));
  sortByHeader(*m_table);
  m_table->setModel(&m_model);
  m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_table->setSelectionMode(QAbstractItemView::SingleSelection);
  m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_table->setWordWrap(true);
  QHeaderView* header = m_table->horizontalHeader();
  header->setMinimumSectionSize(32);
  header->setSectionResizeMode(QHeaderView::ResizeToContents);
  header->setSectionResizeMode(CauseModel::Cause, QHeaderView::Stretch);
  m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          [this](const QModelIndex& row) {
            const DiagnosisRunner::Outcome outcome = shown();
            if (!row.isValid() || !outcome) return;
            m_chosen = causeAt(*outcome, static_cast<std::size_t>(row.row()));
            showCause();
          });
  connect(m_table, &SheetView::refused, this, &DiagnosisPanel::refused);
}

QString DiagnosisPanel::whatIsMissing() const {
  if (!m_session.channel()) return tr("No channel yet.");
  const core::Check* check = m_session.check();
  if (!check && !m_session.channel()->checks.empty())
    return tr("Plan only: choose a check to see what may be wrong with it.");
  if (!check) return tr("No check yet. Add a check and enter its readings to see what may be wrong.");
  if (!core::hasReading(*check)) return tr("The check has no readings yet.");
  return {};
}

/// Whatever cannot change a diagnosis is left out, so that a remark that is typed starts none.
std::optional<DiagnosisRunner::Subject> DiagnosisPanel::subject() const {
  if (!whatIsMissing().isEmpty()) return std::nullopt;
  core::Check check;
  check.name = m_session.check()->name;
  check.readings = m_session.check()->readings;
  for (auto& reading : check.readings)
    if (reading) reading->note.clear();
  return DiagnosisRunner::Subject{m_session.shownSetup(), std::move(check)};
}

void DiagnosisPanel::follow() {
  const Selection& selection = m_session.selection();
  const Place place{selection.channel, selection.check};
  m_runner.show(subject(), place == m_place);
  m_place = place;
  refresh();
}

DiagnosisRunner::Outcome DiagnosisPanel::shown() const {
  return m_runner.outcome() ? m_runner.outcome() : m_runner.outdated();
}

void DiagnosisPanel::refresh() {
  const QString missing = whatIsMissing();
  const DiagnosisRunner::Outcome outcome = missing.isEmpty() ? shown() : nullptr;
  const bool causes = outcome && !outcome->diagnosis.explanations.empty();
  m_body->setVisible(causes);
  m_caution->setVisible(causes);
  m_copy->setVisible(outcome != nullptr);
  if (outcome)
    showOutcome(outcome, !m_runner.outcome());
  else
    m_words = missing.isEmpty() ? tr("Looking for what may be wrong …") : missing;
  fitSentence();
  setAccessibleDescription(m_words);
  colour();
}

QString DiagnosisPanel::sentenceOf(const DiagnosisOutcome& outcome) const {
  QString sentence = toQString(core::diagnosisSentence(outcome.diagnosis));
  if (!m_session.check()) return sentence;
  const core::CheckAssessment& assessment =
      m_session.evaluation()->checks[*m_session.selection().check].assessment;
  const core::DiagnosisResult result = outcome.diagnosis.result;
  const bool suspected = result == core::DiagnosisResult::Found || result == core::DiagnosisResult::Tied ||
                         result == core::DiagnosisResult::NothingFits;
  if (result == core::DiagnosisResult::Tied &&
      outcome.diagnosis.explanations.front().fitProbability < misfitProbability)
    sentence += " " + tr("The first leaves more than the uncertainties explain.");
  if (suspected && assessment.verdict == core::Verdict::Pass)
    sentence = tr("All steps are within limits all the same.") + " " + sentence;
  return toQString(m_session.check()->name) + ": " + sentence;
}

void DiagnosisPanel::fitSentence() {
  const QString words = withWholeUnits(m_words);
  const bool low = height() < low_px && m_body->isVisibleTo(this);
  m_sentence->setText(low ? elidedToLines(words, m_sentence->font(), width() - 8, lowLines) : words);
  m_sentence->setToolTip("<span>" + m_words.toHtmlEscaped() + "</span>");
}

void DiagnosisPanel::showOutcome(const DiagnosisRunner::Outcome& outcome, bool outdated) {
  const core::Diagnosis& diagnosis = outcome->diagnosis;
  m_words = outdated ? tr("Being worked out again. Before the edit: %1")
                           .arg(toQString(core::diagnosisSentence(diagnosis)))
                     : sentenceOf(*outcome);
  m_body->setEnabled(!outdated);
  if (outdated) return;
  const QSignalBlocker quiet(m_table->selectionModel());
  m_model.show(outcome);
  if (!diagnosis.explanations.empty()) m_table->selectRow(static_cast<int>(rowOfChosen(*outcome)));
  m_table->viewport()->update();
  showCause();
}

DiagnosisPanel::Cause DiagnosisPanel::causeAt(const DiagnosisOutcome& outcome, std::size_t row) {
  const core::Fault& fault = outcome.diagnosis.explanations[row].fault;
  return {static_cast<int>(fault.kind), fault.index, fault.other};
}

/// The cause that was chosen before, as long as it is found again; else the likeliest.
std::size_t DiagnosisPanel::rowOfChosen(const DiagnosisOutcome& outcome) const {
  for (std::size_t row = 0; m_chosen && row < outcome.diagnosis.explanations.size(); ++row)
    if (causeAt(outcome, row) == *m_chosen) return row;
  return 0;
}

void DiagnosisPanel::showCause() {
  const DiagnosisRunner::Outcome outcome = shown();
  const auto row = static_cast<std::size_t>(std::max(0, m_table->currentIndex().row()));
  if (!outcome || row >= outcome->diagnosis.explanations.size()) return;
  const core::Diagnosis& diagnosis = outcome->diagnosis;
  const QString toTell = diagnosis.tellingStep && row < diagnosis.tied
                             ? tr("One more step: %1").arg(toQString(diagnosis.tellingStep->text))
                             : QString();
  m_details->show({m_session.shownSetup(), outcome->points, diagnosis.explanations[row], toTell});
  m_details->followStep(m_session.selection().step);
}

QString DiagnosisPanel::text() const {
  const DiagnosisRunner::Outcome outcome = shown();
  if (!outcome) return m_words;
  QStringList lines{sentenceOf(*outcome)};
  if (outcome->diagnosis.explanations.empty()) return lines.first();
  lines << m_caution->text() << QString();
  for (int row = -1; row < m_model.rowCount(); ++row) {
    QStringList cells;
    for (int column = 0; column < CauseModel::ColumnCount; ++column)
      cells << (row < 0 ? m_model.headerData(column, Qt::Horizontal, Qt::DisplayRole)
                        : m_model.index(row, column).data())
                   .toString()
                   .replace('\n', row < 0 ? " " : ": ");
    lines << cells.join('\t');
  }
  return (lines << QString() << m_details->text()).join('\n');
}

void DiagnosisPanel::colour() {
  const Colours colours = coloursFor(palette());
  const DiagnosisRunner::Outcome outcome = whatIsMissing().isEmpty() ? m_runner.outcome() : nullptr;
  setTextColour(m_sentence, outcome ? colourOf(colours, outcome->diagnosis.result) : colours.quiet);
  setTextColour(m_caution, colours.quiet);
}

void DiagnosisPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  m_runner.setWatched(true);
}

void DiagnosisPanel::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  m_runner.setWatched(false);
}

void DiagnosisPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  m_table->setColumnHidden(CauseModel::Akaike, width() < narrow_px);
  fitSentence();
  const Qt::Orientation wanted = width() >= wide_px ? Qt::Horizontal : Qt::Vertical;
  if (m_body->orientation() == wanted) return;
  m_body->setOrientation(wanted);
  m_body->setSizes(wanted == Qt::Horizontal ? QList<int>{width() / 2, width() / 2} : QList<int>{100, 170});
}

void DiagnosisPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) colour();
}

}  // namespace ui
