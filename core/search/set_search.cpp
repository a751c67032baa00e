// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/search/set_search.h"

#include <algorithm>
#include <atomic>
#include <cassert>
#include <cmath>
#include <deque>
#include <map>
#include <mutex>
#include <optional>
#include <thread>
#include <tuple>

#include "core/search/box_bound.h"
#include "core/units/threads.h"

namespace core {
namespace {

constexpr std::size_t frontierBoxes = 1024;  ///< to share among threads
constexpr std::size_t startSets = 200'000;   ///< looked at before the search, for bounds to begin with

std::uint64_t sumOf(std::uint64_t a, std::uint64_t b) {
  return a > std::numeric_limits<std::uint64_t>::max() - b ? std::numeric_limits<std::uint64_t>::max()
                                                           : a + b;
}
std::uint64_t productOf(std::uint64_t a, std::uint64_t b) {
  if (a == 0 || b == 0) return 0;
  return a > std::numeric_limits<std::uint64_t>::max() / b ? std::numeric_limits<std::uint64_t>::max()
                                                           : a * b;
}

/// Number of sets by how many resistors are in them, 0 to `problem.free`.
std::vector<std::uint64_t> setCounts(const SetProblem& problem) {
  std::vector<std::uint64_t> ways(problem.free + 1, 0);
  ways[0] = 1;
  std::map<std::size_t, std::uint64_t> ofPart;  // settings of a box: one of them or none
  for (const ResistorKind& kind : problem.kinds) {
    if (kind.part != noPart) {
      ++ofPart[kind.part];
      continue;
    }
    std::vector<std::uint64_t> next(ways.size(), 0);
    for (std::size_t of = 0; of < ways.size(); ++of)
      for (std::size_t used = 0; used <= std::min(of, kind.count); ++used)
        next[of] = sumOf(next[of], ways[of - used]);
    ways = std::move(next);
  }
  for (const auto& [part, settings] : ofPart)
    for (std::size_t of = ways.size(); of-- > 1;)
      ways[of] = sumOf(ways[of], productOf(ways[of - 1], settings));
  return ways;
}

/// The best sets so far, for all threads.
class Incumbents {
 public:
  explicit Incumbents(std::size_t most) : m_most(most) {}

  /// Greatest miss of the last of them; infinite while there is room.
  double worst() const { return m_worst.load(std::memory_order_relaxed); }
  /// Whether a set with at least these figures may still enter.
  bool mayEnter(const FoundSet& least) {
    if (least.greatest != worst()) return least.greatest < worst();
    const std::lock_guard lock(m_mutex);
    return m_sets.size() < m_most || least < m_sets.back();
  }
  void offer(FoundSet set) {
    const std::lock_guard lock(m_mutex);
    const auto at = std::lower_bound(m_sets.begin(), m_sets.end(), set);
    if (at != m_sets.end() && !(set < *at)) return;  // the same set, found before
    m_sets.insert(at, std::move(set));
    if (m_sets.size() > m_most) m_sets.pop_back();
    if (m_sets.size() == m_most) m_worst.store(m_sets.back().greatest, std::memory_order_relaxed);
  }
  std::vector<FoundSet> take() { return std::move(m_sets); }

 private:
  std::size_t m_most;
  std::vector<FoundSet> m_sets;
  std::mutex m_mutex;
  std::atomic<double> m_worst{std::numeric_limits<double>::infinity()};
};

/// What is fixed for sets of one size.
class Rules {
 public:
  Rules(const SetProblem& problem, std::size_t positions) : m_problem(problem), m_positions(positions) {
    const std::size_t count = problem.kinds.size();
    m_partEnd.resize(count);
    m_newBefore.assign(count + 1, 0);
    for (std::size_t k = 0; k < count; ++k)
      m_newBefore[k + 1] = m_newBefore[k] + (problem.kinds[k].isNew ? 1 : 0);
    for (std::size_t k = count; k-- > 0;) {
      const bool joined = k + 1 < count && problem.kinds[k].part == problem.kinds[k + 1].part;
      m_partEnd[k] = joined ? m_partEnd[k + 1] : k;
      m_hasParts = m_hasParts || problem.kinds[k].part != noPart;
    }
  }

