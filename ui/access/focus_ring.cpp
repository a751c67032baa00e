// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/access/focus_ring.h"

#include <QApplication>
#include <QEvent>
#include <QMenuBar>
#include <QPainter>
#include <QSplitter>
#include <QStackedWidget>

#include "ui/theme.h"

namespace ui {
namespace {

/// Lies over the widget that it belongs to. It is a QFocusFrame so that assistive tools are not told of it.
class RingAround : public QFocusFrame {
 public:
  explicit RingAround(QWidget* focused) : QFocusFrame(focused) {
    focused->installEventFilter(this);
    fit();
  }

 protected:
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::Resize) fit();
    if (event->type() == QEvent::ChildAdded) raise();
    return false;
  }

  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.fillRect(rect(), coloursFor(palette()).text);  // frames and pressed buttons swallow other colours
  }

 private:
  void fit() {
    const QRect outer = parentWidget()->rect();
    constexpr int line = FocusRing::thickness_px;
    setGeometry(outer);
    setMask(QRegion(outer) - QRegion(outer.adjusted(line, line, -line, -line)));
    raise();
  }
};

/// Whether a child of it would be laid out as one of its parts.
bool takesEveryChild(const QWidget* widget) {
  return qobject_cast<const QSplitter*>(widget) || qobject_cast<const QStackedWidget*>(widget);
}

}  // namespace

FocusRing::FocusRing(QObject* parent) : QObject(parent) {
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* focused) { follow(focused); });
  follow(QApplication::focusWidget());
}

void FocusRing::follow(QWidget* focused) {
  if (m_ring) m_ring->hide(), m_ring->deleteLater();
  m_ring = nullptr;
  // A whole window that has the keyboard has nothing beside it to be told from. Of a menu bar the chosen
  // entry shows it, and a line around would cut into the words.
  if (!focused || focused->isWindow() || takesEveryChild(focused) || qobject_cast<QMenuBar*>(focused)) return;
  m_ring = new RingAround(focused);
  m_ring->show();
}

WithoutRing::WithoutRing(const QWidget& widget) {
  for (QFocusFrame* ring : widget.findChildren<QFocusFrame*>())
    if (ring->isVisible()) m_rings << ring, ring->hide();
}

WithoutRing::~WithoutRing() {
  for (const auto& ring : m_rings)
    if (ring) ring->show();
}

}  // namespace ui
