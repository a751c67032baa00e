// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/further_steps.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "core/diagnose/cause_words.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

constexpr std::size_t mostResistors = 8;
/// How far a further step may go beyond the plan, where the instrument's range is not known.
constexpr double mostBeyondPlan = 1.25;

using Place = std::pair<Node, Node>;

class Collector {
 public:
  explicit Collector(const DiagnosisGround& ground) : m_check(ground.check), m_plan(ground.setup) {
    m_result.setup = ground.setup;
    m_result.check = ground.check;
    m_result.check.readings.resize(m_plan.sequence.size());
    m_result.points = ground.points;
    m_result.points.covariance.clear();
  }

  FurtherSteps collect() {
    listShunts();
    addZero();
    for (const std::size_t shunt : m_shunts) add(say("{1} alone", {textOf(m_plan.shunts[shunt])}), {shunt});
    addPairs();
    addMoved();
    m_result.prediction = predict(m_result.setup);
    leaveOutUseless();
    return std::move(m_result);
  }

 private:
  /// Shunts that the plan closes, each resistor at each place once.
  void listShunts() {
    for (std::size_t k = 0; k < m_plan.shunts.size() && m_shunts.size() < 2 * mostResistors; ++k) {
      const bool used = std::any_of(m_plan.sequence.begin(), m_plan.sequence.end(), [k](const Step& step) {
        return std::find(step.closed.begin(), step.closed.end(), k) != step.closed.end();
      });
      if (used) m_shunts.push_back(k);
    }
  }

  Place placeOf(Node a, Node b) const {
    const Node one = pointOf(m_plan.bridge, a), other = pointOf(m_plan.bridge, b);
    return {std::min(one, other), std::max(one, other)};
  }
  Place placeOf(const Shunt& shunt) const { return placeOf(shunt.a, shunt.b); }

  /// The arm that lies between just these two points.
  std::optional<std::size_t> armAcross(Place place) const {
    for (const std::size_t arm : {0, 1, 2, 3})
      if (place == placeOf(armBegin(arm), armEnd(arm))) return arm;
    return std::nullopt;
  }
  /// "across arm 2", or "from terminal P+ to terminal S-".
  std::string placeText(Place place) const {
    if (const auto arm = armAcross(place)) return say("across arm {1}", {std::to_string(*arm + 1)});
    return say("from {1}", {endsText(place)});
  }
  std::string endsText(Place place) const {
    return say("{1} to {2}", {pointName(m_plan.bridge, place.first), pointName(m_plan.bridge, place.second)});
  }
  /// Whether both ends are within reach at the instrument.
  static bool isAtInstrument(Place place) {
    return place.first < Node::Arm1Begin && place.second < Node::Arm1Begin;
  }

  std::string textOf(const Shunt& shunt) const {
    const std::string value = shown(formatQuantity(shunt.resistance.base(), UnitFamily::Resistance, {}, 6));
    const std::string label = shunt.part.id.empty() ? std::string() : " (" + shunt.part.id + ")";
    return value + label + " " + placeText(placeOf(shunt));
  }

  /// "step 3 (R2 up) once more" where the plan has the step, "..., which has no reading" where it lacks one,
  /// else `text`.
  std::string nameOf(std::string text, const std::vector<std::size_t>& closed) const {
    const auto& steps = m_plan.sequence;
    const auto planned =
        std::find_if(steps.begin(), steps.end(), [&](const Step& step) { return step.closed == closed; });
    if (closed.empty() || planned == steps.end()) return text;
    const auto step = static_cast<std::size_t>(planned - steps.begin());
    const bool isRead = step < m_check.readings.size() && m_check.readings[step];
    return say(isRead ? sayLater("{1} once more") : sayLater("{1}, which has no reading"),
               {stepWords(m_plan, step)});
  }

  void add(const std::string& text, std::vector<std::size_t> closed) {
    const std::size_t step = m_result.setup.sequence.size();
    m_result.list.push_back({nameOf(text, closed), step, std::nullopt});
    Step further;
    further.closed = std::move(closed);
    further.hold = further.settle = Duration(0);
    Measured reading;
    const Step last = m_plan.sequence.empty() ? Step{} : m_plan.sequence.back();
    const Duration middle = last.settle + 0.5 * last.hold;
    if (m_result.list.size() == 1) further.settle = middle;
    if (step > 0 && m_result.check.readings[m_plan.sequence.size() - 1]) {
      const Measured& before = *m_result.check.readings[m_plan.sequence.size() - 1];
      if (before.end) reading.begin = reading.end = *before.end + middle;
    }
    m_result.setup.sequence.push_back(std::move(further));
    m_result.check.readings.push_back(reading);
  }