  /// Takes off what the order of positions rules out; false when nothing is left.
  bool tighten(Box& box) const {
    const auto single = [&](std::int32_t kind) { return kindAt(kind).count == 1 ? 1 : 0; };
    const auto count = static_cast<std::int32_t>(m_problem.kinds.size());
    for (std::size_t p = 0; p < m_positions; ++p) {
      if (p > 0) box.first[p] = std::max(box.first[p], box.first[p - 1] + single(box.first[p - 1]));
      if (box.first[p] >= count) return false;
    }
    for (std::size_t p = m_positions; p-- > 0;) {
      if (p + 1 < m_positions) box.last[p] = std::min(box.last[p], box.last[p + 1] - single(box.last[p + 1]));
      if (box.first[p] > box.last[p]) return false;
    }
    return !tooManyOfOne(box) && !(m_hasParts && partTwice(box));
  }

  bool isSet(const Box& box) const { return box.first == box.last; }

  /// The best that a set in `box` may be.
  FoundSet leastOf(const Box& box) const {
    FoundSet least{box.greatest, box.mean, 0, {}};
    for (std::size_t p = 0; p < m_positions; ++p) {
      const auto first = static_cast<std::size_t>(box.first[p]),
                 end = static_cast<std::size_t>(box.last[p]) + 1;
      if (m_newBefore[end] - m_newBefore[first] == end - first) ++least.newParts;
      least.kinds.push_back(box.first[p]);
    }
    return least;
  }

 private:
  const ResistorKind& kindAt(std::int32_t kind) const {
    return m_problem.kinds[static_cast<std::size_t>(kind)];
  }

  bool tooManyOfOne(const Box& box) const {
    std::size_t run = 1;
    for (std::size_t p = 1; p < m_positions; ++p) {
      const bool same = box.first[p - 1] == box.last[p];  // in between they rise
      run = same ? run + 1 : 1;
      if (run > kindAt(box.last[p]).count) return true;
    }
    return false;
  }

  /// Two positions that can only be settings of the same decade box.
  bool partTwice(const Box& box) const {
    for (std::size_t p = 0; p < m_positions; ++p) {
      const std::size_t part = kindAt(box.first[p]).part;
      if (part == noPart ||
          m_partEnd[static_cast<std::size_t>(box.first[p])] < static_cast<std::size_t>(box.last[p]))
        continue;
      for (std::size_t q = p + 1; q < m_positions; ++q)
        if (kindAt(box.first[q]).part == part &&
            m_partEnd[static_cast<std::size_t>(box.first[q])] >= static_cast<std::size_t>(box.last[q]))
          return true;
    }
    return false;
  }

  const SetProblem& m_problem;
  std::size_t m_positions;
  std::vector<std::size_t> m_partEnd;    ///< the last kind of the same part in one stretch
  std::vector<std::size_t> m_newBefore;  ///< how many kinds before are new
  bool m_hasParts = false;
};

/// What threads tell each other about the whole search.
struct Shared {
  Incumbents& incumbents;
  std::stop_token stop;
  const Progress& progress;
  std::atomic<double> closed{0};  ///< share of the search
  std::atomic<std::uint64_t> boxes{0};
  std::atomic<bool> cancelled{false};
};

/// One thread's part of the search.
class Searcher {
 public:
  Searcher(const SetProblem& problem, const Rules& rules, std::size_t positions, Shared& shared, bool reports)
      : m_rules(rules), m_bound(problem, positions), m_shared(shared), m_reports(reports) {}
  ~Searcher() { flush(); }
  Searcher(const Searcher&) = delete;
  Searcher& operator=(const Searcher&) = delete;

  /// Looks at `box`: a set is offered, an open box added to `open`, everything else closed.
  void look(Box box, std::vector<Box>& open) {
    if (++m_boxes % 512 == 0) flush();
    if (!m_rules.tighten(box) || !m_bound.bound(box, m_shared.incumbents.worst()) ||
        !m_shared.incumbents.mayEnter(m_rules.leastOf(box)))
      return close(box.share);
    if (!m_rules.isSet(box)) return open.push_back(box);
    if (m_bound.allUsed(box)) m_shared.incumbents.offer(m_rules.leastOf(box));
    close(box.share);
  }

