// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "core/document/document.h"

// Edits of the spans that readings are taken from, as functions from value to value. Indices must exist and
// the check must be open. A span is a Measured with begin and end (the times of its first and last sample);
// who makes one has its mean worked out from the recording. Spans of a check never share a sample: `begin` of
// the later one is above `end` of the earlier one.

namespace core {

/// Where a span of a check is kept: as the reading of a step, or among the other levels.
struct SpanPlace {
  enum class Kind { Step, Other } kind = Kind::Step;
  std::size_t index = 0;  ///< of the step, or in Check::otherLevels

  friend auto operator<=>(const SpanPlace&, const SpanPlace&) = default;
};

/// The spans of a check in the order of time. Readings without begin and end (typed, pasted) are none.
std::vector<SpanPlace> spansOf(const Check& check);
const Measured& spanAt(const Check& check, SpanPlace place);
/// The span kept in `check` that is this one; none when there is none.
std::optional<SpanPlace> placeOf(const Check& check, const Measured& span);
/// Whether begin_s to end_s would share a sample with a span of `check` that is not among `except`.
bool isTaken(const Check& check, double begin_s, double end_s, std::span<const SpanPlace> except = {});

/// The span with other ends, mean and uncertainty; what was noted of it stays.
Channel withSpanMoved(Channel channel, std::size_t check, SpanPlace place, Measured moved);
/// Two spans in place of one; the step keeps the longer one (the first of two alike), the other is no
/// reading.
Channel withSpanSplit(Channel channel, std::size_t check, SpanPlace place, Measured first, Measured second);
/// One span in place of two neighbours. It is the reading of the first one's step, else of the second one's.
Channel withSpansJoined(Channel channel, std::size_t check, SpanPlace first, SpanPlace second,
                        Measured joined);
/// The span gone; a step it was the reading of has none.
Channel withSpanRemoved(Channel channel, std::size_t check, SpanPlace place);
/// A span that is no reading.
Channel withSpanAdded(Channel channel, std::size_t check, Measured added);
/// The span as the reading of `step`. The step's former span becomes one that is no reading; a reading
/// without a span gives way.
Channel withSpanGivenToStep(Channel channel, std::size_t check, SpanPlace place, std::size_t step);
/// The span as one that is no reading.
Channel withSpanTakenFromStep(Channel channel, std::size_t check, std::size_t step);
/// All spans given anew: `spanOfStep`, one a step, counts spansOf(check), each at most once. What is given to
/// no step is no reading. Readings without a span stay where a step is given none.
Channel withReadingsMatched(Channel channel, std::size_t check,
                            std::span<const std::optional<std::size_t>> spanOfStep);

/// The recording of `reference` lies at `path` now: in all checks that refer to it, closed ones too, since no
/// verdict depends on where it lies. Size and hash stay those of the file that was read.
Document withRecordingFoundAt(Document document, const RecordingReference& reference,
                              const std::string& path);

}  // namespace core
