// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/tree_changes.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

#include "core/document/canonical_json.h"
#include "core/units/notation.h"
#include "core/units/text.h"

namespace core {
namespace {

using Array = JsonValue::Array;
using Object = JsonValue::Object;
using Words = std::pair<std::string_view, std::string_view>;  // of a key: what to say

/// Keys that do not say it themselves; an empty word is left out of the way. All others: without unit, with
/// spaces for underlines.
constexpr std::array words = {
    Words{"setup", ""},
    Words{"bridge", ""},
    Words{"sequence", "step"},
    Words{"arms_ohm", "arm"},
    Words{"leads", "lead"},
    Words{"leaks", "leak of arm"},
    Words{"hookup", "connection"},
    Words{"identity", "instrument's"},
    Words{"pins", "pin"},
    Words{"shunts", "shunt"},
    Words{"limits", "limit"},
    Words{"merits", ""},
    Words{"uncertainties", "uncertainty of"},
    Words{"correlation_groups", "correlation group"},
    Words{"checks", "check"},
    Words{"readings", "reading of step"},
    Words{"other_levels", "other level"},
    Words{"ohm_readings", "ohmmeter reading"},
    Words{"closed_with", "set-up that it was judged by"},
    Words{"stock", "stock"},
    Words{"resistors", "resistor"},
    Words{"boxes", "decade box"},
    Words{"series", "series"},
    Words{"decades", "dial"},
    Words{"factor", "gauge factor"},
    Words{"nominal_ohm", "nominal resistance"},
    Words{"ohm", "resistance"},
    Words{"from", "from"},
    Words{"mean", ""},
    Words{"part", "part"},
    Words{"due", "due date"},
    Words{"sha256", "SHA-256"},
    Words{"channels", "channel"},
    Words{"change", "change between checks"},
    Words{"zero_change", "change of zero between checks"},
    Words{"relative", "relative"},
    Words{"gauge", ""},
};

/// Ends of keys that are units.
constexpr std::array units = {
    Words{"_V_per_V", " V/V"}, Words{"_mV_per_V", ""}, Words{"_per_K", " 1/K"}, Words{"_ohm", " Ω"},
    Words{"_degC", " °C"},     Words{"_bytes", " B"},  Words{"_m2", " m²"},     Words{"_Hz", " Hz"},
    Words{"_W", " W"},         Words{"_s", " s"},      Words{"_V", " V"},       Words{"_K", " K"},
    Words{"_A", " A"},         Words{"_m", " m"},      Words{"ohm", " Ω"},
};

const Words* unitOf(std::string_view key) {
  const auto found =
      std::find_if(units.begin(), units.end(), [&](const Words& unit) { return key.ends_with(unit.first); });
  return found == units.end() ? nullptr : &*found;
}

std::string wordsOf(std::string_view key) {
  const auto known = std::find_if(words.begin(), words.end(), [&](const Words& w) { return w.first == key; });
  if (known != words.end()) return std::string(known->second);
  if (const Words* unit = unitOf(key)) key.remove_suffix(unit->first.size());
  std::string text(key);
  std::replace(text.begin(), text.end(), '_', ' ');
  return text;
}

const JsonValue* find(const Object& members, std::string_view key) {
  const auto found =
      std::find_if(members.begin(), members.end(), [&](const auto& m) { return m.key == key; });
  return found == members.end() ? nullptr : &found->value;
}

bool same(const JsonValue& a, const JsonValue& b) {
  std::string x, y;
  appendCanonical(x, a);
  appendCanonical(y, b);
  return x == y;
}

bool isContainer(const JsonValue& value) {
  if (const auto* array = std::get_if<Array>(&value.data))
    return std::any_of(array->begin(), array->end(), isContainer) || array->size() > 8;
  return std::holds_alternative<Object>(value.data);
}

/// A value as a person would write it; lists of few are written out.
std::string valueText(const JsonValue& value, std::string_view unit) {
  constexpr int digits = 7;
  if (const auto* text = std::get_if<std::string>(&value.data)) return inQuotes(*text);
  if (const auto* yes = std::get_if<bool>(&value.data)) return *yes ? "yes" : "no";
  if (const auto* real = std::get_if<double>(&value.data))
    return formatNumber(*real, digits) + std::string(unit);
  if (const auto* whole = std::get_if<std::uint64_t>(&value.data))
    return formatNumber(static_cast<double>(*whole), digits) + std::string(unit);
  const auto* array = std::get_if<Array>(&value.data);
  if (!array || array->empty()) return "nothing";
  std::string text;
  for (const JsonValue& element : *array) text += (text.empty() ? "" : ", ") + valueText(element, unit);
  return text;
}

/// The text of the first of `keys` that is there and not empty.
std::string firstText(const Object& members, std::initializer_list<std::string_view> keys) {
  for (const std::string_view key : keys)
    if (const JsonValue* value = find(members, key))
      if (const auto* text = std::get_if<std::string>(&value->data); text && !text->empty()) return *text;
  return {};
}

std::string textOf(const Object& members, std::string_view key) { return firstText(members, {key}); }

/// By what an element of the list `key` is told from the others; empty: by its place.
std::string nameOf(std::string_view key, const JsonValue& element) {
  const auto* members = std::get_if<Object>(&element.data);
  if (!members) return {};
  if (key == "uncertainties") {
    std::string of = textOf(*members, "of"), at = textOf(*members, "at");
    std::replace(of.begin(), of.end(), '_', ' ');
    return at.empty() ? of : of + " " + at;
  }
  if (key == "pins") {
    const std::string connector = textOf(*members, "connector"), pin = textOf(*members, "pin");
    return connector.empty() ? pin : connector + "-" + pin;
  }
  if (key == "ohm_readings") {
    const std::string shunt = textOf(*members, "shunt");
    const JsonValue* jumpers = find(*members, "jumpers");
    return "from " + textOf(*members, "from") + " to " + textOf(*members, "to") +
           (shunt.empty() ? ""
                          : ", " + shunt + " with " + (jumpers ? valueText(*jumpers, "") : "0") + " jumpers");
  }
  if (key == "checks" || key == "shunts" || key == "correlation_groups" || key == "channels")
    return textOf(*members, "name");
  return key == "resistors" || key == "boxes" ? textOf(*members, "id") : std::string();
}

class Walk {
 public:
  std::vector<std::string> lines;

