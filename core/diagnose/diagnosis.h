// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/assess/assessment.h"
#include "core/diagnose/fault.h"
#include "core/line/information.h"

namespace core {

/// By which factor and offset recorded test data would have to be corrected if a fault were the cause:
/// corrected = factor x (reading - offset), reading and offset as shown by the instrument.
struct Correction {
  double factor = 1;                     ///< of the strain (or load) at small strain, by the network model
  std::optional<double> factorStandard;  ///< standard uncertainty, that of the chain included
  double offset = 0;                     ///< readings' unit
  std::optional<double> offsetStandard;
  bool legitimate = false;  ///< an electrical cause that was there, the same, during the test
  std::string reason;       ///< why correcting is, or is not, legitimate, and under which condition
};

/// One candidate cause, refitted.
struct Explanation {
  Fault fault;
  std::optional<double> standard;  ///< standard uncertainty of the fault's size, when that was fitted
  double chiSquare = 0;            ///< of the residuals it leaves, over the covariance of the check's points
  std::size_t parameters = 0;      ///< fitted, the free offset among them
  double fitProbability = 0;       ///< of a chi-square at least so large if it is the cause
  double explained = 0;            ///< share of the healthy chi-square that it takes away, 0 to 1
  Information information;
  double plausibility = 0;  ///< 0 to 1, how ordinary such a fault of such a size is (common practice)
  double weight = 0;        ///< 0 to 1, evidence and plausibility together; all explanations sum to at most 1
  std::vector<double> changes;  ///< fitted change at each point of the check, its offset included

  std::string title;     ///< "Leads longer than entered"
  std::string sizeText;  ///< "each lead 0.85 ± 0.05 Ω more than entered"; empty without a size
  std::string settings;  ///< of Scale and its like: which setting would explain it; else empty
  std::string confirm;   ///< a measurement to make
  std::string onStrain;  ///< what it does to the strain data
  Correction correction;
};

enum class DiagnosisResult : std::uint8_t {
  NotPossible,  ///< too few readings, or no covariance
  Healthy,      ///< nothing calls for a cause
  Found,        ///< one cause stands out
  Tied,         ///< several causes cannot be told apart with this plan
  NothingFits,  ///< no single cause explains the readings
};
/// Keys for programs: "not_possible", "healthy", "found", "tied", "nothing_fits".
std::string_view diagnosisResultKey(DiagnosisResult result);

/// A step that would tell causes apart that cannot be told apart now.
struct TellingStep {
  std::string text;       ///< "332k across arm 2", "a zero step at the end"
  double separation = 0;  ///< by how many standard uncertainties the readings of the two causes would differ
};

struct Diagnosis {
  DiagnosisResult result = DiagnosisResult::NotPossible;
  std::string sentence;  ///< the whole in words a reviewer can quote
  /// Best first; those that explain less than half are left out, unless none explains more. With a healthy
  /// check those, two at most, that fit better than nothing at all, though chance does as much.
  std::vector<Explanation> explanations;
  std::size_t tied = 0;  ///< how many of the first cannot be told apart from the first, itself included
  std::optional<TellingStep> tellingStep;  ///< when causes are tied and a step would help
  double chiSquare = 0;                    ///< of the healthy channel
  int degreesOfFreedom = 0;
  std::optional<double> probability;  ///< of a chi-square at least so large if nothing is wrong
  /// Of readings without an uncertainty: the last digit they show, one unit of which they were taken as good
  /// to, in the readings' unit.
  std::optional<double> takenDigit;
};

/// Refits every possible fault through the network model and ranks them. Deterministic. Cancelled through
/// `stop`: then the result is NotPossible.
/// It never changes a verdict: an explanation is a suspicion until the measurement that it names is made.
Diagnosis diagnose(const Setup& setup, const SetupPrediction& prediction, const Budget& budget,
                   const Check& check, const std::stop_token& stop = {});

struct DiagnosisGround;
/// The same on a ground of its own, such as the difference of two checks.
Diagnosis diagnose(const DiagnosisGround& ground, const Budget& budget, const std::stop_token& stop = {});

}  // namespace core
