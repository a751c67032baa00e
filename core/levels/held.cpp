// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/held.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/levels/statistics.h"

namespace core {
namespace {

/// Rise per cell over some cells, by the means of the two halves, and how unsure it is.
struct Trend {
  double slope = 0;
  double deviation = 0;  ///< standard deviation of `slope` by noise alone
};

Trend trendOf(const Cells& cells, const std::vector<Scale>& scales, SampleSpan part) {
  const std::size_t half = part.size() / 2;
  if (half == 0) return {};
  const auto width = static_cast<double>(half);
  return {contrastAt(cells, part.begin + half, half) / width, leastNoise(scales, half) / width};
}

/// The part of a stretch that has settled, if it ever does; all of a very short one.
SampleSpan laterPart(std::size_t begin, std::size_t end) {
  const std::size_t size = end - begin;
  return size < 10 ? SampleSpan{begin, end} : SampleSpan{begin + size / 2, end - size / 20};
}

std::vector<Piece> piecesBetween(const std::vector<Edge>& edges, std::size_t cells) {
  std::vector<Piece> pieces;
  std::size_t begin = 0;
  for (std::size_t k = 0; k <= edges.size(); ++k) {
    const std::size_t end = k < edges.size() ? edges[k].cell : cells;
    pieces.push_back({begin, end});
    begin = end;
  }
  return pieces;
}

/// The slope of a drift that runs through all pieces: half of what they tell, each as much as it is sure of,
/// lies below.
double usualSlope(const Cells& cells, const std::vector<Scale>& scales, const std::vector<Piece>& pieces) {
  std::vector<std::pair<double, double>> slopes;  // with their weights
  double whole = 0;
  for (const Piece& piece : pieces) {
    const Trend trend = trendOf(cells, scales, laterPart(piece.begin, piece.end));
    if (piece.size() < 10) continue;
    const auto size = static_cast<double>(piece.size());
    slopes.emplace_back(trend.slope, size * size * size);
    whole += slopes.back().second;
  }
  std::sort(slopes.begin(), slopes.end());
  double below = 0;
  for (const auto& [slope, weight] : slopes) {
    below += weight;
    if (2 * below >= whole) return slope;
  }
  return 0;
}

/// A piece with its own slope where that differs for sure from the usual one.
Piece pieceOf(const Cells& cells, const std::vector<Scale>& scales, std::size_t begin, std::size_t end,
              double usual) {
  const SampleSpan part = laterPart(begin, end);
  const Trend trend = trendOf(cells, scales, part);
  const bool isSure = std::abs(trend.slope - usual) > 3 * trend.deviation;
  return {begin, end, cells.mean(part.begin, part.end), isSure ? trend.slope : usual,
          (static_cast<double>(part.begin + part.end) - 1) / 2};
}

/// Whether the piece between two others goes on in the direction from one to the other by half as much as
/// lies between it and the nearer of them: a part of a ramp or of a settling.
bool isOnItsWay(const Cells& cells, const std::vector<Scale>& scales, const std::vector<Piece>& pieces,
                double usual, std::size_t k) {
  const Piece& piece = pieces[k];
  const Trend trend = trendOf(cells, scales, laterPart(piece.begin, piece.end));
  const double extra = trend.slope - usual;
  if (std::abs(extra) < 3 * trend.deviation) return false;
  const double rise = extra * static_cast<double>(piece.size());
  const double mean = cells.mean(piece.begin, piece.end);
  double nearer = std::numeric_limits<double>::infinity();
  for (const std::size_t other : {k - 1, k + 1}) {
    if (other >= pieces.size()) continue;  // also k - 1 of the first
    const double way = (cells.mean(pieces[other].begin, pieces[other].end) - mean) * (other > k ? 1 : -1);
    if (way * rise <= 0) return false;
    nearer = std::min(nearer, std::abs(way));
  }
  return std::abs(rise) > 0.5 * nearer;
}

/// Whether a piece that is short beside its neighbours is no more even than they are apart: a part of a
/// settling, or one swing of it.
bool isUneven(const Cells& cells, const std::vector<Piece>& pieces, std::size_t k) {
  const Piece& piece = pieces[k];
  std::size_t longest = 0;
  double nearer = std::numeric_limits<double>::infinity();
  const double mean = cells.mean(piece.begin, piece.end);
  for (const std::size_t other : {k - 1, k + 1}) {
    if (other >= pieces.size()) continue;  // also k - 1 of the first
    longest = std::max(longest, pieces[other].size());
    nearer = std::min(nearer, std::abs(cells.mean(pieces[other].begin, pieces[other].end) - mean));
  }
  if (2 * piece.size() > longest) return false;
  // Thirds of its later part: a level may have settled in the earlier one.
  const std::size_t first = piece.begin + piece.size() * 2 / 5;
  const std::size_t third = std::max<std::size_t>(1, (piece.end - first) / 3);
  double low = std::numeric_limits<double>::infinity();
  double high = -low;
  for (std::size_t at = first; at + third <= piece.end; at += third) {
    low = std::min(low, cells.mean(at, at + third));
    high = std::max(high, cells.mean(at, at + third));
  }
  return high - low > 0.3 * nearer;
}

/// Whether the piece lies between its neighbours in height and one of them is no level though hardly shorter:
/// one more part of the same ramp or settling, which chance made even.
bool isBetweenParts(const std::vector<Piece>& pieces, const std::vector<bool>& areLevels, std::size_t k) {
  if (k == 0 || k + 1 >= pieces.size()) return false;
  if ((pieces[k].value - pieces[k - 1].value) * (pieces[k + 1].value - pieces[k].value) <= 0) return false;
  for (const std::size_t other : {k - 1, k + 1})
    if (!areLevels[other] && 5 * pieces[other].size() >= 4 * pieces[k].size()) return true;
  return false;
}

/// Whether there is no sure difference where the two come nearest to each other.
bool areOneLevel(const std::vector<Scale>& scales, const Piece& left, const Piece& right, double leastStep) {
  const double between = static_cast<double>(left.end + right.begin) / 2;
  const double difference = std::abs(right.at(between) - left.at(between));
  const std::size_t shorter = std::min(left.size(), right.size());
  if (right.begin - left.end > shorter) return false;
  return difference < std::max(leastStep, 5 * leastNoise(scales, shorter));
}

}  // namespace

std::vector<Piece> heldPieces(const Cells& cells, const std::vector<Scale>& scales,
                              const std::vector<Edge>& edges, std::size_t shortest, double leastStep) {
  std::vector<Piece> pieces = piecesBetween(edges, cells.size());
  const double usual = usualSlope(cells, scales, pieces);
  for (Piece& piece : pieces) piece = pieceOf(cells, scales, piece.begin, piece.end, usual);
  std::vector<bool> areLevels(pieces.size(), true);
  for (std::size_t k = 0; k < pieces.size() && pieces.size() > 1; ++k)
    areLevels[k] = !isOnItsWay(cells, scales, pieces, usual, k) && !isUneven(cells, pieces, k);
  std::vector<Piece> held;
  for (std::size_t k = 0; k < pieces.size(); ++k) {
    const Piece& piece = pieces[k];
    if (piece.size() < shortest || !areLevels[k] || isBetweenParts(pieces, areLevels, k)) continue;
    const bool joins =
        !held.empty() && held.back().end < piece.begin && areOneLevel(scales, held.back(), piece, leastStep);
    if (joins) {
      held.back() = pieceOf(cells, scales, held.back().begin, piece.end, usual);
    } else {
      held.push_back(piece);
    }
  }
  return held;
}

Deviations::Deviations(const Cells& cells, const std::vector<Piece>& pieces) {
  constexpr std::size_t looks = 4096;
  constexpr double middle = 0.67448975;  ///< half of |N(0, 1)| lies below
  const std::size_t each = std::max<std::size_t>(16, looks / std::max<std::size_t>(1, pieces.size()));
  for (std::size_t window = 1;; window *= 2) {
    std::vector<double> sizes;
    for (const Piece& piece : pieces) {
      const std::size_t first = piece.begin + piece.size() / 2;
      const std::size_t last = piece.end - piece.size() / 20;
      if (last - first < 4 * window) continue;
      const std::size_t stride = std::max<std::size_t>(1, (last - first - window) / each);
      for (std::size_t at = first; at + window <= last; at += stride) {
        const double centre = static_cast<double>(2 * at + window - 1) / 2;
        sizes.push_back(std::abs(cells.mean(at, at + window) - piece.at(centre)));
      }
    }
    if (sizes.size() < 16) break;
    // Few large ones are as much a part of it as many small ones: a converter that seldom changes its
    // reading.
    m_scales.push_back(
        {window, 0, std::max(quantile(sizes, 0.5) / middle, quantile(sizes, 0.95) / 1.959964)});
  }
}

double Deviations::of(std::size_t window) const {
  if (m_scales.empty()) return 0;
  const Scale& scale = scaleFor(m_scales, window);
  return scale.noise * std::sqrt(static_cast<double>(scale.window) / static_cast<double>(window));
}

double Settling::timeTo(double share) const {
  if (left <= 0) return 0;
  return left > share ? last + time * std::log(left / share) : last;
}

namespace {

/// How much of the steps is left in some stretch of time after them.
struct Left {
  double from = 0;  ///< cells after the step
  double to = 0;
  double share = 0;
  double deviation = 0;
};

/// Steps that are told at that time in units of their own, weighed by their squares. What they differ by
/// tells the deviation too: where each level drifts on its own they do not agree.
Left leftBetween(const Cells& cells, const std::vector<Piece>& pieces, const Deviations& deviations,
                 std::size_t from, std::size_t to) {
  double n = 0, jj = 0, jo = 0, jjoo = 0, jjjo = 0, jjjj = 0;
  for (std::size_t k = 1; k < pieces.size(); ++k) {
    const std::size_t edge = pieces[k - 1].end;
    if (2 * to > pieces[k].end - edge) continue;
    const auto place = static_cast<double>(edge);
    const double j = pieces[k].at(place) - pieces[k - 1].at(place);
    const double centre = place + static_cast<double>(from + to - 1) / 2;
    const double o = pieces[k].at(centre) - cells.mean(edge + from, edge + to);
    n += 1;
    jj += j * j;
    jo += j * o;
    jjoo += j * j * o * o;
    jjjo += j * j * j * o;
    jjjj += j * j * j * j;
  }
  if (jj == 0) return {};
  const double share = jo / jj;
  const double spread = std::sqrt(std::max(0.0, jjoo - 2 * share * jjjo + share * share * jjjj)) / jj;
  return {static_cast<double>(from), static_cast<double>(to), share,
          std::max(deviations.of(to - from) / std::sqrt(jj), n > 3 ? spread : 0)};
}

/// The time constant of the tail, from those shares that are sure.
double tailTime(const std::vector<Left>& sure) {
  double n = 0, x = 0, y = 0, xx = 0, xy = 0;
  for (const Left& part : sure) {
    const double t = (part.from + part.to) / 2;
    const double l = std::log(std::abs(part.share));
    n += 1;
    x += t;
    y += l;
    xx += t * t;
    xy += t * l;
  }
  const double spread = xx - x * x / n;
  const double slope = spread > 0 ? (xy - x * y / n) / spread : 0;
  // A tail that does not fall, or hardly does, tells nothing: then a third of the time it takes.
  return slope < 0 ? std::min(-1 / slope, sure.back().to) : sure.back().to / 3;
}

}  // namespace

Settling settlingOf(const Cells& cells, const std::vector<Piece>& pieces, const Deviations& deviations) {
  std::vector<Left> sure;
  std::size_t misses = 0;
  Left after;  // the first stretch behind the last sure one
  for (std::size_t from = 1, to = 2; misses < 4;) {
    const Left part = leftBetween(cells, pieces, deviations, from, to);
    if (part.to == 0) break;
    const bool isSure = std::abs(part.share) > std::max(4 * part.deviation, 0.003);
    misses = isSure ? 0 : misses + 1;
    if (misses == 1) after = part;
    if (isSure && std::abs(part.share) < 0.6) sure.push_back(part);
    from = to;
    to = std::max(to + 1, to * 5 / 4);
  }
  if (sure.empty()) return {};
  const Left& last = sure.back();
  double time = sure.size() > 1 ? tailTime(sure) : last.to / 2;
  // What is gone soon after, as bounce is, does not fade.
  const double most = std::max(std::abs(after.share), 2 * after.deviation);
  if (after.to > last.to && most > 0 && most < std::abs(last.share))
    time = std::min(
        time, (after.from + after.to - last.from - last.to) / 2 / std::log(std::abs(last.share) / most));
  return {last.to, std::abs(last.share), time};
}

namespace {

/// Cuts the ends of pieces.
class Trimmer {
 public:
  Trimmer(const Cells& cells, const std::vector<Piece>& pieces, const Deviations& deviations,
          double leastStep)
      : m_cells(cells),
        m_pieces(pieces),
        m_deviations(deviations),
        m_least(0.05 * leastStep),
        m_settling(settlingOf(cells, pieces, deviations)) {
    for (std::size_t k = 1; k < pieces.size(); ++k)
      m_smallest = std::min(m_smallest, std::abs(jumpBefore(k)));
    if (pieces.size() < 2) m_smallest = 0;
  }

