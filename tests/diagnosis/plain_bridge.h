// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include "core/plan/setup.h"

namespace diagnosis {

/// Places of a bridge that are electrically apart: the instrument's terminals, the four corners at the
/// article, and where arm 2 of a three-wire quarter bridge begins in the instrument. Every corner at the
/// article has its terminal four places before it.
enum Point : std::size_t {
  TerminalPPlus,
  TerminalSMinus,
  TerminalPMinus,
  TerminalSPlus,
  CornerPPlus,
  CornerSMinus,
  CornerPMinus,
  CornerSPlus,
  ReturnTerminal,
  pointCount,
};

/// A resistor between two points.
struct Wired {
  std::size_t from = 0, to = 0;
  long double ohm = 0;
};

/// A bridge as it really is, with nothing of the program in it: where its arms and wires go is written down
/// here a second time (arms at the article hang on corners, the others on terminals), and the nodal equations
/// are a full matrix in extended precision for Eigen's LU.
struct PlainBridge {
  core::BridgeType type = core::BridgeType::QuarterThreeWire;
  std::array<long double, 4> arms{};                     ///< ohm
  std::array<long double, 4> leaks{};                    ///< over each arm, S
  std::array<long double, core::leadRoleCount> leads{};  ///< ohm, by role
  std::vector<Wired> shunts;
  long double input = 0;        ///< conductance of the instrument between S+ and S-, S
  bool sensesAtBridge = false;  ///< the excitation is measured at the corners, else at the terminals

  /// Signal over excitation with the shunts `closed` (indices).
  long double output(const std::vector<std::size_t>& closed) const;
};

/// Whether `arm` (from 0) is at the article.
bool armAtArticle(core::BridgeType type, std::size_t arm);
/// Where the ends of `arm` (from 0) are.
std::array<std::size_t, 2> armEnds(core::BridgeType type, std::size_t arm);
std::size_t pointOf(core::BridgeType type, core::Node node);
/// The roles of wires that carry current or signal, without sense leads.
std::vector<core::LeadRole> rolesOf(core::BridgeType type);

/// As entered, every part at its stated value.
PlainBridge plainBridge(const core::Setup& setup);

/// The arithmetic of the instrument: what it shows for a change of signal over excitation.
long double shownFor(const core::Instrument& instrument, long double change);

}  // namespace diagnosis
