// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/arrivals.h"

#include <QFileInfo>
#include <QLocale>
#include <algorithm>

#include "core/document/edits.h"
#include "ui/recording/recording_reference.h"
#include "ui/recording/taking_up.h"
#include "ui/theme.h"

namespace ui {

using State = Arrival::State;

Arrivals::Arrivals(Session& session, RecordingStore& store, QObject* parent)
    : QObject(parent), m_session(session), m_store(store) {
  connect(&m_job, &RecordingJob::looked, this, [this](const RecordingJob::Look& look) {
    if (look) return;
    setState(m_job.task().path, State::Failed, toText(look.error()));
    readNext();
  });
  connect(&m_job, &RecordingJob::wasRead, this, [this] {
    const auto& open = m_job.result()->open;
    if (open) return;  // The hash is still to come.
    setState(m_job.task().path, State::Failed, toText(open.error()));
    readNext();
  });
  connect(&m_job, &RecordingJob::finished, this, [this] {
    judge();
    readNext();
  });
}

Arrival& Arrivals::entryOf(const QString& path) {
  const auto at =
      std::find_if(m_list.begin(), m_list.end(), [&](const Arrival& a) { return a.path == path; });
  if (at != m_list.end()) return *at;
  m_list.push_back({path, QDateTime::currentDateTime(), State::Waiting, {}});
  return m_list.back();
}

void Arrivals::setState(const QString& path, State state, const QString& words) {
  Arrival& entry = entryOf(path);
  entry.when = QDateTime::currentDateTime();
  entry.state = state;
  entry.words = words;
  emit changed();
}

void Arrivals::add(const QString& path) {
  setState(path, State::Waiting, {});
  if (!m_queue.contains(path)) m_queue.append(path);
  if (!m_job.isReading()) readNext();
}

void Arrivals::addGrowing(const QString& path, qint64 size) {
  m_queue.removeAll(path);
  setState(path, State::BeingWritten, tr("%1 so far").arg(QLocale().formattedDataSize(size)));
}

void Arrivals::markGone(const QString& path) {
  m_queue.removeAll(path);
  const bool isListed =
      std::any_of(m_list.begin(), m_list.end(), [&](const Arrival& a) { return a.path == path; });
  if (isListed && entryOf(path).state != State::Taken) setState(path, State::Gone, {});
}

void Arrivals::clear() {
  std::erase_if(m_list, [](const Arrival& a) {
    return a.state != State::Waiting && a.state != State::Reading && a.state != State::BeingWritten;
  });
  emit changed();
}

void Arrivals::readNext() {
  if (m_queue.isEmpty()) return;
  const QString path = m_queue.takeFirst();
  setState(path, State::Reading, {});
  RecordingTask task;
  task.path = path;
  task.document = m_session.document();
  m_job.start(task);
}

/// An edit while the recording was read would make what was found in it untrue.
bool Arrivals::isOfPresentDocument() const { return m_job.task().document == m_session.document(); }

void Arrivals::judge() {
  const RecordingRead& read = *m_job.result();
  const QString path = m_job.task().path;
  if (!m_job.sha256()) return setState(path, State::Failed, toText(m_job.sha256().error()));
  if (!isOfPresentDocument()) return add(path);
  m_store.put(*read.open);
  const QString words = findsInWords(m_session.document(), read.finds);
  const bool isPlainThroughout =
      !read.finds.empty() && std::all_of(read.finds.begin(), read.finds.end(), isPlain);
  if (!m_takesUp || !isPlainThroughout) return setState(path, State::NeedsYou, words);
  takeUp(read);
}

core::Check Arrivals::checkOf(const RecordingRead& read) const {
  const OpenRecording& open = **read.open;
  core::Check check;
  check.name = m_namesAfterFile
                   ? QFileInfo(open.path).completeBaseName().toStdString()
                   : core::usualCheckName(*m_session.document().channels[read.finds.front().use.channel]);
  const QString started = toQString(open.recording.startedAt).left(10);
  check.date = (started.isEmpty() ? read.stamp.changed.date().toString(Qt::ISODate) : started).toStdString();
  check.person = m_person.toStdString();
  check.recording = referenceTo(open, *m_job.sha256(), m_documentPath);
  return check;
}

void Arrivals::takeUp(const RecordingRead& read) {
  const OpenRecording& open = **read.open;
  auto next = withFindsTaken(m_session.document(), open.recording, read.finds, checkOf(read));
  if (!next) return;
  m_session.edit(tr("Take up %1").arg(QFileInfo(open.path).fileName()), *std::move(next));
  QStringList verdicts;
  for (const core::ChannelFind& find : read.finds)
    verdicts << toQString(m_session.document().channels[find.use.channel]->name) + ", " +
                    toQString(m_session.evaluation(find.use.channel).status);
  setState(open.path, State::Taken, verdicts.join("; "));
  emit taken(open.path, verdicts.join("; "));
}

}  // namespace ui
