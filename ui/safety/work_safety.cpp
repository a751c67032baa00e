// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safety/work_safety.h"

#include <QEvent>
#include <QFileInfo>
#include <QGuiApplication>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QSessionManager>
#include <QVBoxLayout>

#include "ui/as_typed.h"
#include "ui/safety/differences_dialog.h"
#include "ui/safety/disk_bar.h"
#include "ui/safety/recovery_bar.h"
#include "ui/session.h"

namespace ui {

WorkSafety::WorkSafety(Session& session, QWidget* window)
    : QObject(window),
      m_session(session),
      m_window(window),
      m_bars(new QWidget),
      m_mark(new QLabel),
      m_recovery(new RecoveryBar),
      m_disk(new DiskBar),
      m_autosave(session) {
  auto* layout = new QVBoxLayout(m_bars);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  layout->addWidget(m_recovery);
  layout->addWidget(m_disk);
  m_mark->setObjectName("readOnlyMark");
  m_mark->setText(tr("Read-only"));
  m_mark->hide();
  window->installEventFilter(this);
  connect(&session, &Session::historyChanged, this, [this] { m_givenUp = false; });
  connect(&m_autosave, &Autosave::failed, this, &WorkSafety::refused);
  connect(&m_watch, &DiskWatch::standingChanged, this, &WorkSafety::tellDisk);
  connect(m_disk, &DiskBar::differencesWanted, this, &WorkSafety::showDifferences);
  connect(m_disk, &DiskBar::loadWanted, this, &WorkSafety::loadWanted);
  connect(m_disk, &DiskBar::saveWanted, this, &WorkSafety::saveWanted);
  connect(m_disk, &DiskBar::keepWanted, this, &WorkSafety::keepMine);
  connect(m_recovery, &RecoveryBar::recoverWanted, this, &WorkSafety::recoverWanted);
  connect(
      qApp, &QGuiApplication::commitDataRequest, this,
      [this](QSessionManager& manager) {
        const bool mayAsk = manager.allowsInteraction();
        if (!mayEndSession(mayAsk)) manager.cancel();
        if (mayAsk) manager.release();
      },
      Qt::DirectConnection);
  // Ended from outside no window is closed, and nothing asked.
  connect(qApp, &QCoreApplication::aboutToQuit, this, [this] { m_autosave.flush(); });
}

WorkSafety::~WorkSafety() = default;

bool WorkSafety::eventFilter(QObject* watched, QEvent* event) {
  // Not every file system tells of changes, so we look when the user comes back.
  if (event->type() == QEvent::WindowActivate && watched == m_window) m_watch.look();
  return QObject::eventFilter(watched, event);
}

bool WorkSafety::isHeldElsewhere(const QString& path) {
  return DocumentLock::taken(path).holder().has_value();
}

/// None when the user would rather not open it.
std::optional<DocumentLock> WorkSafety::lockOrReadOnly(const QString& path) {
  DocumentLock lock = DocumentLock::taken(path);
  if (!lock.holder()) return lock;
  QString text =
      tr("%1 is open for writing: %2.\n\nYou can read it, change it in the window and save it under "
         "another name.")
          .arg(QFileInfo(path).fileName(), holderText(*lock.holder()));
  if (!lock.holder()->onThisHost)
    text +=
        "\n\n" + tr("Whether the program there still runs cannot be seen from here. Take the lock over only "
                    "when you know that it does not.");
  QMessageBox box(QMessageBox::Question, tr("Open elsewhere"), text, QMessageBox::Cancel, m_window);
  box.setObjectName("lockBox");
  box.setTextFormat(Qt::PlainText);
  QPushButton* readOnly = box.addButton(tr("Open &read-only"), QMessageBox::AcceptRole);
  readOnly->setObjectName("openReadOnly");
  QPushButton* takeOver = nullptr;
  if (!lock.holder()->onThisHost) {
    takeOver = box.addButton(tr("&Take the lock over"), QMessageBox::DestructiveRole);
    takeOver->setObjectName("takeLockOver");
  }
  box.setDefaultButton(readOnly);
  box.exec();
  if (box.clickedButton() == readOnly) return lock;
  if (takeOver && box.clickedButton() == takeOver) return DocumentLock::takenOver(path);
  return std::nullopt;
}

bool WorkSafety::enter(const QString& path) {
  if (m_lock.isHeld() && m_lock.file() == fileBehind(path)) return true;
  auto lock = lockOrReadOnly(path);
  if (!lock) return false;
  m_watch.stop();
  setLock(*std::move(lock));
  return true;
}

void WorkSafety::setLock(DocumentLock lock) {
  m_lock = std::move(lock);
  if (m_mark) {
    m_mark->setVisible(!m_lock.reason().isEmpty());
    m_mark->setToolTip(asTyped(m_lock.reason()));
    m_mark->setAccessibleDescription(m_lock.reason());
  }
  emit accessChanged();
}

QString WorkSafety::readOnlyReason() const { return m_lock.reason(); }

void WorkSafety::follow(const QString& path, const QString& sha256) {
  m_path = path;
  m_autosave.setPath(path);
  if (m_next) setLock(*std::exchange(m_next, std::nullopt));
  m_watch.watch(m_lock.file(), sha256);
}

void WorkSafety::leave() {
  m_path.clear();
  m_autosave.setPath({});
  m_watch.stop();
  setLock({});
}

bool WorkSafety::regain() {
  DocumentLock lock = DocumentLock::taken(m_path);
  if (!lock.reason().isEmpty()) return false;
  setLock(std::move(lock));
  return true;
}

bool WorkSafety::mayWrite(const QString& path) {
  stay();
  const bool own = m_lock.file() == fileBehind(path);
  if (!own || !m_lock.isHeld()) {
    DocumentLock lock = DocumentLock::taken(path);
    if (lock.holder()) {
      emit refused(tr("Not saved: %1 is open for writing elsewhere, %2. Choose another name.")
                       .arg(QFileInfo(path).fileName(), holderText(*lock.holder())));
      return false;
    }
    m_next = std::move(lock);  // what else hinders, the saving itself will say
  }
  if (!own || m_watch.lookNow() != DiskWatch::Standing::Changed || maySaveOver()) return true;
  stay();
  return false;
}

bool WorkSafety::maySaveOver() {
  QMessageBox box(QMessageBox::Warning, tr("Changed on the disk"),
                  tr("Another program changed %1 since it was opened or saved here. Saving replaces what was "
                     "written there.")
                      .arg(QFileInfo(m_path).fileName()),
                  QMessageBox::Cancel, m_window);
  box.setObjectName("saveOverBox");
  box.setTextFormat(Qt::PlainText);
  QPushButton* over = box.addButton(tr("&Save over it"), QMessageBox::DestructiveRole);
  over->setObjectName("saveOver");
  QPushButton* differences = box.addButton(tr("Show what &differs"), QMessageBox::ActionRole);
  differences->setObjectName("saveOverDifferences");
  box.setDefaultButton(QMessageBox::Cancel);
  box.exec();
  if (box.clickedButton() == differences) showDifferences();
  return box.clickedButton() == over;
}

void WorkSafety::showDifferences() {
  auto* dialog = new DifferencesDialog(m_session.document(), m_path, m_window);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->open();
}

/// From here on the window's work is not what is on the disk, so it counts as unsaved.
void WorkSafety::keepMine() {
  m_watch.accept();
  m_session.history().resetClean();
  emit said(tr("Yours is kept. It is on the disk when you save it."));
}

void WorkSafety::tellDisk() {
  m_disk->tell(m_watch.standing(), QFileInfo(m_path).fileName(), !m_session.history().isClean());
}

void WorkSafety::offerLeftOvers() { m_recovery->look(); }

void WorkSafety::adopt(const LeftOver& work) {
  m_autosave.adopt(work.slot);
  m_recovery->takeOut(work.slot.file);
}

void WorkSafety::askAtSessionEnd(std::function<bool()> mayClose) { m_mayClose = std::move(mayClose); }

bool WorkSafety::mayEndSession(bool mayAsk) {
  m_autosave.flush();
  if (!mayAsk || !m_mayClose) return true;
  if (!m_mayClose()) return false;
  m_autosave.giveUp();
  m_givenUp = true;
  return true;
}

void WorkSafety::finish() {
  m_autosave.finish();
  m_watch.stop();
  setLock({});
}

}  // namespace ui
