// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFutureWatcher>
#include <QImage>
#include <QPointer>
#include <QScrollArea>

#include "ui/report/book_maker.h"

class QLabel;

namespace ui {

/// Shows a page of a report as it is printed. Pages are painted on another thread, their pictures on this
/// one. Page up and down turn pages, Ctrl and the wheel or plus and minus zoom.
class PagePreview : public QScrollArea {
  Q_OBJECT

 public:
  explicit PagePreview(QWidget* parent = nullptr);
  ~PagePreview() override;

  /// Whose pages are shown; none: the last picture stays, greyed by `busy` words above it. The maker must not
  /// be destroyed before another one, or none, is set.
  void setMaker(BookMaker* maker);

  int page() const { return m_page; }
  int pageCount() const;
  /// Pixels a point of paper; 0: the whole page is in sight.
  double zoom() const { return m_zoom; }
  bool isShowing() const { return m_shownPage == m_page && !m_image.isNull(); }
  const QImage& image() const { return m_image; }

 public slots:
  void setPage(int page);
  void setZoom(double zoom);
  void zoomIn();
  void zoomOut();

 signals:
  void pageChanged();  ///< or the number of pages
  void shown();        ///< the page is there

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;

 private:
  double pixelsPerPoint() const;
  void render();
  void takeImage();
  void waitForPainter();

  QLabel* m_paper;
  QPointer<BookMaker> m_maker;
  QFutureWatcher<QImage> m_painter;
  QImage m_image;
  int m_page = 0, m_shownPage = -1, m_paintedPage = -1;
  double m_zoom = 0;
  bool m_again = false;  ///< something changed while a page was painted
};

}  // namespace ui
