// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "app/point_table.h"
#include "core/line/line.h"
#include "core/line/linearity.h"
#include "core/report/figures.h"

namespace app {
namespace {

struct Options {
  std::string table;
  std::string covariance;
  bool throughZero = false;
  bool json = false;
};

struct Linearities {
  core::Result<core::Linearity> leastSquares;
  core::Result<core::Linearity> endPoint;
};

Linearities linearitiesOf(const PointTable& points) {
  return {core::linearityOf(points.x, points.y, core::ReferenceLine::LeastSquares),
          core::linearityOf(points.x, points.y, core::ReferenceLine::EndPoint)};
}

Json linearityJson(const core::Result<core::Linearity>& linearity) {
  if (!linearity) return {{"error", linearity.error().text()}};
  return {{"share_of_full_scale", jsonNumber(linearity->share)},
          {"greatest_deviation", jsonNumber(linearity->greatestDeviation)},
          {"at_x", jsonNumber(linearity->atX)},
          {"full_scale_output", jsonNumber(linearity->fullScaleOutput)}};
}

Json lineJson(const core::Line& line, const Linearities& linearities) {
  Json json{{"points", line.residuals.size()},
            {"through_zero", line.throughZero},
            {"slope", jsonNumber(line.slope)},
            {"slope_std_error", jsonNumber(line.slopeError)},
            {"intercept", jsonNumber(line.intercept)},
            {"intercept_std_error", jsonNumber(line.interceptError)},
            {"covariance", jsonNumber(line.covariance)},
            {"residual_std_deviation", jsonNumber(line.residualDeviation)},
            {"residual_sum_of_squares", jsonNumber(line.residualSumOfSquares)},
            {"degrees_of_freedom", line.degreesOfFreedom},
            {"r_squared", jsonNumber(line.rSquared)},
            {"residuals", Json::array()}};
  for (const double residual : line.residuals) json["residuals"].push_back(jsonNumber(residual));
  json["linearity"] = {{"least_squares", linearityJson(linearities.leastSquares)},
                       {"end_point", linearityJson(linearities.endPoint)}};
  return json;
}

std::string linearityText(const core::Result<core::Linearity>& linearity) {
  if (!linearity) return "not known: " + linearity.error().text();
  return shown(linearity->share * 100) + " % of full scale, at x = " + shown(linearity->atX);
}

std::string lineText(const core::Line& line, const Linearities& linearities) {
  return textOf(
      std::vector<core::Entry>{{"Slope", core::withError(line.slope, line.slopeError)},
                               {"Intercept", core::withError(line.intercept, line.interceptError)},
                               {"Covariance of both", shown(line.covariance)},
                               {"Residual deviation", shown(line.residualDeviation)},
                               {"Residual sum of squares", shown(line.residualSumOfSquares)},
                               {"Degrees of freedom", std::to_string(line.degreesOfFreedom)},
                               {line.throughZero ? "R² about zero" : "R²", shown(line.rSquared)},
                               {"Linearity, least-squares line", linearityText(linearities.leastSquares)},
                               {"Linearity, end-point line", linearityText(linearities.endPoint)}});
}

int line(const Options& options) {
  if (!options.covariance.empty())
    return fail({"--covariance", "covariances of points are not supported, all points weigh the same",
                 "Leave the option out to fit without weights"});
  const auto points = readPointTable(options.table);
  if (!points) return fail(points.error());
  const auto fitted = options.throughZero ? core::fitLineThroughZero(points->x, points->y)
                                          : core::fitLine(points->x, points->y);
  if (!fitted) return fail(inFile(options.table, fitted.error()));
  const Linearities linearities = linearitiesOf(*points);
  return options.json ? print(lineJson(*fitted, linearities), AllPass)
                      : print(lineText(*fitted, linearities), AllPass);
}

}  // namespace

void addLine(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<Options>();
  CLI::App* command =
      cli.add_subcommand("line", "The straight line through points, and how straight they are");
  command->add_option("TABLE", options->table, "Delimited text with the columns x and y")
      ->type_name("")
      ->required();
  command->add_flag("--through-zero", options->throughZero, "Hold the line through (0, 0)");
  command->add_option("--covariance", options->covariance)->group("");
  command->add_flag("--json", options->json, "JSON instead of a table");
  command->footer(
      "Ordinary least squares, all points with the same weight; standard errors are taken from the scatter.\n"
      "Tables with uncertainties or weights of the points are refused.");
  command->callback([options, &chosen] { chosen = [options] { return line(*options); }; });
}

}  // namespace app
