// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safety/disk_bar.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include "ui/parts.h"

namespace ui {

DiskBar::DiskBar(QWidget* parent) : SafetyFrame("diskBar", parent), m_text(plainLabel("diskText")) {
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(10, 4, 6, 4);
  line->addWidget(m_text, 1);
  const auto add = [&](const QString& name, const QString& text, const QString& tip, auto signal) {
    QPushButton* button = safetyButton(name, text, tip);
    connect(button, &QPushButton::clicked, this, signal);
    line->addWidget(button);
    return button;
  };
  m_differences =
      add("diskDifferences", tr("Show what differs"),
          tr("What the file on the disk has otherwise than this window"), &DiskBar::differencesWanted);
  m_load = add("diskLoad", tr("Load the one on disk"),
               tr("Takes the file's content into the window; Undo brings back what is here now"),
               &DiskBar::loadWanted);
  m_save =
      add("diskSave", tr("Save it again"), tr("Writes the file anew from this window"), &DiskBar::saveWanted);
  m_keep =
      add("diskKeep", tr("Keep mine"),
          tr("Goes on with what is in this window; nothing is written until you save"), &DiskBar::keepWanted);
  setAccessibleName(tr("The file on the disk"));
  hide();
}

void DiskBar::tell(DiskWatch::Standing standing, const QString& fileName, bool unsaved) {
  using Standing = DiskWatch::Standing;
  const bool gone = standing == Standing::Gone;
  for (QPushButton* button : {m_differences, m_load}) button->setVisible(!gone);
  m_save->setVisible(gone);
  if (gone)
    m_text->setText(
        tr("%1 is no longer there: it was deleted, renamed or moved. Its content is still open in "
           "this window.")
            .arg(fileName));
  else if (unsaved)
    m_text->setText(tr("Another program changed %1, and this window has unsaved changes too.").arg(fileName));
  else
    m_text->setText(tr("Another program changed %1 since it was opened here.").arg(fileName));
  setVisible(standing != Standing::Known);
  if (isHidden()) return;
  QAccessibleEvent alert(m_text, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

}  // namespace ui
