// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/page_slices.h"

#include <QPainter>

namespace ui {
namespace {

class InkPainter {
 public:
  explicit InkPainter(QPainter& painter) : m_painter(painter) {}

  void operator()(const InkFill& fill) { m_painter.fillRect(fill.box, fill.colour); }
  void operator()(const InkLine& line) {
    m_painter.setPen(QPen(line.colour, line.width, Qt::SolidLine, Qt::FlatCap));
    m_painter.drawLine(line.line);
  }
  void operator()(const InkText& text) {
    m_painter.setFont(fontOf(text.look));
    m_painter.setPen(text.colour);
    m_painter.drawText(text.at, text.text);
  }
  void operator()(const InkPicture& picture) {
    if (picture.slot->sketch) picture.slot->sketch->draw(m_painter, picture.room);
  }

 private:
  QPainter& m_painter;
};

/// Fills pages one after the other.
class Dealer {
 public:
  explicit Dealer(double height) : m_height(height), m_pages(1) {}

  void beginChapter(const Chapter& chapter, std::size_t index) {
    m_chapter = index;
    const double whole = heightOf(chapter);
    if (m_used > 0 && whole > m_height / 2 && m_used + whole > m_height) newPage();
  }

  /// Slices `begin` to `end`, the last excluded, which belong together.
  void deal(const std::vector<Slice>& slices, std::size_t begin, std::size_t end) {
    double whole = 0;
    for (std::size_t k = begin; k < end; ++k) whole += slices[k].height + (k > begin ? slices[k].gap : 0);
    const double head = slices[begin].head ? slices[begin].head->height : 0;
    const bool fits = m_used == 0 || m_used + slices[begin].gap + whole <= m_height;
    if (!fits && head + whole <= m_height) newPage();
    for (std::size_t k = begin; k < end; ++k) place(slices[k]);
  }

  std::vector<Page> take() { return std::move(m_pages); }

 private:
  void newPage() {
    m_pages.emplace_back();
    m_used = 0;
  }

  void place(const Slice& slice) {
    if (m_used > 0 && m_used + slice.gap + slice.height > m_height) newPage();
    if (m_used > 0)
      m_used += slice.gap;
    else if (slice.head)
      put(*slice.head);
    put(slice);
  }

  void put(const Slice& slice) {
    m_pages.back().push_back({&slice, m_used, m_chapter});
    m_used += slice.height;
  }

  double m_height;
  std::vector<Page> m_pages;
  double m_used = 0;
  std::size_t m_chapter = 0;
};

}  // namespace

double heightOf(const Chapter& chapter) {
  double whole = 0;
  for (const Slice& slice : chapter.slices) whole += slice.gap + slice.height;
  return whole;
}

void drawInk(QPainter& painter, const std::vector<Ink>& ink, QPointF at) {
  painter.save();
  painter.translate(at);
  InkPainter inks(painter);
  for (const Ink& one : ink) std::visit(inks, one);
  painter.restore();
}

void addMoved(std::vector<Ink>& to, const std::vector<Ink>& ink, QPointF by) {
  for (Ink one : ink) {
    if (auto* text = std::get_if<InkText>(&one)) text->at += by;
    if (auto* fill = std::get_if<InkFill>(&one)) fill->box.translate(by);
    if (auto* line = std::get_if<InkLine>(&one)) line->line.translate(by);
    if (auto* picture = std::get_if<InkPicture>(&one)) picture->room.translate(by);
    to.push_back(std::move(one));
  }
}

std::vector<Page> pagesOf(const std::vector<const Chapter*>& chapters, double height) {
  Dealer dealer(height);
  for (std::size_t index = 0; index < chapters.size(); ++index) {
    dealer.beginChapter(*chapters[index], index);
    const std::vector<Slice>& slices = chapters[index]->slices;
    for (std::size_t begin = 0; begin < slices.size();) {
      std::size_t end = begin + 1;
      while (end < slices.size() && slices[end - 1].holdsNext) ++end;
      dealer.deal(slices, begin, end);
      begin = end;
    }
  }
  return dealer.take();
}

}  // namespace ui
