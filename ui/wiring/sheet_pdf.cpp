// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/sheet_pdf.h"

#include <QApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QTextDocument>
#include <memory>

#include "core/report/html.h"
#include "core/report/wiring_sheet.h"
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

/// While it lives the pointer says that the program is at work.
class Waiting {
 public:
  Waiting() { QApplication::setOverrideCursor(Qt::WaitCursor); }
  ~Waiting() { QApplication::restoreOverrideCursor(); }
  Q_DISABLE_COPY_MOVE(Waiting)
};

}  // namespace

core::Result<QByteArray> wiringSheetPdf(const core::Document& document, std::size_t index,
                                        const core::OhmmeterConditions& conditions,
                                        const ReportStamp& stamp) {
  const core::Report report = core::wiringSheet(document, index, conditions);
  std::unique_ptr<ReportPictures> pictures;
  const auto fill = [&](QTextDocument& text) {
    pictures = std::make_unique<ReportPictures>(document, text);
    text.setHtml(toQString(
        core::reportHtml(report, [&](const core::Picture& picture) { return pictures->add(picture); })));
  };
  return pdfPages(toQString(report.title), stamp, fill);
}

core::Result<void> writeWiringSheet(const QString& path, const core::Document& document, std::size_t index,
                                    const core::OhmmeterConditions& conditions) {
  const Waiting waiting;
  const auto bytes = wiringSheetPdf(document, index, conditions);
  return bytes ? saveBytes(path, *bytes) : core::Result<void>(bytes.error());
}

QString askForSheet(QWidget* parent, const core::Channel& channel) {
  const QString path =
      QFileDialog::getSaveFileName(parent, QFileDialog::tr("Print sheet"), fileNameOf(channel),
                                   QFileDialog::tr("Sheet to be printed (*.pdf)"));
  return path.isEmpty() || !QFileInfo(path).suffix().isEmpty() ? path : path + ".pdf";
}

}  // namespace ui
