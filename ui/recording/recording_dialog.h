// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QStringList>
#include <memory>

#include "ui/recording/recording_job.h"
#include "ui/session.h"

class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QSplitter;

namespace ui {

class FoundPane;
class LayoutPane;
struct Finding;

/// Takes the readings of checks from a recording, from top to bottom: the file and what the check is called;
/// how the file is read, guessed and open to change; what was found for each channel. Reading and level
/// finding run on workers and can be cancelled. Taking is one undo step for all ticked channels.
class RecordingDialog : public QDialog {
  Q_OBJECT

 public:
  /// `store` takes in what was read, so that it need not be read again to be shown.
  RecordingDialog(Session& session, const QString& documentPath, QWidget* parent = nullptr,
                  RecordingStore* store = nullptr);
  ~RecordingDialog() override;

  /// Starts reading `path`; `readingDone` is emitted when it is shown what was found, or why nothing was.
  void readFile(const QString& path);

  /// How many channels got readings; 0 until accepted.
  std::size_t taken() const { return m_taken; }
  /// The names of the channels that have a column in the recording and got no readings.
  const QStringList& leftOut() const { return m_leftOut; }

  /// Waits for the file's hash where that is still worked out; the dialog stays open meanwhile.
  void accept() override;
  void reject() override;

 signals:
  void readingDone();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QWidget* filePart();
  QLayout* checkRow();
  QWidget* readPart();
  QWidget* foundPart();
  QLayout* bottomRow();
  void connectJob();
  void connectParts();
  void chooseFile();
  void start();
  void showRead();
  void showCancelled();
  void showRunning();
  void showTake();
  void showDate();
  void showName();
  void showFileError(const QString& sentence);
  std::string freeCheckName(const std::string& wanted) const;
  bool isCheckTaken(const std::string& name, QStringList* channels = nullptr) const;
  QString usualName() const;
  QString whyNothingToTake() const;
  QStringList channelsLeftOut() const;
  QString summary() const;
  core::Result<core::Document> withTaken() const;
  core::Result<core::Channel> channelWith(const Finding& finding, const std::string& checkName) const;
  void say(const QString& sentence, bool isWrong = false);

  Session& m_session;
  QString m_documentPath;
  RecordingStore* m_store;
  RecordingJob m_job;
  QString m_path;
  ChosenColumns m_columns;
  bool m_takesWhenFinished = false;
  std::size_t m_taken = 0;
  QStringList m_leftOut;
  QLineEdit* m_name;
  QLineEdit* m_date;
  QLineEdit* m_person;
  QLabel* m_nameNote;
  QLabel* m_file;
  QLabel* m_fileError;
  QPushButton* m_again;
  LayoutPane* m_layout;
  FoundPane* m_found;
  QSplitter* m_parts;
  QProgressBar* m_progress;
  QPushButton* m_cancelReading;
  QLabel* m_message;
  QPushButton* m_take;
};

}  // namespace ui
