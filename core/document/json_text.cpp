// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_text.h"

#include <algorithm>
#include <iterator>
#include <nlohmann/json.hpp>
#include <optional>
#include <utility>

#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

constexpr std::size_t megabyte = std::size_t{1024} * 1024;
constexpr std::size_t longestText = 64 * megabyte;
constexpr std::size_t longestString = megabyte;
constexpr std::size_t deepest = 64;
constexpr std::size_t mostMembers = 64;
constexpr std::size_t mostNumbers = 1'000'000;
constexpr std::size_t mostValues = 4'000'000;

constexpr std::string_view restore = sayLater("Open the original or a backup of this document");
constexpr std::string_view split = sayLater("Split the document into several");
constexpr std::string_view otherFile = sayLater("Open a Shuntwright document");
constexpr std::string_view repair =
    sayLater("Undo the last change made to it in a text editor, or open a backup");

/// How far the parser has come.
struct Progress {
  std::size_t taken = 0;
  std::size_t line = 1;     ///< of the last character taken
  bool afterBreak = false;  ///< the last character taken ended its line

  void take(char c) {
    ++taken;
    if (afterBreak) ++line;
    afterBreak = c == '\n';
  }
};

/// Feeds the parser and keeps the line; the library does not tell its handlers where they are.
///
/// A handler is called right after its token. For a number the parser has also taken the character
/// behind it, which is why a line break counts only once something after it has been taken.
class CountingIterator {
 public:
  using iterator_category = std::input_iterator_tag;
  using value_type = char;
  using difference_type = std::ptrdiff_t;
  using pointer = const char*;
  using reference = const char&;

  CountingIterator(const char* at, Progress* progress) : m_at(at), m_progress(progress) {}

  reference operator*() const { return *m_at; }
  CountingIterator& operator++() {
    m_progress->take(*m_at++);
    return *this;
  }
  CountingIterator operator++(int) {
    CountingIterator before = *this;
    ++*this;
    return before;
  }
  friend bool operator==(const CountingIterator& a, const CountingIterator& b) { return a.m_at == b.m_at; }

 private:
  const char* m_at;
  Progress* m_progress;
};

/// Builds the tree from the library's calls; each returns false to stop.
class TreeBuilder {
 public:
  using number_integer_t = nlohmann::json::number_integer_t;
  using number_unsigned_t = nlohmann::json::number_unsigned_t;
  using number_float_t = nlohmann::json::number_float_t;
  using string_t = nlohmann::json::string_t;
  using binary_t = nlohmann::json::binary_t;

  TreeBuilder(const Progress& progress, std::size_t size) : m_progress(progress), m_size(size) {}

  bool null() { return put(std::monostate{}) != nullptr; }
  bool boolean(bool value) { return put(value) != nullptr; }
  bool number_integer(number_integer_t value) { return addNumber(static_cast<double>(value)); }
  bool number_unsigned(number_unsigned_t value) { return addNumber(value); }
  bool number_float(number_float_t value, const string_t& text);
  bool string(string_t& value);
  bool binary(binary_t&) { return false; }  // not in text
  bool start_object(std::size_t) { return open(JsonValue::Object{}); }
  bool start_array(std::size_t) { return open(JsonValue::Array{}); }
  bool end_object() { return close(); }
  bool end_array() { return close(); }
  bool key(string_t& name);
  bool parse_error(std::size_t position, const std::string& token, const nlohmann::json::exception& error);

  /// Why a call returned false.
  const Error& error() const { return m_error; }
  JsonValue&& takeRoot() { return std::move(m_root); }

 private:
  bool fail(std::string what, std::string mend);
  std::string path() const;
  JsonValue* place();
  template <class T>
  JsonValue* put(T value);
  template <class T>
  bool addNumber(T value);
  template <class T>
  bool open(T container);
  bool close();

  const Progress& m_progress;
  std::size_t m_size;
  JsonValue m_root;
  std::vector<JsonValue*> m_open;  ///< containers not yet closed; stable, since only the innermost grows
  std::size_t m_values = 0;
  std::size_t m_numbers = 0;
  Error m_error;
};

std::string TreeBuilder::path() const {
  std::string text;
  for (const JsonValue* container : m_open) {
    if (const auto* array = std::get_if<JsonValue::Array>(&container->data)) {
      if (!array->empty()) text = jsonPath(text, array->size() - 1);
    } else if (const auto& object = std::get<JsonValue::Object>(container->data); !object.empty()) {
      text = jsonPath(text, object.back().key);
    }
  }
  return text;
}

bool TreeBuilder::fail(std::string what, std::string mend) {
  const std::string way = path();
  m_error = {say("line {1}", {std::to_string(m_progress.line)}) + (way.empty() ? "" : ", " + way),
             std::move(what), std::move(mend)};
  return false;
}

/// Where the next value belongs.
JsonValue* TreeBuilder::place() {
  if (m_open.empty()) return &m_root;
  if (auto* array = std::get_if<JsonValue::Array>(&m_open.back()->data)) return &array->emplace_back();
  return &std::get<JsonValue::Object>(m_open.back()->data).back().value;
}

