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
  return size < 10 ? SampleSpan{begin, end} : SampleSpan{begin + size / 2, end - size * 3 / 20};
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

/// What lies on one side of a piece: the next piece that is not much shorter, and what is between, which may
/// be parts of the step to it.
struct Beside {
  double way = 0;        ///< to the height furthest from the piece's own
  std::size_t size = 0;  ///< of the last one looked at; 0: the recording ends here
};

Beside besideOf(const Cells& cells, const std::vector<Piece>& pieces, std::size_t k, std::ptrdiff_t step) {
  constexpr std::ptrdiff_t looks = 16;
  const double own = cells.mean(pieces[k].begin, pieces[k].end);
  Beside beside;
  auto other = static_cast<std::ptrdiff_t>(k) + step;
  for (std::ptrdiff_t n = 0; n < looks && other >= 0 && other < std::ssize(pieces); ++n, other += step) {
    const double way = cells.mean(pieces[other].begin, pieces[other].end) - own;
    if (std::abs(way) > std::abs(beside.way)) beside.way = way;
    beside.size = pieces[other].size();
    if (4 * beside.size >= pieces[k].size()) break;
  }
  return beside;
}

/// Whether the height changes at cell `at` within a short part of a piece of `size` cells by a good part of
/// `way`: a ramp does not.
bool isSharp(const Cells& cells, const std::vector<Scale>& scales, std::size_t at, std::size_t size,
             double way) {
  const std::size_t window = std::max<std::size_t>(1, size / 16);
  if (at < window || at + window > cells.size()) return false;
  const double jump = contrastAt(cells, at, window);
  return jump * way > 0.3 * way * way && std::abs(jump) > 4 * leastNoise(scales, window);
}

/// What the slope of a piece is for sure beyond the usual one, where it has settled; 0 when nothing.
double extraTrend(const Cells& cells, const std::vector<Scale>& scales, const Piece& piece, double usual) {
  const Trend later = trendOf(cells, scales, laterPart(piece.begin, piece.end));
  const double extra = later.slope - usual;
  if (std::abs(extra) >= 3 * later.deviation) return extra;
  // Of a short part of a ramp only all of it is sure; a level that settles does not go on as fast later.
  const Trend all = trendOf(cells, scales, {piece.begin, piece.end});
  const double extraOfAll = all.slope - usual;
  if (std::abs(extraOfAll) < 5 * all.deviation) return 0;
  return extra * extraOfAll > 0.4 * extraOfAll * extraOfAll ? extraOfAll : 0;
}

/// Whether the piece between two others goes on in the direction from one to the other by half as much as
/// lies between it and the nearer of them: a part of a ramp or of a settling.
bool isOnItsWay(const Cells& cells, const std::vector<Scale>& scales, const std::vector<Piece>& pieces,
                double usual, std::size_t k) {
  const Piece& piece = pieces[k];
  const double extra = extraTrend(cells, scales, piece, usual);
  if (extra == 0) return false;
  const double rise = extra * static_cast<double>(piece.size());
  double nearer = std::numeric_limits<double>::infinity();
  bool areSharp = true;  // both its ends: then it is a level that drifts
  for (const std::ptrdiff_t step : {-1, 1}) {
    const Beside beside = besideOf(cells, pieces, k, step);
    if (beside.size == 0) continue;
    const double way = beside.way * static_cast<double>(step);
    if (way * rise <= 0) return false;
    nearer = std::min(nearer, std::abs(way));
    areSharp = areSharp && isSharp(cells, scales, step < 0 ? piece.begin : piece.end, piece.size(), way);
  }
  if (areSharp) return false;
  return std::abs(rise) > 0.5 * nearer;
}

/// Whether a piece that is short beside its neighbours is no more even than they are apart: a part of a
/// settling, or one swing of it.
bool isUneven(const Cells& cells, const std::vector<Scale>& scales, const std::vector<Piece>& pieces,
              std::size_t k) {
  const Piece& piece = pieces[k];
  std::size_t longest = 0;
  double nearer = std::numeric_limits<double>::infinity();
  for (const std::ptrdiff_t step : {-1, 1}) {
    const Beside beside = besideOf(cells, pieces, k, step);
    if (beside.size == 0) continue;
    longest = std::max(longest, beside.size);
    nearer = std::min(nearer, std::abs(beside.way));
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
  // A swing takes a small part of the time of a level: of longer pieces noise may be all that is uneven.
  const double byNoise = 4 * piece.size() > longest ? 2.5 * leastNoise(scales, third) : 0;
  return high - low > std::max(0.3 * nearer, byNoise);
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
    areLevels[k] = !isOnItsWay(cells, scales, pieces, usual, k) && !isUneven(cells, scales, pieces, k);
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

}  // namespace core
