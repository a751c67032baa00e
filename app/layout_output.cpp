// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/layout_output.h"

#include <algorithm>

#include "app/files.h"

namespace app {
namespace {

constexpr std::size_t mostRows = 12;

const char* kindWord(core::FileKind kind) {
  switch (kind) {
    case core::FileKind::Text:
      return "delimited text";
    case core::FileKind::Wav:
      return "WAV";
    case core::FileKind::Npy:
      return "NPY";
    case core::FileKind::Mat:
      return "MATLAB";
    case core::FileKind::Hdf5:
      return "HDF5";
    case core::FileKind::Uff58:
      return "universal file, data set 58";
  }
  return "";
}

const char* roleWord(core::RowRole role) {
  switch (role) {
    case core::RowRole::Preamble:
      return "above";
    case core::RowRole::Names:
      return "names";
    case core::RowRole::Units:
      return "units";
    case core::RowRole::Values:
      return "values";
  }
  return "";
}

/// The whole layout as choices: what would have to be written to have it so in any case.
core::LayoutChoices asChoices(const core::Layout& layout) {
  core::LayoutChoices choices;
  if (layout.kind == core::FileKind::Text) {
    choices.encoding = layout.encoding;
    choices.separator = layout.separator;
    choices.decimal = layout.decimal;
    choices.firstRow = layout.firstRow;
    choices.nameLine = layout.nameLine;
    choices.unitLine = layout.unitLine;
  }
  if (layout.time.column) {
    choices.timeColumn = layout.time.column;
    choices.timeForm = layout.time.form;
    if (layout.time.form == core::TimeForm::DateAndTime) choices.dateOrder = layout.time.order;
  } else if (layout.time.rate_Hz > 0) {
    choices.rate_Hz = layout.time.rate_Hz;
  }
  return choices;
}

std::string columnText(const core::Layout& layout, std::size_t index) {
  const core::ColumnHeading& heading = layout.columns[index];
  const std::string unit = heading.unit.empty() ? "" : " [" + heading.unit + "]";
  const bool isTime = layout.time.column == index || layout.time.dateColumn == index;
  return std::to_string(index + 1) + " " + heading.name + unit + (isTime ? " (time)" : "");
}

}  // namespace

std::string layoutText(const core::Preview& preview) {
  std::vector<core::Entry> entries{{"Kind", kindWord(preview.layout.kind)},
                                   {"Read as", core::textOf(asChoices(preview.layout))}};
  std::vector<std::string> columns;
  for (std::size_t k = 0; k < preview.layout.columns.size(); ++k)
    columns.push_back(columnText(preview.layout, k));
  entries.push_back({"Columns", listed(columns)});
  for (const std::string& doubt : preview.doubts) entries.push_back({"In doubt", doubt});
  for (const std::string& column : preview.leftOut) entries.push_back({"Left out", column});
  std::string text = textOf(entries);
  if (preview.rows.empty()) return text;
  core::Table table{"", {{"Line", true}, {"Holds", false}, {"Cells", false}}, {}};
  for (std::size_t k = 0; k < std::min(mostRows, preview.rows.size()); ++k) {
    const core::PreviewRow& row = preview.rows[k];
    table.rows.push_back({{std::to_string(row.line), roleWord(row.role), joined(row.cells, " | ")}, {}});
  }
  return text + "\n" + textOf(table);
}

Json layoutJson(const core::Preview& preview) {
  const core::Layout& layout = preview.layout;
  Json json{{"kind", kindWord(layout.kind)}, {"read_as", core::textOf(asChoices(layout))},
            {"columns", Json::array()},      {"doubts", preview.doubts},
            {"left_out", preview.leftOut},   {"rows", Json::array()}};
  for (std::size_t k = 0; k < layout.columns.size(); ++k)
    json["columns"].push_back({{"name", layout.columns[k].name},
                               {"unit", layout.columns[k].unit},
                               {"is_time", layout.time.column == k || layout.time.dateColumn == k}});
  for (const core::PreviewRow& row : preview.rows)
    json["rows"].push_back({{"line", row.line}, {"holds", roleWord(row.role)}, {"cells", row.cells}});
  return json;
}

}  // namespace app
