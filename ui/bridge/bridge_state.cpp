// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_state.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Bridge", text); }

QString withMinus(QString number) { return number.replace('-', QChar(0x2212)); }

QString fixedText(double value, int decimals) {
  QLocale locale;
  locale.setNumberOptions(QLocale::OmitGroupSeparator);
  // "-0.0000" would claim a sign that the value has not got.
  const double rounded = QByteArray::number(value, 'f', decimals).toDouble();
  return withMinus(locale.toString(rounded == 0 ? 0.0 : rounded, 'f', decimals));
}

/// With its sign, for colour and word are not to be the only ones; never rounded to nothing.
QString signedText(double value, int decimals) {
  const QString text = fixedText(value, decimals);
  const bool vanished = value != 0 && text == fixedText(0, decimals);
  const QString shown = vanished ? withMinus(QLocale().toString(value, 'g', 2)) : text;
  return value > 0 ? '+' + shown : shown;
}

QString outputText(core::Output output) { return signedText(output.base() * 1e3, 4) + tr(" mV/V"); }

QString simulatedText(const core::Bridge& bridge, core::Stimulus simulated) {
  const double value = core::simulatedInUnit(bridge, simulated);
  const QString unit = toQString(core::simulatedUnitText(bridge));
  return signedText(value, core::isTransducer(bridge) ? 4 : 1) + ' ' + unit;
}

QString closedNames(const core::Setup& setup, const std::vector<bool>& closed) {
  QStringList names;
  for (std::size_t k = 0; k < closed.size(); ++k)
    if (closed[k]) names << toQString(setup.shunts[k].name);
  return names.join(", ");
}

QString titleOf(const core::Setup& setup, const BridgeState& state, std::optional<std::size_t> step) {
  if (!step) return tr("No step chosen: all shunts open");
  const QString label = toQString(setup.sequence[*step].label), names = closedNames(setup, state.closed);
  QString title = tr("Step %1").arg(*step + 1);
  if (!label.isEmpty() && label != names) title += ", " + label;
  return title + ": " + (names.isEmpty() ? tr("all shunts open") : names + tr(" closed"));
}

QString leadsSentence(const core::Bridge& bridge) {
  QStringList leads;
  for (const core::Wire& wire : core::wiresOf(bridge))
    leads << toQString(core::leadName(wire.role)) + ' ' +
                 ohmText(core::resistanceOf(bridge.leads[static_cast<std::size_t>(wire.role)]), 6);
  return tr("Leads: ") + leads.join(", ") + ". ";
}

QString armSentence(const core::Bridge& bridge, std::size_t arm) {
  const bool outside = core::templateOf(bridge.type).atArticle[arm];
  const QString strain = strainText(bridge, arm);
  QString text = tr("Arm %1: ").arg(arm + 1) + ohmText(bridge.arms[arm], 6) + ", " +
                 (outside ? tr("at the article") : tr("completion resistor in the instrument"));
  if (!strain.isEmpty()) text += tr(", active, ") + strain;
  return text + ". ";
}

QString shuntSentence(const core::Setup& setup, std::size_t index, bool closed) {
  const core::Shunt& shunt = setup.shunts[index];
  return tr("Shunt ") + toQString(shunt.name) + ", " + ohmText(shunt.resistance, 6) + tr(", from ") +
         pointText(setup.bridge, shunt.a) + tr(" to ") + pointText(setup.bridge, shunt.b) + ": " +
         (closed ? tr("closed") : tr("open")) + ". ";
}

/// What the structure is connected to. Floating, a single leak has nowhere to go; several meet there.
QString structureText(const core::Setup& setup) {
  switch (setup.instrument.grounding) {
    case core::Grounding::PMinus:
      return tr("structure on P−");
    case core::Grounding::PPlus:
      return tr("structure on P+");
    case core::Grounding::Floating:
      break;
  }
  const auto& leaks = setup.bridge.leaks;
  const auto leaking = [](const core::Leak& leak) { return leak.toStructure.has_value(); };
  if (std::count_if(leaks.begin(), leaks.end(), leaking) > 1) return tr("structure floating");
  return tr("structure floating: no return path");
}

}  // namespace

QString ohmText(core::Resistance resistance, int significantDigits) {
  // Rounded first, so that the shortest text of the number is also a short one.
  const double rounded = QByteArray::number(resistance.base(), 'g', significantDigits).toDouble();
  return quantityText(rounded, core::UnitFamily::Resistance);
}

QString voltText(double volt) { return fixedText(volt, 4) + tr(" V"); }

QString excitationText(const core::Instrument& instrument) {
  if (!instrument.current) return quantityText(instrument.excitation.base(), core::UnitFamily::Voltage);
  return quantityText(1e3 * instrument.current->supplied.base(), core::UnitFamily::Named,
                      QStringLiteral("mA"));
}

