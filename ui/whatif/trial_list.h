// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>
#include <vector>

#include "core/whatif/alteration.h"

class QGridLayout;
class QLabel;

namespace ui {

class QuantityEdit;

/// What is tried out, a row each: its words, its value to be edited in place, a button that takes it away.
/// One that does not apply to the channel says why it is left out.
class TrialList : public QScrollArea {
  Q_OBJECT

 public:
  explicit TrialList(QWidget* parent = nullptr);

  /// Rows are made anew only when they are of other places, so that a field that is open stays so.
  void show(const std::vector<core::Alteration>& alterations, const core::TriedOut& tried);
  /// Scrolls to the row that came last; its field, if it has one, takes the keyboard.
  void openLast();

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 signals:
  void valueEdited(std::size_t trial, double value);
  void removed(std::size_t trial);
  void refused(const QString& reason);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  struct Row {
    QLabel* name = nullptr;
    QuantityEdit* field = nullptr;  ///< none without a value
    QLabel* reason = nullptr;       ///< why it is left out
  };

  void makeRows(const std::vector<core::Alteration>& alterations);
  void makeRow(QGridLayout* grid, std::size_t trial, const core::Alteration& alteration);
  QuantityEdit* makeField(std::size_t trial, const core::Alteration& alteration);
  void colour();

  std::vector<core::Alteration> m_shown;
  std::vector<Row> m_rows;
};

}  // namespace ui
