// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QFutureWatcher>
#include <QTimer>
#include <memory>

#include "core/campaign/batch_edits.h"
#include "ui/session.h"

class QAbstractButton;
class QComboBox;
class QLabel;
class QStackedWidget;
class QTableWidget;

namespace ui {

class ManyFields;

/// One edit of all chosen channels: what is edited, the new value, and what becomes of each of them before it
/// is done. Those that refuse say why and stay as they are. One undo step.
class EditManyDialog : public QDialog {
  Q_OBJECT

 public:
  EditManyDialog(Session& session, std::vector<std::size_t> channels, QWidget* parent = nullptr);
  ~EditManyDialog() override;

  void accept() override;

 signals:
  void said(const QString& sentence);

 private:
  using Outcome = core::Result<core::BatchEdit>;

  void workOut();
  void showOutcome();
  void showRows();

  Session& m_session;
  const std::vector<std::size_t> m_to;
  std::shared_ptr<const Outcome> m_outcome;  ///< none while it is worked out
  QFutureWatcher<std::shared_ptr<const Outcome>> m_watcher;
  QTimer m_later;  ///< typing is waited for
  ManyFields* m_fields;
  QTableWidget* m_rows;
  QLabel* m_summary;
  QAbstractButton* m_ok = nullptr;
};

}  // namespace ui
