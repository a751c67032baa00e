// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/notice_bar.h"

#include <QAccessible>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QToolButton>
#include <algorithm>

#include "ui/parts.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int noticeMargin_px = 8;
constexpr int greatestNoticeShare = 4;  ///< one part in so many of the host's height

}  // namespace

NoticeBar::NoticeBar(QWidget* host)
    : QFrame(host), m_scroll(new QScrollArea), m_text(plainLabel("noticeText")), m_close(new QToolButton) {
  setObjectName("notice");
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
  line->setContentsMargins(10, 4, 6, 4);
  line->addWidget(m_scroll, 1);
  line->addWidget(m_close, 0, Qt::AlignTop);
  hide();
  host->installEventFilter(this);
}

void NoticeBar::tell(const QString& sentence) {
  setVisible(!sentence.isEmpty());
  if (sentence.isEmpty()) return;
  applyColours();
  m_text->setText(sentence);
  m_scroll->verticalScrollBar()->setValue(0);
  place();
  QAccessibleEvent alert(m_text, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

void NoticeBar::place() {
  const QRect room =
      parentWidget()->rect().adjusted(noticeMargin_px, noticeMargin_px, -noticeMargin_px, -noticeMargin_px);
  resize(room.width(), height());
  layout()->activate();  // tells how wide the sentence may be
  const QMargins margins = layout()->contentsMargins();
  const int around = height() - contentsRect().height() + margins.top() + margins.bottom();
  const int least = around + m_close->sizeHint().height();
  const int wanted = around + m_text->heightForWidth(m_scroll->width());
  const int high = std::clamp(wanted, least, std::max(least, room.height() / greatestNoticeShare));
  setGeometry(room.left(), room.bottom() - high, room.width(), high);
  raise();
}

bool NoticeBar::eventFilter(QObject* watched, QEvent* event) {
  if (watched != parent()) return QFrame::eventFilter(watched, event);
  if (event->type() == QEvent::Resize) place();
  // Its own palette is that of the style sheet and hears of no change.
  if (event->type() == QEvent::PaletteChange) applyColours();
  return QFrame::eventFilter(watched, event);
}

void NoticeBar::applyColours() {
  const Colours colours = coloursFor(parentWidget()->palette());
  setStyleSheet(QString("#notice { border: 1px solid %1; border-left-width: 6px; background: %2; }")
                    .arg(colours.fail.name(), colours.background.name()));
}

}  // namespace ui
