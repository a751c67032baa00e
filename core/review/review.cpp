// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/review.h"

#include <algorithm>
#include <cassert>

#include "core/review/reviewed_plan.h"
#include "core/units/key_names.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr KeyNames<Severity, severityCount> severities = {
    {sayLater("note"), sayLater("warning"), sayLater("fault")}};
constexpr KeyNames<FindingKind, findingKindCount> kinds = {{"cannot_predict",
                                                            "range_overrun",
                                                            "below_uncertainty",
                                                            "duplicate",
                                                            "gap",
                                                            "unbalanced_polarities",
                                                            "missing_zero",
                                                            "hold_too_short",
                                                            "settle_too_short",
                                                            "shunt_power",
                                                            "power_density",
                                                            "opposite_polarity",
                                                            "shunt_through_leads",
                                                            "overdue_resistor",
                                                            "part_changed",
                                                            "shortcut_error",
                                                            "wiring",
                                                            "impossible_value",
                                                            "nothing_to_close",
                                                            "figure_not_shown",
                                                            "hookup"}};

bool comesBefore(const Finding& a, const Finding& b) {
  if (a.severity != b.severity) return a.severity > b.severity;
  const auto place = [](const Finding& finding) { return finding.step.value_or(SIZE_MAX); };
  return place(a) < place(b);
}

}  // namespace

std::string_view severityWord(Severity severity) { return sayName(severities.of(severity)); }

std::string_view findingKindKey(FindingKind kind) { return kinds.of(kind); }

std::vector<Finding> review(const Channel& channel, const ChannelEvaluation& evaluation, const Stock& stock,
                            Date today) {
  assert(evaluation.prediction.steps.size() == channel.setup.sequence.size());
  const ReviewedPlan plan = reviewedPlan(channel, evaluation, stock, today);
  std::vector<Finding> findings;
  findNothingToClose(plan, findings);
  findImpossibleValues(plan, findings);
  findOverlappingReadings(plan, findings);
  findHookup(plan, findings);
  findUnpredictable(plan, findings);
  findResistorTroubles(plan, findings);
  findDuplicates(plan, findings);
  findShortTimes(plan, findings);
  findWiringFaults(plan, findings);
  if (evaluation.prediction.zero) {
    findRangeOverruns(plan, findings);
    findBelowUncertainty(plan, findings);
    findOppositePolarity(plan, findings);
    findMissingZeros(plan, findings);
    findGaps(plan, findings);
    findUnbalanced(plan, findings);
    findHeat(plan, findings);
    findShuntsThroughLeads(plan, findings);
    findShortcutErrors(plan, findings);
    findFiguresNotShown(plan, findings);
  }
  std::stable_sort(findings.begin(), findings.end(), comesBefore);
  return findings;
}

}  // namespace core
