// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safety/autosave.h"

#include <QtConcurrentRun>

#include "ui/preferences/preferences.h"
#include "ui/session.h"
#include "ui/theme.h"

namespace ui {

Autosave::Autosave(Session& session, QObject* parent)
    : QObject(parent), m_session(session), m_slot(newRecoverySlot()) {
  m_thread.setMaxThreadCount(1);  // one after another: a removal never overtakes a writing
  m_timer.setSingleShot(true);
  m_timer.setInterval(delay_ms);
  connect(&m_timer, &QTimer::timeout, this, &Autosave::write);
  connect(&session, &Session::historyChanged, this, &Autosave::follow);
  connect(&m_writing, &QFutureWatcherBase::finished, this, &Autosave::finishWriting);
  connect(&PreferencesSignal::instance(), &PreferencesSignal::preferencesChanged, this, &Autosave::follow);
}

Autosave::~Autosave() { m_thread.waitForDone(); }

void Autosave::setPath(const QString& path) { m_path = path; }

QString Autosave::file() const { return m_onDisk ? m_slot.file : QString(); }

void Autosave::adopt(const RecoverySlot& slot) {
  clear();
  m_slot = slot;
  m_onDisk = true;
}

void Autosave::follow() {
  if (m_finished) return;
  if (m_session.history().isClean() || !preferences().autosave) return clear();
  // Not started anew by each change: somebody who types without a pause is kept safe too.
  if (!m_timer.isActive()) m_timer.start();
}

void Autosave::write() {
  if (m_session.history().isClean()) return;
  if (m_writing.isRunning()) {
    m_again = true;
    return;
  }
  m_onDisk = true;
  const core::Document& document = m_session.document();
  const RecoveryNote note{m_path, toQString(document.title), QDateTime::currentDateTime()};
  m_writing.setFuture(QtConcurrent::run(
      &m_thread, [slot = m_slot, note, document] { return writeRecovery(slot, note, document); }));
}

void Autosave::finishWriting() {
  const core::Result<void> written = m_writing.result();
  if (written) {
    m_toldFailure = false;
    emit kept();
  } else if (!m_toldFailure) {
    m_toldFailure = true;
    emit failed(tr("Unsaved work cannot be kept safe against a crash at the moment: %1 Save often until "
                   "that is mended.")
                    .arg(toText(written.error())));
  }
  if (std::exchange(m_again, false)) follow();
}

/// After what is being written; a new name then, so that what comes next does not meet it.
void Autosave::clear() {
  m_timer.stop();
  m_again = false;
  if (!std::exchange(m_onDisk, false)) return;
  m_thread.start([slot = std::exchange(m_slot, newRecoverySlot())] { removeRecovery(slot); });
}

void Autosave::flush() {
  if (m_session.history().isClean() || !preferences().autosave || m_finished) return;
  m_timer.stop();
  m_thread.waitForDone();
  write();
  m_thread.waitForDone();
}

void Autosave::finish() {
  clear();
  m_finished = true;
}

}  // namespace ui
