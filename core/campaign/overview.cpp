// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/campaign/overview.h"

namespace core {

OverviewRow overviewRow(const Document&, std::size_t index, const ChannelEvaluation& evaluation, Date) {
  OverviewRow row;
  row.channel = index;
  row.verdict = evaluation.verdict;
  row.status = evaluation.status;
  return row;
}

OverviewTally tallyOf(const std::vector<OverviewRow>& rows) {
  OverviewTally tally;
  tally.channels = rows.size();
  return tally;
}

}  // namespace core