QStringList leakTexts(const core::Setup& setup) {
  QStringList texts;
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const core::Leak& leak = setup.bridge.leaks[arm];
    if (leak.across) texts << tr("Leak %1 over arm %2").arg(ohmText(*leak.across, 4)).arg(arm + 1);
    if (leak.toStructure)
      texts << tr("Leak %1 to the structure from arm %2, %3")
                   .arg(ohmText(*leak.toStructure, 4))
                   .arg(arm + 1)
                   .arg(structureText(setup));
  }
  return texts;
}

QString strainText(const core::Bridge& bridge, std::size_t arm) {
  const core::StrainShare share = core::strainShare(bridge, arm);
  if (!share.active()) return {};
  const QString sign = share.plain + share.poisson > 0 ? QStringLiteral("+") : QStringLiteral("−");
  if (core::isTransducer(bridge)) return sign;
  return sign + (share.plain != 0 ? QStringLiteral("ε") : QStringLiteral("νε"));
}

QString shuntText(const core::Shunt& shunt) {
  return toQString(shunt.name) + QStringLiteral(" · ") + ohmText(shunt.resistance, 6);
}

QString pointText(const core::Bridge& bridge, core::Node node) {
  return toQString(core::pointName(bridge, node));
}

QString outcomeText(const core::Bridge& bridge, const core::Prediction& prediction) {
  // Without polarity what is left of the output is rounding.
  if (prediction.polarity == core::Polarity::None) return tr("output 0 mV/V, no change");
  const QString text = tr("output ") + outputText(prediction.output) + ", ";
  const bool positive = prediction.polarity == core::Polarity::Positive;
  return text + (positive ? tr("positive") : tr("negative")) + QStringLiteral(" · ") +
         (core::isTransducer(bridge) ? tr("simulated load ") : tr("simulated strain ")) +
         simulatedText(bridge, prediction.simulated);
}

BridgeState stateAt(const core::Channel& channel, const core::SetupPrediction& prediction,
                    std::optional<std::size_t> step) {
  const core::Setup& setup = channel.setup;
  BridgeState state;
  state.closed.resize(setup.shunts.size());
  if (step)
    for (const std::size_t shunt : setup.sequence[*step].closed) state.closed[shunt] = true;
  state.title = titleOf(setup, state, step);

  const core::Error* error = nullptr;
  if (!prediction.zero)
    error = &prediction.zero.error();
  else if (step && !prediction.steps[*step])
    error = &prediction.steps[*step].error();
  if (error) {
    state.failed = true;
    state.outcome = toText(*error);
  } else if (step) {
    state.outcome = outcomeText(setup.bridge, *prediction.steps[*step]);
    state.polarity = prediction.steps[*step]->polarity;
  } else {
    state.outcome =
        tr("output with all shunts open ") + fixedText(prediction.zero->base() * 1e3, 4) + tr(" mV/V");
  }
  const std::size_t shown = step.value_or(setup.sequence.size());
  if (auto solved = core::potentials(setup, shown)) state.potentials = *std::move(solved);
  if (const auto excitation = core::excitationOf(setup, shown)) state.excitation_V = excitation->base();
  return state;
}

bool closesShunt(const core::Step& step, std::size_t shunt) {
  return std::find(step.closed.begin(), step.closed.end(), shunt) != step.closed.end();
}

std::optional<std::size_t> firstStepClosing(const core::Setup& setup, std::size_t index) {
  for (std::size_t step = 0; step < setup.sequence.size(); ++step)
    if (closesShunt(setup.sequence[step], index)) return step;
  return std::nullopt;
}

QString describe(const core::Channel& channel, const BridgeState& state) {
  const core::Setup& setup = channel.setup;
  const core::Bridge& bridge = setup.bridge;
  QString text = toQString(channel.name) + ": " + toQString(core::templateOf(bridge.type).name);
  if (core::templateOf(bridge.type).senseLeads) text += bridge.sixWire ? tr(", six-wire") : tr(", four-wire");
  text += tr(", excitation ") + excitationText(setup.instrument);
  if (setup.instrument.current) {
    text += tr(" constant current");
    if (state.excitation_V > 0) text += ", " + voltText(state.excitation_V) + tr(" at this step");
  }
  text += ". ";
  for (const std::size_t arm : {0, 1, 2, 3}) text += armSentence(bridge, arm);
  text += leadsSentence(bridge);
  for (const QString& leak : leakTexts(setup)) text += leak + ". ";
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) text += shuntSentence(setup, k, state.closed[k]);
  return text + state.title + ". " + state.outcome;
}

}  // namespace ui
