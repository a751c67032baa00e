// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/budget/budget_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(ui::Words)
};

constexpr int sensitivityDigits = 3;

/// Place of the second significant digit after rounding to it, counted from the point to the right.
int secondDigit(double value) {
  int place = 1 - static_cast<int>(std::floor(std::log10(value)));
  if (std::round(value * std::pow(10, place)) >= 100) --place;  // 9.97 becomes 10
  return place;
}

/// A unit of inputs as it is shown, and how many base units it is.
struct ShownUnit {
  QString text;
  double base = 1;
};

ShownUnit shownUnit(const core::InputUnit& unit) {
  switch (unit.family) {
    case core::UnitFamily::Resistance:
      return {"Ω", 1};
    case core::UnitFamily::Output:
      return {"mV/V", 1e-3};
    case core::UnitFamily::Strain:
      return {"µm/m", 1e-6};
    case core::UnitFamily::Voltage:
      return {"V", 1};
    case core::UnitFamily::Duration:
      return {"s", 1};
    case core::UnitFamily::Length:
      return {"m", 1};
    case core::UnitFamily::Area:
      return {"mm²", 1e-6};
    case core::UnitFamily::Temperature:
      return {"K", 1};  // a difference
    case core::UnitFamily::Percent:
      return {"%", 1e-2};
    case core::UnitFamily::Frequency:
      return {"Hz", 1};
    case core::UnitFamily::Power:
      return {"mW", 1e-3};
    case core::UnitFamily::Plain:
      return {QString(), 1};
    case core::UnitFamily::Named:
      return {toQString(unit.named), 1};
  }
  return {};
}

}  // namespace

int twoDigitDecimals(double uncertainty) {
  if (!std::isfinite(uncertainty) || !(uncertainty > 0)) return 0;
  return std::clamp(secondDigit(uncertainty), 0, 9);
}

QString twoDigitsText(double uncertainty) {
  if (!std::isfinite(uncertainty) || uncertainty < 1e-8 || uncertainty >= 1e9)
    return numberText(uncertainty, 2);
  const double unit = std::pow(10, -std::min(secondDigit(uncertainty), 0));  // 10 for a value of 123
  const double shown = unit > 1 ? std::round(uncertainty / unit) * unit : uncertainty;
  return fixedNumberText(shown, twoDigitDecimals(uncertainty));
}

QString coverageText(double coverage) { return numberText(100 * coverage, 6) + " %"; }

QString scopeQuantity(const core::Setup& setup, core::Scope scope) {
  if (scope == core::Scope::Chain) return Words::tr("Expected reading");
  return core::isTransducer(setup.bridge) ? Words::tr("Simulated load") : Words::tr("Simulated strain");
}

QString expandedHeader(const core::Setup& setup, core::Scope scope) {
  return Words::tr("U, %1\n[%2]")
      .arg(toQString(core::scopeName(setup, scope)), toQString(core::scopeUnitText(setup, scope)));
}

QString degreesOfFreedomText(const core::StepUncertainty& uncertainty) {
  if (!uncertainty.dofUsable)
    return Words::tr("effective degrees of freedom not used: correlated inputs contribute");
  if (!uncertainty.dof) return Words::tr("effective degrees of freedom: infinite");
  const double whole = std::floor(*uncertainty.dof);
  const QString shown = numberText(*uncertainty.dof, 3);
  if (*uncertainty.dof == whole) return Words::tr("effective degrees of freedom: %1").arg(shown);
  return Words::tr("effective degrees of freedom: %1, cut down to %2 for k").arg(shown, numberText(whole, 6));
}

QString expandedSentence(const core::Setup& setup, core::Scope scope,
                         const core::StepUncertainty& uncertainty) {
  return Words::tr("%1: U = %2 %3 with k = %4 for %5; %6.")
      .arg(scopeQuantity(setup, scope), twoDigitsText(uncertainty.expanded),
           toQString(core::scopeUnitText(setup, scope)), fixedNumberText(uncertainty.coverageFactor, 2),
           coverageText(setup.decision.coverage), degreesOfFreedomText(uncertainty));
}

QString stepTitle(const core::Setup& setup, std::size_t step) {
  const QString number = QString::number(step + 1), label = toQString(setup.sequence[step].label);
  return label.isEmpty() ? number : number + ", " + label;
}

QString budgetHeadline(const core::Setup& setup, core::Scope scope, std::size_t step,
                       const core::StepUncertainty& uncertainty) {
  // One digit more than the uncertainty has, so that it can be found again in the sequence.
  const int decimals = std::min(9, twoDigitDecimals(uncertainty.expanded) + 1);
  return Words::tr("Step %1: %2 %3 %4, U = %5 %4 (k = %6, %7, %8)")
      .arg(stepTitle(setup, step),
           scope == core::Scope::Chain ? Words::tr("expected") : Words::tr("simulated"),
           fixedNumberText(uncertainty.value, decimals), toQString(core::scopeUnitText(setup, scope)),
           twoDigitsText(uncertainty.expanded), fixedNumberText(uncertainty.coverageFactor, 2),
           coverageText(setup.decision.coverage), toQString(core::scopeName(setup, scope)));
}

QString scopeSentence(const core::Setup& setup, core::Scope scope) {
  if (scope == core::Scope::Chain)
    return Words::tr(
        "Of the expected reading: arms, leads, shunts, amplifier and excitation, not the gauge factor. "
        "Decides pass or fail.");
  if (core::isTransducer(setup.bridge))
    return Words::tr(
        "Of the simulated load, as read: the chain and the rated output. No verdict depends on it.");
  return Words::tr(
      "Of the simulated strain, as read: the chain, gauge factor and temperature. No verdict depends on it.");
}

QString sensitivityText(const core::Setup& setup, core::Scope scope, core::Input input, double sensitivity) {
  if (sensitivity == 0) return QString("0");
  const ShownUnit unit = shownUnit(core::inputUnit(setup, input));
  const QString number = numberText(sensitivity * unit.base, sensitivityDigits);
  const QString of = toQString(core::scopeUnitText(setup, scope));
  if (unit.text == of) return number;  // a plain ratio
  return unit.text.isEmpty() ? number + " " + of : Words::tr("%1 %2 per %3").arg(number, of, unit.text);
}

}  // namespace ui
