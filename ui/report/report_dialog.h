// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include "ui/session.h"

namespace ui {

/// Chooses what a report says (a ready template or one of the user's own, which can be edited and saved), of
/// which channels, in which language and format; previews it page by page; prints it; writes it with progress
/// and cancel.
class ReportDialog : public QDialog {
  Q_OBJECT

 public:
  /// `suggested` is the path to offer, without ending.
  ReportDialog(Session& session, const QString& suggested, QWidget* parent = nullptr);

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);

 private:
  Session& m_session;
};

}  // namespace ui
