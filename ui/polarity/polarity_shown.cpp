// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/polarity/polarity_shown.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "core/circuit/hookup_words.h"
#include "core/circuit/node_words.h"
#include "core/polarity/place_words.h"
#include "ui/bridge/bridge_state.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("PolarityMap", text); }

/// "3.1e−6": short, for what leads do.
QString tinyText(double size, int order) {
  return fixedNumberText(size / std::pow(10, order), 1) + 'e' + QChar(0x2212) + QString::number(-order);
}

/// In four digits, three below 1, with their zeros, so that cells can be compared.
QString signedText(double value) {
  const double size = std::abs(value);
  // Of the number as it will be rounded: 999.96 is written 1000.
  const double rounded = QByteArray::number(size, 'g', 4).toDouble();
  const int order = rounded > 0 ? static_cast<int>(std::floor(std::log10(rounded))) : 0;
  const int decimals = std::max(0, (order < 0 ? 2 : 3) - order);
  const QString text = decimals > 5 ? tinyText(size, order) : fixedNumberText(size, decimals);
  return (value < 0 ? QChar(0x2212) : QChar('+')) + text;
}

/// "S−" with the minus that the drawing writes.
QString withMinus(std::string_view name) { return toQString(name).replace('-', QChar(0x2212)); }

QString placeText(const core::Bridge& bridge, const core::PolarityCell& cell) {
  return withMinus(core::placeWords(bridge, cell.a, cell.b));
}

/// Both ends are terminals of the instrument.
bool isOverTerminals(const core::PolarityCell& cell) {
  return cell.a < core::Node::SensePlus && cell.b < core::Node::SensePlus;
}

double greatestOf(const PolarityShown& shown) {
  double greatest = 0;
  for (const core::PolarityCell& cell : shown.map.cells)
    if (cell.prediction) greatest = std::max(greatest, std::abs(cell.prediction->output.base()));
  return greatest;
}

}  // namespace

double valueOf(const PolarityShown& shown, const core::Prediction& prediction) {
  switch (shown.quantity) {
    case PolarityQuantity::Simulated:
      return core::simulatedInUnit(shown.bridge(), prediction.simulated);
    case PolarityQuantity::Output:
      return prediction.output.base() * 1e3;
    case PolarityQuantity::Reading:
      return prediction.reading.base();
  }
  return 0;
}

QString unitText(const PolarityShown& shown, PolarityQuantity quantity) {
  switch (quantity) {
    case PolarityQuantity::Simulated:
      return toQString(core::simulatedUnitText(shown.bridge()));
    case PolarityQuantity::Output:
      return QStringLiteral("mV/V");
    case PolarityQuantity::Reading:
      return toQString(core::readingUnitText(shown.channel->setup.instrument));
  }
  return {};
}

QString quantityName(const core::Bridge& bridge, PolarityQuantity quantity) {
  switch (quantity) {
    case PolarityQuantity::Simulated:
      return core::isTransducer(bridge) ? tr("Simulated load") : tr("Simulated strain");
    case PolarityQuantity::Output:
      return tr("Output");
    case PolarityQuantity::Reading:
      return tr("Reading");
  }
  return {};
}

QString quantityWithUnit(const PolarityShown& shown, PolarityQuantity quantity) {
  return quantityName(shown.bridge(), quantity) + ", " + unitText(shown, quantity);
}

core::Polarity polarityOf(const PolarityShown& shown, const core::PolarityCell& cell) {
  if (!cell.prediction || cell.prediction->polarity == core::Polarity::None) return core::Polarity::None;
  const double value = valueOf(shown, *cell.prediction);
  return value > 0 ? core::Polarity::Positive : value < 0 ? core::Polarity::Negative : core::Polarity::None;
}

QString cellText(const PolarityShown& shown, const core::PolarityCell& cell) {
  if (!cell.prediction) return QStringLiteral("–");
  // Without polarity what is left is rounding.
  if (polarityOf(shown, cell) == core::Polarity::None) return QStringLiteral("0");
  return signedText(valueOf(shown, *cell.prediction));
}

