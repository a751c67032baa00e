// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/session.h"

class QComboBox;
class QToolButton;

namespace ui {

/// Chooses, adds, fills, closes and compares the checks of the chosen channel.
class CheckBar : public QWidget {
  Q_OBJECT

 public:
  explicit CheckBar(Session& session, QWidget* parent = nullptr);

  /// The choice of the check to compare with; a widget of its own, so that the bar stays short.
  QWidget* comparison() { return m_comparison; }

 public slots:
  void addCheck();
  void removeCheck();
  void closeOrReopen();
  void editDetails();

 signals:
  void recordingWanted();
  void refused(const QString& reason);

 private:
  QToolButton* tool(const QString& name, const QString& text, const QString& tip);
  void refresh();

  Session& m_session;
  QComboBox* m_check;
  QWidget* m_comparison;
  QComboBox* m_compared;
  QToolButton* m_close;
};

}  // namespace ui
