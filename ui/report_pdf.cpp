// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report_pdf.h"

#include <QTextDocument>
#include <algorithm>
#include <memory>

#include "core/report/csv.h"
#include "core/report/html.h"
#include "ui/aside.h"
#include "ui/report_pdf_pictures.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr double diagnosed = 0.3;  ///< share of the work until all checks are diagnosed
constexpr double laidOut = 0.75;   ///< until the pages are painted

core::Error stopped() { return {"report", "was stopped before it was finished", ""}; }

}  // namespace

core::Result<QByteArray> reportPdf(const core::Document& document,
                                   const std::function<void(double)>& progress, std::stop_token stop,
                                   const ReportStamp& stamp) {
  const auto tell = [&](double share) {
    if (progress) progress(share);
  };
  const core::Report report = doneAside(
      [&](const core::Progress& diagnosing) {
        return core::reportOf(document, toDate(stamp.date), diagnosing, stop);
      },
      [&](double share) { tell(diagnosed * share); });
  if (stop.stop_requested()) return stopped();
  std::unique_ptr<ReportPictures> pictures;
  const auto fill = [&](QTextDocument& text) {
    pictures = std::make_unique<ReportPictures>(document, text);
    double done = 0;
    text.setHtml(toQString(core::reportHtml(report, [&](const core::Picture& picture) {
      const double share = std::min(1.0, (done += 0.5) / double(document.channels.size() + 1));
      tell(diagnosed + (laidOut - diagnosed) * share);
      return stop.stop_requested() ? core::PictureSource{} : pictures->add(picture);
    })));
  };
  return pdfPages(
      toQString(report.title), stamp, fill, [&](double share) { tell(laidOut + (1 - laidOut) * share); },
      stop);
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
