// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cctype>
#include <cmath>

#include "core/circuit/hookup.h"
#include "core/circuit/hookup_words.h"
#include "core/flow/movement.h"
#include "core/flow/placement.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

using Words = std::vector<std::string>;
using Kind = ShuntPlacement::Kind;

/// Movements below this share of the other terminal's do not show in four digits.
constexpr double unseen = 5e-5;
/// Below this share a terminal hardly moves: what leads do beside what the shunt does.
constexpr double slight = 0.02;
/// Potentials carry some 1e-16 of the excitation; a difference of two is nothing below this share of it.
constexpr double rounding = 1e-13;

std::string listed(const Words& words) { return sayAll(words); }

std::string leadsText(const std::vector<LeadRole>& leads) {
  Words names;
  for (const LeadRole lead : leads) names.emplace_back(leadWord(lead));
  return sayCount(names.size(), "lead {1}", "leads {1}", {listed(names)});
}

/// "from 350 Ω to 349.3 Ω", with as many digits as their difference needs to be seen.
std::string fromTo(double before, double after, const std::string& unit) {
  const double difference = std::abs(before - after);
  const double order = difference > 0 ? std::floor(std::log10(difference)) : 0;
  const int decimals = std::clamp(2 - static_cast<int>(order), 0, 9);
  const auto shown = [&](double value) {
    std::string text = formatFixed(value, decimals);
    if (decimals > 0) text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) text.pop_back();
    return core::shown(std::move(text));
  };
  return say("from {1}{3} to {2}{3}", {shown(before), shown(after), unit});
}

std::string voltText(double volts) {
  const double size = std::abs(volts);
  if (size >= 1e-5) return core::shown(formatNumber(1e3 * size, 4)) + " mV";
  return say("{1} µV", {core::shown(formatNumber(1e6 * size, 3))});
}

/// The closed shunts of one step, and what they do, in words.
class Causes {
 public:
  Causes(const Setup& setup, std::size_t step, const Movement& movement)
      : m_setup(setup), m_movement(movement) {
    for (const std::size_t k : setup.sequence[step].closed)
      m_closed.push_back({&setup.shunts[k], placementOf(setup.bridge, setup.shunts[k])});
  }

  Words texts() const {
    Words texts;
    for (const std::size_t arm : {0, 1, 2, 3})
      if (auto text = onArm(arm); !text.empty()) texts.push_back(std::move(text));
    for (const Closed& closed : m_closed) {
      if (closed.place.kind == Kind::Bridge) texts.push_back(overBridge(closed));
      if (closed.place.kind == Kind::Output) texts.push_back(overOutput(closed));
      if (closed.place.kind == Kind::Leads) texts.push_back(overLeads(closed));
      if (closed.place.kind == Kind::Nowhere) texts.push_back(fromEndToEnd(closed));
    }
    return texts;
  }

 private:
  struct Closed {
    const Shunt* shunt;
    ShuntPlacement place;
  };

  static std::string nameOf(const Shunt& shunt) { return shunt.name.empty() ? say("the shunt") : shunt.name; }

  std::string onArm(std::size_t arm) const {
    Words names;
    std::vector<LeadRole> leads;
    for (const auto& [shunt, place] : m_closed) {
      if (place.kind != Kind::Arm || place.arm != arm) continue;
      names.push_back(nameOf(*shunt));
      leads.insert(leads.end(), place.leads.begin(), place.leads.end());
    }
    if (names.empty()) return {};
    const double ratio = m_movement.armRatio[arm], own = armResistance(arm);
    const std::string number = std::to_string(arm + 1);
    if (ratio == 1)
      return sayCount(names.size(), "{1} lies over arm {2} without voltage",
                      "{1} lie over arm {2} without voltage", {listed(names), number});
    const std::string text =
        sayCount(names.size(), "{1} lowers arm {2} {3}", "{1} together lower arm {2} {3}",
                 {listed(names), number, fromTo(own, ratio * own, " Ω")});
    std::sort(leads.begin(), leads.end());
    leads.erase(std::unique(leads.begin(), leads.end()), leads.end());
    if (leads.empty()) return text;
    return sayCount(names.size(), "{1}, with {2} inside its loop", "{1}, with {2} inside their loop",
                    {text, leadsText(leads)});
  }

