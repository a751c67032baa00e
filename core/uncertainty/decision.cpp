// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/decision.h"

#include <cassert>
#include <cmath>

#include "core/uncertainty/propagation.h"
#include "core/uncertainty/random.h"
#include "core/units/key_names.h"
#include "core/units/language.h"

namespace core {
namespace {

using RuleNames = KeyNames<DecisionRule, decisionRuleCount>;
constexpr RuleNames ruleKeys = {{"simple", "shared_risk", "guarded", "conformity", "en_number"}};
constexpr RuleNames ruleNames = {{sayLater("simple acceptance"), sayLater("shared risk"),
                                  sayLater("guarded acceptance"), sayLater("conformity probability"),
                                  sayLater("En number")}};

/// The only comparison that passes anything: a value that is no finite number never does.
bool isWithin(double value, double limit) { return std::isfinite(value) && std::abs(value) <= limit; }

Outcome byLimit(double deviation, double limit) {
  return isWithin(deviation, limit) ? Outcome::Within : Outcome::Beyond;
}

Outcome byGuardBand(double deviation, double limit, double guardBand) {
  if (isWithin(deviation, limit - guardBand)) return Outcome::Within;
  return std::abs(deviation) > limit + guardBand ? Outcome::Beyond : Outcome::CannotTell;
}

Outcome byProbability(double probability, double conformity) {
  if (probability >= conformity) return Outcome::Within;
  return probability <= 1 - conformity ? Outcome::Beyond : Outcome::CannotTell;
}

/// Decides by the rules that look at the uncertainty u; `decided.expanded` is there.
Decided decideKnowing(double u, const Decision& decision, double deviation, double limit, Decided decided) {
  const double expanded = *decided.expanded;
  switch (decision.rule) {
    case DecisionRule::Simple:
      decided.outcome = byLimit(deviation, limit);
      break;
    case DecisionRule::SharedRisk:
      decided.outcome = expanded <= decision.greatestShare * limit ? byLimit(deviation, limit)
                        : std::abs(deviation) > limit + expanded   ? Outcome::Beyond
                                                                   : Outcome::CannotTell;
      break;
    case DecisionRule::Guarded:
      decided.guardBand = decision.guardFactor * expanded;
      decided.outcome = byGuardBand(deviation, limit, *decided.guardBand);
      break;
    case DecisionRule::Conformity:
      decided.probability = conformityProbability(deviation, limit, u);
      decided.outcome = byProbability(*decided.probability, decision.conformity);
      break;
    case DecisionRule::EnNumber:
      if (expanded == 0 && deviation != 0) break;
      decided.en = enNumber(deviation, expanded, 0);
      decided.outcome = byLimit(*decided.en, 1);
      break;
  }
  return decided;
}

}  // namespace

std::string_view decisionRuleKey(DecisionRule rule) { return ruleKeys.of(rule); }

std::optional<DecisionRule> decisionRuleFromKey(std::string_view key) { return ruleKeys.find(key); }

std::string_view decisionRuleName(DecisionRule rule) { return sayName(ruleNames.of(rule)); }

Result<void> checkDecision(const Decision& decision) {
  const std::string where = say("decision rule");
  if (!(decision.coverage > 0 && decision.coverage < 1)) {
    return Error{where, say("the coverage probability must lie between 0 and 1"),
                 say("Enter 0.9545 for k = 2, or the probability that your procedure asks for")};
  }
  if (!std::isfinite(decision.guardFactor) || decision.guardFactor < 0) {
    return Error{where, say("the guard factor must be a number that is not negative"),
                 say("Enter 1 for a guard band of U, or 0 for none")};
  }
  if (!(decision.conformity > 0.5 && decision.conformity < 1)) {
    return Error{where, say("the least probability of conformity must be above 0.5 and below 1"),
                 say("Enter 0.95, or the probability that your procedure asks for")};
  }
  if (!(decision.greatestShare > 0 && decision.greatestShare <= 1)) {
    return Error{where,
                 say("the greatest share of the uncertainty in the limit must be above 0 and at most 1"),
                 say("Enter 0.333 for a third of the limit")};
  }
  return {};
}

double conformityProbability(double deviation, double limit, double u) {
  assert(u >= 0);
  if (!std::isfinite(deviation)) return 0;
  if (u == 0) return isWithin(deviation, limit) ? 1 : 0;
  // With the size of the deviation both ends are on the side where shares below are small numbers, so that
  // the probability of a far deviation is no difference of two ones.
  const double size = std::abs(deviation);
  return normalProbability((limit - size) / u) - normalProbability(-(limit + size) / u);
}

Decided decide(const Decision& decision, double deviation, double limit,
               const std::optional<double>& standardUncertainty, const std::optional<double>& dof) {
  assert(checkDecision(decision));
  Decided decided;
  if (standardUncertainty && std::isfinite(*standardUncertainty)) {
    // One that overflows is as good as unknown: E_n would come to 0 with it.
    const double expanded = coverageFactorFor(decision.coverage, dof) * *standardUncertainty;
    if (std::isfinite(expanded)) decided.expanded = expanded;
  }
  const bool known = decided.expanded.has_value();
  if (!std::isfinite(deviation)) {
    decided.outcome = Outcome::Beyond;
  } else if (!std::isfinite(limit) && decision.rule != DecisionRule::EnNumber) {
    decided.outcome = Outcome::CannotTell;  // a limit that overflowed would let everything pass
  } else if (known) {
    decided = decideKnowing(*standardUncertainty, decision, deviation, limit, decided);
  } else if (decision.rule == DecisionRule::Simple) {
    decided.outcome = byLimit(deviation, limit);
  }
  return decided;
}

}  // namespace core
