// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/question_page.h"

#include <QAccessible>
#include <QApplication>
#include <QButtonGroup>
#include <QFontDatabase>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "ui/outcome/report_table_model.h"
#include "ui/parts.h"
#include "ui/practice/choice_button.h"
#include "ui/practice/practice_words.h"
#include "ui/practice/question_picture.h"
#include "ui/preferences/appearance.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int besideFrom = 860;  ///< pixels of width from which the drawing stands beside the text

/// The field's family and how many of its base units one of the question's units is, so that all the usual
/// spellings of the unit are taken.
std::pair<core::UnitFamily, double> fieldOf(const std::string& unit) {
  if (unit == "µm/m") return {core::UnitFamily::Strain, 1e-6};
  if (unit == "mV/V") return {core::UnitFamily::Output, 1e-3};
  return {core::UnitFamily::Named, 1};
}

QLabel* larger(QLabel* label, double times) {
  QFont font = label->font();
  font.setPointSizeF(font.pointSizeF() * times);
  label->setFont(font);
  return label;
}

}  // namespace

QuestionPage::QuestionPage(QWidget* parent) : QWidget(parent) {
  setObjectName("questionPage");
  m_head = embolden(plainLabel("questionHead"));
  m_tally = plainLabel("questionTally");
  m_tally->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  m_progress = new QProgressBar;
  m_progress->setObjectName("questionProgress");
  m_progress->setAccessibleName(tr("Questions answered"));
  m_progress->setTextVisible(false);
  m_progress->setMaximumHeight(8);
  m_canvas = new QuestionCanvas;
  auto* body = new QWidget;
  m_column = new QVBoxLayout(body);
  m_column->setContentsMargins(0, 0, 6, 0);
  buildBody(m_column);
  m_scroll = new QScrollArea;
  m_scroll->setObjectName("questionScroll");
  m_scroll->setFrameShape(QFrame::NoFrame);
  m_scroll->setWidgetResizable(true);
  m_scroll->setFocusPolicy(Qt::NoFocus);
  m_scroll->setWidget(body);
  m_sides = new QHBoxLayout;
  m_sides->setSpacing(12);
  m_sides->addWidget(m_scroll, 4);
  auto* head = new QHBoxLayout;
  head->addWidget(m_head, 3);
  head->addWidget(m_tally, 1);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addLayout(head);
  all->addWidget(m_progress);
  all->addLayout(m_sides, 1);
  all->addLayout(buttons());
  placeCanvas();
}

void QuestionPage::buildBody(QBoxLayout* column) {
  m_given = plainLabel("questionGiven");
  m_text = larger(plainLabel("questionText"), 1.2);
  m_readingsModel = new ReportTableModel(this);
  m_readings = new QTableView;
  m_readings->setObjectName("questionReadings");
  m_readings->setAccessibleName(tr("Readings"));
  m_readings->setModel(m_readingsModel);
  m_readings->setTabKeyNavigation(false);
  m_readings->setSelectionMode(QAbstractItemView::NoSelection);  // it is there to be read
  m_readings->verticalHeader()->hide();
  m_readings->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  m_choiceBox = new QWidget;
  m_choiceBox->setObjectName("questionChoices");
  m_choiceBox->setAccessibleName(tr("Choices"));
  auto* choices = new QVBoxLayout(m_choiceBox);
  choices->setContentsMargins(0, 0, 0, 0);
  choices->setSpacing(4);
  m_group = new QButtonGroup(this);
  m_numberRow = new QWidget;
  auto* row = new QHBoxLayout(m_numberRow);
  row->setContentsMargins(0, 0, 0, 0);
  m_unit = new QLabel;
  m_unit->setTextFormat(Qt::PlainText);
  row->addWidget(m_unit, 0);
  row->addStretch(1);
  m_number = nullptr;
  m_verdict = larger(embolden(plainLabel("questionVerdict")), 1.3);
  m_explanation = larger(plainLabel("questionExplanation"), 1.1);
  m_formula = plainLabel("questionFormula");
  m_formula->setFont(QFontDatabase::systemFont(QFontDatabase::FixedFont));
  for (QWidget* part : std::initializer_list<QWidget*>{m_given, m_text, m_readings, m_choiceBox, m_numberRow,
                                                       m_verdict, m_explanation, m_formula})
    column->addWidget(part);
  column->addStretch(1);
}

QLayout* QuestionPage::buttons() {
  const auto button = [](const char* name, const QString& text) {
    auto* made = new QPushButton(text);
    made->setObjectName(name);
    made->setAutoDefault(true);
    return made;
  };
  m_leave = button("questionLeave", tr("&Leave it for now"));
  m_leave->setToolTip(tr("The place is kept"));
  m_answer = button("questionAnswer", tr("&Answer"));
  m_next = button("questionNext", tr("&Next"));
  auto* row = new QHBoxLayout;
  row->addWidget(m_leave);
  row->addStretch();
  row->addWidget(m_answer);
  row->addWidget(m_next);
  connect(m_leave, &QPushButton::clicked, this, &QuestionPage::startWanted);
  connect(m_answer, &QPushButton::clicked, this, &QuestionPage::answer);
  connect(m_next, &QPushButton::clicked, this, &QuestionPage::nextWanted);
  return row;
}

