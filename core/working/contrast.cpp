// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/working/contrast.h"

#include <algorithm>
#include <cmath>

#include "core/review/arm_place.h"
#include "core/units/language.h"
#include "core/working/amounts.h"

namespace core {
namespace {

/// Parts of a difference below this are not worth telling: a millionth of a per cent. The inverse of the
/// network is iterated to about 1e-14.
constexpr double nothing = 1e-8;

/// The arm whose resistance the formulas take for all: the shunted one, else arm 1.
Resistance leadingArm(const Setup& setup) {
  for (const std::size_t shunt : setup.sequence.front().closed)
    if (const auto place = placeOf(setup.bridge, setup.shunts[shunt])) return setup.bridge.arms[place->arm];
  return setup.bridge.arms[0];
}

void withoutLeads(Setup& setup) {
  setup.bridge.leads.fill(Resistance(0));
  setup.bridge.leadWarming = Warming(0);
}

void withVoltage(Setup& setup) {
  setup.instrument.excitation = nominalExcitation(setup.instrument);
  setup.instrument.current.reset();
}

void withEqualArms(Setup& setup) {
  const Resistance arm = leadingArm(setup);
  setup.bridge.arms.fill(arm);
  setup.bridge.gauge.nominal = arm;
}

/// Something that a textbook's bridge does not have.
struct Trait {
  std::string_view name;
  void (*takeOut)(Setup&);
};

constexpr Trait traits[] = {
    {sayLater("the gauge factor as set"),
     [](Setup& setup) { setup.instrument.gaugeFactor = gaugeFactorOf(setup.bridge.gauge); }},
    {sayLater("the bridge factor as set"),
     [](Setup& setup) {
       setup.instrument.bridgeFactor =
           templateOf(setup.bridge.type).bridgeFactor(setup.bridge.gauge.poissonRatio);
     }},
    {sayLater("the leads"), withoutLeads},
    {sayLater("the leaks"), [](Setup& setup) { setup.bridge.leaks = {}; }},
    {sayLater("the balance network"), [](Setup& setup) { setup.instrument.balance = {}; }},
    {sayLater("the input resistance of the instrument"),
     [](Setup& setup) { setup.instrument.inputResistance.reset(); }},
    {sayLater("the constant current"), withVoltage},
    {sayLater("the unequal arms"), withEqualArms},
};

double offOf(const Compared& compared) { return (compared.approximate - compared.exact) / compared.exact; }

/// A cause of the difference and its part of it.
struct Cause {
  std::string name;
  double share = 0;
};

std::vector<Cause> causesOf(Setup setup, const Approximation& approximation, double off) {
  std::vector<Cause> causes;
  for (const Trait& trait : traits) {
    if (approximation.unit == Approximation::Unit::Factor && trait.takeOut == withoutLeads) continue;
    Setup without = setup;
    trait.takeOut(without);
    if (without == setup) continue;
    const auto compared = approximation.comparing(without);
    if (!compared || compared->exact == 0) continue;  // a shunt over a lead alone lies over nothing then
    causes.push_back({say(trait.name), off - offOf(*compared)});
    off = offOf(*compared);
    setup = std::move(without);
  }
  causes.push_back({approximation.rest, off});
  std::stable_sort(causes.begin(), causes.end(),
                   [](const Cause& a, const Cause& b) { return std::abs(a.share) > std::abs(b.share); });
  const double least = std::max(nothing, 0.01 * std::abs(causes.front().share));
  std::erase_if(causes, [&](const Cause& cause) { return std::abs(cause.share) < least; });
  return causes;
}

std::string whyText(const std::vector<Cause>& causes) {
  if (causes.empty()) return say("Both agree: nothing that the formula leaves out acts here.");
  std::vector<std::string> texts;
  for (const Cause& cause : causes)
    texts.push_back(causes.size() == 1 ? std::string(cause.name)
                                       : say("{1} ({2})", {cause.name, amounts::percent(cause.share)}));
  return say("The difference comes from {1}.", {sayAll(texts)});
}

struct Shown {
  std::string text;
  double value = 0;
};

Shown shown(const Setup& setup, Approximation::Unit unit, double value) {
  switch (unit) {
    case Approximation::Unit::Strain:
      return {amounts::strain(value), 1e6 * value};
    case Approximation::Unit::Load:
      return {amounts::number(value, setup.bridge.rating.loadUnit), value};
    case Approximation::Unit::Output:
      return {amounts::output(Output(value)), 1e3 * value};
    case Approximation::Unit::Factor:
      return {amounts::number(value), value};
  }
  return {};
}

}  // namespace

std::optional<WorkingContrast> contrastOf(const Setup& oneStep, const Approximation& approximation) {
  const auto compared = approximation.comparing(oneStep);
  if (!compared || compared->exact == 0 || !std::isfinite(compared->exact)) return std::nullopt;
  const double off = offOf(*compared);
  const Shown exact = shown(oneStep, approximation.unit, compared->exact);
  const Shown approximate = shown(oneStep, approximation.unit, compared->approximate);
  return WorkingContrast{approximation.what,
                         approximation.by,
                         approximation.formula,
                         approximation.numbers,
                         exact.text,
                         approximate.text,
                         amounts::percent(off),
                         whyText(causesOf(oneStep, approximation, off)),
                         approximation.source,
                         exact.value,
                         approximate.value};
}

}  // namespace core
