// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/whatif/alteration.h"

#include <algorithm>
#include <cmath>

#include "core/units/language.h"

namespace core {
namespace {

using enum AlterationKind;

LeadRole roleOf(std::size_t index) { return static_cast<LeadRole>(index); }

std::string leadsThere(const Bridge& bridge) {
  std::string names;
  for (const Wire& wire : wiresOf(bridge)) {
    if (!names.empty()) names += ", ";
    names += leadName(wire.role);
  }
  return say("This connection has {1}", {names});
}

/// What a value may be. Beyond it there is no such part, and text of it would be no number that anybody
/// reads. Common practice, no source.
struct Size {
  double least, most;
  std::string_view leastText, mostText;
};
constexpr Size leadSize = {1e-6, 1e6, "1 µΩ", "1 MΩ"};
constexpr Size armSize = {1e-3, 1e9, "1 mΩ", "1000 MΩ"};
constexpr Size leakSize = {1e-3, 1e12, "1 mΩ", "1 TΩ"};
constexpr Size lengthSize = {1e-3, 1e3, "0.001", "1000"};
constexpr Size warmingSize = {-273, 1000, "-273 K", "1000 K"};
/// A file holds as many (core/document/file_limits.h).
constexpr std::size_t mostExchanges = 100;

/// "leads warmer by" is the name of a field and no subject of a sentence.
std::string faultText(const Error& fault) {
  const bool alone = fault.where.empty() || fault.where == say("leads warmer by");
  return alone ? fault.what : fault.where + ": " + fault.what;
}

/// Puts alterations into a setup, one after the other.
class Altering {
 public:
  explicit Altering(const Setup& setup) : m_setup(setup) {}

  Result<void> apply(const Alteration& alteration) {
    m_text = alterationText(m_setup, alteration);
    switch (alteration.kind) {
      case LeadBroken:
      case LeadBypassed:
      case LeadContact:
        return onLead(alteration);
      case LeadsTouching:
      case LeadsExchanged:
        return onPair(alteration);
      case LeadResistance:
      case LeadLength:
      case LeadWarming:
        return onAllLeads(alteration);
      case Moisture:
      case MoistureToStructure:
      case ArmValue:
        return onArm(alteration);
      case GaugeWarming:
        return warmGauges(alteration.value);
      case StructureConnected:
        return connectStructure(alteration.index);
      case SenseAtInstrument:
        return leaveSense();
      case SignalReversed:
        return turn(hookup().signalReversed);
      case ExcitationReversed:
        return turn(hookup().excitationReversed);
      case GaugesReversed:
        return turn(hookup().gaugesReversed);
    }
    return {};
  }

  /// The setup with its bad contacts.
  Setup finished() && {
    const bool any =
        std::any_of(m_contacts.begin(), m_contacts.end(), [](Resistance more) { return more.base() > 0; });
    if (!any) return std::move(m_setup);
    // Entered as warm as they are, so that the contacts alone are not warmed.
    if (bridge().leadWarming != Warming(0))
      for (std::size_t role = 0; role < leadRoleCount; ++role)
        bridge().leads[role] = leadResistance(bridge(), roleOf(role));
    bridge().leadWarming = {};
    for (std::size_t role = 0; role < leadRoleCount; ++role)
      if (m_contacts[role].base() > 0)
        bridge().leads[role] = resistanceOf(bridge().leads[role]) + m_contacts[role];
    return std::move(m_setup);
  }

 private:
  Bridge& bridge() { return m_setup.bridge; }
  Hookup& hookup() { return m_setup.bridge.hookup; }
  Error refusal(std::string what, std::string mend) const {
    return {m_text, std::move(what), std::move(mend)};
  }

  std::optional<Wire> wireOf(std::size_t role) {
    for (const Wire& wire : wiresOf(bridge()))
      if (wire.role == roleOf(role)) return wire;
    return std::nullopt;
  }

  Result<void> requireLead(std::size_t role) {
    if (wireOf(role)) return {};
    const std::string name(role < leadRoleCount ? leadName(roleOf(role)) : say("of that name"));
    return refusal(say("the connection has no lead {1}", {name}), leadsThere(bridge()));
  }

  Result<void> requireSize(double value, const Size& size) const {
    if (std::isfinite(value) && value >= size.least && value <= size.most) return {};
    return refusal(say("its value must be from {1} to {2}", {size.leastText, size.mostText}),
                   say("Give it another value"));
  }

  Result<void> onLead(const Alteration& alteration) {
    const std::size_t role = alteration.index;
    if (auto ok = requireLead(role); !ok) return ok;
    bool& broken = hookup().broken[role];
    if (alteration.kind == LeadBypassed) {
      broken = false;
      bridge().leads[role] = Resistance(0);
      m_contacts[role] = Resistance(0);
      return {};
    }
    if (broken) return refusal(say("that lead is broken already"), say("Mend it first"));
    if (alteration.kind == LeadBroken) {
      broken = true;
      return {};
    }
    if (auto ok = requireSize(alteration.value, leadSize); !ok) return ok;
    m_contacts[role] += Resistance(alteration.value);
    return {};
  }

