// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/plan/setup.h"
#include "core/units/notation.h"

namespace core {

/// The usual uncertainty of an input's class where nothing is stated, and why. All are common practice or
/// usual tolerances of parts on sale, no single source: whoever relies on a figure states his own.
struct Assumption {
  Uncertainty uncertainty;
  std::string_view reason;  ///< "calibration resistors of ±0.01 % are usual"
};
Assumption assumptionFor(const Setup& setup, Input input);

/// One number that the prediction depends on, as the budget uses it.
struct BudgetInput {
  Input input;
  double value = 0;  ///< in the base unit of the input
  Uncertainty uncertainty;
  bool assumed = true;         ///< nothing is stated: the usual one of its class
  double standard = 0;         ///< standard uncertainty, base unit; 0 when the statement is refused
  bool everyStepAnew = false;  ///< another independent error at each step, such as rounding
};

/// All inputs of `setup` in the order of a report: arms, leads, shunts, leaks, balance, instrument, gauge.
/// Those that this template, wiring and instrument do not have are left out. Shunts of one part are in a
/// group of its name unless another is stated: one resistor errs by the same at every place (JCGM 100:2008,
/// F.1.2.3).
std::vector<BudgetInput> inputsOf(const Setup& setup);
/// The same in order, without looking their uncertainty up. A statement about another input is kept in the
/// set-up, but plays no part.
std::vector<Input> inputListOf(const Setup& setup);

double inputValue(const Setup& setup, Input input);

/// "arm 1", "lead P+", "shunt 332k on arm 2", "gauge factor".
std::string inputName(const Setup& setup, Input input);

/// How the input's value and an absolute uncertainty of it are written.
struct InputUnit {
  UnitFamily family = UnitFamily::Plain;
  std::string named;  ///< for UnitFamily::Named
};
InputUnit inputUnit(const Setup& setup, Input input);

/// "±0.01 %, rectangular", "U = 0.2 Ω, k = 2, 30 degrees of freedom", with the group when there is one.
std::string uncertaintyText(const Setup& setup, Input input, const Uncertainty& uncertainty);

}  // namespace core
