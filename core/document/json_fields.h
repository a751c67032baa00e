// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_set>
#include <vector>

#include "core/document/json_text.h"
#include "core/units/language.h"
#include "core/units/result.h"
#include "core/units/text.h"

namespace core {

/// The first thing found wrong; what was read after it is of no use.
using FirstError = std::optional<Error>;

/// A value in the tree and the way to it, which is only written out for a message.
///
/// Asking for what is not there notes an error and returns an empty value, so that a reader of many
/// fields looks once, at its end, whether all went well. A place must not outlive its parent.
class JsonPlace {
 public:
  JsonPlace(const JsonValue& root, FirstError& error) : m_value(&root), m_error(&error) {}

  bool isNull() const { return std::holds_alternative<std::monostate>(m_value->data); }
  bool failed() const { return m_error->has_value(); }
  void fail(std::string what, std::string mend) const;

  double number() const;
  std::uint64_t count() const;
  /// A count that is at most `most`.
  std::uint64_t count(std::uint64_t most) const;
  bool boolean() const;
  const std::string& text() const;
  /// Elements of an array; none when it is not one.
  std::size_t size() const;
  JsonPlace element(std::size_t index) const;

 private:
  friend class JsonFields;
  JsonPlace(const JsonValue& value, const JsonPlace& parent, std::string_view key, std::size_t index)
      : m_value(&value), m_error(parent.m_error), m_parent(&parent), m_key(key), m_index(index) {}
  std::string path() const;

  const JsonValue* m_value;
  FirstError* m_error;
  const JsonPlace* m_parent = nullptr;
  std::string_view m_key;  ///< empty for an element of an array
  std::size_t m_index = 0;
};

/// The members of an object. Making it refuses anything but an object with no other keys than `known`.
class JsonFields {
 public:
  JsonFields(const JsonPlace& place, std::initializer_list<std::string_view> known);

  /// The member; a missing one is noted as an error and is null.
  JsonPlace at(std::string_view key) const;
  bool has(std::string_view key) const { return find(key) != nullptr; }

  double number(std::string_view key) const { return at(key).number(); }
  const std::string& text(std::string_view key) const { return at(key).text(); }

 private:
  const JsonValue* find(std::string_view key) const;

  const JsonPlace& m_place;
  const JsonValue::Object* m_members;
};

/// The names used so far in one list; each may stand there once.
class JsonNames {
 public:
  /// Notes an error at `place` when its text is taken. `kind` says of what: "shunt".
  void add(const JsonPlace& place, std::string_view kind);

 private:
  std::unordered_set<std::string> m_taken;
};

/// Reads each element of a list until something is wrong.
template <class T, class Read>
std::vector<T> readList(const JsonPlace& at, const Read& read) {
  std::vector<T> list;
  list.reserve(at.size());
  for (std::size_t k = 0; k < at.size() && !at.failed(); ++k) list.push_back(read(at.element(k)));
  return list;
}

/// The same of a list with at most `most` elements. `kind` says of what: "pins".
template <class T, class Read>
std::vector<T> readShortList(const JsonPlace& at, std::size_t most, std::string_view kind, const Read& read) {
  if (at.size() > most)
    at.fail(say("there are {1} {2}, more than {3}",
                {std::to_string(at.size()), std::string(kind), std::to_string(most)}),
            say("Keep those that are used"));
  return readList<T>(at, read);
}

/// The value of an enumeration that a word stands for. `kind` says of what: "unit"; `keyOf` gives the
/// words of all `count` values for the message.
template <class Enum, class FromKey, class KeyOf>
Enum readWord(const JsonPlace& at, std::string_view kind, const FromKey& fromKey, const KeyOf& keyOf,
              std::size_t count) {
  if (const auto found = fromKey(at.text())) return *found;
  std::vector<std::string> words;
  for (std::size_t k = 0; k < count; ++k) words.emplace_back(keyOf(static_cast<Enum>(k)));
  at.fail(say("there is no {1} {2}", {std::string(kind), inQuotes(at.text())}),
          say("Use {1}", {sayAnyOf(words)}));
  return Enum{};
}

}  // namespace core
