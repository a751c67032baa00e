// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>

#include "core/document/edits.h"
#include "ui/setup/setup_groups.h"
#include "ui/theme.h"

namespace ui {
namespace {

using core::Channel;
using core::UnitFamily;

/// Coefficients of gauge factors are stated in percent per 100 K; the base unit is 1/K.
constexpr double percentPer100K = 1e4;
constexpr double absoluteZero_degC = -273.15;

bool hasRating(const Channel& channel) { return core::isTransducer(channel.setup.bridge); }

bool usesPoisson(const Channel& channel) {
  if (!hasGauge(channel)) return false;
  for (const core::StrainShare& share : core::templateOf(channel.setup.bridge.type).shares)
    if (share.poisson != 0) return true;
  return false;
}

/// Arms that are still at the old nominal value follow the new one; measured ones stay.
void setNominal(Channel& channel, double ohm) {
  core::Bridge& bridge = channel.setup.bridge;
  for (core::Resistance& arm : bridge.arms)
    if (arm == bridge.gauge.nominal) arm = core::Resistance(ohm);
  bridge.gauge.nominal = core::Resistance(ohm);
}

QString factorAtTemperature(const Channel& channel) {
  const core::Gauge& gauge = channel.setup.bridge.gauge;
  const double factor = core::gaugeFactorOf(gauge);
  if (!hasGauge(channel) || factor == gauge.factor) return {};
  return SetupRows::tr("At %1 the gauge factor is %2.")
      .arg(quantityText(gauge.installed.base(), UnitFamily::Temperature), numberText(factor, 6));
}

void addTemplateRows(SetupRows& rows, QGridLayout* form) {
  QStringList names;
  for (const core::BridgeTemplate& shape : core::allTemplates()) names << toQString(shape.name);
  rows.addChoice(
      form, {"bridgeTemplate", {}, SetupRows::tr("Change bridge template"), SetupRows::tr("Bridge template")},
      names,
      {[](const Channel& c) { return static_cast<int>(c.setup.bridge.type); },
       [](Channel& c, int row) {
         c = core::withBridgeType(c, core::allTemplates()[static_cast<std::size_t>(row)].type);
       }});
  rows.addNote(form, "bridgeAbout",
               [](const Channel& c) { return toQString(core::templateOf(c.setup.bridge.type).about); });
  rows.addSwitch(form,
                 {"sixWire", SetupRows::tr("Six-wire: sense leads"), SetupRows::tr("Change connection")},
                 choiceAt([](auto& c) -> auto& { return c.setup.bridge.sixWire; }),
                 [](const Channel& c) { return core::templateOf(c.setup.bridge.type).senseLeads; });
}

void addGaugeRows(SetupRows& rows, QGridLayout* form) {
  rows.addQuantity(
          form,
          {"gaugeResistance", SetupRows::tr("Gauge, nominal"), SetupRows::tr("Change gauge resistance")},
          UnitFamily::Resistance,
          {[](const Channel& c) { return c.setup.bridge.gauge.nominal.base(); }, setNominal, {}}, hasGauge)
      ->setLeast(0, false);
  rows.addQuantity(form, {"gaugeFactor", SetupRows::tr("Gauge factor"), SetupRows::tr("Change gauge factor")},
                   UnitFamily::Plain, valueAt([](auto& c) -> auto& { return c.setup.bridge.gauge.factor; }),
                   hasGauge)
      ->setLeast(0, false);
  QuantityEdit* poisson = rows.addQuantity(
      form, {"poissonRatio", SetupRows::tr("Poisson's ratio"), SetupRows::tr("Change Poisson's ratio")},
      UnitFamily::Plain, valueAt([](auto& c) -> auto& { return c.setup.bridge.gauge.poissonRatio; }),
      usesPoisson);
  poisson->setLeast(0, true);
  poisson->setGreatest(0.5);
}

void addTemperatureRows(SetupRows& rows, QGridLayout* form) {
  rows.addQuantity(
          form,
          {"factorAt", SetupRows::tr("Factor stated at"), SetupRows::tr("Change gauge factor's temperature"),
           SetupRows::tr("Temperature that the gauge factor is stated for")},
          UnitFamily::Temperature, valueAt([](auto& c) -> auto& { return c.setup.bridge.gauge.factorAt; }),
          hasGauge)
      ->setLeast(absoluteZero_degC, false);
  rows.addQuantity(form,
                   {"factorCoefficient", SetupRows::tr("Factor changes by"),
                    SetupRows::tr("Change gauge factor's coefficient"),
                    SetupRows::tr("Temperature coefficient of the gauge factor")},
                   UnitFamily::Named,
                   scaled(valueAt([](auto& c) -> auto& { return c.setup.bridge.gauge.factorCoefficient; }),
                          percentPer100K),
                   hasGauge)
      ->setUnit("%/100 K");
  rows.addQuantity(
          form,
          {"gaugeTemperature", SetupRows::tr("Gauges are at"), SetupRows::tr("Change gauge temperature"),
           SetupRows::tr("Temperature of the gauges during the check")},
          UnitFamily::Temperature, valueAt([](auto& c) -> auto& { return c.setup.bridge.gauge.installed; }),
          hasGauge)
      ->setLeast(absoluteZero_degC, false);
  rows.addNote(form, "factorNow", factorAtTemperature);
}

void addRatingRows(SetupRows& rows, QGridLayout* form) {
  rows.addQuantity(form, {"ratedOutput", SetupRows::tr("Rated output"), SetupRows::tr("Change rated output")},
                   UnitFamily::Output,
                   valueAt([](auto& c) -> auto& { return c.setup.bridge.rating.ratedOutput; }), hasRating)
      ->setLeast(0, false);
  QuantityEdit* capacity = rows.addQuantity(
      form, {"capacity", SetupRows::tr("Capacity"), SetupRows::tr("Change capacity")}, UnitFamily::Named,
      valueAt([](auto& c) -> auto& { return c.setup.bridge.rating.capacity; }), hasRating);
  capacity->setLeast(0, false);
  rows.onRefresh(
      [capacity](const Channel& c) { capacity->setUnit(toQString(c.setup.bridge.rating.loadUnit)); });
}

}  // namespace

bool hasGauge(const Channel& channel) { return !core::isTransducer(channel.setup.bridge); }

void addChannelGroup(SetupRows& rows) {
  QGridLayout* form = rows.addGroup(SetupRows::tr("Channel"), "channelGroup");
  rows.keepOpen(rows.addText(
      form, {"channelName", SetupRows::tr("Name"), SetupRows::tr("Change name")},
      [](const Channel& c) { return c.name; },
      [&rows](Channel& c, const std::string& text) {
        const Session& session = rows.session();
        c.name = core::uniqueChannelName(session.document(), text, *session.selection().channel);
      }));
  rows.keepOpen(rows.addText(
      form, {"channelNote", SetupRows::tr("Note"), SetupRows::tr("Change note")},
      [](const Channel& c) { return c.note; }, [](Channel& c, const std::string& text) { c.note = text; }));
}

void addBridgeGroup(SetupRows& rows) {
  QGridLayout* form = rows.addGroup(SetupRows::tr("Bridge"), "bridgeGroup");
  addTemplateRows(rows, form);
  addGaugeRows(rows, form);
  addTemperatureRows(rows, form);
  addRatingRows(rows, form);
}

void addArmsGroup(SetupRows& rows) {
  QGridLayout* form = rows.addGroup(SetupRows::tr("Arms as installed, without load"), "armsGroup");
  for (const std::size_t arm : {0, 1, 2, 3})
    rows.addQuantity(form,
                     {QString("arm%1").arg(arm + 1), SetupRows::tr("Arm %1").arg(arm + 1),
                      SetupRows::tr("Change arm")},
                     UnitFamily::Resistance,
                     valueAt([arm](auto& c) -> auto& { return c.setup.bridge.arms[arm]; }))
        ->setLeast(0, false);
}

}  // namespace ui
