// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace core {

/// What a test for difference and a test for equivalence say together. "Not significant" is never
/// "unchanged".
enum class Change : std::uint8_t {
  Unchanged,    ///< shown to lie within the margin
  Harmless,     ///< shown to differ, and shown to lie within the margin
  Changed,      ///< shown to differ, and not shown to lie within the margin
  CannotTell,   ///< neither shown: the uncertainty is too large for the margin
  NotCompared,  ///< something needed is missing or differs
};

/// Keys in files: "unchanged", "harmless", "changed", "cannot_tell", "not_compared".
std::string_view changeKey(Change change);
/// For people, to be given to `say`: "unchanged", "changed within margin", "changed", "cannot tell", "not
/// compared".
std::string_view changeName(Change change);

/// A difference between two checks against a margin that was fixed beforehand.
///
/// Two one-sided tests at level 0.05 (TOST; Schuirmann 1987, from memory): within the margin when the
/// interval of probability 0.90 about `value` lies inside +-margin. Different when the interval of
/// probability 0.95 leaves out 0.
struct Difference {
  double value = 0;                     ///< later less earlier
  std::optional<double> standard;       ///< standard uncertainty; what both checks share is taken out
  std::optional<double> dof;            ///< none: infinite
  double margin = 0;                    ///< not negative
  std::optional<double> expanded;       ///< U at the coverage of the decision
  std::optional<double> halfWidth90;    ///< of the interval that equivalence looks at
  std::optional<double> halfWidth95;    ///< of the interval that difference looks at
  std::optional<double> pDifferent;     ///< two-sided p of "no difference"
  std::optional<double> pEquivalent;    ///< larger one-sided p of "beyond the margin"
  std::optional<double> en;             ///< value / U, signed; none with U = 0
  Change change = Change::NotCompared;  ///< CannotTell without a standard uncertainty
};

/// Tests `value` whose standard uncertainty is known (z, `dof` none) or estimated (t with `dof`, whole or
/// not). A standard uncertainty of 0 is known: then the value itself decides. A value that is no finite
/// number is not compared; neither is any value against a margin that is no number or below 0. `coverage`
/// (above 0, below 1) is that of U and E_n.
Difference differenceOf(double value, const std::optional<double>& standard, const std::optional<double>& dof,
                        double margin, double coverage);

/// Of which parts the variance of a difference consists when both checks are repeated and averaged.
struct Spread {
  double averaging = 0;  ///< own scatter of the readings: falls as 1/n
  double lasting = 0;    ///< what repeating leaves as it is
};
inline constexpr unsigned mostRepeatsOfChecks = 1000;  ///< more is no plan

/// How many times both checks must be made for `open` to be told, if its value stays what it is: the first n
/// from 2 on whose uncertainty lets one of the two tests answer. Degrees of freedom, when they come from the
/// scatter alone, grow with n. None when no number does, or only one above `mostRepeatsOfChecks`.
std::optional<unsigned> repeatsToTell(const Difference& open, const Spread& spread);

}  // namespace core
