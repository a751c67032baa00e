// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLineEdit>

#include <QCheckBox>
#include <map>
#include <memory>
#include "core/units/day_words.h"

#include "ui/setup/setup_groups.h"
#include "ui/theme.h"

namespace ui {
namespace {

using core::Channel;
using core::UnitFamily;

constexpr double milliamperesPerAmpere = 1e3;

bool hasCurrent(const Channel& channel) { return channel.setup.instrument.current.has_value(); }
bool hasVoltage(const Channel& channel) { return !hasCurrent(channel); }

SetupRows::Shown reads(core::ReadingUnit unit) {
  return [unit](const Channel& c) { return c.setup.instrument.unit == unit; };
}

/// A corrected strain needs a bridge of gauges and a reading in strain.
bool mayLinearise(const Channel& channel) {
  return hasGauge(channel) && channel.setup.instrument.unit == core::ReadingUnit::MicrometrePerMetre;
}

bool balanced(const Channel& channel) {
  return channel.setup.instrument.balance.kind != core::BalanceKind::None;
}

bool balancedInParallel(const Channel& channel) {
  return channel.setup.instrument.balance.kind == core::BalanceKind::Parallel;
}

/// The usual current source for a bridge that has none yet.
core::CurrentSource usualSource(const Channel& channel) {
  core::CurrentSource source;
  source.nominal = hasGauge(channel) ? channel.setup.bridge.gauge.nominal : channel.setup.bridge.arms[0];
  return source;
}

/// Voltage or current. A channel holds one current source or none, so the last one of each channel is kept
/// here and comes back when the choice does.
ChannelChoice excitationChoice(SetupRows& rows) {
  auto last = std::make_shared<std::map<std::string, core::CurrentSource>>();
  rows.onRefresh([last](const Channel& c) {
    if (hasCurrent(c)) (*last)[c.name] = *c.setup.instrument.current;
  });
  return {[](const Channel& c) { return hasCurrent(c) ? 1 : 0; },
          [last](Channel& c, int row) {
            auto& current = c.setup.instrument.current;
            if (row == 0) current.reset();
            if (row == 0 || current) return;
            const auto kept = last->find(c.name);
            current = kept != last->end() ? kept->second : usualSource(c);
          }};
}

void addExcitationRows(SetupRows& rows, QGridLayout* form) {
  const QString edit = SetupRows::tr("Change excitation");
  rows.addChoice(form, {"excitationSource", {}, edit, SetupRows::tr("Excited by")},
                 {SetupRows::tr("Constant voltage"), SetupRows::tr("Constant current")},
                 excitationChoice(rows));
  rows.addQuantity(form, {"excitation", SetupRows::tr("Excitation"), edit}, UnitFamily::Voltage,
                   valueAt([](auto& c) -> auto& { return c.setup.instrument.excitation; }), hasVoltage)
      ->setLeast(0, false);
  QuantityEdit* current = rows.addQuantity(
      form, {"excitationCurrent", SetupRows::tr("Current"), edit, SetupRows::tr("Excitation current")},
      UnitFamily::Named,
      scaled(valueAt([](auto& c) -> auto& { return c.setup.instrument.current->supplied; }),
             milliamperesPerAmpere),
      hasCurrent);
  current->setUnit("mA");
  current->setLeast(0, false);
  rows.addQuantity(
          form,
          {"nominalBridge", SetupRows::tr("Bridge, nominal"), SetupRows::tr("Change nominal resistance"),
           SetupRows::tr("Nominal resistance of the bridge, as set")},
          UnitFamily::Resistance,
          valueAt([](auto& c) -> auto& { return c.setup.instrument.current->nominal; }), hasCurrent)
      ->setLeast(0, false);
  rows.addNote(form, "nominalExcitation", [](const Channel& c) {
    if (hasVoltage(c)) return QString();
    return SetupRows::tr("The instrument reckons with %1.")
        .arg(quantityText(core::nominalExcitation(c.setup.instrument).base(), UnitFamily::Voltage, {}, 6));
  });
  rows.addSwitch(form, {"ratiometric", SetupRows::tr("Ratiometric"), SetupRows::tr("Change ratiometric")},
                 choiceAt([](auto& c) -> auto& { return c.setup.instrument.ratiometric; }))
      ->setToolTip(SetupRows::tr("The instrument measures the excitation too and divides by it, so that an "
                                 "excitation that is a little off cancels. "
                                 "Without it the error of the excitation is in every reading."));
}

void addReadingRows(SetupRows& rows, QGridLayout* form) {
  QuantityEdit* input = rows.addQuantity(
      form, {"inputResistance", SetupRows::tr("Input resistance"), SetupRows::tr("Change input resistance")},
      UnitFamily::Resistance,
      optionalAt([](auto& c) -> auto& { return c.setup.instrument.inputResistance; }));
  input->setLeast(0, false);
  input->setOptional(SetupRows::tr("takes no current"));
  QuantityEdit* range = rows.addQuantity(
      form,
      {"range", SetupRows::tr("Range ±"), SetupRows::tr("Change range"),
       SetupRows::tr("Greatest bridge output that the instrument takes")},
      UnitFamily::Output, optionalAt([](auto& c) -> auto& { return c.setup.instrument.range; }));
  range->setLeast(0, false);
  range->setOptional(SetupRows::tr("not known"));
  rows.addChoice(form, {"readingUnit", SetupRows::tr("Reads in"), SetupRows::tr("Change reading unit")},
                 {SetupRows::tr("strain, µm/m"), SetupRows::tr("output, mV/V"), SetupRows::tr("voltage, mV"),
                  SetupRows::tr("scaled unit")},
                 choiceAt([](auto& c) -> auto& { return c.setup.instrument.unit; }));
  rows.addQuantity(
          form,
          {"gaugeFactorSet", SetupRows::tr("Gauge factor set"), SetupRows::tr("Change gauge factor set")},
          UnitFamily::Plain, valueAt([](auto& c) -> auto& { return c.setup.instrument.gaugeFactor; }),
          reads(core::ReadingUnit::MicrometrePerMetre))
      ->setLeast(0, false);
  rows.addQuantity(
          form,
          {"bridgeFactorSet", SetupRows::tr("Bridge factor set"), SetupRows::tr("Change bridge factor set")},
          UnitFamily::Plain, valueAt([](auto& c) -> auto& { return c.setup.instrument.bridgeFactor; }),
          reads(core::ReadingUnit::MicrometrePerMetre))
      ->setLeast(0, false);
  rows.addChoice(form,
                 {"linearisation",
                  {},
                  SetupRows::tr("Change linearisation"),
                  SetupRows::tr("Correction of the bridge's nonlinearity")},
                 {SetupRows::tr("No linearisation"), SetupRows::tr("Linearised, then zero subtracted"),
                  SetupRows::tr("Zero subtracted, then linearised")},
                 choiceAt([](auto& c) -> auto& { return c.setup.instrument.linearisation; }), mayLinearise);
}

void addScaleRows(SetupRows& rows, QGridLayout* form) {
  const auto scaledReading = reads(core::ReadingUnit::Scaled);
  rows.addQuantity(
      form, {"scale", SetupRows::tr("Units per mV/V"), SetupRows::tr("Change scale")}, UnitFamily::Plain,
      valueAt([](auto& c) -> auto& { return c.setup.instrument.unitsPerMillivoltPerVolt; }), scaledReading);
  rows.addText(
      form, {"scaledUnit", SetupRows::tr("Scaled unit"), SetupRows::tr("Change scaled unit")},
      [](const Channel& c) { return c.setup.instrument.scaledUnit; },
      [](Channel& c, const std::string& text) {
        c.setup.instrument.scaledUnit = text;
        c.setup.bridge.rating.loadUnit = text;
      },
      [scaledReading](const Channel& c) { return scaledReading(c) || !hasGauge(c); });
}

void addBalanceRows(SetupRows& rows, QGridLayout* form) {
  const QString edit = SetupRows::tr("Change balance network");
  rows.addChoice(form, {"balance", {}, edit, SetupRows::tr("Balance network")},
                 {SetupRows::tr("No balance network"), SetupRows::tr("Balance network, parallel"),
                  SetupRows::tr("Balance network, series")},
                 choiceAt([](auto& c) -> auto& { return c.setup.instrument.balance.kind; }));
  rows.addQuantity(form,
                   {"balancePotentiometer", SetupRows::tr("Potentiometer"), edit,
                    SetupRows::tr("Potentiometer of the balance network")},
                   UnitFamily::Resistance,
                   valueAt([](auto& c) -> auto& { return c.setup.instrument.balance.potentiometer; }),
                   balanced)
      ->setLeast(0, false);
  rows.addQuantity(form,
                   {"balanceLimiting", SetupRows::tr("Wiper to S+"), edit,
                    SetupRows::tr("Resistor from the wiper of the balance network to S+")},
                   UnitFamily::Resistance,
                   valueAt([](auto& c) -> auto& { return c.setup.instrument.balance.limiting; }),
                   balancedInParallel)
      ->setLeast(0, false);
  QuantityEdit* wiper = rows.addQuantity(
      form,
      {"balanceWiper", SetupRows::tr("Wiper, 0 to 1"), edit, SetupRows::tr("Place of the wiper, 0 to 1")},
      UnitFamily::Plain, valueAt([](auto& c) -> auto& { return c.setup.instrument.balance.wiper; }),
      balanced);
  wiper->setLeast(0, true);
  wiper->setGreatest(1);
  rows.addNote(form, "balanceNote", [](const Channel& c) {
    if (!balanced(c)) return QString();
    return balancedInParallel(c) ? SetupRows::tr(
                                       "A potentiometer over the excitation, its wiper through a resistor to "
                                       "S+. The wiper is at P- with 0, at P+ with 1.")
                                 : SetupRows::tr(
                                       "A potentiometer between arms 3 and 4, its wiper is S+. The wiper's "
                                       "number is the share that lies in arm 3.");
  });
}

/// Which instrument it is, for the record alone.
void addIdentityRows(SetupRows& rows, QGridLayout* form) {
  const QString edit = SetupRows::tr("Change which instrument it is");
  const auto add = [&](const QString& object, const QString& label, std::string core::Identity::*part) {
    rows.addText(
        form, {object, label, edit, SetupRows::tr("Instrument: %1").arg(label)},
        [part](const Channel& c) { return c.setup.identity.*part; },
        [part](Channel& c, const std::string& text) { c.setup.identity.*part = text; });
  };
  add("identityName", SetupRows::tr("Maker and type"), &core::Identity::name);
  add("identitySerial", SetupRows::tr("Serial number, input"), &core::Identity::serial);
  add("identityCertificate", SetupRows::tr("Certificate"), &core::Identity::certificate);
  QLineEdit* due = rows.addText(
      form,
      {"identityDue", SetupRows::tr("Calibration due"), edit,
       SetupRows::tr("Day of the instrument's next calibration, as year-month-day")},
      [](const Channel& c) { return c.setup.identity.due ? core::dateText(*c.setup.identity.due) : ""; },
      [](Channel& c, const std::string& text) {
        if (const auto day = core::dayFromWords(text)) c.setup.identity.due = *day;
      },
      {},
      [](const QString& text) {
        const auto day = core::dayFromWords(text.toStdString());
        return day ? QString() : toText(day.error());
      });
  due->setPlaceholderText(QStringLiteral("2027-01-31"));
}

}  // namespace

void addInstrumentGroup(SetupRows& rows) {
  QGridLayout* form = rows.addGroup(SetupRows::tr("Instrument"), "instrumentGroup");
  addExcitationRows(rows, form);
  addReadingRows(rows, form);
  addScaleRows(rows, form);
  addBalanceRows(rows, form);
  addIdentityRows(rows, form);
}

}  // namespace ui
