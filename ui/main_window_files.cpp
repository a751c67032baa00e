// SPDX-License-Identifier: GPL-3.0-or-later
// What the window does with files: documents, reports, netlists, recordings; and where it goes on at the next
// start.
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QProgressDialog>
#include <QStackedWidget>
#include <stop_token>

#include "core/document/edits.h"
#include "core/plan/spice.h"
#include "core/record/revisions.h"
#include "ui/another_document.h"
#include "ui/bridge_pane.h"
#include "ui/campaign/overview_page.h"
#include "ui/document_file.h"
#include "ui/main_window.h"
#include "ui/notice/long_work.h"
#include "ui/outcome_view.h"
#include "ui/practice/practice_page.h"
#include "ui/preferences/preferences.h"
#include "ui/record/record_page.h"
#include "ui/record/saving.h"
#include "ui/recording/recording_dialog.h"
#include "ui/recording/recording_reference.h"
#include "ui/recording/recording_store.h"
#include "ui/recording/watch_page.h"
#include "ui/report/report_dialog.h"
#include "ui/report_pdf.h"
#include "ui/run/guided_run.h"
#include "ui/safe_file.h"
#include "ui/safety/window_place.h"
#include "ui/safety/work_safety.h"
#include "ui/sequence_pane.h"
#include "ui/stock/stock_page.h"
#include "ui/strip/strip_view.h"
#include "ui/theme.h"
#include "ui/wiring/ohmmeter_page.h"
#include "ui/wiring/wiring_page.h"

