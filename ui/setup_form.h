// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>
#include <memory>

#include "ui/session.h"

namespace ui {

class SetupRows;

/// Every field of the chosen channel's bridge, leads, instrument, acquisition and limits. Fields that the
/// template does not use are hidden. Each accepted change is one undo step.
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

 private:
  void refresh();
  void makeRoom();

  Session& m_session;
  QWidget* m_body;
  SetupRows* m_rows;
  std::shared_ptr<const core::Channel> m_shown;
};

}  // namespace ui
