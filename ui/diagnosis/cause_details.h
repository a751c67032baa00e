// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>
#include <optional>
#include <vector>

#include "ui/diagnosis/remainder_model.h"

class QGridLayout;
class QLabel;

namespace core {
struct Explanation;
}

namespace ui {

class SheetView;

/// One explanation in words: what it does, what would confirm it, whether data may be corrected, and what it
/// leaves of the deviations.
class CauseDetails : public QScrollArea {
  Q_OBJECT

 public:
  explicit CauseDetails(QWidget* parent = nullptr);

  /// What is told; `toTell` is what else would tell tied causes apart, may be empty.
  struct Contents {
    const core::Setup& setup;
    const core::CheckPoints& points;
    const core::Explanation& explanation;
    QString toTell;
  };
  void show(const Contents& contents);
  /// Rings the step that is chosen elsewhere.
  void followStep(std::optional<std::size_t> step);
  /// All words and numbers, a line each.
  QString text() const;

 signals:
  void stepChosen(std::size_t step);
  void refused(const QString& reason);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  struct Row {
    QLabel* name;
    QLabel* value;
  };

  void addRow(QGridLayout* grid, const char* objectName, const QString& name);
  void buildTable();
  void setRow(std::size_t row, const QString& value);
  void fitTable();
  void colour();

  QLabel* m_title;
  std::vector<Row> m_rows;
  QLabel* m_advice;  ///< whether data may be corrected
  QLabel* m_fit;
  SheetView* m_table;
  RemainderModel m_model;
  bool m_legitimate = false;
};

}  // namespace ui
