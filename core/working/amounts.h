// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/plan/setup.h"

// Numbers with units as lines of working write them. Internal to core/working.

namespace core::amounts {

std::string number(double value);                                           ///< "0.999001", six digits
std::string number(double value, const std::string& unit, int digits = 6);  ///< "509.43 µm/m"
std::string uncertainty(double value, const std::string& unit);             ///< two digits: "1.7 µm/m"
std::string ohm(Resistance value);                                          ///< "332.018 kΩ"
std::string output(Output value);                                           ///< "-0.5005 mV/V"
std::string strain(double strain);                                          ///< of m/m: "509.43 µm/m"
std::string readingText(const Setup& setup, double value);                  ///< in the unit of its instrument
std::string volt(double value);                          ///< nine digits: they are subtracted
std::string percent(double share, int digits = 3);       ///< with its sign: "+0.108 %", "0 %"
std::string plainPercent(double share, int digits = 3);  ///< "95.45 %"
/// In brackets when it begins with a minus, so that it can stand behind an operator.
std::string inFormula(const std::string& amount);

/// Places after the point that give `greatest` six digits: what is left when amounts of its size are
/// subtracted is written with as many.
int placesFor(double greatest);
std::string fixed(double value, int places, const std::string& unit);
/// "0.99727, u = 0.00036": to three digits of its uncertainty, to six digits where that is not known.
std::string withUncertainty(double value, const std::optional<double>& standard, const std::string& unit);

/// Letters of a formula and what stands for them; longer letters before those they begin with.
using Letters = std::vector<std::pair<std::string_view, std::string>>;
/// The right side of `formula` with numbers for its letters: "ε ≈ −R / (F N (R + Rs))" becomes
/// "−350 Ω / (2 × 1 × (350 Ω + 59 kΩ))". What stands side by side is multiplied.
std::string withNumbers(std::string_view formula, const Letters& letters);

}  // namespace core::amounts
