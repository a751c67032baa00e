// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/session.h"

namespace ui {

/// A page of the Bridge view: what a fault would do to the readings of the plan, side by side with and
/// without it. Leaves the document as it is until the user takes the change over.
class WhatIfPanel : public QWidget {
  Q_OBJECT

 public:
  explicit WhatIfPanel(Session& session, QWidget* parent = nullptr);

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);

 private:
  Session& m_session;
};

}  // namespace ui