void QuestionPage::ask(const core::Question& question, const PracticeRun& run, std::size_t position) {
  // The button that has the keyboard is about to go, and Qt would hand it to whatever comes next.
  const bool keyboard = isAncestorOf(QApplication::focusWidget());
  m_answered = false;
  show(question, run, position);
  for (QLabel* label : {m_verdict, m_explanation, m_formula}) label->hide();
  m_scroll->ensureVisible(0, 0);
  if (keyboard) takeKeyboard();
}

void QuestionPage::showAnswered(const core::Question& question, const PracticeRun& run,
                                std::size_t position) {
  m_answered = true;
  show(question, run, position);
  const GivenAnswer& given = run.given[position];
  if (given.choice && *given.choice < m_choices.size()) m_choices[*given.choice]->setChecked(true);
  if (given.number && m_number) m_number->setValue(*given.number * fieldOf(m_question.unit).second);
  for (std::size_t k = 0; k < m_choices.size(); ++k) {
    if (k == m_question.right)
      m_choices[k]->setMark(ChoiceButton::Mark::Right);
    else if (given.choice == k)
      m_choices[k]->setMark(ChoiceButton::Mark::Wrong);
    m_choices[k]->setEnabled(false);
  }
  if (m_number) m_number->setEnabled(false);
  showVerdict(given);
}

void QuestionPage::show(const core::Question& question, const PracticeRun& run, std::size_t position) {
  m_question = question;
  showHead(run, position);
  m_canvas->showQuestion(m_question, m_answered);
  m_given->setText(unbroken(givenText(m_question)));
  m_given->setVisible(!m_question.given.empty());
  m_text->setText(unbroken(toQString(m_question.text)));
  showReadings();
  buildChoices();
  m_answer->setVisible(!m_answered);
  m_next->setVisible(m_answered);
  m_next->setText(position + 1 < run.order.size() ? tr("&Next") : tr("Summar&y"));
}

void QuestionPage::showHead(const PracticeRun& run, std::size_t position) {
  QString head = tr("Question %1 of %2").arg(position + 1).arg(run.order.size());
  if (run.isRepeat) head = tr("Repeated: question %1 of %2").arg(position + 1).arg(run.order.size());
  m_head->setText(head + " · " + kindName(m_question.kind) + " · " + difficultyName(run.set.difficulty) +
                  " · " + tr("seed %1").arg(run.set.seed));
  m_tally->setText(run.given.empty() ? QString()
                                     : tr("%1 of %2 right").arg(run.rightOnes()).arg(run.given.size()));
  m_progress->setRange(0, static_cast<int>(run.order.size()));
  m_progress->setValue(static_cast<int>(run.given.size()));
}

void QuestionPage::buildChoices() {
  // A button may be the sender of what brought us here.
  for (ChoiceButton* choice : m_choices) {
    m_group->removeButton(choice);
    choice->hide();
    choice->deleteLater();
  }
  m_choices.clear();
  if (m_number) {
    m_number->hide();
    m_number->deleteLater();
  }
  m_number = nullptr;
  for (const std::string& words : m_question.choices) {
    auto* choice = new ChoiceButton(static_cast<int>(m_choices.size()) + 1, unbroken(toQString(words)));
    m_group->addButton(choice, static_cast<int>(m_choices.size()));
    m_choiceBox->layout()->addWidget(choice);
    choice->show();  // at once: it is to take the keyboard
    m_choices.push_back(choice);
  }
  const bool asksNumber = m_question.choices.empty();
  m_choiceBox->setVisible(!asksNumber);
  m_numberRow->setVisible(asksNumber);
  if (asksNumber) buildNumber();
  orderTabs();
}

void QuestionPage::buildNumber() {
  m_number = new QuantityEdit(fieldOf(m_question.unit).first);
  m_number->setObjectName("questionNumber");
  m_number->setUnit(toQString(m_question.unit));
  m_number->setAccessibleName(tr("Reading in %1").arg(toQString(m_question.unit)));
  m_number->setPlaceholderText(tr("with its sign"));
  m_number->setMaximumWidth(atTextSize(220));
  static_cast<QBoxLayout*>(m_numberRow->layout())->insertWidget(0, m_number);
  m_number->show();
  m_unit->setText(tr("%1, within %2 %").arg(toQString(m_question.unit)).arg(100 * core::readingTolerance));
  connect(m_number, &QuantityEdit::refused, this, &QuestionPage::refused);
}

/// What is made later than the buttons would come after them.
void QuestionPage::orderTabs() {
  std::vector<QWidget*> order = {m_readings};
  order.insert(order.end(), m_choices.begin(), m_choices.end());
  if (m_number) order.push_back(m_number);
  order.insert(order.end(), {m_leave, m_answer, m_next});
  for (std::size_t k = 1; k < order.size(); ++k) setTabOrder(order[k - 1], order[k]);
}

