// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/diagnose/diagnosis.h"
#include "tests/diagnosis/simulated_check.h"

namespace diagnosis {

/// What became of one simulated check.
struct Outcome {
  std::optional<core::Fault> planted;
  double effect = 0;  ///< of the planted fault, in standard uncertainties
  core::DiagnosisResult result = core::DiagnosisResult::NotPossible;
  std::optional<core::CauseKind> first;  ///< kind of the first explanation, when a fault is declared
  std::size_t rank = 0;  ///< of the first explanation of the planted kind, from 1; 0 when there is none
  double apart = 0;      ///< separation of the first explanation from the planted fault, when another kind
  bool tiedWithFirst = false;  ///< an explanation of the planted kind cannot be told apart from the first
  bool listedAnyway = false;   ///< the planted kind comes first in the list of a check that is called healthy
  std::size_t tied = 0;        ///< how many the program says it cannot tell apart
  bool placed = false;         ///< the first of the planted kind names the right arm, shunt or step
  std::optional<bool> within;  ///< planted size within 2 standard uncertainties of the fitted one
  double milliseconds = 0;     ///< of processor time that the diagnosis took

  bool first1() const { return rank == 1; }
  bool first2() const { return rank == 1 || rank == 2; }
  /// The same with what is told to be tied with the first counted as first.
  bool fair1() const { return first1() || tiedWithFirst; }
  bool fair2() const { return first2() || tiedWithFirst; }
};

/// Lets the program diagnose `simulated`. A check that it calls healthy counts as missed whatever it lists.
Outcome outcomeOf(const SimulatedCheck& simulated);

/// Outcomes of `checks` checks, the kinds of fault in turn, and of `healthy` checks after them.
std::vector<Outcome> outcomesOf(std::uint64_t seed, std::size_t checks, std::size_t healthy,
                                unsigned threads);

/// The rates that have a target, as shares.
struct Rates {
  double first = 0, firstTwo = 0;         ///< with ties that the program tells counted
  double strictFirst = 0, strictTwo = 0;  ///< by the order of the list alone
  double healthyCalledFaulty = 0;
};
Rates ratesOf(const std::vector<Outcome>& outcomes);

std::string_view nameOf(core::CauseKind kind);
/// Rates by kind of fault and by size of effect, sizes, healthy checks, confusions, times.
std::string tablesOf(const std::vector<Outcome>& outcomes);

}  // namespace diagnosis
