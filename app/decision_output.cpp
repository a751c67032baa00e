// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/decision_output.h"

namespace app {

using core::DecisionRule;

Json decisionJson(const core::Decision& decision) {
  Json json{{"rule", core::decisionRuleKey(decision.rule)}, {"coverage", jsonNumber(decision.coverage)}};
  if (decision.rule == DecisionRule::Guarded) json["guard_factor"] = jsonNumber(decision.guardFactor);
  if (decision.rule == DecisionRule::Conformity) json["conformity"] = jsonNumber(decision.conformity);
  if (decision.rule == DecisionRule::SharedRisk) json["greatest_share"] = jsonNumber(decision.greatestShare);
  return json;
}

void addDecided(Json& json, const core::Decision& decision, const std::optional<core::Decided>& decided) {
  const core::Decided known = decided.value_or(core::Decided{});
  json["expanded_uncertainty"] = jsonNumber(known.expanded);
  if (decision.rule == DecisionRule::Guarded) json["guard_band"] = jsonNumber(known.guardBand);
  if (decision.rule == DecisionRule::Conformity)
    json["conformity_probability"] = jsonNumber(known.probability);
  if (decision.rule == DecisionRule::EnNumber) json["en_number"] = jsonNumber(known.en);
}

}  // namespace app
