// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/html.h"

#include <algorithm>
#include <utility>

namespace core {
namespace {

// QTextDocument knows a small part of CSS; what it does not know it leaves alone.
constexpr std::string_view style = R"(
body { font-family: "DejaVu Sans", sans-serif; font-size: 9pt; color: #14191f; }
h1 { font-size: 18pt; margin-top: 0px; margin-bottom: 10px; }
h2 { font-size: 13pt; margin-top: 18px; margin-bottom: 6px; }
h3 { font-size: 10.5pt; margin-top: 14px; margin-bottom: 4px; }
p { margin-top: 4px; margin-bottom: 4px; }
p.caption { font-weight: bold; margin-top: 8px; margin-bottom: 2px; }
td.note { color: #4c5560; border: none; }
p.caution { background-color: #fff3e0; margin-top: 4px; margin-bottom: 4px; }
p.pass, td.pass { color: #00704f; font-weight: bold; }
p.fail, td.fail { color: #b84600; font-weight: bold; }
p.untold, td.untold { color: #8a6100; font-weight: bold; }
p.open, td.open { color: #4c5560; font-weight: bold; }
table { border-collapse: collapse; }
th { font-size: 8pt; background-color: #e9edf1; border: 1px solid #b9c1c9; padding: 2px 5px; white-space: nowrap; }
td { font-size: 8pt; border: 1px solid #d3d8dd; padding: 1px 5px; }
td.hand { padding: 14px 5px; }
td.number { white-space: nowrap; }
table.fine td, table.fine th { font-size: 7pt; padding: 0px 4px; }
td.fine { font-size: 7pt; }
td.name { color: #4c5560; white-space: nowrap; }
td.part { border: none; padding-left: 18px; }
td.chapter { border: none; }
td.side { border: none; padding: 3px 9px 0px 0px; vertical-align: top; }
)";

/// "U of", "expected", "(chain),", "µm/m": each on a line of its own, so that columns stay narrow.
std::string headText(const std::string& name) {
  constexpr std::pair<std::string_view, std::string_view> breaks[] = {
      {" (", "<br>("}, {", ", ",<br>"}, {"U of ", "U of<br>"}, {"Guard ", "Guard<br>"}};
  std::string html = htmlText(name);
  for (const auto& [from, to] : breaks)
    if (const std::size_t at = html.rfind(from); at != std::string::npos) html.replace(at, from.size(), to);
  return html;
}

class Writer {
 public:
  Writer(const Report& report, const std::function<PictureSource(const Picture&)>& pictures)
      : m_report(report), m_pictures(pictures) {}

  void operator()(const Paragraph& paragraph) {
    m_html += paragraph.verdict ? "<p class=\"" + std::string(classOf(*paragraph.verdict)) + "\">" : "<p>";
    m_html += htmlText(paragraph.text) + "</p>\n";
  }

  void operator()(const Caution& caution) {
    m_html +=
        "<p class=\"caution\"><b>" + htmlText(say("Caution.")) + "</b> " + htmlText(caution.text) + "</p>\n";
  }

  void operator()(const EntryList& list) {
    addCaption(list.caption);
    m_html += "<table cellspacing=\"0\">\n";
    for (const Entry& entry : list.entries)
      m_html += "<tr><td class=\"name\">" + htmlText(entry.name) +
                (entry.fine ? "</td><td class=\"fine\">" : "</td><td>") + htmlText(entry.value) +
                "</td></tr>\n";
    m_html += "</table>\n";
  }

  void operator()(const Table& table) {
    addCaption(table.caption);
    m_html += "<table cellspacing=\"0\" width=\"100%\"" + std::string(table.fine ? " class=\"fine\"" : "") +
              "><thead><tr>";
    for (const TableColumn& column : table.columns)
      m_html += "<th align=\"" + std::string(column.numeric ? "right" : "left") + "\"" + widthOf(column) +
                ">" + headText(column.name) + "</th>";
    m_html += "</tr></thead><tbody>\n";
    for (const TableRow& row : table.rows) addRow(table, row);
    if (!table.note.empty())  // as a row, so that no page's end parts it from its table
      m_html += "<tr><td class=\"note\" colspan=\"" + std::to_string(table.columns.size()) + "\">" +
                htmlText(table.note) + "</td></tr>\n";
    m_html += "</tbody></table>\n";
  }

  void operator()(const Picture& picture) {
    const PictureSource source = m_pictures ? m_pictures(picture) : PictureSource{};
    if (source.address.empty()) return;
    m_html += "<p><img src=\"" + htmlText(source.address) + "\" width=\"" + std::to_string(source.width_px) +
              "\" alt=\"" + htmlText(picture.caption) + "\"></p>\n";
    m_html += "<p>" + htmlText(picture.caption) + ".</p>\n";
  }

  void operator()(const Contents& contents) {
    m_html += "<table cellspacing=\"0\" width=\"100%\" class=\"contents\">\n";
    for (const std::size_t index : contents.sections) {
      const Section& section = m_report.sections[index];
      m_html += "<tr><td class=\"" + std::string(section.level <= 1 ? "chapter" : "part") + "\">" +
                htmlText(section.heading) + "</td></tr>\n";
    }
    m_html += "</table>\n";
  }

  void add(const Section& section) {
    const std::string tag = section.level <= 1 ? "h2" : "h3";
    m_html += "<" + tag + ">" + htmlText(section.heading) + "</" + tag + ">\n";
    for (std::size_t k = 0; k < section.blocks.size();) k += addFrom(section.blocks, k);
  }

  std::string take() { return std::move(m_html); }

 private:
  /// What takes less than a page's width: lists, and charts, which read well when small.
  static bool isNarrow(const Block& block) {
    const auto* picture = std::get_if<Picture>(&block);
    return std::holds_alternative<EntryList>(block) || (picture && picture->kind == Picture::Kind::Outcome);
  }

  /// Adds block `k`; narrow ones in a row stand side by side, to save paper. Returns how many were added.
  std::size_t addFrom(const std::vector<Block>& blocks, std::size_t k) {
    std::size_t end = k;
    while (end < blocks.size() && isNarrow(blocks[end])) ++end;
    if (end - k < 2) {
      std::visit(*this, blocks[k]);
      return 1;
    }
    // More than three leave each too little of the width for its words.
    const std::size_t rows = (end - k + 2) / 3, each = (end - k + rows - 1) / rows;
    end = std::min(end, k + each);
    m_html += "<table class=\"side\" width=\"100%\" cellspacing=\"0\"><tr>\n";
    for (std::size_t side = k; side < end; ++side) {
      const bool picture = std::holds_alternative<Picture>(blocks[side]);
      m_html += "<td class=\"side\" valign=\"top\"" + std::string(picture ? " width=\"64%\">" : ">");
      std::visit(*this, blocks[side]);
      m_html += "</td>\n";
    }
    m_html += "</tr></table>\n";
    return end - k;
  }

  void addCaption(const std::string& caption) {
    if (!caption.empty()) m_html += "<p class=\"caption\">" + htmlText(caption) + "</p>\n";
  }

  // Emphasis only on the last cell that says something, which holds the word.
  static std::string_view cellClass(const Table& table, const TableRow& row, std::size_t cell) {
    if (table.handwriting) return "hand";
    const auto saysNothing = [](const std::string& text) { return text.empty(); };
    const bool last =
        !row.cells[cell].empty() &&
        std::all_of(row.cells.begin() + static_cast<std::ptrdiff_t>(cell) + 1, row.cells.end(), saysNothing);
    if (row.verdict && last) return classOf(*row.verdict);
    const bool whole = table.columns[cell].numeric && startsNumber(row.cells[cell]);
    return whole || isShortWord(row.cells[cell]) ? "number" : "plain";
  }

  static std::string widthOf(const TableColumn& column) {
    return column.width_percent > 0 ? " width=\"" + std::to_string(column.width_percent) + "%\""
                                    : std::string();
  }

  /// QTextDocument forgets the gap below a table that ends with a cell of nothing.
  static std::string cellText(const std::string& text) { return text.empty() ? "&nbsp;" : htmlText(text); }

  /// What must not be broken over two lines; words in a column of numbers may.
  static bool startsNumber(const std::string& text) {
    return !text.empty() && (text[0] == '-' || (text[0] >= '0' && text[0] <= '9'));
  }

  /// A label such as "+1000" that a narrow column would break between its letters.
  static bool isShortWord(const std::string& text) {
    return text.size() <= 8 && text.find(' ') == std::string::npos;
  }

  void addRow(const Table& table, const TableRow& row) {
    m_html += "<tr>";
    for (std::size_t k = 0; k < row.cells.size(); ++k)
      m_html += "<td align=\"" + std::string(table.columns[k].numeric ? "right" : "left") + "\" class=\"" +
                std::string(cellClass(table, row, k)) + "\">" + cellText(row.cells[k]) + "</td>";
    m_html += "</tr>\n";
  }

  const Report& m_report;
  const std::function<PictureSource(const Picture&)>& m_pictures;
  std::string m_html;
};

}  // namespace

std::string_view classOf(Verdict verdict) {
  switch (verdict) {
    case Verdict::Pass:
      return "pass";
    case Verdict::Fail:
      return "fail";
    case Verdict::CannotTell:
      return "untold";
    case Verdict::NotJudged:
      return "open";
  }
  return {};
}

std::string htmlText(std::string_view text) {
  std::string html;
  html.reserve(text.size());
  for (const char c : text) {
    switch (c) {
      case '&':
        html += "&amp;";
        break;
      case '<':
        html += "&lt;";
        break;
      case '>':
        html += "&gt;";
        break;
      case '"':
        html += "&quot;";
        break;
      case '\'':
        html += "&#39;";
        break;
      case '\n':
        html += "<br>";
        break;
      default:
        html += c;
    }
  }
  return html;
}

std::string reportHtml(const Report& report, const std::function<PictureSource(const Picture&)>& pictures) {
  const LanguageScope scope(report.words);
  Writer writer(report, pictures);
  for (const Section& section : report.sections) writer.add(section);
  return "<!DOCTYPE html>\n<html lang=\"" + htmlText(report.language) +
         "\"><head><meta charset=\"utf-8\"><title>" + htmlText(report.title) + "</title><style>" +
         std::string(style) + "</style></head><body>\n<h1>" + htmlText(report.title) + "</h1>\n" +
         writer.take() + "</body></html>\n";
}

}  // namespace core
