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
/// "note", "warning", "fault".
std::string_view severityWord(Severity severity);

enum class FindingKind : std::uint8_t {
  CannotPredict,
  RangeOverrun,
  BelowUncertainty,
  Duplicate,
  Gap,
  UnbalancedPolarities,
  MissingZero,
  HoldTooShort,
  SettleTooShort,
  ShuntPower,
  PowerDensity,
  OppositePolarity,
  ShuntThroughLeads,
  OverdueResistor,
  PartChanged,
  ShortcutError,
};
inline constexpr std::size_t findingKindCount = 16;
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

/// Looks through the plan of `channel`; faults first, then in the order of the sequence. `evaluation` must be
/// that of `channel`; `stock` and `today` say which resistors are overdue or have been measured anew.
std::vector<Finding> review(const Channel& channel, const ChannelEvaluation& evaluation, const Stock& stock,
                            Date today);

}  // namespace core
