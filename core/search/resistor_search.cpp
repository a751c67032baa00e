// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/search/resistor_search.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numeric>
#include <set>
#include <tuple>

#include "core/search/exact_set.h"
#include "core/search/set_search.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

/// Candidates of one value and tolerance, first by id.
using Kind = std::vector<Candidate>;

Result<void> checkCandidate(const Candidate& candidate) {
  const double ohm = candidate.value.base();
  if (!std::isfinite(ohm) || !(ohm > 0))
    return Error{candidate.name, say("a resistor must have a finite resistance above zero"),
                 say("Enter its resistance")};
  if (!(candidate.tolerance >= 0 && candidate.tolerance < 1))
    return Error{candidate.name, say("the tolerance must be from 0 % to less than 100 %"),
                 say("Enter its tolerance")};
  return {};
}

Result<void> checkPositions(const ResistorSearch& search) {
  if (search.positions == 0 || search.positions > mostPositions)
    return Error{say("positions"),
                 say("{1} positions cannot be searched", {std::to_string(search.positions)}),
                 say("Choose from 1 to {1}", {std::to_string(mostPositions)})};
  if (search.fitted.size() < search.positions) return {};
  return Error{say("positions"),
               say("no position is free: {1} of {2} have a resistor already",
                   {std::to_string(search.fitted.size()), std::to_string(search.positions)}),
               say("Take a fitted resistor out, or raise the number of positions")};
}

Result<void> checkLevels(const Setup& setup, const ResistorSearch& search) {
  constexpr std::size_t mostLevels = 100;
  if (search.levels.empty())
    return Error{say("levels"), say("no level is wanted"), say("Enter at least one")};
  if (search.levels.size() > mostLevels)
    return Error{say("levels"), say("there are {1} of them", {std::to_string(search.levels.size())}),
                 say("Ask for at most {1}", {std::to_string(mostLevels)})};
  for (const double level : search.levels) {
    if (!std::isfinite(level))
      return Error{say("levels"), say("one is no finite number"), say("Enter a number")};
    if (level == 0) return Error{say("levels"), say("zero needs no resistor"), say("Leave it out")};
    if (!placeFor(search, level))
      return Error{levelText(setup.bridge, level),
                   level > 0 ? say("there is no place for positive levels")
                             : say("there is no place for negative levels"),
                   say("Choose the two nodes of the place, or leave these levels out")};
  }
  return {};
}

Result<void> checkSearch(const Setup& setup, const ResistorSearch& search,
                         std::span<const Candidate> candidates) {
  if (auto ok = checkPositions(search); !ok) return ok;
  if (auto ok = checkLevels(setup, search); !ok) return ok;
  for (const auto& all : {std::span<const Candidate>(search.fitted), candidates})
    for (const Candidate& candidate : all)
      if (auto ok = checkCandidate(candidate); !ok) return ok;
  return {};
}

/// The candidates that are not fitted, those that are alike together, by rising resistance. The order does
/// not depend on the order they come in.
std::vector<Kind> kindsOf(const ResistorSearch& search, std::span<const Candidate> candidates) {
  std::set<std::string> fitted;
  for (const Candidate& candidate : search.fitted)
    if (!candidate.part.empty()) fitted.insert(candidate.part);
  std::vector<Candidate> sorted;
  std::map<std::string, std::size_t> settings;
  for (const Candidate& candidate : candidates) {
    if (fitted.contains(candidate.part)) continue;
    sorted.push_back(candidate);
    if (!candidate.part.empty()) ++settings[candidate.part];
  }
  using Key = std::tuple<Resistance, double, bool, bool, const std::string&, const std::string&>;
  const auto key = [](const Candidate& c) {
    return Key(c.value, c.tolerance, c.part.empty(), !c.once, c.part, c.name);
  };
  std::stable_sort(sorted.begin(), sorted.end(),
                   [&](const Candidate& a, const Candidate& b) { return key(a) < key(b); });
  std::vector<Kind> kinds;
  const auto joins = [&](const Candidate& c) {
    if (kinds.empty() || (!c.part.empty() && settings[c.part] > 1)) return false;
    const Candidate& last = kinds.back().front();
    return (last.part.empty() || settings[last.part] == 1) && last.value == c.value &&
           last.tolerance == c.tolerance && last.once == c.once && last.part.empty() == c.part.empty();
  };
  for (Candidate& candidate : sorted) {
    if (joins(candidate))
      kinds.back().push_back(std::move(candidate));
    else
      kinds.push_back({std::move(candidate)});
  }
  return kinds;
}

