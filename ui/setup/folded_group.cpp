// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/folded_group.h"

#include <QGridLayout>
#include <QGroupBox>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/setup/setup_rows.h"

namespace ui {

FoldedGroup::FoldedGroup(const QString& title, const QString& objectName, QWidget* parent)
    : QWidget(parent), m_title(title) {
  setObjectName(objectName);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  m_heading = new QToolButton;
  m_heading->setObjectName(objectName + "Heading");
  m_heading->setAutoRaise(true);
  m_heading->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  m_heading->setFocusPolicy(Qt::StrongFocus);
  m_heading->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  layout->addWidget(m_heading);
  m_body = new QGroupBox;
  m_form = formIn(m_body);
  layout->addWidget(m_body);
  connect(m_heading, &QToolButton::clicked, this, [this] { setOpen(!m_open); });
  follow();
}

void FoldedGroup::setSummary(const QString& summary) {
  m_summary = summary;
  follow();
}

void FoldedGroup::setHolds(bool something) {
  if (something && !m_holds) open();
  m_holds = something;
}

void FoldedGroup::setOpen(bool open) {
  m_open = open;
  follow();
}

void FoldedGroup::follow() {
  m_heading->setArrowType(m_open ? Qt::DownArrow : Qt::RightArrow);
  m_heading->setText(m_open || m_summary.isEmpty() ? m_title : m_title + ": " + m_summary);
  m_heading->setAccessibleDescription(m_open ? tr("open") : tr("closed"));
  m_heading->setToolTip(m_open ? tr("Close this group") : tr("Open this group"));
  m_body->setVisible(m_open);
}

}  // namespace ui
