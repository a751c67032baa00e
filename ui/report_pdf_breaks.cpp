// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report_pdf_breaks.h"

#include <QAbstractTextDocumentLayout>
#include <QList>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextFrame>
#include <QTextTable>
#include <cmath>

namespace ui {
namespace {

/// A paragraph or table of the document's top level.
struct Piece {
  QTextBlock block;  ///< the paragraph; invalid for a table
  QTextFrame* table = nullptr;

  QRectF place(const QAbstractTextDocumentLayout& layout) const {
    return table ? layout.frameBoundingRect(table) : layout.blockBoundingRect(block);
  }
  bool isHeading() const { return !table && block.blockFormat().headingLevel() > 0; }
  /// Stays with `next`: headings, bold paragraphs (captions, verdicts), pictures with their words.
  bool heads(const Piece& next) const {
    if (table) return false;
    if (isHeading()) return true;
    if (next.isHeading()) return false;
    const QTextCharFormat format = block.begin().fragment().charFormat();
    return format.isImageFormat() || format.fontWeight() >= QFont::Bold;
  }
};

QList<Piece> piecesOf(const QTextDocument& text) {
  QList<Piece> pieces;
  for (auto at = text.rootFrame()->begin(); !at.atEnd(); ++at) {
    if (at.currentFrame())
      pieces.append(Piece{QTextBlock(), at.currentFrame()});
    else if (at.currentBlock().isValid() && !at.currentBlock().text().isEmpty())
      pieces.append(Piece{at.currentBlock(), nullptr});
  }
  return pieces;
}

void startPageAt(const Piece& piece) {
  if (piece.table) {
    QTextFrameFormat format = piece.table->frameFormat();
    format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
    piece.table->setFrameFormat(format);
    return;
  }
  QTextBlockFormat format = piece.block.blockFormat();
  format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
  QTextCursor(piece.block).setBlockFormat(format);
}

}  // namespace

void keepTogether(QTextDocument& text) {
  const QAbstractTextDocumentLayout& layout = *text.documentLayout();
  const double page = text.pageSize().height();
  const QList<Piece> pieces = piecesOf(text);
  for (qsizetype begin = 0; begin < pieces.size();) {
    qsizetype last = begin;
    // Without the gap that a page's end may already have put between them.
    double height = pieces[begin].place(layout).height();
    while (last + 1 < pieces.size() && pieces[last].heads(pieces[last + 1]))
      height += pieces[++last].place(layout).height();
    const double top = pieces[begin].place(layout).top(), bottom = pieces[last].place(layout).bottom();
    const bool cut = std::floor(top / page) != std::floor((bottom - 1) / page);
    if (cut && height < 0.8 * page && begin > 0) startPageAt(pieces[begin]);
    begin = last + 1;
  }
}

}  // namespace ui
