// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup_form.h"

#include <QLineEdit>
#include <QScrollBar>
#include <QVBoxLayout>

#include "ui/setup/folded_group.h"
#include "ui/setup/setup_groups.h"

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
  m_rows = new SetupRows(session, groups, this);
  for (const auto add :
       {addChannelGroup, addBridgeGroup, addArmsGroup, addLeadsGroup, addLeaksGroup, addInstrumentGroup,
        addAcquisitionGroup, addHeatingGroup, addLimitsGroup, addMeritsGroup})
    add(*m_rows);
  groups->addStretch();
  setWidget(m_body);
  // No row may be cut off: the form scrolls up and down only.
  setMinimumWidth(m_body->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width() + 2);
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

void SetupForm::refresh() {
  const auto& selected = m_session.selection().channel;
  const auto channel = selected ? m_session.document().channels[*selected] : nullptr;
  m_body->setVisible(channel != nullptr);
  if (!channel || channel == m_shown) return;
  m_shown = channel;
  m_rows->refresh(*channel);
}

}  // namespace ui
