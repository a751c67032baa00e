// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/report_book.h"

#include <QCoreApplication>
#include <QPainter>

#include "core/record/fingerprint.h"
#include "ui/report/page_blocks.h"
#include "ui/report/page_table.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr double margin = 16 * dotsPerMm,
                 head = 10 * dotsPerMm;  ///< head and foot lie between margin and text
constexpr double paperWidth = 210 * dotsPerMm, paperHeight = 297 * dotsPerMm;  // ISO 216, A4
constexpr double textWidth = paperWidth - 2 * margin, textHeight = paperHeight - 2 * margin - 2 * head;
constexpr double numberWidth = 30 * dotsPerPoint;

/// "Shuntwright 1.2.3 · 2031-05-04 · fingerprint 3f2a 91bc 04de 77a1"
QString footText(const ReportStamp& stamp, const core::Report& report) {
  const QString version = stamp.version.isEmpty() ? QCoreApplication::applicationVersion() : stamp.version;
  QString text = "Shuntwright" + (version.isEmpty() ? QString() : " " + version) + " · " +
                 toQString(core::shown(toDate(stamp.date)));
  if (!report.fingerprint.empty())
    text += " · " + toQString(core::say("fingerprint {1}", {core::shortFingerprint(report.fingerprint)}));
  return text;
}

QString elided(const QString& text, Look look, double width) {
  if (widthOf(text, look) <= width) return text;
  const auto lines = linesOf(text, look, width - widthOf(u"…", look));
  return lines.front().text + "…";
}

void drawFrameText(QPainter& painter, const QString& text, double x, double baseline) {
  painter.setFont(fontOf(Look::Frame));
  painter.setPen(quietInk);
  painter.drawText(QPointF(x, baseline), text);
}

}  // namespace

ReportBook::ReportBook(core::Report report, const ReportStamp& stamp)
    : m_report(std::move(report)), m_title(toQString(m_report.title)), m_places(m_report.sections.size()) {
  const core::LanguageScope scope(m_report.words);
  m_foot = footText(stamp, m_report);
  for (std::size_t index = 0; index < m_report.sections.size(); ++index) {
    const core::Section& section = m_report.sections[index];
    if (m_parts.empty() || section.level <= 1) m_parts.push_back({index, index, {}, {}});
    m_parts.back().endSection = index + 1;
    for (const core::Block& block : section.blocks)
      if (const auto* picture = std::get_if<core::Picture>(&block))
        m_parts.back().pictures.push_back(std::make_shared<PictureSlot>(PictureSlot{*picture}));
  }
}

QSizeF ReportBook::paper() { return {paperWidth, paperHeight}; }

std::span<const std::shared_ptr<PictureSlot>> ReportBook::picturesOf(std::size_t chapter) const {
  return m_parts[chapter].pictures;
}

void ReportBook::layOut(std::size_t chapter) {
  const core::LanguageScope scope(m_report.words);
  Part& part = m_parts[chapter];
  part.chapter =
      chapterOf(m_report, part.firstSection, part.endSection, textWidth, textHeight, part.pictures);
  if (chapter > 0) return;
  std::vector<Slice> all = titleSlices(m_report, textWidth);
  std::move(part.chapter.slices.begin(), part.chapter.slices.end(), std::back_inserter(all));
  part.chapter.slices = std::move(all);
}

void ReportBook::deal(std::size_t count) {
  std::vector<const Chapter*> chapters;
  for (std::size_t k = 0; k < count; ++k) chapters.push_back(&m_parts[k].chapter);
  m_pages = pagesOf(chapters, textHeight);
  m_dealt = count;
  std::fill(m_places.begin(), m_places.end(), std::nullopt);
  for (std::size_t page = 0; page < m_pages.size(); ++page)
    for (const PlacedSlice& placed : m_pages[page])
      if (placed.slice->headingOf)
        m_places[*placed.slice->headingOf] = PagePlace{page, margin + head + placed.top};
}

