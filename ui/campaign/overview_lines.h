// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/campaign/overview.h"

namespace ui {

/// The columns of the overview.
enum class OverviewColumn : int {
  Name,
  Group,
  Verdict,  ///< in the order of "worst first"
  Worst,
  Gain,
  Change,
  GainChange,
  Latest,
  Day,
  Remarks,
  Overdue,
  Bridge,
  Steps,
  Status,
  Note
};
inline constexpr int overviewColumnCount = 15;

/// What a channel's verdict is called in the overview: a channel without a check is no channel that could not
/// be judged.
enum class CheckState : std::uint8_t { Fail, CannotTell, NotJudged, NotChecked, Pass };
CheckState checkStateOf(const core::OverviewRow& row);

/// One channel as the overview sees it; `row` is null until it is known.
struct OverviewItem {
  std::shared_ptr<const core::Channel> channel;
  const core::OverviewRow* row = nullptr;
};

enum class Grouping : std::uint8_t { None, Group, Bridge, Verdict };

struct OverviewSort {
  OverviewColumn column = OverviewColumn::Verdict;
  bool descending = false;

  friend bool operator==(const OverviewSort&, const OverviewSort&) = default;
};

/// A row of the grid: a channel, or the heading of a group.
struct OverviewLine {
  std::optional<std::size_t> channel;
  QString group;  ///< of a heading
  std::size_t members = 0;

  friend bool operator==(const OverviewLine&, const OverviewLine&) = default;
};

/// How the grid is laid out.
struct OverviewLayout {
  core::OverviewFilter filter = {};
  std::vector<OverviewSort> sorts{{}};  ///< the first decides, the next among equals
  Grouping grouping = Grouping::None;
  std::vector<QString> collapsed;  ///< groups of which the heading alone is shown
};

/// `channels` in rows. Channels that are equal in all sorts stay in the document's order; what is absent
/// comes last either way.
std::vector<OverviewLine> overviewLines(const std::vector<OverviewItem>& items,
                                        std::vector<std::size_t> channels, const OverviewLayout& layout);

/// The channels that the filter lets through. A choice that nobody made leaves nothing out; a channel that is
/// not known yet meets no choice about what was found of it.
std::vector<std::size_t> passing(const core::Document& document, const std::vector<OverviewItem>& items,
                                 const core::OverviewFilter& filter);
/// Whether something was chosen that may leave channels out.
bool leavesOut(const core::OverviewFilter& filter);

/// What `item` belongs to.
QString groupOf(const OverviewItem& item, Grouping grouping);

/// Text in which numbers sort by their value: TP-2 before TP-10.
QString naturalKey(const QString& text);

}  // namespace ui
