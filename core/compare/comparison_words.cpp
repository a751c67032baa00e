// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/comparison_words.h"

#include <algorithm>
#include <cmath>

#include "core/plan/prediction.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/number_list.h"
#include "core/units/shown.h"

namespace core {
namespace {

std::string fixed(double value, int places) { return shown(formatFixed(value, places)); }

/// A step's difference in the readings' unit.
std::string readingText(const Difference& difference, const std::string& unit) {
  return differenceText(difference, 1, " " + unit);
}

/// Of steps with this outcome the one that moved most beside its margin.
struct Most {
  std::vector<std::size_t> steps;
  std::size_t step = 0;
  double size = -1;
};

Most mostOf(const Comparison& comparison, Change change) {
  Most most;
  for (std::size_t k = 0; k < comparison.steps.size(); ++k) {
    const auto& moved = comparison.steps[k].moved;
    if (changeOf(moved) != change) continue;
    most.steps.push_back(k);
    const double size = moved->margin > 0 ? std::abs(moved->value) / moved->margin : std::abs(moved->value);
    if (size > most.size) most.size = size, most.step = k;
  }
  return most;
}

/// The step that moved most of all that are compared; the zero reading that others are counted from does not.
std::optional<std::size_t> largestStep(const Comparison& comparison) {
  std::optional<std::size_t> largest;
  for (std::size_t k = 0; k < comparison.steps.size(); ++k) {
    const auto& moved = comparison.steps[k].moved;
    if (!moved || moved->standard == 0.0) continue;
    if (!largest || std::abs(moved->value) > std::abs(comparison.steps[*largest].moved->value)) largest = k;
  }
  return largest;
}

class Sentences {
 public:
  Sentences(const Channel& channel, const ChannelEvaluation& evaluation, const Comparison& comparison,
            std::size_t before, std::size_t after)
      : m_comparison(comparison),
        m_before(channel.checks[before]),
        m_after(channel.checks[after]),
        m_setup(setupOf(channel, m_before)),
        m_predicted(evaluation.checks[before].prediction),
        m_verdictBefore(evaluation.checks[before].assessment.verdict),
        m_verdictAfter(evaluation.checks[after].assessment.verdict),
        m_unit(readingUnitText(m_setup.instrument)) {}

  std::string text() && {
    addHeadline();
    addNotCompared();
    addWidened();
    addScatter();
    addRepeats();
    addChecks();
    return std::move(m_text);
  }

 private:
  void add(const std::string& sentence) { m_text += (m_text.empty() ? "" : " ") + sentence; }

  void addHeadline() {
    switch (m_comparison.change) {
      case Change::NotCompared:
        return add(say("Cannot be compared: no step was read in both checks."));
      case Change::Changed:
        return addChanged();
      case Change::CannotTell:
        return addOpen();
      case Change::Harmless:
        return add(say("Within the margin of {1}; what did change is harmless: {2}.", {margin(), figures()}));
      case Change::Unchanged:
        return add(say("Unchanged within {1}: {2}.", {margin(), figures()}));
    }
  }

  std::string margin() const { return marginText(m_setup.limits.change, 100, " %"); }

  /// "gain +0.02 % ± 0.05 %, zero 0.3 ± 0.2 µm/m, steps at most 0.8 ± 1.6 µm/m at step 4"
  std::string figures() const {
    std::string text;
    const auto addFigure = [&](const std::string& figure) { text += (text.empty() ? "" : ", ") + figure; };
    if (m_comparison.gain) addFigure(say("gain {1}", {gainText(*m_comparison.gain)}));
    if (m_comparison.zero) addFigure(say("zero {1}", {readingText(*m_comparison.zero, m_unit)}));
    if (const auto largest = largestStep(m_comparison))
      addFigure(
          say("steps at most {1} at step {2}",
              {readingText(*m_comparison.steps[*largest].moved, m_unit), std::to_string(*largest + 1)}));
    return text;
  }

