// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_picture.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QHash>
#include <algorithm>

#include "core/circuit/hookup_words.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Bridge", text); }

constexpr Qt::Alignment leftward = Qt::AlignLeft | Qt::AlignVCenter;
constexpr Qt::Alignment rightward = Qt::AlignRight | Qt::AlignVCenter;
constexpr Qt::Alignment centred = Qt::AlignCenter;

/// "S−" for "S-": the drawing has the typographic minus.
QString terminalText(core::Node node) {
  if (node == core::Node::Arm2Begin) return toQString(core::leadWord(core::LeadRole::Return));
  return toQString(core::nodeName(node)).replace('-', QChar(0x2212));
}

constexpr std::size_t roleCount = 8;

/// Measuring text takes longer than all the rest of a drawing.
struct Measure {
  QFont base;
  std::array<QFont, roleCount> fonts;
  std::vector<QFontMetricsF> metrics;
  std::array<QHash<QString, double>, roleCount> widths;
};

Measure freshMeasure() {
  Measure measure;
  for (std::size_t role = 0; role < roleCount; ++role) {
    QFont& font = measure.fonts[role];
    switch (static_cast<LabelRole>(role)) {
      case LabelRole::Voltage:
      case LabelRole::Note:
      case LabelRole::Heading:
        font.setPixelSize(14);
        break;
      case LabelRole::Shunt:
      case LabelRole::Value:
        font.setPixelSize(15);
        break;
      case LabelRole::Arm:
      case LabelRole::Terminal:
      case LabelRole::Strain:
        font.setPixelSize(15);
        font.setBold(true);
        break;
    }
    measure.metrics.emplace_back(font);
  }
  return measure;
}

Measure& measure() {
  thread_local Measure kept = freshMeasure();
  if (const QFont now; kept.base != now) kept = freshMeasure();
  return kept;
}

QString fitted(LabelRole role, const QString& text, double width) {
  if (labelTextWidth(role, text) <= width) return text;
  return measure().metrics[static_cast<std::size_t>(role)].elidedText(text, Qt::ElideRight, width);
}

/// Boxes without a place in this drawing are empty.
void add(std::vector<BridgeLabel>& labels, LabelRole role, const QRectF& box, Qt::Alignment alignment,
         const QString& text, core::Polarity sign = core::Polarity::None) {
  if (!box.isEmpty() && !text.isEmpty())
    labels.push_back({role, box, alignment, fitted(role, text, box.width()), SIZE_MAX, sign});
}

void addHeadings(std::vector<BridgeLabel>& labels, const BridgeLayout& layout,
                 const core::Instrument& instrument) {
  add(labels, LabelRole::Heading, layout.instrumentHeading, leftward, tr("Instrument"));
  add(labels, LabelRole::Note, layout.excitationBox, leftward, excitationText(instrument));
  add(labels, LabelRole::Heading, layout.articleHeading, leftward, tr("At the article"));
  if (instrument.inputResistance)
    add(labels, LabelRole::Note, layout.inputBox, layout.inputAxis.x() != 0 ? centred : leftward,
        ohmText(*instrument.inputResistance, 4));
  if (!layout.balance) return;
  add(labels, LabelRole::Note, layout.balance->valueBox, leftward,
      tr("pot. %1").arg(ohmText(instrument.balance.potentiometer, 4)));
  add(labels, LabelRole::Note, layout.balance->limitingBox, leftward,
      tr("to S+ %1").arg(ohmText(instrument.balance.limiting, 4)));
}

void addTerminalNames(std::vector<BridgeLabel>& labels, const BridgeLayout& layout) {
  for (const core::Node node : core::allNodes()) {
    const NodePlace& place = layout[node];
    if (place.terminal && place.present)
      add(labels, LabelRole::Terminal, place.nameBox, rightward, terminalText(node));
  }
}

core::Polarity signOf(const core::Bridge& bridge, std::size_t arm) {
  const core::StrainShare share = core::strainShare(bridge, arm);
  if (!share.active()) return core::Polarity::None;
  return share.plain + share.poisson > 0 ? core::Polarity::Positive : core::Polarity::Negative;
}