ConductanceSpan spanOf(const Candidate& candidate, const ShuntPlace& place, bool atTolerance) {
  const double series = (place.wires + place.contact).base();
  const double ohm = candidate.value.base();
  if (!atTolerance) return {1 / (ohm + series), 1 / (ohm + series)};
  return {1 / (ohm * (1 + candidate.tolerance) + series), 1 / (ohm * (1 - candidate.tolerance) + series)};
}

Result<Goal> goalOf(const Setup& setup, const ResistorSearch& search, double level) {
  if (search.missUnit == MissUnit::OfLevel) return Goal{std::abs(level), 1 / std::abs(level), 1};
  const auto at = readingAt(setup, level);
  if (!at) return at.error();
  if (!(at->limit > 0))
    return Error{say("limits"), say("they permit no deviation at {1}", {levelText(setup.bridge, level)}),
                 say("Enter a limit, or count misses as shares of the level")};
  const double reading = std::abs(at->reading);
  return Goal{reading, 1 / at->limit, reading / at->limit};
}

Result<SearchSide> sideOf(const Setup& setup, const ResistorSearch& search, std::vector<double> levels,
                          const std::vector<Kind>& kinds) {
  std::sort(levels.begin(), levels.end(), [](double a, double b) { return std::abs(a) < std::abs(b); });
  const ShuntPlace& place = *placeFor(search, levels.front());
  const auto measure =
      search.missUnit == MissUnit::OfLevel ? ShuntCurve::Measure::Simulated : ShuntCurve::Measure::Reading;
  // Below this, roundings of the network would be too great a share of the curve.
  const double least = simulatedInUnit(setup.bridge, isTransducer(setup.bridge) ? 1e-3 : 1e-6);
  const double greatest = std::copysign(std::max(std::abs(levels.back()), least), levels.back());
  auto curve = ShuntCurve::make(setup, place, greatest, measure);
  if (!curve) return curve.error();
  SearchSide side{*std::move(curve), {}, {}, {}};
  for (const double level : levels) {
    const auto goal = goalOf(setup, search, level);
    if (!goal) return goal.error();
    side.goals.push_back(*goal);
  }
  for (const Candidate& fitted : search.fitted)
    side.fitted.push_back(spanOf(fitted, place, search.atTolerance));
  for (const Kind& kind : kinds) side.kinds.push_back(spanOf(kind.front(), place, search.atTolerance));
  return side;
}

Result<SetProblem> problemOf(const Setup& setup, const ResistorSearch& search,
                             const std::vector<Kind>& kinds) {
  SetProblem problem;
  problem.free = search.positions - search.fitted.size();
  problem.together = search.together;
  problem.most = std::max<std::size_t>(1, search.most);
  problem.threads = search.threads;
  std::map<std::string, std::size_t> settings;
  for (const Kind& kind : kinds) ++settings[kind.front().part];
  std::map<std::string, std::size_t> numbers;
  for (const Kind& kind : kinds) {
    const std::string& part = kind.front().part;
    const bool ofBox = !part.empty() && settings[part] > 1;
    problem.kinds.push_back({kind.front().once ? kind.size() : mostPositions,
                             ofBox ? numbers.try_emplace(part, numbers.size()).first->second : noPart,
                             part.empty()});
  }
  for (const bool positive : {true, false}) {
    std::vector<double> levels;
    for (const double level : search.levels)
      if ((level > 0) == positive) levels.push_back(level);
    if (levels.empty()) continue;
    auto side = sideOf(setup, search, levels, kinds);
    if (!side) return side.error();
    problem.sides.push_back(*std::move(side));
  }
  return problem;
}

