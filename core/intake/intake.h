// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stop_token>
#include <vector>

#include "core/assess/level_match.h"
#include "core/document/document.h"
#include "core/levels/levels.h"
#include "core/recording/recording.h"
#include "core/units/progress.h"

// From a recording to checks: which column is whose, what was found in it, and the channel with its check.

namespace core {

/// A channel of the document and the column of a recording that is its.
struct ColumnUse {
  std::size_t channel = 0;  ///< index in the document
  std::size_t column = 0;   ///< index in the recording

  friend bool operator==(const ColumnUse&, const ColumnUse&) = default;
};

/// The columns that belong to channels, in the document's order: the column a channel remembers
/// (Channel::recordingColumn), else the one of the channel's name.
std::vector<ColumnUse> columnUses(const Document& document, const Recording& recording);

/// What one column says about one channel's plan. `match` fails where the levels cannot be compared with the
/// plan: other unit, steps that cannot be predicted, no level found.
struct ChannelFind {
  ColumnUse use;
  Result<std::vector<Level>> levels = std::vector<Level>{};
  Result<LevelMatch> match = LevelMatch{};
};

ChannelFind findInColumn(const Document& document, const Recording& recording, ColumnUse use,
                         const std::stop_token& stop = {}, const Progress& progress = {});

/// Which of the readings of a find is taken: a run, and 0 for its best reading or k for the k-th of the
/// others.
struct RunChoice {
  std::size_t run = 0;
  std::size_t other = 0;

  friend bool operator==(const RunChoice&, const RunChoice&) = default;
};

/// The chosen run of a find that has it.
const RunMatch& chosenRun(const LevelMatch& match, RunChoice choice);

/// `channel` with an open check at the end that holds the chosen run's readings, and as `otherLevels` the
/// levels of the recording that are no reading. `check` brings name, date, person and the reference to the
/// recording; its name is made unique. Without a remark it gets one that says what is not as planned in the
/// run. The channel remembers the column when it is not called like it.
Channel withCheckTaken(Channel channel, const ChannelFind& find, RunChoice choice, const Recording& recording,
                       Check check);

}  // namespace core
