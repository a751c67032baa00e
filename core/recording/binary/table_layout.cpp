// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/table_layout.h"

#include <cmath>

#include "core/recording/characters.h"
#include "core/recording/clean_text.h"
#include "core/recording/column_heading.h"
#include "core/recording/time_units.h"
#include "core/units/language.h"

namespace core {
namespace {

TimeForm formOf(const ColumnHeading& column) {
  if (const auto form = unitOfTime(column.unit)) return *form;
  return unitOfTime(headingOfPath(column.name).unit).value_or(TimeForm::Seconds);
}

TimeLayout ownTime(const BinaryTable& table) {
  TimeLayout time;
  time.column = table.timeColumn;
  if (!time.column && table.spacing_s > 0) time.rate_Hz = 1 / table.spacing_s;
  return time;
}

/// `columns` with the chosen units.
TimeLayout timeOf(const BinaryTable& table, const std::vector<ColumnHeading>& columns,
                  const LayoutChoices& choices) {
  TimeLayout time = ownTime(table);
  if (choices.rate_Hz) {
    time.column.reset();
    time.rate_Hz = *choices.rate_Hz;
  }
  if (choices.timeColumn) {
    time.column = choices.timeColumn;
    time.rate_Hz = 0;
  }
  if (time.column && *time.column < columns.size()) time.form = formOf(columns[*time.column]);
  if (choices.timeForm) time.form = *choices.timeForm;
  if (choices.dateOrder) time.order = *choices.dateOrder;
  return time;
}

std::optional<Error> obstacleTo(const TimeLayout& time, std::size_t columns) {
  if (!time.column) {
    if (std::isfinite(time.rate_Hz) && time.rate_Hz > 0 && std::isfinite(1 / time.rate_Hz))
      return std::nullopt;
    if (time.rate_Hz != 0)
      return Error{"", say("the sample rate is not a number above zero"), say("Give another rate")};
    return Error{"", say("the file does not say when its samples were taken"),
                 say("Choose the column of the time, or give the sample rate")};
  }
  if (*time.column >= columns) {
    return Error{"", say("there is no column {1} to take the time from", {std::to_string(*time.column + 1)}),
                 say("Choose one of the {1} columns", {std::to_string(columns)})};
  }
  if (columns == 1) {
    return Error{"", say("the only column is taken as the time, so nothing is left to read"),
                 say("Give the sample rate instead")};
  }
  if (isUnit(time.form)) return std::nullopt;
  return Error{"", say("the times of this file are plain numbers and no clock times or dates"),
               say("Choose seconds or another unit of time")};
}

/// All finite, each above the one before.
bool rises(const Samples& values) {
  if (values.size() < 3 || !std::isfinite(values.front())) return false;
  for (std::size_t k = 1; k < values.size(); ++k)
    if (!std::isfinite(values[k]) || values[k] <= values[k - 1]) return false;
  return true;
}

}  // namespace

void guessTimeColumn(BinaryTable& table, const ColumnValues& values) {
  if (table.timeColumn || table.spacing_s > 0 || table.columns.size() < 2) return;
  for (std::size_t k = 0; k < table.columns.size(); ++k) {
    if (!isNameOfTime(table.columns[k].name)) continue;
    table.timeColumn = k;
    return;
  }
  if (values.empty() || !rises(values.front())) return;
  table.timeColumn = 0;
  table.doubts.push_back(
      say("The first column rises from sample to sample and is taken as the time in seconds."));
}

TableLayout layoutOf(const BinaryTable& table, const LayoutChoices& choices) {
  TableLayout result;
  Layout& layout = result.layout;
  layout.kind = table.kind;
  layout.columns = table.columns;
  for (const auto& [column, unit] : choices.units)
    if (column < layout.columns.size()) layout.columns[column].unit = cleanName(unit);
  layout.time = timeOf(table, layout.columns, choices);
  result.obstacle = obstacleTo(layout.time, layout.columns.size());
  return result;
}

}  // namespace core
