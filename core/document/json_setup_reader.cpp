// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_setup_reader.h"

#include <algorithm>

#include "core/document/file_limits.h"
#include "core/document/json_hookup.h"
#include "core/document/json_record.h"
#include "core/document/json_stock.h"
#include "core/document/json_uncertainties.h"
#include "core/document/json_wiring.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

/// No filter comes near; which orders can be reckoned with is said where it is done (settlingTime).
constexpr std::uint64_t mostOrder = 1'000;

Grid readGrid(const JsonPlace& at) {
  const JsonFields in(at, {"area_m2", "heat_sink", "demand"});
  Grid grid;
  if (in.has("area_m2")) grid.area = Area(in.number("area_m2"));
  grid.heatSink =
      readWord<HeatSink>(in.at("heat_sink"), say("heat sink"), heatSinkFromKey, heatSinkKey, heatSinkCount);
  grid.demand =
      readWord<HeatDemand>(in.at("demand"), "demand", heatDemandFromKey, heatDemandKey, heatDemandCount);
  return grid;
}

Gauge readGauge(const JsonPlace& at) {
  const JsonFields in(at, {"nominal_ohm", "factor", "poisson_ratio", "factor_coefficient_per_K",
                           "factor_at_degC", "installed_degC", "grid"});
  Gauge gauge;
  gauge.nominal = Resistance(in.number("nominal_ohm"));
  gauge.factor = in.number("factor");
  gauge.poissonRatio = in.number("poisson_ratio");
  gauge.factorCoefficient = in.number("factor_coefficient_per_K");
  gauge.factorAt = Temperature(in.number("factor_at_degC"));
  gauge.installed = Temperature(in.number("installed_degC"));
  gauge.grid = readGrid(in.at("grid"));
  return gauge;
}

Rating readRating(const JsonPlace& at) {
  const JsonFields in(at, {"rated_output_V_per_V", "capacity", "load_unit"});
  return {Output(in.number("rated_output_V_per_V")), in.number("capacity"), in.text("load_unit")};
}

Lead readLead(const JsonPlace& at) {
  const JsonFields in(at, {"ohm", "length_m", "section_m2", "temperature_degC"});
  if (!in.has("ohm"))
    return CopperWire{Length(in.number("length_m")), Area(in.number("section_m2")),
                      Temperature(in.number("temperature_degC"))};
  if (in.has("length_m") || in.has("section_m2") || in.has("temperature_degC"))
    at.fail(say("the lead has a resistance and a wire"),
            say("Keep either ohm, or length_m, section_m2 and temperature_degC"));
  return Resistance(in.number("ohm"));
}

/// Leads of roles that the bridge uses must be there; others may be.
Leads readLeads(const JsonPlace& at, const Bridge& bridge) {
  const JsonFields in(at, {"P+", "P-", "S+", "S-", "sense+", "sense-", "return"});
  Leads leads{};
  const auto read = [&](LeadRole role) {
    leads[static_cast<std::size_t>(role)] = readLead(in.at(leadName(role)));
  };
  for (const Wire& wire : wiresOf(bridge)) read(wire.role);
  for (std::size_t k = 0; k < leadRoleCount; ++k)
    if (const auto role = static_cast<LeadRole>(k); in.has(leadName(role))) read(role);
  return leads;
}

std::array<Resistance, 4> readArms(const JsonPlace& at) {
  std::array<Resistance, 4> arms;
  if (at.size() != arms.size()) {
    at.fail(say("a bridge has four arms"), say("List their resistances in the order of arms 1 to 4"));
    return arms;
  }
  for (std::size_t arm = 0; arm < arms.size(); ++arm) arms[arm] = Resistance(at.element(arm).number());
  return arms;
}

Leak readLeak(const JsonPlace& at) {
  if (at.isNull()) return {};
  const JsonFields in(at, {"across_ohm", "to_structure_ohm", "place"});
  Leak leak;
  if (in.has("across_ohm")) leak.across = Resistance(in.number("across_ohm"));
  if (in.has("to_structure_ohm")) leak.toStructure = Resistance(in.number("to_structure_ohm"));
  leak.place = in.number("place");
  return leak;
}

std::array<Leak, 4> readLeaks(const JsonPlace& at) {
  std::array<Leak, 4> leaks;
  if (at.size() != leaks.size()) {
    at.fail(say("a bridge has four arms"),
            say("List their leaks in the order of arms 1 to 4, null where there is none"));
    return leaks;
  }
  for (std::size_t arm = 0; arm < leaks.size(); ++arm) leaks[arm] = readLeak(at.element(arm));
  return leaks;
}

