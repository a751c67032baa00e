// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/point_table.h"

#include <algorithm>
#include <array>

#include "app/files.h"
#include "core/recording/clean_text.h"
#include "core/recording/file_bytes.h"
#include "core/recording/text/cells.h"
#include "core/recording/text/number.h"
#include "core/recording/text/table_guess.h"

namespace app {
namespace {

constexpr std::size_t greatestTable_bytes = std::size_t{64} * 1024 * 1024;

struct Meaning {
  const char* name;
  std::vector<double> PointTable::*values;
};

/// In the order that columns without names have.
constexpr std::array<Meaning, 5> meanings = {{{"x", &PointTable::x},
                                              {"y", &PointTable::y},
                                              {"ux", &PointTable::ux},
                                              {"uy", &PointTable::uy},
                                              {"covxy", &PointTable::covariances}}};

/// In lower case and without underscores, so that u_y is uy.
std::string plain(const std::string& text) {
  std::string name;
  for (const char c : text)
    if (c != '_') name += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return name;
}

core::Error unknownColumn(const std::string& name) {
  if (name == "w" || name == "wx" || name == "wy" || name == "weight")
    return {"column " + name, "weights are not taken, since they may be 1/u or 1/u²",
            "Give standard uncertainties in the columns ux and uy"};
  if (name == "sx" || name == "sy")
    return {"column " + name, "it is not clear whether this is a standard uncertainty",
            std::string("Name it u") + name.back() + " if it is one, or remove it"};
  return {"", "the table needs the columns x and y and may have ux, uy and covxy, but no others",
          "Name them in the first row, for example \"x,y,uy\""};
}

/// What each column means; `names` are plain, and all empty in a table without a row of names.
core::Result<std::vector<Meaning>> meaningsOf(const std::vector<std::string>& names) {
  std::vector<Meaning> columns;
  const bool named = std::any_of(names.begin(), names.end(), [](const auto& name) { return !name.empty(); });
  for (std::size_t k = 0; k < names.size(); ++k) {
    const auto meaning = std::find_if(meanings.begin(), meanings.end(), [&](const Meaning& known) {
      return named ? names[k] == known.name : k == static_cast<std::size_t>(&known - meanings.data());
    });
    if (meaning == meanings.end()) return unknownColumn(names[k]);
    columns.push_back(*meaning);
  }
  const auto has = [&](const char* name) {
    return std::count_if(columns.begin(), columns.end(),
                         [&](const Meaning& column) { return std::string(column.name) == name; });
  };
  for (const Meaning& known : meanings)
    if (has(known.name) > 1)
      return core::Error{std::string("column ") + known.name, "it stands in the table twice",
                         "Remove one of them"};
  if (!has("x") || !has("y")) return unknownColumn("");
  if (has("ux") && !has("uy"))
    return core::Error{"column ux", "uncertainties of x need uncertainties of y beside them",
                       "Add the column uy, or exchange x and y when y is exact"};
  if (has("covxy") && !has("ux"))
    return core::Error{"column covxy", "covariances of x and y need the uncertainties of both beside them",
                       "Add the columns ux and uy"};
  return columns;
}

core::Result<PointTable> pointsOf(const core::TextSample& sample) {
  const auto table = core::guessTable(sample, {}, "");
  if (!table)
    return core::Error{table.error().where, table.error().what, "Give a text file with the columns x and y"};
  const core::Layout& layout = table->layout;
  std::vector<std::string> names;
  for (const core::ColumnHeading& column : layout.columns) names.push_back(plain(column.name));
  const auto columns = meaningsOf(names);
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
    for (std::size_t k = 0; k < cells.size(); ++k) {
      const core::CellNumber number = core::readNumber(cells[k], layout.decimal);
      if (number.fault)
        return core::Error{where + ", column " + (*columns)[k].name,
                           "\"" + core::cleanText(cells[k], 40) + "\" " + number.fault,
                           "Correct or remove the line"};
      (points.*(*columns)[k].values).push_back(number.value);
    }
    points.lines.push_back(line);
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
