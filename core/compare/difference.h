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
  std::optional<double> halfWidth90;    ///< of the interval that equivalence looks at
  std::optional<double> halfWidth95;    ///< of the interval that difference looks at
  std::optional<double> pDifferent;     ///< two-sided p of "no difference"
  std::optional<double> pEquivalent;    ///< larger one-sided p of "beyond the margin"
  std::optional<double> en;             ///< value / U at the coverage of the decision, signed
  Change change = Change::NotCompared;  ///< CannotTell without a standard uncertainty
};

}  // namespace core
