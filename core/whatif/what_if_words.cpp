// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/number_list.h"
#include "core/units/shown.h"
#include "core/units/text.h"
#include "core/whatif/what_if.h"

namespace core {
namespace {

/// Common practice, no source: inputs for strain gauges end at some 10 mV/V, few beyond 100 mV/V.
constexpr double farBeyond = 0.1;

/// Places that show `value` with three significant digits.
int threePlaces(double value) {
  if (value == 0 || !std::isfinite(value)) return 1;
  return static_cast<int>(std::clamp(2 - std::floor(std::log10(std::abs(value))), 0.0, 9.0));
}

bool areAll(const std::vector<std::size_t>& steps, std::size_t all) { return steps.size() == all && all > 1; }

/// Says what one what-if does, a sentence for each thing that it does.
class Saying {
 public:
  Saying(const WhatIf& whatIf, Zeroed zeroed) : m_whatIf(whatIf), m_zeroed(zeroed) {
    for (std::size_t step = 0; step < whatIf.steps.size(); ++step) {
      const WhatIfStep& one = whatIf.steps[step];
      if (!one.without) continue;
      const bool closes = !whatIf.before.sequence[step].closed.empty();
      (one.with(zeroed) ? m_read : m_lost).push_back(step);
      if (closes && one.with(zeroed)) m_closing.push_back(step);
    }
  }

  std::string text() {
    if (!m_whatIf.zeroWithout)
      return say("The plan cannot be worked out as it is: {1}", {m_whatIf.zeroWithout.error().text()});
    if (m_whatIf.tried > 1 && m_whatIf.setup == m_whatIf.before)
      return say("Together they change nothing: the bridge is as it was.");
    const std::string hidden = articleSentence(m_whatIf, true);
    add(hidden);
    const bool zeroFirst = m_zeroed == Zeroed::Before || isZeroTheMatter();
    sayLost();
    if (zeroFirst) sayZero();
    saySigns();
    if (!allGone() && !onlySignsTurn() && !onlyZero()) sayChange();
    if (!zeroFirst) sayZero();
    sayRange();
    if (m_text == hidden) sayNothing();
    const std::string article = articleSentence(m_whatIf, false);
    if (m_text.find(article) == std::string::npos) add(article);
    return m_text;
  }

 private:
  void add(const std::string& sentence) {
    if (!sentence.empty()) m_text += (m_text.empty() ? "" : " ") + sentence;
  }

  const StepReading& without(std::size_t step) const { return *m_whatIf.steps[step].without; }
  const StepReading& with(std::size_t step) const { return *m_whatIf.steps[step].with(m_zeroed); }
  double difference(std::size_t step) const { return (with(step).reading - without(step).reading).base(); }
  bool same(std::size_t step) const {
    return sameReading(m_whatIf, with(step).reading, without(step).reading);
  }

  std::string number(double value) const {
    const double shown = withoutRounding(m_whatIf, value);
    return core::shown(formatFixed(shown, placesShowing(shown, readingPlaces(m_whatIf))));
  }
  /// With as many digits as per cent are told with.
  std::string difference3(double value) const {
    return core::shown(formatFixed(value, threePlaces(value))) + " " +
           readingUnitText(m_whatIf.setup.instrument);
  }
  std::string withUnit(double value) const {
    return number(value) + " " + readingUnitText(m_whatIf.setup.instrument);
  }
  std::string labelled(std::size_t step) const {
    const std::string& label = m_whatIf.before.sequence[step].label;
    return std::to_string(step + 1) + (label.empty() ? "" : " " + inQuotes(label));
  }

  /// What the zero says is wrong, if all steps are lost with it; else what the first lost step says.
  void sayLost() {
    if (m_lost.empty()) return;
    const std::size_t all = m_read.size() + m_lost.size();
    const Error& why = m_whatIf.steps[m_lost.front()].with(m_zeroed).error();
    const bool none = m_lost.size() == all;
    if (none)
      add(say("No step can be read any more ({1}: {2}).", {why.where, why.what}));
    else
      add(sayCount(m_lost.size(), "Step {1} cannot be read any more ({2}: {3}).",
                   "Steps {1} cannot be read any more ({2}: {3}).",
                   {numberList(m_lost), why.where, why.what}));
    if (!m_whatIf.zeroWith && hangsInTheAir()) add(say("An input that hangs in the air shows anything."));
  }

