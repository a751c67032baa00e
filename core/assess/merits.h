// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/assess/check_points.h"
#include "core/assess/verdict.h"
#include "core/plan/limits.h"

// Figures of merit of a check. Definitions: reference lines, nonlinearity and combined error as in ISA-37.1
// (from memory); hysteresis and repeatability as in OIML R 60-1 and R 60-3, over several cycles the
// difference of the mean readings of either direction as in IEC 61298-2 (from memory); zero return as in OIML
// R 60-1, without its time.
//
// - The reading that a line is held against is the expected one, not the simulated value: a bridge that is
//   predicted to be curved is no fault of the channel. All lines are drawn through the mean characteristic,
//   one point per expected value, rising and falling readings averaged.
// - Zero steps have figures of their own, zero return and zero shift. They are points of the lines, but no
//   part of hysteresis and repeatability.
// - A figure is worked out from the steps that have a reading and a prediction; where these do not suffice,
//   it says what is missing.
// - Its uncertainty: with the extreme step and the points that hold the line fixed, a figure is a linear form
//   of few readings, value = sum of w_i y_i; u^2 = sum of w_i w_j C_ij with C the covariance of measured less
//   expected (see CheckPoints), to first order, for slopes near one. The form is taken of the readings as
//   shown: where w does not sum to zero the rest is the zero reference's. What two steps have in common, as
//   the shunt of a rising and a falling one, drops out. Zero return and zero shift have the uncertainty that
//   their step is judged by, drift of the zero included. That of the denominator is left out. It is normal:
//   degrees of freedom are those of the zero step, else infinite. Where it comes to 0 (what the steps share
//   drops out, and no reading has one of its own) it is not known, and a rule that needs it cannot tell.

namespace core {

/// One figure of merit of a check.
struct Merit {
  MeritKind kind = MeritKind::Nonlinearity;
  /// In the readings' unit, with the sign that its definition gives (of SpanRatio and Symmetry: difference of
  /// slopes times the expected span). Absent when the plan or the readings do not give it: `reason` says why.
  std::optional<double> value;
  std::string missing;              ///< why there is no value: "the plan has no steps that come back down"
  std::optional<double> share;      ///< value / denominator, with sign
  std::optional<double> standard;   ///< standard uncertainty of `share`; absent when refused or not known
  double denominator = 0;           ///< in the readings' unit, above zero where there is a share
  std::optional<double> limit;      ///< greatest magnitude of `share`; by its E_n the U of `share`
  std::optional<std::size_t> step;  ///< where the greatest deviation is, when it is at one step
  std::string definition;           ///< what it is, from which line, of which denominator, which sign
  std::optional<Decided> decided;   ///< by the decision rule, when there is a limit
  Verdict verdict = Verdict::NotJudged;
  std::string reason;  ///< one sentence a reviewer can quote, with its numbers
};

/// All figures of merit in the order of MeritKind. Judged by the decision rule of `setup` where it has a
/// limit for them; the others are told, not judged. Zero return has the limit and the decision of its step.
std::vector<Merit> meritsOf(const Setup& setup, const SetupPrediction& prediction, const Budget& budget,
                            const Check& check);
/// As above, with the points of `check` at hand.
std::vector<Merit> meritsOf(const Setup& setup, const SetupPrediction& prediction, const Budget& budget,
                            const Check& check, const CheckPoints& points);

/// "the measured span", "the expected span", "the greatest expected reading", "the expected slope".
std::string_view denominatorName(MeritKind kind);
/// "0.12 %": as many digits as the limit, or else the uncertainty, warrants. Empty without a share.
std::string shareText(const Merit& merit);
/// `value` without unit, as finely resolved as `shareText`: "2.4". Empty without a value.
std::string valueText(const Merit& merit);
/// "0.50 %", with the digits of `shareText`. Empty without a limit.
std::string limitText(const Merit& merit);

}  // namespace core
