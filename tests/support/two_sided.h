// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/document/edits.h"
#include "core/plan/pattern.h"

namespace sample {

/// `channel` with the usual two-sided sequence of its shunts, one closed at a time.
inline core::Channel withTwoSidedSequence(core::Channel channel, core::Duration hold) {
  std::vector<core::Step> steps =
      core::layOut({}, core::levelsOfShunts(channel.setup), core::Step{}.settle, hold);
  return core::withSequence(std::move(channel), std::move(steps));
}

}  // namespace sample
