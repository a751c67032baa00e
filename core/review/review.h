// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/evaluate/evaluation.h"

namespace core {

enum class Severity : std::uint8_t {
  Note,     ///< worth knowing
  Warning,  ///< weakens the check
  Fault,    ///< the check cannot succeed, or something can be damaged
};
inline constexpr std::size_t severityCount = 3;
/// "note", "warning", "fault".
std::string_view severityWord(Severity severity);

enum class FindingKind : std::uint8_t {
  CannotPredict,     ///< a step without an expected reading, or without its uncertainty
  RangeOverrun,      ///< more output than the instrument takes, balanced or not
  BelowUncertainty,  ///< a level no greater than the expanded uncertainty of its reading (chain)
  Duplicate,         ///< steps, levels or shunts that say the same twice; one resistor at two places at once
  Gap,               ///< between levels of one side, clearly (5 %) wider than twice the median spacing
  UnbalancedPolarities,  ///< levels without a counterpart within the limit or 2 %, whichever is wider
  MissingZero,           ///< at the start, between the sides, at the end
  HoldTooShort,          ///< for one second, the samples, or whole mains periods
  SettleTooShort,        ///< for the filter
  ShuntPower,            ///< heat in a calibration resistor
  PowerDensity,          ///< heat in a grid above the handbook's range
  OppositePolarity,      ///< to what a label or a shunt's name says
  ShuntThroughLeads,     ///< at the instrument, with leads between it and the arm that it is meant for
  OverdueResistor,       ///< calibration due, or within 30 days
  PartChanged,           ///< the stock says otherwise than the shunt
  ShortcutError,         ///< what R/(F N (R + Rs)) misses because of unequal arms or N as set
  Wiring,                ///< what the rules of pins and jumpers find wrong
  ImpossibleValue,       ///< a number out of a file that cannot be
  NothingToClose,        ///< no steps, or none that closes a shunt
  FigureNotShown,        ///< a limit of a figure of merit that the steps cannot show
  Hookup,                ///< a bridge that is not connected as its template says
};
inline constexpr std::size_t findingKindCount = 21;
/// "range_overrun" in JSON.
std::string_view findingKindKey(FindingKind kind);

/// A change that takes a finding away. A pure function of the channel that the finding is of.
struct Mend {
  std::string label;  ///< for a button and the undo step: "Insert a zero step"
  std::function<Channel(const Channel&)> apply;
};

/// Something about a plan that somebody should look at before power is on.
struct Finding {
  FindingKind kind;
  Severity severity = Severity::Warning;
  std::optional<std::size_t> step;   ///< that it is about
  std::optional<std::size_t> shunt;  ///< that it is about
  std::string what;                  ///< one sentence with its numbers
  std::string why;                   ///< why it matters, one sentence
  std::vector<Mend> mends;           ///< the best first; empty: only somebody at the bench can mend it
};

/// Looks through the plan of `channel`; faults first, then in the order of the sequence, what is of no step
/// last. `evaluation` must be that of `channel`; `stock` and `today` say which resistors are overdue or have
/// been measured anew. What recurs is one finding at its first step: a level that is taken again, steps that
/// are all too short, shunts at one wrong place. The first mend of a finding takes it away, or leaves a less
/// severe one, and makes no new fault; that of a hookup may show what the hookup hid. Thresholds without a
/// source are common practice; each says so.
std::vector<Finding> review(const Channel& channel, const ChannelEvaluation& evaluation, const Stock& stock,
                            Date today);

}  // namespace core
