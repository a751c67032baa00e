// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/page_table.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "ui/theme.h"

namespace ui {
namespace {

constexpr double hairline = 0.5 * dotsPerPoint;
constexpr double tallestRow = 80 * dotsPerMm;  ///< a taller one may be cut between its lines
const QColor headFill(0xe9, 0xed, 0xf1);

struct CellStyle {
  Look plain, bold;
  double side, above;  ///< padding
};

constexpr CellStyle usual{Look::Cell, Look::CellBold, 3.5 * dotsPerPoint, 1.2 * dotsPerPoint};
constexpr CellStyle small{Look::Fine, Look::FineBold, 2.6 * dotsPerPoint, 0.4 * dotsPerPoint};
constexpr double handwritten = 10 * dotsPerPoint;  ///< above and below what is filled in by hand

struct Cell {
  QString text;
  Look look = Look::Cell;
  QColor colour = blackInk;
  bool right = false;
  bool whole = false;  ///< is not broken over lines as long as there is room
};
using Row = std::vector<Cell>;

/// "U of", "expected", "(chain),", "µm/m": each on a line of its own, so that columns stay narrow.
QString headText(const std::string& name) {
  constexpr qsizetype longest = 100;  // letters; a head is never cut over two pages
  QString text = toQString(name);
  if (text.size() > longest) text = text.left(longest - 1) + u'…';
  constexpr std::pair<const char*, const char*> breaks[] = {
      {" (", "\n("}, {", ", ",\n"}, {"U of ", "U of\n"}, {"Guard ", "Guard\n"}};
  for (const auto& [from, to] : breaks)
    if (const qsizetype at = text.lastIndexOf(from); at >= 0) text.replace(at, qsizetype(qstrlen(from)), to);
  return text;
}

double widest(const Cell& cell) {
  double width = 0;
  for (const QStringView line : QStringView(cell.text).split(u'\n'))
    width = std::max(width, widthOf(line, cell.look));
  return width;
}

/// A row laid out in columns, and cut where it is taller than a row may be.
class RowMaker {
 public:
  RowMaker(const std::vector<double>& columns, CellStyle style, double above)
      : m_columns(columns), m_style(style), m_above(above) {}

  std::vector<Slice> make(const Row& row, const QColor& fill, bool grid) const {
    std::vector<std::vector<TextLine>> cells;
    std::size_t lines = 1;
    for (std::size_t k = 0; k < row.size(); ++k) {
      cells.push_back(linesOf(row[k].text, row[k].look, m_columns[k] - 2 * m_style.side));
      lines = std::max(lines, cells.back().size());
    }
    const double line = lineHeight(m_style.plain);
    const auto most = static_cast<std::size_t>(tallestRow / line);
    std::vector<Slice> slices;
    for (std::size_t from = 0; from < lines; from += most)
      slices.push_back(part(row, cells, from, std::min(lines, from + most), lines, fill, grid));
    return slices;
  }

 private:
  Slice part(const Row& row, const std::vector<std::vector<TextLine>>& cells, std::size_t from,
             std::size_t to, std::size_t lines, const QColor& fill, bool grid) const {
    const double above = from == 0 ? m_above : 0, below = to == lines ? m_above : 0;
    const double line = lineHeight(m_style.plain);
    Slice slice;
    slice.height = above + static_cast<double>(to - from) * line + below;
    const double width = std::accumulate(m_columns.begin(), m_columns.end(), 0.0);
    if (fill.isValid()) slice.ink.push_back(InkFill{{0, 0, width, slice.height}, fill});
    double left = 0;
    for (std::size_t k = 0; k < row.size(); ++k) {
      for (std::size_t n = from; n < std::min(to, cells[k].size()); ++n) {
        const TextLine& text = cells[k][n];
        if (text.text.isEmpty()) continue;
        const double x = row[k].right ? left + m_columns[k] - m_style.side - text.width : left + m_style.side;
        const double y = above + static_cast<double>(n - from) * line + ascent(m_style.plain);
        slice.ink.push_back(InkText{{x, y}, text.text, row[k].look, row[k].colour});
      }
      left += m_columns[k];
      if (grid && k + 1 < row.size())
        slice.ink.push_back(InkLine{{left, 0, left, slice.height}, ruleInk, hairline});
    }
    if (to == lines) slice.ink.push_back(InkLine{{0, slice.height, width, slice.height}, ruleInk, hairline});
    return slice;
  }