std::vector<std::shared_ptr<PictureSlot>> ReportBook::picturesOn(std::size_t page) const {
  std::vector<std::shared_ptr<PictureSlot>> found;
  for (const PlacedSlice& placed : m_pages[page])
    for (const Ink& ink : placed.slice->ink)
      if (const auto* picture = std::get_if<InkPicture>(&ink)) found.push_back(picture->slot);
  return found;
}

void ReportBook::paint(QPainter& painter, std::size_t page) const {
  const core::LanguageScope scope(m_report.words);
  paintFrame(painter, page);
  for (const PlacedSlice& placed : m_pages[page]) {
    drawInk(painter, placed.slice->ink, {margin, margin + head + placed.top});
    if (placed.slice->refersTo) paintReference(painter, placed);
  }
}

QString ReportBook::titleOf(const Part& part) const {
  return toQString(m_report.sections[part.firstSection].heading);
}

void ReportBook::paintFrame(QPainter& painter, std::size_t page) const {
  const double rule = margin + head - 4 * dotsPerMm, top = margin + ascent(Look::Frame);
  QString chapter = m_pages[page].empty() ? QString() : titleOf(m_parts[m_pages[page].front().chapter]);
  if (page == 0) chapter.clear();  // the title itself is there
  chapter = elided(chapter, Look::Frame, 0.45 * textWidth);
  const double chapterWidth = widthOf(chapter, Look::Frame);
  drawFrameText(painter, elided(m_title, Look::Frame, textWidth - chapterWidth - 20 * dotsPerPoint), margin,
                top);
  if (!chapter.isEmpty()) drawFrameText(painter, chapter, margin + textWidth - chapterWidth, top);
  painter.setPen(QPen(quietInk, 0.5 * dotsPerPoint));
  painter.drawLine(QPointF(margin, rule), QPointF(margin + textWidth, rule));

  const double bottom = paperHeight - margin - lineHeight(Look::Frame) + ascent(Look::Frame);
  const QString number =
      isWhole()
          ? toQString(core::say("Page {1} of {2}", {std::to_string(page + 1), std::to_string(pageCount())}))
          : toQString(core::say("Page {1}", {std::to_string(page + 1)}));
  drawFrameText(painter, m_foot, margin, bottom);
  drawFrameText(painter, number, margin + textWidth - widthOf(number, Look::Frame), bottom);
}

/// Dots from the end of the line to the number of its page.
void ReportBook::paintReference(QPainter& painter, const PlacedSlice& placed) const {
  const auto& place = m_places[*placed.slice->refersTo];
  const auto* text = std::get_if<InkText>(&placed.slice->ink.back());
  if (!place || !text) return;
  const QPointF baseline(margin + text->at.x(), margin + head + placed.top + text->at.y());
  const QString number = QString::number(place->page + 1);
  const double right = margin + textWidth, numberLeft = right - widthOf(number, text->look);
  const double from = baseline.x() + widthOf(text->text, text->look) + 4 * dotsPerPoint;
  QPen dots(quietInk, 0.7 * dotsPerPoint, Qt::CustomDashLine, Qt::FlatCap);
  dots.setDashPattern({1, 4});
  painter.setPen(dots);
  if (const double to = numberLeft - 4 * dotsPerPoint; to > from)
    painter.drawLine(QPointF(from, baseline.y()), QPointF(to, baseline.y()));
  painter.setFont(fontOf(text->look));
  painter.setPen(blackInk);
  painter.drawText(QPointF(numberLeft, baseline.y()), number);
}

std::vector<PageLink> ReportBook::links() const {
  std::vector<PageLink> links;
  for (std::size_t page = 0; page < m_pages.size(); ++page)
    for (const PlacedSlice& placed : m_pages[page])
      if (placed.slice->refersTo && m_places[*placed.slice->refersTo])
        links.push_back({page,
                         {margin, margin + head + placed.top, textWidth, placed.slice->height},
                         *m_places[*placed.slice->refersTo]});
  return links;
}

std::vector<PageMark> ReportBook::marks() const {
  std::vector<PageMark> marks;
  for (std::size_t k = 0; k < m_report.sections.size(); ++k)
    if (m_places[k])
      marks.push_back({toQString(m_report.sections[k].heading), m_report.sections[k].level, *m_places[k]});
  return marks;
}

}  // namespace ui
