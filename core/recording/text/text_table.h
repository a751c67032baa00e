// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core {

/// Gives the lines of a text one after the other without copying; CR, LF and CRLF each end a line. A line
/// end at the very end of the text begins no further line.
class LineReader {
 public:
  explicit LineReader(std::string_view text) : m_text(text) {}

  /// The next line without its end; nothing at the end of the text.
  std::optional<std::string_view> next();
  std::size_t position() const { return m_position; }  ///< bytes behind

 private:
  std::string_view m_text;
  std::size_t m_position = 0;
};

/// How the numbers of a text table are written.
struct TextFormat {
  char separator = ',';  ///< ',', ';', tab, or ' ' for any run of blanks
  char decimal = '.';    ///< '.' or ','; never ',' when that separates

  friend bool operator==(const TextFormat&, const TextFormat&) = default;
};

/// Puts the cells of `line` into `cells`, blanks around them and quotes (") taken off. One empty cell behind
/// a closing separator is no cell. An empty line has no cells.
void splitCells(std::string_view line, char separator, std::vector<std::string_view>& cells);

/// A cell read as a number: its value, or why there is none, as the end of a sentence about the cell.
struct CellNumber {
  double value = 0;
  const char* fault = nullptr;  ///< nullptr when `value` holds
};

/// Reads all of `cell`. No thousands separators, no hexadecimal. nan and inf, and what a double cannot hold
/// (1e400, 1e-400), are faults, never 0. Does not depend on the locale.
CellNumber readNumber(std::string_view cell, char decimal);

/// The format in which most of `lines` are rows of numbers, and the number of columns of most of those.
/// Where several fit equally (integers only) the one with more columns, then tab, semicolon, comma,
/// blanks, and the decimal point are preferred.
struct TableShape {
  TextFormat format;
  std::size_t columns = 0;  ///< 0: no line holds only numbers
};
TableShape shapeOf(const std::vector<std::string_view>& lines);

/// `text` as valid UTF-8 on one line: bytes that are not UTF-8 are taken as Latin-1, control characters
/// become blanks, and text of more than `longest` bytes is cut with "...".
std::string cleanText(std::string_view text, std::size_t longest = 200);

}  // namespace core
