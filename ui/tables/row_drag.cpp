// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tables/row_drag.h"

#include <QApplication>
#include <QFrame>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QTableView>

#include "ui/theme.h"

namespace ui {

RowDrag::RowDrag(QTableView& view, int column)
    : QObject(&view), m_view(view), m_viewport(view.viewport()), m_column(column), m_line(new QFrame(&view)) {
  m_line->setObjectName("rowDragLine");
  m_line->setAttribute(Qt::WA_TransparentForMouseEvents);
  m_line->setAutoFillBackground(true);
  m_line->hide();
  view.viewport()->installEventFilter(this);
  view.installEventFilter(this);
}

bool RowDrag::press(const QPoint& at) {
  const QModelIndex cell = m_view.indexAt(at);
  if (!cell.isValid() || cell.column() != m_column) return false;
  m_pressed = at;
  m_from = cell.row();
  return false;  // the press chooses the row, as ever
}

/// The row that what is dropped at this height comes to stand above; the number of rows for the end.
int RowDrag::gapAt(int y) const {
  const int rows = m_view.model()->rowCount();
  const int row = m_view.rowAt(y);
  if (row < 0) return y < 0 ? 0 : rows;
  const int middle = m_view.rowViewportPosition(row) + m_view.rowHeight(row) / 2;
  return y < middle ? row : row + 1;
}

bool RowDrag::move(const QPoint& at) {
  if (!m_pressed) return false;
  if (m_gap < 0 && (at - *m_pressed).manhattanLength() < QApplication::startDragDistance()) return true;
  m_gap = gapAt(at.y());
  const int rows = m_view.model()->rowCount();
  const int y = m_gap < rows ? m_view.rowViewportPosition(m_gap)
                             : m_view.rowViewportPosition(rows - 1) + m_view.rowHeight(rows - 1);
  QPalette palette = m_line->palette();
  palette.setColor(QPalette::Window, coloursFor(m_view.palette()).selected);
  m_line->setPalette(palette);
  const QRect room = m_view.viewport()->geometry();
  m_line->setGeometry(room.left(), room.top() + y - 1, room.width(), 3);
  m_line->raise();
  m_line->show();
  m_view.viewport()->setCursor(Qt::ClosedHandCursor);
  return true;
}

void RowDrag::end() {
  m_pressed.reset();
  m_gap = -1;
  m_line->hide();
  m_view.viewport()->unsetCursor();
}

bool RowDrag::release() {
  const int from = m_from, gap = m_gap;
  end();
  if (gap < 0) return false;
  const int to = gap > from ? gap - 1 : gap;
  if (to != from) emit moved(from, to);
  return true;
}

bool RowDrag::eventFilter(QObject* watched, QEvent* event) {
  if (watched == m_viewport) {
    // Any event comes here: it is one of the mouse by its type alone.
    const auto mouse = [event] { return static_cast<QMouseEvent*>(event); };
    if (event->type() == QEvent::MouseButtonPress && mouse()->button() == Qt::LeftButton)
      return press(mouse()->position().toPoint());
    if (event->type() == QEvent::MouseMove && mouse()->buttons() & Qt::LeftButton)
      return move(mouse()->position().toPoint());
    if (event->type() == QEvent::MouseButtonRelease && m_pressed) return release();
  } else if (event->type() == QEvent::KeyPress && m_gap >= 0 &&
             static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
    end();
    return true;
  }
  return QObject::eventFilter(watched, event);
}

}  // namespace ui