  void addZero() {
    const bool last = !m_plan.sequence.empty() && m_plan.sequence.back().closed.empty();
    add(last ? say("one more zero step at the end") : say("a zero step at the end"), {});
  }

  void addPairs() {
    const std::size_t count = std::min(m_shunts.size(), mostResistors);
    for (std::size_t i = 0; i < count; ++i)
      for (std::size_t j = i + 1; j < count; ++j) {
        const Shunt& one = m_plan.shunts[m_shunts[i]];
        const Shunt& other = m_plan.shunts[m_shunts[j]];
        if (resistorName(one) == resistorName(other)) continue;
        add(say("{1} together with {2}", {textOf(one), textOf(other)}), {m_shunts[i], m_shunts[j]});
      }
  }

  /// Arms first, then neighbouring terminals of the instrument that are another place.
  std::vector<Place> places() const {
    std::vector<Place> places;
    const auto put = [&](Place place) {
      if (std::find(places.begin(), places.end(), place) == places.end()) places.push_back(place);
    };
    for (const std::size_t arm : {0, 1, 2, 3}) put(placeOf(armBegin(arm), armEnd(arm)));
    constexpr std::array<Place, 4> terminals{{{Node::PPlus, Node::SMinus},
                                              {Node::SMinus, Node::PMinus},
                                              {Node::PMinus, Node::SPlus},
                                              {Node::SPlus, Node::PPlus}}};
    for (const auto& [a, b] : terminals) put(placeOf(a, b));
    return places;
  }

  void addMoved() {
    std::vector<std::size_t> resistors;
    for (const std::size_t shunt : m_shunts) {
      const bool known = std::any_of(resistors.begin(), resistors.end(), [&](std::size_t other) {
        return m_plan.shunts[other].resistance == m_plan.shunts[shunt].resistance;
      });
      if (!known && resistors.size() < mostResistors) resistors.push_back(shunt);
    }
    for (const Place& place : places())
      for (const std::size_t shunt : resistors) addMoved(shunt, place);
  }

  void addMoved(std::size_t shunt, Place place) {
    const bool there = std::any_of(m_shunts.begin(), m_shunts.end(), [&](std::size_t other) {
      return m_plan.shunts[other].resistance == m_plan.shunts[shunt].resistance &&
             placeOf(m_plan.shunts[other]) == place;
    });
    if (there) return;
    Shunt moved = m_plan.shunts[shunt];
    moved.a = place.first;
    moved.b = place.second;
    const std::size_t index = m_result.setup.shunts.size();
    const bool arm = armAcross(place).has_value();
    add(textOf(moved) + (arm && isAtInstrument(place) ? ", " + endsText(place) : std::string()), {index});
    m_result.list.back().moved = std::pair(shunt, index);
    m_result.setup.shunts.push_back(std::move(moved));
  }

  bool isWithinRange(const Prediction& prediction) const {
    const auto& range = m_plan.instrument.range;
    if (range && m_result.prediction.zero)
      return std::abs((*m_result.prediction.zero + prediction.output).base()) <= range->base();
    double greatest = 0;
    for (const double expected : m_result.points.expected) greatest = std::max(greatest, std::abs(expected));
    return std::abs(prediction.reading.base()) <= mostBeyondPlan * greatest;
  }

  /// Leaves steps that cannot be predicted, are beyond the range, or do nothing, and gives the others a
  /// point.
  void leaveOutUseless() {
    const auto& predicted = m_result.prediction.steps;
    std::erase_if(m_result.list, [&](const FurtherStep& further) {
      const auto& prediction = predicted[further.step];
      if (!prediction || !isWithinRange(*prediction)) return true;
      const bool closes = !m_result.setup.sequence[further.step].closed.empty();
      return closes && prediction->polarity == Polarity::None;
    });
    for (const FurtherStep& further : m_result.list) {
      m_result.points.steps.push_back(further.step);
      m_result.points.expected.push_back(predicted[further.step]->reading.base());
    }
  }

  const Check& m_check;
  const Setup& m_plan;
  std::vector<std::size_t> m_shunts;
  FurtherSteps m_result;
};

}  // namespace

FurtherSteps furtherSteps(const DiagnosisGround& ground) { return Collector(ground).collect(); }

}  // namespace core
