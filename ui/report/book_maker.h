// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QFutureWatcher>
#include <QObject>
#include <QTimer>
#include <memory>
#include <stop_token>

#include "core/document/document.h"
#include "ui/report/report_book.h"
#include "ui/report/report_sketches.h"

namespace ui {

/// Makes a report's book while the events of the GUI thread go on: what it says is worked out on another
/// thread, pages are laid out on this one a few milliseconds at a time. The first pages can be seen long
/// before the last are there. Ends its work when it is destroyed.
class BookMaker : public QObject {
  Q_OBJECT

 public:
  BookMaker(core::Document document, core::ReportOrder order, ReportStamp stamp = {},
            QObject* parent = nullptr);
  ~BookMaker() override;

  const core::Document& document() const { return m_document; }
  /// None until it is known what the report says; has pages from the first `grown` on, and whole from
  /// `finished` on.
  const ReportBook* book() const { return m_book.get(); }
  bool isFinished() const { return m_isFinished; }

  /// Draws a page's pictures, some milliseconds each; false when they were there already.
  bool drawPictures(std::size_t page);

 signals:
  void progressed(double share);  ///< of what there is to do until `finished`
  void aboutToDeal();             ///< pages change: whoever paints one has to end
  void grown();                   ///< there are more pages
  void finished();

 private:
  void takeWords();
  void layOutSome();
  void deal();

  core::Document m_document;
  core::ReportOrder m_order;
  ReportStamp m_stamp;
  std::stop_source m_stop;
  QFutureWatcher<core::Report> m_words;
  std::unique_ptr<ReportBook> m_book;
  std::unique_ptr<ReportSketches> m_sketches;
  QTimer m_timer;
  std::size_t m_laidOut = 0, m_dealAt = 0;
  bool m_isFinished = false;
};

}  // namespace ui
