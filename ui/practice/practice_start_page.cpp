// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/practice_start_page.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QRandomGenerator>
#include <QScrollArea>
#include <QVBoxLayout>

#include "ui/fields/count_edit.h"
#include "ui/parts.h"
#include "ui/practice/practice_words.h"
#include "ui/practice/score_table.h"
#include "ui/practice/sheets_button.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int besideFrom = 760;  ///< pixels of width from which the score stands beside the fields
constexpr std::uint64_t proposedBelow = 10000;  ///< a seed that is read out to a class is a short one

QLabel* quiet(const QString& text) {
  auto* label = plainLabel("hint");
  label->setText(text);
  return label;
}

}  // namespace

PracticeStartPage::PracticeStartPage(QWidget* parent) : QWidget(parent) {
  setObjectName("practiceStart");
  m_place = plainLabel("practicePlace");
  m_goOn = new QPushButton(tr("&Go on"));
  m_goOn->setObjectName("practiceGoOn");
  m_goOn->setAutoDefault(true);
  m_go = new QWidget;
  auto* goLine = new QHBoxLayout(m_go);
  goLine->setContentsMargins(0, 0, 0, 8);
  goLine->addWidget(m_goOn);
  goLine->addWidget(m_place, 1);
  m_sheets = new SheetsButton;
  m_score = new ScoreTable;

  auto* fields = new QVBoxLayout;
  fields->addWidget(m_go);
  fields->addLayout(difficulties());
  fields->addSpacing(10);
  fields->addLayout(kinds());
  fields->addSpacing(10);
  fields->addLayout(numbers());
  fields->addStretch();
  auto* inside = new QWidget;
  m_columns = new QBoxLayout(QBoxLayout::TopToBottom, inside);
  m_columns->setSpacing(24);
  m_columns->addLayout(fields, 3);
  auto* score = new QVBoxLayout;
  score->addWidget(m_score);
  score->addStretch();
  m_columns->addLayout(score, 2);
  auto* scroll = new QScrollArea;
  scroll->setObjectName("practiceStartScroll");
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setWidget(inside);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(scroll);
  connect(m_goOn, &QPushButton::clicked, this, &PracticeStartPage::goOnWanted);
  connect(m_begin, &QPushButton::clicked, this, &PracticeStartPage::begin);
  connect(m_sheets, &SheetsButton::sheetsWanted, this, &PracticeStartPage::sheetsWanted);
  proposeSeed();
}

QLayout* PracticeStartPage::difficulties() {
  auto* grid = new QGridLayout;
  grid->setColumnStretch(1, 1);
  grid->addWidget(embolden(new QLabel(tr("Difficulty"))), 0, 0, 1, 2);
  m_difficulty = new QButtonGroup(this);
  for (const core::Difficulty difficulty : allDifficulties()) {
    const int index = static_cast<int>(difficulty);
    auto* button = new QRadioButton(difficultyName(difficulty));
    button->setObjectName("difficulty" + QString::number(index + 1));
    button->setAccessibleName(difficultyName(difficulty));
    button->setAccessibleDescription(difficultySentence(difficulty));
    m_difficulty->addButton(button, index);
    grid->addWidget(button, index + 1, 0, Qt::AlignTop);
    grid->addWidget(quiet(difficultySentence(difficulty)), index + 1, 1);
  }
  m_difficulty->button(0)->setChecked(true);
  return grid;
}

QLayout* PracticeStartPage::kinds() {
  auto* grid = new QGridLayout;
  grid->setColumnStretch(1, 1);
  grid->addWidget(embolden(new QLabel(tr("Kinds of question"))), 0, 0, 1, 2);
  int row = 1;
  for (const core::QuestionKind kind : core::allQuestionKinds()) {
    auto* box = new QCheckBox(kindName(kind));
    box->setObjectName("kind" + QString::number(row));
    box->setAccessibleName(kindName(kind));
    box->setAccessibleDescription(kindSentence(kind));
    box->setChecked(true);
    m_kinds.push_back(box);
    grid->addWidget(box, row, 0, Qt::AlignTop);
    grid->addWidget(quiet(kindSentence(kind)), row, 1);
    ++row;
  }
  return grid;
}