Result<ResistorSet> exactSetOf(const Setup& setup, const ResistorSearch& search,
                               const std::vector<Kind>& kinds, const FoundSet& found) {
  std::vector<Candidate> resistors = search.fitted;
  std::map<std::int32_t, std::size_t> taken;
  for (const std::int32_t kind : found.kinds) {
    const Kind& all = kinds[static_cast<std::size_t>(kind)];
    resistors.push_back(all.front().once ? all[taken[kind]++] : all.front());
  }
  return exactSet(setup, search, resistors);
}

/// The resistors that together conduct most, or the single one that does.
std::vector<Candidate> strongest(const ResistorSearch& search, const std::vector<Kind>& kinds) {
  std::vector<Candidate> all;
  std::set<std::string> parts;
  std::size_t free = search.positions - search.fitted.size();
  for (const Kind& kind : kinds)
    for (std::size_t k = 0; free > 0 && k < (kind.front().once ? kind.size() : mostPositions); ++k) {
      const Candidate& next = kind.front().once ? kind[k] : kind.front();
      if (!next.part.empty() && !parts.insert(next.part).second) continue;
      all.push_back(next), --free;
    }
  all.insert(all.end(), search.fitted.begin(), search.fitted.end());
  if (search.together) return all;
  return {*std::min_element(all.begin(), all.end(),
                            [](const auto& a, const auto& b) { return a.value < b.value; })};
}

std::string namesOf(const std::vector<Candidate>& resistors) {
  std::vector<std::string> values;
  for (const Candidate& one : resistors)
    values.push_back(shown(formatQuantity(one.value.base(), UnitFamily::Resistance, {}, 6)));
  return values.size() > 1 ? say("{1} closed together", {sayAll(values)}) : sayAll(values);
}

/// A level that `closed` would reach, and whether it is near enough to `level`.
struct Nearest {
  double reached = 0;
  bool near = false;
  std::string by = {};
};
Result<Nearest> nearestBy(const Setup& setup, const ResistorSearch& search, double level,
                          const std::vector<Candidate>& closed) {
  double siemens = 0;
  const ShuntPlace& place = *placeFor(search, level);
  for (const Candidate& candidate : closed) siemens += spanOf(candidate, place, false).low;
  const auto response = shuntResponse(setup, place);
  if (!response) return response.error();
  auto circuit = BridgeCircuit::make(setup.bridge, setup.instrument, {});
  if (!circuit) return circuit.error();
  const auto stimulus = circuit->stimulusFor(response->at(siemens));
  if (!stimulus) return stimulus.error();
  const double reached = simulatedInUnit(setup.bridge, *stimulus);
  const auto wanted = readingAt(setup, level), got = readingAt(setup, reached);
  return Nearest{reached, wanted && got && std::abs(wanted->reading - got->reading) <= wanted->limit,
                 namesOf(closed)};
}

/// Combinations that come nearest to what `ohm` would do, from both sides. Together: the weakest and the
/// strongest of all, and none when the level lies between, since it is likely to be met then.
std::vector<std::vector<Candidate>> waysTo(const ResistorSearch& search, const std::vector<Kind>& kinds,
                                           double ohm) {
  std::vector<Candidate> singles = search.fitted;
  for (const Kind& kind : kinds) singles.push_back(kind.front());
  std::stable_sort(singles.begin(), singles.end(),
                   [](const auto& a, const auto& b) { return a.value < b.value; });
  if (search.together) {
    const auto all = strongest(search, kinds);
    double siemens = 0;
    for (const Candidate& candidate : all) siemens += 1 / candidate.value.base();
    if (singles.back().value.base() < ohm) return {{singles.back()}};
    if (ohm * siemens < 1) return {all};
    return {};
  }
  const auto above =
      std::find_if(singles.begin(), singles.end(), [&](const auto& c) { return c.value.base() >= ohm; });
  std::vector<std::vector<Candidate>> ways;
  if (above != singles.end()) ways.push_back({*above});
  if (above != singles.begin()) ways.push_back({*(above - 1)});
  return ways;
}

