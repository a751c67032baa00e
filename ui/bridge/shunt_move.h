// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/plan/setup.h"
#include "ui/bridge/bridge_state.h"

namespace ui {

enum class ShuntEnd { A, B };

core::Node nodeOf(const core::Shunt& shunt, ShuntEnd end);

/// A shunt's end on its way to another node, and what would come of it there.
struct ShuntMove {
  std::size_t shunt = 0;
  ShuntEnd end = ShuntEnd::A;
  std::optional<core::Node> target;  ///< none while far from every node
  bool legal = false;                ///< `target` may be kept
  QString outcome;                   ///< what the move would do, or why it is refused, in words
  BridgeState state;                 ///< after a legal move
};

/// The move of an end to `target`. Its state is that of the step that closes the shunt: `selected` if it
/// does, else the first, else a step of its own. A target without a name for this connection, or on the
/// other end's point, is refused.
ShuntMove moveTo(const core::Setup& setup, std::optional<std::size_t> selected, std::size_t shunt,
                 ShuntEnd end, std::optional<core::Node> target);

/// What `setup` shows at the one step `step`, solved once; none: all shunts open.
BridgeState stateOfStep(core::Setup setup, const std::optional<core::Step>& step);
/// The step that shows what `shunt` does: `selected` if it closes it, else the first, else one of its own.
core::Step stepShowing(const core::Setup& setup, std::optional<std::size_t> selected, std::size_t shunt);

/// Whether the end may lie on `target`.
bool isLegalTarget(const core::Bridge& bridge, const core::Shunt& shunt, ShuntEnd end, core::Node target);

/// The electrical points that an end may be moved to, one node each, in the order of core::Node; its
/// present point by its present name.
std::vector<core::Node> legalTargets(const core::Bridge& bridge, const core::Shunt& shunt, ShuntEnd end);

}  // namespace ui
