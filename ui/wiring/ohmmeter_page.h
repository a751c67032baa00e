// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

#include "ui/session.h"
#include "ui/sheet_view.h"

namespace ui {

/// What an ohmmeter must read with the excitation off, what it did read, and which fault fits.
class OhmmeterPage : public QWidget {
  Q_OBJECT

 public:
  explicit OhmmeterPage(Session& session, QWidget* parent = nullptr);
  SheetView& table() { return *m_table; }

 signals:
  void refused(const QString& reason);

 private:
  Session& m_session;
  SheetView* m_table = nullptr;
};

}  // namespace ui
