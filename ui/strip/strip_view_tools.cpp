// SPDX-License-Identifier: GPL-3.0-or-later
// The tools of the strip: row, menus and keys.
#include <QAction>
#include <QFrame>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLayout>
#include <QMenu>
#include <QProgressBar>
#include <QPushButton>
#include <QToolBar>
#include <QToolButton>
#include <algorithm>
#include <functional>
#include <iterator>

#include "ui/help/next_steps.h"
#include "ui/parts.h"
#include "ui/strip/span_editor.h"
#include "ui/strip/strip_view.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// What keys and the mouse do, for translation by StripView::tr.
constexpr const char* keyRows[][2] = {
    {QT_TRANSLATE_NOOP("ui::StripView", "Wheel, + and −"),
     QT_TRANSLATE_NOOP("ui::StripView", "zoom about the cursor")},
    {QT_TRANSLATE_NOOP("ui::StripView", "Drag background, ← →"),
     QT_TRANSLATE_NOOP("ui::StripView", "pan; also Shift with the wheel")},
    {QT_TRANSLATE_NOOP("ui::StripView", "Home, Return"),
     QT_TRANSLATE_NOOP("ui::StripView", "show all, show the chosen span")},
    {QT_TRANSLATE_NOOP("ui::StripView", "Click, Shift ← →"),
     QT_TRANSLATE_NOOP("ui::StripView", "put, move the cursor; over the lanes the mouse is it")},
    {QT_TRANSLATE_NOOP("ui::StripView", "Page Up, Page Down"),
     QT_TRANSLATE_NOOP("ui::StripView", "choose the span before, after")},
    {QT_TRANSLATE_NOOP("ui::StripView", "Click, double click"),
     QT_TRANSLATE_NOOP("ui::StripView", "choose a span, and show it")},
    {QT_TRANSLATE_NOOP("ui::StripView", "Drag an edge"),
     QT_TRANSLATE_NOOP("ui::StripView", "move the edge of a span")},
    {QT_TRANSLATE_NOOP("ui::StripView", "Drag the chosen span"),
     QT_TRANSLATE_NOOP("ui::StripView", "move it as a whole")},
    {QT_TRANSLATE_NOOP("ui::StripView", "Shift and drag"), QT_TRANSLATE_NOOP("ui::StripView", "draw a span")},
    {QT_TRANSLATE_NOOP("ui::StripView", "Ctrl ← →"),
     QT_TRANSLATE_NOOP("ui::StripView", "move the edge by a sample; with Shift by a pixel")},
    {QT_TRANSLATE_NOOP("ui::StripView", "Space"),
     QT_TRANSLATE_NOOP("ui::StripView", "which is moved: end, both, begin")},
    {QT_TRANSLATE_NOOP("ui::StripView", "B, E"),
     QT_TRANSLATE_NOOP("ui::StripView", "the span begins, ends at the cursor")},
    {QT_TRANSLATE_NOOP("ui::StripView", "Escape"),
     QT_TRANSLATE_NOOP("ui::StripView", "drop what is being dragged; choose none")},
    {QT_TRANSLATE_NOOP("ui::StripView", "A"),
     QT_TRANSLATE_NOOP("ui::StripView", "add: the level at the cursor")},
    {QT_TRANSLATE_NOOP("ui::StripView", "S"), QT_TRANSLATE_NOOP("ui::StripView", "split at the cursor")},
    {QT_TRANSLATE_NOOP("ui::StripView", "J"), QT_TRANSLATE_NOOP("ui::StripView", "join with the next span")},
    {QT_TRANSLATE_NOOP("ui::StripView", "Delete"), QT_TRANSLATE_NOOP("ui::StripView", "delete the span")},
    {QT_TRANSLATE_NOOP("ui::StripView", "G"), QT_TRANSLATE_NOOP("ui::StripView", "give the span to a step")},
    {QT_TRANSLATE_NOOP("ui::StripView", "N"),
     QT_TRANSLATE_NOOP("ui::StripView", "take the span from its step")},
    {QT_TRANSLATE_NOOP("ui::StripView", "M"),
     QT_TRANSLATE_NOOP("ui::StripView", "match all spans with the steps again")},
    {QT_TRANSLATE_NOOP("ui::StripView", "Y"),
     QT_TRANSLATE_NOOP("ui::StripView", "scale to what is on view, or to all")},
    {QT_TRANSLATE_NOOP("ui::StripView", "C"),
     QT_TRANSLATE_NOOP("ui::StripView", "all channels of this recording, or one")},
    {QT_TRANSLATE_NOOP("ui::StripView", "K"), QT_TRANSLATE_NOOP("ui::StripView", "this list")},
};

}  // namespace

QAction* StripView::tool(const QString& name, const QString& text, const QString& key, const QString& tip,
                         const std::function<void()>& act) {
  auto* action = new QAction(text, this);
  action->setObjectName(name);
  // Single keys work while the strip has the keyboard, and nowhere else.
  action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
  action->setShortcut(QKeySequence(key));
  action->setToolTip(key.isEmpty() ? tip
                                   : tip + " (" + QKeySequence(key).toString(QKeySequence::NativeText) + ")");
  action->setData(action->toolTip());  // which gives way while the tool is of no use
  connect(action, &QAction::triggered, this, act);
  addAction(action);
  return action;
}

void StripView::onChosen(void (SpanEditor::*act)(core::SpanPlace)) {
  if (const StripSpan* span = m_chart->chosenSpan()) (m_editor->*act)(span->place);
}