void QuestionPage::showReadings() {
  m_readingsModel->setTable(m_question.readings);
  const int rows = m_readingsModel->rowCount();
  m_readings->setVisible(rows > 0);
  if (rows == 0) return;
  m_readings->resizeRowsToContents();
  // All rows are seen at once: the page scrolls, not the table.
  m_readings->setFixedHeight(m_readings->horizontalHeader()->sizeHint().height() +
                             m_readings->verticalHeader()->length() + 2 * m_readings->frameWidth() +
                             m_readings->horizontalScrollBar()->sizeHint().height());
}

void QuestionPage::answer() {
  if (m_answered) return;
  GivenAnswer given;
  if (m_number) {
    if (!m_number->isRefused()) m_number->commit();  // Enter in the field has said so already
    if (m_number->isRefused()) return m_number->setFocus();
    const auto typed =
        core::parseQuantity(m_number->text().toStdString(), fieldOf(m_question.unit).first, m_question.unit);
    if (!typed) {
      m_number->setFocus();
      return emit refused(tr("Type the reading first, with its sign."));
    }
    given.number = *typed / fieldOf(m_question.unit).second;
    given.right = core::isRight(m_question, core::Reading(*given.number));
  } else {
    const int chosen = m_group->checkedId();
    if (chosen < 0) return emit refused(tr("Choose an answer first: keys 1 to %1.").arg(m_choices.size()));
    given.choice = static_cast<std::size_t>(chosen);
    given.right = core::isRight(m_question, *given.choice);
  }
  emit answered(given);
}

void QuestionPage::showVerdict(const GivenAnswer& given) {
  m_right = given.right;
  QString verdict = m_right ? tr("✓ Right.") : tr("✗ Wrong. Right is: %1.").arg(rightAnswer(m_question));
  if (given.number && m_question.number) {
    const double right = m_question.number->base();
    const QString said = readingAnswer(core::Reading(*given.number), toQString(m_question.unit));
    verdict = m_right ? tr("✓ Right: %1. Your %2 is %3 % off.")
                            .arg(readingAnswer(*m_question.number, toQString(m_question.unit)), said,
                                 numberText(100 * std::abs(*given.number / right - 1), 2))
                      : tr("✗ Wrong: you said %1. Right is %2.").arg(said, rightAnswer(m_question));
  }
  m_verdict->setText(verdict);
  styleVerdict();
  QStringList sentences, lines;
  for (const std::string& sentence : m_question.explanation) sentences << toQString(sentence);
  for (const std::string& line : m_question.formula) lines << toQString(line);
  m_explanation->setText(unbroken(sentences.join(" ")));
  m_formula->setText(unbroken(lines.join("\n")));
  for (QLabel* label : {m_verdict, m_explanation, m_formula}) label->setVisible(!label->text().isEmpty());
  QAccessibleEvent alert(m_verdict, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
  // Once the layout knows how high it is.
  QTimer::singleShot(0, this,
                     [this] { m_scroll->ensureWidgetVisible(m_verdict, 0, m_scroll->height() / 3); });
}

void QuestionPage::styleVerdict() {
  const Colours colours = coloursFor(palette());
  setTextColour(m_verdict, m_right ? colours.pass : colours.fail);
}

void QuestionPage::takeKeyboard() {
  if (m_answered) return m_next->setFocus();
  if (m_number) return m_number->setFocus();
  if (!m_choices.empty()) m_choices.front()->setFocus();
}

/// The wide page has the drawing at its side; in a narrow one it scrolls with the text.
void QuestionPage::placeCanvas() {
  const bool beside = width() >= besideFrom;
  const bool isBeside = m_sides->indexOf(m_canvas) >= 0;
  m_canvas->setMinimumHeight(beside ? 180 : std::max(180, width() * 6 / 10));
  if (beside == isBeside && m_canvas->parentWidget()) return;
  beside ? m_sides->insertWidget(0, m_canvas, 5)
         : m_column->insertWidget(m_column->indexOf(m_text) + 1, m_canvas);
}

void QuestionPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  placeCanvas();
}

void QuestionPage::keyPressEvent(QKeyEvent* event) {
  const int digit = event->key() - Qt::Key_1;
  const bool choosable = !m_answered && digit >= 0 && digit < static_cast<int>(m_choices.size());
  if (choosable && !(event->modifiers() & ~Qt::KeypadModifier)) {
    m_choices[static_cast<std::size_t>(digit)]->setChecked(true);
    return m_choices[static_cast<std::size_t>(digit)]->setFocus();
  }
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    if (m_answered) return emit nextWanted();
    return answer();
  }
  QScrollBar* bar = m_scroll->verticalScrollBar();
  if (event->key() == Qt::Key_PageDown) return bar->triggerAction(QAbstractSlider::SliderPageStepAdd);
  if (event->key() == Qt::Key_PageUp) return bar->triggerAction(QAbstractSlider::SliderPageStepSub);
  QWidget::keyPressEvent(event);
}

void QuestionPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) styleVerdict();
}

}  // namespace ui
