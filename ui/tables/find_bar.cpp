// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tables/find_bar.h"

#include <QAccessible>
#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QTableView>
#include <QTextEdit>
#include <QToolButton>
#include <algorithm>

#include "ui/parts.h"
#include "ui/tables/match_marks.h"
#include "ui/tables/table_block.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int mostMatches = 1000;
constexpr int pause_ms = 120;  ///< after the last letter typed

bool showsWords(const QModelIndex& cell, const QString& words) {
  return cell.data(Qt::DisplayRole).toString().replace('\n', ' ').contains(words, Qt::CaseInsensitive);
}

/// In the order in which they are shown.
QModelIndexList cellsWith(const QTableView& view, const QString& words, qsizetype most) {
  QModelIndexList cells;
  const QList<int> columns = shownColumns(view);
  for (const int row : shownRows(view))
    for (const int column : columns)
      if (const QModelIndex cell = view.model()->index(row, column); showsWords(cell, words)) {
        if (cells.size() >= most) return cells;
        cells << cell;
      }
  return cells;
}

}  // namespace

bool FindBar::Match::isThere() const {
  if (isOfDocument()) return true;
  if (table) return table->isVisible() && cell.isValid();
  if (text) return text->isVisible();
  return label && label->isVisible();
}

FindBar::FindBar(QWidget* parent) : QWidget(parent), m_words(new QLineEdit), m_count(new QLabel) {
  setObjectName("findBar");
  setAccessibleName(tr("Find"));
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(8, 3, 6, 3);
  auto* name = new QLabel(tr("Find"));
  name->setBuddy(m_words);
  m_words->setObjectName("findWords");
  m_words->setAccessibleName(tr("Words to find"));
  m_words->setClearButtonEnabled(true);
  m_words->setMaximumWidth(360);
  m_count->setObjectName("findCount");
  m_count->setTextFormat(Qt::PlainText);
  line->addWidget(name);
  line->addWidget(m_words, 2);
  const auto button = [&](const char* object, const QString& text, const QString& tip, auto act) {
    auto* made = toolButton(object, text, tip);
    connect(made, &QToolButton::clicked, this, act);
    line->addWidget(made);
  };
  button("findPrevious", tr("Previous"), tr("The match before (Shift+F3)"), [this] { previous(); });
  button("findNext", tr("Next"), tr("The next match (F3)"), [this] { next(); });
  line->addWidget(m_count, 3);
  button("findClose", tr("Close"), tr("Close (Escape)"), [this] { close(); });
  m_later.setSingleShot(true);
  m_later.setInterval(pause_ms);
  connect(m_words, &QLineEdit::textChanged, this, [this] { m_later.start(); });
  connect(&m_later, &QTimer::timeout, this, [this] {
    search();
    if (!m_matches.isEmpty()) go(1);
  });
  hide();
}

void FindBar::setBeyond(Search search, Show show) {
  m_search = std::move(search);
  m_show = std::move(show);
}

void FindBar::open() {
  QWidget* focused = QApplication::focusWidget();
  if (focused && !isAncestorOf(focused)) m_workedIn = focused;
  QWidget::show();
  m_words->setFocus(Qt::ShortcutFocusReason);
  m_words->selectAll();
  if (!m_words->text().isEmpty()) search();
}

void FindBar::close() {
  m_later.stop();
  unmark();
  hide();
  if (m_workedIn && m_workedIn->isVisible()) m_workedIn->setFocus();
}

void FindBar::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return close();
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
    return event->modifiers() & Qt::ShiftModifier ? previous() : next();
  QWidget::keyPressEvent(event);
}

/// What the user sees of that kind, from top to bottom, without the bar itself.
template <class Widget>
QList<Widget*> FindBar::shown() const {
  QList<Widget*> widgets;
  for (Widget* widget : window()->findChildren<Widget*>())
    if (widget->isVisible() && widget->window() == window() && !parentWidget()->isAncestorOf(widget))
      widgets << widget;
  const auto place = [this](const QWidget* widget) { return widget->mapTo(window(), QPoint()); };
  std::stable_sort(widgets.begin(), widgets.end(), [&](const Widget* a, const Widget* b) {
    const QPoint first = place(a), second = place(b);
    return first.y() != second.y() ? first.y() < second.y() : first.x() < second.x();
  });
  return widgets;
}

void FindBar::search() {
  m_later.stop();
  unmark();
  m_matches.clear();
  m_at = -1;
  m_searched = m_words->text().simplified();
  if (!m_searched.isEmpty()) {
    searchTables();
    searchTexts();
    if (m_search)
      for (const DocumentMatch& match : m_search(m_searched))
        m_matches << Match{.where = match.where, .place = match.place};
  }
  m_more = m_matches.size() > mostMatches;
  if (m_more) m_matches.resize(mostMatches);
  tell();
}

void FindBar::searchTables() {
  QList<QTableView*> tables = shown<QTableView>();
  // The one worked in comes first.
  std::stable_partition(tables.begin(), tables.end(), [this](const QTableView* view) {
    return m_workedIn && (view == m_workedIn || view->isAncestorOf(m_workedIn));
  });
  for (QTableView* view : tables)
    if (view->model() && m_matches.size() <= mostMatches) searchTable(*view);
}

