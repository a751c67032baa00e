// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/levels/describe.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>

#include "core/levels/hum.h"
#include "core/levels/noise.h"
#include "core/levels/quality.h"
#include "core/levels/resolution.h"
#include "core/levels/robust.h"
#include "core/levels/tally.h"
#include "core/recording/samples.h"

namespace core {
namespace {

constexpr std::size_t longestLook = 32768;  ///< samples in a row that lines are looked for in
constexpr std::size_t pieceLength = 4096;   ///< over which a hum keeps its frequency
constexpr std::size_t fewSamples = 50;      ///< too few to know their scale by themselves
constexpr double nan = std::numeric_limits<double>::quiet_NaN();

/// Scale of some of the residuals; NaN when none of those is a number.
double scaleOfSome(std::span<const double> residuals) {
  constexpr std::size_t enough = 512;
  std::vector<double> distances;
  for (std::size_t k = 0; k < residuals.size(); k += 1 + residuals.size() / enough) {
    if (!std::isnan(residuals[k])) distances.push_back(std::abs(residuals[k]));
  }
  return distances.empty() ? nan : scaleOf(std::move(distances));
}

/// What the reckoning of residuals from a baseline may add to them: with no noise at all it is all there is.
double roundingOf(const Baseline& baseline, std::size_t samples) {
  return 1e-15 * (std::abs(baseline.centre) + std::abs(baseline.slope) * static_cast<double>(samples));
}

/// How far off the first samples lie; 0 when they are within the limit. Spikes do not stand in a row: what
/// does is a tail of settling, which is to be seen in the mean and told of.
double tailOf(std::span<const double> values, const Baseline& baseline) {
  constexpr std::size_t early = 16, enough = 10;
  if (values.size() < 4 * early) return 0;
  const double middle = static_cast<double>(values.size() - 1) / 2;
  std::size_t above = 0, below = 0;
  double farthest = 0;
  for (std::size_t k = 0; k < early; ++k) {
    const double r = values[k] - baseline.centre - baseline.slope * (static_cast<double>(k) - middle);
    above += r > baseline.limit;
    below += r < -baseline.limit;
    if (std::abs(r) > farthest) farthest = std::abs(r);
  }
  return std::max(above, below) >= enough ? farthest : 0;
}

/// Describes the spans of one recording: a first look at each, then all samples in order, in pieces.
class Description {
 public:
  Description(const TimeAxis& time, std::span<const double> values, std::span<const SampleSpan> spans,
              const LevelOptions& options, const std::stop_token& stop);

  /// Empty when stopped.
  std::vector<Level> levels();

 private:
  void addResiduals(std::size_t span, std::size_t begin, std::size_t end);
  std::vector<double> residualsOfLook(std::size_t begin, std::size_t end) const;
  void listen();
  std::size_t beginOfLook() const;
  double leastLine() const;
  std::vector<double> limitsOfParts(std::span<double> humming) const;
  std::vector<double> withoutOutliers(std::vector<double> residuals) const;
  void clearPiece();
  void takeHumOff();
  void flush();
  void tallyAll();
  Level levelOf(std::size_t k, const Noise& noise, double beforeRounding) const;
  double noiseBefore() const;
  double settlingOf(std::size_t k, const Noise& noise) const;