namespace ui {
namespace {

QString withSuffix(const QString& path, const QString& suffix) {
  return QFileInfo(path).suffix().isEmpty() ? path + "." + suffix : path;
}

}  // namespace

bool MainWindow::mayDiscard() {
  if (m_session.history().isClean() || m_safety->isGivenUp()) return true;
  QString name = m_path.isEmpty() ? m_unsavedTitle : QFileInfo(m_path).fileName();
  if (name.isEmpty()) name = toQString(m_session.document().title);
  name = fontMetrics().elidedText(name, Qt::ElideMiddle, width() / 2);  // the box is as wide as its text
  QMessageBox box(QMessageBox::Question, tr("Unsaved changes"),
                  name.isEmpty() ? tr("The document has changes that are not saved. Save them?")
                                 : tr("%1 has changes that are not saved. Save them?").arg(name),
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

void MainWindow::buildSafety() {
  m_safety = new WorkSafety(m_session, this);
  connect(m_safety, &WorkSafety::refused, this, &MainWindow::warn);
  connect(m_safety, &WorkSafety::said, this, &MainWindow::say);
  connect(m_safety, &WorkSafety::recoverWanted, this, &MainWindow::recover);
  connect(m_safety, &WorkSafety::loadWanted, this, &MainWindow::loadFromDisk);
  connect(m_safety, &WorkSafety::saveWanted, this, &MainWindow::save);
  m_safety->askAtSessionEnd([this] {
    if (!mayDiscard()) return false;
    rememberWhereWeAre();
    return true;
  });
}

void MainWindow::newDocument() {
  if (!mayDiscard()) return;
  rememberWhereWeAre();
  m_safety->leave();
  rememberLastDocument({});
  setPath({});
  m_unsavedTitle.clear();
  m_session.reset({});
  showFromBeginning(*this);
  say(tr("Empty document. Add a channel to begin."));
}

void MainWindow::openDialog() {
  if (!mayDiscard()) return;
  const QString path = QFileDialog::getOpenFileName(this, tr("Open document"), QFileInfo(m_path).path(),
                                                    tr("Shuntwright documents (*.%1)").arg(documentSuffix));
  if (!path.isEmpty()) openFile(path);
}

bool MainWindow::openFile(const QString& path) {
  QString sha256;
  auto document = openDocument(path, &sha256);
  if (!document) {
    warn(tr("Not opened: %1").arg(toText(document.error())));
    return false;
  }
  rememberWhereWeAre();
  if (!m_safety->enter(path)) return false;
  setPath(QFileInfo(path).absoluteFilePath());
  m_session.reset(*std::move(document));
  showFromBeginning(*this);
  m_safety->follow(m_path, sha256);
  refresh();
  rememberDocument(m_path);
  rememberLastDocument(m_path);
  const QString name = QFileInfo(m_path).fileName(), reason = m_safety->readOnlyReason();
  const QString opened =
      reason.isEmpty() ? tr("Opened %1.").arg(name) : tr("Opened %1 read-only. %2").arg(name, reason);
  if (const QString altered = alteredOutside(path); altered.isEmpty())
    say(opened);
  else
    warn(opened + " " + altered);
  return true;
}

/// The file comes first, so that the recovered work is one step that Undo takes back.
void MainWindow::recover(const LeftOver& work) {
  if (!mayDiscard()) return;
  const QString path = work.note.path;
  QString sha256;
  auto onDisk = path.isEmpty() ? core::Document{} : openDocument(path, &sha256);
  if (!path.isEmpty() && !m_safety->enter(path)) return;
  if (path.isEmpty()) m_safety->leave();
  setPath(path);
  m_unsavedTitle.clear();
  m_session.reset(onDisk ? *std::move(onDisk) : core::Document{});
  showFromBeginning(*this);
  if (!path.isEmpty()) m_safety->follow(path, sha256);
  m_safety->adopt(work);
  m_session.edit(tr("Recover unsaved work"), work.document);
  refresh();
  say(tr("The unsaved work is back. It is not saved yet."));
}

/// One step that Undo takes back, and saved as it is.
void MainWindow::loadFromDisk() {
  QString sha256;
  const auto document = openDocument(m_path, &sha256);
  if (!document) return warn(tr("Not loaded: %1").arg(toText(document.error())));
  m_session.edit(tr("Load the file on disk"), *document);
  m_session.setSaved(document->history);
  m_safety->follow(m_path, sha256);
  say(tr("Loaded %1 as it is on the disk. Undo brings back what was here.")
          .arg(QFileInfo(m_path).fileName()));
}

void MainWindow::showAsUnsaved(const QString& title) {
  m_safety->leave();
  setPath({});
  m_unsavedTitle = title;
  refresh();
}

bool MainWindow::save() {
  if (m_path.isEmpty()) return saveAsDialog();
  const QString reason = m_safety->readOnlyReason();
  if (reason.isEmpty() || m_safety->regain()) return saveAs(m_path);
  warn(tr("%1 cannot be saved under its name. %2 Save it under another.")
           .arg(QFileInfo(m_path).fileName(), reason));
  return saveAsDialog();
}

/// The document's own name; where that cannot be written, one beside it or in the user's own folder.
QString MainWindow::proposedPath() const {
  const QString suffix = QStringLiteral(".") + documentSuffix;
  if (m_path.isEmpty()) return QDir::current().filePath(tr("document") + suffix);
  if (m_safety->readOnlyReason().isEmpty()) return m_path;
  const QFileInfo file(m_path);
  const QString folder = QFileInfo(file.path()).isWritable() ? file.path() : QDir::homePath();
  return QDir(folder).filePath(tr("%1 copy").arg(file.completeBaseName()) + suffix);
}

bool MainWindow::saveAsDialog() {
  const QString path = QFileDialog::getSaveFileName(this, tr("Save document"), proposedPath(),
                                                    tr("Shuntwright documents (*.%1)").arg(documentSuffix));
  return !path.isEmpty() && saveAs(withSuffix(path, documentSuffix));
}

bool MainWindow::saveAs(const QString& path) {
  if (!m_safety->mayWrite(path)) return false;
  const QString folder = m_path.isEmpty() ? QDir::currentPath() : QFileInfo(m_path).absolutePath();
  core::Document document = withReferencesFrom(m_session.document(), folder, QFileInfo(path).absolutePath());
  const bool first = m_path.isEmpty() && document.history.empty();
  const auto revised = core::withRevision(document, first ? nullptr : &m_session.saved(), savingNow());
  QString sha256;
  if (const auto saved =
          revised ? saveDocument(*revised, path, &sha256) : core::Result<void>(revised.error());
      !saved) {
    m_safety->stay();
    warn(tr("Not saved: %1").arg(toText(saved.error())));
    return false;
  }
  setPath(QFileInfo(path).absoluteFilePath());
  m_session.edit(tr("Find recordings from the new folder"), std::move(document));
  m_session.setSaved(revised->history);
  m_safety->follow(m_path, sha256);
  rememberDocument(m_path);
  rememberLastDocument(m_path);
  refresh();
  say(tr("Saved %1.").arg(QFileInfo(m_path).fileName()));
  return true;
}

void MainWindow::restoreLayout() { restoreWindow(*this); }

void MainWindow::openLast() {
  const QString path = lastDocument();
  if (!preferences().openLast || path.isEmpty() || !QFileInfo(path).isFile()) return;
  if (WorkSafety::isHeldElsewhere(path))
    return say(tr("%1, which was open last, is open elsewhere.").arg(QFileInfo(path).fileName()));
  // Should the document be what ends the program, the next start does without it.
  rememberLastDocument({});
  if (!openFile(path)) return;
  if (const auto place = rememberedPlace(m_path)) goTo(*place);
}

void MainWindow::offerRecovery() { m_safety->offerLeftOvers(); }

Place MainWindow::place() const {
  const Selection& chosen = m_session.selection();
  Place place;
  if (m_session.channel()) place.channel = toQString(m_session.channel()->name);
  if (m_session.check()) place.check = toQString(m_session.check()->name);
  if (chosen.step) place.step = static_cast<int>(*chosen.step);
  if (m_area->currentIndex() == 0)
    place.view = m_enlarged ? m_enlarged->objectName() : QString();
  else
    place.view = m_area->currentWidget()->objectName();
  place.bridgePage = static_cast<int>(m_bridge->page());
  place.outcomePage = static_cast<int>(m_outcome->page());
  place.sequencePage = m_sequence->currentIndex();
  return place;
}

void MainWindow::goTo(const Place& place) {
  const auto& channels = m_session.document().channels;
  for (std::size_t k = 0; k < channels.size(); ++k)
    if (toQString(channels[k]->name) == place.channel) m_session.selectChannel(k);
  if (m_session.channel())
    for (std::size_t k = 0; k < m_session.channel()->checks.size(); ++k)
      if (toQString(m_session.channel()->checks[k].name) == place.check) m_session.selectCheck(k);
  if (place.step >= 0) m_session.selectStep(static_cast<std::size_t>(place.step));
  using BridgePage = BridgePane::Page;
  using OutcomePage = OutcomeView::Page;
  if (place.bridgePage >= 0 && place.bridgePage <= static_cast<int>(BridgePage::WhatIf))
    m_bridge->showPage(static_cast<BridgePage>(place.bridgePage));
  if (place.outcomePage >= 0 && place.outcomePage <= static_cast<int>(OutcomePage::Change))
    m_outcome->showPage(static_cast<OutcomePage>(place.outcomePage));
  if (place.sequencePage >= 0 && place.sequencePage < m_sequence->count())
    m_sequence->setCurrentIndex(place.sequencePage);
  const QList<QWidget*> views{m_bridge, m_outcome, m_sequence, m_strip};
  for (QWidget* view : views)
    if (!place.view.isEmpty() && view->objectName() == place.view) enlarge(view);
  for (int k = 1; k < m_area->count(); ++k)
    if (m_area->widget(k)->objectName() == place.view) m_area->setCurrentIndex(k);
}

/// Of the demo nothing is remembered: it starts alike each time.
void MainWindow::rememberWhereWeAre() {
  if (!m_unsavedTitle.isEmpty() && m_path.isEmpty()) return;
  rememberWindow(*this);
  if (!m_path.isEmpty()) rememberPlace(m_path, place());
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
  const LongWork time;
  QProgressDialog dialog(tr("Writing the report"), tr("Cancel"), 0, 100, this);
  dialog.setWindowModality(Qt::WindowModal);
  dialog.setMinimumDuration(300);
  std::stop_source stop;
  connect(&dialog, &QProgressDialog::canceled, this, [&stop] { stop.request_stop(); });
  // The document may not change under the pages: a modal dialog takes the input.
  const core::Document document = m_session.document();
  const auto progress = [&dialog](double share) { dialog.setValue(static_cast<int>(100 * share)); };
  auto bytes = csv ? reportCsvBytes(document, progress, stop.get_token())
                   : reportPdf(document, progress, stop.get_token());
  if (bytes) time.done(tr("The report is ready."));
  return bytes;
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
