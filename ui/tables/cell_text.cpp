// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tables/cell_text.h"

#include <algorithm>

#include "ui/tables/cell_value.h"

namespace ui {
namespace {

constexpr QChar quotationMark = '"';

/// After any apostrophes, so that one more is taken away again, and white space, which may be lost on the
/// way.
bool beginsFormula(const QString& text) {
  static const QString signs = "=@+-";
  const auto* const first =
      std::find_if(text.begin(), text.end(), [](QChar c) { return c != '\'' && !c.isSpace(); });
  return first != text.end() && signs.contains(*first);
}

/// Where the quoted cell that begins at `at` ends: behind its closing mark; -1 when it is none, since a cell
/// must end there.
qsizetype endOfQuoted(const QString& text, qsizetype at) {
  for (qsizetype k = at + 1; k < text.size(); ++k) {
    if (text[k] != quotationMark) continue;
    if (k + 1 < text.size() && text[k + 1] == quotationMark) {
      ++k;
      continue;
    }
    const bool isEnd = k + 1 == text.size() || text[k + 1] == '\t' || text[k + 1] == '\n';
    return isEnd ? k + 1 : -1;
  }
  return -1;
}

qsizetype endOfPlain(const QString& text, qsizetype at) {
  while (at < text.size() && text[at] != '\t' && text[at] != '\n') ++at;
  return at;
}

}  // namespace

QString tabbedText(const CellBlock& rows) {
  QStringList lines;
  for (QStringList cells : rows) {
    for (QString& cell : cells)
      if (cell.contains('\t') || cell.contains('\n') || cell.contains('\r') || cell.startsWith(quotationMark))
        cell = quotationMark + cell.replace("\"", "\"\"") + quotationMark;
    lines << cells.join('\t');
  }
  return lines.join('\n');
}

CellBlock cellsOfTabbedText(const QString& given) {
  QString text = given;
  text.replace("\r\n", "\n").replace('\r', '\n');
  text.remove(QChar(0));  // some programs end the text with one
  if (text.endsWith('\n')) text.chop(1);
  CellBlock rows{{}};
  qsizetype at = 0;
  while (true) {
    const bool quoted = at < text.size() && text[at] == quotationMark;
    qsizetype end = quoted ? endOfQuoted(text, at) : -1;
    if (end > 0) {
      rows.last() << text.mid(at + 1, end - at - 2).replace("\"\"", "\"");
    } else {
      end = endOfPlain(text, at);
      rows.last() << text.mid(at, end - at);
    }
    if (end >= text.size()) return rows;
    if (text[end] == '\n') rows.append(QStringList());
    at = end + 1;
  }
}

QString htmlTable(const CellBlock& rows, bool hasHeadings, const QString& language) {
  QString html = "<!DOCTYPE html>\n<html lang=\"" + language.toHtmlEscaped() +
                 "\"><head><meta charset=\"utf-8\"></head><body><table>\n";
  for (qsizetype row = 0; row < rows.size(); ++row) {
    const QString tag = hasHeadings && row == 0 ? "th" : "td";
    html += "<tr>";
    for (const QString& cell : rows[row])
      html += "<" + tag + ">" + cell.toHtmlEscaped().replace('\n', "<br>") + "</" + tag + ">";
    html += "</tr>\n";
  }
  return html + "</table></body></html>\n";
}

QString guardedCell(const QString& text) {
  if (!beginsFormula(text) || numberIn(text)) return text;
  return '\'' + text;
}

QString unguardedCell(const QString& text) {
  return text.startsWith('\'') && beginsFormula(text) ? text.mid(1) : text;
}

}  // namespace ui
