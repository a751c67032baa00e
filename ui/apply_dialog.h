// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>
#include <QSortFilterProxyModel>
#include <array>

#include "core/document/apply.h"
#include "ui/apply_channels.h"
#include "ui/session.h"

class QAbstractButton;
class QCheckBox;
class QLabel;
class QLineEdit;
class QRadioButton;
class QTableView;

namespace ui {

/// Hands parts of the chosen channel to others, or lets channels take values from the stock. Says what
/// becomes of every channel before anything is done; OK is one undo step.
class ApplyDialog : public QDialog {
  Q_OBJECT

 public:
  explicit ApplyDialog(Session& session, QWidget* parent = nullptr);

 signals:
  void refused(const QString& reason);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  static constexpr std::size_t partCount = 6;

  /// What becomes of the chosen channels together.
  struct Tally {
    std::size_t changes = 0, same = 0, refusals = 0;
    std::size_t dropped = 0;  ///< readings of open checks
    QString firstRefusal;     ///< "TP-31: refused: it has no sense leads …"
  };

  QWidget* choices();
  QWidget* list();
  QWidget* listButtons();
  QWidget* buttons();
  std::vector<std::size_t> shownChannels() const;
  core::ChannelParts parts() const;
  QString partWords() const;
  QString undoLabel(std::size_t channels) const;
  Tally tally() const;
  QString summary(const Tally& tally) const;
  void takeChoice();
  void chooseShown(bool sameTemplate);
  void toggleSelected();
  void follow();
  void apply();

  Session& m_session;
  ApplyChannels m_channels;
  QSortFilterProxyModel m_shown;
  std::array<QCheckBox*, partCount> m_parts{};
  QRadioButton* m_handOver = nullptr;
  QRadioButton* m_fromStock = nullptr;
  QLineEdit* m_filter = nullptr;
  QTableView* m_table = nullptr;
  QLabel* m_summary = nullptr;
  QAbstractButton* m_ok = nullptr;
};

}  // namespace ui
