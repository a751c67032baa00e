// SPDX-License-Identifier: GPL-3.0-or-later
#include <utility>

#include "core/document/span_edits.h"
#include "core/review/reviewed_plan.h"
#include "core/units/language.h"
#include "core/units/notation.h"

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

bool endsBeforeItBegins(const Check& check, SpanPlace place) {
  return *spanAt(check, place).end < *spanAt(check, place).begin;
}

/// A warning about the span `about` of `check`.
Finding readingFinding(const Channel& channel, const Check& check, SpanPlace about, std::string what,
                       std::string why) {
  const bool isOfPlan = isPlanned(channel.setup, about) && !check.closedWith;
  return {FindingKind::ImpossibleValue,
          Severity::Warning,
          isOfPlan ? std::optional(about.index) : std::nullopt,
          {},
          std::move(what),
          std::move(why),
          {}};
}

/// Such a span takes no time, so that neither the strip nor a comparison with others has a place for it.
void findReversed(const Channel& channel, const Check& check, std::vector<Finding>& findings) {
  for (const SpanPlace span : spansOf(check)) {
    if (!endsBeforeItBegins(check, span)) continue;
    const Measured& reading = spanAt(check, span);
    findings.push_back(readingFinding(
        channel, check, span,
        say("In the check {1}, {2} is read from {3} to {4}: it ends before it begins.",
            {shown(check.name), spanText(setupOf(channel, check), span),
             formatQuantity(reading.begin->base(), UnitFamily::Duration),
             formatQuantity(reading.end->base(), UnitFamily::Duration)}),
        say("No samples lie there, so the recording strip cannot show what the reading was taken from. Read "
            "the step again, or correct its times in the file.")));
  }
}

/// The first reading of `check` that begins before the one ahead of it has ended.
void findFirstOverlap(const Channel& channel, const Check& check, std::vector<Finding>& findings) {
  const Setup& setup = setupOf(channel, check);
  std::vector<SpanPlace> spans = spansOf(check);  // by their beginnings
  std::erase_if(spans, [&](SpanPlace span) { return endsBeforeItBegins(check, span); });
  for (std::size_t k = 1; k < spans.size(); ++k) {
    const SpanPlace earlier = spans[k - 1], later = spans[k];
    if (*spanAt(check, later).begin >= *spanAt(check, earlier).end) continue;
    const SpanPlace about = later.kind == SpanPlace::Kind::Step ? later : earlier;
    findings.push_back(
        readingFinding(channel, check, about,
                       say("In the check {1}, {2} and {3} are read from the same time of the recording.",
                           {shown(check.name), spanText(setup, earlier), spanText(setup, later)}),
                       say("Only one step is held at a time, so one of the two readings is wrong.")));
    return;
  }
}

}  // namespace

void findOverlappingReadings(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  for (const Check& check : plan.channel.checks) {
    findReversed(plan.channel, check, findings);
    findFirstOverlap(plan.channel, check, findings);
  }
}

}  // namespace core
