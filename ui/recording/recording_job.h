// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateTime>
#include <QFutureWatcher>
#include <QObject>
#include <QTimer>
#include <atomic>
#include <map>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/intake/intake.h"
#include "core/recording/layout.h"
#include "ui/notice/long_work.h"
#include "ui/recording/recording_store.h"

namespace ui {

/// The columns that the user chose for channels: index of the channel, and the column's name or none.
using ChosenColumns = std::map<std::size_t, std::optional<std::string>>;

/// What is to be read, and for which plan.
struct RecordingTask {
  QString path;
  core::LayoutChoices choices;
  core::Document document;
  ChosenColumns columns;
};

/// The columns of `recording` that the channels use: the user's choice, else core::columnUses.
std::vector<core::ColumnUse> usesOf(const core::Document& document, const core::Recording& recording,
                                    const ChosenColumns& columns);

/// The columns that are nearly called like a channel without one in `uses`: alike but for capitals and
/// punctuation, else beginning with its name. Only where one column alone is.
std::vector<core::ColumnUse> nearUses(const core::Document& document, const core::Recording& recording,
                                      const std::vector<core::ColumnUse>& uses);

/// A file as it was when it was read: another size or time means other contents.
struct FileStamp {
  qint64 size = -1;
  QDateTime changed;

  friend bool operator==(const FileStamp&, const FileStamp&) = default;
};

FileStamp stampOf(const QString& path);

/// A recording that was read, with what was found in it.
struct RecordingRead {
  core::Result<std::shared_ptr<OpenRecording>> open = std::shared_ptr<OpenRecording>();
  std::vector<core::ChannelFind> finds;
  std::vector<core::ColumnUse> nearlyNamed;  ///< those of the finds that nobody but a like name speaks for
  FileStamp stamp;
};

/// Reads a recording on workers and finds its levels, in an order that shows something soon: the beginning of
/// the file (`looked`), its numbers and levels (`wasRead`), then its hash and what drawing needs
/// (`finished`). Whatever is started anew, or cancelled, ends the work before it. Nothing here waits.
class RecordingJob : public QObject {
  Q_OBJECT

 public:
  using Look = core::Result<core::Preview>;

  explicit RecordingJob(QObject* parent = nullptr);
  ~RecordingJob() override;

  void start(const RecordingTask& task);
  void cancel();
  /// Looks for the levels of one more column of what was read; ends in `foundAgain`.
  void findAgain(core::ColumnUse use);

  bool isReading() const { return m_isReading; }
  /// Whether hash and envelopes of what was read are there.
  bool isFinished() const { return m_isFinished; }
  const RecordingTask& task() const { return m_task; }
  /// None until something was read.
  const std::shared_ptr<const RecordingRead>& result() const { return m_result; }
  /// Of the file; fails when it could not be read or was changed since its numbers were read. Only once
  /// finished.
  const core::Result<QString>& sha256() const { return m_sha256; }

 signals:
  void looked(const ui::RecordingJob::Look& look);
  void wasRead();
  void finished();
  void foundAgain(std::shared_ptr<const core::ChannelFind> find);
  void progressed(int perMille);
  void cancelled();

 private:
  /// What the workers of one start share with this thread.
  struct Shared {
    std::stop_source stop;
    std::atomic<int> perMille = 0;
  };

  void forget();
  void readOn();
  void takeRead();
  void finishOn();

  RecordingTask m_task;
  std::shared_ptr<Shared> m_shared;
  std::shared_ptr<const RecordingRead> m_result;
  core::Result<QString> m_sha256 = QString();
  bool m_isReading = false;
  bool m_isFinished = false;
  LongWork m_time;
  QTimer m_tick;
  QFutureWatcher<std::shared_ptr<const Look>> m_look;
  QFutureWatcher<std::shared_ptr<const RecordingRead>> m_read;
  QFutureWatcher<core::Result<QString>> m_hash;
};

}  // namespace ui
