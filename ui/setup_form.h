// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>
#include <memory>

#include "ui/session.h"

class QLabel;

namespace ui {

class SetupRows;

/// Every field of the chosen channel's bridge, leads, instrument, acquisition and limits. Fields that the
/// template does not use are hidden. Each accepted change is one undo step. A closed check shows the set-up
/// it was judged by, which is not edited.
class SetupForm : public QScrollArea {
  Q_OBJECT

 public:
  explicit SetupForm(Session& session, QWidget* parent = nullptr);

  /// Brings the field with this object name into view, opening its group, and gives it the keyboard.
  void focusField(const QString& objectName);

 signals:
  void refused(const QString& reason);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void refresh();
  void makeRoom();

  Session& m_session;
  QWidget* m_body;
  QLabel* m_closed;  ///< why nothing is edited; hidden while it is
  SetupRows* m_rows;
  std::shared_ptr<const core::Channel> m_shown;
};

}  // namespace ui
