// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/circuit/hookup.h"
#include "core/document/edits.h"
#include "core/review/arm_place.h"
#include "core/review/reviewed_plan.h"
#include "core/review/stated_polarity.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"

namespace core {
namespace {

/// The causes that there may be, those that the plan itself says first.
std::string whyOpposite(const Bridge& bridge) {
  const Hookup used = hookupInUse(bridge);
  std::string entered;
  const auto add = [&](bool is, const std::string& what) {
    if (is) entered += (entered.empty() ? "" : ", ") + std::string(what);
  };
  add(used.signalReversed, say("the signal wires are entered as reversed"));
  add(used.excitationReversed, say("the excitation is entered as reversed"));
  add(used.gaugesReversed, say("the gauges are entered as reversed"));
  add(!used.exchanged.empty(), say("leads are entered as exchanged"));
  if (!entered.empty())
    return say("Either {1} and should not be, the shunt lies on the wrong arm, or the label is wrong.",
               {entered});
  return say(
      "Either the shunt lies on the wrong arm, the signal or excitation wires are reversed, or the label is "
      "wrong.");
}

/// A step whose label, or whose only shunt's name, says the other polarity.
struct Contradiction {
  std::size_t step = 0;
  bool byLabel = true;
  Polarity said = Polarity::None;
  bool ofLoad = false;  ///< said of what is simulated, by a word such as tension; else of the reading
};

/// What is said of a step; None when nothing is.
Contradiction sayingOf(const Setup& setup, std::size_t step) {
  const Step& planned = setup.sequence[step];
  const Polarity label = statedPolarity(planned.label);
  const bool byLabel = label != Polarity::None || planned.closed.size() != 1;
  const std::string& text = byLabel ? planned.label : setup.shunts[planned.closed.front()].name;
  return {step, byLabel, statedPolarity(text), statesLoad(text)};
}

/// "will read -501.2 µm/m", "will simulate -500.1 µm/m".
std::string willDo(const ReviewedPlan& plan, const Contradiction& one) {
  const Prediction& prediction = *plan.evaluation.prediction.steps[one.step];
  if (!one.ofLoad) return say("will read {1}", {readingText(plan.setup(), prediction.reading.base())});
  const Bridge& bridge = plan.setup().bridge;
  return say("will simulate {1} {2}", {shown(formatNumber(simulatedInUnit(bridge, prediction.simulated), 4)),
                                       simulatedUnitText(bridge)});
}

std::string saidWord(const Contradiction& one) {
  if (!one.ofLoad) return std::string(polarityWord(one.said));
  return one.said == Polarity::Positive ? say("tension") : say("compression");
}

Channel withTextsTurned(Channel channel, const std::vector<Contradiction>& wrong) {
  for (const Contradiction& one : wrong) {
    Step step = channel.setup.sequence[one.step];
    if (one.byLabel) {
      step.label = withPolarityTurned(step.label, one.said);
      channel = withStep(std::move(channel), one.step, std::move(step));
    } else {
      const std::size_t index = step.closed.front();
      Shunt shunt = channel.setup.shunts[index];
      // Turned once, a shunt of several steps no longer says what was wrong.
      shunt.name = withPolarityTurned(shunt.name, one.said);
      channel = withShunt(std::move(channel), index, std::move(shunt));
    }
  }
  return channel;
}

/// The shunts that `wrong` steps close; none when one of them cannot be moved, or does right elsewhere.
std::vector<std::size_t> movable(const Setup& setup, const std::vector<Contradiction>& wrong,
                                 const std::vector<std::size_t>& right) {
  std::vector<std::size_t> shunts;
  for (const Contradiction& one : wrong)
    for (const std::size_t shunt : setup.sequence[one.step].closed) {
      const bool known = std::find(shunts.begin(), shunts.end(), shunt) != shunts.end();
      if (!known) shunts.push_back(shunt);
      if (!placeOf(setup.bridge, setup.shunts[shunt])) return {};
    }
  for (const std::size_t step : right)
    for (const std::size_t shunt : setup.sequence[step].closed)
      if (std::find(shunts.begin(), shunts.end(), shunt) != shunts.end()) return {};
  return shunts;
}

std::vector<Mend> mendsOf(const Setup& setup, const std::vector<Contradiction>& wrong,
                          const std::vector<std::size_t>& right) {
  const std::string text = wrong.front().byLabel ? say("label") : say("name");
  const bool all = wrong.size() > 1 && right.empty();
  std::vector<Mend> mends = {{all ? std::string(say("Correct all labels")) : say("Correct the {1}", {text}),
                              [wrong](const Channel& channel) { return withTextsTurned(channel, wrong); }}};
  auto shunts = movable(setup, wrong, right);
  if (shunts.empty()) return mends;
  const std::string what =
      shunts.size() == 1 ? inQuotes(setup.shunts[shunts.front()].name) : say("the shunts");
  mends.push_back({say("Move {1} to the neighbouring arm", {what}), [shunts](Channel channel) {
                     for (const std::size_t shunt : shunts)
                       if (const auto moved = onNeighbour(channel.setup.bridge, channel.setup.shunts[shunt]))
                         channel = withShuntAt(std::move(channel), shunt, moved->a, moved->b);
                     return channel;
                   }});
  return mends;
}

/// Where wires or gauges that are reversed, and nothing else, turn every label round.
std::optional<Mend> asTemplateMend(const Bridge& bridge, const std::vector<Contradiction>& wrong) {
  const bool ofLoad = wrong.front().ofLoad;
  const bool alike =
      std::all_of(wrong.begin(), wrong.end(), [&](const Contradiction& one) { return one.ofLoad == ofLoad; });
  if (!alike || !areLeadsInOrder(bridge) || (ofLoad ? gaugeSign(bridge) : outputSign(bridge)) > 0) return {};
  return Mend{
      ofLoad ? say("Connect the gauges as the template says") : say("Connect the wires as the template says"),
      [ofLoad](Channel channel) {
        Hookup& hookup = channel.setup.bridge.hookup;
        if (ofLoad)
          hookup.gaugesReversed = false;
        else
          hookup.signalReversed = hookup.excitationReversed = false;
        return channel;
      }};
}

/// Of one step, and of those that close the same under the same label or the same wrong name.
void addOne(const ReviewedPlan& plan, std::vector<Finding>& findings, const std::vector<Contradiction>& same,
            const std::vector<std::size_t>& right) {
  const Setup& setup = plan.setup();
  const Contradiction& first = same.front();
  const Step& step = setup.sequence[first.step];
  const std::string text =
      first.byLabel ? say("Its label {1}", {inQuotes(step.label)})
                    : say("Its shunt's name {1}", {inQuotes(setup.shunts[step.closed.front()].name)});
  std::optional<std::size_t> shunt;
  if (step.closed.size() == 1) shunt = step.closed.front();
  findings.push_back({FindingKind::OppositePolarity, Severity::Fault, first.step, shunt,
                      say("{1} says {2}, it {3}.", {text, saidWord(first), willDo(plan, first)}),
                      whyOpposite(setup.bridge), mendsOf(setup, same, right)});
}

void addAll(const ReviewedPlan& plan, std::vector<Finding>& findings,
            const std::vector<Contradiction>& wrong) {
  const Setup& setup = plan.setup();
  const std::size_t step = wrong.front().step;
  auto mends = mendsOf(setup, wrong, {});
  if (auto mend = asTemplateMend(setup.bridge, wrong)) mends.push_back(*std::move(mend));
  findings.push_back({FindingKind::OppositePolarity,
                      Severity::Fault,
                      step,
                      {},
                      say("Every label that says a polarity says the other one, in {1}: {2} {3}.",
                          {sayCount(wrong.size(), "{n} step", "{n} steps"), stepText(setup, step),
                           willDo(plan, wrong.front())}),
                      whyOpposite(setup.bridge),
                      std::move(mends)});
}

/// Whether the sign of a step is beyond its uncertainty.
bool isCertain(const ReviewedPlan& plan, std::size_t step) {
  const auto& closed = plan.setup().sequence[step].closed;
  const auto level = std::find_if(plan.levels.begin(), plan.levels.end(),
                                  [&](const ReviewedLevel& one) { return one.closed == closed; });
  return level != plan.levels.end() && !isBelowUncertainty(*level);
}

}  // namespace

void findOppositePolarity(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const Setup& setup = plan.setup();
  std::vector<Contradiction> wrong;
  std::vector<std::size_t> right;
  for (std::size_t step = 0; step < setup.sequence.size(); ++step) {
    const auto& prediction = plan.evaluation.prediction.steps[step];
    if (!prediction || !isCertain(plan, step)) continue;
    const Contradiction saying = sayingOf(setup, step);
    const bool isRight = saying.said == polarityByWord(saying.ofLoad, *prediction);
    if (isRight) right.push_back(step);
    if (!isRight && saying.said != Polarity::None) wrong.push_back(saying);
  }
  if (right.empty() && wrong.size() > 1) return addAll(plan, findings, wrong);
  while (!wrong.empty()) {
    const Contradiction first = wrong.front();
    const auto other = std::stable_partition(wrong.begin(), wrong.end(), [&](const Contradiction& one) {
      const Step &step = setup.sequence[one.step], &like = setup.sequence[first.step];
      return step.closed == like.closed && one.byLabel == first.byLabel &&
             (!one.byLabel || step.label == like.label);
    });
    addOne(plan, findings, {wrong.begin(), other}, right);
    wrong.erase(wrong.begin(), other);
  }
}

}  // namespace core
