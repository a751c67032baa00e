// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/text_table.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <map>
#include <tuple>

namespace core {
namespace {

bool isBlank(char c) { return c == ' ' || c == '\t'; }

bool isDigit(char c) { return c >= '0' && c <= '9'; }

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && isBlank(text.front())) text.remove_prefix(1);
  while (!text.empty() && isBlank(text.back())) text.remove_suffix(1);
  return text;
}

std::string_view unquoted(std::string_view cell) {
  cell = trimmed(cell);
  if (cell.size() < 2 || cell.front() != '"' || cell.back() != '"') return cell;
  return trimmed(cell.substr(1, cell.size() - 2));
}

/// Where the cell that begins at `begin` ends; a separator inside quotes does not end it.
std::size_t endOfCell(std::string_view line, std::size_t begin, char separator) {
  bool quoted = false;
  for (std::size_t i = begin; i < line.size(); ++i) {
    if (line[i] == '"') quoted = !quoted;
    if (!quoted && (separator == ' ' ? isBlank(line[i]) : line[i] == separator)) return i;
  }
  return line.size();
}

/// `cell` with a decimal point. A decimal comma needs a digit on its right, or "1," in "1, 2" would count.
bool withPoint(std::string_view& cell, std::array<char, 64>& buffer) {
  const std::size_t comma = cell.find(',');
  if (cell.find('.') != std::string_view::npos || cell.size() > buffer.size()) return false;
  if (comma == std::string_view::npos) return true;
  if (comma + 1 >= cell.size() || !isDigit(cell[comma + 1])) return false;
  std::copy(cell.begin(), cell.end(), buffer.begin());
  buffer[comma] = '.';
  cell = {buffer.data(), cell.size()};
  return true;
}

/// Length of the UTF-8 sequence at `i`, 0 when the bytes there are none.
std::size_t sequenceLength(std::string_view text, std::size_t i) {
  const auto byte = [&](std::size_t k) { return static_cast<unsigned char>(text[k]); };
  const unsigned char lead = byte(i);
  const std::size_t length = lead < 0x80   ? 1
                             : lead < 0xC2 ? 0
                             : lead < 0xE0 ? 2
                             : lead < 0xF0 ? 3
                             : lead < 0xF5 ? 4
                                           : 0;
  if (length == 0 || i + length > text.size()) return 0;
  for (std::size_t k = 1; k < length; ++k) {
    if ((byte(i + k) & 0xC0) != 0x80) return 0;
  }
  if (lead == 0xE0 && byte(i + 1) < 0xA0) return 0;
  if (lead == 0xED && byte(i + 1) > 0x9F) return 0;
  if (lead == 0xF0 && byte(i + 1) < 0x90) return 0;
  if (lead == 0xF4 && byte(i + 1) > 0x8F) return 0;
  return length;
}

}  // namespace

std::optional<std::string_view> LineReader::next() {
  if (m_position >= m_text.size()) return std::nullopt;
  const std::size_t end = std::min(m_text.find_first_of("\r\n", m_position), m_text.size());
  const std::string_view line = m_text.substr(m_position, end - m_position);
  m_position = end + 1;
  if (end + 1 < m_text.size() && m_text[end] == '\r' && m_text[end + 1] == '\n') ++m_position;
  m_position = std::min(m_position, m_text.size());
  return line;
}

void splitCells(std::string_view line, char separator, std::vector<std::string_view>& cells) {
  cells.clear();
  std::size_t begin = 0;
  while (begin < line.size()) {
    if (separator == ' ' && isBlank(line[begin])) {
      ++begin;
      continue;
    }
    const std::size_t end = endOfCell(line, begin, separator);
    cells.push_back(unquoted(line.substr(begin, end - begin)));
    begin = end + 1;
  }
  if (cells.size() == 1 && cells.front().empty()) cells.clear();
}

CellNumber readNumber(std::string_view cell, char decimal) {
  std::array<char, 64> buffer;
  if (cell.empty()) return {0, "is empty"};
  if (decimal == ',' && !withPoint(cell, buffer)) return {0, "is not a number"};
  if (cell.front() == '+') cell.remove_prefix(1);
  if (cell.empty() || cell.front() == '+') return {0, "is not a number"};
  double value = 0;
  const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
  if (error == std::errc::invalid_argument || end != cell.data() + cell.size()) return {0, "is not a number"};
  if (error == std::errc::result_out_of_range) return {0, "is beyond the range of numbers"};
  if (!std::isfinite(value)) return {0, "is not a finite number"};
  return {value, nullptr};
}

TableShape shapeOf(const std::vector<std::string_view>& lines) {
  constexpr TextFormat formats[] = {{'\t', '.'}, {'\t', ','}, {';', '.'}, {';', ','},
                                    {',', '.'},  {' ', '.'},  {' ', ','}};
  TableShape best;
  std::tuple<std::size_t, bool> bestScore{0, false};
  std::vector<std::string_view> cells;
  for (const TextFormat format : formats) {
    std::map<std::size_t, std::size_t> rowsOfWidth;
    for (const std::string_view line : lines) {
      splitCells(line, format.separator, cells);
      const auto isNumber = [&](std::string_view cell) { return !readNumber(cell, format.decimal).fault; };
      if (!cells.empty() && std::all_of(cells.begin(), cells.end(), isNumber)) ++rowsOfWidth[cells.size()];
    }
    for (const auto& [columns, rows] : rowsOfWidth) {
      const std::tuple score{columns > 1 ? rows * 2 : rows, columns > best.columns};
      if (std::get<0>(score) < std::get<0>(bestScore)) continue;
      if (std::get<0>(score) == std::get<0>(bestScore) && !std::get<1>(score)) continue;
      bestScore = score;
      best = {format, columns};
    }
  }
  return best;
}

std::string cleanText(std::string_view text, std::size_t longest) {
  std::string clean;
  for (std::size_t i = 0; i < text.size();) {
    if (clean.size() >= longest) return clean + "...";
    const std::size_t length = sequenceLength(text, i);
    const auto byte = static_cast<unsigned char>(text[i]);
    if (length == 0) {
      clean += static_cast<char>(0xC0 | (byte >> 6));
      clean += static_cast<char>(0x80 | (byte & 0x3F));
    } else if (byte < 0x20 || byte == 0x7F) {
      clean += ' ';
    } else {
      clean += text.substr(i, length);
    }
    i += std::max<std::size_t>(length, 1);
  }
  return clean;
}

}  // namespace core
