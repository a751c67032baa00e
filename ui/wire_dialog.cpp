// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wire_dialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>

#include "ui/quantity_edit.h"

namespace ui {

WireDialog::WireDialog(const core::Lead& lead, QWidget* parent) : QDialog(parent) {
  setWindowTitle(tr("Lead from copper wire"));
  if (const auto* wire = std::get_if<core::CopperWire>(&lead)) m_wire = *wire;
  m_form = new QFormLayout(this);
  addField("wireLength", tr("Length, one way"), core::UnitFamily::Length, m_wire.length.base(),
           [this](double v) { m_wire.length = core::Length(v); })
      ->setLeast(0, false);
  auto* size = addField("wireSection", tr("Section or AWG"), core::UnitFamily::Area, m_wire.section.base(),
                        [this](double v) { m_wire.section = core::Area(v); });
  size->setLeast(0, false);
  size->setPlaceholderText(tr("0.25 mm² or AWG 26"));
  addField("wireTemperature", tr("Temperature"), core::UnitFamily::Temperature, m_wire.temperature.base(),
           [this](double v) { m_wire.temperature = core::Temperature(v); })
      ->setLeast(-200, true);
  m_result = new QLabel(this);
  m_result->setObjectName("wireResult");
  m_result->setTextFormat(Qt::PlainText);
  m_result->setWordWrap(true);
  m_form->addRow(m_result);
  m_all = new QCheckBox(tr("Use for all leads of this channel"), this);
  m_all->setObjectName("wireForAll");
  m_form->addRow(m_all);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
  m_form->addRow(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &WireDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  showResult();
}

QuantityEdit* WireDialog::addField(const QString& name, const QString& label, core::UnitFamily family,
                                   double value, const std::function<void(double)>& set) {
  auto* edit = new QuantityEdit(family, this);
  edit->setObjectName(name);
  edit->setAccessibleName(label);
  edit->setShownDigits(5);
  edit->setValue(value);
  m_form->addRow(label, edit);
  connect(edit, &QuantityEdit::valueEdited, this, [this, set](double v) {
    set(v);
    showResult();
  });
  connect(edit, &QuantityEdit::refused, this, [this](const QString& reason) { showResult(reason); });
  return edit;
}

void WireDialog::showResult(const QString& problem) {
  const double ohm = core::resistanceOf(m_wire).base();
  m_result->setText(
      problem.isEmpty()
          ? tr("Solid copper: %1. Stranded or tinned wire is higher; measure it where it matters.")
                .arg(quantityText(ohm, core::UnitFamily::Resistance, {}, 5))
          : problem);
}

void WireDialog::accept() {
  for (auto* field : findChildren<QuantityEdit*>()) {
    field->commit();
    if (field->isRefused()) return;
  }
  QDialog::accept();
}

bool WireDialog::forAllLeads() const { return m_all->isChecked(); }

}  // namespace ui