Bridge readBridge(const JsonPlace& at) {
  const JsonFields in(
      at, {"type", "gauge", "rating", "arms_ohm", "leads", "six_wire", "lead_warming_K", "leaks", "hookup"});
  Bridge bridge;
  const JsonPlace typeAt = in.at("type");
  if (const auto type = bridgeTypeFromKey(typeAt.text()))
    bridge.type = *type;
  else
    typeAt.fail(say("there is no bridge type {1}", {inQuotes(typeAt.text())}),
                say("Use one such as quarter_three_wire"));
  bridge.gauge = readGauge(in.at("gauge"));
  bridge.rating = readRating(in.at("rating"));
  bridge.arms = readArms(in.at("arms_ohm"));
  bridge.sixWire = in.at("six_wire").boolean();
  bridge.leads = readLeads(in.at("leads"), bridge);
  bridge.leadWarming = Warming(in.number("lead_warming_K"));
  if (in.has("leaks")) bridge.leaks = readLeaks(in.at("leaks"));
  if (in.has("hookup")) bridge.hookup = readHookup(in.at("hookup"));
  return bridge;
}

CurrentSource readCurrentSource(const JsonPlace& at) {
  const JsonFields in(at, {"current_A", "nominal_ohm"});
  return {Current(in.number("current_A")), Resistance(in.number("nominal_ohm"))};
}

Balance readBalance(const JsonPlace& at) {
  const JsonFields in(at, {"kind", "potentiometer_ohm", "limiting_ohm", "wiper"});
  return {
      readWord<BalanceKind>(in.at("kind"), "balance", balanceKindFromKey, balanceKindKey, balanceKindCount),
      Resistance(in.number("potentiometer_ohm")), Resistance(in.number("limiting_ohm")), in.number("wiper")};
}

Instrument readInstrument(const JsonPlace& at) {
  const JsonFields in(at, {"unit", "gauge_factor", "bridge_factor", "units_per_mV_per_V", "scaled_unit",
                           "excitation_V", "range_V_per_V", "input_resistance_ohm", "current_source",
                           "ratiometric", "linearisation", "balance", "grounding"});
  Instrument instrument;
  instrument.unit =
      readWord<ReadingUnit>(in.at("unit"), "unit", readingUnitFromKey, readingUnitKey, readingUnitCount);
  instrument.gaugeFactor = in.number("gauge_factor");
  instrument.bridgeFactor = in.number("bridge_factor");
  instrument.unitsPerMillivoltPerVolt = in.number("units_per_mV_per_V");
  instrument.scaledUnit = in.text("scaled_unit");
  instrument.excitation = Voltage(in.number("excitation_V"));
  if (in.has("range_V_per_V")) instrument.range = Output(in.number("range_V_per_V"));
  if (in.has("input_resistance_ohm"))
    instrument.inputResistance = Resistance(in.number("input_resistance_ohm"));
  if (in.has("current_source")) instrument.current = readCurrentSource(in.at("current_source"));
  instrument.ratiometric = in.at("ratiometric").boolean();
  instrument.linearisation = readWord<Linearisation>(
      in.at("linearisation"), "linearisation", linearisationFromKey, linearisationKey, linearisationCount);
  instrument.balance = readBalance(in.at("balance"));
  instrument.grounding =
      readWord<Grounding>(in.at("grounding"), "grounding", groundingFromKey, groundingKey, groundingCount);
  return instrument;
}

Filter readFilter(const JsonPlace& at) {
  const JsonFields in(at, {"kind", "order", "cutoff_Hz", "window_s"});
  return {readWord<FilterKind>(in.at("kind"), "filter", filterKindFromKey, filterKindKey, filterKindCount),
          static_cast<unsigned>(in.at("order").count(mostOrder)), Frequency(in.number("cutoff_Hz")),
          Duration(in.number("window_s"))};
}

Acquisition readAcquisition(const JsonPlace& at) {
  const JsonFields in(at, {"sample_rate_Hz", "filter", "mains_Hz", "settled_to"});
  Acquisition acquisition;
  if (in.has("sample_rate_Hz")) acquisition.sampleRate = Frequency(in.number("sample_rate_Hz"));
  acquisition.filter = readFilter(in.at("filter"));
  acquisition.mains.reset();
  if (in.has("mains_Hz")) acquisition.mains = Frequency(in.number("mains_Hz"));
  acquisition.settledTo = in.number("settled_to");
  return acquisition;
}

Part readPart(const JsonPlace& at) {
  const JsonFields in(at, {"id", "due", "rating_W", "certificate"});
  Part part{in.text("id"), readDate(in, "due"), {}};
  if (in.has("rating_W")) part.rating = Power(in.number("rating_W"));
  if (in.has("certificate")) part.certificate = in.text("certificate");
  return part;
}