  SampleSpan trimmed(std::size_t k) const {
    const Piece& piece = m_pieces[k];
    const bool isFirst = piece.begin == 0;
    const bool isLast = piece.end == m_cells.size();
    const std::size_t from = k > 0 ? m_pieces[k - 1].end : piece.begin;
    const std::size_t whole = piece.end - from;
    const std::size_t window = windowFor(piece);
    // As much as lets three fifths of the level be kept.
    const std::size_t latest = std::max(piece.begin, piece.end - whole * 3 / 5);
    std::size_t begin = piece.begin;
    while (begin < latest && !fits(piece, begin, window, true)) ++begin;
    if (!isFirst) begin = std::min(latest, std::max(begin + guard(window, whole), settled(k, from)));
    const std::size_t earliest = std::max(begin + 1, piece.end - std::min(piece.size(), whole / 10 + 1));
    std::size_t end = piece.end;
    while (end > earliest && !fits(piece, end, window, false)) --end;
    if (!isLast) end = std::max(earliest, end - std::min(end, guard(window, whole)));
    return {begin, end};
  }

 private:
  double jumpBefore(std::size_t k) const {
    const auto place = static_cast<double>(m_pieces[k - 1].end);
    return m_pieces[k].at(place) - m_pieces[k - 1].at(place);
  }

