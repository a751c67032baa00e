// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/session.h"

namespace ui {

/// Two checks of the chosen channel held against each other: what differs in their set-ups first, the verdict
/// in words, every step with its change, margin and what the tests say, gain and zero with their intervals,
/// what changed physically and what that means for data in between; and all checks of the channel over time
/// with control limits. Shows the pair that the session compares; when there is none, the last two checks.
/// Choosing a step here chooses it everywhere.
class ChangePanel : public QWidget {
  Q_OBJECT

 public:
  explicit ChangePanel(Session& session, QWidget* parent = nullptr);

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);

 private:
  Session& m_session;
};

}  // namespace ui
