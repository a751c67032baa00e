// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/cells.h"

namespace core {
namespace {

/// Behind the quote that closes the one at `open`, 0 when none does in this line. Two quotes are one inside.
std::size_t behindQuotes(std::string_view text, std::size_t open) {
  for (std::size_t i = open + 1; i < text.size() && !isLineEnd(text[i]); ++i) {
    if (text[i] != '"') continue;
    if (i + 1 >= text.size() || text[i + 1] != '"') return i + 1;
    ++i;
  }
  return 0;
}

}  // namespace

std::string_view unquoted(std::string_view cell) {
  cell = trimmed(cell);
  if (cell.size() < 2 || cell.front() != '"' || cell.back() != '"') return cell;
  return trimmed(cell.substr(1, cell.size() - 2));
}

std::size_t endOfCell(std::string_view text, std::size_t begin, char separator) {
  std::size_t i = begin;
  while (i < text.size() && isBlank(text[i]) && !separates(text[i], separator)) ++i;
  if (i < text.size() && text[i] == '"') {
    if (const std::size_t behind = behindQuotes(text, i)) i = behind;
  }
  while (i < text.size() && !isLineEnd(text[i]) && !separates(text[i], separator)) ++i;
  return i;
}

void splitCells(std::string_view line, char separator, std::vector<std::string_view>& cells) {
  cells.clear();
  if (trimmed(line).empty()) return;
  std::size_t begin = 0;
  while (true) {
    if (separator == ' ') {
      while (begin < line.size() && isBlank(line[begin])) ++begin;
      if (begin >= line.size()) return;
    }
    const std::size_t end = endOfCell(line, begin, separator);
    cells.push_back(unquoted(line.substr(begin, end - begin)));
    if (end >= line.size()) return;
    begin = end + 1;
  }
}

}  // namespace core
