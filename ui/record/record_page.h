// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/session.h"

namespace ui {

/// A page in place of the views: where the record stands (draft, submitted, accepted, returned), its
/// fingerprint, the remarks of reviewers pinned to checks and steps, and the history of who changed what
/// when.
class RecordPage : public QWidget {
  Q_OBJECT

 public:
  explicit RecordPage(Session& session, QWidget* parent = nullptr);

  // What the Record menu asks for; each asks for what it needs and is one undo step.
  void submit();
  void accept();
  void giveBack();
  /// A remark pinned to the chosen step, or to the chosen check when no step is chosen.
  void addRemark();

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);
  /// The user wants to see the check and step of a remark in the views.
  void viewsWanted();

 private:
  Session& m_session;
};

}  // namespace ui
