// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/printed_file.h"

#include <QCoreApplication>
#include <QMessageBox>
#include <QPrinter>

#include "core/units/language.h"
#include "ui/safe_file.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr qint64 greatestPrint_bytes = qint64(1) << 30;

}  // namespace

PrintedFile::PrintedFile(QPrinter& printer) : m_printer(printer), m_path(printer.outputFileName()) {
  if (!m_path.isEmpty()) m_printer.setOutputFileName(m_folder.filePath("printed.pdf"));
}

core::Result<void> PrintedFile::finish() {
  if (m_path.isEmpty()) return {};
  const auto bytes = loadBytes(m_printer.outputFileName(), greatestPrint_bytes);
  m_printer.setOutputFileName(m_path);
  if (!bytes) return bytes.error();
  // ISO 32000-1, 7.5.5: the last line of a PDF.
  if (!bytes->trimmed().endsWith("%%EOF"))
    return core::Error{m_path.toStdString(),
                       core::say("the temporary file that it is printed into first was cut short"),
                       core::say("Make room in the folder for temporary files")};
  return saveBytes(m_path, *bytes);
}

void PrintedFile::finishOrSay(QWidget* parent) {
  const auto done = finish();
  if (done) return;
  QMessageBox box(QMessageBox::Warning, QCoreApplication::translate("ui::PrintedFile", "Print"),
                  QCoreApplication::translate("ui::PrintedFile", "Not printed: %1").arg(toText(done.error())),
                  QMessageBox::Ok, parent);
  box.setObjectName("notPrintedBox");
  box.setTextFormat(Qt::PlainText);
  box.exec();
}

}  // namespace ui
