// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report_pdf.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QEventLoop>
#include <QPainter>
#include <QPdfWriter>

#include "core/report/csv.h"
#include "ui/aside.h"
#include "ui/report/book_maker.h"
#include "ui/report/pdf_extras.h"
#include "ui/theme.h"

#include "core/units/language.h"

namespace ui {
namespace {

constexpr double laidOut = 0.35;  ///< share of the work until the book is laid out
constexpr double drawn = 0.3;     ///< share of the pages' work until their pictures are drawn

core::Error stopped() { return {"report", core::say("was stopped before it was finished"), ""}; }
core::Error notPainted() { return {"report", core::say("the pages could not be painted"), ""}; }

PdfFacts factsOf(const core::Document& document, const core::Report& report) {
  const core::LanguageScope scope(report.words);
  QStringList subject{toQString(core::say("Shunt calibration report"))};
  for (const std::string& part : {document.article, document.site})
    if (!part.empty()) subject << toQString(part);
  return {toQString(report.title), toQString(document.person), subject.join(", "), toQString(report.language),
          toQString(report.fingerprint)};
}

/// On another thread than that of the widgets.
core::Result<QByteArray> painted(const ReportBook& book, const PdfFacts& facts,
                                 const core::Progress& progress, const std::stop_token& stop) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setResolution(int(dotsPerInch));
  writer.setPageSize(QPageSize(QPageSize::A4));
  writer.setPageMargins(QMarginsF(0, 0, 0, 0));
  writer.setTitle(facts.title);
  writer.setCreator("Shuntwright");
  writer.setDocumentXmpMetadata(xmpOf(facts));
  QPainter painter;
  if (!painter.begin(&writer)) return notPainted();
  for (std::size_t page = 0; page < book.pageCount(); ++page) {
    if (stop.stop_requested()) return stopped();
    if (page > 0 && !writer.newPage()) return notPainted();
    book.paint(painter, page);
    progress(double(page + 1) / double(book.pageCount()));
  }
  if (!painter.end()) return notPainted();
  return withExtras(bytes, facts, book.links(), book.marks()).value_or(bytes);
}

/// Pictures of all pages, one after the other, with the events of this thread between them.
bool drawAll(BookMaker& maker, const std::function<void(double)>& progress, const std::stop_token& stop) {
  const std::size_t pages = maker.book()->pageCount();
  for (std::size_t page = 0; page < pages; ++page) {
    if (stop.stop_requested()) return false;
    if (!maker.drawPictures(page)) continue;
    if (progress) progress(double(page + 1) / double(pages));
    QCoreApplication::processEvents();
  }
  return !stop.stop_requested();
}

}  // namespace

core::Result<QByteArray> reportPdf(BookMaker& finished, const std::function<void(double)>& progress,
                                   std::stop_token stop) {
  const auto tell = [&](double share) {
    if (progress) progress(share);
  };
  if (!drawAll(
          finished, [&](double share) { tell(drawn * share); }, stop))
    return stopped();
  const ReportBook& book = *finished.book();
  const PdfFacts facts = factsOf(finished.document(), book.report());
  auto pdf = doneAside([&](const core::Progress& painting) { return painted(book, facts, painting, stop); },
                       [&](double share) { tell(drawn + (1 - drawn) * share); });
  if (pdf) tell(1);
  return pdf;
}

core::Result<QByteArray> reportPdf(const core::Document& document, const core::ReportOrder& order,
                                   const std::function<void(double)>& progress, std::stop_token stop,
                                   const ReportStamp& stamp) {
  const auto tell = [&](double share) {
    if (progress && !stop.stop_requested()) progress(share);
  };
  BookMaker maker(document, order, stamp);
  QEventLoop loop;
  QObject::connect(&maker, &BookMaker::finished, &loop, &QEventLoop::quit);
  QObject::connect(&maker, &BookMaker::progressed, &loop, [&](double share) { tell(laidOut * share); });
  const std::stop_callback ending(
      stop, [&loop] { QMetaObject::invokeMethod(&loop, "quit", Qt::QueuedConnection); });
  if (!stop.stop_requested() && !maker.isFinished()) loop.exec();
  if (stop.stop_requested() || !maker.isFinished()) return stopped();
  return reportPdf(
      maker, [&](double share) { tell(laidOut + (1 - laidOut) * share); }, stop);
}

core::Result<QByteArray> reportPdf(const core::Document& document,
                                   const std::function<void(double)>& progress, std::stop_token stop,
                                   const ReportStamp& stamp) {
  core::ReportOrder order;
  order.printed = toDate(stamp.date);
  return reportPdf(document, order, progress, std::move(stop), stamp);
}

core::Result<QByteArray> reportCsvBytes(const core::Document& document,
                                        const std::function<void(double)>& progress, std::stop_token stop) {
  const std::string csv =
      doneAside([&](const core::Progress& diagnosing) { return core::reportCsv(document, diagnosing, stop); },
                progress);
  if (stop.stop_requested()) return stopped();
  return QByteArray::fromStdString(csv);
}

}  // namespace ui
