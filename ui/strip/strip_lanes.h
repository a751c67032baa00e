// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "core/document/span_edits.h"
#include "core/levels/sample_span.h"
#include "core/plan/prediction.h"
#include "ui/recording/recording_store.h"
#include "ui/session.h"

namespace ui {

/// A span of a check as the strip draws it.
struct StripSpan {
  core::SpanPlace place;
  core::SampleSpan samples;  ///< not empty
  QString name;              ///< "4 +R1" with the step's number, or "no step"
  QString mean;              ///< with its sign, in the lane's unit
  double value = 0;          ///< of that mean
  core::Polarity polarity = core::Polarity::None;

  bool isOther() const { return place.kind == core::SpanPlace::Kind::Other; }
};

/// A channel whose check has the recording on show.
struct StripLane {
  std::size_t channel = 0;  ///< index in the document
  std::size_t check = 0;
  std::optional<std::size_t> column;  ///< of the recording; none: it has no column of that name
  QString name;
  QString unit;
  int decimals = 3;  ///< that readings are shown with
  bool isClosed = false;
  bool isChosen = false;         ///< the chosen channel's: its spans are edited
  std::vector<StripSpan> spans;  ///< in the order of time

  const StripSpan* at(core::SpanPlace place) const;
};

/// Of the chosen channel and, with `all`, of the document's others that have a check of the same name with
/// the same recording; in the document's order.
std::vector<StripLane> stripLanes(const Session& session, const OpenRecording& open, bool all);

/// Another check of the chosen channel, whose curve is drawn with the chosen one's.
struct ComparedCurve {
  std::shared_ptr<const OpenRecording> open;
  std::size_t column = 0;
  QString name;        ///< of the check
  double later_s = 0;  ///< its times less those that they are shown at
};

/// The check that is compared with the chosen one, moved in time so that the spans of the first step that
/// both have begin together, or both recordings when there is none. None while its recording is not in
/// `store`.
std::optional<ComparedCurve> comparedCurve(const Session& session, const RecordingStore& store,
                                           const OpenRecording& open);

/// The samples whose times lie from begin_s to end_s, ends that were rounded in a file included; empty when
/// there are none.
core::SampleSpan samplesBetween(const core::TimeAxis& time, double begin_s, double end_s);

}  // namespace ui
