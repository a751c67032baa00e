// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/shunt_move.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/document/document.h"
#include "core/plan/prediction.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Bridge", text); }

core::Node otherNode(const core::Shunt& shunt, ShuntEnd end) {
  return nodeOf(shunt, end == ShuntEnd::A ? ShuntEnd::B : ShuntEnd::A);
}

/// Empty when the end may lie there.
QString refusalOf(const core::Bridge& bridge, const core::Shunt& shunt, ShuntEnd end, core::Node target) {
  if (!core::hasNode(bridge, target)) return tr("This connection has no such terminal.");
  const core::Node other = otherNode(shunt, end);
  if (core::pointOf(bridge, target) != core::pointOf(bridge, other)) return {};
  return tr("Not possible: both ends would be on one point (%1), so the shunt would do nothing.")
      .arg(pointText(bridge, other));
}

}  // namespace

core::Node nodeOf(const core::Shunt& shunt, ShuntEnd end) { return end == ShuntEnd::A ? shunt.a : shunt.b; }

core::Step stepShowing(const core::Setup& setup, std::optional<std::size_t> selected, std::size_t shunt) {
  const bool closes = selected && closesShunt(setup.sequence[*selected], shunt);
  const auto step = closes ? selected : firstStepClosing(setup, shunt);
  return step ? setup.sequence[*step] : core::Step{{}, {shunt}, core::Duration(1)};
}

BridgeState stateOfStep(core::Setup setup, const std::optional<core::Step>& step) {
  core::Channel channel;
  channel.setup = std::move(setup);
  channel.setup.sequence.clear();
  if (step) channel.setup.sequence = {*step};
  return stateAt(channel, core::predict(channel.setup), step ? std::optional<std::size_t>(0) : std::nullopt);
}

ShuntMove moveTo(const core::Setup& setup, std::optional<std::size_t> selected, std::size_t shunt,
                 ShuntEnd end, std::optional<core::Node> target) {
  ShuntMove move{shunt, end, target, false, {}, {}};
  if (!target) {
    move.outcome = tr("Drop the end on a node; elsewhere nothing changes.");
    return move;
  }
  move.outcome = refusalOf(setup.bridge, setup.shunts[shunt], end, *target);
  if (!move.outcome.isEmpty()) return move;
  move.legal = true;
  core::Setup after = setup;
  (end == ShuntEnd::A ? after.shunts[shunt].a : after.shunts[shunt].b) = *target;
  move.state = stateOfStep(std::move(after), stepShowing(setup, selected, shunt));
  move.outcome = move.state.outcome;
  return move;
}

bool isLegalTarget(const core::Bridge& bridge, const core::Shunt& shunt, ShuntEnd end, core::Node target) {
  return refusalOf(bridge, shunt, end, target).isEmpty();
}

std::vector<core::Node> legalTargets(const core::Bridge& bridge, const core::Shunt& shunt, ShuntEnd end) {
  const core::Node present = nodeOf(shunt, end);
  std::vector<core::Node> targets;
  for (const core::Node node : core::allNodes()) {
    if (core::pointOf(bridge, node) != node || !isLegalTarget(bridge, shunt, end, node)) continue;
    targets.push_back(core::pointOf(bridge, present) == node ? present : node);
  }
  return targets;
}

}  // namespace ui
