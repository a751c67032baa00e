// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report_pdf.h"

#include <QAbstractTextDocumentLayout>
#include <QBuffer>
#include <QCoreApplication>
#include <QPainter>
#include <QPdfWriter>
#include <QTextDocument>
#include <QUrl>

#include "core/report/html.h"
#include "ui/bridge_view.h"
#include "ui/outcome/outcome_picture.h"
#include "ui/report_pdf_breaks.h"
#include "ui/session.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int dpi = 1200;  ///< of the page; 96 dpi would put letters on a coarse grid
constexpr double mm = dpi / 25.4;
constexpr double margin = 18 * mm, head = 12 * mm;  ///< head and foot lie between the text and the margin
constexpr QSize outcomeSize(640, 290), bridgeSize(500, 350);

core::Error stopped() { return {"report", "was stopped before it was finished", ""}; }

/// Joined letters would not be found by a search for "off" or "finite"; any letter spacing parts them.
QFont withoutLigatures(QFont font) {
  font.setLetterSpacing(QFont::PercentageSpacing, 100.01);
  return font;
}

/// Draws the pictures that the report asks for, and knows how far it is.
class Pictures {
 public:
  Pictures(const core::Document& document, QTextDocument& text) : m_document(document), m_text(text) {}

  core::PictureSource operator()(const core::Picture& picture) {
    const QImage image = picture.kind == core::Picture::Kind::Outcome ? outcome(picture) : bridge(picture);
    if (image.isNull()) return {};
    const QString name = QString("picture:%1").arg(m_count++);
    m_text.addResource(QTextDocument::ImageResource, QUrl(name), image);
    return {name.toStdString(), static_cast<int>(image.width() / image.devicePixelRatio())};
  }

 private:
  QImage outcome(const core::Picture& picture) {
    const core::Channel& channel = *m_document.channels[picture.channel];
    if (m_evaluated != picture.channel) {
      m_evaluation = core::evaluate(channel);
      m_evaluated = picture.channel;
    }
    return outcomePicture(channel, m_evaluation, picture.check, outcomeSize);
  }

  QImage bridge(const core::Picture& picture) const {
    core::Document alone;
    alone.channels.push_back(m_document.channels[picture.channel]);
    Session session(std::move(alone));
    BridgeView view(session);
    view.setAttribute(Qt::WA_DontShowOnScreen);
    view.setPalette(lightPalette());
    view.resize(bridgeSize);
    view.show();
    QImage image(3 * bridgeSize, QImage::Format_RGB32);
    image.setDevicePixelRatio(3);
    image.fill(Qt::white);
    view.render(&image);
    return image;
  }

  const core::Document& m_document;
  QTextDocument& m_text;
  int m_count = 0;
  std::optional<std::size_t> m_evaluated;
  core::ChannelEvaluation m_evaluation;
};

void paintPage(QPainter& painter, QTextDocument& text, const QString& title, int page, int pages) {
  const QSizeF size = text.pageSize();
  const QRectF body(margin, margin + head, size.width(), size.height());
  painter.setFont(QFont("DejaVu Sans", 8));
  painter.setPen(QColor("#4c5560"));
  const QRectF top(margin, margin, size.width(), head - 4 * mm);
  const QString shown = painter.fontMetrics().elidedText(title, Qt::ElideRight, int(size.width()));
  painter.drawText(top, Qt::AlignLeft | Qt::AlignTop | Qt::TextSingleLine, shown);
  painter.drawLine(top.bottomLeft(), top.bottomRight());
  const QRectF foot(margin, body.bottom() + 4 * mm, size.width(), head - 4 * mm);
  painter.drawText(foot, Qt::AlignRight | Qt::AlignBottom,
                   QCoreApplication::translate("ui::ReportPdf", "Page %1 of %2").arg(page).arg(pages));

  painter.save();
  painter.translate(body.left(), body.top() - (page - 1) * size.height());
  const QRectF view(0, (page - 1) * size.height(), size.width(), size.height());
  painter.setClipRect(view);
  QAbstractTextDocumentLayout::PaintContext context;
  context.clip = view;
  context.palette = lightPalette();
  context.palette.setColor(QPalette::Text, Qt::black);
  text.documentLayout()->draw(&painter, context);
  painter.restore();
}

}  // namespace

core::Result<QByteArray> reportPdf(const core::Document& document,
                                   const std::function<void(double)>& progress, std::stop_token stop) {
  const auto tell = [&](double share) {
    if (progress) progress(share);
  };
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setResolution(dpi);
  writer.setPageSize(QPageSize(QPageSize::A4));
  writer.setPageMargins(QMarginsF(0, 0, 0, 0));

  const core::Report report = core::reportOf(document);
  const QString title = toQString(report.title);
  writer.setTitle(title);
  writer.setCreator("Shuntwright");

  QTextDocument text;
  text.setDefaultFont(withoutLigatures(QFont("DejaVu Sans", 9)));
  text.setDocumentMargin(0);
  text.documentLayout()->setPaintDevice(&writer);
  Pictures pictures(document, text);
  double done = 0;
  const std::string html = core::reportHtml(report, [&](const core::Picture& picture) {
    tell(0.7 * std::min(1.0, (done += 0.5) / double(document.channels.size() + 1)));
    return stop.stop_requested() ? core::PictureSource{} : pictures(picture);
  });
  if (stop.stop_requested()) return stopped();
  text.setHtml(toQString(html));
  text.setPageSize({writer.width() - 2 * margin, writer.height() - 2 * margin - 2 * head});

  keepTogether(text);

  QPainter painter;
  if (!painter.begin(&writer)) return core::Error{"report", "the pages could not be painted", ""};
  const int pages = text.pageCount();
  for (int page = 1; page <= pages; ++page) {
    if (stop.stop_requested()) return stopped();
    if (page > 1 && !writer.newPage()) return core::Error{"report", "the pages could not be painted", ""};
    paintPage(painter, text, title, page, pages);
    tell(0.7 + 0.3 * page / pages);
  }
  if (!painter.end()) return core::Error{"report", "the pages could not be painted", ""};
  return bytes;
}

}  // namespace ui
