// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/line_output.h"

#include "core/report/figures.h"

namespace app {
namespace {

/// More rows than anyone reads; all are in the JSON.
constexpr std::size_t greatestTable = 100;

const char* keyOf(core::LineFit fit) {
  switch (fit) {
    case core::LineFit::Ordinary:
      return "ordinary";
    case core::LineFit::Weighted:
      return "weighted";
    case core::LineFit::Distance:
      return "distance";
    case core::LineFit::Correlated:
      return "correlated";
    case core::LineFit::Generalised:
      return "generalised";
  }
  return "";
}

Json numbersJson(const std::vector<double>& numbers) {
  Json json = Json::array();
  for (const double number : numbers) json.push_back(jsonNumber(number));
  return json;
}

Json linearityJson(const core::Result<core::Linearity>& linearity) {
  if (!linearity) return {{"error", linearity.error().text()}};
  return {{"share_of_full_scale", jsonNumber(linearity->share)},
          {"greatest_deviation", jsonNumber(linearity->greatestDeviation)},
          {"at_x", jsonNumber(linearity->atX)},
          {"full_scale_output", jsonNumber(linearity->fullScaleOutput)},
          {"slope", jsonNumber(linearity->slope)},
          {"intercept", jsonNumber(linearity->intercept)}};
}

Json usesJson(const std::vector<LineUse>& uses, const std::string& given, const std::string& found) {
  Json json = Json::array();
  for (const LineUse& use : uses)
    json.push_back({{given, jsonNumber(use.given)},
                    {"u" + given, jsonNumber(use.uncertainty)},
                    {found, jsonNumber(use.estimate.value)},
                    {"u" + found, jsonNumber(use.estimate.standard)}});
  return json;
}

std::string linearityText(const core::Result<core::Linearity>& linearity) {
  if (!linearity) return "not known: " + linearity.error().text();
  return shown(linearity->share * 100) + " % of full scale, at x = " + shown(linearity->atX);
}

void addChiSquare(std::vector<core::Entry>& entries, const core::Line& line) {
  if (!line.chiSquare) return;
  std::string text = shown(line.chiSquare);
  if (line.chiSquareProbability)
    text += ", " + shown(line.degreesOfFreedom) + " degrees of freedom; as much or more with probability " +
            core::formatNumber(*line.chiSquareProbability, 3) +
            (*line.chiSquareProbability < 0.05 ? ": doubt the line or the stated uncertainties" : "");
  entries.push_back({"Chi-square", text});
}

void addUses(std::vector<core::Entry>& entries, const std::vector<LineUse>& uses, const std::string& found,
             const std::string& given) {
  for (const LineUse& use : uses)
    entries.push_back({found + " at " + given + " = " + shown(use.given),
                       core::withError(use.estimate.value, use.estimate.standard)});
}

std::vector<core::Entry> entriesOf(const LineAnswer& answer) {
  const core::Line& line = answer.line;
  std::vector<core::Entry> entries{{"Fit", std::string(core::lineFitName(line.fit))},
                                   {"Slope", core::withError(line.slope, line.slopeError)},
                                   {"Intercept", core::withError(line.intercept, line.interceptError)},
                                   {"Covariance of both", shown(line.covariance)}};
  addChiSquare(entries, line);
  entries.push_back({"Residual deviation", shown(line.residualDeviation)});
  entries.push_back({"Residual sum of squares", shown(line.residualSumOfSquares)});
  entries.push_back({"Degrees of freedom", std::to_string(line.degreesOfFreedom)});
  entries.push_back({line.throughZero ? "R² about zero" : "R²", shown(line.rSquared)});
  for (std::size_t k = 0; k < answer.linearities.size(); ++k)
    entries.push_back(
        {"Linearity, " + std::string(core::referenceLineName(static_cast<core::ReferenceLine>(k))),
         linearityText(answer.linearities[k])});
  if (answer.robust)
    entries.push_back({"Robust line, an aid only", "slope " + shown(answer.robust->slope) + ", intercept " +
                                                       shown(answer.robust->intercept) + ", scatter " +
                                                       shown(answer.robust->scale)});
  addUses(entries, answer.forward, "y", "x");
  addUses(entries, answer.inverse, "x", "y");
  return entries;
}

core::Table tableOf(const LineAnswer& answer) {
  const core::Line& line = answer.line;
  core::Table table;
  for (const char* name : {"x", "y", "Residual", "Standardised", "Leverage"})
    table.columns.push_back({name, true});
  if (!line.adjustedX.empty()) table.columns.push_back({"Adjusted x", true});
  for (std::size_t i = 0; i < line.residuals.size(); ++i) {
    core::TableRow row{{shown(answer.points.x[i]), shown(answer.points.y[i]), shown(line.residuals[i]),
                        line.standardised.empty() ? "–" : core::formatNumber(line.standardised[i], 3),
                        core::formatNumber(line.leverages[i], 3)},
                       std::nullopt};
    if (!line.adjustedX.empty()) row.cells.push_back(shown(line.adjustedX[i]));
    table.rows.push_back(std::move(row));
  }
  return table;
}

}  // namespace

Json lineJson(const LineAnswer& answer) {
  const core::Line& line = answer.line;
  Json json{{"points", line.residuals.size()},
            {"fit", keyOf(line.fit)},
            {"through_zero", line.throughZero},
            {"slope", jsonNumber(line.slope)},
            {"slope_std_error", jsonNumber(line.slopeError)},
            {"intercept", jsonNumber(line.intercept)},
            {"intercept_std_error", jsonNumber(line.interceptError)},
            {"covariance", jsonNumber(line.covariance)},
            {"chi_square", jsonNumber(line.chiSquare)},
            {"chi_square_probability", jsonNumber(line.chiSquareProbability)},
            {"residual_std_deviation", jsonNumber(line.residualDeviation)},
            {"residual_sum_of_squares", jsonNumber(line.residualSumOfSquares)},
            {"degrees_of_freedom", line.degreesOfFreedom},
            {"r_squared", jsonNumber(line.rSquared)},
            {"residuals", numbersJson(line.residuals)},
            {"standardised_residuals", numbersJson(line.standardised)},
            {"leverages", numbersJson(line.leverages)}};
  if (!line.adjustedX.empty()) json["adjusted_x"] = numbersJson(line.adjustedX);
  for (std::size_t k = 0; k < answer.linearities.size(); ++k)
    json["linearity"][std::string(core::referenceLineKey(static_cast<core::ReferenceLine>(k)))] =
        linearityJson(answer.linearities[k]);
  if (answer.robust)
    json["robust"] = {{"slope", jsonNumber(answer.robust->slope)},
                      {"intercept", jsonNumber(answer.robust->intercept)},
                      {"scatter", jsonNumber(answer.robust->scale)}};
  if (!answer.forward.empty()) json["forward"] = usesJson(answer.forward, "x", "y");
  if (!answer.inverse.empty()) json["inverse"] = usesJson(answer.inverse, "y", "x");
  return json;
}

std::string lineText(const LineAnswer& answer) {
  std::string text = textOf(entriesOf(answer));
  if (answer.line.residuals.size() > greatestTable)
    return text + "\nThe residuals of " + std::to_string(answer.line.residuals.size()) +
           " points are in the JSON.\n";
  return text + "\n" + textOf(tableOf(answer));
}

}  // namespace app
