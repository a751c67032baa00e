// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "core/units/result.h"

namespace core {

/// How a measured deviation becomes a decision when it has an uncertainty. Names follow JCGM 106:2012.
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
  double coverage = 0.9545;          ///< probability of all expanded uncertainties; k = 2 for a normal one
  double guardFactor = 1;            ///< guard band as a multiple of U
  double conformity = 0.95;          ///< least probability of conformity that passes
  double greatestShare = 1.0 / 3.0;  ///< shared risk: U may be at most this share of the limit

  friend bool operator==(const Decision&, const Decision&) = default;
};

enum class Outcome : std::uint8_t { Within, Beyond, CannotTell };

/// What was decided, with the numbers that decided it; those that the rule does not use are absent.
struct Decided {
  Outcome outcome = Outcome::CannotTell;
  double expanded = 0;                ///< U of the deviation
  std::optional<double> guardBand;    ///< same unit
  std::optional<double> probability;  ///< of conformity, 0 to 1
  std::optional<double> en;
};

/// Keys in files: "simple", "shared_risk", "guarded", "conformity", "en_number".
std::string_view decisionRuleKey(DecisionRule rule);
std::optional<DecisionRule> decisionRuleFromKey(std::string_view key);
/// For people: "simple acceptance", "shared risk", "guarded acceptance", "conformity probability", "En
/// number".
std::string_view decisionRuleName(DecisionRule rule);

/// Fails when a number of `decision` is out of its range, naming it.
Result<void> checkDecision(const Decision& decision);

/// Probability that the true value lies within +-limit when it is normal about `deviation` with standard
/// uncertainty u (JCGM 106:2012, 7.2). u = 0: 1 or 0.
double conformityProbability(double deviation, double limit, double u);

/// Decides on a deviation whose permitted range is -limit to +limit. `standardUncertainty` and `dof` are
/// those of the deviation. A deviation that is no finite number is Beyond. Only Simple decides without an
/// uncertainty (`standardUncertainty` none); the others cannot tell. `decision` must have been checked.
Decided decide(const Decision& decision, double deviation, double limit,
               const std::optional<double>& standardUncertainty, const std::optional<double>& dof);

}  // namespace core
