// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

#include "ui/session.h"
#include "ui/sheet_view.h"

namespace ui {

/// The document's stock: resistors, decade boxes, ranges of preferred values.
class StockPage : public QWidget {
  Q_OBJECT

 public:
  explicit StockPage(Session& session, QWidget* parent = nullptr);
  SheetView& table() { return *m_table; }

 signals:
  void refused(const QString& reason);

 private:
  Session& m_session;
  SheetView* m_table = nullptr;
};

}  // namespace ui
