// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLabel>
#include <algorithm>

#include "core/plan/heating.h"
#include "ui/setup/folded_group.h"
#include "ui/setup/setup_groups.h"
#include "ui/theme.h"

namespace ui {
namespace {

using core::Channel;
using core::UnitFamily;

template <class Enum>
QStringList namesOf(std::size_t count, std::string_view (*nameOf)(Enum)) {
  QStringList names;
  for (std::size_t k = 0; k < count; ++k) names << toQString(nameOf(static_cast<Enum>(k)));
  return names;
}

/// The gauges' power alone, as long as the grid's area that would judge it is missing.
QString powerInWords(const core::Setup& setup) {
  const auto heats = core::armHeats(setup);
  if (!heats) return SetupRows::tr("The power cannot be worked out: %1").arg(toText(heats.error()));
  if (heats->empty()) return {};
  const auto warmest = std::max_element(heats->begin(), heats->end(),
                                        [](const auto& a, const auto& b) { return a.power_W < b.power_W; });
  return SetupRows::tr(
             "Arm %1 turns %2 mW into heat. With the active area of its grid this is compared with the "
             "usual power densities.")
      .arg(QString::number(warmest->arm + 1), numberText(1e3 * warmest->power_W, 3));
}

QString heatInWords(const Channel& channel) {
  const auto advice = core::heatAdvice(channel.setup);
  return advice ? toQString(advice->text) : powerInWords(channel.setup);
}

QString summaryOf(const Channel& channel) {
  const auto advice = core::heatAdvice(channel.setup);
  if (!advice) return SetupRows::tr("grid not known");
  switch (advice->verdict) {
    case core::HeatVerdict::Below:
      return SetupRows::tr("below the usual");
    case core::HeatVerdict::Within:
      return SetupRows::tr("as usual");
    case core::HeatVerdict::Above:
      return SetupRows::tr("above the usual");
  }
  return {};
}

}  // namespace

void addHeatingGroup(SetupRows& rows) {
  FoldedGroup* group = rows.addFoldedGroup(SetupRows::tr("Self-heating"), "heatingGroup");
  QGridLayout* form = group->form();
  QuantityEdit* area = rows.addQuantity(
      form,
      {"gridArea", SetupRows::tr("Grid, active area"), SetupRows::tr("Change grid area"),
       SetupRows::tr("Active area of a gauge's grid")},
      UnitFamily::Area, optionalAt([](auto& c) -> auto& { return c.setup.bridge.gauge.grid.area; }));
  area->setLeast(0, false);
  area->setOptional(SetupRows::tr("not known"));
  rows.addRow(form, {}, new QLabel(SetupRows::tr("Heat sink")));
  rows.addChoice(form, {"heatSink", {}, SetupRows::tr("Change heat sink"), SetupRows::tr("Heat sink")},
                 namesOf(core::heatSinkCount, core::heatSinkName),
                 choiceAt([](auto& c) -> auto& { return c.setup.bridge.gauge.grid.heatSink; }));
  rows.addRow(form, {}, new QLabel(SetupRows::tr("Measurement")));
  rows.addChoice(form, {"heatDemand", {}, SetupRows::tr("Change measurement"), SetupRows::tr("Measurement")},
                 namesOf(core::heatDemandCount, core::heatDemandName),
                 choiceAt([](auto& c) -> auto& { return c.setup.bridge.gauge.grid.demand; }));
  rows.addNote(form, "heatNote", heatInWords);
  rows.onRefresh([group](const Channel& channel) {
    group->setVisible(hasGauge(channel));
    group->setSummary(summaryOf(channel));
    group->setHolds(channel.setup.bridge.gauge.grid.area.has_value());
  });
}

}  // namespace ui