  /// Halves the widest range of `box` and looks at both halves; the better one comes last.
  void split(const Box& box, std::vector<Box>& open) {
    std::size_t widest = 0;
    double width = -1;
    for (std::size_t p = 0; p < m_bound.positions(); ++p) {
      if (box.first[p] == box.last[p]) continue;
      const double here = m_bound.logarithm(box.first[p]) - m_bound.logarithm(box.last[p]);
      if (here > width) width = here, widest = p;
    }
    Box lower = box, upper = box;
    const std::int32_t middle = box.first[widest] + (box.last[widest] - box.first[widest]) / 2;
    lower.last[widest] = middle;
    upper.first[widest] = middle + 1;
    lower.share = upper.share = box.share / 2;
    const std::size_t before = open.size();
    look(upper, open);
    look(lower, open);
    if (open.size() == before + 2 && better(open[before], open[before + 1]))
      std::swap(open[before], open[before + 1]);
  }

  /// Searches `box` to its end.
  void search(const Box& box) {
    std::vector<Box> open{box};
    while (!open.empty() && !stopped()) {
      const Box next = open.back();
      open.pop_back();
      if (m_shared.incumbents.mayEnter(m_rules.leastOf(next)))
        split(next, open);
      else
        close(next.share);
    }
  }

  bool stopped() {
    if (m_shared.stop.stop_requested()) m_shared.cancelled = true;
    return m_shared.cancelled;
  }

  static bool better(const Box& a, const Box& b) {
    return std::tie(a.greatest, a.mean, a.first) < std::tie(b.greatest, b.mean, b.first);
  }

 private:
  void close(double share) { m_closed += share; }

  void flush() {
    m_shared.boxes += m_boxes - m_told;
    m_told = m_boxes;
    const double closed = m_shared.closed.fetch_add(m_closed) + m_closed;
    m_closed = 0;
    // Now and then also when nothing much was closed, so that whoever listens knows that work goes on.
    if (!m_reports || !m_shared.progress || (closed < m_reported + 1e-3 && ++m_silent < 64)) return;
    m_silent = 0;
    m_reported = closed;
    m_shared.progress(std::min(closed, 1.0));
  }

  const Rules& m_rules;
  BoxBound m_bound;
  Shared& m_shared;
  bool m_reports;
  std::uint64_t m_boxes = 0, m_told = 0;
  double m_closed = 0, m_reported = 0;
  int m_silent = 0;
};

/// Good sets to begin with: from spread starting points, one position after another is given its best kind.
class Start {
 public:
  Start(const SetProblem& problem, const Rules& rules, std::size_t positions, Shared& shared)
      : m_problem(problem), m_rules(rules), m_bound(problem, positions), m_shared(shared) {}

  void run() {
    const std::size_t count = m_problem.kinds.size();
    const std::size_t positions = m_bound.positions();
    const std::size_t starts = 6, sweeps = 3;
    m_stride = std::max<std::size_t>(1, count * positions * starts * sweeps / startSets);
    std::uint64_t random = 1;
    for (std::size_t start = 0; start < starts; ++start) {
      std::vector<std::int32_t> kinds(positions);
      for (std::int32_t& kind : kinds) {
        random = random * 6364136223846793005u + 1442695040888963407u;  // D. Knuth's MMIX generator
        kind = start == 0 ? wantedKind(static_cast<std::size_t>(&kind - kinds.data()))
                          : static_cast<std::int32_t>((random >> 33) % count);
      }
      for (std::size_t sweep = 0; sweep < sweeps && !m_shared.stop.stop_requested(); ++sweep) improve(kinds);
    }
  }

 private:
  /// The kind next to the one that serves a level alone, levels spread over the positions.
  std::int32_t wantedKind(std::size_t position) const {
    const SearchSide& side = m_problem.sides.front();
    const std::size_t goal = position * side.goals.size() / m_bound.positions();
    const double wanted = side.curve.siemensFor(side.goals[goal].value);
    const auto at = std::lower_bound(side.kinds.begin(), side.kinds.end(), wanted,
                                     [](const ConductanceSpan& kind, double g) { return kind.low > g; });
    return static_cast<std::int32_t>(std::min<std::ptrdiff_t>(
        at - side.kinds.begin(), static_cast<std::ptrdiff_t>(side.kinds.size()) - 1));
  }

