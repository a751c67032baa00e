// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/session.h"

namespace ui {

/// A page in place of the views: all channels of the document as a grid, worst first, to be filtered, sorted
/// and grouped; what is chosen in it can be edited together. A double click or Return shows the channel in
/// the three views.
class OverviewPage : public QWidget {
  Q_OBJECT

 public:
  explicit OverviewPage(Session& session, QWidget* parent = nullptr);

  // What the Channel menu asks for; each opens its dialog and is one undo step.
  void importChannels(const QString& path = {});
  void copyChannel();
  void editChosen();

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);
  /// The user wants to see the chosen channel in the views.
  void viewsWanted();

 private:
  Session& m_session;
};

}  // namespace ui
