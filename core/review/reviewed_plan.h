// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/review/review.h"

// What the parts of a review share. Internal to core/review.

namespace core {

/// A set of shunts that the sequence closes, wherever it does so first.
struct ReviewedLevel {
  std::vector<std::size_t> closed;
  std::size_t step = 0;                 ///< first one that closes exactly these
  std::size_t steps = 1;                ///< how many do
  Prediction prediction{};              ///< of that step
  std::optional<double> expanded = {};  ///< U of the expected reading, chain
};

/// A channel under review.
struct ReviewedPlan {
  const Channel& channel;
  const ChannelEvaluation& evaluation;
  const Stock& stock;
  Date today;
  std::vector<ReviewedLevel> levels = {};  ///< those that close something and are predicted, in order

  const Setup& setup() const { return channel.setup; }
};

/// Each set of shunts that `setup` closes and `prediction` could predict, once. Uncertainties stay empty
/// without a budget.
std::vector<ReviewedLevel> levelsOf(const Setup& setup, const SetupPrediction& prediction,
                                    const Budget* budget);
/// Levels of one polarity, rising in magnitude; those within their own uncertainty are left out.
std::vector<const ReviewedLevel*> sideOf(const std::vector<ReviewedLevel>& levels, Polarity polarity);
/// Whether a level tells nothing: it does nothing, or no more than its own uncertainty.
bool isBelowUncertainty(const ReviewedLevel& level);

/// Whether any step closes `shunt`.
bool isUsed(const Setup& setup, std::size_t shunt);
double magnitude(const ReviewedLevel& level);
/// Greatest deviation that the limits permit at this expected reading, in its unit.
double limitAt(const Limits& limits, double reading);

/// Ready to be looked through: levels worked out.
ReviewedPlan reviewedPlan(const Channel& channel, const ChannelEvaluation& evaluation, const Stock& stock,
                          Date today);

// Each adds what it finds.
void findUnpredictable(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findRangeOverruns(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findBelowUncertainty(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findDuplicates(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findGaps(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findUnbalanced(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findMissingZeros(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findShortTimes(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findHeat(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findOppositePolarity(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findShuntsThroughLeads(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findResistorTroubles(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findShortcutErrors(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findWiringFaults(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findImpossibleValues(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findOverlappingReadings(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findNothingToClose(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findHookup(const ReviewedPlan& plan, std::vector<Finding>& findings);
void findFiguresNotShown(const ReviewedPlan& plan, std::vector<Finding>& findings);

/// Heat in the resistor of a closed shunt, in the state last solved, without wires and switch: I^2 R with
/// I = V / (R + wires + contact).
double shuntPower_W(const BridgeCircuit& circuit, const Setup& setup, std::size_t shunt);
/// The least rating that any shunt of the same resistor says.
std::optional<Power> ratingOf(const Setup& setup, std::size_t shunt);

// Words and numbers of findings.
std::string readingText(const Setup& setup, double reading, int digits = 4);          ///< "-501.2 µm/m"
std::string percentText(double share);                                                ///< "0.92 %"
std::string secondsText(double seconds);                                              ///< "1.5 s"
std::string stepText(const Setup& setup, std::size_t step);                           ///< "step 3 \"+2\""
std::string shuntText(const Setup& setup, std::size_t shunt);                         ///< "shunt \"R1\""
std::string joinedNames(const Setup& setup, const std::vector<std::size_t>& shunts);  ///< "R1 + R2"

// Edits that mends are made of.

/// `channel` without the steps that close exactly `closed`; of neighbours that then are alike one stays.
Channel withoutLevel(Channel channel, const std::vector<std::size_t>& closed);
Mend withoutLevelMend(const ReviewedLevel& level, const Setup& setup);

}  // namespace core
