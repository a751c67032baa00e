// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/run_readings.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace core {
namespace {

/// Readings that cost at most so much more than the best are about as likely: a factor of 12. When the best
/// one has something wrong already, another one may have a little more, though never a level and a step that
/// stay alone where one wrong level would do.
constexpr double leastMargin = 2.5, greatestMargin = 3.4, marginOfCost = 0.6;
/// Of a run that is cut off the gain is less certain, and with it which end was cut off.
constexpr double marginOfCut = 4.5;
/// Where a single change tells the gain and steps have no level, any step may be the one that was done.
constexpr double marginOfOneChange = 6;
// As in the alignment: two steps exchanged cost 3; further steps out of order are likely to go with them.
constexpr double reorderFirst = match_cost::swap, reorderNext = 1.2;

constexpr double noFit = std::numeric_limits<double>::infinity();

/// Which of `values` make up a longest rising sequence; of several the one with most values in their place,
/// value = index.
std::vector<bool> inRisingOrder(const std::vector<std::size_t>& values) {
  std::vector<std::size_t> weight(values.size()), from(values.size());
  std::size_t last = 0;
  for (std::size_t k = 0; k < values.size(); ++k) {
    const std::size_t own = 2 * values.size() + (values[k] == k ? 1 : 0);
    weight[k] = own;
    from[k] = k;
    for (std::size_t i = 0; i < k; ++i)
      if (values[i] < values[k] && weight[i] + own > weight[k]) {
        weight[k] = weight[i] + own;
        from[k] = i;
      }
    if (weight[k] > weight[last]) last = k;
  }
  std::vector<bool> inOrder(values.size(), false);
  if (values.empty()) return inOrder;
  for (; !inOrder[last]; last = from[last]) inOrder[last] = true;
  return inOrder;
}

/// The level that each step has when all steps were done, in whatever order: by value, and in order of time
/// where several expect the same. Nothing unless every level fits a step and no step is left over.
std::optional<std::vector<std::size_t>> levelsByValue(const AlignmentTask& task, const MatchLine& line,
                                                      std::size_t begin) {
  std::vector<std::size_t> levels(task.steps());
  std::vector<bool> isTaken(task.steps(), false);
  for (std::size_t level = begin; level < begin + task.steps(); ++level) {
    std::optional<std::size_t> nearest;
    for (std::size_t step = 0; step < task.steps(); ++step)
      if (!isTaken[step] &&
          (!nearest || (!task.isSame(step, *nearest) && std::abs(task.residual(line, step, level)) <
                                                            std::abs(task.residual(line, *nearest, level)))))
        nearest = step;
    if (!nearest || fitCost(task, line, *nearest, level) > 2) return std::nullopt;
    isTaken[*nearest] = true;
    levels[*nearest] = level;
  }
  return levels;
}

/// Whether places are those of the plan but for two blocks of steps, equally long, that changed places.
bool hasBlocksExchanged(const std::vector<std::size_t>& places) {
  std::size_t first = 0;
  while (first < places.size() && places[first] == first) ++first;
  if (first == places.size() || places[first] < first) return false;
  const std::size_t apart = places[first] - first;
  std::size_t length = 0;
  while (length < apart && first + length < places.size() && places[first + length] == first + length + apart)
    ++length;
  for (std::size_t step = first; step < places.size(); ++step) {
    const bool isEarlier = step < first + length;
    const bool isLater = step >= first + apart && step < first + apart + length;
    const std::size_t place = isEarlier ? step + apart : isLater ? step - apart : step;
    if (places[step] != place) return false;
  }
  return true;
}

/// How many steps are elsewhere than planned when as many as possible keep their order; two blocks that
/// changed places count as two steps that did.
std::size_t movedSteps(const std::vector<std::size_t>& places) {
  const auto inOrder = inRisingOrder(places);
  const auto moved = static_cast<std::size_t>(std::count(inOrder.begin(), inOrder.end(), false));
  return hasBlocksExchanged(places) ? std::min<std::size_t>(moved, 2) : moved;
}

std::optional<RunReading> reordered(const AlignmentTask& task, const MatchLine& line, std::size_t begin,
                                    std::size_t end) {
  if (end - begin != task.steps()) return std::nullopt;
  auto places = levelsByValue(task, line, begin);
  if (!places) return std::nullopt;
  for (std::size_t& place : *places) place -= begin;
  RunReading reading{line, {}, lineCost(task, line)};
  for (std::size_t step = 0; step < task.steps(); ++step) {
    const std::size_t place = (*places)[step], level = begin + place;
    reading.visits.push_back({step, level, !task.isSame(step, place)});
    reading.cost += fitCost(task, line, step, level);
  }
  // One step moved far is two that are not where they were planned.
  if (const auto moved = static_cast<double>(movedSteps(*places)); moved > 0)
    reading.cost += reorderFirst + reorderNext * std::max(0.0, moved - 2);
  std::sort(reading.visits.begin(), reading.visits.end(),
            [](const Visit& a, const Visit& b) { return a.level < b.level; });
  return reading;
}

/// Where steps were done again it often cannot be told with which the second time began: 0, 5, 0, 5, 0 is 0,
/// 5 twice and then 0, or first 0 and then 5, 0 twice. Taken is the earliest begin, and so the last levels.
void restartEarly(const AlignmentTask& task, std::vector<Visit>& visits) {
  for (std::size_t k = 1; k < visits.size(); ++k) {
    if (visits[k].step > visits[k - 1].step || visits[k].level == visits[k - 1].level) continue;
    for (std::size_t i = k; i > 0; --i) {
      const std::size_t again = visits[i].step;
      Visit& before = visits[i - 1];
      if (again == 0 || before.isSwapped || visits[i].isSwapped || before.step < again ||
          !task.isSame(before.step, again - 1))
        break;
      before.step = again - 1;
    }
  }
}

void addAligned(const AlignmentTask& task, const MatchLine& line, const AlignmentLimits& limits,
                std::vector<RunReading>& readings) {
  Alignment alignment = align(task, {&line, 1}, limits);
  if (alignment.runs.size() != 1 || !std::isfinite(alignment.cost)) return;
  restartEarly(task, alignment.runs.front().visits);
  readings.push_back({line, std::move(alignment.runs.front().visits), alignment.cost});
}

/// Whether `b` gives some step a level that has none in `a`, or one of another value. Saying less is no
/// difference.
bool isDifferent(const AlignmentTask& task, const RunReading& a, const RunReading& b) {
  const auto levelsOfA = levelOfStep(task, a.visits), levelsOfB = levelOfStep(task, b.visits);
  for (std::size_t step = 0; step < task.steps(); ++step) {
    if (!levelsOfB[step] || levelsOfA[step] == levelsOfB[step]) continue;
    if (!levelsOfA[step]) return true;
    const std::size_t one = *levelsOfA[step], other = *levelsOfB[step];
    const double noise = std::hypot(task.uncertainties[one], task.uncertainties[other]);
    const double least = 0.02 * task.least * std::abs(a.line.gain);
    if (std::abs(task.means[one] - task.means[other]) > 3 * noise + least) return true;
  }
  return false;
}

void sortByCost(std::vector<RunReading>& readings) {
  std::stable_sort(readings.begin(), readings.end(),
                   [](const RunReading& a, const RunReading& b) { return a.cost < b.cost; });
}

/// Visits next to something that is not as planned. Another way to read the run by the same line departs from
/// the best one there: elsewhere it would have to leave a step and a level alone, which is beyond the margin.
std::vector<Visit> doubtful(const AlignmentTask& task, const RunReading& reading, std::size_t begin,
                            std::size_t end) {
  constexpr std::size_t reach = 2;
  const auto& visits = reading.visits;
  std::vector<bool> isDoubtful(visits.size(), false);
  const auto mark = [&](std::size_t k) {
    for (std::size_t i = k - std::min(k, reach); i < std::min(visits.size(), k + reach); ++i)
      isDoubtful[i] = true;
  };
  if (visits.front().step != 0 || visits.front().level != begin) mark(0);
  if (visits.back().step + 1 != task.steps() || visits.back().level + 1 != end) mark(visits.size());
  for (std::size_t k = 0; k < visits.size(); ++k) {
    const bool isNext =
        k == 0 || (visits[k].step == visits[k - 1].step + 1 && visits[k].level == visits[k - 1].level + 1);
    if (!isNext || fitCost(task, reading.line, visits[k].step, visits[k].level) > 0.3) mark(k);
  }
  std::vector<Visit> list;
  for (std::size_t k = 0; k < visits.size(); ++k)
    if (isDoubtful[k]) list.push_back(visits[k]);
  return list;
}

/// Whether steps have no level and the others expect no more than two values.
bool hasOneChange(const AlignmentTask& task, const RunReading& reading) {
  const auto levels = levelOfStep(task, reading.visits);
  std::vector<std::size_t> values;  // a step for each value
  bool isWhole = true;
  for (std::size_t step = 0; step < task.steps(); ++step) {
    isWhole = isWhole && levels[step];
    if (levels[step] && std::none_of(values.begin(), values.end(),
                                     [&](std::size_t other) { return task.isSame(step, other); }))
      values.push_back(step);
  }
  return !isWhole && values.size() <= 2;
}

double marginFor(const AlignmentTask& task, const RunReading& best, const RunReading& other) {
  const bool isOtherGain = std::abs(other.line.gain - best.line.gain) > 0.1 * std::abs(best.line.gain);
  if (isOtherGain && hasOneChange(task, best)) return marginOfOneChange;
  const auto levels = levelOfStep(task, best.visits);
  if (isOtherGain && (!levels.front() || !levels.back())) return marginOfCut;
  return std::clamp(marginOfCost * best.cost, leastMargin, greatestMargin);
}

/// What each level from `begin` on costs at its step, nothing where it has none. A recording holds thousands
/// of runs: no more than the levels of one are looked at.
std::vector<double> fitsOf(const AlignmentTask& task, const RunReading& reading, std::size_t begin,
                           std::size_t end) {
  std::vector<double> fits(end - begin, noFit);
  for (const Visit& visit : reading.visits)
    fits[visit.level - begin] = fitCost(task, reading.line, visit.step, visit.level);
  return fits;
}

/// Whether `other` calls a level wrong that `best` explains: no way out, however cheap.
bool contradicts(const AlignmentTask& task, const RunReading& best, const RunReading& other,
                 std::size_t begin, std::size_t end) {
  const auto fits = fitsOf(task, best, begin, end), fitsThere = fitsOf(task, other, begin, end);
  for (std::size_t k = 0; k < fits.size(); ++k)
    if (fits[k] < 1 && fitsThere[k] > 3 && fitsThere[k] < noFit) return true;
  return false;
}

/// Where each step was done when each was done once and no level is left over; empty otherwise.
std::vector<std::size_t> placesOf(const AlignmentTask& task, const RunReading& reading) {
  std::vector<std::size_t> places;
  if (reading.visits.size() != task.steps()) return places;
  for (const auto& level : levelOfStep(task, reading.visits)) {
    if (!level || *level < reading.visits.front().level) return {};
    places.push_back(*level - reading.visits.front().level);
  }
  return places;
}

std::size_t exchanges(const AlignmentTask& task, const RunReading& reading) {
  const auto swapped = static_cast<std::size_t>(std::count_if(reading.visits.begin(), reading.visits.end(),
                                                              [](const Visit& v) { return v.isSwapped; }));
  if (swapped == 0) return 0;
  const auto places = placesOf(task, reading);
  return places.empty() ? (swapped + 1) / 2 : std::max<std::size_t>(movedSteps(places), 2) - 1;
}

/// Stretches of steps without a level: those at the begin and the end count as one, a recording that was cut
/// off.
std::size_t gaps(const AlignmentTask& task, const RunReading& reading) {
  const auto levels = levelOfStep(task, reading.visits);
  std::size_t within = 0;
  for (std::size_t step = 1; step < levels.size(); ++step)
    if (!levels[step] && levels[step - 1]) ++within;
  if (!levels.back()) --within;
  return within + (!levels.front() || !levels.back() ? 1 : 0);
}

/// How many things must have gone wrong for the run to be as it is read.
std::size_t faults(const AlignmentTask& task, const RunReading& reading, std::size_t begin, std::size_t end) {
  std::size_t count = (reading.line.gain < 0 ? 1 : 0) + exchanges(task, reading) + gaps(task, reading);
  std::size_t next = begin;  // the level that follows the one looked at before
  for (std::size_t k = 0; k < reading.visits.size(); ++k) {
    const Visit& visit = reading.visits[k];
    if (visit.level > next) ++count;  // levels of no step
    next = visit.level + 1;
    if (isOff(task, reading.line, visit)) ++count;
    const bool isAgain = k > 0 && visit.step <= reading.visits[k - 1].step;
    if (isAgain && !visit.isSwapped && !reading.visits[k - 1].isSwapped) ++count;
  }
  return count + (next < end ? 1 : 0);
}

/// Whether `other` only tells opposite polarity as halves that changed places: always possible where they
/// mirror each other, and the same as shunts on the neighbouring arm, which the verdict on polarity names.
bool isMirror(const AlignmentTask& task, const RunReading& best, const RunReading& other) {
  const auto swapped = std::count_if(other.visits.begin(), other.visits.end(),
                                     [](const Visit& visit) { return visit.isSwapped; });
  return best.line.gain * other.line.gain < 0 && swapped > 2 && hasBlocksExchanged(placesOf(task, other));
}

std::vector<RunReading> distinct(const AlignmentTask& task, std::vector<RunReading> readings,
                                 std::size_t begin, std::size_t end) {
  sortByCost(readings);
  const std::size_t fewest = faults(task, readings.front(), begin, end);
  std::vector<RunReading> kept{readings.front()};
  for (RunReading& reading : readings) {
    const RunReading& best = kept.front();
    if (kept.size() > mostOtherReadings) break;
    if (reading.cost > best.cost + marginFor(task, best, reading) ||
        contradicts(task, best, reading, begin, end))
      continue;
    if (faults(task, reading, begin, end) > fewest || isMirror(task, best, reading)) continue;
    if (std::all_of(kept.begin(), kept.end(),
                    [&](const RunReading& one) { return isDifferent(task, one, reading); }))
      kept.push_back(std::move(reading));
  }
  return kept;
}

}  // namespace

