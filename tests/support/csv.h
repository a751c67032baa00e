// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace test {

using CsvRow = std::map<std::string, std::string>;

inline std::vector<std::string> csvCells(const std::string& line) {
  std::vector<std::string> cells(1);
  bool quoted = false;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const char c = line[i];
    if (c == '"' && quoted && i + 1 < line.size() && line[i + 1] == '"') {
      cells.back() += '"';
      ++i;
    } else if (c == '"') {
      quoted = !quoted;
    } else if (c == ',' && !quoted) {
      cells.emplace_back();
    } else if (c != '\r') {
      cells.back() += c;
    }
  }
  return cells;
}

/// The rows of a test table: '#' starts a comment line, the first other line names the columns, cells
/// may be quoted. Throws when the file is missing, empty or ragged, so that no test passes without data.
inline std::vector<CsvRow> readCsv(const std::string& path) {
  std::ifstream file(path);
  if (!file) throw std::runtime_error("no test table " + path);
  std::vector<std::string> names;
  std::vector<CsvRow> rows;
  for (std::string line; std::getline(file, line);) {
    if (line.empty() || line == "\r" || line.front() == '#') continue;
    const auto cells = csvCells(line);
    if (names.empty()) {
      names = cells;
      continue;
    }
    if (cells.size() != names.size()) throw std::runtime_error("ragged row in " + path + ": " + line);
    CsvRow row;
    for (std::size_t k = 0; k < names.size(); ++k) row[names[k]] = cells[k];
    rows.push_back(std::move(row));
  }
  if (rows.empty()) throw std::runtime_error("empty test table " + path);
  return rows;
}

/// A cell as a number; throws when it holds anything else.
inline double number(const CsvRow& row, const std::string& column) {
  const std::string& cell = row.at(column);
  std::istringstream stream(cell);
  stream.imbue(std::locale::classic());
  double value = 0;
  if (!(stream >> value) || !stream.eof()) throw std::runtime_error("not a number: " + cell);
  return value;
}

/// A whole column of numbers.
inline std::vector<double> numbers(const std::vector<CsvRow>& rows, const std::string& column) {
  std::vector<double> values;
  for (const auto& row : rows) values.push_back(number(row, column));
  return values;
}

}  // namespace test
