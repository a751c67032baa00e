// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/time_guess.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/recording/characters.h"
#include "core/recording/clean_text.h"
#include "core/recording/column_heading.h"
#include "core/recording/text/number.h"
#include "core/recording/text/time_cell.h"
#include "core/recording/time_units.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr int weakest = 20;  ///< strength that makes a column the time when nothing else does
constexpr double earliestEpoch_s = 631'152'000;  ///< 1990-01-01
constexpr double latestEpoch_s = 4'102'444'800;  ///< 2100-01-01

/// How the times in one column behave in the rows looked at.
struct FirstNumbers {
  std::size_t times = 0;
  std::size_t falls = 0;
  std::size_t standstills = 0;
  std::vector<double> values;

  bool isRising() const { return times > 1 && falls == 0 && standstills == 0; }
  bool mayBeTime() const { return times > 0 && falls * 20 <= times; }
  bool mostlyStands() const { return times > 3 && standstills * 2 > times; }
};

class TimeFinder {
 public:
  TimeFinder(const TableGuess& table, const std::vector<ColumnHeading>& names, const LayoutChoices& choices)
      : m_table(table), m_names(names), m_choices(choices) {}

  TimeGuess find();

 private:
  std::string_view cell(std::size_t row, std::size_t column) const { return m_table.rows[row][column]; }
  FirstNumbers courseOf(std::size_t column) const;
  int strengthOf(std::size_t column) const;
  std::optional<std::size_t> risingColumn();
  void useColumn(std::size_t column);
  void useDateColumn(std::size_t clock);
  void findOrder(std::size_t column);
  void useNumbers(std::size_t column);
  void findBase();
  bool isDateColumn(std::size_t column) const;
  bool holdsSpreadsheetDays(std::size_t column) const;
  double median(std::vector<double> values) const;

  const TableGuess& m_table;
  const std::vector<ColumnHeading>& m_names;
  const LayoutChoices& m_choices;
  TimeGuess m_guess;
};

FirstNumbers TimeFinder::courseOf(std::size_t column) const {
  FirstNumbers course;
  std::optional<double> last;
  const CellKind kind = m_table.kinds[column];
  for (std::size_t row = 0; row < m_table.rows.size(); ++row) {
    std::optional<double> value;
    if (kind == CellKind::Number) {
      const CellNumber number = readNumber(cell(row, column), m_table.layout.decimal);
      if (!number.fault) value = number.value;
    } else if (kind == CellKind::Clock) {
      if (const auto clock = readClock(cell(row, column))) value = static_cast<double>(clock->utc_ns()) / 1e9;
    } else {
      // In any order that exists the same texts are equal, and most later ones greater.
      for (const DateOrder order :
           {DateOrder::YearMonthDay, DateOrder::DayMonthYear, DateOrder::MonthDayYear})
        if (const auto stamp = readDateAndTime(cell(row, column), order); stamp && !value)
          value = static_cast<double>(stamp->utc_ns()) / 1e9;
    }
    if (!value) continue;
    ++course.times;
    const bool midnight = kind == CellKind::Clock && last && *value < *last - 43'200;
    if (last && *value < *last && !midnight) ++course.falls;
    if (last && *value == *last) ++course.standstills;
    last = value;
    course.values.push_back(*value);
  }
  return course;
}

/// Whether a column of numbers named a date counts days as spreadsheets do, with fractions.
bool TimeFinder::holdsSpreadsheetDays(std::size_t column) const {
  const auto& [written, unit] = m_table.layout.columns[column];
  const std::string name = lower(written);
  const bool isNamed = name.find("dat") != std::string::npos || name.find("fecha") != std::string::npos;
  if (m_table.kinds[column] != CellKind::Number || !isNamed || !unit.empty()) return false;
  const auto values = courseOf(column).values;
  bool hasFraction = false;
  for (const double value : values) {
    if (value < 40'000 || value > 60'000) return false;
    hasFraction = hasFraction || value != std::floor(value);
  }
  return hasFraction;
}

