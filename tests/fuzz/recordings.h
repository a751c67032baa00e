// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <set>

#include "core/recording/layout.h"
#include "core/recording/recording.h"
#include "tests/fuzz/target.h"

// What must hold of every recording that is read, whatever the file (core/recording/recording.h).

namespace fuzz {

inline void mustBeSound(const core::Recording& recording) {
  must(recording.time.size() > 0, "a recording has samples");
  double last = -HUGE_VAL;
  for (std::size_t k = 0; k < recording.time.size(); ++k) {
    const double time = recording.time[k];
    must(std::isfinite(time) && time >= last, "times are finite and never fall");
    last = time;
  }
  std::size_t missing = 0;
  std::set<std::string> names;
  for (const core::Column& column : recording.columns) {
    must(column.values.size() == recording.time.size(), "columns are as long as the time");
    must(!column.name.empty() && names.insert(column.name).second, "names are there and differ");
    must(!core::firstInvalidUtf8(column.name + column.unit), "names and units are UTF-8");
    for (const double value : column.values) {
      must(!std::isinf(value), "values are finite or missing");
      missing += std::isnan(value) ? 1 : 0;
    }
  }
  must(missing == recording.cellsMissing, "missing cells are counted");
  must(recording.missing.size() == std::min(missing, core::greatestSkippedListed), "missing cells are named");
  must(recording.skipped.size() == std::min(recording.linesSkipped, core::greatestSkippedListed),
       "skipped lines are named");
}

inline void mustBeSound(const core::Preview& preview) {
  must(preview.rows.size() <= core::greatestPreviewRows, "a preview is short");
  for (const core::PreviewRow& row : preview.rows)
    for (const std::string& cell : row.cells) must(!core::firstInvalidUtf8(cell), "a preview is UTF-8");
  for (const auto* sentences : {&preview.doubts, &preview.leftOut})
    for (const std::string& sentence : *sentences)
      must(!core::firstInvalidUtf8(sentence), "doubts are UTF-8");
}

/// The choices that the first line of `input` says, taken off it; none when it says none.
inline core::LayoutChoices choicesOff(std::string_view& input) {
  const std::string_view words = firstLineOff(input);
  const auto choices = core::choicesFromText(words);
  if (!choices) {
    mustBeTold(choices.error(), words);
    return {};
  }
  const auto back = core::choicesFromText(core::textOf(*choices));
  must(back && *back == *choices, "choices come back");
  return *choices;
}

}  // namespace fuzz
