// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/report_files.h"

#include <QCoreApplication>
#include <QFileInfo>

#include "core/report/csv.h"
#include "core/report/json.h"
#include "core/report/web_page.h"
#include "core/report/workbook.h"
#include "core/units/language.h"
#include "ui/aside.h"
#include "ui/report/report_sketches.h"
#include "ui/report_pdf.h"

namespace ui {
namespace {

constexpr double worded = 0.6;  ///< share of a web page's work until it is known what it says

core::Error stopped() { return {"report", core::say("was stopped before it was finished"), ""}; }

core::Result<QByteArray> webPage(const core::Document& document, const core::ReportOrder& order,
                                 const std::function<void(double)>& progress, const std::stop_token& stop) {
  const auto tell = [&](double share) {
    if (progress) progress(share);
  };
  const core::Report report =
      doneAside([&](const core::Progress& wording) { return core::reportOf(document, order, wording, stop); },
                [&](double share) { tell(worded * share); });
  if (stop.stop_requested()) return stopped();
  ReportSketches sketches(document, report.words);
  double pictures = 0, done = 0;
  for (const core::Section& section : report.sections)
    for (const core::Block& block : section.blocks) pictures += std::holds_alternative<core::Picture>(block);
  const auto address = [&](const core::Picture& picture) {
    if (stop.stop_requested()) return core::PictureSource{};
    const QByteArray svg = sketches.draw(picture)->svg();
    tell(worded + (1 - worded) * ++done / pictures);
    QCoreApplication::processEvents();
    return core::PictureSource{"data:image/svg+xml;base64," + svg.toBase64().toStdString(),
                               int(sketches.sizeOf(picture).width() * 96 / 72)};
  };
  const std::string html = core::reportWebPage(report, address);
  if (stop.stop_requested()) return stopped();
  tell(1);
  return QByteArray::fromStdString(html);
}

/// Written by core alone, on another thread.
template <class Write>
core::Result<QByteArray> writtenAside(const Write& write, const std::function<void(double)>& progress,
                                      const std::stop_token& stop) {
  const core::Result<std::string> text = doneAside(write, progress);
  if (stop.stop_requested()) return stopped();
  if (!text) return text.error();
  return QByteArray::fromStdString(*text);
}

}  // namespace

QString suffixOf(ReportFormat format) {
  switch (format) {
    case ReportFormat::Pdf:
      return "pdf";
    case ReportFormat::Workbook:
      return "xlsx";
    case ReportFormat::Html:
      return "html";
    case ReportFormat::Csv:
      return "csv";
    case ReportFormat::Json:
      break;
  }
  return "json";
}

QString nameOf(ReportFormat format) {
  const auto tr = [](const char* text) { return QCoreApplication::translate("ui::ReportFormat", text); };
  switch (format) {
    case ReportFormat::Pdf:
      return tr("Pages to print and sign (PDF)");
    case ReportFormat::Workbook:
      return tr("Workbook with formulas (XLSX)");
    case ReportFormat::Html:
      return tr("One page for a browser (HTML)");
    case ReportFormat::Csv:
      return tr("Table of all steps (CSV)");
    case ReportFormat::Json:
      break;
  }
  return tr("Data for programs (JSON)");
}

std::optional<ReportFormat> reportFormatOf(const QString& path) {
  const QString suffix = QFileInfo(path).suffix().toLower();
  for (const ReportFormat format : reportFormats)
    if (suffixOf(format) == suffix) return format;
  return std::nullopt;
}

core::Result<QByteArray> reportBytes(const core::Document& document, const core::ReportOrder& order,
                                     ReportFormat format, const std::function<void(double)>& progress,
                                     std::stop_token stop, const ReportStamp& stamp) {
  using Text = core::Result<std::string>;
  switch (format) {
    case ReportFormat::Pdf:
      return reportPdf(document, order, progress, stop, stamp);
    case ReportFormat::Html:
      return webPage(document, order, progress, stop);
    case ReportFormat::Workbook:
      return writtenAside(
          [&](const core::Progress& told) { return core::reportWorkbook(document, order, told, stop); },
          progress, stop);
    case ReportFormat::Json:
      return writtenAside(
          [&](const core::Progress& told) { return core::reportJson(document, order, told, stop); }, progress,
          stop);
    case ReportFormat::Csv:
      break;
  }
  return writtenAside(
      [&](const core::Progress& told) { return Text(core::reportCsv(document, order, told, stop)); },
      progress, stop);
}

}  // namespace ui
