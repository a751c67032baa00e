// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <memory>
#include <vector>

#include "core/compare/change_cause.h"
#include "ui/change/shown_change.h"
#include "ui/diagnosis/cause_model.h"

class QBoxLayout;
class QGridLayout;
class QLabel;

namespace ui {

class SheetView;

/// What changed physically between two checks: causes, the likeliest first, what to measure about the chosen
/// one, and what the change means for data taken in between.
class CauseSection : public QWidget {
  Q_OBJECT

 public:
  explicit CauseSection(QWidget* parent = nullptr);

  /// None: being worked out.
  void showCause(const ShownChange& shown, std::shared_ptr<const core::ChangeCause> cause);
  /// Causes and what belongs to the chosen one side by side.
  void setWide(bool wide);
  /// All that it says, a line each.
  QStringList lines() const;

 protected:
  void changeEvent(QEvent* event) override;

 private:
  struct Row {
    QLabel* name;
    QLabel* value;
  };

  std::size_t addRow(QGridLayout* grid, const char* objectName, const QString& name);
  void setRow(std::size_t row, const QString& value);
  QWidget* details();
  QWidget* dataBetween();
  void showExplanation();
  void showData(const ShownChange& shown);
  void colour();

  CauseModel m_model;
  std::shared_ptr<const core::ChangeCause> m_cause;
  QLabel* m_sentence;
  QLabel* m_caution;
  QBoxLayout* m_body;
  SheetView* m_table;
  QWidget* m_details;
  QWidget* m_data;
  QLabel* m_dataSentence;
  std::vector<Row> m_rows;
};

}  // namespace ui
