// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/page_blocks.h"

#include <algorithm>

#include "ui/report/page_table.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr double paragraphGap = 3 * dotsPerPoint, captionGap = 6 * dotsPerPoint, tableGap = 2 * dotsPerPoint;
constexpr double besides = 9 * dotsPerPoint;  ///< between blocks that stand side by side
constexpr double chartShare = 0.64;           ///< of the width, beside lists
constexpr double uncutShare = 0.5;            ///< of a page: a table of less is not cut
constexpr std::size_t mostContents = 70;      ///< a longer list names chapters only
const QColor cautionFill(0xff, 0xf3, 0xe0), cautionEdge(0xe6, 0x9f, 0x00);

void holdTogether(std::vector<Slice>& slices, std::size_t from) {
  for (std::size_t k = from; k + 1 < slices.size(); ++k) slices[k].holdsNext = true;
}

double heightOf(const std::vector<Slice>& slices) {
  double whole = 0;
  for (const Slice& slice : slices) whole += slice.gap + slice.height;
  return whole;
}

class Layer {
 public:
  Layer(const core::Report& report, double width, double pageHeight,
        std::span<const std::shared_ptr<PictureSlot>> pictures)
      : m_report(report), m_width(width), m_pageHeight(pageHeight), m_pictures(pictures) {}

  void add(std::size_t index) {
    const core::Section& section = m_report.sections[index];
    if (!section.heading.empty()) addHeading(index);
    m_afterHeading = section.blocks.empty();
    for (std::size_t k = 0; k < section.blocks.size();) k += addFrom(section.blocks, k);
  }

  std::vector<Slice> take() { return std::move(m_slices); }

  void operator()(const core::Paragraph& paragraph) {
    const std::size_t from = m_slices.size();
    addText(toQString(paragraph.text), paragraph.verdict ? Look::Bold : Look::Body,
            paragraph.verdict ? inkColour(*paragraph.verdict) : blackInk, paragraphGap);
    if (!paragraph.verdict) return;
    // A verdict is read as one, and is about what follows.
    holdTogether(m_slices, from);
    m_slices.back().holdsNext = true;
  }

  void operator()(const core::Caution& caution) {
    addCaution(toQString(core::say("Caution.")), toQString(caution.text));
  }

  void operator()(const core::EntryList& list) {
    addCaption(list.caption);
    addTable(entrySlices(list, m_width, true));
  }

  void operator()(const core::Table& table) {
    addCaption(table.caption);
    addTable(tableSlices(table, m_width));
    if (table.note.empty()) return;
    m_slices.back().holdsNext = true;
    addText(toQString(table.note), Look::Cell, quietInk, tableGap);
  }

  void operator()(const core::Picture& picture) {
    const std::shared_ptr<PictureSlot> slot = m_pictures[m_nextPicture++];
    QSizeF size = slot->size_pt * dotsPerPoint;
    size *= std::min({1.0, m_width / size.width(), 0.9 * m_pageHeight / size.height()});
    Slice slice;
    slice.gap = captionGap;
    slice.height = size.height();
    slice.ink.push_back(InkPicture{QRectF({0, 0}, size), slot});
    slice.holdsNext = true;
    m_slices.push_back(std::move(slice));
    const std::size_t from = m_slices.size();
    addText(toQString(picture.caption) + ".", Look::Cell, quietInk, tableGap);
    holdTogether(m_slices, from);
  }

  void operator()(const core::Contents& contents) {
    const bool chaptersOnly = contents.sections.size() > mostContents;
    for (const std::size_t index : contents.sections)
      if (!chaptersOnly || m_report.sections[index].level <= 1) addContentsLine(index);
  }

 private:
  void addText(const QString& text, Look look, const QColor& colour, double gap, double left = 0) {
    const std::size_t from = m_slices.size();
    for (TextLine& line : linesOf(text, look, m_width - left)) {
      Slice slice;
      slice.height = lineHeight(look);
      slice.gap = m_slices.size() == from ? gap : 0;
      slice.ink.push_back(InkText{{left, ascent(look)}, std::move(line.text), look, colour});
      m_slices.push_back(std::move(slice));
    }
    keepEnds(from);
  }

