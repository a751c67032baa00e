// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_wiring.h"

#include <algorithm>
#include <array>
#include <set>
#include <string>
#include <tuple>
#include <utility>

#include "core/document/file_limits.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

using enum JsonEmitter::Layout;

void writePin(JsonEmitter& out, const Pin& pin) {
  out.object({}, OneLine, [&] {
    out.text("connector", pin.name.connector);
    out.text("pin", pin.name.pin);
    if (const auto* node = std::get_if<Node>(&pin.use)) out.text("node", nodeName(*node));
    if (const auto* end = std::get_if<ResistorEnd>(&pin.use)) {
      out.text("resistor", end->resistor);
      out.count("end", end->end);
    }
  });
}

/// The number of a resistor's end, 1 or 2.
std::uint8_t readEnd(const JsonPlace& at) {
  const std::uint64_t end = at.count();
  if (end == 1 || end == 2) return static_cast<std::uint8_t>(end);
  at.fail(say("a resistor has two ends"), "Write 1 or 2");
  return 1;
}

Pin readPin(const JsonPlace& at) {
  const JsonFields in(at, {"connector", "pin", "node", "resistor", "end"});
  Pin pin{{in.text("connector"), in.text("pin")}, {}};
  if (in.has("node")) {
    if (in.has("resistor") || in.has("end"))
      at.fail(say("the pin leads to a place and to a resistor"),
              say("Keep either node, or resistor and end"));
    pin.use = readNode(in.at("node"));
  } else if (in.has("resistor") || in.has("end")) {
    pin.use = ResistorEnd{in.text("resistor"), readEnd(in.at("end"))};
  }
  return pin;
}

void writePinName(JsonEmitter& out, std::string_view key, const PinName& name) {
  out.object(key, OneLine, [&] {
    out.text("connector", name.connector);
    out.text("pin", name.pin);
  });
}

PinName readPinName(const JsonPlace& at) {
  const JsonFields in(at, {"connector", "pin"});
  return {in.text("connector"), in.text("pin")};
}

Jumper readJumper(const JsonPlace& at) {
  const JsonFields in(at, {"from", "to"});
  return {readPinName(in.at("from")), readPinName(in.at("to"))};
}

constexpr std::array<std::pair<std::string_view, std::uint8_t>, 2> resistorTails{
    {{" end 1", std::uint8_t{1}}, {" end 2", std::uint8_t{2}}}};

/// "P+", "S-104 end 1", in whatever language the window is.
std::string ohmPointKey(const OhmPoint& point) {
  if (const auto* node = std::get_if<Node>(&point)) return std::string(nodeName(*node));
  const auto& [resistor, end] = std::get<ResistorEnd>(point);
  return resistor + " end " + std::to_string(end);
}

/// What ohmPointKey wrote. A place of the bridge never ends in a number, so the two cannot be confused.
OhmPoint readOhmPoint(const JsonPlace& at) {
  const std::string& name = at.text();
  if (const auto node = nodeFromName(name)) return *node;
  for (const auto& [tail, end] : resistorTails)
    if (name.ends_with(tail)) return ResistorEnd{name.substr(0, name.size() - tail.size()), end};
  at.fail(
      say("there is no point named {1}", {inQuotes(name)}),
      say("Use a terminal such as P+, an arm's end such as arm 1 begin, or a resistor's such as R1 end 1"));
  return Node::PPlus;
}

OhmReading readOhmReading(const JsonPlace& at) {
  const JsonFields in(at, {"shunt", "jumpers", "from", "to", "ohm"});
  OhmReading reading{{in.text("shunt"), static_cast<std::size_t>(in.at("jumpers").count(mostJumpers))},
                     readOhmPoint(in.at("from")),
                     readOhmPoint(in.at("to")),
                     {}};
  if (const JsonPlace ohm = in.at("ohm"); !ohm.isNull()) reading.ohm = Resistance(ohm.number());
  return reading;
}

}  // namespace

void writePins(JsonEmitter& out, std::string_view key, const Wiring& wiring) {
  out.array(key, Lines, [&] {
    for (const Pin& pin : wiring.pins) writePin(out, pin);
  });
}

Wiring readPins(const JsonPlace& at) { return {readShortList<Pin>(at, mostPins, "pins", readPin)}; }

void writeJumpers(JsonEmitter& out, std::string_view key, const std::vector<Jumper>& jumpers) {
  out.array(key, OneLine, [&] {
    for (const Jumper& jumper : jumpers)
      out.object({}, OneLine, [&] {
        writePinName(out, "from", jumper.from);
        writePinName(out, "to", jumper.to);
      });
  });
}

std::vector<Jumper> readJumpers(const JsonPlace& at) {
  return readShortList<Jumper>(at, mostJumpers, "jumpers", readJumper);
}

void writeOhmReadings(JsonEmitter& out, std::string_view key, const std::vector<OhmReading>& readings) {
  out.array(key, Lines, [&] {
    for (const OhmReading& reading : readings)
      out.object({}, OneLine, [&] {
        out.text("shunt", reading.state.shunt);
        out.count("jumpers", reading.state.jumpers);
        out.text("from", ohmPointKey(reading.from));
        out.text("to", ohmPointKey(reading.to));
        if (reading.ohm)
          out.number("ohm", reading.ohm->base());
        else
          out.null("ohm");
      });
  });
}

std::vector<OhmReading> readOhmReadings(const JsonPlace& at) {
  std::set<std::tuple<std::string, std::size_t, OhmPoint, OhmPoint>> taken;
  return readShortList<OhmReading>(at, mostOhmReadings, say("ohmmeter readings"), [&](const JsonPlace& p) {
    OhmReading reading = readOhmReading(p);
    const auto& [first, second] = std::minmax(reading.from, reading.to);
    if (!taken.emplace(reading.state.shunt, reading.state.jumpers, first, second).second)
      p.fail(say("there are two readings between these points in this state"), say("Keep one of the two"));
    return reading;
  });
}

Node readNode(const JsonPlace& at) {
  const auto node = nodeFromName(at.text());
  if (!node)
    at.fail(say("there is no place named {1}", {inQuotes(at.text())}),
            say("Use a terminal such as P+ or S-, or an arm's end such as arm 1 begin"));
  return node.value_or(Node::PPlus);
}

}  // namespace core
