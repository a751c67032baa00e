// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/assess/check_points.h"
#include "core/assess/judging.h"
#include "core/line/line_use.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/working/amounts.h"
#include "core/working/parts.h"

namespace core {
namespace {

using namespace amounts;

/// Units of a line's values, as they are written.
struct LineUnits {
  std::string x, y, slope;
};

LineUnits unitsOf(const Setup& setup) {
  const std::string x = simulatedUnitText(setup.bridge), y = readingUnitText(setup.instrument);
  return {x, y, x == y ? "" : say("{1} per {2}", {y, x})};
}

/// "42 %", "less than 0.01 %".
std::string probabilityText(double probability) {
  return probability < 1e-4 ? say("less than 0.01 %") : plainPercent(probability, 2);
}

void addFit(WorkingPart& part, const Line& line, std::size_t points, const LineUnits& units) {
  const bool stated = line.fit != LineFit::Ordinary;
  part.lines.push_back({say("y = a + b x, by {1}", {lineFitName(line.fit)}), "", "",
                        say("through {1} readings; {2}",
                            {std::to_string(points),
                             (stated ? say("uncertainties follow from those of readings and predictions")
                                     : say("uncertainties follow from the scatter of the residuals"))}),
                        stated ? say("ISO/TS 28037:2010") : ""});
  part.lines.push_back({say("Slope"), "b", "", withUncertainty(line.slope, line.slopeError, units.slope)});
  part.lines.push_back(
      {say("Intercept"), "a", "", withUncertainty(line.intercept, line.interceptError, units.y)});
  const std::string freedom = sayCount(static_cast<std::size_t>(line.degreesOfFreedom),
                                       "{n} degree of freedom", "{n} degrees of freedom");
  if (line.chiSquare)
    part.lines.push_back({say("Chi-square, {1}", {freedom}), "χ²", "",
                          line.chiSquareProbability ? say("{1}; as much or more has a probability of {2}",
                                                          {shown(formatNumber(*line.chiSquare, 3)),
                                                           probabilityText(*line.chiSquareProbability)})
                                                    : shown(formatNumber(*line.chiSquare, 3))});
  else if (line.residualDeviation)
    part.lines.push_back({say("Scatter of the residuals, {1}", {freedom}), say("s = √(Σr² / dof)"), "",
                          uncertainty(*line.residualDeviation, units.y)});
}

void addStep(WorkingPart& part, const Line& line, const CheckPoints& points, std::size_t at,
             const LineUnits& units) {
  const double x = points.simulated[at], y = points.measured[at];
  const LineEstimate there = forwardOf(line, x);
  const int places = placesFor(std::max({std::abs(y), std::abs(there.value), std::abs(line.intercept)}));
  part.lines.push_back({say("Value on the line at this step"), say("ŷ = a + b x"),
                        fixed(line.intercept, places, units.y) + " + " +
                            inFormula(number(line.slope, units.slope)) + " × " +
                            inFormula(number(x, units.x)),
                        withUncertainty(there.value, there.standard, units.y)});
  if (at >= line.residuals.size()) return;
  part.lines.push_back({say("Residual"), say("r = y − ŷ"),
                        fixed(y, places, units.y) + " − " + inFormula(fixed(there.value, places, units.y)),
                        fixed(line.residuals[at], places, units.y)});
  if (at < line.standardised.size())
    part.lines.push_back(
        {say("Standardised residual"), "r / u(r)", "", shown(formatFixed(line.standardised[at], 2))});
}

/// Why a step is no point of the line.
std::string missingText(const std::optional<Measured>& reading) {
  if (!reading) return say("has no reading and is not in the line");
  return std::isfinite(reading->mean.base()) ? say("cannot be predicted and is not in the line")
                                             : say("its reading is no finite number and is not in the line");
}

}  // namespace

WorkingPart linePart(const WorkingGround& ground, const Check& check, const CheckAssessment& assessment) {
  WorkingPart part{say("The line"), {}};
  const LineUnits units = unitsOf(ground.setup);
  if (!assessment.line) {
    part.lines.push_back({say("Line"), "", "", assessment.line.error().text()});
    return part;
  }
  const Line& line = *assessment.line;
  const CheckPoints points = checkPoints(ground.setup, ground.prediction, ground.budget, check);
  addFit(part, line, points.size(), units);
  const auto at = std::find(points.steps.begin(), points.steps.end(), ground.step);
  if (at == points.steps.end())
    part.lines.push_back({say("This step"), "", "", missingText(readingAt(check, ground.step))});
  else
    addStep(part, line, points, static_cast<std::size_t>(at - points.steps.begin()), units);
  return part;
}

}  // namespace core
