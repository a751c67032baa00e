// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/whatif/notation.h"

#include <algorithm>
#include <array>

#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

using enum AlterationKind;

/// What stands behind a kind's words.
enum class Place : std::uint8_t { None, Lead, TwoLeads, Arm, Grounding };

struct Form {
  AlterationKind kind;
  std::string_view words;
  Place place = Place::None;
  std::string_view value = {};  ///< what its number is called; empty without one
};

constexpr std::array<Form, alterationKindCount> forms = {{
    {LeadBroken, "broken", Place::Lead},
    {LeadBypassed, "bypass", Place::Lead},
    {LeadsTouching, "touch", Place::TwoLeads},
    {LeadsExchanged, "exchange", Place::TwoLeads},
    {LeadContact, "contact", Place::Lead, "OHM"},
    {LeadResistance, "leads", Place::None, "OHM"},
    {LeadLength, "length", Place::None, "TIMES"},
    {LeadWarming, "leads warmer", Place::None, "KELVIN"},
    {Moisture, "leak", Place::Arm, "OHM"},
    {MoistureToStructure, "leak to structure", Place::Arm, "OHM"},
    {StructureConnected, "structure", Place::Grounding},
    {ArmValue, "value", Place::Arm, "OHM"},
    {GaugeWarming, "gauges warmer", Place::None, "KELVIN"},
    {SenseAtInstrument, "no sense"},
    {SignalReversed, "reverse signal"},
    {ExcitationReversed, "reverse excitation"},
    {GaugesReversed, "reverse gauges"},
}};

std::string placeForm(Place place) {
  switch (place) {
    case Place::Lead:
      return " LEAD";
    case Place::TwoLeads:
      return " LEAD,LEAD";
    case Place::Arm:
      return " arm N";
    case Place::Grounding:
      return " P-|P+|floating";
    case Place::None:
      break;
  }
  return "";
}

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

bool sameWord(std::string_view a, std::string_view b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](char x, char y) { return lower(x) == lower(y); });
}

/// Words between blanks and commas.
std::vector<std::string> wordsOf(std::string_view text) {
  std::vector<std::string> words(1);
  for (const char c : text) {
    const bool between = c == ' ' || c == '\t' || c == ',';
    if (!between)
      words.back() += c;
    else if (!words.back().empty())
      words.emplace_back();
  }
  if (words.back().empty()) words.pop_back();
  return words;
}

bool startsWith(const std::vector<std::string>& words, const std::vector<std::string>& start) {
  return words.size() >= start.size() && std::equal(start.begin(), start.end(), words.begin(), sameWord);
}

/// The form whose words `words` starts with; the longest of several ("leads warmer", not "leads").
const Form* formOf(const std::vector<std::string>& words) {
  const Form* found = nullptr;
  for (const Form& form : forms)
    if (startsWith(words, wordsOf(form.words)) && (!found || form.words.size() > found->words.size()))
      found = &form;
  return found;
}

std::string formText(const Form& form) {
  std::string text = std::string(form.words) + placeForm(form.place);
  return form.value.empty() ? text : text + " = " + std::string(form.value);
}

std::optional<std::size_t> leadFrom(std::string_view word) {
  for (std::size_t role = 0; role < leadRoleCount; ++role)
    if (sameWord(word, leadName(static_cast<LeadRole>(role)))) return role;
  return std::nullopt;
}

std::optional<std::size_t> groundingFrom(std::string_view word) {
  for (std::size_t k = 0; k < groundingCount; ++k)
    if (sameWord(word, groundingKey(static_cast<Grounding>(k)))) return k;
  return std::nullopt;
}

/// "arm 1" or "1".
std::optional<std::size_t> armFrom(std::span<const std::string> words) {
  if (words.size() == 2 && sameWord(words[0], "arm")) words = words.subspan(1);
  if (words.size() != 1 || words[0].size() != 1 || words[0][0] < '1' || words[0][0] > '4')
    return std::nullopt;
  return static_cast<std::size_t>(words[0][0] - '1');
}

