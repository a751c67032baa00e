// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <memory>

#include "app/commands.h"
#include "app/covariance_file.h"
#include "app/files.h"
#include "app/line_output.h"
#include "app/output.h"
#include "app/point_table.h"
#include "core/line/stated_fits.h"
#include "core/recording/text/number.h"

namespace app {
namespace {

struct LineOptions {
  std::string table;
  std::string covarianceOfY, covariance;
  std::vector<std::string> at, inverse;
  unsigned readings = 0;
  bool throughZero = false;
  bool robust = false;
  bool json = false;
};

/// A core error about a point, with the line of the table that the point stands in; about a matrix, with its
/// file.
core::Error inTheirFile(const LineOptions& options, const PointTable& points, core::Error error) {
  constexpr std::string_view point = "point ";
  if (error.where.starts_with(point)) {
    const std::size_t number = std::stoul(error.where.substr(point.size()));
    error.where = "line " + std::to_string(points.lines[number - 1]);
  }
  const bool ofMatrix = error.where.find("the covariance") != std::string::npos;
  const std::string& matrix = options.covariance.empty() ? options.covarianceOfY : options.covariance;
  return inFile(ofMatrix ? matrix : options.table, error);
}

core::Result<core::Line> lineByMatrix(const LineOptions& options, const PointTable& points,
                                      core::Through through) {
  const bool ofY = options.covariance.empty();
  if (!points.uy.empty())
    return core::Error{ofY ? "--covariance-y" : "--covariance",
                       "the table states uncertainties of its own, so there would be two statements",
                       "Remove the columns ux, uy and covxy, or leave the option out"};
  const std::size_t m = points.x.size();
  const auto matrix =
      ofY ? readCovariance(options.covarianceOfY, m) : readCovariance(options.covariance, 2 * m);
  if (!matrix) return matrix.error();
  auto line = ofY ? core::fitCorrelatedLine(points.x, points.y, *matrix, through)
                  : core::fitGeneralisedLine(points.x, points.y, *matrix, through);
  if (!line) return inTheirFile(options, points, line.error());
  return line;
}

core::Result<core::Line> lineByTable(const PointTable& points, core::Through through) {
  if (!points.ux.empty())
    return core::fitDistanceLine(points.x, points.y, points.ux, points.uy, points.covariances, through);
  if (!points.uy.empty()) return core::fitWeightedLine(points.x, points.y, points.uy, through);
  return through == core::Through::Zero ? core::fitLineThroughZero(points.x, points.y)
                                        : core::fitLine(points.x, points.y);
}

core::Result<core::Line> lineOf(const LineOptions& options, const PointTable& points) {
  const core::Through through = options.throughZero ? core::Through::Zero : core::Through::Anywhere;
  if (!options.covariance.empty() || !options.covarianceOfY.empty())
    return lineByMatrix(options, points, through);
  auto line = lineByTable(points, through);
  if (!line) return inTheirFile(options, points, line.error());
  return line;
}

/// "3.5" or "3.5,0.2": a value and perhaps its standard uncertainty.
core::Result<LineUse> useOf(const std::string& option, const std::string& text) {
  const std::size_t comma = text.find(',');
  const core::CellNumber value = core::readNumber(std::string_view(text).substr(0, comma), '.');
  core::CellNumber uncertainty;
  if (comma != std::string::npos)
    uncertainty = core::readNumber(std::string_view(text).substr(comma + 1), '.');
  if (value.fault || uncertainty.fault || uncertainty.value < 0)
    return core::Error{option, "\"" + text + "\" is not a value, or a value and its standard uncertainty",
                       "Write for example 3.5 or 3.5,0.2"};
  return LineUse{value.value, uncertainty.value, {}};
}

core::Result<LineUse> lookedUp(const LineOptions& options, const core::Line& line, LineUse use) {
  if (options.readings > 0 && use.uncertainty > 0)
    return core::Error{"--readings", "the uncertainty of y is stated with --inverse already",
                       "Leave one of the two out"};
  auto estimate = options.readings > 0 ? core::inverseOfMean(line, use.given, options.readings)
                                       : core::inverseOf(line, use.given, use.uncertainty);
  if (!estimate) return estimate.error();
  if (options.readings > 0)
    use.uncertainty = line.residualDeviation.value_or(0) / std::sqrt(options.readings);
  use.estimate = *estimate;
  return use;
}

/// Fills in what is asked of the fitted line.
core::Result<void> use(const LineOptions& options, LineAnswer& answer) {
  for (const std::string& text : options.at) {
    auto forward = useOf("--at", text);
    if (!forward) return forward.error();
    forward->estimate = core::forwardOf(answer.line, forward->given, forward->uncertainty);
    answer.forward.push_back(*forward);
  }
  for (const std::string& text : options.inverse) {
    auto inverse = useOf("--inverse", text);
    if (inverse) inverse = lookedUp(options, answer.line, *inverse);
    if (!inverse) return inverse.error();
    answer.inverse.push_back(*inverse);
  }
  if (!options.robust) return {};
  const auto robust = core::fitRobustLine(answer.points.x, answer.points.y);
  if (!robust) return inTheirFile(options, answer.points, robust.error());
  answer.robust = *robust;
  return {};
}

int line(const LineOptions& options) {
  auto points = readPointTable(options.table);
  if (!points) return fail(points.error());
  auto fitted = lineOf(options, *points);
  if (!fitted) return fail(fitted.error());
  LineAnswer answer{*std::move(points), *std::move(fitted), {}, {}, {}, std::nullopt};
  for (std::size_t k = 0; k < core::referenceLineCount; ++k)
    answer.linearities.push_back(
        core::linearityOf(answer.points.x, answer.points.y, static_cast<core::ReferenceLine>(k)));
  if (const auto used = use(options, answer); !used) return fail(used.error());
  return options.json ? print(lineJson(answer), AllPass) : print(lineText(answer), AllPass);
}

}  // namespace

void addLine(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<LineOptions>();
  CLI::App* command =
      cli.add_subcommand("line", "The straight line through points, and how straight they are");
  command->add_option("TABLE", options->table, "Delimited text with the columns x,y[,ux,uy[,covxy]]")
      ->type_name("")
      ->required();
  auto* ofY = command->add_option("--covariance-y", options->covarianceOfY,
                                  "Covariance matrix of y for m points: m rows of m numbers");
  command
      ->add_option("--covariance", options->covariance,
                   "Covariance matrix of x1..xm, y1..ym: 2m rows of 2m numbers")
      ->type_name("FILE")
      ->excludes(ofY);
  ofY->type_name("FILE");
  command->add_flag("--through-zero", options->throughZero, "Hold the line through (0, 0)");
  command->add_option("--at", options->at, "y of the line at x, whose standard uncertainty may follow")
      ->type_name("X[,UX]")
      ->expected(1)
      ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
  auto* inverse = command->add_option("--inverse", options->inverse,
                                      "x at which the line is y, whose uncertainty may follow");
  inverse->type_name("Y[,UY]")->expected(1)->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
  command->add_option("--readings", options->readings, "The y of --inverse are means of so many new readings")
      ->type_name("N")
      ->needs(inverse)
      ->check(CLI::Range(1, 1'000'000));
  command->add_flag("--robust", options->robust,
                    "Add a line that outliers do not pull, as an aid in finding them");
  command->add_flag("--json", options->json, "JSON instead of a table");
  command->footer(
      "Without uncertainties ordinary least squares: all points weigh the same, and standard errors are "
      "taken\n"
      "from the scatter. With them the fits of ISO/TS 28037, whose standard errors follow from what is "
      "stated:\n"
      "uy weighs the points, ux and uy measure their distance, matrices take correlated points as they are.\n"
      "Uncertainties are standard ones (k = 1).");
  command->callback([options, &chosen] { chosen = [options] { return line(*options); }; });
}

}  // namespace app