/// How much speaks for a column: its name, its unit, its cells, and that its values do not fall. 0: nothing.
int TimeFinder::strengthOf(std::size_t column) const {
  const CellKind kind = m_table.kinds[column];
  const auto& [name, unit] = m_table.layout.columns[column];
  int strength = 0;
  if (kind == CellKind::DateAndTime) strength = 60;
  if (kind == CellKind::Clock) strength = 55;
  if (kind == CellKind::Number) {
    const int named = timeNameStrength(name);
    const bool unitOfAnother = !unit.empty() && !unitOfTime(unit) && !looksLikeTimePattern(unit);
    if (unitOfAnother) return 0;
    if (named > 0) strength = named == 3 ? 80 : named == 2 ? 70 : unitOfTime(unit) ? 30 : 20;
    if (named == 0 && unitOfTime(unit)) strength = column == 0 ? 50 : 35;
  }
  if (holdsSpreadsheetDays(column)) strength = 70;
  if (strength == 0) return 0;
  if (isStamp(kind) && timeNameStrength(name) > 0) strength += 20;
  const FirstNumbers course = courseOf(column);
  // A time that runs backwards is one still, when its name or its cells say so: its rows are skipped.
  if (!course.mayBeTime()) return strength >= 55 ? std::max(weakest, strength - 60) : 0;
  if (course.mostlyStands()) strength -= 15;
  return strength + (course.isRising() ? 5 : 0);
}

/// A first column that rises throughout, or, when it merely counts, a second one that rises evenly.
std::optional<std::size_t> TimeFinder::risingColumn() {
  const std::size_t columns = m_table.kinds.size();
  const auto mayBe = [&](std::size_t k) {
    const ColumnHeading& heading = m_table.layout.columns[k];
    return m_table.kinds[k] == CellKind::Number && heading.unit.empty() && !isCounterName(heading.name);
  };
  if (columns < 2) return std::nullopt;
  const FirstNumbers first = courseOf(0);
  bool counts = first.times > 2 && (first.values[0] == 0 || first.values[0] == 1);
  for (std::size_t k = 1; counts && k < std::min<std::size_t>(first.values.size(), 100); ++k)
    counts = first.values[k] == first.values[k - 1] + 1;
  if (columns > 2 && counts &&
      (m_table.layout.nameLine == 0 || isCounterName(m_table.layout.columns[0].name)) && mayBe(1)) {
    const FirstNumbers second = courseOf(1);
    const double step = second.times > 2 ? second.values[1] - second.values[0] : 0;
    bool even = second.isRising();
    for (std::size_t k = 1; even && k < std::min<std::size_t>(second.values.size(), 100); ++k)
      even = std::abs(second.values[k] - second.values[k - 1] - step) < 0.01 * step;
    if (even) return 1;
  }
  if (mayBe(0) && first.isRising()) return 0;
  return std::nullopt;
}

bool TimeFinder::isDateColumn(std::size_t column) const {
  if (m_table.kinds[column] == CellKind::Date) return true;
  const std::string name = lower(m_table.layout.columns[column].name);
  const bool named = name.find("dat") != std::string::npos || name.find("fecha") != std::string::npos;
  return named && m_table.kinds[column] == CellKind::Number && !m_table.rows.empty() &&
         readWrittenDate(cell(0, column)).has_value();
}

/// The date that belongs to a clock in a column of its own: the nearest, one to the left rather.
void TimeFinder::useDateColumn(std::size_t clock) {
  for (std::size_t away = 1; away < m_table.kinds.size(); ++away) {
    if (away <= clock && isDateColumn(clock - away))
      m_guess.time.dateColumn = clock - away;
    else if (clock + away < m_table.kinds.size() && isDateColumn(clock + away))
      m_guess.time.dateColumn = clock + away;
    if (m_guess.time.dateColumn) return findOrder(*m_guess.time.dateColumn);
  }
}

