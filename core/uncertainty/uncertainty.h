// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/units/result.h"

namespace core {

/// How the possible values of an input are spread. Normal becomes Student's t with finite degrees of freedom.
enum class Distribution : std::uint8_t { Normal, Rectangular, Triangular, Arcsine };
inline constexpr std::size_t distributionCount = 4;

/// What the number in a statement of uncertainty is.
enum class Statement : std::uint8_t {
  Standard,   ///< the standard uncertainty u
  Expanded,   ///< U = k u, as a certificate states it
  Tolerance,  ///< half the width between two limits
};
inline constexpr std::size_t statementCount = 3;

/// What is known of how far an input may be from its value.
struct Uncertainty {
  Statement statement = Statement::Tolerance;
  double amount = 0;          ///< in the base unit of the input, or a share of its value's magnitude
  bool relative = false;      ///< whether `amount` is a share
  double coverageFactor = 2;  ///< k: of an expanded uncertainty, and of a tolerance with normal distribution
  Distribution distribution = Distribution::Rectangular;  ///< of a tolerance; the others are normal
  std::optional<double> degreesOfFreedom = {};            ///< none: infinite, it is known for certain
  std::string group =
      {};  ///< inputs of one group are correlated (same decade box, lot, cable); empty: of none

  friend bool operator==(const Uncertainty&, const Uncertainty&) = default;
};

/// Keys in files: "normal", "rectangular", "triangular", "arcsine"; "standard", "expanded", "tolerance".
std::string_view distributionKey(Distribution distribution);
std::optional<Distribution> distributionFromKey(std::string_view key);
std::string_view statementKey(Statement statement);
std::optional<Statement> statementFromKey(std::string_view key);

/// Fails when the amount is negative or no finite number, the coverage factor is not above zero, or the
/// degrees of freedom are not above zero. `where` names the input.
Result<void> checkUncertainty(const Uncertainty& uncertainty, const std::string& where);

/// The distribution that `uncertainty` means: normal unless it is a tolerance.
Distribution distributionOf(const Uncertainty& uncertainty);

/// Standard uncertainty of an input of this value, in its base unit: u, U/k, or half width over sqrt(3)
/// (rectangular), sqrt(6) (triangular), sqrt(2) (arcsine), k (normal). JCGM 100:2008, 4.3 and table of
/// JCGM 101:2008, 6.4.
double standardUncertainty(const Uncertainty& uncertainty, double value);

}  // namespace core