  void addChanged() {
    const std::size_t begin = m_text.size();
    if (changeOf(m_comparison.gain) == Change::Changed)
      add(say("Changed by {1} (gain), where {2} would count as unchanged.",
              {gainText(*m_comparison.gain), margin()}));
    const bool gain = m_text.size() > begin;
    if (changeOf(m_comparison.zero) == Change::Changed) {
      const Difference& zero = *m_comparison.zero;
      add(say(gain ? sayLater("The zero moved by {1}, where {2} would count as unchanged: find out why.")
                   : sayLater("Changed: the zero moved by {1}, where {2} would count as unchanged. Find out "
                              "why."),
              {readingText(zero, m_unit), marginText(zero.margin, 1, " " + m_unit)}));
    }
    const Most most = mostOf(m_comparison, Change::Changed);
    if (most.steps.empty()) return addRest();
    const Difference& moved = *m_comparison.steps[most.step].moved;
    const std::string_view one = m_text.size() > begin
                                     ? sayLater("Step {1} moved by {2}, where {3} would count as unchanged.")
                                     : sayLater(
                                           "Changed: step {1} moved by {2}, where {3} would count as "
                                           "unchanged.");
    const std::string_view many =
        m_text.size() > begin
            ? sayLater("Steps {4} moved, most of all step {1} by {2}, where {3} would count as unchanged.")
            : sayLater(
                  "Changed: steps {4} moved, most of all step {1} by {2}, where {3} would count as "
                  "unchanged.");
    add(say(most.steps.size() == 1 ? one : many,
            {std::to_string(most.step + 1), readingText(moved, m_unit),
             marginText(moved.margin, 1, " " + m_unit), numberList(most.steps)}));
    addRest();
  }

  /// What did not change, so that nobody looks for it.
  void addRest() {
    const bool gainStays = verdictOf(changeOf(m_comparison.gain)) == Verdict::Pass;
    const bool stepsStay =
        std::all_of(m_comparison.steps.begin(), m_comparison.steps.end(),
                    [](const auto& step) { return verdictOf(changeOf(step.moved)) == Verdict::Pass; });
    if (gainStays && stepsStay)
      add(say("Gain and steps are unchanged: gain {1}.", {gainText(*m_comparison.gain)}));
    else if (gainStays)
      add(say("The gain is unchanged: {1}.", {gainText(*m_comparison.gain)}));
  }

  void addOpen() {
    const std::size_t begin = m_text.size();
    if (changeOf(m_comparison.gain) == Change::CannotTell)
      add(say("Cannot tell: the gain differs by {1}, which neither is within {2} nor differs from nothing.",
              {gainText(*m_comparison.gain), margin()}));
    if (changeOf(m_comparison.zero) == Change::CannotTell) {
      const Difference& zero = *m_comparison.zero;
      add(say(m_text.size() > begin
                  ? sayLater("So does the zero: {1} beside {2}.")
                  : sayLater("Cannot tell: the zero differs by {1}, which neither is within {2} nor differs "
                             "from nothing."),
              {readingText(zero, m_unit), marginText(zero.margin, 1, " " + m_unit)}));
    }
    const Most open = mostOf(m_comparison, Change::CannotTell);
    if (!open.steps.empty()) addOpenSteps(open, m_text.size() > begin);
    if (m_text.size() > begin) return;
    add(m_comparison.gain
            ? say("Cannot tell: not everything can be compared. What can is unchanged: {1}.", {figures()})
            : say("Cannot tell: too few steps can be compared for a gain."));
  }

