// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/quality.h"

#include <cmath>
#include <cstdio>

#include "core/units/language.h"

namespace core {
namespace {

struct Finding {
  LevelQuality quality = LevelQuality::Good;
  std::string reason;
};

/// Three digits at most, without an exponent for what occurs.
std::string figure(double value) {
  char text[32];
  std::snprintf(text, sizeof text, value < 999.5 ? "%.3g" : "%.0f", value);
  return text;
}

/// A count in three digits.
std::string roundedCount(double count) {
  if (count < 999.5) return figure(std::round(count));
  const double step = std::pow(10, std::floor(std::log10(count)) - 2);
  return figure(std::round(count / step) * step);
}

std::string percent(double share) { return figure(std::round(1000 * share) / 10) + " %"; }

LevelQuality grade(double value, double fair, double poor) {
  return value > poor ? LevelQuality::Poor : value > fair ? LevelQuality::Fair : LevelQuality::Good;
}

/// Under five samples the scatter is hardly known, under twenty an interval of twice the uncertainty leans on
/// the noise being normal.
Finding fewSamples(const Level& level) {
  const auto samples = static_cast<double>(level.samples);
  return {grade(-samples, -20, -5), sayCount(level.samples, "only {n} sample", "only {n} samples")};
}

/// Gaps of a tenth are usual in logged data; with more than half missing the rest may not stand for it.
Finding missing(const Level& level, const LevelEvidence& evidence) {
  const double share = static_cast<double>(evidence.missing) / static_cast<double>(level.span.size());
  return {grade(share, 0.1, 0.5), say("{1} of its samples are missing", {percent(share)})};
}

/// Spikes come in one sample of a hundred or fewer; with more than one in twenty what is left out may belong
/// to the level.
Finding outliers(const Level& level) {
  const double share =
      static_cast<double>(level.outliers) / static_cast<double>(level.samples + level.outliers);
  return {grade(share, 0.015, 0.05), say("{1} of its samples are outliers", {percent(share)})};
}

/// Of fewer than ten independent samples the uncertainty is a guess, of fewer than three it is a poor one.
Finding slowNoise(const Level& level) {
  return {grade(-level.effectiveSamples, -10, -3),
          say("the noise is so slow that {1} samples count as {2}",
              {roundedCount(static_cast<double>(level.samples)), roundedCount(level.effectiveSamples)})};
}

/// A tail shifts the mean; within its uncertainty that is allowed for.
Finding settling(const Level& level, const LevelEvidence& evidence) {
  if (evidence.settling == 0) return {};
  return {grade(std::abs(evidence.settling), 0, level.stdUncertainty),
          say("still settling at its beginning")};
}

/// A straight drift leaves the mean what it is at mid-time. It is named when it is beyond chance (three
/// standard uncertainties); a change over the level of a hundred uncertainties of the mean leaves no level.
Finding drift(const Level& level) {
  const double change = std::abs(level.drift_per_s) * (level.end_s - level.begin_s);
  if (std::abs(level.drift_per_s) < 3 * level.driftUncertainty_per_s || change == 0) return {};
  const double ratio = change / level.stdUncertainty;
  if (level.stdUncertainty == 0) return {LevelQuality::Fair, say("drifts within the level")};
  return {grade(ratio, 5, 100),
          say("drifts by {1} times its uncertainty within the level", {roundedCount(ratio)})};
}

/// Mean and robust mean of normal noise differ by about a third of the uncertainty. Where few codes occur the
/// robust mean sticks to one of them, which tells nothing.
Finding disagreement(const Level& level, const LevelEvidence& evidence) {
  if (!(level.stdUncertainty > 0) || evidence.resolution > evidence.scatter) return {};
  const double ratio = std::abs(level.mean - level.robustMean) / level.stdUncertainty;
  return {grade(ratio, 1.5, 3),
          say("mean and robust mean differ by {1} times the uncertainty", {figure(ratio)})};
}

Finding resolution(const Level& level, const LevelEvidence& evidence) {
  if (evidence.isConstant) {
    return {LevelQuality::Fair,
            evidence.resolution > 0
                ? say("all samples are equal: the resolution of the recording bounds what can be told")
                : say("all samples are equal: they do not tell their uncertainty")};
  }
  // When rounding makes up more than half of the variance.
  return {grade(evidence.rounding, level.stdUncertainty / std::sqrt(2.0), HUGE_VAL),
          say("the resolution of the recording bounds what can be told")};
}

}  // namespace

void judge(Level& level, const LevelEvidence& evidence) {
  if (level.samples == 0) {
    level.quality = LevelQuality::Poor;
    level.reason = say("none of its samples is a number");
    return;
  }
  level.quality = LevelQuality::Good;
  level.reason.clear();
  for (Finding finding :
       {fewSamples(level), missing(level, evidence), outliers(level), settling(level, evidence),
        slowNoise(level), resolution(level, evidence), drift(level), disagreement(level, evidence)}) {
    if (finding.quality <= level.quality) continue;
    level.quality = finding.quality;
    level.reason = std::move(finding.reason);
  }
}

}  // namespace core
