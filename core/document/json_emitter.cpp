// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_emitter.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <span>
#include <utility>

#include "core/document/canonical_json.h"
#include "core/document/json_text.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {

void JsonEmitter::text(std::string_view key, std::string_view value) {
  begin(key);
  if (firstInvalidUtf8(value)) return fail(key, say("the text is not valid UTF-8"), say("Type it again"));
  quote(value);
}

void JsonEmitter::number(std::string_view key, double value) {
  begin(key);
  if (!std::isfinite(value)) return fail(key, say("the value is not a finite number"), say("Enter a number"));
  if (m_canonical) return appendCanonical(m_text, value);
  std::array<char, 32> buffer;
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value + 0.0);
  m_text.append(buffer.data(), end.ptr);
}

void JsonEmitter::count(std::string_view key, std::uint64_t value) {
  begin(key);
  if (m_canonical) return appendCanonical(m_text, static_cast<double>(value));
  m_text += std::to_string(value);
}

void JsonEmitter::boolean(std::string_view key, bool value) {
  begin(key);
  m_text += value ? "true" : "false";
}

void JsonEmitter::null(std::string_view key) {
  begin(key);
  m_text += "null";
}

Result<std::string> JsonEmitter::finished() const {
  if (m_error) return *m_error;
  return m_canonical ? m_text : m_text + "\n";
}

/// Comma, place and key of the next value.
void JsonEmitter::begin(std::string_view key) {
  if (m_scopes.empty()) return;
  Scope& scope = m_scopes.back();
  if (scope.count++ > 0) m_text += scope.oneLine && !m_canonical ? ", " : ",";
  if (m_canonical)
    m_members.push_back({key, m_text.size()});
  else if (!scope.oneLine)
    breakLine();
  if (key.empty()) return;
  quote(key);
  m_text += m_canonical ? ":" : ": ";
}

void JsonEmitter::open(std::string_view key, Layout layout, char opening, char closing) {
  begin(key);
  const bool oneLine = layout == Layout::OneLine || (!m_scopes.empty() && m_scopes.back().oneLine);
  m_scopes.push_back(
      {key, m_scopes.empty() ? 0 : m_scopes.back().count - 1, oneLine, closing, 0, m_members.size()});
  m_text += opening;
}

void JsonEmitter::close() {
  const Scope scope = m_scopes.back();
  m_scopes.pop_back();
  if (m_canonical)
    sortMembers(scope);
  else if (!scope.oneLine && scope.count > 0)
    breakLine();
  m_text += scope.closing;
}

/// Puts the members written last into the order of their keys; those of an array stay as they are.
void JsonEmitter::sortMembers(const Scope& scope) {
  const std::span members = std::span(m_members).subspan(scope.firstMember);
  const auto before = [](const Member& a, const Member& b) { return sortsBefore(a.key, b.key); };
  if (scope.closing == '}' && !std::is_sorted(members.begin(), members.end(), before)) {
    const std::size_t begin = members.front().begin;
    const std::string written = m_text.substr(begin);
    std::vector<std::pair<std::string_view, std::string_view>> sorted;  // key and text
    for (std::size_t k = 0; k < members.size(); ++k) {
      const std::size_t at = members[k].begin - begin;
      // What follows is behind a comma.
      const std::size_t end = k + 1 < members.size() ? members[k + 1].begin - begin - 1 : written.size();
      sorted.emplace_back(members[k].key, std::string_view(written).substr(at, end - at));
    }
    std::sort(sorted.begin(), sorted.end(),
              [](const auto& a, const auto& b) { return sortsBefore(a.first, b.first); });
    m_text.resize(begin);
    for (const auto& [key, text] : sorted) m_text.append(m_text.size() > begin ? "," : "").append(text);
  }
  m_members.resize(scope.firstMember);
}

void JsonEmitter::breakLine() {
  m_text += '\n';
  m_text.append(2 * m_scopes.size(), ' ');
}

void JsonEmitter::quote(std::string_view value) {
  if (m_canonical) return appendCanonical(m_text, value);
  constexpr std::string_view hexadecimal = "0123456789abcdef";
  m_text += '"';
  for (const char c : value) {
    const auto code = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\')
      m_text.append({'\\', c});
    else if (c == '\n')
      m_text += "\\n";
    else if (c == '\t')
      m_text += "\\t";
    else if (code < 0x20 || code == 0x7F)
      m_text.append("\\u00").append({hexadecimal[code >> 4], hexadecimal[code & 15]});
    else
      m_text += c;
  }
  m_text += '"';
}

void JsonEmitter::fail(std::string_view key, std::string what, std::string mend) {
  if (m_error) return;
  std::string path;
  for (std::size_t k = 1; k < m_scopes.size(); ++k)
    path = m_scopes[k].key.empty() ? jsonPath(path, m_scopes[k].index) : jsonPath(path, m_scopes[k].key);
  path = key.empty() ? jsonPath(path, m_scopes.back().count - 1) : jsonPath(path, key);
  m_error = Error{std::move(path), std::move(what), std::move(mend)};
}

}  // namespace core
