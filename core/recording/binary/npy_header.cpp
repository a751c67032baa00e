// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/npy_header.h"

#include <algorithm>
#include <charconv>
#include <optional>

#include "core/units/language.h"

namespace core {
namespace {

enum class LiteralKind : std::uint8_t { Text, Word, Sequence, Dictionary };

/// A value in Python's notation. A dictionary holds key, value, key, value.
struct Literal {
  LiteralKind kind = LiteralKind::Word;
  std::string text;
  std::vector<Literal> items;
};

/// Reads the few forms that a heading has; everything else is no value.
class LiteralReader {
 public:
  explicit LiteralReader(std::string_view text) : m_text(text) {}

  std::optional<Literal> value(int depth = 0) {
    constexpr int greatestDepth = 8;
    skipBlanks();
    if (m_at == m_text.size() || depth > greatestDepth) return std::nullopt;
    switch (m_text[m_at]) {
      case '\'':
      case '"':
        return quoted();
      case '(':
        return sequence(LiteralKind::Sequence, ')', depth);
      case '[':
        return sequence(LiteralKind::Sequence, ']', depth);
      case '{':
        return sequence(LiteralKind::Dictionary, '}', depth);
      default:
        return word();
    }
  }

 private:
  void skipBlanks() {
    while (m_at < m_text.size() && std::string_view(" \t\r\n").find(m_text[m_at]) != std::string_view::npos)
      ++m_at;
  }
  bool take(char c) {
    skipBlanks();
    if (m_at == m_text.size() || m_text[m_at] != c) return false;
    ++m_at;
    return true;
  }
  std::optional<Literal> quoted() {
    const char mark = m_text[m_at++];
    Literal literal{LiteralKind::Text, {}, {}};
    while (m_at < m_text.size() && m_text[m_at] != mark) {
      if (m_text[m_at] == '\\' && m_at + 1 < m_text.size()) ++m_at;
      literal.text += m_text[m_at++];
    }
    if (m_at == m_text.size()) return std::nullopt;
    ++m_at;
    return literal;
  }
  std::optional<Literal> word() {
    const auto end = std::min(m_text.find_first_of(" ,:()[]{}\t\r\n'\"", m_at), m_text.size());
    if (end == m_at) return std::nullopt;
    Literal literal{LiteralKind::Word, std::string(m_text.substr(m_at, end - m_at)), {}};
    m_at = end;
    // Python 2 wrote 10L for a long number.
    if (literal.text.back() == 'L') literal.text.pop_back();
    return literal;
  }
  std::optional<Literal> sequence(LiteralKind kind, char end, int depth) {
    ++m_at;
    Literal literal{kind, {}, {}};
    while (!take(end)) {
      auto item = value(depth + 1);
      if (!item) return std::nullopt;
      literal.items.push_back(std::move(*item));
      if (kind == LiteralKind::Dictionary) {
        if (!take(':')) return std::nullopt;
        item = value(depth + 1);
        if (!item) return std::nullopt;
        literal.items.push_back(std::move(*item));
      }
      if (take(',')) continue;
      if (!take(end)) return std::nullopt;
      break;
    }
    return literal;
  }

  std::string_view m_text;
  std::size_t m_at = 0;
};

const Literal* entry(const Literal& dictionary, std::string_view key) {
  for (std::size_t k = 0; k + 1 < dictionary.items.size(); k += 2)
    if (dictionary.items[k].text == key) return &dictionary.items[k + 1];
  return nullptr;
}

std::optional<std::uint64_t> count(const Literal& literal) {
  std::uint64_t number = 0;
  const std::string& text = literal.text;
  const auto end = std::from_chars(text.data(), text.data() + text.size(), number);
  if (text.empty() || end.ec != std::errc() || end.ptr != text.data() + text.size()) return std::nullopt;
  return number;
}

/// ('name', '<f8'), ('name', '<f8', (3,)), or (('title', 'name'), '<f8'); a nested record is no field.
std::optional<NpyField> fieldIn(const Literal& item) {
  if (item.kind != LiteralKind::Sequence || item.items.size() < 2 || item.items.size() > 3)
    return std::nullopt;
  const Literal& name = item.items[0];
  const Literal& type = item.items[1];
  if (type.kind != LiteralKind::Text) return std::nullopt;
  NpyField field{name.items.empty() ? name.text : name.items.back().text, type.text, 1};
  if (item.items.size() == 2) return field;
  const Literal& shape = item.items[2];
  const auto copies = shape.items.size() == 1 ? count(shape.items[0]) : count(shape);
  if (!copies || *copies == 0) return std::nullopt;
  field.copies = *copies;
  return field;
}

std::optional<std::vector<NpyField>> fieldsIn(const Literal& type) {
  if (type.kind == LiteralKind::Text) return std::vector<NpyField>{{"", type.text, 1}};
  if (type.kind != LiteralKind::Sequence) return std::nullopt;
  std::vector<NpyField> fields;
  for (const Literal& item : type.items) {
    auto field = fieldIn(item);
    if (!field) return std::nullopt;
    fields.push_back(std::move(*field));
  }
  return fields;
}

}  // namespace

Result<NpyHeader> npyHeader(std::string_view dictionary) {
  const auto all = LiteralReader(dictionary).value();
  const Literal* type = all ? entry(*all, "descr") : nullptr;
  const Literal* order = all ? entry(*all, "fortran_order") : nullptr;
  const Literal* shape = all ? entry(*all, "shape") : nullptr;
  if (!type || !order || !shape || shape->kind != LiteralKind::Sequence)
    return Error{"", say("the heading of the NumPy array cannot be read"), say("Save the array again")};
  auto fields = fieldsIn(*type);
  if (!fields || fields->empty())
    return Error{"", say("the elements of the NumPy array are no plain numbers"),
                 say("Save an array of numbers")};
  NpyHeader header{std::move(*fields), order->text == "True", {}};
  for (const Literal& item : shape->items) {
    const auto extent = count(item);
    if (!extent)
      return Error{"", say("the shape of the NumPy array cannot be read"), say("Save the array again")};
    header.shape.push_back(*extent);
  }
  return header;
}

}  // namespace core
