// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/run_step_page.h"

#include <QEvent>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>

#include "core/document/edits.h"
#include "ui/fields/cell_number.h"
#include "ui/fields/digit_keys.h"
#include "ui/fields/field_echo.h"
#include "ui/outcome/figure_grid.h"
#include "ui/quantity_edit.h"
#include "ui/run/reading_text.h"
#include "ui/run/run_faults.h"
#include "ui/run/step_words.h"
#include "ui/run/wait_panel.h"
#include "ui/theme.h"

namespace ui {
namespace {

QFrame* rule() {
  auto* line = new QFrame;
  line->setFrameShape(QFrame::HLine);
  line->setFrameShadow(QFrame::Sunken);
  return line;
}

QString signedText(double value, int decimals) {
  return (value > 0 ? "+" : "") + fixedNumberText(value, decimals);
}

}  // namespace

RunStepPage::RunStepPage(Session& session, QWidget* parent) : RunPage(parent), m_session(session) {
  auto* column = new QVBoxLayout(this);
  column->setSpacing(6);
  buildHead(column);
  column->addWidget(rule());
  m_wait = new WaitPanel;
  column->addWidget(m_wait);
  column->addWidget(readingRow());
  m_series = runLabel("series", 1.0);
  column->addWidget(m_series);
  buildVerdict(column);
  column->addLayout(buttons());
  connect(m_wait, &WaitPanel::started, this, [this] { m_closed = m_step; });
  connect(m_wait, &WaitPanel::over, this, [this] {
    refresh();
    if (isVisible() && m_wait->window()->isActiveWindow()) takeKeyboard();
  });
}

void RunStepPage::buildHead(QBoxLayout* column) {
  m_notice = runLabel("runNotice", 1.1, true);
  m_title = runLabel("stepTitle", 2.4, true);
  m_label = runLabel("stepLabel", 1.4);
  m_label->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  auto* head = new QHBoxLayout;
  head->addWidget(m_title, 2);
  head->addWidget(m_label, 3);
  m_wiringFaults = runLabel("stepWiringFaults", 1.3, true);
  m_actions = runLabel("stepActions", 1.9);
  m_state = runLabel("stepState", 1.2);
  auto* todo = new QWidget;
  auto* todoColumn = new QVBoxLayout(todo);
  todoColumn->setContentsMargins(0, 0, 0, 0);
  todoColumn->addWidget(m_wiringFaults);
  todoColumn->addWidget(m_actions);
  todoColumn->addWidget(m_state);
  auto* scroll = new QScrollArea;
  scroll->setObjectName("stepTodo");
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setWidget(todo);
  m_polarity = runLabel("stepPolarity", 1.7, true);
  m_expected = runLabel("stepExpected", 1.7, true);
  m_onDisplay = runLabel("stepOnDisplay", 1.1);
  auto* expected = new QHBoxLayout;
  expected->addWidget(m_polarity, 1);
  expected->addWidget(m_expected, 3);
  column->addWidget(m_notice);
  column->addLayout(head);
  todoColumn->addSpacing(12);
  todoColumn->addLayout(expected);
  todoColumn->addWidget(m_onDisplay);
  todoColumn->addStretch();
  column->addWidget(scroll, 1);
}

QWidget* RunStepPage::readingRow() {
  auto* caption = withType(new QLabel(tr("Readin&g")), 1.4);
  m_reading = withType(new QLineEdit, 1.9);
  m_reading->setObjectName("readingField");
  m_reading->setAccessibleName(tr("Reading"));
  m_reading->setMaxLength(longestReadingText);
  m_reading->setToolTip(tr("Type a number, or paste a column of numbers: their mean is taken"));
  m_reading->installEventFilter(new FieldUndoFilter(m_reading));
  DigitKeys* keys = attachNumberList(m_reading, [this]() -> std::optional<CellNumber> {
    if (!m_session.channel()) return std::nullopt;
    return CellNumber{core::UnitFamily::Named, m_unit->text()};
  });
  keys->leavePageKeys();  // they turn the pages of the run
  m_readingEcho = keys->echo();
  caption->setBuddy(m_reading);
  m_unit = withType(new QLabel, 1.4);
  m_unit->setTextFormat(Qt::PlainText);
  m_enter = runButton("enterReading", tr("Enter"), 1.2);
  m_readingRow = new QWidget;
  auto* row = new QHBoxLayout(m_readingRow);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(caption);
  row->addWidget(m_reading, 1);
  row->addWidget(m_unit);
  row->addWidget(m_enter);
  connect(m_reading, &QLineEdit::returnPressed, this, &RunStepPage::storeReading);
  connect(m_enter, &QPushButton::clicked, this, &RunStepPage::storeReading);
  connect(m_reading, &QLineEdit::textChanged, this, &RunStepPage::showSeries);
  return m_readingRow;
}

void RunStepPage::buildVerdict(QBoxLayout* column) {
  m_verdict = runLabel("stepVerdict", 2.8, true);
  m_deviation = runLabel("stepDeviation", 1.6);
  m_reason = runLabel("stepReason", 1.1);
  auto* row = new QHBoxLayout;
  row->addWidget(m_verdict, 1);
  row->addWidget(m_deviation, 2);
  column->addLayout(row);
  column->addWidget(m_reason);
  m_noteRow = new QWidget;
  auto* noteLine = new QHBoxLayout(m_noteRow);
  noteLine->setContentsMargins(0, 0, 0, 0);
  m_note = withType(new QLineEdit, 1.2);
  m_note->setObjectName("noteField");
  m_note->setAccessibleName(tr("Note"));
  m_note->setPlaceholderText(tr("what was seen while the reading was taken"));
  m_note->setMaxLength(2000);
  m_note->installEventFilter(new FieldUndoFilter(m_note));
  noteLine->addWidget(withType(new QLabel(tr("Note")), 1.2));
  noteLine->addWidget(m_note, 1);
  column->addWidget(m_noteRow);
  connect(m_note, &QLineEdit::editingFinished, this, &RunStepPage::takeNote);
}

QLayout* RunStepPage::buttons() {
  m_back = runButton("runBack", tr("B&ack"), 1.2);
  m_redo = runButton("redoStep", tr("Redo th&is step"), 1.2);
  auto* note = runButton("runNote", tr("N&ote"), 1.2);
  auto* stop = runButton("stopSafely", tr("Stop safe&ly"), 1.2);
  m_next = runButton("runNext", tr("&Next"), 1.4);
  auto* row = new QHBoxLayout;
  for (QPushButton* button : {m_back, m_redo, note, stop}) row->addWidget(button);
  row->addStretch();
  row->addWidget(m_next);
  connect(m_back, &QPushButton::clicked, this, [this] {
    if (m_step > 0) emit stepWanted(m_step - 1);
  });
  connect(m_redo, &QPushButton::clicked, this, &RunStepPage::redo);
  connect(note, &QPushButton::clicked, this, &RunStepPage::openNote);
  connect(stop, &QPushButton::clicked, this, &RunStepPage::stopWanted);
  connect(m_next, &QPushButton::clicked, this, &RunStepPage::goNext);
  return row;
}

const std::optional<core::Measured>& RunStepPage::measured() const {
  static const std::optional<core::Measured> none;
  const core::Check* check = m_session.check();
  return check && m_step < check->readings.size() ? check->readings[m_step] : none;
}

void RunStepPage::showStep(std::size_t step, const QString& notice) {
  m_step = step;
  m_from = m_closed;
  m_redoing = false;
  m_notice->setText(notice);
  m_notice->setVisible(!notice.isEmpty());
  clearReading();
  m_note->setModified(false);
  m_session.selectStep(step);
  prepareWait();
  refresh();
}

void RunStepPage::clearReading() {
  m_reading->clear();
  m_readingEcho->clear();
}

void RunStepPage::prepareWait() {
  const core::Step& step = m_session.channel()->setup.sequence[m_step];
  isRead() ? m_wait->setOver() : m_wait->prepare(step.settle, step.hold);
}

void RunStepPage::refresh() {
  if (!m_session.check() || m_step >= m_session.channel()->setup.sequence.size()) return;
  if (!measured()) m_redoing = false;  // undone meanwhile
  showHead();
  showExpected();
  showVerdict();
  showNote();
  const bool read = isRead(), ready = m_wait->phase() == StepTimer::Phase::Over;
  // An undone reading leaves the step as before its wait ran down: it can be entered again.
  for (QWidget* widget : std::initializer_list<QWidget*>{m_wait, m_readingRow}) widget->setVisible(!read);
  for (QLabel* label : {m_verdict, m_deviation}) label->setVisible(read);
  m_reading->setEnabled(!read && ready);
  m_enter->setEnabled(!read && ready);
  m_reading->setPlaceholderText(ready ? tr("what the instrument shows") : tr("after the wait"));
  m_unit->setText(toQString(core::readingUnitText(m_session.channel()->setup.instrument)));
  m_back->setEnabled(m_step > 0);
  m_redo->setEnabled(read);
  const bool last = m_step + 1 == m_session.channel()->setup.sequence.size();
  m_next->setText(last ? tr("Summar&y") : read || m_redoing ? tr("&Next") : tr("&Next, without a reading"));
}

void RunStepPage::showHead() {
  const core::Setup& setup = m_session.channel()->setup;
  const core::Step& step = setup.sequence[m_step];
  m_title->setText(
      tr("Step %1 of %2").arg(QString::number(m_step + 1), QString::number(setup.sequence.size())));
  m_label->setText(QString("%1 · %2").arg(toQString(step.label), toQString(m_session.check()->name)));
  const core::Step* from = m_from && *m_from < setup.sequence.size() ? &setup.sequence[*m_from] : nullptr;
  const QStringList actions = isRead() ? QStringList() : actionsBetween(setup, from, step);
  m_actions->setVisible(!actions.isEmpty());
  m_actions->setText(actions.isEmpty() ? QString() : actions.join(".\n") + ".");
  m_state->setText(stateWords(setup, step));
  const QStringList wrong = wiringFaultsAt(setup, step);
  m_wiringFaults->setVisible(!wrong.isEmpty());
  m_wiringFaults->setText(tr("The wiring of this step is wrong; lay no jumper before it is corrected:") +
                          "\n" + listOf(wrong));
  setTextColour(m_wiringFaults, coloursFor(palette()).fail);
}

void RunStepPage::showExpected() {
  const core::CheckEvaluation& evaluation = m_session.evaluation()->checks[*m_session.selection().check];
  const core::Setup& setup = m_session.channel()->setup;
  const auto& prediction = evaluation.prediction.steps[m_step];
  m_onDisplay->clear();
  if (!prediction) {
    m_polarity->setText(tr("not known"));
    m_expected->setText(toText(prediction.error()));
    return m_onDisplay->hide();
  }
  const QString unit = toQString(core::readingUnitText(setup.instrument));
  const int decimals = readingDecimals(evaluation.prediction);
  const auto limit = limitsOf(setup, evaluation.prediction, evaluation.budget)[m_step];
  const bool zeroStep = setup.sequence[m_step].closed.empty();
  m_polarity->setText(zeroStep ? tr("zero") : polarityText(prediction->polarity));
  setTextColour(m_polarity, colourOf(coloursFor(palette()), prediction->polarity));
  const auto zero = evaluation.assessment.zeroStep;
  const bool reference = zeroStep && (!zero || *zero == m_step);
  const QString expected = tr("expected %1 %2, limit ± %3")
                               .arg(signedText(prediction->reading.base(), decimals), unit,
                                    limit ? fixedNumberText(limit->base(), decimals) : QString("–"));
  m_expected->setText(withWholeUnits(reference ? tr("this reading becomes the zero") : expected));
  const auto shown = zero ? m_session.check()->readings[*zero]->mean : core::Reading(0);
  m_onDisplay->setVisible(zero && !reference);
  m_onDisplay->setText(
      withWholeUnits(tr("With the zero reading of %1 the instrument should show %2 %3.")
                         .arg(fixedNumberText(shown.base(), decimals),
                              fixedNumberText((shown + prediction->reading).base(), decimals), unit)));
}

void RunStepPage::showVerdict() {
  const core::CheckEvaluation& evaluation = m_session.evaluation()->checks[*m_session.selection().check];
  const core::StepAssessment& judged = evaluation.assessment.steps[m_step];
  const QString unit = toQString(core::readingUnitText(m_session.channel()->setup.instrument));
  const int decimals = readingDecimals(evaluation.prediction);
  const auto text = [&](core::Reading reading) { return fixedNumberText(reading.base(), decimals); };
  for (QLabel* label : {m_verdict, m_deviation, m_reason}) label->clear();
  if (m_redoing)
    m_reason->setText(tr("Redoing this step. Before: %1 %2, kept until another reading is entered.")
                          .arg(text(measured()->mean), unit));
  if (!isRead()) return;
  const QString word = tr(std::string(core::verdictWord(judged.verdict)).c_str());
  m_verdict->setText(verdictSign(judged.verdict) + " " + word);
  setTextColour(m_verdict, colourOf(coloursFor(palette()), judged.verdict));
  QString said = tr("read %1 %2").arg(text(measured()->mean), unit);
  if (judged.deviation && judged.limit)
    said = tr("%1, deviation %2, limit ± %3")
               .arg(said, signedText(judged.deviation->base(), decimals), text(*judged.limit));
  m_deviation->setText(withWholeUnits(said));
  m_reason->setText(withWholeUnits(toQString(judged.reason)));
}

void RunStepPage::showSeries() {
  if (!m_session.channel()) return;
  const auto typed = readingFromText(m_reading->text(), m_session.channel()->setup.instrument);
  const bool series = typed && typed->count > 1;
  m_series->setText(
      series ? withWholeUnits(tr("%n readings: mean %1, standard uncertainty of the mean %2 %3", nullptr,
                                 int(typed->count))
                                  .arg(numberText(typed->measured.mean.base(), 8),
                                       numberText(typed->measured.uncertainty->base(), 2), m_unit->text()))
             : QString());
}

void RunStepPage::storeReading() {
  if (!m_session.check() || isRead() || m_wait->phase() != StepTimer::Phase::Over) return;
  const core::Setup& setup = m_session.channel()->setup;
  auto typed = readingFromText(m_reading->text(), setup.instrument);
  if (!typed) {
    m_reading->selectAll();
    return m_readingEcho->refuse(toText(typed.error()));
  }
  core::Measured next = typed->measured;
  next.note = m_note->text().trimmed().toStdString();
  if (m_redoing) next.note = noteOfRedone(*measured(), setup.instrument, next.note);
  const QString label = m_redoing ? tr("Redo step %1") : tr("Enter reading of step %1");
  m_redoing = false;
  m_closed = m_step;
  clearReading();
  m_note->setModified(false);
  m_session.editChannel(label.arg(m_step + 1),
                        core::withReading(*m_session.channel(), *m_session.selection().check, m_step, next));
  refresh();
  m_next->setFocus();
}

void RunStepPage::redo() {
  if (!isRead()) return;
  m_redoing = true;
  m_from = m_closed;
  prepareWait();
  refresh();
  takeKeyboard();
}

/// What is in the document, unless something else is being typed.
void RunStepPage::showNote() {
  if (m_note->isModified()) return;
  const bool noted = measured() && !measured()->note.empty();
  m_note->setText(noted ? toQString(measured()->note) : QString());
  m_noteRow->setVisible(noted || m_note->hasFocus());
}

void RunStepPage::forgetAll() {
  m_closed.reset();
  m_note->setModified(false);
}

void RunStepPage::openNote() {
  m_noteRow->show();
  m_note->setFocus();
}

/// Into the reading at once; before there is one the line keeps it.
void RunStepPage::takeNote() {
  if (!m_note->isModified() || !isRead()) return;
  core::Measured next = *measured();
  next.note = m_note->text().trimmed().toStdString();
  m_note->setModified(false);
  m_session.editChannel(tr("Note at step %1").arg(m_step + 1),
                        core::withReading(*m_session.channel(), *m_session.selection().check, m_step, next));
}

void RunStepPage::keepNote() {
  takeNote();
  const std::string note = m_note->text().trimmed().toStdString();
  if (!m_note->isModified() || note.empty() || !m_session.check()) return;
  core::Channel channel = *m_session.channel();
  std::string& remark = channel.checks[*m_session.selection().check].remark;
  remark = remarkWithNote(remark, m_step, note);
  m_note->setModified(false);
  m_session.editChannel(tr("Note at step %1").arg(m_step + 1), std::move(channel));
}

void RunStepPage::goNext() {
  if (m_step + 1 < m_session.channel()->setup.sequence.size()) return emit stepWanted(m_step + 1);
  emit summaryWanted();
}

void RunStepPage::takeKeyboard() {
  if (isRead()) return m_next->setFocus();
  m_wait->phase() == StepTimer::Phase::Over ? m_reading->setFocus() : m_wait->takeKeyboard();
}

void RunStepPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) refresh();
}

}  // namespace ui
