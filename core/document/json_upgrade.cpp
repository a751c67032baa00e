// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_upgrade.h"

#include <algorithm>
#include <cassert>
#include <utility>

#include "core/units/language.h"

namespace core {
namespace {

/// One lifting of a tree to the next version.
///
/// What it may add is limited, or a small file of many empty set-ups would grow without bound. No proper
/// document comes near: it has at most a million numbers; a set-up of version 1 has 16 of them and grows by
/// 23 values, one of version 2 has 30 and grows by 10, a step has one and grows by one, limits have three and
/// grow by two, and by two more from version 6 on.
struct Lifting {
  std::uint64_t version;  ///< of the file, for messages
  FirstError& error;
  std::size_t added = 0;  ///< values
};
constexpr std::size_t mostAdded = 2'000'000;

/// A value of the tree and the way to it, which is only written out for a message. What is not there, or of
/// another kind, is passed over: the reader says so.
class Branch {
 public:
  Branch(JsonValue& root, Lifting& lifting) : m_value(root), m_lifting(lifting) {}

  /// Calls `lift` with the member when there is one.
  template <class Lift>
  void member(std::string_view key, const Lift& lift) const {
    if (JsonValue* value = find(key)) lift(Branch(*value, *this, key, 0));
  }
  template <class Lift>
  void elements(std::string_view key, const Lift& lift) const {
    member(key, [&](const Branch& list) {
      auto* array = std::get_if<JsonValue::Array>(&list.m_value.data);
      for (std::size_t k = 0; array && k < array->size() && !m_lifting.error; ++k)
        lift(Branch((*array)[k], list, {}, k));
    });
  }
  /// Notes an error when there is a member that this version did not know.
  void refuse(std::string_view key) const;
  /// Adds members that this version did not know; after this the branches of its other members are void.
  void add(const JsonValue::Object& members) const;
  /// Adds the member `key` with the value of the member `from`, likewise; nothing when there is no such one.
  void addLike(std::string_view key, std::string_view from) const;

 private:
  Branch(JsonValue& value, const Branch& parent, std::string_view key, std::size_t index)
      : m_value(value), m_lifting(parent.m_lifting), m_parent(&parent), m_key(key), m_index(index) {}
  JsonValue* find(std::string_view key) const;
  std::string path() const;
  void fail(const JsonValue& at, const std::string& path, std::string what, std::string mend) const;

