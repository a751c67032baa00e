// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/layout_words.h"

#include <QCoreApplication>

#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString words(const char* text) { return QCoreApplication::translate("LayoutWords", text); }

QString textWords(const core::Layout& layout) {
  QStringList lines{layout.nameLine > 0 ? words("names in line %1").arg(layout.nameLine) : words("no names")};
  if (layout.unitLine > 0) lines << words("units in line %1").arg(layout.unitLine);
  lines << words("numbers from line %1").arg(layout.firstRow);
  return words("Text in %1, %2 between cells, decimal %3; %4")
      .arg(wordsOf(layout.encoding), separatorWords(layout.separator), decimalWords(layout.decimal),
           lines.join(", "));
}

QString timeWords(const core::Layout& layout) {
  const core::TimeLayout& time = layout.time;
  if (!time.column)
    return time.rate_Hz > 0 ? words("time from the sample rate, %1")
                                  .arg(quantityText(time.rate_Hz, core::UnitFamily::Frequency, {}, 9))
                            : words("time not known");
  QString text = words("time from column %1").arg(columnWords(layout, *time.column));
  if (layout.kind == core::FileKind::Text || time.form != core::TimeForm::Seconds)
    text = words("%1, written as %2").arg(text, wordsOf(time.form));
  if (time.form == core::TimeForm::DateAndTime || time.dateColumn) text += " (" + wordsOf(time.order) + ")";
  if (time.dateColumn)
    text = words("%1, date from column %2").arg(text, columnWords(layout, *time.dateColumn));
  return text;
}

}  // namespace

QString wordsOf(core::FileKind kind) {
  switch (kind) {
    case core::FileKind::Text:
      return words("Text");
    case core::FileKind::Wav:
      return words("WAV file");
    case core::FileKind::Npy:
      return words("NPY array");
    case core::FileKind::Mat:
      return words("MATLAB file");
    case core::FileKind::Hdf5:
      return words("HDF5 file");
    case core::FileKind::Uff58:
      return words("Universal file, dataset 58");
  }
  return {};
}

QString wordsOf(core::TextEncoding encoding) {
  switch (encoding) {
    case core::TextEncoding::Utf8:
      return words("UTF-8");
    case core::TextEncoding::Latin1:
      return words("Latin-1");
    case core::TextEncoding::Utf16LittleEndian:
      return words("UTF-16, low byte first");
    case core::TextEncoding::Utf16BigEndian:
      return words("UTF-16, high byte first");
  }
  return {};
}

QString wordsOf(core::TimeForm form) {
  switch (form) {
    case core::TimeForm::Seconds:
      return words("seconds");
    case core::TimeForm::Milliseconds:
      return words("milliseconds");
    case core::TimeForm::Microseconds:
      return words("microseconds");
    case core::TimeForm::Minutes:
      return words("minutes");
    case core::TimeForm::Hours:
      return words("hours");
    case core::TimeForm::Clock:
      return words("time of day");
    case core::TimeForm::DateAndTime:
      return words("date and time");
  }
  return {};
}

QString wordsOf(core::DateOrder order) {
  switch (order) {
    case core::DateOrder::YearMonthDay:
      return words("year, month, day");
    case core::DateOrder::DayMonthYear:
      return words("day, month, year");
    case core::DateOrder::MonthDayYear:
      return words("month, day, year");
  }
  return {};
}

QString wordsOf(core::RowRole role) {
  switch (role) {
    case core::RowRole::Preamble:
      return words("passed over");
    case core::RowRole::Names:
      return words("names");
    case core::RowRole::Units:
      return words("units");
    case core::RowRole::Values:
      return words("numbers");
  }
  return {};
}

QString separatorWords(char separator) {
  switch (separator) {
    case ',':
      return words("comma");
    case ';':
      return words("semicolon");
    case '\t':
      return words("tab");
    case '|':
      return words("bar");
    case ' ':
      return words("blanks");
    default:
      return QString(QLatin1Char(separator));
  }
}

QString decimalWords(char decimal) { return decimal == ',' ? words("comma") : words("point"); }

QString columnWords(const core::Layout& layout, std::size_t column) {
  QString text = QString::number(column + 1);
  if (column >= layout.columns.size()) return text;
  const core::ColumnHeading& heading = layout.columns[column];
  if (!heading.name.empty()) text += ": " + toQString(heading.name);
  if (!heading.unit.empty()) text += " [" + toQString(heading.unit) + "]";
  return text;
}

QString layoutSentence(const core::Layout& layout) {
  const QString how = layout.kind == core::FileKind::Text ? textWords(layout) : wordsOf(layout.kind);
  const auto columns = static_cast<int>(layout.columns.size());
  const QString count = columns == 1 ? words("one column") : words("%1 columns").arg(columns);
  return how + "; " + count + "; " + timeWords(layout) + ".";
}

QString choicesWords(const core::LayoutChoices& choices) {
  QStringList parts;
  const auto add = [&](bool isChosen, const char* text) {
    if (isChosen) parts << words(text);
  };
  add(choices.encoding.has_value(), "encoding");
  add(choices.separator.has_value(), "what stands between cells");
  add(choices.decimal.has_value(), "decimal sign");
  add(choices.nameLine.has_value(), "line of names");
  add(choices.unitLine.has_value(), "line of units");
  add(choices.firstRow.has_value(), "first row of numbers");
  add(choices.timeColumn.has_value(), "column of time");
  add(choices.timeForm.has_value(), "how times are written");
  add(choices.dateOrder.has_value(), "order of the date");
  add(choices.rate_Hz.has_value(), "sample rate");
  add(!choices.units.empty(), "units");
  return parts.join(", ");
}

}  // namespace ui
