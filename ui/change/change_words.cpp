// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/change_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "core/units/language.h"
#include "ui/quantity_edit.h"

namespace ui {
namespace {

constexpr int digits = 3;
constexpr double leastProbability = 0.001;

QString tr(const char* text) { return QCoreApplication::translate("ui::ChangeWords", text); }

/// `half` to two digits, and `value` to the same place.
std::pair<QString, QString> roundedTogether(double value, double half) {
  if (!(half > 0) || !std::isfinite(half)) return {signedText(value, digits), numberText(half, 2)};
  const int decimals = std::clamp(1 - static_cast<int>(std::floor(std::log10(half))), 0, 12);
  const QString shown = fixedNumberText(value, decimals);
  return {value > 0 ? "+" + shown : shown, fixedNumberText(half, decimals)};
}

}  // namespace

QString changeSign(core::Change change) {
  switch (change) {
    case core::Change::Unchanged:
      return QString::fromUtf8("●");
    case core::Change::Harmless:
      return QString::fromUtf8("◆");
    case core::Change::Changed:
      return QString::fromUtf8("▲");
    case core::Change::CannotTell:
      return QString::fromUtf8("□");
    case core::Change::NotCompared:
      break;
  }
  return QString::fromUtf8("–");
}

QString changeWord(core::Change change) { return toQString(core::say(core::changeName(change))); }

QString changeText(core::Change change) { return changeSign(change) + " " + changeWord(change); }

QColor colourOf(const Colours& colours, core::Change change) {
  switch (change) {
    case core::Change::Unchanged:
      return colours.pass;
    case core::Change::Harmless:
      return colours.measured;
    case core::Change::Changed:
      return colours.fail;
    case core::Change::CannotTell:
      return colours.cannotTell;
    case core::Change::NotCompared:
      break;
  }
  return colours.quiet;
}

QString signedText(double value, int significantDigits) {
  const QString shown = numberText(value, significantDigits);
  return value > 0 ? "+" + shown : shown;
}

QString probabilityText(double probability) {
  if (probability < leastProbability) return "< " + fixedNumberText(leastProbability, 3);
  return fixedNumberText(probability, 3);
}

QString differenceSentence(const core::Difference& difference, const ShownUnit& in) {
  const QString margin = numberText(in.factor * difference.margin, digits) + " " + in.unit;
  if (!difference.halfWidth95) {
    const QString value = signedText(in.factor * difference.value, digits) + " " + in.unit;
    return difference.change == core::Change::NotCompared
               ? tr("Not compared.")
               : tr("Cannot tell: %1 against a margin of ± %2; how far it may be wrong is not known.")
                     .arg(value, margin);
  }
  const auto [value, half] =
      roundedTogether(in.factor * difference.value, in.factor * *difference.halfWidth95);
  switch (difference.change) {
    case core::Change::Unchanged:
      return tr("Unchanged within ± %1: %2 ± %3 %4 (95 %).").arg(margin, value, half, in.unit);
    case core::Change::Harmless:
      return tr("Differs by %2 ± %3 %4 (95 %), which is shown to lie within the margin of ± %1.")
          .arg(margin, value, half, in.unit);
    case core::Change::Changed:
      return tr("Changed by %2 ± %3 %4 (95 %), not within the margin of ± %1.")
          .arg(margin, value, half, in.unit);
    case core::Change::CannotTell:
      return tr("Cannot tell: %2 ± %3 %4 (95 %) is too uncertain for the margin of ± %1.")
          .arg(margin, value, half, in.unit);
    case core::Change::NotCompared:
      break;
  }
  return tr("Not compared.");
}

}  // namespace ui