  JsonValue& m_value;
  Lifting& m_lifting;
  const Branch* m_parent = nullptr;
  std::string_view m_key;  ///< empty for an element of a list
  std::size_t m_index = 0;
};

JsonValue* Branch::find(std::string_view key) const {
  auto* members = std::get_if<JsonValue::Object>(&m_value.data);
  if (!members) return nullptr;
  const auto found =
      std::find_if(members->begin(), members->end(), [&](const auto& m) { return m.key == key; });
  return found == members->end() ? nullptr : &found->value;
}

std::string Branch::path() const {
  if (!m_parent) return {};
  return m_key.empty() ? jsonPath(m_parent->path(), m_index) : jsonPath(m_parent->path(), m_key);
}

void Branch::fail(const JsonValue& at, const std::string& path, std::string what, std::string mend) const {
  if (m_lifting.error) return;
  m_lifting.error =
      Error{say("line {1}", {std::to_string(at.line)}) + ", " + path, std::move(what), std::move(mend)};
}

void Branch::refuse(std::string_view key) const {
  if (const JsonValue* stranger = find(key))
    fail(*stranger, jsonPath(path(), key),
         say("the key {1} is not known in a file of version {2}",
             {inQuotes(key), std::to_string(m_lifting.version)}),
         say("Check its spelling, or remove it"));
}

/// Lets `value` and all in it stand on `line`, and says how many values they are.
std::size_t putOnLine(JsonValue& value, std::size_t line) {
  value.line = line;
  std::size_t values = 1;
  if (auto* array = std::get_if<JsonValue::Array>(&value.data))
    for (JsonValue& element : *array) values += putOnLine(element, line);
  if (auto* members = std::get_if<JsonValue::Object>(&value.data))
    for (JsonMember& member : *members) values += putOnLine(member.value, line);
  return values;
}

void Branch::add(const JsonValue::Object& members) const {
  auto* own = std::get_if<JsonValue::Object>(&m_value.data);
  if (!own) return;
  for (const JsonMember& member : members) {
    refuse(member.key);
    m_lifting.added += putOnLine(own->emplace_back(member).value, m_value.line);
  }
  if (m_lifting.added > mostAdded)
    fail(m_value, path(), say("the file holds too many set-ups or steps"),
         say("Split the document into several"));
}

void Branch::addLike(std::string_view key, std::string_view from) const {
  if (const JsonValue* value = find(from)) add({{std::string(key), *value}});
}

JsonValue::Object membersOf(std::string_view json) {
  auto parsed = parseJson(json);
  assert(parsed);
  return std::get<JsonValue::Object>(std::move(parsed->data));
}

/// What version 2 says and version 1 took for granted.
struct NewIn2 {
  JsonValue::Object gauge = membersOf(
      R"({"factor_coefficient_per_K": 0, "factor_at_degC": 23, "installed_degC": 23,
          "grid": {"heat_sink": "good", "demand": "static_moderate"}})");
  JsonValue::Object bridge = membersOf(R"({"lead_warming_K": 0})");
  JsonValue::Object instrument = membersOf(
      R"({"ratiometric": true, "linearisation": "none",
          "balance": {"kind": "none", "potentiometer_ohm": 10000, "limiting_ohm": 100000, "wiper": 0.5},
          "grounding": "floating"})");
  JsonValue::Object shunt = membersOf(R"({"contact_ohm": 0})");
  JsonValue::Object setup = membersOf(
      R"({"decision": {"rule": "simple", "coverage": 0.9545, "guard_factor": 1, "conformity": 0.95,
                       "greatest_share": 0.3333333333333333},
          "uncertainties": [], "correlation_groups": []})");
};

void liftSetupFrom1(const Branch& setup, const NewIn2& added) {
  setup.member("bridge", [&](const Branch& bridge) {
    bridge.member("gauge", [&](const Branch& gauge) { gauge.add(added.gauge); });
    bridge.refuse("leaks");
    bridge.add(added.bridge);
  });
  setup.member("instrument", [&](const Branch& instrument) {
    instrument.refuse("current_source");
    instrument.add(added.instrument);
  });
  setup.elements("shunts", [&](const Branch& shunt) { shunt.add(added.shunt); });
  setup.add(added.setup);
}

/// What version 3 says and version 2 took for granted.
struct NewIn3 {
  JsonValue::Object step = membersOf(R"({"settle_s": 0})");
  JsonValue::Object setup = membersOf(
      R"({"acquisition": {"filter": {"kind": "none", "order": 2, "cutoff_Hz": 10, "window_s": 0.1},
                          "mains_Hz": 50, "settled_to": 1e-4},
          "pins": []})");
  JsonValue::Object channel = membersOf(R"({"ohm_readings": []})");
  JsonValue::Object document = membersOf(R"({"stock": {"resistors": [], "boxes": [], "series": []}})");
};

void liftSetupFrom2(const Branch& setup, const NewIn3& added) {
  setup.member("instrument", [](const Branch& instrument) { instrument.refuse("range_V_per_V"); });
  setup.elements("shunts", [](const Branch& shunt) {
    shunt.refuse("part");
    shunt.refuse("jumpers");
  });
  setup.elements("sequence", [&](const Branch& step) { step.add(added.step); });
  setup.add(added.setup);
}

/// What version 5 says and version 4 took for granted.
struct NewIn5 {
  JsonValue::Object limits = membersOf(R"({"linearity_from": "least_squares", "merits": {}})");
};