void addArmLabels(std::vector<BridgeLabel>& labels, const BridgePicture& picture) {
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const ArmPlace& place = picture.layout.arms[arm];
    const Qt::Alignment alignment = place.labelRight ? leftward : rightward;
    add(labels, LabelRole::Arm, place.nameBox, alignment, tr("Arm %1").arg(arm + 1));
    add(labels, LabelRole::Value, place.valueBox, alignment, ohmText(picture.bridge.arms[arm], 6));
    add(labels, LabelRole::Strain, place.strainBox, alignment, strainText(picture.bridge, arm),
        picture.strains[arm]);
  }
  for (const LeadPlace& lead : picture.layout.leads) {
    const core::Resistance ohm =
        core::resistanceOf(picture.bridge.leads[static_cast<std::size_t>(lead.role)]);
    if (ohm.base() != 0) add(labels, LabelRole::Note, lead.valueBox, centred, ohmText(ohm, 3));
  }
  for (const LeakPlace& leak : picture.layout.leaks) {
    const core::Leak& value = picture.bridge.leaks[leak.arm];
    const bool right = leak.toStructure ? leak.way.x() > 0 : picture.layout.arms[leak.arm].labelRight;
    add(labels, LabelRole::Note, leak.valueBox, right ? leftward : rightward,
        ohmText(leak.toStructure ? *value.toStructure : *value.across, 4));
  }
}

QString shuntValue(const core::Shunt& shunt) { return QStringLiteral(" · ") + ohmText(shunt.resistance, 6); }

/// The name is what gives way when there is not room for both.
QString fittedShuntText(const core::Shunt& shunt, double width) {
  const QString value = shuntValue(shunt), name = toQString(shunt.name).simplified().left(200);
  const double valueWidth = labelTextWidth(LabelRole::Shunt, value);
  if (labelTextWidth(LabelRole::Shunt, name) + valueWidth <= width) return name + value;
  const QFontMetricsF& metrics = measure().metrics[static_cast<std::size_t>(LabelRole::Shunt)];
  return metrics.elidedText(name, Qt::ElideMiddle, width - valueWidth) + value;
}

/// A name that goes on for ever must not take all the paper.
ShuntLabelWidth shuntLabelWidth(const core::Shunt& shunt) {
  constexpr double widest = 280, shortName = 36;
  const double value = labelTextWidth(LabelRole::Shunt, shuntValue(shunt));
  const double name = labelTextWidth(LabelRole::Shunt, toQString(shunt.name).simplified().left(200));
  return {std::min(name + value + 2, widest), value + std::min(name, shortName) + 2};
}

void addShuntLabels(BridgePicture& picture) {
  for (std::size_t k = 0; k < picture.shunts.size(); ++k) {
    const ShuntPlace& place = picture.lanes.places[k];
    if (!place.labelBox.isEmpty())
      picture.labels.push_back({LabelRole::Shunt, place.labelBox, place.labelAlignment,
                                fittedShuntText(picture.shunts[k], place.labelBox.width()), k});
  }
}

}  // namespace

const QFont& labelFont(LabelRole role) { return measure().fonts[static_cast<std::size_t>(role)]; }

double labelTextWidth(LabelRole role, const QString& text) {
  constexpr qsizetype mostKept = 4000;
  const auto index = static_cast<std::size_t>(role);
  auto& widths = measure().widths[index];
  if (const auto found = widths.constFind(text); found != widths.constEnd()) return *found;
  if (widths.size() > mostKept) widths.clear();
  return *widths.insert(text, measure().metrics[index].horizontalAdvance(text));
}

BridgePicture pictureOf(const core::Channel& channel, const core::SetupPrediction& prediction,
                        std::optional<std::size_t> step, Symbols symbols) {
  return pictureOf(channel.setup, stateAt(channel, prediction, step), symbols);
}

BridgePicture pictureOf(const core::Setup& setup, BridgeState state, Symbols symbols) {
  BridgePicture picture{setup.bridge,     setup.shunts, layoutOf(setup.bridge, setup.instrument),
                        std::move(state), {},           {}};
  picture.symbols = symbols;
  picture.constantCurrent = setup.instrument.current.has_value();
  for (const std::size_t arm : {0, 1, 2, 3}) picture.strains[arm] = signOf(setup.bridge, arm);
  picture.lanes = shuntLanes(picture.layout, setup.shunts, picture.state.closed,
                             [&](std::size_t k) { return shuntLabelWidth(setup.shunts[k]); });
  addHeadings(picture.labels, picture.layout, setup.instrument);
  addTerminalNames(picture.labels, picture.layout);
  showVoltages(picture, picture.state.potentials, picture.state.excitation_V);
  addArmLabels(picture.labels, picture);
  addShuntLabels(picture);
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
    QString text = voltText(*potential * excitation_V);
    for (int decimals = 3;
         decimals > 0 && labelTextWidth(LabelRole::Voltage, text) > place.voltageBox.width(); --decimals)
      text = voltText(*potential * excitation_V, decimals);
    const bool atLeft = place.voltageBox.center().x() < place.at.x();
    add(picture.labels, LabelRole::Voltage, place.voltageBox, atLeft ? rightward : leftward, text);
  }
}

}  // namespace ui
