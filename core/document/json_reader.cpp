// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_reader.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>
#include <utility>

#include "core/document/json_fields.h"
#include "core/units/text.h"

namespace core {
namespace {

/// The names used so far in one list; each may stand there once.
class Names {
 public:
  void add(const JsonPlace& place, std::string_view kind) {
    if (m_taken.insert(place.text()).second) return;
    place.fail("another " + std::string(kind) + " has the name " + inQuotes(place.text()),
               "Give each " + std::string(kind) + " a name of its own");
  }

 private:
  std::unordered_set<std::string> m_taken;
};

using ShuntIndices = std::unordered_map<std::string_view, std::size_t>;

Node readNode(const JsonPlace& at) {
  const auto node = nodeFromName(at.text());
  if (!node)
    at.fail("there is no place named " + inQuotes(at.text()),
            "Use a terminal such as P+ or S-, or an arm's end such as arm 1 begin");
  return node.value_or(Node::PPlus);
}

Gauge readGauge(const JsonPlace& at) {
  const JsonFields in(at, {"nominal_ohm", "factor", "poisson_ratio"});
  Gauge gauge;
  gauge.nominal = Resistance(in.number("nominal_ohm"));
  gauge.factor = in.number("factor");
  gauge.poissonRatio = in.number("poisson_ratio");
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
    at.fail("the lead has a resistance and a wire",
            "Keep either ohm, or length_m, section_m2 and temperature_degC");
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
    at.fail("a bridge has four arms", "List their resistances in the order of arms 1 to 4");
    return arms;
  }
  for (std::size_t arm = 0; arm < arms.size(); ++arm) arms[arm] = Resistance(at.element(arm).number());
  return arms;
}

Bridge readBridge(const JsonPlace& at) {
  const JsonFields in(at, {"type", "gauge", "rating", "arms_ohm", "leads", "six_wire"});
  Bridge bridge;
  const JsonPlace typeAt = in.at("type");
  if (const auto type = bridgeTypeFromKey(typeAt.text()))
    bridge.type = *type;
  else
    typeAt.fail("there is no bridge type " + inQuotes(typeAt.text()), "Use one such as quarter_three_wire");
  bridge.gauge = readGauge(in.at("gauge"));
  bridge.rating = readRating(in.at("rating"));
  bridge.arms = readArms(in.at("arms_ohm"));
  bridge.sixWire = in.at("six_wire").boolean();
  bridge.leads = readLeads(in.at("leads"), bridge);
  return bridge;
}

Instrument readInstrument(const JsonPlace& at) {
  const JsonFields in(at, {"unit", "gauge_factor", "bridge_factor", "units_per_mV_per_V", "scaled_unit",
                           "excitation_V", "input_resistance_ohm"});
  Instrument instrument;
  const JsonPlace unitAt = in.at("unit");
  if (const auto unit = readingUnitFromKey(unitAt.text()))
    instrument.unit = *unit;
  else
    unitAt.fail("there is no unit " + inQuotes(unitAt.text()), "Use um_per_m, mV_per_V, mV or scaled");
  instrument.gaugeFactor = in.number("gauge_factor");
  instrument.bridgeFactor = in.number("bridge_factor");
  instrument.unitsPerMillivoltPerVolt = in.number("units_per_mV_per_V");
  instrument.scaledUnit = in.text("scaled_unit");
  instrument.excitation = Voltage(in.number("excitation_V"));
  if (in.has("input_resistance_ohm"))
    instrument.inputResistance = Resistance(in.number("input_resistance_ohm"));
  return instrument;
}

Shunt readShunt(const JsonPlace& at, Names& names) {
  const JsonFields in(at, {"name", "ohm", "from", "to", "wires_ohm"});
  names.add(in.at("name"), "shunt");
  return {in.text("name"), Resistance(in.number("ohm")), readNode(in.at("from")), readNode(in.at("to")),
          Resistance(in.number("wires_ohm"))};
}

/// Steps name their shunts; in the value they are indices, rising.
std::vector<std::size_t> readClosed(const JsonPlace& at, const ShuntIndices& shunts) {
  std::vector<std::size_t> closed;
  for (std::size_t k = 0; k < at.size() && !at.failed(); ++k) {
    const JsonPlace nameAt = at.element(k);
    const auto found = shunts.find(nameAt.text());
    if (found == shunts.end())
      nameAt.fail("there is no shunt named " + inQuotes(nameAt.text()),
                  "Use the name of a shunt of this channel");
    else
      closed.push_back(found->second);
  }
  std::sort(closed.begin(), closed.end());
  if (std::adjacent_find(closed.begin(), closed.end()) != closed.end())
    at.fail("a shunt is named twice in one step", "Name it once");
  return closed;
}

Step readStep(const JsonPlace& at, const ShuntIndices& shunts) {
  const JsonFields in(at, {"label", "closed", "hold_s"});
  return {in.text("label"), readClosed(in.at("closed"), shunts), Duration(in.number("hold_s"))};
}

Limits readLimits(const JsonPlace& at) {
  const JsonFields in(at, {"relative", "least", "zero_return"});
  return {in.number("relative"), Reading(in.number("least")), in.number("zero_return")};
}

/// Reads each element of a list until something is wrong.
template <class T, class Read>
std::vector<T> readList(const JsonPlace& at, const Read& read) {
  std::vector<T> list;
  list.reserve(at.size());
  for (std::size_t k = 0; k < at.size() && !at.failed(); ++k) list.push_back(read(at.element(k)));
  return list;
}

Setup readSetup(const JsonPlace& at) {
  const JsonFields in(at, {"bridge", "instrument", "shunts", "sequence", "limits"});
  Setup setup;
  setup.bridge = readBridge(in.at("bridge"));
  setup.instrument = readInstrument(in.at("instrument"));
  Names names;
  setup.shunts = readList<Shunt>(in.at("shunts"), [&](const JsonPlace& p) { return readShunt(p, names); });
  ShuntIndices indices;
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) indices.emplace(setup.shunts[k].name, k);
  setup.sequence =
      readList<Step>(in.at("sequence"), [&](const JsonPlace& p) { return readStep(p, indices); });
  setup.limits = readLimits(in.at("limits"));
  return setup;
}

