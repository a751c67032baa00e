// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/document/document.h"
#include "core/search/resistor_search.h"
#include "core/units/date.h"

// What the command `resistors` is asked for: the options as written, and the search that they make.

namespace app {

/// Options as they are written; quantities are read once the channel is known.
struct ResistorOptions {
  std::string file, channel;
  std::string levels, greatest, range, shares, sides = "both";
  unsigned count = 3;
  std::size_t positions = 3, keep = 10;
  std::string fitted, series, stock, from, to, tolerance = "0.1 %", miss = "level";
  std::string today;
  bool together = false, atTolerance = false, withOverdue = false, json = false;
  unsigned threads = 0;
};

/// A search that is ready to run.
struct AskedResistors {
  const core::Channel* channel = nullptr;
  core::Date day = {};  ///< that due dates are compared with
  core::ResistorSearch search;
  std::vector<core::Candidate> candidates;
};

/// Reads the options for one channel of `document`, which has to outlive the result. Of an error `where` is
/// the option or file at fault.
core::Result<AskedResistors> askedOf(const ResistorOptions& options, const core::Document& document);

}  // namespace app