QString cellWords(const PolarityShown& shown, const core::PolarityCell& cell) {
  const QString place = placeText(shown.bridge(), cell) + ": ";
  if (!cell.prediction) return place + toText(cell.prediction.error());
  if (polarityOf(shown, cell) == core::Polarity::None) return place + tr("no change");
  const QString word = polarityOf(shown, cell) == core::Polarity::Positive ? tr("positive") : tr("negative");
  return place + word + ", " + cellText(shown, cell) + ' ' + unitText(shown, shown.quantity);
}

QString cellSentence(const PolarityShown& shown, const core::PolarityCell& cell) {
  const core::Bridge& bridge = shown.bridge();
  if (!cell.prediction) return toText(cell.prediction.error());
  const QString place = placeText(bridge, cell), a = withMinus(core::pointName(bridge, cell.a));
  QString text = shown.shunt + ' ' + place;
  if (!place.contains(a))
    text += " (" + tr("%1 to %2").arg(a, withMinus(core::pointName(bridge, cell.b))) + ')';
  text += ": " + outcomeText(bridge, *cell.prediction);
  if (polarityOf(shown, cell) != core::Polarity::None) {
    const core::Instrument& instrument = shown.channel->setup.instrument;
    text += QStringLiteral(" · ") + tr("reading %1")
                                        .arg(signedText(cell.prediction->reading.base()) + ' ' +
                                             toQString(core::readingUnitText(instrument)));
  }
  return text;
}

QString shortPointText(const core::Bridge& bridge, core::Node point) {
  const QString name = withMinus(core::nodeWords(point));
  if (point < core::Node::Arm1Begin) return name;
  for (const core::Wire& wire : core::wiresOf(bridge)) {
    const QString lead = withMinus(core::leadWord(wire.role));
    if (core::pointOf(bridge, wire.to) == point && wire.role != core::LeadRole::Return)
      return tr("%1 gauge").arg(lead);
    if (core::pointOf(bridge, wire.from) == point) return lead;
  }
  return name;
}

bool isOverArm(const core::Bridge& bridge, const core::PolarityCell& cell) {
  const core::Span span = core::spanBetween(bridge, cell.a, cell.b);
  return span.arms.size() == 1 && span.leads.empty();
}

double strengthOf(const PolarityShown& shown, const core::PolarityCell& cell) {
  if (polarityOf(shown, cell) == core::Polarity::None) return 0;
  const double greatest = greatestOf(shown);
  const double share = std::abs(cell.prediction->output.base()) / greatest;
  return std::clamp(1 + std::log10(share) / 3, 0.0, 1.0);
}

QString describeMap(const PolarityShown& shown, std::optional<PolarityPair> current) {
  if (!shown.channel) return tr("No channel in this document.");
  if (shown.error) return toText(*shown.error);
  const core::Bridge& bridge = shown.bridge();
  QString text = tr("The bridge %1 as a diamond: P+ above, P− below, S+ at the left, S− at the right.")
                     .arg(toQString(shown.channel->name)) +
                 " ";
  for (const std::string& sentence : core::hookupSentences(bridge)) text += toQString(sentence) + ' ';
  text += tr("Shunt %1.").arg(shown.shunt) + " ";
  for (const bool arms : {true, false})
    for (const core::PolarityCell& cell : shown.map.cells)
      if (isOverArm(bridge, cell) == arms && (arms || isOverTerminals(cell)))
        text += cellWords(shown, cell) + ". ";
  if (shown.present)
    text += tr("It lies %1 now.").arg(placeText(bridge, shown.map.cells[*shown.present])) + " ";
  if (current) text += tr("Chosen: %1.").arg(cellSentence(shown, shown.map.at(current->i, current->j)));
  return text.trimmed();
}

}  // namespace ui
