// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/session.h"

namespace ui {

/// A page in place of the views: questions about shunts, with answers, explanations and a score that is kept
/// on this computer.
class PracticePage : public QWidget {
  Q_OBJECT

 public:
  explicit PracticePage(Session& session, QWidget* parent = nullptr);

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);

 private:
  Session& m_session;
};

}  // namespace ui