/// Tells the order of the parts of dates by numbers above 12, by what changes in the course of the file, by
/// the separator; and says so where that is a guess.
void TimeFinder::findOrder(std::size_t column) {
  m_guess.time.order = DateOrder::DayMonthYear;
  bool dayFirst = false, monthFirst = false, yearFirst = false, sameBoth = true, halfDays = false;
  std::optional<WrittenDate> first, last;
  std::string_view example;
  for (std::size_t row = 0; row < m_table.rows.size(); ++row) {
    const std::string_view text = cell(row, column);
    const auto date = dateWithin(text);
    if (!date) continue;
    if (date->named || date->digits[0] == 4 || date->numbers[0] > 31) yearFirst = true;
    dayFirst = dayFirst || date->numbers[0] > 12;
    monthFirst = monthFirst || date->numbers[1] > 12;
    sameBoth = sameBoth && date->numbers[0] == date->numbers[1];
    halfDays = halfDays || lower(text).ends_with('m');
    if (!first) first = date, example = text;
    last = date;
  }
  if (m_choices.dateOrder) {
    m_guess.time.order = *m_choices.dateOrder;
    return;
  }
  if (yearFirst)
    m_guess.time.order = DateOrder::YearMonthDay;
  else if (monthFirst && !dayFirst)
    m_guess.time.order = DateOrder::MonthDayYear;
  if (!first || yearFirst || dayFirst || monthFirst) return;
  if (first->numbers != last->numbers && first->numbers[0] == last->numbers[0]) {
    m_guess.time.order = DateOrder::MonthDayYear;  // the second number is the one that counts days
    return;
  }
  if (first->numbers != last->numbers || first->separator == '.' || sameBoth) return;
  if (halfDays) m_guess.time.order = DateOrder::MonthDayYear;
  const std::string taken = halfDays ? "month-first" : "day-first";
  m_guess.doubts.push_back(say("The date {1} may be day-first or month-first: {2} is taken.",
                               {cleanText(example.substr(0, example.find(' ')), 24), taken}));
}

