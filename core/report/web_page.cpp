// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/web_page.h"

#include <algorithm>

#include "core/units/language.h"

namespace core {
namespace {

// Colours as in ui/theme; contrast of text at least 4.5 to 1 (WCAG 2.1, 1.4.3), light and dark.
constexpr std::string_view pageStyle = R"(
:root { color-scheme: light dark; --text: #14191f; --back: #ffffff; --faint: #4c5560; --line: #b9c1c9;
  --head: #e9edf1; --warn: #fff3e0; --pass: #00704f; --fail: #b84600; --untold: #8a6100; --link: #0b5cad; }
@media (prefers-color-scheme: dark) { :root { --text: #e4e8ec; --back: #171b20; --faint: #a7b0ba; --line: #4a535d;
  --head: #262d35; --warn: #3a2c12; --pass: #4fc9a0; --fail: #ff9d63; --untold: #e6b84d; --link: #7db7f0; } }
body { font-family: "DejaVu Sans", system-ui, sans-serif; font-size: 0.95rem; line-height: 1.45; color: var(--text);
  background: var(--back); max-width: 70rem; margin: 0 auto; padding: 1rem; overflow-wrap: break-word; }
h1 { font-size: 1.8rem; } h2 { font-size: 1.35rem; margin-top: 2.2rem; border-bottom: 1px solid var(--line); }
h3 { font-size: 1.1rem; margin-top: 1.6rem; }
a { color: var(--link); } nav ul { list-style: none; padding-left: 1.2rem; } nav > ul { padding-left: 0; }
.caution { background: var(--warn); padding: 0.3rem 0.6rem; border-left: 4px solid var(--untold); }
.pass, .fail, .untold, .open { font-weight: bold; } .pass { color: var(--pass); } .fail { color: var(--fail); }
.untold { color: var(--untold); } .open { color: var(--faint); }
.wide { overflow-x: auto; }
table { border-collapse: collapse; margin: 0.6rem 0; } table.whole { width: 100%; }
caption { text-align: left; font-weight: bold; padding: 0.3rem 0; caption-side: top; overflow-wrap: anywhere; }
th, td { border: 1px solid var(--line); padding: 0.15rem 0.45rem; text-align: left; vertical-align: top; font-size: 0.85rem; }
thead th { background: var(--head); } tbody th { font-weight: normal; color: var(--faint); }
.number { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
.long { overflow-wrap: anywhere; min-width: 10rem; }
.hand td { height: 2.6rem; } .fine { font-size: 0.75rem; overflow-wrap: anywhere; }
.note { color: var(--faint); font-size: 0.85rem; }
figure { margin: 0.8rem 0; } figure img { max-width: 100%; height: auto; background: #ffffff; padding: 0.4rem; }
figcaption { color: var(--faint); font-size: 0.85rem; }
@media print { :root { --text: #000000; --back: #ffffff; --faint: #4c5560; --line: #b9c1c9; --head: #e9edf1;
  --warn: #ffffff; --pass: #00704f; --fail: #b84600; --untold: #8a6100; --link: #000000; color-scheme: light; }
  @page { size: A4; margin: 16mm; } body { max-width: none; padding: 0; font-size: 9pt; } .wide { overflow: visible; }
  h2, h3, caption { break-after: avoid; } tr, figure, .caution { break-inside: avoid; } thead { display: table-header-group; }
  th, td { font-size: 7.5pt; } }
)";

/// Whether a table would grow beyond the page for a word of `text`. As many letters fit into a column.
bool hasLongWord(const std::string& text) {
  constexpr std::size_t longest = 32;  // bytes
  for (std::size_t from = 0, to = 0; to <= text.size(); ++to) {
    if (to < text.size() && text[to] != ' ' && text[to] != '\n') continue;
    if (to - from > longest) return true;
    from = to + 1;
  }
  return false;
}

std::string anchorOf(std::size_t section) { return "s" + std::to_string(section + 1); }

class PageWriter {
 public:
  PageWriter(const Report& report, const std::function<PictureSource(const Picture&)>& pictures)
      : m_report(report), m_pictures(pictures) {}

  void operator()(const Paragraph& paragraph) {
    m_html += paragraph.verdict ? "<p class=\"" + std::string(classOf(*paragraph.verdict)) + "\">" : "<p>";
    m_html += htmlText(paragraph.text) + "</p>\n";
  }

  void operator()(const Caution& caution) {
    m_html += "<p class=\"caution\" role=\"note\"><strong>" + htmlText(say("Caution.")) + "</strong> " +
              htmlText(caution.text) + "</p>\n";
  }

  void operator()(const EntryList& list) {
    m_html += "<table>";
    addCaption(list.caption);
    m_html += "<tbody>\n";
    for (const Entry& entry : list.entries)
      m_html += "<tr><th scope=\"row\">" + htmlText(entry.name) + "</th><td" +
                classAttribute(entry.fine ? "fine" : classFor(entry.value, false)) + ">" +
                htmlText(entry.value) + "</td></tr>\n";
    m_html += "</tbody></table>\n";
  }

  void operator()(const Table& table) {
    m_html +=
        "<div class=\"wide\"><table class=\"whole" + std::string(table.handwriting ? " hand" : "") + "\">";
    addCaption(table.caption);
    m_html += "<thead><tr>";
    for (const TableColumn& column : table.columns)
      m_html += "<th scope=\"col\"" + classAttribute(classFor(column.name, column.numeric)) + ">" +
                htmlText(column.name) + "</th>";
    m_html += "</tr></thead><tbody>\n";
    for (const TableRow& row : table.rows) addRow(table, row);
    m_html += "</tbody></table></div>\n";
    if (!table.note.empty()) m_html += "<p class=\"note\">" + htmlText(table.note) + "</p>\n";
  }

  void operator()(const Picture& picture) {
    const PictureSource source = m_pictures ? m_pictures(picture) : PictureSource{};
    if (source.address.empty()) return;
    m_html += "<figure><img src=\"" + htmlText(source.address) + "\" width=\"" +
              std::to_string(source.width_px) + "\" alt=\"" + htmlText(picture.caption) + "\"><figcaption>" +
              htmlText(picture.caption) + ".</figcaption></figure>\n";
  }

  /// Parts of a chapter are a list within its line.
  void operator()(const Contents& contents) {
    m_html += "<nav aria-label=\"" + htmlText(say("Contents")) + "\"><ul>";
    bool inside = false, began = false;
    for (const std::size_t index : contents.sections) {
      const Section& section = m_report.sections[index];
      const bool isPart = section.level > 1 && began;
      if (isPart && !inside) m_html += "<ul>";
      if (!isPart && inside) m_html += "</ul>";
      if (!isPart && began) m_html += "</li>";
      m_html += "\n<li><a href=\"#" + anchorOf(index) + "\">" + htmlText(section.heading) + "</a>";
      if (isPart) m_html += "</li>";
      inside = isPart;
      began = true;
    }
    if (inside) m_html += "</ul>";
    m_html += began ? "</li></ul></nav>\n" : "</ul></nav>\n";
  }

  void add(std::size_t index) {
    const Section& section = m_report.sections[index];
    const std::string tag = section.level <= 1 ? "h2" : "h3";
    const std::string anchor = anchorOf(index);
    m_html += "<section aria-labelledby=\"" + anchor + "\"><" + tag + " id=\"" + anchor + "\">" +
              htmlText(section.heading) + "</" + tag + ">\n";
    for (const Block& block : section.blocks) std::visit(*this, block);
    m_html += "</section>\n";
  }

  std::string take() { return std::move(m_html); }

 private:
  /// A word without an end is broken in a column of numbers too.
  static std::string classFor(const std::string& text, bool numeric) {
    return hasLongWord(text) ? "long" : numeric ? "number" : "";
  }
  static std::string classAttribute(const std::string& classes) {
    return classes.empty() ? "" : " class=\"" + classes + "\"";
  }

  void addCaption(const std::string& caption) {
    if (!caption.empty()) m_html += "<caption>" + htmlText(caption) + "</caption>";
  }

  /// The verdict's colour stands on the last cell that says something, which holds its word.
  void addRow(const Table& table, const TableRow& row) {
    std::size_t last = row.cells.size();
    while (last > 0 && row.cells[last - 1].empty()) --last;
    m_html += "<tr>";
    for (std::size_t k = 0; k < row.cells.size(); ++k) {
      std::string classes = classFor(row.cells[k], table.columns[k].numeric);
      if (row.verdict && k + 1 == last)
        classes += (classes.empty() ? "" : " ") + std::string(classOf(*row.verdict));
      m_html += "<td" + classAttribute(classes) + ">" + htmlText(row.cells[k]) + "</td>";
    }
    m_html += "</tr>\n";
  }

  const Report& m_report;
  const std::function<PictureSource(const Picture&)>& m_pictures;
  std::string m_html;
};

}  // namespace

std::string reportWebPage(const Report& report,
                          const std::function<PictureSource(const Picture&)>& pictures) {
  const LanguageScope scope(report.words);
  PageWriter writer(report, pictures);
  for (std::size_t k = 0; k < report.sections.size(); ++k) writer.add(k);
  std::string head = "<!DOCTYPE html>\n<html lang=\"" + htmlText(report.language) +
                     "\"><head><meta charset=\"utf-8\">"
                     "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">"
                     "<meta name=\"generator\" content=\"Shuntwright\">";
  if (!report.fingerprint.empty())
    head += "<meta name=\"shuntwright-fingerprint\" content=\"" + htmlText(report.fingerprint) + "\">";
  return head + "<title>" + htmlText(report.title) + "</title><style>" + std::string(pageStyle) +
         "</style></head><body>\n<main><h1>" + htmlText(report.title) + "</h1>\n" + writer.take() +
         "</main></body></html>\n";
}

}  // namespace core
