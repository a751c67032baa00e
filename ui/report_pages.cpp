// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report_pages.h"

#include <QAbstractTextDocumentLayout>
#include <QBuffer>
#include <QCoreApplication>
#include <QLocale>
#include <QPainter>
#include <QPdfWriter>
#include <QTextDocument>

#include "ui/theme.h"

#include "core/units/language.h"

namespace ui {
namespace {

constexpr int dpi = 1200;  ///< of the page; 96 dpi would put letters on a coarse grid
constexpr double mm = dpi / 25.4;
constexpr double margin = 16 * mm, head = 10 * mm;  ///< head and foot lie between the text and the margin

core::Error stopped() { return {"report", core::say("was stopped before it was finished"), ""}; }
core::Error notPainted() { return {"report", core::say("the pages could not be painted"), ""}; }

/// Joined letters would not be found by a search for "off" or "finite"; any letter spacing parts them.
QFont withoutLigatures(QFont font) {
  font.setLetterSpacing(QFont::PercentageSpacing, 100.01);
  return font;
}

/// "Shuntwright 1.2.3 · 2031-05-04"
QString footText(const ReportStamp& stamp) {
  const QString version = stamp.version.isEmpty() ? QCoreApplication::applicationVersion() : stamp.version;
  return "Shuntwright" + (version.isEmpty() ? QString() : " " + version) + " · " +
         stamp.date.toString(Qt::ISODate);
}

/// What stands around the text of every page.
struct PageFrame {
  QString title, foot;
  int pages = 0;
};

void paintPage(QPainter& painter, QTextDocument& text, const PageFrame& frame, int page) {
  const QSizeF size = text.pageSize();
  const QRectF body(margin, margin + head, size.width(), size.height());
  painter.setFont(QFont("DejaVu Sans", 8));
  painter.setPen(QColor("#4c5560"));
  const QRectF top(margin, margin, size.width(), head - 4 * mm);
  const QString shown = painter.fontMetrics().elidedText(frame.title, Qt::ElideRight, int(size.width()));
  painter.drawText(top, Qt::AlignLeft | Qt::AlignTop | Qt::TextSingleLine, shown);
  painter.drawLine(top.bottomLeft(), top.bottomRight());
  const QRectF foot(margin, body.bottom() + 4 * mm, size.width(), head - 4 * mm);
  painter.drawText(foot, Qt::AlignLeft | Qt::AlignBottom | Qt::TextSingleLine, frame.foot);
  painter.drawText(foot, Qt::AlignRight | Qt::AlignBottom,
                   QCoreApplication::translate("ui::ReportPdf", "Page %1 of %2").arg(page).arg(frame.pages));

  painter.save();
  painter.translate(body.left(), body.top() - (page - 1) * size.height());
  const QRectF view(0, (page - 1) * size.height(), size.width(), size.height());
  painter.setClipRect(view);
  QAbstractTextDocumentLayout::PaintContext context;
  context.clip = view.adjusted(0, 0, 0, -2);  // or what begins the next page is drawn too, just cut off
  context.palette = lightPalette();
  context.palette.setColor(QPalette::Text, Qt::black);
  text.documentLayout()->draw(&painter, context);
  painter.restore();
}

/// Reports are written with a point whatever the user's language, also where they show views of the window.
class PointAsDecimalMark {
 public:
  PointAsDecimalMark() { QLocale::setDefault(QLocale::c()); }
  ~PointAsDecimalMark() { QLocale::setDefault(m_before); }
  Q_DISABLE_COPY_MOVE(PointAsDecimalMark)

 private:
  QLocale m_before;
};

}  // namespace

core::Result<QByteArray> pdfPages(const QString& title, const ReportStamp& stamp,
                                  const std::function<void(QTextDocument&)>& fill,
                                  const std::function<void(double)>& progress, const std::stop_token& stop,
                                  const std::function<void(QTextDocument&)>& breakPages) {
  const PointAsDecimalMark point;
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setResolution(dpi);
  writer.setPageSize(QPageSize(QPageSize::A4));
  writer.setPageMargins(QMarginsF(0, 0, 0, 0));
  writer.setTitle(title);
  writer.setCreator("Shuntwright");

  QTextDocument text;
  text.setDefaultFont(withoutLigatures(QFont("DejaVu Sans", 9)));
  text.setDocumentMargin(0);
  text.documentLayout()->setPaintDevice(&writer);
  fill(text);
  if (stop.stop_requested()) return stopped();
  text.setPageSize({writer.width() - 2 * margin, writer.height() - 2 * margin - 2 * head});
  breakPages(text);

  QPainter painter;
  if (!painter.begin(&writer)) return notPainted();
  const int pages = text.pageCount();
  const PageFrame frame{title, footText(stamp), pages};
  for (int page = 1; page <= pages; ++page) {
    if (stop.stop_requested()) return stopped();
    if (page > 1 && !writer.newPage()) return notPainted();
    paintPage(painter, text, frame, page);
    if (progress) progress(double(page) / pages);
  }
  if (!painter.end()) return notPainted();
  return bytes;
}

}  // namespace ui
