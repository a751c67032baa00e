// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/delimited_rows.h"

#include <algorithm>
#include <optional>

#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

std::size_t lineAt(std::string_view text, std::size_t at) {
  std::size_t line = 1;
  for (std::size_t k = 0; k < at; ++k)
    if (text[k] == '\n' || (text[k] == '\r' && (k + 1 == text.size() || text[k + 1] != '\n'))) ++line;
  return line;
}

Error inLine(std::size_t line, std::string what, std::string mend) {
  return {say("line {1}", {std::to_string(line)}), std::move(what), std::move(mend)};
}

Error tooManyCells(std::size_t line, std::size_t most) {
  return inLine(line, say("there are more than {1} cells", {std::to_string(most)}),
                say("Remove columns and rows that are not used"));
}

std::optional<Error> faultOfCharacters(std::string_view text) {
  if (const auto invalid = firstInvalidUtf8(text))
    return inLine(lineAt(text, *invalid), say("the text is not UTF-8"), say("Save the file as CSV in UTF-8"));
  const auto isControl = [](unsigned char c) {
    return (c < 32 && c != '\t' && c != '\r' && c != '\n') || c == 127;
  };
  const auto control = std::find_if(text.begin(), text.end(), isControl);
  if (control == text.end()) return std::nullopt;
  return inLine(lineAt(text, static_cast<std::size_t>(control - text.begin())),
                say("there is a character that is no text"), say("Save the file as CSV in UTF-8"));
}

char delimiterOf(std::string_view text) {
  text.remove_prefix(std::min(text.find_first_not_of(" \r\n"), text.size()));
  const std::string_view first = text.substr(0, text.find_first_of("\r\n"));
  char most = ',';
  for (const char candidate : {';', '\t'})
    if (std::count(first.begin(), first.end(), candidate) > std::count(first.begin(), first.end(), most))
      most = candidate;
  return most;
}

/// Walks through the text cell by cell.
class Rows {
 public:
  Rows(std::string_view text, std::size_t mostRows, char delimiter)
      : m_text(text), m_delimiter(delimiter), m_most(mostRows) {}

  Result<std::vector<Row>> read() {
    while (!atEnd()) {
      auto row = nextRow();
      if (!row) return row.error();
      const auto isEmpty = [](const std::string& cell) { return cell.empty(); };
      if (std::all_of(row->cells.begin(), row->cells.end(), isEmpty)) continue;
      if (m_rows.size() == m_most)
        return inLine(row->line, say("there are more than {1} rows", {std::to_string(m_most)}),
                      say("Split the file"));
      m_cells += row->cells.size();
      if (m_cells > mostCellsInRows) return tooManyCells(row->line, mostCellsInRows);
      m_rows.push_back(*std::move(row));
    }
    return std::move(m_rows);
  }

 private:
  bool atEnd() const { return m_at == m_text.size(); }
  bool atLineEnd() const { return atEnd() || m_text[m_at] == '\n' || m_text[m_at] == '\r'; }
  bool atDelimiter() const { return !atEnd() && m_text[m_at] == m_delimiter; }

  void skipSpaces() {
    while (!atEnd() && m_text[m_at] == ' ') ++m_at;
  }

  bool skipDelimiter() {
    if (!atDelimiter()) return false;
    ++m_at;
    return true;
  }

  /// LF, CR LF and CR are one line end each.
  bool skipLineEnd() {
    if (atEnd() || !atLineEnd()) return false;
    if (m_text.substr(m_at, 2) == "\r\n") ++m_at;
    ++m_at;
    ++m_line;
    return true;
  }

  Result<Row> nextRow() {
    Row row{m_line, {}};
    do {
      auto cell = nextCell();
      if (!cell) return cell.error();
      if (row.cells.size() == mostCellsInRow) return tooManyCells(row.line, mostCellsInRow);
      row.cells.push_back(*std::move(cell));
    } while (skipDelimiter());
    skipLineEnd();
    return row;
  }

  Result<std::string> nextCell() {
    skipSpaces();
    if (!atEnd() && m_text[m_at] == '"') return quotedCell();
    const std::size_t begin = m_at;
    while (!atDelimiter() && !atLineEnd()) ++m_at;
    std::string_view cell = m_text.substr(begin, m_at - begin);
    while (!cell.empty() && cell.back() == ' ') cell.remove_suffix(1);
    return std::string(cell);
  }

  Result<std::string> quotedCell() {
    const std::size_t begun = m_line;
    std::string cell;
    for (++m_at; !atEnd();) {
      const std::size_t before = m_at;
      if (m_text[m_at] == '"') {
        ++m_at;
        if (atEnd() || m_text[m_at] != '"') return afterQuote(std::move(cell));
        cell += '"';
        ++m_at;
      } else if (skipLineEnd()) {
        cell += m_text.substr(before, m_at - before);
      } else {
        cell += m_text[m_at++];
      }
    }
    return inLine(begun, say("a quotation mark opens here and never closes"),
                  say("Close it, or double it where it belongs to the text"));
  }

  Result<std::string> afterQuote(std::string cell) {
    skipSpaces();
    if (atDelimiter() || atLineEnd()) return cell;
    return inLine(m_line, say("there is text after a closing quotation mark"),
                  say("Double the quotation marks that belong to the text"));
  }

  std::string_view m_text;
  char m_delimiter;
  std::size_t m_most;
  std::size_t m_at = 0;
  std::size_t m_line = 1;
  std::size_t m_cells = 0;  ///< of `m_rows`
  std::vector<Row> m_rows;
};

/// What a spreadsheet would take for a formula, after any apostrophes and white space, which may be lost on
/// the way.
bool looksLikeFormula(std::string_view text) {
  const std::size_t first = text.find_first_not_of("' \t\r\n\v\f");
  return first != text.npos && std::string_view("=+-@").find(text[first]) != std::string_view::npos;
}

}  // namespace

Result<std::vector<Row>> delimitedRows(std::string_view text, std::size_t mostRows,
                                       std::optional<char> delimiter) {
  constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
  if (text.starts_with(byteOrderMark)) text.remove_prefix(byteOrderMark.size());
  if (auto fault = faultOfCharacters(text)) return *std::move(fault);
  return Rows(text, mostRows, delimiter ? *delimiter : delimiterOf(text)).read();
}

std::string delimitedCell(std::string_view text) {
  const bool plain =
      text.find_first_of(",;\t\"\r\n") == text.npos && !text.starts_with(' ') && !text.ends_with(' ');
  if (plain) return std::string(text);
  std::string cell = "\"";
  for (const char c : text) cell.append(c == '"' ? 2 : 1, c);
  return cell + "\"";
}

std::string guardedCell(std::string_view text) {
  return delimitedCell((looksLikeFormula(text) ? "'" : "") + std::string(text));
}

std::string_view withoutGuard(std::string_view cell) {
  return cell.starts_with('\'') && looksLikeFormula(cell) ? cell.substr(1) : cell;
}

}  // namespace core
