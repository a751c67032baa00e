// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text_form_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>

#include "ui/parts.h"
#include "ui/preferences/appearance.h"
#include "ui/theme.h"

namespace ui {

TextFormDialog::TextFormDialog(const QString& title, const std::vector<Line>& lines, QWidget* parent)
    : QDialog(parent), m_objected(plainLabel("formObjection")) {
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
    connect(edit, &QLineEdit::textChanged, this, [this] { m_objected->hide(); });
  }
  setTextColour(m_objected, coloursFor(palette()).fail);
  m_objected->hide();
  form->addRow(m_objected);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
  form->addRow(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

std::string TextFormDialog::text(std::size_t index) const {
  return m_edits[index]->text().trimmed().toStdString();
}

void TextFormDialog::accept() {
  const QString objection = m_objection ? m_objection() : QString();
  if (objection.isEmpty()) return QDialog::accept();
  m_objected->setText(objection);
  m_objected->show();
}

}  // namespace ui