double TimeFinder::median(std::vector<double> values) const {
  for (std::size_t k = values.size(); k-- > 1;) values[k] -= values[k - 1];
  if (values.size() < 2) return 0;
  values.erase(values.begin());
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

/// The unit of a column of numbers.
void TimeFinder::useNumbers(std::size_t column) {
  const auto& [name, unit] = m_table.layout.columns[column];
  const FirstNumbers course = courseOf(column);
  const double start = course.values.empty() ? 0 : course.values.front();
  if (!m_choices.timeForm && holdsSpreadsheetDays(column)) {
    m_guess.time.form = TimeForm::DateAndTime;
    m_guess.doubts.push_back(say("The column '{1}' is taken for dates as spreadsheets count them, in days.",
                                 {m_names[column].name}));
    return;
  }
  auto form = unitOfTime(unit);
  if (!form) form = unitOfTime(name);
  if (!form && m_table.rate_Hz) {
    const double spacing = median(course.values);
    for (const TimeForm candidate : {TimeForm::Seconds, TimeForm::Milliseconds, TimeForm::Microseconds,
                                     TimeForm::Minutes, TimeForm::Hours})
      if (!form && std::abs(inSeconds(spacing, candidate) * *m_table.rate_Hz - 1) < 0.01) form = candidate;
  }
  const auto isEpoch = [&](TimeForm candidate) {
    const double start_s = inSeconds(start, candidate);
    return start_s >= earliestEpoch_s && start_s <= latestEpoch_s;
  };
  if (!form)
    for (const TimeForm candidate : {TimeForm::Seconds, TimeForm::Milliseconds, TimeForm::Microseconds})
      if (isEpoch(candidate)) form = candidate;
  if (m_choices.timeForm) form = m_choices.timeForm;
  m_guess.time.form = form.value_or(TimeForm::Seconds);
  const bool counted = m_guess.time.form == TimeForm::Seconds ||
                       m_guess.time.form == TimeForm::Milliseconds ||
                       m_guess.time.form == TimeForm::Microseconds;
  m_guess.isAbsolute = counted && isEpoch(m_guess.time.form);
  if (!form && !m_guess.isAbsolute)
    m_guess.doubts.push_back(
        say("The column '{1}' gives no unit of time: seconds are taken.", {m_names[column].name}));
}

void TimeFinder::useColumn(std::size_t column) {
  m_guess.time.column = column;
  const CellKind kind = m_table.kinds[column];
  TimeForm form = kind == CellKind::Clock                                   ? TimeForm::Clock
                  : kind == CellKind::DateAndTime || kind == CellKind::Date ? TimeForm::DateAndTime
                                                                            : TimeForm::Seconds;
  if (m_choices.timeForm) form = *m_choices.timeForm;
  m_guess.time.form = form;
  if (form == TimeForm::Clock)
    useDateColumn(column);
  else if (form == TimeForm::DateAndTime)
    findOrder(column);
  else
    useNumbers(column);
  if (m_choices.dateOrder) m_guess.time.order = *m_choices.dateOrder;
  if (isStamp(kind) && courseOf(column).mostlyStands())
    m_guess.doubts.push_back(
        say("Many samples stand at the same time, since the clock in '{1}' is coarse: a sample rate would "
            "tell more.",
            {m_names[column].name}));
}

void TimeFinder::findBase() {
  if (!m_guess.time.column) return;
  RowPlan plan;
  plan.decimal = m_table.layout.decimal;
  plan.form = m_guess.time.form;
  plan.order = m_guess.time.order;
  plan.isAbsolute = m_guess.isAbsolute;
  if (!isStamped(plan)) return;
  for (std::size_t row = 0; row < m_table.rows.size(); ++row) {
    const std::string_view text = cell(row, *m_guess.time.column);
    const TimeCell time = readTimeCell(text, plan);
    if (time.fault) continue;
    std::int64_t date_ns = 0;
    if (m_guess.time.dateColumn) {
      const auto days = readDate(cell(row, *m_guess.time.dateColumn), plan.order);
      if (!days) continue;
      date_ns = *days * nanosecondsOfDay;
    }
    m_guess.base_ns = time.ns + date_ns;
    if (m_guess.isAbsolute) m_guess.ahead_min = 0;
    if (plan.form == TimeForm::DateAndTime) m_guess.ahead_min = readDateAndTime(text, plan.order)->ahead_min;
    if (plan.form == TimeForm::Clock) m_guess.ahead_min = readClock(text)->ahead_min;
    return;
  }
}

TimeGuess TimeFinder::find() {
  const std::size_t columns = m_table.kinds.size();
  if (m_choices.timeColumn) {
    useColumn(*m_choices.timeColumn);
  } else if (m_choices.rate_Hz) {
    m_guess.time.rate_Hz = *m_choices.rate_Hz;
  } else {
    std::size_t best = 0;
    int greatest = 0;
    for (std::size_t k = 0; k < columns; ++k)
      if (const int strength = strengthOf(k); strength > greatest) best = k, greatest = strength;
    const bool coarse = greatest >= weakest && m_table.rate_Hz && courseOf(best).mostlyStands();
    if (greatest >= weakest && !coarse) {
      useColumn(best);
    } else if (m_table.rate_Hz) {
      m_guess.time.rate_Hz = *m_table.rate_Hz;
    } else if (const auto rising = risingColumn()) {
      useColumn(*rising);
      m_guess.doubts = {say("The column '{1}' rises throughout and is taken for the time in seconds.",
                            {m_names[*rising].name})};
      m_guess.time.form = m_choices.timeForm.value_or(m_guess.time.form);
    } else {
      m_guess.doubts.push_back(say("No column is known to be the time: choose it or give a sample rate."));
    }
  }
  findBase();
  return std::move(m_guess);
}

}  // namespace

TimeGuess guessTime(const TableGuess& table, const std::vector<ColumnHeading>& names,
                    const LayoutChoices& choices) {
  return TimeFinder(table, names, choices).find();
}

}  // namespace core