  const TimeAxis& m_time;
  std::span<const double> m_values;
  std::span<const SampleSpan> m_spans;
  const std::stop_token& m_stop;
  double m_resolution = 0;
  std::vector<Baseline> m_baselines;
  std::vector<double> m_tails;  ///< how far off their beginnings lie that still settle; 0: do not
  Hum m_hum{{}};
  std::vector<Tally> m_tallies;
  std::vector<Contrasts> m_contrasts;
  // The piece at work.
  std::vector<double> m_residuals;
  std::vector<HumPart> m_parts;
  std::vector<std::size_t> m_owners;  ///< of the parts
};

Description::Description(const TimeAxis& time, std::span<const double> values,
                         std::span<const SampleSpan> spans, const LevelOptions& options,
                         const std::stop_token& stop)
    : m_time(time), m_values(values), m_spans(spans), m_stop(stop) {
  m_resolution = options.resolution > 0 ? options.resolution : resolutionOf(values, spans);
  std::vector<double> scales;
  for (const SampleSpan& span : spans) {
    if (stop.stop_requested()) return;  // levels() sees it too
    letSamplesGo();
    m_baselines.push_back(baselineOf(values.subspan(span.begin, span.size())));
    if (!std::isnan(m_baselines.back().centre)) scales.push_back(m_baselines.back().scale);
  }
  const double usual = scales.empty() ? 0 : medianOf(scales);
  for (std::size_t k = 0; k < spans.size(); ++k) {
    if (stop.stop_requested()) return;
    letSamplesGo();
    Baseline& baseline = m_baselines[k];
    if (spans[k].size() < fewSamples) baseline.scale = std::max(baseline.scale, usual);
    baseline.limit = limitOf(baseline.scale, m_resolution) + roundingOf(baseline, spans[k].size());
    m_tails.push_back(tailOf(values.subspan(spans[k].begin, spans[k].size()), baseline));
    baseline.limit = std::max(baseline.limit, m_tails.back());
  }
}

/// Where the most samples of spans lie within the length of a look.
std::size_t Description::beginOfLook() const {
  std::size_t best = 0, most = 0;
  std::size_t covered = 0, last = 0;
  for (std::size_t first = 0; first < m_spans.size(); ++first) {
    const std::size_t end = m_spans[first].begin + longestLook;
    while (last < m_spans.size() && m_spans[last].begin < end) covered += m_spans[last++].size();
    const std::size_t over = m_spans[last - 1].end > end ? m_spans[last - 1].end - end : 0;
    if (covered - over > most) {
      most = covered - over;
      best = m_spans[first].begin;
    }
    covered -= m_spans[first].size();
  }
  return best;
}

/// About the baselines; 0 outside spans, and where a sample is missing or an outlier.
std::vector<double> Description::residualsOfLook(std::size_t begin, std::size_t end) const {
  std::vector<double> residuals(end - begin, 0.0);
  for (std::size_t k = 0; k < m_spans.size(); ++k) {
    const Baseline& baseline = m_baselines[k];
    const double middle = static_cast<double>(m_spans[k].begin + m_spans[k].end - 1) / 2;
    for (std::size_t i = std::max(begin, m_spans[k].begin); i < std::min(end, m_spans[k].end); ++i) {
      const double r = m_values[i] - baseline.centre - baseline.slope * (static_cast<double>(i) - middle);
      if (std::abs(r) <= baseline.limit) residuals[i - begin] = r;
    }
  }
  return residuals;
}

/// A hum shows itself as one by repeating within the usual span.
double Description::leastLine() const {
  std::vector<double> sizes;
  for (const SampleSpan& span : m_spans) sizes.push_back(static_cast<double>(span.size()));
  return 0.75 / medianOf(sizes);
}

/// Finds what hums.
void Description::listen() {
  const std::size_t begin = beginOfLook();
  const std::size_t end = std::min(begin + longestLook, m_spans.back().end);
  m_hum = Hum(linesOf(residualsOfLook(begin, end), leastLine()));
  if (m_hum.isSilent()) return;
  for (std::size_t k = 0; k < m_spans.size(); ++k) {
    const std::size_t first = std::max(begin, m_spans[k].begin);
    const std::size_t last = std::min(end, m_spans[k].end);
    if (first < last) addResiduals(k, first, last);
  }
  m_hum.refine(withoutOutliers(std::move(m_residuals)), m_parts);
  clearPiece();
}

void Description::addResiduals(std::size_t span, std::size_t begin, std::size_t end) {
  const Baseline& baseline = m_baselines[span];
  const double middle = static_cast<double>(m_spans[span].begin + m_spans[span].end - 1) / 2;
  const double start = baseline.centre + baseline.slope * (static_cast<double>(begin) - middle);
  const std::size_t at = m_residuals.size();
  m_residuals.resize(at + end - begin);
  double* to = m_residuals.data() + at;
  const double* from = m_values.data() + begin;
  const double slope = baseline.slope;
  const auto count = static_cast<std::int32_t>(end - begin);  // narrow enough to be turned into many at once
  for (std::int32_t k = 0; k < count; ++k) to[k] = from[k] - (start + slope * static_cast<double>(k));
  m_parts.push_back({begin, end - begin});
  m_owners.push_back(span);
}

/// Beyond which samples of each part of the piece at work are outliers, now that its hum is taken off: by the
/// scale of the part, of few samples no smaller than that of the whole piece. A part that is louder without
/// the hum than its span was with it had none, and gets back what was taken off.
std::vector<double> Description::limitsOfParts(std::span<double> humming) const {
  const double usual = scaleOfSome(humming);
  std::vector<double> limits;
  std::size_t at = 0;
  for (std::size_t p = 0; p < m_parts.size(); at += m_parts[p++].length) {
    const Baseline& baseline = m_baselines[m_owners[p]];
    const auto part = humming.subspan(at, m_parts[p].length);
    double own = scaleOfSome(part);
    if (own > 3 * baseline.scale) {
      std::copy_n(m_residuals.begin() + static_cast<std::ptrdiff_t>(at), part.size(), part.begin());
      own = nan;
    }
    if (part.size() < fewSamples) own = std::max(own, usual);
    const double limit = std::isnan(own) ? HUGE_VAL : limitOf(own, m_resolution);
    limits.push_back(std::min(baseline.limit, std::max(limit, m_tails[m_owners[p]])));
  }
  return limits;
}

/// `residuals` of the piece at work without what lies beyond the limits of their spans.
std::vector<double> Description::withoutOutliers(std::vector<double> residuals) const {
  std::size_t at = 0;
  for (std::size_t p = 0; p < m_parts.size(); at += m_parts[p++].length) {
    const double limit = m_baselines[m_owners[p]].limit;
    for (std::size_t k = at; k < at + m_parts[p].length; ++k) {
      if (std::abs(residuals[k]) > limit) residuals[k] = nan;
    }
  }
  return residuals;
}

/// Takes the hum off the piece at work, twice: without it the samples lie closer together, and outliers are
/// found that it hid.
void Description::takeHumOff() {
  std::vector<double> humming = m_residuals;
  std::vector<double> clean = withoutOutliers(humming);
  m_hum.takeOff(clean, m_parts, humming);
  std::vector<double> limits = limitsOfParts(humming);
  std::size_t at = 0, changed = 0;
  for (std::size_t p = 0; p < m_parts.size(); ++p) {
    for (const std::size_t end = at + m_parts[p].length; at < end; ++at) {
      const bool isOutlier = !(std::abs(humming[at]) <= limits[p]);
      changed += isOutlier != std::isnan(clean[at]);
      clean[at] = isOutlier ? nan : m_residuals[at];
    }
  }
  if (changed > 0) {
    humming = m_residuals;
    m_hum.takeOff(clean, m_parts, humming);
    limits = limitsOfParts(humming);
  }
  for (std::size_t p = 0; p < m_parts.size(); ++p) m_tallies[m_owners[p]].setLimit(limits[p]);
  m_residuals = std::move(humming);
}

/// Hands the piece at work to the tallies, without its hum.
void Description::flush() {
  if (m_parts.empty()) return;
  if (!m_hum.isSilent()) takeHumOff();
  std::size_t at = 0;
  for (std::size_t p = 0; p < m_parts.size(); at += m_parts[p++].length) {
    m_tallies[m_owners[p]].add(std::span(m_residuals).subspan(at, m_parts[p].length));
  }
  clearPiece();
}

void Description::clearPiece() {
  m_residuals.clear();
  m_parts.clear();
  m_owners.clear();
}

/// Long spans are cut into pieces, the last longer than the others; short ones are put together until they
/// make up a piece, unless they lie so far apart that a hum would not keep its phase.
void Description::tallyAll() {
  std::size_t finished = 0;
  for (std::size_t k = 0; k < m_spans.size(); ++k) {
    const SampleSpan& span = m_spans[k];
    letSamplesGo();
    m_tallies.emplace_back(span.size(), m_baselines[k]);
    const bool isFar = !m_parts.empty() && span.begin > m_parts.front().begin + 4 * pieceLength;
    if (isFar || (span.size() >= pieceLength && m_residuals.size() >= pieceLength / 2)) flush();
    const std::size_t pieces = std::max<std::size_t>(1, span.size() / pieceLength);
    for (std::size_t p = 0; p < pieces; ++p) {
      if (m_stop.stop_requested()) return;
      // Of one length but for the last, since a hum is laid out by the length.
      const std::size_t begin = span.begin + p * pieceLength;
      addResiduals(k, begin, p + 1 == pieces ? span.end : begin + pieceLength);
      if (m_residuals.size() >= pieceLength) flush();
    }
    if (m_parts.empty()) {
      for (; finished <= k; ++finished) m_contrasts.push_back(m_tallies[finished].finish());
    }
  }
  flush();
  for (; finished < m_spans.size(); ++finished) m_contrasts.push_back(m_tallies[finished].finish());
}

/// What a tail at the beginning shifts the mean by: the first sections above the line through the later ones,
/// when the first is so by more than three standard deviations and the others follow.
double Description::settlingOf(std::size_t k, const Noise& noise) const {
  constexpr std::size_t early = 6;
  const std::vector<double>& means = m_tallies[k].sectionMeans();
  double n = 0, x = 0, y = 0, xx = 0, xy = 0;
  for (std::size_t s = early; s < means.size(); ++s) {
    if (std::isnan(means[s])) return 0;
    const auto place = static_cast<double>(s);
    n += 1;
    x += place;
    y += means[s];
    xx += place * place;
    xy += place * means[s];
  }
  const double slope = (xy - x * y / n) / (xx - x * x / n);
  double shift = 0, first = 0;
  for (std::size_t s = early; s-- > 0;) {
    first = means[s] - (y / n + slope * (static_cast<double>(s) - x / n));
    shift += first / Tally::sections;
  }
  // The line, carried on to the first section, has 1.2 times the deviation of a section beside its own.
  const double deviation = 1.56 * noise.ofMean(k, m_spans[k].size() / Tally::sections).stdUncertainty;
  const bool isTail = std::abs(first) > 3 * deviation && first * shift > 0;
  return isTail ? shift : 0;
}

/// Of the whole recording, since a span's own depends on where between two codes it happens to lie. Spans
/// that differ for that reason leave the noise unsure: half a standard error less is taken, so that noise
/// which is hardly there does not seem to smooth the codes.
double Description::noiseBefore() const {
  if (m_resolution <= 0) return 0;
  double squares = 0, fourths = 0, weight = 0, weights = 0;
  for (const Tally& tally : m_tallies) {
    const auto n = static_cast<double>(std::min<std::size_t>(tally.samples(), 1000));
    const double square = tally.meanSquareAboutLine();
    squares += n * square;
    fourths += n * square * square;
    weight += n;
    weights += n * n;
  }
  if (weight == 0) return 0;
  const double mean = squares / weight;
  const double spread = std::max(0.0, fourths / weight - mean * mean);
  const double lowest = std::max(0.0, mean - 0.5 * std::sqrt(spread * weights) / weight);
  return noiseBeforeRounding(std::sqrt(lowest), m_resolution);
}

Level Description::levelOf(std::size_t k, const Noise& noise, double beforeRounding) const {
  const Tally& tally = m_tallies[k];
  const SampleSpan& span = m_spans[k];
  Level level;
  level.begin_s = m_time[span.begin];
  level.end_s = m_time[span.end - 1];
  level.span = span;
  level.samples = tally.samples();
  level.outliers = tally.outliers();
  level.mean = m_baselines[k].centre + tally.mean();
  level.robustMean = m_baselines[k].centre + tally.robustMean();
  if (level.samples == 0) {
    level.mean = level.robustMean = nan;
    judge(level, {});
    return level;
  }
  const double duration_s = level.end_s - level.begin_s;
  const auto steps = static_cast<double>(span.size() - 1);
  if (duration_s > 0) {
    level.drift_per_s = tally.slope() * steps / duration_s;
    level.driftUncertainty_per_s = noise.deviationOfSlope(k, level.samples) * steps / duration_s;
  }
  const Noise::OfMean of = noise.ofMean(k, level.samples);
  LevelEvidence evidence;
  evidence.missing = span.size() - tally.samples() - tally.outliers();
  evidence.isConstant = tally.isConstant();
  evidence.resolution = m_resolution;
  evidence.scatter = noise.deviationOfSample(k);
  evidence.rounding = deviationOfRounding(
      m_resolution,
      {.noise = beforeRounding, .drift = std::abs(tally.slope()) * steps, .hum = m_hum.amplitudes()});
  evidence.settling = settlingOf(k, noise);
  level.effectiveSamples = of.effectiveSamples;
  // A tail shifts the mean by something between nothing and what is seen of it.
  level.stdUncertainty = std::hypot(of.stdUncertainty, evidence.rounding, evidence.settling / std::sqrt(3.0));
  judge(level, evidence);
  return level;
}

std::vector<Level> Description::levels() {
  if (m_stop.stop_requested()) return {};
  listen();
  tallyAll();
  if (m_stop.stop_requested()) return {};
  const Noise noise(m_contrasts);
  const double beforeRounding = noiseBefore();
  std::vector<Level> levels;
  for (std::size_t k = 0; k < m_spans.size() && !m_stop.stop_requested(); ++k) {
    letSamplesGo();
    levels.push_back(levelOf(k, noise, beforeRounding));
  }
  return levels;
}

}  // namespace

std::vector<Level> describeLevels(const TimeAxis& time, std::span<const double> values,
                                  std::span<const SampleSpan> spans, const LevelOptions& options,
                                  const std::stop_token& stop) {
  if (spans.empty()) return {};
  return Description(time, values, spans, options, stop).levels();
}

}  // namespace core
