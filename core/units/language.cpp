// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/language.h"

#include <algorithm>
#include <cassert>
#include <utility>
#include <vector>

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
                                    const std::vector<std::string_view>& arguments, std::size_t& end) {
  std::size_t number = 0;
  for (end = at + 1; end < pattern.size() && pattern[end] >= '0' && pattern[end] <= '9'; ++end)
    number = std::min<std::size_t>(1000, 10 * number + std::size_t(pattern[end] - '0'));
  if (end >= pattern.size() || pattern[end] != '}' || number == 0 || number > arguments.size())
    return nullptr;
  ++end;
  return &arguments[number - 1];
}

bool isDigit(char c) { return c >= '0' && c <= '9'; }

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
  const std::string translated = words.translate ? words.translate(pattern) : std::string(pattern);
  const std::vector<std::string_view> given(arguments);
  std::string text;
  for (std::size_t at = 0; at < translated.size();) {
    std::size_t end = at + 1;
    const std::string_view* argument =
        translated[at] == '{' ? placeholder(translated, at, given, end) : nullptr;
    if (argument)
      text += *argument;
    else
      text += translated[at], end = at + 1;
    at = end;
  }
  return text;
}

std::string shown(std::string canonical) {
  const char mark = language().decimalMark;
  if (mark == '.') return canonical;
  for (std::size_t k = 1; k + 1 < canonical.size(); ++k)
    if (canonical[k] == '.' && isDigit(canonical[k - 1]) && isDigit(canonical[k + 1])) canonical[k] = mark;
  return canonical;
}

std::string shown(Date day) {
  const std::string iso = dateText(day);
  if (!language().dayFirst || iso.size() != 10) return iso;
  return iso.substr(8, 2) + "." + iso.substr(5, 2) + "." + iso.substr(0, 4);
}

}  // namespace core
