// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/recording/layout.h"
#include "core/recording/recording.h"
#include "core/units/result.h"

class QLabel;
class QListWidget;
class QPushButton;
class QScrollArea;
class QTabWidget;
class QTableView;
class QToolButton;

namespace ui {

class LayoutForm;
class PreviewTable;

/// How a recording's file is read: the guess in words, its first lines as they stand in the file, what was
/// not read, and on demand a field for each part of the guess.
class LayoutPane : public QWidget {
  Q_OBJECT

 public:
  explicit LayoutPane(QWidget* parent = nullptr);

  /// Another file, to begin with these choices; not empty: they are those of the last recording.
  void begin(const core::LayoutChoices& choices);
  void showLook(const core::Result<core::Preview>& look);
  void showRead(const core::Recording& recording);
  const core::LayoutChoices& choices() const { return m_choices; }

 signals:
  void chosen();
  /// The fields were shown or hidden, which needs more or less room.
  void opened(bool isOpen);

 private:
  QWidget* head();
  QWidget* tables();
  void take(const core::LayoutChoices& choices);
  void showNote();
  void showDoubts(const core::Preview& preview);
  void showLines(const core::Preview& preview);

  core::LayoutChoices m_choices;
  core::LayoutChoices m_remembered;  ///< of the last recording; empty when it was read as guessed
  QLabel* m_sentence;
  QLabel* m_note;
  QPushButton* m_allAsGuessed;
  QToolButton* m_change;
  QLabel* m_doubts;
  QScrollArea* m_fields;
  LayoutForm* m_form;
  QTabWidget* m_tabs;
  QTableView* m_lines;
  PreviewTable* m_preview;
  QListWidget* m_notRead;
};

}  // namespace ui
