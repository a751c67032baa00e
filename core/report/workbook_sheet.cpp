// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/workbook_sheet.h"

#include <unistd.h>
#include <xlsxwriter.h>

#include <algorithm>
#include <cerrno>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "core/report/figures.h"
#include "core/report/workbook_check.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

constexpr std::size_t longestCell = 32'000;   ///< bytes; a cell takes 32,767 characters
constexpr std::size_t longestSheetName = 31;  ///< characters of a sheet's name
constexpr int styleBase = 1000, dayKey = 2000;

std::string cut(const std::string& text, std::size_t bytes) { return std::string(beginningOf(text, bytes)); }

std::string firstCharacters(const std::string& text, std::size_t count) {
  std::size_t seen = 0, at = 0;
  for (; at < text.size(); ++at)
    if ((static_cast<unsigned char>(text[at]) & 0xC0) != 0x80 && seen++ == count) break;
  return text.substr(0, at);
}

/// In a header "&" begins a code.
std::string headerText(const std::string& text) {
  std::string doubled;
  for (const char c : cut(text, 80)) doubled += c == '&' ? std::string("&&") : std::string(1, c);
  return doubled;
}

/// A new file; where none can be made, the name that was tried, and why in `fault`.
std::string temporaryPath(std::error_code& fault) {
  const std::filesystem::path folder = std::filesystem::temp_directory_path(fault);
  if (fault) return "TMPDIR";  // which names something that is no folder
  std::string path = folder.string() + "/shuntwright-XXXXXX";
  const int file = mkstemp(path.data());
  if (file < 0)
    fault = {errno, std::generic_category()};
  else
    close(file);
  return path;
}

std::tm timeOf(const Date& day) {
  std::tm time{};
  time.tm_year = static_cast<int>(day.year()) - 1900;
  time.tm_mon = static_cast<int>(static_cast<unsigned>(day.month())) - 1;
  time.tm_mday = static_cast<int>(static_cast<unsigned>(day.day()));
  return time;
}

void colour(lxw_format* format, CellStyle style) {
  format_set_bold(format);
  switch (style) {
    case CellStyle::Pass:
      return format_set_font_color(format, 0x00704F);
    case CellStyle::Fail:
      return format_set_font_color(format, 0xB84600);
    case CellStyle::CannotTell:
      return format_set_font_color(format, 0x8A6100);
    default:
      return format_set_font_color(format, 0x4C5560);
  }
}

std::string quoted(const std::string& sheet) {
  std::string name = "'";
  for (const char c : sheet) name += c == '\'' ? std::string("''") : std::string(1, c);
  return name + "'";
}

}  // namespace

CellStyle styleOf(Verdict verdict) {
  switch (verdict) {
    case Verdict::Pass:
      return CellStyle::Pass;
    case Verdict::Fail:
      return CellStyle::Fail;
    case Verdict::CannotTell:
      return CellStyle::CannotTell;
    case Verdict::NotJudged:
      break;
  }
  return CellStyle::NotJudged;
}

std::string cellName(std::uint32_t row, std::uint16_t column, bool absolute) {
  char name[LXW_MAX_CELL_NAME_LENGTH];
  if (absolute)
    lxw_rowcol_to_cell_abs(name, row, column, 1, 1);
  else
    lxw_rowcol_to_cell(name, row, column);
  return name;
}

std::string columnRange(std::uint32_t first, std::uint32_t last, std::uint16_t column) {
  return cellName(first, column) + ":" + cellName(last, column);
}

void WorkbookSheet::text(std::uint32_t row, std::uint16_t column, const std::string& text, CellStyle style) {
  worksheet_write_string(m_sheet, row, column, cut(text, longestCell).c_str(), m_file->format(style));
}

void WorkbookSheet::texts(std::uint32_t row, const std::vector<std::string>& texts, CellStyle style) {
  std::uint16_t column = 0;
  for (const std::string& one : texts) text(row, column++, one, style);
}

void WorkbookSheet::number(std::uint32_t row, std::uint16_t column, const std::optional<double>& value,
                           int decimals) {
  if (!value) return;
  if (!std::isfinite(*value)) return text(row, column, shownNumber(value, 0));
  worksheet_write_number(m_sheet, row, column, *value, m_file->numberFormat(decimals));
}

void WorkbookSheet::formula(std::uint32_t row, std::uint16_t column, const std::string& formula, double value,
                            int decimals) {
  if (!std::isfinite(value)) return text(row, column, shownNumber(value, 0));
  worksheet_write_formula_num(m_sheet, row, column, formula.c_str(), m_file->numberFormat(decimals), value);
}

