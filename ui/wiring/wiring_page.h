// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

#include "ui/session.h"
#include "ui/sheet_view.h"

namespace ui {

/// Pins and jumpers of the chosen channel, their drawing and what is wrong with them.
class WiringPage : public QWidget {
  Q_OBJECT

 public:
  explicit WiringPage(Session& session, QWidget* parent = nullptr);
  SheetView& table() { return *m_table; }

 signals:
  void refused(const QString& reason);

 private:
  Session& m_session;
  SheetView* m_table = nullptr;
};

}  // namespace ui
