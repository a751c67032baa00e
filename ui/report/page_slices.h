// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QRectF>
#include <QString>
#include <memory>
#include <optional>
#include <variant>
#include <vector>

#include "core/report/report.h"
#include "ui/report/page_text.h"
#include "ui/report/sketch.h"

class QPainter;

// A chapter as a pile of slices: laid out once on a page without end, then dealt out to pages. Lengths in
// dots.

namespace ui {

struct InkText {
  QPointF at;  ///< begin of the baseline
  QString text;
  Look look = Look::Body;
  QColor colour;
};
struct InkFill {
  QRectF box;
  QColor colour;
};
struct InkLine {
  QLineF line;
  QColor colour;
  double width = 0;
};
/// A picture has its size first and is drawn when a page with it is wanted.
struct PictureSlot {
  core::Picture picture;
  QSizeF size_pt = {};
  std::shared_ptr<const Sketch> sketch = {};
};
struct InkPicture {
  QRectF room;
  std::shared_ptr<PictureSlot> slot;
};
using Ink = std::variant<InkFill, InkLine, InkText, InkPicture>;

/// What no page's end may cut.
struct Slice {
  double height = 0;
  double gap = 0;  ///< above it, unless it begins a page
  std::vector<Ink> ink = {};
  bool holdsNext = false;                     ///< is on the same page as the next one
  std::shared_ptr<const Slice> head = {};     ///< drawn above it when it begins a page: heads of tables
  std::optional<std::size_t> headingOf = {};  ///< section of the report
  std::optional<std::size_t> refersTo = {};   ///< section whose page is to be named in it
};

struct Chapter {
  std::vector<Slice> slices;
};

double heightOf(const Chapter& chapter);
void drawInk(QPainter& painter, const std::vector<Ink>& ink, QPointF at);
/// `ink` of a slice that is put into another one.
void addMoved(std::vector<Ink>& to, const std::vector<Ink>& ink, QPointF by);

/// A slice with its place: from the top of the page's text.
struct PlacedSlice {
  const Slice* slice;
  double top;
  std::size_t chapter;  ///< index among the chapters
};
using Page = std::vector<PlacedSlice>;

/// Deals `chapters` out to pages of `height` in one pass. What holds the next is kept with it unless that is
/// more than a page. A chapter of more than half a page begins one when it does not fit on what is left. The
/// chapters must outlive the pages.
std::vector<Page> pagesOf(const std::vector<const Chapter*>& chapters, double height);

}  // namespace ui
