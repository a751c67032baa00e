// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/recording/findings.h"
#include "ui/recording/recording_job.h"

class QAbstractItemModel;
class QCheckBox;
class QComboBox;
class QLabel;

namespace ui {

class ColumnTable;
class FindTable;
class SheetView;
class SignalPicture;

/// What was found in a recording: the channels with their columns and how the levels match the plan, and of
/// the chosen channel all levels. Where the recording can be read in several ways, or the match is not what
/// the user sees, the user decides here.
class FoundPane : public QWidget {
  Q_OBJECT

 public:
  explicit FoundPane(QWidget* parent = nullptr);

  void clear();
  /// Shows a row for each channel; chooses that of `channel`, or the first with a column when it has none.
  void showRead(const core::Document& document, std::shared_ptr<const RecordingRead> read,
                std::size_t channel);
  void showFind(const std::shared_ptr<const core::ChannelFind>& find);

  /// Draws the curves of what was read, whose envelopes must be there.
  void drawSignal();

  const std::vector<Finding>& findings() const { return m_findings; }
  /// Those that are ticked and can be taken.
  std::vector<const Finding*> toTake() const;

 signals:
  void columnChosen(std::size_t channel, std::optional<std::size_t> column);
  /// Something was decided that changes what can be taken.
  void decided();

 private:
  SheetView* table(const char* name, const QString& label, QAbstractItemModel* model);
  QWidget* detail();
  void connectTables();
  Finding* chosen();
  void showChosen();
  void showReadings(const Finding* finding);
  void showFirstLevel();
  void changeRow(int row);
  void hideRows();
  bool isHidden(std::size_t row) const;

  core::Document m_document;
  std::shared_ptr<const RecordingRead> m_read;
  std::vector<Finding> m_findings;
  ColumnTable* m_channelModel;
  FindTable* m_levelModel;
  QCheckBox* m_onlyOpen;  ///< among many channels those that need a look are found at once
  SheetView* m_channels;
  SheetView* m_levels;
  SignalPicture* m_picture;
  QLabel* m_title;
  QLabel* m_words;
  QLabel* m_readAsLabel;
  QComboBox* m_readAs;
};

}  // namespace ui
