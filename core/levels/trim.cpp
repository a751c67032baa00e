// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/trim.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/levels/settling.h"

namespace core {
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
    // Where it drifts, what is left should lie amid the level: its mean is that of the level then.
    const bool drifts = driftsFor(k);
    const std::size_t latest = std::max(piece.begin, from + (drifts ? whole / 5 : whole * 3 / 10));
    std::size_t begin = piece.begin;
    while (begin < latest && !fits(piece, begin, window, true)) ++begin;
    if (!isFirst) begin = std::min(latest, std::max(begin + guard(window, whole), settled(k, from)));
    // A filter that settles late begins late: that much of its way is not seen where the next step begins.
    const auto unseen = static_cast<std::size_t>(m_settling.last / 4);
    // Three fifths are kept, a half where what is cut off is surely not level.
    const std::size_t earliest =
        std::max(piece.end - std::min(piece.size(), whole / 5 + 1), begin + whole / 2);
    std::size_t end = piece.end;
    while (end > earliest && !fits(piece, end, window, false)) --end;
    const std::size_t least = std::min(end, begin + whole * 3 / 5);
    if (!isLast)
      end = std::max(least, end - std::min(end, std::max({window, 2 * guard(window, whole), unseen})));
    if (drifts && k > 0 && !isLast) end = std::max(least, std::min(end, piece.end - (begin - from)));
    return {begin, end};
  }

 private:
  double jumpBefore(std::size_t k) const {
    const auto place = static_cast<double>(m_pieces[k - 1].end);
    return m_pieces[k].at(place) - m_pieces[k - 1].at(place);
  }

  /// Whether the height changes much within the level, and not as it does when it settles.
  bool driftsFor(std::size_t k) const {
    const Piece& piece = m_pieces[k];
    const double rise = piece.slope * static_cast<double>(piece.size());
    if (std::abs(rise) < 0.1 * m_smallest) return false;
    return k == 0 || m_settling.left == 0 || rise * jumpBefore(k) < 0;
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
    return from + static_cast<std::size_t>(std::lround(std::min(time, 1e15)));
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
