// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>

#include "core/compare/comparison.h"
#include "ui/session.h"

namespace ui {

/// Two checks in the order they were made, with what is between them.
struct CheckPair {
  std::size_t before = 0, after = 0;
  core::Comparison comparison;
};

/// What of the session the Outcome view shows. Channel and evaluation live as long as the session's document.
struct ShownOutcome {
  const core::Channel* channel = nullptr;
  const core::ChannelEvaluation* evaluation = nullptr;
  std::optional<std::size_t> check;  ///< the chosen one; none: the plan alone
  std::optional<CheckPair> pair;     ///< when another check is compared with it
  std::optional<std::size_t> step;
  bool drawn = false;  ///< there are steps, and they can be predicted

  /// The checks that are shown, in the order they were made.
  std::vector<std::size_t> checks() const;
};

ShownOutcome shownOutcome(const Session& session);

/// Why there is no verdict, empty when there is one.
QString whatIsMissing(const Session& session);

}  // namespace ui
