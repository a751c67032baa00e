// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/compare/comparison.h"

namespace core {

/// One channel among hundreds: what decides whether somebody has to look at it.
struct OverviewRow {
  std::size_t channel = 0;                ///< index in the document
  std::optional<std::size_t> check;       ///< the latest one with a reading; none: not checked
  std::optional<std::size_t> comparedTo;  ///< the one before it with a reading
  std::string latest;                     ///< name of `check`; empty: none
  std::optional<Date> day;                ///< of that check
  Verdict verdict = Verdict::NotJudged;
  /// Largest of |deviation| over limit of all steps of the latest check; above 1 something is off.
  std::optional<double> worst;
  std::optional<std::size_t> worstStep;
  std::optional<ChainGain> gain;         ///< of the latest check
  Change change = Change::NotCompared;   ///< of the latest check against the one before it
  std::optional<Difference> gainChange;  ///< a share
  std::size_t openRemarks = 0;           ///< of all checks, not settled
  bool open = false;                     ///< the latest check is not closed
  bool overdue = false;                  ///< a resistor or the instrument is overdue on `today`
  std::string status;                    ///< in words

  /// The order of "worst first": failing, changed, cannot tell (pass or change), not judged, not checked,
  /// harmless, passing; within one of these by `worst`.
  int urgency = 0;  ///< 0 is the worst
};
inline constexpr int urgencyCount = 7;
/// "fails", "changed", "cannot tell", "not judged", "not checked", "changed within the margin", "passes".
std::string urgencyName(int urgency);

/// The numbers alone.
std::optional<double> gainOf(const OverviewRow& row);
std::optional<double> gainChangeOf(const OverviewRow& row);

/// Of channel `index`; `evaluation` is that of the channel.
OverviewRow overviewRow(const Document& document, std::size_t index, const ChannelEvaluation& evaluation,
                        Date today);

/// How many channels are in which state. Each is in one of the first line's.
struct OverviewTally {
  std::size_t channels = 0, pass = 0, fail = 0, cannotTell = 0, notJudged = 0, notChecked = 0;
  std::size_t unchanged = 0, changed = 0, remarks = 0;
  std::size_t harmless = 0, changeCannotTell = 0, overdue = 0, open = 0;
};
OverviewTally tallyOf(const std::vector<OverviewRow>& rows);

/// Which rows are wanted; what is not said lets all pass.
struct OverviewFilter {
  /// Words between blanks, all of which stand somewhere in name, group, template or status of the channel;
  /// capitals do not matter.
  std::string text = {};
  std::optional<Verdict> verdict = {};  ///< of channels that are checked
  std::optional<Change> change = {};
  std::optional<std::string> group = {};  ///< empty: channels without a group
  std::optional<int> urgency = {};
  bool unchecked = false;  ///< only those without a reading
  bool remarks = false;    ///< only those with an open remark
  bool overdue = false;
  bool open = false;  ///< only those whose latest check is open
};
/// Positions in `rows` of those that pass, in their order.
std::vector<std::size_t> filteredRows(const Document& document, const std::vector<OverviewRow>& rows,
                                      const OverviewFilter& filter);

/// What rows are put in order by.
enum class OverviewOrder : std::uint8_t {
  InDocument,
  WorstFirst,  ///< by urgency, then by `worst`, the largest first
  Name,        ///< numbers within names by their size: TP-2 before TP-10
  Group,
  Template,
  Latest,
  Day,
  Verdict,  ///< fail, cannot tell, not judged, not checked, pass
  Worst,
  Gain,
  Change,
  GainChange,  ///< by its magnitude
  Remarks,
};
/// Puts `positions` in order; equal ones stay as they are in the document. What has no value stands at the
/// end, whichever way the others go.
void sortRows(const Document& document, const std::vector<OverviewRow>& rows, OverviewOrder order,
              bool descending, std::vector<std::size_t>& positions);

/// Numbers within a text count by their size, and capitals do not matter.
bool naturallyBefore(std::string_view a, std::string_view b);

/// The groups of the document in the order of their names; the last one without a name holds the channels
/// without a group, when there are any.
struct ChannelGroup {
  std::string name;
  std::vector<std::size_t> channels;  ///< indices, rising
};
std::vector<ChannelGroup> groupsOf(const Document& document);

}  // namespace core