Shunt readShunt(const JsonPlace& at, JsonNames& names) {
  const JsonFields in(at, {"name", "ohm", "from", "to", "wires_ohm", "contact_ohm", "part", "jumpers"});
  names.add(in.at("name"), "shunt");
  Shunt shunt{
      in.text("name"),       Resistance(in.number("ohm")),       readNode(in.at("from")),
      readNode(in.at("to")), Resistance(in.number("wires_ohm")), Resistance(in.number("contact_ohm"))};
  if (in.has("part")) shunt.part = readPart(in.at("part"));
  if (in.has("jumpers")) shunt.jumpers = readJumpers(in.at("jumpers"));
  return shunt;
}

/// Steps name their shunts; in the value they are indices, rising.
std::vector<std::size_t> readClosed(const JsonPlace& at, const ShuntIndices& shunts) {
  std::vector<std::size_t> closed;
  for (std::size_t k = 0; k < at.size() && !at.failed(); ++k) {
    const JsonPlace nameAt = at.element(k);
    const auto found = shunts.find(nameAt.text());
    if (found == shunts.end())
      nameAt.fail(say("there is no shunt named {1}", {inQuotes(nameAt.text())}),
                  say("Use the name of a shunt of this channel"));
    else
      closed.push_back(found->second);
  }
  std::sort(closed.begin(), closed.end());
  if (std::adjacent_find(closed.begin(), closed.end()) != closed.end())
    at.fail(say("a shunt is named twice in one step"), say("Name it once"));
  return closed;
}

Step readStep(const JsonPlace& at, const ShuntIndices& shunts) {
  const JsonFields in(at, {"label", "closed", "hold_s", "settle_s"});
  return {in.text("label"), readClosed(in.at("closed"), shunts), Duration(in.number("hold_s")),
          Duration(in.number("settle_s"))};
}

/// Zero return is known here only to say where its limit belongs.
std::map<MeritKind, double> readMerits(const JsonPlace& at) {
  static_assert(meritKindCount == 8, "list the new figure");
  const JsonFields in(at, {"nonlinearity", "hysteresis", "repeatability", "zero_return", "zero_shift",
                           "symmetry", "combined_error", "span_ratio"});
  std::map<MeritKind, double> merits;
  for (std::size_t k = 0; k < meritKindCount; ++k) {
    const auto kind = static_cast<MeritKind>(k);
    const std::string_view key = meritKindKey(kind);
    if (!in.has(key)) continue;
    if (kind == MeritKind::ZeroReturn)
      in.at(key).fail(say("the limit of zero return does not stand among the merits: it is the “zero_return” "
                          "of the limits"),
                      say("Move it there, or remove it"));
    merits.emplace(kind, in.number(key));
  }
  return merits;
}

Limits readLimits(const JsonPlace& at) {
  const JsonFields in(
      at, {"relative", "least", "zero_return", "change", "zero_change", "linearity_from", "merits"});
  Limits limits{in.number("relative"), Reading(in.number("least")), in.number("zero_return"),
                in.number("change"), in.number("zero_change")};
  limits.linearityFrom = readWord<ReferenceLine>(in.at("linearity_from"), say("reference line"),
                                                 referenceLineFromKey, referenceLineKey, referenceLineCount);
  limits.merits = readMerits(in.at("merits"));
  return limits;
}

Decision readDecision(const JsonPlace& at) {
  const JsonFields in(at, {"rule", "coverage", "guard_factor", "conformity", "greatest_share"});
  return {readWord<DecisionRule>(in.at("rule"), say("decision rule"), decisionRuleFromKey, decisionRuleKey,
                                 decisionRuleCount),
          in.number("coverage"), in.number("guard_factor"), in.number("conformity"),
          in.number("greatest_share")};
}

}  // namespace

Setup readSetup(const JsonPlace& at) {
  const JsonFields in(at, {"bridge", "instrument", "identity", "acquisition", "pins", "shunts", "sequence",
                           "limits", "decision", "uncertainties", "correlation_groups"});
  Setup setup;
  setup.bridge = readBridge(in.at("bridge"));
  setup.instrument = readInstrument(in.at("instrument"));
  if (in.has("identity")) setup.identity = readIdentity(in.at("identity"));
  setup.acquisition = readAcquisition(in.at("acquisition"));
  setup.wiring = readPins(in.at("pins"));
  JsonNames names;
  setup.shunts = readShortList<Shunt>(in.at("shunts"), mostShunts, say("shunts"),
                                      [&](const JsonPlace& p) { return readShunt(p, names); });
  ShuntIndices indices;
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) indices.emplace(setup.shunts[k].name, k);
  setup.sequence = readShortList<Step>(in.at("sequence"), mostSteps, say("steps"),
                                       [&](const JsonPlace& p) { return readStep(p, indices); });
  setup.limits = readLimits(in.at("limits"));
  setup.decision = readDecision(in.at("decision"));
  setup.uncertainties = readUncertainties(in, indices);
  return setup;
}

}  // namespace core