  void addOpenSteps(const Most& open, bool more) {
    const Difference& moved = *m_comparison.steps[open.step].moved;
    const std::string_view one =
        more ? sayLater("Step {4} is open as well: {2} beside {3}.")
             : sayLater(
                   "Cannot tell: step {4} differs by {2}, which neither is within {3} nor differs from "
                   "nothing.");
    const std::string_view many =
        more ? sayLater("Steps {4} are open as well, most of all step {1}: {2} beside {3}.")
             : sayLater(
                   "Cannot tell: steps {4} neither are within their margins nor differ from nothing, most "
                   "of all step {1}: {2} beside {3}.");
    add(say(open.steps.size() == 1 ? one : many,
            {std::to_string(open.step + 1), readingText(moved, m_unit),
             marginText(moved.margin, 1, " " + m_unit), numberList(open.steps)}));
  }

  std::string halfOf(const std::vector<std::size_t>& steps) const {
    for (const Polarity polarity : {Polarity::Negative, Polarity::Positive}) {
      std::vector<std::size_t> half;
      for (std::size_t k = 0; k < m_predicted.steps.size(); ++k)
        if (m_predicted.steps[k] && m_predicted.steps[k]->polarity == polarity) half.push_back(k);
      const bool all = !half.empty() && std::all_of(half.begin(), half.end(), [&](std::size_t k) {
        return std::find(steps.begin(), steps.end(), k) != steps.end();
      });
      if (all) return std::string(polarityWord(polarity));
    }
    return {};
  }

  /// Steps that are not compared, by why.
  void addNotCompared() {
    std::vector<std::string> reasons;
    for (const StepComparison& step : m_comparison.steps)
      if (!step.moved && std::find(reasons.begin(), reasons.end(), step.reason) == reasons.end())
        reasons.push_back(step.reason);
    for (const std::string& reason : reasons) {
      std::vector<std::size_t> steps;
      for (std::size_t k = 0; k < m_comparison.steps.size(); ++k)
        if (!m_comparison.steps[k].moved && m_comparison.steps[k].reason == reason) steps.push_back(k);
      const std::string list = numberList(steps), half = halfOf(steps);
      add(steps.size() == 1 || half.empty()
              ? sayCount(steps.size(), "Step {1} is not compared: {2}", "Steps {1} are not compared: {2}",
                         {list, reason})
              : say("Steps {1}, all {3} ones among them, are not compared: {2}", {list, reason, half}));
    }
    if (!m_comparison.onlyAfter.empty())
      add(say(m_comparison.onlyAfter.size() == 1
                  ? sayLater("Step {1} of {2} has nothing to be compared with.")
                  : sayLater("Steps {1} of {2} have nothing to be compared with."),
              {numberList(m_comparison.onlyAfter), m_after.name}));
    addExchanged();
    addZeroMissing();
  }

  /// Steps held against another place of the sequence.
  void addExchanged() {
    for (std::size_t k = 0; k < m_comparison.steps.size(); ++k) {
      const auto& step = m_comparison.steps[k];
      if (step.afterStep && *step.afterStep != k && step.moved)
        add(say("Step {1} is compared with step {2} of {3}, which closes the same.",
                {std::to_string(k + 1), std::to_string(*step.afterStep + 1), m_after.name}));
    }
  }

  void addWidened() {
    if (m_comparison.gainWidened)
      add(say("The steps did not move along a line, so that the uncertainty of the gain is widened."));
  }

  void addZeroMissing() {
    if (m_comparison.zero) return;
    add(say("Nothing is said about the zero: it was not read in both checks."));
  }

  void addScatter() {
    if (m_comparison.change == Change::NotCompared) return;
    if (m_comparison.scatterFrom == ScatterFrom::Nowhere)
      add(say("No reading has an uncertainty, and there are too few for their scatter about a line."));
    if (m_comparison.scatterFrom == ScatterFrom::Residuals)
      add(say(
          "No reading has an uncertainty: their scatter about the lines of both checks is taken, {1} with "
          "{2} degrees of freedom.",
          {shown(formatNumber(*m_comparison.scatter, 2)) + " " + m_unit,
           shown(formatNumber(*m_comparison.scatterDof, 4))}));
  }

