// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_picture.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <algorithm>

#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Bridge", text); }

constexpr Qt::Alignment leftward = Qt::AlignLeft | Qt::AlignVCenter;
constexpr Qt::Alignment rightward = Qt::AlignRight | Qt::AlignVCenter;
constexpr Qt::Alignment centred = Qt::AlignCenter;

/// "S−" for "S-": the drawing has the typographic minus.
QString terminalText(core::Node node) {
  if (node == core::Node::Arm2Begin) return tr("return");
  return toQString(core::nodeName(node)).replace('-', QChar(0x2212));
}

void addHeadings(std::vector<BridgeLabel>& labels, const BridgeLayout& layout,
                 const core::Instrument& instrument) {
  labels.push_back({LabelRole::Heading, layout.instrumentHeading, leftward, tr("Instrument")});
  labels.push_back(
      {LabelRole::Note, layout.excitationBox, leftward, excitationText(instrument) + ' ' + tr("excitation")});
  labels.push_back({LabelRole::Heading, layout.articleHeading, leftward, tr("At the article")});
  if (instrument.inputResistance)
    labels.push_back({LabelRole::Note, layout.inputBox,
                      layout.inputBox.center().x() == layout.input.x() ? centred : leftward,
                      ohmText(*instrument.inputResistance, 4)});
}

void addTerminalNames(std::vector<BridgeLabel>& labels, const BridgeLayout& layout) {
  for (const core::Node node : core::allNodes()) {
    const NodePlace& place = layout[node];
    if (place.terminal && place.present)
      labels.push_back({LabelRole::Terminal, place.nameBox, rightward, terminalText(node)});
  }
}

void addArmLabels(std::vector<BridgeLabel>& labels, const BridgePicture& picture) {
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const ArmPlace& place = picture.layout.arms[arm];
    const Qt::Alignment alignment = place.labelRight ? leftward : rightward;
    labels.push_back(
        {LabelRole::Value, place.valueBox, alignment,
         QString::number(arm + 1) + QStringLiteral(" · ") + ohmText(picture.bridge.arms[arm], 6)});
    const QString strain = strainText(picture.bridge, arm);
    const auto sign = strain.startsWith('+') ? core::Polarity::Positive : core::Polarity::Negative;
    if (!strain.isEmpty())
      labels.push_back({LabelRole::Strain, place.strainBox, alignment, strain, SIZE_MAX, sign});
  }
  for (const LeadPlace& lead : picture.layout.leads) {
    const core::Resistance ohm =
        core::resistanceOf(picture.bridge.leads[static_cast<std::size_t>(lead.role)]);
    if (ohm.base() != 0) labels.push_back({LabelRole::Note, lead.valueBox, centred, ohmText(ohm, 3)});
  }
}

/// The name is what gives way when there is not room for both.
QString fittedShuntText(const core::Shunt& shunt, double width) {
  const QFontMetricsF metrics(labelFont(LabelRole::Shunt));
  const QString value = QStringLiteral(" · ") + ohmText(shunt.resistance, 6);
  const QString name = toQString(shunt.name).simplified();
  return metrics.elidedText(name, Qt::ElideMiddle, width - metrics.horizontalAdvance(value)) + value;
}

}  // namespace

QFont labelFont(LabelRole role) {
  QFont font;
  switch (role) {
    case LabelRole::Voltage:
    case LabelRole::Note:
    case LabelRole::Heading:
      font.setPixelSize(13);
      break;
    case LabelRole::Shunt:
    case LabelRole::Value:
      font.setPixelSize(14);
      break;
    case LabelRole::Terminal:
    case LabelRole::Strain:
      font.setPixelSize(14);
      font.setBold(true);
      break;
  }
  return font;
}

BridgePicture pictureOf(const core::Channel& channel, const core::SetupPrediction& prediction,
                        std::optional<std::size_t> step, Symbols symbols) {
  const core::Setup& setup = channel.setup;
  BridgePicture picture{setup.bridge,
                        setup.shunts,
                        layoutOf(setup.bridge, setup.instrument),
                        stateAt(channel, prediction, step),
                        {},
                        {}};
  picture.symbols = symbols;
  picture.constantCurrent = setup.instrument.current.has_value();
  const QFontMetricsF metrics(labelFont(LabelRole::Shunt));
  picture.lanes = shuntLanes(picture.layout, setup.shunts, picture.state.closed, [&](std::size_t k) {
    return metrics.horizontalAdvance(shuntText(setup.shunts[k])) + 4;
  });
  addHeadings(picture.labels, picture.layout, setup.instrument);
  addTerminalNames(picture.labels, picture.layout);
  showVoltages(picture, picture.state.potentials, picture.state.excitation_V);
  addArmLabels(picture.labels, picture);
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) {
    const QRectF box = picture.lanes.places[k].labelBox;
    if (!box.isEmpty())
      picture.labels.push_back(
          {LabelRole::Shunt, box, centred, fittedShuntText(setup.shunts[k], box.width()), k});
  }
  return picture;
}

void showVoltages(BridgePicture& picture, const std::vector<std::optional<double>>& potentials,
                  double excitation_V) {
  std::erase_if(picture.labels, [](const BridgeLabel& label) { return label.role == LabelRole::Voltage; });
  if (potentials.empty()) return;
  for (const core::Node node : core::allNodes()) {
    const NodePlace& place = picture.layout[node];
    const auto& potential = potentials[static_cast<std::size_t>(node)];
    if (place.voltageBox.isEmpty() || !potential) continue;
    const bool atLeft = place.voltageBox.center().x() < place.at.x();
    picture.labels.push_back({LabelRole::Voltage, place.voltageBox, atLeft ? rightward : leftward,
                              voltText(*potential * excitation_V)});
  }
}

}  // namespace ui
