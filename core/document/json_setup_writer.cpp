// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_setup_writer.h"

#include <array>

#include "core/document/json_hookup.h"
#include "core/document/json_record.h"
#include "core/document/json_stock.h"
#include "core/document/json_uncertainties.h"
#include "core/document/json_wiring.h"

namespace core {
namespace {

using enum JsonEmitter::Layout;

void writeGauge(JsonEmitter& out, const Gauge& gauge) {
  out.object("gauge", OneLine, [&] {
    out.number("nominal_ohm", gauge.nominal.base());
    out.number("factor", gauge.factor);
    out.number("poisson_ratio", gauge.poissonRatio);
    out.number("factor_coefficient_per_K", gauge.factorCoefficient);
    out.number("factor_at_degC", gauge.factorAt.base());
    out.number("installed_degC", gauge.installed.base());
    out.object("grid", OneLine, [&] {
      if (gauge.grid.area) out.number("area_m2", gauge.grid.area->base());
      out.text("heat_sink", heatSinkKey(gauge.grid.heatSink));
      out.text("demand", heatDemandKey(gauge.grid.demand));
    });
  });
}

void writeRating(JsonEmitter& out, const Rating& rating) {
  out.object("rating", OneLine, [&] {
    out.number("rated_output_V_per_V", rating.ratedOutput.base());
    out.number("capacity", rating.capacity);
    out.text("load_unit", rating.loadUnit);
  });
}

void writeLead(JsonEmitter& out, LeadRole role, const Lead& lead) {
  out.object(leadName(role), OneLine, [&] {
    if (const auto* wire = std::get_if<CopperWire>(&lead)) {
      out.number("length_m", wire->length.base());
      out.number("section_m2", wire->section.base());
      out.number("temperature_degC", wire->temperature.base());
    } else {
      out.number("ohm", std::get<Resistance>(lead).base());
    }
  });
}

/// The leads in use, and others that hold something, so that nothing entered is lost.
void writeLeads(JsonEmitter& out, const Bridge& bridge) {
  std::array<bool, leadRoleCount> used{};
  for (const Wire& wire : wiresOf(bridge)) used[static_cast<std::size_t>(wire.role)] = true;
  out.object("leads", Lines, [&] {
    for (std::size_t k = 0; k < leadRoleCount; ++k)
      if (used[k] || bridge.leads[k] != Lead(Resistance(0)))
        writeLead(out, static_cast<LeadRole>(k), bridge.leads[k]);
  });
}

/// An arm without anything about leaks is null, and so the whole list is left out when none has.
void writeLeaks(JsonEmitter& out, const std::array<Leak, 4>& leaks) {
  if (leaks == std::array<Leak, 4>{}) return;
  out.array("leaks", Lines, [&] {
    for (const Leak& leak : leaks) {
      if (leak == Leak{}) {
        out.null({});
        continue;
      }
      out.object({}, OneLine, [&] {
        if (leak.across) out.number("across_ohm", leak.across->base());
        if (leak.toStructure) out.number("to_structure_ohm", leak.toStructure->base());
        out.number("place", leak.place);
      });
    }
  });
}

void writeBridge(JsonEmitter& out, const Bridge& bridge) {
  out.object("bridge", Lines, [&] {
    out.text("type", templateOf(bridge.type).key);
    writeGauge(out, bridge.gauge);
    writeRating(out, bridge.rating);
    out.array("arms_ohm", OneLine, [&] {
      for (const Resistance arm : bridge.arms) out.number({}, arm.base());
    });
    writeLeads(out, bridge);
    out.boolean("six_wire", bridge.sixWire);
    out.number("lead_warming_K", bridge.leadWarming.base());
    writeLeaks(out, bridge.leaks);
    writeHookup(out, "hookup", bridge.hookup);
  });
}

/// Members of the instrument that say how it works rather than how it is set.
void writeWorking(JsonEmitter& out, const Instrument& instrument) {
  if (instrument.current)
    out.object("current_source", OneLine, [&] {
      out.number("current_A", instrument.current->supplied.base());
      out.number("nominal_ohm", instrument.current->nominal.base());
    });
  out.boolean("ratiometric", instrument.ratiometric);
  out.text("linearisation", linearisationKey(instrument.linearisation));
  out.object("balance", OneLine, [&] {
    out.text("kind", balanceKindKey(instrument.balance.kind));
    out.number("potentiometer_ohm", instrument.balance.potentiometer.base());
    out.number("limiting_ohm", instrument.balance.limiting.base());
    out.number("wiper", instrument.balance.wiper);
  });
  out.text("grounding", groundingKey(instrument.grounding));
}

void writeInstrument(JsonEmitter& out, const Instrument& instrument) {
  out.object("instrument", Lines, [&] {
    out.text("unit", readingUnitKey(instrument.unit));
    out.number("gauge_factor", instrument.gaugeFactor);
    out.number("bridge_factor", instrument.bridgeFactor);
    out.number("units_per_mV_per_V", instrument.unitsPerMillivoltPerVolt);
    out.text("scaled_unit", instrument.scaledUnit);
    out.number("excitation_V", instrument.excitation.base());
    if (instrument.range) out.number("range_V_per_V", instrument.range->base());
    if (instrument.inputResistance) out.number("input_resistance_ohm", instrument.inputResistance->base());
    writeWorking(out, instrument);
  });
}

void writeAcquisition(JsonEmitter& out, const Acquisition& acquisition) {
  out.object("acquisition", OneLine, [&] {
    if (acquisition.sampleRate) out.number("sample_rate_Hz", acquisition.sampleRate->base());
    out.object("filter", OneLine, [&] {
      out.text("kind", filterKindKey(acquisition.filter.kind));
      out.count("order", acquisition.filter.order);
      out.number("cutoff_Hz", acquisition.filter.cutoff.base());
      out.number("window_s", acquisition.filter.window.base());
    });
    if (acquisition.mains) out.number("mains_Hz", acquisition.mains->base());
    out.number("settled_to", acquisition.settledTo);
  });
}

void writePart(JsonEmitter& out, const Part& part) {
  if (part == Part{}) return;
  out.object("part", OneLine, [&] {
    out.text("id", part.id);
    writeDate(out, "due", part.due);
    if (part.rating) out.number("rating_W", part.rating->base());
    if (!part.certificate.empty()) out.text("certificate", part.certificate);
  });
}

void writeShunt(JsonEmitter& out, const Shunt& shunt) {
  out.object({}, OneLine, [&] {
    out.text("name", shunt.name);
    out.number("ohm", shunt.resistance.base());
    out.text("from", nodeName(shunt.a));
    out.text("to", nodeName(shunt.b));
    out.number("wires_ohm", shunt.wires.base());
    out.number("contact_ohm", shunt.contact.base());
    writePart(out, shunt.part);
    if (!shunt.jumpers.empty()) writeJumpers(out, "jumpers", shunt.jumpers);
  });
}

void writeStep(JsonEmitter& out, const Step& step, const std::vector<Shunt>& shunts) {
  out.object({}, OneLine, [&] {
    out.text("label", step.label);
    out.array("closed", OneLine, [&] {
      for (const std::size_t index : step.closed) out.text({}, shunts[index].name);
    });
    out.number("hold_s", step.hold.base());
    out.number("settle_s", step.settle.base());
  });
}

void writeLimits(JsonEmitter& out, const Limits& limits) {
  out.object("limits", OneLine, [&] {
    out.number("relative", limits.relative);
    out.number("least", limits.least.base());
    out.number("zero_return", limits.zeroReturn);
    out.number("change", limits.change);
    out.number("zero_change", limits.zeroChange);
    out.text("linearity_from", referenceLineKey(limits.linearityFrom));
    out.object("merits", OneLine, [&] {
      for (const auto& [kind, share] : limits.merits) out.number(meritKindKey(kind), share);
    });
  });
}

void writeDecision(JsonEmitter& out, const Decision& decision) {
  out.object("decision", OneLine, [&] {
    out.text("rule", decisionRuleKey(decision.rule));
    out.number("coverage", decision.coverage);
    out.number("guard_factor", decision.guardFactor);
    out.number("conformity", decision.conformity);
    out.number("greatest_share", decision.greatestShare);
  });
}

}  // namespace

void writeSetup(JsonEmitter& out, std::string_view key, const Setup& setup) {
  out.object(key, Lines, [&] {
    writeBridge(out, setup.bridge);
    writeInstrument(out, setup.instrument);
    writeIdentity(out, "identity", setup.identity);
    writeAcquisition(out, setup.acquisition);
    writePins(out, "pins", setup.wiring);
    out.array("shunts", Lines, [&] {
      for (const Shunt& shunt : setup.shunts) writeShunt(out, shunt);
    });
    out.array("sequence", Lines, [&] {
      for (const Step& step : setup.sequence) writeStep(out, step, setup.shunts);
    });
    writeLimits(out, setup.limits);
    writeDecision(out, setup.decision);
    writeUncertainties(out, setup);
  });
}

}  // namespace core