  void compare(const std::string& way, std::string_view key, const JsonValue& before,
               const JsonValue& after) {
    if (same(before, after)) return;
    const auto *a = std::get_if<Object>(&before.data), *b = std::get_if<Object>(&after.data);
    if (a && b) return compareMembers(way, *a, *b);
    const auto *x = std::get_if<Array>(&before.data), *y = std::get_if<Array>(&after.data);
    if (x && y && (isContainer(before) || isContainer(after) || isNumbered(key)))
      return compareLists(way, key, *x, *y);
    const Words* unit = unitOf(key);
    const std::string_view unitText = unit ? unit->second : std::string_view();
    if (!isContainer(before) && !isContainer(after))
      lines.push_back(way + " from " + valueText(before, unitText) + " to " + valueText(after, unitText));
    else if (std::holds_alternative<std::monostate>(before.data))
      lines.push_back(way + " entered" + meanOf(after));
    else if (std::holds_alternative<std::monostate>(after.data))
      lines.push_back(way + " removed");
    else
      lines.push_back(way + " changed");
  }

 private:
  static bool isNumbered(std::string_view key) { return key == "arms_ohm"; }

  static std::string join(const std::string& way, const std::string& word) {
    return way.empty() || word.empty() ? way + word : way + " " + word;
  }

  /// What a new reading shows.
  static std::string meanOf(const JsonValue& value) {
    const auto* members = std::get_if<Object>(&value.data);
    const JsonValue* mean = members ? find(*members, "mean") : nullptr;
    return mean ? ": " + valueText(*mean, "") : std::string();
  }

  void compareMembers(const std::string& way, const Object& before, const Object& after) {
    for (const auto& [key, value] : before) {
      const std::string here = join(way, wordsOf(key));
      if (const JsonValue* other = find(after, key))
        compare(here, key, value, *other);
      else
        lines.push_back(key == "closed_with" ? join(way, "opened again")
                                             : here + " removed" + was(key, value));
    }
    for (const auto& [key, value] : after)
      if (!find(before, key))
        lines.push_back(key == "closed_with" ? join(way, "closed")
                                             : join(way, wordsOf(key)) + added(key, value));
  }

  static std::string was(std::string_view key, const JsonValue& value) {
    const Words* unit = unitOf(key);
    return isContainer(value) ? std::string() : ", was " + valueText(value, unit ? unit->second : "");
  }
  static std::string added(std::string_view key, const JsonValue& value) {
    const Words* unit = unitOf(key);
    return isContainer(value) ? " entered" : ": " + valueText(value, unit ? unit->second : "");
  }

  void compareLists(const std::string& way, std::string_view key, const Array& before, const Array& after) {
    const auto named = [&](const JsonValue& element) { return !nameOf(key, element).empty(); };
    if (std::all_of(before.begin(), before.end(), named) && std::all_of(after.begin(), after.end(), named))
      compareByName(way, key, before, after);
    else
      compareByPlace(way, key, before, after);
  }

  void compareByName(const std::string& way, std::string_view key, const Array& before, const Array& after) {
    const auto findNamed = [&](const Array& list, const std::string& name) {
      return std::find_if(list.begin(), list.end(),
                          [&](const JsonValue& e) { return nameOf(key, e) == name; });
    };
    const std::size_t linesBefore = lines.size();
    for (const JsonValue& element : before) {
      const std::string name = nameOf(key, element), here = join(way, name);
      if (const auto other = findNamed(after, name); other != after.end())
        compare(key == "checks" ? here + ":" : here, {}, element, *other);
      else
        lines.push_back(here + " removed");
    }
    for (const JsonValue& element : after)
      if (const std::string name = nameOf(key, element); findNamed(before, name) == before.end())
        lines.push_back(join(way, name) + " added");
    if (lines.size() == linesBefore) lines.push_back("order of " + way + "s changed");
  }

  /// What both have alike at begin and end is passed over, so that one step put in is one line.
  void compareByPlace(const std::string& way, std::string_view key, const Array& before, const Array& after) {
    std::size_t head = 0, tail = 0;
    const std::size_t shorter = std::min(before.size(), after.size());
    while (head < shorter && same(before[head], after[head])) ++head;
    while (tail < shorter - head && same(before[before.size() - 1 - tail], after[after.size() - 1 - tail]))
      ++tail;
    const std::size_t was = before.size() - tail, is = after.size() - tail;
    for (std::size_t k = head; k < std::min(was, is); ++k)
      compare(join(way, std::to_string(k + 1)), key, before[k], after[k]);
    for (std::size_t k = std::min(was, is); k < is; ++k)
      lines.push_back(join(way, std::to_string(k + 1)) + " added" + meanOf(after[k]));
    for (std::size_t k = std::min(was, is); k < was; ++k)
      lines.push_back(join(way, std::to_string(k + 1)) + " removed");
  }
};

}  // namespace

std::vector<std::string> treeChanges(const JsonValue& before, const JsonValue& after) {
  Walk walk;
  walk.compare({}, {}, before, after);
  return std::move(walk.lines);
}

}  // namespace core
