// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QTimer>
#include <QWidget>
#include <unordered_map>

#include "ui/review/review_model.h"
#include "ui/session.h"
#include "ui/sheet_view.h"

class QComboBox;
class QLabel;
class QPushButton;
class QScrollArea;
class QStackedWidget;
class QVBoxLayout;

namespace ui {

/// Findings about the plan of the chosen channel or of all channels, and for the chosen one its reason and a
/// button for each mend. Findings are kept by the channel's identity and worked out in slices, so that a
/// thousand channels stop nothing.
class ReviewPage : public QWidget {
  Q_OBJECT

 public:
  explicit ReviewPage(Session& session, QWidget* parent = nullptr);
  SheetView& table() { return *m_table; }

 signals:
  void refused(const QString& reason);
  /// The user wants to see shunt `shunt` of the chosen channel.
  void shuntActivated(std::size_t shunt);

 protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  struct Reviewed {
    std::shared_ptr<const core::Channel> channel;  ///< keeps the identity from being used again
    std::vector<core::Finding> findings;
  };

  QWidget* head();
  QWidget* details();
  void buildTable();
  void refresh();
  std::vector<std::size_t> wantedChannels() const;
  /// Works on until all channels are reviewed or a slice of time is over; whether all are.
  bool workOn(const std::vector<std::size_t>& channels);
  void forgetOld();
  bool isShown(const std::vector<std::size_t>& channels);
  void showRows(const std::vector<std::size_t>& channels);
  void showCounts(bool complete, std::size_t channels);
  void restoreChoice(const std::optional<ReviewRow>& chosen, int row);
  std::optional<ReviewRow> chosen() const;
  void choose(int row);
  void showDetails();
  void apply(std::size_t mend);
  void showShunt();
  void colour();

  Session& m_session;
  ReviewModel m_model;
  std::unordered_map<const core::Channel*, Reviewed> m_reviewed;
  std::shared_ptr<const core::Stock> m_stock;
  core::Date m_today{};
  std::vector<std::shared_ptr<const core::Channel>> m_shown;  ///< whose findings the rows are
  QTimer m_slices;
  bool m_following = false;  ///< rows are being replaced: what becomes current is not the user's choice
  QLabel* m_counts;
  QComboBox* m_scope;
  SheetView* m_table;
  QStackedWidget* m_stack;
  QLabel* m_nothing;
  QLabel* m_what;
  QLabel* m_why;
  QVBoxLayout* m_buttons;
  QPushButton* m_show;
  QScrollArea* m_details;
};

}  // namespace ui
