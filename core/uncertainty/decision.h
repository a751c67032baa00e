// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

#include "core/units/result.h"

namespace core {

/// How a measured deviation becomes a decision when it has an uncertainty. Names and clauses follow JCGM
/// 106:2012 (clause numbers from memory).
enum class DecisionRule : std::uint8_t {
  Simple,      ///< within the limit passes, whatever the uncertainty (8.2, uncertainty not looked at)
  SharedRisk,  ///< simple acceptance, provided the expanded uncertainty is small beside the limit (8.2)
  Guarded,     ///< limit less a guard band passes, limit plus guard band fails, between cannot tell (8.3)
  Conformity,  ///< by the probability that the true deviation is within the limit (clause 7)
  EnNumber,    ///< deviation against its own expanded uncertainty; the limit plays no part (ISO 13528)
};
inline constexpr std::size_t decisionRuleCount = 5;

/// The rule and its numbers; kept with the plan, and so with every closed check.
struct Decision {
  DecisionRule rule = DecisionRule::Simple;
  double coverage = 0.9545;  ///< probability of all expanded uncertainties; k = 2 for a normal one
  double guardFactor = 1;    ///< guard band as a multiple of U, not negative
  double conformity = 0.95;  ///< least probability of conformity that passes, above 0.5 and below 1
  double greatestShare =
      1.0 / 3.0;  ///< shared risk: U may be at most this share (above 0, to 1) of the limit

  friend bool operator==(const Decision&, const Decision&) = default;
};

enum class Outcome : std::uint8_t { Within, Beyond, CannotTell };

/// What was decided, with the numbers that decided it; those that the rule does not use are absent.
struct Decided {
  Outcome outcome = Outcome::CannotTell;
  std::optional<double> expanded;     ///< U of the deviation, whatever the rule; absent when it is not known
  std::optional<double> guardBand;    ///< same unit
  std::optional<double> probability;  ///< of conformity, 0 to 1
  std::optional<double> en;           ///< signed as the deviation
};

/// Keys in files: "simple", "shared_risk", "guarded", "conformity", "en_number".
std::string_view decisionRuleKey(DecisionRule rule);
std::optional<DecisionRule> decisionRuleFromKey(std::string_view key);
/// For people: "simple acceptance", "shared risk", "guarded acceptance", "conformity probability", "En
/// number".
std::string_view decisionRuleName(DecisionRule rule);

/// Fails when a number of `decision` is out of its range, naming it, whether its rule uses it or not.
Result<void> checkDecision(const Decision& decision);

/// Probability that the true value lies within +-limit when it is normal about `deviation` with standard
/// uncertainty u (JCGM 106:2012, 7.4). u = 0: 1 or 0; of no finite deviation: 0. Far beyond the limit, where
/// it is minute, it keeps its leading digits; elsewhere it is right to 1e-15.
double conformityProbability(double deviation, double limit, double u);

/// Decides on a deviation whose permitted range is -limit to +limit, ends included; with U = k u from
/// `decision.coverage`:
/// - Simple: |deviation| <= limit is Within, more is Beyond.
/// - SharedRisk: the same, but with U > greatestShare x limit it cannot tell, unless the deviation is beyond
///   the limit by more than U: no risk is left to be shared.
/// - Guarded, g = guardFactor x U: |deviation| <= limit - g is Within, > limit + g is Beyond, between cannot
///   tell. With g > limit nothing can be Within.
/// - Conformity: a probability of `conformity` or more is Within, 1 - `conformity` or less is Beyond, between
///   cannot tell. It takes the deviation as normal; degrees of freedom do not enter.
/// - EnNumber: |deviation / U| <= 1 is Within, more is Beyond. With U = 0 a deviation of 0 is Within; any
///   other cannot tell, for there is nothing to compare it with, and `en` is absent.
/// `standardUncertainty` and `dof` are those of the deviation. A deviation that is no finite number is
/// Beyond. Only Simple decides without a (finite) uncertainty; the others cannot tell. An uncertainty of 0 is
/// known: a zero reference has none against itself, and the first four rules then decide by the limit alone.
/// `decision` must have been checked.
Decided decide(const Decision& decision, double deviation, double limit,
               const std::optional<double>& standardUncertainty, const std::optional<double>& dof);

}  // namespace core
