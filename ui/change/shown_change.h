// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <memory>
#include <optional>

#include "core/compare/comparison.h"
#include "core/compare/trend.h"
#include "ui/session.h"

namespace ui {

/// Two checks of a channel, by index, in the order they were made.
struct ChangePair {
  std::size_t before = 0, after = 0;

  friend bool operator==(const ChangePair&, const ChangePair&) = default;
};

/// The pair that the session compares, else the last two checks of the chosen channel; none with fewer.
std::optional<ChangePair> changePairOf(const Session& session);
/// Why there is nothing to compare; empty when there is.
QString whatIsMissingToCompare(const Session& session);
/// Makes the pair the one that the session compares, the later one chosen.
void comparePair(Session& session, ChangePair pair);

/// All that the page of changes shows. A plain value of what the session held when it was made.
struct ShownChange {
  std::shared_ptr<const core::Channel> channel;
  ChangePair pair;
  core::Comparison comparison;
  core::Trend trend;  ///< without points unless there are more than two checks
  std::string unit;   ///< of the readings of the earlier check

  const core::Check& before() const { return channel->checks[pair.before]; }
  const core::Check& after() const { return channel->checks[pair.after]; }
  const core::Setup& setupBefore() const { return core::setupOf(*channel, before()); }
};

/// There must be such checks.
ShownChange shownChange(std::shared_ptr<const core::Channel> channel,
                        const core::ChannelEvaluation& evaluation, ChangePair pair);

/// "3  220k across arm 2": number and label of a step.
QString stepName(const core::Setup& setup, std::size_t step);
/// Everything about one step in a sentence or two.
QString stepSentence(const ShownChange& shown, std::size_t step);

}  // namespace ui
