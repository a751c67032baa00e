// SPDX-License-Identifier: GPL-3.0-or-later
// What the window does with files: documents, reports, netlists, recordings.
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QProgressDialog>
#include <stop_token>

#include "core/document/edits.h"
#include "core/plan/spice.h"
#include "core/record/revisions.h"
#include "ui/document_file.h"
#include "ui/main_window.h"
#include "ui/record/saving.h"
#include "ui/recording/recording_dialog.h"
#include "ui/recording/recording_reference.h"
#include "ui/recording/recording_store.h"
#include "ui/recording/watch_page.h"
#include "ui/report/report_dialog.h"
#include "ui/report_pdf.h"
#include "ui/safe_file.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString withSuffix(QString path, const QString& suffix) {
  return QFileInfo(path).suffix().isEmpty() ? path + "." + suffix : path;
}

}  // namespace

bool MainWindow::mayDiscard() {
  if (m_session.history().isClean()) return true;
  QMessageBox box(QMessageBox::Question, tr("Unsaved changes"),
                  tr("The document has changes that are not saved. Save them?"),
                  QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, this);
  box.setObjectName("discardBox");
  box.setTextFormat(Qt::PlainText);
  box.setDefaultButton(QMessageBox::Save);
  const int answer = box.exec();
  if (answer == QMessageBox::Save) return save();
  return answer == QMessageBox::Discard;
}

void MainWindow::setPath(const QString& path) {
  m_path = path;
  m_recordings->setFolder(path.isEmpty() ? QString() : QFileInfo(path).path());
  m_watch->setDocumentPath(path);
}

void MainWindow::newDocument() {
  if (!mayDiscard()) return;
  setPath({});
  m_unsavedTitle.clear();
  m_session.reset({});
  say(tr("Empty document. Add a channel to begin."));
}

void MainWindow::openDialog() {
  if (!mayDiscard()) return;
  const QString path = QFileDialog::getOpenFileName(this, tr("Open document"), QFileInfo(m_path).path(),
                                                    tr("Shuntwright documents (*.%1)").arg(documentSuffix));
  if (!path.isEmpty()) openFile(path);
}

bool MainWindow::openFile(const QString& path) {
  auto document = openDocument(path);
  if (!document) {
    warn(tr("Not opened: %1").arg(toText(document.error())));
    return false;
  }
  setPath(QFileInfo(path).absoluteFilePath());
  m_session.reset(*std::move(document));
  rememberDocument(m_path);
  const QString opened = tr("Opened %1.").arg(QFileInfo(m_path).fileName());
  if (const QString altered = alteredOutside(path); altered.isEmpty())
    say(opened);
  else
    warn(opened + " " + altered);
  return true;
}

void MainWindow::showAsUnsaved(const QString& title) {
  setPath({});
  m_unsavedTitle = title;
  refresh();
}

bool MainWindow::save() { return m_path.isEmpty() ? saveAsDialog() : saveAs(m_path); }

bool MainWindow::saveAsDialog() {
  const QString path = QFileDialog::getSaveFileName(this, tr("Save document"), m_path,
                                                    tr("Shuntwright documents (*.%1)").arg(documentSuffix));
  return !path.isEmpty() && saveAs(withSuffix(path, documentSuffix));
}

bool MainWindow::saveAs(const QString& path) {
  const QString folder = m_path.isEmpty() ? QDir::currentPath() : QFileInfo(m_path).absolutePath();
  core::Document document = withReferencesFrom(m_session.document(), folder, QFileInfo(path).absolutePath());
  const bool first = m_path.isEmpty() && document.history.empty();
  const auto revised = core::withRevision(document, first ? nullptr : &m_session.saved(), savingNow());
  if (const auto saved = revised ? saveDocument(*revised, path) : core::Result<void>(revised.error());
      !saved) {
    warn(tr("Not saved: %1").arg(toText(saved.error())));
    return false;
  }
  setPath(QFileInfo(path).absoluteFilePath());
  m_session.edit(tr("Find recordings from the new folder"), std::move(document));
  m_session.setSaved(revised->history);
  rememberDocument(m_path);
  refresh();
  say(tr("Saved %1.").arg(QFileInfo(m_path).fileName()));
  return true;
}

void MainWindow::showReportDialog() {
  const QFileInfo file(m_path);
  const QString name = m_path.isEmpty() ? QStringLiteral("report") : file.completeBaseName();
  ReportDialog dialog(m_session, (m_path.isEmpty() ? QDir::currentPath() : file.path()) + "/" + name, this);
  connect(&dialog, &ReportDialog::refused, this, &MainWindow::warn);
  connect(&dialog, &ReportDialog::said, this, &MainWindow::say);
  dialog.exec();
}

void MainWindow::tellWritten(const QString& path, const core::Result<void>& written,
                             const QString& otherwise) {
  if (written) return say(tr("Wrote %1.").arg(path));
  warn(otherwise.arg(toText(written.error())));
}

bool MainWindow::writeReport(const QString& path) {
  const bool csv = path.endsWith(".csv", Qt::CaseInsensitive);
  const auto bytes = reportWithProgress(csv);
  const auto saved = bytes ? saveBytes(path, *bytes) : core::Result<void>(bytes.error());
  tellWritten(path, saved, tr("No report: %1"));
  return bool(saved);
}

/// Checks are diagnosed on others, but pages are drawn on this thread, since they show widgets; between them
/// the window stays alive.
core::Result<QByteArray> MainWindow::reportWithProgress(bool csv) {
  QProgressDialog dialog(tr("Writing the report"), tr("Cancel"), 0, 100, this);
  dialog.setWindowModality(Qt::WindowModal);
  dialog.setMinimumDuration(300);
  std::stop_source stop;
  connect(&dialog, &QProgressDialog::canceled, this, [&stop] { stop.request_stop(); });
  // The document may not change under the pages: a modal dialog takes the input.
  const core::Document document = m_session.document();
  const auto progress = [&dialog](double share) { dialog.setValue(static_cast<int>(100 * share)); };
  return csv ? reportCsvBytes(document, progress, stop.get_token())
             : reportPdf(document, progress, stop.get_token());
}

void MainWindow::exportNetlist() {
  if (!m_session.channel() || !m_session.selection().step) return warn(tr("Choose the step first."));
  const std::size_t step = *m_session.selection().step;
  const auto netlist = core::spiceNetlist(m_session.channel()->setup, step, m_session.channel()->name);
  if (!netlist) return warn(tr("No netlist: %1").arg(toText(netlist.error())));
  const QString path = QFileDialog::getSaveFileName(
      this, tr("SPICE netlist"), QFileInfo(m_path).path() + "/step.cir", tr("SPICE netlist (*.cir)"));
  if (path.isEmpty()) return;
  tellWritten(path, saveBytes(withSuffix(path, "cir"), QByteArray::fromStdString(*netlist)),
              tr("No netlist: %1"));
}

void MainWindow::takeRecording(const QString& path) {
  if (!m_session.channel()) return warn(tr("There is no channel yet: add a channel first."));
  RecordingDialog dialog(m_session, m_path, this, m_recordings);
  if (!path.isEmpty()) dialog.readFile(path);
  if (dialog.exec() != QDialog::Accepted) return;
  QString text =
      tr("Took readings for %1 of %2 channels.")
          .arg(QString::number(dialog.taken()), QString::number(m_session.document().channels.size()));
  if (!dialog.leftOut().isEmpty()) text += " " + tr("Not taken: %1.").arg(dialog.leftOut().join(", "));
  say(text);
}

}  // namespace ui
