// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/plan/setup.h"

// Numbers with units as lines of working write them. Internal to core/working.

namespace core::amounts {

std::string number(double value);                                ///< "0.999001", six digits
std::string number(double value, const std::string& unit);       ///< "509.43 µm/m"
std::string uncertainty(double value, const std::string& unit);  ///< two digits: "1.7 µm/m"
std::string ohm(Resistance value);                               ///< "332.018 kΩ"
std::string output(Output value);                                ///< "-0.5005 mV/V"
std::string strain(double strain);                               ///< of m/m: "509.43 µm/m"
std::string volt(double value);                                  ///< nine digits: they are subtracted
std::string percent(double share, int digits = 3);               ///< with its sign: "+0.108 %", "0 %"
std::string plainPercent(double share, int digits = 3);          ///< "95.45 %"
/// In brackets when it begins with a minus, so that it can stand behind an operator.
std::string inFormula(const std::string& amount);

}  // namespace core::amounts