std::vector<std::optional<std::size_t>> levelOfStep(const AlignmentTask& task,
                                                    std::span<const Visit> visits) {
  std::vector<std::optional<std::size_t>> levels(task.steps());
  for (const Visit& visit : visits) levels[visit.step] = visit.level;
  return levels;
}

bool isOff(const AlignmentTask& task, const MatchLine& line, const Visit& visit) {
  return fitCost(task, line, visit.step, visit.level) >= match_cost::fits;
}

RunReading inPlannedOrder(const AlignmentTask& task, RunReading reading, std::size_t begin, std::size_t end) {
  std::vector<std::size_t> swapped;
  for (const Visit& visit : reading.visits)
    if (visit.isSwapped) swapped.push_back(visit.step);
  if (end - begin == task.steps()) {
    std::vector<Visit> visits;
    for (std::size_t step = 0; step < task.steps(); ++step) visits.push_back({step, begin + step, false});
    const auto off = static_cast<std::size_t>(std::count_if(
        visits.begin(), visits.end(), [&](const Visit& visit) { return isOff(task, reading.line, visit); }));
    const bool isWhole = !swapped.empty() && reading.visits.size() == task.steps();
    if (isWhole || 2 * off <= task.steps()) return {reading.line, std::move(visits), reading.cost};
  }
  std::sort(swapped.begin(), swapped.end());
  std::size_t next = 0;
  for (Visit& visit : reading.visits)
    if (visit.isSwapped) visit = {swapped[next++], visit.level, false};
  return reading;
}

std::vector<RunReading> runReadings(const AlignmentTask& task, std::span<const MatchLine> lines,
                                    std::size_t begin, std::size_t end) {
  AlignmentLimits limits{begin, end, true, {}};
  std::vector<RunReading> readings;
  for (const MatchLine& line : lines) {
    addAligned(task, line, limits, readings);
    if (auto reading = reordered(task, line, begin, end)) readings.push_back(*std::move(reading));
  }
  if (readings.empty()) return readings;
  sortByCost(readings);
  const RunReading best = readings.front();
  const auto doubts = doubtful(task, best, begin, end);
  if (doubts.empty()) return distinct(task, std::move(readings), begin, end);
  for (const Visit& visit : doubts) {
    limits.forbidden = visit;
    addAligned(task, best.line, limits, readings);
  }
  limits.forbidden.reset();
  limits.hasFirstStep = true;
  addAligned(task, best.line, limits, readings);
  limits.hasLastStep = true;
  addAligned(task, best.line, limits, readings);
  limits.hasFirstStep = false;
  addAligned(task, best.line, limits, readings);
  return distinct(task, std::move(readings), begin, end);
}

}  // namespace core