  std::vector<double> m_columns;
  CellStyle m_style;
  double m_above;
};

/// What must not be broken over two lines; words in a column of numbers may.
bool startsNumber(const std::string& text) {
  return !text.empty() && (text[0] == '-' || (text[0] >= '0' && text[0] <= '9'));
}

/// A label such as "+1000" that a narrow column would break between its letters.
bool isShortWord(const std::string& text) { return text.size() <= 8 && text.find(' ') == std::string::npos; }

/// Emphasis only on the last cell that says something, which holds the word.
Row bodyRow(const core::Table& table, const core::TableRow& row, CellStyle style) {
  std::size_t last = row.cells.size();
  for (std::size_t k = 0; k < row.cells.size(); ++k)
    if (!row.cells[k].empty()) last = k;
  Row cells;
  for (std::size_t k = 0; k < table.columns.size(); ++k) {
    const std::string text = k < row.cells.size() ? row.cells[k] : std::string();
    const bool numeric = table.columns[k].numeric;
    Cell cell{toQString(text), style.plain, blackInk, numeric,
              (numeric && startsNumber(text)) || isShortWord(text)};
    if (row.verdict && k == last) cell.look = style.bold, cell.colour = inkColour(*row.verdict);
    cells.push_back(std::move(cell));
  }
  return cells;
}

Row headRow(const core::Table& table, Look look, bool wholeLines) {
  Row cells;
  for (const core::TableColumn& column : table.columns)
    cells.push_back({headText(column.name), look, blackInk, column.numeric, wholeLines});
  return cells;
}

/// What the columns of `rows` need, with their padding.
struct Needs {
  std::vector<double> least, wanted;

  Needs(std::size_t columns) : least(columns, 0), wanted(columns, 0) {}

