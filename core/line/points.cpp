// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/points.h"

#include <algorithm>
#include <cmath>

#include "core/units/language.h"

namespace core {

std::optional<Error> faultOfPoints(std::span<const double> x, std::span<const double> y, std::size_t least) {
  if (x.size() != y.size()) {
    return Error{"points",
                 say("{1} x values do not pair with {2} y values",
                     {std::to_string(x.size()), std::to_string(y.size())}),
                 say("Give every point an x and a y")};
  }
  for (std::size_t i = 0; i < x.size(); ++i) {
    if (std::isfinite(x[i]) && std::isfinite(y[i])) continue;
    return Error{say("point {1}", {std::to_string(i + 1)}),
                 say("{1} is not a finite number", {std::isfinite(x[i]) ? "y" : "x"}),
                 say("Correct the value or leave the point out")};
  }
  if (x.size() < least) {
    return Error{
        "points",
        say("there are {1}, the fit needs at least {2}", {std::to_string(x.size()), std::to_string(least)}),
        say("Add points")};
  }
  return std::nullopt;
}

std::optional<Error> faultOfLinePoints(std::span<const double> x, std::span<const double> y,
                                       bool throughZero) {
  if (auto fault = faultOfPoints(x, y, throughZero ? 1 : 2)) return fault;
  const double useless = throughZero ? 0 : x.front();
  if (std::any_of(x.begin(), x.end(), [&](double v) { return v != useless; })) return std::nullopt;
  return Error{"points",
               throughZero ? say("all x are zero, so no line through zero is fixed")
                           : say("all x are equal, so no line is fixed"),
               say("Add a point at another x")};
}

std::optional<Error> faultOfUncertainties(std::span<const double> uncertainties, std::size_t points,
                                          std::string_view name, Exact exact) {
  if (uncertainties.size() != points)
    return Error{std::string(name),
                 say("there are {1} of them for {2} points",
                     {std::to_string(uncertainties.size()), std::to_string(points)}),
                 say("Give every point an uncertainty")};
  for (std::size_t i = 0; i < points; ++i) {
    const double u = uncertainties[i];
    if (std::isfinite(u) && (u > 0 || (u == 0 && exact == Exact::Yes))) continue;
    const std::string where = say("point {1}", {std::to_string(i + 1)}), of(name);
    if (u == 0)
      return Error{where, say("{1} is zero, which would give the point infinite weight", {of}),
                   say("State an uncertainty above zero, or leave the column out when none are known")};
    return Error{where,
                 say(u < 0 ? sayLater("{1} is negative") : sayLater("{1} is not a finite number"), {of}),
                 say("Correct the uncertainty or leave the point out")};
  }
  return std::nullopt;
}

std::vector<double> scaledBy(std::span<const double> values, double scale) {
  std::vector<double> column(values.begin(), values.end());
  for (double& value : column) value *= scale;
  return column;
}

}  // namespace core
