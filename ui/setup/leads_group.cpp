// SPDX-License-Identifier: GPL-3.0-or-later
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

#include "core/circuit/hookup_words.h"
#include "ui/setup/setup_groups.h"
#include "ui/theme.h"
#include "ui/wire_dialog.h"

namespace ui {
namespace {

using core::Channel;
using core::UnitFamily;

bool usesLead(const Channel& channel, core::LeadRole role) {
  for (const core::Wire& wire : core::wiresOf(channel.setup.bridge))
    if (wire.role == role) return true;
  return false;
}

void editWire(SetupRows& rows, core::LeadRole role, QWidget* parent) {
  const Channel* channel = rows.session().channel();
  if (!channel) return;
  WireDialog dialog(channel->setup.bridge.leads[static_cast<std::size_t>(role)], parent);
  if (dialog.exec() != QDialog::Accepted) return;
  rows.change(SetupRows::tr("Change lead"), [&](Channel& c) {
    for (const core::Wire& wire : core::wiresOf(c.setup.bridge))
      if (wire.role == role || dialog.forAllLeads())
        c.setup.bridge.leads[static_cast<std::size_t>(wire.role)] = dialog.wire();
  });
}

QToolButton* wireButton(SetupRows& rows, core::LeadRole role, const QString& name) {
  auto* wire = new QToolButton;
  wire->setObjectName("wire" + QString::number(static_cast<int>(role)));
  wire->setText(SetupRows::tr("Wire…"));
  wire->setAccessibleName(SetupRows::tr("Lead %1 from length and size").arg(name));
  wire->setToolTip(SetupRows::tr("Work the resistance out from length and size of a copper wire"));
  rows.addEditing(wire);
  QObject::connect(wire, &QToolButton::clicked, &rows, [&rows, role, wire] { editWire(rows, role, wire); });
  return wire;
}

void addLead(SetupRows& rows, QGridLayout* form, core::LeadRole role) {
  const auto index = static_cast<std::size_t>(role);
  const QString name = toQString(core::leadWord(role));
  auto* row = new QWidget;
  QuantityEdit* edit = rows.makeQuantity(
      {"lead" + QString::number(index), name, SetupRows::tr("Change lead"),
       SetupRows::tr("Lead %1").arg(name)},
      UnitFamily::Resistance,
      {[index](const Channel& c) { return core::resistanceOf(c.setup.bridge.leads[index]).base(); },
       [index](Channel& c, double ohm) { c.setup.bridge.leads[index] = core::Resistance(ohm); },
       {}},
      [role](const Channel& c) { return usesLead(c, role); }, row);
  edit->setLeast(0, true);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  line->addWidget(edit);
  line->addWidget(wireButton(rows, role, name));
  rows.addRow(form, name, row);
  rows.onRefresh([edit, index](const Channel& c) {
    const bool fromWire = std::holds_alternative<core::CopperWire>(c.setup.bridge.leads[index]);
    edit->setShownDigits(fromWire ? 5 : 12);
  });
}

/// In a row of its own: its label would take the room of the leads' numbers.
void addWarming(SetupRows& rows, QGridLayout* form) {
  auto* row = new QWidget;
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  const FieldName name = {"leadWarming", SetupRows::tr("Leads warmer by"),
                          SetupRows::tr("Change lead temperature"),
                          SetupRows::tr("Leads warmer than their resistance is stated for, by")};
  QuantityEdit* edit = rows.makeQuantity(
      name, UnitFamily::Named, valueAt([](auto& c) -> auto& { return c.setup.bridge.leadWarming; }), {}, row);
  edit->setUnit("K");
  line->addWidget(new QLabel(name.label));
  line->addWidget(edit);
  rows.addRow(form, {}, row);
}

}  // namespace

void addLeadsGroup(SetupRows& rows) {
  QGridLayout* form = rows.addGroup(SetupRows::tr("Leads, each one way"), "leadsGroup");
  for (std::size_t k = 0; k < core::leadRoleCount; ++k) addLead(rows, form, static_cast<core::LeadRole>(k));
  addWarming(rows, form);
}

}  // namespace ui
