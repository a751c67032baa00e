// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/plan/setup.h"
#include "core/units/quantity.h"

namespace core {

/// What the instrument showed at one step: typed, pasted, or the mean of a level in a recording.
struct Measured {
  Reading mean;                        ///< in the channel's unit, as shown (not zeroed by us)
  std::optional<Reading> uncertainty;  ///< standard uncertainty of the mean, when known
  std::optional<Duration> begin;       ///< where the level lies in the recording
  std::optional<Duration> end;
  std::string note = {};  ///< what was seen while it was taken

  friend bool operator==(const Measured&, const Measured&) = default;
};

/// A recording that readings were taken from; the recording itself stays where it is.
struct RecordingReference {
  std::string path;  ///< relative to the document, with '/' between folders
  std::uint64_t size_bytes = 0;
  std::string sha256;  ///< 64 lower-case hexadecimal digits
  std::string column;  ///< the column that was read
  std::string readAs =
      {};  ///< what the user decided about the file's layout (textOf(LayoutChoices)); mostly empty

  friend bool operator==(const RecordingReference&, const RecordingReference&) = default;
};

/// What it was like around the article; what was not noted is absent.
struct Ambient {
  std::optional<Temperature> air = {};
  std::optional<double> humidity = {};  ///< relative, 0 to 1

  friend bool operator==(const Ambient&, const Ambient&) = default;
};

/// What a reader of the record remarked about a check. No part of what was measured or judged.
struct Remark {
  std::optional<std::size_t> step;  ///< it is pinned to; none: to the check as a whole
  std::string person;
  std::string time;  ///< ISO 8601, UTC, seconds: "2026-11-26T10:15:00Z"
  std::string text;
  bool settled = false;

  friend bool operator==(const Remark&, const Remark&) = default;
};

/// One execution of a channel's sequence: pre-test, post-test, or any dated one.
///
/// An open check follows its channel. Closing it keeps the set-up that it was judged by, so that
/// later edits of the channel never change a past verdict.
struct Check {
  std::string name = "pre-test";  ///< unique within a channel
  std::string date;               ///< ISO 8601, may be empty
  std::string person;             ///< who ran it
  std::string remark;
  std::optional<RecordingReference> recording;
  std::vector<std::optional<Measured>> readings;  ///< one a step
  /// Levels of the recording that are no reading, in the order of time: each has its begin and end.
  std::vector<Measured> otherLevels = {};
  std::shared_ptr<const Setup> closedWith = {};  ///< none while the check is open
  Ambient ambient = {};
  std::vector<Remark> remarks = {};  ///< in the order they were made

  friend bool operator==(const Check&, const Check&) = default;
};

/// Whether a step of it was read.
inline bool hasReading(const Check& check) {
  return std::any_of(check.readings.begin(), check.readings.end(),
                     [](const auto& reading) { return reading.has_value(); });
}

}  // namespace core