QLayout* PracticeStartPage::numbers() {
  m_seed = new CountEdit;
  m_seed->setObjectName("practiceSeed");
  m_seed->setAccessibleName(tr("Seed"));
  m_seed->setAccessibleDescription(
      tr("with the same difficulty, kinds and number of questions it gives the same questions, on every "
         "computer"));
  m_seed->setRange(0, UINT64_MAX);
  m_seed->setMinimumWidth(m_seed->fontMetrics().horizontalAdvance("0000"));  // in a narrow window
  auto* other = new QPushButton(tr("&Another seed"));
  other->setObjectName("anotherSeed");
  other->setAutoDefault(true);
  connect(other, &QPushButton::clicked, this, &PracticeStartPage::proposeSeed);
  m_count = new CountEdit;
  m_count->setObjectName("practiceCount");
  m_count->setAccessibleName(tr("Number of questions"));
  m_count->setRange(1, static_cast<int>(mostQuestions));
  m_count->setValue(10);
  m_count->setMinimumWidth(m_seed->minimumWidth());
  connect(m_count, &CountEdit::refused, this, &PracticeStartPage::refused);
  m_begin = new QPushButton(tr("Beg&in"));
  m_begin->setObjectName("practiceBegin");
  m_begin->setAutoDefault(true);
  auto* seedName = new QLabel(tr("Seed"));
  seedName->setBuddy(m_seed);
  auto* countName = new QLabel(tr("&Questions"));
  countName->setBuddy(m_count);
  auto* grid = new QGridLayout;
  grid->setColumnStretch(3, 1);
  grid->addWidget(seedName, 0, 0);
  grid->addWidget(m_seed, 0, 1);
  grid->addWidget(other, 0, 2);
  grid->addWidget(quiet(tr("The same seed with the same difficulty, kinds and number of questions gives the "
                           "same questions on every computer: tell all four to the class.")),
                  1, 0, 1, 4);
  grid->addWidget(countName, 2, 0);
  grid->addWidget(m_count, 2, 1);
  grid->setRowMinimumHeight(3, 8);
  grid->addWidget(m_begin, 4, 0, 1, 2);
  grid->addWidget(m_sheets, 5, 0, 1, 4, Qt::AlignLeft);
  return grid;
}

void PracticeStartPage::refresh(const std::optional<PracticeRun>& place) {
  m_go->setVisible(place.has_value());
  if (place)
    m_place->setText((place->isRepeat ? tr("with question %1 of %2 · %3 · seed %4 · repeated")
                                      : tr("with question %1 of %2 · %3 · seed %4"))
                         .arg(QString::number(place->given.size() + 1), QString::number(place->order.size()),
                              difficultyName(place->set.difficulty), QString::number(place->set.seed)));
  m_score->refresh();
}

void PracticeStartPage::takeKeyboard() { (m_go->isHidden() ? m_begin : m_goOn)->setFocus(); }

void PracticeStartPage::proposeSeed() {
  const quint64 before = m_seed->count();
  while (m_seed->count() == before)
    m_seed->setValue(1 + QRandomGenerator::global()->bounded(quint32(proposedBelow - 1)));
}

std::optional<PracticeSet> PracticeStartPage::set() {
  PracticeSet set;
  set.seed = m_seed->count();
  set.difficulty = static_cast<core::Difficulty>(m_difficulty->checkedId());
  for (std::size_t k = 0; k < m_kinds.size(); ++k)
    if (m_kinds[k]->isChecked()) set.kinds.push_back(core::allQuestionKinds()[k]);
  if (!m_count->isReady()) return std::nullopt;
  if (!m_seed->isTaken()) {
    m_seed->setFocus();
    m_seed->selectAll();
    emit refused(tr("The seed is a whole number from 0 to %1, in digits alone.").arg(UINT64_MAX));
    return std::nullopt;
  }
  set.count = static_cast<std::size_t>(m_count->value());
  if (set.kinds.empty()) {
    m_kinds.front()->setFocus();
    emit refused(tr("Choose at least one kind of question."));
    return std::nullopt;
  }
  return set;
}

void PracticeStartPage::begin() {
  if (const auto chosen = set()) emit begun(*chosen);
}

/// Enter in a field begins, as the button does.
void PracticeStartPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return begin();
  QWidget::keyPressEvent(event);
}

void PracticeStartPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  m_columns->setDirection(width() >= besideFrom ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

}  // namespace ui
