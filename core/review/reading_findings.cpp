// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/span_edits.h"
#include "core/review/reviewed_plan.h"
#include "core/units/language.h"

namespace core {
namespace {

/// A check may have readings of more steps than its plan has by now.
bool isPlanned(const Setup& setup, SpanPlace place) {
  return place.kind == SpanPlace::Kind::Step && place.index < setup.sequence.size();
}

std::string spanText(const Setup& setup, SpanPlace place) {
  if (place.kind != SpanPlace::Kind::Step) return say("a span of no step");
  return isPlanned(setup, place) ? stepText(setup, place.index)
                                 : say("step {1}", {std::to_string(place.index + 1)});
}

/// The first reading of `check` that begins before the one ahead of it has ended.
void findFirstOverlap(const Channel& channel, const Check& check, std::vector<Finding>& findings) {
  const Setup& setup = setupOf(channel, check);
  const std::vector<SpanPlace> spans = spansOf(check);  // by their beginnings
  for (std::size_t k = 1; k < spans.size(); ++k) {
    const SpanPlace earlier = spans[k - 1], later = spans[k];
    if (*spanAt(check, later).begin >= *spanAt(check, earlier).end) continue;
    const SpanPlace about = later.kind == SpanPlace::Kind::Step ? later : earlier;
    const bool isOfPlan = isPlanned(channel.setup, about) && !check.closedWith;
    findings.push_back({FindingKind::ImpossibleValue,
                        Severity::Warning,
                        isOfPlan ? std::optional(about.index) : std::nullopt,
                        {},
                        say("In the check {1}, {2} and {3} are read from the same time of the recording.",
                            {shown(check.name), spanText(setup, earlier), spanText(setup, later)}),
                        say("Only one step is held at a time, so one of the two readings is wrong."),
                        {}});
    return;
  }
}

}  // namespace

void findOverlappingReadings(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  for (const Check& check : plan.channel.checks) findFirstOverlap(plan.channel, check, findings);
}

}  // namespace core
