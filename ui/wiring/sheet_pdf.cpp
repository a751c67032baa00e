// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/sheet_pdf.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QProgressDialog>
#include <QTextDocument>
#include <memory>

#include "core/report/html.h"
#include "core/report/wiring_sheet.h"
#include "ui/notice/long_work.h"
#include "ui/report_pdf_pictures.h"
#include "ui/safe_file.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// Characters that a file name had better not have.
QString fileNameOf(const core::Channel& channel) {
  QString name = toQString(channel.name);
  for (QChar& letter : name)
    if (!letter.isLetterOrNumber() && letter != '-' && letter != '_') letter = '_';
  return name.left(60) + "-wiring.pdf";
}

}  // namespace

core::Result<QByteArray> wiringSheetPdf(const core::Document& document, std::size_t index,
                                        const core::OhmmeterConditions& conditions,
                                        const std::function<void(double)>& progress,
                                        const std::stop_token& stop, const ReportStamp& stamp) {
  const core::Report report = core::wiringSheet(document, index, conditions);
  std::unique_ptr<ReportPictures> pictures;
  const auto fill = [&](QTextDocument& text) {
    pictures = std::make_unique<ReportPictures>(document, text);
    text.setHtml(toQString(
        core::reportHtml(report, [&](const core::Picture& picture) { return pictures->add(picture); })));
  };
  return pdfPages(toQString(report.title), stamp, fill, progress, stop);
}

/// The pages are drawn on this thread, since text is laid out on it; between them the window stays alive.
core::Result<void> writeWiringSheet(QWidget* parent, const QString& path, const core::Document& document,
                                    std::size_t index, const core::OhmmeterConditions& conditions) {
  const LongWork time;
  QProgressDialog dialog(QProgressDialog::tr("Writing the sheet"), QProgressDialog::tr("Cancel"), 0, 100,
                         parent);
  dialog.setWindowModality(Qt::WindowModal);
  dialog.setMinimumDuration(300);
  std::stop_source stop;
  QObject::connect(&dialog, &QProgressDialog::canceled, &dialog, [&stop] { stop.request_stop(); });
  // Kept, since the events of the window are handled between the pages.
  const core::Document kept = document;  // NOLINT(performance-unnecessary-copy-initialization)
  const auto bytes = wiringSheetPdf(
      kept, index, conditions, [&dialog](double share) { dialog.setValue(static_cast<int>(100 * share)); },
      stop.get_token());
  const core::Result<void> written = bytes ? saveBytes(path, *bytes) : core::Result<void>(bytes.error());
  if (written) time.done(QProgressDialog::tr("The sheet %1 is written.").arg(QFileInfo(path).fileName()));
  return written;
}

QString askForSheet(QWidget* parent, const core::Channel& channel) {
  const QString path =
      QFileDialog::getSaveFileName(parent, QFileDialog::tr("Print sheet"), fileNameOf(channel),
                                   QFileDialog::tr("Sheet to be printed (*.pdf)"));
  return path.isEmpty() || !QFileInfo(path).suffix().isEmpty() ? path : path + ".pdf";
}

}  // namespace ui