  void add(const Row& row, double side) {
    for (std::size_t k = 0; k < row.size(); ++k) wanted[k] = std::max(wanted[k], widest(row[k]) + 2 * side);
  }
  /// Only asked when there is not enough, because looking for words takes its time.
  void addLeast(const Row& row, double side) {
    for (std::size_t k = 0; k < row.size(); ++k) {
      const double room = row[k].whole ? widest(row[k]) : longestWord(row[k].text, row[k].look);
      least[k] = std::max(least[k], room + 2 * side);
    }
  }
};

/// Whether columns that share what `fixed` ones leave have room for what must not be broken.
bool haveRoom(const std::vector<Row>& rows, const std::vector<double>& fixed, double side, double width) {
  Needs needs(fixed.size());
  const auto sum = [&](const std::vector<double>& free) {
    double all = 0;
    for (std::size_t k = 0; k < fixed.size(); ++k) all += fixed[k] > 0 ? fixed[k] : free[k];
    return all;
  };
  for (const Row& row : rows) needs.add(row, side);
  if (sum(needs.wanted) <= width) return true;
  for (const Row& row : rows) needs.addLeast(row, side);
  return sum(needs.least) <= width;
}

/// The share of a column that has one, or what the longest word of its head needs; 0 for others.
double fixedWidth(const core::TableColumn& column, const Cell& head, double side, double width) {
  if (column.width_percent == 0) return 0;
  return std::max(width * column.width_percent / 100, longestWord(head.text, head.look) + 2 * side);
}

/// How head and body of a table are set.
struct TableStyle {
  CellStyle head, body;
};

/// The head of `rows` as its words have room: in the lines that it is written in, else in lines of fewer
/// words, else in small letters with less between the columns. A table of ten columns has long heads in most
/// languages.
void fitHead(std::vector<Row>& rows, const core::Table& table, TableStyle& style,
             const std::vector<double>& fixed, double width) {
  if (haveRoom(rows, fixed, style.body.side, width)) return;
  rows.front() = headRow(table, style.head.bold, false);
  if (haveRoom(rows, fixed, style.body.side, width)) return;
  style.head = {small.plain, small.bold, small.side, style.head.above};
  style.body.side = small.side;
  rows.front() = headRow(table, style.head.bold, false);
}

std::vector<double> widthsFor(const std::vector<Row>& rows, const std::vector<double>& fixed, double side,
                              double width) {
  Needs needs(fixed.size());
  for (const Row& row : rows) needs.add(row, side);
  if (std::accumulate(needs.wanted.begin(), needs.wanted.end(), 0.0) > width)
    for (const Row& row : rows) needs.addLeast(row, side);
  return columnWidths(needs.least, needs.wanted, fixed, width);
}

/// What the wider ones of `least` are cut to so that all have `room`: a narrow column keeps what it needs
/// beside one with a word of thousands of letters.
double mostOfEach(std::vector<double> least, double room) {
  std::sort(least.begin(), least.end());
  auto left = static_cast<double>(least.size());
  for (const double need : least) {
    if (need * left > room) return std::max(0.0, room) / left;
    room -= need;
    --left;
  }
  return std::numeric_limits<double>::infinity();
}

}  // namespace

QColor inkColour(core::Verdict verdict) {
  switch (verdict) {
    case core::Verdict::Pass:
      return QColor(0x00, 0x70, 0x4f);
    case core::Verdict::Fail:
      return QColor(0xb8, 0x46, 0x00);
    case core::Verdict::CannotTell:
      return QColor(0x8a, 0x61, 0x00);
    case core::Verdict::NotJudged:
      break;
  }
  return quietInk;
}

std::vector<double> columnWidths(const std::vector<double>& least, const std::vector<double>& wanted,
                                 const std::vector<double>& fixed, double width) {
  const std::size_t count = wanted.size();
  std::vector<double> widths(count, 0);
  double room = width, sumLeast = 0, sumWanted = 0;
  std::vector<double> shared;
  for (std::size_t k = 0; k < count; ++k) {
    if (fixed[k] > 0)
      room -= widths[k] = fixed[k];
    else
      sumLeast += least[k], sumWanted += wanted[k], shared.push_back(least[k]);
  }
  const double most = mostOfEach(std::move(shared), room);
  for (std::size_t k = 0; k < count; ++k) {
    if (fixed[k] > 0) continue;
    if (sumWanted <= room)
      widths[k] = sumWanted > 0 ? wanted[k] * room / sumWanted : room;
    else if (sumLeast <= room)
      widths[k] = least[k] + (wanted[k] - least[k]) * (room - sumLeast) / std::max(1.0, sumWanted - sumLeast);
    else
      widths[k] = std::min(least[k], most);
  }
  return widths;
}

std::vector<Slice> tableSlices(const core::Table& table, double width) {
  const CellStyle usualStyle = table.fine ? small : usual;
  TableStyle style{usualStyle, usualStyle};
  std::vector<Row> rows{headRow(table, style.head.bold, true)};
  for (const core::TableRow& row : table.rows) rows.push_back(bodyRow(table, row, style.body));
  std::vector<double> fixed;
  for (std::size_t k = 0; k < table.columns.size(); ++k)
    fixed.push_back(fixedWidth(table.columns[k], rows.front()[k], style.body.side, width));
  fitHead(rows, table, style, fixed, width);
  const std::vector<double> widths = widthsFor(rows, fixed, style.body.side, width);
  const RowMaker heads(widths, style.head, style.head.above + 0.6 * dotsPerPoint);
  const RowMaker bodies(widths, style.body, table.handwriting ? handwritten : style.body.above);
  Slice joined;  // a head is drawn as one
  for (const Slice& part : heads.make(rows.front(), headFill, false)) {
    addMoved(joined.ink, part.ink, {0, joined.height});
    joined.height += part.height;
  }
  const auto head = std::make_shared<const Slice>(std::move(joined));
  std::vector<Slice> slices{*head};
  for (std::size_t k = 1; k < rows.size(); ++k)
    for (Slice& slice : bodies.make(rows[k], {}, table.handwriting)) slices.push_back(std::move(slice));
  for (std::size_t k = 1; k < slices.size(); ++k) slices[k].head = head;
  return slices;
}

std::vector<Slice> entrySlices(const core::EntryList& list, double width, bool natural) {
  std::vector<Row> rows;
  for (const core::Entry& entry : list.entries)
    rows.push_back(
        {{toQString(entry.name), usual.plain, quietInk, false, false},
         {toQString(entry.value), entry.fine ? small.plain : usual.plain, blackInk, false, false}});
  Needs needs(2);
  for (const Row& row : rows) needs.add(row, usual.side);
  if (natural) width = std::min(width, needs.wanted[0] + needs.wanted[1]);
  // Names keep to less than half; what is left belongs to the values.
  const double names = std::min(needs.wanted[0], std::max(0.46 * width, width - needs.wanted[1]));
  const RowMaker maker({names, width - names}, usual, usual.above);
  std::vector<Slice> slices;
  for (const Row& row : rows)
    for (Slice& slice : maker.make(row, {}, false)) slices.push_back(std::move(slice));
  return slices;
}

}  // namespace ui
