// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDate>
#include <QString>
#include <span>

#include "core/report/report.h"
#include "ui/report/page_slices.h"
#include "ui/report_pages.h"

class QPainter;

namespace ui {

/// A place in a report: a page, counted from 0, and how far down the paper.
struct PagePlace {
  std::size_t page = 0;
  double down = 0;  ///< dots from the paper's upper edge
};

/// A line of the contents that leads somewhere; the box is in dots from the paper's upper left corner.
struct PageLink {
  std::size_t page = 0;
  QRectF box;
  PagePlace target;
};

/// A heading with its place, for the outline.
struct PageMark {
  QString title;
  int level = 1;
  PagePlace place;
};

/// The pages of a report on A4. Chapters (a section of level 1 with those below it) are laid out one by one,
/// in any order and on any threads; then the pages are dealt out, of those that are there from the first on.
/// Lengths in dots; see page_text.h.
class ReportBook {
 public:
  explicit ReportBook(core::Report report, const ReportStamp& stamp = {});
  Q_DISABLE_COPY_MOVE(ReportBook)

  static QSizeF paper();  ///< in dots
  const core::Report& report() const { return m_report; }
  std::size_t chapterCount() const { return m_parts.size(); }
  /// Their sizes must be there before the chapter is laid out, their sketches before a page is painted.
  std::span<const std::shared_ptr<PictureSlot>> picturesOf(std::size_t chapter) const;

  /// Different chapters may be laid out at the same time.
  void layOut(std::size_t chapter);
  /// Deals the chapters before `count` out to pages. No page may be painted meanwhile.
  void deal(std::size_t count);
  bool isWhole() const { return m_dealt == m_parts.size(); }

  std::size_t pageCount() const { return m_pages.size(); }
  std::vector<std::shared_ptr<PictureSlot>> picturesOn(std::size_t page) const;
  /// `painter` is scaled so that a unit is a dot, with the paper's corner at its origin. Any thread. While
  /// the book is not whole, the number of pages is left open.
  void paint(QPainter& painter, std::size_t page) const;

  /// Of chapters that were dealt out.
  std::vector<PageLink> links() const;
  std::vector<PageMark> marks() const;

 private:
  struct Part {
    std::size_t firstSection = 0, endSection = 0;
    std::vector<std::shared_ptr<PictureSlot>> pictures;
    Chapter chapter;
  };

  void paintFrame(QPainter& painter, std::size_t page) const;
  void paintReference(QPainter& painter, const PlacedSlice& placed) const;
  QString titleOf(const Part& part) const;

  core::Report m_report;
  QString m_title, m_foot;
  std::vector<Part> m_parts;
  std::size_t m_dealt = 0;
  std::vector<Page> m_pages;
  std::vector<std::optional<PagePlace>> m_places;  ///< one a section
};

}  // namespace ui
