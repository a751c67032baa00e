// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_fields.h"

#include <algorithm>
#include <array>

#include "core/units/language.h"

namespace core {
namespace {

const JsonValue nothing;
const JsonValue::Object noMembers;
const std::string noText;

std::string_view kindOf(const JsonValue& value) {
  constexpr std::array<std::string_view, 7> kinds = {
      sayLater("nothing (null)"), sayLater("a yes or no"), sayLater("a number"),       sayLater("a number"),
      sayLater("a text"),         sayLater("a list"),      sayLater("a group of keys")};
  return sayName(kinds[value.data.index()]);
}

void failKind(const JsonPlace& place, const JsonValue& value, std::string_view wanted) {
  if (place.failed()) return;
  place.fail(say("it is {1} where {2} belongs", {std::string(kindOf(value)), std::string(wanted)}),
             say("Put {1} there in a text editor", {std::string(wanted)}));
}

}  // namespace

std::string JsonPlace::path() const {
  if (!m_parent) return {};
  return m_key.empty() ? jsonPath(m_parent->path(), m_index) : jsonPath(m_parent->path(), m_key);
}

void JsonPlace::fail(std::string what, std::string mend) const {
  if (failed()) return;
  const std::string way = path();
  const std::string line = say("line {1}", {std::to_string(m_value->line)});
  *m_error = Error{way.empty() ? line : line + ", " + way, std::move(what), std::move(mend)};
}

double JsonPlace::number() const {
  if (const auto* real = std::get_if<double>(&m_value->data)) return *real;
  if (const auto* whole = std::get_if<std::uint64_t>(&m_value->data)) return static_cast<double>(*whole);
  failKind(*this, *m_value, say("a number"));
  return 0;
}

std::uint64_t JsonPlace::count() const {
  if (const auto* whole = std::get_if<std::uint64_t>(&m_value->data)) return *whole;
  if (std::holds_alternative<double>(m_value->data))
    fail(say("it is not a whole number from 0 to 2^64 - 1"),
         say("Write it without sign, point and exponent"));
  failKind(*this, *m_value, say("a whole number"));
  return 0;
}

std::uint64_t JsonPlace::count(std::uint64_t most) const {
  const std::uint64_t value = count();
  if (value <= most) return value;
  fail(say("it is more than {1}", {std::to_string(most)}), say("Write a smaller whole number"));
  return 0;
}

bool JsonPlace::boolean() const {
  if (const auto* value = std::get_if<bool>(&m_value->data)) return *value;
  failKind(*this, *m_value, say("true or false"));
  return false;
}

const std::string& JsonPlace::text() const {
  if (const auto* value = std::get_if<std::string>(&m_value->data)) return *value;
  failKind(*this, *m_value, say("a text"));
  return noText;
}

std::size_t JsonPlace::size() const {
  if (const auto* array = std::get_if<JsonValue::Array>(&m_value->data)) return array->size();
  failKind(*this, *m_value, say("a list"));
  return 0;
}

JsonPlace JsonPlace::element(std::size_t index) const {
  const auto* array = std::get_if<JsonValue::Array>(&m_value->data);
  return {array && index < array->size() ? (*array)[index] : nothing, *this, {}, index};
}

JsonFields::JsonFields(const JsonPlace& place, std::initializer_list<std::string_view> known)
    : m_place(place), m_members(std::get_if<JsonValue::Object>(&place.m_value->data)) {
  if (!m_members) {
    failKind(place, *place.m_value, say("a group of keys"));
    m_members = &noMembers;
  }
  for (const auto& [key, value] : *m_members) {
    if (std::find(known.begin(), known.end(), key) != known.end()) continue;
    JsonPlace(value, place, key, 0)
        .fail(say("the key {1} is not known here", {inQuotes(key)}), say("Check its spelling, or remove it"));
  }
}

const JsonValue* JsonFields::find(std::string_view key) const {
  const auto found = std::find_if(m_members->begin(), m_members->end(),
                                  [&](const auto& member) { return member.key == key; });
  return found == m_members->end() ? nullptr : &found->value;
}

JsonPlace JsonFields::at(std::string_view key) const {
  const JsonValue* value = find(key);
  if (!value)
    m_place.fail(say("the key {1} is missing", {inQuotes(key)}),
                 say("Add it in a text editor, or open a backup"));
  return {value ? *value : nothing, m_place, key, 0};
}

void JsonNames::add(const JsonPlace& place, std::string_view kind) {
  if (m_taken.insert(place.text()).second) return;
  place.fail(say("another {1} has the name {2}", {std::string(kind), inQuotes(place.text())}),
             say("Give each {1} a name of its own", {std::string(kind)}));
}

}  // namespace core
