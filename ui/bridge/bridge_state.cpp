// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_state.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

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
  return title + ": " + (names.isEmpty() ? tr("all shunts open") : tr("%1 closed").arg(names));
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

/// What the prediction says of the step, or why it says nothing.
void showOutcome(const core::Setup& setup, const core::SetupPrediction& prediction,
                 std::optional<std::size_t> step, BridgeState& state) {
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
    state.output = prediction.steps[*step]->output;
  } else {
    state.outcome =
        tr("output with all shunts open %1 mV/V").arg(fixedText(prediction.zero->base() * 1e3, 4));
    state.output = core::Output(0);
  }
}

void showFlow(const core::Setup& setup, const core::SetupPrediction& prediction,
              std::optional<std::size_t> step, core::FlowAndMovement solved, BridgeState& state) {
  state.excitation_V = solved.flow.excitation.base();
  state.potentials.resize(solved.flow.potentials.size());
  for (std::size_t node = 0; node < state.potentials.size(); ++node)
    if (const auto& potential = solved.flow.potentials[node])
      state.potentials[node] = *potential / solved.flow.excitation;
  state.flow = std::move(solved.flow);
  if (!step || state.failed) return;
  state.movement = solved.movement;
  state.movement->simulated = prediction.steps[*step]->simulated;
  state.sentence = toQString(core::sentenceOf(setup, *step, *state.movement));
}

}  // namespace

QString ohmText(core::Resistance resistance, int significantDigits) {
  // Rounded first, so that the shortest text of the number is also a short one.
  const double rounded = QByteArray::number(resistance.base(), 'g', significantDigits).toDouble();
  return quantityText(rounded, core::UnitFamily::Resistance);
}

QString outputText(core::Output output) {
  return signedText(output.base() * 1e3, 4) + QStringLiteral(" mV/V");
}

QString currentText(core::Current current) {
  const double size = std::abs(current.base());
  if (size >= 1e-4) return numberText(1e3 * size, 4) + QStringLiteral(" mA");
  if (size >= 1e-6) return numberText(1e6 * size, 4) + QStringLiteral(" µA");
  return numberText(1e9 * size, 3) + QStringLiteral(" nA");
}

QString voltText(double volt, int decimals) { return fixedText(volt, decimals) + QStringLiteral(" V"); }

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
  const bool positive = prediction.polarity == core::Polarity::Positive;
  const QString output =
      (positive ? tr("output %1, positive") : tr("output %1, negative")).arg(outputText(prediction.output));
  return output + QStringLiteral(" · ") +
         (core::isTransducer(bridge) ? tr("simulated load %1") : tr("simulated strain %1"))
             .arg(simulatedText(bridge, prediction.simulated));
}

BridgeState stateAt(const core::Channel& channel, const core::SetupPrediction& prediction,
                    std::optional<std::size_t> step) {
  const core::Setup& setup = channel.setup;
  BridgeState state;
  state.closed.resize(setup.shunts.size());
  if (step)
    for (const std::size_t shunt : setup.sequence[*step].closed) state.closed[shunt] = true;
  state.title = titleOf(setup, state, step);

  showOutcome(setup, prediction, step, state);
  if (auto solved = core::flowAndMovementAt(setup, step.value_or(setup.sequence.size())))
    showFlow(setup, prediction, step, *std::move(solved), state);
  return state;
}

core::Output largestOutput(const core::SetupPrediction& prediction) {
  core::Output largest{0};
  for (const auto& step : prediction.steps)
    if (step) largest = std::max(largest, core::Output(std::abs(step->output.base())));
  return largest;
}

bool closesShunt(const core::Step& step, std::size_t shunt) {
  return std::find(step.closed.begin(), step.closed.end(), shunt) != step.closed.end();
}

std::optional<std::size_t> firstStepClosing(const core::Setup& setup, std::size_t index) {
  for (std::size_t step = 0; step < setup.sequence.size(); ++step)
    if (closesShunt(setup.sequence[step], index)) return step;
  return std::nullopt;
}

}  // namespace ui
