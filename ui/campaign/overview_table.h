// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

namespace ui {

class OverviewModel;

/// The grid of the overview. Return and a double click want the views, on a heading they open and close its
/// group; F2 edits, Ctrl+C copies the chosen rows with their header.
class OverviewTable : public QTableView {
  Q_OBJECT

 public:
  explicit OverviewTable(OverviewModel& model, QWidget* parent = nullptr);

  std::vector<int> chosenRows() const;
  std::vector<std::size_t> chosenChannels() const;
  /// Chooses these as far as they are shown, `current` as the current row without leaving its column.
  void choose(const std::vector<std::size_t>& channels, std::optional<std::size_t> current);
  void copyRows();

 signals:
  void viewsWanted();
  void copied(int rows);
  /// What is chosen changed by the user's hand.
  void chosen();

 protected:
  bool edit(const QModelIndex& index, EditTrigger trigger, QEvent* event) override;
  void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;

 private:
  void spanHeadings();

  OverviewModel& m_model;
  bool m_choosing = false;
};

}  // namespace ui