  Result<void> onPair(const Alteration& alteration) {
    const std::size_t a = alteration.index, b = alteration.other;
    for (const std::size_t role : {a, b})
      if (auto ok = requireLead(role); !ok) return ok;
    if (a == b) return refusal(say("that is one lead twice"), say("Name two of them"));
    const LeadPair pair{roleOf(std::min(a, b)), roleOf(std::max(a, b))};
    const bool touch = alteration.kind == LeadsTouching;
    std::vector<LeadPair>& pairs = touch ? hookup().touching : hookup().exchanged;
    const auto same = [&](const LeadPair& one) {
      return std::min(one.a, one.b) == pair.a && std::max(one.a, one.b) == pair.b;
    };
    if (!touch) {
      if (pairs.size() >= mostExchanges)
        return refusal(say("no more than {1} exchanges are reckoned with", {std::to_string(mostExchanges)}),
                       say("Leave out those that undo each other"));
      // Exchanged once more they are back.
      if (!pairs.empty() && same(pairs.back()))
        pairs.pop_back();
      else
        pairs.push_back(pair);
      return {};
    }
    if (pointOf(bridge(), wireOf(a)->to) == pointOf(bridge(), wireOf(b)->to))
      return refusal(say("both leads end at one point of the gauge"), say("Choose leads of two points"));
    if (std::any_of(pairs.begin(), pairs.end(), same))
      return refusal(say("they touch already"), say("Choose two others"));
    pairs.push_back(pair);
    return {};
  }

  bool leadsHaveResistance() {
    const std::vector<Wire> wires = wiresOf(bridge());
    return std::any_of(wires.begin(), wires.end(), [&](const Wire& wire) {
      return resistanceOf(bridge().leads[static_cast<std::size_t>(wire.role)]).base() > 0;
    });
  }

  Result<void> onAllLeads(const Alteration& alteration) {
    const double value = alteration.value;
    if (alteration.kind == LeadResistance) {
      if (value != 0)
        if (auto ok = requireSize(value, leadSize); !ok) return ok;
      for (const Wire& wire : wiresOf(bridge()))
        bridge().leads[static_cast<std::size_t>(wire.role)] = Resistance(value);
      bridge().leadWarming = {};
      return {};
    }
    if (auto ok = requireSize(value, alteration.kind == LeadLength ? lengthSize : warmingSize); !ok)
      return ok;
    if (!leadsHaveResistance())
      return refusal(say("the leads have no resistance, so nothing would change"),
                     say("Give them one first"));
    if (alteration.kind == LeadLength)
      lengthen(value);
    else
      bridge().leadWarming += Warming(value);
    return {};
  }

  void lengthen(double times) {
    for (const Wire& wire : wiresOf(bridge())) {
      Lead& lead = bridge().leads[static_cast<std::size_t>(wire.role)];
      if (auto* copper = std::get_if<CopperWire>(&lead))
        copper->length = times * copper->length;
      else
        lead = times * resistanceOf(lead);
    }
  }

  Result<void> onArm(const Alteration& alteration) {
    if (alteration.index >= 4) return refusal(say("there are arms 1 to 4"), say("Choose one of them"));
    if (auto ok = requireSize(alteration.value, alteration.kind == ArmValue ? armSize : leakSize); !ok)
      return ok;
    const Resistance ohm(alteration.value);
    if (alteration.kind == ArmValue) {
      bridge().arms[alteration.index] = ohm;
      return {};
    }
    Leak& leak = bridge().leaks[alteration.index];
    std::optional<Resistance>& path = alteration.kind == Moisture ? leak.across : leak.toStructure;
    // Moisture comes beside what leaks already.
    path = path ? Resistance(1 / (1 / path->base() + 1 / ohm.base())) : ohm;
    return {};
  }

  Result<void> warmGauges(double value) {
    if (auto ok = requireSize(value, warmingSize); !ok) return ok;
    if (isTransducer(bridge()))
      return refusal(say("a transducer is known by its rated output, not by a gauge factor"), "");
    if (bridge().gauge.factorCoefficient == 0)
      return refusal(
          say("no temperature coefficient of the gauge factor is entered, so nothing would change"),
          say("Enter it in the set-up"));
    bridge().gauge.installed += Temperature(value);
    return {};
  }

  Result<void> connectStructure(std::size_t grounding) {
    if (grounding >= groundingCount) return refusal(say("it is connected to P-, to P+ or to nothing"), "");
    m_setup.instrument.grounding = static_cast<Grounding>(grounding);
    return {};
  }

  Result<void> leaveSense() {
    if (!hasNode(bridge(), Node::SensePlus))
      return refusal(say("the connection has no sense leads"), leadsThere(bridge()));
    bridge().sixWire = false;
    return {};
  }

  static Result<void> turn(bool& reversed) {
    reversed = !reversed;
    return {};
  }

  Setup m_setup;
  std::array<Resistance, leadRoleCount> m_contacts{};
  std::string m_text;
};

}  // namespace

Result<Setup> altered(const Setup& setup, std::span<const Alteration> alterations) {
  Altering altering(setup);
  for (const Alteration& alteration : alterations)
    if (auto ok = altering.apply(alteration); !ok) return ok.error();
  Setup result = std::move(altering).finished();
  // A plan that was unusable before says so itself, in its prediction.
  if (!checkBridge(setup.bridge, setup.instrument)) return result;
  if (auto ok = checkBridge(result.bridge, result.instrument); !ok) {
    const Error& fault = ok.error();
    const std::string text = alterations.empty() ? "" : alterationText(setup, alterations.back());
    return Error{text, say("the bridge cannot be worked out with it: {1}", {faultText(fault)}),
                 say("Give it another value")};
  }
  return result;
}

TriedOut triedOut(const Setup& setup, std::span<const Alteration> alterations) {
  TriedOut result;
  result.setup = setup;
  for (const Alteration& alteration : alterations) {
    result.texts.push_back(alterationText(result.setup, alteration));
    // From the start each time: bad contacts come last.
    result.applied.push_back(alteration);
    auto next = altered(setup, result.applied);
    if (next) {
      result.setup = *std::move(next);
      result.refused.push_back(std::nullopt);
    } else {
      result.applied.pop_back();
      result.refused.push_back(next.error());
    }
  }
  return result;
}

}  // namespace core
