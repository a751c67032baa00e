// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateTime>
#include <QObject>
#include <QString>
#include <QStringList>
#include <vector>

#include "ui/recording/recording_job.h"
#include "ui/session.h"

namespace ui {

/// A recording that arrived while watching, and what became of it.
struct Arrival {
  enum class State { BeingWritten, Waiting, Reading, Taken, NeedsYou, Failed, Gone };

  QString path;
  QDateTime when;  ///< of the last change of state
  State state = State::Waiting;
  QString words;  ///< what was found, or what is wrong
};

/// Reads recordings one after the other as they arrive and takes up as checks what is plain (taking_up.h);
/// the rest waits for the user.
class Arrivals : public QObject {
  Q_OBJECT

 public:
  Arrivals(Session& session, RecordingStore& store, QObject* parent = nullptr);

  void setDocumentPath(const QString& path) { m_documentPath = path; }
  /// Whether plain recordings become checks without being asked for.
  void setTakesUp(bool takesUp) { m_takesUp = takesUp; }
  bool takesUp() const { return m_takesUp; }
  /// Whether checks are called after the file, or as checks usually are.
  void setNamesAfterFile(bool after) { m_namesAfterFile = after; }
  /// Who runs the checks.
  void setPerson(const QString& person) { m_person = person; }

  const std::vector<Arrival>& list() const { return m_list; }
  bool isReading() const { return m_job.isReading(); }

  /// A file that is complete: it is read in its turn.
  void add(const QString& path);
  /// A file that is being written: it is listed, and read when it rests.
  void addGrowing(const QString& path, qint64 size);
  void markGone(const QString& path);
  void tryAgain(const QString& path) { add(path); }
  /// Forgets what is not waiting to be read.
  void clear();

 signals:
  void changed();
  /// A recording was taken up.
  void taken(const QString& path, const QString& words);

 private:
  Arrival& entryOf(const QString& path);
  void setState(const QString& path, Arrival::State state, const QString& words);
  void readNext();
  void judge();
  bool isOfPresentDocument() const;
  void takeUp(const RecordingRead& read);
  core::Check checkOf(const RecordingRead& read) const;

  Session& m_session;
  RecordingStore& m_store;
  QString m_documentPath;
  bool m_takesUp = true;
  bool m_namesAfterFile = true;
  QString m_person;
  std::vector<Arrival> m_list;  ///< the latest last
  QStringList m_queue;
  RecordingJob m_job;
};

}  // namespace ui
