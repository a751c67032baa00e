// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QFutureWatcher>
#include <memory>
#include <optional>

#include "core/campaign/channel_list.h"
#include "ui/notice/long_work.h"
#include "ui/session.h"

class QAbstractButton;
class QComboBox;
class QLabel;
class QTableWidget;

namespace ui {

/// Channels from a list kept in a spreadsheet, from a file or the clipboard: what each column is, what would
/// be added, which rows are refused and why. Nothing is changed until it is accepted, then in one undo step.
class ImportDialog : public QDialog {
  Q_OBJECT

 public:
  explicit ImportDialog(Session& session, QWidget* parent = nullptr);
  ~ImportDialog() override;

  void openFile(const QString& path);
  void paste();
  void accept() override;

 signals:
  void said(const QString& sentence);

 private:
  using Outcome = core::Result<core::ListImport>;

  QWidget* sourceRow();
  void askForFile();
  void showText(const QByteArray& text, const QString& from);
  void showTable();
  QComboBox* fieldChooser(int column);
  std::vector<core::ListField> fields() const;
  core::Channel likeChannel() const;
  void workOut();
  void showOutcome();
  void showTold(const core::ListImport& done);
  void refuse(const QString& reason);

  Session& m_session;
  std::optional<core::ListTable> m_table;
  std::shared_ptr<const Outcome> m_outcome;  ///< none while it is worked out
  QFutureWatcher<std::shared_ptr<const Outcome>> m_watcher;
  LongWork m_time;
  QComboBox* m_like;
  QLabel* m_from;
  QTableWidget* m_preview;
  QLabel* m_summary;
  QTableWidget* m_told;
  QAbstractButton* m_ok = nullptr;
};

}  // namespace ui