void WorkbookSheet::formula(std::uint32_t row, std::uint16_t column, const std::string& formula,
                            const std::string& value, CellStyle style) {
  worksheet_write_formula_str(m_sheet, row, column, formula.c_str(), m_file->format(style), value.c_str());
}

void WorkbookSheet::day(std::uint32_t row, std::uint16_t column, const std::optional<Date>& day) {
  if (!day) return;
  const std::tm time = timeOf(*day);
  lxw_datetime cell{time.tm_year + 1900, time.tm_mon + 1, time.tm_mday, 0, 0, 0};
  worksheet_write_datetime(m_sheet, row, column, &cell, m_file->dayFormat());
}

void WorkbookSheet::link(std::uint32_t row, std::uint16_t column, const std::string& text,
                         const std::string& sheet) {
  const std::string target = "internal:" + quoted(sheet) + "!A1";
  worksheet_write_url_opt(m_sheet, row, column, target.c_str(), nullptr, cut(text, longestCell).c_str(),
                          nullptr);
}

void WorkbookSheet::widths(std::initializer_list<double> characters) {
  std::uint16_t column = 0;
  for (const double width : characters) {
    worksheet_set_column(m_sheet, column, column, width, nullptr);
    ++column;
  }
}

void WorkbookSheet::freeze(std::uint32_t row, std::uint16_t column) {
  worksheet_freeze_panes(m_sheet, row, column);
  if (row > 0) worksheet_repeat_rows(m_sheet, 0, row - 1);
}

void WorkbookSheet::chart(std::uint32_t row, std::uint16_t column, const Chart& chart) {
  lxw_chart* drawn = workbook_add_chart(m_file->m_book, LXW_CHART_SCATTER);
  const auto range = [&](lxw_chart_series* series, bool values, std::uint32_t first, std::uint16_t left,
                         std::uint32_t last, std::uint16_t right) {
    (values ? chart_series_set_values : chart_series_set_categories)(series, m_name.c_str(), first, left,
                                                                     last, right);
  };
  lxw_chart_series* points = chart_add_series(drawn, nullptr, nullptr);
  range(points, false, chart.firstRow, chart.x, chart.lastRow, chart.x);
  range(points, true, chart.firstRow, chart.y, chart.lastRow, chart.y);
  chart_series_set_name(points, chart.pointsName.c_str());
  if (chart.lineRow) {
    const auto right = static_cast<std::uint16_t>(chart.lineColumn + 1);
    lxw_chart_series* line = chart_add_series(drawn, nullptr, nullptr);
    range(line, false, *chart.lineRow, chart.lineColumn, *chart.lineRow, right);
    range(line, true, *chart.lineRow + 1, chart.lineColumn, *chart.lineRow + 1, right);
    chart_series_set_name(line, chart.lineName.c_str());
    lxw_chart_line stroke{};
    stroke.color = 0x4C5560;
    stroke.width = 1.25F;
    chart_series_set_line(line, &stroke);
    chart_series_set_marker_type(line, LXW_CHART_MARKER_NONE);
  }
  chart_title_set_name(drawn, cut(chart.title, 200).c_str());
  chart_axis_set_name(drawn->x_axis, chart.xTitle.c_str());
  chart_axis_set_name(drawn->y_axis, chart.yTitle.c_str());
  chart_axis_set_label_position(drawn->x_axis, LXW_CHART_AXIS_LABEL_POSITION_LOW);
  chart_axis_set_label_position(drawn->y_axis, LXW_CHART_AXIS_LABEL_POSITION_LOW);
  worksheet_insert_chart(m_sheet, row, column, drawn);
}

WorkbookFile::WorkbookFile(const Facts& facts)
    : m_path(temporaryPath(m_fault)), m_title(facts.title), m_dayPattern(facts.dayPattern) {
  if (m_fault) return;
  m_book = workbook_new(m_path.c_str());
  if (!m_book) return;
  std::string title = facts.title, author = facts.author, subject = facts.subject, program = "Shuntwright";
  lxw_doc_properties properties{};
  properties.title = title.data();
  properties.author = author.data();
  properties.subject = subject.data();
  properties.comments = program.data();
  if (facts.created) {
    std::tm time = timeOf(*facts.created);
    properties.created = timegm(&time);
  }
  workbook_set_properties(m_book, &properties);
  if (!facts.fingerprint.empty())
    workbook_set_custom_property_string(m_book, "shuntwright-fingerprint", facts.fingerprint.c_str());
}

WorkbookFile::~WorkbookFile() {
  if (m_book) workbook_close(m_book);
  std::error_code ignored;
  if (!m_fault) std::filesystem::remove(m_path, ignored);
}