  /// Whether a wire is broken that carries no current, so that nothing else holds its terminal.
  bool hangsInTheAir() const {
    const Bridge& bridge = m_whatIf.setup.bridge;
    const std::vector<Wire> wires = wiresOf(bridge);
    return std::any_of(wires.begin(), wires.end(), [&](const Wire& wire) {
      const bool measures = wire.from == Node::SPlus || wire.from == Node::SMinus ||
                            wire.from == Node::SensePlus || wire.from == Node::SenseMinus;
      return measures && isBroken(bridge, wire.role);
    });
  }

  /// The share by which the reading of `step` is larger; none without an expected reading of that sign.
  std::optional<double> growth(std::size_t step) const {
    const double before = without(step).reading.base(), after = with(step).reading.base();
    if (sameReading(m_whatIf, Reading(before), Reading(0)) || before * after < 0) return std::nullopt;
    return after / before - 1;
  }

  static std::string growthText(double share) {
    return core::shown(formatNumber(std::abs(100 * share), 3)) + " % " +
           (share < 0 ? say("smaller") : say("larger"));
  }

  /// Whether all readings change by one share, to a ten-thousandth of the reading.
  std::optional<double> commonGrowth() const {
    std::optional<double> least, most;
    for (const std::size_t step : m_closing) {
      const auto share = growth(step);
      if (!share) return std::nullopt;
      least = least ? std::min(*least, *share) : *share;
      most = most ? std::max(*most, *share) : *share;
    }
    if (m_closing.size() < 2 || *most - *least > 1e-4) return std::nullopt;
    // As a sentence it must hold to the digits that are shown.
    return std::abs(*most - *least) < 0.05 * std::abs(*most) ? std::optional((*least + *most) / 2)
                                                             : std::nullopt;
  }

  /// Whether the reading of `step` is shown as it was, or changes by less than anybody can tell.
  bool isUnseen(std::size_t step) const {
    const double change = difference(step);
    const double uncertainty =
        step < m_whatIf.uncertainty.size() ? m_whatIf.uncertainty[step].value_or(0) : 0;
    return shownDifference(m_whatIf, change).value == 0 ||
           (std::abs(change) < uncertainty && turned().empty()) ||
           number(with(step).reading.base()) == number(without(step).reading.base());
  }

  void sayUnseen(std::size_t step) {
    const double change = std::abs(difference(step));
    const auto share = growth(step);
    if (shownDifference(m_whatIf, change).value == 0) return add(say("No visible change of the readings."));
    add(say("No visible change of the readings: step {1} changes most, by {2}{3}.",
            {labelled(step), difference3(change),
             (share ? " (" + core::shown(formatNumber(std::abs(100 * *share), 3)) + " %)" : "")}));
  }

  void sayChange() {
    // Of steps that still do something: the others are told already.
    std::vector<std::size_t> steps = m_read;
    const std::vector<std::size_t> still = gone();
    std::erase_if(
        steps, [&](std::size_t step) { return std::find(still.begin(), still.end(), step) != still.end(); });
    const auto largest = std::max_element(steps.begin(), steps.end(), [this](std::size_t a, std::size_t b) {
      return std::abs(difference(a)) < std::abs(difference(b));
    });
    if (largest == steps.end() || same(*largest)) return;
    if (isUnseen(*largest)) return sayUnseen(*largest);
    const auto common = m_zeroed == Zeroed::After ? commonGrowth() : std::nullopt;
    if (common && *common > -0.9999) add(say("All readings are {1}.", {growthText(*common)}));
    const auto share = growth(*largest);
    // A reading many times as large is no matter of per cent.
    const bool tellShare = share && !common && *share < 9;
    const double change = difference(*largest);
    std::string away =
        say(change < 0 ? sayLater("{1} lower") : sayLater("{1} higher"), {difference3(std::abs(change))});
    if (tellShare) away = say("{1}, {2} in size", {away, growthText(*share)});
    add(say(common ? sayLater("The largest change: step {1} reads {2} instead of {3}, {4}.")
            : still.empty()
                ? sayLater("Step {1} changes most: it reads {2} instead of {3}, {4}.")
                : sayLater("Of the others step {1} changes most: it reads {2} instead of {3}, {4}."),
            {labelled(*largest), number(with(*largest).reading.base()),
             withUnit(without(*largest).reading.base()), away}));
  }

