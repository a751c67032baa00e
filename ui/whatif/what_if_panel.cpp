// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/whatif/what_if_panel.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/as_typed.h"
#include "ui/bridge/bridge_canvas.h"
#include "ui/help/next_steps.h"
#include "ui/parts.h"
#include "ui/sheet_view.h"
#include "ui/theme.h"
#include "ui/whatif/trial_list.h"

namespace ui {
namespace {

/// From these on there is room for the drawing beside, or else below.
constexpr int widthForBeside = 690, heightForBelow = 520;
/// Longer words in the last column take a second line.
constexpr int longestPolarity = 190;
/// From this width on words and drawing share it evenly.
constexpr int widthForEven = 1150;

}  // namespace

WhatIfPanel::WhatIfPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("whatIfPanel");
  setAccessibleName(tr("What if"));
  m_drawing = new BridgeCanvas;
  m_drawing->setObjectName("whatIfDrawing");
  m_drawing->setAccessibleName(tr("The bridge with what is tried out"));
  m_room = new QBoxLayout(QBoxLayout::LeftToRight, this);
  m_room->setContentsMargins(4, 4, 4, 4);
  m_room->setSpacing(6);
  m_room->addWidget(words(), 3);
  m_room->addWidget(m_drawing, 2);
  connect(&m_session, &Session::changed, this, &WhatIfPanel::follow);
  colour();
  arrange();
  refresh();
}

QWidget* WhatIfPanel::words() {
  auto* words = new QWidget;
  auto* column = new QVBoxLayout(words);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  m_list = new TrialList;
  connect(m_list, &TrialList::valueEdited, this, &WhatIfPanel::setValue);
  connect(m_list, &TrialList::removed, this, &WhatIfPanel::remove);
  connect(m_list, &TrialList::refused, this, &WhatIfPanel::refused);
  m_sentence = plainLabel("whatIfSentence");
  m_table = new SheetView;
  m_table->setObjectName("whatIfTable");
  m_table->setAccessibleName(tr("Readings without and with what is tried out"));
  m_table->setModel(&m_model);
  m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_table->setTabKeyNavigation(false);
  m_table->viewport()->installEventFilter(this);
  m_table->setWordWrap(true);
  connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &WhatIfPanel::chooseStep);
  connect(m_table, &SheetView::refused, this, &WhatIfPanel::refused);
  column->addLayout(head());
  column->addWidget(m_list);
  column->addWidget(m_sentence);
  column->addWidget(new NextSteps(m_session, NextSteps::Need::Steps));
  column->addWidget(m_table, 1);
  column->addLayout(foot());
  return words;
}

QLayout* WhatIfPanel::head() {
  m_add = toolButton("tryOut", tr("Try out"), tr("Adds a fault or a change that is tried out"));
  m_menu = new QMenu(m_add);
  m_menu->setObjectName("tryOutMenu");
  m_add->setMenu(m_menu);
  m_add->setPopupMode(QToolButton::InstantPopup);
  m_add->setFocusPolicy(Qt::StrongFocus);
  connect(m_menu, &QMenu::aboutToShow, this, &WhatIfPanel::fillMenu);
  m_zeroed = new QComboBox;
  m_zeroed->setObjectName("whatIfZeroed");
  m_zeroed->setAccessibleName(tr("When the instrument was zeroed"));
  m_zeroed->setToolTip(
      tr("Zeroed before it came, the instrument shows the jump of the zero in every reading"));
  m_zeroed->addItem(tr("Zeroed after it came"));
  m_zeroed->addItem(tr("Zeroed before it came"));
  connect(m_zeroed, &QComboBox::currentIndexChanged, this, &WhatIfPanel::showTable);
  m_clear = toolButton("clearTrials", tr("Clear"), tr("Takes everything away that is tried out"));
  m_takeOver = toolButton("takeOver", tr("Take over into the plan"),
                          tr("Writes it into the channel; undo brings the plan back"));
  connect(m_clear, &QToolButton::clicked, this, &WhatIfPanel::clear);
  connect(m_takeOver, &QToolButton::clicked, this, &WhatIfPanel::takeOver);
  auto* line = new QHBoxLayout;
  line->setSpacing(4);
  line->addWidget(m_add);
  line->addWidget(m_zeroed);
  line->addStretch(1);
  line->addWidget(m_clear);
  line->addWidget(m_takeOver);
  return line;
}

QLayout* WhatIfPanel::foot() {
  m_caution = plainLabel("whatIfCaution");
  m_caution->setText(tr("A what-if says nothing about the real article."));
  m_caution->setToolTip(asTyped(toQString(core::whatIfCaution())));
  m_caution->setAccessibleDescription(toQString(core::whatIfCaution()));
  m_copy = toolButton("copyWhatIf", tr("Copy as text"),
                      tr("Copies what is tried out, the sentence and the table"));
  connect(m_copy, &QToolButton::clicked, this, [this] { QApplication::clipboard()->setText(text()); });
  auto* line = new QHBoxLayout;
  line->addWidget(m_caution, 1);
  line->addWidget(m_copy, 0, Qt::AlignTop);
  return line;
}