RecordingReference readRecording(const JsonPlace& at) {
  const JsonFields in(at, {"path", "size_bytes", "sha256", "column"});
  const JsonPlace hashAt = in.at("sha256");
  const std::string& hash = hashAt.text();
  if (hash.size() != 64 || hash.find_first_not_of("0123456789abcdef") != hash.npos)
    hashAt.fail("it is not a SHA-256 sum", "Write 64 digits from 0 to 9 and a to f");
  return {in.text("path"), in.at("size_bytes").count(), hash, in.text("column")};
}

std::optional<Measured> readMeasured(const JsonPlace& at) {
  if (at.isNull()) return std::nullopt;
  const JsonFields in(at, {"mean", "uncertainty", "begin_s", "end_s"});
  Measured measured{Reading(in.number("mean")), {}, {}, {}};
  if (in.has("uncertainty")) measured.uncertainty = Reading(in.number("uncertainty"));
  if (in.has("begin_s")) measured.begin = Duration(in.number("begin_s"));
  if (in.has("end_s")) measured.end = Duration(in.number("end_s"));
  return measured;
}

Check readCheck(const JsonPlace& at, const Setup& channelSetup, Names& names) {
  const JsonFields in(at, {"name", "date", "person", "remark", "recording", "readings", "closed_with"});
  names.add(in.at("name"), "check");
  Check check{in.text("name"), in.text("date"), in.text("person"), in.text("remark"), {}, {}, {}};
  if (in.has("recording")) check.recording = readRecording(in.at("recording"));
  check.readings = readList<std::optional<Measured>>(in.at("readings"), readMeasured);
  if (in.has("closed_with"))
    check.closedWith = std::make_shared<const Setup>(readSetup(in.at("closed_with")));
  const std::size_t steps = (check.closedWith ? *check.closedWith : channelSetup).sequence.size();
  if (check.readings.size() > steps)
    in.at("readings")
        .fail("there are " + std::to_string(check.readings.size()) + " readings for " +
                  std::to_string(steps) + " steps",
              "Keep one reading a step, null where there is none");
  return check;
}

std::shared_ptr<const Channel> readChannel(const JsonPlace& at, Names& names) {
  const JsonFields in(at, {"name", "note", "setup", "checks"});
  names.add(in.at("name"), "channel");
  Channel channel{in.text("name"), in.text("note"), readSetup(in.at("setup")), {}};
  Names checkNames;
  channel.checks = readList<Check>(
      in.at("checks"), [&](const JsonPlace& p) { return readCheck(p, channel.setup, checkNames); });
  return std::make_shared<const Channel>(std::move(channel));
}

/// Whether the tree is a document of a version we know. Looked at before anything else, since other
/// versions have other keys.
void checkVersion(const JsonPlace& root, const JsonValue::Object& members) {
  const auto find = [&](std::string_view key) {
    return std::find_if(members.begin(), members.end(), [&](const auto& m) { return m.key == key; });
  };
  const auto format = find("format");
  const auto* name = format == members.end() ? nullptr : std::get_if<std::string>(&format->value.data);
  if (!name || *name != "shuntwright") {
    root.fail("it is not a Shuntwright document", "Open a file that ends in .bridgecal");
    return;
  }
  const auto version = find("version");
  const auto* number = version == members.end() ? nullptr : std::get_if<std::uint64_t>(&version->value.data);
  if (!number || *number == 0)
    root.fail("the file does not say which version it has", "Open a backup of this document");
  else if (*number > fileVersion)
    root.fail("it was saved by a newer Shuntwright as file version " + std::to_string(*number) +
                  ", and this one reads up to version " + std::to_string(fileVersion),
              "Open it with a Shuntwright that reads file version " + std::to_string(*number));
}

Document readRoot(const JsonPlace& root) {
  const JsonFields in(root, {"format", "version", "title", "site", "article", "person", "note", "channels"});
  Document document{in.text("title"),  in.text("site"), in.text("article"),
                    in.text("person"), in.text("note"), {}};
  Names names;
  document.channels = readList<std::shared_ptr<const Channel>>(
      in.at("channels"), [&](const JsonPlace& p) { return readChannel(p, names); });
  return document;
}

}  // namespace

Result<Document> readDocument(std::string_view text) {
  const auto tree = parseJson(text);
  if (!tree) return tree.error();
  const auto* members = std::get_if<JsonValue::Object>(&tree->data);
  if (!members)
    return Error{"the file", "it is not a Shuntwright document", "Open a file that ends in .bridgecal"};
  FirstError error;
  const JsonPlace root(*tree, error);
  checkVersion(root, *members);
  if (error) return *error;
  Document document = readRoot(root);
  if (error) return *error;
  return document;
}

}  // namespace core
