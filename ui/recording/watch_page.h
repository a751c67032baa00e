// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

#include "ui/recording/arrivals.h"
#include "ui/recording/folder_watch.h"
#include "ui/recording/recording_store.h"
#include "ui/session.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QTableWidget;
class QToolButton;

namespace ui {

class QuantityEdit;

/// Watches a folder for new recordings, or one recording for what is added to it, and takes them up as checks
/// as they arrive; what cannot be taken without asking waits here in a list.
class WatchPage : public QWidget {
  Q_OBJECT

 public:
  WatchPage(Session& session, RecordingStore& store, QWidget* parent = nullptr);

  /// The document's path, empty for an unsaved one: references to recordings are relative to it.
  void setDocumentPath(const QString& path);
  /// Watches a folder or a file.
  void watch(const QString& path);

  FolderWatch& folder() { return m_folder; }
  const Arrivals& arrivals() const { return m_arrivals; }

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);
  /// The user wants to decide about the recording at `path` in the import page.
  void importWanted(const QString& path);

 private:
  QLayout* targetRow();
  QLayout* ruleRow();
  QLayout* checkRow();
  QLayout* listRow();
  QToolButton* tool(const char* name, const QString& text, const QString& tip, void (WatchPage::*act)());
  void followWatch();
  void chooseFolder();
  void chooseFile();
  void pauseOrGoOn();
  void stop();
  void decide();
  void tryAgain();
  void clearList();
  void showState();
  void showList();
  QString chosenPath() const;

  QString m_documentPath;
  FolderWatch m_folder;
  Arrivals m_arrivals;
  QLabel* m_target;
  QLabel* m_state;
  QToolButton* m_pause;
  QToolButton* m_stop;
  QLineEdit* m_pattern;
  QuantityEdit* m_rest;
  QCheckBox* m_takesUp;
  QComboBox* m_names;
  QLineEdit* m_person;
  QTableWidget* m_list;
  QToolButton* m_decide;
  QToolButton* m_again;
};

}  // namespace ui