/// Puts the place into `alteration`; false when `words` say none.
bool readPlace(Place place, std::span<const std::string> words, Alteration& alteration) {
  std::optional<std::size_t> first, second(0);
  if (place == Place::None) return words.empty();
  if (place == Place::Arm) {
    first = armFrom(words);
  } else if (words.size() == (place == Place::TwoLeads ? 2U : 1U)) {
    first = place == Place::Grounding ? groundingFrom(words[0]) : leadFrom(words[0]);
    if (place == Place::TwoLeads) second = leadFrom(words[1]);
  }
  if (!first || !second) return false;
  alteration.index = *first;
  alteration.other = *second;
  return true;
}

/// The value that `possibleAlterations` starts from at the same place, or at any place of the kind.
std::optional<double> usualValue(const Setup& setup, const Alteration& wanted) {
  std::optional<double> value;
  for (const Alteration& one : possibleAlterations(setup)) {
    if (one.kind != wanted.kind) continue;
    if (one.index == wanted.index) return one.value;
    value = one.value;
  }
  return value;
}

Result<void> readValue(const Setup& setup, const Form& form, std::string_view text,
                       std::optional<std::string_view> value, Alteration& alteration) {
  if (form.value.empty()) {
    if (!value) return {};
    return Error{inQuotes(text), say("it takes no value"), say("Write \"{1}\"", {formText(form)})};
  }
  if (!value) {
    const auto usual = usualValue(setup, alteration);
    if (!usual) return Error{inQuotes(text), say("it needs a value"), say("Write \"{1}\"", {formText(form)})};
    alteration.value = *usual;
    return {};
  }
  const auto number =
      parseQuantity(*value, *alterationValueFamily(form.kind), alterationValueUnit(form.kind));
  if (!number) return Error{inQuotes(text), number.error().what, number.error().mend};
  alteration.value = *number;
  return {};
}

}  // namespace

std::string notationOf(const Alteration& alteration) {
  const auto lead = [](std::size_t role) {
    return std::string(role < leadRoleCount ? leadName(static_cast<LeadRole>(role)) : "?");
  };
  const Form& form = forms[static_cast<std::size_t>(alteration.kind)];
  std::string text(form.words);
  if (form.place == Place::Lead) text += " " + lead(alteration.index);
  if (form.place == Place::TwoLeads) text += " " + lead(alteration.index) + "," + lead(alteration.other);
  if (form.place == Place::Arm) text += " arm " + std::to_string(alteration.index + 1);
  if (form.place == Place::Grounding)
    text += " " + std::string(groundingKey(static_cast<Grounding>(alteration.index)));
  if (form.value.empty()) return text;
  return text + " = " +
         formatQuantity(alteration.value, *alterationValueFamily(form.kind), alterationValueUnit(form.kind));
}

Result<Alteration> alterationFrom(const Setup& setup, std::string_view text) {
  const std::size_t equals = text.find('=');
  const std::vector<std::string> words = wordsOf(text.substr(0, equals));
  const Form* form = formOf(words);
  if (!form) {
    std::string all;
    for (const std::string& one : notationForms()) all += (all.empty() ? "\"" : ", \"") + one + "\"";
    return Error{inQuotes(text), say("that says nothing that can be tried out"),
                 say("Write one of {1}", {all})};
  }
  Alteration alteration{form->kind, 0, 0, 0};
  const std::span<const std::string> behind = std::span(words).subspan(wordsOf(form->words).size());
  if (!readPlace(form->place, behind, alteration)) {
    const bool lead = form->place == Place::Lead || form->place == Place::TwoLeads;
    return Error{inQuotes(text), say("it does not say where"),
                 say(lead ? sayLater("Write \"{1}\" with P+, P-, S+, S-, sense+, sense- or return")
                          : sayLater("Write \"{1}\""),
                     {formText(*form)})};
  }
  std::optional<std::string_view> value;
  if (equals != std::string_view::npos) value = text.substr(equals + 1);
  if (auto ok = readValue(setup, *form, text, value, alteration); !ok) return ok.error();
  return alteration;
}

std::vector<std::string> notationForms() {
  std::vector<std::string> list;
  for (const Form& form : forms) list.push_back(formText(form));
  return list;
}

}  // namespace core
