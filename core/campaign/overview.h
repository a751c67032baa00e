// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/compare/comparison.h"

namespace core {

/// One channel among hundreds: what decides whether somebody has to look at it.
struct OverviewRow {
  std::size_t channel = 0;  ///< index in the document
  std::string latest;       ///< name of the latest check with readings; empty: none
  std::optional<Date> day;  ///< of that check
  Verdict verdict = Verdict::NotJudged;
  /// Largest of |deviation| over limit of all steps of the latest check; above 1 something is off.
  std::optional<double> worst;
  std::optional<std::size_t> worstStep;
  std::optional<double> gain;           ///< of the latest check, measured over expected
  Change change = Change::NotCompared;  ///< of the latest check against the one before it
  std::optional<double> gainChange;     ///< share
  std::size_t openRemarks = 0;          ///< of all checks, not settled
  bool open = false;                    ///< the latest check is not closed
  bool overdue = false;                 ///< a resistor or the instrument is overdue on `today`
  std::string status;                   ///< in words

  /// The order of "worst first": failing, changed, cannot tell, not judged, not checked, harmless, passing;
  /// within one of these by `worst`.
  int urgency = 0;  ///< 0 is the worst
};

/// Of channel `index`; `evaluation` is that of the channel.
OverviewRow overviewRow(const Document& document, std::size_t index, const ChannelEvaluation& evaluation,
                        Date today);

/// How many channels are in which state.
struct OverviewTally {
  std::size_t channels = 0, pass = 0, fail = 0, cannotTell = 0, notJudged = 0, notChecked = 0;
  std::size_t unchanged = 0, changed = 0, remarks = 0;
};
OverviewTally tallyOf(const std::vector<OverviewRow>& rows);

}  // namespace core