std::string WorkbookFile::sheetNameFor(const std::string& wanted) {
  std::string name;
  for (const char c : wanted)
    name +=
        std::string_view("[]:*?/\\").find(c) != std::string_view::npos || static_cast<unsigned char>(c) < 0x20
            ? '_'
            : c;
  // An apostrophe may not stand at either end.
  while (!name.empty() && (name.front() == '\'' || name.front() == ' ')) name.erase(0, 1);
  name = firstCharacters(name, longestSheetName);
  while (!name.empty() && (name.back() == '\'' || name.back() == ' ')) name.pop_back();
  if (name.empty()) name = "_";
  std::string unique = name;
  for (unsigned number = 2; m_names.contains(lower(unique)) || lower(unique) == "history"; ++number) {
    const std::string tail = " (" + std::to_string(number) + ")";
    unique = firstCharacters(name, longestSheetName - tail.size()) + tail;
  }
  m_names.insert(lower(unique));
  return unique;
}

WorkbookSheet WorkbookFile::addSheet(const std::string& name) {
  lxw_worksheet* sheet = m_book ? workbook_add_worksheet(m_book, name.c_str()) : nullptr;
  if (sheet) {
    worksheet_set_landscape(sheet);
    worksheet_set_paper(sheet, 9);  // A4
    worksheet_fit_to_pages(sheet, 1, 0);
    worksheet_set_header(sheet, ("&L" + headerText(m_title) + "&R&A").c_str());
    worksheet_set_footer(sheet, "&LShuntwright&R&P / &N");
  }
  return {*this, sheet, name};
}

Result<std::string> WorkbookFile::bytes() {
  const auto failed = [this](const std::error_code& why) {
    return Error{say("the workbook"),
                 say("it is put together in a temporary file, and that cannot be written: {1}, {2}",
                     {m_path, why.message()}),
                 say("Make room there, or let TMPDIR name another folder")};
  };
  const std::error_code unnamed(EIO, std::generic_category());
  if (!m_book) return failed(m_fault ? m_fault : unnamed);
  errno = 0;  // the library tells by it what the system said
  if (workbook_close(std::exchange(m_book, nullptr)) != LXW_NO_ERROR)
    return failed(errno != 0 ? std::error_code(errno, std::generic_category()) : unnamed);
  std::error_code sizeless;
  const std::uintmax_t size = std::filesystem::file_size(m_path, sizeless);
  std::ifstream file(m_path, std::ios::binary);
  std::string bytes{std::istreambuf_iterator<char>(file), {}};
  if (sizeless || bytes.size() != size) return failed(sizeless ? sizeless : unnamed);
  // What the library did not notice is most likely this.
  if (!isWholeWorkbook(bytes)) return failed(std::error_code(ENOSPC, std::generic_category()));
  return bytes;
}

lxw_format* WorkbookFile::format(CellStyle style) {
  lxw_format*& format = m_formats[styleBase + static_cast<int>(style)];
  if (format || !m_book) return format;
  format = workbook_add_format(m_book);
  format_set_align(format, LXW_ALIGN_VERTICAL_TOP);
  switch (style) {
    case CellStyle::Plain:
      break;
    case CellStyle::Title:
      format_set_bold(format);
      format_set_font_size(format, 13);
      break;
    case CellStyle::Head:
      format_set_bold(format);
      format_set_text_wrap(format);
      format_set_bg_color(format, 0xE9EDF1);
      format_set_border(format, LXW_BORDER_THIN);
      break;
    case CellStyle::Wrapped:
      format_set_text_wrap(format);
      break;
    default:
      colour(format, style);
  }
  return format;
}

lxw_format* WorkbookFile::numberFormat(int decimals) {
  lxw_format*& format = m_formats[decimals];
  if (format || !m_book) return format;
  format = workbook_add_format(m_book);
  format_set_align(format, LXW_ALIGN_VERTICAL_TOP);
  if (decimals >= 0)
    format_set_num_format(
        format, decimals == 0 ? "0" : ("0." + std::string(static_cast<std::size_t>(decimals), '0')).c_str());
  return format;
}

lxw_format* WorkbookFile::dayFormat() {
  lxw_format*& format = m_formats[dayKey];
  if (format || !m_book) return format;
  format = workbook_add_format(m_book);
  format_set_align(format, LXW_ALIGN_VERTICAL_TOP);
  format_set_align(format, LXW_ALIGN_LEFT);
  std::string pattern = m_dayPattern;
  std::replace(pattern.begin(), pattern.end(), 'M', 'm');  // months of a workbook are small letters
  format_set_num_format(format, pattern.c_str());
  return format;
}

}  // namespace core
