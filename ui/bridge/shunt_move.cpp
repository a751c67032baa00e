// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/shunt_move.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/document/edits.h"
#include "ui/bridge/bridge_state.h"
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

core::Setup setupAfter(core::Setup setup, const ShuntMove& move) {
  core::Shunt& shunt = setup.shunts[move.shunt];
  (move.end == ShuntEnd::A ? shunt.a : shunt.b) = *move.target;
  return setup;
}

/// `setup` with the one step that shows what `shunt` does.
core::Setup withOneStep(core::Setup setup, std::optional<std::size_t> selected, std::size_t shunt) {
  const bool closes = selected && closesShunt(setup.sequence[*selected], shunt);
  const auto step = closes ? selected : firstStepClosing(setup, shunt);
  setup.sequence = {step ? setup.sequence[*step] : core::Step{{}, {shunt}, core::Duration(1)}};
  return setup;
}

}  // namespace

core::Node nodeOf(const core::Shunt& shunt, ShuntEnd end) { return end == ShuntEnd::A ? shunt.a : shunt.b; }

ShuntMove moveTo(const core::Setup& setup, std::optional<std::size_t> selected, std::size_t shunt,
                 ShuntEnd end, std::optional<core::Node> target) {
  ShuntMove move{shunt, end, target, false, {}, core::Polarity::None, {}, 0};
  if (!target) {
    move.outcome = tr("Drop the end on a node; elsewhere nothing changes.");
    return move;
  }
  const QString refusal = refusalOf(setup.bridge, setup.shunts[shunt], end, *target);
  if (!refusal.isEmpty()) {
    move.outcome = refusal;
    return move;
  }
  move.legal = true;
  const core::Setup after = withOneStep(setupAfter(setup, move), selected, shunt);
  const auto prediction = core::predict(after).steps.front();
  move.outcome = prediction ? outcomeText(setup.bridge, *prediction) : toText(prediction.error());
  if (prediction) move.polarity = prediction->polarity;
  if (auto solved = core::potentials(after, 0)) move.potentials = *std::move(solved);
  if (const auto excitation = core::excitationOf(after, 0)) move.excitation_V = excitation->base();
  return move;
}

core::Channel withMove(core::Channel channel, const ShuntMove& move) {
  const core::Shunt moved = setupAfter(channel.setup, move).shunts[move.shunt];
  return core::withShuntAt(std::move(channel), move.shunt, moved.a, moved.b);
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
