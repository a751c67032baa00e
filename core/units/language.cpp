// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/language.h"

#include <algorithm>
#include <cassert>
#include <mutex>
#include <set>
#include <utility>

#include "core/units/text.h"

namespace core {
namespace {

std::shared_ptr<const Language>& programLanguage() {
  static std::shared_ptr<const Language> language = english();
  return language;
}

/// Null outside of any scope.
std::shared_ptr<const Language>& scopeLanguage() {
  thread_local std::shared_ptr<const Language> language;
  return language;
}

/// The argument that the braces at `at` ask for, and where they end; none for braces that are mere text.
const std::string_view* placeholder(std::string_view pattern, std::size_t at,
                                    std::initializer_list<std::string_view> arguments, std::size_t& end) {
  std::size_t number = 0;
  for (end = at + 1; end < pattern.size() && pattern[end] >= '0' && pattern[end] <= '9'; ++end)
    number = std::min<std::size_t>(1000, 10 * number + std::size_t(pattern[end] - '0'));
  if (end >= pattern.size() || pattern[end] != '}' || number == 0 || number > arguments.size())
    return nullptr;
  ++end;
  return arguments.begin() + (number - 1);
}

/// `said` with its placeholders replaced.
std::string filledIn(std::string_view said, std::initializer_list<std::string_view> arguments) {
  std::string text;
  for (std::size_t at = 0; at < said.size();) {
    const std::size_t brace = std::min(said.find('{', at), said.size());
    text += said.substr(at, brace - at);
    if (brace == said.size()) break;
    std::size_t end = brace + 1;
    const std::string_view* argument = placeholder(said, brace, arguments, end);
    text += argument ? *argument : said.substr(brace, 1);
    at = argument ? end : brace + 1;
  }
  return text;
}

/// "A, B" of "A, B and C": the commas of the language.
std::string allButTheLast(const std::vector<std::string>& items) {
  std::string text;
  for (std::size_t k = 0; k + 1 < items.size(); ++k) text = k ? say("{1}, {2}", {text, items[k]}) : items[k];
  return text;
}

}  // namespace

std::shared_ptr<const Language> english() {
  static const auto plain = std::make_shared<const Language>();
  return plain;
}

const Language& language() { return scopeLanguage() ? *scopeLanguage() : *programLanguage(); }

void setLanguage(std::shared_ptr<const Language> language) {
  assert(language);
  programLanguage() = std::move(language);
}

std::shared_ptr<const Language> currentLanguage() {
  return scopeLanguage() ? scopeLanguage() : programLanguage();
}

LanguageScope::LanguageScope(std::shared_ptr<const Language> language)
    : m_before(std::exchange(scopeLanguage(), std::move(language))) {}

LanguageScope::~LanguageScope() { scopeLanguage() = std::move(m_before); }

std::string say(std::string_view pattern, std::initializer_list<std::string_view> arguments) {
  const Language& words = language();
  return words.translate ? filledIn(words.translate(pattern), arguments) : filledIn(pattern, arguments);
}

std::string sayCount(std::size_t count, std::string_view one, std::string_view many,
                     std::initializer_list<std::string_view> arguments) {
  const Language& words = language();
  std::string said = words.translateCount ? words.translateCount(many, count) : std::string();
  if (said.empty()) said = count == 1 ? one : many;
  const std::string number = std::to_string(count);
  for (std::size_t at = said.find("{n}"); at != std::string::npos; at = said.find("{n}", at + number.size()))
    said.replace(at, 3, number);
  return filledIn(said, arguments);
}

std::string sayAll(const std::vector<std::string>& items) {
  if (items.empty()) return {};
  const std::string before = allButTheLast(items);
  return before.empty() ? items.back() : say("{1} and {2}", {before, items.back()});
}

std::string sayAnyOf(const std::vector<std::string>& items) {
  if (items.empty()) return {};
  const std::string before = allButTheLast(items);
  return before.empty() ? items.back() : say("{1} or {2}", {before, items.back()});
}

std::string sayClauses(const std::vector<std::string>& clauses) {
  std::string text;
  for (const std::string& clause : clauses) text = text.empty() ? clause : say("{1}; {2}", {text, clause});
  return text;
}

std::string sayInTurn(const std::vector<std::string>& sentences) {
  std::string text;
  for (const std::string& sentence : sentences)
    if (!sentence.empty()) text += (text.empty() ? "" : " ") + sentence;
  return text;
}

std::string_view sayName(std::string_view english) {
  const Language& words = language();
  if (!words.translate) return english;
  static std::mutex access;
  static std::set<std::string, std::less<>> names;  // its elements never move
  const std::string translated = words.translate(english);
  const std::lock_guard lock(access);
  return *names.insert(translated).first;
}

std::string shown(std::string canonical) {
  const char mark = language().decimalMark;
  if (mark == '.') return canonical;
  for (std::size_t k = 1; k + 1 < canonical.size(); ++k)
    if (canonical[k] == '.' && isDigit(canonical[k - 1]) && isDigit(canonical[k + 1])) canonical[k] = mark;
  return canonical;
}

std::string shown(Date day) {
  std::string iso = dateText(day);
  if (iso.size() != 10) return iso;  // no day of a calendar
  std::string text = language().dayPattern;
  const std::pair<std::string_view, std::string> parts[] = {
      {"yyyy", iso.substr(0, 4)}, {"MM", iso.substr(5, 2)}, {"dd", iso.substr(8, 2)}};
  for (const auto& [part, digits] : parts)
    if (const std::size_t at = text.find(part); at != std::string::npos)
      text.replace(at, part.size(), digits);
  return text;
}

}  // namespace core
