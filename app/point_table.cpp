// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/point_table.h"

#include <algorithm>

#include "app/files.h"
#include "core/recording/clean_text.h"
#include "core/recording/file_bytes.h"
#include "core/recording/text/cells.h"
#include "core/recording/text/number.h"
#include "core/recording/text/table_guess.h"

namespace app {
namespace {

constexpr std::size_t greatestTable_bytes = 64 * 1024 * 1024;

struct XyColumns {
  std::size_t x = 0;
  std::size_t y = 1;
};

std::string lower(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return text;
}

bool isWeight(const std::string& name) {
  return name == "ux" || name == "uy" || name == "sx" || name == "sy" || name == "w" || name == "weight";
}

/// Where x and y stand; `names` are lower case and all empty in a table without a row of names.
core::Result<XyColumns> xyColumns(const std::vector<std::string>& names) {
  for (const std::string& name : names)
    if (isWeight(name))
      return core::Error{"column " + name,
                         "uncertainties and weights of points are not supported, all points weigh the same",
                         "Remove the column to fit without weights"};
  const bool named = std::any_of(names.begin(), names.end(), [](const auto& name) { return !name.empty(); });
  if (!named && names.size() == 2) return XyColumns{};
  const auto x = std::find(names.begin(), names.end(), "x"), y = std::find(names.begin(), names.end(), "y");
  if (x == names.end() || y == names.end() || names.size() != 2)
    return core::Error{"", "the table needs the columns x and y and no others",
                       "Name them in the first row, for example \"x,y\""};
  return XyColumns{static_cast<std::size_t>(x - names.begin()), static_cast<std::size_t>(y - names.begin())};
}

core::Result<PointTable> pointsOf(const core::TextSample& sample) {
  const auto table = core::guessTable(sample, {}, "");
  if (!table)
    return core::Error{table.error().where, table.error().what, "Give a text file with the columns x and y"};
  const core::Layout& layout = table->layout;
  std::vector<std::string> names;
  for (const core::ColumnHeading& column : layout.columns) names.push_back(lower(column.name));
  const auto columns = xyColumns(names);
  if (!columns) return columns.error();

  PointTable points;
  std::vector<std::string_view> cells;
  for (std::size_t line = layout.firstRow; line <= sample.lines.size(); ++line) {
    core::splitCells(sample.lines[line - 1], layout.separator, cells);
    if (cells.empty()) continue;
    while (cells.size() > names.size() && cells.back().empty()) cells.pop_back();
    const std::string where = "line " + std::to_string(line);
    if (cells.size() != names.size())
      return core::Error{
          where, "it has " + std::to_string(cells.size()) + " of " + std::to_string(names.size()) + " cells",
          "Complete or remove the line"};
    for (const bool isX : {true, false}) {
      const std::string_view cell = cells[isX ? columns->x : columns->y];
      const core::CellNumber number = core::readNumber(cell, layout.decimal);
      if (number.fault)
        return core::Error{where, "\"" + core::cleanText(cell, 40) + "\" " + number.fault,
                           "Correct or remove the line"};
      (isX ? points.x : points.y).push_back(number.value);
    }
  }
  return points;
}

}  // namespace

core::Result<PointTable> readPointTable(const std::string& path) {
  if (auto usable = requireRegularFile(path); !usable) return usable.error();
  auto text = core::readRegularFile(path, greatestTable_bytes);
  if (!text) return core::Error{path, text.error().what, text.error().mend};
  if (text->starts_with("\xEF\xBB\xBF")) text->erase(0, 3);
  auto points = pointsOf(core::sampleOfText(*std::move(text)));
  if (!points) return inFile(path, points.error());
  return points;
}

}  // namespace app
