// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/merit_figures.h"

#include <algorithm>
#include <cmath>

#include "core/assess/half_slopes.h"
#include "core/assess/judging.h"
#include "core/line/linearity.h"
#include "core/units/language.h"

namespace core {
namespace {

MeritFigure missing(std::string why) {
  MeritFigure figure;
  figure.missing = std::move(why);
  return figure;
}

constexpr std::string_view noSpan = sayLater("the readings at both ends of the range are equal");

std::string deviationDefinition(const MeritGround& ground, const std::string& what) {
  return say(
      "greatest deviation of {1} from the {2} through measured against expected reading (rising and falling "
      "averaged); measured less line, of the measured span",
      {what, referenceLineName(ground.setup.limits.linearityFrom)});
}

/// The reference line of the check, with the deviation of one value of it as weights of the points.
struct DrawnLine {
  ReferenceFit fit;
  std::vector<double> x, y;

  double deviation(double expected, double measured) const {
    return measured - (fit.intercept + fit.slope * expected);
  }
};

Result<DrawnLine> drawnLine(const MeritGround& ground) {
  DrawnLine line;
  for (const EqualSteps& level : ground.levels) {
    line.x.push_back(level.expected);
    line.y.push_back(level.mean);
  }
  auto fit = referenceLineOf(line.x, line.y, ground.setup.limits.linearityFrom);
  if (!fit) return fit.error();
  line.fit = std::move(*fit);
  return line;
}

/// Takes the line's value at `expected` off `weights`.
void takeLineOff(const MeritGround& ground, const DrawnLine& line, double expected,
                 std::vector<double>& weights) {
  for (std::size_t k = 0; k < ground.levels.size(); ++k) {
    const double share = line.fit.interceptWeights[k] + expected * line.fit.slopeWeights[k];
    ground.addMean(ground.levels[k].points, -share, weights);
  }
}

double greatestOf(const std::vector<double>& values) {
  double greatest = 0;
  for (const double value : values) greatest = std::max(greatest, std::abs(value));
  return greatest;
}

std::string whyNoLine(const MeritGround& ground) {
  if (ground.levels.size() < 3) return say("it needs readings at three expected values");
  return ground.measuredSpan() == 0 ? say(noSpan) : std::string();
}

MeritFigure nonlinearity(const MeritGround& ground) {
  if (auto why = whyNoLine(ground); !why.empty()) return missing(why);
  const auto line = drawnLine(ground);
  if (!line) return missing(line.error().text());
  std::vector<double> deviations;
  for (const EqualSteps& level : ground.levels)
    deviations.push_back(line->deviation(level.expected, level.mean));
  const std::size_t at = farthestOff(deviations, greatestOf(line->y));
  const EqualSteps& level = ground.levels[at];
  MeritFigure figure;
  figure.value = deviations[at];
  figure.denominator = std::abs(ground.measuredSpan());
  figure.weights = ground.noWeights();
  ground.addMean(level.points, 1, figure.weights);
  takeLineOff(ground, *line, level.expected, figure.weights);
  figure.step = ground.points.steps[level.points.front()];
  figure.definition = deviationDefinition(ground, say("the mean readings"));
  return figure;
}

MeritFigure combinedError(const MeritGround& ground) {
  if (auto why = whyNoLine(ground); !why.empty()) return missing(why);
  const auto line = drawnLine(ground);
  if (!line) return missing(line.error().text());
  std::vector<double> deviations;
  for (std::size_t i = 0; i < ground.points.size(); ++i)
    deviations.push_back(line->deviation(ground.points.expected[i], ground.points.measured[i]));
  const std::size_t at = farthestOff(deviations, greatestOf(ground.points.measured));
  MeritFigure figure;
  figure.value = deviations[at];
  figure.denominator = std::abs(ground.measuredSpan());
  figure.weights = ground.noWeights();
  figure.weights[at] = 1;
  takeLineOff(ground, *line, ground.points.expected[at], figure.weights);
  figure.step = ground.points.steps[at];
  figure.definition = deviationDefinition(ground, say("any reading"));
  return figure;
}

bool planComesBack(const MeritGround& ground) {
  for (std::size_t step = 0; step < ground.approaches.size(); ++step)
    if (ground.approaches[step] == Approach::Falling && !isZeroStep(ground.setup, step)) return true;
  return false;
}

MeritFigure hysteresis(const MeritGround& ground) {
  if (!planComesBack(ground)) return missing(say("the plan has no steps that come back down"));
  MeritFigure figure = missing(say("no level was read both on the way up and on the way down"));
  if (ground.levels.size() < 2) return figure;
  for (const EqualSteps& level : ground.levels) {
    const auto up = ground.approached(level, Approach::Rising);
    const auto down = ground.approached(level, Approach::Falling);
    if (up.empty() || down.empty() || ground.isZeroLevel(level)) continue;
    const double difference = ground.meanOf(down) - ground.meanOf(up);
    if (figure.missing.empty() && std::abs(difference) <= std::abs(figure.value)) continue;
    figure.missing.clear();
    figure.value = difference;
    figure.weights = ground.noWeights();
    ground.addMean(down, 1, figure.weights);
    ground.addMean(up, -1, figure.weights);
    figure.step = ground.points.steps[down.back()];
  }
  figure.denominator = std::abs(ground.measuredSpan());
  if (figure.missing.empty() && figure.denominator == 0) return missing(say(noSpan));
  figure.definition =
      say("greatest difference of falling and rising readings at one expected value other than zero; falling "
          "less rising (of several, their means), of the measured span");
  return figure;
}

/// Takes the spread of `some` readings at one value and in one direction when it is the greatest yet.
void takeSpread(const MeritGround& ground, const std::vector<std::size_t>& some, std::string_view direction,
                MeritFigure& figure) {
  if (some.size() < 2) return;
  const auto [least, most] = std::minmax_element(some.begin(), some.end(), [&](std::size_t a, std::size_t b) {
    return ground.points.measured[a] < ground.points.measured[b];
  });
  const double spread = ground.points.measured[*most] - ground.points.measured[*least];
  if (figure.missing.empty() && spread <= figure.value) return;
  figure.missing.clear();
  figure.value = spread;
  figure.weights = ground.noWeights();
  figure.weights[*most] += 1;
  figure.weights[*least] -= 1;
  figure.step = ground.points.steps[some.back()];
  figure.direction = direction;
  figure.repeats = some.size();
}

MeritFigure repeatability(const MeritGround& ground) {
  MeritFigure figure = missing(say("no level was read twice in the same direction"));
  if (ground.levels.size() < 2) return figure;
  for (const EqualSteps& level : ground.levels) {
    if (ground.isZeroLevel(level)) continue;
    takeSpread(ground, ground.approached(level, Approach::Rising), sayName("rising"), figure);
    takeSpread(ground, ground.approached(level, Approach::Falling), sayName("falling"), figure);
  }
  figure.denominator = std::abs(ground.measuredSpan());
  if (figure.missing.empty() && figure.denominator == 0) return missing(say(noSpan));
  figure.definition =
      say("greatest spread of readings at one expected value other than zero, reached from the same side; "
          "largest less smallest, of the measured span");
  return figure;
}

/// Of a zero reading less the first; `point` is that of the later reading.
MeritFigure zeroFigure(const MeritGround& ground, std::size_t point) {
  MeritFigure figure;
  figure.value = ground.points.measured[point];
  figure.denominator = greatestExpected(ground.prediction).base();
  if (figure.denominator == 0) return missing(say("no step expects a reading"));
  figure.weights = ground.noWeights();
  figure.weights[point] = 1;
  figure.step = ground.points.steps[point];
  return figure;
}

/// Points of zero readings after the first, in the order of the steps.
std::vector<std::size_t> laterZeros(const MeritGround& ground) {
  std::vector<std::size_t> zeros;
  for (std::size_t i = 0; i < ground.points.size(); ++i)
    if (isZeroStep(ground.setup, ground.points.steps[i]) && ground.points.steps[i] != ground.zeroStep)
      zeros.push_back(i);
  return zeros;
}

MeritFigure zeroReturn(const MeritGround& ground) {
  const auto zeros = laterZeros(ground);
  if (!ground.points.zero || zeros.empty()) return missing(say("it needs two zero readings"));
  const std::size_t last = ground.points.steps[zeros.back()];
  for (std::size_t step = ground.setup.sequence.size(); step-- > last + 1;)
    if (isZeroStep(ground.setup, step) && readingAt(ground.check, step))
      return missing(say("the last zero reading is no finite number"));
  MeritFigure figure = zeroFigure(ground, zeros.back());
  figure.definition = say("last zero reading less the first, of the greatest expected reading");
  return figure;
}

MeritFigure zeroShift(const MeritGround& ground) {
  const auto zeros = laterZeros(ground);
  if (!ground.points.zero || zeros.empty()) return missing(say("it needs two zero readings"));
  const std::size_t farthest =
      *std::max_element(zeros.begin(), zeros.end(), [&](std::size_t a, std::size_t b) {
        return std::abs(ground.points.measured[a]) < std::abs(ground.points.measured[b]);
      });
  MeritFigure figure = zeroFigure(ground, farthest);
  figure.definition =
      say("zero reading farthest from the first one, less the first, of the greatest expected reading");
  return figure;
}

MeritFigure spanRatio(const MeritGround& ground) {
  if (ground.levels.size() < 2) return missing(say("it needs readings at two expected values"));
  MeritFigure figure;
  figure.spans[0] = ground.measuredSpan();
  figure.spans[1] = figure.denominator = ground.expectedSpan();
  figure.value = figure.spans[0] - figure.spans[1];
  figure.weights = ground.noWeights();
  ground.addMean(ground.levels.back().points, 1, figure.weights);
  ground.addMean(ground.levels.front().points, -1, figure.weights);
  figure.definition =
      say("span of the mean readings between the extreme steps that were read, less the expected span, of "
          "the expected span");
  return figure;
}

MeritFigure symmetry(const MeritGround& ground) {
  std::vector<std::size_t> members[2];
  std::size_t levels[2] = {0, 0};
  for (const EqualSteps& level : ground.levels)
    for (const std::size_t half : {0, 1}) {
      const bool isOnSide = half == 0 ? level.expected > 0 : level.expected < 0;
      if (!isOnSide && !ground.isZeroLevel(level)) continue;
      members[half].insert(members[half].end(), level.points.begin(), level.points.end());
      ++levels[half];
    }
  if (levels[0] < 2 || levels[1] < 2)
    return missing(say("it needs readings at two expected values (zero counts) on either side of zero"));
  const SlopeForm plus = slopeOver(ground.points, members[0]), minus = slopeOver(ground.points, members[1]);
  MeritFigure figure;
  figure.slopes[0] = plus.slope;
  figure.slopes[1] = minus.slope;
  figure.denominator = ground.expectedSpan();
  figure.value = (plus.slope - minus.slope) * figure.denominator;
  for (std::size_t i = 0; i < ground.points.size(); ++i)
    figure.weights.push_back((plus.weights[i] - minus.weights[i]) * figure.denominator);
  figure.definition =
      say("slope of the positive half, zero steps included, less that of the negative half; measured against "
          "expected reading by {1}, of the expected slope",
          {plus.hasUsedCovariance && minus.hasUsedCovariance ? say("generalised least squares")
                                                             : say("ordinary least squares")});
  return figure;
}

}  // namespace

MeritFigure figureOf(const MeritGround& ground, MeritKind kind) {
  switch (kind) {
    case MeritKind::Nonlinearity:
      return nonlinearity(ground);
    case MeritKind::Hysteresis:
      return hysteresis(ground);
    case MeritKind::Repeatability:
      return repeatability(ground);
    case MeritKind::ZeroReturn:
      return zeroReturn(ground);
    case MeritKind::ZeroShift:
      return zeroShift(ground);
    case MeritKind::Symmetry:
      return symmetry(ground);
    case MeritKind::CombinedError:
      return combinedError(ground);
    case MeritKind::SpanRatio:
      return spanRatio(ground);
  }
  return missing(say("the figure is not known"));
}

}  // namespace core
