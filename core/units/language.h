// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <initializer_list>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/units/date.h"

// Sentences and numbers for people. Files, keys and what other programs read are never touched by this.

namespace core {

/// In which language sentences are put together, and how numbers and days are written in them.
struct Language {
  std::string code = "en";  ///< ISO 639
  char decimalMark = '.';
  std::string dayPattern = "yyyy-MM-dd";  ///< those three numbers in the language's order, with its marks
  /// The sentence pattern for an English one; the same text when there is none. Empty: English.
  std::function<std::string(std::string_view english)> translate = {};
  /// The same for a sentence about `count` things, in the plural form that the language has for so many; the
  /// sentence is known by its English plural. Empty text when there is none. Empty: English.
  std::function<std::string(std::string_view english, std::size_t count)> translateCount = {};
};

/// English, decimal point, ISO dates.
std::shared_ptr<const Language> english();

/// The language of this thread's innermost scope; else that of the program.
const Language& language();
/// The language of the program: to be set before other threads start. Never null.
void setLanguage(std::shared_ptr<const Language> language);
/// What `language()` refers to, to be carried to another thread in a LanguageScope.
std::shared_ptr<const Language> currentLanguage();

/// Another language for this thread as long as it lives: a report in the language of its reader.
class LanguageScope {
 public:
  explicit LanguageScope(std::shared_ptr<const Language> language);
  ~LanguageScope();
  LanguageScope(const LanguageScope&) = delete;
  LanguageScope& operator=(const LanguageScope&) = delete;

 private:
  std::shared_ptr<const Language> m_before;
};

/// `pattern` in the present language with {1}, {2}, ... replaced by `arguments`; what else is in braces
/// stays. Whole sentences, never parts of them: other languages have another order of words. Arguments are
/// put in as they are; numbers among them go through `shown` first. The pattern must be a literal, so that
/// resources/translations finds it.
std::string say(std::string_view pattern, std::initializer_list<std::string_view> arguments = {});
/// A sentence about `count` things, which {n} stands for: `one` for a single one, else `many`; another
/// language has its own number of forms and its own rule for them. Both must be literals.
std::string sayCount(std::size_t count, std::string_view one, std::string_view many,
                     std::initializer_list<std::string_view> arguments = {});
/// "A", "A and B", "A, B and C" in the present language; the items are put in as they are.
std::string sayAll(const std::vector<std::string>& items);
/// "A", "A or B", "A, B or C" in the present language.
std::string sayAnyOf(const std::vector<std::string>& items);
/// Clauses of one sentence, as the language sets them apart: "A; B; C".
std::string sayClauses(const std::vector<std::string>& clauses);
/// Whole sentences one behind the other; empty ones are left out.
std::string sayInTurn(const std::vector<std::string>& sentences);
/// Marks a literal for translation where it is not yet put into words: names in tables, given to `say` later.
constexpr std::string_view sayLater(std::string_view pattern) { return pattern; }
/// A name in the present language. The text stays for as long as the program runs.
std::string_view sayName(std::string_view english);

/// A name in a table: English as written there, in the present language where it is read.
class TableName {
 public:
  constexpr TableName(std::string_view english = {}) : m_english(english) {}
  operator std::string_view() const { return sayName(m_english); }
  constexpr std::string_view english() const { return m_english; }

 private:
  std::string_view m_english;
};

/// A number as core writes it ("0.0591", "-1000 µm/m", "1.2 ± 0.3") with the language's decimal mark.
std::string shown(std::string canonical);
/// A day as the language writes it.
std::string shown(Date day);

}  // namespace core