  /// No line of a paragraph alone at the end or the beginning of a page.
  void keepEnds(std::size_t from) {
    const std::size_t lines = m_slices.size() - from;
    if (lines < 2) return;
    m_slices[from].holdsNext = true;
    m_slices[m_slices.size() - 2].holdsNext = true;
  }

  void addHeading(std::size_t index) {
    const core::Section& section = m_report.sections[index];
    const Look look = section.level <= 1 ? Look::Chapter : Look::Heading;
    const std::size_t from = m_slices.size();
    if (from > 0 && !m_afterHeading)
      m_slices.back().holdsNext = false;  // a verdict is not about another section
    addText(toQString(section.heading), look, blackInk, (section.level <= 1 ? 16 : 11) * dotsPerPoint);
    m_slices[from].headingOf = index;
    holdTogether(m_slices, from);
    m_slices.back().holdsNext = true;
    m_slices.back().height += 3 * dotsPerPoint;
  }

  void addCaption(const std::string& caption) {
    if (caption.empty()) return;
    const std::size_t from = m_slices.size();
    addText(toQString(caption), Look::Bold, blackInk, captionGap);
    holdTogether(m_slices, from);
    m_slices.back().holdsNext = true;
  }

  void addCaution(const QString& word, const QString& text) {
    constexpr double inset = 6 * dotsPerPoint, edge = 2 * dotsPerPoint, pad = 2 * dotsPerPoint;
    const std::size_t from = m_slices.size();
    const double indent = widthOf(word, Look::Bold) + 4 * dotsPerPoint;
    addText(text, Look::Body, blackInk, paragraphGap, inset + indent);
    for (std::size_t k = from; k < m_slices.size(); ++k) {
      Slice& slice = m_slices[k];
      const double above = k == from ? pad : 0, below = k + 1 == m_slices.size() ? pad : 0;
      std::vector<Ink> ink{InkFill{{0, 0, m_width, slice.height + above + below}, cautionFill},
                           InkFill{{0, 0, edge, slice.height + above + below}, cautionEdge}};
      if (k == from) ink.push_back(InkText{{inset, above + ascent(Look::Body)}, word, Look::Bold, blackInk});
      addMoved(ink, slice.ink, {0, above});
      slice.ink = std::move(ink);
      slice.height += above + below;
    }
  }

  /// Rows; those of a small table are not parted, those of a large one have company.
  void addTable(std::vector<Slice> rows) {
    if (rows.empty()) return;
    rows.front().gap = m_slices.empty() || m_slices.back().holdsNext ? tableGap : captionGap;
    const std::size_t from = m_slices.size(), count = rows.size();
    const bool uncut = heightOf(rows) < uncutShare * m_pageHeight;
    std::move(rows.begin(), rows.end(), std::back_inserter(m_slices));
    if (uncut) return holdTogether(m_slices, from);
    if (count < 3) return;
    for (const std::size_t k : {std::size_t{0}, std::size_t{1}, count - 2})
      m_slices[from + k].holdsNext = true;
  }

  void addContentsLine(std::size_t index) {
    const core::Section& section = m_report.sections[index];
    const bool chapter = section.level <= 1;
    const double left = chapter ? 0 : 14 * dotsPerPoint, number = 34 * dotsPerPoint;
    const std::size_t from = m_slices.size();
    m_width -= number;
    addText(toQString(section.heading), chapter ? Look::Body : Look::Cell, blackInk, 2 * dotsPerPoint, left);
    m_width += number;
    holdTogether(m_slices, from);
    m_slices.back().refersTo = index;
  }

  /// What takes less than a page's width: lists, and charts, which read well when small.
  static bool isNarrow(const core::Block& block) {
    const auto* picture = std::get_if<core::Picture>(&block);
    return std::holds_alternative<core::EntryList>(block) ||
           (picture && picture->kind == core::Picture::Kind::Outcome);
  }