  void addRepeats() {
    const bool open = changeOf(m_comparison.gain) == Change::CannotTell ||
                      changeOf(m_comparison.zero) == Change::CannotTell ||
                      !mostOf(m_comparison, Change::CannotTell).steps.empty();
    if (!open || m_comparison.change != Change::CannotTell) return;
    if (m_comparison.scatterFrom == ScatterFrom::Nowhere) return;
    if (m_comparison.repeats)
      return add(say("{1} repeats of both checks would tell, if the differences stay what they are.",
                     {std::to_string(*m_comparison.repeats)}));
    add(say("No number of repeats would tell: what repeating does not average is too large."));
  }

  void addChecks() {
    if (m_verdictBefore == Verdict::Fail && m_verdictAfter == Verdict::Fail)
      return add(say("Both checks fail: see each of them."));
    const auto addCheck = [&](const Check& check, Verdict verdict) {
      if (verdict == Verdict::Fail) add(say("{1} fails.", {check.name}));
      if (verdict == Verdict::CannotTell) add(say("{1} cannot tell by itself.", {check.name}));
      if (verdict == Verdict::NotJudged) add(say("{1} is not judged.", {check.name}));
    };
    addCheck(m_before, m_verdictBefore);
    addCheck(m_after, m_verdictAfter);
  }

  const Comparison& m_comparison;
  const Check& m_before;
  const Check& m_after;
  const Setup& m_setup;
  const SetupPrediction& m_predicted;
  Verdict m_verdictBefore, m_verdictAfter;
  std::string m_unit;
  std::string m_text;
};

}  // namespace

std::string differenceText(const Difference& difference, double factor, std::string_view unit) {
  const double value = factor * difference.value;
  if (!std::isfinite(value)) return say("no number");
  if (!difference.expanded) return shown(formatNumber(value, 3)) + std::string(unit);
  const double expanded = factor * *difference.expanded;
  // No finer than a hundredth of the margin's second digit: what U says beyond that matters to nobody.
  const int finest = difference.margin > 0 ? placesOf(factor * difference.margin) + 2 : 9;
  const int places = std::min({placesOf(expanded), finest, 9});
  const bool tiny = expanded < 1e-9;
  const std::string number = tiny ? shown(formatNumber(value, 3)) : fixed(value, places);
  return number + " ± " + (tiny ? shown(formatNumber(expanded, 2)) : fixed(expanded, places)) +
         std::string(unit);
}

std::string gainText(const Difference& gain) {
  return (gain.value > 0 ? "+" : "") + differenceText(gain, 100, " %");
}

std::string marginText(double margin, double factor, std::string_view unit) {
  return shown(formatNumber(factor * margin, 3)) + std::string(unit);
}

std::string stepSentence(const StepComparison& step, const std::string& unit, bool protectedByJoint) {
  const Difference& moved = *step.moved;
  const std::string margin = marginText(moved.margin, 1, " " + unit);
  const std::string by = differenceText(moved, 1, " " + unit);
  if (!moved.standard) return say("Cannot tell: its uncertainty is not known.");
  if (*moved.standard == 0 && moved.value == 0) return say("The zero reading that others are counted from.");
  switch (moved.change) {
    case Change::Unchanged:
      return say("Unchanged within {1}.", {margin});
    case Change::Harmless:
      return say("Moved by {1}, within {2}.", {by, margin});
    case Change::Changed:
      return say("Moved by {1}, not within {2}.", {by, margin});
    case Change::CannotTell:
      return protectedByJoint
                 ? say("Cannot tell: it moved by {1}, but all steps together are as if nothing had changed.",
                       {by})
                 : say("Cannot tell: {1} neither is within {2} nor differs from nothing.", {by, margin});
    case Change::NotCompared:
      break;
  }
  return say("Not compared.");
}

std::string comparisonSentence(const Channel& channel, const ChannelEvaluation& evaluation,
                               const Comparison& comparison, std::size_t before, std::size_t after) {
  return Sentences(channel, evaluation, comparison, before, after).text();
}

}  // namespace core
