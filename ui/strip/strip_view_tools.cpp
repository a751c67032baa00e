// SPDX-License-Identifier: GPL-3.0-or-later
// The tools of the strip: row, menus and keys.
#include <QAction>
#include <QFrame>
#include <QGridLayout>
#include <QLabel>
#include <QMenu>
#include <QProgressBar>
#include <QPushButton>
#include <QToolBar>
#include <QToolButton>
#include <functional>

#include "ui/parts.h"
#include "ui/strip/span_editor.h"
#include "ui/strip/strip_view.h"
#include "ui/theme.h"

namespace ui {

QAction* StripView::tool(const QString& name, const QString& text, const QString& key, const QString& tip,
                         const std::function<void()>& act) {
  auto* action = new QAction(text, this);
  action->setObjectName(name);
  // Single keys work while the strip has the keyboard, and nowhere else.
  action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
  action->setShortcut(QKeySequence(key));
  action->setToolTip(key.isEmpty() ? tip
                                   : tip + " (" + QKeySequence(key).toString(QKeySequence::NativeText) + ")");
  connect(action, &QAction::triggered, this, act);
  addAction(action);
  return action;
}

void StripView::onChosen(void (SpanEditor::*act)(core::SpanPlace)) {
  if (const StripSpan* span = m_chart->chosenSpan()) (m_editor->*act)(span->place);
}

void StripView::buildTools() {
  m_showAll =
      tool("stripShowAll", tr("Show all"), "Home", tr("The whole recording"), [this] { m_chart->showAll(); });
  m_showSpan = tool("stripShowSpan", tr("Show span"), "Return", tr("The chosen span and what is around it"),
                    [this] { m_chart->showChosen(); });
  m_add = tool("stripAdd", tr("Add"), "A",
               tr("A span where a level is held at the cursor; Shift and drag draws one"), [this] {
                 const auto at = m_chart->cursorSample();
                 if (!at) return emit refused(tr("Put the cursor on the level first."));
                 m_editor->fill(*at, m_chart->visibleSamples());
               });
  m_split = tool("stripSplit", tr("Split"), "S", tr("The chosen span in two at the cursor"), [this] {
    const StripSpan* span = m_chart->chosenSpan();
    const auto at = m_chart->cursorSample();
    if (span) m_editor->split(span->place, at.value_or(0));
  });
  m_join = tool("stripJoin", tr("Join"), "J", tr("The chosen span and the next one as one"),
                [this] { onChosen(&SpanEditor::joinWithNext); });
  m_delete = tool("stripDelete", tr("Delete"), "Del", tr("The chosen span is no more"),
                  [this] { onChosen(&SpanEditor::remove); });
  m_match = tool("stripMatch", tr("Match again"), "M", tr("Give all spans to the steps that they fit"),
                 [this] { m_editor->matchAgain(); });
  m_begin = tool("stripBegin", tr("Begin at the cursor"), "B", tr("The chosen span begins at the cursor"),
                 [this] { m_chart->moveEndToCursor(true); });
  m_end = tool("stripEnd", tr("End at the cursor"), "E", tr("The chosen span ends at the cursor"),
               [this] { m_chart->moveEndToCursor(false); });
  m_free = tool("stripFree", tr("Take from its step"), "N", tr("The chosen span is of no step"), [this] {
    const StripSpan* span = m_chart->chosenSpan();
    if (span && !span->isOther()) m_editor->takeFromStep(span->place.index);
  });
  m_give =
      tool("stripGive", tr("Give to a step…"), "G",
           tr("Choose the step that the chosen span is the reading of"), [this] { m_steps->showMenu(); });
  m_scale = tool("stripScale", tr("Scale to what is on view"), "Y", tr("Else to all values of the recording"),
                 [this] { m_chart->setScaledToView(m_scale->isChecked()); });
  m_all = tool("stripAllChannels", tr("All channels of this recording"), "C",
               tr("Else the chosen channel alone"), [this] { refresh(); });
  m_keys =
      tool("stripKeys", tr("Keys…"), "K", tr("What the keys and the mouse do here"), [this] { showKeys(); });
  for (QAction* action : {m_scale, m_all}) action->setCheckable(true), action->setChecked(true);

  m_tools->setObjectName("stripTools");
  m_tools->setToolButtonStyle(Qt::ToolButtonTextOnly);
  m_tools->setContentsMargins(0, 0, 0, 0);
  m_tools->setStyleSheet("QToolBar { border: 0; spacing: 0; padding: 0; }");
  m_tools->addActions({m_showAll, m_showSpan});
  m_tools->addSeparator();
  m_tools->addActions({m_add, m_split, m_join, m_delete});
  m_steps = toolButton("stripSteps", tr("Step"),
                       tr("Give the chosen span to a step (G), or take it from its step (N)"));
  m_steps->setPopupMode(QToolButton::InstantPopup);
  auto* steps = new QMenu(m_steps);
  steps->setObjectName("stripStepMenu");
  connect(steps, &QMenu::aboutToShow, this, [this, steps] { fillStepMenu(steps); });
  m_steps->setMenu(steps);
  m_tools->addWidget(m_steps);
  m_tools->addAction(m_match);
  m_tools->addSeparator();
  auto* view = toolButton("stripViewButton", tr("View"), tr("Scale, channels and keys of the strip"));
  view->setPopupMode(QToolButton::InstantPopup);
  auto* menu = new QMenu(view);
  menu->addActions({m_scale, m_all});
  menu->addSeparator();
  menu->addAction(m_keys);
  view->setMenu(menu);
  m_tools->addWidget(view);
}

QWidget* StripView::buildMessage() {
  auto* page = new QWidget;
  page->setObjectName("stripMessagePage");
  auto* grid = new QGridLayout(page);
  m_message = plainLabel("stripMessage");
  m_message->setAlignment(Qt::AlignCenter);
  m_progress = new QProgressBar;
  m_progress->setObjectName("stripProgress");
  m_progress->setRange(0, 100);
  m_progress->setTextVisible(false);
  m_progress->setMaximumSize(260, 10);
  const auto button = [&](const char* name, const QString& text, const std::function<void()>& act) {
    auto* made = new QPushButton(text);
    made->setObjectName(name);
    connect(made, &QPushButton::clicked, this, act);
    return made;
  };
  m_cancel = button("stripCancel", tr("Cancel"), [this] { m_store.cancel(*m_session.check()->recording); });
  m_find = button("stripFind", tr("Find the recording…"), [this] { findFile(); });
  m_readIt = button("stripReadIt", tr("Read it"), [this] { readAnyway(); });
  grid->setRowStretch(0, 1);
  grid->addWidget(m_message, 1, 0, 1, 6);
  int column = 1;
  grid->setColumnStretch(0, 1);
  for (QWidget* part : std::initializer_list<QWidget*>{m_progress, m_cancel, m_find, m_readIt}) {
    grid->addWidget(part, 2, column++);
  }
  grid->setColumnStretch(column, 1);
  grid->setRowStretch(3, 1);
  return page;
}

/// A file that was put back is looked for again as if for the first time; else the user has decided.
void StripView::readAnyway() {
  const core::RecordingReference reference = *m_session.check()->recording;
  if (m_store.obstacle(reference) == RecordingStore::Obstacle::Missing) return m_store.forget(reference);
  m_store.want(reference, true);
}

/// What needs a chosen span waits for one; what a closed check forbids says so when it is asked for.
void StripView::enableTools() {
  const bool some = !m_chart->lanes().empty() && m_chart->lanes()[0].column;
  const StripSpan* span = m_chart->chosenSpan();
  for (QAction* action : {m_showAll, m_add, m_match, m_scale}) action->setEnabled(some);
  for (QAction* action : {m_showSpan, m_split, m_join, m_delete, m_begin, m_end, m_give})
    action->setEnabled(span != nullptr);
  m_steps->setEnabled(span != nullptr);
  m_free->setEnabled(span && !span->isOther());
}

void StripView::fillStepMenu(QMenu* menu) {
  menu->clear();
  const StripSpan* span = m_chart->chosenSpan();
  if (!span) return;
  menu->addAction(m_free);
  menu->addSeparator();
  const auto& sequence = m_session.shownSetup().sequence;
  const core::Check& check = *m_session.check();
  for (std::size_t step = 0; step < sequence.size(); ++step) {
    const bool isRead = step < check.readings.size() && check.readings[step];
    // An ampersand in a label is a letter, not a mnemonic.
    const QString label = toQString(sequence[step].label).replace('&', "&&");
    const QString text = QString("%1%2 %3").arg(step < 9 ? "&" : "").arg(step + 1).arg(label);
    auto* action = menu->addAction(isRead ? text : tr("%1  (no reading)").arg(text));
    action->setCheckable(true);
    action->setChecked(span->place == core::SpanPlace{core::SpanPlace::Kind::Step, step});
    connect(action, &QAction::triggered, this,
            [this, place = span->place, step] { m_editor->giveToStep(place, step); });
  }
}

void StripView::showMenu(const QPoint& globalPosition) {
  auto* menu = new QMenu(this);
  menu->setObjectName("stripMenu");
  menu->setAttribute(Qt::WA_DeleteOnClose);
  menu->addActions({m_add, m_split, m_join, m_delete, m_begin, m_end});
  menu->addSeparator();
  auto* steps = menu->addMenu(tr("Give to step"));
  fillStepMenu(steps);
  steps->setEnabled(m_chart->chosenSpan() != nullptr);
  menu->addActions({m_free, m_match});
  menu->addSeparator();
  menu->addActions({m_showAll, m_showSpan, m_scale, m_all, m_keys});
  menu->popup(globalPosition);
}

/// A sheet of what keys and mouse do, closed by a click beside it or Escape.
void StripView::showKeys() {
  auto* sheet = new QFrame(this, Qt::Popup);
  sheet->setObjectName("stripKeySheet");
  sheet->setAttribute(Qt::WA_DeleteOnClose);
  sheet->setFrameShape(QFrame::StyledPanel);
  auto* grid = new QGridLayout(sheet);
  grid->setHorizontalSpacing(18);
  grid->setVerticalSpacing(2);
  int row = 0;
  const auto add = [&](const QString& key, const QString& meaning) {
    const int half = 13, column = row < half ? 0 : 2;
    grid->addWidget(embolden(new QLabel(key)), row % half, column);
    grid->addWidget(new QLabel(meaning), row % half, column + 1);
    ++row;
  };
  add(tr("Wheel, + and −"), tr("zoom about the cursor"));
  add(tr("Drag background, ← →"), tr("pan; also Shift with the wheel"));
  add(tr("Home, Return"), tr("show all, show the chosen span"));
  add(tr("Click, Shift ← →"), tr("put, move the cursor; over the lanes the mouse is it"));
  add(tr("Page Up, Page Down"), tr("choose the span before, after"));
  add(tr("Click, double click"), tr("choose a span, and show it"));
  add(tr("Drag an edge"), tr("move the edge of a span"));
  add(tr("Drag the chosen span"), tr("move it as a whole"));
  add(tr("Shift and drag"), tr("draw a span"));
  add(tr("Ctrl ← →"), tr("move the edge by a sample; with Shift by a pixel"));
  add(tr("Space"), tr("which is moved: end, both, begin"));
  add(tr("B, E"), tr("the span begins, ends at the cursor"));
  add(tr("Escape"), tr("drop what is being dragged; choose none"));
  add("A", tr("add: the level at the cursor"));
  add("S", tr("split at the cursor"));
  add("J", tr("join with the next span"));
  add(tr("Delete"), tr("delete the span"));
  add("G", tr("give the span to a step"));
  add("N", tr("take the span from its step"));
  add("M", tr("match all spans with the steps again"));
  add("Y", tr("scale to what is on view, or to all"));
  add("C", tr("all channels of this recording, or one"));
  add("K", tr("this list"));
  sheet->adjustSize();
  const QPoint at = mapToGlobal(QPoint(width() - sheet->width(), 0));
  sheet->move(at.x(), std::max(0, at.y() - sheet->height() - 4));
  sheet->show();
}

}  // namespace ui
