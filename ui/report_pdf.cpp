// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report_pdf.h"

#include <QTextDocument>
#include <algorithm>
#include <memory>

#include "core/report/html.h"
#include "ui/report_pdf_pictures.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr double laidOut = 0.7;  ///< share of the work until the pages are painted

}  // namespace

core::Result<QByteArray> reportPdf(const core::Document& document,
                                   const std::function<void(double)>& progress, std::stop_token stop,
                                   const ReportStamp& stamp) {
  const auto tell = [&](double share) {
    if (progress) progress(share);
  };
  const core::Report report = core::reportOf(document, toDate(stamp.date));
  std::unique_ptr<ReportPictures> pictures;
  const auto fill = [&](QTextDocument& text) {
    pictures = std::make_unique<ReportPictures>(document, text);
    double done = 0;
    text.setHtml(toQString(core::reportHtml(report, [&](const core::Picture& picture) {
      tell(laidOut * std::min(1.0, (done += 0.5) / double(document.channels.size() + 1)));
      return stop.stop_requested() ? core::PictureSource{} : pictures->add(picture);
    })));
  };
  return pdfPages(
      toQString(report.title), stamp, fill, [&](double share) { tell(laidOut + (1 - laidOut) * share); },
      stop);
}

}  // namespace ui
