// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/document/document.h"

// Edits of the bridge as it is drawn: what is added to it, exchanged in it, laid straight again. As all edits
// they are functions from value to value; indices count from 0 and must exist.

namespace core {

/// Insulation as good as none: a leak that a user adds starts with it, 10 Mohm.
inline constexpr Resistance firstLeak{10e6};
/// An input that a user adds starts with it, 1 Mohm.
inline constexpr Resistance firstInput{1e6};

/// What a shunt over `arm` starts with: of the plan's last shunt, else the resistor that simulates about
/// 1000 um/m, or half the rated output of a usual transducer.
Resistance firstShunt(const Setup& setup, std::size_t arm);
/// A new shunt right across the arm, in no step.
Channel withShuntOverArm(Channel channel, std::size_t arm);

/// Sense leads as long as those of the excitation, or none: leads that measured the excitation become zero.
Channel withSenseLeads(Channel channel, bool sixWire);
/// The first shunt fixed to a sense terminal; without sense leads it would be in the air.
std::optional<std::size_t> shuntOnSenseTerminal(const Setup& setup);

/// The two resistors change places, with their leaks and with what is stated about their uncertainty. Where
/// they are strained is the place's.
Channel withArmsExchanged(Channel channel, std::size_t a, std::size_t b);
/// A leak over arm `from`, or with `toStructure` the one from its grid, at arm `to` instead; one that is
/// there already takes its place.
Channel withLeakMoved(Channel channel, bool toStructure, std::size_t from, std::size_t to);

/// The arm whose two ends a shunt lies right across, lead or no lead between.
std::optional<std::size_t> armUnder(const Bridge& bridge, const Shunt& shunt);
/// A copy of each shunt, its name made unique: right across the next arm where that resistor lies across none
/// yet, else at the same place. In no step; jumpers are not copied to another place.
Channel withShuntsDuplicated(Channel channel, const std::vector<std::size_t>& shunts);

/// What is to be as the template has it.
struct Straighten {
  std::vector<std::size_t> arms = {};    ///< to the nominal resistance
  std::vector<std::size_t> shunts = {};  ///< right across the own ends of the arm that they are nearest to
  std::vector<LeadRole> leads = {};      ///< back to their own terminals, whole, touching none
  bool hookup = false;                   ///< the whole connection
};
/// Everything of the channel that is drawn.
Straighten allOf(const Setup& setup);
Channel withStraightened(Channel channel, const Straighten& what);

}  // namespace core
