// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/notice_bar.h"

#include <QAccessible>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QScrollArea>
#include <QScrollBar>
#include <QStatusBar>
#include <QToolButton>
#include <algorithm>

#include "ui/parts.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int line_px = 1, edge_px = 6;  ///< around it, and at its left
constexpr int greatestNoticeShare = 4;   ///< one part in so many of the window's height

}  // namespace

NoticeBar::NoticeBar(QStatusBar* bar)
    : m_scroll(new QScrollArea), m_text(plainLabel("noticeText")), m_close(new QToolButton) {
  setObjectName("notice");
  setContentsMargins(edge_px, line_px, line_px, line_px);
  m_text->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  m_scroll->setObjectName("noticeScroll");
  m_scroll->setFocusPolicy(Qt::NoFocus);
  m_scroll->setFrameShape(QFrame::NoFrame);
  m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_scroll->setWidgetResizable(true);
  m_scroll->setWidget(m_text);
  m_scroll->viewport()->setAutoFillBackground(false);
  m_text->setAutoFillBackground(false);
  m_close->setObjectName("closeNotice");
  m_close->setText(tr("Close"));
  connect(m_close, &QToolButton::clicked, this, [this] { tell({}); });
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(10, 1, 4, 1);
  line->addWidget(m_scroll, 1);
  line->addWidget(m_close, 0, Qt::AlignTop);
  hide();
  fit();  // before, since the bar does not look at what is hidden again
  bar->insertPermanentWidget(0, this, 1);
}

void NoticeBar::tell(const QString& sentence) {
  m_text->setText(sentence);
  setVisible(!sentence.isEmpty());
  if (sentence.isEmpty()) return fit();
  m_scroll->verticalScrollBar()->setValue(0);
  parentWidget()->layout()->activate();  // tells how wide the bar may be
  fit();
  QAccessibleEvent alert(m_text, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

/// As high as the sentence; without one, as a line.
void NoticeBar::fit() {
  layout()->activate();  // tells how wide the sentence may be
  const QMargins margins = layout()->contentsMargins();
  const int around = height() - contentsRect().height() + margins.top() + margins.bottom();
  const int least = around + m_close->sizeHint().height();
  const int wanted = m_text->text().isEmpty() ? 0 : around + m_text->heightForWidth(m_scroll->width());
  setFixedHeight(std::clamp(wanted, least, std::max(least, window()->height() / greatestNoticeShare)));
}

bool NoticeBar::event(QEvent* event) {
  const bool done = QFrame::event(event);
  if (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest) fit();
  return done;
}

void NoticeBar::paintEvent(QPaintEvent*) {
  const Colours colours = coloursFor(palette());
  QPainter painter(this);
  painter.fillRect(rect(), colours.fail);
  painter.fillRect(contentsRect(), colours.background);
}

}  // namespace ui