  /// With the leak that lies over it.
  double armResistance(std::size_t arm) const {
    const double own = m_setup.bridge.arms[arm].base();
    const auto& leak = m_setup.bridge.leaks[arm].across;
    return leak ? own * leak->base() / (own + leak->base()) : own;
  }

  std::string overBridge(const Closed& closed) const {
    const std::string text =
        say("{1} lies over both halves and loads the excitation", {nameOf(*closed.shunt)});
    const double before = m_movement.bridge.before.base(), after = m_movement.bridge.after.base();
    if (std::abs(after - before) <= rounding * before)
      return say("{1} alone: the bridge keeps its voltage", {text});
    return say("{1}: the bridge is left with {2} V of {3} V",
               {text, core::shown(formatNumber(after, 5)), core::shown(formatNumber(before, 5))});
  }

  std::string overOutput(const Closed& closed) const {
    const auto& [minus, plus] = m_movement.halves;
    const double apart = std::abs(plus.before - minus.before);
    return say(apart > rounding
                   ? sayLater("{1} lies between the signal corners and draws them together")
                   : sayLater("{1} lies between the signal corners, which have the same potential"),
               {nameOf(*closed.shunt)});
  }

  std::string overLeads(const Closed& closed) const {
    const std::vector<LeadRole>& leads = closed.place.leads;
    std::string text = say("{1} lies over {2} alone", {nameOf(*closed.shunt), leadsText(leads)});
    if (leads.size() != 1) return text;
    const double own = leadResistance(m_setup.bridge, leads[0]).base();
    const double beside = resistanceOf(*closed.shunt).base();
    return say("{1} and lowers it {2}", {text, fromTo(own, own * beside / (own + beside), " Ω")});
  }

  std::string fromEndToEnd(const Closed& closed) const {
    return say("{1} lies between {2} and {3}",
               {nameOf(*closed.shunt), pointName(m_setup.bridge, closed.shunt->a),
                pointName(m_setup.bridge, closed.shunt->b)});
  }

  const Setup& m_setup;
  const Movement& m_movement;
  std::vector<Closed> m_closed;
};

/// What makes this bridge differ from its template: "the excitation reversed", "arm 1 leaking". Reversed
/// gauges turn what is simulated and are named there.
Words circumstances(const Bridge& bridge) {
  const Hookup hookup = hookupInUse(bridge);
  Words words;
  if (hookup.signalReversed) words.emplace_back(say("the signal reversed"));
  if (hookup.excitationReversed) words.emplace_back(say("the excitation reversed"));
  for (const LeadPair& pair : hookup.exchanged)
    words.push_back(say("{1} exchanged", {leadsText({pair.a, pair.b})}));
  for (const LeadPair& pair : hookup.touching)
    words.push_back(say("{1} touching", {leadsText({pair.a, pair.b})}));
  for (std::size_t role = 0; role < leadRoleCount; ++role)
    if (hookup.broken[role]) words.push_back(say("{1} broken", {leadsText({static_cast<LeadRole>(role)})}));
  Words leaking;
  for (const std::size_t arm : {0, 1, 2, 3})
    if (bridge.leaks[arm].across || bridge.leaks[arm].toStructure) leaking.push_back(std::to_string(arm + 1));
  if (!leaking.empty())
    words.push_back(sayCount(leaking.size(), "arm {1} leaking", "arms {1} leaking", {listed(leaking)}));
  return words;
}

/// A signal terminal and by how many volts it moves.
struct Moved {
  std::string name;
  double volts = 0;

  std::string verb() const { return volts > 0 ? say("rises") : say("falls"); }
};