/// Calls `lift` with the set-up of a channel and with those that its closed checks keep.
template <class Lift>
void eachSetup(const Branch& channel, const Lift& lift) {
  channel.member("setup", lift);
  channel.elements("checks", [&](const Branch& check) { check.member("closed_with", lift); });
}

void liftSetupFrom6(const Branch& setup) {
  setup.refuse("identity");
  setup.elements("shunts", [](const Branch& shunt) {
    shunt.member("part", [](const Branch& part) { part.refuse("certificate"); });
  });
  setup.member("limits", [](const Branch& limits) {
    limits.addLike("change", "relative");
    limits.addLike("zero_change", "zero_return");
  });
}

/// The version that a document says it has; it has been looked at before.
std::uint64_t versionOf(const JsonValue& document) {
  const auto* members = std::get_if<JsonValue::Object>(&document.data);
  for (std::size_t k = 0; members && k < members->size(); ++k)
    if (const auto* version = std::get_if<std::uint64_t>(&(*members)[k].value.data);
        version && (*members)[k].key == "version")
      return *version;
  assert(false);
  return 0;
}

}  // namespace

void upgradeFrom1(JsonValue& document, FirstError& error) {
  const NewIn2 added;
  Lifting lifting{versionOf(document), error};
  const Branch root(document, lifting);
  root.elements("channels", [&](const Branch& channel) {
    eachSetup(channel, [&](const Branch& setup) { liftSetupFrom1(setup, added); });
  });
}

void upgradeFrom2(JsonValue& document, FirstError& error) {
  const NewIn3 added;
  Lifting lifting{versionOf(document), error};
  const Branch root(document, lifting);
  root.elements("channels", [&](const Branch& channel) {
    eachSetup(channel, [&](const Branch& setup) { liftSetupFrom2(setup, added); });
    channel.elements("checks", [](const Branch& check) {
      check.elements("readings", [](const Branch& reading) { reading.refuse("note"); });
    });
    channel.add(added.channel);
  });
  root.add(added.document);
}

void upgradeFrom3(JsonValue& document, FirstError& error) {
  Lifting lifting{versionOf(document), error};
  const Branch root(document, lifting);
  root.elements("channels", [](const Branch& channel) {
    channel.refuse("recording_column");
    channel.elements("checks", [](const Branch& check) {
      check.refuse("other_levels");
      check.member("recording", [](const Branch& recording) { recording.refuse("read_as"); });
    });
  });
}

void upgradeFrom4(JsonValue& document, FirstError& error) {
  const NewIn5 added;
  Lifting lifting{versionOf(document), error};
  const Branch root(document, lifting);
  root.elements("channels", [&](const Branch& channel) {
    eachSetup(channel, [&](const Branch& setup) {
      setup.member("limits", [&](const Branch& limits) { limits.add(added.limits); });
    });
  });
}

void upgradeFrom5(JsonValue& document, FirstError& error) {
  Lifting lifting{versionOf(document), error};
  const Branch root(document, lifting);
  root.elements("channels", [](const Branch& channel) {
    eachSetup(channel, [](const Branch& setup) {
      setup.member("bridge", [](const Branch& bridge) { bridge.refuse("hookup"); });
    });
  });
}

void upgradeFrom6(JsonValue& document, FirstError& error) {
  Lifting lifting{versionOf(document), error};
  const Branch root(document, lifting);
  for (const std::string_view key : {"sign_off", "history", "fingerprint"}) root.refuse(key);
  root.member("stock", [](const Branch& stock) {
    stock.elements("resistors", [](const Branch& resistor) {
      resistor.member("certificate", [](const Branch& certificate) { certificate.refuse("number"); });
    });
  });
  root.elements("channels", [](const Branch& channel) {
    channel.refuse("group");
    channel.elements("checks", [](const Branch& check) {
      check.refuse("ambient");
      check.refuse("remarks");
    });
    eachSetup(channel, liftSetupFrom6);
  });
}

}  // namespace core
