// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_uncertainties.h"

#include <cassert>
#include <optional>
#include <string>

#include "core/document/file_limits.h"
#include "core/units/language.h"

namespace core {
namespace {

/// What the inputs of one kind are told apart by.
enum class Place : std::uint8_t { Nothing, Arm, Lead, Shunt, Moment };

Place placeOf(InputKind kind) {
  switch (kind) {
    case InputKind::Arm:
    case InputKind::LeakAcross:
    case InputKind::LeakToStructure:
      return Place::Arm;
    case InputKind::Lead:
      return Place::Lead;
    case InputKind::Shunt:
    case InputKind::ShuntWires:
    case InputKind::ShuntContact:
      return Place::Shunt;
    case InputKind::Rounding:
      return Place::Moment;
    case InputKind::LeadTemperature:
    case InputKind::BalancePotentiometer:
    case InputKind::BalanceLimiting:
    case InputKind::BalanceWiper:
    case InputKind::InputResistance:
    case InputKind::GaugeFactor:
    case InputKind::FactorCoefficient:
    case InputKind::GaugeTemperature:
    case InputKind::PoissonRatio:
    case InputKind::RatedOutput:
    case InputKind::Gain:
    case InputKind::Excitation:
    case InputKind::ZeroDrift:
      break;
  }
  return Place::Nothing;
}

constexpr std::size_t armCount = 4;
constexpr std::size_t momentCount = 2;

/// The names of the places that every set-up has, for shunts it is their names.
std::string fixedName(Place place, std::size_t index) {
  if (place == Place::Arm) return std::to_string(index + 1);
  if (place == Place::Lead) return std::string(leadName(static_cast<LeadRole>(index)));
  return index == 0 ? "zero" : "step";
}

std::size_t fixedCount(Place place) {
  if (place == Place::Arm) return armCount;
  return place == Place::Lead ? leadRoleCount : momentCount;
}

std::optional<std::size_t> indexOf(Place place, const std::string& name, const ShuntIndices& shunts) {
  if (place == Place::Shunt) {
    const auto found = shunts.find(name);
    return found == shunts.end() ? std::nullopt : std::optional(found->second);
  }
  for (std::size_t k = 0; k < fixedCount(place); ++k)
    if (fixedName(place, k) == name) return k;
  return std::nullopt;
}

void failPlace(const JsonPlace& at, Place place) {
  if (at.failed()) return;
  const std::string name = inQuotes(at.text());
  switch (place) {
    case Place::Arm:
      return at.fail(say("there is no arm {1}", {name}), say("Write 1, 2, 3 or 4 in quotation marks"));
    case Place::Lead:
      return at.fail(say("there is no lead {1}", {name}),
                     say("Use P+, P-, S+, S-, sense+, sense- or return"));
    case Place::Shunt:
      return at.fail(say("there is no shunt named {1}", {name}),
                     say("Use the name of a shunt of this channel"));
    case Place::Moment:
      return at.fail(say("there is no reading {1}", {name}), say("Use zero or step"));
    case Place::Nothing:
      assert(false);
  }
}

Input readInput(const JsonFields& in, const ShuntIndices& shunts) {
  const JsonPlace kindAt = in.at("of");
  const Input input{readWord<InputKind>(kindAt, "input", inputKindFromKey, inputKindKey, inputKindCount), 0};
  const Place place = placeOf(input.kind);
  if (place == Place::Nothing) {
    if (in.has("at"))
      in.at("at").fail(say("there is only one {1} in a channel", {std::string(inputKindKey(input.kind))}),
                       say("Remove the key “at”"));
    return input;
  }
  const JsonPlace at = in.at("at");
  const auto index = indexOf(place, at.text(), shunts);
  if (!index) failPlace(at, place);
  return {input.kind, index.value_or(0)};
}

Uncertainty readUncertainty(const JsonFields& in) {
  Uncertainty uncertainty;
  uncertainty.statement =
      readWord<Statement>(in.at("statement"), "statement", statementFromKey, statementKey, statementCount);
  uncertainty.amount = in.number("amount");
  uncertainty.relative = in.at("relative").boolean();
  uncertainty.coverageFactor = in.number("coverage_factor");
  uncertainty.distribution = readWord<Distribution>(in.at("distribution"), "distribution",
                                                    distributionFromKey, distributionKey, distributionCount);
  if (in.has("degrees_of_freedom")) uncertainty.degreesOfFreedom = in.number("degrees_of_freedom");
  uncertainty.group = in.text("group");
  return uncertainty;
}

void writeStatement(JsonEmitter& out, const Setup& setup, Input input, const Uncertainty& uncertainty) {
  out.object({}, JsonEmitter::Layout::OneLine, [&] {
    out.text("of", inputKindKey(input.kind));
    if (const Place place = placeOf(input.kind); place != Place::Nothing) {
      assert(input.index < (place == Place::Shunt ? setup.shunts.size() : fixedCount(place)));
      out.text("at", place == Place::Shunt ? setup.shunts[input.index].name : fixedName(place, input.index));
    }
    out.text("statement", statementKey(uncertainty.statement));
    out.number("amount", uncertainty.amount);
    out.boolean("relative", uncertainty.relative);
    out.number("coverage_factor", uncertainty.coverageFactor);
    out.text("distribution", distributionKey(uncertainty.distribution));
    if (uncertainty.degreesOfFreedom) out.number("degrees_of_freedom", *uncertainty.degreesOfFreedom);
    out.text("group", uncertainty.group);
  });
}

}  // namespace

void writeUncertainties(JsonEmitter& out, const Setup& setup) {
  using enum JsonEmitter::Layout;
  out.array("uncertainties", Lines, [&] {
    for (const auto& [input, uncertainty] : setup.uncertainties.stated)
      writeStatement(out, setup, input, uncertainty);
  });
  out.array("correlation_groups", Lines, [&] {
    for (const auto& [name, coefficient] : setup.uncertainties.groups)
      out.object({}, OneLine, [&, &name = name, &coefficient = coefficient] {
        out.text("name", name);
        out.number("coefficient", coefficient);
      });
  });
}

Uncertainties readUncertainties(const JsonFields& setup, const ShuntIndices& shunts) {
  Uncertainties uncertainties;
  const JsonPlace list = setup.at("uncertainties");
  for (std::size_t k = 0; k < list.size() && !list.failed(); ++k) {
    const JsonPlace at = list.element(k);
    const JsonFields in(at, {"of", "at", "statement", "amount", "relative", "coverage_factor", "distribution",
                             "degrees_of_freedom", "group"});
    const Input input = readInput(in, shunts);
    if (!uncertainties.stated.emplace(input, readUncertainty(in)).second)
      at.fail(say("the uncertainty of this input is stated twice"), say("Keep one of the two"));
  }
  const JsonPlace groups = setup.at("correlation_groups");
  if (groups.size() > mostGroups)
    groups.fail(say("there are {1} {2}, more than {3}",
                    {std::to_string(groups.size()), say("groups"), std::to_string(mostGroups)}),
                say("Keep those that are used"));
  JsonNames names;
  for (std::size_t k = 0; k < groups.size() && !groups.failed(); ++k) {
    const JsonPlace at = groups.element(k);
    const JsonFields in(at, {"name", "coefficient"});
    names.add(in.at("name"), say("correlation group"));
    uncertainties.groups.emplace(in.text("name"), in.number("coefficient"));
  }
  return uncertainties;
}

}  // namespace core