void StripView::buildTools() {
  makeViewActions();
  makeSpanActions();
  fillToolRow();
}

void StripView::makeViewActions() {
  m_showAll =
      tool("stripShowAll", tr("Show all"), "Home", tr("The whole recording"), [this] { m_chart->showAll(); });
  m_showSpan = tool("stripShowSpan", tr("Show span"), "Return", tr("The chosen span and what is around it"),
                    [this] { m_chart->showChosen(); });
  m_scale = tool("stripScale", tr("Scale to what is on view"), "Y", tr("Else to all values of the recording"),
                 [this] { m_chart->setScaledToView(m_scale->isChecked()); });
  m_all = tool("stripAllChannels", tr("All channels of this recording"), "C",
               tr("Else the chosen channel alone"), [this] { refresh(); });
  m_keys =
      tool("stripKeys", tr("Keys…"), "K", tr("What the keys and the mouse do here"), [this] { showKeys(); });
  for (QAction* action : {m_scale, m_all}) action->setCheckable(true), action->setChecked(true);
}

void StripView::makeSpanActions() {
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
}

void StripView::fillToolRow() {
  m_tools->setObjectName("stripTools");
  m_tools->setToolButtonStyle(Qt::ToolButtonTextOnly);
  m_tools->setContentsMargins(0, 0, 0, 0);
  // No style sheet: what is in a widget that has one keeps its colours when the palette changes.
  m_tools->layout()->setContentsMargins(0, 0, 0, 0);
  m_tools->layout()->setSpacing(0);
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
    // One that was pressed while there was a recording may be let go when there is none any more.
    connect(made, &QPushButton::clicked, this, [this, act] {
      if (m_session.check() && m_session.check()->recording) act();
    });
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
  grid->addWidget(new NextSteps(m_session, NextSteps::Need::Recording), 3, 1, 1, column);
  grid->setRowStretch(4, 1);
  return page;
}

/// A file that was put back is looked for again as if for the first time; else the user has decided.
void StripView::readAnyway() {
  const core::RecordingReference reference = *m_session.check()->recording;
  if (m_store.obstacle(reference) == RecordingStore::Obstacle::Missing) return m_store.forget(reference);
  m_store.want(reference, true);
}

/// What needs a chosen span waits for one; nothing changes a closed check.
void StripView::enableTools() {
  const StripLane* lane = m_chart->own();
  const bool some = lane && lane->column, isClosed = lane && lane->isClosed;
  const StripSpan* span = m_chart->chosenSpan();
  for (QAction* action : {m_showAll, m_scale}) action->setEnabled(some);
  m_showSpan->setEnabled(span != nullptr);
  for (QAction* action : {m_add, m_match}) enable(action, some, isClosed);
  for (QAction* action : {m_split, m_join, m_delete, m_begin, m_end, m_give})
    enable(action, span != nullptr, isClosed);
  enable(m_free, span && !span->isOther(), isClosed);
  m_steps->setEnabled(m_give->isEnabled());
  m_steps->setToolTip(isClosed ? m_give->toolTip()
                               : tr("Give the chosen span to a step (G), or take it from its step (N)"));
}

void StripView::enable(QAction* action, bool enabled, bool isClosed) {
  action->setEnabled(enabled && !isClosed);
  action->setToolTip(isClosed
                         ? tr("The check is closed and keeps its spans. Reopen it first (menu Check, Close "
                              "or reopen check).")
                         : action->data().toString());
}

/// The keys of tools that a closed check has no use for come here, and are answered.
void StripView::keyPressEvent(QKeyEvent* event) {
  const QKeySequence pressed(event->keyCombination());
  const bool isClosed = m_chart->own() && m_chart->own()->isClosed;
  for (const QAction* action : {m_add, m_split, m_join, m_delete, m_match, m_begin, m_end, m_free, m_give})
    if (isClosed && pressed == action->shortcut()) {
      m_editor->mayEdit();
      return;
    }
  QWidget::keyPressEvent(event);
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
  steps->setEnabled(m_give->isEnabled());
  menu->addActions({m_free, m_match});
  menu->addSeparator();
  menu->addActions({m_showAll, m_showSpan, m_scale, m_all, m_keys});
  menu->popup(globalPosition);
}

void StripView::showKeys() {
  auto* sheet = new QFrame(isVisible() ? this : window(), Qt::Popup);
  sheet->setObjectName("stripKeySheet");
  sheet->setAttribute(Qt::WA_DeleteOnClose);
  sheet->setFrameShape(QFrame::StyledPanel);
  auto* grid = new QGridLayout(sheet);
  grid->setHorizontalSpacing(18);
  grid->setVerticalSpacing(2);
  constexpr int rows = static_cast<int>(std::size(keyRows)), half = (rows + 1) / 2;
  for (int row = 0; row < rows; ++row) {
    const int column = row < half ? 0 : 2;
    grid->addWidget(embolden(new QLabel(tr(keyRows[row][0]))), row % half, column);
    grid->addWidget(new QLabel(tr(keyRows[row][1])), row % half, column + 1);
  }
  sheet->adjustSize();
  // Above the strip; in the middle of the window when the strip is hidden.
  const QWidget* about = isVisible() ? this : window();
  const QPoint centre = about->mapToGlobal(about->rect().center()), right = mapToGlobal(QPoint(width(), 0));
  sheet->move(isVisible() ? QPoint(right.x() - sheet->width(), std::max(0, right.y() - sheet->height() - 4))
                          : centre - sheet->rect().center());
  sheet->show();
}

}  // namespace ui
