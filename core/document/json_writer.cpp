// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_writer.h"

#include <algorithm>

#include "core/document/json_emitter.h"
#include "core/document/json_reader.h"

namespace core {
namespace {

using enum JsonEmitter::Layout;

void writeGauge(JsonEmitter& out, const Gauge& gauge) {
  out.object("gauge", OneLine, [&] {
    out.number("nominal_ohm", gauge.nominal.base());
    out.number("factor", gauge.factor);
    out.number("poisson_ratio", gauge.poissonRatio);
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
  });
}

void writeInstrument(JsonEmitter& out, const Instrument& instrument) {
  out.object("instrument", Lines, [&] {
    out.text("unit", readingUnitKey(instrument.unit));
    out.number("gauge_factor", instrument.gaugeFactor);
    out.number("bridge_factor", instrument.bridgeFactor);
    out.number("units_per_mV_per_V", instrument.unitsPerMillivoltPerVolt);
    out.text("scaled_unit", instrument.scaledUnit);
    out.number("excitation_V", instrument.excitation.base());
    if (instrument.inputResistance) out.number("input_resistance_ohm", instrument.inputResistance->base());
  });
}

void writeShunt(JsonEmitter& out, const Shunt& shunt) {
  out.object({}, OneLine, [&] {
    out.text("name", shunt.name);
    out.number("ohm", shunt.resistance.base());
    out.text("from", nodeName(shunt.a));
    out.text("to", nodeName(shunt.b));
    out.number("wires_ohm", shunt.wires.base());
  });
}

void writeStep(JsonEmitter& out, const Step& step, const std::vector<Shunt>& shunts) {
  out.object({}, OneLine, [&] {
    out.text("label", step.label);
    out.array("closed", OneLine, [&] {
      for (const std::size_t index : step.closed) out.text({}, shunts[index].name);
    });
    out.number("hold_s", step.hold.base());
  });
}

void writeLimits(JsonEmitter& out, const Limits& limits) {
  out.object("limits", OneLine, [&] {
    out.number("relative", limits.relative);
    out.number("least", limits.least.base());
    out.number("zero_return", limits.zeroReturn);
  });
}

void writeSetup(JsonEmitter& out, std::string_view key, const Setup& setup) {
  out.object(key, Lines, [&] {
    writeBridge(out, setup.bridge);
    writeInstrument(out, setup.instrument);
    out.array("shunts", Lines, [&] {
      for (const Shunt& shunt : setup.shunts) writeShunt(out, shunt);
    });
    out.array("sequence", Lines, [&] {
      for (const Step& step : setup.sequence) writeStep(out, step, setup.shunts);
    });
    writeLimits(out, setup.limits);
  });
}

void writeRecording(JsonEmitter& out, const RecordingReference& recording) {
  out.object("recording", Lines, [&] {
    out.text("path", recording.path);
    out.count("size_bytes", recording.size_bytes);
    out.text("sha256", recording.sha256);
    out.text("column", recording.column);
  });
}

void writeReading(JsonEmitter& out, const std::optional<Measured>& reading) {
  if (!reading) return out.null({});
  out.object({}, OneLine, [&] {
    out.number("mean", reading->mean.base());
    if (reading->uncertainty) out.number("uncertainty", reading->uncertainty->base());
    if (reading->begin) out.number("begin_s", reading->begin->base());
    if (reading->end) out.number("end_s", reading->end->base());
  });
}

void writeCheck(JsonEmitter& out, const Check& check) {
  out.object({}, Lines, [&] {
    out.text("name", check.name);
    out.text("date", check.date);
    out.text("person", check.person);
    out.text("remark", check.remark);
    if (check.recording) writeRecording(out, *check.recording);
    out.array("readings", Lines, [&] {
      for (const auto& reading : check.readings) writeReading(out, reading);
    });
    if (check.closedWith) writeSetup(out, "closed_with", *check.closedWith);
  });
}

void writeChannel(JsonEmitter& out, const Channel& channel) {
  out.object({}, Lines, [&] {
    out.text("name", channel.name);
    out.text("note", channel.note);
    writeSetup(out, "setup", channel.setup);
    out.array("checks", Lines, [&] {
      for (const Check& check : channel.checks) writeCheck(out, check);
    });
  });
}

}  // namespace

Result<std::string> writeDocument(const Document& document) {
  JsonEmitter out;
  out.object({}, Lines, [&] {
    out.text("format", "shuntwright");
    out.count("version", fileVersion);
    out.text("title", document.title);
    out.text("site", document.site);
    out.text("article", document.article);
    out.text("person", document.person);
    out.text("note", document.note);
    out.array("channels", Lines, [&] {
      for (const auto& channel : document.channels) writeChannel(out, *channel);
    });
  });
  Result<std::string> text = out.finished();
  if (!text) return text;
  // Two channels of one name, say, would be saved well and never opened again.
  if (const auto back = readDocument(*text); !back) return back.error();
  return text;
}

}  // namespace core