/// Who moves and who stays, the one that moves most first.
std::string terminalsText(const Movement& movement) {
  const auto moved = [&](const HalfBridge& half) {
    const double volts =
        half.after * movement.excitation.after.base() - half.before * movement.excitation.before.base();
    const bool seen = std::abs(volts) > rounding * movement.excitation.after.base();
    return Moved{std::string(nodeName(half.signal)), seen ? volts : 0};
  };
  Moved more = moved(movement.halves[0]), less = moved(movement.halves[1]);
  if (more.volts == 0 && less.volts == 0) return say("{1} and {2} stay", {more.name, less.name});
  if (std::abs(less.volts) > std::abs(more.volts) * (1 + unseen)) std::swap(more, less);
  const double share = less.volts / more.volts;
  if (std::abs(share - 1) < unseen)
    return say(
        more.volts > 0 ? sayLater("{1} and {2} both rise by {3}") : sayLater("{1} and {2} both fall by {3}"),
        {more.name, less.name, voltText(more.volts)});
  const std::string text = say("{1} {2} by {3}", {more.name, more.verb(), voltText(more.volts)});
  if (std::abs(share) < unseen) return say("{1} while {2} stays", {text, less.name});
  if (std::abs(share) < slight)
    return say("{1} while {2} hardly moves (it {3} by {4})",
               {text, less.name, less.verb(), voltText(less.volts)});
  if (share < 0) return say("{1} while {2} {3} by {4}", {text, less.name, less.verb(), voltText(less.volts)});
  return say("{1} and {2} only by {3}", {text, less.name, voltText(less.volts)});
}

std::string outputText(const Bridge& bridge, const Movement& movement) {
  const std::string name = bridge.hookup.signalReversed ? "S- - S+" : "S+ - S-";
  if (movement.polarity == Polarity::None) return say("the output {1} does not change", {name});
  const double change = movement.change.base();
  return say(change > 0 ? sayLater("the output {1} rises by {2} mV/V, {3}")
                        : sayLater("the output {1} falls by {2} mV/V, {3}"),
             {name, core::shown(formatNumber(1e3 * std::abs(change), 4)), polarityWord(movement.polarity)});
}

/// `output`, and what strain or load that simulates where it simulates one: "..., which simulates compression
/// of gauge 1, -1000 µm/m".
std::string withStrainText(const std::string& output, const Bridge& bridge, const Movement& movement) {
  if (movement.polarity == Polarity::None || !movement.simulated) return output;
  const std::string amount = core::shown(formatNumber(simulatedInUnit(bridge, *movement.simulated), 4)) +
                             " " + simulatedUnitText(bridge);
  if (isTransducer(bridge)) return say("{1}, which simulates a load of {2}", {output, amount});
  const std::string way = *movement.simulated < 0 ? say("compression") : say("tension");
  if (bridge.hookup.gaugesReversed)
    return say("{1}, which simulates {2}, {3}, the gauges being reversed", {output, way, amount});
  return say("{1}, which simulates {2} of gauge 1, {3}", {output, way, amount});
}

std::string sentenceFrom(std::string text) {
  // Of our own words; a shunt's name stays as it is.
  const bool isOurs = text.starts_with("the ") || text.starts_with(say("the shunt"));
  if (isOurs) text[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(text[0])));
  return text + ".";
}

}  // namespace

std::string sentenceOf(const Setup& setup, std::size_t step, const Movement& movement) {
  if (step >= setup.sequence.size() || setup.sequence[step].closed.empty())
    return say("No shunt is closed, so nothing moves.");
  const Words around = circumstances(setup.bridge);
  const std::string causes = listed(Causes(setup, step, movement).texts());
  const std::string output = withStrainText(outputText(setup.bridge, movement), setup.bridge, movement);
  if (around.empty()) return sentenceFrom(say("{1}, so {2}: {3}", {causes, terminalsText(movement), output}));
  return sentenceFrom(
      say("With {1}, {2}, so {3}: {4}", {listed(around), causes, terminalsText(movement), output}));
}

}  // namespace core
