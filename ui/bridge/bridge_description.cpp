// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <cmath>

#include "core/circuit/hookup_words.h"
#include "ui/bridge/bridge_state.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Bridge", text); }

/// Currents below this share of the source's are not spoken of: nobody could measure them beside it.
constexpr double inaudible = 1e-6;

QString circuitSentence(const core::Channel& channel, const BridgeState& state) {
  const core::Setup& setup = channel.setup;
  const core::Bridge& bridge = setup.bridge;
  QString text = toQString(channel.name) + ": " + toQString(core::templateOf(bridge.type).name);
  if (core::templateOf(bridge.type).senseLeads)
    text = (bridge.sixWire ? tr("%1, six-wire") : tr("%1, four-wire")).arg(text);
  const QString excitation = excitationText(setup.instrument);
  if (!setup.instrument.current) return tr("%1, excitation %2.").arg(text, excitation) + " ";
  if (!(state.excitation_V > 0)) return tr("%1, excitation %2 constant current.").arg(text, excitation) + " ";
  return tr("%1, excitation %2 constant current, %3 at this step.")
             .arg(text, excitation, voltText(state.excitation_V)) +
         " ";
}

QString leadsSentence(const core::Bridge& bridge) {
  QStringList leads;
  for (const core::Wire& wire : core::wiresOf(bridge))
    leads << toQString(core::leadWord(wire.role)) + ' ' +
                 ohmText(core::resistanceOf(bridge.leads[static_cast<std::size_t>(wire.role)]), 6);
  return tr("Leads: %1.").arg(leads.join(", ")) + " ";
}

QString armSentence(const core::Bridge& bridge, std::size_t arm) {
  const bool outside = core::templateOf(bridge.type).atArticle[arm];
  const QString strain = strainText(bridge, arm);
  const QString text =
      (outside ? tr("Arm %1: %2, at the article") : tr("Arm %1: %2, completion resistor in the instrument"))
          .arg(QString::number(arm + 1), ohmText(bridge.arms[arm], 6));
  return (strain.isEmpty() ? text : tr("%1, active, %2").arg(text, strain)) + ". ";
}

QString shuntSentence(const core::Setup& setup, std::size_t index, bool closed) {
  const core::Shunt& shunt = setup.shunts[index];
  return (closed ? tr("Shunt %1, %2, from %3 to %4: closed.") : tr("Shunt %1, %2, from %3 to %4: open."))
             .arg(toQString(shunt.name), ohmText(shunt.resistance, 6), pointText(setup.bridge, shunt.a),
                  pointText(setup.bridge, shunt.b)) +
         " ";
}

QString inputSentence(const core::Instrument& instrument) {
  if (!instrument.inputResistance) return {};
  return tr("The input takes current through %1.").arg(ohmText(*instrument.inputResistance, 4)) + " ";
}

QString balanceSentence(const core::Balance& balance) {
  const QString potentiometer = ohmText(balance.potentiometer, 6);
  const QString share = numberText(100 * balance.wiper, 4);
  switch (balance.kind) {
    case core::BalanceKind::None:
      return {};
    case core::BalanceKind::Parallel:
      return tr("Balance: %1 over the excitation, wiper at %2 % from P- through %3 to S+.")
                 .arg(potentiometer, share, ohmText(balance.limiting, 6)) +
             " ";
    case core::BalanceKind::Series:
      return tr("Balance: %1 between arms 3 and 4, wiper to S+, %2 % of it in arm 3.")
                 .arg(potentiometer, share) +
             " ";
  }
  return {};
}

/// "7.143 mA from terminal P+ to corner S-"
QString wayText(const core::Bridge& bridge, core::Current current, core::Node from, core::Node to) {
  if (current.base() < 0) std::swap(from, to);
  return tr("%1 from %2 to %3").arg(currentText(current), pointText(bridge, from), pointText(bridge, to));
}

/// What carries how much, and which way: the source, the arms, closed shunts and leaks.
QString currentsSentence(const core::Setup& setup, const core::Flow& flow) {
  const core::Bridge& bridge = setup.bridge;
  const auto heard = [&](core::Current current) {
    return std::abs(current.base()) > inaudible * std::abs(flow.source.base());
  };
  QStringList ways;
  for (const std::size_t arm : {0, 1, 2, 3})
    if (heard(flow.arms[arm]))
      ways << tr("arm %1 carries %2")
                  .arg(QString::number(arm + 1),
                       wayText(bridge, flow.arms[arm], core::armBegin(arm), core::armEnd(arm)));
  for (std::size_t k = 0; k < setup.shunts.size(); ++k)
    if (heard(flow.shunts[k]))
      ways << tr("shunt %1 carries %2")
                  .arg(toQString(setup.shunts[k].name),
                       wayText(bridge, flow.shunts[k], setup.shunts[k].a, setup.shunts[k].b));
  for (const std::size_t arm : {0, 1, 2, 3}) {
    if (heard(flow.leaksAcross[arm]))
      ways << tr("the leak over arm %1 carries %2")
                  .arg(QString::number(arm + 1), currentText(flow.leaksAcross[arm]));
    if (heard(flow.leaksToStructure[arm]))
      ways << (flow.leaksToStructure[arm].base() > 0 ? tr("the leak of arm %1 carries %2 to the structure")
                                                     : tr("the leak of arm %1 carries %2 from the structure"))
                  .arg(QString::number(arm + 1), currentText(flow.leaksToStructure[arm]));
  }
  const QString source = currentText(flow.source);
  return (ways.isEmpty() ? tr("The source drives %1.").arg(source)
                         : tr("The source drives %1: %2.").arg(source, ways.join("; "))) +
         " ";
}

}  // namespace

QString describe(const core::Channel& channel, const BridgeState& state) {
  const core::Setup& setup = channel.setup;
  QString text = circuitSentence(channel, state);
  for (const std::string& sentence : core::hookupSentences(setup.bridge)) text += toQString(sentence) + ' ';
  for (const std::size_t arm : {0, 1, 2, 3}) text += armSentence(setup.bridge, arm);
  text += leadsSentence(setup.bridge);
  for (const QString& leak : leakTexts(setup)) text += leak + ". ";
  text += balanceSentence(setup.instrument.balance) + inputSentence(setup.instrument);
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) text += shuntSentence(setup, k, state.closed[k]);
  text += state.title + ". ";
  if (state.flow) text += currentsSentence(setup, *state.flow);
  text += state.outcome.left(1).toUpper() + state.outcome.mid(1);
  if (!state.sentence.isEmpty()) text += ". " + state.sentence;
  return text;
}

}  // namespace ui
