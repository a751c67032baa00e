// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <system_error>
#include <vector>

#include "core/assess/verdict.h"
#include "core/units/date.h"
#include "core/units/result.h"

struct lxw_workbook;
struct lxw_worksheet;
struct lxw_format;

// What the workbook report needs of libxlsxwriter. Rows and columns count from 0.

namespace core {

enum class CellStyle : std::uint8_t { Plain, Title, Head, Wrapped, Pass, Fail, CannotTell, NotJudged };
CellStyle styleOf(Verdict verdict);

/// "H12": how a formula names a cell. Absolute: "$H$12".
std::string cellName(std::uint32_t row, std::uint16_t column, bool absolute = false);
/// "H12:H20".
std::string columnRange(std::uint32_t first, std::uint32_t last, std::uint16_t column);

class WorkbookFile;

/// One sheet, as long as its file lives.
class WorkbookSheet {
 public:
  WorkbookSheet(WorkbookFile& file, lxw_worksheet* sheet, std::string name)
      : m_file(&file), m_sheet(sheet), m_name(std::move(name)) {}

  const std::string& name() const { return m_name; }
  /// Always a string, whatever it begins with; cut at the 32,767 characters that a cell takes.
  void text(std::uint32_t row, std::uint16_t column, const std::string& text,
            CellStyle style = CellStyle::Plain);
  void texts(std::uint32_t row, const std::vector<std::string>& texts, CellStyle style);
  /// Nothing without a value, a word where it is no finite number. `decimals` below 0: as many as it has.
  void number(std::uint32_t row, std::uint16_t column, const std::optional<double>& value, int decimals = -1);
  void formula(std::uint32_t row, std::uint16_t column, const std::string& formula, double value,
               int decimals = -1);
  void formula(std::uint32_t row, std::uint16_t column, const std::string& formula, const std::string& value,
               CellStyle style);
  void day(std::uint32_t row, std::uint16_t column, const std::optional<Date>& day);
  /// A link to the first cell of `sheet`.
  void link(std::uint32_t row, std::uint16_t column, const std::string& text, const std::string& sheet);

  void widths(std::initializer_list<double> characters);
  /// Rows above `row` and columns left of `column` stay in view; the rows stand on every printed page.
  void freeze(std::uint32_t row, std::uint16_t column);

  /// Where points, and a line of two points, stand on this sheet.
  struct Chart {
    std::uint32_t firstRow = 0, lastRow = 0;
    std::uint16_t x = 0, y = 0;                 ///< columns of the points
    std::optional<std::uint32_t> lineRow = {};  ///< its x in this row, its y in the next
    std::uint16_t lineColumn = 0;               ///< of its first point; the second is to the right
    std::string title, xTitle, yTitle, pointsName, lineName;
  };
  void chart(std::uint32_t row, std::uint16_t column, const Chart& chart);

 private:
  WorkbookFile* m_file;
  lxw_worksheet* m_sheet;
  std::string m_name;
};

/// A workbook that is put together in a temporary file.
class WorkbookFile {
 public:
  struct Facts {
    std::string title, author, subject, fingerprint;
    std::optional<Date> created;
    std::string dayPattern = "yyyy-MM-dd";  ///< as core::Language has it
  };
  explicit WorkbookFile(const Facts& facts);
  /// Without it nothing may be put in.
  bool isOpen() const { return m_book; }
  ~WorkbookFile();
  WorkbookFile(const WorkbookFile&) = delete;
  WorkbookFile& operator=(const WorkbookFile&) = delete;

  /// Of a name like `wanted`: without what a sheet's name may not hold, of at most 31 characters, and unlike
  /// any other, capitals aside.
  std::string sheetNameFor(const std::string& wanted);
  /// `name` is from sheetNameFor.
  WorkbookSheet addSheet(const std::string& name);

  /// All of it. To be called once, in the end.
  Result<std::string> bytes();

 private:
  friend class WorkbookSheet;
  lxw_format* format(CellStyle style);
  lxw_format* numberFormat(int decimals);
  lxw_format* dayFormat();

  std::error_code m_fault;  ///< why there is no temporary file
  std::string m_path, m_title, m_dayPattern;
  lxw_workbook* m_book = nullptr;
  std::set<std::string> m_names;         ///< in small letters
  std::map<int, lxw_format*> m_formats;  ///< styles from 1000 on, numbers by their decimals, days 2000
};

}  // namespace core
