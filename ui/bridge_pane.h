// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/session.h"

class QButtonGroup;
class QStackedWidget;

namespace ui {

class BridgeView;
class OutputBar;
class PolarityPanel;
class WhatIfPanel;

/// The Bridge with its pages: the drawing with the output below it, the polarity map, and what a fault
/// would do.
class BridgePane : public QWidget {
  Q_OBJECT

 public:
  enum class Page { Drawing, Polarity, WhatIf };

  explicit BridgePane(Session& session, QWidget* parent = nullptr);

  // A view in a splitter: it gets its size, and is not asked for the height that suits a width at each edit.
  QSize sizeHint() const override { return {640, 480}; }
  bool hasHeightForWidth() const override { return false; }

  void showPage(Page page);
  Page page() const;
  BridgeView& view() const { return *m_view; }

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);

 private:
  QWidget* pageButtons();
  QWidget* drawingPage();
  void showOutput();

  Session& m_session;
  QButtonGroup* m_pages = nullptr;
  QStackedWidget* m_stack = nullptr;
  BridgeView* m_view = nullptr;
  OutputBar* m_bar = nullptr;
  PolarityPanel* m_polarity = nullptr;
  WhatIfPanel* m_whatIf = nullptr;
};

}  // namespace ui