  /// The fewest cells whose mean tells a twentieth of the smallest step, at most a 16th of the piece.
  std::size_t windowFor(const Piece& piece) const {
    std::size_t window = 1;
    while (32 * window <= piece.size() && 3.5 * m_deviations.of(window) > 0.05 * m_smallest) window *= 2;
    return window;
  }

  std::size_t guard(std::size_t window, std::size_t whole) const {
    return std::max<std::size_t>(1, std::max(window / 2, whole / 50));
  }

  /// Whether few and many cells at one end lie on the line.
  bool fits(const Piece& piece, std::size_t end, std::size_t shortest, bool isBegin) const {
    for (std::size_t window = shortest; window <= std::max(shortest, piece.size() / 16); window *= 2) {
      const std::size_t from = isBegin ? end : end - window;
      const double centre = static_cast<double>(2 * from + window - 1) / 2;
      const double off = std::abs(m_cells.mean(from, from + window) - piece.at(centre));
      // A drift need not be straight.
      const double bend = 0.15 * std::abs(piece.slope) * static_cast<double>(piece.size());
      if (off > std::max({m_least, 0.02 * m_smallest, bend, 3.5 * m_deviations.of(window)})) return false;
    }
    return true;
  }

  /// The cell from which on what is left of the step does no harm.
  std::size_t settled(std::size_t k, std::size_t from) const {
    if (k == 0) return from;
    const double share = 0.005 * m_smallest / std::abs(jumpBefore(k));
    const double time = m_settling.timeTo(std::clamp(share, 1e-4, 0.02));
    return from + static_cast<std::size_t>(std::min(time, 1e15) + 0.5);
  }

  const Cells& m_cells;
  const std::vector<Piece>& m_pieces;
  const Deviations& m_deviations;
  double m_least;
  Settling m_settling;
  double m_smallest = 1e300;
};

}  // namespace

std::vector<SampleSpan> trimmed(const Cells& cells, const std::vector<Piece>& pieces,
                                const Deviations& deviations, double leastStep) {
  const Trimmer trimmer(cells, pieces, deviations, leastStep);
  std::vector<SampleSpan> spans;
  for (std::size_t k = 0; k < pieces.size(); ++k) spans.push_back(trimmer.trimmed(k));
  return spans;
}

}  // namespace core
