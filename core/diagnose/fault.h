// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/assess/check_points.h"
#include "core/plan/setup.h"

namespace core {

/// What may be wrong with a channel whose check is off.
enum class CauseKind : std::uint8_t {
  Scale,         ///< gain, excitation or gauge-factor setting; size: reading over what it should be
  BridgeFactor,  ///< N set wrong, quarter as half, Poisson forgotten; size: N as it acts
  Units,         ///< factor 1000, mV/V taken for µm/m, factor 2 or 4; size: the factor
  Leads,         ///< leads not entered or of other length; size: ohm of each lead more than entered
  LeadContact,   ///< bad contact in one lead, `index` its LeadRole; size: ohm more than entered
  ShuntPlace,    ///< shunts at the other end of the leads than planned; `index` 0 at the instrument instead
                 ///< of at the gauge, 1 the reverse; no size
  ShuntArm,      ///< shunts on the arm next to the one planned; `index` 0 arm 1 for 2 and 3 for 4, 1 arm
                 ///< 1 for 4 and 2 for 3; no size
  ShuntValue,    ///< resistor of shunt `index` off value; size: true over stated resistance
  ShuntsExchanged,  ///< resistors of shunts `index` and `other`; no size
  ShuntOpen,  ///< never closed: `other` 0 the resistor of shunt `index` wherever it lies, 1 all shunts at the
              ///< place of shunt `index`; no size
  CompletionValue,   ///< completion resistor of arm `index`; size: true over stated resistance
  ArmValue,          ///< gauge or arm `index` changed; size: true over stated resistance
  Leak,              ///< over the gauge in arm `index`; size: conductance of the leak, S
  NoResponse,        ///< readings do not follow the shunts at all; no size
  PolarityReversed,  ///< signal wires exchanged; no size
  StepsExchanged,    ///< steps `index` and `other` taken in the wrong order; no size
  SidesExchanged,    ///< negative steps taken first; no size
  OpenSense,         ///< a sense lead is open, the instrument senses at its own terminals; no size
  ZeroShift,         ///< zero jumped before step `index`; size: in the readings' unit
  Drift,             ///< zero drifts steadily; size: readings' unit per second
  Clipping,          ///< readings stop at a limit; `index` 0 above and below, 1 above, 2 below; size: the
                     ///< magnitude of the shown reading where they stop, in the readings' unit
  StrayReading,      ///< one reading alone is off, step `index`; size: by how much, in the readings' unit
};
inline constexpr std::size_t causeKindCount = 22;

/// Keys for programs: "scale", "bridge_factor", "units", "leads", "lead_contact", "shunt_place", "shunt_arm",
/// "shunt_value", "shunts_exchanged", "shunt_open", "completion_value", "arm_value", "leak", "no_response",
/// "polarity_reversed", "steps_exchanged", "sides_exchanged", "open_sense", "zero_shift", "drift",
/// "clipping", "stray_reading".
std::string_view causeKindKey(CauseKind kind);

/// One thing wrong. A plain value: what it does to a channel is in the functions below.
struct Fault {
  CauseKind kind = CauseKind::Scale;
  std::size_t index = 0;  ///< which one, see CauseKind; else 0
  std::size_t other = 0;
  double size = 1;  ///< see CauseKind; of kinds without a size 1

  friend bool operator==(const Fault&, const Fault&) = default;
};

/// Whether the size is fitted (a parameter), or part of the hypothesis (BridgeFactor and Units), or nothing.
bool hasFreeSize(CauseKind kind);

/// All faults worth trying on `setup`, with a size to start from: those that its template, wires and plan can
/// have, and that change a reading.
std::vector<Fault> possibleFaults(const Setup& setup, const CheckPoints& points);

/// `setup` as it would really be with a fault of its parts; unchanged for a fault of readings or settings.
Setup withFault(Setup setup, const Fault& fault);

/// The changes that the steps of `points` would show with `fault`: from the whole network for a fault of
/// parts. Not zeroed at the first step: as a fit leaves the offset free, only their differences count.
/// Fails when the faulty bridge cannot be predicted.
Result<std::vector<double>> changesUnder(const Setup& setup, const Check& check, const CheckPoints& points,
                                         const Fault& fault);

}  // namespace core
