// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/resistor.h"

namespace core {

Resistance valueOf(const Resistor& resistor) {
  return resistor.certificate ? resistor.certificate->value : resistor.nominal;
}

double toleranceOf(const Resistor& resistor) {
  return resistor.certificate ? resistor.certificate->expanded / resistor.certificate->value
                              : resistor.tolerance;
}

Resistance greatestSetting(const DecadeBox& box) {
  Resistance sum = box.residual;
  for (const Decade& decade : box.decades) sum += decade.positions * decade.step;
  return sum;
}

bool isOverdue(const std::optional<Date>& due, Date today) { return due && *due < today; }

}  // namespace core