/// What may be tried out on the bridge as it is with what is tried out already.
void WhatIfPanel::fillMenu() {
  m_menu->clear();
  qDeleteAll(m_menu->findChildren<QMenu*>(QString(), Qt::FindDirectChildrenOnly));
  if (!m_session.channel()) return;
  m_offered = core::possibleAlterations(m_tried.setup);
  for (std::size_t at = 0; at < m_offered.size();) {
    std::size_t end = at;
    while (end < m_offered.size() && m_offered[end].kind == m_offered[at].kind) ++end;
    const QString kind = toQString(core::alterationKindName(m_offered[at].kind));
    QMenu* into = end - at > 1 ? m_menu->addMenu(kind) : m_menu;
    for (; at < end; ++at) {
      QString text = toQString(core::alterationText(m_tried.setup, m_offered[at]));
      QAction* action = into->addAction(text.replace('&', "&&"));
      action->setObjectName(toQString(core::alterationKindKey(m_offered[at].kind)) + "_" +
                            QString::number(m_offered[at].index) + "_" +
                            QString::number(m_offered[at].other));
      connect(action, &QAction::triggered, this, [this, at] { tryOut(m_offered[at]); });
    }
  }
}

core::Zeroed WhatIfPanel::zeroed() const {
  return m_zeroed->currentIndex() == 1 ? core::Zeroed::Before : core::Zeroed::After;
}

std::optional<std::size_t> WhatIfPanel::step() const {
  const auto step = m_session.selection().step;
  return step && *step < m_tried.setup.sequence.size() ? step : std::nullopt;
}

void WhatIfPanel::tryOut(const core::Alteration& alteration) {
  m_trials.push_back(alteration);
  refresh();
  m_list->openLast();
}

void WhatIfPanel::setValue(std::size_t trial, double value) {
  if (trial >= m_trials.size()) return;
  m_trials[trial].value = value;
  refresh();
}

void WhatIfPanel::remove(std::size_t trial) {
  if (trial >= m_trials.size()) return;
  m_trials.erase(m_trials.begin() + static_cast<std::ptrdiff_t>(trial));
  refresh();
  m_add->setFocus();  // the button that had it is gone
}

void WhatIfPanel::forget() {
  m_trials.clear();
  refresh();
}

void WhatIfPanel::clear() {
  forget();
  m_add->setFocus();
}

void WhatIfPanel::takeOver() {
  if (!m_session.channel() || m_tried.applied.empty()) return;
  const QString tried = triedText();
  core::Channel next = *m_session.channel();
  next.setup = m_tried.setup;
  m_trials.clear();
  m_session.editChannel(tr("Take over: %1").arg(tried), std::move(next));
  refresh();
  emit said(tr("Taken over into the plan: %1. Undo brings the plan back.").arg(tried));
}

/// The words of what applies: all of it, or the first and how many more.
QString WhatIfPanel::triedText() const {
  constexpr qsizetype longest = 90;
  QStringList texts;
  for (std::size_t k = 0; k < m_tried.texts.size(); ++k)
    if (!m_tried.refused[k]) texts << toQString(m_tried.texts[k]);
  const QString all = texts.join("; ");
  if (all.size() <= longest || texts.size() < 2) return all;
  return tr("%1 and %n more", nullptr, static_cast<int>(texts.size()) - 1).arg(texts.first());
}

void WhatIfPanel::follow() {
  if (isVisible()) refresh();
}

void WhatIfPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void WhatIfPanel::refresh() {
  const core::Channel* channel = m_session.channel();
  m_tried = core::triedOut(channel ? channel->setup : core::Setup{}, m_trials);
  m_whatIf.reset();
  if (channel)
    if (auto result = core::whatIf(channel->setup, m_tried.applied)) {
      m_whatIf = *std::move(result);
      for (const auto& step : m_session.evaluation()->budget.of(core::Scope::Chain).steps)
        m_whatIf->uncertainty.push_back(step ? std::optional(step->expanded) : std::nullopt);
    }
  m_list->show(m_trials, m_tried);
  m_list->setVisible(!m_trials.empty());
  m_add->setEnabled(channel);
  m_zeroed->setEnabled(channel);
  m_copy->setEnabled(channel);
  m_clear->setEnabled(!m_trials.empty());
  m_takeOver->setEnabled(channel && !m_tried.applied.empty());
  showTable();
  tellLeftOut();
}

