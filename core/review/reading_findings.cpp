// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/span_edits.h"
#include "core/review/reviewed_plan.h"
#include "core/units/language.h"

namespace core {
namespace {

std::string spanText(const Setup& setup, SpanPlace place) {
  return place.kind == SpanPlace::Kind::Step ? stepText(setup, place.index) : say("a span of no step");
}

/// The first reading of `check` that begins before the one ahead of it has ended.
void findFirstOverlap(const Setup& setup, const Check& check, std::vector<Finding>& findings) {
  const std::vector<SpanPlace> spans = spansOf(check);  // by their beginnings
  for (std::size_t k = 1; k < spans.size(); ++k) {
    const Measured &earlier = spanAt(check, spans[k - 1]), &later = spanAt(check, spans[k]);
    if (*later.begin >= *earlier.end) continue;
    const SpanPlace about = spans[k].kind == SpanPlace::Kind::Step ? spans[k] : spans[k - 1];
    const bool isOfStep = about.kind == SpanPlace::Kind::Step;
    findings.push_back({FindingKind::ImpossibleValue,
                        Severity::Warning,
                        isOfStep ? std::optional(about.index) : std::nullopt,
                        {},
                        say("In the check {1}, {2} and {3} are read from the same time of the recording.",
                            {shown(check.name), spanText(setup, spans[k - 1]), spanText(setup, spans[k])}),
                        say("Only one step is held at a time, so one of the two readings is wrong."),
                        {}});
    return;
  }
}

}  // namespace

void findOverlappingReadings(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  for (const Check& check : plan.channel.checks) findFirstOverlap(plan.setup(), check, findings);
}

}  // namespace core