/// The new value, or none when there are too many.
template <class T>
JsonValue* TreeBuilder::put(T value) {
  if (++m_values > mostValues) {
    fail(say("the file holds more than {1} values", {std::to_string(mostValues)}), say(split));
    return nullptr;
  }
  JsonValue* target = place();
  target->line = m_progress.line;
  target->data = std::move(value);
  return target;
}

template <class T>
bool TreeBuilder::addNumber(T value) {
  if (++m_numbers > mostNumbers)
    return fail(say("the file holds more than {1} numbers", {std::to_string(mostNumbers)}), say(split));
  return put(value) != nullptr;
}

template <class T>
bool TreeBuilder::open(T container) {
  if (m_open.size() >= deepest)
    return fail(say("the file is nested deeper than {1} levels", {std::to_string(deepest)}), say(otherFile));
  m_open.push_back(put(std::move(container)));
  return m_open.back() != nullptr;
}

bool TreeBuilder::close() {
  m_open.pop_back();
  return true;
}

bool TreeBuilder::number_float(number_float_t value, const string_t& text) {
  const bool writtenZero = text.substr(0, text.find_first_of("eE")).find_first_of("123456789") == text.npos;
  if (value == 0 && !writtenZero)
    return fail(say("the number {1} is too small", {inQuotes(text)}),
                say("Write 0 or a number above 1e-300"));
  return addNumber(value);
}

bool TreeBuilder::string(string_t& value) {
  if (value.size() > longestString)
    return fail(say("a text is longer than 1 MB"), say("Shorten it in a text editor"));
  return put(std::move(value)) != nullptr;
}

bool TreeBuilder::key(string_t& name) {
  auto& members = std::get<JsonValue::Object>(m_open.back()->data);
  const auto same = [&](const auto& member) { return member.key == name; };
  if (std::any_of(members.begin(), members.end(), same))
    return fail(say("the key {1} stands here twice", {inQuotes(name)}),
                say("Remove one of the two in a text editor"));
  if (members.size() >= mostMembers) return fail(say("too many keys in one place"), say(otherFile));
  members.push_back({std::move(name), {}});
  return true;
}

bool TreeBuilder::parse_error(std::size_t position, const std::string&,
                              const nlohmann::json::exception& error) {
  constexpr int outOfRange = 406;  // the library's number of this error
  if (error.id == outOfRange) return fail(say("a number is too large"), say("Write a number below 1e300"));
  // The library counts the end of the text as one more character.
  if (position > m_size) return fail(say("the file ends too early, the rest of it is missing"), say(restore));
  if (m_open.empty() && m_values > 0)
    return fail(say("there is text after the end of the document"), say(repair));
  return fail(say("the text does not follow the rules of JSON"), say(repair));
}

std::size_t lineOf(std::string_view text, std::size_t at) {
  return 1 + static_cast<std::size_t>(
                 std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n'));
}

/// What can be said before any of the text is understood.
Result<void> checkRaw(std::string_view text) {
  if (text.size() > longestText)
    return Error{say("the file"), say("it is larger than 64 MB"),
                 say("Open a Shuntwright document; recordings are imported")};
  constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
  const std::size_t begin = text.starts_with(byteOrderMark) ? byteOrderMark.size() : 0;
  const std::size_t first = text.find_first_not_of(" \t\r\n", begin);
  if (first == text.npos) return Error{say("the file"), say("it is empty"), say(restore)};
  if (text[first] != '{')
    return Error{say("the file"), say("it is not a Shuntwright document"),
                 say("Open a file that ends in .bridgecal")};
  // The library takes one for the end of the text, whatever stands behind it.
  if (const std::size_t zero = text.find('\0'); zero != text.npos)
    return Error{say("line {1}", {std::to_string(lineOf(text, zero))}),
                 say("a zero byte stands here, as no text has"), say(restore)};
  const auto bad = firstInvalidUtf8(text);
  if (!bad) return {};
  const std::string where = say("line {1}", {std::to_string(lineOf(text, *bad))});
  // The first bytes of a character at the very end are what a cut leaves of it.
  if (text.size() - *bad < 4 && static_cast<unsigned char>(text[*bad]) >= 0xC2)
    return Error{where, say("the file ends too early, the rest of it is missing"), say(restore)};
  return Error{where, say("the text is not UTF-8"),
               say("Save it as UTF-8 in a text editor, or open a backup")};
}

}  // namespace

Result<JsonValue> parseJson(std::string_view text) {
  if (const auto raw = checkRaw(text); !raw) return raw.error();
  Progress progress;
  TreeBuilder builder(progress, text.size());
  const CountingIterator begin(text.data(), &progress), end(text.data() + text.size(), &progress);
  if (!nlohmann::json::sax_parse(begin, end, &builder)) return builder.error();
  return builder.takeRoot();
}

std::string jsonPath(std::string_view parent, std::string_view key) {
  constexpr std::size_t longest = 60;
  const std::string name = key.size() > longest ? inQuotes(key, longest) : std::string(key);
  return parent.empty() ? name : std::string(parent) + "." + name;
}

std::string jsonPath(std::string_view parent, std::size_t index) {
  return std::string(parent) + "[" + std::to_string(index) + "]";
}

}  // namespace core