QString WhatIfPanel::sentence() const {
  if (!m_session.channel()) return tr("No channel yet. Add a channel to try faults out on it.");
  if (m_trials.empty())
    return tr(
        "Nothing is tried out yet. Choose a fault or a change under Try out to see the readings of the plan "
        "with "
        "and without it. The document does not change.");
  if (m_tried.applied.empty()) return tr("None of this applies to this channel.");
  if (m_session.channel()->setup.sequence.empty())
    return tr("The channel has no steps yet; add steps to its sequence.") + " " +
           (m_whatIf ? toQString(core::whatIfSentence(*m_whatIf, zeroed())) : QString());
  return m_whatIf ? toQString(core::whatIfSentence(*m_whatIf, zeroed())) : QString();
}

void WhatIfPanel::showTable() {
  m_sentence->setText(sentence());
  m_following = true;
  m_model.show(m_whatIf, zeroed());
  sizeColumns();
  const QModelIndex row = m_model.index(WhatIfModel::rowOf(step()), 0);
  if (row.isValid() && m_table->currentIndex().row() != row.row()) m_table->setCurrentIndex(row);
  m_following = false;
  showDrawing();
}

void WhatIfPanel::showDrawing() {
  if (m_drawing->isHidden()) return;
  if (m_session.channel())
    m_drawing->showSetup(m_tried.setup, step());
  else
    m_drawing->showNothing();
}

/// Once for each time that what is left out changes.
void WhatIfPanel::tellLeftOut() {
  QStringList leftOut;
  for (std::size_t k = 0; k < m_trials.size(); ++k)
    if (const auto& why = m_tried.refused[k])
      leftOut << tr("%1 is left out: %2").arg(toQString(m_tried.texts[k]), toQString(why->what));
  if (leftOut == m_leftOut) return;
  m_leftOut = leftOut;
  if (!leftOut.isEmpty()) emit said(leftOut.join(". ") + ".");
}

void WhatIfPanel::chooseStep() {
  if (m_following) return;
  m_session.selectStep(WhatIfModel::stepOf(m_table->currentIndex().row()));
}

void WhatIfPanel::arrange() {
  const bool beside = width() >= widthForBeside, below = !beside && height() >= heightForBelow;
  const int words = width() >= widthForEven ? 2 : 3;
  m_room->setDirection(below ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
  m_room->setStretch(0, words);
  const bool room = beside || below;
  if (room != m_drawing->isHidden()) return;
  m_drawing->setVisible(room);
  showDrawing();
}

/// Room that is left is shared; where there is little, the shunts are named by the tips alone.
void WhatIfPanel::sizeColumns() {
  m_table->setColumnHidden(WhatIfModel::Closed, false);
  m_table->resizeColumnsToContents();
  const auto limit = [this](int column, int most) {
    m_table->setColumnWidth(column, std::min(m_table->columnWidth(column), most));
  };
  limit(WhatIfModel::Polarity, longestPolarity);
  const QHeaderView& header = *m_table->horizontalHeader();
  const int room = m_table->viewport()->width();
  if (header.length() > room) m_table->setColumnHidden(WhatIfModel::Closed, true);
  const int columns = header.count() - header.hiddenSectionCount(), spare = room - header.length();
  for (int column = 0; column < header.count() && spare > 0; ++column)
    if (!m_table->isColumnHidden(column))
      m_table->setColumnWidth(column, m_table->columnWidth(column) + spare / columns);
  m_table->resizeRowsToContents();
}

void WhatIfPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

bool WhatIfPanel::eventFilter(QObject* watched, QEvent* event) {
  // When what stands above it grows, the table shrinks: the chosen row stays in view, once the height is new.
  // The type first: others come while the table is being destroyed, and then it cannot be asked.
  if (event->type() == QEvent::Resize && watched == m_table->viewport())
    QTimer::singleShot(0, m_table, [this] {
      sizeColumns();
      m_table->scrollTo(m_table->currentIndex());
    });
  return QWidget::eventFilter(watched, event);
}

void WhatIfPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) colour();
}

void WhatIfPanel::colour() {
  m_model.setColours(palette());
  setTextColour(m_caution, coloursFor(palette()).quiet);
}

QString WhatIfPanel::text() const {
  if (!m_session.channel()) return sentence() + "\n";
  QString text = tr("%1, what if").arg(toQString(m_session.channel()->name)) + "\n";
  for (std::size_t k = 0; k < m_tried.texts.size(); ++k)
    text +=
        (m_tried.refused[k] ? tr("%1 (left out)") : QString("%1")).arg(toQString(m_tried.texts[k])) + "\n";
  text += m_zeroed->currentText() + "\n" + sentence() + "\n\n" + m_model.text() + "\n" +
          toQString(core::whatIfCaution()) + "\n";
  return text;
}

}  // namespace ui