/// The nearest of several ways; none when nothing is known of any.
std::optional<Nearest> nearestOf(const Setup& setup, const ResistorSearch& search, double level,
                                 const std::vector<std::vector<Candidate>>& ways) {
  std::optional<Nearest> nearest;
  for (const auto& way : ways) {
    const auto now = nearestBy(setup, search, level, way);
    if (!now) continue;
    if (now->near) return *now;
    if (!nearest || std::abs(now->reached - level) < std::abs(nearest->reached - level)) nearest = *now;
  }
  return nearest;
}

/// A sentence when the nearest that the stock reaches lies beyond the limit at that level.
std::optional<std::string> unreachable(const Setup& setup, const ResistorSearch& search,
                                       const std::vector<Kind>& kinds, double level) {
  const auto wanted = resistanceFor(setup, *placeFor(search, level), level);
  auto ways = waysTo(search, kinds, wanted ? wanted->base() : 0);
  if (!wanted)  // too much for a short, or too little to be told from zero
    for (auto& way : waysTo(search, kinds, std::numeric_limits<double>::infinity()))
      ways.push_back(std::move(way));
  const auto nearest = nearestOf(setup, search, level, ways);
  if (!nearest || nearest->near) return std::nullopt;
  const std::string reached = levelText(setup.bridge, nearest->reached);
  const std::string start =
      say(wanted ? sayLater("{1} cannot be reached within the limits") : sayLater("{1} cannot be reached"),
          {levelText(setup.bridge, level)});
  if (std::abs(nearest->reached - level) >= std::abs(level))
    return say(
        "{1} with these resistors: they reach nothing between zero and {2}, with {3}, so that no resistor is "
        "nearer than none",
        {start, reached, nearest->by});
  return say(wanted ? sayLater("{1} with these resistors; the nearest is {2}, with {3}")
                    : sayLater("{1} by any resistance at this place; the nearest is {2}, with {3}"),
             {start, reached, nearest->by});
}

bool better(const ResistorSet& a, const ResistorSet& b) {
  return std::tie(a.greatestMiss, a.meanMiss, a.newParts) < std::tie(b.greatestMiss, b.meanMiss, b.newParts);
}

}  // namespace

Result<SearchOutcome> searchResistors(const Setup& setup, const ResistorSearch& search,
                                      std::span<const Candidate> candidates, const std::stop_token& stop,
                                      const Progress& progress) {
  if (auto ok = checkSearch(setup, search, candidates); !ok) return ok.error();
  const std::vector<Kind> kinds = kindsOf(search, candidates);
  if (kinds.empty())
    return Error{say("stock"), say("there is no resistor to choose from"),
                 say("Add resistors or a series to the stock, or widen the range of values")};
  const auto problem = problemOf(setup, search, kinds);
  if (!problem) return problem.error();
  const SetSearchResult found = searchSets(*problem, stop, progress);
  SearchOutcome outcome;
  for (const FoundSet& set : found.best) {
    auto exact = exactSetOf(setup, search, kinds, set);
    if (!exact) return exact.error();
    outcome.best.push_back(*std::move(exact));
  }
  std::stable_sort(outcome.best.begin(), outcome.best.end(), better);
  for (const double level : search.levels)
    if (auto sentence = unreachable(setup, search, kinds, level))
      outcome.unreachable.push_back(*std::move(sentence));
  outcome.setsInAll = setCount(*problem);
  outcome.boxesLookedAt = found.boxes;
  outcome.cancelled = found.cancelled;
  return outcome;
}

}  // namespace core