  std::vector<std::size_t> turned() const {
    std::vector<std::size_t> steps;
    for (const std::size_t step : m_closing)
      if (static_cast<int>(without(step).polarity) * static_cast<int>(with(step).polarity) < 0)
        steps.push_back(step);
    return steps;
  }

  std::vector<std::size_t> gone() const {
    std::vector<std::size_t> steps;
    for (const std::size_t step : m_closing)
      if (without(step).polarity != Polarity::None && with(step).polarity == Polarity::None)
        steps.push_back(step);
    return steps;
  }
  bool allGone() const { return !m_closing.empty() && gone().size() == m_closing.size(); }

  /// Every reading is as large as it was, to a millionth, which is less than is shown, and has the other
  /// sign.
  bool onlySignsTurn() const {
    return turned().size() == m_closing.size() &&
           std::all_of(m_read.begin(), m_read.end(), [this](std::size_t step) {
             const double before = std::abs(without(step).reading.base());
             return std::abs(std::abs(with(step).reading.base()) - before) <= 1e-6 * before || same(step);
           });
  }

  /// Every reading is off by the jump of the zero, to what is worth telling apart beside it.
  bool onlyZero() const {
    if (m_zeroed == Zeroed::After || !m_whatIf.zeroJump) return false;
    const double jump = m_whatIf.zeroJump->base();
    return std::all_of(m_read.begin(), m_read.end(), [&](std::size_t step) {
      return std::abs(difference(step) - jump) <= 0.02 * std::abs(jump);
    });
  }

  void saySigns() {
    const std::vector<std::size_t> still = gone(), steps = turned();
    if (!still.empty())
      add(allGone() ? say("No step moves the reading any more.")
                    : sayCount(still.size(), "Step {1} does not move the reading any more.",
                               "Steps {1} do not move the reading any more.", {numberList(still)}));
    if (steps.empty()) return;
    const std::string turn = areAll(steps, m_closing.size())
                                 ? say("All readings turn their sign")
                                 : sayCount(steps.size(), "Step {1} turns its sign",
                                            "Steps {1} turn their sign", {numberList(steps)});
    add(onlySignsTurn() ? say("{1}; the sizes stay.", {turn}) : say("{1}.", {turn}));
  }

  void sayZero() {
    if (!m_whatIf.zeroJump || sameReading(m_whatIf, *m_whatIf.zeroJump, Reading(0))) return;
    const double jump = m_whatIf.zeroJump->base();
    const double output = (*m_whatIf.zeroWith - *m_whatIf.zeroWithout).base();
    std::string by = (jump > 0 ? "+" : "") + withUnit(jump);
    if (m_whatIf.setup.instrument.unit != ReadingUnit::MillivoltPerVolt)
      by += " (" + core::shown(formatQuantity(output, UnitFamily::Output, {}, 3)) + ")";
    const std::string jumps =
        say(m_zeroed == Zeroed::After && !isZeroBeyond()
                ? sayLater("The zero jumps by {1}, which zeroing takes away")
            : m_zeroed == Zeroed::Before ? sayLater("The zero jumps by {1}, which is in every reading")
                                         : sayLater("The zero jumps by {1}"),
            {by});
    add(isZeroBeyond() ? say("{1}; the zero is then beyond the ±{2}.", {jumps, rangeText()})
                       : say("{1}.", {jumps}));
    if (!m_whatIf.setup.instrument.range && std::abs(m_whatIf.zeroWith->base()) > farBeyond)
      add(say("That is far beyond what an instrument for strain gauges takes."));
  }

