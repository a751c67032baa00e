// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QFutureWatcher>
#include <memory>
#include <set>
#include <stop_token>
#include <vector>

#include "core/levels/levels.h"
#include "core/recording/recording.h"
#include "ui/session.h"

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QTableWidget;

namespace ui {

/// What was found for one channel of the document in one recording.
struct ChannelLevels {
  std::size_t channel = 0;  ///< index in the document
  std::size_t column = 0;   ///< index in the recording
  core::Result<std::vector<core::Level>> levels = std::vector<core::Level>{};
};

/// A recording as read on a worker, with the levels of every channel that has a column of its name.
struct RecordingContents {
  core::Result<core::Recording> recording = core::Recording{};
  core::Result<QString> sha256 = QString();
  std::vector<ChannelLevels> channels;
};

/// Takes the readings of a check from a recording: choose the file, see which held levels were found
/// for each channel, leave out what is no step, and accept. Reading and level finding run on a
/// worker with progress and can be cancelled. Accepting is one undo step for all chosen channels.
class RecordingDialog : public QDialog {
  Q_OBJECT

 public:
  RecordingDialog(Session& session, const QString& documentPath, QWidget* parent = nullptr);
  ~RecordingDialog() override;

  /// Starts reading `path` on a worker; `readingDone` is emitted when the table shows what was found.
  void readFile(const QString& path);

  /// How many channels got readings; 0 until accepted.
  std::size_t taken() const { return m_taken; }

  void accept() override;
  void reject() override;

 signals:
  void readingDone();

 private:
  QFormLayout* fileForm();
  QWidget* buttons();
  void followTables();
  void followReading();
  void chooseFile();
  void startReading(std::optional<std::size_t> columnForChosen);
  void showContents();
  void showChannels();
  void showLevels();
  core::Result<core::Channel> withReadings(const ChannelLevels& found) const;
  std::vector<core::Level> keptLevels(std::size_t row) const;
  core::RecordingReference reference(std::size_t column) const;
  void say(const QString& sentence);

  Session& m_session;
  QString m_documentPath;
  QString m_path;
  RecordingContents m_contents;
  std::vector<std::vector<bool>> m_kept;  ///< row of the channel table -> level kept
  std::set<std::size_t> m_leftOut;        ///< channels that the user unticked, by their index in the document
  std::size_t m_taken = 0;
  std::stop_source m_stop;
  QFutureWatcher<RecordingContents> m_watcher;
  QLineEdit* m_name;
  QLineEdit* m_date;
  QLabel* m_file;
  QComboBox* m_column;
  QProgressBar* m_progress;
  QTableWidget* m_channels;
  QTableWidget* m_levels;
  QLabel* m_message;
  QPushButton* m_take;
};

}  // namespace ui
