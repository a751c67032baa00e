// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/apply.h"

#include <algorithm>
#include <cassert>
#include <optional>
#include <utility>

#include "core/circuit/node_words.h"
#include "core/document/carried_names.h"
#include "core/document/edits.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"

namespace core {
namespace {

using Refusal = std::optional<std::string>;

bool isOfShunt(const Input& input) {
  return input.kind == InputKind::Shunt || input.kind == InputKind::ShuntWires ||
         input.kind == InputKind::ShuntContact;
}

bool isSense(Node node) { return node == Node::SensePlus || node == Node::SenseMinus; }

std::string missing(Node node, const std::string& whose) {
  return isSense(node) ? say("it has no sense leads for {1}", {whose})
                       : say("it has no {1} for {2}", {nodeWords(node), whose});
}

/// Why the shunts of `from` cannot lie in `bridge`.
Refusal shuntsRefused(const Setup& from, const Bridge& bridge) {
  for (const Shunt& shunt : from.shunts) {
    for (const Node node : {shunt.a, shunt.b})
      if (!hasNode(bridge, node)) return missing(node, say("shunt {1}", {inQuotes(shunt.name)}));
    const bool nothing = pointOf(bridge, shunt.a) == pointOf(bridge, shunt.b);
    if (nothing && pointOf(from.bridge, shunt.a) != pointOf(from.bridge, shunt.b))
      return say("both ends of shunt {1} would be at one point, the {2}",
                 {inQuotes(shunt.name), pointName(bridge, shunt.a)});
  }
  return std::nullopt;
}

Refusal pinsRefused(const Wiring& wiring, const Bridge& bridge) {
  for (const Pin& pin : wiring.pins)
    if (const auto* node = std::get_if<Node>(&pin.use); node && !hasNode(bridge, *node))
      return missing(*node, say("pin {1}", {inQuotes(pinText(pin.name))}));
  return std::nullopt;
}

/// Whether closing `a` of one channel is closing `b` of another: the same label at the same place. The values
/// may differ a little from channel to channel; a reading stays a reading of that shunt.
bool isSameShunt(const Shunt& a, const Shunt& b) { return a.name == b.name && a.a == b.a && a.b == b.b; }

bool closesTheSame(const Setup& before, const Setup& after) {
  return std::equal(before.sequence.begin(), before.sequence.end(), after.sequence.begin(),
                    after.sequence.end(), [&](const Step& x, const Step& y) {
                      return std::equal(x.closed.begin(), x.closed.end(), y.closed.begin(), y.closed.end(),
                                        [&](std::size_t i, std::size_t j) {
                                          return isSameShunt(before.shunts[i], after.shunts[j]);
                                        });
                    });
}

/// Statements of `from` about what `wanted` says take the place of those of `to`, with their correlation.
template <class Wanted>
void applyStatements(const Uncertainties& from, Uncertainties& to, const Wanted& wanted) {
  std::erase_if(to.stated, [&](const auto& entry) { return wanted(entry.first); });
  for (const auto& [input, uncertainty] : from.stated) {
    if (!wanted(input)) continue;
    to.stated.emplace(input, uncertainty);
    const std::string& group = uncertainty.group;
    if (group.empty()) continue;
    if (const auto found = from.groups.find(group); found != from.groups.end())
      to.groups.insert_or_assign(group, found->second);
    else
      to.groups.erase(group);
  }
}

/// Readings of the ohmmeter stay where the state and the points that they were taken in are still there.
void keepOhmReadings(Channel& channel, const Setup& before) {
  const auto shuntOf = [](const Setup& setup, const std::string& name) {
    return std::find_if(setup.shunts.begin(), setup.shunts.end(),
                        [&](const Shunt& shunt) { return shunt.name == name; });
  };
  std::erase_if(channel.ohmReadings, [&](const OhmReading& reading) {
    if (reading.state.shunt.empty()) return false;
    const auto was = shuntOf(before, reading.state.shunt);
    const auto is = shuntOf(channel.setup, reading.state.shunt);
    return was == before.shunts.end() || is == channel.setup.shunts.end() || !isSameShunt(*was, *is) ||
           was->jumpers != is->jumpers;
  });
}

void applyPlan(const Setup& from, Channel& channel) {
  const Setup before = channel.setup;
  Setup& setup = channel.setup;
  setup.shunts = from.shunts;
  setup.sequence = from.sequence;
  applyStatements(from.uncertainties, setup.uncertainties, isOfShunt);
  keepOhmReadings(channel, before);
  if (closesTheSame(before, setup)) return;
  for (Check& check : channel.checks)
    if (!check.closedWith) check.readings.assign(setup.sequence.size(), std::nullopt);
}

/// Whether the numbers that turn output into the reading's unit mean the same at both bridges: a transducer's
/// scale is from its own certificate.
bool sharesScale(const Bridge& a, const Bridge& b) {
  return isTransducer(a) == isTransducer(b) && (!isTransducer(a) || a.rating == b.rating);
}

/// Whether both bridges ask for the same bridge factor, whatever is set.
bool sharesBridgeFactor(const Bridge& a, const Bridge& b) {
  return a.type == b.type && templateOf(a.type).bridgeFactor(a.gauge.poissonRatio) ==
                                 templateOf(b.type).bridgeFactor(b.gauge.poissonRatio);
}

void applyInstrument(const Setup& from, Setup& to) {
  const Instrument own = std::exchange(to.instrument, from.instrument);
  if (!sharesBridgeFactor(from.bridge, to.bridge)) to.instrument.bridgeFactor = own.bridgeFactor;
  if (sharesScale(from.bridge, to.bridge)) return;
  to.instrument.unit = own.unit;
  to.instrument.gaugeFactor = own.gaugeFactor;
  to.instrument.bridgeFactor = own.bridgeFactor;
  to.instrument.unitsPerMillivoltPerVolt = own.unitsPerMillivoltPerVolt;
  to.instrument.scaledUnit = own.scaledUnit;
}

bool hasOpenReadings(const Channel& channel) {
  return std::any_of(channel.checks.begin(), channel.checks.end(), [](const Check& check) {
    return !check.closedWith && std::any_of(check.readings.begin(), check.readings.end(),
                                            [](const auto& reading) { return reading.has_value(); });
  });
}

/// Numbers in one unit must not quietly become numbers in another.
Refusal unitRefused(const Channel& target, const Channel& next, const Setup& from,
                    const ChannelParts& parts) {
  const std::string was = readingUnitText(target.setup.instrument);
  const std::string is = readingUnitText(next.setup.instrument);
  if (was != is && hasOpenReadings(next))
    return say("it has readings in {1} in an open check, and would read in {2}", {was, is});
  const std::string limitUnit = parts.limits ? readingUnitText(from.instrument) : was;
  if (limitUnit != is && next.setup.limits.least.base() != 0)
    return say("its least limit would be {1} {2} where {3} was meant",
               {formatNumber(next.setup.limits.least.base(), 6), is, limitUnit});
  return std::nullopt;
}

Result<Channel> applied(const Channel& source, const ChannelParts& parts, const Channel& target) {
  const Setup& from = source.setup;
  Refusal refusal;
  if (parts.plan) refusal = shuntsRefused(from, target.setup.bridge);
  if (parts.wiring && !refusal) refusal = pinsRefused(from.wiring, target.setup.bridge);
  if (refusal) return Error{target.name, *refusal, ""};
  Channel next = target;
  if (parts.plan) applyPlan(from, next);
  if (parts.wiring) next.setup.wiring = from.wiring;
  if (parts.instrument) applyInstrument(from, next.setup);
  if (parts.acquisition) next.setup.acquisition = from.acquisition;
  if (parts.limits) {
    next.setup.limits = from.limits;
    next.setup.decision = from.decision;
  }
  if (parts.uncertainties)
    applyStatements(from.uncertainties, next.setup.uncertainties,
                    [](const Input& input) { return !isOfShunt(input); });
  if (const Refusal unit = unitRefused(target, next, from, parts))
    return Error{target.name, *unit, say("Close its checks, or hand over unit and limits together")};
  return next;
}

Uncertainty toleranceOfPart(double share) {
  Uncertainty uncertainty;
  uncertainty.statement = Statement::Tolerance;
  uncertainty.amount = share;
  uncertainty.relative = true;
  uncertainty.distribution = Distribution::Rectangular;
  return uncertainty;
}

Uncertainty uncertaintyOf(const Resistor& resistor) {
  if (!resistor.certificate) return toleranceOfPart(resistor.tolerance);
  Uncertainty uncertainty;
  uncertainty.statement = Statement::Expanded;
  uncertainty.amount = resistor.certificate->expanded.base();
  uncertainty.relative = false;
  uncertainty.coverageFactor = resistor.certificate->coverageFactor;
  return uncertainty;
}

Channel withPart(Channel channel, std::size_t shunt, Part part, Resistance value, Uncertainty uncertainty) {
  Shunt next = channel.setup.shunts[shunt];
  next.part = std::move(part);
  next.resistance = value;
  return withUncertainty(withShunt(std::move(channel), shunt, std::move(next)), {InputKind::Shunt, shunt},
                         std::move(uncertainty));
}

}  // namespace

Applied withApplied(const Document& document, std::size_t from, const ChannelParts& parts,
                    std::span<const std::size_t> to) {
  Applied result{document, {}, {}};
  const Channel& source = *document.channels[from];
  for (const std::size_t target : to) {
    if (target == from) continue;
    Result<Channel> next = applied(source, parts, *document.channels[target]);
    if (next) {
      result.document = withChannel(std::move(result.document), target, *std::move(next));
      continue;
    }
    result.refused.push_back(next.error().where + ": " + next.error().what);
    result.refusedAt.push_back(target);
  }
  return result;
}

std::size_t droppedReadings(const Channel& before, const Channel& after) {
  std::size_t dropped = 0;
  for (std::size_t check = 0; check < before.checks.size(); ++check) {
    const auto &was = before.checks[check].readings, &is = after.checks[check].readings;
    for (std::size_t step = 0; step < was.size(); ++step)
      dropped += was[step] && !(step < is.size() && is[step]);
  }
  return dropped;
}

Channel withResistor(Channel channel, std::size_t shunt, const Resistor& resistor) {
  Part part{resistor.id, resistor.due, resistor.rating};
  if (resistor.certificate) part.certificate = resistor.certificate->number;
  return withPart(std::move(channel), shunt, std::move(part), valueOf(resistor), uncertaintyOf(resistor));
}

Document withStockValues(Document document, std::span<const std::size_t> to) {
  const std::shared_ptr<const Stock> stock = document.stock;
  for (const std::size_t target : to) {
    Channel channel = *document.channels[target];
    for (std::size_t k = 0; k < channel.setup.shunts.size(); ++k) {
      const Shunt& shunt = channel.setup.shunts[k];
      if (shunt.part.id.empty()) continue;
      if (const Resistor* resistor = findResistor(*stock, shunt.part.id))
        channel = withResistor(std::move(channel), k, *resistor);
      else if (const DecadeBox* box = findBox(*stock, shunt.part.id))
        channel = withPart(std::move(channel), k, {box->id, box->due, box->rating}, shunt.resistance,
                           toleranceOfPart(box->tolerance));
    }
    document = withChannel(std::move(document), target, std::move(channel));
  }
  return document;
}

Document withStock(Document document, Stock stock) {
  if (stock == *document.stock) return document;
  document.stock = stock == Stock{} ? noStock() : std::make_shared<const Stock>(std::move(stock));
  return document;
}

}  // namespace core
