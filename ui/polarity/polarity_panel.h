// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/session.h"

namespace ui {

/// A page of the Bridge view: what the chosen shunt would do at every place of the bridge, as a matrix and as
/// a picture on the diamond. A cell places the shunt there.
class PolarityPanel : public QWidget {
  Q_OBJECT

 public:
  explicit PolarityPanel(Session& session, QWidget* parent = nullptr);

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);

 private:
  Session& m_session;
};

}  // namespace ui
