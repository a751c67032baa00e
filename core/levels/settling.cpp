// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/settling.h"

#include <algorithm>
#include <cmath>

#include "core/levels/statistics.h"

namespace core {
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
  // What hardly fades in a good part of the shortest level is drift that differs from level to level.
  std::size_t shortest = cells.size();
  for (std::size_t k = 1; k < pieces.size(); ++k)
    shortest = std::min(shortest, pieces[k].end - pieces[k - 1].end);
  if (4 * last.to > static_cast<double>(shortest) && time > 0.6 * last.to) return {};
  return {last.to, std::abs(last.share), time};
}

namespace {

/// A long piece and the next one after it, with nothing between them that holds as long.
struct Transition {
  std::size_t from = 0;  ///< index of the piece
  std::size_t to = 0;
};

constexpr std::size_t beside = 16;  ///< pieces looked at on either side

/// The pieces at least three times as long on either side of piece `k`, when it follows the first of them
/// soon; a change from a piece to itself when there are none.
Transition changeAround(const std::vector<Piece>& pieces, std::size_t k) {
  const std::size_t size = 3 * pieces[k].size();
  std::size_t from = k;
  while (from > 0 && k - from < beside && (from == k || pieces[from].size() < size)) --from;
  std::size_t to = k;
  while (to + 1 < pieces.size() && to - k < beside && (to == k || pieces[to].size() < size)) ++to;
  if (pieces[from].size() < size || pieces[to].size() < size) return {k, k};
  if (pieces[k].end - pieces[from].end > pieces[to].size()) return {k, k};
  return {from, to};
}

double sizeOf(const std::vector<Piece>& pieces, const Transition& change) {
  const auto place = static_cast<double>(pieces[change.from].end);
  return pieces[change.to].at(place) - pieces[change.from].at(place);
}

/// What is left of a change on average from cell `begin` to `end` after it, as a share of it.
double leftOf(const Cells& cells, const std::vector<Piece>& pieces, const Transition& change,
              std::size_t begin, std::size_t end) {
  const std::size_t edge = pieces[change.from].end;
  const double all = sizeOf(pieces, change);
  const double centre = static_cast<double>(edge) + static_cast<double>(begin + end - 1) / 2;
  const double left = pieces[change.to].at(centre) - cells.mean(edge + begin, edge + end);
  return all != 0 ? left / all : 0;
}

/// Whether other changes are as far from done at the time of a piece amid `change` as it is.
bool isUsualThen(const Cells& cells, const std::vector<Piece>& pieces, const std::vector<Transition>& others,
                 const Transition& change, const Piece& piece) {
  constexpr std::size_t most = 64;
  const std::size_t begin = piece.begin - pieces[change.from].end;
  const std::size_t end = piece.end - pieces[change.from].end;
  const double own = leftOf(cells, pieces, change, begin, end);
  // A pulse goes further than any overshoot: the levels beside it may even be equal.
  if (std::abs(own) > 1.5) return false;
  std::vector<double> lefts;
  for (std::size_t i = 0; i < others.size(); i += 1 + others.size() / most) {
    const Transition& other = others[i];
    if (other.from == change.from) continue;
    if (std::abs(sizeOf(pieces, other)) < 0.25 * std::abs(sizeOf(pieces, change))) continue;
    if (pieces[other.to].end - pieces[other.from].end < 2 * end) continue;
    lefts.push_back(leftOf(cells, pieces, other, begin, end));
  }
  if (lefts.size() < 3) return false;
  // One filter treats all steps alike, while levels between others come by lot.
  for (double& left : lefts) left /= own;
  return quantile(lefts, 0.25) > 0.4 && quantile(lefts, 0.75) < 2.5;
}

/// Whether a quarter of the piece is enough to show all of the step at either end: not so within a settling.
bool hasSharpEnds(const Cells& cells, const Piece& piece) {
  const std::size_t all = piece.size();
  const std::size_t part = std::max<std::size_t>(1, all / 4);
  for (const std::size_t at : {piece.begin, piece.end}) {
    if (at < all || at + all > cells.size()) return false;
    const double share = contrastAt(cells, at, part) / contrastAt(cells, at, all);
    if (!(share > 0.85 && share < 1.2)) return false;  // more of it: a swing about the level
  }
  return true;
}

}  // namespace

std::vector<Piece> withoutFragments(const Cells& cells, const std::vector<Piece>& pieces) {
  std::vector<Transition> around;
  std::vector<Transition> others;
  std::size_t last = pieces.size();  // the last piece that is not amid a change
  for (std::size_t k = 0; k < pieces.size(); ++k) {
    around.push_back(changeAround(pieces, k));
    if (around[k].from != k) continue;
    if (last < k && pieces[k].begin - pieces[last].end <= pieces[k].size()) others.push_back({last, k});
    last = k;
  }
  std::vector<Piece> kept;
  for (std::size_t k = 0; k < pieces.size(); ++k) {
    if (around[k].from == k || hasSharpEnds(cells, pieces[k]) ||
        !isUsualThen(cells, pieces, others, around[k], pieces[k]))
      kept.push_back(pieces[k]);
  }
  return kept;
}

}  // namespace core
