// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/page_preview.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>
#include <QtConcurrentRun>
#include <algorithm>
#include <cmath>

namespace ui {
namespace {

constexpr double leastZoom = 0.4, greatestZoom = 4, zoomStep = 1.25;
constexpr int around_px = 10;

QImage paintedPage(const ReportBook& book, std::size_t page, double pixelsPerPoint, double ratio) {
  const double scale = pixelsPerPoint * ratio / dotsPerPoint;
  QImage image((ReportBook::paper() * scale).toSize(), QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  painter.scale(scale, scale);
  book.paint(painter, page);
  painter.end();
  image.setDevicePixelRatio(ratio);
  return image;
}

}  // namespace

PagePreview::PagePreview(QWidget* parent) : QScrollArea(parent), m_paper(new QLabel) {
  setObjectName("reportPreview");
  setAccessibleName(tr("Preview of the pages"));
  setAccessibleDescription(tr("Page up and page down turn the pages, plus and minus zoom"));
  setFocusPolicy(Qt::StrongFocus);
  setAlignment(Qt::AlignCenter);
  setBackgroundRole(QPalette::Mid);
  m_paper->setObjectName("reportPaper");
  m_paper->setAccessibleName(tr("Page of the report"));
  m_paper->setAccessibleDescription(tr("As text the report is written as HTML, CSV or JSON"));
  m_paper->setMargin(around_px);
  setWidget(m_paper);
  setWidgetResizable(false);
  connect(&m_painter, &QFutureWatcher<QImage>::finished, this, &PagePreview::takeImage);
}

PagePreview::~PagePreview() { waitForPainter(); }

void PagePreview::waitForPainter() {
  if (m_painter.isRunning()) m_again = true;
  m_painter.waitForFinished();
}

void PagePreview::setMaker(BookMaker* maker) {
  waitForPainter();
  if (m_maker) disconnect(m_maker, nullptr, this, nullptr);
  m_maker = maker;
  m_shownPage = -1;
  if (!maker) return;
  connect(maker, &BookMaker::aboutToDeal, this, &PagePreview::waitForPainter);
  connect(maker, &BookMaker::grown, this, [this] {
    m_page = std::clamp(m_page, 0, std::max(0, m_maker->isFinished() ? pageCount() - 1 : m_page));
    emit pageChanged();
    render();
  });
  if (pageCount() > 0) render();
}

int PagePreview::pageCount() const {
  return m_maker && m_maker->book() ? int(m_maker->book()->pageCount()) : 0;
}

void PagePreview::setPage(int page) {
  page = std::clamp(page, 0, std::max(0, pageCount() - 1));
  if (page == m_page) return;
  m_page = page;
  verticalScrollBar()->setValue(0);
  emit pageChanged();
  render();
}

double PagePreview::pixelsPerPoint() const {
  if (m_zoom > 0) return m_zoom;
  const QSizeF paper_pt = ReportBook::paper() / dotsPerPoint;
  const QSizeF room = QSizeF(maximumViewportSize()) - QSizeF(2 * around_px + 4, 2 * around_px + 4);
  return std::clamp(std::min(room.width() / paper_pt.width(), room.height() / paper_pt.height()), 0.2,
                    greatestZoom);
}

void PagePreview::setZoom(double zoom) {
  m_zoom = zoom > 0 ? std::clamp(zoom, leastZoom, greatestZoom) : 0;
  render();
}

void PagePreview::zoomIn() { setZoom(pixelsPerPoint() * zoomStep); }
void PagePreview::zoomOut() { setZoom(std::max(leastZoom, pixelsPerPoint() / zoomStep)); }

void PagePreview::render() {
  if (m_painter.isRunning()) {
    m_again = true;
    return;
  }
  m_again = false;
  if (m_page >= pageCount()) return;
  m_maker->drawPictures(std::size_t(m_page));
  m_paintedPage = m_page;
  const ReportBook* book = m_maker->book();
  m_painter.setFuture(QtConcurrent::run(paintedPage, std::cref(*book), std::size_t(m_page), pixelsPerPoint(),
                                        devicePixelRatioF()));
}

void PagePreview::takeImage() {
  m_image = m_painter.result();
  m_shownPage = m_paintedPage;
  m_paper->setPixmap(QPixmap::fromImage(m_image));
  m_paper->adjustSize();
  if (m_again) {
    m_shownPage = -1;
    return render();
  }
  emit shown();
}

void PagePreview::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_PageUp:
      return setPage(m_page - 1);
    case Qt::Key_PageDown:
      return setPage(m_page + 1);
    case Qt::Key_Home:
      return setPage(0);
    case Qt::Key_End:
      return setPage(pageCount() - 1);
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      return zoomIn();
    case Qt::Key_Minus:
      return zoomOut();
    case Qt::Key_0:
      return setZoom(0);
    default:
      QScrollArea::keyPressEvent(event);
  }
}

void PagePreview::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  if (m_zoom == 0) render();
}

void PagePreview::wheelEvent(QWheelEvent* event) {
  const int turned = event->angleDelta().y();
  if (event->modifiers() & Qt::ControlModifier) return turned > 0 ? zoomIn() : zoomOut();
  // At the page's end the wheel turns it.
  const QScrollBar& bar = *verticalScrollBar();
  if (turned < 0 && bar.value() == bar.maximum()) return setPage(m_page + 1);
  if (turned > 0 && bar.value() == bar.minimum()) return setPage(m_page - 1);
  QScrollArea::wheelEvent(event);
}

}  // namespace ui