  /// Adds block `k`; narrow ones in a row stand side by side, to save paper. Returns how many were added.
  std::size_t addFrom(const std::vector<core::Block>& blocks, std::size_t k) {
    std::size_t end = k;
    while (end < blocks.size() && isNarrow(blocks[end])) ++end;
    if (end - k < 2) {
      std::visit(*this, blocks[k]);
      return 1;
    }
    // More than three leave each too little of the width for its words.
    const std::size_t rows = (end - k + 2) / 3, each = (end - k + rows - 1) / rows;
    end = std::min(end, k + each);
    addSideBySide(blocks, k, end);
    return end - k;
  }

  void addSideBySide(const std::vector<core::Block>& blocks, std::size_t begin, std::size_t end) {
    const auto isPicture = [&](std::size_t k) { return std::holds_alternative<core::Picture>(blocks[k]); };
    std::size_t pictures = 0;
    for (std::size_t k = begin; k < end; ++k) pictures += isPicture(k);
    const std::size_t lists = end - begin - pictures;
    const double room = m_width - static_cast<double>(end - begin - 1) * besides;
    const double chart = lists > 0 ? chartShare * room : room / static_cast<double>(pictures);
    const double list =
        lists > 0 ? (room - static_cast<double>(pictures) * chart) / static_cast<double>(lists) : 0;
    if (lists > 0 && list < 0.2 * room) return addStacked(blocks, begin, end);
    const std::size_t pictureBefore = m_nextPicture;
    Slice together;
    together.gap = captionGap;
    double left = 0;
    for (std::size_t k = begin; k < end; ++k) {
      const double width = isPicture(k) ? chart : list;
      Layer part(m_report, width, m_pageHeight, m_pictures.subspan(m_nextPicture));
      if (const auto* entries = std::get_if<core::EntryList>(&blocks[k]))
        part.addFilling(*entries);
      else
        std::visit(part, blocks[k]);
      m_nextPicture += part.m_nextPicture;
      double top = 0;
      for (const Slice& slice : part.m_slices) {
        if (top > 0) top += slice.gap;
        addMoved(together.ink, slice.ink, {left, top});
        top += slice.height;
      }
      together.height = std::max(together.height, top);
      left += width + besides;
    }
    if (together.height < 0.7 * m_pageHeight) {
      m_slices.push_back(std::move(together));
      return;
    }
    m_nextPicture = pictureBefore;
    addStacked(blocks, begin, end);
  }

  /// Too long to be one slice, or too narrow.
  void addStacked(const std::vector<core::Block>& blocks, std::size_t begin, std::size_t end) {
    for (std::size_t k = begin; k < end; ++k) std::visit(*this, blocks[k]);
  }

  void addFilling(const core::EntryList& list) {
    addCaption(list.caption);
    addTable(entrySlices(list, m_width, false));
  }

  const core::Report& m_report;
  double m_width, m_pageHeight;
  std::span<const std::shared_ptr<PictureSlot>> m_pictures;
  std::size_t m_nextPicture = 0;
  bool m_afterHeading = false;
  std::vector<Slice> m_slices;
};

}  // namespace

Chapter chapterOf(const core::Report& report, std::size_t first, std::size_t end, double width,
                  double pageHeight, std::span<const std::shared_ptr<PictureSlot>> pictures) {
  Layer layer(report, width, pageHeight, pictures);
  for (std::size_t index = first; index < end; ++index) layer.add(index);
  Chapter chapter{layer.take()};
  if (!chapter.slices.empty()) chapter.slices.back().holdsNext = false;
  return chapter;
}

std::vector<Slice> titleSlices(const core::Report& report, double width) {
  std::vector<Slice> slices;
  for (TextLine& line : linesOf(toQString(report.title), Look::Title, width)) {
    Slice slice;
    slice.height = lineHeight(Look::Title);
    slice.ink.push_back(InkText{{0, ascent(Look::Title)}, std::move(line.text), Look::Title, blackInk});
    slice.holdsNext = true;
    slices.push_back(std::move(slice));
  }
  return slices;
}

}  // namespace ui
