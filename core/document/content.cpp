// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/content.h"

#include <algorithm>
#include <initializer_list>
#include <string_view>

#include "core/document/canonical_json.h"
#include "core/document/sha256.h"

namespace core {
namespace {

JsonValue* find(JsonValue& object, std::string_view key) {
  auto* members = std::get_if<JsonValue::Object>(&object.data);
  if (!members) return nullptr;
  const auto found =
      std::find_if(members->begin(), members->end(), [&](const auto& m) { return m.key == key; });
  return found == members->end() ? nullptr : &found->value;
}

void remove(JsonValue& object, std::initializer_list<std::string_view> keys) {
  if (auto* members = std::get_if<JsonValue::Object>(&object.data))
    std::erase_if(*members,
                  [&](const auto& m) { return std::find(keys.begin(), keys.end(), m.key) != keys.end(); });
}

/// Calls `change` with each element of the list `key`, when there is one.
template <class Change>
void eachElement(JsonValue& object, std::string_view key, const Change& change) {
  JsonValue* list = find(object, key);
  auto* array = list ? std::get_if<JsonValue::Array>(&list->data) : nullptr;
  for (std::size_t k = 0; array && k < array->size(); ++k) change((*array)[k]);
}

std::string fingerprintOfText(const JsonValue& value) {
  std::string text;
  appendCanonical(text, value);
  return sha256Hex(text);
}

}  // namespace

Result<std::string> fingerprintOf(const Channel& channel) {
  const auto content = contentOf(channel);
  if (!content) return content.error();
  return sha256Hex(*content);
}

Result<std::string> fingerprintOf(const Document& document) {
  std::vector<std::string> channels;
  for (const auto& channel : document.channels) {
    auto fingerprint = fingerprintOf(*channel);
    if (!fingerprint) return fingerprint;
    channels.push_back(*std::move(fingerprint));
  }
  return fingerprintOf(document, channels);
}

Result<std::string> fingerprintOf(const Document& document, const std::vector<std::string>& channels) {
  const auto content = contentOf(document, channels);
  if (!content) return content.error();
  return sha256Hex(*content);
}

std::string fingerprintOfTree(JsonValue document) {
  remove(document, {"version", "sign_off", "history", "fingerprint"});
  eachElement(document, "channels", [](JsonValue& channel) {
    eachElement(channel, "checks", [](JsonValue& check) { remove(check, {"remarks"}); });
    channel.data = fingerprintOfText(channel);
  });
  return fingerprintOfText(document);
}

}  // namespace core