void FindBar::searchTable(QTableView& view) {
  QList<QPersistentModelIndex> cells;
  for (const QModelIndex& cell : cellsWith(view, m_searched, mostMatches + 1 - m_matches.size())) {
    cells << cell;
    m_matches << Match{.table = &view, .cell = cell};
  }
  if (cells.isEmpty()) return;
  MatchMarks::of(view).mark(cells);
  m_markedTables << &view;
}

void FindBar::searchTexts() {
  for (QTextEdit* edit : shown<QTextEdit>()) {
    QList<QTextEdit::ExtraSelection> marks;
    for (QTextCursor at = edit->document()->find(m_searched); !at.isNull() && m_matches.size() <= mostMatches;
         at = edit->document()->find(m_searched, at)) {
      QTextEdit::ExtraSelection mark;
      mark.cursor = at;
      mark.format.setUnderlineStyle(QTextCharFormat::SingleUnderline);
      mark.format.setUnderlineColor(coloursFor(palette()).selected);
      mark.format.setBackground(coloursFor(palette()).band);
      marks << mark;
      m_matches << Match{.text = edit, .cursor = at};
    }
    if (marks.isEmpty()) continue;
    edit->setExtraSelections(marks);
    m_markedTexts << edit;
  }
  for (QLabel* label : shown<QLabel>())
    if (m_matches.size() <= mostMatches && label->text().contains(m_searched, Qt::CaseInsensitive))
      m_matches << Match{.label = label};
}

void FindBar::unmark() {
  for (const auto& view : std::exchange(m_markedTables, {}))
    if (view) MatchMarks::of(*view).mark({});
  for (const auto& edit : std::exchange(m_markedTexts, {}))
    if (edit) edit->setExtraSelections({});
  delete m_frame;
}

void FindBar::go(int by) {
  if (isHidden()) open();
  if (m_later.isActive() || m_searched != m_words->text().simplified()) search();
  if (m_matches.isEmpty()) return tell();
  const auto size = static_cast<int>(m_matches.size());
  m_at = m_at < 0 ? (by > 0 ? 0 : size - 1) : (m_at + by + size) % size;
  if (!m_matches[m_at].isThere()) {
    // Another page is shown than when this was found: its turn comes among the places of the document.
    search();
    if (m_matches.isEmpty()) return;
    const auto beyond = std::find_if(m_matches.begin(), m_matches.end(),
                                     [](const Match& match) { return match.isOfDocument(); });
    const bool some = beyond != m_matches.end();
    m_at = by < 0 ? static_cast<int>(m_matches.size()) - 1
           : some ? static_cast<int>(beyond - m_matches.begin())
                  : 0;
  }
  show(m_matches[m_at]);
  tell();
}

void FindBar::show(const Match& match) {
  delete m_frame;
  if (match.isOfDocument()) {
    if (m_show) m_show(match.place);
    markMoreTables();
  } else if (match.table) {
    match.table->setCurrentIndex(match.cell);
    match.table->scrollTo(match.cell);
    MatchMarks::of(*match.table).markCurrent(match.cell);
  } else if (match.text) {
    match.text->setTextCursor(match.cursor);
    match.text->ensureCursorVisible();
  } else if (match.label) {
    markLabel(match.label);
  }
  // Typing goes on, whatever showing the match gave the keyboard to.
  m_words->setFocus();
}

/// Those that came into view with a place of the document.
void FindBar::markMoreTables() {
  for (QTableView* view : shown<QTableView>()) {
    if (!view->model() || m_markedTables.contains(QPointer<QTableView>(view))) continue;
    QList<QPersistentModelIndex> cells;
    for (const QModelIndex& cell : cellsWith(*view, m_searched, mostMatches)) cells << cell;
    if (cells.isEmpty()) continue;
    MatchMarks::of(*view).mark(cells);
    m_markedTables << view;
  }
}

void FindBar::markLabel(QLabel* label) {
  auto* frame = new QFrame(label->parentWidget());
  frame->setObjectName("foundFrame");
  frame->setAttribute(Qt::WA_TransparentForMouseEvents);
  frame->setStyleSheet(QString("#foundFrame { border: 2px solid %1; background: transparent; }")
                           .arg(coloursFor(palette()).selected.name()));
  frame->setGeometry(label->geometry().adjusted(-2, -1, 2, 1));
  frame->show();
  m_frame = frame;
}

void FindBar::tell() {
  const QLocale locale;
  const QString all = m_more ? tr("more than %1").arg(locale.toString(mostMatches))
                             : locale.toString(static_cast<int>(m_matches.size()));
  QString text;
  if (m_matches.isEmpty())
    text = m_searched.isEmpty() ? QString() : tr("nothing found");
  else if (m_at < 0)
    text = tr("%1 found").arg(all);
  else
    text = tr("%1 of %2").arg(locale.toString(m_at + 1), all);
  if (m_at >= 0 && !m_matches.isEmpty() && m_matches[m_at].isOfDocument())
    text += ": " + m_matches[m_at].where;
  m_count->setText(text);
  QAccessibleEvent alert(m_count, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

}  // namespace ui