  std::string rangeText() const {
    return say("{1} that the instrument takes",
               {core::shown(formatQuantity(m_whatIf.setup.instrument.range->base(), UnitFamily::Output))});
  }

  /// Whether the zero has come to lie where the instrument does not follow.
  bool isZeroBeyond() const {
    const auto& range = m_whatIf.setup.instrument.range;
    if (!range || !m_whatIf.zeroWith || !m_whatIf.zeroWithout) return false;
    const auto isBeyond = [&](Output zero) { return std::abs(zero.base()) > range->base(); };
    return isBeyond(*m_whatIf.zeroWith) && !isBeyond(*m_whatIf.zeroWithout);
  }

  /// Whether the zero is what comes of it: beyond what the instrument takes, or far more than what becomes of
  /// the readings once it is zeroed away.
  bool isZeroTheMatter() const {
    if (!m_whatIf.zeroJump || sameReading(m_whatIf, *m_whatIf.zeroJump, Reading(0))) return false;
    const auto& range = m_whatIf.setup.instrument.range;
    const double jump = std::abs((*m_whatIf.zeroWith - *m_whatIf.zeroWithout).base());
    if (std::max(std::abs(m_whatIf.zeroWith->base()), jump) > (range ? range->base() : farBeyond))
      return true;
    return std::all_of(m_read.begin(), m_read.end(), [&](std::size_t step) {
      return 10 * std::abs(difference(step)) < std::abs(m_whatIf.zeroJump->base());
    });
  }

  void sayRange() {
    std::vector<std::size_t> beyond;
    for (const std::size_t step : m_read)
      if (with(step).beyondRange && !without(step).beyondRange) beyond.push_back(step);
    if (beyond.empty() || (isZeroBeyond() && beyond.size() == m_read.size())) return;
    add(areAll(beyond, m_read.size())
            ? say("All steps lie beyond the ±{1}.", {rangeText()})
            : sayCount(beyond.size(), "Step {1} lies beyond the ±{2}.", "Steps {1} lie beyond the ±{2}.",
                       {numberList(beyond), rangeText()}));
  }

  void sayNothing() {
    if (m_whatIf.steps.empty()) return add(say("The reading with all shunts open does not change."));
    // What the article reads is the greater part then, and said before.
    const bool alone = m_text.empty();
    const std::string nothing = m_whatIf.tried > 1 ? say("Together they change no reading and no zero")
                                                   : say("No reading changes and no zero");
    add(alone ? say("{1}: a shunt check does not see this.", {nothing}) : say("{1}.", {nothing}));
    sayWhyNoLeak();
  }

  /// A single leak to a structure that nothing else is connected to.
  void sayWhyNoLeak() {
    const auto& leaks = m_whatIf.setup.bridge.leaks;
    const auto paths = std::count_if(leaks.begin(), leaks.end(),
                                     [](const Leak& leak) { return leak.toStructure.has_value(); });
    if (paths == 1 && m_whatIf.setup.instrument.grounding == Grounding::Floating)
      add(say("The structure is connected to nothing else, so no current leaks to it."));
  }

  const WhatIf& m_whatIf;
  Zeroed m_zeroed;
  std::vector<std::size_t> m_read;     ///< steps that can be read, with and without
  std::vector<std::size_t> m_lost;     ///< steps that could be read without
  std::vector<std::size_t> m_closing;  ///< those of `m_read` that close a shunt
  std::string m_text;
};

}  // namespace

std::string whatIfSentence(const WhatIf& whatIf, Zeroed zeroed) { return Saying(whatIf, zeroed).text(); }

std::string_view whatIfCaution() {
  return sayName(
      "Worked out from the circuit as it is entered. It says nothing about the real article: a reading that "
      "fits does not prove the fault, and a fault that is not tried out is not ruled out.");
}

}  // namespace core
