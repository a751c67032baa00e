// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text_form_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>

#include "ui/preferences/appearance.h"

namespace ui {

TextFormDialog::TextFormDialog(const QString& title, const std::vector<Line>& lines, QWidget* parent)
    : QDialog(parent) {
  setWindowTitle(title);
  setMinimumWidth(atTextSize(460));
  auto* form = new QFormLayout(this);
  for (const Line& line : lines) {
    auto* edit = new QLineEdit(line.text, this);
    edit->setPlaceholderText(line.example);
    edit->setAccessibleName(line.label);
    edit->setObjectName("line" + QString::number(m_edits.size()));
    if (line.number) attachNumber(edit, [number = line.number] { return number; });
    form->addRow(line.label, edit);
    m_edits.push_back(edit);
  }
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
  form->addRow(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

std::string TextFormDialog::text(std::size_t index) const {
  return m_edits[index]->text().trimmed().toStdString();
}

}  // namespace ui
