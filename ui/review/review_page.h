// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

#include "ui/session.h"
#include "ui/sheet_view.h"

namespace ui {

/// Findings about the plan, with what mends each.
class ReviewPage : public QWidget {
  Q_OBJECT

 public:
  explicit ReviewPage(Session& session, QWidget* parent = nullptr);
  SheetView& table() { return *m_table; }

 signals:
  void refused(const QString& reason);
  /// The user wants to see shunt `shunt` of the chosen channel.
  void shuntActivated(std::size_t shunt);

 private:
  Session& m_session;
  SheetView* m_table = nullptr;
};

}  // namespace ui
