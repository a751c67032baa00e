// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/covariance_file.h"

#include <string_view>

#include "app/files.h"
#include "core/recording/clean_text.h"
#include "core/recording/file_bytes.h"
#include "core/recording/text/cells.h"
#include "core/recording/text/number.h"

namespace app {
namespace {

constexpr std::size_t greatestFile_bytes = std::size_t{256} * 1024 * 1024;
constexpr std::size_t longestCell_bytes = 64;

struct TextLine {
  std::size_t number;
  std::string_view text;
};

/// The lines that hold numbers, at most one more than there may be.
std::vector<TextLine> rowsOf(std::string_view text, std::size_t most) {
  std::vector<TextLine> rows;
  for (std::size_t number = 1; !text.empty() && rows.size() <= most; ++number) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    const std::string_view line = text.substr(0, end);
    const std::size_t first = line.find_first_not_of(" \t\r;,");
    if (first != std::string_view::npos && line[first] != '#') rows.push_back({number, line});
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return rows;
}

char separatorOf(const std::vector<TextLine>& rows) {
  for (const char separator : {';', '\t', ','})
    for (const TextLine& row : rows)
      if (row.text.find(separator) != std::string_view::npos) {
        // "0,25 0,5": the commas are decimal marks when blanks stand between numbers.
        const std::size_t inner = row.text.find(' ');
        const bool blanks = separator == ',' && row.text.find(", ") == std::string_view::npos &&
                            inner != std::string_view::npos &&
                            row.text.find_first_not_of(" \r", inner) != std::string_view::npos;
        return blanks ? ' ' : separator;
      }
  return ' ';
}

core::Error wrongCount(const std::string& where, std::size_t found, std::size_t size, const char* what) {
  return {where,
          "there are " + std::to_string(found) + " " + what + ", the points need " + std::to_string(size),
          "Give a row and a column for every value, nothing else"};
}

core::Result<std::vector<double>> matrixOf(std::string_view text, std::size_t size) {
  const std::vector<TextLine> rows = rowsOf(text, size);
  if (rows.size() > size) return wrongCount("", rows.size(), size, "rows or more");
  const char separator = separatorOf(rows);
  const char decimal = separator != ',' && text.find(',') != std::string_view::npos ? ',' : '.';
  std::vector<double> matrix;
  std::vector<std::string_view> cells;
  for (const TextLine& row : rows) {
    const std::string line = "line " + std::to_string(row.number);
    // A cell of a line that is all separators costs sixteen times its byte.
    if (row.text.size() > longestCell_bytes * (size + 1))
      return core::Error{line, "it is longer than " + std::to_string(size) + " numbers can be",
                         "Give a row and a column for every value, nothing else"};
    core::splitCells(row.text, separator, cells);
    while (cells.size() > size && cells.back().empty()) cells.pop_back();
    for (std::size_t k = 0; k < cells.size(); ++k) {
      const core::CellNumber number = core::readNumber(cells[k], decimal);
      if (number.fault)
        return core::Error{line + ", column " + std::to_string(k + 1),
                           "\"" + core::cleanText(cells[k], 40) + "\" " + number.fault, "Correct the cell"};
      matrix.push_back(number.value);
    }
    if (cells.size() != size) return wrongCount(line, cells.size(), size, "cells");
  }
  if (rows.size() != size) return wrongCount("", rows.size(), size, "rows");
  return matrix;
}

}  // namespace

core::Result<std::vector<double>> readCovariance(const std::string& path, std::size_t size) {
  if (auto usable = requireRegularFile(path); !usable) return usable.error();
  const auto text = core::readRegularFile(path, greatestFile_bytes);
  if (!text) return core::Error{path, text.error().what, text.error().mend};
  std::string_view view = *text;
  if (view.starts_with("\xEF\xBB\xBF")) view.remove_prefix(3);
  auto matrix = matrixOf(view, size);
  if (!matrix) return inFile(path, matrix.error());
  return matrix;
}

}  // namespace app