  void improve(std::vector<std::int32_t>& kinds) {
    for (std::size_t p = 0; p < kinds.size(); ++p) {
      std::optional<FoundSet> best;
      std::int32_t chosen = kinds[p];
      const auto attempt = [&](std::size_t kind) {
        if (kind >= m_problem.kinds.size()) return;
        kinds[p] = static_cast<std::int32_t>(kind);
        if (const auto found = judged(kinds); found && (!best || *found < *best))
          best = found, chosen = kinds[p];
      };
      for (std::size_t kind = 0; kind < m_problem.kinds.size(); kind += m_stride) attempt(kind);
      const auto centre = static_cast<std::size_t>(chosen);
      const std::size_t fine = m_stride / 64 + 1;
      for (std::size_t kind = centre - std::min(centre, m_stride); m_stride > 1 && kind <= centre + m_stride;
           kind += fine)
        attempt(kind);
      kinds[p] = chosen;
    }
  }

  /// The figures of a set, offered when it is one.
  std::optional<FoundSet> judged(std::vector<std::int32_t> kinds) {
    std::sort(kinds.begin(), kinds.end());
    Box box;
    std::copy(kinds.begin(), kinds.end(), box.first.begin());
    box.last = box.first;
    Box tight = box;
    if (!m_rules.tighten(tight) || tight.first != box.first || tight.last != box.last) return std::nullopt;
    const bool useful = m_bound.bound(box, std::numeric_limits<double>::infinity());
    FoundSet set = m_rules.leastOf(box);
    if (useful && m_shared.incumbents.mayEnter(set) && m_bound.allUsed(box)) m_shared.incumbents.offer(set);
    return set;
  }

  const SetProblem& m_problem;
  const Rules& m_rules;
  BoxBound m_bound;
  Shared& m_shared;
  std::size_t m_stride = 1;
};

/// All sets of `positions` resistors, which are `share` of the search.
void searchSize(const SetProblem& problem, std::size_t positions, double share, Shared& shared) {
  const Rules rules(problem, positions);
  Start(problem, rules, positions, shared).run();
  Searcher first(problem, rules, positions, shared, true);
  Box all;
  for (std::size_t p = 0; p < positions; ++p)
    all.last[p] = static_cast<std::int32_t>(problem.kinds.size()) - 1;
  all.share = share;
  std::vector<Box> frontier, next;
  first.look(all, frontier);
  // Breadth first until there is enough to share out.
  while (!frontier.empty() && frontier.size() < frontierBoxes && !first.stopped()) {
    next.clear();
    for (const Box& box : frontier) first.split(box, next);
    frontier.swap(next);
  }
  std::sort(frontier.begin(), frontier.end(), Searcher::better);
  std::atomic<std::size_t> taken{0};
  const unsigned machine = std::max(1u, std::thread::hardware_concurrency());
  const unsigned threads = frontier.size() < 16 ? 1 : problem.threads > 0 ? problem.threads : machine;
  onThreads(threads, [&](unsigned thread) {
    Searcher searcher(problem, rules, positions, shared, thread == 0);
    for (std::size_t k = 0; (k = taken++) < frontier.size() && !searcher.stopped();)
      searcher.search(frontier[k]);
  });
}

}  // namespace

bool operator<(const FoundSet& a, const FoundSet& b) {
  const std::size_t ofA = a.kinds.size(), ofB = b.kinds.size();
  return std::tie(a.greatest, a.mean, a.newParts, ofA, a.kinds) <
         std::tie(b.greatest, b.mean, b.newParts, ofB, b.kinds);
}

std::uint64_t setCount(const SetProblem& problem) {
  const auto counts = setCounts(problem);
  std::uint64_t all = 0;
  for (std::size_t of = 1; of < counts.size(); ++of) all = sumOf(all, counts[of]);
  return all;
}

SetSearchResult searchSets(const SetProblem& problem, const std::stop_token& stop, const Progress& progress) {
  assert(!problem.sides.empty() && !problem.kinds.empty() && problem.most > 0);
  const auto counts = setCounts(problem);
  double all = 0;
  for (std::size_t of = 1; of < counts.size(); ++of) all += static_cast<double>(counts[of]);
  std::size_t goals = 0;
  for (const SearchSide& side : problem.sides) goals += side.goals.size();
  Incumbents incumbents(problem.most);
  Shared shared{incumbents, stop, progress};
  for (std::size_t positions = 1; positions <= problem.free; ++positions) {
    // One at a time, a level closes one resistor: no more of them than levels can be of use.
    if (counts[positions] == 0 || (!problem.together && positions > goals)) break;
    searchSize(problem, positions, static_cast<double>(counts[positions]) / all, shared);
    if (shared.cancelled) break;
  }
  if (progress && !shared.cancelled) progress(1);
  return {incumbents.take(), shared.boxes, shared.cancelled};
}

}  // namespace core
