// SPDX-License-Identifier: GPL-3.0-or-later
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <algorithm>

#include "ui/setup/folded_group.h"
#include "ui/setup/setup_groups.h"

namespace ui {
namespace {

using core::Channel;
using core::UnitFamily;

int leaksOf(const Channel& channel) {
  int count = 0;
  for (const core::Leak& leak : channel.setup.bridge.leaks)
    count += int(leak.across.has_value()) + int(leak.toStructure.has_value());
  return count;
}

QString summaryOf(const Channel& channel) {
  const int count = leaksOf(channel);
  return count == 0 ? SetupRows::tr("none") : SetupRows::tr("%1 entered").arg(count);
}

QuantityEdit* leakEdit(SetupRows& rows, const FieldName& name, ChannelValue value) {
  QuantityEdit* edit = rows.makeQuantity(name, UnitFamily::Resistance, std::move(value));
  edit->setLeast(0, false);
  edit->setOptional(SetupRows::tr("none"));
  return edit;
}

/// Where along the arm the leak to the structure sits; only asked for while there is one.
QWidget* placeRow(SetupRows& rows, std::size_t arm) {
  auto* row = new QWidget;
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  const QString label = SetupRows::tr("Leaks at, 0 to 1 along arm %1").arg(arm + 1);
  QuantityEdit* edit = rows.makeQuantity(
      {QString("leakPlace%1").arg(arm + 1), label, SetupRows::tr("Change place of leak"),
       SetupRows::tr("Place of the leak to structure along arm %1, 0 at its begin, 1 at its end")
           .arg(arm + 1)},
      UnitFamily::Plain, valueAt([arm](auto& c) -> auto& { return c.setup.bridge.leaks[arm].place; }),
      [arm](const Channel& c) { return c.setup.bridge.leaks[arm].toStructure.has_value(); }, row);
  edit->setLeast(0, true);
  edit->setGreatest(1);
  line->addWidget(new QLabel(label));
  line->addWidget(edit);
  return row;
}

/// A row an arm: leak over the arm, leak to the structure, and below it the place of the latter.
QWidget* armTable(SetupRows& rows) {
  auto* table = new QWidget;
  auto* grid = new QGridLayout(table);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setVerticalSpacing(4);
  grid->addWidget(new QLabel(SetupRows::tr("Leak over arm")), 0, 1);
  grid->addWidget(new QLabel(SetupRows::tr("to structure")), 0, 2);
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const int row = 2 * static_cast<int>(arm) + 1;
    const QString number = QString::number(arm + 1), edit = SetupRows::tr("Change leak");
    grid->addWidget(new QLabel(SetupRows::tr("Arm %1").arg(number)), row, 0);
    grid->addWidget(
        leakEdit(rows, {"leakAcross" + number, {}, edit, SetupRows::tr("Leak over arm %1").arg(number)},
                 optionalAt([arm](auto& c) -> auto& { return c.setup.bridge.leaks[arm].across; })),
        row, 1);
    grid->addWidget(
        leakEdit(
            rows,
            {"leakStructure" + number, {}, edit, SetupRows::tr("Leak to structure of arm %1").arg(number)},
            optionalAt([arm](auto& c) -> auto& { return c.setup.bridge.leaks[arm].toStructure; })),
        row, 2);
    grid->addWidget(placeRow(rows, arm), row + 1, 0, 1, 3);
  }
  return table;
}

}  // namespace

void addLeaksGroup(SetupRows& rows) {
  FoldedGroup* group = rows.addFoldedGroup(SetupRows::tr("Leaks"), "leaksGroup");
  rows.addRow(group->form(), {}, armTable(rows));
  rows.addChoice(
      group->form(),
      {"grounding", SetupRows::tr("Structure is on"), SetupRows::tr("Change connection of structure"),
       SetupRows::tr("Structure is connected to")},
      {SetupRows::tr("nothing"), "P-", "P+"},
      choiceAt([](auto& c) -> auto& { return c.setup.instrument.grounding; }));
  rows.onRefresh([group](const Channel& channel) {
    group->setSummary(summaryOf(channel));
    group->setHolds(leaksOf(channel) > 0);
  });
}

}  // namespace ui
