// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include "ui/session.h"

class QLabel;

namespace ui {

class CountEdit;

/// The chosen channel several times behind itself, with the names that follow its own: set-up only, no
/// checks.
class CopiesDialog : public QDialog {
  Q_OBJECT

 public:
  /// There must be a chosen channel.
  explicit CopiesDialog(Session& session, QWidget* parent = nullptr);

  void accept() override;

 signals:
  void said(const QString& sentence);

 private:
  void preview();
  QStringList names() const;

  Session& m_session;
  CountEdit* m_count;
  QLabel* m_names;
};

}  // namespace ui
