// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/units/date.h"
#include "core/units/quantity.h"

namespace core {

/// What a calibration certificate says of a resistor.
struct Certificate {
  Resistance value{0};
  Resistance expanded{0};  ///< U = k u
  double coverageFactor = 2;
  std::string number = {};  ///< empty: not said

  friend bool operator==(const Certificate&, const Certificate&) = default;
};

/// A resistor that one owns.
struct Resistor {
  std::string id;  ///< on its label; unique in a stock
  Resistance nominal{0};
  double tolerance = 1e-4;  ///< half width, as a share of the nominal value; 0: the certificate alone tells
  std::optional<Certificate> certificate = {};
  std::optional<Date> due = {};      ///< of the next calibration; none: not watched
  std::optional<Power> rating = {};  ///< greatest power; none: not known
  std::string fittedIn = {};         ///< the instrument it is fitted in; empty: loose
  std::string note = {};

  friend bool operator==(const Resistor&, const Resistor&) = default;
};

/// One dial of a decade box: 0 to `positions` times `step`.
struct Decade {
  Resistance step{0};
  unsigned positions = 10;

  friend bool operator==(const Decade&, const Decade&) = default;
};

/// A box whose dials add up. Set to one value it is one resistor.
struct DecadeBox {
  std::string id;               ///< unique in a stock, among resistors too
  std::vector<Decade> decades;  ///< falling steps, in whole micro-ohms
  Resistance residual{0};       ///< with all dials at 0
  double tolerance = 1e-3;      ///< of what is set
  std::optional<Date> due = {};
  std::optional<Power> rating = {};
  std::string note = {};

  friend bool operator==(const DecadeBox&, const DecadeBox&) = default;
};

/// The value to reckon with: of the certificate, else the nominal.
Resistance valueOf(const Resistor& resistor);
/// Half width of what the value may be, as a share of it: of the certificate U, else the tolerance.
double toleranceOf(const Resistor& resistor);
/// With all dials at their last position.
Resistance greatestSetting(const DecadeBox& box);
/// Whether it was due before `today`.
bool isOverdue(const std::optional<Date>& due, Date today);

}  // namespace core
