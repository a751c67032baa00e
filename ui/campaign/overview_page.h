// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/session.h"

class QLabel;

namespace ui {

class OverviewBar;
class OverviewModel;
class OverviewTable;

/// A page in place of the views: all channels of the document as a grid, worst first, to be filtered, sorted
/// and grouped; what is chosen in it can be edited together. A double click or Return shows the channel in
/// the three views. What it shows is worked out aside, and only while it is seen.
class OverviewPage : public QWidget {
  Q_OBJECT

 public:
  explicit OverviewPage(Session& session, QWidget* parent = nullptr);

  // What the Channel menu asks for; each opens its dialog and is one undo step.
  void importChannels(const QString& path = {});
  void copyChannel();
  void editChosen();

  void exportList();
  void copyRows();
  /// The rows as CSV, as sorted and filtered. False when not written.
  bool exportTo(const QString& path);
  /// All channels as a list that can be imported again.
  bool exportChannelsTo(const QString& path);
  /// The channels that are chosen here, or the one that is chosen everywhere while nothing is.
  std::vector<std::size_t> chosenChannels() const;

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);
  /// The user wants to see the chosen channel in the views.
  void viewsWanted();

 protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  QWidget* tools();
  void follow();
  void draw();
  void takeChoice();
  void restoreChoice();
  void showTally();
  void showMenu(const QPoint& at);
  bool write(const QString& path, const QByteArray& bytes, qsizetype rows);

  Session& m_session;
  OverviewModel* m_model;
  OverviewBar* m_bar;
  OverviewTable* m_table;
  QLabel* m_tally;
  std::vector<std::shared_ptr<const core::Channel>> m_channels;  ///< that the rows were drawn of
  std::vector<std::size_t> m_chosen;  ///< channels, to be found again in other places
};

}  // namespace ui
