// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup_form.h"

#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/setup/folded_group.h"
#include "ui/setup/setup_groups.h"
#include "ui/shown_channel.h"

namespace ui {

SetupForm::SetupForm(Session& session, QWidget* parent) : QScrollArea(parent), m_session(session) {
  setObjectName("setupForm");
  setAccessibleName(tr("Channel set-up"));
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_body = new QWidget;
  auto* groups = new QVBoxLayout(m_body);
  groups->setContentsMargins(6, 6, 6, 6);
  m_closed = new QLabel;
  m_closed->setObjectName("setupClosed");
  m_closed->setTextFormat(Qt::PlainText);
  m_closed->setWordWrap(true);
  groups->addWidget(m_closed);
  m_rows = new SetupRows(session, groups, this);
  for (const auto add :
       {addChannelGroup, addBridgeGroup, addArmsGroup, addLeadsGroup, addLeaksGroup, addInstrumentGroup,
        addAcquisitionGroup, addHeatingGroup, addLimitsGroup, addMeritsGroup})
    add(*m_rows);
  groups->addStretch();
  setWidget(m_body);
  connect(m_rows, &SetupRows::refused, this, &SetupForm::refused);
  connect(&session, &Session::changed, this, &SetupForm::refresh);
  refresh();
}

void SetupForm::focusField(const QString& objectName) {
  auto* field = m_body->findChild<QLineEdit*>(objectName);
  if (!field) return;
  for (QWidget* parent = field->parentWidget(); parent && parent != m_body; parent = parent->parentWidget())
    if (auto* group = qobject_cast<FoldedGroup*>(parent)) group->open();
  ensureWidgetVisible(field);
  field->setFocus(Qt::OtherFocusReason);
  field->selectAll();
}

/// No row may be cut off: the form scrolls up and down only. It never becomes narrower again, so that the
/// views beside it stay where they are when another channel has other rows.
void SetupForm::makeRoom() {
  if (!m_shown) return;  // which rows there are follows from a channel
  const int needed = m_body->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width() + 2;
  setMinimumWidth(std::max(minimumWidth(), needed));
}

/// Letters of another size need another width.
void SetupForm::changeEvent(QEvent* event) {
  QScrollArea::changeEvent(event);
  if (event->type() == QEvent::FontChange) setMinimumWidth(0);
}

bool SetupForm::eventFilter(QObject* watched, QEvent* event) {
  if (watched == m_body && event->type() == QEvent::LayoutRequest) makeRoom();
  return QScrollArea::eventFilter(watched, event);
}

void SetupForm::refresh() {
  const auto channel = shownChannel(m_session);
  m_body->setVisible(channel != nullptr);
  const QString why = whyNotEdited(m_session);
  m_closed->setText(why);
  m_closed->setVisible(!why.isEmpty());
  m_rows->lock(why);
  if (!channel || channel == m_shown) return;
  m_shown = channel;
  m_rows->refresh(*channel);
  makeRoom();
}

}  // namespace ui
